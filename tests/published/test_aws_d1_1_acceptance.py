"""AWS D1.1 Table 8.1 (earlier 6.1), items 6 and 7A, profile of fillets, gauges of AWS A3.0, and overwelding."""

from typing import Any

import pytest
from tests.published.conftest import Ask

PATH = "/v1/as-welded"


def _ask(ask: Ask, leg: str = "1/4 in", **changes: Any) -> dict[str, Any]:
    """Answer for a fillet with its leg as specified, on half-inch parts, where nothing else is said."""
    request = {
        "legs": [leg, leg],
        "thickness": ["1/2 in", "1/2 in"],
        "required": {"leg": leg},
        "undercut": "0 in",
        "quality": "aws-d1-1-2020",
        "units": "us",
        **changes,
    }
    return ask(PATH, request)


def _allowed(answer: dict[str, Any], name: str) -> float:
    """Allowed value of one limit."""
    (found,) = [limit for limit in answer["limits"] if limit["name"] == name]
    value: float = found["allowed"]["value"]
    return value


@pytest.mark.parametrize(
    ("leg", "allowed"), [("3/16 in", 1 / 16), ("1/4 in", 3 / 32), ("5/16 in", 1 / 8), ("1/2 in", 1 / 8)]
)
def test_undersize(ask: Ask, leg: str, allowed: float) -> None:
    """Undersize by the specified size: AWS D1.1 Table 8.1(6)."""
    assert _allowed(_ask(ask, leg), "undersize") == pytest.approx(allowed)


def test_undersize_over_a_tenth_of_the_length(ask: Ask) -> None:
    """A 1/4 in fillet of 3/16 in is accepted over 10 % of its length and no more: AWS D1.1 Table 8.1(6)."""
    for share, verdict in ((0.1, "enough"), (0.11, "short"), (None, "short")):
        more = {} if share is None else {"short_share": share}
        assert _ask(ask, legs=["3/16 in", "3/16 in"], **more)["verdict"] == verdict
    assert _ask(ask, legs=["1/8 in", "1/8 in"], short_share=0.1)["verdict"] == "short"


@pytest.mark.parametrize(
    ("t", "allowed"), [("1/2 in", 1 / 32), ("0.99 in", 1 / 32), ("1 in", 1 / 16), ("2 in", 1 / 16)]
)
def test_undercut(ask: Ask, t: str, allowed: float) -> None:
    """Undercut, statically loaded, by thickness: AWS D1.1 Table 8.1(7A)."""
    assert _allowed(_ask(ask, thickness=[t, "2 in"]), "undercut") == pytest.approx(allowed)


@pytest.mark.parametrize(
    # Faces of 90 deg fillets: 0.2 in of leg are 0.283 in wide, 0.3 in 0.424, 0.8 in 1.13.
    ("leg", "allowed"),
    [("0.2 in", 1 / 16), ("0.3 in", 1 / 8), ("0.8 in", 3 / 16)],
)
def test_convexity(ask: Ask, leg: str, allowed: float) -> None:
    """Convexity by the width of the face: AWS D1.1 table of profiles (from memory)."""
    assert _allowed(_ask(ask, leg), "convexity") == pytest.approx(allowed)


def test_hollow_size(ask: Ask) -> None:
    """8 mm on the leg gauge with a 1 mm hollow is a size of 6.6 mm: 8 - 1.414 (AWS A3.0, inscribed triangle)."""
    answer = _ask(ask, "8 mm", hollow="1 mm", units="metric")
    assert answer["size"]["value"] == pytest.approx(8 - 1.414, abs=0.001)
    assert answer["verdict"] == "short"


def test_size_of_a_measured_throat(ask: Ask) -> None:
    """5.0 mm on the throat gauge is a size of 7.07 mm (AWS A3.0; weldingdata.com, page on gauges)."""
    answer = _ask(ask, "8 mm", throat="5 mm", units="metric")
    assert answer["size"]["value"] == pytest.approx(7.07, abs=0.01)


def test_unequal_legs_are_the_smaller_size(ask: Ask) -> None:
    """6 by 8 mm is a 6 mm weld, with 4.8 mm of throat (AISC 360-22 J2.2a for the throat)."""
    answer = _ask(ask, "6 mm", legs=["6 mm", "8 mm"], units="metric")
    assert answer["size"]["value"] == pytest.approx(6.0)
    assert answer["throat"]["effective"]["value"] == pytest.approx(4.8)
    assert answer["verdict"] == "enough"


@pytest.mark.parametrize(
    ("needed", "made", "extra"), [("1/4 in", "5/16 in", 56.25), ("1/4 in", "3/8 in", 125.0), ("6 mm", "8 mm", 77.8)]
)
def test_overwelding(ask: Ask, needed: str, made: str, extra: float) -> None:
    """Metal goes with the leg squared, strength with the leg (AISC engineering FAQ 8.1.2; TWI Job Knowledge 66)."""
    answer = _ask(ask, needed, legs=[made, made])
    assert 100 * (answer["overweld"]["metal_ratio"] - 1) == pytest.approx(extra, abs=0.1)
    assert answer["strength_left"] ** 2 == pytest.approx(answer["overweld"]["metal_ratio"])
    if needed == "1/4 in" and made == "5/16 in":
        assert answer["strength_left"] == pytest.approx(1.25)


def test_gap_is_taken_off_whole(ask: Ask) -> None:
    """A 6 mm leg over 3 mm of gap needs 9 mm (AWS D1.1 7.21.1, second-hand): gauged at 9 mm it is worth 6."""
    answer = _ask(ask, "9 mm", required={"leg": "6 mm"}, root_gap="3 mm", units="metric")
    assert answer["size"]["value"] == pytest.approx(6.0)
    assert answer["verdict"] == "enough"
