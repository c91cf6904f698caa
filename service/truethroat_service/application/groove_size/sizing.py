"""Sizing of grooves: the throat a load needs, and what each kind of weld and preparation gives for it."""

from dataclasses import dataclass

from ...engine.formula import Source, about, cite, off_the_sheet
from ...engine.numeric import hypot
from ...engine.rounding import at_least, at_most
from ...engine.rule_set import GrooveLoad, RuleSet, Unlisted
from ...practice import groove_fill
from ...standards.aisc_360_22 import j2_2_flare_grooves
from ...standards.en_1993_1_8_2005 import s4_7_butt_welds
from ..core.codes import Verdict
from ..core.faults import Faults, Refused
from ..core.units import Units
from ..joints import grooves
from ..joints.metals import Metals
from .answer import Governs, RefusedPreparation, TeeButtStrength
from .preparations import (
    Detail,
    Need,
    Place,
    SizedDetail,
    by_form,
    listed,
    ranked,
    size_all,
    size_full,
    size_partial,
)
from .request import FlareWeld, FullWeld, GrooveSizeRequest, PartialWeld, TeeButt


@dataclass(frozen=True, slots=True)
class SizedGroove:
    """Groove as it comes out: throat needed and there (both None where the parts rule), preparations and verdict.

    ``governs`` holds as long as the parts carry the load; ``verdict`` as well.
    """

    verdict: Verdict
    governs: Governs
    needed: float | None = None
    throat: float | None = None
    specified: float | None = None
    minimum: tuple[float, Source] | None = None
    chosen: SizedDetail | None = None
    preparations: tuple[SizedDetail, ...] = ()
    refused: tuple[RefusedPreparation, ...] = ()
    tee: TeeButtStrength | None = None


def size_weld(
    request: GrooveSizeRequest, rules: RuleSet, metal: Metals, load: GrooveLoad, units: Units, faults: Faults
) -> SizedGroove:
    """Size a groove of any kind; raises ``Refused`` for what the rules' tables do not list."""
    weld = request.weld
    if isinstance(weld, PartialWeld):
        return _partial(weld, request, rules, metal, load, units, faults)
    if isinstance(weld, FullWeld):
        return _full(weld, request, rules, units)
    if isinstance(weld, FlareWeld):
        return _flare(weld, request, rules, metal, load, units, faults)
    assert isinstance(weld, TeeButt)  # noqa: S101 - holes are answered apart
    return _tee(weld, request, rules, metal, load)


def _throat_needed(load: GrooveLoad, rules: RuleSet, metal: Metals) -> float:
    """Throat the weld metal needs, mm."""
    assert rules.groove_weld is not None  # noqa: S101 - practice without strength is not offered
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
) -> SizedGroove:
    """Partial-penetration groove: the throat for the load, then the preparation with the least metal."""
    if weld.reinforcing_fillet > 0.0:
        # The throat stands at a slant to the force: all of it taken as shear is the safe reading.
        load = GrooveLoad(0.0, float(hypot(load.normal, load.transverse)), load.longitudinal)
    if rules.grooves.partial is not None:
        cite(rules.grooves.partial)
    needed = _throat_needed(load, rules, metal)
    minimum = rules.groove.minimum_throat(request.thinner)
    assert weld.depth_step is not None  # noqa: S101 - filled in before
    need = Need(needed, 0.0 if minimum is None else minimum[0], weld.depth_step)
    place = _place(request)
    with off_the_sheet():
        fitting, refused = _sized(weld, place, need, rules, units, faults, request)
    chosen = fitting[0] if fitting and fitting[0].why is None else None
    if fitting:
        # The sheet shows the one chosen or, where none will do, the first of those.
        with about(fitting[0].detail.form):
            size_partial(fitting[0].detail, weld, place, need, rules, units)
        _cite(fitting[0].detail)
    sides = float(fitting[0].detail.sides) if fitting else 1.0
    by_least = not at_most(need.least, needed / sides)
    if chosen is not None:
        verdict = Verdict.ENOUGH
    else:
        verdict = Verdict.FULL_PENETRATION_NEEDED if any(one.deeper for one in fitting) else Verdict.CANNOT_BE_REACHED
    return SizedGroove(
        verdict=verdict,
        governs="preparation" if not fitting else "minimum-throat" if by_least else request.basis,
        needed=needed,
        throat=None if chosen is None else chosen.throat,
        specified=None if chosen is None else chosen.throat,
        minimum=minimum,
        chosen=chosen,
        preparations=tuple(fitting),
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
) -> tuple[list[SizedDetail], list[RefusedPreparation]]:
    """Preparations that the joint allows, sized, and those it does not; by form where the standard details none."""
    details, refused = listed(weld, place, rules.grooves.details, units)
    fitting, more, unlisted = size_all(details, weld, place, need, rules, units)
    refused += more
    if not fitting and (weld.groove is not None or rules.grooves.by_form):
        fitting, more, unlisted = size_all(by_form(weld, place), weld, place, need, rules, units)
        refused += more
    elif weld.groove == "square" and weld.proven > 0.0:
        fitting = ranked([*fitting, *size_all(by_form(weld, place), weld, place, need, rules, units)[0]])
    if not fitting and weld.groove_angle is not None:
        _refuse_unlisted(unlisted, faults)
    if not fitting and weld.groove == "square" and not weld.proven:
        refused.append(
            RefusedPreparation(
                None, "square", "a square edge has only the throat that proven penetration gives; send penetration"
            )
        )
    return fitting, refused


def _refuse_unlisted(unlisted: list[Unlisted], faults: Faults) -> None:
    """Refuse an angle asked for that the rules do not list; process and position were looked at before."""
    for _, text in dict.fromkeys(fault for error in unlisted for fault in error.faults):
        faults.out_of_scope("#/weld/groove_angle", text)
    faults.refuse()


def _full(weld: FullWeld, request: GrooveSizeRequest, rules: RuleSet, units: Units) -> SizedGroove:
    """Full-penetration groove: as strong as the weaker part, by the preparation with the least metal."""
    if rules.grooves.full is not None:
        cite(rules.grooves.full)
    place = _place(request)
    with off_the_sheet():
        details, refused = listed(weld, place, rules.grooves.details, units)
        fitting = ranked(size_full(detail, place, request.thinner) for detail in details)
    chosen = fitting[0] if fitting else None
    if chosen is not None:
        with about(chosen.detail.form):
            size_full(chosen.detail, place, request.thinner)
        _cite(chosen.detail)
    return SizedGroove(
        verdict=Verdict.ENOUGH,
        governs="full-penetration",
        specified=request.thinner,
        chosen=chosen,
        preparations=tuple(fitting),
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
) -> SizedGroove:
    """Flare groove: its throat by the radius, against the throat the load needs."""
    assert rules.groove_weld is not None  # noqa: S101 - practice without strength is not offered
    try:
        flush = rules.groove_weld.flare_throat(weld.kind, weld.radius, _place(request).process_id)
    except Unlisted as unlisted:
        for name, text in unlisted.faults:
            missing = name == "process" and request.process is None
            (faults.inconsistent if missing else faults.out_of_scope)(f"#/{name}", text)
        raise Refused(faults) from unlisted
    throat = max(float(j2_2_flare_grooves.below_flush(a_e=flush, b=weld.below_flush)), 0.0)
    needed = _throat_needed(load, rules, metal)
    minimum = rules.groove.minimum_throat(request.thinner)
    least = 0.0 if minimum is None else minimum[0]
    enough = at_least(throat, max(needed, least))
    halves = 2.0 if weld.kind == "flare-v" else 1.0
    area = float(groove_fill.flare_fill(k=halves, R=weld.radius, h=weld.radius - weld.below_flush))
    detail = Detail(None, "Table J2.2", "ANSI/AISC 360-22", weld.kind, "open", None, 0.0, 0.0)
    why = None if enough else f"its throat of {units.text(throat)} is under {units.text(max(needed, least))}"
    flare = SizedDetail(detail, None, None, None, None, 0.0, throat, area, why)
    return SizedGroove(
        verdict=Verdict.ENOUGH if enough else Verdict.CANNOT_BE_REACHED,
        governs="minimum-throat" if least > needed else request.basis,
        needed=needed,
        throat=throat,
        specified=throat if enough else None,
        minimum=minimum,
        chosen=flare if enough else None,
        preparations=(flare,),
    )


def _tee(weld: TeeButt, request: GrooveSizeRequest, rules: RuleSet, metal: Metals, load: GrooveLoad) -> SizedGroove:
    """T-butt as welded: full strength by 4.7.3(1), or else what both throats are worth as partial penetration."""
    first, second = weld.throats
    full = s4_7_butt_welds.tee_is_full_strength(first, second, request.through, weld.unwelded)
    most = s4_7_butt_welds.largest_unwelded(t=request.through, c_3=s4_7_butt_welds.LARGEST_UNWELDED)
    tee = TeeButtStrength(first + second, request.through, weld.unwelded, float(most), full)
    if full:
        return SizedGroove(Verdict.ENOUGH, "full-penetration", specified=first + second, tee=tee)
    shear = GrooveLoad(0.0, float(hypot(load.normal, load.transverse)), load.longitudinal)
    needed = _throat_needed(shear, rules, metal)
    minimum = rules.groove.minimum_throat(request.thinner)
    kept = minimum is None or bool(at_least(min(first, second), minimum[0]))
    enough = kept and at_least(first + second, needed)
    return SizedGroove(
        Verdict.ENOUGH if enough else Verdict.SHORT,
        request.basis if kept else "minimum-throat",
        needed=needed,
        throat=first + second,
        specified=first + second if enough else None,
        minimum=minimum,
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
