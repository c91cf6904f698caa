"""What a way to make a joint is, and the refusals that several ways share."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from typing import Literal

from ...core.answers import Common
from ...distortion import request as distortion
from ...joints import weld_sections
from ...joints.seams import Lengths, Shape
from ..asking import Parts, Unworkable
from ..request import JointPlanRequest

Laid = Literal["fillet", "groove"]


@dataclass(frozen=True, slots=True)
class Judged:
    """Section whose throat has a budget: its shape and lengths, how much each may be worse, and the throat to keep."""

    shape: Shape
    lengths: Lengths
    worse: Mapping[str, float]
    required: float


@dataclass(frozen=True, slots=True)
class Made:
    """A way that keeps the rules: what is laid, in how many equal welds, and what follows from it.

    ``required_throat`` is that of each weld; ``share`` the share of the length that is welded; ``leg`` that of a
    fillet, or of one on a groove; ``width`` the narrowest face, mm, nothing where none is left as welded. ``face`` is
    the face height to leave where the way rests on one; ``cuts`` how many faces are cut on its edges; ``least_governs``
    whether a least leg and not what it carries sets the size.
    """

    size: str
    laid: Laid
    shapes: tuple[weld_sections.Shape, ...]
    required_throat: float | None
    judged: Judged | None
    joint: distortion.Joint | None
    width: float
    leg: float | None = None
    required_leg: float | None = None
    share: float = 1.0
    face: float | None = None
    cuts: int = 0
    least_governs: bool = False


Way = Callable[[JointPlanRequest, Parts], Made]


def common(request: JointPlanRequest) -> Common:
    """Units and working of the plan, for a request to a single resource."""
    return replace(request.common, mark=None)


def opens_one_side(request: JointPlanRequest) -> bool:
    """Whether the load opens a weld on one side from its root."""
    return request.across and not request.held_from_turning


def needs_second_side(request: JointPlanRequest) -> None:
    """Refuse a way that welds the second side where there is no access to it."""
    if request.reach == "one-side":
        raise Unworkable("The way needs access to the second side.")


def as_welded_only(request: JointPlanRequest) -> None:
    """Refuse a way whose weld stands out from the finish required."""
    if request.finish.to != "as-welded":
        raise Unworkable(f"The weld stands out from the finish, which is to be {request.finish.to}.")
