"""ISO 5817:2014 Table 1 at fillets: figures worked by hand from each limit's constants.

Undercut and convexity were read in EN ISO 5817:2007 (text of 2003), level B of the rest and level C of asymmetry in
extracts, the others in EN 25817:1992 or recalled: those are from memory, and each answer's source says so.
"""

from typing import Any

import pytest
from tests.published.conftest import Ask

PATH = "/v1/as-welded"


def _limit(ask: Ask, name: str, level: str, **changes: Any) -> dict[str, Any]:
    """Give one limit of a fillet held to a level; 8 mm legs on 12 and 10 mm where nothing else is said."""
    request = {
        "legs": ["8 mm", "8 mm"],
        "thickness": ["12 mm", "12 mm"],
        "required": {"throat": "5 mm"},
        "undercut": "0 mm",
        "quality": f"iso-5817-{level.lower()}",
        **changes,
    }
    (found,) = [limit for limit in ask(PATH, request)["limits"] if limit["name"] == name]
    return found


@pytest.mark.parametrize(
    ("t", "level", "expected"),
    [
        ("12 mm", "B", 0.5),  # 0.05 t = 0.6, capped
        ("12 mm", "C", 0.5),
        ("12 mm", "D", 1.0),
        ("4 mm", "B", 0.2),
        ("4 mm", "C", 0.4),
        ("4 mm", "D", 0.8),
        ("3 mm", "C", 0.3),  # the thin branch holds 3 mm itself
        ("3 mm", "D", 0.6),
    ],
)
def test_undercut(ask: Ask, t: str, level: str, expected: float) -> None:
    """Undercut 5011, 5012 by the thickness: ISO 5817 Table 1, No. 1.7."""
    found = _limit(ask, "undercut", level, thickness=[t, "20 mm"])
    assert found["allowed"]["value"] == pytest.approx(expected, abs=0.001)
    assert ("short" in found["note"]) == (t == "3 mm")


def test_no_undercut_in_thin_material_at_level_b(ask: Ask) -> None:
    """Level B permits no undercut at all up to 3 mm: ISO 5817 Table 1, No. 1.7."""
    found = _limit(ask, "undercut", "B", thickness=["3 mm", "3 mm"], undercut="0.1 mm")
    assert (found["allowed"], found["verdict"]) == (None, "not-permitted")
    assert _limit(ask, "undercut", "B", thickness=["3 mm", "3 mm"])["verdict"] == "within"


@pytest.mark.parametrize(("level", "expected"), [("B", 2.0), ("C", 2.5), ("D", 3.5)])
def test_convexity(ask: Ask, level: str, expected: float) -> None:
    """Convexity 503 of a 10 mm face (legs of 6 and 8 mm: 6, 8, 10): ISO 5817 Table 1, No. 1.10."""
    found = _limit(ask, "convexity", level, legs=["6 mm", "8 mm"], convexity="2.2 mm", required={"throat": "4 mm"})
    assert found["allowed"]["value"] == pytest.approx(expected, abs=0.001)
    assert found["verdict"] == ("over" if level == "B" else "within")


@pytest.mark.parametrize(("level", "expected"), [("B", 2.4), ("C", 2.9), ("D", 3.2)])
def test_asymmetry(ask: Ask, level: str, expected: float) -> None:
    """Difference of the legs 512 at a throat of 6 mm: ISO 5817 Table 1."""
    found = _limit(ask, "asymmetry", level, required={"throat": "6 mm"}, legs=["8 mm", "11 mm"])
    assert found["allowed"]["value"] == pytest.approx(expected, abs=0.001)
    assert found["value"]["value"] == pytest.approx(3.0)
    assert found["verdict"] == ("within" if level == "D" else "over")


@pytest.mark.parametrize(("level", "expected"), [("B", None), ("C", 0.8), ("D", 0.8)])
def test_insufficient_throat(ask: Ask, level: str, expected: float | None) -> None:
    """Throat missing 5213 at t = 10, a = 5 mm, over a short part of the length: ISO 5817 Table 1 (from memory)."""
    more = {"thickness": ["10 mm", "10 mm"], "throat": "4.5 mm", "short_share": 0.2}
    found = _limit(ask, "insufficient-throat", level, **more)
    assert found["value"]["value"] == pytest.approx(0.5)
    if expected is None:
        assert (found["allowed"], found["verdict"]) == (None, "not-permitted")
    else:
        assert found["allowed"]["value"] == pytest.approx(expected, abs=0.001)
        assert found["verdict"] == "within"
        assert _limit(ask, "insufficient-throat", level, **{**more, "short_share": 0.3})["verdict"] == "over"


@pytest.mark.parametrize(("level", "expected"), [("B", 1.9), ("C", 2.2), ("D", None)])
def test_excessive_throat(ask: Ask, level: str, expected: float | None) -> None:
    """Throat in excess 5214 at a = 6 mm, level D without limit: ISO 5817 Table 1 (C and D from memory)."""
    found = _limit(ask, "excessive-throat", level, required={"throat": "6 mm"}, legs=["12 mm", "12 mm"])
    # 12 mm legs have 8.485 mm of throat (geometry), 2.485 mm too much.
    assert found["value"]["value"] == pytest.approx(2.485, abs=0.001)
    if expected is None:
        assert (found["allowed"], found["verdict"]) == (None, "within")
    else:
        assert found["allowed"]["value"] == pytest.approx(expected, abs=0.001)
        assert found["verdict"] == "over"


@pytest.mark.parametrize(
    ("t", "level", "expected"),
    [
        ("10 mm", "B", 1.0),
        ("10 mm", "C", 1.5),
        ("10 mm", "D", 2.5),
        # The thin branch, from memory: 0.2, 0.3 and 0.5 mm with a tenth of the 5 mm throat.
        ("2 mm", "B", 0.7),
        ("2 mm", "C", 0.8),
        ("2 mm", "D", 1.0),
    ],
)
def test_root_gap(ask: Ask, t: str, level: str, expected: float) -> None:
    """Root gap 617 of a fillet at a = 5 mm: ISO 5817 Table 1 (from memory)."""
    found = _limit(ask, "root-gap", level, thickness=[t, t])
    assert found["allowed"]["value"] == pytest.approx(expected, abs=0.001)
