"""Capabilities that still have a schema and an answer by hand."""

from types import SimpleNamespace

from ..application.as_welded import as_welded
from ..application.as_welded.examples import EXAMPLES as AS_WELDED
from ..application.bevel_depth import bevel_depth
from ..application.bevel_depth.examples import EXAMPLES as BEVEL_DEPTH
from ..application.break_test import break_test
from ..application.break_test.examples import EXAMPLES as BREAK_TEST
from ..application.crack_risk import crack_risk
from ..application.crack_risk.examples import EXAMPLES as CRACK_RISK
from ..application.distortion import distortion
from ..application.distortion.examples import EXAMPLES as DISTORTION
from ..application.filler_quantity import filler_quantity
from ..application.filler_quantity.examples import EXAMPLES as FILLER_QUANTITY
from ..application.grind_allowance import grind_allowance
from ..application.grind_allowance.examples import EXAMPLES as GRIND_ALLOWANCE
from ..application.heat import heat
from ..application.heat.examples import EXAMPLES as HEAT
from ..application.joint_plan import joint_plan
from ..application.joint_plan.examples import EXAMPLES as JOINT_PLAN
from .schemas.as_welded import AsWeldedSchema
from .schemas.bevel_depth import BevelDepthSchema
from .schemas.break_test import BreakTestSchema
from .schemas.crack_risk import CrackRiskSchema
from .schemas.distortion import DistortionSchema
from .schemas.filler_quantity import FillerQuantitySchema
from .schemas.grind_allowance import GrindAllowanceSchema
from .schemas.heat import HeatSchema
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
            use_case=crack_risk,
            operation="crack_risk",
            path="crack-risk",
            meaning="How likely a pass is to crack along its centre or by quick chill, why, and what to change.",
            summary="How likely a pass is to crack.",
            examples=CRACK_RISK,
            answer="CrackRiskAnswer",
        ),
        schema=CrackRiskSchema(),
    ),
    SimpleNamespace(
        capability=SimpleNamespace(
            use_case=distortion,
            operation="distortion",
            path="distortion",
            meaning="How a joint shrinks and turns when welded, by named methods, and what would do less.",
            summary="How a joint shrinks and turns when welded.",
            examples=DISTORTION,
            answer="DistortionAnswer",
        ),
        schema=DistortionSchema(),
    ),
    SimpleNamespace(
        capability=SimpleNamespace(
            use_case=filler_quantity,
            operation="filler_quantity",
            path="filler-quantity",
            meaning="What welds take in metal, time, gas and money.",
            summary="What welds take in metal, time, gas and money.",
            examples=FILLER_QUANTITY,
            answer="FillerQuantityAnswer",
        ),
        schema=FillerQuantitySchema(),
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
            use_case=heat,
            operation="heat",
            path="heat",
            meaning="Arc energy, heat input, cooling time, preheat and hardness, and the heat that keeps to a cooling window.",
            summary="Heat of a pass and what it does to the steel.",
            examples=HEAT,
            answer="HeatAnswer",
        ),
        schema=HeatSchema(),
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
