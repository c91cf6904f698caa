"""Fillets of stainless steel, of high-strength steel and of aluminium: values worked by hand from Eurocodes.

EN 1993-1-4:2006, EN 1993-1-12:2007 and EN 1999-1-1:2007 are from memory throughout; no print of a worked result was
found for them.
"""

from typing import Any

import pytest
from tests.published.conftest import Ask, Read, Refusal
from tests.published.fillets import FILLET_SIZE, base_metal, leg, throat, weld, worked

STAINLESS, HIGH_STRENGTH, ALUMINIUM = "en-1993-1-4-2006", "en-1993-1-12-2007", "en-1999-1-1-2007"
GROUP = "/v1/weld-group"


def fillet(rules: str, size: str, material: str | tuple[str, str], **more: Any) -> dict[str, Any]:
    """Request for a fillet of the throat given, between parts of 10 mm."""
    first, second = (material, material) if isinstance(material, str) else material
    return {
        "rule_set": rules,
        "basis": "load",
        "joint": {"kind": "tee", "sides": 1},
        "parts": [{"thickness": "10 mm", "material": first}, {"thickness": "10 mm", "material": second}],
        "load": {"force": "0.1 kN", "length": "500 mm", "angle": more.pop("angle", "0 deg")},
        # The figures are those of the weld itself.
        "held_from_turning": True,
        "size_step": size,
        **more,
    }


@pytest.mark.parametrize(
    ("grade", "f_u", "f_vw_d"), [("1.4301", 520, 240.18), ("1.4404", 520, 240.18), ("1.4462", 640, 295.60)]
)
def test_stainless(ask: Ask, grade: str, f_u: float, f_vw_d: float) -> None:
    """EN 1993-1-4 6.3: beta_w 1.0, gamma_M2 1.25, so f_vw,d = f_u/(sqrt(3) 1.25) = f_u/2.16506."""
    answer = ask(FILLET_SIZE, fillet(f"{STAINLESS}-simplified", "5 mm", grade))
    assert worked(answer, "f_vw_d")[0] == pytest.approx(f_vw_d, abs=0.01)
    assert weld(answer) == pytest.approx(5 * f_u / 2.16506, rel=1e-5)
    assert "EN 1993-1-4:2006, 6.3, from memory" in answer["provenance"]["clauses"]


def test_stainless_with_a_weaker_filler(ask: Ask) -> None:
    """EN 1993-1-4 6.3 with 4.2(2): E308L has 75 ksi, 517.1 MPa, under the 520 of 1.4301, so 5 x 517.1/2.16506."""
    answer = ask(FILLET_SIZE, fillet(f"{STAINLESS}-simplified", "5 mm", "1.4301", filler="E308L"))
    assert weld(answer) == pytest.approx(5 * 75 * 6.894757 / 2.16506, rel=1e-5)


def test_stainless_across(ask: Ask) -> None:
    """EN 1993-1-8 4.5.3.2 with it: f_u a/(sqrt(2) gamma_M2) = 520 x 5/1.76777 = 1470.8 N/mm across, 10 mm of plate."""
    answer = ask(FILLET_SIZE, fillet(f"{STAINLESS}-directional", "5 mm", "1.4401", angle="90 deg"))
    assert weld(answer) == pytest.approx(1470.8, abs=0.1)
    # EN 1993-1-4 5.1: gamma_M0 1.1, so 10 x 220/1.1.
    assert base_metal(answer, 2) == pytest.approx(2000.0)


def test_stainless_full_strength(ask: Ask) -> None:
    """Both sides of 10 mm of 1.4404: 2000/2 N/mm each at f_u/(beta_w gamma_M2 sqrt(2)), a = 1000 sqrt(2) 1.25/520."""
    request = {**fillet(f"{STAINLESS}-directional", "0.5 mm", "1.4404"), "basis": "full-strength"}
    del request["load"]
    request["joint"] = {"kind": "tee", "sides": 2}
    assert throat(ask(FILLET_SIZE, request)) == pytest.approx(3.3995, abs=1e-4)


def test_stainless_beta_w_shown_by_tests(ask: Ask) -> None:
    """6.3 lets tests show a lower beta_w: 0.9 makes the weld 1/0.9 stronger, on the request's word."""
    request = fillet(f"{STAINLESS}-simplified", "5 mm", "1.4301")
    lowered = ask(FILLET_SIZE, {**request, "parameters": {"beta_w": 0.9}})
    assert weld(lowered) == pytest.approx(weld(ask(FILLET_SIZE, request)) / 0.9)
    assert lowered["provenance"]["parameters"]["beta_w"] == 0.9
    assert "lower-beta-w" in {caution["code"] for caution in lowered["cautions"]}


def test_stainless_group(ask: Ask) -> None:
    """Two lines of 200 mm of 1.4301 share 100 kN along them: 250 N/mm over 240.18 MPa is a throat of 1.0409 mm."""
    request = {
        "rule_set": f"{STAINLESS}-simplified",
        "group": {"pattern": "two-upright-lines", "depth": "200 mm", "width": "100 mm"},
        "load": {"force": {"y": "-100 kN"}, "at": {"x": "50 mm"}},
        "parts": [{"thickness": "10 mm", "material": "1.4301"}] * 2,
        # A throat of 1 mm is under 1/150 of the length: the figure is that of the weld metal alone.
        "end_loaded": False,
    }
    assert throat(ask(GROUP, request)) == pytest.approx(1.0409, abs=1e-4)


def test_high_strength(ask: Ask) -> None:
    """EN 1993-1-12 2.8: beta_w 1.0, so the limit of S690Q with a filler of 770 MPa is 770/1.25 = 616.0 MPa.

    Along the weld that is 616/sqrt(3) over the throat.
    """
    answer = ask(FILLET_SIZE, fillet(f"{HIGH_STRENGTH}-directional", "5 mm", "S690Q", filler="G 69"))
    assert weld(answer) / 5 * 3**0.5 == pytest.approx(616.0, abs=0.01)


@pytest.mark.parametrize(("filler", "limit"), [("G 50", 448.0), ("G 62", 560.0), ("G 69", 616.0), ("E110", 606.74)])
def test_undermatched_filler(ask: Ask, filler: str, limit: float) -> None:
    """2.8: a weaker filler metal's own f_u counts, 560, 700, 770 and 110 ksi = 758.42 MPa, over 1.25."""
    answer = ask(FILLET_SIZE, fillet(f"{HIGH_STRENGTH}-simplified", "5 mm", "S690Q", filler=filler))
    assert worked(answer, "f_u_w")[0] / 1.25 == pytest.approx(limit, abs=0.01)
    assert worked(answer, "f_vw_d")[0] * 3**0.5 == pytest.approx(limit, abs=0.01)


def test_high_strength_beside_a_weaker_steel(ask: Ask) -> None:
    """4.5.3.2(7): the weaker part's f_u, 490 for S355, with 1.0 for its beta_w of 0.9 on the safe side: 392 MPa."""
    answer = ask(FILLET_SIZE, fillet(f"{HIGH_STRENGTH}-directional", "5 mm", ("S690Q", "S355"), filler="G 69"))
    assert weld(answer) / 5 * 3**0.5 == pytest.approx(392.0, abs=0.01)


@pytest.mark.parametrize(
    ("rules", "material", "filler", "pointer"),
    [
        (f"{HIGH_STRENGTH}-directional", "S355", "G 69", "#/parts"),
        (f"{HIGH_STRENGTH}-directional", "S460N", "G 69", "#/parts"),
        (f"{HIGH_STRENGTH}-directional", "S690Q", None, "#/filler"),
        (f"{HIGH_STRENGTH}-directional", "1.4301", "G 69", "#/parts/0/material"),
        (f"{STAINLESS}-directional", "S355", None, "#/parts/0/material"),
        (f"{STAINLESS}-directional", "1.4301", "E70", "#/filler"),
        (ALUMINIUM, "S355", "ER5356", "#/parts/0/material"),
        (ALUMINIUM, "6082-T6", None, "#/filler"),
        (ALUMINIUM, "6082-T6", {"tensile_strength": "240 MPa"}, "#/filler"),
        (ALUMINIUM, "6082-T6", "E70", "#/filler"),
        # Table 8.8 pairs the 5xxx alloys with 5xxx filler metals alone.
        (ALUMINIUM, "5083-O", "ER4043", "#/filler"),
        ("en-1993-1-8-2005-directional", "S690Q", None, "#/parts/0/material"),
    ],
)
def test_what_each_covers(refusal: Refusal, rules: str, material: str, filler: Any, pointer: str) -> None:
    """Metals and filler metals outside a standard are refused where they stand."""
    request = fillet(rules, "5 mm", material) | ({} if filler is None else {"filler": filler})
    assert pointer in {fault["pointer"] for fault in refusal(FILLET_SIZE, request)}


@pytest.mark.parametrize(("angle", "strength"), [("0 deg", 484.97), ("90 deg", 593.97)])
def test_aluminium(ask: Ask, angle: str, strength: float) -> None:
    """EN 1999-1-1 8.6.3.3, 6082 with 5356: f_w 210, gamma_Mw 1.25, a 5: 168 x 5/sqrt(3) along and /sqrt(2) across."""
    answer = ask(FILLET_SIZE, fillet(ALUMINIUM, "5 mm", "6082-T6", filler="ER5356", angle=angle))
    assert weld(answer) == pytest.approx(strength, rel=1e-4)


@pytest.mark.parametrize(
    ("materials", "filler", "f_w"),
    [
        ("6082-T6", "ER5356", 210),
        ("6082-T6", "ER5183", 210),
        ("6082-T6", "ER4043", 190),
        ("5083-O", "ER5183", 240),
        # Of two alloys the lower value.
        (("5083-H22", "6082-T6"), "ER5356", 210),
        (("6061-T6", "6082-T6"), "ER4043", 170),
    ],
)
def test_weld_metal_by_alloy(ask: Ask, materials: Any, filler: str, f_w: float) -> None:
    """Table 8.8: strength of the weld metal, along the weld f_w/(sqrt(3) 1.25) over the throat."""
    assert weld(ask(FILLET_SIZE, fillet(ALUMINIUM, "4 mm", materials, filler=filler))) == pytest.approx(
        4 * f_w / 2.16506, rel=1e-5
    )


def test_heat_affected_zone_at_the_legs(ask: Ask) -> None:
    """8.6.3.4 between plates at 60 deg: the leg on part 2 is sheared, f = 1.2 g 185/(sqrt(3) 1.2) with gamma_Mw 1.2.

    One weld pulled along part 2 by 1000 N/mm needs g = 1000 sqrt(3) 1.2/185 = 11.235 mm; the weld metal would do with
    a throat of 1000 x 1.2 sqrt(sin(30)^2 + 3 cos(30)^2)/210 = 9.035 mm, a leg of 10.43 mm.
    """
    request = fillet(ALUMINIUM, "0.5 mm", "6082-T6", filler="ER5356", parameters={"gamma_mw": 1.2})
    request["parts"] = [{"thickness": "20 mm", "material": "6082-T6"}] * 2
    request["joint"] = {"kind": "tee", "sides": 1, "angle": "60 deg"}
    request["load"] = {"force": "200 kN", "length": "200 mm", "angle": "90 deg"}
    answer = ask(FILLET_SIZE, request)
    assert leg(answer) == pytest.approx(11.235, abs=0.001)
    assert worked(answer, "f_t")[0] * 1.2 / 210 == pytest.approx(9.035, abs=0.001)


def test_heat_affected_zone_beside_the_weld(ask: Ask) -> None:
    """8.6.3.4 at the toe: 10 mm of 6082-T6 at f_u,haz 185 carries 10 x 185/1.25 across, and over sqrt(3) along."""
    along = ask(FILLET_SIZE, fillet(ALUMINIUM, "5 mm", "6082-T6", filler="ER5356"))
    across = ask(FILLET_SIZE, fillet(ALUMINIUM, "5 mm", "6082-T6", filler="ER5356", angle="90 deg"))
    assert base_metal(across, 2) == pytest.approx(1480.0)
    assert base_metal(along, 2) == pytest.approx(854.48, abs=0.01)
    # The pull leaves part 1 as shear through its thickness.
    assert base_metal(across, 1) == pytest.approx(854.48, abs=0.01)


def test_aluminium_full_strength(ask: Ask) -> None:
    """Both sides of 10 mm of 6082-T6: 740 N/mm each, a = 740 x 1.25 sqrt(2)/210 = 6.229 mm."""
    request = {**fillet(ALUMINIUM, "0.5 mm", "6082-T6", filler="ER5356"), "basis": "full-strength"}
    del request["load"]
    request["joint"] = {"kind": "tee", "sides": 2}
    answer = ask(FILLET_SIZE, request)
    assert throat(answer) == pytest.approx(6.229, abs=0.001)
    assert throat(answer, "specify") == pytest.approx(6.5)


@pytest.mark.parametrize(
    ("thickness", "process", "extent"),
    [
        ("6 mm", "131", "20 mm"),
        ("12 mm", "GMAW", "30 mm"),
        ("25 mm", None, "35 mm"),
        ("30 mm", None, "40 mm"),
        ("6 mm", "141", "30 mm"),
        ("8 mm", "141", "no extent"),
        ("8 mm", "SMAW", "no extent"),
    ],
)
def test_extent_of_the_heat_affected_zone(ask: Ask, thickness: str, process: str | None, extent: str) -> None:
    """6.1.6.3: 20, 30, 35, 40 mm by MIG up to 6, 12, 25 mm and over; 30 mm by TIG up to 6 mm."""
    request = fillet(ALUMINIUM, "2 mm", "6082-T6", filler="ER5356") | ({"process": process} if process else {})
    request["parts"] = [{"thickness": thickness, "material": "6082-T6"}] * 2
    said = [caution["text"] for caution in ask(FILLET_SIZE, request)["cautions"] if "heat" in caution["code"]]
    assert len(said) == 2
    assert all(extent in text and "f_o 125 MPa" in text and "f_u 185 MPa" in text for text in said)


def test_aluminium_group(ask: Ask) -> None:
    """Two lines of 200 mm of 6082-T6 share 100 kN along them: 250 sqrt(3) 1.25/210 = 2.5774 mm of throat."""
    request = {
        "rule_set": ALUMINIUM,
        "group": {"pattern": "two-upright-lines", "depth": "200 mm", "width": "100 mm"},
        "load": {"force": {"y": "-100 kN"}, "at": {"x": "50 mm"}},
        "parts": [{"thickness": "10 mm", "material": "6082-T6"}] * 2,
        "filler": "ER5356",
    }
    assert throat(ask(GROUP, request)) == pytest.approx(2.5774, abs=1e-4)


def test_short_aluminium_fillet(ask: Ask) -> None:
    """8.6.3.3: a fillet shorter than eight throats is not counted; 40 mm does for 5 mm and 39.9 mm does not."""
    request = fillet(ALUMINIUM, "5 mm", "6082-T6", filler="ER5356")
    assert ask(FILLET_SIZE, {**request, "load": {**request["load"], "length": "40 mm"}})["verdict"] == "enough"
    short = ask(FILLET_SIZE, {**request, "load": {**request["load"], "length": "39.9 mm"}})
    assert (short["verdict"], short["governs"]) == ("cannot-be-reached", "minimum-length")


@pytest.mark.parametrize(("length", "factor"), [("500 mm", 1.0), ("1000 mm", 0.8), ("1500 mm", 0.6)])
def test_long_aluminium_fillet(ask: Ask, length: str, factor: float) -> None:
    """8.6.3.3 at a = 5 mm: 1.2 - 0.2 L/(100 a): whole at 100 a, 0.8 at 200 a, 0.6 at 300 a."""
    request = fillet(ALUMINIUM, "5 mm", "6082-T6", filler="ER5356", end_loaded=True)
    answer = ask(FILLET_SIZE, {**request, "load": {**request["load"], "length": length}})
    assert answer["length"]["factor"] == pytest.approx(factor)


def test_throat_of_a_long_aluminium_fillet(ask: Ask) -> None:
    """The same solved for the throat: 5 mm over 1000 mm carry 484.97 x 0.8 x 1000 N = 387.98 kN."""
    request = fillet(ALUMINIUM, "0.5 mm", "6082-T6", filler="ER5356", end_loaded=True)
    request["load"] = {"force": "387.98 kN", "length": "1000 mm", "angle": "0 deg"}
    assert throat(ask(FILLET_SIZE, request)) == pytest.approx(5.0, rel=1e-4)


def test_penetration_of_aluminium_is_refused(refusal: Refusal) -> None:
    """Proven penetration is not counted, on the safe side, so it is not taken; assumed never counts."""
    request = fillet(ALUMINIUM, "5 mm", "6082-T6", filler="ER5356", penetration={"depth": "1 mm", "vouched": "proven"})
    assert [fault["pointer"] for fault in refusal(FILLET_SIZE, request)] == ["#/penetration"]


def test_strength_beside_a_weld_is_listed(read: Read) -> None:
    """EN 1999-1-1 Table 3.2a: 6082-T6 up to 6 mm 260/310 and 125/185; steel keeps its own beside a weld."""
    listed = {material["id"]: material["bands"][0] for material in read("/v1/materials")["materials"]}
    columns = ("yield_strength", "tensile_strength", "welded_yield_strength", "welded_tensile_strength")
    assert [listed["6082-T6"][column]["value"] for column in columns] == [260, 310, 125, 185]
    assert listed["S355"]["welded_tensile_strength"] is None


def test_options_of_stainless_and_aluminium(ask: Ask, refusal: Refusal) -> None:
    """Stainless fillets keep the options of EN 1993-1-8: segments of 100 mm, gaps of 100 mm, carry twice per length.

    f_vw,d 240.18 MPa: 100 N/mm of line are 200 N/mm of segment, a = 200/240.18 = 0.8327 mm. EN 1999-1-1 has no such
    rule here.
    """
    run = {"segment": "100 mm", "gap": "100 mm", "loading": "tension", "member": "stiffener"}
    request = fillet(f"{STAINLESS}-simplified", "0.5 mm", "1.4301", intermittent=run)
    request["load"] = {"longitudinal": "100 N/mm"}
    assert throat(ask(FILLET_SIZE, request)) == pytest.approx(0.8327, abs=1e-4)
    aluminium = fillet(ALUMINIUM, "0.5 mm", "6082-T6", filler="ER5356", intermittent=run)
    assert [fault["pointer"] for fault in refusal(FILLET_SIZE, aluminium)] == ["#/intermittent"]
