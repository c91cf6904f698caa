"""What an estimate of filler says beside its figures: what it comes to, what it rests on, what it leaves out."""

from collections.abc import Callable, Iterable, Mapping
from typing import Any

from ...engine.formula import Source
from ...engine.rounding import at_most
from ...standards.aws_d1_1_2020 import s7_21_fit_up
from ..core.quantities import AREA, GAS_FLOW, MASS_RATE, Dimension
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints.usual_rates import Band
from ..joints.weld_sections import Fillet
from .estimates import Estimate
from .request import Prices

LISTED = 8
"""Entries a caution names one by one."""

# Code, what it is called, its dimension (None for a share), its band, and whether the request left it out.
_USUAL: tuple[tuple[str, str, Dimension | None, Callable[[Estimate], Band | None]], ...] = (
    ("usual-efficiency", "efficiency", None, lambda row: row.figures.efficiency),
    (
        "usual-deposition-rate",
        "deposition rate",
        MASS_RATE,
        lambda row: row.figures.rate if row.weld.deposition is None else None,
    ),
    ("usual-operator-factor", "operator factor", None, lambda row: row.figures.factor),
    ("usual-gas-flow", "gas flow", GAS_FLOW, lambda row: row.figures.gas_flow),
    (
        "usual-bead-area",
        "area of a pass",
        AREA,
        lambda row: row.figures.bead if row.weld.bead is None else None,
    ),
    ("usual-source-efficiency", "efficiency of the power source", None, lambda row: row.figures.source_efficiency),
)

_UNKNOWN: tuple[tuple[str, str, str, Callable[[Estimate], Any]], ...] = (
    ("no-efficiency", "consumable", "efficiency", lambda row: row.consumable),
    ("no-deposition-rate", "hours", "deposition rate", lambda row: row.arc_time),
    ("no-operator-factor", "time on the clock", "operator factor", lambda row: row.figures.factor),
    ("no-gas-flow", "gas", "gas flow", lambda row: row.gas or row.arc_time is None),
)


def remark(
    rows: list[Estimate], prices: Prices | None, totals: Mapping[str, Any], units: Units, remarks: Remarks
) -> None:
    """Say what it comes to, then what it rests on and leaves out, each caution once for all welds it is about."""
    _sum_up(totals, remarks)
    for code, name, dimension, band_of in _USUAL:
        _usual(rows, code, name, dimension, band_of, units, remarks)
    for code, what, needs, known in _UNKNOWN:
        if lacking := [number for number, row in enumerate(rows, start=1) if not known(row)]:
            remarks.caution(
                code, f"{_who(lacking)}: no {needs} is given, and no usual one on record; {what} is not known."
            )
    _details(rows, prices, remarks)
    if totals["cost"] is not None and totals["cost"]["missing"]:
        missing = " and ".join(totals["cost"]["missing"])
        remarks.caution("cost-incomplete", f"No total of the cost: {missing} cannot be priced for every weld.")
    remarks.caution(
        "welding-alone",
        "Hours are of welding alone: fit-up, preheat, handling, gouging, grinding and inspection come on top, as do"
        " pre- and post-flow of gas.",
    )


def _sum_up(totals: Mapping[str, Any], remarks: Remarks) -> None:
    """Say what all welds come to."""
    remarks.because(
        f"{totals['length']['text']} of weld in all ({totals['count']} x) take {totals['deposited']['text']} of metal."
    )
    if totals["working_time"] is not None:
        remarks.because(f"{_between(totals['working_time'])} on the clock, {_between(totals['arc_time'])} of arc.")
    cost = totals["cost"]
    if cost is not None and cost["total"] is not None:
        low, high = cost["total"]["least"], cost["total"]["most"]
        amount = f"{low:.2f}" if low == high else f"{low:.2f} to {high:.2f}"
        remarks.because(f"{amount} {cost['currency']} for {' and '.join(cost['counts'])}.")


def _between(span: Mapping[str, Any]) -> str:
    """Least and most as text; one of them where they are the same."""
    low, high = span["least"]["text"], span["most"]["text"]
    return str(low) if low == high else f"{low} to {high}"


def _usual(
    rows: list[Estimate],
    code: str,
    name: str,
    dimension: Dimension | None,
    band_of: Callable[[Estimate], Band | None],
    units: Units,
    remarks: Remarks,
) -> None:
    """Caution for each band that was taken because a request left a figure out."""
    taken: dict[Band, list[int]] = {}
    for number, row in enumerate(rows, start=1):
        band = band_of(row)
        if band is not None and not band.given:
            taken.setdefault(band, []).append(number)
    for band, numbers in taken.items():
        if dimension is None:
            ends = [f"{100 * end:.4g} %" for end in (band.low, band.high)]
        else:
            ends = [units.of(dimension, end)["text"] for end in (band.low, band.high)]
        text = ends[0] if ends[0] == ends[1] else " to ".join(ends)
        remarks.caution(code, f"{_who(numbers)}: no {name} is given; {text} is taken.", Source("", band.source))


def _who(numbers: Iterable[int]) -> str:
    """Welds by their numbers, the first few of many."""
    listed = list(numbers)
    if len(listed) == 1:
        return f"Weld {listed[0]}"
    if len(listed) <= LISTED:
        return f"Welds {', '.join(map(str, listed[:-1]))} and {listed[-1]}"
    return f"Welds {', '.join(map(str, listed[:LISTED]))} and {len(listed) - LISTED} more"


def _details(rows: list[Estimate], prices: Prices | None, remarks: Remarks) -> None:
    """Say how some fields were read."""

    def about(code: str, text: str, holds: Callable[[Estimate], bool], source: Source | None = None) -> None:
        if found := [number for number, row in enumerate(rows, start=1) if holds(row)]:
            remarks.caution(code, f"{_who(found)}: {text}", source)

    about(
        "carbon-steel-assumed",
        "neither filler nor density is given; carbon steel is taken.",
        lambda row: row.weld.filler is None and row.weld.density is None,
    )
    about(
        "excess-on-area",
        "the excess is a share of the area. A tenth more leg is 21 % more metal: say that as leg_excess.",
        lambda row: row.weld.excess > 0.0,
    )
    about(
        "gap-in-leg",
        "the gap makes both legs larger by the whole of it.",
        lambda row: isinstance(row.weld.shape, Fillet) and not at_most(row.weld.shape.root_gap, s7_21_fit_up.FREE_GAP),
        s7_21_fit_up.FIT_UP,
    )
    about(
        "stub-taken-off",
        "the stub is taken off the efficiency given. Published ones of 59 to 66 % count a stub as lost already.",
        lambda row: row.weld.electrode is not None and row.weld.efficiency is not None,
    )
    about(
        "stub-in-efficiency",
        "the efficiency of the stick is taken to count the stub as lost; send electrode if it does not.",
        lambda row: row.weld.process_id == "SMAW" and row.weld.electrode is None and row.weld.efficiency is not None,
    )
    about(
        "flux-not-counted",
        "the flux of submerged arc is not in the consumable.",
        lambda row: row.weld.process_id == "SAW" and prices is not None and bool(prices.consumables),
        Source("", "1.0 to 1.4 of flux to one of wire", "common practice, no source"),
    )
