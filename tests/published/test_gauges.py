"""Gauges and shop rules for fillets: AWS A3.0 (size is the leg of the largest triangle inscribed), and common practice.

Figures are geometry worked by hand; the rule of a hollow fillet's throat was read on weldingdata.com's page on gauges.
"""

from typing import Any

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import FILLET_SIZE, LRFD, SIMPLIFIED, aisc_fillet, en_fillet, leg, throat, weld


def _budget(ask: Ask, *legs: str, finish: dict[str, str] | None = None, **more: Any) -> dict[str, Any]:
    """Budget of a fillet of two legs."""
    request = {
        "seam": {"kind": "fillet", "legs": list(legs)},
        "required_throat": "3 mm",
        "finish": finish or {"to": "as-welded"},
        **more,
    }
    budget: dict[str, Any] = ask("/v1/grind-allowance", request)["budget"]
    return budget


def test_throat_of_a_flat_quarter_inch_fillet(ask: Ask) -> None:
    """1/4 in of leg has 0.177 in of throat."""
    assert _budget(ask, "1/4 in", "1/4 in", units="us")["theoretical"]["value"] == pytest.approx(0.177, abs=0.0005)
    sized = ask(FILLET_SIZE, aisc_fillet(LRFD, "1/4 in", length="10 in"))
    assert throat(sized, "specify") == pytest.approx(0.177, abs=0.0005)


def test_size_of_a_measured_throat(ask: Ask) -> None:
    """5.0 mm of throat is a size of 7.07 mm."""
    answer = ask(FILLET_SIZE, en_fillet(SIMPLIFIED, "5 mm", f_u=360, beta_w=0.8))
    assert leg(answer, "specify") == pytest.approx(7.07, abs=0.01)


def test_hollow_fillet(ask: Ask) -> None:
    """8 mm on the leg gauge with a 1 mm hollow: 0.707 x 8 - 1 of throat, a true size of 6.6 mm."""
    found = _budget(ask, "8 mm", "8 mm", hollow="1 mm")["as_welded"]["value"]
    assert found == pytest.approx(0.707 * 8 - 1, abs=0.001)
    assert found * 1.414 == pytest.approx(6.6, abs=0.05)


def test_unequal_legs(ask: Ask) -> None:
    """6 by 8 mm: the throat is the height of the triangle, 4.8 mm (AISC 360-22 J2.2a; EN 1993-1-8 4.5.2)."""
    assert _budget(ask, "6 mm", "8 mm")["as_welded"]["value"] == pytest.approx(4.8)


@pytest.mark.parametrize(
    ("finish", "remaining"),
    [
        ({"to": "as-welded"}, 5.66),
        ({"to": "flat"}, 5.66),
        ({"to": "flat", "below": "0.5 mm"}, 5.16),
    ],
)
def test_fillet_ground_flat(ask: Ask, finish: dict[str, str], remaining: float) -> None:
    """8 mm of leg, 1 mm of convexity: grinding it off costs nothing, 0.5 mm under the toe line costs 0.5 mm."""
    budget = _budget(ask, "8 mm", "8 mm", face_height="1 mm", finish=finish)
    assert budget["remaining"]["value"] == pytest.approx(remaining, rel=0.003)


def test_leg_equal_to_the_thinner_part(ask: Ask) -> None:
    """Shop rule, one side: leg of the plate, 6 mm, whose throat is 0.707 of it."""
    answer = ask(
        FILLET_SIZE,
        {
            "rule_set": "thin-part",
            "basis": "thin-part",
            "joint": {"kind": "tee", "sides": 1},
            "parts": [{"thickness": "10 mm"}, {"thickness": "6 mm"}],
        },
    )
    assert leg(answer, "specify") == pytest.approx(6.0)
    assert throat(answer, "specify") / 6.0 == pytest.approx(0.707, abs=0.001)


def test_leg_gauge_and_strength_agree(ask: Ask) -> None:
    """Twice the leg is twice the strength, not four times: 1/4 to 5/16 in is 25 % more (AISC engineering FAQ 8.1.2)."""
    quarter = ask(FILLET_SIZE, aisc_fillet(LRFD, "1/4 in", length="10 in"))
    larger = ask(FILLET_SIZE, aisc_fillet(LRFD, "5/16 in", length="10 in"))
    assert weld(larger) / weld(quarter) == pytest.approx(1.25)
