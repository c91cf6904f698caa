"""Corners and flush finishes: section geometry that the trade goes by, common practice, no source.

Every figure is worked by hand from the drawing of the section; the D1.1 analogy of a tight square butt says the same of
a closed corner: ground flush it keeps its penetration.
"""

from typing import Any

import pytest
from tests.published.conftest import Ask

GRIND, BEVEL = "/v1/grind-allowance", "/v1/bevel-depth"
T = 10.0


def _remaining(ask: Ask, **request: Any) -> float:
    """Throat left, in the answer's unit."""
    remaining: float = ask(GRIND, {"required_throat": "1 mm", **request})["budget"]["remaining"]["value"]
    return remaining


def _open(ask: Ask, finish: dict[str, str], face: float = 0.3 * T) -> float:
    """Throat left of an open corner of equal plates, its face filled out past the arc unless told."""
    seam = {"kind": "open-corner", "thickness": [f"{T} mm", f"{T} mm"]}
    return _remaining(ask, seam=seam, finish=finish, face_height=f"{face} mm")


def _radius(radius: float) -> dict[str, str]:
    return {"to": "radius", "radius": f"{radius} mm"}


def test_closed_corner_that_may_not_be_ground(ask: Ask) -> None:
    """1/4 in plate, 1/16 in of penetration nobody vouches for, a 1/8 in face, 3/16 in required.

    As welded it is just enough, flush 1/16 in is left. Nobody vouches for either: what counts is the face alone,
    nothing may come off, and the first remedy is a bevel as deep as the throat.
    """
    answer = ask(
        GRIND,
        {
            "seam": {"kind": "closed-corner", "thickness": ["1/4 in", "1/4 in"]},
            "penetration": {"depth": "1/16 in", "vouched": "assumed"},
            "face_height": "1/8 in",
            "required_throat": "3/16 in",
            "finish": {"to": "flush"},
            "units": "us",
        },
    )
    physical = answer["physical"]
    assert physical["as_welded"]["value"] == pytest.approx(3 / 16)
    assert physical["remaining"]["value"] == pytest.approx(1 / 16)
    assert (answer["verdict"], physical["verdict"]) == ("short", "short-when-finished")
    assert answer["budget"]["as_welded"]["value"] == pytest.approx(1 / 8)
    assert answer["allowance"]["value"] == pytest.approx(0.0, abs=1e-12)
    assert (answer["leave"]["text"], physical["leave"]["text"]) == ("3/16 in", "1/8 in")
    assert answer["remedies"][0]["do"] == "bevel"
    assert answer["remedies"][0]["depth"]["text"] == "3/16 in"
    assert answer["remedies"][0]["remaining"]["value"] == pytest.approx(3 / 16)


def test_closed_corner_ground_flush_keeps_its_penetration(ask: Ask) -> None:
    """5 mm plate, 2 mm of penetration, cap ground off: 2 mm, 0.4 of the plate."""
    remaining = _remaining(
        ask,
        seam={"kind": "closed-corner", "thickness": ["5 mm", "5 mm"]},
        penetration={"depth": "2 mm", "vouched": "measured"},
        face_height="3 mm",
        finish={"to": "flush"},
    )
    assert remaining == pytest.approx(2.0)
    assert remaining / 5.0 == pytest.approx(0.4)


def test_full_open_corner_ground_flat(ask: Ask) -> None:
    """Equal plates, flat between the toes: 0.707 t."""
    assert _open(ask, {"to": "flat"}) == pytest.approx(0.707 * T, abs=0.0005 * T)


def test_full_open_corner_rounded_to_the_thickness(ask: Ask) -> None:
    """Equal plates, rounded to R = t: t."""
    assert _open(ask, _radius(T)) == pytest.approx(T)


def test_full_open_corner_needs_a_crown_to_be_rounded(ask: Ask) -> None:
    """R = t needs a crown of 0.293 t over the toe line; a weld filled flat keeps its own lower face, 0.707 t."""
    assert _open(ask, _radius(T), face=0.293 * T) == pytest.approx(T, abs=0.0005 * T)
    assert _open(ask, _radius(T), face=0.0) == pytest.approx(0.707 * T, abs=0.0005 * T)


def test_full_open_corner_broken_through(ask: Ask) -> None:
    """Equal plates, square: R - sqrt(2) (R - t) comes to nothing at R = 3.41 t."""
    assert _open(ask, _radius(3.40 * T)) > 0.0
    assert _open(ask, _radius(3.42 * T)) == 0.0


def test_full_open_corner_from_full_to_flat(ask: Ask) -> None:
    """Ground from full to flat it loses 29 % of its throat."""
    full, flat = _open(ask, {"to": "flush"}, face=0.3 * T), _open(ask, {"to": "flat"})
    assert (full - flat) / full == pytest.approx(0.29, abs=0.005)


def test_full_open_corner_of_unequal_plates(ask: Ask) -> None:
    """6 and 8 mm, flat between the toes: 4.8 mm, the height of a 6, 8, 10 triangle."""
    seam = {"kind": "open-corner", "thickness": ["6 mm", "8 mm"]}
    assert _remaining(ask, seam=seam, finish={"to": "flat"}) == pytest.approx(4.8)


def test_half_open_corner_ground_flat(ask: Ask) -> None:
    """Equal plates overlapping by half, flat between the toes: 0.447 t."""
    seam = {"kind": "half-open-corner", "thickness": [f"{T} mm", f"{T} mm"], "overlap": f"{T / 2} mm"}
    assert _remaining(ask, seam=seam, finish={"to": "flat"}) == pytest.approx(0.447 * T, abs=0.0005 * T)


@pytest.mark.parametrize(("finish", "remaining"), [("flat", 9.07), ("flush", 11.41)])
def test_full_open_corner_fused_past_its_root(ask: Ask, finish: str, remaining: float) -> None:
    """10 mm plates fused 2 mm past the root: 2 more of 7.07 to the toe line, 2 cos 45 deg more of 10 to each plane."""
    found = _remaining(
        ask,
        seam={"kind": "open-corner", "thickness": ["10 mm", "10 mm"]},
        penetration={"depth": "2 mm", "vouched": "measured"},
        face_height="5 mm",
        finish={"to": finish},
    )
    assert found == pytest.approx(remaining, abs=0.005)


@pytest.mark.parametrize(("finish", "remaining"), [("flat", 6.26), ("flush", 7.0)])
def test_half_open_corner_fused_along_its_overlap(ask: Ask, finish: str, remaining: float) -> None:
    """10 mm plates overlapping by 5, fused 2 mm along it: 7 x 10/hypot(5, 10) to the toe line, 7 to part 1's face."""
    found = _remaining(
        ask,
        seam={"kind": "half-open-corner", "thickness": ["10 mm", "10 mm"], "overlap": "5 mm"},
        penetration={"depth": "2 mm", "vouched": "measured"},
        face_height="5 mm",
        finish={"to": finish},
    )
    assert found == pytest.approx(remaining, abs=0.005)


CLOSED_5 = {"kind": "closed-corner", "thickness": ["10 mm", "5 mm"]}


def test_closed_corner_rounded_past_the_other_plate(ask: Ask) -> None:
    """t2 5, depth 3, R 8: 2.17 mm is the least distance; along the seam there would be 2.42."""
    remaining = _remaining(ask, seam=CLOSED_5, preparation={"depth": "3 mm"}, face_height="5 mm", finish=_radius(8.0))
    assert remaining == pytest.approx(2.17, abs=0.005)


def test_largest_radius_on_that_corner(ask: Ask) -> None:
    """The other way: 2.17 mm required, the largest radius is 8 mm."""
    answer = ask(
        GRIND,
        {
            "seam": CLOSED_5,
            "preparation": {"depth": "3 mm"},
            "face_height": "5 mm",
            "required_throat": "2.17 mm",
            "finish": _radius(4.0),
        },
    )
    # 0.005 mm of the printed throat is 0.013 mm of radius there.
    assert answer["largest_radius"]["value"] == pytest.approx(8.0, abs=0.014)


def test_depth_for_a_radius_on_that_corner(ask: Ask) -> None:
    """And the depth that leaves 2.17 mm under a radius of 8 mm is 3 mm: R - sqrt((R - q)^2 - (R - t2)^2)."""
    answer = ask(
        BEVEL, {"seam": CLOSED_5, "required_throat": "2.17 mm", "finish": _radius(8.0), "depth_step": "0.01 mm"}
    )
    assert answer["depth"]["value"] == pytest.approx(3.0, abs=0.015)


def test_largest_radius_on_equal_plates(ask: Ask) -> None:
    """10 mm plates, open, half of it required: R - sqrt(2) (R - 10) = 5 at R = 22.07 mm."""
    answer = ask(
        GRIND,
        {
            "seam": {"kind": "open-corner", "thickness": ["10 mm", "10 mm"]},
            "face_height": "4 mm",
            "required_throat": "5 mm",
            "finish": _radius(8.0),
        },
    )
    assert answer["largest_radius"]["value"] == pytest.approx(22.07, abs=0.005)


def test_blend_runs_its_radius_onto_each_face(ask: Ask) -> None:
    """At 90 deg the tangent points lie R from the sharp corner."""
    answer = ask(
        GRIND,
        {
            "seam": {"kind": "open-corner", "thickness": ["10 mm", "10 mm"]},
            "required_throat": "5 mm",
            "finish": _radius(8.0),
        },
    )
    [text] = [caution["text"] for caution in answer["cautions"] if caution["code"] == "radius-needs-width"]
    assert "8 mm" in text


def test_cap_of_a_flat_seam_ends_at_its_toes(ask: Ask) -> None:
    """Square edge fused 3 mm deep under a face 8 mm wide: never more than 5 mm, a 3, 4, 5 triangle to the toe."""
    answer = ask(
        GRIND,
        {
            "seam": {"kind": "butt", "thickness": ["10 mm", "10 mm"]},
            "penetration": {"depth": "3 mm", "vouched": "measured"},
            "face_height": "4 mm",
            "face_width": "8 mm",
            "required_throat": "3 mm",
        },
    )
    assert answer["budget"]["as_welded"]["value"] == pytest.approx(5.0)
    assert answer["budget"]["cap"]["value"] == pytest.approx(-2.0)


def test_cap_of_a_single_bevel_gains_nothing(ask: Ask) -> None:
    """A single bevel filled no wider than its groove has its root under a toe: face height adds no throat."""
    answer = ask(
        GRIND,
        {
            "seam": {"kind": "butt", "thickness": ["10 mm", "10 mm"]},
            "preparation": {"depth": "4 mm", "groove_angle": "45 deg"},
            "face_height": "2 mm",
            "face_width": "4 mm",
            "required_throat": "3 mm",
        },
    )
    assert answer["budget"]["as_welded"]["value"] == pytest.approx(4.0)


def test_setback_of_a_bevel(ask: Ask) -> None:
    """Square to the face, a 45 deg bevel 4 mm deep is scribed 4 mm from the edge; a 60 deg V 2.31 mm on each part."""
    request = {"seam": CLOSED_5, "required_throat": "4 mm", "finish": {"to": "flush"}}
    assert ask(BEVEL, request)["setback"]["value"] == pytest.approx(4.0)
    assert ask(BEVEL, {**request, "groove": "single-v"})["setback"]["value"] == pytest.approx(2.31, abs=0.005)


@pytest.mark.parametrize(("angle", "tolerance"), [("20 deg", 0.015), ("30 deg", 0.025)])
def test_area_of_a_single_u(ask: Ask, angle: str, tolerance: float) -> None:
    """Handbook short form, from memory: pi r^2/2 + 2 r (d - r) + (d - r)^2 tan(s/2), a little low.

    r 6 mm and d 20 mm by hand: 259.1 mm2 at 20 deg, 277.1 at 30; about 1 and 2 % low.
    """
    by_hand = {"20 deg": 259.1, "30 deg": 277.1}[angle]
    answer = ask(
        BEVEL,
        {
            "seam": {"kind": "butt", "thickness": ["30 mm", "30 mm"]},
            "required_throat": "20 mm",
            "groove": "single-u",
            "groove_angle": angle,
            "root_radius": "6 mm",
            "finish": {"to": "flush"},
        },
    )
    assert answer["depth"]["value"] == pytest.approx(20.0)
    assert by_hand <= answer["area"]["value"] <= by_hand * (1 + tolerance)


def test_inside_fillet_of_5_mm_throat(ask: Ask) -> None:
    """A flat fillet of 5 mm throat holds 0.196 kg/m of steel at 7850 kg/m3: its area is the throat squared."""
    answer = ask(
        BEVEL,
        {
            "seam": {"kind": "closed-corner", "thickness": ["10 mm", "10 mm"]},
            "required_throat": "5 mm",
            "finish": {"to": "flush"},
        },
    )
    [inside] = [way for way in answer["alternatives"] if way["do"] == "fillet-inside"]
    assert inside["filler"]["mass_per_length"]["value"] == pytest.approx(0.196, rel=0.003)
