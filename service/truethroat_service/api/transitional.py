"""Capabilities that still have a schema and an answer by hand."""

from types import SimpleNamespace

from ..application.as_welded import as_welded
from ..application.as_welded.examples import EXAMPLES as AS_WELDED
from ..application.joint_plan import joint_plan
from ..application.joint_plan.examples import EXAMPLES as JOINT_PLAN
from .schemas.as_welded import AsWeldedSchema
from .schemas.joint_plan import JointPlanSchema

TRANSITIONAL = (
    SimpleNamespace(
        capability=SimpleNamespace(
            use_case=as_welded,
            operation="as_welded",
            path="as-welded",
            meaning="Whether a weld as gauged has its throat and keeps its quality level.",
            summary="What a weld is worth as gauged.",
            examples=AS_WELDED,
            answer="AsWeldedAnswer",
        ),
        schema=AsWeldedSchema(),
    ),
    SimpleNamespace(
        capability=SimpleNamespace(
            use_case=joint_plan,
            operation="joint_plan",
            path="joint-plan",
            meaning="Every way to make one joint, sized, costed and ranked, with what is refused and why.",
            summary="Every way to make one joint, ranked.",
            examples=JOINT_PLAN,
            answer="JointPlanAnswer",
        ),
        schema=JointPlanSchema(),
    ),
)
