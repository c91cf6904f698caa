"""What the service answers, as frozen classes.

Generated from openapi/openapi.json by openapi/generate_client.py: do not edit.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal, TypeAlias

from truethroat.answer import Answer, Result
from truethroat.quantity import Quantity

__all__ = [
    "Alternative",
    "AngleDistortionBand",
    "AngleDistortionEstimate",
    "AngleDistortionSpan",
    "AngleLimits",
    "AreaFigure",
    "AreaPublishedRate",
    "AsWeldedAnswer",
    "Band",
    "BeadShape",
    "BevelDepthAnswer",
    "BreakTestAnswer",
    "Calculation",
    "CategoryPreheat",
    "Caution",
    "CautionCode",
    "CentroidLoad",
    "ConcentricGroup",
    "CountedLength",
    "CouponAcceptance",
    "CouponCheck",
    "CrackFactor",
    "CrackRiskAnswer",
    "DepositedBead",
    "DepositedMetal",
    "DepositionRateFigure",
    "DepositionRatePublishedRate",
    "DistortionAlternative",
    "DistortionAnswer",
    "EnergyBand",
    "EnergyPerLengthBand",
    "EstimateBasis",
    "EstimateGroup",
    "EstimateTotals",
    "Figure",
    "FillerMetalEntry",
    "FillerMetalsAnswer",
    "FillerQuantityAnswer",
    "FilletHeat",
    "FilletSize",
    "FilletSizeAnswer",
    "FilletStrength",
    "FlangeWidth",
    "FoldedPlate",
    "ForceAlongAxes",
    "ForcePerLengthAlongAxes",
    "FormulaPreheat",
    "GasFlowFigure",
    "GasFlowPublishedRate",
    "GrindAllowanceAnswer",
    "GroovePreparation",
    "GrooveSizeAnswer",
    "GrooveStrength",
    "GrooveThroat",
    "GroupPlace",
    "GroupPoint",
    "GroupProperties",
    "GroupStrength",
    "HandForceStages",
    "HardnessBesideWeld",
    "HeatAnswer",
    "HeatLimits",
    "IntermittentFillet",
    "JointPlanAnswer",
    "Judged",
    "LeastFillet",
    "LeftOut",
    "LengthBand",
    "LengthDistortionBand",
    "LengthDistortionEstimate",
    "LengthDistortionSpan",
    "LengthLimits",
    "LimitOfScope",
    "MassBand",
    "MaterialEntry",
    "MaterialsAnswer",
    "MetalBand",
    "MethodAPreheat",
    "MethodLeftOut",
    "ModelHardness",
    "MomentAlongAxes",
    "MomentStages",
    "OpenedAccount",
    "OpenedThroat",
    "Operand",
    "OversizeHeat",
    "Overweld",
    "PackedFillet",
    "ParentEquivalents",
    "PassCooling",
    "PassCount",
    "PassCounts",
    "PassEnergy",
    "Physical",
    "PlanCosts",
    "PlanHold",
    "PlanParts",
    "PlannedWay",
    "PositionEntry",
    "PreheatAnswer",
    "PreparationCallout",
    "PreparationEntry",
    "PreparationsAnswer",
    "PrintedPreheat",
    "ProcessEntry",
    "ProcessesAnswer",
    "Provenance",
    "PublishedRate",
    "PublishedRates",
    "QualityLimit",
    "QualitySetEntry",
    "ReadingOfClause",
    "RefusedPreparation",
    "RefusedWay",
    "Remedy",
    "RemedyCode",
    "RuleSetEntry",
    "RuleSetName",
    "RuleSetsAnswer",
    "SectionPart",
    "ServiceAnswer",
    "ShrinkingWeld",
    "SpacingLimit",
    "SpanRatio",
    "SpecifiedFilletSize",
    "SpeedBand",
    "StandardCoupon",
    "StrengthBand",
    "SusceptibilityIndex",
    "TeeButtStrength",
    "TensionMemberStrength",
    "ThroatAsWelded",
    "ThroatBudget",
    "ThroatInBalance",
    "TimeSpanBand",
    "ToleranceCheck",
    "ToleranceClass",
    "Verdict",
    "VolumeBand",
    "WeldAction",
    "WeldBalance",
    "WeldCallout",
    "WeldCost",
    "WeldEstimate",
    "WeldGroupAnswer",
    "WeldMetalDensity",
    "WeldedHoleLimits",
    "WeldedHoles",
    "WorkingStep",
    "WorkingTimeBand",
]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Calculation(Answer):
    """What every calculation answers."""

    verdict: Verdict

    reasons: tuple[str, ...]

    cautions: tuple[Caution, ...]

    provenance: Provenance

    mark: str | None = None
    """The request's own mark."""

    working: tuple[WorkingStep, ...] | None = None
    """Steps in the order computed, in engine units."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FilletSizeAnswer(Calculation):
    """Fillet to specify."""

    required: FilletSize
    """What the weld metal needs."""

    minimum: FilletSize

    maximum: FilletSize | None

    specify: SpecifiedFilletSize | None

    governs: Literal[
        "load",
        "minimum-size",
        "minimum-length",
        "root-gap",
        "packing",
        "full-strength",
        "thin-part",
        "base-metal",
        "spacing",
        "tension-member",
        "flange",
    ]

    utilisation: float | None
    """Greatest share of the strength of weld or parts that the load uses, at the size specified less its
    tolerance.
    """

    strength: FilletStrength | None

    length: CountedLength | None

    z_loss: Quantity | None
    """Throat lost at the root between plates below 60 deg, included in the leg."""

    packing: PackedFillet | None

    intermittent: IntermittentFillet | None

    concentric: ConcentricGroup | None

    balance: WeldBalance | None

    tension_member: TensionMemberStrength | None

    unstiffened_flange: FlangeWidth | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Caution(Result):
    """What the figures rest on or leave out."""

    code: CautionCode

    text: str

    source: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FilletSize(Result):
    """Size of a fillet."""

    leg: Quantity

    throat: Quantity

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class SpecifiedFilletSize(Result):
    """Size to specify."""

    leg: Quantity

    throat: Quantity

    source: str

    passes: int | None
    """Least number of passes."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FilletStrength(Result):
    """Design or allowable force per length of one weld, in the load's direction.

    It is that of the size tried, less its tolerance.
    """

    weld: Quantity

    base_metal: tuple[Quantity, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class CountedLength(Result):
    """Length of one weld."""

    given: Quantity

    effective: Quantity

    factor: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PackedFillet(Result):
    """Packing, and how it is welded."""

    thickness: Quantity

    added: Quantity
    """What it adds to the leg, which reaches over it."""

    welds: Literal["over-packing", "to-each-part"]
    """One leg over the packing, or a weld of this size from each part to it."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class IntermittentFillet(Result):
    """Intermittent fillet, and the limits at which its size is still enough."""

    segment: Quantity

    gap: Quantity
    """Clear gap on one side; text rounded down."""

    pitch: Quantity
    """From centre to centre; text rounded down."""

    count: int | None
    """Segments on one side, one at each end; null where the length is not known."""

    even_gap: Quantity | None
    """Gap that spaces the segments evenly."""

    end_weld: Quantity
    """Least length of the weld at each end."""

    strength: Quantity | None
    """Of one side, per length of the line."""

    largest_gap: Quantity | None
    """Largest gap at which the size specified is enough."""

    shortest_segment: Quantity | None
    """Shortest segment that is enough at this gap."""

    limits: tuple[SpacingLimit, ...]

    callout: WeldCallout | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class SpacingLimit(Result):
    """One limit of an intermittent fillet."""

    name: Literal["segment", "gap", "nearer-gap", "pitch"]

    value: Quantity

    bound: Literal["least", "most"]

    allowed: Quantity

    verdict: Literal["within", "short", "over"]

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldCallout(Result):
    """Weld as drawing text."""

    iso_2553: str

    aws_a2_4: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ConcentricGroup(Result):
    """Group along and across its force: plain sum, sum with the increase across (null where it is left out)."""

    equivalent_length: Quantity
    """Length along the force that is as strong."""

    plain_sum: Quantity

    weighted_sum: Quantity | None

    counts: Literal["plain-sum", "weighted-sum"]

    strength: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldBalance(Result):
    """Two side welds balanced about a member's centroid, the first first."""

    forces: tuple[Quantity, ...]

    lengths: tuple[Quantity, ...]
    """Shares of the length given."""

    least_lengths: tuple[Quantity, ...] | None
    """What the size specified needs."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class TensionMemberStrength(Result):
    """Tension member held by longitudinal welds alone."""

    shear_lag: float
    """Factor U."""

    effective_area: Quantity

    by_yield: Quantity

    by_rupture: Quantity

    utilisation: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FlangeWidth(Result):
    """Plate on an unstiffened flange."""

    share: float
    """Factor k."""

    effective_width: Quantity

    least_width: Quantity
    """Below it the flange must be stiffened."""

    resistance: Quantity
    """Of the plate over the width held."""

    stiffen: bool


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Provenance(Result):
    """What the answer comes from."""

    rule_set: str | None

    clauses: tuple[str, ...]

    editions: tuple[str, ...]

    parameters: Mapping[str, float]

    engine_version: str

    api_version: str

    fingerprint: str
    """SHA-256 of the request in engine units with its defaults filled in."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WorkingStep(Result):
    """One step: a formula, what went in and what came out. A step's symbol is an argument of a later one."""

    symbol: str

    meaning: str

    expression: str

    with_: Mapping[str, Operand]

    value: float | bool

    unit: str

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Operand(Result):
    """Argument of a step."""

    value: float | bool

    unit: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GrooveSizeAnswer(Calculation):
    """Groove, flare, plug or slot weld to specify."""

    required: GrooveThroat | None
    """What the weld metal needs."""

    minimum: GrooveThroat | None

    specify: GrooveThroat | None

    governs: Literal["load", "full-strength", "full-penetration", "minimum-throat", "base-metal", "preparation"]

    utilisation: float | None
    """Greatest share of the strength of weld or parts that the load uses; null where no preparation is enough."""

    strength: GrooveStrength | None

    preparation: GroovePreparation | None

    preparations: tuple[GroovePreparation, ...]
    """Those that fit the joint: enough ones first, least metal first."""

    refused: tuple[RefusedPreparation, ...]
    """Details of the standard that do not fit the joint, and why."""

    holes: WeldedHoles | None

    tee: TeeButtStrength | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GrooveThroat(Result):
    """Size of a groove."""

    throat: Quantity
    """Of all sides together; a minimum is of each side."""

    depth: Quantity | None
    """Depth cut from each side; null where none is cut to depth."""

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GrooveStrength(Result):
    """Design or allowable force per length of the joint, in the load's direction."""

    weld: Quantity | None
    """Null where the strength of the parts governs."""

    base_metal: tuple[Quantity, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GroovePreparation(Result):
    """Preparation as it would be made, one value chosen where its detail allows a range."""

    id: str | None
    """Id of /v1/preparations; null for a groove by its form alone."""

    ref: str
    """The standard's own reference."""

    standard: str | None

    form: str

    root: str
    """How the root is made."""

    angle: Quantity | None
    """Included; of a bevel or J that of its one face."""

    gap: Quantity

    land: Quantity | None

    depth: Quantity | None
    """Cut from each side."""

    setback: Quantity | None
    """On each edge that is cut."""

    deduction: Quantity
    """Taken off the depth of each side."""

    throat: Quantity
    """All sides together."""

    area: Quantity
    """Metal deposited, without a cap."""

    filler: DepositedMetal

    enough: bool

    why: str | None
    """Why it is not enough; null where it is enough."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DepositedMetal(Result):
    """Deposited metal."""

    mass_per_length: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class RefusedPreparation(Result):
    """Detail that does not fit."""

    id: str | None

    ref: str

    why: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldedHoles(Result):
    """Plugs, slots, or fillets all round holes or slots."""

    width: Quantity

    length: Quantity

    filling: Quantity | None
    """Null for a fillet."""

    leg: Quantity | None
    """Of a fillet."""

    throat: Quantity | None
    """Of a fillet."""

    centre_line: Quantity | None
    """Effective length of a fillet."""

    area: Quantity
    """Effective area of one."""

    strength: Quantity
    """Of one, in shear."""

    needed: int

    count: int

    limits: WeldedHoleLimits


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldedHoleLimits(Result):
    """Null where none is ruled."""

    least_width: Quantity | None

    largest_width: Quantity | None

    longest: Quantity | None

    least_filling: Quantity | None

    least_leg: Quantity | None

    largest_leg: Quantity | None

    least_pitch: Quantity | None

    least_pitch_along: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class TeeButtStrength(Result):
    """Whether a T-butt counts as full strength."""

    throats_together: Quantity

    thickness: Quantity

    unwelded: Quantity

    largest_unwelded: Quantity

    full_strength: bool


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GrindAllowanceAnswer(Calculation):
    """How much may be ground off a seam, and how much must stay, counting only what somebody vouches for."""

    budget: ThroatBudget

    allowance: Quantity
    """Most that may be ground off along the throat line, from the face as welded."""

    leave: Quantity | None
    """Face height to leave above the plane of the face; null where no face height keeps the throat."""

    largest_radius: Quantity | None
    """Largest blend radius of a corner that keeps the throat; null where none does."""

    allowance_below_plane: Quantity
    """How much of the allowance lies below the plane of the face, where the grinder thins the parts too."""

    least_face_width: Quantity | None
    """Width of the face that the throat needs, where a square edge's face counts without face_width; else null."""

    judged_on: Literal["nominal", "worst-case"]

    remedies: tuple[Remedy, ...]

    physical: Physical


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ThroatBudget(Result):
    """Contributions to the throat, adding up to as_welded, and what a finish leaves of it."""

    theoretical: Quantity

    prepared_depth: Quantity

    deduction: Quantity

    penetration: Quantity

    face: Quantity

    cap: Quantity

    as_welded: Quantity

    removed: Quantity

    remaining: Quantity

    remaining_worst_case: Quantity

    remaining_root_sum_square: Quantity

    required: Quantity

    margin: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Remedy(Result):
    """One change that keeps the throat, with the throat that remains and what it counts."""

    do: RemedyCode

    depth: Quantity | None = None

    face_height: Quantity | None = None

    radius: Quantity | None = None

    throat: Quantity | None = None

    remaining: Quantity

    counts: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Physical(Result):
    """Budget that counts everything there is, assumed penetration too, with its own verdict."""

    verdict: Verdict

    theoretical: Quantity

    prepared_depth: Quantity

    deduction: Quantity

    penetration: Quantity

    face: Quantity

    cap: Quantity

    as_welded: Quantity

    removed: Quantity

    remaining: Quantity

    remaining_worst_case: Quantity

    remaining_root_sum_square: Quantity

    required: Quantity

    margin: Quantity

    allowance: Quantity
    """Most that may be ground off along the throat line, from the face as welded."""

    leave: Quantity | None
    """Face height to leave above the plane of the face; null where no face height keeps the throat."""

    largest_radius: Quantity | None
    """Largest blend radius of a corner that keeps the throat; null where none does."""

    allowance_below_plane: Quantity
    """How much of the allowance lies below the plane of the face, where the grinder thins the parts too."""

    least_face_width: Quantity | None
    """Width of the face that the throat needs, where a square edge's face counts without face_width; else null."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class BevelDepthAnswer(Calculation):
    """Preparation to cut; its depth and what follows from it are null where no partial preparation suffices."""

    depth: Quantity | None

    setback: Quantity | None

    land: Quantity | None

    deduction: Quantity

    budget: ThroatBudget | None

    area: Quantity | None

    filler: DepositedMetal | None

    callout: PreparationCallout | None

    alternatives: tuple[Alternative, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreparationCallout(Result):
    """Preparation as text for a drawing."""

    iso_2553: str

    aws_a2_4: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Alternative(Result):
    """Another way to reach the same throat."""

    do: RemedyCode

    size: Quantity

    area: Quantity | None

    filler: DepositedMetal | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldGroupAnswer(Calculation):
    """Size and strength of a weld group."""

    properties: GroupProperties

    load_per_group: CentroidLoad

    method: Literal["elastic", "instantaneous-centre"]

    critical: GroupPoint | None

    points: tuple[GroupPoint, ...]
    """Ends of every line; elastic method only."""

    centre: GroupPlace | None
    """Instantaneous centre; null for the elastic method or a translation."""

    required: FilletSize

    minimum: FilletSize

    specify: FilletSize | None

    utilisation: float | None
    """Share of its strength that the size sent uses, or else the next step up; null where it may carry no load."""

    strength: GroupStrength

    equivalent_force: Quantity
    """Force per length at the critical point, or along a weld with the same utilisation."""

    efficiency: float
    """Strength of the group as a share of that of the same length loaded along itself."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GroupProperties(Result):
    """One group as lines of unit throat: its length, centroid, and second moments about it."""

    length: Quantity

    centroid: GroupPlace
    """From the origin of the group."""

    i_x: Quantity

    i_y: Quantity

    i_xy: Quantity

    j: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GroupPlace(Result):
    """Place in the plane of a group, from its origin."""

    x: Quantity

    y: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class CentroidLoad(Result):
    """Load of one group, through its centroid."""

    force: ForceAlongAxes
    """Along each axis."""

    moment: MomentAlongAxes
    """About each axis."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ForceAlongAxes(Result):
    """Component along, or about, each axis."""

    x: Quantity

    y: Quantity

    z: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class MomentAlongAxes(Result):
    """Component along, or about, each axis."""

    x: Quantity

    y: Quantity

    z: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GroupPoint(Result):
    """Point of a group and the force per length on its weld."""

    x: Quantity

    y: Quantity

    force: ForcePerLengthAlongAxes
    """Along each axis."""

    resultant: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ForcePerLengthAlongAxes(Result):
    """Component along, or about, each axis."""

    x: Quantity

    y: Quantity

    z: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GroupStrength(Result):
    """Strength of all groups at the size given, or else at the next step up, as its shortest run counts."""

    factor: float
    """Multiple of the load that is carried."""

    force: Quantity
    """Force carried along the load."""

    moment: Quantity
    """Moment about z carried with it."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class AsWeldedAnswer(Calculation):
    """What a weld is worth as welded."""

    throat: ThroatAsWelded

    size: Quantity | None
    """Leg of the largest equal-leg triangle in the section; null for a butt."""

    strength_left: float
    """Worst-case throat over the required throat."""

    overweld: Overweld | None
    """Null for a butt."""

    limits: tuple[QualityLimit, ...]

    quality_kept: bool
    """Whether every limit checked is kept."""

    actions: tuple[WeldAction, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ThroatAsWelded(Result):
    """Throat of a weld as welded. ``theoretical`` is that of the legs or the thickness.

    From it what is missing is taken off; ``physical`` counts all penetration, ``creditable`` measured and
    proven penetration, ``effective`` proven penetration only. Strength and verdict depend on ``worst_case``,
    which is ``effective`` at the worst end of every tolerance.
    """

    theoretical: Quantity

    physical: Quantity

    creditable: Quantity

    effective: Quantity

    worst_case: Quantity

    required: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Overweld(Result):
    """Metal against that of the flat equal-leg fillet required; negative where it is missing."""

    metal_ratio: float

    extra_area: Quantity

    extra_mass: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class QualityLimit(Result):
    """One limit of the level or code, and how the weld stands against it."""

    name: str

    value: Quantity | None
    """Worst value within the gauge's tolerance; null where the imperfection has no size."""

    allowed: Quantity | None
    """Largest or least value allowed; null where nothing is permitted, or where there is no limit."""

    extent: Quantity | None
    """Length of the imperfection; null where it was not sent, or where no length counts."""

    extent_allowed: Quantity | None
    """Length allowed; null where no length counts."""

    verdict: Literal["within", "over", "under", "not-permitted"]

    note: str

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldAction(Result):
    """What to do with the weld."""

    do: RemedyCode

    leg: Quantity | None = None
    """Leg to weld up to, rounded up to the step."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatAnswer(Calculation):
    """Heat of a pass and what follows from it; each field that is null is listed in left_out with what it needs."""

    energy: PassEnergy | None

    cooling: PassCooling | None

    limits: HeatLimits | None

    carbon_equivalents: ParentEquivalents

    preheat: PreheatAnswer

    hardness: HardnessBesideWeld | None

    fillet: FilletHeat | None

    judged: tuple[Judged, ...]
    """Everything that was judged.

    The verdict is the first of these that fails; else open if one is open; else within. It is estimated where
    nothing was judged.
    """

    left_out: tuple[LeftOut, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PassEnergy(Result):
    """Energy of a pass by both conventions."""

    arc_energy: Quantity | None
    """Arc energy, which AWS D1.1 and ASME IX call heat input."""

    heat_input: Quantity | None
    """Heat input of EN 1011-1: the arc energy times the efficiency."""

    efficiency: float | None
    """Thermal efficiency k of EN 1011-1."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PassCooling(Result):
    """Cooling time t8/5."""

    time: TimeSpanBand

    flow: Literal["two-dimensional", "three-dimensional", "between"] | None

    transition_thickness: LengthBand | None
    """Thickness over which heat flows in three dimensions."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class TimeSpanBand(Result):
    """From least to most; both are the same where nothing was assumed."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class LengthBand(Result):
    """From least to most; both are the same where nothing was assumed."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatLimits(Result):
    """Limits that keep the cooling time in the window."""

    heat_input: EnergyPerLengthBand

    arc_energy: EnergyPerLengthBand | None

    travel_speed: SpeedBand | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class EnergyPerLengthBand(Result):
    """From least to most; both are the same where nothing was assumed."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class SpeedBand(Result):
    """From least to most; both are the same where nothing was assumed."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ParentEquivalents(Result):
    """Carbon equivalents of the parent steel."""

    ce: float | None

    cet: float | None

    pcm: float | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreheatAnswer(Result):
    """Preheat by each rule that the request gives enough for."""

    method_a: MethodAPreheat | None

    method_b: FormulaPreheat | None
    """EN 1011-2 method B."""

    sew_088: FormulaPreheat | None
    """SEW 088, method B with two other constants."""

    aws_d1_1: CategoryPreheat | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class MethodAPreheat(Result):
    """EN 1011-2 method A, without its charts."""

    hydrogen_scale: Literal["A", "B", "C", "D", "E"]

    without_preheat_to: Quantity | None

    combined_thickness: Quantity | None
    """Combined thickness that was compared: the one given, or that of the parts."""

    free_of_preheat: bool | None
    """Whether no preheat is needed. A frozen plate is never free of it: it is warmed first."""

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FormulaPreheat(Result):
    """Preheat by the formula of one rule."""

    temperature: Quantity

    met: bool
    """Whether the plate is that warm when the pass begins."""

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class CategoryPreheat(Result):
    """Preheat of AWS D1.1 by category and thickest part."""

    category: str

    temperature: Quantity

    printed: PrintedPreheat

    thickest_part: Quantity

    met: bool
    """Whether the plate is that warm when the pass begins."""

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PrintedPreheat(Result):
    """Preheat as the table prints it in both units; the two are not exact conversions of each other."""

    fahrenheit: Quantity

    celsius: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HardnessBesideWeld(Result):
    """Hardness HV10 beside the weld."""

    dueren: ModelHardness

    yurioka: ModelHardness

    band: Band
    """Band of both models, 50 HV wider on either side."""

    limit: float | None
    """Limit of ISO 15614-1 for the steel group."""

    standing: Literal["within", "over", "open"] | None

    source: str | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ModelHardness(Result):
    """Hardness HV10 by one model, at the slowest and the fastest cooling, and of pure structures."""

    least: float

    most: float

    martensite: float

    bainite: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Band(Result):
    """From least to most; both are the same where nothing was assumed."""

    least: float

    most: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FilletHeat(Result):
    """Leg of a single-pass fillet against arc energy."""

    usual_leg: Quantity | None
    """Leg that this arc energy usually lays."""

    bead: DepositedBead | None

    usual_arc_energy: Quantity | None
    """Arc energy that the leg usually takes."""

    oversize: OversizeHeat | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DepositedBead(Result):
    """Bead that the deposition rate lays."""

    area: Quantity

    leg: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class OversizeHeat(Result):
    """Heat of the leg laid against that of the leg required."""

    required_arc_energy: Quantity

    heat_ratio: float
    """Arc energy of the leg laid over that of the leg required."""

    cooling_time_required: TimeSpanBand | None

    cooling_time_laid: TimeSpanBand | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Judged(Result):
    """One thing that was judged."""

    what: Literal["window", "preheat", "hardness"]
    """The cooling time against the window, the plate against its preheat, or the hardness."""

    standing: Literal["within", "too-fast", "too-slow", "short", "over", "open"]
    """How it stands. Open means that the rule leaves it open, or that only part of a band keeps the limit."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class LeftOut(Result):
    """A field that is null, by its path, and what it needs."""

    field: str

    reason: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class CrackRiskAnswer(Calculation):
    """Risk of cracks in a pass; the verdict is the worst grade, low only with shape and composition graded."""

    shape: BeadShape | None

    index: SusceptibilityIndex | None

    least_sizes: tuple[LeastFillet, ...]

    factors: tuple[CrackFactor, ...]

    left_out: tuple[LeftOut, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class BeadShape(Result):
    """Shape of the bead."""

    width: Quantity

    depth: Quantity

    width_to_depth: float

    least_width_to_depth: float
    """Width over depth below which the risk is high."""

    target_width_to_depth: float
    """Largest width over depth to aim at for this joint."""

    pass_ratio: float | None
    """The larger of depth and width over the width of the face; AWS D1.1 allows 1."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class SusceptibilityIndex(Result):
    """Units of crack susceptibility of the weld metal."""

    ucs: float

    carbon_counted: float
    """Carbon that counts, weight %; at least 0.08."""

    critical: float
    """UCS from which a bead of this joint and shape is likely to crack."""

    high_resistance_below: float

    low_resistance_above: float

    sulphur_and_phosphorus: float
    """Together, weight %."""

    most_sulphur_and_phosphorus: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class LeastFillet(Result):
    """Least fillet by one rule that protects against quick chill."""

    rule: str

    leg: Quantity

    throat: Quantity

    enough: bool | None

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class CrackFactor(Result):
    """One factor of the risk: its grade, the reason, and what to change."""

    name: Literal["shape", "pass-shape", "composition", "sulphur-and-phosphorus", "face", "size", "crater"]

    grade: Literal["low", "raised", "high"]

    reason: str

    change: str | None
    """What to change; null where nothing has to change."""

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FillerQuantityAnswer(Calculation):
    """Weld metal, consumable, passes, hours, gas, energy and cost."""

    welds: tuple[WeldEstimate, ...]

    totals: EstimateTotals

    groups: tuple[EstimateGroup, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldEstimate(Result):
    """Estimate of one entry, in the order of the request."""

    mark: str | None = None
    """The entry's own mark."""

    kind: str
    """Kind of its shape."""

    filler: str | None

    process: str | None
    """AWS letters."""

    area: Quantity
    """Area of the section as described, without its excess."""

    parts: tuple[SectionPart, ...]
    """Parts that add up to the area; the part of a hollow face is negative."""

    length: Quantity
    """Length of all its welds together."""

    mass_per_length: Quantity
    """Weld metal for each unit of length, its excess included."""

    deposited: Quantity
    """Weld metal as described, its own excess included."""

    metal: MetalBand
    """Weld metal as described, as usually laid, and at most as usually laid."""

    consumable: MassBand | None
    """Consumable to buy."""

    arc_time: WorkingTimeBand | None
    """Time during which the arc burns."""

    working_time: WorkingTimeBand | None
    """Time of welding on the clock."""

    gas: VolumeBand | None
    """Shielding gas while the arc burns."""

    energy: EnergyBand | None
    """Energy from the mains."""

    passes: PassCounts | None

    cost: WeldCost | None
    """Cost at the caller's prices; null without prices."""

    rests_on: EstimateBasis


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class SectionPart(Result):
    """Part of the section."""

    part: str

    area: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class MetalBand(Result):
    """Weld metal. All three are alike where the request says the excess, the convexity or the cap itself."""

    least: Quantity
    """As described."""

    typical: Quantity
    """With a tenth more area, the usual allowance."""

    most: Quantity
    """With a tenth more leg, 21 % more area, as convex welds are laid."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class MassBand(Result):
    """From least to most; both are the same where nothing was assumed."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WorkingTimeBand(Result):
    """From least to most; both are the same where nothing was assumed."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class VolumeBand(Result):
    """From least to most; both are the same where nothing was assumed."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class EnergyBand(Result):
    """From least to most; both are the same where nothing was assumed."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PassCounts(Result):
    """Number of passes, from least to most, with every way to count them."""

    least: int

    most: int

    counts: tuple[PassCount, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PassCount(Result):
    """One way to count."""

    by: Literal["single-pass-limit", "pass-thickness", "layers", "bead-area", "handbook"]

    least: int

    most: int

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldCost(Result):
    """Cost by its parts; a part without a price is null, and the total leaves it out."""

    currency: str

    labour: Band | None

    consumable: Band | None

    gas: Band | None

    power: Band | None

    total: Band | None
    """Sum of the parts that have a price; null where one of them is not known."""

    counts: tuple[str, ...]
    """Parts that have a price."""

    missing: tuple[str, ...]
    """Parts that have a price but whose cost is not known."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class EstimateBasis(Result):
    """Figures that an estimate rests on; null where neither the request nor a publication gives one."""

    density: WeldMetalDensity

    efficiency: Figure | None

    deposition_rate: DepositionRateFigure | None

    operator_factor: Figure | None

    gas_flow: GasFlowFigure | None

    bead_area: AreaFigure | None

    source_efficiency: Figure | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldMetalDensity(Result):
    """Density of the weld metal."""

    value: Quantity

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Figure(Result):
    """Figure, and who says so."""

    least: float

    most: float

    source: str
    """"given", or a publication."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DepositionRateFigure(Result):
    """Figure, and who says so."""

    least: Quantity

    most: Quantity

    source: str
    """"given", or a publication."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GasFlowFigure(Result):
    """Figure, and who says so."""

    least: Quantity

    most: Quantity

    source: str
    """"given", or a publication."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class AreaFigure(Result):
    """Figure, and who says so."""

    least: Quantity

    most: Quantity

    source: str
    """"given", or a publication."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class EstimateTotals(Result):
    """Sums; a sum is null where one of its summands is not known."""

    count: int

    length: Quantity

    deposited: Quantity
    """Weld metal as described, its own excess included."""

    metal: MetalBand
    """Weld metal as described, as usually laid, and at most as usually laid."""

    consumable: MassBand | None
    """Consumable to buy."""

    arc_time: WorkingTimeBand | None
    """Time during which the arc burns."""

    working_time: WorkingTimeBand | None
    """Time of welding on the clock."""

    gas: VolumeBand | None
    """Shielding gas while the arc burns."""

    energy: EnergyBand | None
    """Energy from the mains."""

    cost: WeldCost | None
    """Cost at the caller's prices; null without prices."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class EstimateGroup(Result):
    """Sums of one filler with one process."""

    filler: str | None

    process: str | None

    count: int

    length: Quantity

    deposited: Quantity
    """Weld metal as described, its own excess included."""

    metal: MetalBand
    """Weld metal as described, as usually laid, and at most as usually laid."""

    consumable: MassBand | None
    """Consumable to buy."""

    arc_time: WorkingTimeBand | None
    """Time during which the arc burns."""

    working_time: WorkingTimeBand | None
    """Time of welding on the clock."""

    gas: VolumeBand | None
    """Shielding gas while the arc burns."""

    energy: EnergyBand | None
    """Energy from the mains."""

    cost: WeldCost | None
    """Cost at the caller's prices; null without prices."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAnswer(Calculation):
    """How a joint shrinks and turns."""

    transverse: LengthDistortionBand
    """Shrinkage across the weld."""

    longitudinal: LengthDistortionBand
    """Shortening along the weld."""

    angular: AngleDistortionBand
    """Turn of the joint that is free to turn; for a flange, of each of its halves."""

    edge_lift: LengthDistortionBand
    """Lift of each edge of a flange."""

    bowing: LengthDistortionBand
    """Bow of the member at the middle of its length."""

    restrained_angular: AngleDistortionBand | None
    """Turn of the joint as it is held; null where it is free to turn."""

    weld: ShrinkingWeld

    iso_13920: tuple[ToleranceCheck, ...]

    alternatives: tuple[DistortionAlternative, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class LengthDistortionBand(Result):
    """One quantity by several methods."""

    low: Quantity | None

    high: Quantity | None
    """Upper end; null, as low is, where no method covers the joint."""

    methods: tuple[LengthDistortionEstimate, ...]

    left_out: tuple[MethodLeftOut, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class LengthDistortionEstimate(Result):
    """Value of one method."""

    method: str

    value: Quantity

    source: str

    sureness: str
    """How the source was read, such as from memory."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class MethodLeftOut(Result):
    """Method that does not cover the joint, and what it covers or needs."""

    method: str

    reason: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class AngleDistortionBand(Result):
    """One quantity by several methods."""

    low: Quantity | None

    high: Quantity | None
    """Upper end; null, as low is, where no method covers the joint."""

    methods: tuple[AngleDistortionEstimate, ...]

    left_out: tuple[MethodLeftOut, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class AngleDistortionEstimate(Result):
    """Value of one method."""

    method: str

    value: Quantity

    source: str

    sureness: str
    """How the source was read, such as from memory."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ShrinkingWeld(Result):
    """Weld metal that shrinks."""

    area: Quantity
    """Area of one weld."""

    welds: int

    welded_share: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ToleranceCheck(Result):
    """Upper end of one band against every class of its table."""

    quantity: str

    nominal: Quantity

    value: Quantity
    """Upper end of the band; twice the estimate where one method alone gives it."""

    classes: tuple[ToleranceClass, ...]

    keeps: str | None
    """Tightest class that is kept; null where none is."""

    asked: str | None

    verdict: Literal["within", "out"] | None

    table: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ToleranceClass(Result):
    """Tolerance of one class, plus or minus."""

    class_: str

    tolerance: Quantity

    rise: float | None = None
    """Tangent of the angle."""

    printed_rise: float | None = None
    """Rise as the table prints it, rounded. Angle and rise must both be kept."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAlternative(Result):
    """Another way to weld the joint."""

    do: RemedyCode

    leg: Quantity | None = None

    root_opening: Quantity | None = None

    depth: Quantity | None = None
    """Depth of the preparation on each side."""

    steps: int | None = None

    metal_ratio: float
    """Weld metal over that of the joint of the request."""

    strength_ratio: float
    """Throat times the share welded, over that of the joint of the request."""

    transverse: LengthDistortionSpan | None

    longitudinal: LengthDistortionSpan | None

    angular: AngleDistortionSpan | None

    edge_lift: LengthDistortionSpan | None

    bowing: LengthDistortionSpan | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class LengthDistortionSpan(Result):
    """Least and greatest of the methods."""

    low: Quantity

    high: Quantity

    ratio: SpanRatio | None
    """Ratio to the joint of the request; null where no method covers both."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class SpanRatio(Result):
    """Ratio by the methods that cover both joints."""

    low: float

    high: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class AngleDistortionSpan(Result):
    """Least and greatest of the methods."""

    low: Quantity

    high: Quantity

    ratio: SpanRatio | None
    """Ratio to the joint of the request; null where no method covers both."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class BreakTestAnswer(Calculation):
    """What opens a coupon from its root. The main figures count all the throat there may be."""

    throat: OpenedThroat

    moment: MomentStages
    """Moment on the coupon at which the root yields and the throat folds (both for the least throat), at which the
    nominal throat breaks, and at which it breaks at the latest.
    """

    force: HandForceStages
    """Force on the lever for each of them."""

    governs: Literal["weld", "plate"]

    creditable: OpenedAccount
    """Counting measured and proven penetration."""

    strength: OpenedAccount
    """Counting proven penetration alone, and no face height."""

    plate: FoldedPlate

    length: Quantity
    """Length left between side notches."""

    least_face_width: Quantity | None
    """Width of the face that the throat needs, where a square edge's face counts; else null."""

    fold: str
    """Which way to fold it."""

    checks: tuple[CouponCheck, ...]

    standard_coupon: StandardCoupon | None

    acceptance: CouponAcceptance | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class OpenedThroat(Result):
    """Throat under the finish and the face notch: nominal, and at both ends of its tolerances."""

    least: Quantity

    nominal: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class MomentStages(Result):
    """Moment or force at each stage of opening a root."""

    first_yield: Quantity

    hinge: Quantity

    breaking: Quantity

    breaking_at_most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HandForceStages(Result):
    """Moment or force at each stage of opening a root."""

    first_yield: Quantity

    hinge: Quantity

    breaking: Quantity

    breaking_at_most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class OpenedAccount(Result):
    """What one account of the throat takes to open."""

    verdict: Verdict

    throat: OpenedThroat

    moment: MomentStages
    """Moment on the coupon at which the root yields and the throat folds (both for the least throat), at which the
    nominal throat breaks, and at which it breaks at the latest.
    """

    force: HandForceStages
    """Force on the lever for each of them."""

    governs: Literal["weld", "plate"]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FoldedPlate(Result):
    """The thinner plate: what folds it, and the throat that breaks at the same moment."""

    moment: Quantity

    force: Quantity

    balance: ThroatInBalance


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ThroatInBalance(Result):
    """Throat in balance with the plate, and the leg of an equal-leg fillet with that throat."""

    throat: Quantity

    leg: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class CouponCheck(Result):
    """One dimension against its limit."""

    name: str

    value: Quantity

    least: Quantity | None = None

    most: Quantity | None = None

    verdict: Literal["within", "out"]

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class StandardCoupon(Result):
    """Standard coupon of the rules."""

    plate: Quantity

    leg: Quantity

    least_width: Quantity

    welded_length: Quantity

    specimen: Quantity

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class CouponAcceptance(Result):
    """Whether the outcome is accepted, with each limit."""

    verdict: Verdict

    limits: tuple[CouponCheck, ...]

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class JointPlanAnswer(Calculation):
    """Every way to make one joint."""

    recommended: (
        Literal[
            "fillet-one-side",
            "fillet-both-sides",
            "fillet-intermittent",
            "partial-groove",
            "partial-groove-and-fillet",
            "full-penetration",
            "square-edge",
            "face-left",
            "bevelled-edge",
            "half-open-corner",
            "open-corner",
            "fillet-inside",
        ]
        | None
    )
    """First of the ways; null where none keeps the rules and is practicable."""

    compared_by: tuple[Literal["filler", "time", "heat", "distortion"], ...]
    """Costs that have a weight and are known for every way."""

    quality: Literal["iso-5817-b", "iso-5817-c", "iso-5817-d", "aws-d1-1-2020"] | None

    ways: tuple[PlannedWay, ...]
    """Best first."""

    refused: tuple[RefusedWay, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PlannedWay(Result):
    """A way that keeps the rules."""

    way: Literal[
        "fillet-one-side",
        "fillet-both-sides",
        "fillet-intermittent",
        "partial-groove",
        "partial-groove-and-fillet",
        "full-penetration",
        "square-edge",
        "face-left",
        "bevelled-edge",
        "half-open-corner",
        "open-corner",
        "fillet-inside",
    ]

    size: str
    """What to weld and cut, in words."""

    rank: int
    """Place of the way from 1; ways with equal scores share one."""

    impracticable: tuple[str, ...]
    """Why no shop would lay it; empty where it would. Such a way comes after all others and is never recommended."""

    score: float
    """Weighted geometric mean of its costs that are known, each over the least of any way."""

    dominated_by: tuple[
        Literal[
            "fillet-one-side",
            "fillet-both-sides",
            "fillet-intermittent",
            "partial-groove",
            "partial-groove-and-fillet",
            "full-penetration",
            "square-edge",
            "face-left",
            "bevelled-edge",
            "half-open-corner",
            "open-corner",
            "fillet-inside",
        ],
        ...,
    ]
    """Ways that are no worse in any cost and better in one."""

    costs: PlanCosts

    budget: ThroatBudget | None

    chance_short: float | None
    """Share of such seams whose throat is short, at the tolerances given."""

    hold: PlanHold

    verdicts: Mapping[str, Verdict]
    """Verdict of each single resource."""

    left_out: tuple[LeftOut, ...]
    """Resources without an answer, and why."""

    parts: PlanParts | None
    """Answers of the single resources; null where the request does not ask for them."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PlanCosts(Result):
    """Costs of a way; null where one is not known."""

    filler: Quantity | None
    """Weld metal."""

    time: Quantity | None
    """Time on the clock, at most."""

    heat: Quantity | None
    """Arc energy put into the joint."""

    distortion: Quantity | None
    """Angular change, at most."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PlanHold(Result):
    """Limits for each weld; null where the way or the quality set has none."""

    least_leg: Quantity | None

    least_throat: Quantity | None

    most_convexity: Quantity | None

    most_reinforcement: Quantity | None

    leave_face_height: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PlanParts(Result):
    """Answers of the single resources, unchanged; null where a way does not need one."""

    fillet_size: FilletSizeAnswer | None

    groove_size: GrooveSizeAnswer | None

    bevel_depth: BevelDepthAnswer | None

    grind_allowance: GrindAllowanceAnswer | None

    filler_quantity: FillerQuantityAnswer | None

    heat: HeatAnswer | None

    distortion: DistortionAnswer | None

    crack_risk: CrackRiskAnswer | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class RefusedWay(Result):
    """A way that does not keep the rules."""

    way: Literal[
        "fillet-one-side",
        "fillet-both-sides",
        "fillet-intermittent",
        "partial-groove",
        "partial-groove-and-fillet",
        "full-penetration",
        "square-edge",
        "face-left",
        "bevelled-edge",
        "half-open-corner",
        "open-corner",
        "fillet-inside",
    ]

    why: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ServiceAnswer(Answer):
    """What this service is."""

    service: str

    service_version: str

    api_version: str

    engine_version: str

    rule_sets: tuple[RuleSetName, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class RuleSetName(Result):
    """Rule set by its id."""

    id: str

    title: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class RuleSetsAnswer(Answer):
    """Rule sets, and quality sets, with their clauses and limits."""

    rule_sets: tuple[RuleSetEntry, ...]

    quality_sets: tuple[QualitySetEntry, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class RuleSetEntry(Result):
    """Rule set."""

    id: str

    title: str

    editions: tuple[str, ...]

    clauses: tuple[str, ...]

    parameters: Mapping[str, float]

    limits: tuple[LimitOfScope, ...]

    readings: tuple[ReadingOfClause, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class LimitOfScope(Result):
    """Limit of scope."""

    text: str

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ReadingOfClause(Result):
    """How a clause is read that is silent, borrowed or open to two readings."""

    text: str

    source: str
    """The clause that is read."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class QualitySetEntry(Result):
    """Quality level or code that a finished weld is judged by."""

    id: str

    title: str

    editions: tuple[str, ...]

    clauses: tuple[str, ...]

    limits: tuple[LimitOfScope, ...]

    readings: tuple[ReadingOfClause, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class MaterialsAnswer(Answer):
    """Base metals."""

    materials: tuple[MaterialEntry, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class MaterialEntry(Result):
    """Base metal with its strengths by thickness, over ... up to and including."""

    id: str

    standard: str

    family: str

    form: str

    beta_w: float | None

    source: str

    bands: tuple[StrengthBand, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class StrengthBand(Result):
    """Strengths over a range of thickness."""

    thickness_over: Quantity

    thickness_to: Quantity | None

    yield_strength: Quantity

    tensile_strength: Quantity

    welded_yield_strength: Quantity | None

    welded_tensile_strength: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FillerMetalsAnswer(Answer):
    """Filler metals."""

    filler_metals: tuple[FillerMetalEntry, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FillerMetalEntry(Result):
    """Filler metal."""

    id: str

    standard: str

    family: str

    tensile_strength: Quantity

    matches: str

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ProcessesAnswer(Answer):
    """Processes and positions, with every code each answers to."""

    processes: tuple[ProcessEntry, ...]

    positions: tuple[PositionEntry, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ProcessEntry(Result):
    """Process."""

    id: str

    title: str

    iso_4063: tuple[str, ...]

    source: str

    rates: PublishedRates


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PublishedRates(Result):
    """Published figures of a process; an estimate uses the range of the usual rows."""

    efficiency: tuple[PublishedRate, ...]

    deposition_rate: tuple[DepositionRatePublishedRate, ...]

    operator_factor: tuple[PublishedRate, ...]

    gas_flow: tuple[GasFlowPublishedRate, ...]

    bead_area: tuple[AreaPublishedRate, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PublishedRate(Result):
    """Figure of one publication."""

    setting: str
    """Setting in which it was measured."""

    least: float

    most: float

    typical: float | None

    usual: bool
    """Whether an estimate uses the row where the request leaves the figure out."""

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DepositionRatePublishedRate(Result):
    """Figure of one publication."""

    setting: str
    """Setting in which it was measured."""

    least: Quantity

    most: Quantity

    typical: Quantity | None

    usual: bool
    """Whether an estimate uses the row where the request leaves the figure out."""

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GasFlowPublishedRate(Result):
    """Figure of one publication."""

    setting: str
    """Setting in which it was measured."""

    least: Quantity

    most: Quantity

    typical: Quantity | None

    usual: bool
    """Whether an estimate uses the row where the request leaves the figure out."""

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class AreaPublishedRate(Result):
    """Figure of one publication."""

    setting: str
    """Setting in which it was measured."""

    least: Quantity

    most: Quantity

    typical: Quantity | None

    usual: bool
    """Whether an estimate uses the row where the request leaves the figure out."""

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PositionEntry(Result):
    """Position."""

    id: str

    title: str

    orientation: str

    equivalents: tuple[str, ...]

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreparationsAnswer(Answer):
    """Preparations of grooves."""

    preparations: tuple[PreparationEntry, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreparationEntry(Result):
    """Preparation with its limits; a limit is null where the standard sets none."""

    id: str

    ref: str
    """The standard's own reference."""

    standard: str

    joints: tuple[str, ...]

    penetration: str

    form: str

    root: str
    """How the root is welded."""

    thickness: LengthLimits

    angle: AngleLimits | None

    gap: LengthLimits | None

    gap_share_of_thickness: float | None

    land: LengthLimits | None

    processes: tuple[str, ...]

    orientations: tuple[str, ...]

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class LengthLimits(Result):
    """Limits; null where there is none."""

    least: Quantity | None

    most: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class AngleLimits(Result):
    """Limits; null where there is none."""

    least: Quantity | None

    most: Quantity | None


Verdict: TypeAlias = Literal[
    "enough",
    "enough-on-trust",
    "short",
    "short-when-finished",
    "cannot-be-reached",
    "full-penetration-needed",
    "over",
    "open",
    "estimated",
    "within",
    "too-fast",
    "too-slow",
    "low",
    "raised",
    "high",
    "within-tolerance",
    "out-of-tolerance",
    "opens-by-hand",
    "may-open-by-hand",
    "does-not-open-by-hand",
    "plate-bends-first",
    "accepted",
    "rejected",
]

CautionCode: TypeAlias = Literal[
    "accounts-differ",
    "allowance-thins",
    "alternatives-not-sized",
    "analyse-the-weld-metal",
    "assumed-penetration",
    "back-gouge",
    "backing-left-in",
    "base-metal-not-checked",
    "bending-of-part-1",
    "below-minimum-throat",
    "below-quick-chill-size",
    "boron-hardens",
    "carbon-steel-assumed",
    "categories-move",
    "code-in-part",
    "cold-air",
    "cold-steel",
    "combined-thickness-of-parts",
    "convexity-not-credited",
    "corner-as-fillet",
    "cost-incomplete",
    "crater",
    "depth-consistently-achieved",
    "design-wall",
    "designed-to-bear",
    "elastic-method",
    "end-returns",
    "end-weld",
    "estimate-for-planning",
    "excess-on-area",
    "face-not-credited",
    "face-not-given",
    "face-width-not-given",
    "face-width-not-known",
    "factor-band",
    "faster-than-hands",
    "ferritic-only",
    "flare-radius",
    "flatness-by-width",
    "flux-not-counted",
    "full-size-length",
    "fusion-not-read",
    "gap-and-land",
    "gap-in-leg",
    "gap-taken-off",
    "gaps-corrode",
    "hardness-over",
    "hardness-scatter",
    "heat-affected-zone",
    "heat-of-one-run",
    "hollow-section",
    "hydrogen-cracks-not-graded",
    "imperfections-not-summed",
    "index-of-submerged-arc",
    "intermittent",
    "lap-overlap",
    "laid-larger-than-drawn",
    "later-edition",
    "left-free",
    "leg-from-energy",
    "let-go",
    "level-in-part",
    "long-stiffener",
    "long-weld-not-reduced",
    "low-hydrogen-needed",
    "lower-beta-w",
    "matching-by-strength",
    "matching-filler-assumed",
    "may-be-short",
    "measured-penetration",
    "metal-as-carbon-steel",
    "method-a-reads-charts",
    "methods-differ",
    "national-least-throat",
    "no-deposition-rate",
    "no-efficiency",
    "no-gas-flow",
    "no-length",
    "no-listed-preparation",
    "no-operator-factor",
    "no-rule-set",
    "no-strength-claimed",
    "no-undersize-at-girder-ends",
    "nominal-strengths",
    "not-a-listed-detail",
    "not-all-timed",
    "not-compared",
    "not-for-service",
    "one-method",
    "one-side-without-backing",
    "one-thickness",
    "one-sided",
    "other-standard",
    "overwelded",
    "packing",
    "parts-not-checked",
    "penetration-not-counted",
    "pitch-not-checked",
    "preheat-short",
    "proven-penetration",
    "radius-needs-width",
    "rates-of-steel",
    "recalled-limit",
    "room-temperature",
    "root-bending-model",
    "root-opening",
    "rough-estimate",
    "runs",
    "seam-factors",
    "second-hand-limits",
    "shallow-bead",
    "spacing-by-pitch",
    "static-only",
    "stub-in-efficiency",
    "stub-taken-off",
    "thinner-part-cools-slower",
    "thinning",
    "throat-to-finished-face",
    "too-fast",
    "too-slow",
    "raised",
    "high",
    "two-heat-inputs",
    "undercut-not-given",
    "usual-bead-area",
    "usual-deposition-rate",
    "usual-efficiency",
    "usual-gas-flow",
    "usual-operator-factor",
    "usual-source-efficiency",
    "weld-metal-cet-not-given",
    "welding-alone",
    "z-loss",
]

RemedyCode: TypeAlias = Literal[
    "accept",
    "add-pass",
    "add-root-pass",
    "bevel",
    "bevelled",
    "close-gap",
    "double-sided",
    "dress-face",
    "dress-root",
    "dress-toe",
    "fill-crater",
    "fillet-inside",
    "full-penetration",
    "gouge-and-reweld",
    "intermittent",
    "leave-face",
    "over",
    "realign",
    "repair-undercut",
    "single-bevel",
    "single-j",
    "single-u",
    "single-v",
    "smaller-radius",
    "weld-second-side",
]
