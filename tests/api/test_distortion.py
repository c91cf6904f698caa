"""Joints whose fields contradict each other, or that no method covers."""

from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import DISTORTION, FLANGE, GROOVED, LAPPED, LEFT_OUT, changed

BY_AREA = changed(GROOVED, joint__weld={"groove": "by-area", "area": "80 mm2"}, joint__runs=LEFT_OUT)
ONE_SIDED = {"joint": {"kind": "tee", "thickness": "12 mm", "leg": "6 mm"}}

FAULTS: dict[str, tuple[Any, str, str]] = {
    "runs of two sides": (changed(FLANGE, joint__runs=2), "#/joint/runs", "inconsistent"),
    "runs of a double V": (changed(GROOVED, joint__weld__groove="double-v"), "#/joint/runs", "inconsistent"),
    "width of one side": (changed(ONE_SIDED, joint__width="90 mm"), "#/joint/width", "inconsistent"),
    "land of all": (changed(GROOVED, joint__weld__land="12 mm"), "#/joint/weld/land", "inconsistent"),
    "half the widths": (changed(BY_AREA, joint__weld__face_width="9 mm"), "#/joint/weld/root_width", "inconsistent"),
    "upside down": (
        changed(BY_AREA, joint__weld__face_width="3 mm", joint__weld__root_width="9 mm"),
        "#/joint/weld/root_width",
        "inconsistent",
    ),
    "current without length": (
        changed(GROOVED, joint__current="200 A", length=LEFT_OUT),
        "#/joint/current",
        "inconsistent",
    ),
    "current of a fillet": (changed(FLANGE, joint__current="200 A"), "#/joint/current", "unknown-field"),
    "member without length": (changed(FLANGE, length=LEFT_OUT), "#/member", "inconsistent"),
    "heat without member": (changed(FLANGE, member=LEFT_OUT), "#/heat_input", "inconsistent"),
    "half a bend": (changed(FLANGE, member__eccentricity=LEFT_OUT), "#/member/eccentricity", "inconsistent"),
    "nothing to restrain": (
        changed(ONE_SIDED, joint__restraint={"span": "500 mm", "coefficient": "20 kN"}),
        "#/joint/restraint",
        "inconsistent",
    ),
    "tight square edge": (
        changed(GROOVED, joint__weld={"groove": "square", "root_opening": "0 mm"}, joint__runs=LEFT_OUT),
        "#/joint/weld/root_opening",
        "out-of-range",
    ),
    "class without dimension": (
        changed(FLANGE, iso_13920={"linear_class": "B"}),
        "#/iso_13920/linear_class",
        "inconsistent",
    ),
    "no dimension at all": (changed(LAPPED, iso_13920={}), "#/iso_13920", "inconsistent"),
    "form of what does not bend": (
        changed(GROOVED, iso_13920={"form_class": "F", "along": "2 m"}),
        "#/iso_13920/form_class",
        "inconsistent",
    ),
    "angle of a lap": (changed(LAPPED, iso_13920={"shorter_leg": "300 mm"}), "#/iso_13920/shorter_leg", "inconsistent"),
    "form of a short part": (
        changed(FLANGE, joint__width=LEFT_OUT, iso_13920={"form_class": "F", "along": "30 mm"}),
        "#/iso_13920/along",
        "out-of-scope",
    ),
    "leg too large to hold a dimension against": (
        changed(LAPPED, joint__leg="8 mm", iso_13920={"across": "300 mm"}),
        "#/iso_13920/across",
        "inconsistent",
    ),
    "no such class": (changed(FLANGE, iso_13920={"linear_class": "E"}), "#/iso_13920/linear_class", "unknown-choice"),
    "under the table": (changed(FLANGE, iso_13920={"across": "1.9 mm"}), "#/iso_13920/across", "out-of-range"),
    "bevel past 70 deg": (
        changed(GROOVED, joint__weld__groove="single-bevel", joint__weld__groove_angle="71 deg"),
        "#/joint/weld/groove_angle",
        "out-of-range",
    ),
}


@pytest.mark.parametrize("case", FAULTS)
def test_what_does_not_fit_is_refused(service: Exchange, case: str) -> None:
    """One fault, at the field that can be changed."""
    request, pointer, code = FAULTS[case]
    [(where, what, detail)] = service.faults(DISTORTION, request)
    assert (where, what) == (pointer, code)
    assert detail


def test_misfits_are_told_all_at_once(service: Exchange) -> None:
    """Every misfit of a sound form is told in one answer."""
    request = changed(FLANGE, joint__runs=2, length=LEFT_OUT, member__second_moment=LEFT_OUT)
    found = {pointer for pointer, _, _ in service.faults(DISTORTION, request)}
    assert found == {"#/joint/runs", "#/member", "#/member/second_moment"}


@pytest.mark.parametrize("request_", [FLANGE, GROOVED, LAPPED, BY_AREA, ONE_SIDED])
def test_alternatives_say_what_they_cost(service: Exchange, request_: Any) -> None:
    """Each way has its metal and its strength beside its distortion; the answer holds against the document."""
    answer = service.answer(DISTORTION, request_)
    assert answer["verdict"] == "estimated"
    for way in answer["alternatives"]:
        assert way["metal_ratio"] > 0.0
        assert way["strength_ratio"] > 0.0
    ways = {way["do"] for way in answer["alternatives"]}
    kind = request_["joint"]["kind"]
    expected = {"over"}
    if kind != "butt":
        expected.add("intermittent")
    if kind == "tee":
        expected.add("bevelled")
    if request_ is GROOVED or request_ is ONE_SIDED:
        expected.add("double-sided")
    assert ways == expected
