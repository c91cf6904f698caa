"""Centreline cracks and quick chill: EN 1011-2 Annex E, TWI Job Knowledge 44, Tamboli's handbook, least fillets."""

from math import sqrt
from typing import Any

import pytest
from tests.published.conftest import Ask, Refusal

PATH = "/v1/crack-risk"
CLEAN = {"C": 0.06, "S": 0.02, "P": 0.02, "Nb": 0.0, "Si": 0.3, "Mn": 1.2}


def _metal(ask: Ask, joint: str = "fillet", bead: dict[str, str] | None = None, **metal: float) -> dict[str, Any]:
    """Answer for a weld metal."""
    request: dict[str, Any] = {"joint": joint, "weld_metal": {**CLEAN, **metal}, "process": "SAW"}
    return ask(PATH, request | ({"bead": bead} if bead else {}))


def _grade(answer: dict[str, Any], name: str) -> str | None:
    """Grade of one factor, if it is there."""
    found: list[str] = [factor["grade"] for factor in answer["factors"] if factor["name"] == name]
    return found[0] if found else None


@pytest.mark.parametrize(
    ("metal", "ucs"),
    [
        # 27.6 + 1.9 + 1.125 + 0.45 - 3.69 - 6.48 - 1
        ({"C": 0.12, "S": 0.01, "P": 0.015, "Nb": 0.01, "Si": 0.3, "Mn": 1.2}, 19.905),
        # 41.4 + 4.75 + 2.25 + 0.9 - 3.075 - 4.86 - 1
        ({"C": 0.18, "S": 0.025, "P": 0.03, "Nb": 0.02, "Si": 0.25, "Mn": 0.9}, 40.365),
        # Carbon of 0.06 counts as 0.08: 18.4 + 3.8 + 1.5 - 3.69 - 6.48 - 1
        (CLEAN, 12.53),
    ],
)
def test_index(ask: Ask, metal: dict[str, float], ucs: float) -> None:
    """UCS by hand from the formula of TWI Job Knowledge 44 (EN 1011-2 Annex E)."""
    assert _metal(ask, **metal)["index"]["ucs"] == pytest.approx(ucs, abs=1e-9)


def test_limits_of_the_index(ask: Ask) -> None:
    """Under 10 resists, over 30 does not; fillets are critical from 20, butts from 25; S + P to 0.06 % (TWI JK 44)."""
    index = _metal(ask)["index"]
    assert (index["high_resistance_below"], index["low_resistance_above"]) == (10, 30)
    assert (index["critical"], _metal(ask, "butt")["index"]["critical"]) == (20, 25)
    assert index["most_sulphur_and_phosphorus"] == 0.06
    # 230 C at the same rest: 12.53 - 18.4 = -5.87, so UCS is 230 C - 5.87.
    for joint, ucs, grade in (
        ("fillet", 9.9, "raised"),
        ("fillet", 19.9, "raised"),
        ("fillet", 20.1, "high"),
        ("butt", 20.1, "raised"),
        ("butt", 25.1, "high"),
        ("corner", 20.1, "high"),
    ):
        carbon = max((ucs + 5.87) / 230, 0.08)
        assert _grade(_metal(ask, joint, C=carbon), "composition") == grade
    # More manganese and silicon: 18.4 + 3.8 + 1.5 - 12.3 x 0.5 - 5.4 x 1.5 - 1 = 8.45.
    assert _grade(_metal(ask, Si=0.5, Mn=1.5), "composition") == "low"


def test_a_shallow_bead_bears_more(ask: Ask) -> None:
    """A depth of 0.8 of the width raises the critical value by about nine (TWI Job Knowledge 44, from memory)."""
    shallow = {"width": "10 mm", "depth": "8 mm"}
    deeper = {"width": "10 mm", "depth": "8.1 mm"}
    assert _metal(ask, bead=shallow)["index"]["critical"] == 29
    assert _metal(ask, bead=deeper)["index"]["critical"] == 20
    # Never beyond 30, over which weld metal has low resistance whatever the shape.
    assert _metal(ask, "butt", bead=shallow)["index"]["critical"] == 30


def test_sulphur_and_phosphorus(ask: Ask) -> None:
    """0.06 % together is the most in C-Mn steel (TWI Job Knowledge 44)."""
    assert _grade(_metal(ask, S=0.03, P=0.03), "sulphur-and-phosphorus") is None
    assert _grade(_metal(ask, S=0.031, P=0.03), "sulphur-and-phosphorus") == "raised"


@pytest.mark.parametrize(
    ("element", "low", "high"),
    [("C", 0.03, 0.23), ("S", 0.01, 0.05), ("P", 0.01, 0.045), ("Si", 0.15, 0.65), ("Mn", 0.45, 1.6), ("Nb", 0, 0.07)],
)
def test_beyond_the_index(ask: Ask, refusal: Refusal, element: str, low: float, high: float) -> None:
    """The index holds within these shares (EN 1011-2 Annex E, from memory); beyond them nothing is clamped."""
    for share in (low, high):
        assert _metal(ask, **{element: share})["index"]
    for share in (low - 0.001, high + 0.001):
        if share > 0:
            body = {"joint": "butt", "weld_metal": {**CLEAN, element: share}}
            [fault] = refusal(PATH, body)
            assert (fault["pointer"], fault["code"]) == (f"#/weld_metal/{element}", "out-of-scope")


@pytest.mark.parametrize(("penetration", "ratio"), [("0 mm", 2.0), ("5 mm", 1.0)])
def test_width_to_depth_of_a_mitre_fillet(ask: Ask, penetration: str, ratio: float) -> None:
    """W = 2a on the face, D = a + p: 2 without penetration, 1 when it equals the throat (geometry)."""
    shape = ask(PATH, {"joint": "fillet", "bead": {"throat": "5 mm", "penetration": penetration}})["shape"]
    assert shape["width_to_depth"] == pytest.approx(ratio, abs=0.001)


@pytest.mark.parametrize(
    ("width", "grade"),
    [("4.9 mm", "high"), ("5 mm", "raised"), ("6.25 mm", "low"), ("10 mm", "low"), ("10.1 mm", "raised")],
)
def test_width_to_depth_of_a_bead(ask: Ask, width: str, grade: str) -> None:
    """Width to depth from 1 (Tamboli p. 186, Miller; each bead, not the weld), 1.25 to 2 by TWI (from memory)."""
    answer = ask(PATH, {"joint": "butt", "bead": {"width": width, "depth": "5 mm"}})
    assert _grade(answer, "shape") == grade
    # In a groove 1.4 is aimed at; a flat fillet has 2.
    assert (answer["shape"]["least_width_to_depth"], answer["shape"]["target_width_to_depth"]) == (1.0, 1.4)
    fillet = ask(PATH, {"joint": "fillet", "bead": {"width": width, "depth": "5 mm"}})
    assert fillet["shape"]["target_width_to_depth"] == 2.0


@pytest.mark.parametrize(
    ("width", "depth", "graded"), [("8 mm", "8 mm", None), ("8 mm", "8.1 mm", "high"), ("8.1 mm", "6 mm", "high")]
)
def test_shape_of_a_pass(ask: Ask, width: str, depth: str, graded: str | None) -> None:
    """Neither depth nor width of a pass may exceed its face width, here 8 mm (AWS D1.1, 3.7.2 in 2010, from memory)."""
    answer = ask(PATH, {"joint": "butt", "bead": {"width": width, "depth": depth, "face_width": "8 mm"}})
    assert _grade(answer, "pass-shape") == graded
    assert (answer["shape"]["pass_ratio"] <= 1.0) is (graded is None)


@pytest.mark.parametrize(
    ("thickness", "leg"),
    [
        ("1/4 in", "1/8 in"),
        ("1/2 in", "3/16 in"),
        ("3/4 in", "1/4 in"),
        ("0.76 in", "5/16 in"),
    ],
)
def test_least_fillets(ask: Ask, thickness: str, leg: str) -> None:
    """Single pass: Structural Steel Designer's Handbook p. 5.42, Table 5.6 (AISC, thinner part; D1.1, from memory)."""
    request = {"joint": "fillet", "thickness": [thickness, "2 in"], "units": "us"}
    thicker = {size["rule"]: size["leg"]["text"] for size in ask(PATH, request)["least_sizes"]}
    assert (thicker["aisc-360-22"], thicker["aws-d1-1-2020"]) == (leg, "5/16 in")
    low = ask(PATH, {**request, "low_hydrogen": True})["least_sizes"]
    assert {size["rule"]: size["leg"]["text"] for size in low}["aws-d1-1-2020"] == leg


def test_least_throats(ask: Ask) -> None:
    """DIN 18800-1, now DIN EN 1993-1-8/NA: sqrt(25) - 0.5 = 4.5 mm (from memory); EN 1993-1-8 4.5.2: 3 mm."""
    answer = ask(PATH, {"joint": "fillet", "thickness": ["25 mm", "12 mm"], "leg": "6 mm"})
    sizes = {size["rule"]: size for size in answer["least_sizes"]}
    assert sizes["din-en-1993-1-8-na"]["throat"]["value"] == pytest.approx(4.5, abs=0.01)
    assert sizes["en-1993-1-8-2005"]["throat"]["value"] == 3.0
    # 4.5 mm of throat is a leg of 6.36 mm at 90 deg.
    assert sizes["din-en-1993-1-8-na"]["leg"]["value"] == pytest.approx(4.5 * sqrt(2))
    assert [sizes[rule]["enough"] for rule in ("din-en-1993-1-8-na", "en-1993-1-8-2005")] == [False, True]


def test_a_hollow_face_on_a_restrained_corner(ask: Ask) -> None:
    """Concave faces are in tension as they shrink (Tamboli p. 186); worse where the joint cannot give."""
    request = {"joint": "corner", "hollow": "1 mm"}
    assert ask(PATH, request)["verdict"] == "raised"
    assert ask(PATH, {**request, "restrained": True})["verdict"] == "high"
    flat = ask(PATH, {**request, "hollow": "0 mm", "restrained": True})
    assert [factor["grade"] for factor in flat["factors"]] == ["low"]
    # The face alone calls nothing low.
    assert flat["verdict"] == "estimated"
