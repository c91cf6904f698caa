"""Use case: how much of a seam's face may come off, how much must stay, and what to do when the throat is not kept."""

from dataclasses import dataclass, replace
from typing import Any

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
from ..joints.rule_sets import rule_set
from ..joints.seam_checks import check_finish, check_penetration, check_seam
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
from ..joints.throat_budget import Budget, budget
from .request import GrindAllowanceRequest

THINNING = Source("AWS D1.1:2010", "5.24.3.1, welds required flush: thinning up to 1/32 in (1 mm)")


@dataclass(frozen=True, slots=True)
class Account:
    """One way of counting a seam: physical, or creditable; what is counted, and the budget that comes of it."""

    name: str
    rules: RuleSet | None
    shape: Shape
    lengths: Lengths
    worse: dict[str, float]
    penetration: Penetration | None
    budget: Budget
    face_above: float


def grind_allowance(request: GrindAllowanceRequest) -> Answered[dict[str, Any]]:
    """Answer a request for what may be ground off; raises ``Refused`` with every fault found."""
    units = Units(request.common.units)
    remarks = Remarks(units)
    with working() as sheet:
        rules = None if request.rule_set is None else rule_set(request.rule_set)
        taken, toe = _check(request, rules)
        request = _filled(request)
        physical = _account("physical", request, rules, taken, toe)
        verdict = _verdict(physical.budget)
        result = _judged(request, physical, verdict, units, remarks)
        with off_the_sheet():
            creditable = _account("creditable", request, rules, taken, toe)
            credit_verdict = _verdict(creditable.budget)
            credit = _judged(request, creditable, credit_verdict, units, remarks)
        _cautions(request, physical, creditable, units, remarks)
    # The creditable account is a budget of its own, with what follows from it beside its lines.
    credit.pop("judged_on")
    credit = {**credit.pop("budget"), **credit}
    return answered(
        "grind_allowance",
        request,
        sheet,
        remarks,
        verdict,
        {**result, "creditable": {"verdict": credit_verdict.value, **credit}},
        rule_set=request.rule_set,
        parameters={} if rules is None else rules.parameters,
    )


def creditable(request: GrindAllowanceRequest) -> Account:
    """Account of what is measured and proven and of what the code credits; raises ``Refused`` as the answer does."""
    rules = None if request.rule_set is None else rule_set(request.rule_set)
    taken, toe = _check(request, rules)
    return _account("creditable", _filled(request), rules, taken, toe)


def _filled(request: GrindAllowanceRequest) -> GrindAllowanceRequest:
    """Request with the defaults that hang on its other fields."""
    flush = 0.0 if request.hollow is None and request.face_height is None else request.face_height
    prepared = replace(request.preparation, groove_angle=request.preparation.angle)
    return replace(request, face_height=flush, preparation=prepared)


def _check(request: GrindAllowanceRequest, rules: RuleSet | None) -> tuple[float, float | None]:
    """Deduction and distance to the nearer toe, once everything fits together."""
    faults = Faults(Units(request.common.units))
    seam, prepared, finish = request.seam, request.preparation, request.finish
    check_seam(seam, faults)
    check_finish(seam, finish, faults)
    check_penetration(seam, request.penetration, faults)
    if prepared.depth > 0.0 and seam.kind not in FLAT_SEAMS:
        faults.inconsistent(
            "#/preparation/depth", f"a prepared depth belongs to {', '.join(FLAT_SEAMS)}, not to {seam.kind}"
        )
    elif not at_most(prepared.depth, seam.runs_through):
        faults.out_of_range(
            "#/preparation/depth",
            f"{faults.units.text(prepared.depth)} is deeper than the {faults.units.text(seam.runs_through)}"
            " the seam runs through",
        )
    if prepared.tolerance > prepared.depth:
        faults.inconsistent("#/preparation/tolerance", "the tolerance is over the depth itself")
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
                f"narrower than the {faults.units.text(opening)} the groove opens on the face; is it underfilled?",
            )
    faults.refuse()
    return taken, toe


def _check_face(request: GrindAllowanceRequest, faults: Faults) -> None:
    """Refuse a face that is told twice, or whose fields go with another face or seam."""
    if request.face_height is not None and request.hollow is not None:
        faults.inconsistent(
            "#/hollow", "a face stands above its plane or is hollow: send face_height or hollow, not both"
        )
    if request.face_height_tolerance and request.face_height is None:
        faults.inconsistent("#/face_height_tolerance", "goes with face_height, which is not given")
    if request.hollow_tolerance and request.hollow is None:
        faults.inconsistent("#/hollow_tolerance", "goes with hollow, which is not given")
    if request.face_width is not None and request.seam.kind not in FLAT_SEAMS:
        faults.inconsistent(
            "#/face_width",
            f"face_width belongs to {', '.join(FLAT_SEAMS)}; of {request.seam.kind} the toes are known",
        )


def _proven(request: GrindAllowanceRequest) -> bool:
    """Whether there is penetration proven by a qualified procedure."""
    return request.penetration.vouched == "proven" and request.penetration.depth > 0.0


def _account(
    name: str, request: GrindAllowanceRequest, rules: RuleSet | None, taken: float, toe: float | None
) -> Account:
    """Count a seam: everything there is, or only what is measured and proven and what the code credits."""
    credit = name == "creditable"
    counted: Penetration | None = request.penetration
    if request.penetration.depth <= 0.0 or (credit and request.penetration.vouched == "assumed"):
        counted = None
    seam, finish = request.seam, request.finish
    t_1, t_2 = seam.thickness or (0.0, 0.0)
    z_1, z_2 = seam.legs or (0.0, 0.0)
    lengths = Lengths(
        t_1=t_1,
        t_2=t_2,
        overlap=seam.overlap,
        z_1=z_1,
        z_2=z_2,
        depth=request.preparation.depth,
        deduction=taken,
        penetration=counted.depth if counted else 0.0,
        face=request.face,
        below=finish.below,
    )
    face_counts = not (credit and rules is not None and not rules.groove.face_counts)
    shape = Shape(
        kind=seam.kind,
        psi=seam.angle,
        through=seam.kind != "edge",
        finish=finish.to,
        radius=finish.radius or 0.0,
        toe=toe,
        face_counts=face_counts and seam.kind != "fillet",
    )
    worse = {
        "t_1": -seam.thickness_tolerance,
        "t_2": -seam.thickness_tolerance,
        "overlap": seam.overlap_tolerance,
        "z_1": -seam.legs_tolerance,
        "z_2": -seam.legs_tolerance,
        "depth": -request.preparation.tolerance,
        "penetration": -counted.tolerance if counted else 0.0,
        "face": -(request.face_height_tolerance + request.hollow_tolerance),
        "below": finish.tolerance,
    }
    made = budget(shape, lengths, worse, request.required_throat)
    return Account(name, rules, shape, lengths, worse, counted, made, max(request.face, 0.0))


def _verdict(made: Budget) -> Verdict:
    """Verdict on a budget, by its worst case when it has tolerances."""
    if not at_least(made.judged.as_welded, made.required):
        return Verdict.SHORT
    return Verdict.ENOUGH if at_least(made.judged.remaining, made.required) else Verdict.SHORT_IF_FLUSH


def _judged(
    request: GrindAllowanceRequest, account: Account, verdict: Verdict, units: Units, remarks: Remarks
) -> dict[str, Any]:
    """Budget of one account with what follows from it; says why in ``remarks``."""
    made, q = account.budget, account.budget.required
    judged = made.judged
    face_down = account.worse["face"] if made.judged_on_worst else 0.0
    allowance = 0.0
    if verdict is not Verdict.SHORT:
        # The face as welded may stand above what counts: convexity, or height a code does not credit.
        face = request.face + face_down
        allowance = max(judged.root_to_plane + face - q - account.worse["below"], 0.0)
    leave = _leave(account)
    radius, why_no_radius = _radius(request, account, verdict)
    with off_the_sheet():
        remedies = [] if verdict is Verdict.ENOUGH else _remedies(request, account, leave, radius, units, remarks)
    label = account.name.capitalize()
    case = "worst case" if made.judged_on_worst else "nominal"
    remarks.because(
        f"{label}: {units.text(judged.as_welded)} of throat as welded, {units.text(judged.remaining)} left after the"
        " finish,"
        f" {units.text(q)} required ({case})."
    )
    if verdict is not Verdict.SHORT and judged.remaining <= 0.0:
        remarks.because(f"{label}: the finish breaks through at the root.")
    if leave is None:
        remarks.because(f"{label}: no face height would give the throat.")
    if radius is None and why_no_radius:
        remarks.because(f"{label}: no largest radius, {why_no_radius}.")
    return {
        "budget": made.dump(units),
        "allowance": units.length(allowance, "down"),
        "leave": None if leave is None else units.length(leave, "up"),
        "largest_radius": None if radius is None else units.length(radius, "down"),
        "judged_on": "worst-case" if made.judged_on_worst else "nominal",
        "remedies": remedies,
    }


def _leave(account: Account) -> float | None:
    """Face height over its plane that keeps the throat, mm; None when none does."""
    judged, q = account.budget.judged, account.budget.required
    # The grinder may go its tolerance deeper than the face height it is told to leave.
    needed = q + account.worse["below"] - judged.root_to_plane
    if not at_least(judged.limit, q):
        return None
    if needed <= SAME * q:
        return 0.0
    return needed if account.shape.face_counts else None


def _radius(request: GrindAllowanceRequest, account: Account, verdict: Verdict) -> tuple[float | None, str]:
    """Largest blend radius that keeps the throat, mm, or None and why."""
    if account.shape.kind not in CORNERS:
        return None, ""
    if verdict is Verdict.SHORT:
        return None, "it is short as welded"
    judged = account.budget.judged
    ground = (request.finish.below if request.finish.to == "radius" else 0.0) + account.worse["below"]
    q = account.budget.required + ground
    nearest = min(judged.u, judged.v)
    if not at_most(q, nearest):
        return None, "finished to its outer faces it keeps less than the throat"
    radius = largest_radius(judged, account.shape.psi, min(q, nearest))
    if request.seam.width is not None:
        with off_the_sheet():
            run = tangent_run(1.0, account.shape.psi)
        radius = min(radius, min(request.seam.width) / run)
    return radius, ""


def _remedies(
    request: GrindAllowanceRequest,
    account: Account,
    leave: float | None,
    radius: float | None,
    units: Units,
    remarks: Remarks,
) -> list[dict[str, Any]]:
    """What would keep the throat, best first: a smaller radius, then what keeps the finish, then what changes it."""
    made, judged, q = account.budget, account.budget.judged, account.budget.required
    step = INCH / 32 if units.system == "us" else 0.5
    remedies: list[dict[str, Any]] = []

    def offer(do: str, field: str, size: float, after: Clearances | float, counts: list[str]) -> None:
        remaining = after if isinstance(after, float) else after.remaining
        sized = units.length(size, "down") if field == "radius" else units.length(size)
        remedies.append({"do": do, field: sized, "remaining": units.length(remaining), "counts": counts})

    if request.finish.to == "radius" and radius is not None:
        smaller = down(radius, step) if radius >= step else radius
        shape = replace(account.shape, radius=float(smaller))
        offer("smaller-radius", "radius", float(smaller), clearances(shape, account.lengths), _counted(account))
    bevel = _bevel(request, account, step, remarks)
    if bevel is not None:
        depth, after = bevel
        offer("bevel", "depth", depth, after, _counted(account, prepared=True, face=False))
    if request.finish.to != "as-welded" and leave is not None and leave > 0.0:
        kept = float(up(leave, step))
        if at_most(kept, account.face_above):
            standing = replace(account.lengths, face=kept)
            after = clearances(replace(account.shape, finish="as-welded"), standing)
            offer("leave-face", "face_height", kept, after, _counted(account))
    if request.seam.kind != "edge":
        missing = float(up(q - judged.remaining, step))
        offer(
            "weld-second-side", "throat", missing, made.nominal.remaining + missing, [*_counted(account), "second side"]
        )
    return remedies


def _counted(account: Account, *, prepared: bool = False, face: bool = True) -> list[str]:
    """What a remedy's throat counts, each line with who vouches for it where that matters."""
    counts = []
    if account.shape.kind not in FLAT_SEAMS:
        counts.append("section")
    if prepared or account.lengths.depth > 0.0:
        counts.append("prepared depth")
    if account.penetration is not None:
        counts.append(f"{account.penetration.vouched} penetration")
    if face and account.shape.face_counts and account.lengths.face > 0.0:
        counts.append("face")
    return counts


def _bevel(
    request: GrindAllowanceRequest, account: Account, step: float, remarks: Remarks
) -> tuple[float, Clearances] | None:
    """Depth of preparation that keeps the throat under the finish asked for, and the section it makes."""
    if account.shape.kind not in FLAT_SEAMS:
        return None
    lengths, worse, judged = account.lengths, account.worse, account.budget.judged
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
            remarks.because(f"{account.name.capitalize()}: no bevel is offered. {error}.")
            return None
    penetration = lengths.penetration + worse["penetration"]
    depth = float(up(needed - penetration + taken - worse["depth"], step))
    if not at_most(depth, request.seam.runs_through) or depth <= 0.0:
        return None
    flush = (
        replace(account.shape, toe=None, face_counts=False) if account.shape.finish == "as-welded" else account.shape
    )
    return depth, clearances(flush, replace(lengths, depth=depth, deduction=taken, face=min(lengths.face, 0.0)))


def _cautions(
    request: GrindAllowanceRequest, physical: Account, creditable: Account, units: Units, remarks: Remarks
) -> None:
    """Say what the figures rest on and what they leave out."""
    penetration, seam, finish = request.penetration, request.seam, request.finish
    if penetration.depth > 0.0 and penetration.vouched != "proven":
        counted = "the physical budget only" if penetration.vouched == "assumed" else "physical and creditable budgets"
        remarks.caution(
            f"{penetration.vouched}-penetration",
            f"Penetration of {units.text(penetration.depth)} is {penetration.vouched}: it counts in {counted}, and"
            " in no"
            " strength until a qualified procedure proves it.",
        )
    root = request.preparation.depth + penetration.depth
    if seam.kind in FLAT_SEAMS and request.face_width is None and request.face > root:
        remarks.caution(
            "face-width-not-given",
            "The face stands higher than the root lies deep; without face_width its throat is not capped at the nearer"
            " toe, so as welded it may be less than shown.",
        )
    if request.rule_set is not None and physical.shape.face_counts and not creditable.shape.face_counts:
        remarks.caution(
            "face-not-credited", "Codes credit no reinforcement of a groove: face height is left out of the creditable."
        )
    by_test = None if creditable.rules is None else creditable.rules.groove.by_test
    if by_test is not None and request.preparation.depth > 0.0:
        remarks.caution(
            "depth-consistently-achieved",
            "No fixed amount is taken off the prepared depth: the throat is the depth consistently achieved, to be"
            " shown"
            " by procedure test.",
            by_test,
        )
    if finish.to != "as-welded" and finish.below > 0.0 and not at_most(finish.below, INCH / 32):
        remarks.caution(
            "thinning",
            f"Grinding {units.text(finish.below)} under the plane thins the part beyond the usual limit.",
            THINNING,
        )
    if finish.to == "radius" and seam.width is None:
        run = tangent_run(finish.radius or 0.0, seam.angle)
        remarks.caution(
            "radius-needs-width", f"The blend runs {units.text(run)} onto each outer face from the sharp corner."
        )
    if seam.kind in CORNERS or (seam.kind == "fillet"):
        remarks.caution(
            "root-opening",
            "A load that opens the seam from its root bends the throat; that is not in these figures.",
        )
