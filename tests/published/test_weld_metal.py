"""Weld metal against the leg: handbook tables of convex fillets, overwelding, grooves from both sides, corners.

Makers' handbook tables of convex fillets are from memory; TWI Job Knowledge 66, the AISC engineering FAQ 8.1.2,
Miller's article on smaller, longer fillets and text matching US Army TC 9-237 ch. 6 were seen.
"""

from math import pi
from typing import Any

import pytest
from tests.published.conftest import Ask
from tests.published.estimates import estimate, fillet, weight

STEEL = {"units": "metric", "density": "7850 kg/m3"}


@pytest.mark.parametrize(
    ("leg", "printed"),
    [("3/16 in", 0.072), ("1/4 in", 0.129), ("5/16 in", 0.201), ("3/8 in", 0.289), ("1/2 in", 0.514)],
)
def test_convex_fillets(ask: Ask, leg: str, printed: float) -> None:
    """Tables of convex fillets (from memory): a tenth more leg, which is 21 % more metal and not 10 %."""
    assert weight(ask, fillet(leg, leg_excess=0.1)) == pytest.approx(printed, rel=0.01)
    assert weight(ask, fillet(leg), excess=0.1) == pytest.approx(printed * 1.10 / 1.21, rel=0.01)


def test_metric_fillets(ask: Ask) -> None:
    """Legs of 6 mm: 18 mm2 x 7850 kg/m3 = 0.1413 kg/m; a throat of 5 mm: 25 mm2, 0.196 (common practice, no source)."""
    assert weight(ask, fillet("6 mm"), **STEEL) == pytest.approx(0.1413, rel=0.002)
    assert weight(ask, {"kind": "fillet", "throat": "5 mm"}, **STEEL) == pytest.approx(0.196, rel=0.003)


@pytest.mark.parametrize(
    ("asked", "made", "more"),
    [
        ("1/4 in", "5/16 in", 56.25),
        ("1/4 in", "3/8 in", 125.0),
        ("6 mm", "8 mm", 77.8),  # TWI JK 66 says over 80 %
        ("3/16 in", "1/4 in", 77.8),
        ("5/16 in", "3/8 in", 44.0),
        ("1/4 in", "1/2 in", 300.0),  # AISC FAQ 8.1.2: four times the metal
    ],
)
def test_overwelding(ask: Ask, asked: str, made: str, more: float) -> None:
    """Metal grows with the leg squared."""
    ratio = weight(ask, fillet(made)) / weight(ask, fillet(asked))
    assert 100 * (ratio - 1) == pytest.approx(more, abs=0.1)


def test_half_the_metal_for_the_same_strength(ask: Ask) -> None:
    """Miller: 1/2 in over 6 in against 1/4 in over 12 in, which carry the same: half the metal."""
    large = estimate(ask, fillet("1/2 in"), length="6 in")
    small = estimate(ask, fillet("1/4 in"), length="12 in")
    assert large["mass_per_length"]["value"] / small["mass_per_length"]["value"] == pytest.approx(4)
    assert small["deposited"]["value"] / large["deposited"]["value"] == pytest.approx(0.5)


def test_a_gap_takes_metal(ask: Ask) -> None:
    """AWS D1.1 7.21: a 3 mm gap makes a 6 mm leg 9 mm, 2.25 times the metal; one of 1/16 in makes none larger."""
    plain = weight(ask, fillet("6 mm"), **STEEL)
    assert weight(ask, fillet("6 mm", root_gap="3 mm"), **STEEL) / plain == pytest.approx(2.25)
    assert weight(ask, fillet("6 mm", root_gap="1/16 in"), **STEEL) == plain


def _groove(kind: str, **more: Any) -> dict[str, Any]:
    return {"kind": kind, "thickness": "20 mm", "angle": "60 deg", **more}


def test_a_double_v_takes_half(ask: Ask) -> None:
    """TC 9-237: a double V takes about half the metal of a single one; just half without gap and land."""
    single, double = weight(ask, _groove("single-v")), weight(ask, _groove("double-v"))
    assert double / single == pytest.approx(0.5, abs=0.001)
    gap = {"root_gap": "3 mm"}
    # By hand: (60 + 400 tan 30 / 2)/(60 + 400 tan 30) = 175.5/290.9 = 0.603.
    ratio = weight(ask, _groove("double-v", **gap)) / weight(ask, _groove("single-v", **gap))
    assert ratio == pytest.approx(0.603, abs=0.001)


@pytest.mark.parametrize(
    ("thickness", "groove", "with_cap", "single", "double"),
    [
        (6, 27, 37, 0.29, 0.29),
        (8, 45, 58, 0.46, 0.41),
        (10, 67, 83, 0.65, 0.54),
        (12, 94, 113, 0.89, 0.69),
        (16, 161, 187, 1.47, 1.05),
        (20, 247, 279, 2.19, 1.49),
        (25, 380, 420, 3.30, 2.13),
    ],
)
def test_v_grooves(ask: Ask, thickness: int, groove: float, with_cap: float, single: float, double: float) -> None:
    """60 deg, gap 3, land 2, caps 2 mm high: worked out by hand at 7850 kg/m3 (common practice, no source)."""
    shape = {"thickness": f"{thickness} mm", "angle": "60 deg", "root_gap": "3 mm", "land": "2 mm"}
    cap = {"height": "2 mm"}
    one = estimate(ask, {**shape, "kind": "single-v", "reinforcement": {"face": cap}}, **STEEL)
    bare = sum(part["area"]["value"] for part in one["parts"] if part["part"] != "face")
    assert bare == pytest.approx(groove, abs=0.6)
    assert one["area"]["value"] == pytest.approx(with_cap, abs=0.6)
    assert one["mass_per_length"]["value"] == pytest.approx(single, abs=0.006)
    both = {**shape, "kind": "double-v", "reinforcement": {"face": cap, "root": cap}}
    assert weight(ask, both, **STEEL) == pytest.approx(double, abs=0.006)


def _area(ask: Ask, shape: dict[str, Any]) -> float:
    value: float = estimate(ask, shape, units="metric")["area"]["value"]
    return value


def test_flare_grooves(ask: Ask) -> None:
    """Filled flush: 0.215 r^2 and 0.429 r^2 (plane geometry, common practice, no source)."""
    assert _area(ask, {"kind": "flare-bevel", "radius": "10 mm"}) == pytest.approx(21.5, abs=0.05)
    assert _area(ask, {"kind": "flare-v", "radius": "10 mm"}) == pytest.approx(42.9, abs=0.05)


def test_outside_corners(ask: Ask) -> None:
    """Full open, equal plates: t^2/2 flat, pi t^2/4 rounded, t^2 sharp; half open: (t - o) t or half of it."""
    corner = {"kind": "open-corner", "thickness": ["8 mm", "8 mm"]}
    assert _area(ask, corner) == pytest.approx(32)
    assert _area(ask, {**corner, "fill": "sharp"}) == pytest.approx(64)
    assert _area(ask, {**corner, "fill": "rounded", "radius": "8 mm"}) == pytest.approx(pi * 16)
    half = {"kind": "half-open-corner", "thickness": ["8 mm", "6 mm"], "overlap": "3 mm"}
    assert _area(ask, half) == pytest.approx(15)
    assert _area(ask, {**half, "fill": "sharp"}) == pytest.approx(30)
    # A blend leaves out 0.215 R^2 at 90 deg.
    rounded = _area(ask, {**half, "fill": "rounded", "radius": "4 mm"})
    assert rounded == pytest.approx(30 - 0.215 * 16, abs=0.01)


def test_back_gouges(ask: Ask) -> None:
    """A gouge 5 to 8 mm deep and 8 to 10 mm wide adds 25 to 55 mm2 (common practice, no source)."""
    plain = _area(ask, _groove("single-v"))
    for depth, width, expected in (("5 mm", "8 mm", 26.7), ("8 mm", "10 mm", 53.3)):
        gouged = _area(ask, _groove("single-v", back_gouge={"depth": depth, "width": width}))
        assert gouged - plain == pytest.approx(expected, abs=0.05)


def test_u_and_j_grooves(ask: Ask) -> None:
    """Radius 6, 20 deg, 25 mm through: the short form pi r^2/2 + 2 r (d - r) + (d - r)^2 tan is 1 % low (recalled)."""
    shape = {"thickness": "25 mm", "root_radius": "6 mm"}
    u = _area(ask, {**shape, "kind": "single-u", "angle": "20 deg"})
    # 56.5 + 228 + 63.7 = 348.2 by hand.
    assert u == pytest.approx(348.2 * 1.01, rel=0.006)
    assert _area(ask, {**shape, "kind": "single-j", "angle": "10 deg"}) == pytest.approx(u / 2)
