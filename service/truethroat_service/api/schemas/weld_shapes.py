"""Cross-sections of welds in requests."""

from functools import partial
from math import radians
from typing import Any

from ...application.core.quantities import ANGLE, AREA, LENGTH
from ...application.joints.weld_sections import (
    BackGouge,
    Cap,
    CornerWeld,
    Fillet,
    FlareWeld,
    GrooveWeld,
    PlainArea,
    Reinforcement,
)
from ..fields import Choice, Number, Object, Pair, Quantity, Variant
from . import ClosedSchema, seams

LARGEST = 300.0

_small = partial(seams.length, maximum=100.0)


def _size(description: str, **more: Any) -> Quantity:
    return Quantity(LENGTH, description, minimum=seams.LEAST_THICKNESS, maximum=LARGEST, **more)


def _gap(description: str = "Root gap.") -> Quantity:
    return _small(description, default="0 mm")


class FilletShapeSchema(ClosedSchema):
    """Fillet."""

    makes = Fillet
    kind = Choice(("fillet",), required=True)
    legs = Pair(_size("Leg along one face."), "Legs along the faces of parts 1 and 2; or a throat.")
    throat = _size("Throat of an equal-leg fillet; or legs.")
    angle = seams.plate_angle("Angle between the plates.", 30, 150)
    leg_excess = Number("Share added to each leg: 0.1 makes 21 % more metal.", minimum=0.0, maximum=1.0, default=0)
    convexity = _small("Height of the face over the line between its toes.")
    hollow = _small("Depth of a hollow face under that line, instead of convexity.")
    root_gap = _gap("Root gap; over 1/16 in it makes both legs larger by the whole of it.")


class CapSchema(ClosedSchema):
    """Cap over a groove."""

    makes = Cap
    height = _small("Height over the surface.", required=True)
    overlap = _small("How far it runs over what the groove opens, both sides together; none when left out.")
    width = _small("Width of the cap, instead of an overlap.", maximum=LARGEST)


class ReinforcementSchema(ClosedSchema):
    """Caps of a groove weld."""

    makes = Reinforcement
    face = Object(CapSchema(), "On the face, or on side 1.")
    root = Object(CapSchema(), "On the far side, or on side 2.")


class BackGougeSchema(ClosedSchema):
    """Gouge on the far side, filled again."""

    makes = BackGouge
    depth = _size("Depth of the gouge.", required=True)
    width = _size("Width of the gouge.", required=True)


REINFORCEMENT = ReinforcementSchema()
BACK_GOUGE = BackGougeSchema()


def _angle() -> Quantity:
    return Quantity(
        ANGLE,
        "Included angle of a V or U; of a bevel or J that of its cut face, up to 75 deg.",
        minimum=radians(5),
        maximum=radians(120),
        required=True,
    )


def _land() -> Quantity:
    return seams.length("Land of a groove that goes through; with a depth they add up to the thickness.")


def _depth(description: str) -> Quantity:
    return Quantity(LENGTH, description, maximum=LARGEST, above=True)


def _single_depth() -> Quantity:
    return _depth("Depth of the groove; without a land it is a partial one, its gap filled as deep.")


def _depths() -> Pair:
    return Pair(
        _depth("Depth of one side."),
        "Depths of sides 1 and 2; without a land a partial groove. Halves of what the land leaves, when left out.",
    )


def _radius_of_root() -> Quantity:
    return Quantity(LENGTH, "Root radius.", minimum=1.0, maximum=25.0, required=True)


class _GrooveShapeSchema(ClosedSchema):
    makes = GrooveWeld
    thickness = _size("Thickness of the part.", required=True)
    root_gap = _gap()
    reinforcement = Object(REINFORCEMENT, "Caps.")
    back_gouge = Object(BACK_GOUGE, "Gouge on the far side, filled again; not in a partial groove.")


class SquareShapeSchema(_GrooveShapeSchema):
    """Square groove."""

    kind = Choice(("square",), required=True)
    depth = _depth("Depth to which the gap of a partial one is filled.")


class SingleGrooveShapeSchema(_GrooveShapeSchema):
    """Bevel or V groove from one side."""

    kind = Choice(("single-bevel", "single-v"), "Form.", required=True)
    angle = _angle()
    land = _land()
    depth = _single_depth()


class DoubleGrooveShapeSchema(_GrooveShapeSchema):
    """Bevel or V grooves from both sides."""

    kind = Choice(("double-bevel", "double-v"), "Form.", required=True)
    angle = _angle()
    land = _land()
    depths = _depths()


class SingleCurvedShapeSchema(_GrooveShapeSchema):
    """J or U groove from one side."""

    kind = Choice(("single-j", "single-u"), "Form.", required=True)
    angle = _angle()
    root_radius = _radius_of_root()
    land = _land()
    depth = _single_depth()


class DoubleCurvedShapeSchema(_GrooveShapeSchema):
    """J or U grooves from both sides."""

    kind = Choice(("double-j", "double-u"), "Form.", required=True)
    angle = _angle()
    root_radius = _radius_of_root()
    land = _land()
    depths = _depths()


class FlareShapeSchema(ClosedSchema):
    """Round edge against a plane, or two round edges, filled flush."""

    makes = FlareWeld
    kind = Choice(("flare-bevel", "flare-v"), "Form.", required=True)
    radius = _size("Outside radius of the round edge or edges.", required=True)
    root_gap = _gap()
    reinforcement = Object(REINFORCEMENT, "Caps.")


def _sides() -> Pair:
    return Pair(_size("Thickness of one part."), "Thickness of parts 1 and 2.", required=True)


def _fill() -> Choice:
    return Choice(
        ("flat", "sharp", "rounded"),
        "Filled to the line between the toes, to the outer planes, or to a radius tangent to them.",
        default="flat",
    )


def _radius() -> Quantity:
    return Quantity(LENGTH, 'Radius, with fill "rounded".', maximum=LARGEST, above=True)


def _crown() -> Quantity:
    return _small('Height over the line between the toes, with fill "flat".')


class OpenCornerShapeSchema(ClosedSchema):
    """Outside corner whose inner edges meet."""

    makes = CornerWeld
    kind = Choice(("open-corner",), required=True)
    thickness = _sides()
    angle = seams.plate_angle("Angle between the plates.", 30, 150)
    fill = _fill()
    radius = _radius()
    crown = _crown()


class HalfOpenCornerShapeSchema(ClosedSchema):
    """Outside corner at a right angle, where part 2 covers the end of part 1 in part."""

    makes = CornerWeld
    kind = Choice(("half-open-corner",), required=True)
    thickness = _sides()
    overlap = seams.length("How far the end of part 1 is covered.", required=True)
    fill = _fill()
    radius = _radius()
    crown = _crown()


class AreaShapeSchema(ClosedSchema):
    """Section known by its area."""

    makes = PlainArea
    kind = Choice(("area",), required=True)
    area = Quantity(AREA, "Area of the section.", minimum=0.1, maximum=1e5, required=True)


SHAPES = Variant(
    "kind",
    {
        "fillet": FilletShapeSchema(),
        "square": SquareShapeSchema(),
        **dict.fromkeys(("single-bevel", "single-v"), SingleGrooveShapeSchema()),
        **dict.fromkeys(("double-bevel", "double-v"), DoubleGrooveShapeSchema()),
        **dict.fromkeys(("single-j", "single-u"), SingleCurvedShapeSchema()),
        **dict.fromkeys(("double-j", "double-u"), DoubleCurvedShapeSchema()),
        **dict.fromkeys(("flare-bevel", "flare-v"), FlareShapeSchema()),
        "open-corner": OpenCornerShapeSchema(),
        "half-open-corner": HalfOpenCornerShapeSchema(),
        "area": AreaShapeSchema(),
    },
    "Cross-section of the weld metal.",
    required=True,
)
