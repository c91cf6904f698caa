"""Use case: weld metal, consumable, passes, hours, gas, energy and cost of any number of welds.

Anything a request leaves out (efficiency, deposition rate, operator factor, gas flow) is the range of the usual rows
for its process in ``welding_rates.csv``. The least result takes the least of each range and the most takes the most; a
caution names the range and its source. The efficiency changes only the mass to buy, since deposition rates are of
deposited metal. A total with an unknown summand is null, never the sum of the rest. A process without shielding gas
takes none, which is a known value. A cored wire is refused by its diameter, because the formula of a solid wire would
deposit too much.

A groove is partial where it has a depth and no land: its gap is then filled to that depth, otherwise through the whole
thickness. A root gap of a fillet enlarges both legs by the rule of AWS D1.1 7.21, as in ``/v1/fillet-size``. A
back-gouge is added to the gap that it removes (common practice, slightly too much).
"""

from dataclasses import replace
from math import fsum

from ...engine.formula import working
from ...reference.loader import FILLER_METALS
from ...reference.loader_welding_rates import METAL_CORED, UNSHIELDED
from ..core.answers import Answered, answered
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints import usual_rates, weld_sections
from . import prices as weld_prices
from .answer import EstimateGroup, EstimateTotals, FillerQuantityAnswer, MetalBand
from .estimates import Row, estimated
from .prices import total
from .remarks import remark
from .request import FillerQuantityRequest, Prices, Weld

CORED = ("FCAW", "FCAW-G", "FCAW-S")


def filler_quantity(request: FillerQuantityRequest) -> Answered[FillerQuantityAnswer]:
    """What welds take in metal, time, gas and money.

    The request and the answer are in engine units: lengths in mm, masses in kg, times in s, gas in mm3, energies in kJ.
    The answer holds one estimate for each entry in the order of the request, the totals, and the totals of each filler
    and process. Raises ``Refused`` with every fault of the request.
    """
    units = Units(request.common.units)
    remarks = Remarks(units)
    _check(request, units)
    with working() as sheet:
        rows = [estimated(number, weld, request.prices) for number, weld in enumerate(request.welds, start=1)]
        totals = _totals(rows, request.prices)
        answer = FillerQuantityAnswer(
            welds=tuple(row.estimate for row in rows), totals=totals, groups=_groups(rows, request.prices)
        )
        remark(rows, request.prices, totals, remarks)
    return answered(
        "filler_quantity",
        replace(request, welds=tuple(_canonical(weld) for weld in request.welds)),
        sheet,
        remarks,
        Verdict.ESTIMATED,
        answer,
        rule_set=None,
        parameters={},
    )


def _canonical(weld: Weld) -> Weld:
    """Weld for the fingerprint: without its mark, and with one name for all codes of a process or position."""
    cored = " metal-cored" if weld.process in METAL_CORED else ""
    process = weld.process and f"{weld.process_id}{cored}"
    return replace(weld, mark=None, process=process, position=weld.orientation)


def _check(request: FillerQuantityRequest, units: Units) -> None:
    """Raise ``Refused`` for welds whose fields do not fit together."""
    faults = Faults(units)
    for index, weld in enumerate(request.welds):
        pointer = f"#/welds/{index}"
        weld_sections.check(weld.shape, f"{pointer}/shape", faults)
        _check_process(weld, pointer, faults)
        _check_rates(weld, pointer, faults)
    if request.prices is not None:
        weld_prices.check(request.prices, faults)
    faults.refuse()


def _check_process(weld: Weld, pointer: str, faults: Faults) -> None:
    """Add a fault for each field that does not fit the process."""
    process = weld.process_id
    if weld.filler is not None and process is not None:
        made_for = FILLER_METALS[weld.filler].processes
        if made_for and process not in made_for and not (process == "FCAW" and set(made_for) & set(CORED)):
            faults.inconsistent(
                f"{pointer}/filler", f"must be made for {process}; {weld.filler} is made for {' and '.join(made_for)}"
            )
    if weld.electrode is not None:
        if process != "SMAW":
            faults.inconsistent(f"{pointer}/electrode", 'applies to process "SMAW" only; leave it out')
        elif weld.electrode.stub >= weld.electrode.length:
            faults.inconsistent(f"{pointer}/electrode/stub", "must be shorter than the electrode")
    if weld.gas_flow is not None and process in UNSHIELDED:
        faults.inconsistent(f"{pointer}/gas_flow", f"does not apply to {process}, which takes no gas; leave it out")


def _check_rates(weld: Weld, pointer: str, faults: Faults) -> None:
    """Add a fault for a wire that does not fit the process, and for a rate that follows from nothing."""
    wire = weld.deposition
    if wire is not None and wire.feed_speed is not None:
        if weld.process_id == "SMAW":
            faults.inconsistent(f"{pointer}/deposition", "must be the rate of a stick electrode, which is not fed")
        elif wire.wire_diameter is not None and (weld.process_id in CORED or weld.process in METAL_CORED):
            faults.inconsistent(
                f"{pointer}/deposition/wire_diameter",
                "does not apply to a cored wire, which weighs less than a solid one; send wire_mass or the rate",
            )
        if weld.efficiency is None and usual_rates.by_process("efficiency", weld.process) is None:
            faults.inconsistent(
                f"{pointer}/efficiency", "is required with a wire, because no usual efficiency of its process is known"
            )
    elif (
        wire is None
        and weld.bead is not None
        and weld.bead.travel_speed is not None
        and usual_rates.by_process("deposition-rate", weld.process) is None
    ):
        faults.inconsistent(
            f"{pointer}/deposition",
            "is required with the travel speed of a bead, because no usual rate of its process is known",
        )


def _totals(rows: list[Row], prices: Prices | None) -> EstimateTotals:
    """Sums over entries; a sum is None where one of its summands is not known."""
    estimates = [row.estimate for row in rows]
    return EstimateTotals(
        count=sum(row.weld.count for row in rows),
        length=fsum(one.length for one in estimates),
        deposited=fsum(one.deposited for one in estimates),
        metal=MetalBand(
            fsum(one.metal.least for one in estimates),
            fsum(one.metal.typical for one in estimates),
            fsum(one.metal.most for one in estimates),
        ),
        consumable=total([one.consumable for one in estimates]),
        arc_time=total([one.arc_time for one in estimates]),
        working_time=total([one.working_time for one in estimates]),
        gas=total([one.gas for one in estimates]),
        energy=total([one.energy for one in estimates]),
        cost=None if prices is None else weld_prices.total_cost(prices, [one.cost for one in estimates]),
    )


def _groups(rows: list[Row], prices: Prices | None) -> tuple[EstimateGroup, ...]:
    """Totals of each filler and process, in the order of their names."""
    members_of: dict[tuple[str, str], list[Row]] = {}
    for row in rows:
        members_of.setdefault((row.weld.filler or "", row.weld.process_id or ""), []).append(row)
    return tuple(
        EstimateGroup(filler=filler or None, process=process or None, **vars(_totals(members, prices)))
        for (filler, process), members in sorted(members_of.items())
    )
