"""Plans of joints worked by hand, and properties over random joints."""

from __future__ import annotations

from dataclasses import replace
from math import hypot, pi, sqrt
from typing import Any

import pytest
from hypothesis import strategies as st
from tests.application.asked import joint_plan
from tests.application.joints import given, hundredths, mm

from truethroat_service.application.core.answers import Common
from truethroat_service.application.core.faults import Refused
from truethroat_service.application.joint_plan.request import (
    JointPlanRequest,
    PlanForce,
    PlanIntermittent,
    PlanJoint,
    PlanTolerances,
    Weights,
)
from truethroat_service.application.joints.metals import Filler, Part
from truethroat_service.application.joints.seams import Finish, Penetration
from truethroat_service.application.joints.throat_chance import Spread

INCH = 25.4

CORNER = JointPlanRequest(
    rule_set="aisc-360-22-lrfd",
    joint=PlanJoint("outside-corner"),
    parts=(Part(10.0), Part(10.0)),
    length=1000.0,
    basis="throat",
    required_throat=5.0,
    process="GMAW",
    position="1G",
    finish=Finish("flush", tolerance=0.5),
    tolerances=PlanTolerances(depth=0.5),
)
TEE = JointPlanRequest(
    rule_set="en-1993-1-8-2005-directional",
    joint=PlanJoint("tee"),
    parts=(Part(12.0, "S355"), Part(10.0, "S355")),
    length=300.0,
    basis="load",
    load=PlanForce(240e3, pi / 2),
    process="135",
    position="PB",
)


def ways(request: JointPlanRequest) -> dict[str, dict[str, Any]]:
    """Give the ways of a plan by name, with their parts."""
    return {way["way"]: way for way in joint_plan(replace(request, detail="all"))["ways"]}


def refused(request: JointPlanRequest) -> dict[str, str]:
    """Give what is refused, with its reasons."""
    return {way["way"]: "; ".join(way["why"]) for way in joint_plan(request)["refused"]}


def test_a_corner_is_bevelled_for_what_grinder_and_saw_may_take() -> None:
    """By hand: GMAW in the flat position loses nothing at a 45 deg root, so 5 + 0.5 + 0.5 = 6 mm of depth, to the step.

    The bevel takes 6^2/2 = 18 mm2 of metal, 18 * 7.85e-6 * 1000 = 0.1413 kg; at the worst 6 - 0.5 - 0.5 are left.
    """
    way = ways(CORNER)["bevelled-edge"]
    assert mm(way["parts"]["bevel_depth"]["depth"]) == pytest.approx(6.0)
    assert way["costs"]["filler"]["value"] == pytest.approx(0.1413)
    assert mm(way["budget"]["remaining"]) == pytest.approx(6.0)
    assert mm(way["budget"]["remaining_worst_case"]) == pytest.approx(5.0)
    assert way["chance_short"] == 0.0
    assert mm(way["hold"]["least_throat"]) == 5.0


def test_an_open_corner_keeps_the_height_of_its_triangle() -> None:
    """By hand: 10 mm plates leave 10/sqrt(2) = 7.07 mm to the line between the toes, and no code credits more.

    Filled to the sharp corner it takes 10 * 10 = 100 mm2, so 0.785 kg.
    """
    way = ways(CORNER)["open-corner"]
    creditable = way["parts"]["grind_allowance"]["budget"]
    assert mm(creditable["as_welded"]) == pytest.approx(10 / sqrt(2))
    assert way["costs"]["filler"]["value"] == pytest.approx(0.785)


def test_a_half_open_corner_that_is_short_is_refused() -> None:
    """By hand: an overlap of half of 10 mm leaves 5 * 10 / hypot(5, 10) = 4.47 mm, under 5."""
    assert hypot(5, 10) ** -1 * 50 < 5.0
    assert "4.472 mm" in refused(CORNER)["half-open-corner"]


def test_a_square_edge_counts_only_what_is_proven() -> None:
    """Assumed or measured, penetration makes no way workable; proven, it does, less its tolerance and the grinder's."""
    for vouched in ("assumed", "measured"):
        told = replace(CORNER, penetration=Penetration(8.0, vouched))  # type: ignore[arg-type]
        assert "none is proven" in refused(told)["square-edge"]
        assert f"{vouched}-penetration" in {caution["code"] for caution in joint_plan(told)["cautions"]}
    # AISC 360-22 J2.1a counts what is proven for a root pass that no hand makes.
    by_hand = replace(CORNER, penetration=Penetration(6.0, "proven", 0.5))
    assert "Send root_pass" in refused(by_hand)["square-edge"]
    made_by: Any = "automatic"
    proven = replace(by_hand, root_pass=made_by)
    assert mm(ways(proven)["square-edge"]["budget"]["remaining_worst_case"]) == pytest.approx(5.0)
    short = replace(proven, penetration=Penetration(5.9, "proven", 0.5))
    assert "square-edge" in refused(short)


def test_a_face_is_left_only_where_it_counts() -> None:
    """Codes credit no reinforcement; a shop's own rule for thin parts does, and 1.2 mm of throat stand as 1.5 mm."""
    coded = replace(CORNER, finish=Finish())
    assert "face-left" in refused(coded)
    sheet = replace(
        CORNER,
        rule_set="thin-part",
        parts=(Part(1.5), Part(1.5)),
        required_throat=1.2,
        finish=Finish(),
        tolerances=PlanTolerances(),
    )
    way = ways(sheet)["face-left"]
    assert mm(way["hold"]["leave_face_height"]) == 1.5
    # A parabola of 3 mm by 1.5 mm: 2/3 * 3 * 1.5 = 3 mm2.
    assert way["costs"]["filler"]["value"] == pytest.approx(3 * 7.85e-6 * 1000)


def test_an_inside_fillet_covers_the_tolerance_of_its_legs() -> None:
    """By hand: 5 mm of throat take 5 * sqrt(2) = 7.07 mm of leg, with 0.5 mm of tolerance 7.57, so 8 mm."""
    told = replace(CORNER, tolerances=PlanTolerances(legs=0.5))
    way = ways(told)["fillet-inside"]
    assert mm(way["hold"]["least_leg"]) == 8.0
    assert mm(way["budget"]["remaining_worst_case"]) == pytest.approx(7.5 / sqrt(2))
    assert "fillet-inside" in refused(replace(told, access="one-side"))


def test_one_side_has_the_ways_of_one_side() -> None:
    """What needs the far side is refused for that."""
    told = refused(replace(TEE, access="one-side", intermittent=PlanIntermittent("tension")))
    assert "second side" in told["fillet-both-sides"]
    assert "second side" in told["fillet-intermittent"]
    assert "fillet-one-side" in ways(replace(TEE, access="one-side"))


def test_a_fillet_on_one_side_is_sized_for_the_root_it_opens() -> None:
    """EN 1993-1-8 4.12: a pull across a one-sided tee bends its throat, so it is far larger than half of two."""
    found = ways(TEE)
    assert found["fillet-one-side"]["parts"]["fillet_size"]["provenance"]["rule_set"] == TEE.rule_set
    one, two = (mm(found[name]["hold"]["least_throat"]) for name in ("fillet-one-side", "fillet-both-sides"))
    assert one > 2.0 * two
    along = ways(replace(TEE, load=PlanForce(500e3, 0.0)))
    one, two = (mm(along[name]["hold"]["least_throat"]) for name in ("fillet-one-side", "fillet-both-sides"))
    assert one == pytest.approx(2.0 * two)


def test_an_intermittent_way_lays_its_share() -> None:
    """By hand: every segment there is, and the longer welds at both ends, on both sides."""
    request = replace(
        TEE, load=PlanForce(60e3, 0.0), length=1000.0, intermittent=PlanIntermittent("shear", widths=(200.0, 100.0))
    )
    way = ways(request)["fillet-intermittent"]
    sized = way["parts"]["fillet_size"]
    leg, run = mm(sized["specify"]["leg"]), sized["intermittent"]
    laid = (run["count"] - 2) * mm(run["segment"]) + 2 * max(mm(run["segment"]), mm(run["end_weld"]))
    metal = 2 * leg**2 / 2 * laid * 7.85e-6
    assert way["costs"]["filler"]["value"] == pytest.approx(metal)
    assert run["segment"]["text"] in way["size"]


def test_hold_values_are_those_of_the_quality_set() -> None:
    """By hand: a leg of 8 mm has a face of 8 * sqrt(2) = 11.3 mm; ISO 5817 B allows 1 + 0.1 b, D1.1 1/8 in."""
    told = replace(CORNER, tolerances=PlanTolerances(legs=0.5), quality="iso-5817-b")
    width = 8 * sqrt(2)
    assert mm(ways(told)["fillet-inside"]["hold"]["most_convexity"]) == pytest.approx(1 + 0.1 * width)
    assert mm(ways(replace(told, quality=None))["fillet-inside"]["hold"]["most_convexity"]) == pytest.approx(INCH / 8)
    assert joint_plan(TEE)["quality"] == "iso-5817-c"


def test_a_way_that_cannot_be_made_leaves_no_plan() -> None:
    """Where every way is refused the plan says so, and recommends nothing."""
    # 9 mm and what grinder and saw may take leave no land of 10 mm, and no open corner has 9 mm to its toes.
    answer = joint_plan(replace(CORNER, required_throat=9.0, access="one-side"))
    assert (answer["verdict"], answer["recommended"], answer["ways"]) == ("cannot-be-reached", None, [])
    assert all(way["why"] for way in answer["refused"])


def test_weights_choose_and_bevelling_takes_its_time() -> None:
    """Filler alone puts the least metal first; slow bevelling counts against a way that is cut."""
    light = joint_plan(replace(TEE, weights=Weights(1.0, 0.0, 0.0, 0.0)))["ways"]
    metal = [way["costs"]["filler"]["value"] for way in light]
    assert metal == sorted(metal)
    timed = ways(replace(TEE, bevelling_speed=1.0))["full-penetration"]
    plain = ways(TEE)["full-penetration"]
    # Two faces of 300 mm at 1 mm/s are 600 s.
    assert timed["costs"]["time"]["value"] - plain["costs"]["time"]["value"] == pytest.approx(600 / 3600)


def test_a_throat_that_may_be_short_is_said() -> None:
    """Sized to its tolerance a way is short only beyond it: with two deviations to it in a few seams of a hundred.

    By hand: the depth of each side is one length, so at most its tail beyond two deviations is short, 2.28 %.
    """
    loose = PlanTolerances(depth=1.0)
    answer = joint_plan(replace(TEE, tolerances=loose, spread=Spread("normal")))
    (way,) = [way for way in answer["ways"] if way["way"] == "partial-groove"]
    assert 0.0 < way["chance_short"] <= 0.0228
    assert "may-be-short" in {caution["code"] for caution in answer["cautions"]}
    (even,) = [way for way in joint_plan(replace(TEE, tolerances=loose))["ways"] if way["way"] == "partial-groove"]
    assert even["chance_short"] == 0.0


def test_fillets_cover_the_tolerance_of_their_legs() -> None:
    """By hand: 240 kN over 2 * 300 mm need 400/(490/(sqrt(2) 0.9 1.25)) = 1.3 mm, so 3 mm by 4.5.2(2) governs.

    As legs 4.24 mm, and with 1 mm of tolerance 5.24: as a throat 3.71, to the step of half a millimetre 4.
    """
    way = ways(replace(TEE, tolerances=PlanTolerances(legs=1.0)))["fillet-both-sides"]
    assert mm(way["parts"]["fillet_size"]["specify"]["throat"]) == pytest.approx(4.0)
    assert mm(way["budget"]["remaining_worst_case"]) == pytest.approx(4.0 - 1 / sqrt(2))
    assert mm(way["hold"]["least_throat"]) == pytest.approx(3.0)


def test_a_gap_is_laid_once() -> None:
    """By hand: a gap of 3 mm is added whole to the leg, and the metal is that of the leg laid."""
    way = ways(replace(TEE, joint=PlanJoint("tee", root_gap=3.0)))["fillet-both-sides"]
    leg = mm(way["parts"]["fillet_size"]["specify"]["leg"])
    assert way["costs"]["filler"]["value"] == pytest.approx(leg**2 * 300.0 * 7.85e-6)
    assert mm(way["budget"]["remaining"]) == pytest.approx((leg - 3.0) / sqrt(2))


def test_one_side_is_held_or_refused() -> None:
    """A load across a joint welded on one side opens it from its root, unless the joint is held from turning."""
    coded = replace(
        TEE, rule_set="aisc-360-22-lrfd", parts=(Part(12.0, "A36"), Part(10.0, "A36")), filler=Filler("E70")
    )
    for request in (TEE, coded):
        told = replace(request, access="one-side")
        assert "root" in refused(told)["partial-groove"]
        assert "partial-groove" in ways(replace(told, held_from_turning=True))
    assert "root" in refused(coded)["fillet-one-side"]
    assert "fillet-one-side" in ways(replace(coded, held_from_turning=True))
    assert "fillet-one-side" in ways(replace(coded, load=PlanForce(240e3, 0.0)))


@pytest.mark.parametrize(
    ("rule_set", "material", "filler"),
    [("aisc-360-22-asd", "A36", Filler("E70")), ("en-1993-1-8-2005-directional", "S355", None)],
)
@pytest.mark.parametrize("kind", ["lap", "inside-corner"])
def test_one_weld_that_is_pulled_across_is_refused(
    kind: Any, rule_set: str, material: str, filler: Filler | None
) -> None:
    """By statics: 750 N/mm at 6 + 1.06 mm from the throat of one weld is 5.3 kN, its plastic throat takes 1.1 kN.

    490 x 3^2/4 = 1.1 kN for a throat of 3 mm. AISC 360-22 J2.2b(f): a lap is welded at both ends unless it is held.
    """
    request = replace(
        TEE,
        joint=PlanJoint(kind),
        rule_set=rule_set,
        parts=(Part(12.0, material), Part(12.0, material)),
        filler=filler,
        length=200.0,
        load=PlanForce(150e3, pi / 2),
    )
    assert 750 * (6 + 3 * sqrt(2) / 4) > 4 * 490 * 3**2 / 4
    assert "root" in refused(request)["fillet-one-side"]
    assert "fillet-one-side" in ways(replace(request, held_from_turning=True))
    assert ("fillet-both-sides" in ways(request)) is (kind == "lap")
    assert "fillet-one-side" in ways(replace(request, load=PlanForce(150e3, 0.0)))


TUBE = replace(
    TEE,
    rule_set="aisc-360-22-asd",
    parts=(Part(INCH / 4, "A36"), Part(3 * INCH / 16, "A500-B")),
    filler=Filler("E70"),
    basis="full-strength",
    load=None,
    position="2F",
)


def test_the_access_to_a_hollow_section_has_to_be_given() -> None:
    """A tube end is welded from outside (common practice): both sides by default would specify half the leg."""
    with pytest.raises(Refused) as refusal:
        joint_plan(TUBE)
    assert [fault.pointer for fault in refusal.value.faults] == ["#/access"]
    assert "second side" in refused(replace(TUBE, access="one-side"))["fillet-both-sides"]
    assert "fillet-both-sides" in ways(replace(TUBE, access="both-sides"))


def test_the_size_in_words_names_the_root() -> None:
    """AWS D1.1 TC-U4a stands on a backing over an open root; without the word a traveller has the gap alone."""
    through = ways(replace(TUBE, access="one-side"))["full-penetration"]
    assert through["parts"]["groove_size"]["preparation"]["root"] == "backing"
    assert "on a backing that is left in" in through["size"]
    both = ways(TEE)["full-penetration"]
    words = {"back-run": "welded again", "back-gouge": "gouged out", "backing": "backing", "open": "root open"}
    assert words[both["parts"]["groove_size"]["preparation"]["root"]] in both["size"]


@pytest.mark.parametrize(
    ("rule_set", "part", "pointer"),
    [
        ("aisc-360-22-asd", Part(10.0, "1.4301"), "material"),
        ("en-1993-1-8-2005-directional", Part(2.0, "S235"), "thickness"),
        ("en-1993-1-4-2006-directional", Part(1.5, "1.4301"), "thickness"),
    ],
)
def test_a_corner_is_held_to_the_scope_of_its_rules(rule_set: str, part: Part, pointer: str) -> None:
    """AISC 360 is for carbon and low-alloy steel, EN 1993-1-8 4.1 and EN 1993-1-4 for parts of 4 mm and more."""
    corner = replace(
        CORNER, rule_set=rule_set, parts=(part, part), required_throat=1.0, finish=Finish(), tolerances=PlanTolerances()
    )
    with pytest.raises(Refused) as refusal:
        joint_plan(corner)
    assert {fault.pointer for fault in refusal.value.faults} == {f"#/parts/{index}/{pointer}" for index in (0, 1)}


def test_a_leg_that_no_shop_would_lay_is_not_recommended() -> None:
    """480 kN across 200 mm of a tee welded on one side: a root that bends takes a leg of about 40 mm on 12 mm plates.

    Common practice: no leg over 1.5 times the thinner part (18 mm), and none over 25 mm.
    """
    request = replace(
        TEE,
        parts=(Part(12.0, "S355"), Part(12.0, "S355")),
        length=200.0,
        load=PlanForce(480e3, pi / 2),
        access="one-side",
    )
    answer = joint_plan(request)
    (way,) = [way for way in answer["ways"] if way["way"] == "fillet-one-side"]
    against = " ".join(way["impracticable"])
    assert "1.5 times the thinner part" in against
    assert "is more than 25 mm" in against
    assert answer["recommended"] != "fillet-one-side"
    assert answer["ways"][-1]["impracticable"] or not any(other["impracticable"] for other in answer["ways"])


def test_a_least_leg_of_structural_steel_is_impracticable_on_sheet() -> None:
    """A throat of 1.2 mm at 90 deg takes a leg of 1.7 mm; AISC 360-22 Table J2.4 puts 3 mm on sheet of 1.5 mm."""
    corner = replace(
        CORNER,
        rule_set="thin-part",
        parts=(Part(1.5), Part(1.5)),
        required_throat=1.2,
        finish=Finish(),
        tolerances=PlanTolerances(),
        process="GTAW",
    )
    way = ways(corner)["fillet-inside"]
    assert any("sheet" in reason for reason in way["impracticable"])
    assert joint_plan(corner)["recommended"] != "fillet-inside"


def test_a_long_lap_counts_its_reduction() -> None:
    """AISC 360-22 J2.2b(d): 3000 mm at a leg of 13 mm is 231 legs, so 1.2 - 0.002 * 231 = 0.738 of it counts."""
    lap = replace(
        TEE,
        rule_set="aisc-360-22-lrfd",
        joint=PlanJoint("lap"),
        parts=(Part(20.0, "A36"), Part(20.0, "A36")),
        filler=Filler("E70"),
        length=3000.0,
        load=PlanForce(4000e3, 0.0),
    )
    sized = ways(lap)["fillet-one-side"]["parts"]["fillet_size"]
    leg = mm(sized["specify"]["leg"])
    assert sized["length"]["factor"] == pytest.approx(1.2 - 0.002 * 3000.0 / leg)


def test_a_butt_for_a_throat_may_go_through() -> None:
    """A throat no bevel leaves land for is kept by full penetration, where the metals are told."""
    butt = replace(
        CORNER,
        rule_set="en-1993-1-8-2005-directional",
        joint=PlanJoint("butt"),
        parts=(Part(10.0, "S355"), Part(10.0, "S355")),
        required_throat=9.5,
        finish=Finish(),
        process="135",
        position="PA",
    )
    assert list(ways(butt)) == ["full-penetration"]
    ground = replace(butt, required_throat=4.0, finish=Finish("flush", below=1.0))
    assert "below flush" in refused(ground)["full-penetration"]


@st.composite
def corners(draw: st.DrawFn) -> JointPlanRequest:
    """Draw an outside corner to plan."""
    return replace(
        CORNER,
        parts=(Part(draw(hundredths(4, 20))), Part(draw(hundredths(4, 20)))),
        required_throat=draw(hundredths(1, 4)),
        finish=draw(st.sampled_from([Finish("flush", tolerance=0.3), Finish("flat"), Finish()])),
        penetration=Penetration(draw(hundredths(0, 3)), "proven"),
        tolerances=PlanTolerances(draw(hundredths(0, 1)), draw(hundredths(0, 1)), draw(hundredths(0, 1))),
    )


@given(request=corners())
def test_every_way_keeps_its_throat_at_the_worst(request: JointPlanRequest) -> None:
    """A corner's ways cover every tolerance: none of them may be short, and the chance of it is none."""
    for way in joint_plan(request)["ways"]:
        assert mm(way["budget"]["remaining_worst_case"]) >= request.required_throat - 1e-9  # type: ignore[operator]
        assert way["chance_short"] == 0.0


@given(request=corners())
def test_more_proven_penetration_takes_no_way_away(request: JointPlanRequest) -> None:
    """Deeper fusion never makes a way short, and never takes more metal to bevel."""
    deeper = replace(request, penetration=Penetration(request.penetration.depth + 0.5, "proven"))
    before, after = ways(request), ways(deeper)
    assert set(before) - {"bevelled-edge"} <= set(after)
    if "bevelled-edge" in before and "bevelled-edge" in after:
        assert after["bevelled-edge"]["costs"]["filler"]["value"] <= before["bevelled-edge"]["costs"]["filler"]["value"]


@given(request=corners())
def test_units_rank_nothing(request: JointPlanRequest) -> None:
    """With the steps of both systems alike the scores are the same; here nothing that is stepped is left."""
    plain = {name: way for name, way in ways(request).items() if name in ("open-corner", "half-open-corner")}
    inches = ways(replace(request, common=Common("us")))
    for name, way in plain.items():
        assert inches[name]["costs"]["filler"]["value"] == pytest.approx(way["costs"]["filler"]["value"] / 0.45359237)
        assert inches[name]["chance_short"] == way["chance_short"]


def test_a_filler_metal_gives_the_weight() -> None:
    """Stainless parts without a named filler are weighed as their own metal, 7900 kg/m3 by EN 10088-1."""
    stainless = replace(
        TEE, rule_set="en-1993-1-4-2006-directional", parts=(Part(12.0, "1.4301"), Part(10.0, "1.4301"))
    )
    way = ways(stainless)["fillet-both-sides"]
    leg = mm(way["parts"]["fillet_size"]["specify"]["leg"])
    assert way["costs"]["filler"]["value"] == pytest.approx(leg**2 * 300.0 * 7.9e-6)
    named = ways(replace(stainless, filler=Filler("E316L")))["fillet-both-sides"]
    assert named["costs"]["filler"]["value"] == pytest.approx(leg**2 * 300.0 * 8.0e-6)


@pytest.mark.parametrize("kind", ["tee", "lap", "inside-corner", "outside-corner", "butt"])
@pytest.mark.parametrize(
    "rule_set", ["aisc-360-22-asd", "en-1993-1-8-2005-simplified", "en-1999-1-1-2007", "thin-part"]
)
@pytest.mark.parametrize("access", ["one-side", "both-sides"])
def test_every_kind_of_joint_ends_in_ways_or_reasons(kind: str, rule_set: str, access: str) -> None:
    """Whatever is asked, each way is either shown with its costs or refused with a reason, once."""
    by_throat = kind in ("outside-corner", "butt")
    if rule_set == "thin-part" and not by_throat:
        return
    material, filler = {
        "aisc-360-22-asd": ("A36", "E70"),
        "en-1993-1-8-2005-simplified": ("S275", None),
        "en-1999-1-1-2007": ("6082-T6", "ER5356"),
        "thin-part": (None, None),
    }[rule_set]
    request = JointPlanRequest(
        rule_set=rule_set,
        joint=PlanJoint(kind),  # type: ignore[arg-type]
        parts=(Part(8.0, material), Part(6.0, material)),
        length=400.0,
        basis="throat" if by_throat else "load",
        load=None if by_throat else PlanForce(30e3, pi / 3),
        required_throat=3.0 if by_throat else None,
        process="GMAW",
        position="1G" if by_throat else "2F",
        filler=None if filler is None else Filler(filler),
        access=access,  # type: ignore[arg-type]
    )
    answer = joint_plan(request)
    named = [way["way"] for way in (*answer["ways"], *answer["refused"])]
    assert len(set(named)) == len(named) > 0
    assert all(way["why"] for way in answer["refused"])
    assert (answer["verdict"] == "enough") == bool(answer["ways"])
    assert [way["rank"] for way in answer["ways"]] == sorted(way["rank"] for way in answer["ways"])
