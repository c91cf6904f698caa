"""EN 1993-1-8:2005, section 4: values worked by hand from the clause, in no print of their own.

Clauses 4.5.1 and 4.5.2(2) were read in a reprint with commentary; 4.3.2.2, 4.4, 4.5.3.2, 4.10 to 4.12 are from
memory.
"""

from typing import Any

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import DIRECTIONAL, FILLET_SIZE, SIMPLIFIED, base_metal, en_fillet, leg, throat, weld

OBLIQUE = [(0, 1.0), (30, 1.0445), (45, 1.0954), (60, 1.1547), (90, 1.2247)]


@pytest.mark.parametrize(("angle", "ratio"), OBLIQUE)
def test_oblique_force_in_the_plane_of_the_plates(ask: Ask, angle: int, ratio: float) -> None:
    """4.5.3.2 over 4.5.3.3: sqrt(3/(2 + cos(phi)^2)), phi from the weld's axis."""
    directional = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "5 mm", f_u=510, beta_w=0.9, angle=f"{angle} deg"))
    simplified = ask(FILLET_SIZE, en_fillet(SIMPLIFIED, "5 mm", f_u=510, beta_w=0.9, angle=f"{angle} deg"))
    assert weld(directional) / weld(simplified) == pytest.approx(ratio, abs=1e-4)


def test_oblique_force_by_components(ask: Ask) -> None:
    """The same at 45 deg, 1.0954, of a force given by equal parts square off part 1 and along the weld."""
    load = {"normal": "100 N/mm", "longitudinal": "100 N/mm"}
    directional = ask(FILLET_SIZE, {**en_fillet(DIRECTIONAL, "5 mm", f_u=510, beta_w=0.9), "load": load})
    simplified = ask(FILLET_SIZE, {**en_fillet(SIMPLIFIED, "5 mm", f_u=510, beta_w=0.9), "load": load})
    assert weld(directional) / weld(simplified) == pytest.approx(1.0954, abs=1e-4)


@pytest.mark.parametrize(("psi", "ratio"), [(60, 1.095), (90, 1.225), (120, 1.414)])
def test_transverse_over_longitudinal_by_plate_angle(ask: Ask, psi: int, ratio: float) -> None:
    """4.5.3.2, the throat halving the plates' angle: capacity across over that along, 1.095, 1.225, 1.414.

    Worked by hand: sqrt(3)/sqrt(sin(psi/2)^2 + 3 cos(psi/2)^2).
    """
    joint = {"kind": "tee", "sides": 1, "angle": f"{psi} deg"}
    along = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "5 mm", f_u=360, beta_w=0.8, joint=joint))
    across = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "5 mm", f_u=360, beta_w=0.8, joint=joint, angle="90 deg"))
    assert weld(across) / weld(along) == pytest.approx(ratio, abs=0.0005)


@pytest.mark.parametrize(("length", "size", "factor"), [(600, 5, 1.0), (1000, 4, 0.8667)])
def test_long_lap(ask: Ask, length: int, size: int, factor: float) -> None:
    """4.11(3), eq. (4.9), from memory: 1.2 - 0.2 L/(150 a), whole at 120 a, 0.8667 at 250 a."""
    request = en_fillet(
        SIMPLIFIED, f"{size} mm", f_u=510, beta_w=0.9, joint={"kind": "lap"}, length=f"{length} mm", end_loaded=True
    )
    assert ask(FILLET_SIZE, request)["length"]["factor"] == pytest.approx(factor, abs=1e-4)


def test_throat_of_a_long_lap(ask: Ask) -> None:
    """The same solved for the throat: 4 mm over 1000 mm of S355, f_u 510, carry 261.73 x 4 x 0.8667 N/mm, 907.3 kN."""
    request = en_fillet(
        SIMPLIFIED, "0.5 mm", f_u=510, beta_w=0.9, f_y=355, joint={"kind": "lap"}, length="1000 mm", end_loaded=True
    )
    answer = ask(FILLET_SIZE, {**request, "load": {"force": "907.3 kN", "length": "1000 mm", "angle": "0 deg"}})
    assert throat(answer) == pytest.approx(4.0, rel=0.0005)


@pytest.mark.parametrize(("size", "least"), [(3, 30.0), (5, 30.0), (6, 36.0), (10, 60.0)])
def test_least_length(ask: Ask, size: int, least: float) -> None:
    """4.5.1(2): 30 mm and six throats; a tenth of a millimetre less carries nothing."""
    long_enough = en_fillet(DIRECTIONAL, f"{size} mm", f_u=360, beta_w=0.8, length=f"{least} mm")
    assert ask(FILLET_SIZE, long_enough)["verdict"] == "enough"
    answer = ask(FILLET_SIZE, {**long_enough, "load": {**long_enough["load"], "length": f"{least - 0.1} mm"}})
    assert answer["verdict"] == "cannot-be-reached"
    assert answer["governs"] == "minimum-length"


def test_ends_taken_off_a_short_weld(ask: Ask) -> None:
    """4.5.1: 46 mm overall less 2 a of 6 mm is 34 mm, under six throats: not to carry load."""
    answer = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "6 mm", f_u=360, beta_w=0.8, length="34 mm"))
    assert answer["verdict"] == "cannot-be-reached"
    assert answer["specify"] is None


def test_least_throat(ask: Ask) -> None:
    """4.5.2(2): at least 3 mm of throat."""
    answer = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "0.5 mm", f_u=360, beta_w=0.8))
    assert throat(answer, "minimum") == pytest.approx(3.0)
    assert throat(answer, "specify") == pytest.approx(3.0)


def test_edge_of_a_lap(ask: Ask) -> None:
    """Common practice, no source: along a 6 mm edge no more than 6 mm of leg."""
    request = en_fillet(SIMPLIFIED, "0.5 mm", f_u=360, beta_w=0.8, joint={"kind": "lap"}, thickness="6 mm", edge_of=2)
    assert leg(ask(FILLET_SIZE, request), "maximum") == pytest.approx(6.0)


@pytest.mark.parametrize(("angle", "strength"), [("0 deg", 1356.8), ("90 deg", 2350.0)])
def test_plate_beside_the_weld(ask: Ask, angle: str, strength: float) -> None:
    """EN 1993-1-1 6.2.3 and 6.2.6, from memory: 10 mm of S235, 235/sqrt(3) x 10 along, 235 x 10 N/mm across."""
    answer = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "4 mm", f_u=360, beta_w=0.8, angle=angle, thickness="10 mm"))
    assert base_metal(answer, 2) == pytest.approx(strength, abs=0.1)


@pytest.mark.parametrize(("metres", "factor"), [(1.7, 1.0), (3.4, 0.9), (10.0, 0.6)])
def test_long_stiffener(ask: Ask, metres: float, factor: float) -> None:
    """4.11(4), eq. (4.10): 1.1 - L/17 with L in metres, between 0.6 and 1."""
    request = en_fillet(SIMPLIFIED, "4 mm", f_u=510, beta_w=0.9, length=f"{metres} m", transverse_stiffener=True)
    answer = ask(FILLET_SIZE, request)
    assert answer["length"]["factor"] == pytest.approx(factor, abs=1e-9)
    # The throat needed makes up for it: 0.1 kN over the length at f_vw,d = 510/(sqrt(3)*0.9*1.25) = 261.73 N/mm2.
    assert throat(answer) == pytest.approx(100 / (1000 * metres) / 261.73 / factor, rel=1e-4)


@pytest.mark.parametrize(
    ("section", "beside", "width"),
    # k = (15/20)(275/275) = 0.75. I: 9 + 2*18 + 7*0.75*15; welded, a = 6: 9 + 2*sqrt(2)*6 + 78.75; box: 2*9 + 5*k*15.
    [("i", {"root_radius": "18 mm"}, 123.75), ("i", {"weld_throat": "6 mm"}, 104.7206), ("box", {}, 74.25)],
)
def test_unstiffened_flange(ask: Ask, section: str, beside: dict[str, str], width: float) -> None:
    """4.10: a plate 180 by 20 on a flange 15 thick; under 275/430 x 180 = 115.12 mm the flange is to be stiffened."""
    part = {"yield_strength": "275 MPa", "tensile_strength": "430 MPa", "beta_w": 0.85}
    answer = ask(
        FILLET_SIZE,
        {
            "rule_set": DIRECTIONAL,
            "basis": "full-strength",
            "joint": {"kind": "tee", "sides": 2},
            "parts": [{"thickness": "15 mm", **part}, {"thickness": "20 mm", **part}],
            "unstiffened_flange": {"section": section, "web_thickness": "9 mm", "plate_width": "180 mm", **beside},
        },
    )
    flange = answer["unstiffened_flange"]
    assert flange["share"] == pytest.approx(0.75)
    assert flange["effective_width"]["value"] == pytest.approx(width, abs=0.01)
    assert flange["least_width"]["value"] == pytest.approx(115.12, abs=0.01)
    assert flange["stiffen"] == (width < 115.12)
    assert answer["verdict"] == ("cannot-be-reached" if width < 115.12 else "enough")
    # The plate holds 275 x 20 N/mm over that width; the weld is for all of the plate, 4.10(5):
    # 2 a of each of two = 20 x 275 by the directional method, a = 5500/2 x sqrt(2) x 0.85 x 1.25/430.
    assert flange["resistance"]["value"] == pytest.approx(width * 5.5, rel=1e-4)
    assert throat(answer) == pytest.approx(2750 * 2**0.5 * 0.85 * 1.25 / 430, rel=1e-6)


def test_angle_on_a_gusset(ask: Ask) -> None:
    """Statics and 4.5.3.3: 150 kN, leg 100, centroid 30 from the heel, a = 5: 105 and 45 kN, 101.04 and 43.3 mm."""
    request = en_fillet(SIMPLIFIED, "5 mm", f_u=360, beta_w=0.8, joint={"kind": "lap", "sides": 2})
    load = {"force": "150 kN", "length": "160 mm", "width": "100 mm", "centroid": "30 mm"}
    balance = ask(FILLET_SIZE, {**request, "load": load})["balance"]
    assert [force["value"] for force in balance["forces"]] == pytest.approx([105.0, 45.0], rel=2e-4)
    assert [length["value"] for length in balance["least_lengths"]] == pytest.approx([101.04, 43.3], rel=2e-4)


@pytest.mark.parametrize(("overall", "verdict"), [("46 mm", "cannot-be-reached"), ("48 mm", "enough")])
def test_ends_not_full_size(ask: Ask, overall: str, verdict: str) -> None:
    """4.5.1(1): of 46 mm less two throats of 6 mm 34 are left, under six throats; 48 mm leave 36."""
    answer = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "6 mm", f_u=360, beta_w=0.8, length=overall, ends="craters"))
    assert answer["verdict"] == verdict
    if verdict == "enough":
        assert answer["length"]["effective"]["value"] == pytest.approx(36.0)


def test_throat_with_ends_not_full_size(ask: Ask) -> None:
    """The same solved: 4 mm of S355, f_u 510, over 200 mm less 8 mm, 261.73 x 4 x 192 N = 201.01 kN."""
    request = en_fillet(SIMPLIFIED, "0.5 mm", f_u=510, beta_w=0.9, ends="craters", f_y=355)
    load = {"force": "201.01 kN", "length": "200 mm", "angle": "0 deg"}
    assert throat(ask(FILLET_SIZE, {**request, "load": load})) == pytest.approx(4.0, rel=1e-4)


def _intermittent(**more: Any) -> dict[str, Any]:
    """Request for segments of 50 mm of 4 mm throat between plates of 12 and 10 mm, 300 and 120 mm wide."""
    part = {"yield_strength": "235 MPa", "tensile_strength": "360 MPa", "beta_w": 0.8}
    return {
        "rule_set": SIMPLIFIED,
        "basis": "load",
        "joint": {"kind": "tee", "sides": 2},
        "parts": [{"thickness": "12 mm", **part}, {"thickness": "10 mm", **part}],
        "load": {"longitudinal": "10 N/mm"},
        "size_step": "4 mm",
        "intermittent": {"segment": "50 mm", "widths": ["300 mm", "120 mm"], **more},
    }


@pytest.mark.parametrize(
    ("more", "gap"),
    [
        ({"loading": "tension"}, 160.0),  # 16 x 10
        ({"loading": "compression"}, 30.0),  # a quarter of 120, under 12 x 10
        ({"loading": "shear", "widths": ["1 m", "900 mm"]}, 120.0),  # 12 x 10
        # The gap to the other side, (e - 50)/2, is what counts: 16 x 10 is reached at 370 mm.
        ({"loading": "tension", "staggered": True}, 370.0),
    ],
)
def test_largest_gap(ask: Ask, more: dict[str, Any], gap: float) -> None:
    """4.3.2.2(2) and (3), Figure 4.1; the end weld of a built-up member is 0.75 of the wider part (4.3.2.2(5))."""
    answer = ask(FILLET_SIZE, _intermittent(**more))
    assert answer["intermittent"]["gap"]["value"] == pytest.approx(gap)
    widest = 1000.0 if "widths" in more else 300.0
    assert answer["intermittent"]["end_weld"]["value"] == pytest.approx(0.75 * widest)


def test_intermittent_strength(ask: Ask) -> None:
    """4.9(7): a segment carries (e + l)/l; 4 mm at 207.85 N/mm2 is 831.4 N/mm, and 50 in 125 of it 332.6 N/mm."""
    request = {**_intermittent(loading="tension", gap="75 mm"), "joint": {"kind": "tee", "sides": 1}}
    answer = ask(FILLET_SIZE, {**request, "load": {"longitudinal": "332.5 N/mm"}})
    assert answer["intermittent"]["strength"]["value"] == pytest.approx(332.6, abs=0.1)
    assert answer["utilisation"] == pytest.approx(1.0, abs=0.001)
    assert "EN 1993-1-8:2005, 4.9(7), from memory" in answer["provenance"]["clauses"]
    assert ask(FILLET_SIZE, {**request, "load": {"longitudinal": "332.7 N/mm"}})["specify"]["throat"]["value"] > 4.0


def test_root_bending(ask: Ask) -> None:
    """4.12 by the model beside it (no source): 6 mm throat under 10 mm plate of S355, f_u 490, pulled square.

    Arm 10/2 + 6*sqrt(2)/4 = 7.1213 mm; for each N/mm the root has 1/sqrt(2) + 6*7.1213/6 = 7.8284 across the throat.
    0.9 f_u/1.25 governs: 6*352.8/7.8284 = 270.4 N/mm.
    """
    request = en_fillet(
        DIRECTIONAL, "6 mm", f_u=490, f_y=355, beta_w=0.9, thickness="10 mm", angle="90 deg", root_bending=True
    )
    assert weld(ask(FILLET_SIZE, request)) == pytest.approx(270.4, abs=0.05)
    # By the simplified method 251.47 N/mm2 on the resultant of 7.8284 and 1/sqrt(2), 7.8603: 191.95 N/mm.
    assert weld(ask(FILLET_SIZE, {**request, "rule_set": SIMPLIFIED})) == pytest.approx(191.95, abs=0.05)


@pytest.mark.parametrize(
    ("packing", "welds", "specified"),
    [("4 mm", "over-packing", 11), ("6.8 mm", "over-packing", 14), ("7 mm", "to-each-part", 7)],
)
def test_packing(ask: Ask, packing: str, welds: str, specified: int) -> None:
    """4.4: thinner than the leg needed it is added to the leg; otherwise each part is welded to it for the whole force.

    By hand, f_u 360, beta_w 0.8: 1000 N/mm over 360/(sqrt3 0.8 1.25) = 207.85 N/mm2 is a throat of 4.811 mm, a leg of
    6.804 mm, in millimetres 7; with 4 mm of packing 10.804, with 6.8 mm 13.604.
    """
    request: dict[str, Any] = {
        **en_fillet(SIMPLIFIED, "1 mm", f_u=360, beta_w=0.8, joint={"kind": "lap"}),
        "load": {"force": "100 kN", "length": "100 mm", "angle": "0 deg"},
        "size_by": "leg",
        "packing": {"thickness": packing},
    }
    answer = ask(FILLET_SIZE, request)
    assert leg(answer) == pytest.approx(6.804, abs=5e-4)
    assert (answer["packing"]["welds"], leg(answer, "specify")) == (welds, specified)
    # What reaches over the packing carries nothing: 7 mm of leg carry 4.9497 x 207.85, 7.2 mm of leg 5.0912 x 207.85.
    net = specified - answer["packing"]["added"]["value"]
    assert weld(answer) == pytest.approx(net / 2**0.5 * 207.846, rel=1e-5)
    assert answer["governs"] == ("packing" if welds == "over-packing" else "load")


def test_packing_too_thin_for_a_weld_along_its_edge(ask: Ask) -> None:
    """4.4(3): 6.9 mm are over the 6.804 mm needed, but leave no edge for a leg of 7 mm; for one of 6.9 mm they do."""
    request: dict[str, Any] = {
        **en_fillet(SIMPLIFIED, "1 mm", f_u=360, beta_w=0.8, joint={"kind": "lap"}),
        "load": {"force": "100 kN", "length": "100 mm", "angle": "0 deg"},
        "size_by": "leg",
        "packing": {"thickness": "6.9 mm"},
    }
    answer = ask(FILLET_SIZE, request)
    assert (answer["verdict"], answer["specify"]) == ("cannot-be-reached", None)
    assert any("over the edge of the packing" in reason for reason in answer["reasons"])
    assert leg(ask(FILLET_SIZE, {**request, "size_step": "0.1 mm"}), "specify") == pytest.approx(6.9)
