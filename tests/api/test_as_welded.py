"""Readings of a fillet that contradict each other, or lie beyond the standard."""

from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import GAUGED, LEFT_OUT, SIX, changed

FAULTS: dict[str, tuple[Any, str, str]] = {
    "two faces": (changed(SIX, convexity="1 mm", hollow="1 mm"), "#/hollow", "inconsistent"),
    "gap of a leg": (changed(SIX, root_gap="6 mm"), "#/root_gap", "inconsistent"),
    "tolerance of a leg": (changed(SIX, legs=["2 mm", "6 mm"], reading_tolerance="2 mm"), "#/reading_tolerance", ""),
    "hollow to the root": (changed(SIX, hollow="4.3 mm"), "#/hollow", "inconsistent"),
    "tolerance over the depth": (
        changed(SIX, penetration={"depth": "1 mm", "vouched": "measured", "tolerance": "2 mm"}),
        "#/penetration/tolerance",
        "inconsistent",
    ),
    "thin for ISO 5817": (changed(SIX, thickness=["0.4 mm", "3 mm"]), "#/thickness/0", "out-of-scope"),
    "thin for D1.1": (
        changed(SIX, thickness=["3 mm", "2 mm"], quality="aws-d1-1-2020"),
        "#/thickness/1",
        "out-of-scope",
    ),
    "nothing required": (changed(SIX, required={}), "#/required/throat", "missing"),
    "both required": (changed(SIX, required={"leg": "6 mm", "throat": "4 mm"}), "#/required/throat", "unknown-field"),
    "share over one": (changed(SIX, short_share=1.1), "#/short_share", "out-of-range"),
    "unknown level": (changed(SIX, quality="iso-5817-a"), "#/quality", "unknown-choice"),
    "no quality": (changed(SIX, quality=LEFT_OUT), "#/quality", "missing"),
}


@pytest.mark.parametrize("case", FAULTS)
def test_what_does_not_fit_is_refused(service: Exchange, case: str) -> None:
    """One fault, at the field that can be changed."""
    request, pointer, code = FAULTS[case]
    [(where, what, detail)] = service.faults(GAUGED, request)
    assert (where, what) == (pointer, code or "inconsistent")
    assert detail


def test_misfits_are_told_all_at_once(service: Exchange) -> None:
    """Every misfit of a sound form is told in one answer."""
    request = changed(SIX, convexity="1 mm", hollow="1 mm", root_gap="9 mm", thickness=["0.2 mm", "0.2 mm"])
    found = {pointer for pointer, _, _ in service.faults(GAUGED, request)}
    assert found == {"#/hollow", "#/root_gap", "#/thickness/0", "#/thickness/1"}
