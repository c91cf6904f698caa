"""Request for distortion, in engine units: what is welded, what holds it, and the tolerances required."""

from dataclasses import dataclass
from math import radians
from typing import Annotated, Any, Literal

from ...standards.iso_13920_1996.table_1_linear import LinearClass
from ...standards.iso_13920_1996.table_3_form import FormClass
from ..core.answers import Common
from ..core.quantities import ANGLE, AREA, CURRENT, ENERGY_PER_LENGTH, FORCE, LENGTH, SECOND_MOMENT
from ..core.shape import By, Form, Numbered, OneOf, Within, form, whole_form
from ..joints.given import GROOVE_ANGLE, LONGEST, STEP, UP_TO_50, UP_TO_100, UP_TO_LARGEST

GrooveForm = Literal["square", "single-v", "single-bevel", "double-v", "double-bevel", "by-area"]
Kind = Literal["butt", "tee", "lap", "bevelled-tee"]

_WELD_AREA = Within(AREA, 1.0, most=1e4)
_THICKNESS = Within(LENGTH, 0.5, most=300.0)
_NOMINAL = Within(LENGTH, 2.0, most=LONGEST)
_FACTOR = Numbered(0.1, 10.0)
_Runs = Annotated[int, OneOf(tuple(range(1, 41))), "Runs of a weld from one side."]
_Leg = Annotated[float, Within(LENGTH, 0.5, most=100.0), "Leg of each fillet."]
_FilletMetal = Annotated[float, _WELD_AREA, "Deposited area of one fillet; half the square of its leg when left out."]
_WeldedShare = Annotated[float, Numbered(0.05, 1.0), "Share of the length that is welded."]


@dataclass(frozen=True, slots=True)
class Groove:
    """Groove of a butt, filled flush; the area and the widths apply to "by-area" only."""

    groove: GrooveForm
    root_opening: Annotated[float, UP_TO_50, "Root opening."] = 0.0
    land: Annotated[float, UP_TO_100, "Land left at the root, or between the sides."] = 0.0
    groove_angle: float | None = None
    area: Annotated[float | None, _WELD_AREA, "Deposited area."] = None
    face_width: Annotated[float | None, UP_TO_LARGEST, "Width of the weld at its face, for its angular change."] = None
    root_width: Annotated[float | None, UP_TO_LARGEST, "Width of the weld at its root, for its angular change."] = None


_V = Annotated[float | None, GROOVE_ANGLE, "Included angle of the V; 60 deg when left out."]
_BEVEL = Annotated[
    float | None, Within(ANGLE, radians(5), most=radians(70)), "Angle of the bevel; 45 deg when left out."
]


def _cut(name: str, words: str, groove: Any, angle: Any) -> Form:
    """Form of a groove whose edges are cut."""
    return form(
        name, words, Groove, "groove!", "root_opening", "land", "groove_angle", groove=groove, groove_angle=angle
    )


GROOVE_FORMS = {
    "square": form(
        "SquareGrooveFill",
        "Square edges with an opening.",
        Groove,
        "groove!",
        "root_opening!",
        groove=Literal["square"],
        root_opening=Annotated[
            float, Within(LENGTH, most=50.0, above=True), "Root opening, which holds all the metal."
        ],
    ),
    "single-v": _cut("SingleVFill", "V from one side.", Literal["single-v"], _V),
    "single-bevel": _cut("SingleBevelFill", "Bevel from one side.", Literal["single-bevel"], _BEVEL),
    "double-v": _cut("DoubleVFill", "V from both sides, alike.", Literal["double-v"], _V),
    "double-bevel": _cut("DoubleBevelFill", "Bevel from both sides, alike.", Literal["double-bevel"], _BEVEL),
    "by-area": form(
        "FillByArea",
        "Weld from one side, described by the area of its metal with the cap.",
        Groove,
        "groove!",
        "area!",
        "root_opening",
        "face_width",
        "root_width",
        groove=Literal["by-area"],
    ),
}
"""Grooves of a butt, as a request describes them."""


@dataclass(frozen=True, slots=True)
class Restraint:
    """Plate held on both sides of the weld."""

    span: Annotated[float, Within(LENGTH, 10.0, most=LONGEST), "Span between what holds the plate."]
    coefficient: Annotated[
        float,
        Within(FORCE, 1.0, most=1e9),
        "Coefficient of angular change: moment for each radian, on each unit of weld length.",
    ]


_Restraint = Annotated[Restraint, "What holds the plate; the joint turns freely when it is left out."]


@dataclass(frozen=True, slots=True)
class Butt:
    """Butt weld through a thickness."""

    kind: Literal["butt"]
    thickness: Annotated[float, _THICKNESS, "Thickness of the thinner plate."]
    weld: Annotated[Groove, By("groove", GROOVE_FORMS), "The weld: its groove filled flush, or its area."]
    runs: _Runs | None = None
    current: Annotated[
        float | None, Within(CURRENT, 1.0, most=3000.0), "Welding current, for the method by current."
    ] = None
    restraint: _Restraint | None = None


@dataclass(frozen=True, slots=True)
class Tee:
    """Fillets of a plate that stands on another."""

    kind: Literal["tee"]
    thickness: Annotated[
        float, _THICKNESS, "Thickness of the part that runs through, which the fillets shorten and turn."
    ]
    leg: _Leg
    width: Annotated[float | None, Within(LENGTH, 5.0, most=1e4), "Full width of that part, as a flange."] = None
    area: _FilletMetal | None = None
    sides: Annotated[Literal[1, 2], "Number of sides welded."] = 1
    welded_share: _WeldedShare = 1.0
    runs: _Runs | None = None
    restraint: _Restraint | None = None


@dataclass(frozen=True, slots=True)
class Lap:
    """Two fillets of a lap."""

    kind: Literal["lap"]
    thickness: Annotated[float, _THICKNESS, "Thickness of the thinner part."]
    leg: _Leg
    area: _FilletMetal | None = None
    welded_share: _WeldedShare = 1.0


Joint = Butt | Tee | Lap

JOINT_FORMS = {
    "butt": whole_form(Butt, "ButtJoint"),
    "tee": whole_form(Tee, "TeeJoint"),
    "lap": whole_form(Lap, "LapJoint"),
}
"""Joints of every kind, as a request describes them."""


@dataclass(frozen=True, slots=True)
class Member:
    """Section that the welds shorten, and bend where they lie off its axis."""

    area: Annotated[float, Within(AREA, 10.0, most=1e7), "Area of its section."]
    second_moment: Annotated[float | None, Within(SECOND_MOMENT, 10.0, most=1e13), "Second moment of its area."] = None
    eccentricity: Annotated[
        float | None,
        Within(LENGTH, most=1e4, above=True),
        "Distance of the welds' centroid from its neutral axis.",
    ] = None


@dataclass(frozen=True, slots=True)
class Calibration:
    """Factors from the shop: the distortion measured on similar joints over that of the methods."""

    transverse: Annotated[float, _FACTOR, "Factor on shrinkage across the weld."] = 1.0
    longitudinal: Annotated[float, _FACTOR, "Factor on shortening along the weld."] = 1.0
    angular: Annotated[float, _FACTOR, "Factor on angles and on the lift of a flange's edges."] = 1.0
    bowing: Annotated[float, _FACTOR, "Factor on bows."] = 1.0


@dataclass(frozen=True, slots=True)
class WeldingTolerances:
    """General tolerances of the drawing, ISO 13920:1996."""

    linear_class: Annotated[LinearClass | None, "Class required for lengths and angles."] = None
    form_class: Annotated[FormClass | None, "Class required for straightness and flatness."] = None
    across: Annotated[float | None, _NOMINAL, "Dimension across the weld, which it shortens."] = None
    along: Annotated[float | None, _NOMINAL, "Dimension along the weld, which it shortens and bends."] = None
    shorter_leg: Annotated[float | None, _NOMINAL, "Shorter leg of the angle that the weld changes."] = None


@dataclass(frozen=True, slots=True)
class DistortionRequest:
    """Joint whose distortion is estimated."""

    joint: Annotated[Joint, By("kind", JOINT_FORMS), "The joint."]
    length: Annotated[float | None, Within(LENGTH, 1.0, most=LONGEST), "Length of the joint, along its welds."] = None
    member: Annotated[Member | None, "Section of the member that the welds run along."] = None
    heat_input: Annotated[
        float | None,
        Within(ENERGY_PER_LENGTH, 0.01, most=100.0),
        "Heat input of one run, with the arc efficiency included, for two methods along the weld.",
    ] = None
    iso_13920: Annotated[WeldingTolerances | None, "General tolerances to judge the estimates by."] = None
    calibration: Annotated[Calibration, "Factors that correct these methods by the shop's own measurements."] = (
        Calibration()
    )
    size_step: Annotated[
        float | None,
        STEP,
        "Step by which the alternatives grow, of the leg or of the root opening: 1/16 in (us) or 1 mm by default.",
    ] = None
    common: Common = Common()
