"""Readings of a fillet that contradict each other, or lie beyond the standard."""

from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import GAUGED, LEFT_OUT, SIX, THROUGH, changed

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
    "length beyond the weld": (
        changed(SIX, extent={"of_weld": "10 mm", "throat": "11 mm"}),
        "#/extent/throat",
        "inconsistent",
    ),
    "length of what was not read": (
        changed(SIX, extent={"of_weld": "99 mm", "undercut": "9 mm"}),
        "#/extent/undercut",
        "inconsistent",
    ),
    "lengths without the weld's": (changed(SIX, extent={"throat": "9 mm"}), "#/extent/of_weld", "missing"),
    "length that D1.1 does not go by": (
        changed(
            SIX, quality="aws-d1-1-2020", lack_of_fusion="1 mm", extent={"of_weld": "99 mm", "lack_of_fusion": "9 mm"}
        ),
        "#/extent/lack_of_fusion",
        "inconsistent",
    ),
    "length of undercut under cyclic load": (
        changed(
            SIX,
            quality="aws-d1-1-2020",
            loading="cyclic-other",
            undercut="1 mm",
            extent={"of_weld": "99 mm", "undercut": "9 mm"},
        ),
        "#/extent/undercut",
        "inconsistent",
    ),
    "throat's length of a butt": (
        changed(THROUGH, extent={"of_weld": "99 mm", "throat": "9 mm"}),
        "#/extent/throat",
        "inconsistent",
    ),
    "root deeper and not so deep": (
        changed(SIX, incomplete_penetration="1 mm", penetration={"depth": "1 mm", "vouched": "proven"}),
        "#/incomplete_penetration",
        "inconsistent",
    ),
    "loading by ISO 5817": (changed(SIX, loading="static"), "#/loading", "inconsistent"),
    "flush by ISO 5817": (changed(THROUGH, flush={}), "#/flush", "inconsistent"),
    "pore by D1.1": (changed(SIX, quality="aws-d1-1-2020", surface_pore="1 mm"), "#/surface_pore", "inconsistent"),
    "no pore by D1.1": (changed(SIX, quality="aws-d1-1-2020", surface_pore="0 mm"), "#/surface_pore", "inconsistent"),
    "burn-through by D1.1": (changed(SIX, quality="aws-d1-1-2020", burn_through=True), "#/burn_through", ""),
    "width by D1.1": (changed(THROUGH, quality="aws-d1-1-2020"), "#/face_width", "inconsistent"),
    "no width": (changed(THROUGH, face_width=LEFT_OUT), "#/face_width", "inconsistent"),
    "width of nothing": (changed(THROUGH, root_width="3 mm"), "#/root_width", "inconsistent"),
    "width of the tolerance": (changed(THROUGH, face_width="1 mm", reading_tolerance="2 mm"), "#/face_width", ""),
    "root of a second side": (changed(THROUGH, sides=2, root_concavity="1 mm"), "#/root_concavity", "inconsistent"),
    "root of a part": (
        changed(THROUGH, required={"throat": "5 mm"}, root_concavity="1 mm"),
        "#/root_concavity",
        "inconsistent",
    ),
    "throat over the part": (changed(THROUGH, required={"throat": "11 mm"}), "#/required/throat", "inconsistent"),
    "ground away": (
        changed(THROUGH, quality="aws-d1-1-2020", face_width=LEFT_OUT, flush={"thinning": "10 mm"}),
        "#/flush/thinning",
        "inconsistent",
    ),
    "unknown kind": (changed(SIX, kind="spot"), "#/kind", "unknown-choice"),
    "legs of a butt": (changed(THROUGH, legs=["6 mm", "6 mm"]), "#/legs", "unknown-field"),
    "reinforcement of a fillet": (changed(SIX, reinforcement="1 mm"), "#/reinforcement", "unknown-field"),
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


def test_a_body_that_is_no_object_is_refused(service: Exchange) -> None:
    """A list is no weld."""
    [(where, what, _)] = service.faults(GAUGED, [SIX])
    assert (where, what) == ("#", "wrong-type")


def test_a_fillet_need_not_say_that_it_is_one(service: Exchange) -> None:
    """A body without a kind is a fillet's, with the same fingerprint."""
    assert service.answer(GAUGED, SIX) == service.answer(GAUGED, changed(SIX, kind="fillet"))


def test_static_load_is_what_d1_1_means_by_none(service: Exchange) -> None:
    """A loading left out is static, with the same fingerprint, and the answer says so."""
    request = changed(SIX, quality="aws-d1-1-2020")
    assert service.answer(GAUGED, request) == service.answer(GAUGED, changed(request, loading="static"))
    said = [caution["code"] for caution in service.answer(GAUGED, request)["cautions"]]
    assert "static-only" in said
