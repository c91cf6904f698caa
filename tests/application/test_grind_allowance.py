"""What may be ground off: what must hold of any seam, and that doing what an answer says gives what it promises."""

from __future__ import annotations

from dataclasses import fields, is_dataclass, replace
from math import pi
from typing import Any

import pytest
from hypothesis import assume
from hypothesis import strategies as st
from tests.application.joints import NONE, given, grounds, hundredths, mm

from truethroat_service.application.core.answers import Common
from truethroat_service.application.core.faults import Refused
from truethroat_service.application.grind_allowance import grind_allowance
from truethroat_service.application.grind_allowance.request import GrindAllowanceRequest
from truethroat_service.application.joints.seams import FLAT_SEAMS, Finish, Penetration, Preparation, Seam

CLOSE = 1e-9
LINES = ("theoretical", "prepared_depth", "deduction", "penetration", "face", "cap")


def accounts(answer: dict[str, Any]) -> list[tuple[dict[str, Any], dict[str, Any]]]:
    """Give both accounts of an answer, the creditable one first: the lines of each and what follows from them."""
    return [(answer["budget"], answer), (answer["physical"], answer["physical"])]


def nominal(request: GrindAllowanceRequest) -> GrindAllowanceRequest:
    """Request with nothing ground."""
    return replace(request, finish=Finish())


@given(request=grounds(tolerances=True))
def test_the_lines_add_up(request: GrindAllowanceRequest) -> None:
    """Contributions add up to the throat as welded, and what is removed and what remains to that again."""
    for budget, _ in accounts(grind_allowance(request).wire()):
        assert sum(mm(budget[line]) for line in LINES) == pytest.approx(mm(budget["as_welded"]), abs=CLOSE)
        assert mm(budget["removed"]) == pytest.approx(mm(budget["as_welded"]) - mm(budget["remaining"]), abs=CLOSE)
        assert mm(budget["removed"]) >= 0.0
        assert mm(budget["remaining"]) >= 0.0
        assert mm(budget["margin"]) == pytest.approx(mm(budget["remaining"]) - request.required_throat, abs=CLOSE)
        assert mm(budget["required"]) == request.required_throat
        assert mm(budget["deduction"]) <= 0.0
        assert mm(budget["cap"]) <= CLOSE or mm(budget["as_welded"]) == 0.0


@given(request=grounds(tolerances=True))
def test_tolerances_only_take_away(request: GrindAllowanceRequest) -> None:
    """What remains at the worst is no more than by root sum square, and that no more than the nominal."""
    for budget, _ in accounts(grind_allowance(request).wire()):
        worst, rss = mm(budget["remaining_worst_case"]), mm(budget["remaining_root_sum_square"])
        assert worst <= rss + CLOSE
        assert rss <= mm(budget["remaining"]) + CLOSE


@given(request=grounds())
def test_without_tolerances_all_three_are_one(request: GrindAllowanceRequest) -> None:
    """Without a tolerance the worst case and the root sum square are the nominal, and the verdict says so."""
    answer = grind_allowance(request).wire()
    assert answer["judged_on"] == "nominal"
    for budget, _ in accounts(answer):
        assert budget["remaining_worst_case"] == budget["remaining_root_sum_square"] == budget["remaining"]


@given(request=grounds(tolerances=True))
def test_the_creditable_is_never_more(request: GrindAllowanceRequest) -> None:
    """What counts for credit is part of what is there."""
    answer = grind_allowance(request).wire()
    for name in ("as_welded", "remaining", "remaining_worst_case"):
        assert mm(answer["budget"][name]) <= mm(answer["physical"][name]) + CLOSE
    order = ("short", "short-when-finished", "enough-on-trust", "enough")
    assert order.index(answer["verdict"]) <= order.index(answer["physical"]["verdict"])


@given(request=grounds())
def test_the_verdict_is_what_the_lines_say(request: GrindAllowanceRequest) -> None:
    """Short as welded, short by the finish alone, or enough: by comparing two lines with the required throat."""
    answer = grind_allowance(request).wire()
    assert (answer["remedies"] == []) <= (answer["verdict"] == "enough" or request.seam.kind in ("edge", "butt"))
    for budget, result in accounts(answer):
        q = request.required_throat
        as_welded, remaining = mm(budget["as_welded"]), mm(budget["remaining"])
        assume(abs(as_welded - q) > 1e-6 and abs(remaining - q) > 1e-6)
        expected = "short" if as_welded < q else "enough" if remaining > q else "short-when-finished"
        # Trust changes the word at the top, and no figure.
        assert result["verdict"] in {expected, "enough-on-trust" if expected != "enough" else expected}
        assert (mm(result["allowance"]) == 0.0) or expected != "short"


def _kept_after(request: GrindAllowanceRequest, off: float) -> float:
    """Throat left when that much has come off the face as welded, by asking for the seam so ground."""
    face = request.face
    if off < face:
        lower = replace(nominal(request), face_height=face - off, hollow=None)
        return mm(grind_allowance(lower).wire()["budget"]["remaining"])
    plane = "flush" if request.seam.kind in FLAT_SEAMS else "flat"
    under = replace(request, finish=Finish(plane, below=off - face))
    return mm(grind_allowance(under).wire()["budget"]["remaining"])


@given(request=grounds(rules=False), beyond=hundredths(0.01, 0.5))
def test_grinding_the_allowance_leaves_the_throat(request: GrindAllowanceRequest, beyond: float) -> None:
    """With exactly the allowance off, the required throat is left; with any more off, less is."""
    request = nominal(request)
    answer = grind_allowance(request).wire()
    assume(mm(answer["budget"]["as_welded"]) >= request.required_throat)
    # A fillet's convexity is on top of what counts: while only it comes off, the throat stays.
    allowance = mm(answer["allowance"])
    assume(request.seam.kind != "fillet" or allowance >= request.face)
    q = request.required_throat
    assert _kept_after(request, allowance) == pytest.approx(q, rel=CLOSE)
    assert _kept_after(request, allowance + beyond) == pytest.approx(max(q - beyond, 0.0), rel=CLOSE, abs=CLOSE)


@given(request=grounds(tolerances=True, rules=False))
def test_the_face_to_leave_gives_the_throat(request: GrindAllowanceRequest) -> None:
    """A face left at that height keeps the throat as welded, even more face than there is; none is asked in vain."""
    request = replace(nominal(request), face_height_tolerance=0.0, hollow_tolerance=0.0)
    answer = grind_allowance(request).wire()
    assume(answer["leave"] is not None)
    leave = mm(answer["leave"])
    left = grind_allowance(replace(request, face_height=leave, hollow=None)).wire()
    worst = mm(left["budget"]["remaining_worst_case"])
    assert worst >= request.required_throat * (1 - CLOSE)
    assert left["verdict"] == "enough"
    if leave > 0.0:
        assert worst == pytest.approx(request.required_throat, rel=CLOSE)


@given(request=grounds("closed-corner", "half-open-corner", "open-corner", rules=False), beyond=hundredths(0.05, 2))
def test_the_largest_radius_leaves_the_throat(request: GrindAllowanceRequest, beyond: float) -> None:
    """Blended to the largest radius exactly the required throat remains; any larger one leaves less."""
    request = nominal(request)
    answer = grind_allowance(request).wire()
    assume(answer["largest_radius"] is not None)
    q, radius = request.required_throat, mm(answer["largest_radius"])
    blended = grind_allowance(replace(request, finish=Finish("radius", radius))).wire()
    assert mm(blended["budget"]["remaining"]) == pytest.approx(q, rel=1e-8)
    assert blended["verdict"] == "enough"
    larger = grind_allowance(replace(request, finish=Finish("radius", radius + beyond))).wire()
    assert mm(larger["budget"]["remaining"]) < q


@given(request=grounds("half-open-corner", "open-corner", tolerances=True, rules=False))
def test_the_largest_radius_allows_for_the_grinder(request: GrindAllowanceRequest) -> None:
    """Asked with a grinder's depth and tolerance, the largest radius keeps the throat at the worst."""
    request = replace(request, finish=Finish("radius", 3.0, below=0.2, tolerance=0.3))
    answer = grind_allowance(request).wire()
    assume(answer["largest_radius"] is not None)
    radius = mm(answer["largest_radius"])
    blended = grind_allowance(replace(request, finish=replace(request.finish, radius=radius))).wire()
    assert blended["verdict"] == "enough"
    assert mm(blended["budget"]["remaining_worst_case"]) == pytest.approx(request.required_throat, rel=1e-8)


def test_a_radius_stops_where_the_faces_do() -> None:
    """A blend at 90 deg runs its radius onto each face (geometry): a 12 mm face holds no more than 12 mm of radius."""
    seam = Seam("open-corner", (10.0, 10.0), width=(12.0, 40.0))
    answer = grind_allowance(GrindAllowanceRequest(seam, 2.0, face_height=5.0)).wire()
    assert mm(answer["largest_radius"]) == pytest.approx(12.0)


def _applied(request: GrindAllowanceRequest, remedy: dict[str, Any]) -> GrindAllowanceRequest | None:
    """Request for the seam after a remedy; None for the second side, which this seam's section does not show."""
    if remedy["do"] == "smaller-radius":
        return replace(request, finish=replace(request.finish, radius=mm(remedy["radius"])))
    if remedy["do"] == "leave-face":
        # What is left of the face is as exact as the grinder.
        return replace(
            request,
            finish=Finish(),
            face_height=mm(remedy["face_height"]),
            face_height_tolerance=request.finish.tolerance,
        )
    if remedy["do"] == "bevel":
        prepared = replace(request.preparation, depth=mm(remedy["depth"]))
        return replace(request, preparation=prepared, face_height=None, face_height_tolerance=0.0)
    return None


@given(request=grounds(tolerances=True))
def test_remedies_do_what_they_promise(request: GrindAllowanceRequest) -> None:
    """With a remedy done, the answer is enough, and what is left is what the remedy said it would be."""
    for remedy in grind_allowance(request).wire()["remedies"]:
        applied = _applied(request, remedy)
        if applied is None:
            continue
        after = grind_allowance(applied).wire()
        assert after["verdict"] == "enough", remedy
        assert mm(after["budget"]["remaining"]) == pytest.approx(mm(remedy["remaining"]), abs=CLOSE), remedy


@pytest.mark.parametrize("kind", FLAT_SEAMS)
def test_no_weld_makes_a_part_thicker(kind: Any) -> None:
    """3 mm plates part before a throat of 3.6 mm does (statics), so no flat seam of theirs is asked for it."""
    fused = Penetration(3.6, "proven")
    with pytest.raises(Refused, match="must be at most the 3 mm of the thinner part"):
        grind_allowance(GrindAllowanceRequest(Seam(kind, (3.0, 3.0)), 3.6, penetration=fused))


def test_a_bevel_makes_up_for_a_hollow() -> None:
    """A square butt left 0.4 mm hollow that needs 2 mm of throat is cut 2.4 mm deep, up to the half millimetre 2.5."""
    answer = grind_allowance(GrindAllowanceRequest(Seam("butt", (6.0, 6.0)), 2.0, Finish(), hollow=0.4)).wire()
    [bevel] = [remedy for remedy in answer["remedies"] if remedy["do"] == "bevel"]
    assert mm(bevel["depth"]) == pytest.approx(2.5)
    assert mm(bevel["remaining"]) == pytest.approx(2.1)


@given(request=grounds(tolerances=True))
def test_a_second_side_makes_up_what_is_missing(request: GrindAllowanceRequest) -> None:
    """What the second side is to be welded with is at least what is missing at the worst, by less than a step."""
    answer = grind_allowance(request).wire()
    budget = answer["budget"]
    for remedy in answer["remedies"]:
        if remedy["do"] == "weld-second-side":
            missing = request.required_throat - mm(budget["remaining_worst_case"])
            assert missing - CLOSE <= mm(remedy["throat"]) < missing + 0.5
            left = mm(budget["remaining"]) + mm(remedy["throat"])
            room = request.seam.runs_through - request.finish.below if request.seam.kind == "butt" else left
            assert mm(remedy["remaining"]) == pytest.approx(min(left, room))


@given(request=grounds(), more=hundredths(0, 2))
def test_more_fusion_is_never_less_throat(request: GrindAllowanceRequest, more: float) -> None:
    """More penetration, vouched for in the same way, leaves no less throat in either account."""
    assume(request.seam.kind != "half-open-corner" or request.penetration.depth + more <= request.seam.overlap)
    assume(request.penetration.depth > 0.0)
    deeper = replace(request.penetration, depth=request.penetration.depth + more)
    before, after = (grind_allowance(asked).wire() for asked in (request, replace(request, penetration=deeper)))
    for (budget, _), (deep, _) in zip(accounts(before), accounts(after), strict=True):
        assert mm(deep["as_welded"]) >= mm(budget["as_welded"]) - CLOSE
        assert mm(deep["remaining"]) >= mm(budget["remaining"]) - CLOSE


def _scaled(value: Any, k: float) -> Any:
    """Give a request, or a part of one, with every length in it times ``k``; angles and words stay."""
    if isinstance(value, float):
        return value * k
    if isinstance(value, tuple):
        return tuple(_scaled(entry, k) for entry in value)
    if is_dataclass(value) and not isinstance(value, type | Common):
        kept = ("angle", "groove_angle")
        return replace(
            value, **{f.name: _scaled(getattr(value, f.name), k) for f in fields(value) if f.name not in kept}
        )
    return value


@given(request=grounds(tolerances=True, rules=False), k=st.sampled_from([0.5, 2.0, 25.4]))
def test_a_seam_twice_the_size_is_twice_the_throat(request: GrindAllowanceRequest, k: float) -> None:
    """Geometry knows no unit: with every length multiplied, so is every line, allowance, face and radius."""
    # The usual root radius of a J or U is a length of its own, and the width of a U decides where its toes are.
    assume(request.preparation.depth == 0.0 or request.preparation.groove != "single-u")
    answer, larger = grind_allowance(request).wire(), grind_allowance(_scaled(request, k)).wire()
    assert larger["verdict"] == answer["verdict"]
    for (budget, result), (grown, after) in zip(accounts(answer), accounts(larger), strict=True):
        for line in (*LINES, "as_welded", "removed", "remaining", "remaining_worst_case", "remaining_root_sum_square"):
            assert mm(grown[line]) == pytest.approx(k * mm(budget[line]), rel=1e-9, abs=1e-9), line
        for name in ("allowance", "leave", "largest_radius"):
            if result[name] is None:
                assert after[name] is None
            else:
                assert mm(after[name]) == pytest.approx(k * mm(result[name]), rel=1e-8, abs=1e-9), name


@given(request=grounds(rules=False), vouched=st.sampled_from(["assumed", "measured", "proven"]))
def test_who_vouches_decides_what_is_credited(request: GrindAllowanceRequest, vouched: Any) -> None:
    """Without a rule set, assumed penetration is all that the creditable account leaves out."""
    request = replace(request, penetration=replace(request.penetration, vouched=vouched))
    answer = grind_allowance(request).wire()
    left_out = vouched == "assumed" and request.penetration.depth > 0.0
    without = grind_allowance(replace(request, penetration=NONE)).wire() if left_out else answer
    for line in (*LINES, "as_welded", "remaining"):
        assert answer["budget"][line] == without["physical"][line]


@pytest.mark.parametrize("rules", ["aisc-360-22-lrfd", "en-1993-1-8-2005-simplified"])
@given(data=st.data())
def test_codes_credit_no_face(rules: str, data: Any) -> None:
    """With a code's rule set the creditable account has no face height; a hollow is taken off all the same."""
    request = replace(data.draw(grounds(*FLAT_SEAMS, rules=False)), rule_set=rules)
    answer = grind_allowance(request).wire()
    assert mm(answer["budget"]["face"]) == pytest.approx(min(request.face, 0.0))
    assert mm(answer["physical"]["face"]) == pytest.approx(request.face)


@given(request=grounds("fillet"))
def test_convexity_is_never_credited(request: GrindAllowanceRequest) -> None:
    """A fillet's throat is that under the line between its toes, less any hollow (AWS A3.0: theoretical throat)."""
    answer = grind_allowance(nominal(request)).wire()
    for budget, _ in accounts(answer):
        assert mm(budget["face"]) == pytest.approx(min(request.face, 0.0))


def test_a_narrow_face_caps_the_throat_at_its_toe() -> None:
    """A 3 mm deep root under the middle of an 8 mm face is 5 mm from either toe (geometry: 3, 4, 5)."""
    request = GrindAllowanceRequest(
        Seam("butt", (10.0, 10.0)),
        4.0,
        penetration=Penetration(3.0, "proven"),
        face_height=4.0,
        face_width=8.0,
    )
    answer = grind_allowance(request).wire()
    assert mm(answer["budget"]["as_welded"]) == pytest.approx(5.0)
    assert mm(answer["budget"]["cap"]) == pytest.approx(-2.0)
    uncapped = grind_allowance(replace(request, face_width=None)).wire()
    assert mm(uncapped["budget"]["as_welded"]) == pytest.approx(7.0)
    # Geometry: toes 7 mm from a root 3 mm deep are sqrt(49 - 9) to either side.
    assert mm(uncapped["least_face_width"]) == pytest.approx(2.0 * 40.0**0.5)
    assert "face-width-not-given" in {caution["code"] for caution in uncapped["cautions"]}


def test_the_root_of_a_bevel_lies_under_its_uncut_side() -> None:
    """A 45 deg bevel 4 mm deep opens 4 mm; a 10 mm face overlaps 3 mm each side: 4 deep, 3 to the toe, 5 away."""
    request = GrindAllowanceRequest(
        Seam("butt", (10.0, 10.0)),
        4.0,
        preparation=Preparation(4.0, "single-bevel", pi / 4),
        face_height=3.0,
        face_width=10.0,
    )
    assert mm(grind_allowance(request).wire()["budget"]["as_welded"]) == pytest.approx(5.0)


def test_a_finish_through_the_root_leaves_nothing() -> None:
    """Grinding past the fused point leaves no throat, says so, and goes no lower than nothing."""
    request = GrindAllowanceRequest(
        Seam("open-corner", (6.0, 6.0)), 2.0, finish=Finish("flush", below=7.0), face_height=2.0
    )
    answer = grind_allowance(request).wire()
    assert mm(answer["budget"]["remaining"]) == 0.0
    assert "Physical: the finish grinds through to the root." in answer["reasons"]
    assert "thinning" in {caution["code"] for caution in answer["cautions"]}
