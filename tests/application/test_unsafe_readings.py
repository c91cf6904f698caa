"""Readings of a rule that would be unsafe the other way, each worked by hand."""

from __future__ import annotations

from dataclasses import replace
from math import cos, pi, radians, sin, sqrt
from typing import Any

import pytest
from tests.application.asked import as_welded, fillet_size, groove_size, weld_group
from tests.application.joints import mm

from truethroat_service.application.as_welded.request import FilletAsWelded, Required
from truethroat_service.application.bevel_depth import bevel_depth
from truethroat_service.application.bevel_depth.request import BevelDepthRequest
from truethroat_service.application.break_test import break_test
from truethroat_service.application.break_test.request import BreakTestRequest, Plates, PreparedDepth, WeldStrength
from truethroat_service.application.core.faults import Refused
from truethroat_service.application.fillet_size.request import (
    BalancedForce,
    ConcentricForce,
    FilletSizeRequest,
    Joint,
    SharedForce,
)
from truethroat_service.application.grind_allowance import grind_allowance
from truethroat_service.application.grind_allowance.request import GrindAllowanceRequest
from truethroat_service.application.groove_size.request import (
    GrooveJoint,
    GrooveSizeRequest,
    PartialWeld,
    TeeButt,
)
from truethroat_service.application.joints.loads import ForceComponents
from truethroat_service.application.joints.metals import Filler, Part
from truethroat_service.application.joints.rule_sets import rule_set
from truethroat_service.application.joints.seams import Finish, Penetration, Preparation, Seam
from truethroat_service.application.weld_group.request import GroupLoad, Vector, WeldGroupRequest
from truethroat_service.engine.rule_set import Intermittent, PartMetal
from truethroat_service.practice.weld_patterns import line

PSI = 6.894757 / 1000
E70 = 0.75 * 0.60 * 70_000 * PSI
"""Design shear of E70 weld metal, MPa (AISC 360-22 Table J2.5)."""

AISC = FilletSizeRequest(
    rule_set="aisc-360-22-lrfd",
    joint=Joint("tee"),
    parts=(Part(12.0, "A36"), Part(12.0, "A36")),
    basis="load",
    load=SharedForce(300e3, 200.0, 0.0),
    filler=Filler("E70"),
    size_step=0.01,
)
EN = FilletSizeRequest(
    rule_set="en-1993-1-8-2005-simplified",
    joint=Joint("tee"),
    parts=(Part(12.0, "S355"), Part(12.0, "S355")),
    basis="load",
    load=SharedForce(82e3, 40.0, 0.0),
)


@pytest.mark.parametrize("angle", [60.0, 120.0])
def test_a_gap_under_skewed_plates_takes_more_of_a_leg_along_the_face(angle: float) -> None:
    """By hand: 1500 N/mm take 6.907 mm of throat; D1.1's leg is z sin(psi), so a gap of 4 mm takes 4/sin(psi) of z."""
    sized = fillet_size(replace(AISC, joint=Joint("tee", angle=radians(angle), root_gap=4.0)))
    throat = 1500.0 / E70
    leg = throat / sin(pi / 2 - radians(angle) / 2) + 4.0 / sin(radians(angle))
    assert mm(sized["specify"]["leg"]) == pytest.approx(leg, abs=0.011)
    assert mm(sized["specify"]["leg"]) >= leg


def test_a_gap_under_skewed_plates_takes_more_of_a_gauged_leg() -> None:
    """By hand: 11 mm at 120 deg keep 11 - 3/sin(120 deg) = 7.54 mm over a gap of 3 mm, under the 8 mm asked for."""
    readings = FilletAsWelded(
        legs=(11.0, 11.0),
        angle=radians(120.0),
        root_gap=3.0,
        thickness=(12.0, 12.0),
        required=Required(leg=8.0),
        quality="iso-5817-b",
        hollow=0.0,
    )
    answer = as_welded(readings)
    assert answer["verdict"] == "short"
    assert mm(answer["size"]) == pytest.approx(11 - 3 / sin(radians(120)))


def test_penetration_counts_in_the_throat_that_a_length_goes_by() -> None:
    """By hand: 4.5 mm and 4 proven are 8.5 mm of throat, six of which are 51 mm: 40 mm may carry nothing (4.5.1(2)).

    The largest throat of 40 mm is 6.67, and 2050 N/mm need 2050/(490/(sqrt(3) 0.9 1.25)) = 8.15.
    """
    proven = replace(EN, penetration=Penetration(4.0, "proven"))
    answer = fillet_size(proven)
    assert (answer["verdict"], answer["governs"]) == ("cannot-be-reached", "minimum-length")
    longer = replace(proven, load=SharedForce(164e3, 80.0, 0.0))
    assert fillet_size(longer)["verdict"] == "enough"


def test_a_hollow_section_is_as_strong_as_its_design_wall() -> None:
    """By hand: 1/4 in of A500 Grade C is designed with 0.93 * 6.35 = 5.906 mm (AISC 360-22 B4.2).

    0.90 * 50 ksi and 0.75 * 62 ksi are 310.3 and 320.6 MPa, so 1832 N/mm, and 1940 are too many.
    """
    told = replace(
        AISC,
        parts=(Part(25.4, "A992"), Part(6.35, "A500-C", wall="nominal")),
        load=SharedForce(194e3, 100.0, pi / 2),
        held_from_turning=True,
    )
    answer = fillet_size(told)
    assert answer["strength"]["base_metal"][1]["value"] == pytest.approx(0.90 * 50_000 * PSI * 0.93 * 6.35, rel=1e-6)
    assert (answer["verdict"], answer["governs"]) == ("cannot-be-reached", "base-metal")
    assert "design-wall" in {caution["code"] for caution in answer["cautions"]}
    # Where the thickness sent is the design wall already, nothing is taken off it, and the answer says so.
    plain = fillet_size(replace(told, parts=(Part(25.4, "A992"), Part(5.906, "A500-C"))))
    assert plain["strength"]["base_metal"][1]["value"] == pytest.approx(0.90 * 50_000 * PSI * 5.906, rel=1e-6)
    assert "design-wall" in {caution["code"] for caution in plain["cautions"]}
    with pytest.raises(Refused, match="applies to a hollow section"):
        fillet_size(replace(told, parts=(Part(25.4, "A992", wall="nominal"), Part(6.35, "A500-C"))))


def test_parts_of_one_tensile_strength_go_by_the_higher_beta_w() -> None:
    """By hand: S235 and S275MH both have 360 MPa; 0.85 of S275 needs 1000/(360/(sqrt(3) 0.85 1.25)) = 5.11 mm."""
    load = SharedForce(200e3, 200.0, 0.0)
    for parts in ((Part(10.0, "S235"), Part(10.0, "S275MH")), (Part(10.0, "S275MH"), Part(10.0, "S235"))):
        required = fillet_size(replace(EN, parts=parts, load=load))["required"]
        assert mm(required["throat"]) == pytest.approx(1000.0 * sqrt(3) * 0.85 * 1.25 / 360.0)


def test_penetration_ends_where_the_part_does() -> None:
    """A depth over the thinner part is refused."""
    with pytest.raises(Refused, match="must be at most the 12 mm of the thinner part"):
        fillet_size(replace(EN, penetration=Penetration(12.1, "proven")))


def test_a_t_butt_counts_as_full_strength_only_with_the_filler_of_a_full_penetration() -> None:
    """EN 1993-1-8 4.7.3(1) counts it as 4.7.1, which wants a filler metal no weaker than the part: 490 MPa of S355."""
    tee = GrooveSizeRequest(
        rule_set="en-1993-1-8-2005-simplified",
        joint=GrooveJoint("tee"),
        parts=(Part(20.0, "S355"), Part(20.0, "S355")),
        weld=TeeButt("tee-butt", (10.0, 10.0), 2.0),
        basis="full-strength",
        filler=Filler(tensile_strength=400.0),
    )
    with pytest.raises(Refused, match="must have the 490 MPa of the part or more"):
        groove_size(tee)
    assert groove_size(replace(tee, filler=Filler(tensile_strength=500.0)))["verdict"] == "enough"
    unnamed = groove_size(replace(tee, filler=None))
    assert "matching-filler-assumed" in {caution["code"] for caution in unnamed["cautions"]}


@pytest.mark.parametrize(("base", "shortest"), [(AISC, 20.0), (EN, 30.0)])
def test_balanced_welds_are_no_shorter_than_a_weld_may_be(base: FilletSizeRequest, shortest: float) -> None:
    """By hand: four legs of 5 mm (AISC 360-22 J2.2b(c)), or 30 mm (EN 1993-1-8 4.5.1(2)); the other is 4 times as long.

    The centroid lies at a fifth of the width, so the first weld takes four times the force of the second.
    """
    request = replace(
        base,
        joint=Joint("lap", sides=2),
        load=BalancedForce(60e3, 200.0, 100.0, 20.0),
        size_step=1.0 if base is AISC else None,
    )
    answer = fillet_size(request)
    first, second = (mm(length) for length in answer["balance"]["least_lengths"])
    assert second == pytest.approx(shortest)
    assert first == pytest.approx(4 * shortest)
    assert any("least length" in reason for reason in answer["reasons"])


def test_a_cap_over_a_bevel_counts_no_further_than_its_toe() -> None:
    """Statics: a bevel's root lies under its uncut side, so 3 mm of depth are 3 mm to that toe under any cap."""
    corner = GrindAllowanceRequest(
        Seam("closed-corner", (6.0, 6.0)), 5.0, preparation=Preparation(3.0), face_height=2.0
    )
    answer = grind_allowance(corner).wire()
    assert (answer["verdict"], mm(answer["budget"]["as_welded"])) == ("short", pytest.approx(3.0))
    assert "face-width-not-given" in {caution["code"] for caution in answer["cautions"]}


def test_a_cap_over_a_square_edge_says_how_wide_its_bead_is() -> None:
    """Statics: 2 mm fused under 3 mm of face make 5 mm where each toe is sqrt(25 - 4) from the root line."""
    seam = GrindAllowanceRequest(
        Seam("butt", (8.0, 8.0)), 5.0, penetration=Penetration(2.0, "measured"), face_height=3.0
    )
    answer = grind_allowance(seam).wire()
    width = 2.0 * sqrt(21.0)
    assert (answer["verdict"], mm(answer["least_face_width"])) == ("enough", pytest.approx(width))
    assert grind_allowance(replace(seam, face_width=width)).wire()["verdict"] == "enough"
    assert grind_allowance(replace(seam, face_width=width - 0.1)).wire()["verdict"] == "short"


@pytest.mark.parametrize(("face", "verdict"), [(1.0, "enough-on-trust"), (4.0, "enough")])
def test_a_throat_that_rests_on_trust_is_never_enough(face: float, verdict: str) -> None:
    """Statics: a square corner has its face, 1 or 4 mm, and 3 mm that nobody vouches for; 4 is needed."""
    corner = GrindAllowanceRequest(
        Seam("closed-corner", (6.0, 6.0)), 4.0, penetration=Penetration(3.0, "assumed"), face_height=face
    )
    answer = grind_allowance(corner).wire()
    assert (answer["verdict"], answer["physical"]["verdict"]) == (verdict, "enough")
    assert mm(answer["budget"]["as_welded"]) == pytest.approx(face)
    # What may come off rests on no assumption: nothing of the face is to spare.
    assert mm(answer["allowance"]) == pytest.approx(0.0)


def test_no_bevel_is_offered_that_the_blend_cuts_away() -> None:
    """Geometry: a 6 mm radius leaves 6 - sqrt(2) (6 - 3) = 1.757 mm in a 3 mm corner, however deep its groove is."""
    corner = GrindAllowanceRequest(
        Seam("closed-corner", (3.0, 3.0)),
        2.0,
        Finish("radius", 6.0),
        penetration=Penetration(1.0, "measured"),
        face_height=0.0,
    )
    assert 6.0 - sqrt(2.0) * 3.0 < 2.0
    assert [remedy["do"] for remedy in grind_allowance(corner).wire()["remedies"]] == ["weld-second-side"]


@pytest.mark.parametrize(("face", "below"), [(2.0, 4.0), (7.0, 0.0)])
def test_an_allowance_says_how_much_of_it_is_plate(face: float, below: float) -> None:
    """Statics: 12 mm of fusion and a face of 2 mm keep 8 mm when 6 come off, 4 of them plate; over 1/32 in is much."""
    butt = GrindAllowanceRequest(
        Seam("butt", (12.0, 12.0)),
        8.0 if below else 12.0,
        Finish("flush"),
        penetration=Penetration(12.0, "measured"),
        face_height=face,
    )
    answer = grind_allowance(butt).wire()
    assert mm(answer["allowance"]) == pytest.approx(face + below)
    assert mm(answer["allowance_below_plane"]) == pytest.approx(below)
    assert ("allowance-thins" in {caution["code"] for caution in answer["cautions"]}) == (below > 25.4 / 32)


def test_a_bevel_is_as_deep_as_thin_parts_need() -> None:
    """Geometry: a 9 mm blend in a part of 6 less 0.3 mm leaves 5 mm where the root is 9 - sqrt(16 - 3.3^2) deep."""
    request = BevelDepthRequest(
        Seam("closed-corner", (10.0, 6.0), thickness_tolerance=0.3), 5.0, Finish("radius", 9.0), depth_step=0.01
    )
    depth = mm(bevel_depth(request).wire()["depth"])
    needed = 9.0 - sqrt(16.0 - 3.3**2)
    assert needed <= depth < needed + 0.011


def test_no_bevel_keeps_a_throat_that_thin_parts_lack() -> None:
    """Statics: plates of 6 mm less 0.5 have 5.5 mm; 5.8 is refused, and so is 5.4 with 0.2 mm ground off the face."""
    butt = Seam("butt", (6.0, 6.0), thickness_tolerance=0.5)
    with pytest.raises(Refused, match=r"5\.5 mm of the thinner part"):
        bevel_depth(BevelDepthRequest(butt, 5.8, minimum_land=0.0))
    answer = bevel_depth(BevelDepthRequest(butt, 5.4, Finish("flush", below=0.2), minimum_land=0.0)).wire()
    assert (answer["verdict"], answer["depth"], answer["alternatives"]) == ("cannot-be-reached", None, [])


def test_no_edge_seam_is_thicker_than_its_thinner_plate() -> None:
    """Statics: two sheets of 1.5 mm part before a throat of 5 mm between them does."""
    with pytest.raises(Refused, match=r"1\.5 mm of the thinner part"):
        bevel_depth(BevelDepthRequest(Seam("edge", (1.5, 1.5)), 5.0, penetration=Penetration(5.0, "proven")))


def test_a_drawing_calls_for_the_throat_that_stays() -> None:
    """Statics: 5 mm kept 1 mm below the face take a bevel of 6 mm, of which grinding leaves 5."""
    answer = bevel_depth(BevelDepthRequest(Seam("butt", (12.0, 12.0)), 5.0, Finish("flush", below=1.0))).wire()
    assert answer["callout"] == {
        "iso_2553": "s 5 mm, single bevel, 45 deg, prepared 6 mm deep, ground flush and 1 mm below",
        "aws_a2_4": "6 mm (5 mm) single bevel groove, 45 deg, ground flush and 1 mm below",
    }


def test_the_worst_overlap_may_be_the_smaller_one() -> None:
    """Geometry: 3 mm of fusion on an overlap of 6 +- 2 in 12 x 3 mm, less 1.5 hollow, leaves 33/hypot(8, 3) - 1.5."""
    corner = GrindAllowanceRequest(
        Seam("half-open-corner", (12.0, 3.0), overlap=6.0, overlap_tolerance=2.0),
        2.6,
        penetration=Penetration(3.0, "proven"),
        hollow=1.5,
    )
    answer = grind_allowance(corner).wire()
    assert mm(answer["budget"]["remaining_worst_case"]) == pytest.approx(33.0 / sqrt(73.0) - 1.5)
    assert answer["verdict"] == "short"


@pytest.mark.parametrize(("depth", "fused"), [(3.0, 0.0), (0.0, 3.0)])
def test_a_coupon_with_a_bevel_has_no_throat_in_its_cap(depth: float, fused: float) -> None:
    """Statics: 3 mm deep under a face of 1 mm, a bevel has a throat of 3 mm and a square edge of 4."""
    coupon = BreakTestRequest(
        "outside-corner",
        Seam("closed-corner", (6.0, 6.0)),
        WeldStrength(420.0, 500.0),
        Plates(235.0),
        length=100.0,
        lever=300.0,
        preparation=PreparedDepth(depth),
        penetration=Penetration(fused, "measured"),
        face_height=1.0,
    )
    answer = break_test(coupon).wire()
    throat = 3.0 if depth else 4.0
    assert mm(answer["throat"]["nominal"]) == pytest.approx(throat)
    width = answer["least_face_width"]
    assert width is None if depth else mm(width) == pytest.approx(2.0 * sqrt(16.0 - 9.0))


def across_tee(rules: str, material: str, thickness: tuple[float, float], load: SharedForce) -> FilletSizeRequest:
    """Tee of two welds under a force across or askew."""
    return FilletSizeRequest(
        rule_set=rules,
        joint=Joint("tee", sides=2),
        parts=(Part(thickness[0], material), Part(thickness[1], material)),
        basis="load",
        load=load,
        filler={"aisc-360-22-lrfd": Filler("E70"), "en-1999-1-1-2007": Filler("ER5356")}.get(rules),
    )


def test_shear_and_tension_of_a_part_count_together_by_aisc() -> None:
    """190 kip at 56 deg on 10 in of 1/2 in A36 (Manual Eq. 9-1, as in its Design Example J.2B).

    15.752 kip/in across against 0.90*36*0.5 = 16.2 is n = 0.9723, and 10.625 along against 0.6*36*0.5 = 10.8 is
    v = 0.9838; n^2 + v^4 = 0.9454 + 0.9367 = 1.882, over 1. Of the load, U^2 = (n^2 + sqrt(n^4 + 4 v^4))/2 is used.
    """
    kip = 4448.2216152605
    request = across_tee("aisc-360-22-lrfd", "A36", (25.4, 12.7), SharedForce(190 * kip, 254.0, radians(56)))
    answer = fillet_size(request)
    assert (answer["verdict"], answer["governs"]) == ("cannot-be-reached", "base-metal")
    n, v = 19.0 * sin(radians(56)) / 16.2, 19.0 * sin(radians(34)) / 10.8
    used = sqrt((n**2 + sqrt(n**4 + 4 * v**4)) / 2)
    strength = 9.5 * kip / 25.4 / used
    assert answer["strength"]["base_metal"][1]["value"] == pytest.approx(strength, rel=1e-3)
    # At 1/U of the load n^2 + v^4 is 1: the part holds that much and no more.
    assert (n / used) ** 2 + (v / used) ** 4 == pytest.approx(1.0)
    for share, verdict in ((0.99 / used, "enough"), (1.01 / used, "cannot-be-reached")):
        load = SharedForce(190 * kip * share, 254.0, radians(56))
        assert fillet_size(replace(request, load=load))["verdict"] == verdict


def test_shear_and_tension_of_a_part_count_together_by_en() -> None:
    """541 kN at 60 deg on 200 mm of 10 mm S235 (EN 1993-1-1 6.2.1(5)).

    2343 N/mm across against 2350 and 1352 along against 2350/sqrt(3) = 1357 make sqrt(0.997^2 + 0.997^2) = 1.41.
    """
    directional = "en-1993-1-8-2005-directional"
    answer = fillet_size(across_tee(directional, "S235", (20.0, 10.0), SharedForce(541e3, 200.0, radians(60))))
    assert (answer["verdict"], answer["governs"]) == ("cannot-be-reached", "base-metal")
    assert answer["strength"]["base_metal"][1]["value"] == pytest.approx(541e3 / 400 / 1.4097, rel=1e-3)


def test_a_shear_over_half_of_the_resistance_takes_strength_off() -> None:
    """3550 N/mm of tension and 2040 of shear with 10 mm of S355 (EN 1993-1-1 6.2.10(3)).

    By hand: v = 0.95 of V_pl leaves 1 - (2*0.95 - 1)^2 = 0.19 of the yield strength for tension, less than the
    sqrt(1 - 0.95^2) = 0.312 of 6.2.1(5).
    """
    parts = rule_set("en-1993-1-8-2005-directional").parts
    assert parts is not None
    plate = PartMetal(10.0, 355.0, 490.0)
    shear = 0.95 * 3550 / sqrt(3)
    assert parts.together(plate, shear, 0.19 * 3550) == pytest.approx(1.0)
    # The equivalent stress is the stricter one up to there: at half, sqrt(1 - 0.25) of the tension is left.
    assert parts.together(plate, 0.5 * 3550 / sqrt(3), sqrt(0.75) * 3550) == pytest.approx(1.0)
    assert parts.together(plate, 0.0, -3550.0) == pytest.approx(1.0)


def test_shear_and_tension_of_a_softened_part_count_together() -> None:
    """200 kN at 60 deg on 200 mm of 6 mm 6082-T6 (EN 1999-1-1 8.6.3.4 at the toe).

    By hand: each weld has 3 mm: sigma 144.3 and tau 83.3 MPa, sqrt(144.3^2 + 3*83.3^2) = 204.1 of 185/1.25 = 148.
    """
    load = SharedForce(200e3, 200.0, radians(60))
    answer = fillet_size(across_tee("en-1999-1-1-2007", "6082-T6", (20.0, 6.0), load))
    assert (answer["verdict"], answer["governs"]) == ("cannot-be-reached", "base-metal")
    assert answer["strength"]["base_metal"][1]["value"] == pytest.approx(500.0 / (204.1 / 148), rel=1e-3)


def test_a_pull_off_part_1_shears_it_through_its_thickness() -> None:
    """160 kip across on 10 in of 1/4 in A36 (AISC 360-22 J4.2): 8 kip/in a weld against 0.6*36*0.25 = 5.4 is 148 %."""
    kip = 4448.2216152605
    request = across_tee("aisc-360-22-lrfd", "A36", (6.35, 19.05), SharedForce(160 * kip, 254.0, pi / 2))
    answer = fillet_size(request)
    assert (answer["verdict"], answer["governs"]) == ("cannot-be-reached", "base-metal")
    assert answer["strength"]["base_metal"][0]["value"] == pytest.approx(5.4 * kip / 25.4, rel=1e-4)
    assert "bending-of-part-1" in {caution["code"] for caution in answer["cautions"]}
    # A plate behind part 1 takes the pull from it.
    stiffened = fillet_size(replace(request, joint=Joint("tee", sides=2, stiffened_behind=True)))
    assert stiffened["verdict"] == "enough"
    assert "bending-of-part-1" not in {caution["code"] for caution in stiffened["cautions"]}
    with pytest.raises(Refused):
        fillet_size(replace(request, joint=Joint("lap", sides=2, stiffened_behind=True)))


def test_two_grades_are_pulled_by_the_lower_tensile_strength() -> None:
    """S355 with S460N, 4000 N/mm square to a double-V (EN 1993-1-8 4.5.3.2(6), (7)): 4000*1.25/(0.9*490) = 11.338 mm.

    S460N has the lower f_u/beta_w, 540/1.0 against 490/0.9, and S355 the lower f_u.
    """
    request = GrooveSizeRequest(
        rule_set="en-1993-1-8-2005-directional",
        joint=GrooveJoint("butt"),
        parts=(Part(20.0, "S355"), Part(20.0, "S460N")),
        weld=PartialWeld("partial", "double-v"),
        basis="load",
        load=ForceComponents(4000.0),
    )
    assert mm(groove_size(request)["required"]["throat"]) == pytest.approx(4000 * 1.25 / (0.9 * 490), rel=1e-6)
    # A fillet pulled square to its throat: n = 1500 and t = -1500 at 90 deg are 1500*sqrt(2).
    fillet = FilletSizeRequest(
        rule_set="en-1993-1-8-2005-directional",
        joint=Joint("tee", stiffened_behind=True),
        parts=request.parts,
        basis="load",
        load=ForceComponents(1500.0, -1500.0),
        held_from_turning=True,
    )
    assert mm(fillet_size(fillet)["required"]["throat"]) == pytest.approx(1500 * sqrt(2) * 1.25 / (0.9 * 490), rel=1e-6)


def test_a_skewed_tee_keeps_its_least_throat_on_both_sides() -> None:
    """3 mm of throat between plates at 105 deg take 3/cos(52.5 deg) = 4.928 mm of leg (EN 1993-1-8 4.5.2(2))."""
    request = FilletSizeRequest(
        rule_set="en-1993-1-8-2005-directional",
        joint=Joint("tee", radians(75), sides=2),
        parts=(Part(10.0, "S355"), Part(10.0, "S355")),
        basis="load",
        load=ForceComponents(61.0, 79.0, 0.0, 200.0),
        size_by="leg",
        size_step=0.1,
    )
    answer = fillet_size(request)
    assert mm(answer["minimum"]["leg"]) == pytest.approx(3.0 / cos(radians(52.5)))
    assert mm(answer["minimum"]["throat"]) == pytest.approx(3.0)
    assert mm(answer["specify"]["leg"]) == pytest.approx(5.0)


def test_the_shortest_staggered_segment_still_keeps_the_gap() -> None:
    """Gap of 130 mm, nearer gap of 15 mm at most (2.5*6 mm, EN 1993-1-8 4.3.2.2): (130 - l)/2 = 15 at l = 100 mm."""
    run = Intermittent(100.0, "shear", 130.0, staggered=True, member="stiffener", widths=(60.0, 300.0))
    request = FilletSizeRequest(
        rule_set="en-1993-1-8-2005-directional",
        joint=Joint("tee", sides=2),
        parts=(Part(15.0, "S355"), Part(6.0, "S355")),
        basis="load",
        load=ForceComponents(0.0, 0.0, 100.0),
        intermittent=run,
    )
    answer = fillet_size(request)
    assert answer["verdict"] == "enough"
    assert mm(answer["intermittent"]["shortest_segment"]) == pytest.approx(100.0)


@pytest.mark.parametrize("made_by", [None, "mechanized"])
def test_a_bevel_counts_proven_penetration_by_the_root_pass_that_aisc_asks_for(made_by: Any) -> None:
    """AISC 360-22 J2.1a: 2 mm proven spare 2 of 8 mm, and 1/8 in of Table J2.1, where a machine makes the root."""
    asked = BevelDepthRequest(
        Seam("butt", (20.0, 20.0)),
        8.0,
        groove_angle=radians(45.0),
        penetration=Penetration(2.0, "proven"),
        depth_step=0.01,
        rule_set="aisc-360-22-lrfd",
        root_pass=made_by,
        process="GMAW",
        position="3G",
    )
    answer = bevel_depth(asked).wire()
    by_hand = 8.0 - 2.0 if made_by else 8.0 + 25.4 / 8
    assert by_hand - 1e-9 <= mm(answer["depth"]) < by_hand + 0.011
    assert ("penetration-not-counted" in {caution["code"] for caution in answer["cautions"]}) == (made_by is None)


ROBOT: dict[str, Any] = {"root_pass": "robotic"}
KIP, INCH = 4448.2216152605, 25.4
HALF_INCH_LAP = FilletSizeRequest(
    rule_set="aisc-360-22-lrfd",
    joint=Joint("lap", sides=2),
    parts=(Part(INCH, "A572-50"), Part(INCH / 2, "A572-50")),
    basis="load",
    load=SharedForce(330 * KIP, 40 * INCH, 0.0),
    filler=Filler("E70"),
    size_step=INCH / 16,
)


def codes(answer: dict[str, Any]) -> set[str]:
    """Give the codes of an answer's cautions."""
    return {caution["code"] for caution in answer["cautions"]}


def fault(request: FilletSizeRequest) -> str:
    """Give the field that a request is refused for."""
    with pytest.raises(Refused) as refused:
        fillet_size(request)
    [found] = refused.value.faults
    return found.pointer


def test_a_lap_keeps_to_its_edges_without_being_told() -> None:
    """A 1/4 in edge takes 1/4 - 1/16 = 3/16 in (AISC 360-22 J2.2b(b)); two welds across lie on both edges."""
    lap = replace(HALF_INCH_LAP, parts=(Part(INCH, "A572-50"), Part(INCH / 4, "A572-50")))
    along = fillet_size(replace(lap, load=SharedForce(140 * KIP, 10 * INCH, 0.0)))
    assert (along["verdict"], mm(along["maximum"]["leg"])) == ("cannot-be-reached", pytest.approx(3 / 16 * INCH))
    thin_1 = replace(lap, parts=(Part(3 / 16 * INCH, "A572-50"), Part(INCH, "A572-50")))
    across = replace(thin_1, load=SharedForce(10 * KIP, 10 * INCH, pi / 2))
    assert mm(fillet_size(across)["maximum"]["leg"]) == pytest.approx(3 / 16 * INCH)
    assert mm(fillet_size(replace(across, edge_of=2))["maximum"]["leg"]) == pytest.approx(15 / 16 * INCH)
    assert mm(fillet_size(replace(across, edge_of="both"))["maximum"]["leg"]) == pytest.approx(3 / 16 * INCH)


def test_a_lap_loaded_along_it_is_reduced_for_its_length() -> None:
    """AISC 360-22 J2.2b(d): at 1/4 in, 40 in are 160 legs and 1.2 - 0.002*160 = 0.88 of them counts.

    At 3/16 in they are 213 legs, 0.773 and 258 kip, under the 330 that are asked for.
    """
    answer = fillet_size(HALF_INCH_LAP)
    assert mm(answer["specify"]["leg"]) == pytest.approx(INCH / 4)
    assert answer["length"]["factor"] == pytest.approx(0.88)
    off = fillet_size(replace(HALF_INCH_LAP, end_loaded=False))
    assert mm(off["specify"]["leg"]) == pytest.approx(3 / 16 * INCH)
    assert "long-weld-not-reduced" in codes(off)
    assert "long-weld-not-reduced" not in codes(answer)
    # A force square across the weld loads it evenly.
    across = fillet_size(replace(HALF_INCH_LAP, load=SharedForce(330 * KIP, 40 * INCH, pi / 2), end_loaded=True))
    assert across["length"]["factor"] == 1.0


def test_balanced_and_concentric_welds_are_reduced_for_their_length() -> None:
    """AISC 360-22 J2.2b(d): 440 kip on two welds of 60 in; at 1/4 in they are 240 legs, 0.72, and 481 kip.

    At 3/16 in they are 320 legs, of which 180 count: 0.5625 and 282 kip. 80 in along in two are 160 legs of 1/4 in.
    """
    balanced = fillet_size(replace(HALF_INCH_LAP, load=BalancedForce(440 * KIP, 120 * INCH, 4 * INCH, 2 * INCH)))
    assert mm(balanced["specify"]["leg"]) == pytest.approx(INCH / 4)
    assert balanced["length"]["factor"] == pytest.approx(0.72)
    # 1.392 kip/in for each sixteenth (Manual, Part 8).
    assert balanced["utilisation"] == pytest.approx(440 / (0.72 * 4 * 1.392 * 120), rel=1e-3)
    group = replace(HALF_INCH_LAP, joint=Joint("lap"), load=ConcentricForce(400 * KIP, 80 * INCH, 6 * INCH))
    at_quarter = fillet_size(replace(group, size_step=INCH / 4))
    assert at_quarter["utilisation"] == pytest.approx(400 / (0.88 * 4 * 1.392 * 86), rel=1e-3)


def test_a_long_lap_by_en_is_reduced() -> None:
    """EN 1993-1-8 4.11(3): 7 mm on 4 m is 1.2 - 0.2*4000/(150*7) = 0.438; 3 mm carries nothing there."""
    request = FilletSizeRequest(
        rule_set="en-1993-1-8-2005-directional",
        joint=Joint("lap", sides=2),
        parts=(Part(20.0, "S235"), Part(20.0, "S235")),
        basis="load",
        load=SharedForce(4500e3, 4000.0, 0.0),
    )
    answer = fillet_size(request)
    assert mm(answer["specify"]["throat"]) == pytest.approx(7.0)
    assert answer["length"]["factor"] == pytest.approx(1.2 - 0.2 * 4000 / 1050)


def test_a_long_group_is_reduced() -> None:
    """EN 1993-1-8 4.11(3): what needs a without the length needs (a + L/750)/1.2 over 2 m; S355 30, two lines."""
    request = WeldGroupRequest(
        rule_set="en-1993-1-8-2005-directional",
        group=(line(0.0, 0.0, 2000.0, 0.0), line(0.0, 200.0, 2000.0, 200.0)),
        load=GroupLoad(Vector(2000e3), Vector(1000.0, 100.0)),
        parts=(Part(30.0, "S355"), Part(30.0, "S355")),
    )
    # 500 N/mm along two lines of 2 m: sqrt(3)*500*0.9*1.25/490.
    plain = sqrt(3) * 500 * 0.9 * 1.25 / 490
    answer = weld_group(request)
    assert mm(answer["required"]["throat"]) == pytest.approx((plain + 2000 / 750) / 1.2)
    off = weld_group(replace(request, end_loaded=False))
    assert mm(off["required"]["throat"]) == pytest.approx(plain)
    assert "long-weld-not-reduced" in codes(off)


def test_proven_penetration_counts_for_a_root_pass_that_is_not_made_by_hand() -> None:
    """AISC 360-22 J2.2a: 5 kip/in need 5/(0.75*0.6*70) = 0.1587 in of throat, 0.2245 in of leg without penetration."""
    tee = replace(
        HALF_INCH_LAP,
        joint=Joint("tee", sides=2),
        load=SharedForce(100 * KIP, 10 * INCH, 0.0),
        penetration=Penetration(INCH / 8, "proven"),
    )
    by_hand = fillet_size(tee)
    assert mm(by_hand["required"]["leg"]) == pytest.approx(5 / 31.5 * sqrt(2) * INCH, rel=1e-6)
    assert "penetration-not-counted" in codes(by_hand)
    robotic = fillet_size(replace(tee, **ROBOT))
    assert mm(robotic["required"]["leg"]) == pytest.approx((5 / 31.5 - 1 / 8) * sqrt(2) * INCH, rel=1e-6)
    assert "proven-penetration" in codes(robotic)
    assert fault(replace(tee, **ROBOT, process="111")) == "#/root_pass"
    assert fault(replace(EN, **ROBOT)) == "#/root_pass"


@pytest.mark.parametrize("by_hand", [False, True])
def test_filler_metal_over_one_level_above_matching_is_refused(by_hand: bool) -> None:
    """AISC 360-22 Table J2.5 permits one level: E60 and E70 match A36 and 58 ksi needs 60, so E110 is out."""
    part = Part(12.7, None, 36 * 1000 * PSI, 58 * 1000 * PSI) if by_hand else Part(12.7, "A36")
    tee = replace(HALF_INCH_LAP, joint=Joint("tee", sides=2), parts=(part, part), load=SharedForce(9e4, 200.0, 0.0))
    assert fault(replace(tee, filler=Filler("E110"))) == "#/filler"
    assert fillet_size(replace(tee, filler=Filler("E70")))["verdict"] == "enough"


def test_filler_metal_weaker_than_the_parts_is_refused_by_en() -> None:
    """EN 1993-1-8 4.2(2): 400 MPa is under the 490 of S355."""
    assert fault(replace(EN, filler=Filler(tensile_strength=400.0))) == "#/filler"
    assert fillet_size(replace(EN, filler=Filler(tensile_strength=490.0)))


@pytest.mark.parametrize("kind", ["tee", "lap", "inside-corner"])
def test_one_weld_that_a_pull_opens_from_its_root_is_refused(kind: Any) -> None:
    """One weld across the force turns about its root (EN 1993-1-8 4.12), unless the joint is held from turning."""
    pulled = replace(EN, joint=Joint(kind), load=SharedForce(4e3, 200.0, pi / 2))
    assert fault(pulled) == "#/held_from_turning"
    assert fault(replace(pulled, basis="full-strength", load=None)) == "#/held_from_turning"
    assert fillet_size(replace(pulled, held_from_turning=True))["verdict"] == "enough"
    assert fillet_size(replace(pulled, load=SharedForce(4e3, 200.0, 0.0)))["verdict"] == "enough"
    if kind == "tee":
        assert fillet_size(replace(pulled, root_bending=True))["verdict"] == "enough"
        assert fillet_size(replace(pulled, load=ForceComponents(-20.0, length=200.0)))["verdict"] == "enough"


def test_the_inside_of_a_hollow_section_is_not_reached_without_a_word() -> None:
    """Two welds at a hollow section need access to be told: statics of nothing, but no welder reaches in."""
    tee = replace(
        HALF_INCH_LAP,
        joint=Joint("tee", sides=2),
        parts=(Part(12.7, "A36"), Part(6.35, "A500-C")),
        load=SharedForce(4e4, 200.0, 0.0),
    )
    assert fault(tee) == "#/access"
    assert fillet_size(replace(tee, access="both-sides"))["verdict"] == "enough"
    assert fault(replace(tee, access="one-side")) == "#/joint/sides"
    assert fillet_size(replace(tee, joint=Joint("tee")))["verdict"] == "enough"
