"""Leg of a single-pass fillet against its arc energy, and how much heat a leg adds that is larger than required."""

from dataclasses import dataclass

from ...engine.formula import about
from ...practice import deposition, leg_energy
from ..core.left_out import or_lacks
from ..core.quantities import ENERGY_PER_LENGTH, TIME
from ..core.remarks import Remarks
from ..core.shape import Band
from .answer import DepositedBead, FilletHeat, OversizeHeat
from .cooling import Seam, cooling_off_the_sheet

_COOLING = "needs thickness, and process or efficiency"


@dataclass(frozen=True, slots=True)
class Laid:
    """What is known of the fillet: arc energy (kJ/mm), deposition (kg/s) at a speed (mm/s), legs (mm), efficiency."""

    arc_energy: float | None
    deposition_rate: float | None
    travel_speed: float | None
    leg: float | None
    required_leg: float | None
    efficiency: float | None


def fillet(laid: Laid, seam: Seam | None, remarks: Remarks) -> FilletHeat:
    """Leg that the arc energy and the metal lay, arc energy that the leg takes, and the heat of an oversize leg.

    Lengths in mm, energies in kJ/mm, times in s. Always adds a caution, and a reason where the leg is oversize.
    """
    usual_leg: float | None = None
    bead: DepositedBead | None = None
    energy: float | None = None
    if laid.arc_energy is not None:
        usual_leg = float(leg_energy.leg_of_energy(E=laid.arc_energy, h=leg_energy.ENERGY_PER_SQUARE))
    if laid.deposition_rate is not None and laid.travel_speed is not None:
        area = leg_energy.bead_area(G=laid.deposition_rate, rho=deposition.STEEL, v=laid.travel_speed)
        bead = DepositedBead(float(area), float(leg_energy.leg_of_area(A_laid=area)))
    if laid.leg is not None:
        with about("leg"):
            energy = float(leg_energy.energy_of_leg(z=laid.leg, h=leg_energy.ENERGY_PER_SQUARE))
    remarks.caution(
        "leg-from-energy",
        "The leg follows from the arc energy only roughly. The rule is for a single pass and comes mostly from"
        " submerged-arc welds. Weld a test piece.",
        leg_energy.LEG,
    )
    return FilletHeat(
        usual_leg=or_lacks(usual_leg, "needs the arc energy"),
        bead=or_lacks(bead, "needs deposition_rate of the arc"),
        usual_arc_energy=or_lacks(energy, "needs leg"),
        oversize=or_lacks(_oversize(laid, energy, seam, remarks), "needs leg and required_leg"),
    )


def _oversize(laid: Laid, energy: float | None, seam: Seam | None, remarks: Remarks) -> OversizeHeat | None:
    """Heat and cooling of the leg laid against those of the leg required; None where one of the legs is not given."""
    if laid.leg is None or laid.required_leg is None or energy is None:
        return None
    with about("required leg"):
        needed = float(leg_energy.energy_of_leg(z=laid.required_leg, h=leg_energy.ENERGY_PER_SQUARE))
    times: list[Band] = []
    if seam is not None and laid.efficiency is not None:
        times = [cooling_off_the_sheet(seam, laid.efficiency * value) for value in (needed, energy)]
    ratio = energy / needed
    if ratio > 1.0:
        _explain_grain(laid, needed, energy, times, remarks)
    return OversizeHeat(
        required_arc_energy=needed,
        heat_ratio=ratio,
        cooling_time_required=or_lacks(times[0] if times else None, _COOLING),
        cooling_time_laid=or_lacks(times[1] if times else None, _COOLING),
    )


def _explain_grain(laid: Laid, needed: float, energy: float, times: list[Band], remarks: Remarks) -> None:
    """Add the reason why an oversize leg harms the grain."""
    units = remarks.units
    energies = [units.of(ENERGY_PER_LENGTH, value)["text"] for value in (energy, needed)]
    cools = ""
    if times:
        long, short = (units.of(TIME, time.most)["text"] for time in reversed(times))
        cools = f" It takes up to {long} instead of {short} to cool from 800 to 500 degC."
    legs = [units.text(leg or 0.0) for leg in (laid.leg, laid.required_leg)]
    remarks.because(
        f"A leg of {legs[0]} in one pass takes about {energies[0]} of arc energy. The {legs[1]} required take about"
        f" {energies[1]}, so the heat is {energy / needed:.2g} times as much.{cools} The longer the steel beside the"
        " weld stays hot, the coarser its grain becomes and the more toughness it loses; quenched and thermomechanical"
        " steels soften too. Lay the leg required, or lay the larger leg in several passes."
    )
