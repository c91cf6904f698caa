"""Cases near each other that must be told apart: what limits an answer, and which field a refusal names."""

from __future__ import annotations

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import AISC, BEVEL, EN, FILLET, GRIND, LEFT_OUT, THIN, changed


def test_no_face_height_helps_a_thin_neighbour(service: Exchange) -> None:
    """Part 2 is 4 mm thick, so a closed corner keeps no 5 mm whatever stands on its face (geometry)."""
    answer = service.answer(
        GRIND,
        {
            "seam": {"kind": "closed-corner", "thickness": ["10 mm", "4 mm"]},
            "penetration": {"depth": "6 mm", "vouched": "proven"},
            "required_throat": "5 mm",
        },
    )
    assert answer["verdict"] == "short"
    assert answer["budget"]["as_welded"]["value"] == 4.0
    assert answer["leave"] is None
    assert "Physical: no face height gives the throat required." in answer["reasons"]


def test_root_sum_square_is_no_worse_than_the_worst_case(service: Exchange) -> None:
    """6 mm plates of plus or minus 0.5 mm, filled and flush: 5.5 mm is the least there can be (geometry)."""
    answer = service.answer(
        GRIND,
        {
            "seam": {"kind": "open-corner", "thickness": ["6 mm", "6 mm"], "thickness_tolerance": "0.5 mm"},
            "face_height": "5 mm",
            "required_throat": "5 mm",
            "finish": {"to": "flush"},
        },
    )
    budget = answer["budget"]
    assert budget["remaining_worst_case"]["value"] == 5.5
    assert budget["remaining_root_sum_square"]["value"] == 5.5


def test_proven_penetration_counts_less_its_tolerance(service: Exchange) -> None:
    """Proven 2 mm give or take 1 mm saves what a sure 1 mm saves (common practice, no source)."""
    give_or_take = changed(EN, penetration={"depth": "2 mm", "vouched": "proven", "tolerance": "1 mm"})
    sure = changed(EN, penetration={"depth": "1 mm", "vouched": "proven"})
    assert service.answer(FILLET, give_or_take)["required"] == service.answer(FILLET, sure)["required"]
    over = changed(EN, penetration={"depth": "1 mm", "vouched": "proven", "tolerance": "2 mm"})
    assert service.faults(FILLET, over) == [
        ("#/penetration/tolerance", "inconsistent", "must be at most the depth of 1 mm; it is 2 mm")
    ]


def test_full_strength_is_that_of_the_weaker_part(service: Exchange) -> None:
    """10 mm of S355 beside 10.5 mm of S235: 10.5 x 235 N/mm is less than 10 x 355 (EN 1993-1-1 6.2.3, gamma_M0 1.0)."""
    answer = service.answer(
        FILLET,
        {
            "rule_set": "en-1993-1-8-2005-simplified",
            "basis": "full-strength",
            "joint": {"kind": "tee", "sides": 2},
            "parts": [{"thickness": "10 mm", "material": "S355"}, {"thickness": "10.5 mm", "material": "S235"}],
        },
    )
    assert answer["verdict"] == "enough"
    # f_vw,d of S235 is 207.85 N/mm2 (CTE DB SE-A Table 8.1 values with gamma_M2 1.25).
    assert answer["required"]["throat"]["value"] == pytest.approx(10.5 * 235 / 2 / 207.85, rel=1e-4)


def test_a_face_narrower_than_its_v_is_refused(service: Exchange) -> None:
    """A 60 deg V 6 mm deep opens 2 x 6 tan 30 = 6.93 mm (geometry): a face of 3 mm does not cover it."""
    request = {
        "seam": {"kind": "butt", "thickness": ["10 mm", "10 mm"]},
        "preparation": {"depth": "6 mm", "groove": "single-v"},
        "face_width": "3 mm",
        "required_throat": "4 mm",
    }
    [(pointer, code, detail)] = service.faults(GRIND, request)
    assert (pointer, code) == ("#/face_width", "inconsistent")
    assert "6.928 mm" in detail


@pytest.mark.parametrize(
    ("request_", "told"),
    [
        (changed(AISC, basis="full-strength", load=LEFT_OUT, end_loaded=True), 'applies to basis "load" only'),
        (changed(THIN, end_loaded=True), "claims no strength"),
    ],
)
def test_the_long_weld_reduction_is_refused_once(service: Exchange, request_: dict[str, object], told: str) -> None:
    """Where there is nothing to reduce, one fault says so, and none asks for a length that would be refused."""
    [(pointer, _, detail)] = service.faults(FILLET, request_)
    assert pointer == "#/end_loaded"
    assert told in detail


def test_stainless_is_refused_for_what_it_is(service: Exchange) -> None:
    """304 is no carbon steel: a beta_w would not make it one."""
    [(pointer, code, detail)] = service.faults(FILLET, changed(EN, parts__0__material="304"))
    assert (pointer, code) == ("#/parts/0/material", "out-of-scope")
    assert "stainless" in detail


def test_a_grinders_tolerance_is_named_when_it_is_the_cause(service: Exchange) -> None:
    """11.8 mm of throat in 12 mm plate leaves no room for plus or minus 1 mm of grinding."""
    request = {
        "seam": {"kind": "closed-corner", "thickness": ["12 mm", "12 mm"]},
        "required_throat": "11.8 mm",
        "finish": {"to": "flush", "tolerance": "1 mm"},
    }
    [(pointer, code, _)] = service.faults(BEVEL, request)
    assert (pointer, code) == ("#/finish/tolerance", "out-of-range")


def test_a_skewed_fillet_says_what_its_root_loses(service: Exchange) -> None:
    """50 deg, SMAW horizontal: 1/8 in is lost, and said (AWS D1.1 Table 4.2, from memory); wire loses none there."""
    skewed = changed(AISC, joint={"kind": "tee", "angle": "50 deg"}, process="SMAW", position="2F")
    stick = service.answer(FILLET, skewed)
    [caution] = [caution for caution in stick["cautions"] if caution["code"] == "z-loss"]
    assert "3.175 mm at the root" in caution["text"]
    wire = service.answer(FILLET, changed(skewed, process="GMAW"))
    assert wire["z_loss"]["value"] == 0.0
    assert "z-loss" not in [caution["code"] for caution in wire["cautions"]]
