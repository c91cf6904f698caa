"""What welding takes by process: efficiency, deposition rate, operator factor, gas flow and pass area, in engine units.

Shares are plain numbers, rates kg/s, flows mm3/s, areas mm2.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from types import MappingProxyType
from typing import Final, Literal, cast, get_args

from ..engine.units import LENGTHS, POUND
from .loader import RATE_ROWS, DataFault, Mark, process

Quantity = Literal["efficiency", "deposition-rate", "operator-factor", "gas-flow", "bead-area"]
QUANTITIES: Final[tuple[Quantity, ...]] = get_args(Quantity)

METAL_CORED: Final = ("133", "138")
"""ISO 4063 numbers of metal-cored wire, which AWS letters count to GMAW."""

UNSHIELDED: Final = ("SMAW", "FCAW-S", "SAW", "EBW")
"""Processes that take no shielding gas."""

_FACTORS: Final[Mapping[str, Fraction]] = MappingProxyType(
    {
        "%": Fraction(1, 100),
        "lb/h": POUND / 3600,
        "ft3/h": (12 * LENGTHS["in"]) ** 3 / 3600,
        "L/min": Fraction(10**6, 60),
        "mm2": Fraction(1),
        "in": LENGTHS["in"],
    }
)


@dataclass(frozen=True, slots=True)
class Rate:
    """Figure of one publication for one setting; ``usual`` rows make up the band of a process.

    ``electrode`` is the length of a stick electrode and of the stub that its efficiency counts as lost, mm.
    """

    id: str
    quantity: Quantity
    processes: tuple[str, ...]
    metal_cored: bool
    setting: str
    low: float
    high: float
    typical: float | None
    electrode: tuple[float, float] | None
    usual: bool
    mark: Mark
    source: str


def _quantity(row: Mapping[str, str]) -> Quantity:
    """What a row is about."""
    for quantity in QUANTITIES:
        if row["quantity"] == quantity:
            return quantity
    raise DataFault(f"welding_rates.csv, {row['id']}: quantity is none of {', '.join(QUANTITIES)}")


def _rate(row: Mapping[str, str]) -> Rate:
    """Make a rate of one row of welding_rates.csv."""
    if row["unit"] not in _FACTORS or row["usual"] not in ("yes", "no"):
        raise DataFault(f"welding_rates.csv, {row['id']}: unit or usual is none of those described")

    def figure(text: str, unit: str) -> float:
        return float(Fraction(text) * _FACTORS[unit])

    unit, length_unit = row["unit"], row["length_unit"]
    made = Rate(
        id=row["id"],
        quantity=_quantity(row),
        processes=tuple(row["processes"].split()),
        metal_cored=row["consumable"] == "metal-cored",
        setting=row["setting"],
        low=figure(row["low"], unit),
        high=figure(row["high"], unit),
        typical=figure(row["typical"], unit) if row["typical"] else None,
        electrode=(figure(row["electrode_length"], length_unit), figure(row["stub"], length_unit))
        if row["electrode_length"]
        else None,
        usual=row["usual"] == "yes",
        mark=cast(Mark, row["mark"]),
        source=row["source"],
    )
    if not 0.0 < made.low <= made.high:
        raise DataFault(f"welding_rates.csv, {made.id}: not a band from least to most")
    return made


RATES: Final[tuple[Rate, ...]] = tuple(_rate(row) for row in RATE_ROWS)
"""Every rate, in the order of the file."""


@cache
def usual(quantity: Quantity, code: str) -> tuple[Rate, ...]:
    """Usual rates of a process by any of its codes; those of metal-cored wire where the code means such wire.

    None where no publication gives one. Where there is none for metal-cored wire apart, that of the process holds.
    Raises ``KeyError`` for a code that is no process.
    """
    id_ = process(code).id
    found = [rate for rate in RATES if rate.quantity == quantity and rate.usual and id_ in rate.processes]
    cored = tuple(rate for rate in found if rate.metal_cored)
    if code in METAL_CORED and cored:
        return cored
    return tuple(rate for rate in found if not rate.metal_cored)
