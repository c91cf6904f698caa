"""Request for a fillet's size, in engine units."""

from dataclasses import dataclass
from math import pi
from typing import Annotated, Literal

from ...engine.rule_set import Flange, Intermittent
from ..core.answers import Common
from ..core.quantities import AREA, LENGTH
from ..core.shape import As, ToldBy, Within, form
from ..joints.given import (
    ANY_FORCE,
    LONG,
    LONGEST,
    QUARTER_TURN,
    UP_TO_50,
    WIDE_PLATE_ANGLE,
    Position,
    Process,
    SizeBy,
    SizeStep,
)
from ..joints.loads import ForceComponents
from ..joints.metals import AnyFiller, AnyPart, Parameters
from ..joints.rule_sets import RULE_SET_IDS
from ..joints.seams import GivenPenetration
from .sizing import Basis, Kind


@dataclass(frozen=True, slots=True)
class Joint:
    """Joint of two parts."""

    kind: Annotated[Kind, "Kind of joint."]
    angle: Annotated[float, WIDE_PLATE_ANGLE, "Angle between the plates on the first weld's side."] = pi / 2
    root_gap: Annotated[float, UP_TO_50, "Gap between the parts at the root."] = 0.0
    sides: Annotated[Literal[1, 2], "Number of sides welded, each by a weld of this size."] = 1


@dataclass(frozen=True, slots=True)
class SharedForce:
    """Force shared by the welds of all sides."""

    force: Annotated[float, ANY_FORCE, "Force on the joint."]
    length: Annotated[float, LONG, "Length of each weld."]
    angle: Annotated[
        float,
        QUARTER_TURN,
        "Angle of the force to the weld's axis: 0 deg along it, 90 deg across it.",
    ]


@dataclass(frozen=True, slots=True)
class ConcentricForce:
    """Force through the centroid of a group of one size, with welds along it and across it."""

    force: Annotated[float, ANY_FORCE, "Force on the group."]
    longitudinal_length: Annotated[float, LONG, "Length of all welds along the force together."]
    transverse_length: Annotated[float, LONG, "Length of all welds across the force together."]


@dataclass(frozen=True, slots=True)
class BalancedForce:
    """Force along a member held by two side welds whose lengths are shared out about its centroid."""

    force: Annotated[float, ANY_FORCE, "Force along the member."]
    length: Annotated[float, LONG, "Length of both side welds together."]
    width: Annotated[float, LONG, "Distance between the two welds, such as the leg of an angle."]
    centroid: Annotated[float, LONG, "Distance of the member's centroid from the first weld, such as an angle's heel."]


Load = SharedForce | ForceComponents | ConcentricForce | BalancedForce

LOAD_FORMS = (
    (("longitudinal_length", "transverse_length"), ConcentricForce),
    (("width", "centroid"), BalancedForce),
    (("force", "angle"), SharedForce),
    ((), ForceComponents),
)
"""A load as a request describes it."""


@dataclass(frozen=True, slots=True)
class TensionMember:
    """Tension member, part 2, held by longitudinal welds alone."""

    width: Annotated[
        float | None,
        LONG,
        "Distance between the two welds: the width of a flat bar. Leave it out with a balanced load, whose width it"
        " is.",
    ] = None
    area: Annotated[
        float | None, Within(AREA, most=1e7, above=True), "Area of the member; by default that of a flat bar."
    ] = None
    eccentricity: Annotated[
        float, Within(LENGTH, most=LONGEST), "Distance of its centroid from the plane of the connection."
    ] = 0.0


@dataclass(frozen=True, slots=True)
class Packing:
    """Packing between the parts of a lap, flush with the edge that is welded."""

    thickness: Annotated[float, Within(LENGTH, most=100.0, above=True), "Thickness."]


_Width = Annotated[float, LONG, "Width of one part."]

INTERMITTENT = form(
    "Intermittent",
    "Intermittent fillet.",
    Intermittent,
    "segment!",
    "gap",
    "staggered",
    "loading!",
    "member",
    "exposure",
    "widths",
    segment=Annotated[float, LONG, "Length of each segment."],
    gap=Annotated[
        float | None, LONG, "Clear gap between segments on one side; by default the largest that is allowed."
    ],
    staggered=Annotated[bool, "Whether the segments of one side stand opposite the gaps of the other."],
    loading=Annotated[Literal["tension", "compression", "shear"], "What the welded parts carry."],
    member=Annotated[
        Literal["built-up", "stiffener"],
        "What the welds make: plates of a built-up member, or a stiffener on its plate.",
    ],
    exposure=Annotated[
        Literal["protected", "weathering-steel", "corrosive"],
        "Painted or where nothing corrodes; unpainted weathering steel in the open air; or corrosive.",
    ],
    widths=Annotated[
        tuple[_Width, _Width] | None,
        "Widths of parts 1 and 2: EN 1993-1-8 in compression, in shear and in built-up members.",
    ],
)

UNSTIFFENED_FLANGE = form(
    "UnstiffenedFlange",
    "Unstiffened flange, part 1, under a plate, part 2.",
    Flange,
    "web_thickness!",
    "plate_width!",
    "section",
    "root_radius",
    "weld_throat",
    web_thickness=Annotated[float, LONG, "Thickness of the section's web, or of each of a box's."],
    plate_width=Annotated[float, LONG, "Width of the plate across the flange."],
    section=Annotated[Literal["i", "box"], "I or H section; or box or channel about as wide as the plate."],
    root_radius=Annotated[float | None, LONG, "Root radius of a rolled I section."],
    weld_throat=Annotated[float | None, LONG, "Throat of the welds between web and flange of a welded I section."],
)


@dataclass(frozen=True, slots=True)
class FilletSizeRequest:
    """Fillet to size."""

    rule_set: Annotated[str, RULE_SET_IDS, "Rules to size by; see /v1/rule-sets."]
    joint: Annotated[Joint, "The joint."]
    parts: Annotated[
        tuple[AnyPart, AnyPart],
        "Parts 1 and 2. Part 1 is the part that runs through (tee), whose face is welded (lap).",
    ]
    basis: Annotated[Basis, "What the size is based on."]
    load: Annotated[
        Load | None,
        ToldBy(LOAD_FORMS),
        'Load, with basis "load": a force shared by the welds, components per length, a force on a group along and'
        " across it, or one balanced about a member's centroid.",
    ] = None
    filler: AnyFiller | None = None
    parameters: Parameters = ()
    process: Process | None = None
    position: Position | None = None
    end_loaded: Annotated[bool, "Whether the long-weld reduction applies."] = False
    transverse_stiffener: Annotated[
        bool,
        "Whether the weld joins a transverse stiffener to a plated member, so that EN 1993-1-8 4.11(4) reduces it over"
        " 1.7 m.",
    ] = False
    ends: Annotated[
        Literal["full", "craters"],
        "Whether the weld is full size to its ends; if not, EN 1993-1-8 4.5.1(1) takes two throats off its length.",
    ] = "full"
    root_bending: Annotated[
        bool,
        "Whether a tee welded from one side is also sized for bending about its root. EN 1993-1-8 4.12 gives no"
        " formula; the model is in the readings of /v1/rule-sets.",
    ] = False
    packing: Annotated[Packing | None, "Packing between the parts of a lap, EN 1993-1-8 4.4."] = None
    intermittent: Annotated[Intermittent | None, As(INTERMITTENT), "Segments and gaps, for an intermittent fillet."] = (
        None
    )
    tension_member: Annotated[TensionMember | None, "Member to check for shear lag, AISC 360-22 Table D3.1 case 4."] = (
        None
    )
    unstiffened_flange: Annotated[
        Flange | None,
        As(UNSTIFFENED_FLANGE),
        "Flange to check under the plate, EN 1993-1-8 4.10; with full strength.",
    ] = None
    minimum_throat: Annotated[
        Literal["din-na"] | None,
        "National least throat in addition to the 3 mm of EN 1993-1-8: sqrt(t) - 0.5 mm by the thicker part.",
    ] = None
    hss_end: Annotated[
        bool | None,
        "Whether the weld ends a rectangular hollow section in tension, so that AISC 360-22 J2.4(a)(2) leaves out the"
        " directional increase. By default the increase is left out wherever a part is a hollow section.",
    ] = None
    edge_of: Annotated[
        Literal[1, 2] | None, "Part whose edge the weld of a lap runs along, so that the maximum size applies."
    ] = None
    leg_tolerance: Annotated[
        float, UP_TO_50, "How much smaller than specified a leg may be made; the size covers it."
    ] = 0.0
    penetration: GivenPenetration | None = None
    size_by: SizeBy | None = None
    size_step: SizeStep | None = None
    common: Common = Common()

    @property
    def length(self) -> float | None:
        """Length of each weld, mm; of the shorter of two balanced ones; None where it is not known."""
        load = self.load
        if isinstance(load, SharedForce | ForceComponents):
            return load.length
        if isinstance(load, BalancedForce):
            return load.length * min(load.centroid, load.width - load.centroid) / load.width
        return None
