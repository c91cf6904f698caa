"""Chance of a short throat against exact probabilities and against numerical integration."""

from math import pi, sqrt
from statistics import NormalDist

import numpy as np
import pytest
from scipy import integrate
from scipy.stats import qmc

from truethroat_service.application.joints.seams import Lengths, Shape
from truethroat_service.application.joints.throat_chance import Spread, chance_short
from truethroat_service.engine import even_points

EVEN = Spread()
FINE = 1e-3
"""What a chance counted on 16384 even points may be off by."""


def closed(finish: str = "flush") -> Shape:
    """Make the shape of a closed corner."""
    return Shape("closed-corner", pi / 2, True, finish, 0.0, None, False)  # type: ignore[arg-type]


# A flush closed corner keeps the depth less what the grinder takes: a plain difference.
LENGTHS = Lengths(t_1=12.0, t_2=12.0, depth=6.0, below=0.5)


@pytest.mark.parametrize(
    ("required", "chance"),
    [(5.0, 0.0), (5.25, 0.25), (5.5, 0.5), (5.75, 0.75), (6.1, 1.0)],
)
def test_one_even_length(required: float, chance: float) -> None:
    """Depth 6 +- 0.5 less 0.5: the throat is even between 5 and 6, so the chance is how far into it the line lies."""
    assert chance_short(closed(), LENGTHS, {"depth": 0.5}, required, EVEN) == pytest.approx(chance, abs=FINE)


@pytest.mark.parametrize("required", [4.75, 5.0, 5.25, 5.5, 5.75, 6.0])
def test_two_even_lengths(required: float) -> None:
    """Two even spreads of +- 0.5 add up to a triangle over 4.5 to 6.5, its tip at 5.5."""
    off = required - 5.5
    exact = (1 + off) ** 2 / 2 if off <= 0 else 1 - (1 - off) ** 2 / 2
    found = chance_short(closed(), LENGTHS, {"depth": 0.5, "below": 0.5}, required, EVEN)
    assert found == pytest.approx(exact, abs=FINE)


@pytest.mark.parametrize("deviations", [2.0, 3.0])
@pytest.mark.parametrize("required", [4.8, 5.2, 5.5, 5.6, 6.0])
def test_normal_lengths(required: float, deviations: float) -> None:
    """Normal spreads add up to one: the squares of their deviations add."""
    lengths = Lengths(t_1=30.0, t_2=30.0, depth=6.0, penetration=1.0, below=1.5)
    tolerances = {"depth": 0.6, "penetration": 0.3, "below": 0.3}
    sigma = sqrt(0.6**2 + 0.3**2 + 0.3**2) / deviations
    exact = NormalDist(5.5, sigma).cdf(required)
    found = chance_short(closed(), lengths, tolerances, required, Spread("normal", deviations))
    assert found == pytest.approx(exact, abs=2 * FINE)


def test_where_clearances_change_places() -> None:
    """A flat open corner of uneven plates, its throat the height of a right triangle: integrated over both legs."""
    shape = Shape("open-corner", pi / 2, True, "flat", 0.0, None, False)
    required = 4.7

    grid = np.linspace(-1, 1, 2001)
    t_1, t_2 = np.meshgrid(8.0 + grid, 6.0 + grid)
    area = integrate.simpson(integrate.simpson((t_1 * t_2 / np.hypot(t_1, t_2) < required).astype(float), grid), grid)
    found = chance_short(shape, Lengths(t_1=8.0, t_2=6.0), {"t_1": 1.0, "t_2": 1.0}, required, EVEN)
    assert found == pytest.approx(float(area) / 4, abs=2 * FINE)


def test_no_tolerance_leaves_no_chance() -> None:
    """Without a tolerance the throat is what it is."""
    assert chance_short(closed(), LENGTHS, {}, 5.5, EVEN) == 0.0
    assert chance_short(closed(), LENGTHS, {"depth": 0.0}, 5.6, EVEN) == 1.0


@pytest.mark.parametrize("directions", [1, 2, 5, 10])
def test_points_are_those_of_halton(directions: int) -> None:
    """The sequence is scipy's own, unscrambled, from its second point on."""
    theirs = qmc.Halton(directions, scramble=False).random(even_points.COUNT + 1)[1:]
    np.testing.assert_allclose(np.column_stack(even_points.uniform(directions)), theirs, rtol=0, atol=1e-12)


def test_points_cannot_be_changed_or_asked_for_in_too_many_directions() -> None:
    """A cached column is read-only."""
    with pytest.raises(ValueError, match="read-only"):
        even_points.uniform(2)[0][0] = 0.5
    with pytest.raises(ValueError, match="at most 10"):
        even_points.uniform(11)
