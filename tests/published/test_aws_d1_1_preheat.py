"""AWS D1.1:2015 Table 3.3 (2020: Table 5.8, second-hand) and TI 809-26 / UFC 3-320-01A Table 3-1: least preheat."""

from typing import Any

import pytest
from tests.published.conftest import Ask

PATH = "/v1/heat"
PRINTED_C = {32: 0, 50: 10, 150: 65, 225: 110, 300: 150}
CATEGORIES = {"A": (32, 150, 225, 300), "B": (32, 50, 150, 225), "C": (50, 150, 225, 300), "D": (32, 32, 32, 32)}


def _preheat(ask: Ask, category: str, thickness: str, units: str = "us", **more: str) -> dict[str, Any]:
    """Preheat of a category."""
    request = {"preheat_category": category, "thickness": thickness, "units": units, **more}
    found: dict[str, Any] = ask(PATH, request)["preheat"]["aws_d1_1"]
    return found


@pytest.mark.parametrize("category", CATEGORIES)
def test_preheat_by_thickest_part(ask: Ask, category: str) -> None:
    """Rows to 3/4, 1-1/2 and 2-1/2 in and over, in degF and in the degC printed beside."""
    for thickness, fahrenheit in zip((0.5, 1.0, 2.0, 3.0), CATEGORIES[category], strict=True):
        found = _preheat(ask, category, f"{thickness} in")
        assert found["temperature"]["value"] == pytest.approx(fahrenheit, abs=1e-9)
        assert found["printed"]["fahrenheit"] == {
            "value": fahrenheit,
            "unit": "degF",
            "text": f"{fahrenheit} degF",
        }
        assert found["printed"]["celsius"]["value"] == PRINTED_C[fahrenheit]


def test_a_limit_belongs_to_the_thinner_row(ask: Ask) -> None:
    """Exactly 3/4 in, 1-1/2 in and 2-1/2 in are still in the rows they end."""
    limits = zip(("3/4 in", "1 1/2 in", "2 1/2 in"), (32, 50, 150), strict=True)
    assert all(_preheat(ask, "B", t)["printed"]["fahrenheit"]["value"] == fahrenheit for t, fahrenheit in limits)


def test_the_thickest_part_governs(ask: Ask) -> None:
    """1/2 in to 2 in takes the row of 2 in; a plate of 65 degC (149 degF) has the row as printed in degC."""
    found = _preheat(ask, "B", "1/2 in", thickest_part="2 in", preheat="65 degC")
    assert found["printed"]["fahrenheit"]["value"] == 150
    assert found["met"] is True
    assert _preheat(ask, "B", "1/2 in", thickest_part="2 in", preheat="64 degC")["met"] is False


@pytest.mark.parametrize("thickness", ["1/2 in", "1 in"])
def test_frozen_steel_is_warmed_first(ask: Ask, thickness: str) -> None:
    """Note to Table 3.3 (5.8): base metal below 32 degF is heated to 70 degF; both rows ask for less."""
    found = _preheat(ask, "B", thickness, preheat="20 degF")
    assert found["temperature"]["value"] == pytest.approx(70, abs=1e-9)
    assert found["met"] is False
