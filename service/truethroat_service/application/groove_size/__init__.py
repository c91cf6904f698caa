"""Use case: groove, flare, plug and slot welds for a load or for full strength, and the preparation they need."""

from dataclasses import replace
from math import pi

from ...engine import loads
from ...engine.formula import about, working
from ...engine.numeric import Real, hypot
from ...engine.rounding import SAME, at_most
from ...engine.rule_set import GrooveLoad, PartMetal, RuleSet
from ...standards.en_1993_1_8_2005 import s4_7_butt_welds
from ..core.answers import Answered, answered
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints.given import usual_depth_step
from ..joints.metals import Metals, metals
from ..joints.rule_sets import chosen
from .answer import GrooveSizeAnswer, GrooveStrength, GrooveThroat
from .checks import check_filler, check_request
from .holes import holes, welded_holes
from .remarks import remark
from .request import GrooveForce, GrooveSizeRequest, Holes, PartialWeld
from .sizing import SizedGroove, size_weld


def groove_size(request: GrooveSizeRequest) -> Answered[GrooveSizeAnswer]:
    """How much groove, plug or slot is enough, and the preparation it needs.

    Lengths are in mm, forces in N, angles in rad. Raises ``Refused`` with every fault found.
    """
    units = Units(request.common.units)
    remarks, faults = Remarks(units), Faults(units)
    with working() as sheet:
        rules, beta_w = chosen(request.rule_set, request.parameters, faults)
        check_request(request, rules, faults)
        metal = metals(rules, request.parts, request.filler, beta_w, None, faults, remarks, request.process)
        # The directional increase it speaks of belongs to fillets.
        remarks.cautions = [caution for caution in remarks.cautions if caution.code != "hollow-section"]
        faults.refuse()
        request = _filled(request)
        load = _load(request, rules, metal)
        check_filler(request, rules, load, metal, faults, remarks)
        faults.refuse()
        if isinstance(request.weld, Holes):
            verdict, answer = _holes(request.weld, request, rules, metal, remarks)
        else:
            verdict, answer = _groove(request, rules, metal, load, faults, remarks)
    return answered(
        "groove_size",
        request,
        sheet,
        remarks,
        verdict,
        answer,
        rule_set=rules.id,
        parameters=rules.parameters,
    )


def _filled(request: GrooveSizeRequest) -> GrooveSizeRequest:
    """Request with the defaults that hang on its units and parts."""
    weld = request.weld
    if isinstance(weld, PartialWeld) and weld.depth_step is None:
        return replace(request, weld=replace(weld, depth_step=usual_depth_step(request.common.units)))
    if isinstance(weld, Holes) and weld.leg is None and weld.filling is None:
        return replace(request, weld=replace(weld, filling=request.parts[1].thickness))
    return request


def _load(request: GrooveSizeRequest, rules: RuleSet, metal: Metals) -> GrooveLoad:
    """Force per length on all sides of the groove together; welds in holes have none."""
    load = request.load
    if isinstance(request.weld, Holes):
        return GrooveLoad(0.0, 0.0, 0.0)
    if isinstance(load, GrooveForce):
        assert load.length is not None and load.angle is not None  # noqa: S101 - refused before
        per_length = loads.force_per_length(P=load.force, m=1.0, L=load.length)
        along = float(loads.along(f=per_length, theta=load.angle))
        across = float(loads.off_part_1(f=per_length, theta=load.angle, psi=pi / 2))
        # The cosine of a right angle is not quite nothing, and a force straight across has no shear.
        return GrooveLoad(across, 0.0, along if abs(along) > SAME * abs(across) else 0.0)
    if load is not None:
        return GrooveLoad(load.normal, load.transverse, load.longitudinal)
    assert rules.parts is not None  # noqa: S101 - practice without strength is not offered
    strengths = []
    for number, part in enumerate(metal.parts, start=1):
        with about(f"part {number}"):
            strengths.append(float(rules.parts.across(part)))
    return GrooveLoad(min(strengths), 0.0, 0.0)


def _holes(
    weld: Holes, request: GrooveSizeRequest, rules: RuleSet, metal: Metals, remarks: Remarks
) -> tuple[Verdict, GrooveSizeAnswer]:
    """Verdict and fields of the answer for welds in holes or slots."""
    assert isinstance(request.load, GrooveForce)  # noqa: S101 - refused before
    force = abs(request.load.force)
    sized, units = holes(weld, request, force, rules, metal.weld), remarks.units
    each = units.force(sized.strength)["text"]
    remarks.because(f"One carries {each} in shear on the faying surface; the force needs {weld.counted(sized.needed)}.")
    remarks.caution(
        "base-metal-not-checked",
        "The parts beside and behind the holes are not checked. These welds must carry shear on the faying surface"
        " only, and no tension across it.",
    )
    if sized.limited:
        remarks.because("The fillet nearly fills the hole, so that at most the area of the hole counts.")
    if sized.count > 1 and weld.pitch is None and sized.limits.least_pitch is not None:
        least = units.text(sized.limits.least_pitch)
        remarks.caution("pitch-not-checked", f"The centres must be at least {least} apart.", sized.limits.source)
    answer = GrooveSizeAnswer(
        required=None,
        minimum=None,
        specify=None,
        governs="load",
        utilisation=sized.utilisation,
        strength=None,
        preparation=None,
        preparations=(),
        refused=(),
        holes=welded_holes(sized, weld),
        tee=None,
    )
    return Verdict.ENOUGH if sized.enough else Verdict.SHORT, answer


def _groove(
    request: GrooveSizeRequest,
    rules: RuleSet,
    metal: Metals,
    load: GrooveLoad,
    faults: Faults,
    remarks: Remarks,
) -> tuple[Verdict, GrooveSizeAnswer]:
    """Verdict and fields of the answer for a groove of any kind."""
    weld = request.weld
    judged = replace(load, normal=0.0) if isinstance(weld, PartialWeld) and weld.bears else load
    strengths, used = _base_metal(judged, rules, metal)
    sized = size_weld(request, rules, metal, judged, remarks.units, faults)
    for number, share in enumerate(used, start=1):
        if not at_most(share, 1.0):
            remarks.because(
                f"Part {number} fails beside the weld before the weld does: the load uses {share:.0%} of its strength."
            )
            sized = replace(sized, verdict=Verdict.CANNOT_BE_REACHED, governs="base-metal")
    _because(sized, weld.depth_tolerance if isinstance(weld, PartialWeld) else 0.0, remarks)
    remark(request, rules, load, sized.chosen, remarks)
    return sized.verdict, _answer(sized, judged, strengths, used)


def _base_metal(
    load: GrooveLoad, rules: RuleSet, metal: Metals
) -> tuple[tuple[float, float] | None, tuple[float, float]]:
    """Strength of each part beside the weld in the direction of the load (None without one), and the use made of it.

    Each part takes the whole force on its thickness once; what shears the throat shears the part.
    """
    assert rules.parts is not None and rules.groove_weld is not None  # noqa: S101 - as above
    if load.resultant == 0.0:
        return None, (0.0, 0.0)
    strengths, used = [], []
    for number, part in enumerate(metal.parts, start=1):
        with about(f"part {number}"):
            across = rules.parts.across(part) if load.normal >= 0.0 else _pressed(rules, part)
            use = loads.base_metal_utilisation(
                l=hypot(load.transverse, load.longitudinal),
                x=abs(load.normal),
                r_shear=rules.parts.along(part),
                r_tension=across,
            )
        used.append(float(use))
        strengths.append(load.resultant / float(use))
    return (strengths[0], strengths[1]), (used[0], used[1])


def _pressed(rules: RuleSet, part: PartMetal) -> Real:
    """Strength of a part in compression, N/mm."""
    assert rules.parts is not None and rules.groove_weld is not None  # noqa: S101 - as above
    strength = rules.groove_weld.compression(part)
    return rules.parts.across(part) if strength is None else strength


def _because(sized: SizedGroove, tolerance: float, remarks: Remarks) -> None:
    """Say what set the size, or what stands in its way."""
    units, tee = remarks.units, sized.tee
    if tee is not None:
        is_full = "counts" if tee.full_strength else "does not count"
        remarks.because(
            f"The T-butt {is_full} as full strength: throats of {units.text(tee.throats_together)} for"
            f" {units.text(tee.thickness)} of thickness, and an unwelded gap of {units.text(tee.unwelded)} of at most"
            f" {units.text(tee.largest_unwelded)} ({s4_7_butt_welds.TEE})."
        )
    if sized.needed is not None:
        remarks.because(f"The weld metal needs {units.text(sized.needed)} of throat, all sides together.")
    if sized.governs == "minimum-throat" and sized.minimum is not None:
        least = f"The least throat of {units.text(sized.minimum[0])} of each side"
        does = "sets the size" if tee is None else "is not kept"
        remarks.because(f"{least} {does} ({sized.minimum[1]}).")
    if sized.chosen is not None and sized.chosen.depth == 0.0:
        remarks.because("The proven penetration keeps the throat by itself, so no preparation is needed.")
    if tolerance > 0.0 and sized.chosen is not None:
        remarks.because(
            f"The depth covers its tolerance of {units.text(tolerance)}: a groove that much shallower keeps the throat."
            if sized.chosen.depth
            else "Nothing is cut, so the tolerance of the depth takes nothing off."
        )
    if sized.governs == "full-penetration" and tee is None:
        remarks.because("A full penetration is as strong as the weaker part.")
    if sized.chosen is None:
        reasons = [f"{one.detail.id or one.detail.form}: {one.why}" for one in sized.preparations if one.why]
        remarks.reasons.extend(reasons)
        if sized.governs == "preparation":
            remarks.because("No preparation fits. The reasons are in refused.")


def _answer(
    sized: SizedGroove, load: GrooveLoad, strengths: tuple[float, float] | None, used: tuple[float, float]
) -> GrooveSizeAnswer:
    """Fields of the answer for a groove."""
    chosen, enough = sized.chosen, sized.verdict is Verdict.ENOUGH
    weld_use = weld_strength = None
    if sized.needed is not None and sized.throat is not None:
        weld_use = sized.needed / max(sized.throat, 1e-9)
        if sized.needed > 0.0:
            weld_strength = load.resultant / weld_use
    first = chosen or (sized.preparations[0] if sized.preparations else None)
    lost = None if first is None or first.depth is None else first.deduction
    minimum = None
    if sized.minimum is not None:
        least, source = sized.minimum
        minimum = GrooveThroat(least, None if lost is None else least + lost, str(source))
    return GrooveSizeAnswer(
        required=None
        if sized.needed is None
        else GrooveThroat(sized.needed, None if first is None else first.needed_depth, "weld metal"),
        minimum=minimum,
        specify=None
        if not enough or sized.specified is None
        else GrooveThroat(sized.specified, None if chosen is None else chosen.depth, _specified_by(sized)),
        governs=sized.governs,
        utilisation=None if sized.needed is not None and weld_use is None else max(weld_use or 0.0, *used),
        strength=None if strengths is None else GrooveStrength(weld_strength, strengths),
        preparation=chosen.preparation() if enough and chosen is not None else None,
        preparations=tuple(one.preparation() for one in sized.preparations),
        refused=sized.refused,
        holes=None,
        tee=sized.tee,
    )


def _specified_by(sized: SizedGroove) -> str:
    """Where the size to specify comes from."""
    if sized.tee is not None:
        return "as given"
    if sized.governs == "full-penetration":
        return "thickness of the thinner part"
    if sized.chosen is not None and sized.chosen.depth is not None:
        return "depth rounded up to the step"
    return "throat of the groove"
