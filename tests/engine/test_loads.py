"""Force on one weld in the axes of its joint, held against vectors. Source of every check, unless said: statics."""

import numpy as np
import pytest

from truethroat_service.engine import loads

COUNT = 500
DRAW = np.random.default_rng(41)
FORCE, THETA = DRAW.uniform(-900, 900, COUNT), DRAW.uniform(0, np.pi / 2, COUNT)
PSI = DRAW.uniform(np.pi / 3, 2 * np.pi / 3, COUNT)


def test_parts_of_a_force_in_the_plane_of_part_2() -> None:
    """Along the weld, off part 1 and towards the weld are the coordinates of one vector in part 2's plane."""
    # Axes: the weld, part 1 towards the weld's side, square off part 1. Part 2 leaves the weld at psi from part 1.
    up_part_2 = np.stack([0 * PSI, np.cos(PSI), np.sin(PSI)], axis=1)
    weld = np.array([1.0, 0.0, 0.0])
    force = FORCE[:, None] * (np.cos(THETA)[:, None] * weld + np.sin(THETA)[:, None] * up_part_2)
    np.testing.assert_allclose(loads.along(f=FORCE, theta=THETA), force @ weld, rtol=1e-12)
    np.testing.assert_allclose(loads.towards_weld(f=FORCE, theta=THETA, psi=PSI), force[:, 1], rtol=1e-12, atol=1e-12)
    np.testing.assert_allclose(loads.off_part_1(f=FORCE, theta=THETA, psi=PSI), force[:, 2], rtol=1e-12)


def test_across_and_resultant_are_lengths_of_the_vector() -> None:
    """The parts put together again give the force, and its angle to the weld's axis."""
    n, t = (loads.off_part_1(f=FORCE, theta=THETA, psi=PSI), loads.towards_weld(f=FORCE, theta=THETA, psi=PSI))
    x, along = loads.across(n=n, t=t), loads.along(f=FORCE, theta=THETA)
    np.testing.assert_allclose(loads.resultant(x=x, l=along), np.abs(FORCE), rtol=1e-12)
    np.testing.assert_allclose(loads.angle_to_axis(x=x, l=along), THETA, rtol=1e-9, atol=1e-12)


@pytest.mark.parametrize(("x", "l", "degrees"), [(0, 5, 0), (0, -5, 0), (5, 0, 90), (5, 5, 45), (5, -5, 45), (0, 0, 0)])
def test_angle_to_the_axis_has_no_sign(x: float, l: float, degrees: float) -> None:  # noqa: E741 - along the weld
    """The angle runs from 0 along the weld to 90 deg across it, whichever way the force points."""
    assert np.degrees(loads.angle_to_axis(x=float(x), l=float(l))) == pytest.approx(degrees)


def test_equal_welds_share_a_force() -> None:
    """161 kip on two welds of 7 in is 11.5 kip/in each (AISC Design Examples v16.0, II.B-1: 161/(2 x 7))."""
    kip, inch = 4448.2216152605, 25.4
    assert loads.force_per_length(P=161 * kip, m=2.0, L=7 * inch) == pytest.approx(11.5 * kip / inch, rel=1e-12)
