"""AWS D1.1/D1.1M:2020 Table 5.1, prequalified procedures: the largest fillet of a single pass.

The table prints inches with millimetres beside them; both are checked, and a sixteenth of an inch more.
"""

from fractions import Fraction
from typing import Any

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import FILLET_SIZE


def _passes(ask: Ask, leg: str, process: str, position: str, units: str = "us") -> int:
    """Passes of a fillet of a leg, asked for by a part as thick as the leg."""
    body: dict[str, Any] = {
        "rule_set": "thin-part",
        "basis": "thin-part",
        "joint": {"kind": "tee"},
        "parts": [{"thickness": "2 in"}, {"thickness": leg}],
        "process": process,
        "position": position,
        "units": units,
    }
    passes: int = ask(FILLET_SIZE, body)["specify"]["passes"]
    return passes


LIMITS = [
    ("SMAW", "1F", "3/8"),
    ("SMAW", "2F", "5/16"),
    ("SMAW", "3F", "1/2"),
    ("SMAW", "4F", "5/16"),
    ("GMAW", "1F", "1/2"),
    ("GMAW", "2F", "3/8"),
    ("GMAW", "3F", "1/2"),
    ("GMAW", "4F", "5/16"),
    ("FCAW", "1F", "1/2"),
    ("FCAW", "2F", "3/8"),
    ("FCAW", "3F", "1/2"),
    ("FCAW", "4F", "5/16"),
    ("SAW", "2F", "5/16"),  # single electrode
]


@pytest.mark.parametrize(("process", "position", "limit"), LIMITS)
def test_largest_single_pass_fillet(ask: Ask, process: str, position: str, limit: str) -> None:
    """The limit itself takes one pass, a sixteenth more takes two."""
    assert _passes(ask, f"{limit} in", process, position) == 1
    assert _passes(ask, f"{Fraction(limit) + Fraction(1, 16)} in", process, position) == 2


def test_no_limit_for_submerged_arc_flat(ask: Ask) -> None:
    """Submerged arc in the flat position: unlimited, so a 1 in fillet takes one pass."""
    assert _passes(ask, "1 in", "SAW", "1F") == 1


@pytest.mark.parametrize(
    ("process", "position", "limit"),
    [
        ("SMAW", "1F", "10 mm"),
        ("SMAW", "2F", "8 mm"),
        ("SMAW", "4F", "8 mm"),
        ("GMAW", "1F", "12 mm"),
        ("GMAW", "2F", "10 mm"),
        ("GMAW", "3F", "12 mm"),
        ("GMAW", "4F", "8 mm"),
    ],
)
def test_largest_single_pass_fillet_in_millimetres(ask: Ask, process: str, position: str, limit: str) -> None:
    """The table's own millimetres: legs of 8, 10 and 12 mm are single passes."""
    assert _passes(ask, limit, process, position, "metric") == 1
