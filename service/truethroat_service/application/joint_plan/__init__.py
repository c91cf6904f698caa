"""Use case: every way to make one joint, sized and costed by the same rules, ranked, with the limits for each.

A plan calculates nothing that a single resource does: it asks the resources and shows their answers unchanged. It
counts proven penetration only, and the tolerances of the shop, so no way it shows is short at the worst of them. A
normal spread may still exceed a tolerance; the caution ``may-be-short`` then gives the chance, which is counted on
Halton's points, so that the same request has the same chance. A load across a joint that is welded on one side opens it
from its root: an EN fillet of a square tee takes the model of EN 1993-1-8 4.12, and any other such way is refused
unless the joint is held from turning. A lap counts the reduction of long welds.
"""

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
from ..joints.rule_sets import chosen, rule_set
from ..joints.seam_checks import check_root_pass, check_tolerance
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
"""Verdicts of single resources that a plan repeats for each way, with the caution that repeats them."""


@dataclass(frozen=True, slots=True)
class _Way:
    """A way that keeps the rules, with its answers, costs, budget and chance."""

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

    The request and the answer are in engine units: lengths in mm, forces in N, angles in rad, times in s. The answer
    holds the ways best first, each with its costs, budget, limits and the verdicts of the resources, and the ways
    refused. Raises ``Refused`` with every fault of the request.
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
    """Rule set of the plan; raises ``Refused`` where the request does not fit."""
    faults = Faults(units)
    rules, beta_w = chosen(request.rule_set, request.parameters, faults)
    kind, basis = request.joint.kind, request.basis
    if kind == "outside-corner" and basis != "throat":
        faults.inconsistent("#/basis", 'must be "throat" for an outside-corner')
    if kind not in ("outside-corner", "butt") and basis == "throat":
        faults.inconsistent("#/basis", f'must be "load" or "full-strength" for joint "{kind}"')
    for field, belongs in (("load", "load"), ("required_throat", "throat")):
        given = getattr(request, field) is not None
        if given != (basis == belongs):
            needed = f'is required with basis "{basis}"'
            unused = f'applies to basis "{belongs}" only; leave it out'
            faults.inconsistent(f"#/{field}", unused if given else needed)
    if request.required_throat is not None and not at_most(request.required_throat, min(request.thickness)):
        faults.out_of_range(
            "#/required_throat",
            f"must be at most the {units.text(min(request.thickness))} of the thinner part; it is"
            f" {units.text(request.required_throat)}",
        )
    possible = {"outside-corner": FINISHES["open-corner"], "butt": FINISHES["butt"]}.get(kind, ("as-welded",))
    if request.finish.to not in possible:
        faults.inconsistent("#/finish/to", f"must be {' or '.join(possible)} for a {kind}; it is {request.finish.to}")
    root, thinner = request.penetration, min(request.thickness)
    check_tolerance("#/penetration/tolerance", root.tolerance, root.depth, "depth", faults)
    check_root_pass(rule_set(request.rule_set), request.root_pass, request.process, faults)
    check_tolerance(
        "#/tolerances/thickness", request.tolerances.thickness, thinner, "thickness", faults, leaves_some=True
    )
    _check_companions(request, faults)
    _check_access(request, faults)
    if basis != "throat":
        if rules.weld is None:
            faults.inconsistent("#/rule_set", f'must be one with strengths for basis "{basis}"; {rules.id} has none')
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
    """Add a fault for each field that needs another one, or another kind of joint."""
    window, kind = request.cooling_window, request.joint.kind
    if window is not None and not at_least(window.most, window.least):
        faults.inconsistent("#/cooling_window/most", "must be at least the least time of the window")
    if window is not None and request.arc is None:
        faults.inconsistent("#/cooling_window", "needs arc; send it too")
    if request.hydrogen is not None and request.composition is None:
        faults.inconsistent("#/hydrogen", "needs composition; send it too")
    if request.preheat is not None and (request.arc, request.composition, request.preheat_category) == (None,) * 3:
        faults.inconsistent("#/preheat", "needs arc, composition or preheat_category; send one of them too")
    if request.intermittent is not None and kind not in ("tee", "lap"):
        faults.inconsistent("#/intermittent", f"does not apply to a {kind}; leave it out")
    if request.held_from_turning and kind == "outside-corner":
        faults.inconsistent("#/held_from_turning", f"does not apply to a {kind}; leave it out")
    if request.bevelling_speed is not None and kind in ("lap", "inside-corner"):
        faults.inconsistent(
            "#/bevelling_speed", f"does not apply to a {kind}, which has no edge to bevel; leave it out"
        )
    if kind == "butt" and abs(request.joint.angle - pi / 2) > SAME:
        faults.inconsistent("#/joint/angle", "does not apply to a butt, whose parts lie in one plane; leave it out")
    if request.basis == "throat" and request.joint.root_gap > 0.0:
        faults.inconsistent(
            "#/joint/root_gap", 'does not apply to basis "throat", which closes the seam tight; leave it out'
        )
    _check_tolerances(request, faults)


_LOOSE: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "legs": ("tee", "lap", "inside-corner", "outside-corner"),
        "depth": ("tee", "outside-corner", "butt"),
        "thickness": ("outside-corner", "butt"),
        "face_height": ("outside-corner", "butt"),
    }
)
"""Kinds of joint for which each tolerance counts in some way."""


def _check_tolerances(request: JointPlanRequest, faults: Faults) -> None:
    """Add a fault for each tolerance that counts in no way of the joint, and for a spread without a tolerance."""
    given = asdict(request.tolerances)
    for name, kinds in _LOOSE.items():
        by_throat = name in ("depth", "legs") or request.basis == "throat"
        if given[name] and (request.joint.kind not in kinds or not by_throat):
            faults.inconsistent(
                f"#/tolerances/{name}",
                f"does not apply to a {request.joint.kind} with basis {request.basis}; leave it out",
            )
    spread = request.spread
    if spread is None:
        return
    if not (any(given.values()) or request.finish.tolerance or request.penetration.tolerance):
        faults.inconsistent("#/spread", "needs a tolerance; send one too")
    if spread.deviations is not None and spread.distribution != "normal":
        faults.inconsistent("#/spread/deviations", 'applies to distribution "normal" only; leave it out')


def _too_high(request: JointPlanRequest, laid: Made, quality: Quality | None, units: Units) -> str | None:
    """Why a face must not be left so high; None where it may."""
    most = None if laid.face is None else most_face(request, laid, quality)
    if most is None or laid.face is None or at_most(laid.face, most):
        return None
    return f"The face of {units.text(laid.face)} is higher than the {units.text(most)} that {quality} allows."


def _way(request: JointPlanRequest, name: WayName, laid: Made, parts: Parts) -> _Way:
    """Costs, budget and chance of a way."""
    left_out: dict[str, str] = {}
    with off_the_sheet():
        costs = plan_costs.costs(request, laid, parts, left_out)
    account = chance = None
    if laid.judged is None:
        left_out["budget"] = "needs a weld with one section; here the parts or several sections decide the throat"
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
    """Add what is recommended and by which costs, and the costs that are not compared."""
    if not ways:
        remarks.because("No way keeps the rules; see refused for the reasons.")
        return
    best = ways[order[0]]
    known = [kind for kind in weighted(request.weights.by_kind()) if best.costs.by_kind()[kind] is not None]
    if best.impracticable:
        remarks.because(
            f"No way that keeps the rules is one that a shop would lay. Of {best.name}: {' '.join(best.impracticable)}"
        )
    elif len(ways) == 1:
        remarks.because(f"Only {best.name} keeps the rules.")
    elif known:
        remarks.because(
            f"{best.name} is the first of {len(ways)} ways, compared by {', '.join(known)} with the weights given."
        )
    else:
        remarks.because("No cost that has a weight is known, so the ways are not ranked.")
    kinds = weighted(request.weights.by_kind())
    costs = [way.costs.by_kind() for way in ways]
    of_none = [kind for kind in kinds if all(way[kind] is None for way in costs)]
    of_some = [kind for kind in kinds if kind not in (*compared, *of_none)]
    texts = [f"The ranking leaves out costs that are not known for any way: {', '.join(of_none)}."] if of_none else []
    if of_some:
        texts.append(
            f"These costs are not known for every way: {', '.join(of_some)}. A way of which less is known comes later."
        )
    if texts and len(ways) > 1:
        remarks.caution("not-compared", " ".join(texts))
    _caution(request, [ways[index] for index in order], remarks)


def _caution(request: JointPlanRequest, ways: list[_Way], remarks: Remarks) -> None:
    """Add the cautions of the plan itself, then those of the single resources, each once."""
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
                f"{way.name}: {way.chance:.2%} of such seams are expected to be short, beyond their tolerances.",
                (request.spread or Spread()).source,
            )
        for operation, answer in way.answers.items():
            if answer.verdict in _PASSED_ON:
                remarks.caution(
                    _PASSED_ON[answer.verdict],
                    f"{way.name}: {operation.replace('_', ' ')} ends in the verdict {answer.verdict}.",
                )
    if any(way.laid.cuts for way in ways):
        bevelled = "" if request.bevelling_speed is None else " and bevelling"
        remarks.caution(
            "not-all-timed",
            f"The time is that of welding{bevelled}. It does not include other cutting, gouging and grinding.",
        )
