"""Capabilities that still have a schema and an answer by hand."""

from types import SimpleNamespace

from ..application.as_welded import as_welded
from ..application.as_welded.examples import EXAMPLES as AS_WELDED
from ..application.groove_size import groove_size
from ..application.groove_size.examples import EXAMPLES as GROOVE_SIZE
from ..application.joint_plan import joint_plan
from ..application.joint_plan.examples import EXAMPLES as JOINT_PLAN
from ..application.weld_group import weld_group
from ..application.weld_group.examples import EXAMPLES as WELD_GROUP
from .schemas.as_welded import AsWeldedSchema
from .schemas.groove_size import GrooveSizeSchema
from .schemas.joint_plan import JointPlanSchema
from .schemas.weld_group import WeldGroupSchema

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
            use_case=groove_size,
            operation="groove_size",
            path="groove-size",
            meaning="How much groove, plug or slot is enough, and the preparation it needs.",
            summary="How much groove, plug or slot is enough.",
            examples=GROOVE_SIZE,
            answer="GrooveSizeAnswer",
        ),
        schema=GrooveSizeSchema(),
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
    SimpleNamespace(
        capability=SimpleNamespace(
            use_case=weld_group,
            operation="weld_group",
            path="weld-group",
            meaning="Lines of weld under any force and moment.",
            summary="Lines of weld under any force and moment.",
            examples=WELD_GROUP,
            answer="WeldGroupAnswer",
        ),
        schema=WeldGroupSchema(),
    ),
)
