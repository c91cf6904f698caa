"""How deep to prepare an edge: what must hold of any edge, and that its depth is what a later question wants."""

from __future__ import annotations

from dataclasses import replace
from math import inf, pi, tan
from typing import Any

import pytest
from hypothesis import assume
from hypothesis import strategies as st
from tests.application.joints import edges, given, hundredths, mm

from truethroat_service.application.bevel_depth import bevel_depth
from truethroat_service.application.bevel_depth.request import BevelDepthRequest
from truethroat_service.application.grind_allowance import grind_allowance
from truethroat_service.application.grind_allowance.request import GrindAllowanceRequest
from truethroat_service.application.joints.seams import Finish, Penetration, Preparation, Seam

CLOSE = 1e-9


def ground(request: BevelDepthRequest, depth: float) -> dict[str, Any]:
    """Ask what may be ground off the seam so prepared, by the same rules and with the same finish."""
    return grind_allowance(
        GrindAllowanceRequest(
            seam=request.seam,
            required_throat=request.required_throat,
            finish=request.finish,
            preparation=Preparation(
                depth, request.form, request.groove_angle, min(request.depth_tolerance, depth) if depth > 0 else 0.0
            ),
            penetration=request.penetration,
            rule_set=request.rule_set,
            process=request.process,
            position=request.position,
        )
    ).wire()


@given(request=edges(tolerances=True))
def test_the_depth_leaves_the_throat_and_a_step_less_does_not(request: BevelDepthRequest) -> None:
    """Handed on with the same rules, the depth leaves the throat in the creditable account at its worst, just."""
    answer = bevel_depth(request).wire()
    assume(answer["depth"] is not None)
    depth, step = mm(answer["depth"]), request.depth_step or 0.0
    kept = ground(request, depth)["creditable"]
    assert kept["verdict"] == "enough"
    assert mm(kept["remaining_worst_case"]) >= request.required_throat * (1 - CLOSE)
    for line in ("prepared_depth", "deduction", "penetration", "as_welded", "remaining", "remaining_worst_case"):
        assert mm(answer["budget"][line]) == pytest.approx(mm(kept[line]), abs=CLOSE)
    assert answer["deduction"] == {**answer["budget"]["deduction"], **answer["deduction"]}
    if depth - step > request.depth_tolerance:
        assert ground(request, depth - step)["creditable"]["verdict"] != "enough"


@given(request=edges(tolerances=True))
def test_the_depth_is_a_multiple_of_its_step_and_leaves_the_land(request: BevelDepthRequest) -> None:
    """What is cut is a multiple of the step and leaves at least the least land; else full penetration is needed."""
    answer = bevel_depth(request).wire()
    through = request.seam.runs_through
    if answer["verdict"] == "full-penetration-needed":
        for name in ("depth", "setback", "land", "budget", "area", "filler", "callout"):
            assert answer[name] is None
        assert through < inf
        assert "full-penetration" in {way["do"] for way in answer["alternatives"]}
        return
    assert answer["verdict"] == "enough"
    step = request.depth_step or 0.0
    depth = mm(answer["depth"])
    assert depth / step == pytest.approx(round(depth / step), abs=1e-9)
    if request.seam.kind == "edge":
        assert answer["land"] is None
    else:
        assert mm(answer["land"]) == pytest.approx(through - depth)
        assert mm(answer["land"]) >= request.minimum_land - CLOSE


@given(request=edges(), angle=st.integers(10, 60), both=st.booleans())
def test_setback_and_area_are_those_of_a_triangle(request: BevelDepthRequest, angle: int, both: bool) -> None:
    """A bevel is set back depth tan(angle) and holds half of that times the depth; a V has half the angle twice."""
    request = replace(
        request,
        groove="single-bevel",
        groove_angle=angle * pi / 180,
        bevelled="both" if both else 1,
        rule_set=None,
    )
    answer = bevel_depth(request).wire()
    assume(answer["depth"] is not None)
    depth = mm(answer["depth"])
    setback = depth * tan(angle * pi / 180 / (2 if both else 1))
    assert mm(answer["setback"]) == pytest.approx(setback, rel=CLOSE, abs=CLOSE)
    area = (2 if both else 1) * depth * setback / 2
    assert answer["area"]["value"] == pytest.approx(area, rel=CLOSE, abs=CLOSE)
    # Carbon steel, 7850 kg/m3: 1 mm2 over 1 m is 0.00785 kg.
    assert answer["filler"]["mass_per_length"]["value"] == pytest.approx(area * 0.00785, rel=CLOSE, abs=CLOSE)


@given(request=edges())
def test_a_bevel_on_both_parts_is_a_v(request: BevelDepthRequest) -> None:
    """Bevels or J's on both parts are asked, and answered, as a V or a U."""
    form = {"single-bevel": "single-v", "single-j": "single-u"}.get(request.groove)
    assume(form is not None)
    both = bevel_depth(replace(request, bevelled="both")).wire()
    assert both == bevel_depth(replace(request, groove=form)).wire()  # type: ignore[arg-type]


@given(request=edges(tolerances=True))
def test_another_groove_among_the_alternatives_is_what_it_would_be_asked_for(request: BevelDepthRequest) -> None:
    """Each alternative groove has the depth and area that asking for it gives; they come least metal first."""
    answer = bevel_depth(request).wire()
    areas = [way["area"]["value"] for way in answer["alternatives"]]
    assert areas == sorted(areas)
    for way in answer["alternatives"]:
        if way["do"].startswith("single-"):
            asked = bevel_depth(replace(request, groove=way["do"], groove_angle=None)).wire()
            assert asked["depth"] == way["size"]
            assert asked["area"] == way["area"]
            assert asked["filler"] == way["filler"]
        assert way["do"] != request.form


@given(request=edges(), more=hundredths(0, 3))
def test_a_greater_throat_is_never_a_lesser_depth(request: BevelDepthRequest, more: float) -> None:
    """The depth does not fall as the throat to keep grows."""
    spare = request.finish.below + request.finish.tolerance
    assert request.seam.thickness is not None
    assume(request.required_throat + more + spare <= min(request.seam.thickness))
    before = bevel_depth(request).wire()
    after = bevel_depth(replace(request, required_throat=request.required_throat + more)).wire()
    if before["depth"] is None:
        assert after["depth"] is None
    elif after["depth"] is not None:
        assert mm(after["depth"]) >= mm(before["depth"])


@given(request=edges())
def test_only_proven_penetration_spares_depth(request: BevelDepthRequest) -> None:
    """Penetration that nobody has proven leaves the depth as it is without any, and is named in a caution."""
    assume(request.penetration.depth > 0.0)
    without = bevel_depth(replace(request, penetration=Penetration(0.0, "assumed"))).wire()
    for vouched in ("assumed", "measured"):
        answer = bevel_depth(replace(request, penetration=replace(request.penetration, vouched=vouched))).wire()
        assert answer["depth"] == without["depth"]
        assert f"{vouched}-penetration" in {caution["code"] for caution in answer["cautions"]}
    proven = bevel_depth(replace(request, penetration=replace(request.penetration, vouched="proven"))).wire()
    assert mm(proven["deduction"]) == 0.0
    if proven["depth"] is None:
        assert without["depth"] is None
    elif without["depth"] is not None:
        assert mm(proven["depth"]) <= mm(without["depth"])


def test_proven_penetration_may_do_by_itself() -> None:
    """With 3 mm proven and 2 mm to keep, nothing is cut, and the drawing says a square edge."""
    request = BevelDepthRequest(Seam("butt", (10.0, 12.0)), 2.0, penetration=Penetration(3.0, "proven"))
    answer = bevel_depth(request).wire()
    assert (mm(answer["depth"]), mm(answer["setback"]), mm(answer["land"])) == (0.0, 0.0, 10.0)
    assert answer["callout"] == {"iso_2553": "s 3 mm, square edge", "aws_a2_4": "(3 mm) square groove"}
    assert "the edge needs no preparation" in " ".join(answer["reasons"])


def test_a_drawing_says_depth_and_throat() -> None:
    """ISO 2553 writes the throat after an s; AWS A2.4 the depth and then the size in brackets (from memory)."""
    answer = bevel_depth(BevelDepthRequest(Seam("butt", (10.0, 12.0)), 5.0, Finish("flush"), "single-v")).wire()
    assert answer["callout"] == {
        "iso_2553": "s 5 mm, single V, 60 deg, prepared 5 mm deep",
        "aws_a2_4": "5 mm (5 mm) single V groove, 60 deg",
    }


def test_a_finer_step_is_named_where_it_would_fit() -> None:
    """7.8 mm of depth leaves 2.2 mm of land, 8 mm leaves less than the least 2.1 mm: a finer step would fit."""
    request = BevelDepthRequest(Seam("butt", (10.0, 10.0)), 7.8, minimum_land=2.1, depth_step=0.5)
    answer = bevel_depth(request).wire()
    assert answer["verdict"] == "full-penetration-needed"
    assert any("send a smaller depth_step" in reason for reason in answer["reasons"])
    assert bevel_depth(replace(request, depth_step=0.1)).wire()["verdict"] == "enough"
