"""AWS D1.1/D1.1M:2020, 7.21.1 (earlier 5.21.1, 5.22.1), read as a quotation: a fillet where the parts do not touch."""

from typing import Any

import pytest
from tests.published.conftest import Ask, Refusal
from tests.published.fillets import FILLET_SIZE, LRFD, leg, steel


def _gap(gap: str) -> dict[str, Any]:
    """Request for the 5/16 in fillet that 1 in plates ask for at the least, with a gap at the root."""
    return {
        "rule_set": LRFD,
        "basis": "load",
        "joint": {"kind": "tee", "root_gap": gap},
        "parts": [steel("1 in"), steel("1 in")],
        "filler": "E70",
        "load": {"force": "0.1 kip", "length": "10 in", "angle": "0 deg"},
        "size_step": "1/32 in",
        "units": "us",
    }


@pytest.mark.parametrize(
    ("gap", "expected"),
    [
        ("0 in", 0.3125),
        ("1/16 in", 0.3125),
        ("0.07 in", 0.40625),
        ("3/32 in", 0.40625),
        ("1/8 in", 0.4375),
        ("3/16 in", 0.5),
    ],
)
def test_gap_over_a_sixteenth_is_added_whole(ask: Ask, gap: str, expected: float) -> None:
    """A gap over 1/16 in is added to a 5/16 in leg whole, not by its excess; rounded up to the next 1/32 in."""
    assert leg(ask(FILLET_SIZE, _gap(gap)), "specify") == pytest.approx(expected)


def test_gap_over_three_sixteenths_is_refused(refusal: Refusal) -> None:
    """A gap of 1/4 in is over the 3/16 in that a larger leg makes up for."""
    [fault] = refusal(FILLET_SIZE, _gap("1/4 in"))
    assert fault["code"] == "out-of-scope"
    assert fault["pointer"] == "#/joint/root_gap"
    assert "3/16 in" in fault["detail"]


def test_gap_of_3_mm_takes_9_mm_for_6(ask: Ask) -> None:
    """Shop check from memory: 6 mm of leg with a 3 mm gap becomes 9 mm, 2.25 times the metal by the leg's square."""
    request = {
        "rule_set": "thin-part",
        "basis": "thin-part",
        "parts": [{"thickness": "10 mm"}, {"thickness": "6 mm"}],
    }
    tight = ask(FILLET_SIZE, {**request, "joint": {"kind": "tee"}})
    gaping = ask(FILLET_SIZE, {**request, "joint": {"kind": "tee", "root_gap": "3 mm"}})
    assert leg(tight, "specify") == pytest.approx(6)
    assert leg(gaping, "specify") == pytest.approx(9)
    assert (leg(gaping, "specify") / leg(tight, "specify")) ** 2 == pytest.approx(2.25, rel=0.002)
