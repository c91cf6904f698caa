"""Coupons whose fields contradict each other, or lie beyond the rules asked for."""

from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import BREAK, CORNER_COUPON, COUPON, LEFT_OUT, changed

BROKEN = {"ended": "broken", "fused_to_root": True}
D1_1 = changed(COUPON, rules="aws-d1-1-2010", outcome=BROKEN)

FAULTS: dict[str, tuple[Any, str, str]] = {
    "fillet outside": (changed(COUPON, coupon="outside-corner"), "#/coupon", "inconsistent"),
    "corner as a tee": (changed(CORNER_COUPON, coupon="tee"), "#/coupon", "inconsistent"),
    "no thickness": (changed(COUPON, seam__thickness=LEFT_OUT), "#/seam/thickness", "inconsistent"),
    "prepared fillet": (changed(COUPON, preparation={"depth": "2 mm"}), "#/preparation/depth", "inconsistent"),
    "prepared through": (changed(CORNER_COUPON, preparation={"depth": "7 mm"}), "#/preparation/depth", "out-of-range"),
    "tolerance over the depth": (
        changed(CORNER_COUPON, preparation={"tolerance": "1 mm"}),
        "#/preparation/tolerance",
        "inconsistent",
    ),
    "two faces": (changed(COUPON, face_height="1 mm", hollow="1 mm"), "#/hollow", "inconsistent"),
    "notches meet": (changed(COUPON, notch={"side": "75 mm"}), "#/notch/side", "inconsistent"),
    "yield over tensile": (changed(COUPON, weld__yield_strength="501 MPa"), "#/weld/yield_strength", "inconsistent"),
    "outcome without rules": (changed(D1_1, rules=LEFT_OUT), "#/outcome", "inconsistent"),
    "outcome by ISO 9017": (changed(D1_1, rules="iso-9017"), "#/outcome", "inconsistent"),
    "outcome of a corner": (changed(D1_1, coupon="inside-corner"), "#/outcome", "inconsistent"),
    "short specimen": (changed(D1_1, length="149 mm"), "#/length", "out-of-scope"),
    "long specimen": (changed(D1_1, length="153 mm"), "#/length", "out-of-scope"),
    "sum under the largest": (
        changed(D1_1, outcome={**BROKEN, "largest_void": "2 mm", "sum_of_voids": "1 mm"}),
        "#/outcome/sum_of_voids",
        "inconsistent",
    ),
    "too thick for its steel": (
        changed(COUPON, seam__thickness=["280 mm", "280 mm"], plates={"material": "S355"}),
        "#/plates/material",
        "out-of-scope",
    ),
    "flat corner": (changed(CORNER_COUPON, finish={"to": "flat"}), "#/finish/to", "inconsistent"),
    "butt": (changed(COUPON, seam={"kind": "butt", "thickness": ["6 mm", "6 mm"]}), "#/seam/kind", "unknown-choice"),
    "weightless hand": (changed(COUPON, hand_force="0 N"), "#/hand_force", "out-of-range"),
    "folded with voids": (
        changed(D1_1, outcome={"ended": "folded-flat", "largest_void": "1 mm"}),
        "#/outcome/largest_void",
        "unknown-field",
    ),
}


@pytest.mark.parametrize("case", FAULTS)
def test_what_does_not_fit_is_refused(service: Exchange, case: str) -> None:
    """One fault, at the field that can be changed."""
    request, pointer, code = FAULTS[case]
    [(where, what, detail)] = service.faults(BREAK, request)
    assert (where, what) == (pointer, code)
    assert detail


def test_misfits_are_told_all_at_once(service: Exchange) -> None:
    """Every misfit of a sound form is told in one answer."""
    request = changed(COUPON, coupon="outside-corner", notch={"side": "80 mm"}, face_height="1 mm", hollow="1 mm")
    found = {pointer for pointer, _, _ in service.faults(BREAK, request)}
    assert found == {"#/coupon", "#/notch/side", "#/hollow"}


@pytest.mark.parametrize(("pulled", "verdict"), [("56 lbf", "opens-by-hand"), ("1 N", "does-not-open-by-hand")])
def test_hands_are_the_callers(service: Exchange, pulled: str, verdict: str) -> None:
    """What hands can pull is a field, in pounds or newtons."""
    assert service.answer(BREAK, changed(CORNER_COUPON, hand_force=pulled))["verdict"] == verdict


def test_no_throat_at_all(service: Exchange) -> None:
    """A tight square edge ground flush holds nothing, and the answer says so."""
    request = changed(CORNER_COUPON, penetration=LEFT_OUT, finish={"to": "flush"})
    answer = service.answer(BREAK, request)
    assert answer["verdict"] == "opens-by-hand"
    assert answer["force"]["breaking_at_most"]["value"] == 0.0
    assert answer["reasons"][0] == "Physical: nothing of the throat is left to break."


def test_a_tall_face_is_cautioned(service: Exchange) -> None:
    """A face higher than the root lies deep may be wider than its throat; as welded the answer says so."""
    answer = service.answer(BREAK, changed(CORNER_COUPON, face_height="2 mm"))
    assert "face-width-not-known" in {caution["code"] for caution in answer["cautions"]}
