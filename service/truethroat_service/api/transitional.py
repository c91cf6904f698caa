"""Capabilities that still have a schema and an answer by hand."""

from types import SimpleNamespace

from ..application.bevel_depth import bevel_depth
from ..application.bevel_depth.examples import EXAMPLES as BEVEL_DEPTH
from ..application.break_test import break_test
from ..application.break_test.examples import EXAMPLES as BREAK_TEST
from ..application.grind_allowance import grind_allowance
from ..application.grind_allowance.examples import EXAMPLES as GRIND_ALLOWANCE
from ..application.groove_size import groove_size
from ..application.groove_size.examples import EXAMPLES as GROOVE_SIZE
from ..application.joint_plan import joint_plan
from ..application.joint_plan.examples import EXAMPLES as JOINT_PLAN
from ..application.weld_group import weld_group
from ..application.weld_group.examples import EXAMPLES as WELD_GROUP
from .schemas.bevel_depth import BevelDepthSchema
from .schemas.break_test import BreakTestSchema
from .schemas.grind_allowance import GrindAllowanceSchema
from .schemas.groove_size import GrooveSizeSchema
from .schemas.joint_plan import JointPlanSchema
from .schemas.weld_group import WeldGroupSchema

TRANSITIONAL = (
    SimpleNamespace(
        capability=SimpleNamespace(
            use_case=bevel_depth,
            operation="bevel_depth",
            path="bevel-depth",
            meaning="How deep to prepare an edge before welding.",
            summary="How deep to prepare an edge before welding.",
            examples=BEVEL_DEPTH,
            answer="BevelDepthAnswer",
        ),
        schema=BevelDepthSchema(),
    ),
    SimpleNamespace(
        capability=SimpleNamespace(
            use_case=break_test,
            operation="break_test",
            path="break-test",
            meaning="What opens a coupon from its root, and whether it breaks before its plate bends.",
            summary="What opens a coupon from its root.",
            examples=BREAK_TEST,
            answer="BreakTestAnswer",
        ),
        schema=BreakTestSchema(),
    ),
    SimpleNamespace(
        capability=SimpleNamespace(
            use_case=grind_allowance,
            operation="grind_allowance",
            path="grind-allowance",
            meaning="How much of a seam may be ground away.",
            summary="How much of a seam may be ground away.",
            examples=GRIND_ALLOWANCE,
            answer="GrindAllowanceAnswer",
        ),
        schema=GrindAllowanceSchema(),
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
