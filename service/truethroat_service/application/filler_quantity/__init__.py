"""Use case: weld metal, consumable, passes, hours, gas, energy and cost of any number of welds."""

from dataclasses import replace
from math import fsum
from typing import Any

from ...engine.formula import Formula, about, cite, working
from ...practice import deposition
from ...practice import passes as pass_practice
from ...reference.loader import FILLER_METALS
from ...reference.loader_welding_rates import METAL_CORED, UNSHIELDED, Quantity
from ..core.answers import Answered, answered
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.quantities import AREA, DENSITY, ENERGY, GAS_FLOW, MASS, MASS_RATE, VOLUME, WORKING_TIME, Dimension
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints import usual_rates, weld_sections
from ..joints.usual_rates import Band
from . import prices as weld_prices
from .estimates import Estimate, Figures
from .passes import Passes, passes
from .prices import Span
from .remarks import remark
from .request import Arc, FillerQuantityRequest, Prices, Weld

CORED = ("FCAW", "FCAW-G", "FCAW-S")
NOTHING: Span = (0.0, 0.0)


def filler_quantity(request: FillerQuantityRequest) -> Answered[dict[str, Any]]:
    """Answer a request for filler quantity; raises ``Refused`` with every fault found."""
    units = Units(request.common.units)
    remarks = Remarks(units)
    _check(request, units)
    with working() as sheet:
        rows = [_estimated(number, weld, request.prices) for number, weld in enumerate(request.welds, start=1)]
        totals = _totals(rows, request.prices, units)
        result = {
            "welds": [_shown(row, request.prices, units) for row in rows],
            "totals": totals,
            "groups": _groups(rows, request.prices, units),
        }
        remark(rows, request.prices, totals, units, remarks)
    return answered(
        "filler_quantity",
        replace(request, welds=tuple(_canonical(weld) for weld in request.welds)),
        sheet,
        remarks,
        Verdict.ESTIMATED,
        result,
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


def _estimated(number: int, weld: Weld, prices: Prices | None) -> Estimate:
    """Estimate one entry."""
    subject = f"weld {number}"
    with about(subject):
        section = weld_sections.measured(weld.shape)
        figures = _figures(weld, subject)
        deposited = float(
            deposition.deposited_mass(
                rho=figures.density.low, A=section.area, x=weld.excess, L=weld.length, n=float(weld.count)
            )
        )
        passed = passes(section, weld.excess, weld.process_id, weld.orientation, figures.bead)
    mass, eta, rate, factor = (deposited, deposited), figures.efficiency, figures.rate, figures.factor
    consumable = arc_time = clock = energy = None
    gas = NOTHING if weld.process_id in UNSHIELDED else None
    if eta is not None:
        consumable = _ends(deposition.consumable_mass, subject, M=mass, eta=_falling(eta))
    if rate is not None:
        arc_time = _ends(deposition.arc_time, subject, M=mass, D=_falling(rate))
        gas, energy = _gas(figures, arc_time, subject) or gas, _energy(weld.arc, figures, arc_time, subject)
        if factor is not None:
            clock = _ends(deposition.working_time, subject, T_a=arc_time, k_o=_falling(factor))
    taken = {"labour": clock, "consumable": consumable, "gas": gas, "power": energy}
    cost = None if prices is None else weld_prices.costs(prices, weld.filler, weld.process_id, taken, subject)
    return Estimate(weld, section, figures, deposited, consumable, arc_time, clock, gas, energy, passed, cost)


def _gas(figures: Figures, arc_time: Span, subject: str) -> Span | None:
    """Gas that flows while the arc burns."""
    flow = figures.gas_flow
    if flow is None:
        return None
    return _ends(deposition.gas_volume, subject, q=(flow.low, flow.high), T_a=arc_time)


def _energy(arc: Arc | None, figures: Figures, arc_time: Span, subject: str) -> Span | None:
    """Energy from the mains; not known where the arc is not told."""
    if arc is None or figures.source_efficiency is None:
        return None
    return _ends(
        deposition.mains_energy,
        subject,
        U=(arc.voltage, arc.voltage),
        I=(arc.current, arc.current),
        T_a=arc_time,
        k_J=(deposition.JOULE, deposition.JOULE),
        eta_u=_falling(figures.source_efficiency),
    )


def _falling(band: Band) -> Span:
    """Ends of a figure that takes less the greater it is."""
    return band.high, band.low


def _ends(formula: Formula[Any], subject: str, **arguments: Span) -> Span:
    """Least and most of a formula whose arguments each go from that of the least to that of the most."""
    least, most = ({name: span[end] for name, span in arguments.items()} for end in (0, 1))
    with about(subject if least == most else f"{subject}, least"):
        low = float(formula(**least))
    if least == most:
        return low, low
    with about(f"{subject}, most"):
        return low, float(formula(**most))


def _figures(weld: Weld, subject: str) -> Figures:
    """What an entry's estimate rests on: what it says itself, and usual figures of its process for the rest."""
    rho = usual_rates.density(weld.filler, weld.density)
    eta = _efficiency(weld)
    rate = _rate(weld, rho, eta, subject)
    flow = None
    if weld.gas_flow is not None:
        flow = usual_rates.given(weld.gas_flow)
    elif weld.process_id not in UNSHIELDED:
        flow = usual_rates.by_process("gas-flow", weld.process)
    return Figures(
        density=rho,
        efficiency=eta,
        rate=rate,
        factor=_or_usual(weld.operator_factor, "operator-factor", weld),
        gas_flow=flow,
        bead=_bead(weld, rho, rate, subject),
        source_efficiency=_source_efficiency(weld.arc),
    )


def _or_usual(told: float | None, quantity: Quantity, weld: Weld) -> Band | None:
    """Figure that the request says, or the usual one of the process."""
    return usual_rates.by_process(quantity, weld.process) if told is None else usual_rates.given(told)


def _efficiency(weld: Weld) -> Band | None:
    """Share of the consumable that is deposited, the stub of a stick taken off where its length is said."""
    if weld.electrode is None:
        return _or_usual(weld.efficiency, "efficiency", weld)
    before = usual_rates.stick_before_stub() if weld.efficiency is None else usual_rates.given(weld.efficiency)
    low, high = (
        float(deposition.efficiency_with_stub(eta_0=eta, L_e=weld.electrode.length, s=weld.electrode.stub))
        for eta in (before.low, before.high)
    )
    return Band(low, high, before.source)


def _rate(weld: Weld, rho: Band, eta: Band | None, subject: str) -> Band | None:
    """Deposition rate: as told, of the wire fed, or the usual one."""
    told = weld.deposition
    if told is None or told.rate is not None:
        return _or_usual(None if told is None else told.rate, "deposition-rate", weld)
    assert told.feed_speed is not None and eta is not None  # noqa: S101 - refused otherwise
    mass = told.wire_mass
    if told.wire_diameter is not None:
        mass = float(deposition.wire_mass(d=told.wire_diameter, rho=rho.low))
    assert mass is not None  # noqa: S101 - a wire has one or the other
    feed = (told.feed_speed, told.feed_speed)
    low, high = _ends(deposition.deposition_rate, subject, m_w=(mass, mass), v_w=feed, eta=(eta.low, eta.high))
    return Band(low, high, eta.source)


def _bead(weld: Weld, rho: Band, rate: Band | None, subject: str) -> Band | None:
    """Area that one pass fills: as told, by its speed, or the usual one."""
    told = weld.bead
    if told is None or told.area is not None:
        return _or_usual(None if told is None else told.area, "bead-area", weld)
    assert told.travel_speed is not None and rate is not None  # noqa: S101 - refused otherwise
    speed = (told.travel_speed, told.travel_speed)
    low, high = _ends(pass_practice.bead_area, subject, D=(rate.low, rate.high), rho=(rho.low, rho.low), v_t=speed)
    return Band(low, high, rate.source)


def _source_efficiency(arc: Arc | None) -> Band | None:
    """Efficiency of the power source; nothing where no arc is told."""
    if arc is None:
        return None
    if arc.source_efficiency is not None:
        return usual_rates.given(arc.source_efficiency)
    cite(deposition.SOURCES)
    return Band(*deposition.SOURCE_EFFICIENCY, str(deposition.SOURCES))


def _shown(row: Estimate, prices: Prices | None, units: Units) -> dict[str, Any]:
    """One entry as an answer shows it."""
    weld, found = row.weld, row.figures
    whole = weld.length * weld.count
    return {
        **({} if weld.mark is None else {"mark": weld.mark}),
        "kind": weld.shape.kind,
        "filler": weld.filler,
        "process": weld.process_id,
        "area": units.area(row.section.area),
        "parts": [{"part": part, "area": units.area(area)} for part, area in row.section.parts],
        "length": units.length(whole),
        "mass_per_length": units.mass_per_length(row.deposited / whole),
        **_taken(row, units),
        "passes": None if row.passes is None else _passes(row.passes),
        "cost": None if prices is None or row.costs is None else weld_prices.shown(row.costs, prices.currency),
        "rests_on": {
            "density": {"value": units.of(DENSITY, found.density.low), "source": found.density.source},
            "efficiency": _share(found.efficiency),
            "deposition_rate": _band(MASS_RATE, found.rate, units),
            "operator_factor": _share(found.factor),
            "gas_flow": _band(GAS_FLOW, found.gas_flow, units),
            "bead_area": _band(AREA, found.bead, units),
            "source_efficiency": _share(found.source_efficiency),
        },
    }


def _taken(row: Estimate, units: Units) -> dict[str, Any]:
    """What the welds take, without their cost."""
    return {
        "deposited": units.of(MASS, row.deposited),
        "consumable": _span(MASS, row.consumable, units),
        "arc_time": _span(WORKING_TIME, row.arc_time, units),
        "working_time": _span(WORKING_TIME, row.working_time, units),
        "gas": _span(VOLUME, row.gas, units),
        "energy": _span(ENERGY, row.energy, units),
    }


def _span(dimension: Dimension, span: Span | None, units: Units) -> dict[str, Any] | None:
    """Least and most, as quantities."""
    return None if span is None else {"least": units.of(dimension, span[0]), "most": units.of(dimension, span[1])}


def _band(dimension: Dimension, band: Band | None, units: Units) -> dict[str, Any] | None:
    """Figure with its source, as quantities."""
    if band is None:
        return None
    return {"least": units.of(dimension, band.low), "most": units.of(dimension, band.high), "source": band.source}


def _share(band: Band | None) -> dict[str, Any] | None:
    """Share with its source."""
    return None if band is None else {"least": band.low, "most": band.high, "source": band.source}


def _passes(found: Passes) -> dict[str, Any]:
    """Passes with every count."""
    return {
        "least": found.low,
        "most": found.high,
        "counts": [
            {"by": count.by, "least": count.low, "most": count.high, "source": str(count.source)}
            for count in found.counts
        ],
    }


def _totals(rows: list[Estimate], prices: Prices | None, units: Units) -> dict[str, Any]:
    """Sums over entries; a sum with an unknown in it is unknown."""
    cost = None
    if prices is not None:
        parts = {part: weld_prices.total([(row.costs or {}).get(part) for row in rows]) for part in prices.priced}
        cost = weld_prices.shown(parts, prices.currency)
    return {
        "count": sum(row.weld.count for row in rows),
        "length": units.length(fsum(row.weld.length * row.weld.count for row in rows)),
        "deposited": units.of(MASS, fsum(row.deposited for row in rows)),
        "consumable": _span(MASS, weld_prices.total([row.consumable for row in rows]), units),
        "arc_time": _span(WORKING_TIME, weld_prices.total([row.arc_time for row in rows]), units),
        "working_time": _span(WORKING_TIME, weld_prices.total([row.working_time for row in rows]), units),
        "gas": _span(VOLUME, weld_prices.total([row.gas for row in rows]), units),
        "energy": _span(ENERGY, weld_prices.total([row.energy for row in rows]), units),
        "cost": cost,
    }


def _groups(rows: list[Estimate], prices: Prices | None, units: Units) -> list[dict[str, Any]]:
    """Totals of each filler and process, in the order of their names."""
    found: dict[tuple[str, str], list[Estimate]] = {}
    for row in rows:
        found.setdefault((row.weld.filler or "", row.weld.process_id or ""), []).append(row)
    return [
        {"filler": filler or None, "process": process or None, **_totals(members, prices, units)}
        for (filler, process), members in sorted(found.items())
    ]
