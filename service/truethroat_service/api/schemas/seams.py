"""Seams, preparations, finishes and penetration in requests."""

from functools import partial
from math import radians
from typing import Any

from ...application.core.quantities import ANGLE, LENGTH
from ...application.joints.seams import FINISHES, Finish, Penetration, Preparation, Seam
from ...reference.loader import POSITION_CODES, PROCESS_CODES
from ..fields import Choice, Object, Pair, Quantity, Variant
from . import ClosedSchema

LEAST_THICKNESS, LARGEST_LENGTH = 0.1, 300.0
GROOVES = ("single-bevel", "single-v", "single-j", "single-u")


def length(description: str = "", *, maximum: float = LARGEST_LENGTH, **more: Any) -> Quantity:
    """Length that may be nothing."""
    return Quantity(LENGTH, description, maximum=maximum, **more)


def thickness(description: str = "") -> Quantity:
    """Thickness of a part."""
    return Quantity(LENGTH, description, minimum=LEAST_THICKNESS, maximum=LARGEST_LENGTH)


tolerance = partial(length, "Plus or minus; carried to the remaining throat.", default="0 mm")


def groove_angle(
    description: str = "Included angle of the groove; 45 deg for a bevel, 60 for a V, 20 for J and U.",
) -> Quantity:
    """Included angle of a groove."""
    return Quantity(ANGLE, description, minimum=radians(5), maximum=radians(120))


def plate_angle(description: str, low: float, high: float) -> Quantity:
    """Angle between two plates."""
    return Quantity(ANGLE, description, minimum=radians(low), maximum=radians(high), default="90 deg")


def process(**more: Any) -> Choice:
    """Welding process."""
    return Choice(PROCESS_CODES, "Process: AWS letters or ISO 4063 number.", **more)


def position(**more: Any) -> Choice:
    """Welding position."""
    return Choice(POSITION_CODES, "Position: AWS or ISO 6947 code.", **more)


def required_throat() -> Quantity:
    """Throat to keep."""
    return Quantity(LENGTH, "Throat the finished seam must keep.", maximum=LARGEST_LENGTH, above=True, required=True)


class PenetrationSchema(ClosedSchema):
    """Fusion beyond the root or beyond the prepared depth."""

    makes = Penetration
    depth = length("How far fusion goes beyond the root or the prepared depth.", maximum=50.0, required=True)
    vouched = Choice(
        ("assumed", "measured", "proven"),
        "Who vouches for it: nobody, a macro section of this work, or a qualified procedure.",
        required=True,
    )
    tolerance = tolerance()


class _ThicknessSchema(ClosedSchema):
    makes = Seam
    thickness = Pair(thickness("Thickness of one part."), "Thickness of parts 1 and 2.", required=True)
    thickness_tolerance = tolerance()


_WIDTH = "Width of the outer face of parts 1 and 2 from the corner, to check a blend against."


def _width() -> Pair:
    return Pair(Quantity(LENGTH, minimum=1.0, maximum=20000.0), _WIDTH)


class ButtSeamSchema(_ThicknessSchema):
    """Butt of two edges."""

    kind = Choice(("butt",), required=True)


class EdgeSeamSchema(_ThicknessSchema):
    """Edges of two parallel plates."""

    kind = Choice(("edge",), required=True)


class ClosedCornerSchema(_ThicknessSchema):
    """Corner closed: the end of part 1 against the inner face of part 2, the seam in part 1's outer face."""

    kind = Choice(("closed-corner",), required=True)
    angle = plate_angle("Angle between the plates; a closed corner is answered at 90 deg.", 10, 170)
    width = _width()


class HalfOpenCornerSchema(_ThicknessSchema):
    """Corner half open: the end of part 1 overlaps the end of part 2 in part."""

    kind = Choice(("half-open-corner",), required=True)
    angle = plate_angle("Angle between the plates.", 30, 150)
    overlap = length("How far the end of part 1 is covered, along part 2's inner face.", required=True)
    overlap_tolerance = tolerance()
    width = _width()


class OpenCornerSchema(_ThicknessSchema):
    """Corner open: the inner edges meet."""

    kind = Choice(("open-corner",), required=True)
    angle = plate_angle("Angle between the plates.", 30, 150)
    width = _width()


class FilletSeamSchema(ClosedSchema):
    """Fillet between two faces."""

    makes = Seam
    kind = Choice(("fillet",), required=True)
    thickness = Pair(
        thickness("Thickness of one part."), "Thickness of parts 1 and 2; not needed for a fillet's throat."
    )
    thickness_tolerance = tolerance()
    angle = plate_angle("Angle between the plates.", 30, 150)
    legs = Pair(
        Quantity(LENGTH, "Leg along one face.", minimum=LEAST_THICKNESS, maximum=100.0),
        "Legs along the faces of parts 1 and 2.",
        required=True,
    )
    legs_tolerance = tolerance()


FLAT_SEAMS = {"butt": ButtSeamSchema(), "edge": EdgeSeamSchema(), "closed-corner": ClosedCornerSchema()}
SEAMS = {
    **FLAT_SEAMS,
    "half-open-corner": HalfOpenCornerSchema(),
    "open-corner": OpenCornerSchema(),
    "fillet": FilletSeamSchema(),
}


class PreparationSchema(ClosedSchema):
    """Prepared edge of a butt, an edge seam or a closed corner."""

    makes = Preparation
    depth = length("Depth of the preparation, square to the face.", default="0 mm")
    groove = Choice(GROOVES, "Form of the groove.", default="single-bevel")
    groove_angle = groove_angle()
    tolerance = tolerance()


class AsWeldedSchema(ClosedSchema):
    """Nothing is ground."""

    makes = Finish
    to = Choice(("as-welded",), required=True)


class FlushSchema(ClosedSchema):
    """Ground flush: a corner on both outer faces."""

    makes = Finish
    to = Choice(("flush",), required=True)
    below = length("How far under the finishing plane the grinder goes.", maximum=50.0, default="0 mm")
    tolerance = tolerance()


class FlatSchema(ClosedSchema):
    """Ground flat, to the line between the toes."""

    makes = Finish
    to = Choice(("flat",), required=True)
    below = length("How far under the finishing plane the grinder goes.", maximum=50.0, default="0 mm")
    tolerance = tolerance()


class RadiusSchema(ClosedSchema):
    """Blended to a radius, tangent to both outer faces."""

    makes = Finish
    to = Choice(("radius",), required=True)
    radius = length("Radius of the blend.", required=True)
    below = length("How far under the blend the grinder goes.", maximum=50.0, default="0 mm")
    tolerance = tolerance()


_FINISH_SCHEMAS = {
    "as-welded": AsWeldedSchema(),
    "flush": FlushSchema(),
    "flat": FlatSchema(),
    "radius": RadiusSchema(),
}
assert {to for finishes in FINISHES.values() for to in finishes} == set(_FINISH_SCHEMAS)  # noqa: S101


def finish(**more: Any) -> Variant:
    """Finish of a seam."""
    return Variant("to", _FINISH_SCHEMAS, "What is done to the face.", **more)


def seam(**more: Any) -> Variant:
    """Seam of any kind."""
    return Variant("kind", SEAMS, "The seam.", required=True, **more)


def flat_seam(**more: Any) -> Variant:
    """Seam that can be prepared by cutting an edge."""
    return Variant("kind", FLAT_SEAMS, "The seam.", required=True, **more)


def penetration(**more: Any) -> Any:
    """Penetration of a seam."""
    return Object(PENETRATION, "Fusion beyond the root or the prepared depth.", **more)


PENETRATION = PenetrationSchema()
