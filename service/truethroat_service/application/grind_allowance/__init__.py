"""Use case: how much of a seam's face may come off, how much must stay, and what to do when the throat is not kept.

A seam is counted twice. The creditable account counts only what is measured or proven, and only what the code credits;
the answer's verdict, limits and remedies are those of this account. The physical account counts everything there is and
stands beside it. A throat that is enough only with assumed penetration is enough on trust, never enough. Proven
penetration replaces the deduction of a code and is never added to it. A throat that the grinder breaks through is
nothing, not negative, and ``margin`` tells how much is missing.
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
from ..core.faults import Faults, Refused
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints import grooves
from ..joints.given import usual_depth_step
from ..joints.penetration_remarks import remark_on_achieved_depth, remark_on_penetration, remark_on_root_pass
from ..joints.rule_sets import rule_set
from ..joints.seam_checks import (
    check_finish,
    check_penetration,
    check_root_pass,
    check_seam,
    check_throat,
    check_tolerance,
    counts_proven,
)
from ..joints.seams import (
    CORNERS,
    FLAT_SEAMS,
    Finish,
    Lengths,
    Penetration,
    Shape,
    largest_radius,
    nearer_toe_distance,
    tangent_run,
)
from ..joints.throat_budget import Budget, ToleratedSection, seam_section, throat_budget
from .answer import GrindAllowanceAnswer, Grinding, Physical, Remedy
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
    reasons: tuple[str, ...]


def grind_allowance(request: GrindAllowanceRequest) -> Answered[GrindAllowanceAnswer]:
    """How much of a seam may be ground away.

    The request and the answer are in engine units: lengths in mm, angles in rad. The answer holds the throat budget,
    the allowance along the throat line, the face height to leave, the largest blend radius and the remedies of the
    creditable account, and the physical account beside it. Raises ``Refused`` with every fault of the request.
    """
    remarks = Remarks(Units(request.common.units))
    with working() as sheet:
        rules = None if request.rule_set is None else rule_set(request.rule_set)
        taken, toe = _check(request, rules)
        request = _filled(request)
        credited = _account("creditable", request, rules, taken, toe)
        credit = _judged(request, credited, remarks.units)
        verdict = credit.verdict
        remedies: tuple[Remedy, ...] = ()
        with off_the_sheet():
            physical = _account("physical", request, rules, taken, toe)
            judged = _judged(request, physical, remarks.units)
            if verdict is not Verdict.ENOUGH:
                why_no_bevel: list[str] = []
                remedies = _remedies(request, rules, credited, credit.grinding, remarks.units, why_no_bevel)
                credit = replace(credit, reasons=(*why_no_bevel, *credit.reasons))
                if _enough_on_trust(request, rules, taken, toe):
                    verdict = Verdict.ENOUGH_ON_TRUST
        for reason in (*credit.reasons, *judged.reasons):
            remarks.because(reason)
        if verdict is Verdict.ENOUGH_ON_TRUST:
            remarks.because(
                f"The throat is enough only with the {remarks.units.text(request.penetration.depth)} of penetration"
                " that nobody vouches for."
            )
        _cautions(request, physical, credited, credit.grinding, remarks)
    return answered(
        "grind_allowance",
        request,
        sheet,
        remarks,
        verdict,
        GrindAllowanceAnswer(
            budget=throat_budget(credited.budget),
            grinding=credit.grinding,
            judged_on=credited.budget.basis,
            remedies=remedies,
            physical=Physical(judged.verdict, throat_budget(physical.budget), judged.grinding),
            account=credit.reasons,
            section=credited.section,
        ),
        rule_set=request.rule_set,
        parameters={} if rules is None else rules.parameters,
    )


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
    check_root_pass(rules, request.root_pass, request.process, faults)
    if seam.kind in FLAT_SEAMS:
        check_throat(seam, request.required_throat, 0.0, faults)
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
    if rules is not None and prepared.depth > 0.0 and not _proven(request, rules):
        groove = grooves.coded(prepared.groove, prepared.angle, request.process, request.position)
        try:
            taken = grooves.deduction(rules, groove)
        except Unlisted as error:
            for field, text in error.faults:
                faults.out_of_scope("#/preparation/groove_angle" if field == "groove_angle" else f"#/{field}", text)
    toe = None
    if not faults and (request.face_width is not None or prepared.depth > 0.0):
        opening = grooves.opening(prepared.groove, prepared.angle, prepared.depth)
        # A bead is at least as wide as its groove; how far it runs over the edges is not known without its width.
        width = opening if request.face_width is None else request.face_width
        toe = nearer_toe_distance(width, prepared, opening)
        if request.face_width is not None and not at_least(request.face_width, opening):
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


def _proven(request: GrindAllowanceRequest, rules: RuleSet | None) -> bool:
    """Whether there is penetration proven by a qualified procedure, as the rules credit it."""
    proven = request.penetration.vouched == "proven" and request.penetration.depth > 0.0
    return proven and counts_proven(rules, request.root_pass)


def _account(
    name: Literal["physical", "creditable"],
    request: GrindAllowanceRequest,
    rules: RuleSet | None,
    taken: float,
    toe: float | None,
) -> _Account:
    """Count a seam: everything there is, or only what is measured and proven and what the code credits."""
    counted = request.penetration.counted(name)
    if name == "creditable" and request.penetration.vouched == "proven" and not counts_proven(rules, request.root_pass):
        counted = None
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


def _enough_on_trust(request: GrindAllowanceRequest, rules: RuleSet | None, taken: float, toe: float | None) -> bool:
    """Whether the throat is enough once assumed penetration counts too, and the face only as far as the code does."""
    if request.penetration.vouched != "assumed" or request.penetration.depth <= 0.0:
        return False
    measured = replace(request, penetration=replace(request.penetration, vouched="measured"))
    return _verdict(_account("creditable", measured, rules, taken, toe).budget) is Verdict.ENOUGH


def _verdict(budget: Budget) -> Verdict:
    """Verdict on a budget; the worst case decides where there are tolerances."""
    if not at_least(budget.judged.as_welded, budget.required):
        return Verdict.SHORT
    return Verdict.ENOUGH if at_least(budget.judged.remaining, budget.required) else Verdict.SHORT_WHEN_FINISHED


def _judged(request: GrindAllowanceRequest, account: _Account, units: Units) -> _Judged:
    """Verdict, grinding and reasons that follow from the budget of an account."""
    budget, judged, q = account.budget, account.budget.judged, account.budget.required
    worse, verdict = account.section.worse, _verdict(account.budget)
    reasons: list[str] = []
    allowance = 0.0
    # The face as welded may stand above what counts: convexity, or height a code does not credit.
    face = request.face + (worse["face"] if budget.judged_on_worst else 0.0)
    if verdict is not Verdict.SHORT:
        allowance = max(judged.root_to_plane + face - q - worse["below"], 0.0)
    leave = _leave(account)
    radius, why_no_radius = _radius(request, account, verdict)
    below = max(allowance - max(face, 0.0), 0.0)
    grinding = Grinding(allowance, leave, radius, below, _least_face_width(request, account, leave))
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
    return _Judged(verdict, grinding, tuple(reasons))


def _least_face_width(request: GrindAllowanceRequest, account: _Account, leave: float | None) -> float | None:
    """Width of a bead on a square edge that the throat takes, mm; None where no face counts or its width is known."""
    counts = account.shape.kind in FLAT_SEAMS and account.shape.face_counts and request.face > 0.0
    if not counts or account.shape.toe is not None:
        return None
    nominal = account.budget.nominal
    throat = max(nominal.as_welded, account.budget.required if leave else 0.0)
    return float(section.face_width(a=throat, u=nominal.u)) if throat > nominal.u else None


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
    if not at_most(q, min(judged.u, judged.v)):
        return None, "the throat is short even where the seam is flush with its outer faces"
    cases = account.budget.cases if account.budget.judged_on_worst else (judged,)
    radius = min(largest_radius(case, account.shape.psi, min(q, case.u, case.v)) for case in cases)
    if request.seam.width is not None:
        with off_the_sheet():
            run = tangent_run(1.0, account.shape.psi)
        radius = min(radius, min(request.seam.width) / run)
    return radius, ""


def _remedies(
    request: GrindAllowanceRequest,
    rules: RuleSet | None,
    account: _Account,
    grinding: Grinding,
    units: Units,
    reasons: list[str],
) -> tuple[Remedy, ...]:
    """Remedies that keep the throat, best first: a smaller radius, a bevel, a face left, a weld on the second side.

    Each that can be asked about is asked about, and is offered only where the answer is enough.
    """
    leave, radius, step = grinding.leave, grinding.largest_radius, usual_depth_step(units.system)
    remedies: list[Remedy] = []
    if request.finish.to == "radius" and radius is not None:
        smaller = float(down(radius, step)) if radius >= step else radius
        left = _left(replace(request, finish=replace(request.finish, radius=smaller)), rules)
        if left is not None:
            remedies.append(Remedy("smaller-radius", left, _counted(account), radius=smaller))
    depth = _bevel(request, account, step, reasons)
    if depth is not None:
        prepared = replace(request.preparation, depth=depth)
        # The face of the prepared seam is not known yet, but a hollow is as deep in the deeper groove.
        left = _left(
            replace(request, preparation=prepared, face_height=None, face_height_tolerance=0.0, face_width=None), rules
        )
        if left is not None:
            counts = _counted(account, prepared=True, face=False)
            remedies.append(Remedy("bevel", left, counts, depth=depth))
    if request.finish.to != "as-welded" and leave is not None and leave > 0.0:
        kept = float(up(leave, step))
        if at_most(kept, max(request.face, 0.0)):
            # What is left of the face is as exact as the grinder.
            exact = request.finish.tolerance
            left = _left(
                replace(request, finish=Finish(), face_height=kept, face_height_tolerance=exact, hollow=None), rules
            )
            if left is not None:
                remedies.append(Remedy("leave-face", left, _counted(account), face_height=kept))
    second = _second_side(request, account, step)
    return (*remedies, *([] if second is None else [second]))


def _left(request: GrindAllowanceRequest, rules: RuleSet | None) -> float | None:
    """Throat that is left of a seam in the creditable account, mm; None where it is short or the request is refused."""
    try:
        taken, toe = _check(request, rules)
    except Refused:
        return None
    budget = _account("creditable", request, rules, taken, toe).budget
    return budget.nominal.remaining if _verdict(budget) is Verdict.ENOUGH else None


def _second_side(request: GrindAllowanceRequest, account: _Account, step: float) -> Remedy | None:
    """Weld on the second side that makes up what is missing; None where there is no side or no room for it.

    In a butt both welds share the thickness that the grinder leaves. Inside a corner or a tee a fillet has no such end.
    """
    if request.seam.kind == "edge":
        return None
    budget = account.budget
    missing = float(up(budget.required - budget.judged.remaining, step))
    left = budget.nominal.remaining + missing
    if request.seam.kind == "butt":
        ground = 0.0 if request.finish.to == "as-welded" else request.finish.below
        thin = request.seam.thickness_tolerance + account.section.worse["below"]
        if not at_most(budget.required, request.seam.runs_through - ground - thin):
            return None
        left = min(left, request.seam.runs_through - ground)
    return Remedy("weld-second-side", left, (*_counted(account), "second side"), throat=missing)


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


def _bevel(request: GrindAllowanceRequest, account: _Account, step: float, reasons: list[str]) -> float | None:
    """Depth of preparation, mm, that the finish asks for; None where no depth is to be had.

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
    if not _proven(request, account.rules):
        groove = grooves.coded(prepared.groove, prepared.angle, request.process, request.position)
        try:
            taken = grooves.deduction(account.rules, groove)
        except Unlisted as error:
            reasons.append(f"{account.label}: no bevel is offered, because the rules do not list it: {error}.")
            return None
    penetration = lengths.penetration + worse["penetration"]
    depth = float(up(needed - penetration + taken - worse["depth"], step))
    return depth if 0.0 < depth else None


def _cautions(
    request: GrindAllowanceRequest, physical: _Account, credited: _Account, grinding: Grinding, remarks: Remarks
) -> None:
    """Add the cautions: what the figures assume and what they leave out."""
    penetration, seam, finish, units = request.penetration, request.seam, request.finish, remarks.units
    counted = "the physical budget only" if penetration.vouched == "assumed" else "the physical and creditable budgets"
    rules = credited.rules
    if penetration.vouched == "proven" and penetration.depth > 0.0 and rules and not _proven(request, rules):
        remark_on_root_pass(penetration.depth, rules, remarks)
    remark_on_penetration(penetration, remarks, f"It counts in {counted}, and in no strength.")
    if seam.kind in FLAT_SEAMS and request.face_width is None and request.face > 0.0:
        if request.preparation.depth > 0.0:
            remarks.caution(
                "face-width-not-given",
                "Without face_width the toes are taken at the edges of the groove, and the face height counts no"
                " further than they let it. A face that runs over the edges may count for more; send its width.",
            )
        elif grinding.least_face_width is not None:
            remarks.caution(
                "face-width-not-given",
                "The face height counts as if the bead were wide enough. A bead narrower than"
                f" {units.text(grinding.least_face_width)} leaves a smaller throat; measure it and send face_width.",
            )
    if request.rule_set is not None and physical.shape.face_counts and not credited.shape.face_counts:
        remarks.caution(
            "face-not-credited",
            "Codes do not credit the reinforcement of a groove, so the creditable budget leaves out the face height.",
        )
    if request.preparation.depth > 0.0:
        remark_on_achieved_depth(credited.rules, remarks)
    if seam.kind != "fillet" and not at_most(grinding.allowance_below_plane, INCH / 32):
        remarks.caution(
            "allowance-thins",
            f"{units.text(grinding.allowance_below_plane)} of the allowance lies below the plane of the face. Grinding"
            f" all of it off makes the parts thinner than the usual limit of {units.text(INCH / 32)} allows.",
            THINNING,
        )
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
