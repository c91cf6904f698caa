"""Answer of ``/v1/weld-group``, in engine units."""

from dataclasses import dataclass
from typing import Annotated

from ..core.quantities import FORCE, FORCE_PER_LENGTH, LINE_SECOND_MOMENT, MOMENT
from ..core.shape import Force, ForcePerLength, Length, Q
from ..joints.fillets import FilletSize
from .request import Method

LineSecondMoment = Annotated[float, Q(LINE_SECOND_MOMENT)]


@dataclass(frozen=True, slots=True)
class GroupPlace:
    """Place in the plane of a group, from its origin."""

    x: Length
    y: Length


@dataclass(frozen=True, slots=True)
class AlongAxes:
    """Component along, or about, each axis."""

    x: float
    y: float
    z: float


@dataclass(frozen=True, slots=True)
class GroupPoint:
    """Point of a group and the force per length on its weld."""

    x: Length
    y: Length
    force: Annotated[AlongAxes, Q(FORCE_PER_LENGTH), "Along each axis."]
    resultant: ForcePerLength


@dataclass(frozen=True, slots=True)
class GroupProperties:
    """One group as lines of unit throat: its length, centroid, and second moments about it."""

    length: Length
    centroid: Annotated[GroupPlace, "From the origin of the group."]
    i_x: LineSecondMoment
    i_y: LineSecondMoment
    i_xy: LineSecondMoment
    j: LineSecondMoment


@dataclass(frozen=True, slots=True)
class CentroidLoad:
    """Load of one group, through its centroid."""

    force: Annotated[AlongAxes, Q(FORCE), "Along each axis."]
    moment: Annotated[AlongAxes, Q(MOMENT), "About each axis."]


@dataclass(frozen=True, slots=True)
class GroupStrength:
    """Strength of all groups at the size given, or else at the next step up, as its shortest run counts."""

    factor: Annotated[float, "Multiple of the load that is carried."]
    force: Annotated[Force, "Force carried along the load."]
    moment: Annotated[float, Q(MOMENT), "Moment about z carried with it."]


@dataclass(frozen=True, slots=True)
class WeldGroupAnswer:
    """Size and strength of a weld group."""

    properties: GroupProperties
    load_per_group: CentroidLoad
    method: Method
    critical: GroupPoint | None
    points: Annotated[tuple[GroupPoint, ...], "Ends of every line; elastic method only."]
    centre: Annotated[GroupPlace | None, "Instantaneous centre; null for the elastic method or a translation."]
    required: FilletSize
    minimum: FilletSize
    specify: FilletSize | None
    utilisation: Annotated[
        float | None,
        "Share of its strength that the size sent uses, or else the next step up; null where it may carry no load.",
    ]
    strength: GroupStrength
    equivalent_force: Annotated[
        ForcePerLength, "Force per length at the critical point, or along a weld with the same utilisation."
    ]
    efficiency: Annotated[float, "Strength of the group as a share of that of the same length loaded along itself."]
