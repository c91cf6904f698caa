"""AISC 360-22 section J2.2b: least and largest fillet, least length, long end-loaded welds."""

from math import cos, pi, radians

import numpy as np
import pytest
from scipy.optimize import brentq
from tests.standards.welds import INCH

from truethroat_service.standards.aisc_360_22 import EDITION, j2_2_fillet_limits
from truethroat_service.standards.aisc_360_22.rules import AiscWeld, largest_edge_leg

SQUARE = pi / 2
RULES = AiscWeld("LRFD")


@pytest.mark.parametrize(
    ("thinner", "leg"),
    # ANSI/AISC 360-22 Table J2.4, inches; a limit belongs to the row it ends.
    [
        (1 / 8, 1 / 8),
        (1 / 4, 1 / 8),
        (0.2501, 3 / 16),
        (5 / 16, 3 / 16),
        (1 / 2, 3 / 16),
        (0.5001, 1 / 4),
        (9 / 16, 1 / 4),
        (3 / 4, 1 / 4),
        (0.7501, 5 / 16),
        (13 / 16, 5 / 16),
        (2.0, 5 / 16),
    ],
)
def test_minimum_leg(thinner: float, leg: float) -> None:
    """Least leg by the thinner part: ANSI/AISC 360-22 Table J2.4."""
    least, source = RULES.minimum_leg(thinner * INCH, SQUARE)
    assert least == pytest.approx(leg * INCH, rel=1e-12)
    assert str(source) == f"{EDITION}, J2.2b(a), Table J2.4"


@pytest.mark.parametrize(
    ("thinner", "leg"),
    # AISC Design Examples v16.0: J.1 p. J-2 (1/4 in plate), II.A-23 (3/8), II.C-2 (5/16 angle), II.C-1 (1/2 gusset).
    [(0.25, 0.125), (0.375, 0.1875), (0.3125, 0.1875), (0.5, 0.1875)],
)
def test_minimum_leg_in_worked_examples(thinner: float, leg: float) -> None:
    """Least leg as read off the table in AISC Design Examples v16.0."""
    assert j2_2_fillet_limits.minimum_leg(t=thinner * INCH) == pytest.approx(leg * INCH, rel=1e-12)


@pytest.mark.parametrize(
    ("edge", "leg"),
    [
        (1 / 8, 1 / 8),  # J2.2b(b)(1): not more than the thickness
        (3 / 16, 3 / 16),
        (0.2499, 0.2499),
        (1 / 4, 3 / 16),  # exactly 1/4 in: Design Examples v16.0, J.1 p. J-2
        (5 / 16, 1 / 4),  # II.C-2 p. IIC-18
        (3 / 8, 5 / 16),  # II.A-23 p. IIA-252
        (1.0, 15 / 16),  # J2.2b(b)(2): the thickness less 1/16 in
    ],
)
def test_maximum_leg_along_an_edge(edge: float, leg: float) -> None:
    """Largest leg along an edge: ANSI/AISC 360-22 J2.2b(b) and AISC Design Examples v16.0."""
    largest, source = largest_edge_leg(edge * INCH)
    assert largest == pytest.approx(leg * INCH, rel=1e-12)
    assert str(source) == f"{EDITION}, J2.2b(b)"


def test_a_quarter_inch_is_one_whatever_its_last_bit() -> None:
    """An edge of 1/4 in is under the rule for 1/4 in and more even when its float falls just short."""
    for edge in (6.35, np.nextafter(6.35, 0), 0.1 * 63.5, 25.4 * (0.1 + 0.15)):
        assert largest_edge_leg(float(edge))[0] == pytest.approx(3 / 16 * INCH, rel=1e-9)


@pytest.mark.parametrize(
    ("leg", "length", "counted"),
    # ANSI/AISC 360-22 J2.2b(c), inches. The 1 in weld with a 1/4 in leg: McCormac & Csernak 5th ed., Example 14-1.
    [(1 / 4, 1.0, 1 / 4), (1 / 4, 3 / 4, 3 / 16), (1 / 4, 6.0, 1 / 4), (5 / 16, 1.0, 1 / 4), (3 / 8, 1.5, 3 / 8)],
)
def test_short_weld_counts_as_a_quarter_of_its_length(leg: float, length: float, counted: float) -> None:
    """A weld shorter than four legs counts as a smaller one: ANSI/AISC 360-22 J2.2b(c)."""
    assert RULES.counted_leg(leg * INCH, length * INCH, SQUARE) == pytest.approx(counted * INCH, rel=1e-12)
    assert RULES.largest_counted_leg(length * INCH, SQUARE) == pytest.approx(length / 4 * INCH, rel=1e-12)
    assert str(RULES.least_length_source) == f"{EDITION}, J2.2b(c)"


@pytest.mark.parametrize(
    ("legs", "factor"),
    [
        (20, 1.0),
        (100, 1.0),  # J2.2b(d)(1): full length up to 100 legs
        (120, 0.96),  # McCormac & Csernak 5th ed., Example 14-1: 1/4 in leg, 30 in
        (144, 0.912),  # AISC Design Examples v16.0, J.1 p. J-3: 3/16 in leg, 27 in
        (200, 0.8),  # Eq. J2-1 by hand: 1.2 - 0.002 x 200
        (300, 0.6),  # either rule: 1.2 - 0.6, and 180/300
        (400, 0.45),  # J2.2b(d)(3): 180 legs of 400
        (900, 0.2),
    ],
)
def test_length_factor(legs: float, factor: float) -> None:
    """Share of an end-loaded weld that counts: ANSI/AISC 360-22 J2.2b(d), Eq. J2-1, and worked examples."""
    for leg in (3 / 16 * INCH, 6.0):
        assert RULES.long_weld_factor(leg, legs * leg, SQUARE, 0.0) == pytest.approx(factor, abs=1e-9)


@pytest.mark.parametrize("legs", [100.0, 300.0])
def test_length_factor_is_continuous(legs: float) -> None:
    """At 100 and at 300 legs the rules on either side give the same share: J2.2b(d)."""
    below, above = (j2_2_fillet_limits.length_factor(L=legs * (1 + sign * 1e-9), w=1.0) for sign in (-1, 1))
    assert below == pytest.approx(above, abs=1e-8)


def test_length_counted_grows_with_length_to_180_legs() -> None:
    """The length that counts never falls as a weld grows longer; beyond 300 legs it stays at 180 of them."""
    legs = np.linspace(1, 1000, 5000)
    counted = legs * j2_2_fillet_limits.length_factor(L=legs, w=np.ones_like(legs))
    assert np.all(np.diff(counted) >= -1e-9)
    np.testing.assert_allclose(counted[legs > 300], 180.0, rtol=1e-12)


def _share(ratio: float) -> float:
    """J2.2b(d) written out again: 1 to 100 legs, Eq. J2-1 to 300, then 180 legs."""
    if ratio <= 100:
        return 1.0
    return 1.2 - 0.002 * ratio if ratio <= 300 else 180 / ratio


def test_long_weld_leg_is_the_root_scipy_finds() -> None:
    """The leg solved from J2.2b(d) is the one a bracketing solver finds for throat times share: scipy brentq."""
    draw = np.random.default_rng(22)
    regions = set()
    for _ in range(600):
        throat, psi = draw.uniform(1, 12), draw.uniform(radians(60), radians(120))
        length, depth = draw.uniform(50, 8000), draw.choice([0.0, draw.uniform(0, 0.9)]) * throat
        worth = lambda z: (z * cos(psi / 2) + depth) * _share(length / z) - throat  # noqa: B023, E731
        expected = brentq(worth, 1e-6, 1e4, xtol=1e-12, rtol=1e-14)
        assert RULES.long_weld_leg(throat, length, psi, depth) == pytest.approx(expected, rel=1e-8)
        regions.add(int(np.searchsorted([100, 300], length / expected)))
    assert regions == {0, 1, 2}


def test_long_weld_leg_round_trip_on_columns() -> None:
    """At the leg found, the throat times the share of the length that counts is the throat needed: J2.2b(d)."""
    draw = np.random.default_rng(23)
    throat, length = draw.uniform(0.5, 15, 4000), draw.uniform(10, 8000, 4000)
    psi, depth = draw.uniform(radians(60), radians(135), 4000), draw.uniform(0, 0.4, 4000)
    leg = np.asarray(RULES.long_weld_leg(throat, length, psi, depth))
    worth = (leg * np.cos(psi / 2) + depth) * RULES.long_weld_factor(leg, length, psi, depth)
    np.testing.assert_allclose(worth, throat, rtol=1e-9)


def test_long_weld_of_the_design_example() -> None:
    """AISC Design Examples v16.0, J.1: 27 in of 3/16 in fillet are worth 0.912 of their throat, so back to 3/16 in."""
    throat = 0.912 * 3 / 16 * INCH / np.sqrt(2)
    leg = RULES.long_weld_leg(float(throat), 27 * INCH, SQUARE, 0.0)
    assert leg == pytest.approx(3 / 16 * INCH, rel=1e-9)
