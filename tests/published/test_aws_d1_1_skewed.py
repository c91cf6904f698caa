"""AWS D1.1, table of equivalent fillet legs for skewed T-joints (Annex II, later B, later A), from memory.

The annex measures a leg square to one plate, from its surface to the opposite toe: w = z sin(psi) of a leg z along the
face, which is what the service answers in. The table as remembered departs from geometry by up to 0.013 at 95 deg.
"""

from math import cos, radians, sin

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


@pytest.mark.parametrize(
    ("psi", "position", "process", "eighths"),
    [
        (59, "3F", "SMAW", 1),
        (45, "4F", "FCAW-S", 1),
        (45, "3F", "FCAW-G", 1),
        (50, "2F", "SMAW", 1),
        (50, "2F", "FCAW-S", 0),
        (50, "1F", "FCAW-G", 0),
        (50, "2F", "GMAW", 0),
        (44, "3F", "SMAW", 2),
        (30, "4F", "FCAW-S", 2),
        (30, "3F", "FCAW-G", 3),
        (44, "1F", "SMAW", 2),
        (30, "2F", "FCAW-S", 1),
        (30, "2F", "FCAW-G", 2),
        (30, "2F", "GMAW", 2),
    ],
)
def test_root_loss(ask: Ask, psi: int, position: str, process: str, eighths: int) -> None:
    """Z loss by angle, position and process (Table 4.2 of 2020, from memory), added to the throat the load needs.

    1.392 kip/in needs 1/16 in of square E70 leg along its axis (AISC Manual part 8): a throat of 0.0442 in.
    """
    request = aisc_fillet(
        LRFD,
        "1/16 in",
        length="10 in",
        force="13.92 kip",
        kind="tee",
        process=process,
        position=position,
    )
    request["joint"]["angle"] = f"{psi} deg"
    answer = ask(FILLET_SIZE, request)
    assert answer["z_loss"]["value"] == pytest.approx(eighths / 8)
    needed = 0.0442 + eighths / 8
    assert throat(answer) == pytest.approx(needed, abs=1e-4)
    assert leg(answer) == pytest.approx(needed / cos(radians(psi / 2)), abs=2e-4)
    assert answer["utilisation"] <= 1.0


def test_no_root_loss_from_60_degrees(ask: Ask) -> None:
    """From 60 deg the table does not apply, and neither process nor position is asked for."""
    request = aisc_fillet(LRFD, "1/16 in", length="10 in", kind="tee")
    request["joint"]["angle"] = "60 deg"
    assert ask(FILLET_SIZE, request)["z_loss"] is None
