"""What the service takes, as typed dictionaries.

Generated from openapi/openapi.json by openapi/generate_client.py: do not edit.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal, NotRequired, TypeAlias, TypedDict

from truethroat.quantity import QuantityInput

__all__ = [
    "Angle",
    "Arc",
    "ArcEnergy",
    "ArcSettings",
    "Area",
    "AreaShape",
    "AsWelded",
    "AsWeldedRequest",
    "BackGouge",
    "BalancedForce",
    "BeadByArea",
    "BeadBySpeed",
    "BevelDepthRequest",
    "BreakTestRequest",
    "ButtAsWelded",
    "ButtJoint",
    "ButtSeam",
    "CGroup",
    "Calibration",
    "Cap",
    "CarbonEquivalents",
    "Circle",
    "ClosedCorner",
    "Composition",
    "ConcentricForce",
    "ConsumablePrice",
    "CoolingWindow",
    "CrackRiskRequest",
    "Current",
    "Density",
    "DepositionByRate",
    "DepositionBySolidWire",
    "DepositionByWireMass",
    "DepositionRate",
    "DistortionRequest",
    "DoubleBevelFill",
    "DoubleCurvedShape",
    "DoubleGrooveShape",
    "DoubleVFill",
    "EdgeSeam",
    "Electrode",
    "EnergyPerLength",
    "ExtentOfImperfections",
    "FillByArea",
    "Filler",
    "FillerMetalId",
    "FillerQuantityRequest",
    "FilletAsWelded",
    "FilletInHole",
    "FilletInSlot",
    "FilletSeam",
    "FilletShape",
    "FilletSizeRequest",
    "FlareBevel",
    "FlareShape",
    "FlareV",
    "Flat",
    "Flush",
    "Force",
    "ForceComponents",
    "ForcePerLength",
    "ForceVector",
    "FullWeld",
    "GasFlow",
    "GasPrice",
    "GrindAllowanceRequest",
    "GrooveComponents",
    "GrooveForce",
    "GrooveJoint",
    "GrooveSizeRequest",
    "GroundFlush",
    "GroupLoad",
    "HalfOpenCorner",
    "HalfOpenCornerShape",
    "HandForce",
    "HeatInput",
    "HeatRequest",
    "HydrogenContent",
    "IGroup",
    "Intermittent",
    "Joint",
    "JointPlanRequest",
    "LGroup",
    "LabourPrice",
    "LapJoint",
    "Length",
    "LinesGroup",
    "MassPerLength",
    "MaterialId",
    "MaterialPart",
    "MeasuredBead",
    "Member",
    "MitreBead",
    "Moment",
    "MomentVector",
    "Notch",
    "OneLine",
    "OpenCorner",
    "OpenCornerShape",
    "OutcomeBroken",
    "OutcomeFoldedFlat",
    "Packing",
    "Parameters",
    "PartialWeld",
    "Penetration",
    "Place",
    "PlainPart",
    "PlanForce",
    "PlanIntermittent",
    "PlanJoint",
    "PlanTolerances",
    "PlatesOfMaterial",
    "PlatesOfStrength",
    "Plug",
    "PositionCode",
    "PowerPrice",
    "Preparation",
    "PreparedDepth",
    "Prices",
    "ProcessCode",
    "Radius",
    "RectangleGroup",
    "Reinforcement",
    "RequiredFullPenetration",
    "RequiredLeg",
    "RequiredThroat",
    "Restraint",
    "RuleSetId",
    "SecondMomentOfArea",
    "SharedForce",
    "SingleBevelFill",
    "SingleCurvedShape",
    "SingleGrooveShape",
    "SingleVFill",
    "Slot",
    "Speed",
    "Spread",
    "SquareGrooveFill",
    "SquareShape",
    "Straight",
    "StrengthPart",
    "Stress",
    "TGroup",
    "TeeButt",
    "TeeJoint",
    "Temperature",
    "TensionMember",
    "TimeSpan",
    "TwoLevelLinesGroup",
    "TwoUprightLinesGroup",
    "UGroup",
    "UnstiffenedFlange",
    "Voltage",
    "Weights",
    "Weld",
    "WeldGroupRequest",
    "WeldMetal",
    "WeldStrength",
    "WeldingArc",
    "WeldingTolerances",
]


class FilletSizeRequest(TypedDict):
    """Fillet to size."""

    units: NotRequired[Literal["metric", "us"]]
    """Units of the answer. Default: metric."""

    mark: NotRequired[str]
    """The caller's own mark for this joint, given back with the answer."""

    working: NotRequired[bool]
    """Whether the answer shows its working. Default: false."""

    rule_set: RuleSetId
    """Rules to size by; see /v1/rule-sets."""

    joint: Joint
    """The joint."""

    parts: Sequence[MaterialPart | StrengthPart | PlainPart]
    """Parts 1 and 2. Part 1 is the part that runs through (tee), whose face is welded (lap)."""

    basis: Literal["load", "full-strength", "thin-part"]
    """What the size is based on."""

    load: NotRequired[ConcentricForce | BalancedForce | SharedForce | ForceComponents]
    """Load, with basis "load": a force shared by the welds, components per length, a force on a group along and
    across it, or one balanced about a member's centroid.
    """

    filler: NotRequired[FillerMetalId | Filler]
    """Filler metal: an id (see /v1/filler-metals) or its strength."""

    parameters: NotRequired[Parameters]
    """Parameters that replace the rule set's own; Eurocodes only."""

    process: NotRequired[ProcessCode]
    """Process: AWS letters or ISO 4063 number."""

    position: NotRequired[PositionCode]
    """Position: AWS or ISO 6947 code."""

    end_loaded: NotRequired[bool]
    """Whether the long-weld reduction applies. Not given: it does for a lap that is loaded along its weld."""

    transverse_stiffener: NotRequired[bool]
    """Whether the weld joins a transverse stiffener to a plated member, so that EN 1993-1-8 4.11(4) reduces it
    over 1.7 m.

    Default: false.
    """

    ends: NotRequired[Literal["full", "craters"]]
    """Whether the weld is full size to its ends; if not, EN 1993-1-8 4.5.1(1) takes two throats off its length.

    Default: full.
    """

    root_bending: NotRequired[bool]
    """Whether a tee welded from one side is also sized for bending about its root.

    EN 1993-1-8 4.12 gives no formula; the model is in the readings of /v1/rule-sets. Default: false.
    """

    packing: NotRequired[Packing]
    """Packing between the parts of a lap, EN 1993-1-8 4.4."""

    intermittent: NotRequired[Intermittent]
    """Segments and gaps, for an intermittent fillet."""

    tension_member: NotRequired[TensionMember]
    """Member to check for shear lag, AISC 360-22 Table D3.1 case 4."""

    unstiffened_flange: NotRequired[UnstiffenedFlange]
    """Flange to check under the plate, EN 1993-1-8 4.10; with full strength."""

    minimum_throat: NotRequired[Literal["din-na"]]
    """National least throat in addition to the 3 mm of EN 1993-1-8: sqrt(t) - 0.5 mm by the thicker part."""

    hss_end: NotRequired[bool]
    """Whether the weld ends a rectangular hollow section in tension, so that AISC 360-22 J2.4(a)(2) leaves out the
    directional increase.

    By default the increase is left out wherever a part is a hollow section.
    """

    edge_of: NotRequired[Literal[1, 2, "both"]]
    """Part whose edge the welds of a lap run along, which sets their largest size.

    Not given: part 2, and part 1 as well where two welds lie across the force.
    """

    held_from_turning: NotRequired[bool]
    """Whether the joint is held from turning about its weld, so that a pull does not open one weld from its root.

    Default: false.
    """

    access: NotRequired[Literal["one-side", "both-sides"]]
    """Sides that the joint can be welded from; needed for two welds at a hollow section."""

    root_pass: NotRequired[Literal["mechanized", "automatic", "robotic"]]
    """How the root pass is made, where it is not made by hand; AISC 360-22 counts proven penetration only then."""

    leg_tolerance: NotRequired[Length]
    """How much smaller than specified a leg may be made; the size covers it. From 0 mm to 50 mm. Default: 0 mm."""

    penetration: NotRequired[Penetration]
    """Fusion beyond the root or the prepared depth."""

    size_by: NotRequired[Literal["leg", "throat"]]
    """What is rounded up to the step: the throat by default for EN 1993-1-8, the leg otherwise."""

    size_step: NotRequired[Length]
    """Step that the size is rounded up to: by default 1/16 in (us), 1 mm of leg or 0.5 mm of throat.

    From 0.01 mm to 25.4 mm.
    """


class Joint(TypedDict):
    """Joint of two parts."""

    kind: Literal["tee", "lap", "inside-corner"]
    """Kind of joint."""

    angle: NotRequired[Angle]
    """Angle between the plates on the first weld's side. From 10 deg to 170 deg. Default: 90 deg."""

    root_gap: NotRequired[Length]
    """Gap between the parts at the root. From 0 mm to 50 mm. Default: 0 mm."""

    sides: NotRequired[Literal[1, 2]]
    """Number of sides welded, each by a weld of this size. Default: 1."""

    stiffened_behind: NotRequired[bool]
    """Whether a plate or stiffener stands behind part 1 of a tee, opposite part 2, so that a pull does not shear
    part 1 through its thickness.

    Default: false.
    """


class MaterialPart(TypedDict):
    """Part of a listed material."""

    thickness: Length
    """Thickness. From 0.1 mm to 300 mm."""

    material: MaterialId
    """Material by its designation; see /v1/materials."""

    wall: NotRequired[Literal["design", "nominal"]]
    """Which wall of a hollow section the thickness is, with AISC rules: the design wall, which is taken by
    default, or the nominal wall.
    """


class StrengthPart(TypedDict):
    """Part of given strength."""

    thickness: Length
    """Thickness. From 0.1 mm to 300 mm."""

    yield_strength: Stress
    """Yield strength. From 1 MPa to 2000 MPa."""

    tensile_strength: Stress
    """Tensile strength. From 1 MPa to 2000 MPa."""

    beta_w: NotRequired[float]
    """Correlation factor of EN 1993-1-8:2005, which requires it."""


class PlainPart(TypedDict):
    """Part with a thickness only, for rules that claim no strength."""

    thickness: Length
    """Thickness. From 0.1 mm to 300 mm."""


class ConcentricForce(TypedDict):
    """Force through the centroid of a group of one size, with welds along it and across it."""

    force: Force
    """Force on the group. From 0 kN (exclusive) to 100000 kN."""

    longitudinal_length: Length
    """Length of all welds along the force together. From 0 mm (exclusive) to 100000 mm."""

    transverse_length: Length
    """Length of all welds across the force together. From 0 mm (exclusive) to 100000 mm."""


class BalancedForce(TypedDict):
    """Force along a member held by two side welds whose lengths are shared out about its centroid."""

    force: Force
    """Force along the member. From 0 kN (exclusive) to 100000 kN."""

    length: Length
    """Length of both side welds together. From 0 mm (exclusive) to 100000 mm."""

    width: Length
    """Distance between the two welds, such as the leg of an angle. From 0 mm (exclusive) to 100000 mm."""

    centroid: Length
    """Distance of the member's centroid from the first weld, such as an angle's heel.

    From 0 mm (exclusive) to 100000 mm.
    """


class SharedForce(TypedDict):
    """Force shared by the welds of all sides."""

    force: Force
    """Force on the joint. From 0 kN (exclusive) to 100000 kN."""

    length: Length
    """Length of each weld. From 0 mm (exclusive) to 100000 mm."""

    angle: Angle
    """Angle of the force to the weld's axis: 0 deg along it, 90 deg across it. From 0 deg to 90 deg."""


class ForceComponents(TypedDict):
    """Force per length on one weld, signed as in ``engine.loads``."""

    normal: NotRequired[ForcePerLength]
    """Pulls part 2 off part 1 when positive. From -1000000 N/mm to 1000000 N/mm. Default: 0 N/mm."""

    transverse: NotRequired[ForcePerLength]
    """Pushes to the side the weld is on when positive. From -1000000 N/mm to 1000000 N/mm. Default: 0 N/mm."""

    longitudinal: NotRequired[ForcePerLength]
    """Runs along the weld. From -1000000 N/mm to 1000000 N/mm. Default: 0 N/mm."""

    length: NotRequired[Length]
    """Length of the weld, where its length rules are to be checked. From 0 mm (exclusive) to 100000 mm."""


class Filler(TypedDict):
    """Filler metal of given strength."""

    tensile_strength: Stress
    """Tensile strength of the deposited metal. From 1 MPa to 2000 MPa."""


class Parameters(TypedDict):
    """National or contract parameters that replace the rule set's own."""

    gamma_m2: NotRequired[float]
    """Partial factor of welds, EN 1993-1-8."""

    gamma_m0: NotRequired[float]
    """Partial factor of cross-sections, EN 1993-1-1."""

    gamma_mw: NotRequired[float]
    """Partial factor of welds, EN 1999-1-1."""

    beta_w: NotRequired[float]
    """Correlation factor of both parts; it replaces that of their grades."""


class Packing(TypedDict):
    """Packing between the parts of a lap, flush with the edge that is welded."""

    thickness: Length
    """Thickness. From 0 mm (exclusive) to 100 mm."""


class Intermittent(TypedDict):
    """Intermittent fillet."""

    segment: Length
    """Length of each segment. From 0 mm (exclusive) to 100000 mm."""

    gap: NotRequired[Length]
    """Clear gap between segments on one side; by default the largest that is allowed.

    From 0 mm (exclusive) to 100000 mm.
    """

    staggered: NotRequired[bool]
    """Whether the segments of one side stand opposite the gaps of the other. Default: false."""

    loading: Literal["tension", "compression", "shear"]
    """What the welded parts carry."""

    member: NotRequired[Literal["built-up", "stiffener"]]
    """What the welds make: plates of a built-up member, or a stiffener on its plate. Default: built-up."""

    exposure: NotRequired[Literal["protected", "weathering-steel", "corrosive"]]
    """Painted or where nothing corrodes; unpainted weathering steel in the open air; or corrosive.

    Default: protected.
    """

    widths: NotRequired[list[Length] | tuple[Length, Length]]
    """Widths of parts 1 and 2: EN 1993-1-8 in compression, in shear and in built-up members."""


class TensionMember(TypedDict):
    """Tension member, part 2, held by longitudinal welds alone."""

    width: NotRequired[Length]
    """Distance between the two welds: the width of a flat bar.

    Leave it out with a balanced load, whose width it is. From 0 mm (exclusive) to 100000 mm.
    """

    area: NotRequired[Area]
    """Area of the member; by default that of a flat bar. From 0 mm2 (exclusive) to 10000000 mm2."""

    eccentricity: NotRequired[Length]
    """Distance of its centroid from the plane of the connection. From 0 mm to 100000 mm. Default: 0 mm."""


class UnstiffenedFlange(TypedDict):
    """Unstiffened flange, part 1, under a plate, part 2."""

    web_thickness: Length
    """Thickness of the section's web, or of each of a box's. From 0 mm (exclusive) to 100000 mm."""

    plate_width: Length
    """Width of the plate across the flange. From 0 mm (exclusive) to 100000 mm."""

    section: NotRequired[Literal["i", "box"]]
    """I or H section; or box or channel about as wide as the plate. Default: i."""

    root_radius: NotRequired[Length]
    """Root radius of a rolled I section. From 0 mm (exclusive) to 100000 mm."""

    weld_throat: NotRequired[Length]
    """Throat of the welds between web and flange of a welded I section. From 0 mm (exclusive) to 100000 mm."""


class Penetration(TypedDict):
    """Fusion beyond the root or the prepared depth, and who vouches for it."""

    depth: Length
    """How far fusion goes beyond the root or the prepared depth. From 0 mm to 50 mm."""

    vouched: Literal["assumed", "measured", "proven"]
    """Who vouches for it: nobody, a macro section of this work, or a qualified procedure."""

    tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""


class GrooveSizeRequest(TypedDict):
    """Groove, flare, plug or slot weld to size."""

    units: NotRequired[Literal["metric", "us"]]
    """Units of the answer. Default: metric."""

    mark: NotRequired[str]
    """The caller's own mark for this joint, given back with the answer."""

    working: NotRequired[bool]
    """Whether the answer shows its working. Default: false."""

    rule_set: Literal[
        "aisc-360-22-lrfd",
        "aisc-360-22-asd",
        "en-1993-1-8-2005-directional",
        "en-1993-1-8-2005-simplified",
        "en-1993-1-4-2006-directional",
        "en-1993-1-4-2006-simplified",
        "en-1993-1-12-2007-directional",
        "en-1993-1-12-2007-simplified",
    ]
    """Rules to size by; see /v1/rule-sets."""

    joint: GrooveJoint
    """The joint."""

    parts: Sequence[MaterialPart | StrengthPart | PlainPart]
    """Parts 1 and 2.

    Part 1 is the part that runs through (tee), whose end meets part 2 (corner), whose face is welded (lap).
    """

    weld: PartialWeld | FullWeld | FlareBevel | FlareV | TeeButt | Plug | Slot | FilletInHole | FilletInSlot
    """The weld."""

    basis: Literal["load", "full-strength"]
    """What the size is based on."""

    load: NotRequired[GrooveForce | GrooveComponents]
    """Load, with basis "load": a force on the joint, or components per length."""

    filler: NotRequired[FillerMetalId | Filler]
    """Filler metal: an id (see /v1/filler-metals) or its strength."""

    parameters: NotRequired[Parameters]
    """Parameters that replace the rule set's own; EN 1993-1-8 only."""

    root_pass: NotRequired[Literal["mechanized", "automatic", "robotic"]]
    """How the root pass is made, where it is not made by hand; AISC 360-22 counts proven penetration only then."""

    process: NotRequired[ProcessCode]
    """Process: AWS letters or ISO 4063 number."""

    position: NotRequired[PositionCode]
    """Position: AWS or ISO 6947 code."""


class GrooveJoint(TypedDict):
    """Joint of two parts."""

    kind: Literal["butt", "tee", "corner", "lap"]
    """Kind of joint, its plates square to each other; a lap for welds in holes and slots alone."""

    stiffened_behind: NotRequired[bool]
    """Whether a plate or stiffener stands behind part 1 of a tee, opposite part 2, so that a pull does not shear
    part 1 through its thickness.

    Default: false.
    """


class PartialWeld(TypedDict):
    """Partial-penetration groove."""

    kind: Literal["partial"]

    groove: NotRequired[
        Literal[
            "square",
            "single-bevel",
            "double-bevel",
            "single-v",
            "double-v",
            "single-j",
            "double-j",
            "single-u",
            "double-u",
        ]
    ]
    """Form of the groove; without it the form with the least metal is chosen of those that fit."""

    groove_angle: NotRequired[Angle]
    """Included angle of the groove; for a bevel or J that of its one cut face. From 5 deg to 120 deg."""

    gap: NotRequired[Length]
    """Root gap; by default the middle of the range that the detail allows. From 0 mm to 50 mm."""

    access: NotRequired[Literal["one-side", "both-sides"]]
    """Sides the seam can be welded from. Default: both-sides."""

    penetration: NotRequired[Penetration]
    """Fusion beyond the root or the prepared depth."""

    reinforcing_fillet: NotRequired[Length]
    """Leg of an equal-leg fillet on the groove's face, tee only. From 0 mm to 50 mm. Default: 0 mm."""

    minimum_land: NotRequired[Length]
    """Least land that must stay; a detail may ask for more. From 0 mm to 50 mm. Default: 1 mm."""

    depth_step: NotRequired[Length]
    """Step that the depth is rounded up to: by default 0.5 mm, or 1/32 in (us). From 0.01 mm to 25.4 mm."""

    depth_tolerance: NotRequired[Length]
    """How much shallower an edge may be cut than specified; the depth covers it.

    From 0 mm to 50 mm. Default: 0 mm.
    """

    bears: NotRequired[bool]
    """Whether the parts are finished to bear, so that they take the compression; AISC only. Default: false."""


class FullWeld(TypedDict):
    """Full-penetration groove."""

    kind: Literal["full"]

    groove: NotRequired[
        Literal[
            "square",
            "single-bevel",
            "double-bevel",
            "single-v",
            "double-v",
            "single-j",
            "double-j",
            "single-u",
            "double-u",
        ]
    ]
    """Form of the groove; without it the form with the least metal is chosen of those that fit."""

    groove_angle: NotRequired[Angle]
    """Included angle of the groove; for a bevel or J that of its one cut face. From 5 deg to 120 deg."""

    root: NotRequired[Literal["open", "backing", "back-run", "back-gouge"]]
    """How the root is made; without it the root is chosen."""

    gap: NotRequired[Length]
    """Root gap; by default the middle of the range that the detail allows. From 0 mm to 50 mm."""

    land: NotRequired[Length]
    """Land; by default the middle of the range that the detail allows. From 0 mm to 50 mm."""

    access: NotRequired[Literal["one-side", "both-sides"]]
    """Sides the seam can be welded from. Default: both-sides."""


class FlareBevel(TypedDict):
    """Flare bevel: a round surface on a flat one."""

    kind: Literal["flare-bevel"]

    radius: Length
    """Radius of the joint's surface. From 1 mm to 500 mm."""

    below_flush: NotRequired[Length]
    """How far the face lies below flush. From 0 mm to 100 mm. Default: 0 mm."""


class FlareV(TypedDict):
    """Flare V: two round surfaces."""

    kind: Literal["flare-v"]

    radius: Length
    """Radius of the joint's surface. From 1 mm to 500 mm."""

    below_flush: NotRequired[Length]
    """How far the face lies below flush. From 0 mm to 100 mm. Default: 0 mm."""


class TeeButt(TypedDict):
    """T-butt welded from both sides, to be judged by EN 1993-1-8 4.7.3."""

    kind: Literal["tee-butt"]

    throats: list[Length] | tuple[Length, Length]
    """Throat of each side, fillets on it included."""

    unwelded: Length
    """Unwelded gap between the two sides, through part 2. From 0 mm to 300 mm."""


class Plug(TypedDict):
    """Plug welds in round holes through part 2."""

    kind: Literal["plug"]

    diameter: Length
    """Diameter of the hole. From 1 mm to 500 mm."""

    filling: NotRequired[Length]
    """Height of the filling; by default the thickness of part 2, which has the hole. From 1 mm to 500 mm."""

    count: NotRequired[
        Literal[
            1,
            2,
            3,
            4,
            5,
            6,
            7,
            8,
            9,
            10,
            11,
            12,
            13,
            14,
            15,
            16,
            17,
            18,
            19,
            20,
            21,
            22,
            23,
            24,
            25,
            26,
            27,
            28,
            29,
            30,
            31,
            32,
            33,
            34,
            35,
            36,
            37,
            38,
            39,
            40,
            41,
            42,
            43,
            44,
            45,
            46,
            47,
            48,
            49,
            50,
            51,
            52,
            53,
            54,
            55,
            56,
            57,
            58,
            59,
            60,
            61,
            62,
            63,
            64,
            65,
            66,
            67,
            68,
            69,
            70,
            71,
            72,
            73,
            74,
            75,
            76,
            77,
            78,
            79,
            80,
            81,
            82,
            83,
            84,
            85,
            86,
            87,
            88,
            89,
            90,
            91,
            92,
            93,
            94,
            95,
            96,
            97,
            98,
            99,
            100,
            101,
            102,
            103,
            104,
            105,
            106,
            107,
            108,
            109,
            110,
            111,
            112,
            113,
            114,
            115,
            116,
            117,
            118,
            119,
            120,
            121,
            122,
            123,
            124,
            125,
            126,
            127,
            128,
            129,
            130,
            131,
            132,
            133,
            134,
            135,
            136,
            137,
            138,
            139,
            140,
            141,
            142,
            143,
            144,
            145,
            146,
            147,
            148,
            149,
            150,
            151,
            152,
            153,
            154,
            155,
            156,
            157,
            158,
            159,
            160,
            161,
            162,
            163,
            164,
            165,
            166,
            167,
            168,
            169,
            170,
            171,
            172,
            173,
            174,
            175,
            176,
            177,
            178,
            179,
            180,
            181,
            182,
            183,
            184,
            185,
            186,
            187,
            188,
            189,
            190,
            191,
            192,
            193,
            194,
            195,
            196,
            197,
            198,
            199,
            200,
        ]
    ]
    """Number of welds; without it the number needed is taken."""

    pitch: NotRequired[Length]
    """Least distance between centres. From 1 mm to 500 mm."""


class Slot(TypedDict):
    """Slot welds, their ends half round, through part 2."""

    kind: Literal["slot"]

    width: Length
    """Width of the slot. From 1 mm to 500 mm."""

    length: Length
    """Length over all. From 1 mm to 500 mm."""

    filling: NotRequired[Length]
    """Height of the filling; by default the thickness of part 2, which has the hole. From 1 mm to 500 mm."""

    count: NotRequired[
        Literal[
            1,
            2,
            3,
            4,
            5,
            6,
            7,
            8,
            9,
            10,
            11,
            12,
            13,
            14,
            15,
            16,
            17,
            18,
            19,
            20,
            21,
            22,
            23,
            24,
            25,
            26,
            27,
            28,
            29,
            30,
            31,
            32,
            33,
            34,
            35,
            36,
            37,
            38,
            39,
            40,
            41,
            42,
            43,
            44,
            45,
            46,
            47,
            48,
            49,
            50,
            51,
            52,
            53,
            54,
            55,
            56,
            57,
            58,
            59,
            60,
            61,
            62,
            63,
            64,
            65,
            66,
            67,
            68,
            69,
            70,
            71,
            72,
            73,
            74,
            75,
            76,
            77,
            78,
            79,
            80,
            81,
            82,
            83,
            84,
            85,
            86,
            87,
            88,
            89,
            90,
            91,
            92,
            93,
            94,
            95,
            96,
            97,
            98,
            99,
            100,
            101,
            102,
            103,
            104,
            105,
            106,
            107,
            108,
            109,
            110,
            111,
            112,
            113,
            114,
            115,
            116,
            117,
            118,
            119,
            120,
            121,
            122,
            123,
            124,
            125,
            126,
            127,
            128,
            129,
            130,
            131,
            132,
            133,
            134,
            135,
            136,
            137,
            138,
            139,
            140,
            141,
            142,
            143,
            144,
            145,
            146,
            147,
            148,
            149,
            150,
            151,
            152,
            153,
            154,
            155,
            156,
            157,
            158,
            159,
            160,
            161,
            162,
            163,
            164,
            165,
            166,
            167,
            168,
            169,
            170,
            171,
            172,
            173,
            174,
            175,
            176,
            177,
            178,
            179,
            180,
            181,
            182,
            183,
            184,
            185,
            186,
            187,
            188,
            189,
            190,
            191,
            192,
            193,
            194,
            195,
            196,
            197,
            198,
            199,
            200,
        ]
    ]
    """Number of welds; without it the number needed is taken."""

    pitch: NotRequired[Length]
    """Least distance between lines of slots, across them. From 1 mm to 500 mm."""

    pitch_along: NotRequired[Length]
    """Least distance between centres along a line of slots. From 1 mm to 500 mm."""


class FilletInHole(TypedDict):
    """Fillets all round the inside of round holes through part 2."""

    kind: Literal["fillet-in-hole"]

    diameter: Length
    """Diameter of the hole. From 1 mm to 500 mm."""

    leg: Length
    """Leg of the fillet, the same on wall and face. From 1 mm to 500 mm."""

    count: NotRequired[
        Literal[
            1,
            2,
            3,
            4,
            5,
            6,
            7,
            8,
            9,
            10,
            11,
            12,
            13,
            14,
            15,
            16,
            17,
            18,
            19,
            20,
            21,
            22,
            23,
            24,
            25,
            26,
            27,
            28,
            29,
            30,
            31,
            32,
            33,
            34,
            35,
            36,
            37,
            38,
            39,
            40,
            41,
            42,
            43,
            44,
            45,
            46,
            47,
            48,
            49,
            50,
            51,
            52,
            53,
            54,
            55,
            56,
            57,
            58,
            59,
            60,
            61,
            62,
            63,
            64,
            65,
            66,
            67,
            68,
            69,
            70,
            71,
            72,
            73,
            74,
            75,
            76,
            77,
            78,
            79,
            80,
            81,
            82,
            83,
            84,
            85,
            86,
            87,
            88,
            89,
            90,
            91,
            92,
            93,
            94,
            95,
            96,
            97,
            98,
            99,
            100,
            101,
            102,
            103,
            104,
            105,
            106,
            107,
            108,
            109,
            110,
            111,
            112,
            113,
            114,
            115,
            116,
            117,
            118,
            119,
            120,
            121,
            122,
            123,
            124,
            125,
            126,
            127,
            128,
            129,
            130,
            131,
            132,
            133,
            134,
            135,
            136,
            137,
            138,
            139,
            140,
            141,
            142,
            143,
            144,
            145,
            146,
            147,
            148,
            149,
            150,
            151,
            152,
            153,
            154,
            155,
            156,
            157,
            158,
            159,
            160,
            161,
            162,
            163,
            164,
            165,
            166,
            167,
            168,
            169,
            170,
            171,
            172,
            173,
            174,
            175,
            176,
            177,
            178,
            179,
            180,
            181,
            182,
            183,
            184,
            185,
            186,
            187,
            188,
            189,
            190,
            191,
            192,
            193,
            194,
            195,
            196,
            197,
            198,
            199,
            200,
        ]
    ]
    """Number of welds; without it the number needed is taken."""


class FilletInSlot(TypedDict):
    """Fillets all round the inside of slots, their ends half round, through part 2."""

    kind: Literal["fillet-in-slot"]

    width: Length
    """Width of the slot. From 1 mm to 500 mm."""

    length: Length
    """Length over all. From 1 mm to 500 mm."""

    leg: Length
    """Leg of the fillet, the same on wall and face. From 1 mm to 500 mm."""

    count: NotRequired[
        Literal[
            1,
            2,
            3,
            4,
            5,
            6,
            7,
            8,
            9,
            10,
            11,
            12,
            13,
            14,
            15,
            16,
            17,
            18,
            19,
            20,
            21,
            22,
            23,
            24,
            25,
            26,
            27,
            28,
            29,
            30,
            31,
            32,
            33,
            34,
            35,
            36,
            37,
            38,
            39,
            40,
            41,
            42,
            43,
            44,
            45,
            46,
            47,
            48,
            49,
            50,
            51,
            52,
            53,
            54,
            55,
            56,
            57,
            58,
            59,
            60,
            61,
            62,
            63,
            64,
            65,
            66,
            67,
            68,
            69,
            70,
            71,
            72,
            73,
            74,
            75,
            76,
            77,
            78,
            79,
            80,
            81,
            82,
            83,
            84,
            85,
            86,
            87,
            88,
            89,
            90,
            91,
            92,
            93,
            94,
            95,
            96,
            97,
            98,
            99,
            100,
            101,
            102,
            103,
            104,
            105,
            106,
            107,
            108,
            109,
            110,
            111,
            112,
            113,
            114,
            115,
            116,
            117,
            118,
            119,
            120,
            121,
            122,
            123,
            124,
            125,
            126,
            127,
            128,
            129,
            130,
            131,
            132,
            133,
            134,
            135,
            136,
            137,
            138,
            139,
            140,
            141,
            142,
            143,
            144,
            145,
            146,
            147,
            148,
            149,
            150,
            151,
            152,
            153,
            154,
            155,
            156,
            157,
            158,
            159,
            160,
            161,
            162,
            163,
            164,
            165,
            166,
            167,
            168,
            169,
            170,
            171,
            172,
            173,
            174,
            175,
            176,
            177,
            178,
            179,
            180,
            181,
            182,
            183,
            184,
            185,
            186,
            187,
            188,
            189,
            190,
            191,
            192,
            193,
            194,
            195,
            196,
            197,
            198,
            199,
            200,
        ]
    ]
    """Number of welds; without it the number needed is taken."""


class GrooveForce(TypedDict):
    """Force on the joint."""

    force: Force
    """Force on the joint, all sides together; one that presses the parts together is negative.

    From -100000 kN to 100000 kN.
    """

    length: NotRequired[Length]
    """Length of the weld; those in holes and slots have none. From 0 mm (exclusive) to 100000 mm."""

    angle: NotRequired[Angle]
    """Angle of the force to the weld's axis: 0 deg along it, 90 deg across it; those in holes have none.

    From 0 deg to 90 deg.
    """


class GrooveComponents(TypedDict):
    """Force per length on the joint, all sides together."""

    normal: NotRequired[ForcePerLength]
    """Square to the throat: pulls the parts apart when positive, presses them when negative.

    From -1000000 N/mm to 1000000 N/mm. Default: 0 N/mm.
    """

    transverse: NotRequired[ForcePerLength]
    """Across the weld, shearing the throat. From -1000000 N/mm to 1000000 N/mm. Default: 0 N/mm."""

    longitudinal: NotRequired[ForcePerLength]
    """Along the weld, shearing the throat. From -1000000 N/mm to 1000000 N/mm. Default: 0 N/mm."""


class GrindAllowanceRequest(TypedDict):
    """Seam to grind."""

    units: NotRequired[Literal["metric", "us"]]
    """Units of the answer. Default: metric."""

    mark: NotRequired[str]
    """The caller's own mark for this joint, given back with the answer."""

    working: NotRequired[bool]
    """Whether the answer shows its working. Default: false."""

    seam: ButtSeam | EdgeSeam | ClosedCorner | HalfOpenCorner | OpenCorner | FilletSeam
    """The seam."""

    required_throat: Length
    """Throat the finished seam must keep. From 0 mm (exclusive) to 300 mm."""

    finish: NotRequired[AsWelded | Flush | Flat | Radius]
    """What is done to the face. Default: {"to": "as-welded"}."""

    preparation: NotRequired[Preparation]
    """Prepared edge of a butt, an edge seam or a closed corner."""

    penetration: NotRequired[Penetration]
    """Fusion beyond the root or the prepared depth."""

    face_height: NotRequired[Length]
    """Height of the face over its plane: the flush plane, or the line between the toes.

    From 0 mm to 50 mm. Default: 0 mm.
    """

    hollow: NotRequired[Length]
    """Depth of a hollow face under its plane, instead of face_height. From 0 mm to 50 mm."""

    face_height_tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""

    hollow_tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""

    face_width: NotRequired[Length]
    """Width of a flat seam's face; it limits the throat to the distance to the nearer toe.

    Without it the toes of a groove are taken at its edges. From 0 mm (exclusive) to 300 mm.
    """

    rule_set: NotRequired[RuleSetId]
    """Rules whose deduction the budget takes off the prepared depth."""

    root_pass: NotRequired[Literal["mechanized", "automatic", "robotic"]]
    """How the root pass is made, where it is not made by hand; AISC 360-22 counts proven penetration only then."""

    process: NotRequired[ProcessCode]
    """Process: AWS letters or ISO 4063 number."""

    position: NotRequired[PositionCode]
    """Position: AWS or ISO 6947 code."""


class ButtSeam(TypedDict):
    """Butt of two edges."""

    thickness: list[Length] | tuple[Length, Length]
    """Thickness of parts 1 and 2."""

    thickness_tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""

    kind: Literal["butt"]


class EdgeSeam(TypedDict):
    """Edges of two parallel plates."""

    thickness: list[Length] | tuple[Length, Length]
    """Thickness of parts 1 and 2."""

    thickness_tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""

    kind: Literal["edge"]


class ClosedCorner(TypedDict):
    """Corner closed: the end of part 1 against the inner face of part 2, the seam in part 1's outer face."""

    thickness: list[Length] | tuple[Length, Length]
    """Thickness of parts 1 and 2."""

    thickness_tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""

    kind: Literal["closed-corner"]

    angle: NotRequired[Angle]
    """Angle between the plates; a closed corner is answered at 90 deg. From 10 deg to 170 deg. Default: 90 deg."""

    width: NotRequired[list[Length] | tuple[Length, Length]]
    """Width of the outer face of parts 1 and 2 from the corner, to check a blend against."""


class HalfOpenCorner(TypedDict):
    """Corner half open: the end of part 1 overlaps the end of part 2 in part."""

    thickness: list[Length] | tuple[Length, Length]
    """Thickness of parts 1 and 2."""

    thickness_tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""

    kind: Literal["half-open-corner"]

    angle: NotRequired[Angle]
    """Angle between the plates. From 30 deg to 150 deg. Default: 90 deg."""

    overlap: Length
    """How far the end of part 1 is covered, along part 2's inner face. From 0 mm to 300 mm."""

    overlap_tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""

    width: NotRequired[list[Length] | tuple[Length, Length]]
    """Width of the outer face of parts 1 and 2 from the corner, to check a blend against."""


class OpenCorner(TypedDict):
    """Corner open: the inner edges meet."""

    thickness: list[Length] | tuple[Length, Length]
    """Thickness of parts 1 and 2."""

    thickness_tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""

    kind: Literal["open-corner"]

    angle: NotRequired[Angle]
    """Angle between the plates. From 30 deg to 150 deg. Default: 90 deg."""

    width: NotRequired[list[Length] | tuple[Length, Length]]
    """Width of the outer face of parts 1 and 2 from the corner, to check a blend against."""


class FilletSeam(TypedDict):
    """Fillet between two faces."""

    kind: Literal["fillet"]

    thickness: NotRequired[list[Length] | tuple[Length, Length]]
    """Thickness of parts 1 and 2; not needed for a fillet's throat."""

    thickness_tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""

    angle: NotRequired[Angle]
    """Angle between the plates. From 30 deg to 150 deg. Default: 90 deg."""

    legs: list[Length] | tuple[Length, Length]
    """Legs along the faces of parts 1 and 2."""

    legs_tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""


class AsWelded(TypedDict):
    """Nothing is ground."""

    to: Literal["as-welded"]


class Flush(TypedDict):
    """Ground flush: a corner on both outer faces."""

    to: Literal["flush"]

    below: NotRequired[Length]
    """How far under the finishing plane the grinder goes. From 0 mm to 50 mm. Default: 0 mm."""

    tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""


class Flat(TypedDict):
    """Ground flat, to the line between the toes."""

    to: Literal["flat"]

    below: NotRequired[Length]
    """How far under the finishing plane the grinder goes. From 0 mm to 50 mm. Default: 0 mm."""

    tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""


class Radius(TypedDict):
    """Blended to a radius, tangent to both outer faces."""

    to: Literal["radius"]

    radius: Length
    """Radius of the blend. From 0 mm to 300 mm."""

    below: NotRequired[Length]
    """How far under the blend the grinder goes. From 0 mm to 50 mm. Default: 0 mm."""

    tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""


class Preparation(TypedDict):
    """Prepared edge of a butt, an edge seam or a closed corner."""

    depth: NotRequired[Length]
    """Depth of the preparation, square to the face. From 0 mm to 300 mm. Default: 0 mm."""

    groove: NotRequired[Literal["single-bevel", "single-v", "single-j", "single-u"]]
    """Form of the groove. Default: single-bevel."""

    groove_angle: NotRequired[Angle]
    """Included angle of the groove: by default 45 deg for a bevel, 60 deg for a V, 20 deg for a J or U.

    From 5 deg to 120 deg.
    """

    tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""


class BevelDepthRequest(TypedDict):
    """Edge to prepare."""

    units: NotRequired[Literal["metric", "us"]]
    """Units of the answer. Default: metric."""

    mark: NotRequired[str]
    """The caller's own mark for this joint, given back with the answer."""

    working: NotRequired[bool]
    """Whether the answer shows its working. Default: false."""

    seam: ButtSeam | EdgeSeam | ClosedCorner
    """The seam."""

    required_throat: Length
    """Throat the finished seam must keep. From 0 mm (exclusive) to 300 mm."""

    finish: NotRequired[AsWelded | Flush | Flat | Radius]
    """What is done to the face. Default: {"to": "flush"}."""

    groove: NotRequired[Literal["single-bevel", "single-v", "single-j", "single-u"]]
    """Form of the groove. Default: single-bevel."""

    groove_angle: NotRequired[Angle]
    """Included angle of the groove: by default 45 deg for a bevel, 60 deg for a V, 20 deg for a J or U.

    From 5 deg to 120 deg.
    """

    bevelled: NotRequired[Literal[1, 2, "both"]]
    """Part that is cut: 1 for a bevel or J, both for a V or U, by default."""

    root_radius: NotRequired[Length]
    """Root radius of a J (10 mm by default) or U (6 mm). From 1 mm to 25 mm."""

    penetration: NotRequired[Penetration]
    """Fusion beyond the root or the prepared depth."""

    minimum_land: NotRequired[Length]
    """Least land that must stay. From 0 mm to 50 mm. Default: 1 mm."""

    depth_step: NotRequired[Length]
    """Step that the depth is rounded up to: by default 0.5 mm, or 1/32 in (us). From 0.01 mm to 25.4 mm."""

    depth_tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""

    rule_set: NotRequired[RuleSetId]
    """Rules whose deduction is added to the depth."""

    root_pass: NotRequired[Literal["mechanized", "automatic", "robotic"]]
    """How the root pass is made, where it is not made by hand; AISC 360-22 counts proven penetration only then."""

    process: NotRequired[ProcessCode]
    """Process: AWS letters or ISO 4063 number."""

    position: NotRequired[PositionCode]
    """Position: AWS or ISO 6947 code."""


class WeldGroupRequest(TypedDict):
    """Weld group to size."""

    units: NotRequired[Literal["metric", "us"]]
    """Units of the answer. Default: metric."""

    mark: NotRequired[str]
    """The caller's own mark for this joint, given back with the answer."""

    working: NotRequired[bool]
    """Whether the answer shows its working. Default: false."""

    rule_set: Literal[
        "aisc-360-22-lrfd",
        "aisc-360-22-asd",
        "en-1993-1-8-2005-directional",
        "en-1993-1-8-2005-simplified",
        "en-1993-1-4-2006-directional",
        "en-1993-1-4-2006-simplified",
        "en-1993-1-12-2007-directional",
        "en-1993-1-12-2007-simplified",
        "en-1999-1-1-2007",
    ]
    """Rules to size by; see /v1/rule-sets."""

    group: (
        OneLine
        | TwoUprightLinesGroup
        | TwoLevelLinesGroup
        | LGroup
        | CGroup
        | UGroup
        | TGroup
        | IGroup
        | RectangleGroup
        | Circle
        | LinesGroup
    )
    """The group: a named pattern, or its lines and arcs."""

    load: GroupLoad
    """Load of all groups together."""

    parts: Sequence[MaterialPart | StrengthPart | PlainPart]
    """Parts 1 and 2, for the least size and, with EN 1993, the strength."""

    method: NotRequired[Literal["elastic", "instantaneous-centre"]]
    """Elastic line method, or instantaneous centre for loads in the plane (AISC). Default: elastic."""

    count: NotRequired[Literal[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]]
    """Equal groups that share the load. Default: 1."""

    filler: NotRequired[FillerMetalId | Filler]
    """Filler metal: an id (see /v1/filler-metals) or its strength."""

    parameters: NotRequired[Parameters]
    """Parameters that replace the rule set's own; EN 1993-1-8 only."""

    leg: NotRequired[Length]
    """Leg of the weld, to find what it carries. From 0.5 mm to 100 mm."""

    throat: NotRequired[Length]
    """Throat of the weld, instead of the leg. From 0.3 mm to 100 mm."""

    end_loaded: NotRequired[bool]
    """Whether the long-weld reduction applies. Not given: it does where a force acts in the plane of the group."""

    size_by: NotRequired[Literal["leg", "throat"]]
    """What is rounded up to the step: the throat by default for EN 1993-1-8, the leg otherwise."""

    size_step: NotRequired[Length]
    """Step that the size is rounded up to: by default 1/16 in (us), 1 mm of leg or 0.5 mm of throat.

    From 0.01 mm to 25.4 mm.
    """


class OneLine(TypedDict):
    """One upright line; origin at its middle."""

    pattern: Literal["one-line"]

    depth: Length
    """Length of the line. From 1 mm to 100000 mm."""


class TwoUprightLinesGroup(TypedDict):
    """Two upright lines; origin at the middle of the left one."""

    pattern: Literal["two-upright-lines"]

    depth: Length
    """Extent along y. From 1 mm to 100000 mm."""

    width: Length
    """Extent along x. From 1 mm to 100000 mm."""


class TwoLevelLinesGroup(TypedDict):
    """Two level lines; origin midway between their left ends."""

    pattern: Literal["two-level-lines"]

    depth: Length
    """Extent along y. From 1 mm to 100000 mm."""

    width: Length
    """Extent along x. From 1 mm to 100000 mm."""


class LGroup(TypedDict):
    """Upright line with a level one at its top; origin at the middle of the upright one."""

    pattern: Literal["l"]

    depth: Length
    """Extent along y. From 1 mm to 100000 mm."""

    width: Length
    """Extent along x. From 1 mm to 100000 mm."""


class CGroup(TypedDict):
    """Upright line with level ones at both ends; origin at the middle of the upright one."""

    pattern: Literal["c"]

    depth: Length
    """Extent along y. From 1 mm to 100000 mm."""

    width: Length
    """Extent along x. From 1 mm to 100000 mm."""


class UGroup(TypedDict):
    """Level line on top of two upright ones; origin at the middle of the left one."""

    pattern: Literal["u"]

    depth: Length
    """Extent along y. From 1 mm to 100000 mm."""

    width: Length
    """Extent along x. From 1 mm to 100000 mm."""


class TGroup(TypedDict):
    """Both sides of a stem below both sides of a level plate; origin at the middle of the level plate's left end."""

    pattern: Literal["t"]

    depth: Length
    """Extent along y. From 1 mm to 100000 mm."""

    width: Length
    """Extent along x. From 1 mm to 100000 mm."""


class IGroup(TypedDict):
    """All round an I: both sides of both flanges and of the web; origin at the middle of the web's left."""

    pattern: Literal["i"]

    depth: Length
    """Extent along y. From 1 mm to 100000 mm."""

    width: Length
    """Extent along x. From 1 mm to 100000 mm."""


class RectangleGroup(TypedDict):
    """All round a rectangle; origin at the middle of its left side."""

    pattern: Literal["rectangle"]

    depth: Length
    """Extent along y. From 1 mm to 100000 mm."""

    width: Length
    """Extent along x. From 1 mm to 100000 mm."""


class Circle(TypedDict):
    """All round a circle; origin at its centre."""

    pattern: Literal["circle"]

    diameter: Length
    """Diameter. From 1 mm to 100000 mm."""


class LinesGroup(TypedDict):
    """Any lines and arcs, given by their coordinates."""

    pattern: Literal["lines"]

    lines: Sequence[Arc | Straight]
    """Lines and arcs."""


class Arc(TypedDict):
    """Arc of weld."""

    centre: list[Length] | tuple[Length, Length]
    """Its centre: x, then y."""

    radius: Length
    """Radius. From 1 mm to 100000 mm."""

    start_angle: Angle
    """Angle from the x axis at which it starts. From -360 deg to 360 deg."""

    sweep: Angle
    """Angle it runs over. From 0.573 deg to 360 deg."""


class Straight(TypedDict):
    """Straight line of weld."""

    start: list[Length] | tuple[Length, Length]
    """Where it starts: x, then y."""

    end: list[Length] | tuple[Length, Length]
    """Where it ends: x, then y."""


class GroupLoad(TypedDict):
    """Load of all groups together."""

    force: NotRequired[ForceVector]
    """Force."""

    at: NotRequired[Place]
    """Where the force acts, from the origin of the group."""

    moment: NotRequired[MomentVector]
    """Moment in addition to that of the force."""


class ForceVector(TypedDict):
    """Force along each axis."""

    x: NotRequired[Force]
    """Along x. From -100000 kN to 100000 kN. Default: 0 kN."""

    y: NotRequired[Force]
    """Along y. From -100000 kN to 100000 kN. Default: 0 kN."""

    z: NotRequired[Force]
    """Along z. From -100000 kN to 100000 kN. Default: 0 kN."""


class Place(TypedDict):
    """Place from the origin of the group."""

    x: NotRequired[Length]
    """Along x. From -100000 mm to 100000 mm. Default: 0 mm."""

    y: NotRequired[Length]
    """Along y. From -100000 mm to 100000 mm. Default: 0 mm."""

    z: NotRequired[Length]
    """Along z. From -100000 mm to 100000 mm. Default: 0 mm."""


class MomentVector(TypedDict):
    """Moment about each axis, by the right hand."""

    x: NotRequired[Moment]
    """Along x. From -1000000 kN*m to 1000000 kN*m. Default: 0 kN*m."""

    y: NotRequired[Moment]
    """Along y. From -1000000 kN*m to 1000000 kN*m. Default: 0 kN*m."""

    z: NotRequired[Moment]
    """Along z. From -1000000 kN*m to 1000000 kN*m. Default: 0 kN*m."""


class FilletAsWelded(TypedDict):
    """Fillet as it was gauged."""

    units: NotRequired[Literal["metric", "us"]]
    """Units of the answer. Default: metric."""

    mark: NotRequired[str]
    """The caller's own mark for this joint, given back with the answer."""

    working: NotRequired[bool]
    """Whether the answer shows its working. Default: false."""

    thickness: list[Length] | tuple[Length, Length]
    """Thickness of parts 1 and 2."""

    required: RequiredLeg | RequiredThroat
    """What the drawing asks for."""

    quality: Literal["iso-5817-b", "iso-5817-c", "iso-5817-d", "aws-d1-1-2020"]
    """Level or code that the weld is checked against; see /v1/rule-sets."""

    loading: NotRequired[Literal["static", "cyclic-transverse", "cyclic-other"]]
    """Loading, for AWS D1.1: static by default; cyclic with the weld across the tension in a primary member; or
    other cyclic.
    """

    reading_tolerance: NotRequired[Length]
    """Plus or minus of the gauge.

    It is applied to every length read, on the unsafe side. An imperfection read as zero is taken as absent; a
    face read as flat may still be hollow by the tolerance. From 0 mm to 5 mm. Default: 0 mm.
    """

    extent: NotRequired[ExtentOfImperfections]
    """How long imperfections are. Without its length an imperfection is taken to run along the whole weld."""

    undercut: NotRequired[Length]
    """Deepest undercut at either toe. From 0 mm to 20 mm."""

    overlap: NotRequired[Length]
    """Widest overlap at either toe. From 0 mm to 20 mm."""

    toe_angle: NotRequired[Angle]
    """Least angle between plate and face at a toe, in the air. From 30 deg to 180 deg."""

    incomplete_penetration: NotRequired[Length]
    """Depth to the root that is not fused, by a test or a macro. From 0 mm to 50 mm."""

    lack_of_fusion: NotRequired[Length]
    """Height of lack of fusion inside, by a test or a macro. From 0 mm to 50 mm."""

    surface_pore: NotRequired[Length]
    """Diameter of the widest pore in the surface. From 0 mm to 20 mm."""

    internal_pore: NotRequired[Length]
    """Diameter of the widest single pore inside, by a test or a macro. From 0 mm to 20 mm."""

    end_crater_pipe: NotRequired[Length]
    """Depth of the pipe in an end crater. From 0 mm to 20 mm."""

    crack: NotRequired[bool]
    """Whether there is any crack, craters included; without it cracks are not checked."""

    burn_through: NotRequired[bool]
    """Whether the weld burnt through anywhere; without it burn-through is not checked."""

    kind: NotRequired[Literal["fillet"]]
    """Default: fillet."""

    legs: list[Length] | tuple[Length, Length]
    """Legs as gauged, along the faces of parts 1 and 2."""

    angle: NotRequired[Angle]
    """Angle between the plates. From 60 deg to 120 deg. Default: 90 deg."""

    throat: NotRequired[Length]
    """Throat as gauged; it limits the throat that the legs give. From 0 mm (exclusive) to 100 mm."""

    convexity: NotRequired[Length]
    """Height of the face over the line between its toes. From 0 mm to 50 mm."""

    hollow: NotRequired[Length]
    """Depth of a hollow face under that line, instead of convexity. From 0 mm to 50 mm."""

    root_gap: NotRequired[Length]
    """Gap between the parts at the root; parts that touch have none. From 0 mm to 20 mm. Default: 0 mm."""

    penetration: NotRequired[Penetration]
    """Fusion beyond the root or the prepared depth."""


class RequiredLeg(TypedDict):
    """A leg on the drawing."""

    leg: Length
    """Equal leg required. From 0.5 mm to 100 mm."""


class RequiredThroat(TypedDict):
    """A throat on the drawing."""

    throat: Length
    """Throat required. From 0.5 mm to 100 mm."""


class ExtentOfImperfections(TypedDict):
    """How long the weld is, and how long in total its imperfections are in the stretch their rule looks at.

    That is the worst 100 mm by ISO 5817; by AWS D1.1 the worst 12 in for undercut, the whole weld for its
    throat.
    """

    of_weld: Length
    """Length of the weld. From 1 mm to 100000 mm."""

    throat: NotRequired[Length]
    """Length over which throat or leg is short. From 0 mm to 100000 mm."""

    undercut: NotRequired[Length]
    """Length of undercut. From 0 mm to 100000 mm."""

    shrinkage_groove: NotRequired[Length]
    """Length of shrinkage groove. From 0 mm to 100000 mm."""

    underfill: NotRequired[Length]
    """Length of underfill. From 0 mm to 100000 mm."""

    root_concavity: NotRequired[Length]
    """Length of root concavity. From 0 mm to 100000 mm."""

    incomplete_penetration: NotRequired[Length]
    """Length of incomplete penetration. From 0 mm to 100000 mm."""

    lack_of_fusion: NotRequired[Length]
    """Length of lack of fusion. From 0 mm to 100000 mm."""


class ButtAsWelded(TypedDict):
    """Butt weld as it was gauged."""

    units: NotRequired[Literal["metric", "us"]]
    """Units of the answer. Default: metric."""

    mark: NotRequired[str]
    """The caller's own mark for this joint, given back with the answer."""

    working: NotRequired[bool]
    """Whether the answer shows its working. Default: false."""

    thickness: list[Length] | tuple[Length, Length]
    """Thickness of parts 1 and 2."""

    required: RequiredFullPenetration | RequiredThroat
    """What the drawing asks for: full penetration, or a throat of both sides together."""

    quality: Literal["iso-5817-b", "iso-5817-c", "iso-5817-d", "aws-d1-1-2020"]
    """Level or code that the weld is checked against; see /v1/rule-sets."""

    loading: NotRequired[Literal["static", "cyclic-transverse", "cyclic-other"]]
    """Loading, for AWS D1.1: static by default; cyclic with the weld across the tension in a primary member; or
    other cyclic.
    """

    reading_tolerance: NotRequired[Length]
    """Plus or minus of the gauge.

    It is applied to every length read, on the unsafe side. An imperfection read as zero is taken as absent; a
    face read as flat may still be hollow by the tolerance. From 0 mm to 5 mm. Default: 0 mm.
    """

    extent: NotRequired[ExtentOfImperfections]
    """How long imperfections are. Without its length an imperfection is taken to run along the whole weld."""

    undercut: NotRequired[Length]
    """Deepest undercut at either toe. From 0 mm to 20 mm."""

    overlap: NotRequired[Length]
    """Widest overlap at either toe. From 0 mm to 20 mm."""

    toe_angle: NotRequired[Angle]
    """Least angle between plate and face at a toe, in the air. From 30 deg to 180 deg."""

    incomplete_penetration: NotRequired[Length]
    """Depth to the root that is not fused, by a test or a macro. From 0 mm to 50 mm."""

    lack_of_fusion: NotRequired[Length]
    """Height of lack of fusion inside, by a test or a macro. From 0 mm to 50 mm."""

    surface_pore: NotRequired[Length]
    """Diameter of the widest pore in the surface. From 0 mm to 20 mm."""

    internal_pore: NotRequired[Length]
    """Diameter of the widest single pore inside, by a test or a macro. From 0 mm to 20 mm."""

    end_crater_pipe: NotRequired[Length]
    """Depth of the pipe in an end crater. From 0 mm to 20 mm."""

    crack: NotRequired[bool]
    """Whether there is any crack, craters included; without it cracks are not checked."""

    burn_through: NotRequired[bool]
    """Whether the weld burnt through anywhere; without it burn-through is not checked."""

    kind: Literal["butt"]

    sides: NotRequired[Literal[1, 2]]
    """Sides it was welded from. Default: 1."""

    circumferential: NotRequired[bool]
    """Whether the seam runs round a pipe (ISO 5817). Default: false."""

    face_width: NotRequired[Length]
    """Width of the face, on which the limits of ISO 5817 for reinforcement and overlap depend.

    From 0.5 mm to 300 mm.
    """

    reinforcement: NotRequired[Length]
    """Height of the face over the plate. From 0 mm to 50 mm."""

    underfill: NotRequired[Length]
    """Depth of the face under the plate, sagging included. From 0 mm to 50 mm."""

    root_width: NotRequired[Length]
    """Width of the root bead, on which the limit of ISO 5817 for excess penetration depends.

    From 0.5 mm to 300 mm.
    """

    excess_penetration: NotRequired[Length]
    """Height of the root bead over the plate. From 0 mm to 50 mm."""

    root_concavity: NotRequired[Length]
    """Depth of a hollow root under the plate. From 0 mm to 50 mm."""

    shrinkage_groove: NotRequired[Length]
    """Depth of grooves beside the root bead. From 0 mm to 20 mm."""

    misalignment: NotRequired[Length]
    """Offset of the two parts. From 0 mm to 50 mm."""

    flush: NotRequired[GroundFlush]
    """Flush finish, where the drawing requires one by AWS D1.1."""


class RequiredFullPenetration(TypedDict):
    """Full penetration on the drawing."""

    penetration: Literal["full"]
    """The whole of the thinner part."""


class GroundFlush(TypedDict):
    """A butt required flush."""

    thinning: NotRequired[Length]
    """How far it is ground under the surface of the thinner part. From 0 mm to 50 mm. Default: 0 mm."""

    faying: NotRequired[bool]
    """Whether another part lies on it. Default: false."""

    edition: NotRequired[Literal["aws-d1-1-2020", "aws-d1-1-2000"]]
    """Edition whose limit of thinning holds: up to 2000 also 5 % of the part. Default: aws-d1-1-2020."""


class HeatRequest(TypedDict):
    """One pass. The answer holds what the fields given allow, and lists the rest in left_out with what it needs."""

    units: NotRequired[Literal["metric", "us"]]
    """Units of the answer. Default: metric."""

    mark: NotRequired[str]
    """The caller's own mark for this joint, given back with the answer."""

    working: NotRequired[bool]
    """Whether the answer shows its working. Default: false."""

    arc: NotRequired[ArcEnergy | HeatInput | ArcSettings]
    """The arc: its settings, its energy, or its heat input."""

    process: NotRequired[ProcessCode]
    """Process: AWS letters or ISO 4063 number."""

    efficiency: NotRequired[float]
    """Thermal efficiency k; that of the process when left out."""

    thickness: NotRequired[Length]
    """Thickness of the plate itself, not the combined thickness.

    Where two parts of unequal thickness meet, this is the thinner one; send thickest_part too. From 0.1 mm to
    300 mm.
    """

    seam: NotRequired[Literal["plate", "butt-fill", "corner-fillet", "tee-fillet"]]
    """Seam: a run on plate, a filling run of a butt, or a single-run fillet in a corner or a tee."""

    preheat: NotRequired[Temperature]
    """Temperature of the plate when the pass begins. From -50 degC to 400 degC. Default: 20 degC."""

    cooling_time: NotRequired[TimeSpan]
    """Cooling time t8/5 as measured; send it instead of an arc. From 0.1 s to 1000 s."""

    cooling_window: NotRequired[CoolingWindow]
    """Cooling times t8/5 to judge against.

    Common practice: 10 to 25 s for S235 to S355, 5 to 20 s for quenched and tempered S460 to S690, 5 to 15 s
    for S700MC.
    """

    composition: NotRequired[Composition]
    """Composition of the parent steel."""

    carbon_equivalents: NotRequired[CarbonEquivalents]
    """Carbon equivalents of the parent steel; send them instead of the composition."""

    weld_metal_cet: NotRequired[float]
    """CET of the weld metal, for method B."""

    hydrogen: NotRequired[HydrogenContent]
    """Diffusible hydrogen of the weld metal.

    Sending it requests methods A and B; values outside the limits of method B are refused. From 0 ml/100g
    (exclusive) to 100 ml/100g.
    """

    combined_thickness: NotRequired[Length]
    """Sum of the thicknesses that meet at the weld, for method A.

    Each is the mean over 75 mm. Half the sum counts for fillets on opposite sides that are welded at the same
    time. It follows from seam, thickness and thickest_part when left out. From 0 mm (exclusive) to 1000 mm.
    """

    preheat_category: NotRequired[Literal["A", "B", "C", "D"]]
    """Category of AWS D1.1.

    A: SMAW with other than low-hydrogen electrodes on A36, A53 B, A500 and the like. B: low-hydrogen SMAW, SAW,
    GMAW or FCAW on A36, A572-42 to -55, A588, A992, A913-50, A500. C: A572-60 and -65, A633 E, A913-60 and -65,
    A709 HPS 70W. D: A913 and A710 with H8 consumables.
    """

    thickest_part: NotRequired[Length]
    """Thickest part at the weld; thickness when left out.

    The cooling time and every preheat go by it. From 0.1 mm to 300 mm.
    """

    steel_group: NotRequired[Literal[1, 2, 3]]
    """Steel group of ISO/TR 15608, for the hardness limit of ISO 15614-1."""

    heat_treated: NotRequired[bool]
    """Whether the weld is heat treated afterwards. Default: false."""

    leg: NotRequired[Length]
    """Leg of a fillet laid in this one pass. From 0.5 mm to 50 mm."""

    required_leg: NotRequired[Length]
    """Leg that was required of this fillet. From 0.5 mm to 50 mm."""


class ArcEnergy(TypedDict):
    """Arc energy, without an efficiency: the heat input of AWS D1.1 and ASME IX."""

    arc_energy: EnergyPerLength
    """Arc energy per length. From 0 kJ/mm (exclusive) to 50 kJ/mm."""


class HeatInput(TypedDict):
    """Heat input of EN 1011-1, which includes the efficiency."""

    heat_input: EnergyPerLength
    """Heat input per length. From 0 kJ/mm (exclusive) to 50 kJ/mm."""


class ArcSettings(TypedDict):
    """Settings of the arc. Without travel_speed the answer gives the speeds that keep to the cooling window."""

    voltage: Voltage
    """Arc voltage.

    For a waveform-controlled machine send arc_energy from instantaneous readings instead. From 0 V (exclusive)
    to 100 V.
    """

    current: Current
    """Welding current. From 0 A (exclusive) to 3000 A."""

    travel_speed: NotRequired[Speed]
    """Travel speed. From 0 mm/min (exclusive) to 60000 mm/min."""

    deposition_rate: NotRequired[DepositionRate]
    """Metal deposited while the arc burns, for the bead of a fillet. From 0 kg/h (exclusive) to 360 kg/h."""


class CoolingWindow(TypedDict):
    """Cooling times t8/5 to keep to."""

    least: TimeSpan
    """Shortest time that does not make the steel too hard. From 0.1 s to 1000 s."""

    most: TimeSpan
    """Longest time that does not make its grain too coarse. From 0.1 s to 1000 s."""


class Composition(TypedDict):
    """Composition of the parent steel. No element is guessed: a result that needs one which is not given is null."""

    C: float
    """Weight %."""

    Si: NotRequired[float]
    """Weight %."""

    Mn: NotRequired[float]
    """Weight %."""

    Cr: NotRequired[float]
    """Weight %."""

    Mo: NotRequired[float]
    """Weight %."""

    Ni: NotRequired[float]
    """Weight %."""

    Cu: NotRequired[float]
    """Weight %."""

    V: NotRequired[float]
    """Weight %."""

    Nb: NotRequired[float]
    """Weight %."""

    Ti: NotRequired[float]
    """Weight %."""

    B: NotRequired[float]
    """Weight %."""

    others_zero: NotRequired[bool]
    """Whether every element that is not given is zero, as the certificate says. Default: false."""


class CarbonEquivalents(TypedDict):
    """Carbon equivalents of the parent steel, where its composition is not at hand."""

    ce: NotRequired[float]
    """CE = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15."""

    cet: NotRequired[float]
    """CET = C + (Mn + Mo)/10 + (Cr + Cu)/20 + Ni/40."""

    pcm: NotRequired[float]
    """Pcm = C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5B."""


class CrackRiskRequest(TypedDict):
    """One pass to grade; the answer grades what the request describes, and no cracks by hydrogen (see /v1/heat)."""

    units: NotRequired[Literal["metric", "us"]]
    """Units of the answer. Default: metric."""

    mark: NotRequired[str]
    """The caller's own mark for this joint, given back with the answer."""

    working: NotRequired[bool]
    """Whether the answer shows its working. Default: false."""

    joint: Literal["butt", "fillet", "corner"]
    """Joint that the pass is in; corner is an outside corner."""

    bead: NotRequired[MitreBead | MeasuredBead]
    """Shape of one bead, not of the whole weld."""

    hollow: NotRequired[Length]
    """Depth of a hollow face under the line between its toes. From 0 mm to 50 mm."""

    restrained: NotRequired[bool]
    """Whether the joint is held so that it cannot give as the bead shrinks. Default: false."""

    weld_metal: NotRequired[WeldMetal]
    """Composition of the weld metal, for the index UCS."""

    process: NotRequired[ProcessCode]
    """Process: AWS letters or ISO 4063 number."""

    thickness: NotRequired[list[Length] | tuple[Length, Length]]
    """Thickness of parts 1 and 2, for the least fillet."""

    leg: NotRequired[Length]
    """Leg of the first, or only, pass. From 0.5 mm to 100 mm."""

    low_hydrogen: NotRequired[bool]
    """Whether the process is low in hydrogen or the steel is preheated.

    The thinner part then decides the least fillet of AWS D1.1; otherwise the thicker part does. Default: false.
    """

    crater: NotRequired[Literal["filled", "unfilled"]]
    """How the crater is left."""


class MitreBead(TypedDict):
    """Flat single-pass fillet of equal legs at 90 deg."""

    throat: Length
    """Throat from the root to the face. From 0.1 mm to 100 mm."""

    penetration: Length
    """Depth of fusion beyond the root, along the throat line. From 0 mm to 100 mm."""


class MeasuredBead(TypedDict):
    """One bead as a macro section shows it."""

    width: Length
    """Greatest width of the bead. From 0.1 mm to 100 mm."""

    depth: Length
    """Depth of the bead from its face. From 0.1 mm to 100 mm."""

    face_width: NotRequired[Length]
    """Width of its face, where the bead is wider below the face. From 0.1 mm to 100 mm."""


class WeldMetal(TypedDict):
    """Weld metal as analysed, diluted by the plate."""

    C: float
    """Weight %."""

    S: float
    """Weight %."""

    P: float
    """Weight %."""

    Nb: float
    """Weight %."""

    Si: float
    """Weight %."""

    Mn: float
    """Weight %."""


class FillerQuantityRequest(TypedDict):
    """Welds to estimate."""

    units: NotRequired[Literal["metric", "us"]]
    """Units of the answer. Default: metric."""

    mark: NotRequired[str]
    """The caller's own mark for this joint, given back with the answer."""

    working: NotRequired[bool]
    """Whether the answer shows its working. Default: false."""

    welds: Sequence[Weld]
    """Welds to estimate, one entry for equal ones."""

    prices: NotRequired[Prices]
    """The caller's own prices; the service has none."""


class Weld(TypedDict):
    """A number of equal welds."""

    shape: (
        FilletShape
        | SquareShape
        | SingleGrooveShape
        | DoubleGrooveShape
        | SingleCurvedShape
        | DoubleCurvedShape
        | FlareShape
        | OpenCornerShape
        | HalfOpenCornerShape
        | AreaShape
    )
    """Cross-section of the weld metal."""

    length: Length
    """Length of one weld. From 0.1 mm to 10000000 mm."""

    count: NotRequired[int]
    """Number of equal welds. Default: 1."""

    mark: NotRequired[str]
    """The caller's own mark for these welds, given back with them."""

    excess: NotRequired[float]
    """Share added to the area of the section; send leg_excess of a fillet for a share of its legs. Default: 0.0."""

    filler: NotRequired[FillerMetalId]
    """Filler metal; see /v1/filler-metals."""

    density: NotRequired[Density]
    """Density of the weld metal, instead of that of the filler. From 500 kg/m3 to 25000 kg/m3."""

    process: NotRequired[ProcessCode]
    """Process: AWS letters or ISO 4063 number."""

    position: NotRequired[PositionCode]
    """Position: AWS or ISO 6947 code."""

    efficiency: NotRequired[float]
    """Share of the consumable that is deposited.

    With electrode it does not count the loss of the stub, without it it does.
    """

    electrode: NotRequired[Electrode]
    """Stick electrode, to take its stub off; SMAW only."""

    deposition: NotRequired[DepositionBySolidWire | DepositionByWireMass | DepositionByRate]
    """Deposition rate, or the wire and its feed."""

    operator_factor: NotRequired[float]
    """Share of the clock during which the arc burns."""

    gas_flow: NotRequired[GasFlow]
    """Shielding gas while the arc burns. From 0.6 L/min to 120 L/min."""

    arc: NotRequired[WeldingArc]
    """Arc and power source, for the energy."""

    bead: NotRequired[BeadBySpeed | BeadByArea]
    """What one pass fills, for the passes."""


class FilletShape(TypedDict):
    """Fillet."""

    kind: Literal["fillet"]

    legs: NotRequired[list[Length] | tuple[Length, Length]]
    """Legs along the faces of parts 1 and 2; or a throat."""

    throat: NotRequired[Length]
    """Throat of an equal-leg fillet; or legs. From 0.1 mm to 300 mm."""

    angle: NotRequired[Angle]
    """Angle between the plates. From 30 deg to 150 deg. Default: 90 deg."""

    leg_excess: NotRequired[float]
    """Share added to each leg: 0.1 makes 21 % more metal. Default: 0.0."""

    convexity: NotRequired[Length]
    """Height of the face over the line between its toes. From 0 mm to 100 mm."""

    hollow: NotRequired[Length]
    """Depth of a hollow face under that line, instead of convexity. From 0 mm to 100 mm."""

    root_gap: NotRequired[Length]
    """Root gap; over 1/16 in it makes both legs larger by the whole of it. From 0 mm to 100 mm. Default: 0 mm."""


class SquareShape(TypedDict):
    """Square groove."""

    kind: Literal["square"]

    thickness: Length
    """Thickness of the part. From 0.1 mm to 300 mm."""

    root_gap: NotRequired[Length]
    """Root gap. From 0 mm to 100 mm. Default: 0 mm."""

    reinforcement: NotRequired[Reinforcement]
    """Caps."""

    back_gouge: NotRequired[BackGouge]
    """Gouge on the far side, filled again; not in a partial groove."""

    depth: NotRequired[Length]
    """Depth to which the gap of a partial one is filled. From 0 mm (exclusive) to 300 mm."""


class Reinforcement(TypedDict):
    """Caps of a groove weld."""

    face: NotRequired[Cap]
    """On the face, or on side 1."""

    root: NotRequired[Cap]
    """On the far side, or on side 2."""


class Cap(TypedDict):
    """Cap over a groove."""

    height: Length
    """Height over the surface. From 0 mm to 100 mm."""

    overlap: NotRequired[Length]
    """How far it runs over what the groove opens, both sides together; none when left out. From 0 mm to 100 mm."""

    width: NotRequired[Length]
    """Width of the cap, instead of an overlap. From 0 mm to 300 mm."""


class BackGouge(TypedDict):
    """Gouge on the far side, filled again."""

    depth: Length
    """Depth of the gouge. From 0.1 mm to 300 mm."""

    width: Length
    """Width of the gouge. From 0.1 mm to 300 mm."""


class SingleGrooveShape(TypedDict):
    """Bevel or V groove from one side."""

    kind: Literal["single-bevel", "single-v"]
    """Form."""

    thickness: Length
    """Thickness of the part. From 0.1 mm to 300 mm."""

    root_gap: NotRequired[Length]
    """Root gap. From 0 mm to 100 mm. Default: 0 mm."""

    reinforcement: NotRequired[Reinforcement]
    """Caps."""

    back_gouge: NotRequired[BackGouge]
    """Gouge on the far side, filled again; not in a partial groove."""

    angle: Angle
    """Included angle of a V or U; of a bevel or J that of its cut face, up to 75 deg. From 5 deg to 120 deg."""

    land: NotRequired[Length]
    """Land of a groove that goes through; with a depth they add up to the thickness. From 0 mm to 300 mm."""

    depth: NotRequired[Length]
    """Depth of the groove; without a land it is a partial one, its gap filled as deep.

    From 0 mm (exclusive) to 300 mm.
    """


class DoubleGrooveShape(TypedDict):
    """Bevel or V grooves from both sides."""

    kind: Literal["double-bevel", "double-v"]
    """Form."""

    thickness: Length
    """Thickness of the part. From 0.1 mm to 300 mm."""

    root_gap: NotRequired[Length]
    """Root gap. From 0 mm to 100 mm. Default: 0 mm."""

    reinforcement: NotRequired[Reinforcement]
    """Caps."""

    back_gouge: NotRequired[BackGouge]
    """Gouge on the far side, filled again; not in a partial groove."""

    angle: Angle
    """Included angle of a V or U; of a bevel or J that of its cut face, up to 75 deg. From 5 deg to 120 deg."""

    land: NotRequired[Length]
    """Land of a groove that goes through; with a depth they add up to the thickness. From 0 mm to 300 mm."""

    depths: NotRequired[list[Length] | tuple[Length, Length]]
    """Depths of sides 1 and 2; without a land a partial groove. Halves of what the land leaves, when left out."""


class SingleCurvedShape(TypedDict):
    """J or U groove from one side."""

    kind: Literal["single-j", "single-u"]
    """Form."""

    thickness: Length
    """Thickness of the part. From 0.1 mm to 300 mm."""

    root_gap: NotRequired[Length]
    """Root gap. From 0 mm to 100 mm. Default: 0 mm."""

    reinforcement: NotRequired[Reinforcement]
    """Caps."""

    back_gouge: NotRequired[BackGouge]
    """Gouge on the far side, filled again; not in a partial groove."""

    angle: Angle
    """Included angle of a V or U; of a bevel or J that of its cut face, up to 75 deg. From 5 deg to 120 deg."""

    root_radius: Length
    """Root radius. From 1 mm to 25 mm."""

    land: NotRequired[Length]
    """Land of a groove that goes through; with a depth they add up to the thickness. From 0 mm to 300 mm."""

    depth: NotRequired[Length]
    """Depth of the groove; without a land it is a partial one, its gap filled as deep.

    From 0 mm (exclusive) to 300 mm.
    """


class DoubleCurvedShape(TypedDict):
    """J or U grooves from both sides."""

    kind: Literal["double-j", "double-u"]
    """Form."""

    thickness: Length
    """Thickness of the part. From 0.1 mm to 300 mm."""

    root_gap: NotRequired[Length]
    """Root gap. From 0 mm to 100 mm. Default: 0 mm."""

    reinforcement: NotRequired[Reinforcement]
    """Caps."""

    back_gouge: NotRequired[BackGouge]
    """Gouge on the far side, filled again; not in a partial groove."""

    angle: Angle
    """Included angle of a V or U; of a bevel or J that of its cut face, up to 75 deg. From 5 deg to 120 deg."""

    root_radius: Length
    """Root radius. From 1 mm to 25 mm."""

    land: NotRequired[Length]
    """Land of a groove that goes through; with a depth they add up to the thickness. From 0 mm to 300 mm."""

    depths: NotRequired[list[Length] | tuple[Length, Length]]
    """Depths of sides 1 and 2; without a land a partial groove. Halves of what the land leaves, when left out."""


class FlareShape(TypedDict):
    """Round edge against a plane, or two round edges, filled flush."""

    kind: Literal["flare-bevel", "flare-v"]
    """Form."""

    radius: Length
    """Outside radius of the round edge or edges. From 0.1 mm to 300 mm."""

    root_gap: NotRequired[Length]
    """Root gap. From 0 mm to 100 mm. Default: 0 mm."""

    reinforcement: NotRequired[Reinforcement]
    """Caps."""


class OpenCornerShape(TypedDict):
    """Outside corner whose inner edges meet."""

    kind: Literal["open-corner"]

    thickness: list[Length] | tuple[Length, Length]
    """Thickness of parts 1 and 2."""

    angle: NotRequired[Angle]
    """Angle between the plates. From 30 deg to 150 deg. Default: 90 deg."""

    fill: NotRequired[Literal["flat", "sharp", "rounded"]]
    """Filled to the line between the toes, to the outer planes, or to a radius tangent to them. Default: flat."""

    radius: NotRequired[Length]
    """Radius, with fill "rounded". From 0 mm (exclusive) to 300 mm."""

    crown: NotRequired[Length]
    """Height over the line between the toes, with fill "flat". From 0 mm to 100 mm."""


class HalfOpenCornerShape(TypedDict):
    """Outside corner at a right angle, where part 2 covers the end of part 1 in part."""

    kind: Literal["half-open-corner"]

    thickness: list[Length] | tuple[Length, Length]
    """Thickness of parts 1 and 2."""

    overlap: Length
    """How far the end of part 1 is covered. From 0 mm to 300 mm."""

    fill: NotRequired[Literal["flat", "sharp", "rounded"]]
    """Filled to the line between the toes, to the outer planes, or to a radius tangent to them. Default: flat."""

    radius: NotRequired[Length]
    """Radius, with fill "rounded". From 0 mm (exclusive) to 300 mm."""

    crown: NotRequired[Length]
    """Height over the line between the toes, with fill "flat". From 0 mm to 100 mm."""


class AreaShape(TypedDict):
    """Section known by its area."""

    kind: Literal["area"]

    area: Area
    """Area of the section. From 0.1 mm2 to 100000 mm2."""


class Electrode(TypedDict):
    """Stick electrode and its stub."""

    length: Length
    """Length of the electrode. From 100 mm to 1000 mm."""

    stub: Length
    """Length of the stub that is thrown away. From 0 mm to 500 mm."""


class DepositionBySolidWire(TypedDict):
    """Solid wire and its feed."""

    wire_diameter: Length
    """Diameter of a solid wire. From 0.3 mm to 8 mm."""

    feed_speed: Speed
    """Speed the wire is fed at. From 60 mm/min to 60000 mm/min."""


class DepositionByWireMass(TypedDict):
    """Any wire, by its mass, and its feed."""

    wire_mass: MassPerLength
    """Mass per length of a wire, cored or solid. From 0.0001 kg/m to 1 kg/m."""

    feed_speed: Speed
    """Speed the wire is fed at. From 60 mm/min to 60000 mm/min."""


class DepositionByRate(TypedDict):
    """Deposition rate."""

    rate: DepositionRate
    """Metal deposited for each unit of arc time, without spatter and slag. From 0.01 kg/h to 200 kg/h."""


class WeldingArc(TypedDict):
    """Arc and power source."""

    voltage: Voltage
    """Voltage of the arc. From 5 V to 100 V."""

    current: Current
    """Welding current. From 1 A to 3000 A."""

    source_efficiency: NotRequired[float]
    """Share of the mains energy that the power source passes on."""


class BeadBySpeed(TypedDict):
    """Pass by its travel speed."""

    travel_speed: Speed
    """Travel speed, from which the area of a pass follows. From 6 mm/min to 12000 mm/min."""


class BeadByArea(TypedDict):
    """Pass by its area."""

    area: Area
    """Area that one pass fills. From 0.5 mm2 to 500 mm2."""


class Prices(TypedDict):
    """Prices in one currency; the cost leaves out what has no price."""

    currency: str
    """Code of the currency, ISO 4217."""

    labour: NotRequired[LabourPrice]
    """Labour and overhead, for the working time."""

    consumables: NotRequired[Sequence[ConsumablePrice]]
    """Consumables.

    A weld takes the price that names its filler, else its process, else the one that names neither.
    """

    gases: NotRequired[Sequence[GasPrice]]
    """Gases. A weld takes the price that names its process, else the one that names none."""

    power: NotRequired[PowerPrice]
    """Energy from the mains."""


class LabourPrice(TypedDict):
    """Price of labour and overhead."""

    amount: float
    """Amount in the currency."""

    per: Literal["h", "min", "s"]
    """Unit it is the price of."""


class ConsumablePrice(TypedDict):
    """Price of a consumable."""

    amount: float
    """Amount in the currency."""

    per: Literal["kg", "g", "t", "lb"]
    """Unit it is the price of."""

    filler: NotRequired[FillerMetalId]
    """Filler metal it is for; any, when left out."""

    process: NotRequired[ProcessCode]
    """Process: AWS letters or ISO 4063 number."""


class GasPrice(TypedDict):
    """Price of a shielding gas."""

    amount: float
    """Amount in the currency."""

    per: Literal["m3", "L", "cm3", "ft3"]
    """Unit it is the price of."""

    process: NotRequired[ProcessCode]
    """Process: AWS letters or ISO 4063 number."""


class PowerPrice(TypedDict):
    """Price of energy from the mains."""

    amount: float
    """Amount in the currency."""

    per: Literal["kWh", "MJ", "kJ"]
    """Unit it is the price of."""


class DistortionRequest(TypedDict):
    """Joint whose distortion is estimated."""

    units: NotRequired[Literal["metric", "us"]]
    """Units of the answer. Default: metric."""

    mark: NotRequired[str]
    """The caller's own mark for this joint, given back with the answer."""

    working: NotRequired[bool]
    """Whether the answer shows its working. Default: false."""

    joint: ButtJoint | TeeJoint | LapJoint
    """The joint."""

    length: NotRequired[Length]
    """Length of the joint, along its welds. From 1 mm to 100000 mm."""

    member: NotRequired[Member]
    """Section of the member that the welds run along."""

    heat_input: NotRequired[EnergyPerLength]
    """Heat input of one run, with the arc efficiency included, for two methods along the weld.

    From 0.01 kJ/mm to 100 kJ/mm.
    """

    iso_13920: NotRequired[WeldingTolerances]
    """General tolerances to judge the estimates by."""

    calibration: NotRequired[Calibration]
    """Factors that correct these methods by the shop's own measurements."""

    size_step: NotRequired[Length]
    """Step by which the alternatives grow, of the leg or of the root opening: 1/16 in (us) or 1 mm by default.

    From 0.01 mm to 25.4 mm.
    """


class ButtJoint(TypedDict):
    """Butt weld through a thickness."""

    kind: Literal["butt"]

    thickness: Length
    """Thickness of the thinner plate. From 0.5 mm to 300 mm."""

    weld: SquareGrooveFill | SingleVFill | SingleBevelFill | DoubleVFill | DoubleBevelFill | FillByArea
    """The weld: its groove filled flush, or its area."""

    runs: NotRequired[
        Literal[
            1,
            2,
            3,
            4,
            5,
            6,
            7,
            8,
            9,
            10,
            11,
            12,
            13,
            14,
            15,
            16,
            17,
            18,
            19,
            20,
            21,
            22,
            23,
            24,
            25,
            26,
            27,
            28,
            29,
            30,
            31,
            32,
            33,
            34,
            35,
            36,
            37,
            38,
            39,
            40,
        ]
    ]
    """Runs of a weld from one side."""

    current: NotRequired[Current]
    """Welding current, for the method by current. From 1 A to 3000 A."""

    restraint: NotRequired[Restraint]
    """What holds the plate; the joint turns freely when it is left out."""


class SquareGrooveFill(TypedDict):
    """Square edges with an opening."""

    groove: Literal["square"]

    root_opening: Length
    """Root opening, which holds all the metal. From 0 mm (exclusive) to 50 mm."""


class SingleVFill(TypedDict):
    """V from one side."""

    groove: Literal["single-v"]

    root_opening: NotRequired[Length]
    """Root opening. From 0 mm to 50 mm. Default: 0 mm."""

    land: NotRequired[Length]
    """Land left at the root, or between the sides. From 0 mm to 100 mm. Default: 0 mm."""

    groove_angle: NotRequired[Angle]
    """Included angle of the V; 60 deg when left out. From 5 deg to 120 deg."""


class SingleBevelFill(TypedDict):
    """Bevel from one side."""

    groove: Literal["single-bevel"]

    root_opening: NotRequired[Length]
    """Root opening. From 0 mm to 50 mm. Default: 0 mm."""

    land: NotRequired[Length]
    """Land left at the root, or between the sides. From 0 mm to 100 mm. Default: 0 mm."""

    groove_angle: NotRequired[Angle]
    """Angle of the bevel; 45 deg when left out. From 5 deg to 70 deg."""


class DoubleVFill(TypedDict):
    """V from both sides, alike."""

    groove: Literal["double-v"]

    root_opening: NotRequired[Length]
    """Root opening. From 0 mm to 50 mm. Default: 0 mm."""

    land: NotRequired[Length]
    """Land left at the root, or between the sides. From 0 mm to 100 mm. Default: 0 mm."""

    groove_angle: NotRequired[Angle]
    """Included angle of the V; 60 deg when left out. From 5 deg to 120 deg."""


class DoubleBevelFill(TypedDict):
    """Bevel from both sides, alike."""

    groove: Literal["double-bevel"]

    root_opening: NotRequired[Length]
    """Root opening. From 0 mm to 50 mm. Default: 0 mm."""

    land: NotRequired[Length]
    """Land left at the root, or between the sides. From 0 mm to 100 mm. Default: 0 mm."""

    groove_angle: NotRequired[Angle]
    """Angle of the bevel; 45 deg when left out. From 5 deg to 70 deg."""


class FillByArea(TypedDict):
    """Weld from one side, described by the area of its metal with the cap."""

    groove: Literal["by-area"]

    area: Area
    """Deposited area. From 1 mm2 to 10000 mm2."""

    root_opening: NotRequired[Length]
    """Root opening. From 0 mm to 50 mm. Default: 0 mm."""

    face_width: NotRequired[Length]
    """Width of the weld at its face, for its angular change. From 0 mm to 300 mm."""

    root_width: NotRequired[Length]
    """Width of the weld at its root, for its angular change. From 0 mm to 300 mm."""


class Restraint(TypedDict):
    """Plate held on both sides of the weld."""

    span: Length
    """Span between what holds the plate. From 10 mm to 100000 mm."""

    coefficient: Force
    """Coefficient of angular change: moment for each radian, on each unit of weld length.

    From 0.001 kN to 1000000 kN.
    """


class TeeJoint(TypedDict):
    """Fillets of a plate that stands on another."""

    kind: Literal["tee"]

    thickness: Length
    """Thickness of the part that runs through, which the fillets shorten and turn. From 0.5 mm to 300 mm."""

    leg: Length
    """Leg of each fillet. From 0.5 mm to 100 mm."""

    width: NotRequired[Length]
    """Full width of that part, as a flange. From 5 mm to 10000 mm."""

    area: NotRequired[Area]
    """Deposited area of one fillet; half the square of its leg when left out. From 1 mm2 to 10000 mm2."""

    sides: NotRequired[Literal[1, 2]]
    """Number of sides welded. Default: 1."""

    welded_share: NotRequired[float]
    """Share of the length that is welded. Default: 1.0."""

    runs: NotRequired[
        Literal[
            1,
            2,
            3,
            4,
            5,
            6,
            7,
            8,
            9,
            10,
            11,
            12,
            13,
            14,
            15,
            16,
            17,
            18,
            19,
            20,
            21,
            22,
            23,
            24,
            25,
            26,
            27,
            28,
            29,
            30,
            31,
            32,
            33,
            34,
            35,
            36,
            37,
            38,
            39,
            40,
        ]
    ]
    """Runs of a weld from one side."""

    restraint: NotRequired[Restraint]
    """What holds the plate; the joint turns freely when it is left out."""


class LapJoint(TypedDict):
    """Two fillets of a lap."""

    kind: Literal["lap"]

    thickness: Length
    """Thickness of the thinner part. From 0.5 mm to 300 mm."""

    leg: Length
    """Leg of each fillet. From 0.5 mm to 100 mm."""

    area: NotRequired[Area]
    """Deposited area of one fillet; half the square of its leg when left out. From 1 mm2 to 10000 mm2."""

    welded_share: NotRequired[float]
    """Share of the length that is welded. Default: 1.0."""


class Member(TypedDict):
    """Section that the welds shorten, and bend where they lie off its axis."""

    area: Area
    """Area of its section. From 10 mm2 to 10000000 mm2."""

    second_moment: NotRequired[SecondMomentOfArea]
    """Second moment of its area. From 10 mm4 to 10000000000000 mm4."""

    eccentricity: NotRequired[Length]
    """Distance of the welds' centroid from its neutral axis. From 0 mm (exclusive) to 10000 mm."""


class WeldingTolerances(TypedDict):
    """General tolerances of the drawing, ISO 13920:1996."""

    linear_class: NotRequired[Literal["A", "B", "C", "D"]]
    """Class required for lengths and angles."""

    form_class: NotRequired[Literal["E", "F", "G", "H"]]
    """Class required for straightness and flatness."""

    across: NotRequired[Length]
    """Dimension across the weld, which it shortens. From 2 mm to 100000 mm."""

    along: NotRequired[Length]
    """Dimension along the weld, which it shortens and bends. From 2 mm to 100000 mm."""

    shorter_leg: NotRequired[Length]
    """Shorter leg of the angle that the weld changes. From 2 mm to 100000 mm."""


class Calibration(TypedDict):
    """Factors from the shop: the distortion measured on similar joints over that of the methods."""

    transverse: NotRequired[float]
    """Factor on shrinkage across the weld. Default: 1.0."""

    longitudinal: NotRequired[float]
    """Factor on shortening along the weld. Default: 1.0."""

    angular: NotRequired[float]
    """Factor on angles and on the lift of a flange's edges. Default: 1.0."""

    bowing: NotRequired[float]
    """Factor on bows. Default: 1.0."""


class BreakTestRequest(TypedDict):
    """Coupon to open from its root."""

    units: NotRequired[Literal["metric", "us"]]
    """Units of the answer. Default: metric."""

    mark: NotRequired[str]
    """The caller's own mark for this joint, given back with the answer."""

    working: NotRequired[bool]
    """Whether the answer shows its working. Default: false."""

    coupon: Literal["tee", "inside-corner", "outside-corner"]
    """What is opened: a fillet of a tee or inside a corner, or the seam outside a corner."""

    seam: ClosedCorner | HalfOpenCorner | OpenCorner | FilletSeam
    """Section of the weld; a fillet needs the thickness of its plates too."""

    weld: WeldStrength
    """Weld metal."""

    plates: PlatesOfMaterial | PlatesOfStrength
    """The plates, both of one steel."""

    length: Length
    """Length of weld that is opened, notches included. From 5 mm to 2000 mm."""

    lever: Length
    """Lever: from the root to the line of the force. From 10 mm to 10000 mm."""

    preparation: NotRequired[PreparedDepth]
    """Prepared edge of a closed corner."""

    penetration: NotRequired[Penetration]
    """Fusion beyond the root or the prepared depth."""

    face_height: NotRequired[Length]
    """Height of the face over its plane: the flush plane, or the line between the toes.

    From 0 mm to 50 mm. Default: 0 mm.
    """

    hollow: NotRequired[Length]
    """Depth of a hollow face under its plane, instead of face_height. From 0 mm to 50 mm."""

    finish: NotRequired[AsWelded | Flush | Flat | Radius]
    """What is done to the face. Default: {"to": "as-welded"}."""

    notch: NotRequired[Notch]
    """Notches that make the weld break."""

    hand_force: NotRequired[HandForce]
    """Force that hands can pull on the lever (common practice, no source). From 1 N to 5000 N. Default: 250 N."""

    rules: NotRequired[Literal["aws-d1-1-2010", "iso-9017"]]
    """Rules for the coupon, and for what its broken faces show."""

    outcome: NotRequired[OutcomeFoldedFlat | OutcomeBroken]
    """How the test ended, to be judged by AWS D1.1; for a tee only."""


class WeldStrength(TypedDict):
    """Strengths of the weld metal."""

    yield_strength: Stress
    """Yield strength, at which the root begins to yield. From 1 MPa to 2000 MPa."""

    tensile_strength: Stress
    """Tensile strength, at which the throat breaks. From 1 MPa to 2000 MPa."""


class PlatesOfMaterial(TypedDict):
    """Plates of a listed material."""

    material: MaterialId
    """Material by its designation; see /v1/materials."""


class PlatesOfStrength(TypedDict):
    """Plates of given strength."""

    yield_strength: Stress
    """Yield strength. From 1 MPa to 2000 MPa."""


class PreparedDepth(TypedDict):
    """Depth cut into an edge before welding."""

    depth: NotRequired[Length]
    """Depth of the preparation, square to the face. From 0 mm to 300 mm. Default: 0 mm."""

    tolerance: NotRequired[Length]
    """Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm."""


class Notch(TypedDict):
    """Notches that make the weld break."""

    side: NotRequired[Length]
    """Depth of the notch in each side, along the weld. From 0 mm to 1000 mm. Default: 0 mm."""

    face: NotRequired[Length]
    """Depth of the notch along the face. From 0 mm to 100 mm. Default: 0 mm."""


class OutcomeFoldedFlat(TypedDict):
    """The coupon folded flat on itself."""

    ended: Literal["folded-flat"]


class OutcomeBroken(TypedDict):
    """The coupon broke."""

    ended: Literal["broken"]

    fused_to_root: bool
    """Whether the broken faces show fusion to the root over the whole length."""

    largest_void: NotRequired[Length]
    """Greatest dimension of the largest void or inclusion. From 0 mm to 300 mm. Default: 0 mm."""

    sum_of_voids: NotRequired[Length]
    """Sum of the greatest dimensions of all voids and inclusions. From 0 mm to 300 mm. Default: 0 mm."""


class JointPlanRequest(TypedDict):
    """Joint to plan."""

    units: NotRequired[Literal["metric", "us"]]
    """Units of the answer. Default: metric."""

    mark: NotRequired[str]
    """The caller's own mark for this joint, given back with the answer."""

    working: NotRequired[bool]
    """Whether the answer shows its working. Default: false."""

    rule_set: RuleSetId
    """Rules to plan by; see /v1/rule-sets."""

    joint: PlanJoint
    """The joint."""

    parts: Sequence[MaterialPart | StrengthPart | PlainPart]
    """Parts 1 and 2."""

    length: Length
    """Length of the seam. From 0 mm (exclusive) to 100000 mm."""

    basis: Literal["load", "full-strength", "throat"]
    """What the weld is sized for: a throat for an outside corner, any for a butt, a load or full strength for
    other joints.
    """

    process: ProcessCode
    """Process: AWS letters or ISO 4063 number."""

    position: PositionCode
    """Position: AWS or ISO 6947 code."""

    load: NotRequired[PlanForce]
    """Load, with basis "load"."""

    required_throat: NotRequired[Length]
    """Throat the finished seam must keep, with basis "throat". From 0 mm (exclusive) to 300 mm."""

    access: NotRequired[Literal["one-side", "both-sides"]]
    """Sides the seam can be welded from. A hollow section needs it said; otherwise both sides by default."""

    held_from_turning: NotRequired[bool]
    """Whether the joint is held from turning about the weld, so that a load does not open a one-sided weld from
    its root.

    Default: false.
    """

    finish: NotRequired[AsWelded | Flush | Flat | Radius]
    """What is done to the face. Default: {"to": "as-welded"}."""

    filler: NotRequired[FillerMetalId | Filler]
    """Filler metal: an id (see /v1/filler-metals) or its strength."""

    parameters: NotRequired[Parameters]
    """Parameters that replace the rule set's own; Eurocodes only."""

    intermittent: NotRequired[PlanIntermittent]
    """Intermittent weld; the plan has no such way without it."""

    penetration: NotRequired[Penetration]
    """Fusion beyond the root or the prepared depth."""

    root_pass: NotRequired[Literal["mechanized", "automatic", "robotic"]]
    """How the root pass is made, where it is not made by hand; AISC 360-22 counts proven penetration only then."""

    tolerances: NotRequired[PlanTolerances]
    """Tolerances of the shop, for the throat budget."""

    spread: NotRequired[Spread]
    """How lengths lie within their tolerances, for the chance of a short throat."""

    quality: NotRequired[Literal["iso-5817-b", "iso-5817-c", "iso-5817-d", "aws-d1-1-2020"]]
    """Level or code that the limits come from; AWS D1.1:2020 with AISC rules and ISO 5817 level C with Eurocodes
    by default.
    """

    arc: NotRequired[ArcEnergy | HeatInput | ArcSettings]
    """The arc of one pass: its settings, its energy, or its heat input.

    Without it the heat follows from the metal laid.
    """

    preheat: NotRequired[Temperature]
    """Temperature of the plate when a pass begins; 20 degC by default. From -50 degC to 400 degC."""

    cooling_window: NotRequired[CoolingWindow]
    """Cooling times t8/5 to judge against."""

    composition: NotRequired[Composition]
    """Composition of the parent steel."""

    hydrogen: NotRequired[HydrogenContent]
    """Diffusible hydrogen of the weld metal. From 0 ml/100g (exclusive) to 100 ml/100g."""

    preheat_category: NotRequired[Literal["A", "B", "C", "D"]]
    """Category of AWS D1.1 for preheat, as /v1/heat has it."""

    deposition: NotRequired[DepositionBySolidWire | DepositionByWireMass | DepositionByRate]
    """Deposition rate, or the wire and its feed; usual rates of the process by default."""

    efficiency: NotRequired[float]
    """Share of the consumable that is deposited."""

    operator_factor: NotRequired[float]
    """Share of the clock during which the arc burns."""

    gas_flow: NotRequired[GasFlow]
    """Shielding gas while the arc burns. From 0.6 L/min to 120 L/min."""

    bevelling_speed: NotRequired[Speed]
    """Speed at which one face of an edge is cut, averaged over the time on the clock.

    From 0 mm/min (exclusive) to 60000 mm/min.
    """

    prices: NotRequired[Prices]
    """The caller's own prices; the service has none."""

    weights: NotRequired[Weights]
    """Weights of the costs in the ranking."""

    detail: NotRequired[Literal["recommended", "all"]]
    """Whether the full answers of the single resources come for the recommended way only, or for all ways.

    Default: recommended.
    """


class PlanJoint(TypedDict):
    """How the parts meet."""

    kind: Literal["tee", "lap", "inside-corner", "outside-corner", "butt"]
    """Tee: part 1 runs through.

    Lap: the face of part 1 is welded. Outside corner: the end of part 1 meets part 2; the plan tries several
    ways to set the edges.
    """

    angle: NotRequired[Angle]
    """Angle between the plates. From 30 deg to 150 deg. Default: 90 deg."""

    root_gap: NotRequired[Length]
    """Gap between the parts at the root. From 0 mm to 50 mm. Default: 0 mm."""


class PlanForce(TypedDict):
    """Force on the whole joint."""

    force: Force
    """Force on all welds of the joint together. From 0 kN (exclusive) to 100000 kN."""

    angle: Angle
    """Angle of the force to the weld's axis: 0 deg along it, 90 deg across it. From 0 deg to 90 deg."""


class PlanIntermittent(TypedDict):
    """What an intermittent weld carries, what it joins and where it is."""

    loading: Literal["tension", "compression", "shear"]
    """What the welded parts carry."""

    member: NotRequired[Literal["built-up", "stiffener"]]
    """Plates of a built-up member, or a stiffener on its plate. Default: built-up."""

    exposure: NotRequired[Literal["protected", "weathering-steel", "corrosive"]]
    """Protected: painted, or where nothing corrodes.

    Weathering: unpainted weathering steel in the open air. Default: protected.
    """

    widths: NotRequired[list[Length] | tuple[Length, Length]]
    """Widths of parts 1 and 2, where the rules need them."""


class PlanTolerances(TypedDict):
    """Tolerances of the shop, plus or minus; that of grinding belongs to the finish, that of penetration to it."""

    legs: NotRequired[Length]
    """Tolerance of each leg of a fillet. From 0 mm to 50 mm. Default: 0 mm."""

    depth: NotRequired[Length]
    """Tolerance of a prepared depth. From 0 mm to 50 mm. Default: 0 mm."""

    thickness: NotRequired[Length]
    """Tolerance of the thickness of the parts. From 0 mm to 50 mm. Default: 0 mm."""

    face_height: NotRequired[Length]
    """Tolerance of the height of a face that is left. From 0 mm to 50 mm. Default: 0 mm."""


class Spread(TypedDict):
    """How lengths lie within their tolerances."""

    distribution: NotRequired[Literal["even", "normal"]]
    """Evenly between the ends of the tolerance, where nothing more is known; or normally about the middle.

    Default: even.
    """

    deviations: NotRequired[float]
    """Standard deviations that a tolerance is, of a normal distribution; two by default."""


class Weights(TypedDict):
    """Weight of each cost in the ranking; 0 leaves it out."""

    filler: NotRequired[float]
    """Weld metal. Default: 1.0."""

    time: NotRequired[float]
    """Time on the clock. Default: 1.0."""

    heat: NotRequired[float]
    """Arc energy put into the joint. Default: 1.0."""

    distortion: NotRequired[float]
    """Angular change. Default: 1.0."""


RuleSetId: TypeAlias = Literal[
    "aisc-360-22-lrfd",
    "aisc-360-22-asd",
    "en-1993-1-8-2005-directional",
    "en-1993-1-8-2005-simplified",
    "en-1993-1-4-2006-directional",
    "en-1993-1-4-2006-simplified",
    "en-1993-1-12-2007-directional",
    "en-1993-1-12-2007-simplified",
    "en-1999-1-1-2007",
    "thin-part",
]

Angle: TypeAlias = QuantityInput
"""A angle with its unit."""
Length: TypeAlias = QuantityInput
"""A length with its unit."""
MaterialId: TypeAlias = Literal[
    "S235",
    "S275",
    "S355",
    "S450",
    "S275N",
    "S355N",
    "S420N",
    "S460N",
    "S275M",
    "S355M",
    "S420M",
    "S460M",
    "S235W",
    "S355W",
    "S460Q",
    "S500Q",
    "S550Q",
    "S620Q",
    "S690Q",
    "S500MC",
    "S550MC",
    "S600MC",
    "S650MC",
    "S700MC",
    "S235H",
    "S275H",
    "S355H",
    "S275NH",
    "S355NH",
    "S420NH",
    "S460NH",
    "S235H-10219",
    "S275H-10219",
    "S355H-10219",
    "S275NH-10219",
    "S355NH-10219",
    "S460NH-10219",
    "S275MH",
    "S355MH",
    "S420MH",
    "S460MH",
    "A36",
    "A572-50",
    "A572-60",
    "A572-65",
    "A992",
    "A500-B",
    "A500-C",
    "A53-B",
    "A501-B",
    "A588",
    "A514",
    "A913-65",
    "A913-70",
    "A847",
    "1.4301",
    "1.4307",
    "1.4401",
    "1.4404",
    "1.4541",
    "1.4571",
    "1.4462",
    "304",
    "304L",
    "316",
    "316L",
    "6082-T6",
    "5083-O",
    "5083-H22",
    "5083-H24",
    "6061-T6",
    "5052-H32",
    "5083-H116",
]

Stress: TypeAlias = QuantityInput
"""A stress with its unit."""
Force: TypeAlias = QuantityInput
"""A force with its unit."""
ForcePerLength: TypeAlias = QuantityInput
"""A force per length with its unit."""
FillerMetalId: TypeAlias = Literal[
    "E60",
    "E70",
    "E80",
    "E90",
    "E100",
    "E110",
    "E308L",
    "E309L",
    "E316L",
    "ER4043",
    "ER5356",
    "ER5183",
    "E6010",
    "E6011",
    "E6013",
    "E7018",
    "ER70S-3",
    "ER70S-6",
    "E71T-1",
    "E70T-4",
    "E71T-8",
    "F7A2-EM12K",
    "E 35",
    "E 38",
    "E 42",
    "E 46",
    "E 50",
    "G 35",
    "G 38",
    "G 42",
    "G 46",
    "G 50",
    "T 35",
    "T 38",
    "T 42",
    "T 46",
    "T 50",
    "S 35",
    "S 38",
    "S 42",
    "S 46",
    "S 50",
    "W 35",
    "W 38",
    "W 42",
    "W 46",
    "W 50",
    "E 55",
    "E 62",
    "E 69",
    "G 55",
    "G 62",
    "G 69",
]

ProcessCode: TypeAlias = Literal[
    "SMAW",
    "GMAW",
    "FCAW-G",
    "FCAW-S",
    "FCAW",
    "SAW",
    "GTAW",
    "PAW",
    "OFW",
    "EBW",
    "LBW",
    "111",
    "135",
    "131",
    "133",
    "138",
    "136",
    "132",
    "114",
    "121",
    "125",
    "141",
    "142",
    "15",
    "311",
    "31",
    "312",
    "313",
    "OAW",
    "OHW",
    "51",
    "511",
    "512",
    "52",
    "521",
    "522",
]

PositionCode: TypeAlias = Literal[
    "1F", "2F", "3F", "4F", "1G", "2G", "3G", "4G", "PA", "PB", "PC", "PD", "PE", "PF", "PG"
]

Area: TypeAlias = QuantityInput
"""A area with its unit."""
Moment: TypeAlias = QuantityInput
"""A moment with its unit."""
AsWeldedRequest: TypeAlias = FilletAsWelded | ButtAsWelded

EnergyPerLength: TypeAlias = QuantityInput
"""A energy per length with its unit."""
Voltage: TypeAlias = QuantityInput
"""A voltage with its unit."""
Current: TypeAlias = QuantityInput
"""A current with its unit."""
Speed: TypeAlias = QuantityInput
"""A speed with its unit."""
DepositionRate: TypeAlias = QuantityInput
"""A deposition rate with its unit."""
Temperature: TypeAlias = QuantityInput
"""A temperature with its unit."""
TimeSpan: TypeAlias = QuantityInput
"""A time span with its unit."""
HydrogenContent: TypeAlias = QuantityInput
"""A hydrogen content with its unit."""
Density: TypeAlias = QuantityInput
"""A density with its unit."""
MassPerLength: TypeAlias = QuantityInput
"""A mass per length with its unit."""
GasFlow: TypeAlias = QuantityInput
"""A gas flow with its unit."""
SecondMomentOfArea: TypeAlias = QuantityInput
"""A second moment of area with its unit."""
HandForce: TypeAlias = QuantityInput
"""A hand force with its unit."""
