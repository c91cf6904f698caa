"""Moments of a strip against its stress block, integrated over the throat."""

import numpy as np
import pytest
from scipy.integrate import quad

from truethroat_service.practice import break_test


@pytest.mark.parametrize("throat", [0.8, 4.95, 12.0])
@pytest.mark.parametrize("strength", [355.0, 500.0])
def test_moments_are_those_of_the_stress_block(throat: float, strength: float) -> None:
    """Stress rising evenly to the strength at the skin, and the strength all through: integral of stress times arm."""
    half = throat / 2
    rising, _ = quad(lambda y: strength * y / half * y, -half, half)
    full, _ = quad(lambda y: strength * abs(y), -half, half, points=[0.0])
    assert break_test.first_yield(f_yw=strength, a=throat) == pytest.approx(rising)
    assert break_test.hinge(f_yw=strength, a=throat) == pytest.approx(full)
    assert break_test.breaking(f_uw=strength, a=throat) == pytest.approx(full)
    assert break_test.plate_hinge(f_y=strength, t=throat) == pytest.approx(full)
    assert rising / full == pytest.approx(2 / 3)


def test_plane_strain_is_a_little_under_its_bound() -> None:
    """A strip that cannot narrow yields at 2/sqrt(3) of its strength (von Mises): 15 % more, in whole per cent."""
    assert round(2 / np.sqrt(3) - 1, 2) == pytest.approx(break_test.PLANE_STRAIN - 1)


def test_a_balanced_throat_breaks_as_its_plate_folds() -> None:
    """At the balance both moments are one."""
    throat = float(break_test.balanced_throat(t=10.0, f_y=355.0, f_uw=560.0))
    assert break_test.breaking(f_uw=560.0, a=throat) == pytest.approx(float(break_test.plate_hinge(f_y=355.0, t=10.0)))
