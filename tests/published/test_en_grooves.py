"""EN 1993-1-8:2005, 4.6 to 4.8: fillets all round, butt, T-butt and plug welds, worked by hand from the clauses.

4.6 was read in a quotation, 4.7.2 in a reprint, 4.7.3(1) in another with commentary; 4.3.3, 4.3.5 and 4.8 are from
memory.
"""

from typing import Any

import pytest
from tests.published.conftest import Ask, Refusal
from tests.published.fillets import DIRECTIONAL, SIMPLIFIED
from tests.published.grooves import GROOVE_SIZE, en_groove, value

PARTIAL = {"kind": "partial", "groove": "single-v"}


@pytest.mark.parametrize(
    ("throats", "thickness", "unwelded", "full"),
    [((10, 10), 20, 3, True), ((9, 10), 20, 2, False), ((12, 10), 20, 3.5, False), ((6, 6), 10, 2.5, False)],
)
def test_tee_of_full_strength(
    ask: Ask, throats: tuple[float, float], thickness: float, unwelded: float, full: bool
) -> None:
    """4.7.3(1): throats that reach the thickness, and a gap within 3 mm and a fifth of it."""
    weld = {"kind": "tee-butt", "throats": [f"{a} mm" for a in throats], "unwelded": f"{unwelded} mm"}
    request = en_groove(DIRECTIONAL, weld, joint="tee", thickness=(30.0, thickness))
    answer = ask(GROOVE_SIZE, request)
    assert answer["tee"]["full_strength"] is full
    assert value(answer["tee"]["largest_unwelded"]) == pytest.approx(min(thickness / 5, 3))
    assert (answer["strength"]["weld"] is None) is full
    # At full strength the one carries the part, the other falls short as deep fillets would: 355 t over 251 (t = 20).
    del request["load"]
    whole = ask(GROOVE_SIZE, {**request, "basis": "full-strength"})
    assert whole["verdict"] == ("enough" if full else "short")


def test_plug(ask: Ask) -> None:
    """4.3.5 and 4.8: 24 mm hole in 12 mm, f_u 430, beta_w 0.85: 20 mm least, 452.39 mm2, 105.7 kN."""
    weld = {"kind": "plug", "diameter": "24 mm"}
    request = en_groove(
        SIMPLIFIED, weld, joint="lap", thickness=(12.0, 12.0), f_u=430.0, beta_w=0.85, load={"force": "250 kN"}
    )
    holes = ask(GROOVE_SIZE, request)["holes"]
    assert value(holes["limits"]["least_width"]) == pytest.approx(20.0)
    assert value(holes["area"]) == pytest.approx(452.39, rel=2e-4)
    assert value(holes["strength"]) == pytest.approx(105.7, rel=2e-4)
    # 250 kN over 105.7 kN is 2.4.
    assert (holes["needed"], holes["count"]) == (3, 3)


@pytest.mark.parametrize("rules", [DIRECTIONAL, SIMPLIFIED])
def test_fillet_all_round(ask: Ask, refusal: Refusal, rules: str) -> None:
    """4.3.3 and 4.6, as 4.5: by hand, 8 mm plate, hole 40 mm, leg 6 mm, f_u 430, beta_w 0.85.

    Throat 4.2426 mm on pi (40 - 3) = 116.24 mm: 493.15 mm2 at 430/(sqrt3 0.85 1.25) = 233.65 N/mm2 carry 115.2 kN.
    """
    weld = {"kind": "fillet-in-hole", "diameter": "40 mm", "leg": "6 mm"}
    request = en_groove(
        rules, weld, joint="lap", thickness=(12.0, 8.0), f_u=430.0, beta_w=0.85, load={"force": "250 kN"}
    )
    holes = ask(GROOVE_SIZE, request)["holes"]
    # Four times the plate.
    assert value(holes["limits"]["least_width"]) == pytest.approx(32.0)
    assert value(holes["area"]) == pytest.approx(493.15, rel=1e-4)
    assert value(holes["strength"]) == pytest.approx(115.22, rel=1e-4)
    # 250 kN over 115.2 kN is 2.2.
    assert holes["needed"] == 3
    for change, pointer in (({"diameter": "31 mm"}, "diameter"), ({"leg": "4 mm"}, "leg"), ({"leg": "9 mm"}, "leg")):
        # 4.5.2(2): a throat of 3 mm is a leg of 4.24 mm; and no leg goes beyond the edge.
        [fault] = refusal(GROOVE_SIZE, {**request, "weld": {**weld, **change}})
        assert (fault["pointer"], fault["code"]) == (f"#/weld/{pointer}", "out-of-scope")


def test_filling_of_a_thick_plug(ask: Ask) -> None:
    """4.3.5(4): over 16 mm half the thickness and no less than 16 mm: 16 mm in 20 mm, 20 mm in 40 mm."""
    for thickness, least in ((20.0, 16.0), (40.0, 20.0)):
        weld = {"kind": "plug", "diameter": "48 mm"}
        request = en_groove(SIMPLIFIED, weld, joint="lap", thickness=(20.0, thickness), load={"force": "90 kN"})
        assert value(ask(GROOVE_SIZE, request)["holes"]["limits"]["least_filling"]) == pytest.approx(least)


@pytest.mark.parametrize(
    ("rules", "load", "throat"),
    [
        # 0.9 x 490/1.25 = 352.8 N/mm2 square to the throat; 490/(0.9 x 1.25) = 435.56 for the equivalent stress.
        (DIRECTIONAL, {"normal": "1000 N/mm"}, 1000 / 352.8),
        (DIRECTIONAL, {"longitudinal": "1000 N/mm"}, 3**0.5 * 1000 / 435.556),
        (DIRECTIONAL, {"normal": "600 N/mm", "transverse": "800 N/mm"}, (0.36 + 3 * 0.64) ** 0.5 * 1000 / 435.556),
        (SIMPLIFIED, {"normal": "1000 N/mm"}, 3**0.5 * 1000 / 435.556),
        (SIMPLIFIED, {"normal": "600 N/mm", "longitudinal": "800 N/mm"}, 3**0.5 * 1000 / 435.556),
    ],
)
def test_throat_of_partial_penetration(ask: Ask, rules: str, load: dict[str, str], throat: float) -> None:
    """4.7.2(1): as a deep-penetration fillet, the throat square to the plates; f_u 490, beta_w 0.9."""
    answer = ask(GROOVE_SIZE, en_groove(rules, PARTIAL, load=load))
    assert value(answer["required"]["throat"]) == pytest.approx(throat, rel=1e-5)
    # No fixed deduction (4.7.2(2)): the depth is the throat, and somebody has to show it.
    assert answer["required"]["depth"] == answer["required"]["throat"]
    assert "depth-consistently-achieved" in [caution["code"] for caution in answer["cautions"]]


@pytest.mark.parametrize(("form", "throat"), [("single-v", 3.0), ("double-v", 6.0)])
def test_least_throat_of_partial_penetration(ask: Ask, form: str, throat: float) -> None:
    """4.5.2(2) by 4.7.2: 3 mm on each side, where 100 N/mm needs 0.28 mm of throat (352.8 N/mm2, as above)."""
    request = en_groove(DIRECTIONAL, {"kind": "partial", "groove": form}, load={"normal": "100 N/mm"})
    answer = ask(GROOVE_SIZE, request)
    assert (answer["governs"], value(answer["minimum"]["throat"])) == ("minimum-throat", 3.0)
    assert "4.5.2(2)" in answer["minimum"]["source"]
    assert value(answer["specify"]["depth"]) == pytest.approx(3.0)
    assert value(answer["specify"]["throat"]) == pytest.approx(throat)


@pytest.mark.parametrize(("throats", "verdict"), [((2.5, 6.0), "short"), ((3.0, 5.5), "enough")])
def test_least_throat_of_a_tee(ask: Ask, throats: tuple[float, float], verdict: str) -> None:
    """4.5.2(2) by 4.7.2: a T-butt that is no full penetration keeps 3 mm on each side, though 8.5 mm carries more."""
    weld = {"kind": "tee-butt", "throats": [f"{a} mm" for a in throats], "unwelded": "4 mm"}
    answer = ask(GROOVE_SIZE, en_groove(DIRECTIONAL, weld, joint="tee", load={"normal": "100 N/mm"}))
    assert answer["verdict"] == verdict
    assert (answer["governs"] == "minimum-throat") is (verdict == "short")
    assert any("is not kept" in reason for reason in answer["reasons"]) is (verdict == "short")


def test_least_throat_of_a_bevel(ask: Ask) -> None:
    """4.5.2(2) by 4.7.2: under 3 mm bevel-depth still answers, on thin sheet too, and says what the code asks for."""
    for throat, cautioned in (("2 mm", True), ("3 mm", False)):
        request = {
            "seam": {"kind": "butt", "thickness": ["3.5 mm", "3.5 mm"]},
            "required_throat": throat,
            "minimum_land": "0 mm",
            "rule_set": DIRECTIONAL,
        }
        answer = ask("/v1/bevel-depth", request)
        assert answer["verdict"] == "enough"
        assert ("below-minimum-throat" in {caution["code"] for caution in answer["cautions"]}) is cautioned


def test_full_penetration_is_the_weaker_part(ask: Ask, refusal: Refusal) -> None:
    """4.7.1(1) and 4.2(2): 16 mm of 355 N/mm2 carries 5680 N/mm; a filler metal under 490 N/mm2 is refused."""
    request: dict[str, Any] = {
        **en_groove(DIRECTIONAL, {"kind": "full"}, thickness=(16.0, 25.0)),
        "basis": "full-strength",
        "filler": {"tensile_strength": "490 MPa"},
    }
    del request["load"]
    answer = ask(GROOVE_SIZE, request)
    assert value(answer["strength"]["base_metal"][0]) == pytest.approx(5680)
    assert (answer["verdict"], answer["utilisation"]) == ("enough", pytest.approx(1.0))
    [fault] = refusal(GROOVE_SIZE, {**request, "filler": {"tensile_strength": "480 MPa"}})
    assert (fault["pointer"], fault["code"]) == ("#/filler", "out-of-scope")


def test_a_flare_groove_is_refused(refusal: Refusal) -> None:
    """4.3.6 and 7.3.1(7): the throat along a hollow section is found by procedure test."""
    [fault] = refusal(GROOVE_SIZE, en_groove(SIMPLIFIED, {"kind": "flare-v", "radius": "20 mm"}))
    assert (fault["pointer"], fault["code"]) == ("#/weld/kind", "out-of-scope")
    assert "7.3.1(7)" in fault["detail"]
