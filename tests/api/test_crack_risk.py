"""Passes to grade whose fields do not fit together, or lie beyond the index."""

from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import CRACK, GRADED, LEFT_OUT, changed

MEASURED = changed(GRADED, bead={"width": "9 mm", "depth": "6 mm"})
BUTT_BEAD = changed(MEASURED, joint="butt", thickness=LEFT_OUT)

FAULTS: dict[str, tuple[Any, str, str]] = {
    "nothing to grade": ({"joint": "butt"}, "#", "inconsistent"),
    "leg without parts": (changed(GRADED, thickness=LEFT_OUT, leg="6 mm"), "#/leg", "inconsistent"),
    "parts of a butt": (changed(BUTT_BEAD, thickness=["9 mm", "9 mm"]), "#/thickness", "inconsistent"),
    "hydrogen without parts": (changed(BUTT_BEAD, low_hydrogen=True), "#/low_hydrogen", "inconsistent"),
    "mitre of a butt": (changed(BUTT_BEAD, bead=GRADED["bead"]), "#/bead/throat", "inconsistent"),
    "face over the width": (changed(MEASURED, bead__face_width="9.1 mm"), "#/bead/face_width", "inconsistent"),
    "sulphur beyond the index": (changed(GRADED, weld_metal__S=0.06), "#/weld_metal/S", "out-of-scope"),
    "sheet": (changed(GRADED, thickness=["2.9 mm", "8 mm"]), "#/thickness/0", "out-of-scope"),
    "element missing": (changed(GRADED, weld_metal__Nb=LEFT_OUT), "#/weld_metal/Nb", "missing"),
    "two beads": (changed(MEASURED, bead__throat="5 mm"), "", ""),
    "no depth": (changed(MEASURED, bead__depth=LEFT_OUT), "#/bead/depth", "missing"),
    "no joint": (changed(GRADED, joint=LEFT_OUT), "#/joint", "missing"),
    "unknown crater": (changed(GRADED, crater="none"), "#/crater", "unknown-choice"),
    "negative hollow": (changed(GRADED, hollow="-1 mm"), "#/hollow", "out-of-range"),
}


@pytest.mark.parametrize("case", FAULTS)
def test_what_does_not_fit_is_refused(service: Exchange, case: str) -> None:
    """A fault at each field that can be changed; a bead of two forms names what does not belong and what lacks."""
    request, pointer, code = FAULTS[case]
    found = service.faults(CRACK, request)
    if not pointer:
        assert {where for where, _, _ in found} == {"#/bead/depth", "#/bead/width", "#/bead/penetration"}
        return
    [(where, what, detail)] = found
    assert (where, what) == (pointer, code)
    assert detail


def test_misfits_are_told_all_at_once(service: Exchange) -> None:
    """Every misfit of a sound form is told in one answer."""
    request = changed(GRADED, joint="butt", leg="6 mm", weld_metal__C=0.3)
    found = {pointer for pointer, _, _ in service.faults(CRACK, request)}
    assert found == {"#/bead/throat", "#/leg", "#/thickness", "#/weld_metal/C"}


def test_an_answer_may_be_sent_back(service: Exchange) -> None:
    """A least leg told is enough when it is laid."""
    told = service.answer(CRACK, GRADED)["least_sizes"]
    assert {size["enough"] for size in told} == {None}
    most = max((size["leg"] for size in told), key=lambda leg: float(leg["value"]))
    sizes = service.answer(CRACK, changed(GRADED, leg=most))["least_sizes"]
    assert {size["enough"] for size in sizes} == {True}
