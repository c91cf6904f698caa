"""Shape of an answer of ``/v1/joint-plan``."""

from ....application.joint_plan import KINDS
from ....application.joint_plan.ways import WAYS
from ....application.joints.quality_sets import QUALITY_SETS
from .shapes import LENGTH, Json, listed, nullable, number, record, ref, result, text

_WAY: Json = {"type": "string", "enum": list(dict.fromkeys(name for ways in WAYS.values() for name in ways))}
_COST: Json = {"type": "string", "enum": list(KINDS)}
_PARTS = {
    "fillet_size": "FilletSizeAnswer",
    "groove_size": "GrooveSizeAnswer",
    "bevel_depth": "BevelDepthAnswer",
    "grind_allowance": "GrindAllowanceAnswer",
    "filler_quantity": "FillerQuantityAnswer",
    "heat": "HeatAnswer",
    "distortion": "DistortionAnswer",
    "crack_risk": "CrackRiskAnswer",
}
_HOLD = ("least_leg", "least_throat", "most_convexity", "most_reinforcement", "leave_face_height")

COMPONENTS: dict[str, Json] = {
    "PlanCosts": record(
        "What a way takes; null where it cannot be told.",
        {
            "filler": {**nullable(ref("MassAnswer")), "description": "Weld metal."},
            "time": {**nullable(ref("WorkingTimeAnswer")), "description": "On the clock, at most."},
            "heat": {**nullable(ref("EnergyAnswer")), "description": "Arc energy put into the joint."},
            "distortion": {**nullable(ref("AngleAnswer")), "description": "Angular change, at most."},
        },
    ),
    "PlanHold": record(
        "What each weld is held to; null where the way or the quality set has none.",
        dict.fromkeys(_HOLD, nullable(LENGTH)),
    ),
    "PlanParts": record(
        "Answers of the single resources, as each gives it; null where a way has no use for one.",
        {operation: nullable(ref(component)) for operation, component in _PARTS.items()},
    ),
    "PlannedWay": record(
        "A way that keeps the rules.",
        {
            "way": _WAY,
            "size": text("What to weld and cut, in words."),
            "rank": {"type": "integer", "description": "Equal scores share one."},
            "score": number("Weighted mean of its costs, each over the least of any way."),
            "dominated_by": {**listed(_WAY), "description": "Ways no worse in anything and better in something."},
            "costs": ref("PlanCosts"),
            "budget": nullable(ref("ThroatBudget")),
            "chance_short": nullable(number("Share of such seams whose throat is short, at the tolerances given.")),
            "hold": ref("PlanHold"),
            "verdicts": {
                "type": "object",
                "additionalProperties": ref("Verdict"),
                "description": "Verdict of each single resource asked.",
            },
            "left_out": {**listed(ref("LeftOut")), "description": "Resources that had no answer, and why."},
            "parts": {**nullable(ref("PlanParts")), "description": "Null where the request did not ask for it."},
        },
    ),
    "JointPlanAnswer": result(
        "Every way to make one joint.",
        {
            "recommended": {**nullable(_WAY), "description": "The first of the ways; null where none keeps the rules."},
            "compared_by": {**listed(_COST), "description": "Costs with weight that are known of every way."},
            "quality": nullable({"type": "string", "enum": list(QUALITY_SETS)}),
            "ways": {**listed(ref("PlannedWay")), "description": "Best first."},
            "refused": listed(record("A way that does not keep the rules.", {"way": _WAY, "why": listed(text())})),
        },
    ),
}
