"""EN 1993-1-8:2005 clause 4: fillets by both methods, least sizes and lengths, long laps, scope."""

from math import cos, pi, radians, sqrt

import numpy as np
import pytest
from tests.standards.welds import parts_of, pull

from truethroat_service.engine.rounding import SAME
from truethroat_service.engine.rule_set import Groove, PartMetal, WeldMetal
from truethroat_service.standards.en_1993_1_1_2005.rules import EnParts
from truethroat_service.standards.en_1993_1_8_2005 import (
    EDITION,
    parameters,
    s4_1_scope,
    s4_5_1_length,
    s4_5_3_2_directional,
    s4_5_3_3_simplified,
    s4_11_long_joints,
)
from truethroat_service.standards.en_1993_1_8_2005.rules import EnGroove, EnWeld

DIRECTIONAL = EnWeld(directional=True, gamma_m2=1.25)
SIMPLIFIED = EnWeld(directional=False, gamma_m2=1.25)
S235 = WeldMetal(base=360.0, beta_w=0.8)
SQUARE = pi / 2


@pytest.mark.parametrize(
    ("f_u", "beta_w", "strength", "off"),
    [
        # f_u and beta_w of CTE DB SE-A 8.6.2, Table 8.1; the strengths by hand from eq. (4.4).
        (360, 0.80, 207.85, 0.01),
        (430, 0.85, 233.66, 0.01),
        (510, 0.90, 261.73, 0.01),
        # CTICM Metaletech, "Soudures ame-semelle de PRS #4", May 2022: 241 N/mm2 for S355.
        (470, 0.90, 241.0, 0.5),
    ],
)
def test_design_shear_strength(f_u: float, beta_w: float, strength: float, off: float) -> None:
    """Design shear strength of the weld by the simplified method: EN 1993-1-8 eq. (4.4) and published values."""
    value = s4_5_3_3_simplified.shear_strength(f_u=float(f_u), beta_w=beta_w, gamma_M2=1.25)
    assert value == pytest.approx(strength, abs=off)


def test_simplified_throat_of_a_published_girder() -> None:
    """455 kN over 480 mm of lever and two welds of 241 N/mm2 needs a throat of 1.97 mm: CTICM Metaletech, May 2022."""
    per_weld = 455000.0 / (2 * (500 - 20))
    assert s4_5_3_3_simplified.required_throat(f=per_weld, f_vw_d=241.0) == pytest.approx(1.97, abs=0.01)
    throat = SIMPLIFIED.required_throat(pull(per_weld, 0.0), WeldMetal(base=470.0, beta_w=0.9))
    assert throat == pytest.approx(1.97, abs=0.01)


def test_simplified_method_asks_nothing_about_direction() -> None:
    """The same resultant needs the same throat whichever way it points: EN 1993-1-8 4.5.3.3(2)."""
    throats = [SIMPLIFIED.required_throat(pull(700.0, theta, psi), S235) for theta in (0, 40, 90) for psi in (60, 110)]
    assert throats == pytest.approx([throats[0]] * len(throats))
    assert throats[0] == pytest.approx(700.0 / 207.85, rel=1e-4)


def test_directional_throat_of_a_published_bracket() -> None:
    """712 kN across two welds of 100 mm in S235 fill a throat of 14 mm: konstrukcjeinzynierskie.pl, joint A, 2022."""
    assert DIRECTIONAL.required_throat(pull(712000.0 / 200.0), S235) == pytest.approx(14.0, rel=0.002)


@pytest.mark.parametrize(
    ("theta", "factor"),
    # By hand from 4.5.3.2 resolved for an equal-leg square fillet: K = sqrt(3/(2 + cos^2)); 1.2247 across is also
    # Kindmann/Stracke, Verbindungen im Stahl- und Verbundbau 2012, eqs. 5.25 and 5.26.
    [(0, 1.0), (30, 1.0445), (45, 1.0954), (60, 1.1547), (90, 1.2247)],
)
def test_directional_gain(theta: float, factor: float) -> None:
    """A square fillet carries more the more the force runs across it: EN 1993-1-8 4.5.3.2 by hand."""
    along = DIRECTIONAL.required_throat(pull(500.0, 0.0), S235)
    assert along / DIRECTIONAL.required_throat(pull(500.0, theta), S235) == pytest.approx(factor, abs=1e-4)
    assert along == pytest.approx(float(SIMPLIFIED.required_throat(pull(500.0, 0.0), S235)), rel=1e-12)


@pytest.mark.parametrize(("psi", "factor"), [(60, 1.0954), (90, 1.2247), (120, 1.4142)])
def test_skewed_fillet_pulled_across(psi: float, factor: float) -> None:
    """Pulled across in part 2's plane: 1.414 at 120 deg, 1.095 at 60 deg of the strength along (4.5.3.2 by hand)."""
    along = DIRECTIONAL.required_throat(pull(500.0, 0.0, psi), S235)
    assert along / DIRECTIONAL.required_throat(pull(500.0, 90.0, psi), S235) == pytest.approx(factor, abs=1e-4)


def test_components_on_the_throat_are_a_turned_vector() -> None:
    """Normal and shear on the throat are the force resolved square to and along the bisector (statics)."""
    draw = np.random.default_rng(8)
    force, psi = draw.uniform(-900, 900, (400, 2)), draw.uniform(radians(60), radians(120), 400)
    # The first axis is part 1 towards the weld, the second square off part 1; the throat lies along the bisector.
    bisector = np.stack([np.cos(psi / 2), np.sin(psi / 2)], axis=1)
    square_to_it = np.stack([-bisector[:, 1], bisector[:, 0]], axis=1)
    rules = s4_5_3_2_directional
    normal = rules.normal_to_throat(n=force[:, 1], t=force[:, 0], psi=psi)
    shear = rules.shear_across_throat(n=force[:, 1], t=force[:, 0], psi=psi)
    np.testing.assert_allclose(np.asarray(normal), np.sum(force * square_to_it, axis=1), rtol=1e-9, atol=1e-9)
    np.testing.assert_allclose(np.asarray(shear), np.sum(force * bisector, axis=1), rtol=1e-9, atol=1e-9)


def test_normal_stress_condition_governs_pure_normal_stress() -> None:
    """Pure normal stress is held by 0.9 f_u/gamma_M2 (beta_w below 1.11): EN 1993-1-8 4.5.3.2(6) by hand."""
    # Square to the bisector of a square fillet: pulled off part 1 and pushed away from the weld alike.
    load = parts_of(normal=300.0, transverse=-300.0, longitudinal=0.0)
    expected = 300.0 * sqrt(2) * 1.25 / (0.9 * 360.0)
    assert DIRECTIONAL.required_throat(load, S235) == pytest.approx(expected, rel=1e-9)
    # A beta_w of 1.2 (no steel has one) brings the other condition first: sqrt(sigma^2) beta_w.
    heavy = DIRECTIONAL.required_throat(load, WeldMetal(base=360.0, beta_w=1.2))
    assert heavy == pytest.approx(300.0 * sqrt(2) * 1.25 * 1.2 / 360.0, rel=1e-9)


def test_normal_stress_condition_holds_in_compression_too() -> None:
    """The condition takes the size of the normal stress, whichever its sign."""
    load = parts_of(normal=-300.0, transverse=300.0, longitudinal=0.0)
    assert DIRECTIONAL.required_throat(load, S235) == pytest.approx(300.0 * sqrt(2) * 1.25 / (0.9 * 360.0), rel=1e-9)


@pytest.mark.parametrize(("beta_w", "second_governs"), [(0.8, False), (0.56, False), (0.55, True)])
def test_normal_stress_condition_seldom_governs_in_the_plates(beta_w: float, second_governs: bool) -> None:
    """In the plates' planes the second condition needs beta_w below 0.556: EN 1993-1-8 4.5.3.2(6) by hand."""
    throat = DIRECTIONAL.required_throat(pull(400.0), WeldMetal(base=360.0, beta_w=beta_w))
    first, second = 400 * sqrt(2) * beta_w * 1.25 / 360, 400 / sqrt(2) * 1.25 / (0.9 * 360)
    assert (second > first) is second_governs
    assert throat == pytest.approx(max(first, second), rel=1e-9)


@pytest.mark.parametrize(
    ("f_y", "f_u", "beta_w", "share", "off"),
    [
        # Steel Buildings in Europe, Multi-Storey Steel Buildings part 5, 2.2.6, p. 5-11 (two figures printed).
        (235, 360, 0.80, 0.46, 0.005),
        (275, 430, 0.85, 0.48, 0.005),
        (355, 510, 0.90, 0.55, 0.005),
        (460, 550, 1.00, 0.74, 0.005),
        # The same source of rule by hand, a/t = f_y beta_w gamma_M2 / (sqrt 2 f_u), for other values of f_u, beta_w.
        (355, 470, 0.90, 0.6009, 0.0002),
        (420, 520, 1.00, 0.7139, 0.0002),
        (420, 520, 0.88, 0.6282, 0.0002),
        (460, 540, 1.00, 0.7529, 0.0002),
        (460, 540, 0.85, 0.6400, 0.0002),
        (460, 570, 1.00, 0.7133, 0.0002),
    ],
)
def test_full_strength_double_fillet(f_y: float, f_u: float, beta_w: float, share: float, off: float) -> None:
    """Each throat of a double fillet as strong as its plate, over the plate's thickness: Steel Buildings in Europe."""
    thickness = 12.0
    plate = EnParts(gamma_m0=1.0).across(PartMetal(thickness, float(f_y)))
    throat = DIRECTIONAL.required_throat(pull(float(plate) / 2), WeldMetal(base=float(f_u), beta_w=beta_w))
    assert throat / thickness == pytest.approx(share, abs=off)


def test_partial_factor_scales_the_throat() -> None:
    """A national gamma_M2 goes straight into the throat, in either method; 1.25 is recommended: EN 1993-1-8 2.2."""
    assert parameters.GAMMA_M2 == 1.25
    for directional in (True, False):
        low, high = (EnWeld(directional, gamma).required_throat(pull(400.0, 50.0), S235) for gamma in (1.25, 1.5))
        assert high / low == pytest.approx(1.2, rel=1e-12)


def test_throats_of_a_list() -> None:
    """A list of loads gets the throats of its rows, by either method."""
    load = parts_of(normal=1.0, transverse=0.0, longitudinal=0.0)
    columns = type(load)(
        *(np.array([value, 2 * value]) for value in (300.0, 40.0, 200.0, 302.7, 362.8, 0.98, SQUARE / 2))
    )
    for rules in (DIRECTIONAL, SIMPLIFIED):
        whole = np.asarray(rules.required_throat(columns, S235))
        for row in (0, 1):
            values = [float(column[row]) for column in (getattr(columns, name) for name in type(load).__slots__)]
            assert whole[row] == pytest.approx(rules.required_throat(type(load)(*values), S235), rel=1e-12)


def test_parent_metal_is_needed() -> None:
    """The rule cannot be asked without f_u and beta_w; requests are refused before."""
    for metal in (WeldMetal(base=360.0), WeldMetal(beta_w=0.8)):
        with pytest.raises(AssertionError):
            DIRECTIONAL.required_throat(pull(400.0), metal)


# Least sizes and lengths


@pytest.mark.parametrize(("psi", "leg"), [(90, 4.2426), (60, 3.4641), (120, 6.0)])
def test_minimum_throat_as_a_leg(psi: float, leg: float) -> None:
    """A throat of 3 mm, whatever the thickness, as a leg along the face: EN 1993-1-8 4.5.2(2), a = z cos(psi/2)."""
    for thickness in (4.0, 40.0):
        least, source = DIRECTIONAL.minimum_leg(thickness, radians(psi))
        assert least == pytest.approx(leg, abs=5e-5)
        assert str(source) == f"{EDITION}, 4.5.2(2)"


@pytest.mark.parametrize(("throat", "length"), [(3, 30), (5, 30), (6, 36), (10, 60)])
def test_least_length_to_carry_load(throat: float, length: float) -> None:
    """A weld shorter than 30 mm or six throats carries nothing, at that length all of it: EN 1993-1-8 4.5.1(2)."""
    counted = [
        s4_5_1_length.counted_throat(a=float(throat), L=length * share, L_30=30.0, same=SAME)
        for share in (1 - 1e-6, 1 - 1e-11, 1.0, 1.2)
    ]
    assert counted == [0.0, throat, throat, throat]
    leg = throat / cos(SQUARE / 2)
    assert DIRECTIONAL.counted_leg(leg, float(length), SQUARE) == pytest.approx(leg, rel=1e-9)
    assert DIRECTIONAL.counted_leg(leg, length - 0.1, SQUARE) == 0.0


def test_short_weld_of_the_commentary() -> None:
    """46 mm of a = 6 less two craters of one throat are 34 mm, too short for six throats: 4.5.1(1) and (2)."""
    assert s4_5_1_length.counted_throat(a=6.0, L=46.0 - 2 * 6.0, L_30=30.0, same=SAME) == 0.0
    assert s4_5_1_length.LEAST_LENGTH == 30.0
    assert s4_5_1_length.LEAST_THROAT == 3.0


def test_largest_leg_that_counts_on_a_length() -> None:
    """60 mm bear a throat of 10 mm and no more: EN 1993-1-8 4.5.1(2) the other way round."""
    leg = DIRECTIONAL.largest_counted_leg(60.0, SQUARE)
    assert leg == pytest.approx(10.0 * sqrt(2), rel=1e-9)
    assert DIRECTIONAL.counted_leg(leg, 60.0, SQUARE) == pytest.approx(leg, rel=1e-9)
    assert DIRECTIONAL.counted_leg(leg * 1.001, 60.0, SQUARE) == 0.0
    assert str(DIRECTIONAL.least_length_source) == f"{EDITION}, 4.5.1(2)"


@pytest.mark.parametrize(("length", "throat"), [(29.9, 0.0), (30.0 * (1 - 1e-12), 5.0), (30.0, 5.0), (120.0, 20.0)])
def test_no_leg_counts_below_thirty_millimetres(length: float, throat: float) -> None:
    """Below 30 mm no throat bears load, from there a sixth of the length does: EN 1993-1-8 4.5.1(2)."""
    assert DIRECTIONAL.largest_counted_leg(length, SQUARE) == pytest.approx(throat * sqrt(2), rel=1e-9)


# Long laps


@pytest.mark.parametrize(
    ("length", "throat", "factor"),
    # By hand from eq. (4.9), from memory: 120 and 150 throats are not long; 250, 300 and 750 are. No lower bound.
    [(600, 5, 1.0), (750, 5, 1.0), (1000, 4, 0.8667), (1500, 5, 0.8), (3000, 4, 0.2)],
)
def test_long_lap_factor(length: float, throat: float, factor: float) -> None:
    """Reduction of a long lap: EN 1993-1-8 4.11(3), eq. (4.9), by hand."""
    assert s4_11_long_joints.length_factor(L=float(length), a=float(throat)) == pytest.approx(factor, abs=1e-4)
    leg = throat * sqrt(2)
    assert DIRECTIONAL.long_weld_factor(leg, float(length), SQUARE, 0.0) == pytest.approx(factor, abs=1e-4)
    assert DIRECTIONAL.long_weld_factor(leg - sqrt(2), float(length), SQUARE, 1.0) == pytest.approx(factor, abs=1e-4)


def test_long_lap_leg_round_trip() -> None:
    """At the leg found, throat and penetration times the factor are the throat needed: 4.11(3) written out again."""
    draw = np.random.default_rng(11)
    throat, length, psi = draw.uniform(1, 15, 3000), draw.uniform(50, 9000, 3000), draw.uniform(1.05, 2.09, 3000)
    depth = draw.uniform(0, 0.9, 3000) * throat
    leg = np.asarray(DIRECTIONAL.long_weld_leg(throat, length, psi, depth))
    whole = leg * np.cos(psi / 2) + depth
    factor = np.minimum(1.0, 1.2 - 0.2 * length / (150 * whole))
    np.testing.assert_allclose(whole * factor, throat, rtol=1e-9)
    assert {bool(long) for long in factor < 1.0} == {True, False}


# Scope and grooves


def test_scope() -> None:
    """4 mm and more, 60 to 120 deg, up to S460: EN 1993-1-8 4.1(1) and 4.3.2.1; the steel from memory."""
    assert s4_1_scope.LEAST_THICKNESS == 4.0
    assert np.degrees([s4_1_scope.LEAST_ANGLE, s4_1_scope.LARGEST_ANGLE]) == pytest.approx([60.0, 120.0])
    assert s4_1_scope.LARGEST_YIELD == 460.0
    limits = (s4_1_scope.THICKNESS, s4_1_scope.ANGLE, s4_1_scope.STEEL, s4_1_scope.END_LOADED, s4_1_scope.FILLER)
    assert all(limit.text for limit in limits)
    assert [limit.source.mark for limit in limits] == ["seen", "seen", "from memory", "from memory", "seen"]


@pytest.mark.parametrize("form", ["single-bevel", "single-v", "single-j", "single-u"])
def test_partial_penetration_groove(form: str) -> None:
    """No fixed deduction, a fillet's least throat and no credit for the face: EN 1993-1-8 4.7.2, the depth achieved."""
    rules = EnGroove()
    taken, source = rules.deduction(Groove(form, radians(30), None, None))
    assert taken == 0.0
    assert str(source) == f"{EDITION}, 4.7.2"
    # 4.7.2 resists it as a fillet of deep penetration, and 4.5.2(2) has no fillet under 3 mm.
    least = rules.minimum_throat(12.0)
    assert least is not None
    assert least[0] == 3.0
    assert rules.face_counts is False
