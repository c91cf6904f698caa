"""Cost of welds at the caller's own prices: the price that fits a weld, and the parts of its cost."""

from collections.abc import Callable, Mapping, Sequence
from math import fsum

from ...engine.formula import about
from ...engine.numeric import Real
from ...practice import weld_cost
from ..core.faults import Faults
from ..core.shape import Band
from .answer import Taken, WeldCost
from .request import PARTS, Price, Prices

NOTHING = Band(0.0, 0.0)


def check(prices: Prices, faults: Faults) -> None:
    """Add a fault for prices that contradict each other, and for prices that hold none."""
    if not prices.priced:
        faults.inconsistent("#/prices", "must hold a price of labour, consumables, gases or power")
    for name, listed in (("consumables", prices.consumables), ("gases", prices.gases)):
        seen: set[tuple[str | None, str | None]] = set()
        for index, price in enumerate(listed):
            key = (price.filler, price.process_id)
            if key in seen:
                faults.inconsistent(
                    f"#/prices/{name}/{index}", "is for the same filler and process as a price before it; send one"
                )
            seen.add(key)


def fitting(listed: tuple[Price, ...], filler: str | None, process: str | None) -> Price | None:
    """Price that fits a weld best: one for its filler, else for its process, else for any; None where none fits."""
    fit = [price for price in listed if price.filler in (None, filler) and price.process_id in (None, process)]
    return max(fit, key=lambda price: (price.filler is not None, price.process is not None), default=None)


def cost(prices: Prices, filler: str | None, process: str | None, taken: Taken, subject: str) -> WeldCost:
    """Cost of what welds take; a part is None where its amount, or a price that fits, is not known."""
    paid_for = {
        "labour": (taken.working_time, prices.labour),
        "consumable": (taken.consumable, fitting(prices.consumables, filler, process)),
        "gas": (taken.gas, fitting(prices.gases, filler, process)),
        "power": (taken.energy, prices.power),
    }
    parts: dict[str, Band | None] = {}
    for part in prices.priced:
        band, price = paid_for[part]
        if band == NOTHING:
            parts[part] = band
        else:
            parts[part] = None if band is None or price is None else _ends(part, price.amount, band, subject)
    return _with_total(parts, prices.currency)


def _ends(part: str, amount: float, band: Band, subject: str) -> Band:
    """Cost of the least and of the most."""
    with about(subject if band.least == band.most else f"{subject}, least"):
        least = float(_COST[part](amount, band.least))
    if band.least == band.most:
        return Band(least, least)
    with about(f"{subject}, most"):
        return Band(least, float(_COST[part](amount, band.most)))


_COST: dict[str, Callable[[float, float], Real]] = {
    "labour": lambda price, time: weld_cost.labour(p_l=price, T_w=time),
    "consumable": lambda price, mass: weld_cost.consumable(p_c=price, W_c=mass),
    "gas": lambda price, volume: weld_cost.gas(p_g=price, V_g=volume),
    "power": lambda price, energy: weld_cost.power(p_e=price, E_s=energy),
}


def total(bands: Sequence[Band | None]) -> Band | None:
    """Sum that does not depend on the order; None where one is not known."""
    known = [band for band in bands if band is not None]
    if len(known) < len(bands):
        return None
    return Band(fsum(band.least for band in known), fsum(band.most for band in known))


def total_cost(prices: Prices, costs: Sequence[WeldCost | None]) -> WeldCost:
    """Cost of several welds together."""
    parts = {part: total([getattr(one, part) for one in costs]) for part in prices.priced}
    return _with_total(parts, prices.currency)


def _with_total(parts: Mapping[str, Band | None], currency: str) -> WeldCost:
    """Cost by its parts, its total over every part that has a price."""
    return WeldCost(
        currency=currency,
        **{part: parts.get(part) for part in PARTS},
        total=total(list(parts.values())),
        counts=tuple(parts),
        missing=tuple(part for part, band in parts.items() if band is None),
    )
