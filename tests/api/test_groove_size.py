"""What a groove's request is refused for, and that its answer holds together."""

from __future__ import annotations

from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import EN_GROOVE, GROOVE, LEFT_OUT, PLUGS, TO_GROOVE, changed

LRFD, DIRECTIONAL = TO_GROOVE["rule_set"], EN_GROOVE["rule_set"]
TEE_BUTT = {"kind": "tee-butt", "throats": ["6 mm", "6 mm"], "unwelded": "2 mm"}
FLARE = {"kind": "flare-bevel", "radius": "20 mm"}
EN_TEE = changed(EN_GROOVE, joint__kind="tee", process=LEFT_OUT)

REFUSED: dict[str, tuple[dict[str, Any], str, str, str]] = {
    "a groove in a lap": (
        changed(TO_GROOVE, joint__kind="lap"),
        "#/joint/kind",
        "inconsistent",
        'must be "butt", "tee" or "corner" with a partial weld; it is "lap"',
    ),
    "a plug in a butt": (
        changed(PLUGS, joint__kind="butt"),
        "#/joint/kind",
        "inconsistent",
        'must be "lap" with a plug weld; it is "butt"',
    ),
    "a T-butt in a butt": (
        changed(EN_TEE, joint__kind="butt", weld=TEE_BUTT),
        "#/joint/kind",
        "inconsistent",
        'must be "tee" with a T-butt; it is "butt"',
    ),
    "a T-butt with AISC": (
        changed(TO_GROOVE, weld=TEE_BUTT, process=LEFT_OUT, position=LEFT_OUT),
        "#/weld/kind",
        "out-of-scope",
        f"a T-butt is judged by EN 1993-1-8:2005, 4.7.3(1); {LRFD} has no rule for it",
    ),
    "a T-butt open wider than its part": (
        changed(EN_TEE, weld={**TEE_BUTT, "unwelded": "13 mm"}),
        "#/weld/unwelded",
        "out-of-range",
        "must be at most the thickness of part 2, 12 mm",
    ),
    "a depth's tolerance of a square edge": (
        changed(TO_GROOVE, weld={"kind": "partial", "groove": "square", "depth_tolerance": "0.5 mm"}),
        "#/weld/depth_tolerance",
        "inconsistent",
        "does not apply to a square edge, which is not cut; leave it out",
    ),
    "a process of a plug": (
        changed(PLUGS, process="GMAW"),
        "#/process",
        "inconsistent",
        "does not apply to a plug weld; leave it out",
    ),
    "a position of a flare": (
        changed(TO_GROOVE, weld=FLARE),
        "#/position",
        "inconsistent",
        "does not apply to a flare-bevel weld; leave it out",
    ),
    "a flare without its process": (
        changed(TO_GROOVE, weld=FLARE, process=LEFT_OUT, position=LEFT_OUT),
        "#/process",
        "inconsistent",
        "Table J2.2 goes by process",
    ),
    "a flare by an unlisted process": (
        changed(TO_GROOVE, weld=FLARE, process="GTAW", position=LEFT_OUT),
        "#/process",
        "out-of-scope",
        "Table J2.2 lists",
    ),
    "a flare filled to nothing": (
        changed(TO_GROOVE, weld={**FLARE, "below_flush": "21 mm"}, position=LEFT_OUT),
        "#/weld/below_flush",
        "out-of-range",
        "must be at most the radius of 20 mm, where the surfaces touch",
    ),
    "no load": (changed(TO_GROOVE, load=LEFT_OUT), "#/load", "inconsistent", 'is required with basis "load"'),
    "a load nobody wants": (
        changed(TO_GROOVE, basis="full-strength"),
        "#/load",
        "inconsistent",
        'applies to basis "load" only, not to "full-strength"; leave it out',
    ),
    "no force": (changed(TO_GROOVE, load__force="0 kN"), "#/load/force", "inconsistent", "must not be zero"),
    "no component": (
        changed(TO_GROOVE, load={"normal": "0 N/mm"}),
        "#/load",
        "inconsistent",
        "must have a component that is not zero",
    ),
    "no length": (
        changed(TO_GROOVE, load__length=LEFT_OUT),
        "#/load/length",
        "inconsistent",
        "is required with a partial weld",
    ),
    "no direction": (
        changed(TO_GROOVE, load__angle=LEFT_OUT),
        "#/load/angle",
        "inconsistent",
        "is required with a partial weld",
    ),
    "a plug's length": (
        changed(PLUGS, load__length="1 m"),
        "#/load/length",
        "inconsistent",
        "does not apply to a plug weld; leave it out",
    ),
    "components on plugs": (
        changed(PLUGS, load={"normal": "1 N/mm"}),
        "#/load",
        "inconsistent",
        "must be a force with plug welds, which share it; send load.force alone",
    ),
    "full strength of plugs": (
        changed(PLUGS, basis="full-strength", load=LEFT_OUT),
        "#/basis",
        "inconsistent",
        'must be "load" with a plug weld',
    ),
    "an angle of no groove": (
        changed(TO_GROOVE, weld__groove_angle="45 deg"),
        "#/weld/groove_angle",
        "inconsistent",
        "needs a groove; send weld.groove with it",
    ),
    "an angle of a square edge": (
        changed(EN_GROOVE, weld={"kind": "full", "groove": "square", "groove_angle": "45 deg"}),
        "#/weld/groove_angle",
        "inconsistent",
        "does not apply to a square groove; leave it out",
    ),
    "a land of a square edge": (
        changed(EN_GROOVE, weld={"kind": "full", "groove": "square", "land": "1 mm"}),
        "#/weld/land",
        "inconsistent",
        "does not apply to a square groove; leave it out",
    ),
    "a V in a tee": (
        changed(TO_GROOVE, weld__groove="single-v"),
        "#/weld/groove",
        "inconsistent",
        "a single-v cannot be cut in a tee",
    ),
    "a double V in a corner": (
        changed(TO_GROOVE, joint__kind="corner", weld__groove="double-v"),
        "#/weld/groove",
        "inconsistent",
        "a double-v cannot be cut in a corner",
    ),
    "a double bevel from one side": (
        changed(TO_GROOVE, weld={"kind": "partial", "groove": "double-bevel", "access": "one-side"}),
        "#/weld/access",
        "inconsistent",
        'must be "both-sides" with a double-bevel',
    ),
    "a back-gouge from one side": (
        changed(EN_GROOVE, weld={"kind": "full", "root": "back-gouge", "access": "one-side"}),
        "#/weld/access",
        "inconsistent",
        'must be "both-sides" with a back-gouge, which is made from the second side',
    ),
    "a fillet on a butt's face": (
        changed(TO_GROOVE, joint__kind="butt", weld__reinforcing_fillet="5 mm"),
        "#/weld/reinforcing_fillet",
        "inconsistent",
        "applies to a tee only, not to a butt; leave it out",
    ),
    "a fillet on a square edge": (
        changed(TO_GROOVE, weld={"kind": "partial", "groove": "square", "reinforcing_fillet": "5 mm"}),
        "#/weld/reinforcing_fillet",
        "inconsistent",
        "does not apply to a square edge: a fillet there is a fillet weld; ask /v1/fillet-size",
    ),
    "a tolerance over the penetration": (
        changed(TO_GROOVE, weld__penetration={"depth": "1 mm", "vouched": "proven", "tolerance": "2 mm"}),
        "#/weld/penetration/tolerance",
        "inconsistent",
        "must be at most the depth of 1 mm; it is 2 mm",
    ),
    "a penetration through the part": (
        changed(TO_GROOVE, weld__penetration={"depth": "17 mm", "vouched": "assumed"}),
        "#/weld/penetration/depth",
        "out-of-range",
        "must be at most the 16 mm that the groove goes through; it is 17 mm",
    ),
    "bearing in tension": (
        changed(TO_GROOVE, weld__bears=True),
        "#/weld/bears",
        "inconsistent",
        "applies only where the load presses the parts together; leave it out",
    ),
    "bearing with EN": (
        changed(EN_GROOVE, weld={"kind": "partial", "bears": True}),
        "#/weld/bears",
        "inconsistent",
        "applies to AISC 360-22 only, not to en-1993-1-8-2005-directional; leave it out",
    ),
    "no process with AISC": (
        changed(TO_GROOVE, process=LEFT_OUT),
        "#/process",
        "inconsistent",
        "Table J2.1 goes by process",
    ),
    "a process that J2.1 does not list": (
        changed(TO_GROOVE, process="141"),
        "#/process",
        "out-of-scope",
        "Table J2.1 lists SMAW, GMAW, FCAW and SAW, not GTAW",
    ),
    "a position that J2.1 does not list": (
        changed(TO_GROOVE, process="SAW", position="2F"),
        "#/position",
        "out-of-scope",
        "Table J2.1 lists SAW in the flat position only",
    ),
    "an angle that J2.1 does not list": (
        changed(TO_GROOVE, weld={"kind": "partial", "groove": "single-bevel", "groove_angle": "40 deg"}),
        "#/weld/groove_angle",
        "out-of-scope",
        "Table J2.1 lists grooves of 45 deg and more",
    ),
    "a filling deeper than its hole": (
        changed(PLUGS, weld__filling="13 mm"),
        "#/weld/filling",
        "out-of-range",
        "must be at most the thickness of part 2, 12 mm; it is 13 mm",
    ),
    "a hole over the largest": (
        changed(PLUGS, weld__diameter="28 mm"),
        "#/weld/diameter",
        "out-of-scope",
        "must be at most 27 mm (ANSI/AISC 360-22, J2.3b); it is 28 mm",
    ),
    "a slot shorter than it is wide": (
        changed(PLUGS, weld={"kind": "slot", "width": "25 mm", "length": "20 mm"}),
        "#/weld/length",
        "inconsistent",
        "must be at least the width of the slot, 25 mm; it is 20 mm",
    ),
    "a slot for a fillet shorter than it is wide": (
        changed(PLUGS, weld={"kind": "fillet-in-slot", "width": "50 mm", "length": "40 mm", "leg": "6 mm"}),
        "#/weld/length",
        "inconsistent",
        "must be at least the width of the slot, 50 mm; it is 40 mm",
    ),
    "a fillet that fills its slot": (
        changed(PLUGS, weld={"kind": "fillet-in-slot", "width": "12 mm", "length": "40 mm", "leg": "7 mm"}),
        "#/weld/leg",
        "inconsistent",
        "must be at most half the width of 12 mm; it is 7 mm. Legs that meet make a slot weld",
    ),
    "a process of a fillet in a hole": (
        changed(PLUGS, weld={"kind": "fillet-in-hole", "diameter": "50 mm", "leg": "6 mm"}, process="GMAW"),
        "#/process",
        "inconsistent",
        "does not apply to a fillet-in-hole weld; leave it out",
    ),
    "a pitch of one plug": (
        changed(PLUGS, weld__pitch="200 mm", weld__count=1),
        "#/weld/pitch",
        "inconsistent",
        "does not apply to a single hole; leave it out",
    ),
    "a pitch that EN does not rule": (
        changed(
            PLUGS,
            rule_set=DIRECTIONAL,
            parts=[{"thickness": "12 mm", "material": "S275"}] * 2,
            filler=LEFT_OUT,
            weld__pitch="200 mm",
        ),
        "#/weld/pitch",
        "inconsistent",
        "does not apply to en-1993-1-8-2005-directional, which sets no least pitch; leave it out",
    ),
    "a parameter of EN with AISC": (
        changed(TO_GROOVE, parameters={"gamma_m2": 1.3}),
        "#/parameters/gamma_m2",
        "inconsistent",
        f"does not apply to {LRFD}; leave it out",
    ),
    "a rule that claims no strength": (
        changed(TO_GROOVE, rule_set="thin-part"),
        "#/rule_set",
        "unknown-choice",
        "must be one of",
    ),
    "a weld of no kind": (changed(TO_GROOVE, weld={"kind": "spot"}), "#/weld/kind", "unknown-choice", "must be one of"),
}


@pytest.mark.parametrize("case", REFUSED)
def test_what_a_groove_is_refused_for(service: Exchange, case: str) -> None:
    """Each refusal names the field, its kind and what is wrong."""
    request, pointer, code, message = REFUSED[case]
    [(where, what, detail)] = service.faults(GROOVE, request)
    assert (where, what) == (pointer, code)
    assert detail.startswith(message)


def test_all_faults_at_once(service: Exchange) -> None:
    """Joint, load and what the table does not list are told in one answer."""
    request = changed(TO_GROOVE, process="141", position=LEFT_OUT, weld__groove="double-u", load__force="0 kN")
    assert [where for where, _, _ in service.faults(GROOVE, request)] == [
        "#/load/force",
        "#/position",
        "#/process",
        "#/weld/groove",
    ]


def test_every_detail_is_fitting_or_refused(service: Exchange) -> None:
    """Of a standard every detail of the penetration asked for is either sized or refused with a reason."""
    rows = service.get("/v1/preparations").json["preparations"]
    for request, standard, penetration in (
        (TO_GROOVE, "AWS D1.1:2020", "partial"),
        (EN_GROOVE, "ISO 9692-1:2013", "full"),
        (changed(TO_GROOVE, weld={"kind": "full"}), "AWS D1.1:2020", "full"),
    ):
        answer = service.answer(GROOVE, request)
        told = [one["id"] for one in answer["preparations"] + answer["refused"]]
        wanted = [row["id"] for row in rows if (row["standard"], row["penetration"]) == (standard, penetration)]
        assert sorted(told) == sorted(wanted)
        assert all(refusal["why"] for refusal in answer["refused"])
        assert all(one["enough"] is (one["why"] is None) for one in answer["preparations"])


def test_preparations_are_ranked_by_metal(service: Exchange) -> None:
    """Those that are enough come first, least metal first, and the first is the one specified."""
    answer = service.answer(GROOVE, EN_GROOVE)
    areas = [one["area"]["value"] for one in answer["preparations"] if one["enough"]]
    assert areas == sorted(areas)
    assert answer["preparation"] == answer["preparations"][0]
    assert answer["specify"]["throat"]["value"] == 12.0


def test_one_side_leaves_out_what_needs_the_other(service: Exchange) -> None:
    """With one side open no preparation is welded from both, and what needs the second side says so."""
    answer = service.answer(GROOVE, changed(EN_GROOVE, weld__access="one-side"))
    assert {one["root"] for one in answer["preparations"]} <= {"open", "backing"}
    assert any("needs the second side" in refusal["why"] for refusal in answer["refused"])


@pytest.mark.parametrize(
    ("weld", "detail", "why"),
    [
        ({"root": "backing", "land": "1 mm"}, "iso-1.4", "has no land"),
        ({"root": "back-run", "land": "1 mm"}, "iso-2.10", "is for a land of at least 2 mm, not for 1 mm"),
    ],
)
def test_a_land_that_a_detail_does_not_have(service: Exchange, weld: dict[str, Any], detail: str, why: str) -> None:
    """ISO 9692-1 (from memory): 1.4 on backing has no land, 2.10 one of 2 mm and more."""
    thick = [{"thickness": "20 mm", "material": "S355"}] * 2
    answer = service.answer(GROOVE, changed(EN_GROOVE, weld={"kind": "full", **weld}, parts=thick))
    [refusal] = [one for one in answer["refused"] if one["id"] == detail]
    assert refusal["why"] == why


def test_forms_of_a_tee_from_one_side(service: Exchange) -> None:
    """EN: a tee can be bevelled or cut to a J; a V has no second edge there, and a double form no second side."""
    weld = {"kind": "partial", "access": "one-side"}
    answer = service.answer(GROOVE, changed(EN_GROOVE, joint__kind="tee", weld=weld))
    assert {one["form"] for one in answer["preparations"]} == {"single-bevel", "single-j"}


def test_proven_penetration_of_a_listed_square_edge(service: Exchange) -> None:
    """AISC: a square edge keeps its detail's throat or what is proven, whichever it is made by; the proven 4 mm do."""
    thin = [{"thickness": "6 mm", "material": "A36"}] * 2
    fused = {"depth": "4 mm", "vouched": "proven"}
    request = changed(TO_GROOVE, joint__kind="butt", parts=thin, load={"longitudinal": "1 N/mm"}, position="1G")
    request = changed(request, root_pass="automatic")
    answer = service.answer(
        GROOVE, changed(request, weld={"kind": "partial", "groove": "square", "penetration": fused})
    )
    assert [one["id"] for one in answer["preparations"]] == [None, "aws-b-p1c", "aws-b-p1b"]
    assert answer["specify"]["throat"]["value"] == 4.0


def test_no_detail_of_a_full_penetration(service: Exchange) -> None:
    """Strength that no listed detail prepares the edges for is not enough; the need to qualify one is said."""
    answer = service.answer(GROOVE, changed(EN_GROOVE, process="SAW"))
    assert (answer["verdict"], answer["governs"]) == ("cannot-be-reached", "preparation")
    assert (answer["preparation"], answer["preparations"]) == (None, [])
    assert "no-listed-preparation" in [caution["code"] for caution in answer["cautions"]]


def test_no_detail_of_a_partial_penetration(service: Exchange) -> None:
    """10 mm is under the 11 mm that submerged arc details ask for: no size, and every detail says why."""
    thin = [{"thickness": "10 mm", "material": "A36"}] * 2
    answer = service.answer(GROOVE, changed(TO_GROOVE, process="SAW", position="1F", parts=thin))
    assert (answer["verdict"], answer["governs"], answer["specify"]) == ("cannot-be-reached", "preparation", None)


def test_a_square_edge_keeps_what_is_proven(service: Exchange) -> None:
    """EN: a square edge has the proven 4 mm less its tolerance; assumed, it has nothing."""
    weld = {"kind": "partial", "groove": "square"}
    fused = {"depth": "4.5 mm", "vouched": "proven", "tolerance": "0.5 mm"}
    request = changed(EN_GROOVE, weld={**weld, "penetration": fused}, load={"longitudinal": "100 N/mm"})
    answer = service.answer(GROOVE, request)
    assert answer["specify"]["throat"]["value"] == pytest.approx(4.0)
    without = service.answer(GROOVE, changed(request, weld__penetration__vouched="assumed"))
    assert (without["verdict"], without["preparations"]) == ("cannot-be-reached", [])
    assert "send penetration" in without["refused"][-1]["why"]
    assert "assumed-penetration" in [caution["code"] for caution in without["cautions"]]


def test_no_room_for_a_groove(service: Exchange) -> None:
    """A least land of the whole thickness leaves room for no depth: full penetration is needed, and room is nothing."""
    answer = service.answer(GROOVE, changed(EN_GROOVE, weld={"kind": "partial", "minimum_land": "20 mm"}))
    assert (answer["verdict"], answer["utilisation"]) == ("full-penetration-needed", None)
    assert all("leaves room for 0 mm" in one["why"] for one in answer["preparations"])


def test_proven_penetration_may_do_by_itself(service: Exchange) -> None:
    """EN: with 5 mm proven and 2 mm needed nothing is cut, and the proven metal is the throat."""
    fused = {"depth": "5 mm", "vouched": "proven"}
    request = changed(EN_GROOVE, weld={"kind": "partial", "groove": "single-v", "penetration": fused})
    answer = service.answer(GROOVE, changed(request, load={"normal": "705.6 N/mm"}))
    # 0.9 x 490/1.25 = 352.8 N/mm2 square to the throat (EN 1993-1-8 4.5.3.2).
    assert answer["required"]["throat"]["value"] == pytest.approx(2.0)
    assert (answer["specify"]["depth"]["value"], answer["specify"]["throat"]["value"]) == (0.0, 5.0)
    assert any("no preparation is needed" in reason for reason in answer["reasons"])


def test_a_part_that_fails_first(service: Exchange) -> None:
    """200 mm of 16 mm A36 do not carry 2 MN: no weld is specified, and the part is named."""
    answer = service.answer(GROOVE, changed(TO_GROOVE, load__force="2 MN", weld={"kind": "full"}))
    assert (answer["verdict"], answer["governs"]) == ("cannot-be-reached", "base-metal")
    assert (answer["specify"], answer["preparation"]) == (None, None)
    assert answer["utilisation"] > 1.0
    assert any(reason.startswith("Part 2 fails beside the weld") for reason in answer["reasons"])


def test_a_count_is_judged(service: Exchange) -> None:
    """Plugs given are judged, not counted: one too few is short, and says how many are needed."""
    needed = service.answer(GROOVE, PLUGS)["holes"]["needed"]
    assert needed > 1
    short = service.answer(GROOVE, changed(PLUGS, weld__count=needed - 1))
    assert (short["verdict"], short["holes"]["needed"]) == ("short", needed)
    assert short["utilisation"] > 1.0
    assert service.answer(GROOVE, changed(PLUGS, weld__count=needed))["verdict"] == "enough"


def test_a_flare_too_small(service: Exchange) -> None:
    """5/8 of 12 mm is under the 8 mm (5/16 in) that 20 mm parts ask for: no flare groove of it will do."""
    parts = [{"thickness": "20 mm", "material": "A36"}] * 2
    flare = {"kind": "flare-bevel", "radius": "12 mm"}
    answer = service.answer(GROOVE, changed(TO_GROOVE, weld=flare, parts=parts, position=LEFT_OUT))
    assert (answer["verdict"], answer["specify"]) == ("cannot-be-reached", None)
    assert answer["preparations"][0]["throat"]["value"] == pytest.approx(7.5)


def test_unlike_steels_want_low_hydrogen(service: Exchange) -> None:
    """AISC 360-22 J2.6: filler metal matching the weaker of unlike steels is low-hydrogen; E7018 is, E6010 is not."""
    parts = [{"thickness": "20 mm", "material": "A572-65"}, {"thickness": "16 mm", "material": "A36"}]
    request = changed(TO_GROOVE, weld={"kind": "full"}, parts=parts, process="SMAW")
    for filler, needed in (("E6010", True), ("E7018", False)):
        cautions = service.answer(GROOVE, changed(request, filler=filler))["cautions"]
        assert ("low-hydrogen-needed" in [caution["code"] for caution in cautions]) is needed


@pytest.mark.parametrize(("filler", "told"), [("E60", "must be at least"), ("E100", "must be at most one class over")])
def test_filler_of_another_class(service: Exchange, filler: str, told: str) -> None:
    """AISC 360-22 J2.6, Table J2.5: A36 over 3/4 in takes E70, one class more at most; E60 does under compression."""
    thick = [{"thickness": "25 mm", "material": "A36"}] * 2
    request = changed(TO_GROOVE, weld={"kind": "full"}, parts=thick, filler=filler)
    [(pointer, code, detail)] = service.faults(GROOVE, request)
    assert (pointer, code) == ("#/filler", "out-of-scope")
    assert told in detail
    assert "group II" in detail
    pressed = changed(request, load__force="-200 kN")
    assert service.post(GROOVE, pressed).status_code == (200 if filler == "E60" else 422)


def test_stainless_metal_is_weighed_as_carbon_steel(service: Exchange) -> None:
    """Said, since 7850 kg/m3 is not the density of stainless steel."""
    stainless = [{"thickness": "12 mm", "material": "1.4301"}] * 2
    request = changed(EN_GROOVE, rule_set="en-1993-1-4-2006-directional", parts=stainless, filler=LEFT_OUT)
    answer = service.answer(GROOVE, request)
    assert "metal-as-carbon-steel" in [caution["code"] for caution in answer["cautions"]]


def test_working_of_the_chosen_groove_alone(service: Exchange) -> None:
    """Of many preparations only the chosen one is worked on the sheet, its depth used on."""
    steps = service.answer(GROOVE, changed(TO_GROOVE, working=True))["working"]
    [needed] = [step for step in steps if step["symbol"] == "d_req"]
    [throat] = [step for step in steps if step["symbol"] == "a_e"]
    assert throat["with"]["d"]["value"] >= needed["value"]
    assert "single-bevel" in needed["meaning"]
