"""Number of passes: AWS D1.1:2020 Table 5.1 (seen), Miller's series (seen), the AISC Manual's table (from memory)."""

from fractions import Fraction
from typing import Any

import pytest
from tests.published.conftest import Ask
from tests.published.estimates import estimate, fillet


def _counts(ask: Ask, shape: dict[str, Any], **more: Any) -> dict[str, Any]:
    """Give the passes of a shape, each count by its name."""
    passes = estimate(ask, shape, **more)["passes"]
    return {**passes, **{count["by"]: (count["least"], count["most"]) for count in passes["counts"]}}


@pytest.mark.parametrize(
    ("leg", "passes"),
    [("3/16", 1), ("1/4", 1), ("5/16", 1), ("3/8", 3), ("7/16", 4), ("1/2", 4), ("5/8", 6), ("3/4", 8)],
)
def test_handbook_counts(ask: Ask, leg: str, passes: int) -> None:
    """AISC Manual, approximate number of passes of fillets (from memory); over 3/4 in it lists none."""
    found = _counts(ask, fillet(f"{leg} in"))
    assert (found["least"], found["most"], found["handbook"]) == (passes, passes, (passes, passes))
    assert estimate(ask, fillet("13/16 in"))["passes"] is None


@pytest.mark.parametrize(("leg", "least", "probable"), [("1/4 in", 1, 1), ("1/2 in", 3, 6)])
def test_half_inch_horizontal(ask: Ask, leg: str, least: int, probable: int) -> None:
    """Miller: a horizontal 1/2 in fillet needs at least three passes, probably six; a 1/4 in one is one pass."""
    found = _counts(ask, fillet(leg), process="SMAW", position="2F")
    assert found["single-pass-limit"] == (least, least)
    assert found["least"] == least
    assert found["least"] <= probable <= found["most"]


@pytest.mark.parametrize(
    ("process", "position", "leg"),
    [
        ("SMAW", "1F", "10 mm"),
        ("GMAW", "1F", "12 mm"),
        ("FCAW-G", "1F", "12 mm"),
        ("SAW", "1F", "25 mm"),  # unlimited
        ("SMAW", "2F", "8 mm"),
        ("GMAW", "2F", "10 mm"),
        ("SAW", "2F", "8 mm"),
        ("SMAW", "4F", "8 mm"),
        ("FCAW-G", "4F", "8 mm"),
        ("SMAW", "3F", "12 mm"),
    ],
)
def test_largest_single_pass(ask: Ask, process: str, position: str, leg: str) -> None:
    """Table 5.1, millimetres as printed: one pass at the limit, two a millimetre over it."""
    assert _counts(ask, fillet(leg), process=process, position=position)["single-pass-limit"] == (1, 1)
    over = f"{float(leg.removesuffix(' mm')) + 1} mm"
    expected = (1, 1) if (process, position) == ("SAW", "1F") else (2, 2)
    assert _counts(ask, fillet(over), process=process, position=position)["single-pass-limit"] == expected


def test_layers_of_a_horizontal_fillet(ask: Ask) -> None:
    """Layers build up in 1, 2, 3 passes, so 1, 3, 6, 10 (common practice): 8 mm by stick a layer (Table 5.1)."""
    for leg, built in (("8 mm", 1), ("16 mm", 3), ("24 mm", 6), ("32 mm", 10)):
        assert _counts(ask, fillet(leg), process="SMAW", position="2F")["layers"] == (built, built)
    assert "layers" not in _counts(ask, fillet("16 mm"), process="SMAW", position="1F")


@pytest.mark.parametrize(("process", "fill"), [("SMAW", (3, 16)), ("GMAW", (1, 4)), ("FCAW-G", (1, 4)), ("SAW", None)])
@pytest.mark.parametrize(("position", "root"), [("1G", (3, 8)), ("2G", (5, 16)), ("3G", (1, 2)), ("4G", (5, 16))])
def test_pass_thickness(
    ask: Ask, process: str, fill: tuple[int, int] | None, position: str, root: tuple[int, int]
) -> None:
    """Table 5.1: a root pass to 3/8, 5/16, 1/2, 5/16 in, fill passes to 3/16 (stick) or 1/4 in; SAW no limit."""

    def least(depth: Fraction) -> Any:
        shape = {"kind": "single-v", "thickness": "3 in", "angle": "60 deg", "depth": f"{float(depth)} in"}
        return _counts(ask, shape, process=process, position=position).get("pass-thickness")

    if fill is None:
        assert least(Fraction(2)) == ((1, 1) if position in ("1G", "2G") else None)
        return
    # Both columns of the table hold: 5/16 in or 8 mm, whichever is more, is one pass.
    printed = {(3, 8): "10", (5, 16): "8", (1, 2): "12.7"}[root], {(3, 16): "5", (1, 4): "6.35"}[fill]
    first, each = (Fraction(text) / Fraction("25.4") for text in printed)
    assert least(first) == (1, 1)
    assert least(first + each) == (2, 2)
    assert least(first + each + Fraction(1, 50)) == (3, 3)


def test_fill_pass_in_millimetres(ask: Ask) -> None:
    """Table 5.1 in millimetres: stick 5, wire 6; on a root of 10 mm in the flat position."""
    for process, depth in (("SMAW", 15), ("GMAW", 16)):
        shape = {"kind": "single-v", "thickness": "40 mm", "angle": "60 deg", "depth": f"{depth} mm"}
        assert _counts(ask, shape, process=process, position="1G")["pass-thickness"] == (2, 2)


def test_both_sides_count(ask: Ask) -> None:
    """A double V of two 13 mm sides by stick, flat: a root and one fill pass each (10 + 5 mm a side)."""
    shape = {"kind": "double-v", "thickness": "26 mm", "angle": "60 deg"}
    assert _counts(ask, shape, process="SMAW", position="1G")["pass-thickness"] == (4, 4)


def test_bead_from_travel_speed(ask: Ask) -> None:
    """Mass balance: 3.6 kg/h at 350 mm/min fill 3.6/(60 x 7850 x 0.35) = 21.8 mm2, a leg of 6.61 mm."""
    made = estimate(
        ask,
        fillet("6.608 mm"),
        units="metric",
        density="7850 kg/m3",
        deposition={"rate": "3.6 kg/h"},
        bead={"travel_speed": "350 mm/min"},
    )
    assert made["rests_on"]["bead_area"]["least"]["value"] == pytest.approx(21.8, rel=0.005)
    assert (made["passes"]["least"], made["passes"]["most"]) == (1, 1)


def test_a_given_bead_counts_whole_passes(ask: Ask) -> None:
    """50 mm2 in passes of 20 are three; of 25 just two, for all the last bit of a float."""
    for bead, expected in (("20 mm2", 3), ("25 mm2", 2)):
        found = _counts(ask, fillet("10 mm"), units="metric", process="GMAW", position="2F", bead={"area": bead})
        assert (found["least"], found["most"]) == (expected, expected)
