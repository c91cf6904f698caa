"""Distortion formulas against what they stand for: a shrunk section, a bent member, an inch converted once."""

from math import atan, cos, degrees

import numpy as np
import pytest

from truethroat_service.practice import shrinkage, warping


@pytest.mark.parametrize(("face", "root", "depth"), [(14.5, 3.0, 10.0), (30.0, 0.0, 20.0), (8.0, 8.0, 6.0)])
def test_a_wedge_turns_as_its_edges_close(face: float, root: float, depth: float) -> None:
    """A trapezoid whose widths each shrink by a tenth turns its sides by the difference over the depth (drawn here)."""
    turned = atan((0.1 * face - 0.1 * root) / depth)
    found = warping.wedge_angle(W_f=face, W_r=root, d=depth)
    assert found == pytest.approx(turned, rel=0.01)
    # Its mean width is its area over the depth, and shrinks by a tenth too: Blodgett's rule.
    area = (face + root) / 2 * depth
    assert shrinkage.tenth_of_mean_width(A=area, t=depth) == pytest.approx((0.1 * face + 0.1 * root) / 2)


def test_an_evenly_bent_member_is_an_arc() -> None:
    """Sagitta of an arc of curvature F d/(E I): r (1 - cos(L/(2r))), for small bows L^2/(8 r)."""
    stress, area, d, length, modulus, second = 60.0, 4000.0, 80.0, 4000.0, 210_000.0, 2e7
    radius = modulus * second / (stress * area * d)
    arc = radius * (1 - cos(length / (2 * radius)))
    found = warping.bow_by_stress(sigma=stress, A_p=area, d=d, L=length, E=modulus, I=second)
    assert found == pytest.approx(arc, rel=1e-4)
    # The same bow by the strain that the stress makes.
    strain = stress / modulus
    assert warping.bow_by_strain(eps=strain, A_p=area, d=d, L=length, I=second) == pytest.approx(arc, rel=1e-4)


@pytest.mark.parametrize(("width", "leg", "thickness"), [(8.0, 0.25, 0.5), (12.0, 0.375, 0.75), (6.0, 3 / 16, 0.25)])
def test_inch_formulas_are_converted_once(width: float, leg: float, thickness: float) -> None:
    """Blodgett's 0.02 W w^1.3/t^2 and King's 0.12 I L/(10^5 t), worked in inches, give the same in millimetres."""
    inches = 0.02 * width * leg**1.3 / thickness**2
    found = warping.edge_lift(c_B=warping.FLANGE_COEFFICIENT, W=25.4 * width, z=25.4 * leg, t=25.4 * thickness)
    assert found == pytest.approx(25.4 * inches, rel=1e-12)
    assert pytest.approx(0.1925, abs=5e-5) == warping.FLANGE_COEFFICIENT
    along = 0.12 * 200.0 * width / (1e5 * thickness)
    king = shrinkage.by_current(c_K=shrinkage.KING_COEFFICIENT, I=200.0, L=25.4 * width, t=25.4 * thickness)
    assert king == pytest.approx(25.4 * along, rel=1e-12)


@pytest.mark.parametrize("thickness", [0.25, 0.5, 1.0])
def test_homogeneous_formulas_need_no_conversion(thickness: float) -> None:
    """0.2 Aw/t, 0.025 Aw/Ap and 0.005 Aw d L^2/I: figures all in inches give inches."""
    area, length, section, second, off = 0.155, 100.0, 6.0, 50.0, 3.0
    inch, square = 25.4, 25.4**2
    assert shrinkage.fifth_with_opening(A=area * square, t=thickness * inch, g=0.125 * inch) == pytest.approx(
        inch * (0.2 * area / thickness + 0.05 * 0.125)
    )
    assert shrinkage.by_cross_sections(
        n=1.0, r_w=1.0, A=area * square, L=length * inch, A_p=section * square
    ) == pytest.approx(inch * 0.025 * area / section * length)
    assert warping.bow_by_area(
        n=1.0, r_w=1.0, A=area * square, d=off * inch, L=length * inch, I=second * inch**4
    ) == pytest.approx(inch * 0.005 * area * off * length**2 / second)


def test_flange_turns_by_half_its_lift() -> None:
    """Each half of a flange turns by its edge's lift over half the width: 2/W of it."""
    drawn = {"c_B": warping.FLANGE_COEFFICIENT, "z": 6.0, "t": 12.0}
    lift = warping.edge_lift(W=200.0, **drawn)
    assert warping.flange_angle(**drawn) == pytest.approx(float(lift) / 100.0)
    assert degrees(float(warping.flange_angle(**drawn))) < 2.0


def test_restraint_can_only_lessen_an_angle() -> None:
    """The stiffer the plate against the weld's own moment, the less of the free angle is left."""
    stiffness = np.array([float(warping.plate_stiffness(E=210_000.0, t=t, nu=0.3)) for t in (6.0, 10.0, 20.0)])
    angles = warping.restrained_angle(phi_0=0.03, R=stiffness, l=500.0, C=40_000.0)
    assert np.all(np.diff(angles) < 0)
    assert np.all(angles < 0.03)
