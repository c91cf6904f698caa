"""ANSI/AISC 360-22, Specification for Structural Steel Buildings: tables and rules of chapter J, evaluated.

Tables are copied; rules are evaluated here by hand from the clause's own text. Chapters D, J and K were read in a
transcription of the standard and its commentary.
"""

from typing import Any

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import ASD, FILLET_SIZE, LRFD, aisc_fillet, leg, steel, throat, weld


@pytest.mark.parametrize(
    ("thinner", "least"),
    [
        ("0.125 in", 0.125),
        ("0.25 in", 0.125),
        ("0.3125 in", 0.1875),
        ("0.5 in", 0.1875),
        ("0.5625 in", 0.25),
        ("0.75 in", 0.25),
        ("0.8125 in", 0.3125),
        ("2.0 in", 0.3125),
    ],
)
def test_least_fillet(ask: Ask, thinner: str, least: float) -> None:
    """Table J2.4: least leg by the thinner part, each limit belonging to the row it ends."""
    answer = ask(FILLET_SIZE, aisc_fillet(LRFD, "1/16 in", length="10 in", parts=(steel("2 in"), steel(thinner))))
    assert leg(answer, "minimum") == pytest.approx(least)


@pytest.mark.parametrize(
    ("edge", "largest"), [("3/16 in", 0.1875), ("1/4 in", 0.1875), ("3/8 in", 0.3125), ("1/2 in", 0.4375)]
)
def test_largest_fillet_along_an_edge(ask: Ask, edge: str, largest: float) -> None:
    """J2.2b(b): the thickness below 1/4 in, from there 1/16 in less."""
    answer = ask(
        FILLET_SIZE, aisc_fillet(LRFD, "1/16 in", length="10 in", parts=(steel("1/2 in"), steel(edge)), edge_of=2)
    )
    assert leg(answer, "maximum") == pytest.approx(largest)


@pytest.mark.parametrize(
    ("slenderness", "factor"), [(50, 1.0), (100, 1.0), (150, 0.9), (200, 0.8), (300, 0.6), (400, 0.45)]
)
def test_long_end_loaded_weld(ask: Ask, slenderness: int, factor: float) -> None:
    """J2.2b(d), Eq. J2-1: whole to 100 w, 1.2 - 0.002 l/w to 300 w, then 180 w."""
    request = aisc_fillet(LRFD, "1/4 in", length=f"{slenderness / 4} in", end_loaded=True)
    answer = ask(FILLET_SIZE, request)
    assert answer["length"]["factor"] == pytest.approx(factor)


@pytest.mark.parametrize(("slenderness", "factor"), [(150, 0.9), (200, 0.8), (300, 0.6), (400, 0.45)])
def test_size_of_long_end_loaded_weld(ask: Ask, slenderness: int, factor: float) -> None:
    """J2.2b(d): the load that a 1/4 in weld carries at its reduced length needs a leg of 1/4 in.

    Design strength per length 1.392 kip/in per sixteenth (Manual Part 8), times four, times the factor.
    """
    length = slenderness / 4
    force = 4 * 1.392 * factor * length
    request = aisc_fillet(LRFD, "1/16 in", length=f"{length} in", force=f"{force} kip", end_loaded=True)
    answer = ask(FILLET_SIZE, {**request, "parts": [steel("3/4 in"), steel("3/4 in")]})
    assert leg(answer) == pytest.approx(0.25, rel=0.001)


@pytest.mark.parametrize(("length", "counted"), [("1 in", 1.0), ("3/4 in", 0.75), ("1/2 in", 0.5)])
def test_short_weld_counts_a_quarter_of_its_length(ask: Ask, length: str, counted: float) -> None:
    """J2.2b(c): a 1/4 in weld shorter than 1 in counts as l/4: its share of the 1 in weld's strength."""
    full = ask(FILLET_SIZE, aisc_fillet(LRFD, "1/4 in", length="4 in"))
    short = ask(FILLET_SIZE, aisc_fillet(LRFD, "1/4 in", length=length))
    assert weld(short) == pytest.approx(counted * weld(full))


@pytest.mark.parametrize(
    ("angle", "factor"), [("0 deg", 1.0), ("30 deg", 1.177), ("45 deg", 1.297), ("60 deg", 1.403), ("90 deg", 1.5)]
)
@pytest.mark.parametrize("rules", [LRFD, ASD])
def test_directional_factor(ask: Ask, rules: str, angle: str, factor: float) -> None:
    """Eq. J2-5, 1 + 0.50 sin(theta)^1.5 evaluated: strength over that of a weld loaded along its axis."""
    along = ask(FILLET_SIZE, aisc_fillet(rules, "1/4 in", length="10 in"))
    turned = ask(FILLET_SIZE, aisc_fillet(rules, "1/4 in", length="10 in", angle=angle))
    assert weld(turned) / weld(along) == pytest.approx(factor, abs=0.0006)


def test_directional_factor_by_components(ask: Ask) -> None:
    """Eq. J2-5 at 45 deg, 1.297, of a force given by equal parts across and along the weld."""
    along = ask(FILLET_SIZE, aisc_fillet(LRFD, "1/4 in", length="10 in"))
    request = aisc_fillet(LRFD, "1/4 in", length="10 in", kind="tee")
    turned = ask(FILLET_SIZE, {**request, "load": {"normal": "0.1 kip/in", "longitudinal": "0.1 kip/in"}})
    assert weld(turned) / weld(along) == pytest.approx(1.297, abs=0.0006)


GROOVES = [
    # process, position, groove, included angle, throat of a groove 1/2 in deep
    ("SMAW", "1G", "single-v", "60 deg", 0.5),
    ("SMAW", "4G", "single-v", "60 deg", 0.5),
    ("SMAW", "3G", "single-u", "20 deg", 0.5),
    ("SMAW", "2G", "single-j", "20 deg", 0.5),
    ("GMAW", "3G", "single-v", "60 deg", 0.5),
    ("FCAW", "4G", "single-v", "60 deg", 0.5),
    ("GMAW", "4G", "single-u", "20 deg", 0.5),
    ("FCAW", "1G", "single-j", "20 deg", 0.5),
    ("SAW", "1G", "single-bevel", "60 deg", 0.5),
    ("SAW", "1G", "single-v", "60 deg", 0.5),
    ("SAW", "1G", "single-j", "20 deg", 0.5),
    ("SAW", "1G", "single-u", "20 deg", 0.5),
    ("GMAW", "1G", "single-bevel", "45 deg", 0.5),
    ("GMAW", "2G", "single-bevel", "45 deg", 0.5),
    ("FCAW", "1G", "single-bevel", "45 deg", 0.5),
    ("FCAW", "2G", "single-bevel", "45 deg", 0.5),
    ("SMAW", "1G", "single-bevel", "45 deg", 0.375),
    ("SMAW", "2G", "single-bevel", "45 deg", 0.375),
    ("SMAW", "3G", "single-bevel", "45 deg", 0.375),
    ("SMAW", "4G", "single-bevel", "45 deg", 0.375),
    ("GMAW", "3G", "single-bevel", "45 deg", 0.375),
    ("GMAW", "4G", "single-bevel", "45 deg", 0.375),
    ("FCAW", "3G", "single-bevel", "45 deg", 0.375),
    ("FCAW", "4G", "single-bevel", "45 deg", 0.375),
]


@pytest.mark.parametrize(("process", "position", "groove", "angle", "expected"), GROOVES)
def test_groove_throat_left(ask: Ask, process: str, position: str, groove: str, angle: str, expected: float) -> None:
    """Table J2.1: throat of a groove 1/2 in deep, ground flush."""
    answer = ask(
        "/v1/grind-allowance",
        {
            "seam": {"kind": "butt", "thickness": ["1 in", "1 in"]},
            "preparation": {"depth": "1/2 in", "groove": groove, "groove_angle": angle},
            "required_throat": "3/8 in",
            "finish": {"to": "flush"},
            "rule_set": LRFD,
            "process": process,
            "position": position,
            "units": "us",
        },
    )
    assert answer["budget"]["remaining"]["value"] == pytest.approx(expected)
    assert answer["physical"]["remaining"]["value"] == pytest.approx(expected)
    assert answer["budget"]["deduction"]["value"] == pytest.approx(expected - 0.5)


@pytest.mark.parametrize(("process", "position", "groove", "angle", "of_half_inch"), GROOVES)
def test_groove_depth_for_a_throat(
    ask: Ask, process: str, position: str, groove: str, angle: str, of_half_inch: float
) -> None:
    """Table J2.1 the other way: depth for a throat of 1/2 in, 1/8 in deeper where the table takes it off."""
    answer = ask(
        "/v1/bevel-depth",
        {
            "seam": {"kind": "butt", "thickness": ["1 in", "1 in"]},
            "required_throat": "1/2 in",
            "groove": groove,
            "groove_angle": angle,
            "finish": {"to": "flush"},
            "rule_set": LRFD,
            "process": process,
            "position": position,
            "units": "us",
        },
    )
    assert answer["deduction"]["value"] == pytest.approx(0.5 - of_half_inch)
    assert answer["depth"]["value"] == pytest.approx(0.5 + 0.5 - of_half_inch)


def _branch(wall: dict[str, Any]) -> dict[str, Any]:
    """Request for a fillet that develops the 1/4 in wall of a branch standing on a thicker chord."""
    return {
        "rule_set": LRFD,
        "basis": "full-strength",
        "joint": {"kind": "tee", "sides": 1},
        "held_from_turning": True,
        "parts": [steel("1/2 in"), wall],
        "filler": "E70",
        "units": "us",
    }


def test_throat_that_develops_a_rectangular_branch(ask: Ask) -> None:
    """Commentary K5, Fy 50 ksi and E70: a throat of 1.43 t at an HSS end, where the directional factor is left out."""
    answer = ask(FILLET_SIZE, _branch({"thickness": "1/4 in", "material": "A500-C"}))
    assert throat(answer) / 0.25 == pytest.approx(1.43, abs=0.005)


def test_throat_that_develops_a_plate_branch(ask: Ask) -> None:
    """Commentary K5, Fy 50 ksi and E70: a throat of 0.95 t where the directional factor holds."""
    answer = ask(FILLET_SIZE, _branch(steel("1/4 in", f_u="62 ksi")))
    assert throat(answer) / 0.25 == pytest.approx(0.95, abs=0.005)


@pytest.mark.parametrize(
    ("material", "hss_end", "ratio"),
    [
        ("A36", None, 1.5),
        ("A36", False, 1.5),
        ("A36", True, 1.0),
        ("A500-C", None, 1.0),
        ("A500-C", False, 1.5),
        ("A500-C", True, 1.0),
    ],
)
def test_directional_increase_at_a_hollow_section(ask: Ask, material: str, hss_end: bool | None, ratio: float) -> None:
    """J2.4(a): a weld across its axis has 1.5 times the strength of one along it, at the end of an HSS the same."""
    parts = (steel("1/2 in"), {"thickness": "1/2 in", "material": material})
    said = {} if hss_end is None else {"hss_end": hss_end}
    across = ask(FILLET_SIZE, aisc_fillet(LRFD, "1/4 in", length="10 in", angle="90 deg", parts=parts, **said))
    along = ask(FILLET_SIZE, aisc_fillet(LRFD, "1/4 in", length="10 in", parts=parts, **said))
    assert weld(across) / weld(along) == pytest.approx(ratio, rel=1e-9)
    codes = {caution["code"] for caution in across["cautions"]}
    assert ("hollow-section" in codes) is (material == "A500-C" or hss_end is True)
