"""Heat of a pass: readings that would be unsafe the other way, each worked by hand."""

from __future__ import annotations

from math import tanh
from typing import Any

import pytest
from tests.application.asked import heat

from truethroat_service.application.core.faults import Refused
from truethroat_service.application.core.shape import Band
from truethroat_service.application.heat.request import Arc, HeatRequest, SeamKind
from truethroat_service.application.heat.steel import CarbonEquivalents, Composition

MILD = CarbonEquivalents(ce=0.43, cet=0.32)
LEAN = CarbonEquivalents(ce=0.36, cet=0.22)


def _value(quantity: dict[str, Any]) -> float:
    """Value of a quantity in the unit of the answer."""
    return float(quantity["value"])


def test_preheat_goes_by_the_thickest_part() -> None:
    """By EN 1011-2 formula C.8 with the 40 mm flange, not with the 12 mm web: 119 degC, where 12 mm would give 42."""
    answer = heat(
        HeatRequest(Arc(heat_input=1.0), thickness=12.0, thickest_part=40.0, carbon_equivalents=MILD, hydrogen=5.0)
    )
    by_hand = 697 * 0.32 + 160 * tanh(40 / 35) + 62 * 5**0.35 + (53 * 0.32 - 32) * 1.0 - 328
    assert by_hand == pytest.approx(119.4, abs=0.1)
    assert _value(answer["preheat"]["method_b"]["temperature"]) == pytest.approx(by_hand)


def test_cooling_goes_by_the_thickest_part() -> None:
    """By EN 1011-2 Annex D in thick plate, F3 = 0.67: 6600 x 1 x (1/480 - 1/780) x 0.67 = 3.54 s on a 40 mm flange."""
    answer = heat(HeatRequest(Arc(heat_input=1.0), thickness=8.0, thickest_part=40.0, seam="tee-fillet"))
    by_hand = (6700 - 5 * 20) * 1.0 * (1 / (500 - 20) - 1 / (800 - 20)) * 0.67
    assert [_value(answer["cooling"]["time"][end]) for end in ("least", "most")] == pytest.approx([by_hand, by_hand])
    assert "thinner-part-cools-slower" in {caution["code"] for caution in answer["cautions"]}


@pytest.mark.parametrize(("thickest", "cautioned"), [(None, True), (12.0, False)])
def test_a_tee_of_one_thickness_is_cautioned(thickest: float | None, cautioned: bool) -> None:
    """A thin web on a thick flange is the commonest tee: one thickness alone is taken as that of both, and said so."""
    answer = heat(HeatRequest(Arc(heat_input=1.0), thickness=12.0, thickest_part=thickest, seam="tee-fillet"))
    assert ("one-thickness" in {caution["code"] for caution in answer["cautions"]}) is cautioned


@pytest.mark.parametrize("thickness", [12.0, 25.0])
def test_a_frozen_plate_is_warmed_first_by_aws(thickness: float) -> None:
    """AWS D1.1 Table 5.8, note on steel under 32 degF: raised to 70 degF = 38/1.8 degC, over its 32 and 50 degF."""
    answer = heat(HeatRequest(preheat_category="B", thickness=thickness, preheat=-10.0))
    found = answer["preheat"]["aws_d1_1"]
    assert _value(found["temperature"]) == pytest.approx(38 / 1.8)
    assert (found["met"], answer["verdict"]) == (False, "short")
    assert answer["judged"] == [{"what": "preheat", "standing": "short"}]
    assert {"cold-steel", "cold-air"} <= {caution["code"] for caution in answer["cautions"]}


def test_a_frozen_plate_is_not_free_of_preheat() -> None:
    """Method B of a lean steel gives -71 degC, which is no licence to weld at -30: the plate is warmed to 20 degC."""
    request = HeatRequest(
        Arc(heat_input=2.0),
        carbon_equivalents=LEAN,
        thickness=12.0,
        hydrogen=3.0,
        preheat=-30.0,
        combined_thickness=24.0,
    )
    answer = heat(request)
    assert _value(answer["preheat"]["method_b"]["temperature"]) == 20.0
    assert answer["preheat"]["method_b"]["met"] is False
    assert answer["preheat"]["method_a"]["free_of_preheat"] is False
    assert answer["verdict"] == "short"
    assert not any("no preheat" in reason for reason in answer["reasons"])


def test_the_verdict_judges_window_preheat_and_hardness() -> None:
    """The cooling time keeps the window; preheat (202 degC by formula C.8) and hardness (over 380 HV) do not."""
    shares = {"C": 0.22, "Si": 0.4, "Mn": 1.6, "Cr": 0.6, "Mo": 0.3, "Ni": 0.5, "Cu": 0.2}
    request = HeatRequest(
        Arc(heat_input=2.5),
        composition=Composition(**shares, V=0.05, Nb=0.03, Ti=0.02, B=0.0),
        thickness=25.0,
        hydrogen=8.0,
        seam="butt-fill",
        cooling_window=Band(5.0, 30.0),
        steel_group=1,
    )
    answer = heat(request)
    cet = 0.22 + (1.6 + 0.3) / 10 + (0.6 + 0.2) / 20 + 0.5 / 40
    by_hand = 697 * cet + 160 * tanh(25 / 35) + 62 * 8**0.35 + (53 * cet - 32) * 2.5 - 328
    assert _value(answer["preheat"]["method_b"]["temperature"]) == pytest.approx(by_hand)
    assert answer["judged"] == [
        {"what": "window", "standing": "within"},
        {"what": "preheat", "standing": "short"},
        {"what": "hardness", "standing": "over"},
    ]
    assert answer["verdict"] == "short"


def test_a_combined_thickness_that_the_parts_cannot_have_is_refused() -> None:
    """A butt of 60 mm plates has 120 mm, and opposed fillets on them half of 180: 20 mm is neither."""
    request = HeatRequest(
        Arc(heat_input=1.0), thickness=60.0, combined_thickness=20.0, carbon_equivalents=MILD, hydrogen=5.0
    )
    with pytest.raises(Refused) as refused:
        heat(request)
    assert [fault.pointer for fault in refused.value.faults] == ["#/combined_thickness"]


@pytest.mark.parametrize(
    ("seam", "combined"), [("butt-fill", 12 + 40), ("corner-fillet", 12 + 40), ("tee-fillet", 12 + 2 * 40)]
)
def test_combined_thickness_follows_from_the_parts(seam: SeamKind, combined: float) -> None:
    """EN 1011-2 Figure C.1 adds up the plates that heat flows into: two, or in a tee the web and both flange halves."""
    request = HeatRequest(
        Arc(heat_input=1.0), thickness=12.0, thickest_part=40.0, seam=seam, carbon_equivalents=MILD, hydrogen=5.0
    )
    found = heat(request)["preheat"]["method_a"]
    assert _value(found["combined_thickness"]) == combined
    # Table C.1, CE up to 0.43, 1 kJ/mm, HD up to 5: no preheat to 100 mm.
    assert found["free_of_preheat"] is True


def test_method_b_decides_where_method_a_asks_for_less() -> None:
    """Table C.1 frees 90 mm at CE 0.43; formula C.8 asks for 100 degC at CET 0.33, 30 mm, 5 ml/100 g and 1.5 kJ/mm."""
    by_hand = 697 * 0.33 + 160 * tanh(30 / 35) + 62 * 5**0.35 + (53 * 0.33 - 32) * 1.5 - 328
    answer = heat(
        HeatRequest(
            Arc(heat_input=1.5),
            carbon_equivalents=CarbonEquivalents(ce=0.43, cet=0.33),
            thickness=30.0,
            hydrogen=5.0,
            combined_thickness=90.0,
        )
    )
    assert answer["preheat"]["method_a"]["free_of_preheat"] is True
    assert _value(answer["preheat"]["method_b"]["temperature"]) == pytest.approx(by_hand)
    assert by_hand == pytest.approx(100.3, abs=0.2)
    assert answer["verdict"] == "short"
    assert "methods-differ" in {caution["code"] for caution in answer["cautions"]}
