"""Reasons and cautions of an estimate of filler: its sums, what it rests on, and what it leaves out."""

from collections.abc import Callable, Iterable
from typing import Any

from ...engine.formula import Source
from ...engine.rounding import at_most
from ...practice import deposition
from ...standards.aws_d1_1_2020 import s7_21_fit_up
from ..core.codes import CautionCode
from ..core.quantities import AREA, GAS_FLOW, MASS, MASS_RATE, SPEED, WORKING_TIME, Dimension
from ..core.remarks import Remarks
from ..core.shape import Band
from ..core.units import Units
from ..joints.usual_rates import Figure
from ..joints.weld_sections import Fillet
from .answer import EstimateTotals, WeldEstimate
from .estimates import Row, is_lighter_than_steel, says_its_excess
from .request import Prices

LISTED = 8
"""Entries a caution names one by one."""

# Code, name, dimension (None for a share), and the figure where the request leaves it out.
_USUAL: tuple[tuple[CautionCode, str, Dimension | None, Callable[[Row], Figure | None]], ...] = (
    ("usual-efficiency", "efficiency", None, lambda row: row.estimate.rests_on.efficiency),
    (
        "usual-deposition-rate",
        "deposition rate",
        MASS_RATE,
        lambda row: row.estimate.rests_on.deposition_rate if row.weld.deposition is None else None,
    ),
    ("usual-operator-factor", "operator factor", None, lambda row: row.estimate.rests_on.operator_factor),
    ("usual-gas-flow", "gas flow", GAS_FLOW, lambda row: row.estimate.rests_on.gas_flow),
    (
        "usual-bead-area",
        "area of a pass",
        AREA,
        lambda row: row.estimate.rests_on.bead_area if row.weld.bead is None else None,
    ),
    (
        "usual-source-efficiency",
        "efficiency of the power source",
        None,
        lambda row: row.estimate.rests_on.source_efficiency,
    ),
)

_UNKNOWN: tuple[tuple[CautionCode, str, str, Callable[[WeldEstimate], Any]], ...] = (
    ("no-efficiency", "consumable", "efficiency", lambda estimate: estimate.consumable),
    ("no-deposition-rate", "arc time", "deposition rate", lambda estimate: estimate.arc_time),
    ("no-operator-factor", "time on the clock", "operator factor", lambda estimate: estimate.rests_on.operator_factor),
    ("no-gas-flow", "gas", "gas flow", lambda estimate: estimate.gas or estimate.arc_time is None),
)


def remark(rows: list[Row], prices: Prices | None, totals: EstimateTotals, remarks: Remarks) -> None:
    """Add the sums as reasons, then the cautions, each once for all the welds it is about."""
    _sum_up(totals, remarks)
    for code, name, dimension, figure_of in _USUAL:
        _usual(rows, code, name, dimension, figure_of, remarks)
    for code, what, needs, known in _UNKNOWN:
        if lacking := [number for number, row in enumerate(rows, start=1) if not known(row.estimate)]:
            remarks.caution(
                code,
                f"{_who(lacking)}: no {needs} is given and no usual one of the process is known, so {what} is not"
                " known.",
            )
    _details(rows, prices, remarks)
    if totals.cost is not None and totals.cost.missing:
        missing = " and ".join(totals.cost.missing)
        remarks.caution("cost-incomplete", f"The cost has no total, because {missing} cannot be priced for every weld.")
    remarks.caution(
        "welding-alone",
        "The hours are those of welding only. Add fit-up, preheat, handling, gouging, grinding and inspection, and for"
        " the gas its pre- and post-flow.",
    )


def _sum_up(totals: EstimateTotals, remarks: Remarks) -> None:
    """Add the sums over all welds as reasons."""
    units = remarks.units
    remarks.because(
        f"{totals.count} weld{'s' if totals.count > 1 else ''} with {units.text(totals.length)} of length in total take"
        f" {units.of(MASS, totals.deposited)['text']} of weld metal as described."
    )
    if totals.metal.most > totals.metal.least:
        typical, most = (units.of(MASS, mass)["text"] for mass in (totals.metal.typical, totals.metal.most))
        remarks.because(f"As welds are usually laid, they take {typical}, and at most {most}.")
    if totals.working_time is not None and totals.arc_time is not None:
        remarks.because(
            f"The working time is {_hours(totals.working_time, units)}; the arc burns"
            f" {_hours(totals.arc_time, units)} of it."
        )
    cost = totals.cost
    if cost is not None and cost.total is not None:
        low, high = cost.total.least, cost.total.most
        amount = f"{low:.2f}" if low == high else f"{low:.2f} to {high:.2f}"
        remarks.because(f"The cost of {' and '.join(cost.counts)} is {amount} {cost.currency}.")


def _hours(band: Band, units: Units) -> str:
    """Least and most time as text; one of them where they are the same."""
    low, high = (units.of(WORKING_TIME, end)["text"] for end in (band.least, band.most))
    return low if low == high else f"{low} to {high}"


def _usual(
    rows: list[Row],
    code: CautionCode,
    name: str,
    dimension: Dimension | None,
    figure_of: Callable[[Row], Figure | None],
    remarks: Remarks,
) -> None:
    """Add a caution for each published figure that is used because the request leaves it out."""
    taken: dict[Figure, list[int]] = {}
    for number, row in enumerate(rows, start=1):
        figure = figure_of(row)
        if figure is not None and not figure.given:
            taken.setdefault(figure, []).append(number)
    for figure, numbers in taken.items():
        both = (figure.least, figure.most)
        if dimension is None:
            ends = [f"{100 * end:.4g} %" for end in both]
        else:
            ends = [remarks.units.of(dimension, end)["text"] for end in both]
        text = ends[0] if ends[0] == ends[1] else " to ".join(ends)
        remarks.caution(code, f"{_who(numbers)}: no {name} is given, so {text} is used.", Source("", figure.source))


def _who(numbers: Iterable[int]) -> str:
    """Welds by their numbers, the first few of many."""
    listed = list(numbers)
    if len(listed) == 1:
        return f"Weld {listed[0]}"
    if len(listed) <= LISTED:
        return f"Welds {', '.join(map(str, listed[:-1]))} and {listed[-1]}"
    return f"Welds {', '.join(map(str, listed[:LISTED]))} and {len(listed) - LISTED} more"


FASTEST_HAND = {"SMAW": 250.0 / 60.0, "GMAW": 10.0, "FCAW": 10.0, "FCAW-G": 10.0, "FCAW-S": 10.0}
"""Travel of a welder's hand, mm/s, by process: 250 and 600 mm/min; common practice, no source."""


def _faster_than_hands(row: Row) -> bool:
    """Whether the least arc time of a fillet, at usual rates, needs a travel that no hand has."""
    estimate = row.estimate
    fastest = FASTEST_HAND.get(estimate.process or "")
    if fastest is None or estimate.arc_time is None or row.weld.deposition is not None:
        return False
    runs = 1 if estimate.passes is None else estimate.passes.least
    return isinstance(row.weld.shape, Fillet) and not at_most(runs * estimate.length, fastest * estimate.arc_time.least)


def _details(rows: list[Row], prices: Prices | None, remarks: Remarks) -> None:
    """Add the cautions on how some fields are read."""

    def about(code: CautionCode, text: str, holds: Callable[[Row], bool], source: Source | None = None) -> None:
        if numbers := [number for number, row in enumerate(rows, start=1) if holds(row)]:
            remarks.caution(code, f"{_who(numbers)}: {text}", source)

    stick, wire = (remarks.units.of(SPEED, FASTEST_HAND[process])["text"] for process in ("SMAW", "GMAW"))
    about(
        "carbon-steel-assumed",
        "neither filler nor density is given, so carbon steel is assumed.",
        lambda row: row.weld.filler is None and row.weld.density is None,
    )
    about(
        "laid-larger-than-drawn",
        "no excess, convexity or cap is given. Welds are usually laid a tenth larger in area, and with a tenth more leg"
        " 21 %. The consumable, the hours, the gas and the cost are those of the weld as described.",
        lambda row: not says_its_excess(row.weld),
        deposition.TENTH_ON_LEG,
    )
    about(
        "rates-of-steel",
        "the usual deposition rates are those of steel. They are taken by the density of this metal: the same wire"
        " fed lays less mass.",
        lambda row: (
            row.weld.deposition is None
            and row.estimate.rests_on.deposition_rate is not None
            and is_lighter_than_steel(row.estimate.rests_on.density.value)
        ),
        deposition.SAME_FEED,
    )
    about(
        "faster-than-hands",
        f"the least time needs a faster travel than a welder's hand has: sticks run at up to {stick}, wires by hand at"
        f" up to {wire}. Send the deposition rate of the shop.",
        _faster_than_hands,
        Source("", "travel of a welder's hand", "common practice, no source"),
    )
    about(
        "excess-on-area",
        "excess is a share of the area. A leg that is a tenth larger takes 21 % more metal; send leg_excess for that.",
        lambda row: row.weld.excess > 0.0,
    )
    about(
        "gap-in-leg",
        "both legs are larger by the whole root gap.",
        lambda row: isinstance(row.weld.shape, Fillet) and not at_most(row.weld.shape.root_gap, s7_21_fit_up.FREE_GAP),
        s7_21_fit_up.FIT_UP,
    )
    about(
        "stub-taken-off",
        "the stub is taken off the efficiency given. Published efficiencies of 59 to 66 % already include a stub.",
        lambda row: row.weld.electrode is not None and row.weld.efficiency is not None,
    )
    about(
        "stub-in-efficiency",
        "the efficiency given is assumed to include the loss of the stub; send electrode if it does not.",
        lambda row: row.weld.process_id == "SMAW" and row.weld.electrode is None and row.weld.efficiency is not None,
    )
    about(
        "flux-not-counted",
        "the consumable does not include the flux of submerged arc.",
        lambda row: row.weld.process_id == "SAW" and prices is not None and bool(prices.consumables),
        Source("", "1.0 to 1.4 of flux to one of wire", "common practice, no source"),
    )
