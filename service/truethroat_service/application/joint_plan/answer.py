"""Answer of ``/v1/joint-plan``, in engine units."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Annotated, Literal

from ..bevel_depth.answer import BevelDepthAnswer
from ..core.answers import Answered
from ..core.codes import Verdict
from ..core.left_out import LeftOut
from ..core.quantities import ANGLE, ENERGY, MASS, WORKING_TIME
from ..core.shape import LengthDown, LengthUp, Q
from ..crack_risk.answer import CrackRiskAnswer
from ..distortion.answer import DistortionAnswer
from ..filler_quantity.answer import FillerQuantityAnswer
from ..fillet_size.answer import FilletSizeAnswer
from ..grind_allowance.answer import GrindAllowanceAnswer
from ..groove_size.answer import GrooveSizeAnswer
from ..heat.answer import HeatAnswer
from ..joints.quality_sets import Quality
from ..joints.throat_budget import ThroatBudget

WayName = Literal[
    "fillet-one-side",
    "fillet-both-sides",
    "fillet-intermittent",
    "partial-groove",
    "partial-groove-and-fillet",
    "full-penetration",
    "square-edge",
    "face-left",
    "bevelled-edge",
    "half-open-corner",
    "open-corner",
    "fillet-inside",
]
Cost = Literal["filler", "time", "heat", "distortion"]


@dataclass(frozen=True, slots=True)
class PlanCosts:
    """Costs of a way; null where one is not known."""

    filler: Annotated[float | None, Q(MASS), "Weld metal."]
    time: Annotated[float | None, Q(WORKING_TIME), "Time on the clock, at most."]
    heat: Annotated[float | None, Q(ENERGY), "Arc energy put into the joint."]
    distortion: Annotated[float | None, Q(ANGLE), "Angular change, at most."]

    def by_kind(self) -> Mapping[Cost, float | None]:
        """Costs by their name."""
        return {"filler": self.filler, "time": self.time, "heat": self.heat, "distortion": self.distortion}


@dataclass(frozen=True, slots=True)
class PlanHold:
    """Limits for each weld; null where the way or the quality set has none."""

    least_leg: LengthUp | None
    least_throat: LengthUp | None
    most_convexity: LengthDown | None
    most_reinforcement: LengthDown | None
    leave_face_height: LengthUp | None


@dataclass(frozen=True, slots=True)
class PlanParts:
    """Answers of the single resources, unchanged; null where a way does not need one."""

    fillet_size: Answered[FilletSizeAnswer] | None = None
    groove_size: Answered[GrooveSizeAnswer] | None = None
    bevel_depth: Answered[BevelDepthAnswer] | None = None
    grind_allowance: Answered[GrindAllowanceAnswer] | None = None
    filler_quantity: Answered[FillerQuantityAnswer] | None = None
    heat: Answered[HeatAnswer] | None = None
    distortion: Answered[DistortionAnswer] | None = None
    crack_risk: Answered[CrackRiskAnswer] | None = None


@dataclass(frozen=True, slots=True)
class PlannedWay:
    """A way that keeps the rules."""

    way: WayName
    size: Annotated[str, "What to weld and cut, in words."]
    rank: Annotated[int, "Place of the way from 1; ways with equal scores share one."]
    impracticable: Annotated[
        tuple[str, ...],
        "Why no shop would lay it; empty where it would. Such a way comes after all others and is never recommended.",
    ]
    score: Annotated[float, "Weighted geometric mean of its costs that are known, each over the least of any way."]
    dominated_by: Annotated[tuple[WayName, ...], "Ways that are no worse in any cost and better in one."]
    costs: PlanCosts
    budget: ThroatBudget | None
    chance_short: Annotated[float | None, "Share of such seams whose throat is short, at the tolerances given."]
    hold: PlanHold
    verdicts: Annotated[Mapping[str, Verdict], "Verdict of each single resource."]
    left_out: Annotated[tuple[LeftOut, ...], "Resources without an answer, and why."]
    parts: Annotated[PlanParts | None, "Answers of the single resources; null where the request does not ask for them."]


@dataclass(frozen=True, slots=True)
class RefusedWay:
    """A way that does not keep the rules."""

    way: WayName
    why: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class JointPlanAnswer:
    """Every way to make one joint."""

    recommended: Annotated[WayName | None, "First of the ways; null where none keeps the rules and is practicable."]
    compared_by: Annotated[tuple[Cost, ...], "Costs that have a weight and are known for every way."]
    quality: Quality | None
    ways: Annotated[tuple[PlannedWay, ...], "Best first."]
    refused: tuple[RefusedWay, ...]
