"""Use case: every way to make one joint, sized and costed on the same rules, ranked, and what each is held to."""

from collections.abc import Mapping
from dataclasses import asdict, dataclass, replace
from math import pi
from types import MappingProxyType
from typing import Any

from ...engine.formula import off_the_sheet, working
from ...engine.rounding import SAME, at_least, at_most
from ...engine.rule_set import RuleSet
from ..core.answers import Answered, answered
from ..core.codes import CautionCode, Verdict
from ..core.faults import Faults
from ..core.left_out import LeftOut
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints.metals import check_scope, is_hollow, metals
from ..joints.penetration_remarks import remark_on_penetration
from ..joints.quality_sets import Quality
from ..joints.rule_sets import chosen
from ..joints.seam_checks import check_tolerance
from ..joints.seams import FINISHES
from ..joints.throat_budget import ThroatBudget, budget, throat_budget
from ..joints.throat_chance import Spread, chance_short
from . import costs as plan_costs
from .answer import Cost, JointPlanAnswer, PlanCosts, PlannedWay, PlanParts, RefusedWay, WayName
from .asking import Parts, Unworkable
from .hold import hold, most_face
from .practicable import impracticable
from .ranking import Ranked, comparable, ranked, weighted
from .request import JointPlanRequest
from .ways import WAYS
from .ways.way import Made

_PASSED_ON: Mapping[Verdict, CautionCode] = MappingProxyType(
    {
        Verdict.SHORT: "preheat-short",
        Verdict.OVER: "hardness-over",
        Verdict.TOO_FAST: "too-fast",
        Verdict.TOO_SLOW: "too-slow",
        Verdict.RAISED: "raised",
        Verdict.HIGH: "high",
    }
)
"""Verdicts of single resources that a plan passes on of every way, and the caution that does."""


@dataclass(frozen=True, slots=True)
class _Way:
    """A way that works, with all that was found of it."""

    name: WayName
    laid: Made
    answers: Mapping[str, Answered[Any]]
    costs: PlanCosts
    impracticable: tuple[str, ...]
    left_out: tuple[LeftOut, ...]
    budget: ThroatBudget | None
    chance: float | None


def joint_plan(request: JointPlanRequest) -> Answered[JointPlanAnswer]:
    """Every way to make one joint, sized, costed and ranked, with what is refused and why.

    Lengths are in mm, forces in N, angles in rad, times in s. Raises ``Refused`` with every fault found.
    """
    units = Units(request.common.units)
    remarks = Remarks(units)
    rules = _check(request, units)
    quality = request.quality or rules.quality
    ways: list[_Way] = []
    refused: list[RefusedWay] = []
    with working() as sheet:
        for name, make in WAYS[request.joint.kind].items():
            parts = Parts()
            try:
                laid = make(request, parts)
            except Unworkable as error:
                refused.append(RefusedWay(name, error.reasons))
                continue
            way = _way(request, name, laid, parts)
            too_high = _too_high(request, laid, quality, units)
            if too_high is None:
                ways.append(way)
            else:
                refused.append(RefusedWay(name, (too_high,)))
    weights = request.weights.by_kind()
    places = ranked([way.costs.by_kind() for way in ways], weights, [bool(way.impracticable) for way in ways])
    order = sorted(range(len(ways)), key=lambda index: (places[index].rank, index))
    compared = comparable([way.costs.by_kind() for way in ways], weights) if ways else ()
    _say(request, ways, order, compared, remarks)
    return answered(
        "joint_plan",
        replace(request, access=request.reach),
        sheet,
        remarks,
        Verdict.ENOUGH if ways else Verdict.CANNOT_BE_REACHED,
        JointPlanAnswer(
            recommended=ways[order[0]].name if ways and not ways[order[0]].impracticable else None,
            compared_by=compared,
            quality=quality,
            ways=tuple(
                _planned(request, ways, places, index, place == 0, quality) for place, index in enumerate(order)
            ),
            refused=tuple(refused),
        ),
        rule_set=rules.id,
        parameters=rules.parameters,
        rests_on=tuple(answer for way in ways for answer in way.answers.values()),
    )


def _check(request: JointPlanRequest, units: Units) -> RuleSet:
    """Rule set, once everything fits together."""
    faults = Faults(units)
    rules, beta_w = chosen(request.rule_set, request.parameters, faults)
    kind, basis = request.joint.kind, request.basis
    if kind == "outside-corner" and basis != "throat":
        faults.inconsistent("#/basis", 'an outside corner is planned for a throat: send basis "throat"')
    if kind not in ("outside-corner", "butt") and basis == "throat":
        faults.inconsistent("#/basis", f"a {kind} is planned for a load or for full strength, not for a throat")
    for field, belongs in (("load", "load"), ("required_throat", "throat")):
        given = getattr(request, field) is not None
        if given != (basis == belongs):
            said = f"is missing: basis {basis} goes by it" if not given else f"goes with basis {belongs}, not {basis}"
            faults.inconsistent(f"#/{field}", said)
    if request.required_throat is not None and not at_most(request.required_throat, min(request.thickness)):
        faults.out_of_range(
            "#/required_throat",
            f"{units.text(request.required_throat)} is more than the thinner part's"
            f" {units.text(min(request.thickness))}: the part itself would part first",
        )
    possible = {"outside-corner": FINISHES["open-corner"], "butt": FINISHES["butt"]}.get(kind, ("as-welded",))
    if request.finish.to not in possible:
        faults.inconsistent("#/finish/to", f"a {kind} is finished {' or '.join(possible)}, not {request.finish.to}")
    root, thinner = request.penetration, min(request.thickness)
    check_tolerance("#/penetration/tolerance", root.tolerance, root.depth, "depth", faults)
    check_tolerance(
        "#/tolerances/thickness", request.tolerances.thickness, thinner, "thickness", faults, leaves_some=True
    )
    _check_companions(request, faults)
    _check_access(request, faults)
    if basis != "throat":
        if rules.weld is None:
            faults.inconsistent("#/rule_set", f"{rules.id} claims no strength: it plans for a throat alone")
        else:
            metals(rules, request.parts, request.filler, beta_w, None, faults, Remarks(units), request.process)
    elif rules.weld is not None:
        check_scope(rules, request.parts, faults)
    faults.refuse()
    return rules


def _check_access(request: JointPlanRequest, faults: Faults) -> None:
    """Find a hollow section whose access is not given: its inside can seldom be reached."""
    hollow = [part.material for part in request.parts if part.material and is_hollow(part.material)]
    if hollow and request.access is None:
        faults.inconsistent(
            "#/access",
            f'is missing: {hollow[0]} is a hollow section, whose inside can seldom be reached; send "one-side" or'
            ' "both-sides"',
        )


def _check_companions(request: JointPlanRequest, faults: Faults) -> None:
    """Find fields that go with another one, or with another kind of joint."""
    window, kind = request.cooling_window, request.joint.kind
    if window is not None and not at_least(window.most, window.least):
        faults.inconsistent("#/cooling_window/most", "is shorter than the least")
    if window is not None and request.arc is None:
        faults.inconsistent("#/cooling_window", "goes with arc, which is not given")
    if request.hydrogen is not None and request.composition is None:
        faults.inconsistent("#/hydrogen", "goes with composition, which is not given")
    if request.preheat is not None and (request.arc, request.composition, request.preheat_category) == (None,) * 3:
        faults.inconsistent("#/preheat", "goes with arc, composition or preheat_category, and none is given")
    if request.intermittent is not None and kind not in ("tee", "lap"):
        faults.inconsistent("#/intermittent", f"a {kind} has no intermittent way; leave it out")
    if request.held_from_turning and kind == "outside-corner":
        faults.inconsistent("#/held_from_turning", f"changes nothing of a {kind}; leave it out")
    if request.bevelling_speed is not None and kind in ("lap", "inside-corner"):
        faults.inconsistent("#/bevelling_speed", f"no edge of a {kind} is bevelled; leave it out")
    if kind == "butt" and abs(request.joint.angle - pi / 2) > SAME:
        faults.inconsistent("#/joint/angle", "the parts of a butt lie in one plane; leave it out")
    if request.basis == "throat" and request.joint.root_gap > 0.0:
        faults.inconsistent("#/joint/root_gap", "a seam prepared for a throat is closed tight; leave it out")
    _check_tolerances(request, faults)


_LOOSE: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "legs": ("tee", "lap", "inside-corner", "outside-corner"),
        "depth": ("tee", "outside-corner", "butt"),
        "thickness": ("outside-corner", "butt"),
        "face_height": ("outside-corner", "butt"),
    }
)
"""Joints some way of which each tolerance counts in."""


def _check_tolerances(request: JointPlanRequest, faults: Faults) -> None:
    """Find tolerances that count in no way of the joint, and a spread of none."""
    told = asdict(request.tolerances)
    for name, kinds in _LOOSE.items():
        by_throat = name in ("depth", "legs") or request.basis == "throat"
        if told[name] and (request.joint.kind not in kinds or not by_throat):
            faults.inconsistent(f"#/tolerances/{name}", "counts in no way to make this joint; leave it out")
    spread = request.spread
    if spread is None:
        return
    if not (any(told.values()) or request.finish.tolerance or request.penetration.tolerance):
        faults.inconsistent("#/spread", "goes with a tolerance, and none is given")
    if spread.deviations is not None and spread.distribution != "normal":
        faults.inconsistent("#/spread/deviations", "goes with a normal distribution; leave it out")


def _too_high(request: JointPlanRequest, laid: Made, quality: Quality | None, units: Units) -> str | None:
    """Why a face may not be left so high, if it may not."""
    most = None if laid.face is None else most_face(request, laid, quality)
    if most is None or laid.face is None or at_most(laid.face, most):
        return None
    return f"a face of {units.text(laid.face)} is more than the {units.text(most)} that {quality} allows"


def _way(request: JointPlanRequest, name: WayName, laid: Made, parts: Parts) -> _Way:
    """Costs, budget and chance of a way."""
    left_out: dict[str, str] = {}
    with off_the_sheet():
        costs = plan_costs.costs(request, laid, parts, left_out)
    account = chance = None
    if laid.judged is None:
        left_out["budget"] = "its throat is that of the parts or of no one section"
    else:
        judged = laid.judged
        account = throat_budget(budget(judged.shape, judged.lengths, judged.worse, judged.required))
        chance = chance_short(judged.shape, judged.lengths, judged.worse, judged.required, request.spread or Spread())
    reasons = tuple(LeftOut(field, reason) for field, reason in left_out.items())
    counted = parts.answers.get("filler_quantity")
    against = impracticable(request, laid, costs, None if counted is None else counted.result)
    return _Way(name, laid, parts.answers, costs, against, reasons, account, chance)


def _planned(
    request: JointPlanRequest,
    ways: list[_Way],
    places: list[Ranked],
    index: int,
    first: bool,
    quality: Quality | None,
) -> PlannedWay:
    """One way; the single resources' answers come whole for the first, or for all if asked."""
    way, place = ways[index], places[index]
    return PlannedWay(
        way=way.name,
        size=way.laid.size,
        rank=place.rank,
        impracticable=way.impracticable,
        score=place.score,
        dominated_by=tuple(ways[other].name for other in place.dominated_by),
        costs=way.costs,
        budget=way.budget,
        chance_short=way.chance,
        hold=hold(request, way.laid, quality),
        verdicts={operation: answer.verdict for operation, answer in way.answers.items()},
        left_out=way.left_out,
        parts=PlanParts(**way.answers) if first or request.detail == "all" else None,
    )


def _say(
    request: JointPlanRequest, ways: list[_Way], order: list[int], compared: tuple[Cost, ...], remarks: Remarks
) -> None:
    """Say what is recommended, what stands against it and what was left out."""
    if not ways:
        remarks.because("No way keeps the rules: each is refused for the reason beside it.")
        return
    best = ways[order[0]]
    known = [kind for kind in weighted(request.weights.by_kind()) if best.costs.by_kind()[kind] is not None]
    if best.impracticable:
        remarks.because(
            f"No way that keeps the rules is one that a shop would lay. Of {best.name}: {' '.join(best.impracticable)}"
        )
    elif len(ways) == 1:
        remarks.because(f"{best.name} is the one way that keeps the rules.")
    elif known:
        remarks.because(f"{best.name} comes first of {len(ways)} ways by {', '.join(known)} at the weights given.")
    else:
        remarks.because("Nothing that carries weight is known of every way, so they are not told apart.")
    kinds = weighted(request.weights.by_kind())
    costs = [way.costs.by_kind() for way in ways]
    of_none = [kind for kind in kinds if all(way[kind] is None for way in costs)]
    of_some = [kind for kind in kinds if kind not in (*compared, *of_none)]
    texts = [f"Not known of any way: {', '.join(of_none)}."] if of_none else []
    if of_some:
        texts.append(f"Not known of every way: {', '.join(of_some)}. A way of which less is known comes later.")
    if texts and len(ways) > 1:
        remarks.caution("not-compared", " ".join(texts))
    _caution(request, [ways[index] for index in order], remarks)


def _caution(request: JointPlanRequest, ways: list[_Way], remarks: Remarks) -> None:
    """Say what the plan rests on: its own, then what the single resources say of the ways."""
    remark_on_penetration(request.penetration, remarks, "No way counts on it.")
    seen = {caution.code for caution in remarks.cautions}
    for caution in (caution for way in ways for answer in way.answers.values() for caution in answer.cautions):
        if caution.code not in seen:
            seen.add(caution.code)
            remarks.cautions.append(caution)
    for way in ways:
        if way.chance:
            remarks.caution(
                "may-be-short",
                f"{way.name}: {way.chance:.2%} of such seams would be short, their lengths beyond the tolerances.",
                (request.spread or Spread()).source,
            )
        for operation, answer in way.answers.items():
            if answer.verdict in _PASSED_ON:
                remarks.caution(
                    _PASSED_ON[answer.verdict], f"{way.name}: {operation.replace('_', ' ')} says {answer.verdict}."
                )
    if any(way.laid.cuts for way in ways):
        bevelled = "" if request.bevelling_speed is None else " and bevelling"
        remarks.caution(
            "not-all-timed", f"Time is that of welding{bevelled}; other cutting, gouging and grinding is not."
        )
