"""Request of ``/v1/weld-group``."""

from collections.abc import Callable, Mapping
from functools import partial
from math import pi
from typing import Any

from marshmallow import post_load

from ...application.core.quantities import ANGLE, FORCE, LENGTH, MOMENT, Dimension
from ...application.joints.rule_sets import ENTRIES
from ...application.weld_group.request import GroupLoad, Vector, WeldGroupRequest
from ...practice.weld_patterns import PATTERNS, Piece, arc, line
from ...reference.loader import FILLER_METALS
from ..fields import Choice, ChoiceOrObject, Either, Entries, Object, Pair, Quantity, Variant
from . import ClosedSchema, RequestSchema
from .fillet_size import PART_FORMS, FillerId, FillerSchema, ParametersSchema

LARGEST_PLACE, LARGEST_FORCE, LARGEST_MOMENT = 1e5, 1e8, 1e12
LARGEST_GROUP = 200

_side = partial(Quantity, LENGTH, minimum=1.0, maximum=LARGEST_PLACE, required=True)


def _place(description: str = "") -> Quantity:
    return Quantity(LENGTH, description, minimum=-LARGEST_PLACE, maximum=LARGEST_PLACE)


class _Pattern(ClosedSchema):
    """Named pattern; loads into its pieces."""

    @post_load
    def _make(self, data: Mapping[str, Any], **kwargs: Any) -> tuple[Piece, ...]:
        """Pieces of the pattern."""
        sizes = {name: value for name, value in data.items() if name != "pattern"}
        return tuple(PATTERNS[data["pattern"]](**sizes))


class OneLineSchema(_Pattern):
    """One upright line; origin at its middle."""

    pattern = Choice(("one-line",), required=True)
    depth = _side("Length of the line.")


class CircleSchema(_Pattern):
    """All round a circle; origin at its centre."""

    pattern = Choice(("circle",), required=True)
    diameter = _side("Diameter.")


def _two_sided(name: str) -> ClosedSchema:
    """Schema of a pattern that has a depth and a width."""
    title = "".join(word.capitalize() for word in name.split("-")) + "Group"
    fields: dict[str, Any] = {
        "__doc__": PATTERNS[name].__doc__,
        "title": title,
        "pattern": Choice((name,), required=True),
        "depth": _side("Extent along y."),
        "width": _side("Extent along x."),
    }
    made: Callable[[], ClosedSchema] = type(title, (_Pattern,), fields)
    return made()


class StraightSchema(ClosedSchema):
    """Straight line of weld."""

    start = Pair(_place(), "Where it starts: x, then y.", required=True)
    end = Pair(_place(), "Where it ends: x, then y.", required=True)

    @post_load
    def _make(self, data: Mapping[str, Any], **kwargs: Any) -> Piece:
        """Straight piece."""
        return line(*data["start"], *data["end"])


class ArcSchema(ClosedSchema):
    """Arc of weld."""

    centre = Pair(_place(), "Its centre: x, then y.", required=True)
    radius = _side("Radius.")
    start_angle = Quantity(
        ANGLE, "Angle from the x axis at which it starts.", minimum=-2 * pi, maximum=2 * pi, required=True
    )
    sweep = Quantity(ANGLE, "Angle it runs over.", minimum=0.01, maximum=2 * pi, required=True)

    @post_load
    def _make(self, data: Mapping[str, Any], **kwargs: Any) -> Piece:
        """Arc."""
        x, y = data["centre"]
        return arc(x, y, data["start_angle"], data["sweep"], data["radius"])


PIECE = Either(((("centre", "radius", "start_angle", "sweep"), ArcSchema()), ((), StraightSchema())))


class LinesSchema(ClosedSchema):
    """Any lines and arcs, given by their coordinates."""

    title = "LinesGroup"
    pattern = Choice(("lines",), required=True)
    lines = Entries(PIECE, "lines and arcs", "Lines and arcs.", most=LARGEST_GROUP, required=True)

    @post_load
    def _make(self, data: Mapping[str, Any], **kwargs: Any) -> tuple[Piece, ...]:
        """Pieces as given."""
        pieces: tuple[Piece, ...] = data["lines"]
        return pieces


GROUPS: dict[str, ClosedSchema] = {
    "one-line": OneLineSchema(),
    **{name: _two_sided(name) for name in PATTERNS if name not in ("one-line", "circle")},
    "circle": CircleSchema(),
    "lines": LinesSchema(),
}


def _component(dimension: Dimension, limit: float, name: str) -> Quantity:
    return Quantity(dimension, f"Along {name}.", minimum=-limit, maximum=limit, default=f"0 {dimension.metric}")


class ForceVectorSchema(ClosedSchema):
    """Force along each axis."""

    makes = Vector
    x = _component(FORCE, LARGEST_FORCE, "x")
    y = _component(FORCE, LARGEST_FORCE, "y")
    z = _component(FORCE, LARGEST_FORCE, "z")


class MomentVectorSchema(ClosedSchema):
    """Moment about each axis, by the right hand."""

    makes = Vector
    x = _component(MOMENT, LARGEST_MOMENT, "x")
    y = _component(MOMENT, LARGEST_MOMENT, "y")
    z = _component(MOMENT, LARGEST_MOMENT, "z")


class PlaceSchema(ClosedSchema):
    """Place from the origin of the group."""

    makes = Vector
    x = _component(LENGTH, LARGEST_PLACE, "x")
    y = _component(LENGTH, LARGEST_PLACE, "y")
    z = _component(LENGTH, LARGEST_PLACE, "z")


class GroupLoadSchema(ClosedSchema):
    """Load of all groups together."""

    makes = GroupLoad
    force = Object(ForceVectorSchema(), "Force.")
    at = Object(PlaceSchema(), "Where the force acts, from the origin of the group.")
    moment = Object(MomentVectorSchema(), "Moment besides that of the force.")


class WeldGroupSchema(RequestSchema):
    """Weld group to size."""

    makes = WeldGroupRequest
    title = "WeldGroupRequest"
    rule_set = Choice(
        tuple(name for name in ENTRIES if name != "thin-part"), "Rules to size by; see /v1/rule-sets.", required=True
    )
    group = Variant("pattern", GROUPS, "The group: a named pattern, or its lines and arcs.", required=True)
    count = Choice(tuple(range(1, 13)), "Equal groups that share the load.", default=1)
    load = Object(GroupLoadSchema(), "Load of all groups together.", required=True)  # type: ignore[assignment]
    method = Choice(
        ("elastic", "instantaneous-centre"),
        "Elastic line method, or instantaneous centre for loads in the plane (AISC).",
        default="elastic",
    )
    parts = Pair(Either(PART_FORMS), "Parts 1 and 2, for the least size and, with EN, the strength.", required=True)
    parameters = Object(ParametersSchema(), "Parameters over the rule set's own; EN 1993-1-8 only.")
    filler = ChoiceOrObject(
        FillerId(tuple(FILLER_METALS)), FillerSchema(), "Filler metal: an id (see /v1/filler-metals) or its strength."
    )
    leg = Quantity(LENGTH, "Leg that is there, to learn what it carries.", minimum=0.5, maximum=100.0)
    throat = Quantity(LENGTH, "Throat that is there, instead of the leg.", minimum=0.3, maximum=100.0)
    size_by = Choice(("leg", "throat"), "What is rounded up to the step; throat for EN 1993-1-8, leg otherwise.")
    size_step = Quantity(
        LENGTH,
        "Step of the size: 1/16 in (us), 1 mm of leg or 0.5 mm of throat by default.",
        minimum=0.01,
        maximum=25.4,
    )
