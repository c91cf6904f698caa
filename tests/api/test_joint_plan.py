"""Plans of joints: what does not fit together, and parts that are the single resources' own answers."""

from math import isclose
from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import LEFT_OUT, OUTSIDE, PLAN, STIFFENER, changed

Json = dict[str, Any]


def alike(one: Any, other: Any) -> bool:
    """Tell whether two answers are the same word for word, and number for number to twelve figures.

    A plan hands the sizes it found on as they are; sent by a caller they have fifteen figures.
    """
    if isinstance(one, dict) and isinstance(other, dict):
        return one.keys() == other.keys() and all(alike(one[key], other[key]) for key in one)
    if isinstance(one, list) and isinstance(other, list):
        return len(one) == len(other) and all(map(alike, one, other))
    if isinstance(one, float) and isinstance(other, float):
        return isclose(one, other, rel_tol=1e-12)
    return bool(one == other)


FAULTS: dict[str, tuple[Any, str, str]] = {
    "corner for a load": (
        changed(OUTSIDE, basis="load", required_throat=LEFT_OUT, load={"force": "9 kN", "angle": "0 deg"}),
        "#/basis",
        "inconsistent",
    ),
    "tee for a throat": (
        changed(STIFFENER, basis="throat", load=LEFT_OUT, required_throat="5 mm"),
        "#/basis",
        "inconsistent",
    ),
    "load without a load": (changed(STIFFENER, load=LEFT_OUT), "#/load", "inconsistent"),
    "load and throat": (changed(STIFFENER, required_throat="5 mm"), "#/required_throat", "inconsistent"),
    "throat without a throat": (changed(OUTSIDE, required_throat=LEFT_OUT), "#/required_throat", "inconsistent"),
    "tee ground flush": (changed(STIFFENER, finish={"to": "flush"}), "#/finish/to", "inconsistent"),
    "window upside down": (
        changed(STIFFENER, arc={"heat_input": "1 kJ/mm"}, cooling_window={"least": "20 s", "most": "5 s"}),
        "#/cooling_window/most",
        "inconsistent",
    ),
    "window without an arc": (
        changed(STIFFENER, cooling_window={"least": "5 s", "most": "20 s"}),
        "#/cooling_window",
        "inconsistent",
    ),
    "hydrogen without a steel": (changed(STIFFENER, hydrogen="5 ml/100g"), "#/hydrogen", "inconsistent"),
    "deviations of an even spread": (
        changed(STIFFENER, spread={"deviations": 3}, tolerances={"legs": "1 mm"}),
        "#/spread/deviations",
        "inconsistent",
    ),
    "intermittent corner": (changed(OUTSIDE, intermittent={"loading": "shear"}), "#/intermittent", "inconsistent"),
    "spread of nothing": (changed(STIFFENER, spread={}), "#/spread", "inconsistent"),
    "preheat of nothing": (changed(STIFFENER, preheat="100 degC"), "#/preheat", "inconsistent"),
    "corner held": (changed(OUTSIDE, held_from_turning=True), "#/held_from_turning", "inconsistent"),
    "lap bevelled": (
        changed(STIFFENER, joint__kind="lap", bevelling_speed="300 mm/min"),
        "#/bevelling_speed",
        "inconsistent",
    ),
    "butt at an angle": (
        changed(STIFFENER, joint={"kind": "butt", "angle": "80 deg"}),
        "#/joint/angle",
        "inconsistent",
    ),
    "gap of a tight seam": (changed(OUTSIDE, joint__root_gap="1 mm"), "#/joint/root_gap", "inconsistent"),
    "thickness of a tee": (
        changed(STIFFENER, tolerances={"thickness": "1 mm"}),
        "#/tolerances/thickness",
        "inconsistent",
    ),
    "legs of a butt": (
        changed(STIFFENER, joint__kind="butt", tolerances={"legs": "1 mm"}),
        "#/tolerances/legs",
        "inconsistent",
    ),
    "tolerance over the thickness": (
        changed(OUTSIDE, tolerances={"thickness": "10 mm"}),
        "#/tolerances/thickness",
        "inconsistent",
    ),
    "tolerance over the penetration": (
        changed(OUTSIDE, penetration={"depth": "1 mm", "vouched": "proven", "tolerance": "2 mm"}),
        "#/penetration/tolerance",
        "inconsistent",
    ),
    "throat over the part": (changed(OUTSIDE, required_throat="11 mm"), "#/required_throat", "out-of-range"),
    "no strength": (
        changed(STIFFENER, rule_set="thin-part", parts=[{"thickness": "12 mm"}, {"thickness": "10 mm"}]),
        "#/rule_set",
        "inconsistent",
    ),
    "no filler": (
        changed(STIFFENER, rule_set="aisc-360-22-lrfd"),
        "#/filler",
        "inconsistent",
    ),
    "too thin": (changed(STIFFENER, parts__1__thickness="3 mm"), "#/parts/1/thickness", "out-of-scope"),
    "weight under nothing": (changed(STIFFENER, weights={"heat": -1}), "#/weights/heat", "out-of-range"),
    "unknown weight": (changed(STIFFENER, weights={"looks": 1}), "#/weights/looks", "unknown-field"),
    "bare length": (changed(STIFFENER, length=300), "#/length", "missing-unit"),
}


@pytest.mark.parametrize(("request_", "pointer", "code"), FAULTS.values(), ids=FAULTS)
def test_a_fault_is_told_where_it_is(service: Exchange, request_: Any, pointer: str, code: str) -> None:
    """What does not fit together is refused at its own field."""
    assert (pointer, code) in {(found, kind) for found, kind, _ in service.faults(PLAN, request_)}


def _way(answer: Json, name: str) -> Json:
    """Give one way of a plan."""
    (found,) = [way for way in answer["ways"] if way["way"] == name]
    parts: Json = found["parts"]
    return parts


def test_parts_of_a_fillet_are_the_single_answers(service: Exchange) -> None:
    """Asked alone, every resource says word for word what it says within the plan."""
    arc = {"voltage": "28 V", "current": "250 A", "travel_speed": "350 mm/min"}
    planned = service.answer(PLAN, changed(STIFFENER, arc=arc, detail="all"))
    parts = _way(planned, "fillet-both-sides")
    sized = service.answer(
        "/v1/fillet-size",
        {
            **{field: STIFFENER[field] for field in ("rule_set", "parts", "basis", "process", "position")},
            "joint": {"kind": "tee", "sides": 2},
            "load": {**STIFFENER["load"], "length": "300 mm"},
        },
    )
    assert alike(parts["fillet_size"], sized)
    leg = sized["specify"]["leg"]
    weld = {
        "shape": {"kind": "fillet", "legs": [leg, leg]},
        "length": "300 mm",
        "process": "135",
        "position": "PB",
    }
    assert alike(parts["filler_quantity"], service.answer("/v1/filler-quantity", {"welds": [weld, weld]}))
    tee = {"kind": "tee", "thickness": "12 mm", "leg": leg, "sides": 2}
    assert alike(parts["distortion"], service.answer("/v1/distortion", {"joint": tee}))
    heat = {
        "arc": arc,
        "process": "135",
        "thickness": "10 mm",
        "thickest_part": "12 mm",
        "seam": "tee-fillet",
        "leg": leg,
        "required_leg": sized["minimum"]["leg"],
    }
    assert alike(parts["heat"], service.answer("/v1/heat", heat))
    graded = {"joint": "fillet", "process": "135", "thickness": ["12 mm", "10 mm"], "leg": leg}
    assert alike(parts["crack_risk"], service.answer("/v1/crack-risk", graded))
    assert [name for name, part in parts.items() if part is None] == ["groove_size", "bevel_depth", "grind_allowance"]


def test_parts_of_a_bevelled_corner_are_the_single_answers(service: Exchange) -> None:
    """Its depth, and what may be ground of it, are what the two resources say."""
    parts = _way(service.answer(PLAN, changed(OUTSIDE, detail="all")), "bevelled-edge")
    shared = {field: OUTSIDE[field] for field in ("rule_set", "process", "position", "required_throat", "finish")}
    seam = {"kind": "closed-corner", "thickness": ["10 mm", "10 mm"]}
    cut = service.answer("/v1/bevel-depth", {**shared, "seam": seam, "depth_tolerance": "0.5 mm"})
    assert alike(parts["bevel_depth"], cut)
    ground = {**shared, "seam": seam, "preparation": {"depth": cut["depth"], "tolerance": "0.5 mm"}}
    ground["penetration"] = {"depth": "0 mm", "vouched": "proven"}
    assert alike(parts["grind_allowance"], service.answer("/v1/grind-allowance", ground))


def test_parts_of_a_groove_are_the_single_answer(service: Exchange) -> None:
    """The preparation is that which the resource chooses."""
    parts = _way(service.answer(PLAN, changed(STIFFENER, detail="all")), "full-penetration")
    request = {
        **{field: STIFFENER[field] for field in ("rule_set", "parts", "basis", "process", "position")},
        "joint": {"kind": "tee"},
        "weld": {"kind": "full"},
        "load": {**STIFFENER["load"], "length": "300 mm"},
    }
    assert alike(parts["groove_size"], service.answer("/v1/groove-size", request))


def test_only_the_recommended_way_is_shown_whole(service: Exchange) -> None:
    """The others are told without their parts, unless all are asked for."""
    ways = service.answer(PLAN, STIFFENER)["ways"]
    assert [way["parts"] is not None for way in ways] == [True, *(False for _ in ways[1:])]
    assert all(way["parts"] is not None for way in service.answer(PLAN, changed(STIFFENER, detail="all"))["ways"])


@pytest.mark.parametrize("request_", [STIFFENER, OUTSIDE], ids=["tee", "corner"])
def test_units_of_the_answer_change_no_ranking(service: Exchange, request_: Json) -> None:
    """In inches the same ways come in the same order at the same scores, the shop's steps aside."""
    stepped = {"basis": "throat", "required_throat": "3/16 in"} if request_ is OUTSIDE else {}
    metric = service.answer(PLAN, {**request_, **stepped, "weights": {"distortion": 0}})
    us = service.answer(PLAN, {**request_, **stepped, "weights": {"distortion": 0}, "units": "us"})
    assert {way["way"] for way in metric["ways"]} == {way["way"] for way in us["ways"]}
    assert {way["way"] for way in metric["refused"]} == {way["way"] for way in us["refused"]}
    assert metric["recommended"] == us["recommended"]


def test_a_plan_rests_on_the_clauses_of_its_parts(service: Exchange) -> None:
    """Its provenance names what the single answers name."""
    planned = service.answer(PLAN, changed(STIFFENER, detail="all"))
    for way in planned["ways"]:
        for part in way["parts"].values():
            if part is not None:
                assert set(part["provenance"]["clauses"]) <= set(planned["provenance"]["clauses"])
                assert set(part["provenance"]["editions"]) <= set(planned["provenance"]["editions"])
