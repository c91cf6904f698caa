"""Passes whose fields contradict each other, lack one another, or lie beyond the rules."""

from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import HEAT, HEATED, LEFT_OUT, changed

FAULTS: dict[str, tuple[Any, str, str]] = {
    "nothing asked": ({}, "#", "inconsistent"),
    "only a process": ({"process": "SAW"}, "#", "inconsistent"),
    "measured and worked out": (changed(HEATED, cooling_time="8 s"), "#/cooling_time", "inconsistent"),
    "equivalents twice": (changed(HEATED, carbon_equivalents={"ce": 0.4}), "#/carbon_equivalents", "inconsistent"),
    "window upside down": (
        changed(HEATED, cooling_window={"least": "9 s", "most": "9 s"}),
        "#/cooling_window",
        "inconsistent",
    ),
    "flame": (changed(HEATED, process="OFW"), "#/process", "out-of-scope"),
    "beam": (changed(HEATED, process="52"), "#/process", "out-of-scope"),
    "weld metal without hydrogen": (changed(HEATED, weld_metal_cet=0.3), "#/weld_metal_cet", "inconsistent"),
    "combined without hydrogen": (
        changed(HEATED, combined_thickness="40 mm"),
        "#/combined_thickness",
        "inconsistent",
    ),
    "combined under its parts": (
        changed(HEATED, combined_thickness="15 mm", hydrogen="5 ml/100g"),
        "#/combined_thickness",
        "inconsistent",
    ),
    "thickest too thin": (
        changed(HEATED, thickest_part="14 mm", preheat_category="A"),
        "#/thickest_part",
        "inconsistent",
    ),
    "treated without group": (changed(HEATED, heat_treated=True), "#/heat_treated", "inconsistent"),
    "group without steel": (changed(HEATED, composition=LEFT_OUT, steel_group=1), "#/steel_group", "inconsistent"),
    "leg of a butt": (changed(HEATED, seam="butt-fill", leg="6 mm"), "#/leg", "inconsistent"),
    "required leg alone": (changed(HEATED, required_leg="6 mm"), "#/required_leg", "inconsistent"),
    "metal without speed": (
        changed(HEATED, arc={"voltage": "28 V", "current": "250 A", "deposition_rate": "4 kg/h"}),
        "#/arc/travel_speed",
        "inconsistent",
    ),
    "metal of a butt": (
        changed(HEATED, seam="plate", arc__deposition_rate="4 kg/h"),
        "#/arc/deposition_rate",
        "inconsistent",
    ),
    "high alloy": (changed(HEATED, composition__Cr=18, composition__Ni=8), "#/composition", "out-of-scope"),
    "carbon beyond method B": (
        changed(HEATED, hydrogen="5 ml/100g", composition__C=0.33, composition__Mn=0.9),
        "#/composition/C",
        "out-of-scope",
    ),
    "two arcs": (changed(HEATED, arc={"arc_energy": "1 kJ/mm", "voltage": "20 V"}), "#/arc/voltage", "unknown-field"),
    "no current": (changed(HEATED, arc={"voltage": "20 V"}), "#/arc/current", "missing"),
    "no carbon": (changed(HEATED, composition={"Mn": 1}), "#/composition/C", "missing"),
    "efficiency over one": (changed(HEATED, efficiency=1.1), "#/efficiency", "out-of-range"),
    "too hot": (changed(HEATED, preheat="401 degC"), "#/preheat", "out-of-range"),
    "temperature without unit": (changed(HEATED, preheat=20), "#/preheat", "missing-unit"),
    "no hydrogen": (changed(HEATED, hydrogen="0 ml/100g"), "#/hydrogen", "out-of-range"),
    "unknown seam": (changed(HEATED, seam="lap"), "#/seam", "unknown-choice"),
    "unknown element": (changed(HEATED, composition__Zz=1), "#/composition/Zz", "unknown-field"),
}


@pytest.mark.parametrize("case", FAULTS)
def test_what_does_not_fit_is_refused(service: Exchange, case: str) -> None:
    """One fault, at the field that can be changed."""
    request, pointer, code = FAULTS[case]
    [(where, what, detail)] = service.faults(HEAT, request)
    assert (where, what) == (pointer, code)
    assert detail


def test_misfits_are_told_all_at_once(service: Exchange) -> None:
    """Every misfit of a sound form is told in one answer."""
    request = changed(HEATED, cooling_time="8 s", process="OFW", leg="6 mm", seam="plate", heat_treated=True)
    found = {pointer for pointer, _, _ in service.faults(HEAT, request)}
    assert found == {"#/cooling_time", "#/process", "#/leg", "#/heat_treated"}


def test_an_efficiency_of_ones_own_serves_any_process(service: Exchange) -> None:
    """A given efficiency is used in place of the table's, for a flame too, and is echoed."""
    answer = service.answer(HEAT, changed(HEATED, process="OFW", efficiency=0.5))
    assert answer["energy"]["heat_input"]["value"] == pytest.approx(0.5 * 1.2)
    assert answer["provenance"]["parameters"] == {"k": 0.5}


def test_what_is_left_out_says_what_it_needs(service: Exchange) -> None:
    """Each null of an answer is in the list with its reason."""
    answer = service.answer(HEAT, {"arc": {"voltage": "20 V", "current": "300 A", "travel_speed": "2.5 mm/s"}})
    nulls = {field for field in ("cooling", "limits", "hardness", "fillet") if answer[field] is None}
    reasons = {entry["field"]: entry["reason"] for entry in answer["left_out"]}
    assert nulls <= set(reasons)
    assert reasons["energy/heat_input"] == "needs process or efficiency"
    assert answer["energy"]["heat_input"] is None


def test_temperatures_of_either_scale(service: Exchange) -> None:
    """68 degF is 20 degC: one answer, one fingerprint."""
    in_f = service.answer(HEAT, changed(HEATED, preheat="68 degF"))
    assert in_f == service.answer(HEAT, changed(HEATED, preheat="20 degC"))
