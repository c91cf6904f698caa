"""Estimate of one entry: what its welds take, and the figures that the estimate rests on."""

from dataclasses import dataclass, replace
from typing import Any

from ...engine.formula import Formula, about, cite
from ...engine.rounding import at_least
from ...practice import deposition
from ...practice import passes as pass_practice
from ...reference.loader_welding_rates import UNSHIELDED, Quantity
from ..core.shape import Band
from ..joints import usual_rates, weld_sections
from ..joints.usual_rates import Figure
from .answer import EstimateBasis, MetalBand, SectionPart, Taken, WeldEstimate, WeldMetalDensity
from .passes import passes
from .prices import NOTHING, cost
from .request import Prices, Weld, WeldingArc


@dataclass(frozen=True, slots=True)
class Row:
    """Welds of one entry, and what they take."""

    weld: Weld
    estimate: WeldEstimate


def estimated(number: int, weld: Weld, prices: Prices | None) -> Row:
    """Estimate one entry."""
    subject = f"weld {number}"
    with about(subject):
        section = weld_sections.measured(weld.shape)
        rho, basis = _basis(weld, subject)
        deposited = float(
            deposition.deposited_mass(rho=rho.least, A=section.area, x=weld.excess, L=weld.length, n=float(weld.count))
        )
        metal = _metal(weld, section.area, rho.least, deposited)
        counted = passes(section, weld.excess, weld.process_id, weld.orientation, basis.bead_area)
    taken = _taken(weld, basis, metal, subject)
    length = weld.length * weld.count
    return Row(
        weld,
        WeldEstimate(
            mark=weld.mark,
            kind=weld.shape.kind,
            filler=weld.filler,
            process=weld.process_id,
            area=section.area,
            parts=tuple(SectionPart(part, area) for part, area in section.parts),
            length=length,
            mass_per_length=deposited / length,
            **vars(taken),
            passes=counted,
            cost=None if prices is None else cost(prices, weld.filler, weld.process_id, taken, subject),
            rests_on=basis,
        ),
    )


def says_its_excess(weld: Weld) -> bool:
    """Whether the request itself says by how much the weld is more than its drawing, or how its face is."""
    shape: Any = weld.shape
    faces = (getattr(shape, "convexity", None), getattr(shape, "hollow", None))
    caps = getattr(shape, "reinforcement", None)
    capped = caps is not None and (caps.face is not None or caps.root is not None)
    return weld.excess > 0.0 or getattr(shape, "leg_excess", 0.0) > 0.0 or capped or faces != (None, None)


def _metal(weld: Weld, area: float, rho: float, deposited: float) -> MetalBand:
    """Metal as described, as usually laid and at most as usually laid, kg."""
    if says_its_excess(weld):
        return MetalBand(deposited, deposited, deposited)
    length, count = weld.length, float(weld.count)
    with about("as usually laid"):
        typical = deposition.deposited_mass(rho=rho, A=area, x=deposition.USUAL_EXCESS, L=length, n=count)
    with about("at most as usually laid"):
        most = deposition.deposited_mass(rho=rho, A=area, x=deposition.LARGEST_USUAL_EXCESS, L=length, n=count)
    cite(deposition.TENTH_ON_AREA)
    cite(deposition.TENTH_ON_LEG)
    return MetalBand(deposited, float(typical), float(most))


def _taken(weld: Weld, basis: EstimateBasis, metal: MetalBand, subject: str) -> Taken:
    """What the welds take; None where a figure that it goes by is not known."""
    deposited = metal.least
    mass, eta, rate, factor = Band(deposited, deposited), basis.efficiency, basis.deposition_rate, basis.operator_factor
    consumable = arc_time = clock = energy = None
    gas = NOTHING if weld.process_id in UNSHIELDED else None
    if eta is not None:
        consumable = _ends(deposition.consumable_mass, subject, M=mass, eta=_falling(eta))
    if rate is not None:
        arc_time = _ends(deposition.arc_time, subject, M=mass, D=_falling(rate))
        if basis.gas_flow is not None:
            gas = _ends(deposition.gas_volume, subject, q=basis.gas_flow, T_a=arc_time)
        energy = _energy(weld.arc, basis.source_efficiency, arc_time, subject)
        if factor is not None:
            clock = _ends(deposition.working_time, subject, T_a=arc_time, k_o=_falling(factor))
    return Taken(deposited, metal, consumable, arc_time, clock, gas, energy)


def _energy(arc: WeldingArc | None, efficiency: Figure | None, arc_time: Band, subject: str) -> Band | None:
    """Energy from the mains, kJ; None where no arc is given."""
    if arc is None or efficiency is None:
        return None
    return _ends(
        deposition.mains_energy,
        subject,
        U=_known(arc.voltage),
        I=_known(arc.current),
        T_a=arc_time,
        k_J=_known(deposition.JOULE),
        eta_u=_falling(efficiency),
    )


def _known(value: float) -> Band:
    """Value that is known, as a band."""
    return Band(value, value)


def _falling(figure: Figure) -> Band:
    """Band of a figure that lowers the result as it rises: its most comes first."""
    return Band(figure.most, figure.least)


def _ends(formula: Formula[Any], subject: str, **arguments: Band | Figure) -> Band:
    """Least and most of a formula; each argument holds its value for the least first, then its value for the most."""
    least = {name: ends.least for name, ends in arguments.items()}
    most = {name: ends.most for name, ends in arguments.items()}
    with about(subject if least == most else f"{subject}, least"):
        low = float(formula(**least))
    if least == most:
        return Band(low, low)
    with about(f"{subject}, most"):
        return Band(low, float(formula(**most)))


def _basis(weld: Weld, subject: str) -> tuple[Figure, EstimateBasis]:
    """Density of the weld metal, and all that the estimate rests on.

    That is what the entry says itself, and usual figures of its process for the rest.
    """
    rho = usual_rates.density(weld.filler, weld.density)
    eta = _efficiency(weld)
    rate = _rate(weld, rho, eta, subject)
    flow = None
    if weld.gas_flow is not None:
        flow = usual_rates.given(weld.gas_flow)
    elif weld.process_id not in UNSHIELDED:
        flow = usual_rates.by_process("gas-flow", weld.process)
    return rho, EstimateBasis(
        density=WeldMetalDensity(rho.least, rho.source),
        efficiency=eta,
        deposition_rate=rate,
        operator_factor=_or_usual(weld.operator_factor, "operator-factor", weld),
        gas_flow=flow,
        bead_area=_bead(weld, rho, rate, subject),
        source_efficiency=_source_efficiency(weld.arc),
    )


def _or_usual(given: float | None, quantity: Quantity, weld: Weld) -> Figure | None:
    """Figure that the request gives, or the usual one of the process."""
    return usual_rates.by_process(quantity, weld.process) if given is None else usual_rates.given(given)


def _efficiency(weld: Weld) -> Figure | None:
    """Share of the consumable that is deposited, without the stub of a stick whose length is given."""
    if weld.electrode is None:
        return _or_usual(weld.efficiency, "efficiency", weld)
    before = usual_rates.stick_before_stub() if weld.efficiency is None else usual_rates.given(weld.efficiency)
    least, most = (
        float(deposition.efficiency_with_stub(eta_0=eta, L_e=weld.electrode.length, s=weld.electrode.stub))
        for eta in (before.least, before.most)
    )
    return replace(before, least=least, most=most)


def _rate(weld: Weld, rho: Figure, eta: Figure | None, subject: str) -> Figure | None:
    """Deposition rate, kg/s: as given, from the wire and its feed, or the usual one."""
    given = weld.deposition
    if given is None:
        return _of_metal(usual_rates.by_process("deposition-rate", weld.process), rho, subject)
    if given.rate is not None:
        return usual_rates.given(given.rate)
    assert given.feed_speed is not None and eta is not None  # noqa: S101 - refused otherwise
    mass = given.wire_mass
    if given.wire_diameter is not None:
        mass = float(deposition.wire_mass(d=given.wire_diameter, rho=rho.least))
    assert mass is not None  # noqa: S101 - a wire has one or the other
    rate = _ends(deposition.deposition_rate, subject, m_w=_known(mass), v_w=_known(given.feed_speed), eta=eta)
    return replace(eta, least=rate.least, most=rate.most)


def is_lighter_than_steel(density: float) -> bool:
    """Whether the usual deposition rates, which are those of steel, are too high for a metal of a density, kg/mm3."""
    return not at_least(density, deposition.LIGHT * deposition.STEEL)


def _of_metal(usual: Figure | None, rho: Figure, subject: str) -> Figure | None:
    """Usual deposition rate, which is that of steel, for the metal that is laid: never over that of steel."""
    if usual is None or not is_lighter_than_steel(rho.least):
        return usual
    steel = _known(deposition.STEEL)
    rate = _ends(deposition.rate_of_lighter_metal, subject, D_s=usual, rho=_known(rho.least), rho_s=steel)
    return replace(usual, least=rate.least, most=rate.most)


def _bead(weld: Weld, rho: Figure, rate: Figure | None, subject: str) -> Figure | None:
    """Area that one pass fills, mm2: as given, from its travel speed, or the usual one."""
    given = weld.bead
    if given is None or given.area is not None:
        return _or_usual(None if given is None else given.area, "bead-area", weld)
    assert given.travel_speed is not None and rate is not None  # noqa: S101 - refused otherwise
    speed = _known(given.travel_speed)
    area = _ends(pass_practice.bead_area, subject, D=rate, rho=_known(rho.least), v_t=speed)
    return replace(rate, least=area.least, most=area.most)


def _source_efficiency(arc: WeldingArc | None) -> Figure | None:
    """Efficiency of the power source; nothing where no arc is given."""
    if arc is None:
        return None
    if arc.source_efficiency is not None:
        return usual_rates.given(arc.source_efficiency)
    cite(deposition.SOURCES)
    return Figure(*deposition.SOURCE_EFFICIENCY, str(deposition.SOURCES))
