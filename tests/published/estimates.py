"""Requests for filler quantity that published examples put."""

from typing import Any

from tests.published.conftest import Ask

FILLER_QUANTITY = "/v1/filler-quantity"
ESAB_STEEL = "0.283 lb/in3"
"""Density of the ESAB tables, 7833 kg/m3."""


def estimate(ask: Ask, shape: dict[str, Any], length: str = "1 ft", units: str = "us", **more: Any) -> dict[str, Any]:
    """Give the estimate of one weld of a shape, of the tables' steel where nothing else is said."""
    prices = more.pop("prices", None)
    weld = {"shape": shape, "length": length, "density": ESAB_STEEL, **more}
    answer = ask(FILLER_QUANTITY, {"welds": [weld], "units": units} | ({"prices": prices} if prices else {}))
    made: dict[str, Any] = answer["welds"][0]
    return made


def fillet(leg: str, **more: Any) -> dict[str, Any]:
    """Shape of a flat fillet of equal legs."""
    return {"kind": "fillet", "legs": [leg, leg], **more}


def weight(ask: Ask, shape: dict[str, Any], **more: Any) -> float:
    """Deposited mass per length: lb/ft, or kg/m in metric units."""
    value: float = estimate(ask, shape, **more)["mass_per_length"]["value"]
    return value
