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

    ``theoretical`` is that of the legs or the thickness. From it what is missing is taken off; ``physical`` counts all
    penetration, ``creditable`` measured and proven penetration, ``effective`` proven penetration only. Strength and
    verdict depend on ``worst_case``, which is ``effective`` at the worst end of every tolerance.
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
    value: Annotated[
        LengthOrAngle | None, "Worst value within the gauge's tolerance; null where the imperfection has no size."
    ]
    allowed: Annotated[
        LengthOrAngle | None,
        "Largest or least value allowed; null where nothing is permitted, or where there is no limit.",
    ]
    extent: Annotated[
        Length | None, "Length of the imperfection; null where it was not sent, or where no length counts."
    ]
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
    size: Annotated[Length | None, "Leg of the largest equal-leg triangle in the section; null for a butt."]
    strength_left: Annotated[float, "Worst-case throat over the required throat."]
    overweld: Annotated[Overweld | None, "Null for a butt."]
    limits: tuple[QualityLimit, ...]
    quality_kept: Annotated[bool, "Whether every limit checked is kept."]
    actions: tuple[WeldAction, ...]
