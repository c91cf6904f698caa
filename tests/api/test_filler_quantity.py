"""What an estimate is refused for, and what a refusal names."""

from __future__ import annotations

from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import ESTIMATE, JOB, LEFT_OUT, PRICED, V_SHAPE, changed

Json = dict[str, Any]
SHAPE = "#/welds/0/shape"


def shaped(shape: Json, **more: Any) -> Json:
    """Give a request for one weld of a shape."""
    return {"welds": [{"shape": shape, "length": "1 m", **more}]}


def grooved(**changes: Any) -> Json:
    """Give a request for the V groove with fields changed."""
    return shaped(changed(V_SHAPE, **changes))


FILLET: Json = {"kind": "fillet", "legs": ["6 mm", "6 mm"]}
CORNER: Json = {"kind": "open-corner", "thickness": ["8 mm", "8 mm"]}
DOUBLE: Json = {"kind": "double-v", "thickness": "20 mm", "angle": "60 deg"}
WIRE: Json = {"wire_diameter": "1.2 mm", "feed_speed": "9 m/min"}
SQUARE: Json = {"kind": "square", "thickness": "8 mm"}
REFUSED: dict[str, tuple[Json, str, str]] = {
    "no size": (shaped({"kind": "fillet"}), f"{SHAPE}/legs", "inconsistent"),
    "two sizes": (shaped({**FILLET, "throat": "4 mm"}), f"{SHAPE}/legs", "inconsistent"),
    "two faces": (shaped({**FILLET, "convexity": "1 mm", "hollow": "1 mm"}), f"{SHAPE}/hollow", "inconsistent"),
    "hollow to the root": (shaped({**FILLET, "hollow": "4.25 mm"}), f"{SHAPE}/hollow", "inconsistent"),
    "too wide a gap": (shaped({**FILLET, "root_gap": "5 mm"}), f"{SHAPE}/root_gap", "out-of-scope"),
    "deeper than the plate": (grooved(land=LEFT_OUT, depth="13 mm", reinforcement=LEFT_OUT, back_gouge=LEFT_OUT),
                              f"{SHAPE}/depth", "inconsistent"),
    "deeper from two sides": (shaped({**DOUBLE, "depths": ["12 mm", "9 mm"]}), f"{SHAPE}/depths", "inconsistent"),
    "depth and land that are not the plate": (grooved(depth="9 mm"), f"{SHAPE}/land", "inconsistent"),
    "nothing but land": (grooved(land="12 mm"), f"{SHAPE}/land", "inconsistent"),
    "far side of a partial groove": (
        grooved(land=LEFT_OUT, depth="8 mm", back_gouge=LEFT_OUT), f"{SHAPE}/reinforcement/root", "inconsistent"
    ),
    "gouge of a partial groove": (
        grooved(land=LEFT_OUT, depth="8 mm", reinforcement=LEFT_OUT), f"{SHAPE}/back_gouge", "inconsistent"
    ),
    "gouge of a partial double": (
        shaped({**DOUBLE, "depths": ["8 mm", "8 mm"], "back_gouge": {"depth": "3 mm", "width": "6 mm"}}),
        f"{SHAPE}/back_gouge", "inconsistent",
    ),
    "gouge through the plate": (grooved(back_gouge__depth="13 mm"), f"{SHAPE}/back_gouge/depth", "inconsistent"),
    "width and overlap": (
        grooved(reinforcement__face__width="14 mm"), f"{SHAPE}/reinforcement/face/overlap", "inconsistent"
    ),
    "cap over nothing": (
        shaped({**SQUARE, "reinforcement": {"face": {"height": "1 mm"}}}),
        f"{SHAPE}/reinforcement/face", "inconsistent",
    ),
    "a bevel laid flat": (grooved(kind="single-bevel", angle="80 deg"), f"{SHAPE}/angle", "out-of-range"),
    "nothing to fill": (shaped(SQUARE), SHAPE, "inconsistent"),
    "overlap of the whole end": (
        shaped({"kind": "half-open-corner", "thickness": ["6 mm", "6 mm"], "overlap": "6 mm"}),
        f"{SHAPE}/overlap", "inconsistent",
    ),
    "rounded to nothing": (shaped({**CORNER, "fill": "rounded"}), f"{SHAPE}/radius", "inconsistent"),
    "radius of a flat corner": (shaped({**CORNER, "radius": "4 mm"}), f"{SHAPE}/radius", "inconsistent"),
    "crown of a sharp corner": (shaped({**CORNER, "fill": "sharp", "crown": "1 mm"}), f"{SHAPE}/crown", "inconsistent"),
    "radius past a toe": (
        shaped({**CORNER, "fill": "rounded", "radius": "8.1 mm"}), f"{SHAPE}/radius", "inconsistent"
    ),
    "planes that do not meet": (
        shaped({**CORNER, "thickness": ["20 mm", "4 mm"], "angle": "120 deg", "fill": "sharp"}),
        f"{SHAPE}/fill", "inconsistent",
    ),
    "stick with a gun": (changed(JOB, welds__0__filler="E7018"), "#/welds/0/filler", "inconsistent"),
    "gas with a stick": (shaped(FILLET, process="SMAW", gas_flow="15 L/min"), "#/welds/0/gas_flow", "inconsistent"),
    "stub of a wire": (
        shaped(FILLET, process="GMAW", electrode={"length": "350 mm", "stub": "50 mm"}),
        "#/welds/0/electrode", "inconsistent",
    ),
    "stub of nothing said": (
        shaped(FILLET, electrode={"length": "350 mm", "stub": "50 mm"}), "#/welds/0/electrode", "inconsistent"
    ),
    "nothing but stub": (
        shaped(FILLET, process="111", electrode={"length": "350 mm", "stub": "350 mm"}),
        "#/welds/0/electrode/stub", "inconsistent",
    ),
    "a stick fed": (shaped(FILLET, process="SMAW", deposition=WIRE), "#/welds/0/deposition", "inconsistent"),
    "cored wire taken for solid": (
        shaped(FILLET, process="136", deposition=WIRE), "#/welds/0/deposition/wire_diameter", "inconsistent"
    ),
    "metal-cored wire taken for solid": (
        shaped(FILLET, process="138", deposition=WIRE), "#/welds/0/deposition/wire_diameter", "inconsistent"
    ),
    "a wire of unknown efficiency": (shaped(FILLET, deposition=WIRE), "#/welds/0/efficiency", "inconsistent"),
    "a speed without a rate": (
        shaped(FILLET, bead={"travel_speed": "300 mm/min"}), "#/welds/0/deposition", "inconsistent"
    ),
    "prices of nothing": (changed(JOB, prices={"currency": "EUR"}), "#/prices", "inconsistent"),
    "one price twice": (
        changed(PRICED, prices__gases=[{"amount": amount, "per": "m3", "process": code}
                                       for amount, code in ((4, "135"), (5, "GMAW"))]),
        "#/prices/gases/1", "inconsistent",
    ),
    "no welds": ({"welds": []}, "#/welds", "wrong-count"),
    "a weld alone": ({"welds": JOB["welds"][0]}, "#/welds", "wrong-type"),
    "half a weld": (changed(JOB, welds__0__count=1.5), "#/welds/0/count", "wrong-type"),
    "no weld of it": (changed(JOB, welds__0__count=0), "#/welds/0/count", "out-of-range"),
    "a count with a unit": (changed(JOB, welds__0__count="4"), "#/welds/0/count", "wrong-type"),
    "a currency by its sign": (changed(PRICED, prices__currency="$"), "#/prices/currency", "unknown-choice"),
    "a currency in small letters": (changed(PRICED, prices__currency="eur"), "#/prices/currency", "unknown-choice"),
    "a price of no unit": (changed(PRICED, prices__labour={"amount": 5}), "#/prices/labour/per", "missing"),
    "labour by the pound": (changed(PRICED, prices__labour__per="lb"), "#/prices/labour/per", "unknown-choice"),
    "a price below nothing": (changed(PRICED, prices__labour__amount=-1), "#/prices/labour/amount", "out-of-range"),
    "a rate without a unit": (changed(JOB, welds__0__deposition={"rate": 3}), "#/welds/0/deposition/rate",
                              "missing-unit"),
    "efficiency in per cent": (changed(JOB, welds__0__efficiency=93), "#/welds/0/efficiency", "out-of-range"),
}  # fmt: skip


@pytest.mark.parametrize("case", REFUSED)
def test_what_an_estimate_is_refused_for(service: Exchange, case: str) -> None:
    """Each refusal names the field and its kind, and there is no second one."""
    request, pointer, code = REFUSED[case]
    [(where, what, detail)] = service.faults(ESTIMATE, request)
    assert (where, what) == (pointer, code)
    assert detail


@pytest.mark.parametrize(
    ("units", "thickness", "text"),
    [("us", ["2 in", "1/4 in"], "2 in and 1/4 in"), ("metric", ["50.8 mm", "6.35 mm"], "50.8 mm and 6.35 mm")],
)
def test_planes_that_do_not_meet_are_measured_in_the_units_asked_for(
    service: Exchange, units: str, thickness: list[str], text: str
) -> None:
    """The refusal repeats both thicknesses as the request has them, in its own units alone."""
    shape = {**CORNER, "thickness": thickness, "angle": "120 deg", "fill": "sharp"}
    [(_, _, detail)] = service.faults(ESTIMATE, {**shaped(shape), "units": units})
    assert detail.endswith(f"sides of {text}")


def test_sides_that_meet_go_through(service: Exchange) -> None:
    """Two depths that add up to the thickness leave no land: the gap is filled through, and the far side gouged."""
    meeting = {**DOUBLE, "root_gap": "2 mm", "back_gouge": {"depth": "3 mm", "width": "6 mm"}}
    told = service.answer(ESTIMATE, shaped({**meeting, "depths": ["12 mm", "8 mm"]}))["welds"][0]["parts"]
    without = service.answer(ESTIMATE, shaped({**meeting, "land": "0 mm"}))["welds"][0]["parts"]
    assert [part["part"] for part in told] == ["groove", "gap", "back-gouge"]
    assert told[1:] == without[1:]


def test_all_faults_of_all_welds_at_once(service: Exchange) -> None:
    """What is wrong with each weld, and with the prices, is told together."""
    request = {
        "welds": [
            JOB["welds"][0],
            {"shape": {"kind": "fillet"}, "length": "1 m", "process": "SMAW", "gas_flow": "15 L/min"},
            {"shape": SQUARE, "length": "1 m"},
        ],
        "prices": {"currency": "EUR"},
    }
    assert [pointer for pointer, _, _ in service.faults(ESTIMATE, request)] == [
        "#/prices",
        "#/welds/1/gas_flow",
        "#/welds/1/shape/legs",
        "#/welds/2/shape",
    ]


def test_as_many_welds_as_the_document_says(service: Exchange) -> None:
    """A thousand welds fit into a body and are answered; one more is refused by its count."""
    answer = service.answer(ESTIMATE, {"welds": [JOB["welds"][0]] * 1000})
    assert answer["totals"]["count"] == 1000
    [(pointer, code, _)] = service.faults(ESTIMATE, {"welds": [JOB["welds"][0]] * 1001})
    assert (pointer, code) == ("#/welds", "wrong-count")


def test_an_estimate_judges_nothing(service: Exchange) -> None:
    """The verdict says what was done; no part of the answer speaks of strength."""
    answer = service.answer(ESTIMATE, changed(PRICED, working=True))
    assert answer["verdict"] == "estimated"
    assert "strength" not in str(answer["welds"]) + str(answer["reasons"])


def test_the_area_is_that_of_the_working(service: Exchange) -> None:
    """A step gives what the next takes: area, mass, hours, money, for the least and for the most."""
    answer = service.answer(ESTIMATE, {**grooved(), "working": True})
    steps = {step["symbol"]: step for step in answer["working"]}
    assert steps["M"]["with"]["A"]["value"] == steps["A"]["value"]
    assert steps["A"]["value"] == pytest.approx(answer["welds"][0]["area"]["value"], rel=1e-14)
    assert steps["A"]["with"]["A_fill"]["value"] == steps["A_fill"]["value"]
    priced = service.answer(ESTIMATE, changed(PRICED, working=True))
    least, most = ([step for step in priced["working"] if step["meaning"].endswith(f"weld 1, {end})")]
                   for end in ("least", "most"))  # fmt: skip
    for steps_of in (least, most):
        found = {step["symbol"]: step for step in steps_of}
        assert found["T_w"]["with"]["T_a"]["value"] == found["T_a"]["value"]
        assert found["C_l"]["with"]["T_w"]["value"] == found["T_w"]["value"]
    assert {step["symbol"] for step in least} == {step["symbol"] for step in most}


def test_rates_of_a_process_are_those_of_an_estimate(service: Exchange) -> None:
    """What an estimate takes for a process spans the usual rates that /v1/processes lists for it."""
    listed = {process["id"]: process["rates"] for process in service.get("/v1/processes").json["processes"]}
    for process in ("SMAW", "GTAW", "SAW", "FCAW-S", "FCAW-G"):
        (row,) = service.answer(ESTIMATE, shaped(FILLET, process=process))["welds"]
        for figure, field in (("efficiency", "efficiency"), ("operator_factor", "operator_factor")):
            usual = [rate for rate in listed[process][field] if rate["usual"]]
            found = row["rests_on"][figure]
            if usual:
                assert found["least"] == min(rate["least"] for rate in usual)
                assert found["most"] == max(rate["most"] for rate in usual)
            else:
                assert found is None
