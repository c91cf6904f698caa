"""Answer of ``/v1/distortion``, in engine units."""

from dataclasses import dataclass
from typing import Annotated, Literal

from ..core.codes import RemedyCode
from ..core.quantities import ANGLE, LENGTH
from ..core.shape import BARE, OMITTED, Area, Length, LengthOrAngle, Q


@dataclass(frozen=True, slots=True)
class DistortionEstimate:
    """Value of one method."""

    method: str
    value: float
    source: str
    sureness: Annotated[str, "How the source was read, such as from memory."]


@dataclass(frozen=True, slots=True)
class MethodLeftOut:
    """Method that does not cover the joint, and what it covers or needs."""

    method: str
    reason: str


@dataclass(frozen=True, slots=True)
class DistortionBand:
    """One quantity by several methods."""

    low: float | None
    high: Annotated[float | None, "Upper end; null, as low is, where no method covers the joint."]
    methods: tuple[DistortionEstimate, ...]
    left_out: Annotated[tuple[MethodLeftOut, ...], BARE]


@dataclass(frozen=True, slots=True)
class SpanRatio:
    """Ratio by the methods that cover both joints."""

    low: float
    high: float


@dataclass(frozen=True, slots=True)
class DistortionSpan:
    """Least and greatest of the methods."""

    low: float
    high: float
    ratio: Annotated[SpanRatio | None, BARE, "Ratio to the joint of the request; null where no method covers both."]


@dataclass(frozen=True, slots=True)
class ShrinkingWeld:
    """Weld metal that shrinks."""

    area: Annotated[Area, "Area of one weld."]
    welds: int
    welded_share: float


@dataclass(frozen=True, slots=True)
class ToleranceClass:
    """Tolerance of one class, plus or minus."""

    class_: str
    tolerance: LengthOrAngle
    rise: Annotated[float | None, OMITTED, "Tangent of the angle."] = None
    printed_rise: Annotated[
        float | None, OMITTED, "Rise as the table prints it, rounded. Angle and rise must both be kept."
    ] = None


@dataclass(frozen=True, slots=True)
class ToleranceCheck:
    """Upper end of one band against every class of its table."""

    quantity: str
    nominal: Length
    value: Annotated[LengthOrAngle, "Upper end of the band; twice the estimate where one method alone gives it."]
    classes: tuple[ToleranceClass, ...]
    keeps: Annotated[str | None, "Tightest class that is kept; null where none is."]
    asked: str | None
    verdict: Literal["within", "out"] | None
    table: str


_LengthSpan = Annotated[DistortionSpan, Q(LENGTH)]


@dataclass(frozen=True, slots=True, kw_only=True)
class DistortionAlternative:
    """Another way to weld the joint."""

    do: RemedyCode
    leg: Annotated[Length | None, OMITTED] = None
    root_opening: Annotated[Length | None, OMITTED] = None
    depth: Annotated[Length | None, OMITTED, "Depth of the preparation on each side."] = None
    steps: Annotated[int | None, OMITTED] = None
    metal_ratio: Annotated[float, "Weld metal over that of the joint of the request."]
    strength_ratio: Annotated[float, "Throat times the share welded, over that of the joint of the request."]
    transverse: _LengthSpan | None
    longitudinal: _LengthSpan | None
    angular: Annotated[DistortionSpan | None, Q(ANGLE)]
    edge_lift: _LengthSpan | None
    bowing: _LengthSpan | None


_Lengths = Annotated[DistortionBand, Q(LENGTH)]
_Angles = Annotated[DistortionBand, Q(ANGLE)]


@dataclass(frozen=True, slots=True)
class DistortionAnswer:
    """How a joint shrinks and turns."""

    transverse: Annotated[_Lengths, "Shrinkage across the weld."]
    longitudinal: Annotated[_Lengths, "Shortening along the weld."]
    angular: Annotated[_Angles, "Turn of the joint that is free to turn; for a flange, of each of its halves."]
    edge_lift: Annotated[_Lengths, "Lift of each edge of a flange."]
    bowing: Annotated[_Lengths, "Bow of the member at the middle of its length."]
    restrained_angular: Annotated[_Angles | None, "Turn of the joint as it is held; null where it is free to turn."]
    weld: ShrinkingWeld
    iso_13920: tuple[ToleranceCheck, ...]
    alternatives: tuple[DistortionAlternative, ...]
