"""Request of ``/v1/as-welded``."""

from collections.abc import Mapping
from math import radians
from typing import ClassVar

from marshmallow import Schema

from ...application.as_welded.request import (
    FLUSH_EDITIONS,
    LOADINGS,
    ButtReadings,
    Extent,
    FilletReadings,
    Flush,
    Required,
)
from ...application.core.quantities import ANGLE, LENGTH
from ...application.joints.quality_sets import QUALITY_SETS
from ..fields import Choice, Either, Flag, Object, Pair, Quantity
from . import ClosedSchema, RequestSchema, seams
from .kinds import KindsSchema


def _size(description: str, largest: float = 100.0) -> Quantity:
    return Quantity(LENGTH, description, minimum=0.5, maximum=largest, required=True)


def _reading(description: str, maximum: float = 50.0) -> Quantity:
    return seams.length(description, maximum=maximum)


def _width(description: str) -> Quantity:
    return Quantity(LENGTH, description, minimum=0.5, maximum=300.0)


class RequiredLegSchema(ClosedSchema):
    """A leg on the drawing."""

    makes = Required
    title = "RequiredLeg"
    leg = _size("Equal leg required.")


class RequiredThroatSchema(ClosedSchema):
    """A throat on the drawing."""

    makes = Required
    title = "RequiredThroat"
    throat = _size("Throat required.")


class RequiredFullSchema(ClosedSchema):
    """Full penetration on the drawing."""

    makes = Required
    title = "RequiredFullPenetration"
    penetration = Choice(("full",), "The whole of the thinner part.", required=True)


class ExtentSchema(ClosedSchema):
    """How long the weld is, and how long in total its imperfections are in the stretch their rule looks at.

    That is the worst 100 mm by ISO 5817; by AWS D1.1 the worst 12 in for undercut, the whole weld for its throat.
    """

    makes = Extent
    title = "ExtentOfImperfections"
    of_weld = Quantity(LENGTH, "Length of the weld.", minimum=1.0, maximum=1e5, required=True)
    throat = _reading("Length over which throat or leg is short.", 1e5)
    undercut = _reading("Length of undercut.", 1e5)
    shrinkage_groove = _reading("Length of shrinkage groove.", 1e5)
    underfill = _reading("Length of underfill.", 1e5)
    root_concavity = _reading("Length of root concavity.", 1e5)
    incomplete_penetration = _reading("Length of incomplete penetration.", 1e5)
    lack_of_fusion = _reading("Length of lack of fusion.", 1e5)


class GroundFlushSchema(ClosedSchema):
    """A butt required flush."""

    makes = Flush
    title = "GroundFlush"
    thinning = seams.length("How far it is ground under the surface of the thinner part.", maximum=50.0, default="0 mm")
    faying = Flag("Whether another part lies on it.", default=False)
    edition = Choice(
        FLUSH_EDITIONS,
        "Edition whose limit of thinning holds: up to 2000 also 5 % of the part.",
        default="aws-d1-1-2020",
    )


class _ReadingsSchema(RequestSchema):
    """What may be read of any weld."""

    thickness = Pair(seams.thickness("Thickness of one part."), "Thickness of parts 1 and 2.", required=True)
    quality = Choice(tuple(QUALITY_SETS), "Level or code that the weld is held to; see /v1/rule-sets.", required=True)
    loading = Choice(
        LOADINGS,
        "AWS D1.1: static when left out; cyclic with the weld across the tension in a primary member; other cyclic.",
    )
    reading_tolerance = seams.length(
        "Plus or minus of the gauge, on every length it reads, each taken on its unsafe side. An imperfection read as"
        " nothing is not there; a face read as flat may still be hollow by it.",
        maximum=5.0,
        default="0 mm",
    )
    extent = Object(
        ExtentSchema(), "How long imperfections are; one whose length is not told is taken for the whole weld."
    )
    undercut = _reading("Deepest undercut at either toe.", 20.0)
    overlap = _reading("Widest overlap at either toe.", 20.0)
    toe_angle = Quantity(
        ANGLE, "Least angle between plate and face at a toe, in the air.", minimum=radians(30), maximum=radians(180)
    )
    incomplete_penetration = _reading("Depth to the root that is not fused, by a test or a macro.")
    lack_of_fusion = _reading("Height of lack of fusion inside, by a test or a macro.")
    surface_pore = _reading("Diameter of the widest pore in the surface.", 20.0)
    internal_pore = _reading("Diameter of the widest single pore inside, by a test or a macro.", 20.0)
    end_crater_pipe = _reading("Depth of the pipe in an end crater.", 20.0)
    crack = Flag("Whether there is any crack, at a crater too; not looked for when left out.")
    burn_through = Flag("Whether the weld burnt through anywhere; not looked for when left out.")


class FilletReadingsSchema(_ReadingsSchema):
    """Fillet as it was gauged."""

    makes = FilletReadings
    title = "FilletAsWelded"
    kind = Choice(("fillet",), default="fillet")
    required = Either(
        [(("leg",), RequiredLegSchema()), (("throat",), RequiredThroatSchema())], "What was asked for.", required=True
    )
    legs = Pair(
        Quantity(LENGTH, "Leg along one face.", minimum=0.5, maximum=100.0),
        "Legs as gauged, along the faces of parts 1 and 2.",
        required=True,
    )
    angle = seams.plate_angle("Angle between the plates.", 60, 120)
    throat = Quantity(LENGTH, "Throat as gauged; caps what the legs give.", maximum=100.0, above=True)
    convexity = _reading("Height of the face over the line between its toes.")
    hollow = _reading("Depth of a hollow face under that line, instead of convexity.")
    root_gap = seams.length(
        "Gap between the parts at the root; parts that touch have none.", maximum=20.0, default="0 mm"
    )
    penetration = seams.penetration()


class ButtReadingsSchema(_ReadingsSchema):
    """Butt weld as it was gauged."""

    makes = ButtReadings
    title = "ButtAsWelded"
    kind = Choice(("butt",), required=True)
    required = Either(
        [(("penetration",), RequiredFullSchema()), (("throat",), RequiredThroatSchema())],
        "What was asked for: full penetration, or a throat, of both sides together.",
        required=True,
    )
    sides = Choice((1, 2), "Sides it was welded from.", default=1)
    circumferential = Flag("Whether the seam runs round a pipe (ISO 5817).", default=False)
    face_width = _width("Width of the face, that ISO 5817 limits reinforcement and overlap by.")
    reinforcement = _reading("Height of the face over the plate.")
    underfill = _reading("Depth of the face under the plate, sagging too.")
    root_width = _width("Width of the root bead, that ISO 5817 limits excess penetration by.")
    excess_penetration = _reading("Height of the root bead over the plate.")
    root_concavity = _reading("Depth of a hollow root under the plate.")
    shrinkage_groove = _reading("Depth of grooves beside the root bead.", 20.0)
    misalignment = _reading("Offset of the two parts.")
    flush = Object(GroundFlushSchema(), "Where AWS D1.1 drawings require it flush.")


class AsWeldedSchema(KindsSchema):
    """Weld as it was gauged."""

    title = "AsWeldedRequest"
    kinds: ClassVar[Mapping[str, Schema]] = {"fillet": FilletReadingsSchema(), "butt": ButtReadingsSchema()}
