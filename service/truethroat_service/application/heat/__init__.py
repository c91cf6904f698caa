"""Use case: arc energy, cooling time t8/5, preheat and hardness of a pass, and the heat that keeps to a window."""

from typing import Any

from ...engine.formula import about, cite, working
from ...engine.rounding import at_least
from ...standards.en_1011_1_2009 import heat_input as en_1011_1
from ...standards.en_1011_2_2001 import annex_d_cooling
from ..core.answers import Answered, answered
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.quantities import ENERGY_PER_LENGTH, SPEED, TEMPERATURE, TIME
from ..core.remarks import Remarks
from ..core.units import Units
from . import cooling as cooling_of
from . import preheat as preheat_of
from .checks import Reasons, check, check_scope, left_out
from .cooling import Band, Cooling, Seam
from .fillet import Laid, fillet
from .hardness import hardness
from .request import FILLETS, ROOM_TEMPERATURE, Arc, Energy, HeatRequest, thermal_efficiency, thickest_part
from .steel import Lacking, Name, equivalents


def heat(request: HeatRequest) -> Answered[dict[str, Any]]:
    """Answer for the heat of a pass; raises ``Refused`` with every fault found."""
    units = Units(request.common.units)
    remarks = Remarks(units)
    faults, reasons = Faults(units), Reasons()
    check(request, faults)
    faults.refuse()
    with working() as sheet:
        energy = _energy(request)
        found, needs = equivalents(request.composition, request.carbon_equivalents)
        asked = _method_b(request, energy, found["cet"])
        seam = _seam(request)
        check_scope(request, asked, seam, energy, faults)
        faults.refuse()
        cooled = _cooled(request, seam, energy, remarks)
        energy_answer = _energy_answer(request, energy, units, remarks)
        verdict = _judged(cooled, request.cooling_window, units, remarks)
        result = {
            "energy": energy_answer,
            "cooling": _cooling_answer(cooled, units),
            "limits": _limits(request, seam, energy, units),
            "carbon_equivalents": found,
            "preheat": _preheat(request, asked, found, energy, units, remarks),
            "hardness": _hardness(request, cooled, reasons, remarks),
            "fillet": _fillet(request, seam, energy, units, remarks),
        }
        reasons |= {f"carbon_equivalents/{name}": reason for name, reason in needs.items()}
    return answered(
        "heat",
        request,
        sheet,
        remarks,
        verdict,
        {**result, "left_out": left_out(request, result, reasons)},
        rule_set=None,
        parameters={} if energy.efficiency is None else {"k": energy.efficiency},
    )


def _energy(request: HeatRequest) -> Energy:
    """Arc energy and heat input, as far as the request tells them."""
    k = thermal_efficiency(request)
    if k is not None and request.efficiency is None:
        cite(en_1011_1.TABLE_1)
    arc = request.arc
    if arc is None:
        return Energy(None, None, k)
    if arc.heat_input is not None:
        made = None if k is None else float(en_1011_1.arc_energy_of_heat_input(Q=arc.heat_input, k=k))
        return Energy(made, arc.heat_input, k)
    energy = arc.arc_energy
    if arc.voltage is not None and arc.current is not None and arc.travel_speed is not None:
        energy = float(en_1011_1.arc_energy(U=arc.voltage, I=arc.current, v=arc.travel_speed, J=en_1011_1.JOULE))
    if energy is None:
        return Energy(None, None, k)
    return Energy(energy, None if k is None else float(en_1011_1.heat_input(k=k, E=energy)), k)


def _seam(request: HeatRequest) -> Seam | None:
    """Seam that cools, when its plate and kind are told."""
    if request.thickness is None or request.seam is None:
        return None
    return Seam(request.seam, request.thickness, request.preheat)


def _method_b(request: HeatRequest, energy: Energy, cet: float | None) -> preheat_of.MethodB | None:
    """What method B is asked with, once everything it goes by is known."""
    if cet is None or request.thickness is None or request.hydrogen is None or energy.heat_input is None:
        return None
    return preheat_of.MethodB(cet, request.weld_metal_cet, request.thickness, request.hydrogen, energy.heat_input)


def _cooled(request: HeatRequest, seam: Seam | None, energy: Energy, remarks: Remarks) -> Cooling | None:
    """Cooling time, measured or worked out."""
    if request.cooling_time is not None:
        return Cooling(Band(request.cooling_time, request.cooling_time))
    if seam is None:
        return None
    if energy.heat_input is None and request.cooling_window is None:
        return None
    remarks.caution(
        "ferritic-only", "Cooling times are for unalloyed and low-alloy ferritic steel.", annex_d_cooling.FERRITIC
    )
    remarks.caution("seam-factors", "The factors F2 and F3 of the seam are recalled.", annex_d_cooling.SEAM_FACTORS)
    cite(annex_d_cooling.SEAM_FACTORS)
    if seam.factors.two[0] != seam.factors.two[1]:
        low, high = seam.factors.two
        remarks.caution(
            "factor-band",
            f"F2 of this seam runs from {low:g} to {high:g} with Q/d by a curve that is not at hand: the answer is the"
            " band between.",
            annex_d_cooling.SEAM_FACTORS,
        )
    return None if energy.heat_input is None else cooling_of.cooling(seam, energy.heat_input)


def _judged(cooled: Cooling | None, window: Band | None, units: Units, remarks: Remarks) -> Verdict:
    """Hold the cooling time against the window; a band must lie in it whole."""
    if cooled is None or window is None:
        return Verdict.ESTIMATED
    low, high = (units.of(TIME, value)["text"] for value in (cooled.time.least, cooled.time.most))
    time = low if low == high else f"{low} to {high}"
    wanted = " to ".join(units.of(TIME, value)["text"] for value in (window.least, window.most))
    said = f"It cools from 800 to 500 degC in {time}; the window is {wanted}"
    if not at_least(cooled.time.least, window.least):
        remarks.because(f"{said}: too fast, which leaves it hard and open to cold cracks. Preheat, or bring more heat.")
        return Verdict.TOO_FAST
    if not at_least(window.most, cooled.time.most):
        remarks.because(f"{said}: too slow, which coarsens the grain and takes toughness. Bring less heat, or cool.")
        return Verdict.TOO_SLOW
    remarks.because(f"{said}: within.")
    return Verdict.WITHIN


def _energy_answer(request: HeatRequest, energy: Energy, units: Units, remarks: Remarks) -> dict[str, Any] | None:
    """Both conventions, each by its name."""
    if energy.arc_energy is None and energy.heat_input is None:
        return None
    if energy.arc_energy is not None and energy.heat_input is not None:
        arc, heat_in = (units.of(ENERGY_PER_LENGTH, value)["text"] for value in (energy.arc_energy, energy.heat_input))
        by = "as given" if request.efficiency is not None else "of the process"
        remarks.because(
            f"{arc} of arc energy, which AWS D1.1 and ASME IX call heat input; {heat_in} of heat input by EN 1011-1,"
            f" with the efficiency {energy.efficiency:g} {by}."
        )
        remarks.caution(
            "two-heat-inputs",
            "Compare a limit with the figure of its own convention: arc energy (AWS, ASME) or heat input (EN, ISO).",
        )

    def shown(value: float | None) -> Any:
        return None if value is None else units.of(ENERGY_PER_LENGTH, value)

    return {
        "arc_energy": shown(energy.arc_energy),
        "heat_input": shown(energy.heat_input),
        "efficiency": energy.efficiency,
    }


def _cooling_answer(cooled: Cooling | None, units: Units) -> dict[str, Any] | None:
    """Cooling time as an answer shows it."""
    if cooled is None:
        return None
    transition = cooled.transition
    return {
        "time": {"least": units.of(TIME, cooled.time.least), "most": units.of(TIME, cooled.time.most)},
        "flow": cooled.flow,
        "transition_thickness": None
        if transition is None
        else {"least": units.length(transition.least), "most": units.length(transition.most)},
    }


def _limits(request: HeatRequest, seam: Seam | None, energy: Energy, units: Units) -> dict[str, Any] | None:
    """Heat input, arc energy and travel speed between which the cooling time stays in the window."""
    if seam is None or request.cooling_window is None:
        return None
    heat_inputs = cooling_of.heat_input_within(seam, request.cooling_window)
    if heat_inputs is None:
        return None
    ends = (("least", heat_inputs.least), ("most", heat_inputs.most))
    k, arc = energy.efficiency, request.arc
    energies = speeds = None
    if k is not None:
        energies = {}
        for name, value in ends:
            with about(name):
                made = float(en_1011_1.arc_energy_of_heat_input(Q=value, k=k))
            energies[name] = units.of(ENERGY_PER_LENGTH, made)
        if arc is not None and arc.voltage is not None and arc.current is not None:
            speeds = {}
            # The most heat goes with the least speed.
            for name, value in (("least", heat_inputs.most), ("most", heat_inputs.least)):
                with about(f"{name} speed"):
                    speed = float(en_1011_1.travel_speed(U=arc.voltage, I=arc.current, k=k, Q=value, J=en_1011_1.JOULE))
                speeds[name] = units.of(SPEED, speed)
    return {
        "heat_input": {name: units.of(ENERGY_PER_LENGTH, value) for name, value in ends},
        "arc_energy": energies,
        "travel_speed": speeds,
    }


def _preheat(
    request: HeatRequest,
    asked: preheat_of.MethodB | None,
    found: dict[Name, float | None],
    energy: Energy,
    units: Units,
    remarks: Remarks,
) -> dict[str, Any]:
    """Preheat by every rule that has what it goes by."""
    made: dict[str, Any] = {"method_a": None, "method_b": None, "sew_088": None, "aws_d1_1": None}
    if request.hydrogen is not None:
        made["method_a"] = preheat_of.method_a(
            found["ce"], energy.heat_input, request.hydrogen, request.combined_thickness, units, remarks
        )
    if asked is not None:
        made |= preheat_of.method_b(asked, request.preheat, units, remarks)
        if request.seam in FILLETS:
            remarks.because("Single-run fillets tend to need less preheat than method B gives.")
    thickest = thickest_part(request)
    if request.preheat_category is not None and thickest is not None:
        made["aws_d1_1"] = preheat_of.aws_d1_1(request.preheat_category, thickest, request.preheat, units, remarks)
    _say_preheat(request, made, units, remarks)
    return made


_BY = {"method_b": "EN 1011-2 method B", "sew_088": "SEW 088", "aws_d1_1": "AWS D1.1"}


def _say_preheat(request: HeatRequest, made: dict[str, Any], units: Units, remarks: Remarks) -> None:
    """Say which rules ask for more preheat than there is."""
    short = [f"{made[name]['temperature']['text']} by {said}" for name, said in _BY.items() if _is_short(made[name])]
    if short:
        start = units.of(TEMPERATURE, request.preheat)["text"]
        remarks.caution(
            "preheat-short", f"The plate is at {start} when welding begins; it needs {' and '.join(short)}."
        )
    b = made["method_b"]
    if b is not None and b["met"] and request.preheat <= ROOM_TEMPERATURE:
        remarks.because("No preheat by method B: its temperature is below that of the plate.")


def _is_short(made: dict[str, Any] | None) -> bool:
    """Whether a rule asks for more than there is."""
    return made is not None and not made["met"]


def _hardness(
    request: HeatRequest, cooled: Cooling | None, reasons: Reasons, remarks: Remarks
) -> dict[str, Any] | None:
    """Hardness, where the composition and the cooling time tell it."""
    if request.composition is None:
        reasons["hardness"] = "needs composition"
        return None
    if cooled is None:
        reasons["hardness"] = "needs a cooling time, measured or worked out of the arc, thickness and seam"
        return None
    try:
        made = hardness(request.composition, cooled.time, request.steel_group, request.heat_treated, remarks)
    except Lacking as lacking:
        reasons["hardness"] = str(lacking)
        return None
    if made["standing"] is not None:
        band, said = made["band"], {"within": "within", "over": "over", "open": "not surely within"}
        remarks.because(
            f"{band['least']:.0f} to {band['most']:.0f} HV beside the weld: {said[made['standing']]} the"
            f" {made['limit']:g} HV10 of group {request.steel_group}."
        )
    return made


def _fillet(
    request: HeatRequest, seam: Seam | None, energy: Energy, units: Units, remarks: Remarks
) -> dict[str, Any] | None:
    """Leg against arc energy, for a fillet."""
    if request.seam not in FILLETS or (energy.arc_energy is None and request.leg is None):
        return None
    arc = request.arc or Arc()
    laid = Laid(
        energy.arc_energy,
        arc.deposition_rate,
        arc.travel_speed,
        request.leg,
        request.required_leg,
        energy.efficiency,
    )
    return fillet(laid, seam, units, remarks)
