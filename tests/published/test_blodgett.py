"""O. W. Blodgett, Design of Weldments, p. 6.2-7, second-hand: both sides, legs three quarters of the plate."""

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import FILLET_SIZE, leg, throat


def test_three_quarter_rule(ask: Ask) -> None:
    """12 mm plate, both sides: 9 mm legs, whose throats add up to 1.06 t."""
    answer = ask(
        FILLET_SIZE,
        {
            "rule_set": "thin-part",
            "basis": "thin-part",
            "joint": {"kind": "tee", "sides": 2},
            "parts": [{"thickness": "12 mm"}, {"thickness": "12 mm"}],
        },
    )
    assert leg(answer, "specify") == pytest.approx(9.0)
    assert 2 * throat(answer, "specify") / 12.0 == pytest.approx(1.06, rel=0.005)
