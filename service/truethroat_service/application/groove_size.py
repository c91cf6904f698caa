"""Use case: groove, flare, plug and slot welds for a load or for full strength, and the preparation they need."""

from dataclasses import dataclass, replace
from math import pi
from typing import Any

from ..engine import loads
from ..engine.formula import Source, about, cite, off_the_sheet, working
from ..engine.numeric import hypot
from ..engine.rounding import at_least, at_most
from ..engine.rule_set import GrooveLoad, PartMetal, RuleSet, Unlisted
from ..engine.units import INCH
from ..practice import groove_fill
from ..standards.aisc_360_22 import j2_2_flare_grooves
from ..standards.en_1993_1_8_2005 import s4_7_butt_welds
from . import grooves
from .answers import Remarks, Units, Verdict, answer
from .faults import Faults
from .groove_checks import check_filler, check_request
from .groove_choice import (
    STANDARDS,
    Detail,
    Need,
    Place,
    Refusal,
    Sized,
    by_form,
    listed,
    ranked,
    size_all,
    size_full,
    size_partial,
)
from .groove_remarks import remark
from .groove_welds import (
    FlareWeld,
    FullWeld,
    GrooveForce,
    GrooveSizeRequest,
    Holes,
    PartialWeld,
    TeeButt,
)
from .hole_welds import dump_holes, holes
from .joint_parts import Metals, metals
from .requested_rules import requested_rules


@dataclass(frozen=True, slots=True)
class _Found:
    """Weld found: throat needed and there (both None where the parts rule), preparations, and what it ends in.

    ``governs`` holds as long as the parts carry the load; ``verdict`` as well.
    """

    verdict: Verdict
    governs: str
    needed: float | None = None
    throat: float | None = None
    specified: float | None = None
    minimum: tuple[float, Source] | None = None
    chosen: Sized | None = None
    preparations: tuple[Sized, ...] = ()
    refused: tuple[Refusal, ...] = ()
    tee: dict[str, Any] | None = None


def groove_size(request: GrooveSizeRequest) -> dict[str, Any]:
    """Answer a request for a groove, flare, plug or slot weld; raises ``Refused`` with every fault found."""
    remarks, units = Remarks(), Units(request.common.units)
    faults = Faults(units)
    with working() as sheet:
        rules, beta_w = requested_rules(request.rule_set, request.parameters, faults)
        check_request(request, rules, faults)
        metal = metals(rules, request.parts, request.filler, beta_w, None, faults, remarks)
        # The directional increase it speaks of belongs to fillets.
        remarks.cautions = [caution for caution in remarks.cautions if caution["code"] != "hollow-section"]
        faults.refuse()
        request = _filled(request)
        load = _load(request, rules, metal)
        check_filler(request, rules, load, metal, faults, remarks)
        faults.refuse()
        if isinstance(request.weld, Holes):
            verdict, result = _holes(request.weld, request, rules, metal, units, remarks)
        else:
            verdict, result = _groove(request, rules, metal, load, units, faults, remarks)
    return answer(
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
    if isinstance(weld, Holes) and weld.filling is None:
        return replace(request, weld=replace(weld, filling=request.parts[1].thickness))
    return request


def _load(request: GrooveSizeRequest, rules: RuleSet, metal: Metals) -> GrooveLoad:
    """Force per length on all sides of the groove together; plugs and slots have none."""
    load = request.load
    if isinstance(request.weld, Holes):
        return GrooveLoad(0.0, 0.0, 0.0)
    if isinstance(load, GrooveForce):
        assert load.length is not None and load.angle is not None  # noqa: S101 - refused before
        per_length = loads.force_per_length(P=load.force, m=1.0, L=load.length)
        along = float(loads.along(f=per_length, theta=load.angle))
        return GrooveLoad(float(loads.off_part_1(f=per_length, theta=load.angle, psi=pi / 2)), 0.0, along)
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
    """Verdict and fields of the answer for plugs or slots."""
    assert isinstance(request.load, GrooveForce)  # noqa: S101 - refused before
    force = abs(request.load.force)
    found = holes(weld, request.parts[1].thickness, force, rules, metal.weld)
    each, name = units.force(found.strength)["text"], f"{weld.kind}s"
    remarks.because(f"One carries {each} in shear on the faying surface; the force needs {found.needed} {name}.")
    remarks.caution(
        "base-metal-not-checked",
        "The parts beside and behind the holes are not checked here; neither is any pull out of the faying surface,"
        f" which {weld.kind} welds must not be given.",
    )
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
    if isinstance(weld, PartialWeld):
        found = _partial(weld, request, rules, metal, judged, units, faults)
    elif isinstance(weld, FullWeld):
        found = _full(weld, request, rules, units)
    elif isinstance(weld, FlareWeld):
        found = _flare(weld, request, rules, metal, judged, units, faults)
    else:
        assert isinstance(weld, TeeButt)  # noqa: S101 - holes are answered apart
        found = _tee(weld, request, rules, metal, judged, units)
    for number, share in enumerate(used, start=1):
        if not at_most(share, 1.0):
            remarks.because(f"Part {number} fails beside the weld before any weld does: {share:.0%} of it is used.")
            found = replace(found, verdict=Verdict.CANNOT_BE_REACHED, governs="base-metal")
    _because(found, units, remarks)
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


def _throat_needed(load: GrooveLoad, rules: RuleSet, metal: Metals) -> float:
    """Throat the weld metal needs, mm."""
    assert rules.groove_weld is not None  # noqa: S101 - as above
    if load.resultant == 0.0:
        return 0.0
    return float(rules.groove_weld.partial_throat(load, metal.weld))


def _partial(
    weld: PartialWeld,
    request: GrooveSizeRequest,
    rules: RuleSet,
    metal: Metals,
    load: GrooveLoad,
    units: Units,
    faults: Faults,
) -> _Found:
    """Partial-penetration groove: the throat for the load, then the preparation with the least metal."""
    if weld.reinforcing_fillet > 0.0:
        # The throat stands at a slant to the force: all of it taken as shear is the safe reading.
        load = GrooveLoad(0.0, float(hypot(load.normal, load.transverse)), load.longitudinal)
    if rules.family == "en":
        cite(s4_7_butt_welds.PARTIAL_PENETRATION)
    needed = _throat_needed(load, rules, metal)
    minimum = rules.groove.minimum_throat(request.thinner)
    assert weld.depth_step is not None  # noqa: S101 - filled in before
    need = Need(needed, 0.0 if minimum is None else minimum[0], weld.depth_step)
    place = _place(request)
    with off_the_sheet():
        found, refused = _sized(weld, place, need, rules, units, faults, request)
    chosen = found[0] if found and found[0].why is None else None
    if chosen is not None:
        with about(chosen.detail.form):
            size_partial(chosen.detail, weld, place, need, rules, units)
        _cite(chosen.detail)
    sides = float(found[0].detail.sides) if found else 1.0
    by_least = not at_most(need.least, needed / sides)
    if chosen is not None:
        verdict = Verdict.ENOUGH
    else:
        verdict = Verdict.FULL_PENETRATION_NEEDED if any(one.deeper for one in found) else Verdict.CANNOT_BE_REACHED
    return _Found(
        verdict=verdict,
        governs="preparation" if not found else "minimum-throat" if by_least else request.basis,
        needed=needed,
        throat=None if chosen is None else chosen.throat,
        specified=None if chosen is None else chosen.throat,
        minimum=minimum,
        chosen=chosen,
        preparations=tuple(found),
        refused=tuple(refused),
    )


def _sized(
    weld: PartialWeld,
    place: Place,
    need: Need,
    rules: RuleSet,
    units: Units,
    faults: Faults,
    request: GrooveSizeRequest,
) -> tuple[list[Sized], list[Refusal]]:
    """Preparations that the joint allows, sized, and those it does not; by form where the standard details none."""
    details, refused = listed(weld, place, STANDARDS[rules.family], units)
    found, more, unlisted = size_all(details, weld, place, need, rules, units)
    refused += more
    if not found and (weld.groove is not None or rules.family == "en"):
        found, more, unlisted = size_all(by_form(weld, place), weld, place, need, rules, units)
        refused += more
    elif weld.groove == "square" and weld.proven > 0.0:
        found = ranked([*found, *size_all(by_form(weld, place), weld, place, need, rules, units)[0]])
    if not found and weld.groove_angle is not None:
        _refuse_unlisted(unlisted, faults)
    if not found and weld.groove == "square" and not weld.proven:
        refused.append(Refusal(None, "square", "a square edge keeps only what is proven to fuse: send penetration"))
    return found, refused


def _refuse_unlisted(unlisted: list[Unlisted], faults: Faults) -> None:
    """Refuse an angle asked for that the rules do not list; process and position were looked at before."""
    for _, text in dict.fromkeys(fault for error in unlisted for fault in error.faults):
        faults.out_of_scope("#/weld/groove_angle", text)
    faults.refuse()


def _full(weld: FullWeld, request: GrooveSizeRequest, rules: RuleSet, units: Units) -> _Found:
    """Full-penetration groove: as strong as the weaker part, by the preparation with the least metal."""
    cite(
        s4_7_butt_welds.FULL_PENETRATION
        if rules.family == "en"
        else Source("ANSI/AISC 360-22", "Table J2.5, complete penetration")
    )
    place = _place(request)
    with off_the_sheet():
        details, refused = listed(weld, place, STANDARDS[rules.family], units)
        found = ranked(size_full(detail, place, request.thinner) for detail in details)
    chosen = found[0] if found else None
    if chosen is not None:
        with about(chosen.detail.form):
            size_full(chosen.detail, place, request.thinner)
        _cite(chosen.detail)
    return _Found(
        verdict=Verdict.ENOUGH,
        governs="full-penetration",
        specified=request.thinner,
        chosen=chosen,
        preparations=tuple(found),
        refused=tuple(refused),
    )


def _flare(
    weld: FlareWeld,
    request: GrooveSizeRequest,
    rules: RuleSet,
    metal: Metals,
    load: GrooveLoad,
    units: Units,
    faults: Faults,
) -> _Found:
    """Flare groove: its throat by the radius, against the throat the load needs."""
    assert rules.groove_weld is not None  # noqa: S101 - as above
    try:
        flush = rules.groove_weld.flare_throat(weld.kind, weld.radius, _place(request).process_id)
    except Unlisted as unlisted:
        for name, text in unlisted.faults:
            missing = name == "process" and request.process is None
            (faults.inconsistent if missing else faults.out_of_scope)(f"#/{name}", text)
        faults.refuse()
        raise
    throat = max(float(j2_2_flare_grooves.below_flush(a_e=flush, b=weld.below_flush)), 0.0)
    needed = _throat_needed(load, rules, metal)
    minimum = rules.groove.minimum_throat(request.thinner)
    least = 0.0 if minimum is None else minimum[0]
    enough = at_least(throat, max(needed, least))
    halves = 2.0 if weld.kind == "flare-v" else 1.0
    area = float(groove_fill.flare_fill(k=halves, R=weld.radius, h=weld.radius - weld.below_flush))
    detail = Detail(None, "Table J2.2", "ANSI/AISC 360-22", weld.kind, "open", None, 0.0, 0.0)
    why = None if enough else f"its throat of {units.text(throat)} is under {units.text(max(needed, least))}"
    made = Sized(detail, None, None, None, None, 0.0, throat, area, why)
    return _Found(
        verdict=Verdict.ENOUGH if enough else Verdict.CANNOT_BE_REACHED,
        governs="minimum-throat" if least > needed else request.basis,
        needed=needed,
        throat=throat,
        specified=throat if enough else None,
        minimum=minimum,
        chosen=made if enough else None,
        preparations=(made,),
    )


def _tee(
    weld: TeeButt, request: GrooveSizeRequest, rules: RuleSet, metal: Metals, load: GrooveLoad, units: Units
) -> _Found:
    """T-butt as welded: full strength by 4.7.3(1), or else what both throats are worth as partial penetration."""
    first, second = weld.throats
    full = s4_7_butt_welds.tee_is_full_strength(first, second, request.through, weld.unwelded)
    most = s4_7_butt_welds.largest_unwelded(t=request.through, c_3=s4_7_butt_welds.LARGEST_UNWELDED)
    tee = {
        "throats_together": units.length(first + second),
        "thickness": units.length(request.through),
        "unwelded": units.length(weld.unwelded),
        "largest_unwelded": units.length(float(most)),
        "full_strength": full,
    }
    if full:
        return _Found(Verdict.ENOUGH, "full-penetration", specified=first + second, tee=tee)
    shear = GrooveLoad(0.0, float(hypot(load.normal, load.transverse)), load.longitudinal)
    needed = _throat_needed(shear, rules, metal)
    enough = at_least(first + second, needed)
    return _Found(
        Verdict.ENOUGH if enough else Verdict.SHORT,
        request.basis,
        needed=needed,
        throat=first + second,
        specified=first + second if enough else None,
        tee=tee,
    )


def _place(request: GrooveSizeRequest) -> Place:
    """Where the weld is made."""
    coded = grooves.coded("single-bevel", 0.0, request.process, request.position)
    return Place(
        request.joint.kind, request.through, request.process, request.position, coded.process, coded.orientation
    )


def _cite(detail: Detail) -> None:
    """Cite a listed detail."""
    if detail.source is not None:
        cite(detail.source)


def _because(found: _Found, units: Units, remarks: Remarks) -> None:
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
        remarks.because(
            f"The least throat of {units.text(found.minimum[0])} of each side sets the size ({found.minimum[1]})."
        )
    if found.governs == "full-penetration" and found.tee is None:
        remarks.because("A full penetration is as strong as the weaker part.")
    if found.chosen is None:
        reasons = [f"{one.detail.id or one.detail.form}: {one.why}" for one in found.preparations if one.why]
        remarks.reasons.extend(reasons)
        if found.governs == "preparation":
            remarks.because("No preparation fits; see refused.")


def _result(
    found: _Found,
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
        "utilisation": None if not enough and weld_use is None else max(weld_use or 0.0, *used),
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


def _specified_by(found: _Found) -> str:
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
