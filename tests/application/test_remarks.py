"""What an answer says beside its figures: what governs, why, and what the reader must not forget."""

from __future__ import annotations

from dataclasses import replace
from math import pi
from typing import Any

import pytest
from tests.application.asked import fillet_size
from tests.application.joints import AISC, EN, NONE, RULE_SETS, mm

from truethroat_service.application.bevel_depth import bevel_depth
from truethroat_service.application.bevel_depth.request import BevelDepthRequest
from truethroat_service.application.core.answers import Common
from truethroat_service.application.core.faults import Refused
from truethroat_service.application.fillet_size.request import FilletSizeRequest, Joint, SharedForce
from truethroat_service.application.grind_allowance import grind_allowance
from truethroat_service.application.grind_allowance.request import GrindAllowanceRequest
from truethroat_service.application.joints.metals import Filler, Part
from truethroat_service.application.joints.seams import Finish, Penetration, Preparation, Seam

PLATES = (Part(12.0, "S355"), Part(10.0, "S355"))
TEE = FilletSizeRequest(EN[0], Joint("tee", sides=2), PLATES, "load", SharedForce(240e3, 200.0, pi / 2))
LAP = FilletSizeRequest(
    AISC[0],
    Joint("lap", sides=2),
    (Part(12.7, "A36"), Part(9.525, "A36")),
    "load",
    SharedForce(200e3, 200.0, 0.0),
    Filler("E70"),
)
THIN = FilletSizeRequest("thin-part", Joint("tee", sides=2), (Part(12.0), Part(8.0)), "thin-part")
CORNER = GrindAllowanceRequest(Seam("closed-corner", (12.0, 12.0)), 6.0, Finish("flush"), face_height=4.0)


def cautions(answer: dict[str, Any]) -> dict[str, str]:
    """Give the cautions of an answer: text by code."""
    return {caution["code"]: caution["text"] for caution in answer["cautions"]}


def said(answer: dict[str, Any]) -> str:
    """Give the reasons of an answer as one text."""
    return " ".join(answer["reasons"])


FILLET_CAUTIONS: list[tuple[str, FilletSizeRequest, FilletSizeRequest]] = [
    ("proven-penetration", replace(LAP, penetration=Penetration(1.0, "proven")), LAP),
    ("proven-penetration", replace(TEE, penetration=Penetration(1.0, "proven")), TEE),
    ("assumed-penetration", replace(TEE, penetration=Penetration(1.0, "assumed")), TEE),
    ("measured-penetration", replace(THIN, penetration=Penetration(1.0, "measured")), THIN),
    ("no-strength-claimed", THIN, TEE),
    ("below-quick-chill-size", replace(THIN, parts=(Part(3.0), Part(25.0))), THIN),
    ("one-sided", replace(TEE, joint=Joint("tee")), TEE),
    ("one-sided", replace(LAP, joint=Joint("tee"), load=SharedForce(9e4, 200.0, pi / 2)), LAP),
    ("no-length", replace(TEE, basis="full-strength", load=None), TEE),
    ("full-size-length", TEE, LAP),
    ("undermatched-filler", replace(TEE, filler=Filler(tensile_strength=450.0)), replace(TEE, filler=Filler("E 46"))),
    ("hollow-section", replace(LAP, parts=(LAP.parts[0], Part(9.525, "A500-C"))), LAP),
]


@pytest.mark.parametrize(("code", "with_it", "without"), FILLET_CAUTIONS)
def test_cautions_of_a_fillet(code: str, with_it: FilletSizeRequest, without: FilletSizeRequest) -> None:
    """A caution stands where its matter does and nowhere else."""
    assert cautions(fillet_size(with_it))[code]
    assert code not in cautions(fillet_size(without))


def test_penetration_of_the_shop_rule_counts_for_nothing() -> None:
    """A rule that claims no strength takes no penetration into account, proven or not."""
    proven = fillet_size(replace(THIN, penetration=Penetration(2.0, "proven")))
    assert proven["required"] == fillet_size(THIN)["required"]


GOVERNS: list[tuple[str, str, str, FilletSizeRequest]] = [
    ("load", "enough", "The weld metal sets the size.", replace(TEE, load=SharedForce(6e5, 200.0, pi / 2))),
    ("full-strength", "enough", "The strength of the thinner part", replace(TEE, basis="full-strength", load=None)),
    ("thin-part", "enough", "The thickness of the thinner part", THIN),
    ("minimum-size", "enough", "The least size sets the size (EN 1993-1-8:2005, 4.5.2(2)", TEE),
    (
        "root-gap",
        "enough",
        "With the root gap, the throat needs ",
        replace(TEE, joint=Joint("tee", root_gap=3.0, sides=2)),
    ),
    (
        "base-metal",
        "cannot-be-reached",
        "Part 2 fails beside the weld before the weld does: the load uses 1",
        replace(TEE, load=SharedForce(8e5, 200.0, pi / 2)),
    ),
    (
        # EN 1993-1-8 4.5.1(2): no weld under 30 mm may carry load.
        "minimum-length",
        "cannot-be-reached",
        "The weld is too short to carry load at any size",
        replace(TEE, load=SharedForce(1e4, 29.0, pi / 2)),
    ),
    (
        # The same clause: nor one shorter than six throats.
        "minimum-length",
        "cannot-be-reached",
        "The weld is too short for its size: at most ",
        replace(TEE, load=SharedForce(9.6e4, 30.0, pi / 2), parts=(Part(40.0, "S355"), Part(40.0, "S355"))),
    ),
]


@pytest.mark.parametrize(("governs", "verdict", "reason", "request_"), GOVERNS)
def test_what_governs_is_said(governs: str, verdict: str, reason: str, request_: FilletSizeRequest) -> None:
    """What sets the size, or stands in its way, is named and explained."""
    answer = fillet_size(request_)
    assert (answer["governs"], answer["verdict"]) == (governs, verdict)
    assert reason in said(answer)


def test_a_gap_is_added_whole_to_the_leg() -> None:
    """A gap of 3 mm, over 1/16 in, makes the leg 3 mm larger (AWS D1.1:2020 7.21.1), and the answer says so."""
    request = replace(THIN, joint=Joint("tee", root_gap=3.0, sides=2))
    answer = fillet_size(request)
    assert mm(answer["specify"]["leg"]) == mm(fillet_size(THIN)["specify"]["leg"]) + 3.0
    assert "The root gap of 3 mm is added whole to the leg" in said(answer)


@pytest.mark.parametrize(("kilonewtons", "finer"), [(288.0, True), (340.0, False)])
def test_a_finer_step_is_offered_where_it_would_help(kilonewtons: float, finer: bool) -> None:
    """Where only rounding puts the leg over the edge a finer step is offered; where the load does, it is not."""
    # E70 by LRFD along the weld: 0.75 x 0.60 x 482.6 MPa x 0.7071 x 250 mm is 38.4 kN for each millimetre of leg, and
    # the largest on a 3/8 in edge is 5/16 in, 7.94 mm (AISC 360-22 J2.2b(b)): 7.5 mm fit it, 8.9 mm do not.
    request = replace(
        LAP,
        joint=Joint("lap"),
        edge_of=2,
        load=SharedForce(kilonewtons * 1e3, 250.0, 0.0),
        size_step=2.0,
        parts=(Part(25.4, "A992"), Part(9.525, None, 345.0, 900.0)),
    )
    answer = fillet_size(request)
    assert mm(answer["maximum"]["leg"]) == pytest.approx(25.4 * 5 / 16)
    assert (answer["verdict"], answer["specify"]) == ("cannot-be-reached", None)
    assert "The next step up" in said(answer)
    assert ("A finer size_step would fit" in said(answer)) is finer


@pytest.mark.parametrize(
    ("process", "position", "leg", "passes"),
    [
        # AWS D1.1:2020 Table 5.1, largest single-pass fillet by SMAW: flat 3/8 in (10 mm), horizontal 5/16 in (8 mm),
        # vertical 1/2 in (12 mm).
        ("SMAW", "1F", 10.0, 1),
        ("SMAW", "2F", 8.0, 1),
        ("SMAW", "2F", 8.1, 2),
        ("111", "PB", 8.1, 2),
        ("SMAW", "3F", 12.5, 1),
        (None, "2F", 8.0, None),
        ("SMAW", None, 8.0, None),
        ("LBW", "2F", 8.0, None),
    ],
)
def test_passes(process: str | None, position: str | None, leg: float, passes: int | None) -> None:
    """The least number of passes goes by process and position, and is left open where the table has no line."""
    request = replace(
        THIN, joint=Joint("tee"), parts=(Part(leg), Part(20.0)), process=process, position=position, size_step=leg
    )
    answer = fillet_size(request)
    assert answer["specify"]["passes"] == passes
    assert ("Passes are not counted" in said(answer)) is (process == "LBW")


def test_full_strength_has_no_length_for_a_long_weld() -> None:
    """A long-weld reduction without a load has no length to go by; with the shop rule there is nothing to reduce."""
    for request in (replace(LAP, basis="full-strength", load=None, end_loaded=True), replace(THIN, end_loaded=True)):
        with pytest.raises(Refused) as caught:
            fillet_size(request)
        assert {fault.pointer for fault in caught.value.faults} == {"#/end_loaded"}
        assert str(caught.value).startswith("#/end_loaded: ")


def test_working_has_every_symbol_once_it_is_used() -> None:
    """Each step has what it used, by name, with its unit; symbols of later steps rest on earlier ones."""
    answer = fillet_size(replace(TEE, common=Common(working=True)))
    steps = answer["working"]
    assert steps
    for step in steps:
        assert set(step) == {"symbol", "meaning", "expression", "with", "value", "unit", "source"}
        assert step["meaning"]
        assert step["source"]
        for name, argument in step["with"].items():
            assert name in step["expression"]
            assert set(argument) == {"value", "unit"}
    # The throat the weld metal needs rests on the equivalent force, which is a step before it.
    symbols = [step["symbol"] for step in steps]
    rests_on = [name for step in steps for name in step["with"] if name in symbols]
    assert len(rests_on) >= 5
    assert any(step["meaning"].endswith("(side 2)") for step in steps)
    assert "working" not in fillet_size(TEE)


def test_the_working_is_of_the_physical_account_alone() -> None:
    """Alternatives, remedies and the creditable account leave no steps on the sheet: each symbol's value is one."""
    answer = grind_allowance(replace(CORNER, finish=Finish("radius", 9.0), common=Common(working=True))).wire()
    values: dict[str, set[float]] = {}
    for step in answer["working"]:
        values.setdefault(step["symbol"] + step["meaning"], set()).add(step["value"])
    assert values
    assert all(len(found) == 1 for found in values.values())


GRIND_CAUTIONS: list[tuple[str, GrindAllowanceRequest, GrindAllowanceRequest]] = [
    ("assumed-penetration", replace(CORNER, penetration=Penetration(2.0, "assumed")), CORNER),
    ("measured-penetration", replace(CORNER, penetration=Penetration(2.0, "measured")), CORNER),
    ("face-width-not-given", CORNER, replace(CORNER, face_width=14.0)),
    ("face-not-credited", replace(CORNER, rule_set=EN[0]), CORNER),
    (
        "depth-consistently-achieved",
        replace(CORNER, rule_set=EN[0], preparation=Preparation(5.0)),
        replace(CORNER, preparation=Preparation(5.0)),
    ),
    # AWS D1.1 allows thinning up to 1/32 in where a flush finish is called for.
    (
        "thinning",
        replace(CORNER, finish=Finish("flush", below=1.0)),
        replace(CORNER, finish=Finish("flush", below=25.4 / 32)),
    ),
    (
        "radius-needs-width",
        replace(CORNER, finish=Finish("radius", 3.0)),
        replace(CORNER, finish=Finish("radius", 3.0), seam=Seam("closed-corner", (12.0, 12.0), width=(50.0, 50.0))),
    ),
    ("root-opening", CORNER, replace(CORNER, seam=Seam("butt", (12.0, 12.0)))),
]


@pytest.mark.parametrize(("code", "with_it", "without"), GRIND_CAUTIONS)
def test_cautions_of_a_seam(code: str, with_it: GrindAllowanceRequest, without: GrindAllowanceRequest) -> None:
    """A caution stands where its matter does and nowhere else."""
    assert cautions(grind_allowance(with_it).wire())[code]
    assert code not in cautions(grind_allowance(without).wire())


def test_no_bevel_is_offered_that_the_code_does_not_list() -> None:
    """Where Table J2.1 has no row for the groove (here for want of a process) no bevel is a remedy, and why is said."""
    answer = grind_allowance(replace(CORNER, rule_set=AISC[0])).wire()
    assert "bevel" not in {remedy["do"] for remedy in answer["remedies"]}
    assert "Physical: no bevel is offered, because the rules do not list it: Table J2.1 goes by process" in said(answer)
    listed = grind_allowance(replace(CORNER, rule_set=AISC[0], process="GMAW", position="1G")).wire()
    assert "bevel" in {remedy["do"] for remedy in listed["remedies"]}


def test_remedies_say_what_they_count() -> None:
    """A remedy names each line its throat rests on, and who vouches for penetration."""
    answer = grind_allowance(replace(CORNER, penetration=Penetration(2.0, "measured"))).wire()
    counts = {remedy["do"]: remedy["counts"] for remedy in answer["remedies"]}
    assert counts == {
        "bevel": ["prepared depth", "measured penetration"],
        "leave-face": ["measured penetration", "face"],
        "weld-second-side": ["measured penetration", "face", "second side"],
    }
    rounded = grind_allowance(
        GrindAllowanceRequest(Seam("open-corner", (10.0, 10.0)), 8.0, Finish("radius", 30.0), face_height=9.0)
    ).wire()
    assert rounded["remedies"][0]["do"] == "smaller-radius"
    assert rounded["remedies"][0]["counts"] == ["section", "face"]


def test_a_corner_too_narrow_for_its_blend_is_told_no_radius() -> None:
    """Where the outer faces themselves lie nearer than the throat, no radius keeps it, and why is said."""
    answer = grind_allowance(GrindAllowanceRequest(Seam("open-corner", (10.0, 6.0)), 5.5, face_height=9.0)).wire()
    assert answer["largest_radius"] is not None
    none = grind_allowance(
        GrindAllowanceRequest(Seam("half-open-corner", (10.0, 6.0), overlap=8.0), 5.5, face_height=9.0)
    ).wire()
    assert none["largest_radius"] is None
    assert "no largest radius" in said(none)


BEVEL = BevelDepthRequest(Seam("closed-corner", (12.0, 12.0)), 6.0)
BEVEL_CAUTIONS: list[tuple[str, BevelDepthRequest, BevelDepthRequest]] = [
    ("assumed-penetration", replace(BEVEL, penetration=Penetration(1.0, "assumed")), BEVEL),
    (
        "measured-penetration",
        replace(BEVEL, penetration=Penetration(1.0, "measured")),
        replace(BEVEL, penetration=Penetration(1.0, "proven")),
    ),
    ("face-not-credited", replace(BEVEL, finish=Finish()), BEVEL),
    ("no-rule-set", BEVEL, replace(BEVEL, rule_set="thin-part")),
    ("depth-consistently-achieved", replace(BEVEL, rule_set=EN[1]), BEVEL),
    # AISC 360-22 Table J2.3: 3/16 in of throat on parts over 1/4 to 1/2 in.
    (
        "below-minimum-throat",
        replace(BEVEL, rule_set=AISC[1], process="GMAW", position="1G", required_throat=4.7),
        replace(BEVEL, rule_set=AISC[1], process="GMAW", position="1G", required_throat=4.7625),
    ),
]


@pytest.mark.parametrize(("code", "with_it", "without"), BEVEL_CAUTIONS)
def test_cautions_of_an_edge(code: str, with_it: BevelDepthRequest, without: BevelDepthRequest) -> None:
    """A caution stands where its matter does and nowhere else."""
    assert cautions(bevel_depth(with_it).wire())[code]
    assert code not in cautions(bevel_depth(without).wire())


@pytest.mark.parametrize("rules", [None, *RULE_SETS])
def test_every_edge_answer_names_its_rules(rules: str | None) -> None:
    """Provenance names the rule set, or null where none was chosen."""
    answer = bevel_depth(replace(BEVEL, rule_set=rules, process="SMAW", position="1G")).wire()
    assert answer["provenance"]["rule_set"] == rules
    assert cautions(answer)["estimate-for-planning"]


def test_an_edge_without_room_for_any_cut_has_no_second_side() -> None:
    """With no land to spare nothing can be cut from this side, so welding the other is not offered."""
    request = BevelDepthRequest(Seam("butt", (10.0, 10.0)), 6.0, penetration=NONE, minimum_land=10.0)
    answer = bevel_depth(request).wire()
    assert answer["verdict"] == "full-penetration-needed"
    assert "weld-second-side" not in {way["do"] for way in answer["alternatives"]}
    assert "full-penetration" in {way["do"] for way in answer["alternatives"]}
