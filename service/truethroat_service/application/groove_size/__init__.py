"""Use case: groove, flare, plug and slot welds for a load or for full strength, and the preparation they need."""

from dataclasses import replace
from math import pi
from typing import Any

from ...engine import loads
from ...engine.formula import about, working
from ...engine.numeric import hypot
from ...engine.rounding import SAME, at_most
from ...engine.rule_set import GrooveLoad, PartMetal, RuleSet
from ...engine.units import INCH
from ...standards.en_1993_1_8_2005 import s4_7_butt_welds
from ..core.answers import Answered, answered
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints.metals import Metals, metals
from ..joints.rule_sets import chosen
from .checks import check_filler, check_request
from .holes import dump_holes, holes
from .remarks import remark
from .request import GrooveForce, GrooveSizeRequest, Holes, PartialWeld
from .sizing import Found, size_weld


def groove_size(request: GrooveSizeRequest) -> Answered[dict[str, Any]]:
    """Answer a request for a groove, flare, plug or slot weld; raises ``Refused`` with every fault found."""
    units = Units(request.common.units)
    remarks = Remarks(units)
    faults = Faults(units)
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
            verdict, result = _holes(request.weld, request, rules, metal, units, remarks)
        else:
            verdict, result = _groove(request, rules, metal, load, units, faults, remarks)
    return answered(
        "groove_size",
        request,
        sheet,
        remarks,
        verdict,
        result,
        rule_set=rules.id,
        parameters=rules.parameters,
    )


def _filled(request: GrooveSizeRequest) -> GrooveSizeRequest:
    """Request with the defaults that hang on its units and parts."""
    weld = request.weld
    if isinstance(weld, PartialWeld) and weld.depth_step is None:
        return replace(request, weld=replace(weld, depth_step=INCH / 32 if request.common.units == "us" else 0.5))
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
    weld: Holes, request: GrooveSizeRequest, rules: RuleSet, metal: Metals, units: Units, remarks: Remarks
) -> tuple[Verdict, dict[str, Any]]:
    """Verdict and fields of the answer for welds in holes or slots."""
    assert isinstance(request.load, GrooveForce)  # noqa: S101 - refused before
    force = abs(request.load.force)
    found = holes(weld, request, force, rules, metal.weld)
    each = units.force(found.strength)["text"]
    remarks.because(f"One carries {each} in shear on the faying surface; the force needs {weld.counted(found.needed)}.")
    remarks.caution(
        "base-metal-not-checked",
        "The parts beside and behind the holes are not checked here; neither is any pull out of the faying surface,"
        + (f" which {weld.kind} welds must not be given." if weld.leg is None else " which these fillets are not for."),
    )
    if found.limited:
        remarks.because("The fillet closes in on the middle: no more than the area of the hole counts.")
    if found.count > 1 and weld.pitch is None and found.limits.least_pitch is not None:
        least = units.text(found.limits.least_pitch)
        remarks.caution("pitch-not-checked", f"Centres must be {least} apart or more.", found.limits.source)
    nothing: dict[str, Any] = dict.fromkeys(("required", "minimum", "specify", "strength", "preparation", "tee"))
    result: dict[str, Any] = {
        **nothing,
        "governs": "load",
        "utilisation": found.utilisation,
        "preparations": [],
        "refused": [],
        "holes": dump_holes(found, weld, units),
    }
    return Verdict.ENOUGH if found.enough else Verdict.SHORT, result


def _groove(
    request: GrooveSizeRequest,
    rules: RuleSet,
    metal: Metals,
    load: GrooveLoad,
    units: Units,
    faults: Faults,
    remarks: Remarks,
) -> tuple[Verdict, dict[str, Any]]:
    """Verdict and fields of the answer for a groove of any kind."""
    weld = request.weld
    judged = replace(load, normal=0.0) if isinstance(weld, PartialWeld) and weld.bears else load
    strengths, used = _base_metal(judged, rules, metal)
    found = size_weld(request, rules, metal, judged, units, faults)
    for number, share in enumerate(used, start=1):
        if not at_most(share, 1.0):
            remarks.because(f"Part {number} fails beside the weld before any weld does: {share:.0%} of it is used.")
            found = replace(found, verdict=Verdict.CANNOT_BE_REACHED, governs="base-metal")
    _because(found, weld.depth_tolerance if isinstance(weld, PartialWeld) else 0.0, units, remarks)
    remark(request, rules, load, found.chosen, units, remarks)
    return found.verdict, _result(found, judged, strengths, used, units)


def _base_metal(load: GrooveLoad, rules: RuleSet, metal: Metals) -> tuple[tuple[float, ...] | None, tuple[float, ...]]:
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
    return tuple(strengths), tuple(used)


def _pressed(rules: RuleSet, part: PartMetal) -> Any:
    """Strength of a part in compression, N/mm."""
    assert rules.parts is not None and rules.groove_weld is not None  # noqa: S101 - as above
    strength = rules.groove_weld.compression(part)
    return rules.parts.across(part) if strength is None else strength


def _because(found: Found, tolerance: float, units: Units, remarks: Remarks) -> None:
    """Say what set the size, or what stands in its way."""
    if found.tee is not None:
        is_full = "counts" if found.tee["full_strength"] else "does not count"
        remarks.because(
            f"The T-butt {is_full} as full strength: throats of {found.tee['throats_together']['text']} for"
            f" {found.tee['thickness']['text']}, unwelded {found.tee['unwelded']['text']} of at most"
            f" {found.tee['largest_unwelded']['text']} ({s4_7_butt_welds.TEE})."
        )
    if found.needed is not None:
        remarks.because(f"The weld metal needs {units.text(found.needed)} of throat, all sides together.")
    if found.governs == "minimum-throat" and found.minimum is not None:
        least = f"The least throat of {units.text(found.minimum[0])} of each side"
        does = "sets the size" if found.tee is None else "is not kept"
        remarks.because(f"{least} {does} ({found.minimum[1]}).")
    if found.chosen is not None and found.chosen.depth == 0.0:
        remarks.because("The proven penetration keeps the throat by itself: no preparation is needed.")
    if tolerance > 0.0 and found.chosen is not None:
        remarks.because(
            f"The tolerance of {units.text(tolerance)} is in the depth: that much shallower it still keeps the throat."
            if found.chosen.depth
            else "Nothing is cut, so the depth's tolerance takes nothing off."
        )
    if found.governs == "full-penetration" and found.tee is None:
        remarks.because("A full penetration is as strong as the weaker part.")
    if found.chosen is None:
        reasons = [f"{one.detail.id or one.detail.form}: {one.why}" for one in found.preparations if one.why]
        remarks.reasons.extend(reasons)
        if found.governs == "preparation":
            remarks.because("No preparation fits; see refused.")


def _result(
    found: Found,
    load: GrooveLoad,
    strengths: tuple[float, ...] | None,
    used: tuple[float, ...],
    units: Units,
) -> dict[str, Any]:
    """Fields of the answer for a groove."""
    chosen, enough = found.chosen, found.verdict is Verdict.ENOUGH
    weld_use = weld_strength = None
    if found.needed is not None and found.throat is not None:
        weld_use = found.needed / max(found.throat, 1e-9)
        if found.needed > 0.0:
            weld_strength = load.resultant / weld_use
    first = chosen or (found.preparations[0] if found.preparations else None)
    lost = None if first is None or first.depth is None else first.deduction
    minimum = None
    if found.minimum is not None:
        least, source = found.minimum
        minimum = _size(least, None if lost is None else least + lost, str(source), units)
    return {
        "required": None
        if found.needed is None
        else _size(found.needed, None if first is None else first.needed_depth, "weld metal", units),
        "minimum": minimum,
        "specify": None
        if not enough or found.specified is None
        else _size(found.specified, None if chosen is None else chosen.depth, _specified_by(found), units),
        "governs": found.governs,
        "utilisation": None if found.needed is not None and weld_use is None else max(weld_use or 0.0, *used),
        "strength": None
        if strengths is None
        else {
            "weld": None if weld_strength is None else units.force_per_length(weld_strength),
            "base_metal": [units.force_per_length(strength) for strength in strengths],
        },
        "preparation": chosen.dump(units) if enough and chosen is not None else None,
        "preparations": [one.dump(units) for one in found.preparations],
        "refused": [refusal.dump() for refusal in found.refused],
        "holes": None,
        "tee": found.tee,
    }


def _specified_by(found: Found) -> str:
    """Where the size to specify comes from."""
    if found.tee is not None:
        return "as given"
    if found.governs == "full-penetration":
        return "thickness of the thinner part"
    if found.chosen is not None and found.chosen.depth is not None:
        return "depth rounded up to the step"
    return "throat of the groove"


def _size(throat: float, depth: float | None, source: str, units: Units) -> dict[str, Any]:
    """Size as an answer shows it."""
    return {
        "throat": units.length(throat),
        "depth": None if depth is None else units.length(depth),
        "source": source,
    }
