"""Use case: arc energy, cooling time t8/5, preheat and hardness of a pass, and the heat that keeps to a window.

The use case computes what the fields of the request allow. Sending ``hydrogen`` requests method B of EN 1011-2, so
values outside the limits of method B are refused. Results that nobody requested, such as the hardness, are null outside
their scope. Every null is listed in ``left_out`` with what it needs. An element that is not given is never taken as
zero, unless ``others_zero`` says so.
"""

from dataclasses import replace

from ...engine.formula import about, cite, working
from ...engine.rounding import at_least
from ...standards.en_1011_1_2009 import heat_input as en_1011_1
from ...standards.en_1011_2_2001 import annex_d_cooling, c_2_method_a
from ..core.answers import Answered, answered
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.left_out import known, left_out, or_lacks
from ..core.quantities import ENERGY_PER_LENGTH, TEMPERATURE, TIME
from ..core.remarks import Remarks
from ..core.shape import Band, Lacks
from ..core.units import Units
from . import combined_thickness as combined_of
from . import cooling as cooling_of
from . import preheat as preheat_of
from .answer import (
    FilletHeat,
    FormulaPreheat,
    HardnessBesideWeld,
    HeatAnswer,
    HeatLimits,
    Judged,
    ParentEquivalents,
    PassCooling,
    PassEnergy,
    PreheatAnswer,
    Standing,
)
from .checks import check, check_scope
from .cooling import Cooling, Seam
from .fillet import Laid, fillet
from .hardness import hardness
from .request import (
    FILLETS,
    ROOM_TEMPERATURE,
    Arc,
    Energy,
    HeatRequest,
    parts_of,
    thermal_efficiency,
    thickest_part,
)
from .steel import Lacking, equivalents

_EFFICIENCY = "needs process or efficiency"
_MEASURED = "is not known for a cooling time that was measured"
_METHOD_B = "needs hydrogen, thickness, the CET and the heat input"


def heat(request: HeatRequest) -> Answered[HeatAnswer]:
    """Arc energy, heat input, cooling time, preheat and hardness, and the heat that keeps to a cooling window.

    The request and the answer are in engine units: lengths in mm, energies in kJ/mm, temperatures in degC, times in s.
    A field of the answer that lacks something holds a :class:`Lacks` with the reason. Raises ``Refused`` with every
    fault of the request.
    """
    units = Units(request.common.units)
    remarks, faults = Remarks(units), Faults(units)
    check(request, faults)
    faults.refuse()
    with working() as sheet:
        energy = _energy(request)
        parent = equivalents(request.composition, request.carbon_equivalents)
        asked = _method_b(request, energy, known(parent.cet))
        seam = _seam(request)
        check_scope(request, asked, seam, energy, faults)
        faults.refuse()
        _remark_thickness(request, remarks)
        cooled = _cooled(request, seam, energy, remarks)
        energy_answer = _energy_answer(request, energy, remarks)
        window: Standing | None = None
        if cooled is not None and request.cooling_window is not None:
            window = _within_window(cooled, request.cooling_window, remarks)
        answer = HeatAnswer(
            energy=energy_answer,
            cooling=_cooling_answer(request, energy, cooled),
            limits=_limits(request, seam, energy),
            carbon_equivalents=parent,
            preheat=_preheat(request, asked, parent, energy, remarks),
            hardness=_hardness(request, cooled, remarks),
            fillet=_fillet(request, seam, energy, remarks),
        )
        judged = _judged(request, window, answer)
    return answered(
        "heat",
        request,
        sheet,
        remarks,
        _verdict(judged),
        replace(answer, judged=judged, left_out=tuple(left_out(answer))),
        rule_set=None,
        parameters={} if energy.efficiency is None else {"k": energy.efficiency},
    )


def _energy(request: HeatRequest) -> Energy:
    """Arc energy and heat input, as far as they follow from the request."""
    k = thermal_efficiency(request)
    if k is not None and request.efficiency is None:
        cite(en_1011_1.TABLE_1)
    arc = request.arc
    if arc is None:
        return Energy(None, None, k)
    if arc.heat_input is not None:
        arc_energy = None if k is None else float(en_1011_1.arc_energy_of_heat_input(Q=arc.heat_input, k=k))
        return Energy(arc_energy, arc.heat_input, k)
    energy = arc.arc_energy
    if arc.voltage is not None and arc.current is not None and arc.travel_speed is not None:
        energy = float(en_1011_1.arc_energy(U=arc.voltage, I=arc.current, v=arc.travel_speed, J=en_1011_1.JOULE))
    if energy is None:
        return Energy(None, None, k)
    return Energy(energy, None if k is None else float(en_1011_1.heat_input(k=k, E=energy)), k)


def _seam(request: HeatRequest) -> Seam | None:
    """Seam that cools; None where its plate or its kind is not known."""
    thickest = thickest_part(request)
    if thickest is None or request.seam is None:
        return None
    return Seam(request.seam, thickest, request.preheat)


def _remark_thickness(request: HeatRequest, remarks: Remarks) -> None:
    """Add a caution where two parts may differ in thickness, and one alone is given."""
    if request.seam in FILLETS and (request.thickness is None) != (request.thickest_part is None):
        remarks.caution(
            "one-thickness",
            "One thickness alone is given, so both parts are taken to have it. A thicker part draws the heat away: the"
            " weld cools faster and needs more preheat. Send thickest_part if a part is thicker.",
        )


def _remark_thinner(request: HeatRequest, remarks: Remarks) -> None:
    """Add a caution where a thinner part stays hot for longer than the cooling time says."""
    parts = parts_of(request)
    if parts is not None and not at_least(*parts):
        thin, thick = (remarks.units.text(part) for part in parts)
        remarks.caution(
            "thinner-part-cools-slower",
            f"The cooling time is that of the thickest part, {thick}, which hardens most. The part of {thin} stays hot"
            " longer; send its thickness alone to see whether that is too slow.",
        )


def _method_b(request: HeatRequest, energy: Energy, cet: float | None) -> preheat_of.MethodB | None:
    """Input of method B; None where something it needs is not known."""
    thickest = thickest_part(request)
    if cet is None or thickest is None or request.hydrogen is None or energy.heat_input is None:
        return None
    return preheat_of.MethodB(cet, request.weld_metal_cet, thickest, request.hydrogen, energy.heat_input)


def _cooled(request: HeatRequest, seam: Seam | None, energy: Energy, remarks: Remarks) -> Cooling | None:
    """Cooling time, measured or calculated; None where it follows from nothing."""
    if request.cooling_time is not None:
        return Cooling(Band(request.cooling_time, request.cooling_time))
    if seam is None:
        return None
    if energy.heat_input is None and request.cooling_window is None:
        return None
    remarks.caution(
        "ferritic-only",
        "The cooling times hold for unalloyed and low-alloy ferritic steel only.",
        annex_d_cooling.FERRITIC,
    )
    _remark_thinner(request, remarks)
    remarks.caution("seam-factors", "The seam factors F2 and F3 were taken from memory.", annex_d_cooling.SEAM_FACTORS)
    cite(annex_d_cooling.SEAM_FACTORS)
    if seam.factors.two[0] != seam.factors.two[1]:
        low, high = seam.factors.two
        remarks.caution(
            "factor-band",
            f"F2 of this seam varies from {low:g} to {high:g} with Q/d, along a curve that was not available. The"
            " cooling time is the band between these two values.",
            annex_d_cooling.SEAM_FACTORS,
        )
    return None if energy.heat_input is None else cooling_of.cooling(seam, energy.heat_input)


def _judged(request: HeatRequest, window: Standing | None, answer: HeatAnswer) -> tuple[Judged, ...]:
    """Judge all that can be judged: the window, the preheat and the hardness."""
    judged: list[Judged] = []
    if window is not None:
        judged.append(Judged("window", window))
    preheat = _preheat_standing(request, answer.preheat)
    if preheat is not None:
        judged.append(Judged("preheat", preheat))
    if isinstance(answer.hardness, HardnessBesideWeld) and not isinstance(answer.hardness.standing, Lacks):
        judged.append(Judged("hardness", answer.hardness.standing))
    return tuple(judged)


def _verdict(judged: tuple[Judged, ...]) -> Verdict:
    """First standing that fails; open if one is open; within if all are within; estimated if nothing was judged."""
    standings = [one.standing for one in judged]
    failed = [standing for standing in standings if standing not in ("within", "open")]
    if failed:
        return Verdict(failed[0])
    if not standings:
        return Verdict.ESTIMATED
    return Verdict.OPEN if "open" in standings else Verdict.WITHIN


def _preheat_standing(request: HeatRequest, preheat: PreheatAnswer) -> Standing | None:
    """How the plate stands against its preheat; None where nothing tells it.

    Every rule that gives a temperature has to be met. Method A gives none: where it alone is known and does not free
    the joint of preheat, its charts decide and the standing is open.
    """
    rules = (preheat.method_b, preheat.sew_088, preheat.aws_d1_1)
    met = [rule.met for rule in rules if not isinstance(rule, Lacks)]
    if preheat_of.is_frozen(request.preheat) or not all(met):
        return "short"
    if met:
        return "within"
    by_a = preheat.method_a
    if isinstance(by_a, Lacks) or isinstance(by_a.free_of_preheat, Lacks):
        return None
    return "within" if by_a.free_of_preheat else "open"


def _within_window(cooled: Cooling, window: Band, remarks: Remarks) -> Standing:
    """Judge the cooling time against the window; the whole band must lie in it."""
    low, high = (remarks.units.of(TIME, value)["text"] for value in (cooled.time.least, cooled.time.most))
    time = low if low == high else f"{low} to {high}"
    wanted = " to ".join(remarks.units.of(TIME, value)["text"] for value in (window.least, window.most))
    cools = f"The weld cools from 800 to 500 degC in {time}; the window is {wanted}."
    if not at_least(cooled.time.least, window.least):
        remarks.because(
            f"{cools} That is too fast: the steel becomes hard and may crack when cold. Preheat, or weld with more"
            " heat."
        )
        return "too-fast"
    if not at_least(window.most, cooled.time.most):
        remarks.because(
            f"{cools} That is too slow: the grain becomes coarse and the steel loses toughness. Weld with less heat, or"
            " start from a cooler plate."
        )
        return "too-slow"
    remarks.because(f"{cools} The cooling time is within the window.")
    return "within"


def _energy_answer(request: HeatRequest, energy: Energy, remarks: Remarks) -> PassEnergy | Lacks:
    """Energy by both conventions, or what it needs."""
    if energy.arc_energy is None and energy.heat_input is None:
        return Lacks("needs arc with travel_speed, arc_energy or heat_input")
    if energy.arc_energy is not None and energy.heat_input is not None:
        arc, heat_in = (
            remarks.units.of(ENERGY_PER_LENGTH, value)["text"] for value in (energy.arc_energy, energy.heat_input)
        )
        given = "given" if request.efficiency is not None else "of the process"
        remarks.because(
            f"The arc energy is {arc}; AWS D1.1 and ASME IX call it heat input. The heat input of EN 1011-1 is"
            f" {heat_in}, with the efficiency {energy.efficiency:g} {given}."
        )
        remarks.caution(
            "two-heat-inputs",
            "Compare each limit with the figure of the same convention: the arc energy for AWS and ASME, the heat input"
            " for EN and ISO.",
        )
    return PassEnergy(
        arc_energy=or_lacks(energy.arc_energy, _EFFICIENCY),
        heat_input=or_lacks(energy.heat_input, _EFFICIENCY),
        efficiency=or_lacks(energy.efficiency, _EFFICIENCY),
    )


def _cooling_answer(request: HeatRequest, energy: Energy, cooled: Cooling | None) -> PassCooling | Lacks:
    """Cooling time, or what it needs."""
    if cooled is None:
        needs = _absent(request, "thickness", "seam")
        if energy.heat_input is None:
            needs.append("an arc with its process or efficiency")
        return Lacks(f"needs {_and(needs)}")
    return PassCooling(cooled.time, or_lacks(cooled.flow, _MEASURED), or_lacks(cooled.transition, _MEASURED))


def _absent(request: HeatRequest, *names: str) -> list[str]:
    """Those of some fields that the request does not give."""
    return [name for name in names if getattr(request, name) is None]


def _and(names: list[str]) -> str:
    """Names as a list in a sentence."""
    return " and ".join([", ".join(names[:-1]), names[-1]] if len(names) > 1 else names)


def _limits(request: HeatRequest, seam: Seam | None, energy: Energy) -> HeatLimits | Lacks:
    """Heat input, arc energy and travel speed between which the cooling time stays in the window."""
    if seam is None or request.cooling_window is None:
        return Lacks(f"needs {_and(_absent(request, 'cooling_window', 'thickness', 'seam'))}")
    heat_inputs = cooling_of.heat_input_within(seam, request.cooling_window)
    if heat_inputs is None:
        return Lacks("needs a window that is wider than the band of cooling times")
    k, arc = energy.efficiency, request.arc or Arc()
    energies = speeds = None
    if k is not None:
        energies = Band(_arc_energy("least", heat_inputs.least, k), _arc_energy("most", heat_inputs.most, k))
        if arc.voltage is not None and arc.current is not None:
            # The most heat comes from the lowest speed.
            power = (arc.voltage, arc.current, k)
            speeds = Band(_speed("least", heat_inputs.most, *power), _speed("most", heat_inputs.least, *power))
    return HeatLimits(
        heat_input=heat_inputs,
        arc_energy=or_lacks(energies, _EFFICIENCY),
        travel_speed=or_lacks(speeds, "needs voltage and current, and process or efficiency"),
    )


def _arc_energy(name: str, heat_input: float, k: float) -> float:
    """Arc energy of a heat input, both in kJ/mm."""
    with about(name):
        return float(en_1011_1.arc_energy_of_heat_input(Q=heat_input, k=k))


def _speed(name: str, heat_input: float, voltage: float, current: float, k: float) -> float:
    """Travel speed, mm/s, that gives a heat input."""
    with about(f"{name} speed"):
        return float(en_1011_1.travel_speed(U=voltage, I=current, k=k, Q=heat_input, J=en_1011_1.JOULE))


def _preheat(
    request: HeatRequest,
    asked: preheat_of.MethodB | None,
    parent: ParentEquivalents,
    energy: Energy,
    remarks: Remarks,
) -> PreheatAnswer:
    """Preheat by every rule that the request gives enough for."""
    answer = PreheatAnswer(
        Lacks("needs hydrogen"), Lacks(_METHOD_B), Lacks(_METHOD_B), Lacks("needs preheat_category and thickness")
    )
    if request.hydrogen is not None:
        by_a = preheat_of.method_a(
            known(parent.ce), energy.heat_input, request.hydrogen, _combined(request, remarks), request.preheat, remarks
        )
        answer = replace(answer, method_a=by_a)
    if asked is not None:
        by_b, by_sew = preheat_of.method_b(asked, request.preheat, remarks)
        answer = replace(answer, method_b=by_b, sew_088=by_sew)
        if request.seam in FILLETS:
            remarks.because("A single-run fillet tends to need less preheat than method B gives.")
    thickest = thickest_part(request)
    if request.preheat_category is not None and thickest is not None:
        by_category = preheat_of.aws_d1_1(request.preheat_category, thickest, request.preheat, remarks)
        answer = replace(answer, aws_d1_1=by_category)
    _remark_preheat(request, answer, remarks)
    return answer


def _combined(request: HeatRequest, remarks: Remarks) -> float | None:
    """Combined thickness, mm: the one given, or that of the parts; None where neither is known."""
    parts = parts_of(request)
    if request.combined_thickness is not None or parts is None or request.seam is None:
        return request.combined_thickness
    combined = combined_of.combined(*parts, request.seam)
    remarks.caution(
        "combined-thickness-of-parts",
        f"The combined thickness of {remarks.units.text(combined)} follows from the parts. In a tee the thicker part is"
        " taken to run through.",
        c_2_method_a.COMBINED,
    )
    return combined


def _remark_preheat(request: HeatRequest, answer: PreheatAnswer, remarks: Remarks) -> None:
    """Add a caution where a rule asks for more preheat than the plate has."""
    rules = {
        "EN 1011-2 method B": answer.method_b,
        "SEW 088": answer.sew_088,
        "AWS D1.1": answer.aws_d1_1,
    }
    if preheat_of.is_frozen(request.preheat):
        preheat_of.remark_on_frozen_plate(remarks)
    short = [
        f"{remarks.units.of(TEMPERATURE, rule.temperature)['text']} by {name}"
        for name, rule in rules.items()
        if not isinstance(rule, Lacks) and not rule.met
    ]
    if short:
        start = remarks.units.of(TEMPERATURE, request.preheat)["text"]
        remarks.caution("preheat-short", f"The plate is at {start} when the pass begins; it needs {_and(short)}.")
    by_a, by_b = answer.method_a, answer.method_b
    freed = not isinstance(by_a, Lacks) and by_a.free_of_preheat is True
    if freed and isinstance(by_b, FormulaPreheat) and not by_b.met:
        remarks.caution(
            "methods-differ",
            "Method A asks for no preheat, and method B asks for more than the plate has. The verdict goes by method B,"
            " which is the safe reading.",
        )
    if isinstance(by_b, FormulaPreheat) and by_b.met and request.preheat <= ROOM_TEMPERATURE:
        remarks.because("Method B asks for no preheat: its temperature is below that of the plate.")


def _hardness(request: HeatRequest, cooled: Cooling | None, remarks: Remarks) -> HardnessBesideWeld | Lacks:
    """Hardness beside the weld, or what it needs."""
    if request.composition is None:
        return Lacks("needs composition")
    if cooled is None:
        return Lacks("needs cooling_time, or arc, thickness and seam")
    try:
        beside = hardness(request.composition, cooled.time, request.steel_group, request.heat_treated, remarks)
    except Lacking as lacking:
        return Lacks(str(lacking))
    if not isinstance(beside.standing, Lacks):
        standing = {
            "within": "All of this is within",
            "over": "All of this is over",
            "open": "Part of this is over",
        }
        remarks.because(
            f"The hardness beside the weld is {beside.band.least:.0f} to {beside.band.most:.0f} HV10."
            f" {standing[beside.standing]} the limit of {beside.limit:g} HV10 for steel group {request.steel_group}."
        )
    return beside


def _fillet(request: HeatRequest, seam: Seam | None, energy: Energy, remarks: Remarks) -> FilletHeat | Lacks:
    """Leg of a fillet against its arc energy, or what that needs."""
    if request.seam not in FILLETS or (energy.arc_energy is None and request.leg is None):
        return Lacks(f"needs seam {' or '.join(FILLETS)}, and arc or leg")
    arc = request.arc or Arc()
    laid = Laid(
        energy.arc_energy,
        arc.deposition_rate,
        arc.travel_speed,
        request.leg,
        request.required_leg,
        energy.efficiency,
    )
    return fillet(laid, seam, remarks)
