"""Answer of ``/v1/as-welded``, in engine units."""

from dataclasses import dataclass
from typing import Annotated, Literal

from ..core.codes import RemedyCode
from ..core.shape import OMITTED, Area, Length, LengthOrAngle, LengthUp, MassPerLength

Standing = Literal["within", "over", "under", "not-permitted"]
"""What may be done with a weld: nothing, or repairs in the order of the work."""


@dataclass(frozen=True, slots=True)
class ThroatAsWelded:
    """Throat of a weld as welded.

    It is given as drawn through its legs or thickness; less what is missing, and with all penetration; with what is
    measured or proven; with what is proven, which strength and the verdict rest on; that at the worst of the
    tolerances; and the one required.
    """

    theoretical: Length
    physical: Length
    creditable: Length
    effective: Length
    worst_case: Length
    required: Length


@dataclass(frozen=True, slots=True)
class QualityLimit:
    """One limit of the level or code, and how the weld stands against it."""

    name: str
    value: Annotated[LengthOrAngle | None, "Worst by the gauge; null for what is there or not."]
    allowed: Annotated[LengthOrAngle | None, "Null where nothing is permitted, or without limit."]
    extent: Annotated[Length | None, "Length told; null where none was, or no length counts."]
    extent_allowed: Annotated[Length | None, "Length allowed; null where no length counts."]
    verdict: Standing
    note: str
    source: str


@dataclass(frozen=True, slots=True)
class Overweld:
    """Metal against that of the flat equal-leg fillet required; negative where it is missing."""

    metal_ratio: float
    extra_area: Area
    extra_mass: MassPerLength


@dataclass(frozen=True, slots=True)
class WeldAction:
    """What to do with the weld."""

    do: RemedyCode
    leg: Annotated[LengthUp | None, OMITTED, "Leg to weld up to, rounded up to the step."] = None


@dataclass(frozen=True, slots=True)
class AsWeldedAnswer:
    """What a weld is worth as welded."""

    throat: ThroatAsWelded
    size: Annotated[Length | None, "Leg of the largest equal-leg triangle inscribed; null of a butt."]
    strength_left: Annotated[float, "Worst-case throat over the required throat."]
    overweld: Annotated[Overweld | None, "Null of a butt."]
    limits: tuple[QualityLimit, ...]
    quality_kept: Annotated[bool, "Whether every limit checked is kept."]
    actions: tuple[WeldAction, ...]
