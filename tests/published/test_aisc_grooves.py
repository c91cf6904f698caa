"""ANSI/AISC 360-22, chapter J: partial-penetration and flare grooves, plug and slot welds, matching filler metal.

Strengths are worked by hand from Table J2.5 in kips and inches, E70 throughout.
"""

from typing import Any

import pytest
from tests.published.conftest import Ask, Refusal
from tests.published.fillets import ASD, LRFD, steel, worked
from tests.published.grooves import GROOVE_SIZE, aisc_groove, value

HALF = {"kind": "partial", "depth_step": "1/2 in"}
THICK = (steel("1 1/2 in"), steel("1 1/2 in"))


@pytest.mark.parametrize(
    ("process", "position", "groove", "angle", "throat"),
    [
        ("SMAW", "3G", "single-v", "60 deg", 0.5),
        ("SMAW", "4G", "single-j", None, 0.5),
        ("SMAW", "1G", "single-u", None, 0.5),
        ("GMAW", "3G", "single-v", "60 deg", 0.5),
        ("FCAW", "4G", "single-j", None, 0.5),
        ("SAW", "1G", "single-bevel", "60 deg", 0.5),
        ("SAW", "1G", "single-v", "60 deg", 0.5),
        ("SAW", "1G", "single-u", None, 0.5),
        ("GMAW", "1G", "single-bevel", "45 deg", 0.5),
        ("FCAW", "2G", "single-bevel", "45 deg", 0.5),
        ("SMAW", "1G", "single-bevel", "45 deg", 0.375),
        ("SMAW", "4G", "single-bevel", "45 deg", 0.375),
        ("GMAW", "3G", "single-bevel", "45 deg", 0.375),
        ("FCAW", "4G", "single-bevel", "45 deg", 0.375),
    ],
)
def test_throat_of_a_groove_half_an_inch_deep(
    ask: Ask, process: str, position: str, groove: str, angle: str | None, throat: float
) -> None:
    """Table J2.1, S = 1/2 in: S for a J, U or 60 deg V, S - 1/8 in for a 45 deg bevel by stick and out of position."""
    weld = {**HALF, "groove": groove, **({"groove_angle": angle} if angle else {})}
    answer = ask(GROOVE_SIZE, aisc_groove(LRFD, weld, parts=THICK, process=process, position=position))
    assert value(answer["specify"]["depth"]) == pytest.approx(0.5)
    assert value(answer["specify"]["throat"]) == pytest.approx(throat)


@pytest.mark.parametrize(
    ("kind", "process", "throat"),
    [
        ("flare-bevel", "GMAW", 0.46875),
        ("flare-bevel", "FCAW-G", 0.46875),
        ("flare-bevel", "SMAW", 0.234375),
        ("flare-bevel", "FCAW-S", 0.234375),
        ("flare-bevel", "SAW", 0.234375),
        ("flare-v", "GMAW", 0.5625),
        ("flare-v", "FCAW-G", 0.5625),
        ("flare-v", "SMAW", 0.46875),
        ("flare-v", "FCAW-S", 0.46875),
        ("flare-v", "SAW", 0.375),
    ],
)
def test_throat_of_a_flare_groove(ask: Ask, kind: str, process: str, throat: float) -> None:
    """Table J2.2, R = 3/4 in, filled flush; a face 1/8 in below flush loses 1/8 in."""
    thin = (steel("1/4 in"), steel("1/4 in"))
    request = aisc_groove(LRFD, {"kind": kind, "radius": "3/4 in"}, parts=thin, process=process)
    flush = ask(GROOVE_SIZE, request)
    assert value(flush["preparations"][0]["throat"]) == pytest.approx(throat)
    below = ask(GROOVE_SIZE, {**request, "weld": {**request["weld"], "below_flush": "1/8 in"}})
    assert value(below["preparations"][0]["throat"]) == pytest.approx(throat - 1 / 8)


@pytest.mark.parametrize(("radius", "faults"), [("11/32 in", ["#/weld/radius"]), ("3/8 in", [])])
def test_a_small_flare_bevel_does_not_count(ask: Ask, refusal: Refusal, radius: str, faults: list[str]) -> None:
    """Table J2.2, note: below 3/8 in (10 mm) only a fillet on a flush joint counts."""
    thin = (steel("1/4 in"), steel("1/4 in"))
    request = aisc_groove(LRFD, {"kind": "flare-bevel", "radius": radius}, parts=thin, process="GMAW")
    if faults:
        assert [fault["pointer"] for fault in refusal(GROOVE_SIZE, request)] == faults
    else:
        # 5/8 x 3/8 in.
        assert value(ask(GROOVE_SIZE, request)["specify"]["throat"]) == pytest.approx(15 / 64)


# kip/in; throat by hand: force over the factor and 0.60 or 0.90 of 70 ksi.
IN_TENSION, IN_COMPRESSION, IN_SHEAR = {"normal": "10 kip/in"}, {"normal": "-10 kip/in"}, {"longitudinal": "10 kip/in"}


@pytest.mark.parametrize(
    ("rules", "load", "throat"),
    [
        (LRFD, IN_TENSION, 10 / (0.80 * 42)),
        (LRFD, IN_COMPRESSION, 10 / (0.80 * 63)),
        (LRFD, IN_SHEAR, 10 / (0.75 * 42)),
        (LRFD, {"transverse": "10 kip/in"}, 10 / (0.75 * 42)),
        (ASD, IN_TENSION, 10 * 1.88 / 42),
        (ASD, IN_COMPRESSION, 10 * 1.88 / 63),
        (ASD, IN_SHEAR, 10 * 2.00 / 42),
    ],
)
def test_throat_of_partial_penetration(ask: Ask, rules: str, load: dict[str, str], throat: float) -> None:
    """Table J2.5, E70: 0.60 F_EXX in tension and shear, 0.90 in compression not designed to bear."""
    weld = {"kind": "partial", "groove": "single-v"}
    answer = ask(GROOVE_SIZE, aisc_groove(rules, weld, load=load, process="GMAW", position="1G"))
    assert value(answer["required"]["throat"]) == pytest.approx(throat)


@pytest.mark.parametrize(("rules", "strength"), [(LRFD, 0.90 * 36 / 2), (ASD, 36 / 2 / 1.67)])
def test_base_metal_in_compression(ask: Ask, rules: str, strength: float) -> None:
    """Table J2.5: 0.90 or 1/1.67 on F_y beside a groove that presses; 1/2 in of 36 ksi."""
    half = (steel("1/2 in", "36 ksi", "58 ksi"), steel("1/2 in", "36 ksi", "58 ksi"))
    weld = {"kind": "partial", "groove": "single-v"}
    request = aisc_groove(rules, weld, load={"normal": "-5 kip/in"}, parts=half, process="GMAW", position="1G")
    answer = ask(GROOVE_SIZE, request)
    assert [value(part) for part in answer["strength"]["base_metal"]] == pytest.approx([strength] * 2)


def test_designed_to_bear(ask: Ask) -> None:
    """Table J2.5: compression is not considered in a joint designed to bear; the shear beside it is."""
    weld = {"kind": "partial", "groove": "single-v", "bears": True}
    where: dict[str, Any] = {"process": "GMAW", "position": "1G"}
    pressed = ask(GROOVE_SIZE, aisc_groove(LRFD, weld, load=IN_COMPRESSION, **where))
    assert value(pressed["required"]["throat"]) == 0.0
    assert (pressed["governs"], pressed["strength"]) == ("minimum-throat", None)
    both = ask(GROOVE_SIZE, aisc_groove(LRFD, weld, load={**IN_COMPRESSION, **IN_SHEAR}, **where))
    assert value(both["required"]["throat"]) == pytest.approx(10 / (0.75 * 42))


@pytest.mark.parametrize(
    ("thinner", "least"),
    [
        ("1/4 in", 1 / 8),
        ("1/2 in", 3 / 16),
        ("3/4 in", 1 / 4),
        ("1 1/2 in", 5 / 16),
        ("2 1/4 in", 3 / 8),
        ("6 in", 1 / 2),
        ("7 in", 5 / 8),
    ],
)
def test_least_throat(ask: Ask, thinner: str, least: float) -> None:
    """Structural Steel Designer's Handbook, p. 5.41, Table 5.4: least throat by the thinner part."""
    weld = {"kind": "partial", "groove": "single-v", "minimum_land": "0 mm", "depth_step": "1/16 in"}
    parts = (steel("8 in"), steel(thinner))
    answer = ask(GROOVE_SIZE, aisc_groove(LRFD, weld, parts=parts, process="SMAW", position="1G"))
    assert value(answer["minimum"]["throat"]) == pytest.approx(least)
    assert value(answer["specify"]["throat"]) == pytest.approx(least)


def test_combination_with_a_fillet(ask: Ask) -> None:
    """Commentary to J2.5: shortest way from root to finished face. 1/2 in deep at 45 deg by stick, a 1/2 in fillet.

    By hand: (1/2 + 1/2)/sqrt(2) less 1/8 in; with a 1/4 in fillet sqrt(1/4 + 1/16) less 1/8 in.
    """
    for leg, throat in (("1/2 in", 1 / 2**0.5 - 1 / 8), ("1/4 in", (1 / 4 + 1 / 16) ** 0.5 - 1 / 8)):
        weld = {**HALF, "groove": "single-bevel", "reinforcing_fillet": leg}
        request = aisc_groove(LRFD, weld, joint="tee", parts=THICK, process="SMAW", position="2F")
        assert value(ask(GROOVE_SIZE, request)["specify"]["throat"]) == pytest.approx(throat)


def _plug(rules: str, **weld: Any) -> dict[str, Any]:
    """Request for plugs or slots through a part 1/2 in thick."""
    return aisc_groove(rules, weld, joint="lap", parts=(steel("1 in"), steel("1/2 in")), load={"force": "20 kip"})


@pytest.mark.parametrize(("rules", "factor"), [(LRFD, 0.75), (ASD, 0.5)])
def test_strength_of_a_plug_and_a_slot(ask: Ask, rules: str, factor: float) -> None:
    """Table J2.5, plug and slot: 0.60 F_EXX on the hole's area; 1 in round 0.7854 in2, a slot of 3 in 2.7854 in2."""
    plug = ask(GROOVE_SIZE, _plug(rules, kind="plug", diameter="1 in"))
    assert value(plug["holes"]["strength"]) == pytest.approx(factor * 42 * 0.7854, rel=1e-4)
    slot = ask(GROOVE_SIZE, _plug(rules, kind="slot", width="1 in", length="3 in"))
    assert value(slot["holes"]["strength"]) == pytest.approx(factor * 42 * 2.7854, rel=1e-4)
    assert plug["holes"]["needed"] == (1 if rules == LRFD else 2)


def test_limits_of_a_slot(ask: Ask, refusal: Refusal) -> None:
    """J2.3b, 1/2 in part filled full: 13/16 to 1 1/8 in wide, up to 5 in long, lines 4 widths and 2 lengths apart."""
    answer = ask(GROOVE_SIZE, _plug(LRFD, kind="slot", width="1 in", length="3 in"))
    limits = {name: value(limit) for name, limit in answer["holes"]["limits"].items() if not name.endswith("leg")}
    assert limits == pytest.approx(
        {
            "least_width": 13 / 16,
            "largest_width": 1.125,
            "longest": 5.0,
            "least_filling": 0.5,
            "least_pitch": 4.0,
            "least_pitch_along": 6.0,
        }
    )
    beyond = {
        "#/weld/width": {"width": "3/4 in", "length": "3 in"},
        "#/weld/length": {"width": "1 in", "length": "5 1/8 in"},
        "#/weld/filling": {"width": "7/8 in", "length": "3 in", "filling": "7/16 in"},
        "#/weld/pitch": {"width": "1 in", "length": "3 in", "pitch": "3 7/8 in"},
        "#/weld/pitch_along": {"width": "1 in", "length": "3 in", "pitch_along": "5 7/8 in"},
    }
    for pointer, weld in beyond.items():
        faults = refusal(GROOVE_SIZE, _plug(LRFD, kind="slot", **weld))
        assert [(fault["pointer"], fault["code"]) for fault in faults] == [(pointer, "out-of-scope")]


@pytest.mark.parametrize(("rules", "factor"), [(LRFD, 0.75), (ASD, 0.5)])
def test_fillet_all_round_a_hole_and_a_slot(ask: Ask, rules: str, factor: float) -> None:
    """J2.2a, J2.4(a)(3), Table J2.5: throat times its centre line, worth 0.60 F_EXX in any direction.

    By hand, 1/4 in leg: throat 0.17678 in, its centre line 1/16 in inside the wall: pi (1 - 1/8) = 2.7489 in for a hole
    of 1 in, and 2 (3 - 1) in more for a slot 3 in long: 0.48594 and 1.19305 in2.
    """
    for weld, area in (
        ({"kind": "fillet-in-hole", "diameter": "1 in", "leg": "1/4 in"}, 0.48594),
        ({"kind": "fillet-in-slot", "width": "1 in", "length": "3 in", "leg": "1/4 in"}, 1.19305),
    ):
        holes = ask(GROOVE_SIZE, _plug(rules, **weld))["holes"]
        assert value(holes["throat"]) == pytest.approx(0.17678, rel=1e-4)
        assert value(holes["area"]) == pytest.approx(area, rel=1e-4)
        assert value(holes["strength"]) == pytest.approx(factor * 42 * area, rel=1e-4)
        # 20 kip over 15.31 and 10.20 kip a hole, and over 37.58 and 25.05 kip a slot.
        assert holes["needed"] == (1 if area > 1 else 2)


def test_no_more_than_the_hole_counts(ask: Ask, refusal: Refusal) -> None:
    """J2.2a: 0.30936 in of throat on pi (0.9 - 7/32) = 2.1402 in are 0.6621 in2, but the hole has pi 0.81/4 = 0.63617.

    J2.2b: in a part 1/2 in thick no leg under 3/16 in (Table J2.4) or over 7/16 in along the edge of the hole.
    """
    wide = {"kind": "fillet-in-hole", "diameter": "0.9 in"}
    answer = ask(GROOVE_SIZE, _plug(LRFD, **wide, leg="7/16 in"))
    assert value(answer["holes"]["centre_line"]) == pytest.approx(2.1402, rel=1e-4)
    assert value(answer["holes"]["area"]) == pytest.approx(0.63617, rel=1e-4)
    assert "at most the area of the hole" in answer["reasons"][1]
    assert value(answer["holes"]["limits"]["least_leg"]) == pytest.approx(3 / 16)
    assert value(answer["holes"]["limits"]["largest_leg"]) == pytest.approx(7 / 16)
    for diameter, leg, code in (
        ("1 in", "5/32 in", "out-of-scope"),
        ("1 in", "15/32 in", "out-of-scope"),
        ("0.8 in", "7/16 in", "inconsistent"),
    ):
        [fault] = refusal(GROOVE_SIZE, _plug(LRFD, **{**wide, "diameter": diameter}, leg=leg))
        assert (fault["pointer"], fault["code"]) == ("#/weld/leg", code)


def test_filling_of_a_thick_part(ask: Ask) -> None:
    """J2.3b(e): over 5/8 in half the thickness and no less than 5/8 in: 5/8 in for 1 in, 3/4 in for 1 1/2 in."""
    for thickness, least in (("1 in", 5 / 8), ("1 1/2 in", 3 / 4)):
        weld = {"kind": "plug", "diameter": "1 13/16 in"}
        request = aisc_groove(
            LRFD, weld, joint="lap", parts=(steel("1 in"), steel(thickness)), load={"force": "-9 kip"}
        )
        assert value(ask(GROOVE_SIZE, request)["holes"]["limits"]["least_filling"]) == pytest.approx(least)


@pytest.mark.parametrize(
    ("tensile", "filler", "load", "allowed"),
    [
        # J2.6, user note: E60 and E70 with A36, E70 with A992, E80 with the 65 ksi yield grades, E90 with A913-70.
        ("58 ksi", "E60", IN_TENSION, True),
        ("58 ksi", "E70", IN_TENSION, True),
        ("65 ksi", "E70", IN_TENSION, True),
        ("80 ksi", "E80", IN_TENSION, True),
        ("90 ksi", "E90", IN_TENSION, True),
        # Table J2.5: matching in tension and shear, one level lower in compression, one higher anywhere.
        ("65 ksi", "E60", IN_TENSION, False),
        ("65 ksi", "E60", IN_SHEAR, False),
        ("65 ksi", "E60", IN_COMPRESSION, True),
        ("80 ksi", "E60", IN_COMPRESSION, False),
        ("65 ksi", "E80", IN_TENSION, True),
        ("65 ksi", "E90", IN_TENSION, False),
    ],
)
def test_matching_filler(
    ask: Ask, refusal: Refusal, tensile: str, filler: str, load: dict[str, str], allowed: bool
) -> None:
    """J2.6 and Table J2.5, complete penetration: filler metal by strength levels of 10 ksi."""
    parts = (steel("1 in", "36 ksi", tensile), steel("1 in", "36 ksi", tensile))
    request = {**aisc_groove(LRFD, {"kind": "full"}, load=load, parts=parts), "filler": filler}
    if allowed:
        answer = ask(GROOVE_SIZE, request)
        assert (answer["verdict"], answer["strength"]["weld"]) == ("enough", None)
        assert worked(answer, "F_match")
    else:
        [fault] = refusal(GROOVE_SIZE, request)
        assert (fault["pointer"], fault["code"]) == ("#/filler", "out-of-scope")
