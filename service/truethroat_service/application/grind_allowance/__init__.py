"""Use case: how much of a seam's face may come off, how much must stay, and what to do when the throat is not kept.

A seam is counted twice. The physical account counts everything there is. The creditable account counts only what is
measured or proven, and only what the code credits. Each account has a verdict of its own; the answer's verdict is the
physical one. Proven penetration replaces the deduction of a code and is never added to it. A throat that the grinder
breaks through is nothing, not negative, and ``margin`` tells how much is missing.
"""

from dataclasses import dataclass, replace
from typing import Literal

from ...engine import section
from ...engine.formula import Source, off_the_sheet, working
from ...engine.rounding import SAME, at_least, at_most, down, up
from ...engine.rule_set import RuleSet, Unlisted
from ...engine.units import INCH
from ..core.answers import Answered, answered
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints import grooves
from ..joints.given import usual_depth_step
from ..joints.penetration_remarks import remark_on_achieved_depth, remark_on_penetration
from ..joints.rule_sets import rule_set
from ..joints.seam_checks import check_finish, check_penetration, check_seam, check_tolerance
from ..joints.seams import (
    CORNERS,
    FLAT_SEAMS,
    Clearances,
    Lengths,
    Penetration,
    Shape,
    clearances,
    largest_radius,
    nearer_toe_distance,
    tangent_run,
)
from ..joints.throat_budget import Budget, ToleratedSection, seam_section, throat_budget
from .answer import Creditable, GrindAllowanceAnswer, Grinding, Remedy
from .request import GrindAllowanceRequest

THINNING = Source("AWS D1.1:2010", "5.24.3.1, welds required flush: thinning up to 1/32 in (1 mm)")


@dataclass(frozen=True, slots=True)
class _Account:
    """One way to count a seam: its rules, its section, its penetration, and the budget that follows from them."""

    name: Literal["physical", "creditable"]
    rules: RuleSet | None
    section: ToleratedSection
    penetration: Penetration | None
    budget: Budget

    @property
    def label(self) -> str:
        """Name at the beginning of a sentence."""
        return self.name.capitalize()

    @property
    def shape(self) -> Shape:
        """Shape of the section."""
        return self.section.shape

    @property
    def lengths(self) -> Lengths:
        """Lengths of the section."""
        return self.section.lengths


@dataclass(frozen=True, slots=True)
class _Judged:
    """What follows from an account, with the reasons."""

    verdict: Verdict
    grinding: Grinding
    remedies: tuple[Remedy, ...]
    reasons: tuple[str, ...]


def grind_allowance(request: GrindAllowanceRequest) -> Answered[GrindAllowanceAnswer]:
    """How much of a seam may be ground away.

    The request and the answer are in engine units: lengths in mm, angles in rad. The answer holds the throat budget,
    the allowance along the throat line, the face height to leave, the largest blend radius and the remedies, for the
    physical and for the creditable account. Raises ``Refused`` with every fault of the request.
    """
    remarks = Remarks(Units(request.common.units))
    with working() as sheet:
        rules = None if request.rule_set is None else rule_set(request.rule_set)
        taken, toe = _check(request, rules)
        request = _filled(request)
        physical = _account("physical", request, rules, taken, toe)
        judged = _judged(request, physical, remarks.units)
        with off_the_sheet():
            credited = _account("creditable", request, rules, taken, toe)
            credit = _judged(request, credited, remarks.units)
        for reason in (*judged.reasons, *credit.reasons):
            remarks.because(reason)
        _cautions(request, physical, credited, remarks)
    return answered(
        "grind_allowance",
        request,
        sheet,
        remarks,
        judged.verdict,
        GrindAllowanceAnswer(
            budget=throat_budget(physical.budget),
            grinding=judged.grinding,
            judged_on=physical.budget.basis,
            remedies=judged.remedies,
            creditable=Creditable(
                verdict=credit.verdict,
                budget=throat_budget(credited.budget),
                grinding=credit.grinding,
                remedies=credit.remedies,
                reasons=credit.reasons,
                section=credited.section,
            ),
        ),
        rule_set=request.rule_set,
        parameters={} if rules is None else rules.parameters,
    )


def creditable(request: GrindAllowanceRequest) -> ToleratedSection:
    """Section of a seam as the creditable account counts it, in mm; raises ``Refused`` as the use case does."""
    rules = None if request.rule_set is None else rule_set(request.rule_set)
    taken, toe = _check(request, rules)
    return _account("creditable", _filled(request), rules, taken, toe).section


def _filled(request: GrindAllowanceRequest) -> GrindAllowanceRequest:
    """Request with the defaults that depend on its other fields."""
    flush = 0.0 if request.hollow is None and request.face_height is None else request.face_height
    prepared = replace(request.preparation, groove_angle=request.preparation.angle)
    return replace(request, face_height=flush, preparation=prepared)


def _check(request: GrindAllowanceRequest, rules: RuleSet | None) -> tuple[float, float | None]:
    """Deduction and distance to the nearer toe, both in mm; raises ``Refused`` where the request does not fit."""
    faults = Faults(Units(request.common.units))
    seam, prepared, finish = request.seam, request.preparation, request.finish
    check_seam(seam, faults)
    check_finish(seam, finish, faults)
    check_penetration(seam, request.penetration, faults)
    if prepared.depth > 0.0 and seam.kind not in FLAT_SEAMS:
        faults.inconsistent(
            "#/preparation/depth",
            f"applies to a seam of kind {', '.join(FLAT_SEAMS)}, not to {seam.kind}; leave it out",
        )
    elif not at_most(prepared.depth, seam.runs_through):
        faults.out_of_range(
            "#/preparation/depth",
            f"must be at most the {faults.units.text(seam.runs_through)} that the seam runs through; it is"
            f" {faults.units.text(prepared.depth)}",
        )
    check_tolerance("#/preparation/tolerance", prepared.tolerance, prepared.depth, "depth", faults)
    _check_face(request, faults)
    taken = 0.0
    # Proven penetration replaces the deduction; a square edge has nothing to deduct from.
    if rules is not None and prepared.depth > 0.0 and not _proven(request):
        groove = grooves.coded(prepared.groove, prepared.angle, request.process, request.position)
        try:
            taken = grooves.deduction(rules, groove)
        except Unlisted as error:
            for field, text in error.faults:
                faults.out_of_scope("#/preparation/groove_angle" if field == "groove_angle" else f"#/{field}", text)
    toe = None
    if request.face_width is not None and not faults:
        opening = grooves.opening(prepared.groove, prepared.angle, prepared.depth)
        toe = nearer_toe_distance(request.face_width, prepared, opening)
        if not at_least(request.face_width, opening):
            faults.inconsistent(
                "#/face_width",
                f"must be at least the {faults.units.text(opening)} that the groove is wide at its face; it is"
                f" {faults.units.text(request.face_width)}",
            )
    faults.refuse()
    return taken, toe


def _check_face(request: GrindAllowanceRequest, faults: Faults) -> None:
    """Add a face that is described twice, and fields that need another face or another seam."""
    if request.face_height is not None and request.hollow is not None:
        faults.inconsistent("#/hollow", "cannot be sent together with face_height; send one of them")
    if request.face_height_tolerance and request.face_height is None:
        faults.inconsistent("#/face_height_tolerance", "needs face_height; send it too")
    if request.hollow_tolerance and request.hollow is None:
        faults.inconsistent("#/hollow_tolerance", "needs hollow; send it too")
    if request.face_width is not None and request.seam.kind not in FLAT_SEAMS:
        faults.inconsistent(
            "#/face_width",
            f"applies to a seam of kind {', '.join(FLAT_SEAMS)}, not to {request.seam.kind}; leave it out",
        )


def _proven(request: GrindAllowanceRequest) -> bool:
    """Whether there is penetration proven by a qualified procedure."""
    return request.penetration.vouched == "proven" and request.penetration.depth > 0.0


def _account(
    name: Literal["physical", "creditable"],
    request: GrindAllowanceRequest,
    rules: RuleSet | None,
    taken: float,
    toe: float | None,
) -> _Account:
    """Count a seam: everything there is, or only what is measured and proven and what the code credits."""
    counted = request.penetration.counted(name)
    credited = rules is None or rules.groove.face_counts
    section = seam_section(
        request.seam,
        request.finish,
        counted,
        depth=request.preparation.depth,
        depth_tolerance=request.preparation.tolerance,
        deduction=taken,
        face=request.face,
        face_tolerance=request.face_height_tolerance + request.hollow_tolerance,
        face_counts=name == "physical" or credited,
        toe=toe,
    )
    return _Account(name, rules, section, counted, section.budget(request.required_throat))


def _verdict(budget: Budget) -> Verdict:
    """Verdict on a budget; the worst case decides where there are tolerances."""
    if not at_least(budget.judged.as_welded, budget.required):
        return Verdict.SHORT
    return Verdict.ENOUGH if at_least(budget.judged.remaining, budget.required) else Verdict.SHORT_IF_FLUSH


def _judged(request: GrindAllowanceRequest, account: _Account, units: Units) -> _Judged:
    """Verdict, grinding, remedies and reasons that follow from the budget of an account."""
    budget, judged, q = account.budget, account.budget.judged, account.budget.required
    worse, verdict = account.section.worse, _verdict(account.budget)
    reasons: list[str] = []
    allowance = 0.0
    if verdict is not Verdict.SHORT:
        # The face as welded may stand above what counts: convexity, or height a code does not credit.
        face = request.face + (worse["face"] if budget.judged_on_worst else 0.0)
        allowance = max(judged.root_to_plane + face - q - worse["below"], 0.0)
    leave = _leave(account)
    radius, why_no_radius = _radius(request, account, verdict)
    grinding = Grinding(allowance, leave, radius)
    with off_the_sheet():
        remedies = [] if verdict is Verdict.ENOUGH else _remedies(request, account, grinding, units, reasons)
    case = "in the worst case" if budget.judged_on_worst else "at nominal dimensions"
    reasons.append(
        f"{account.label}: the throat is {units.text(judged.as_welded)} as welded and"
        f" {units.text(judged.remaining)} after the finish, {case}; {units.text(q)} is required."
    )
    if verdict is not Verdict.SHORT and judged.remaining <= 0.0:
        reasons.append(f"{account.label}: the finish grinds through to the root.")
    if leave is None:
        reasons.append(f"{account.label}: no face height gives the throat required.")
    if radius is None and why_no_radius:
        reasons.append(f"{account.label}: there is no largest radius, because {why_no_radius}.")
    return _Judged(verdict, grinding, tuple(remedies), tuple(reasons))


def _leave(account: _Account) -> float | None:
    """Face height over its plane that keeps the throat, mm; None when none does."""
    judged, q = account.budget.judged, account.budget.required
    # The grinder may cut its tolerance deeper than the face height that is specified.
    needed = q + account.section.worse["below"] - judged.root_to_plane
    if not at_least(judged.limit, q):
        return None
    if needed <= SAME * q:
        return 0.0
    return needed if account.shape.face_counts else None


def _radius(request: GrindAllowanceRequest, account: _Account, verdict: Verdict) -> tuple[float | None, str]:
    """Largest blend radius that keeps the throat, mm; or None, with the reason after "because"."""
    if account.shape.kind not in CORNERS:
        return None, ""
    if verdict is Verdict.SHORT:
        return None, "the throat is short as welded"
    judged = account.budget.judged
    ground = (request.finish.below if request.finish.to == "radius" else 0.0) + account.section.worse["below"]
    q = account.budget.required + ground
    nearest = min(judged.u, judged.v)
    if not at_most(q, nearest):
        return None, "the throat is short even where the seam is flush with its outer faces"
    radius = largest_radius(judged, account.shape.psi, min(q, nearest))
    if request.seam.width is not None:
        with off_the_sheet():
            run = tangent_run(1.0, account.shape.psi)
        radius = min(radius, min(request.seam.width) / run)
    return radius, ""


def _remedies(
    request: GrindAllowanceRequest, account: _Account, grinding: Grinding, units: Units, reasons: list[str]
) -> list[Remedy]:
    """Remedies that keep the throat, best first: a smaller radius, a bevel, a face left, a weld on the second side."""
    budget, leave, radius = account.budget, grinding.leave, grinding.largest_radius
    step = usual_depth_step(units.system)
    remedies: list[Remedy] = []
    if request.finish.to == "radius" and radius is not None:
        smaller = float(down(radius, step)) if radius >= step else radius
        left = clearances(replace(account.shape, radius=smaller), account.lengths).remaining
        remedies.append(Remedy("smaller-radius", left, _counted(account), radius=smaller))
    bevel = _bevel(request, account, step, reasons)
    if bevel is not None:
        depth, cut = bevel
        counts = _counted(account, prepared=True, face=False)
        remedies.append(Remedy("bevel", cut.remaining, counts, depth=depth))
    if request.finish.to != "as-welded" and leave is not None and leave > 0.0:
        kept = float(up(leave, step))
        if at_most(kept, max(request.face, 0.0)):
            standing = replace(account.lengths, face=kept)
            left = clearances(replace(account.shape, finish="as-welded"), standing).remaining
            remedies.append(Remedy("leave-face", left, _counted(account), face_height=kept))
    if request.seam.kind != "edge":
        missing = float(up(budget.required - budget.judged.remaining, step))
        left = budget.nominal.remaining + missing
        remedies.append(Remedy("weld-second-side", left, (*_counted(account), "second side"), throat=missing))
    return remedies


def _counted(account: _Account, *, prepared: bool = False, face: bool = True) -> tuple[str, ...]:
    """Parts of a remedy's throat, such as "proven penetration"."""
    counts = []
    if account.shape.kind not in FLAT_SEAMS:
        counts.append("section")
    if prepared or account.lengths.depth > 0.0:
        counts.append("prepared depth")
    if account.penetration is not None:
        counts.append(f"{account.penetration.vouched} penetration")
    if face and account.shape.face_counts and account.lengths.face > 0.0:
        counts.append("face")
    return tuple(counts)


def _bevel(
    request: GrindAllowanceRequest, account: _Account, step: float, reasons: list[str]
) -> tuple[float, Clearances] | None:
    """Depth of preparation, mm, that keeps the throat under the finish, and the clearances it gives; None if none does.

    Adds a reason where the rules do not list the groove.
    """
    if account.shape.kind not in FLAT_SEAMS:
        return None
    lengths, worse, judged = account.lengths, account.section.worse, account.budget.judged
    prepared = request.preparation
    q = account.budget.required + (request.finish.below if request.finish.to != "as-welded" else 0.0) + worse["below"]
    if not at_most(q, judged.v):
        return None
    needed = q
    if request.finish.to == "radius":
        needed = float(section.clearance_for_blend(R=request.finish.radius or 0.0, q=q, v=judged.v))
    if lengths.face < 0.0:
        # A hollow is as deep in the deeper groove, and the finish may not reach its bottom.
        needed = max(needed, account.budget.required - float(lengths.face) - worse["face"])
    taken = 0.0
    if not _proven(request):
        groove = grooves.coded(prepared.groove, prepared.angle, request.process, request.position)
        try:
            taken = grooves.deduction(account.rules, groove)
        except Unlisted as error:
            reasons.append(f"{account.label}: no bevel is offered, because the rules do not list it: {error}.")
            return None
    penetration = lengths.penetration + worse["penetration"]
    depth = float(up(needed - penetration + taken - worse["depth"], step))
    # A seam has no more throat than the thinnest parts let it run through, however deep it is cut.
    room = request.seam.runs_through - request.seam.thickness_tolerance
    if not (0.0 < depth and at_most(depth, request.seam.runs_through) and at_most(needed, room)):
        return None
    flush = (
        replace(account.shape, toe=None, face_counts=False) if account.shape.finish == "as-welded" else account.shape
    )
    return depth, clearances(flush, replace(lengths, depth=depth, deduction=taken, face=min(lengths.face, 0.0)))


def _cautions(request: GrindAllowanceRequest, physical: _Account, credited: _Account, remarks: Remarks) -> None:
    """Add the cautions: what the figures assume and what they leave out."""
    penetration, seam, finish, units = request.penetration, request.seam, request.finish, remarks.units
    counted = "the physical budget only" if penetration.vouched == "assumed" else "the physical and creditable budgets"
    remark_on_penetration(penetration, remarks, f"It counts in {counted}, and in no strength.")
    root = request.preparation.depth + penetration.depth
    if seam.kind in FLAT_SEAMS and request.face_width is None and request.face > root:
        remarks.caution(
            "face-width-not-given",
            "The face is higher than the root is deep. Without face_width the throat is not limited by the distance to"
            " the nearer toe, so the throat as welded may be smaller than shown.",
        )
    if request.rule_set is not None and physical.shape.face_counts and not credited.shape.face_counts:
        remarks.caution(
            "face-not-credited",
            "Codes do not credit the reinforcement of a groove, so the creditable budget leaves out the face height.",
        )
    if request.preparation.depth > 0.0:
        remark_on_achieved_depth(credited.rules, remarks)
    if finish.to != "as-welded" and finish.below > 0.0 and not at_most(finish.below, INCH / 32):
        remarks.caution(
            "thinning",
            f"Grinding {units.text(finish.below)} below the plane makes the part thinner than the usual limit allows.",
            THINNING,
        )
    if finish.to == "radius" and seam.width is None:
        run = tangent_run(finish.radius or 0.0, seam.angle)
        remarks.caution(
            "radius-needs-width",
            f"The blend covers {units.text(run)} of each outer face, measured from the sharp corner. Check that the"
            " faces are that wide.",
        )
    if seam.kind in CORNERS or (seam.kind == "fillet"):
        remarks.caution(
            "root-opening",
            "A load that opens the seam from its root bends the throat. These figures do not include that bending.",
        )
