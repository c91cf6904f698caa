"""AWS D1.1, table of equivalent fillet legs for skewed T-joints (Annex II, later B, later A), from memory.

The annex measures a leg square to one plate, from its surface to the opposite toe: w = z sin(psi) of a leg z along the
face, which is what the service answers in. The table as remembered departs from geometry by up to 0.013 at 95 deg.
"""

from math import radians, sin

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import FILLET_SIZE, LRFD, aisc_fillet, leg, throat


@pytest.mark.parametrize(
    ("psi", "factor"),
    [
        (60, 0.71),
        (65, 0.76),
        (70, 0.81),
        (75, 0.86),
        (80, 0.91),
        (85, 0.96),
        (90, 1.00),
        (95, 1.03),
        (100, 1.08),
        (105, 1.12),
        (110, 1.16),
        (115, 1.19),
        (120, 1.23),
        (125, 1.25),
        (130, 1.28),
        (135, 1.31),
    ],
)
def test_leg_of_skewed_fillet_over_that_of_a_square_one(ask: Ask, psi: int, factor: float) -> None:
    """Leg for the same throat, measured the annex's way, over the leg at 90 deg."""
    request = aisc_fillet(LRFD, "1/16 in", length="10 in", force="40 kip", kind="tee")
    square = ask(FILLET_SIZE, request)
    skewed = ask(FILLET_SIZE, {**request, "joint": {"kind": "tee", "angle": f"{psi} deg"}})
    assert throat(skewed) == pytest.approx(throat(square))
    assert leg(skewed) * sin(radians(psi)) / leg(square) == pytest.approx(factor, abs=0.015)
