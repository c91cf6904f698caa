"""What makes a way one that no shop would lay: too large, too many runs, too much turning, or too small for sheet."""

from math import radians

from ...engine.rounding import at_least, at_most
from ..core.units import Units
from ..filler_quantity.answer import FillerQuantityAnswer
from .answer import PlanCosts
from .request import JointPlanRequest
from .ways.way import Made

LARGEST_LEG_OF_PART = 1.5
"""Leg over the thickness of the thinner part; common practice, no source, as the other limits here."""

LARGEST_LEG = 25.0
"""Leg, mm."""

MOST_RUNS = 40
"""Runs of one weld, the most that /v1/distortion takes too."""

MOST_TURNING = radians(10.0)
"""Angular change, rad."""

THINNEST_STRUCTURAL = 3.0
"""Part, mm (1/8 in), under which least sizes of structural steel are not made for it (AWS D1.1 begins there)."""


def impracticable(
    request: JointPlanRequest, way: Made, costs: PlanCosts, quantity: FillerQuantityAnswer | None
) -> tuple[str, ...]:
    """Why no shop would lay a way, each reason a sentence; nothing where it would."""
    units = Units(request.common.units)
    reasons: list[str] = []
    if way.leg is not None:
        largest = LARGEST_LEG_OF_PART * request.thinner
        if not at_most(way.leg, largest):
            reasons.append(
                f"The leg of {units.text(way.leg)} is more than {LARGEST_LEG_OF_PART:g} times the thinner part of"
                f" {units.text(request.thinner)}."
            )
        if not at_most(way.leg, LARGEST_LEG):
            reasons.append(f"The leg of {units.text(way.leg)} is more than {units.text(LARGEST_LEG)}.")
    if way.least_governs and not at_least(request.thinner, THINNEST_STRUCTURAL):
        reasons.append(
            f"The least leg of structural steel sets the size, and a part of {units.text(request.thinner)} is sheet."
        )
    counted = [] if quantity is None else [weld.passes for weld in quantity.welds]
    runs = max((count.most for count in counted if count is not None), default=0)
    if runs > MOST_RUNS:
        reasons.append(f"One weld takes up to {runs} runs, which is more than {MOST_RUNS}.")
    if costs.distortion is not None and not at_most(costs.distortion, MOST_TURNING):
        turn, most = (units.angle(angle)["text"] for angle in (costs.distortion, MOST_TURNING))
        reasons.append(f"The joint turns by up to {turn}, which is more than {most}.")
    return tuple(reasons)
