"""Use case: how deep to prepare an edge before welding so that the finished seam keeps its throat.

The depth counts proven penetration and no other, and no face height. Proven penetration replaces the code's deduction;
it is never added to it. The depth is found for the worst case of the tolerances and is then rounded up to a step.
"""

from dataclasses import dataclass, replace

from ...engine import section
from ...engine.formula import off_the_sheet, working
from ...engine.rounding import at_least, at_most, down, up
from ...engine.rule_set import RuleSet, Unlisted
from ..core.answers import Answered, answered
from ..core.codes import RemedyCode, Verdict
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints import grooves
from ..joints.given import usual_depth_step
from ..joints.penetration_remarks import remark_on_achieved_depth, remark_on_penetration
from ..joints.rule_sets import rule_set
from ..joints.seam_checks import check_finish, check_penetration, check_seam
from ..joints.seams import DEFAULT_ANGLES, GrooveForm
from ..joints.throat_budget import Budget, seam_section, throat_budget
from .answer import Alternative, BevelDepthAnswer, PreparationCallout
from .request import BevelDepthRequest


@dataclass(frozen=True, slots=True)
class _Need:
    """Depth that a groove needs, rounded up and unrounded, and the deduction of the rules, all in mm."""

    depth: float
    deduction: float
    unrounded: float


def bevel_depth(request: BevelDepthRequest) -> Answered[BevelDepthAnswer]:
    """How deep to prepare an edge before welding.

    The request and the answer are in engine units: lengths in mm, angles in rad. The answer holds the depth and what
    follows from it, and alternatives with less metal first; the depth is None where the thickness does not suffice.
    Raises ``Refused`` with every fault of the request.
    """
    remarks = Remarks(Units(request.common.units))
    with working() as sheet:
        rules = None if request.rule_set is None else rule_set(request.rule_set)
        need = _check(request, rules)
        request = _filled(request)
        limit = request.seam.runs_through - request.minimum_land
        fits = at_most(need.depth, limit)
        result = _result(request, need, remarks.units) if fits else _nothing(need)
        _remark(request, rules, need, limit, remarks)
        with off_the_sheet():
            result = replace(result, alternatives=_alternatives(request, rules, need, limit))
    return answered(
        "bevel_depth",
        request,
        sheet,
        remarks,
        Verdict.ENOUGH if fits else Verdict.FULL_PENETRATION_NEEDED,
        result,
        rule_set=request.rule_set,
        parameters={} if rules is None else rules.parameters,
    )


def _filled(request: BevelDepthRequest) -> BevelDepthRequest:
    """Request with the defaults that depend on its groove and units; a bevel on both parts is a V."""
    return replace(
        request,
        groove=request.form,
        groove_angle=request.angle,
        bevelled="both" if request.both else request.bevelled or 1,
        depth_step=_step(request),
    )


def _check(request: BevelDepthRequest, rules: RuleSet | None) -> _Need:
    """Depth that the seam needs; raises ``Refused`` where the request does not fit."""
    faults = Faults(Units(request.common.units))
    seam, finish = request.seam, request.finish
    check_seam(seam, faults)
    check_finish(seam, finish, faults)
    check_penetration(seam, request.penetration, faults)
    if request.groove in ("single-v", "single-u") and request.bevelled in (1, 2):
        faults.inconsistent("#/bevelled", f'must be "both" for a {request.groove}, which cuts both parts')
    if request.root_radius is not None and request.groove not in ("single-j", "single-u"):
        faults.inconsistent("#/root_radius", f"does not apply to a {request.groove}; leave it out")
    thickness = seam.thickness or (0.0, 0.0)
    room = min(thickness)
    if seam.kind != "edge" and not at_most(request.required_throat, room):
        faults.out_of_range(
            "#/required_throat",
            f"must be at most the {faults.units.text(room)} of the thinner part; it is"
            f" {faults.units.text(request.required_throat)}",
        )
    elif seam.kind == "closed-corner" and not at_most(_ground(request), thickness[1]):
        faults.out_of_range(
            "#/finish/below" if finish.below else "#/finish/tolerance",
            f"must leave the required throat in the {faults.units.text(thickness[1])} of part 2; grinding leaves less"
            " at any depth",
        )
    need = None
    if not faults:
        try:
            need = _need(request, rules, request.form, request.angle, _step(request))
        except Unlisted as error:
            for field, text in error.faults:
                faults.out_of_scope(f"#/{field}", text)
    faults.refuse()
    assert need is not None  # noqa: S101 - refused otherwise
    return need


def _step(request: BevelDepthRequest) -> float:
    """Step that the depth is rounded up to, mm."""
    if request.depth_step is not None:
        return request.depth_step
    return usual_depth_step(request.common.units)


def _ground(request: BevelDepthRequest) -> float:
    """Distance from the root to the plane of the face that keeps the throat where the grinder cuts deepest, mm."""
    finish = request.finish
    return request.required_throat + (0.0 if finish.to == "as-welded" else finish.below + finish.tolerance)


def _need(request: BevelDepthRequest, rules: RuleSet | None, form: GrooveForm, angle: float, step: float) -> _Need:
    """Depth that keeps the throat in the worst case; raises ``Unlisted`` for a groove that the rules do not list."""
    needed = _ground(request)
    if request.finish.to == "radius" and request.seam.thickness is not None:
        needed = float(
            section.clearance_for_blend(R=request.finish.radius or 0.0, q=needed, v=request.seam.thickness[1])
        )
    proven = request.proven
    unrounded = needed - proven.depth + proven.tolerance + request.depth_tolerance
    if proven.depth > 0.0 and unrounded - request.depth_tolerance <= 0.0:
        return _Need(0.0, 0.0, 0.0)
    taken = 0.0
    if proven.depth <= 0.0:
        taken = grooves.deduction(rules, grooves.coded(form, angle, request.process, request.position))
    unrounded += taken
    return _Need(float(up(unrounded, step)), taken, unrounded)


def _budget(request: BevelDepthRequest, need: _Need) -> Budget:
    """Budget of the prepared seam: its depth and its proven penetration, no face, and the parts as thick as drawn."""
    section_ = seam_section(
        replace(request.seam, thickness_tolerance=0.0),
        request.finish,
        request.penetration.counted("strength"),
        depth=need.depth,
        depth_tolerance=request.depth_tolerance if need.depth > 0.0 else 0.0,
        deduction=need.deduction,
    )
    return section_.budget(request.required_throat)


def _result(request: BevelDepthRequest, need: _Need, units: Units) -> BevelDepthAnswer:
    """Answer for a depth that fits, without its alternatives."""
    cut = grooves.cut(request.form, request.angle, need.depth, request.both, request.root_radius)
    budget = _budget(request, need)
    return BevelDepthAnswer(
        depth=need.depth,
        setback=cut.setback,
        land=None if request.seam.kind == "edge" else request.seam.runs_through - need.depth,
        deduction=need.deduction,
        budget=throat_budget(budget),
        area=cut.area,
        filler=grooves.deposited_metal(cut.area),
        callout=_callout(request, need, budget, units),
        alternatives=(),
    )


def _nothing(need: _Need) -> BevelDepthAnswer:
    """Answer where no partial preparation suffices, without its alternatives."""
    return BevelDepthAnswer(None, None, None, need.deduction, None, None, None, None, ())


def _callout(request: BevelDepthRequest, need: _Need, budget: Budget, units: Units) -> PreparationCallout:
    """Preparation as drawing text: ISO 2553 writes the throat after an s, AWS A2.4 the depth, then (size)."""
    form = request.form.replace("single-", "single ").replace(" v", " V").replace(" j", " J").replace(" u", " U")
    angle = f"{grooves.degrees(request.angle)} deg"
    throat, depth = units.text(budget.judged.as_welded), units.text(need.depth)
    if need.depth <= 0.0:
        return PreparationCallout(f"s {throat}, square edge", f"({throat}) square groove")
    return PreparationCallout(
        f"s {throat}, {form}, {angle}, prepared {depth} deep", f"{depth} ({throat}) {form} groove, {angle}"
    )


def _alternatives(
    request: BevelDepthRequest, rules: RuleSet | None, need: _Need, limit: float
) -> tuple[Alternative, ...]:
    """Other ways to reach the same throat under the same rules, the one with the least metal first."""
    ways: list[tuple[RemedyCode, float, float]] = []
    for form, angle in DEFAULT_ANGLES.items():
        if form == request.form:
            continue
        try:
            other = _need(request, rules, form, angle, _step(request))
        except Unlisted:
            continue
        if other.depth > 0.0 and at_most(other.depth, limit):
            both = form in ("single-v", "single-u")
            ways.append((form, other.depth, grooves.cut(form, angle, other.depth, both, None).area))
    if request.seam.kind == "closed-corner":
        # An inside fillet needs no preparation, and nothing ground outside touches it.
        throat = float(up(request.required_throat, _step(request)))
        ways.append(("fillet-inside", throat, throat * throat))
    if not at_most(need.depth, limit):
        second = _second_side(request, need, limit)
        if second is not None:
            ways.append(("weld-second-side", *second))
        through = request.seam.runs_through
        area = grooves.cut(request.form, request.angle, through, request.both, request.root_radius).area
        ways.append(("full-penetration", through, area))
    return tuple(
        Alternative(do, size, area, grooves.deposited_metal(area))
        for do, size, area in sorted(ways, key=lambda way: way[2])
    )


def _second_side(request: BevelDepthRequest, need: _Need, limit: float) -> tuple[float, float] | None:
    """Throat of a weld on the second side, mm, and the area of both welds, mm2, where this side is cut to its land.

    The second weld is a fillet inside a corner, and the same groove again on the far side of a butt. None where there
    is no second side, or nothing of it can be prepared.
    """
    step = _step(request)
    depth = float(down(limit, step))
    proven = request.proven
    kept = depth - request.depth_tolerance - need.deduction + proven.depth - proven.tolerance
    if depth <= 0.0 or kept <= 0.0 or request.seam.kind == "edge":
        return None
    throat = float(up(_ground(request) - kept, step))
    area = grooves.cut(request.form, request.angle, depth, request.both, request.root_radius).area
    if request.seam.kind == "closed-corner":
        return throat, area + throat * throat
    far = throat + need.deduction + request.depth_tolerance
    if not at_most(depth + far, request.seam.runs_through):
        # Two grooves that meet are a full penetration, offered as such.
        return None
    return throat, area + grooves.cut(request.form, request.angle, far, request.both, request.root_radius).area


def _remark(request: BevelDepthRequest, rules: RuleSet | None, need: _Need, limit: float, remarks: Remarks) -> None:
    """Add the reasons for the depth, and the cautions on what it does not cover."""
    units = remarks.units
    if not at_most(need.depth, limit):
        remarks.because(
            f"A depth of {units.text(need.depth)} leaves less than the least land of"
            f" {units.text(request.minimum_land)}. Weld through the full thickness, or weld the second side too."
        )
        if at_most(need.unrounded, limit):
            remarks.because(
                f"Before rounding, {units.text(need.unrounded)} is deep enough and leaves that land; send a smaller"
                " depth_step."
            )
    elif need.depth <= 0.0:
        remarks.because("The proven penetration alone keeps the throat, so the edge needs no preparation.")
    else:
        remarks.because(
            f"A throat of {units.text(request.required_throat)} needs a depth of {units.text(need.unrounded)}; it is"
            f" rounded up to {units.text(need.depth)}."
        )
    if need.deduction > 0.0:
        remarks.because(f"{units.text(need.deduction)} of the depth is taken off at the root.")
    remark_on_penetration(request.penetration, remarks, "The depth keeps the throat without it.")
    if request.finish.to == "as-welded":
        remarks.caution(
            "face-not-credited", "The face height does not count: the depth keeps the throat of a face that is flush."
        )
    if rules is None:
        remarks.caution(
            "no-rule-set",
            "No rule_set is given, so nothing is taken off the prepared depth for a root that the weld does not reach.",
        )
    remark_on_achieved_depth(rules, remarks)
    if rules is not None and request.seam.thickness is not None:
        least = rules.groove.minimum_throat(min(request.seam.thickness))
        if least is not None and not at_least(request.required_throat, least[0]):
            remarks.caution(
                "below-minimum-throat",
                f"The required throat is smaller than the {units.text(least[0])} that the rules ask of a groove on this"
                " thickness.",
                least[1],
            )
