"""What welds cost at the caller's own prices: the price that fits a weld, and the parts of its cost."""

from collections.abc import Callable, Mapping
from math import fsum
from typing import Any

from ...engine.formula import about
from ...engine.numeric import Real
from ...practice import weld_cost
from ..core.faults import Faults
from .request import PARTS, Price, Prices

Span = tuple[float, float]


def check(prices: Prices, faults: Faults) -> None:
    """Find prices that contradict each other, and a list without any."""
    if not prices.priced:
        faults.inconsistent("#/prices", "prices nothing: give labour, consumables, gases or power")
    for name, listed in (("consumables", prices.consumables), ("gases", prices.gases)):
        seen: set[tuple[str | None, str | None]] = set()
        for index, price in enumerate(listed):
            key = (price.filler, price.process_id)
            if key in seen:
                faults.inconsistent(f"#/prices/{name}/{index}", "prices the same a second time")
            seen.add(key)


def fitting(listed: tuple[Price, ...], filler: str | None, process: str | None) -> Price | None:
    """Price that says most of what a weld is: its filler before its process, then one that names neither."""
    fit = [price for price in listed if price.filler in (None, filler) and price.process_id in (None, process)]
    return max(fit, key=lambda price: (price.filler is not None, price.process is not None), default=None)


def costs(
    prices: Prices, filler: str | None, process: str | None, taken: Mapping[str, Span | None], subject: str
) -> dict[str, Span | None]:
    """Cost of each part that has a price; None where what it takes, or a price that fits, is not known.

    ``taken`` holds working time, consumable, gas and energy by the part they are paid in.
    """
    price = {
        "labour": prices.labour,
        "consumable": fitting(prices.consumables, filler, process),
        "gas": fitting(prices.gases, filler, process),
        "power": prices.power,
    }
    made: dict[str, Span | None] = {}
    for part in prices.priced:
        span, paid = taken[part], price[part]
        if span == (0.0, 0.0):
            made[part] = span
        else:
            made[part] = None if span is None or paid is None else _ends(part, paid.amount, span, subject)
    return made


def _ends(part: str, amount: float, span: Span, subject: str) -> Span:
    """Cost of the least and of the most."""
    low, high = span
    with about(subject if low == high else f"{subject}, least"):
        least = float(_COST[part](amount, low))
    if low == high:
        return least, least
    with about(f"{subject}, most"):
        return least, float(_COST[part](amount, high))


_COST: dict[str, Callable[[float, float], Real]] = {
    "labour": lambda price, time: weld_cost.labour(p_l=price, T_w=time),
    "consumable": lambda price, mass: weld_cost.consumable(p_c=price, W_c=mass),
    "gas": lambda price, volume: weld_cost.gas(p_g=price, V_g=volume),
    "power": lambda price, energy: weld_cost.power(p_e=price, E_s=energy),
}


def total(spans: list[Span | None]) -> Span | None:
    """Sum that does not depend on the order; None where one is not known."""
    known = [span for span in spans if span is not None]
    if len(known) < len(spans):
        return None
    return fsum(low for low, _ in known), fsum(high for _, high in known)


def shown(parts: Mapping[str, Span | None], currency: str) -> dict[str, Any]:
    """Cost as an answer shows it, its total over every part that has a price."""
    whole = total(list(parts.values()))
    return {
        "currency": currency,
        **{part: _shown(parts.get(part)) for part in PARTS},
        "total": _shown(whole),
        "counts": list(parts),
        "missing": [part for part, span in parts.items() if span is None],
    }


def _shown(span: Span | None) -> dict[str, float] | None:
    return None if span is None else {"least": span[0], "most": span[1]}
