"""Fields that requests of several capabilities have: the process, the position, thicknesses and small lengths."""

from math import pi, radians
from typing import Annotated, Literal

from ...engine.units import INCH
from ...reference.loader import FILLER_METALS, MATERIALS, POSITION_CODES, PROCESS_CODES
from ..core.quantities import ANGLE, FORCE, FORCE_PER_LENGTH, LENGTH, STRESS, UnitSystem
from ..core.shape import OneOf, Stated, Within

LEAST_THICKNESS, LARGEST_LENGTH = 0.1, 300.0
LONGEST = 1e5
FORCE_LIMIT, LINE_LIMIT = 1e8, 1e6

THICKNESS = Within(LENGTH, LEAST_THICKNESS, most=LARGEST_LENGTH)
UP_TO_50 = Within(LENGTH, most=50.0)
UP_TO_100 = Within(LENGTH, most=100.0)
UP_TO_LARGEST = Within(LENGTH, most=LARGEST_LENGTH)
OVER_NOTHING = Within(LENGTH, most=LARGEST_LENGTH, above=True)
LONG = Within(LENGTH, most=LONGEST, above=True)
STEP = Within(LENGTH, 0.01, most=25.4)
STRENGTH = Within(STRESS, 1.0, most=2000.0)
ANY_FORCE = Within(FORCE, most=FORCE_LIMIT, above=True)
SIGNED_LINE_FORCE = Within(FORCE_PER_LENGTH, -LINE_LIMIT, most=LINE_LIMIT)
PLATE_ANGLE = Within(ANGLE, radians(30), most=radians(150))
WIDE_PLATE_ANGLE = Within(ANGLE, radians(10), most=radians(170))
QUARTER_TURN = Within(ANGLE, most=pi / 2)
GROOVE_ANGLE = Within(ANGLE, radians(5), most=radians(120))

MATERIAL_IDS = OneOf(tuple(MATERIALS), "MaterialId")
FILLER_IDS = OneOf(tuple(FILLER_METALS), "FillerMetalId")

Process = Annotated[str, OneOf(PROCESS_CODES, "ProcessCode"), "Process: AWS letters or ISO 4063 number."]
Position = Annotated[str, OneOf(POSITION_CODES, "PositionCode"), "Position: AWS or ISO 6947 code."]
PartThickness = Annotated[float, THICKNESS, "Thickness of one part."]
Tolerance = Annotated[float, UP_TO_LARGEST, "Plus or minus; the remaining throat includes it."]
GrooveAngle = Annotated[
    float,
    GROOVE_ANGLE,
    "Included angle of the groove: by default 45 deg for a bevel, 60 deg for a V, 20 deg for a J or U.",
]
FaceHeight = Annotated[
    float,
    UP_TO_50,
    Stated("0 mm"),
    "Height of the face over its plane: the flush plane, or the line between the toes.",
]
Hollow = Annotated[float, UP_TO_50, "Depth of a hollow face under its plane, instead of face_height."]
RequiredThroat = Annotated[float, OVER_NOTHING, "Throat the finished seam must keep."]
Sizing = Literal["leg", "throat"]
SizeBy = Annotated[Sizing, "What is rounded up to the step: the throat by default for EN 1993-1-8, the leg otherwise."]
SizeStep = Annotated[
    float, STEP, "Step that the size is rounded up to: by default 1/16 in (us), 1 mm of leg or 0.5 mm of throat."
]
DepthStep = Annotated[float, STEP, "Step that the depth is rounded up to: by default 0.5 mm, or 1/32 in (us)."]


def usual_step(units: UnitSystem, size_by: Sizing) -> float:
    """Step of a fillet's size, mm, when a request gives none."""
    if units == "us":
        return INCH / 16
    return 0.5 if size_by == "throat" else 1.0


def usual_depth_step(units: UnitSystem) -> float:
    """Step of the depth of a groove, mm, when a request gives none."""
    return INCH / 32 if units == "us" else 0.5
