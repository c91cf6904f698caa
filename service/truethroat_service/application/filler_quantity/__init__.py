"""Use case: weld metal, consumable, passes, hours, gas, energy and cost of any number of welds."""

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

    Lengths are in mm, masses in kg, times in s, energies in kJ. Raises ``Refused`` with every fault found.
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
    """Weld without its mark, its process and position by what they mean: 135 and GMAW are one, 138 is another wire."""
    cored = " metal-cored" if weld.process in METAL_CORED else ""
    process = weld.process and f"{weld.process_id}{cored}"
    return replace(weld, mark=None, process=process, position=weld.orientation)


def _check(request: FillerQuantityRequest, units: Units) -> None:
    """Refuse welds whose fields do not go together."""
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
    """Find what the process has no use for."""
    process = weld.process_id
    if weld.filler is not None and process is not None:
        made_for = FILLER_METALS[weld.filler].processes
        if made_for and process not in made_for and not (process == "FCAW" and set(made_for) & set(CORED)):
            faults.inconsistent(f"{pointer}/filler", f"{weld.filler} is made for {' and '.join(made_for)}")
    if weld.electrode is not None:
        if process != "SMAW":
            faults.inconsistent(f"{pointer}/electrode", 'only a stick leaves a stub: goes with process "SMAW" alone')
        elif weld.electrode.stub >= weld.electrode.length:
            faults.inconsistent(f"{pointer}/electrode/stub", "the stub is the whole electrode")
    if weld.gas_flow is not None and process in UNSHIELDED:
        faults.inconsistent(f"{pointer}/gas_flow", f"{process} takes no shielding gas; leave it out")


def _check_rates(weld: Weld, pointer: str, faults: Faults) -> None:
    """Find a wire that the process has not, and rates that nothing gives."""
    wire = weld.deposition
    if wire is not None and wire.feed_speed is not None:
        if weld.process_id == "SMAW":
            faults.inconsistent(f"{pointer}/deposition", "a stick is not fed: send its deposition rate")
        elif wire.wire_diameter is not None and (weld.process_id in CORED or weld.process in METAL_CORED):
            faults.inconsistent(
                f"{pointer}/deposition/wire_diameter",
                "a cored wire weighs less than a solid one of its diameter: send wire_mass, or the rate",
            )
        if weld.efficiency is None and usual_rates.by_process("efficiency", weld.process) is None:
            faults.inconsistent(
                f"{pointer}/efficiency", "is needed to know what of the wire is deposited; no usual one is on record"
            )
    elif (
        wire is None
        and weld.bead is not None
        and weld.bead.travel_speed is not None
        and usual_rates.by_process("deposition-rate", weld.process) is None
    ):
        faults.inconsistent(
            f"{pointer}/deposition", "is needed to know what a pass fills at a speed; no usual one is on record"
        )


def _totals(rows: list[Row], prices: Prices | None) -> EstimateTotals:
    """Sums over entries; a sum with an unknown in it is unknown."""
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
