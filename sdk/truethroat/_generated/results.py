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
    "AngleBand",
    "AngleBandLeftOut",
    "AngleBandMethods",
    "AreaFigure",
    "AsWeldedAnswer",
    "BevelDepthAnswer",
    "BevelDepthCallout",
    "BreakTestAcceptance",
    "BreakTestAnswer",
    "BreakTestForce",
    "BreakTestMoment",
    "BreakTestPlate",
    "BreakTestPlateBalance",
    "BreakTestStandardCoupon",
    "BreakTestThroat",
    "Calculation",
    "Caution",
    "ConcentricGroup",
    "CouponCheck",
    "CrackFactor",
    "CrackRiskAnswer",
    "CrackRiskIndex",
    "CrackRiskShape",
    "Creditable",
    "DepositedMetal",
    "DistortionAlternative",
    "DistortionAlternativeAngular",
    "DistortionAlternativeAngularRatio",
    "DistortionAlternativeBowing",
    "DistortionAlternativeBowingRatio",
    "DistortionAlternativeEdgeLift",
    "DistortionAlternativeEdgeLiftRatio",
    "DistortionAlternativeLongitudinal",
    "DistortionAlternativeLongitudinalRatio",
    "DistortionAlternativeTransverse",
    "DistortionAlternativeTransverseRatio",
    "DistortionAnswer",
    "DistortionWeld",
    "EnergyBand",
    "EstimateBasis",
    "EstimateBasisDensity",
    "EstimateGroup",
    "EstimateTotals",
    "FillerMetalsAnswer",
    "FillerMetalsFillerMetals",
    "FillerQuantityAnswer",
    "FilletHeat",
    "FilletHeatBead",
    "FilletHeatOversize",
    "FilletSize",
    "FilletSizeAnswer",
    "FilletSizeLength",
    "FilletSizePacking",
    "FilletSizeStrength",
    "FlangeWidth",
    "FlowFigure",
    "GrindAllowanceAnswer",
    "GroovePreparation",
    "GrooveSizeAnswer",
    "GrooveSizeHoles",
    "GrooveSizeHolesLimits",
    "GrooveSizeRefused",
    "GrooveSizeStrength",
    "GrooveSizeTee",
    "GrooveThroat",
    "GroupPoint",
    "GroupPointForce",
    "HeatAnswer",
    "HeatCarbonEquivalents",
    "HeatCooling",
    "HeatCoolingTransitionThickness",
    "HeatEnergy",
    "HeatHardness",
    "HeatHardnessBand",
    "HeatHardnessDueren",
    "HeatHardnessYurioka",
    "HeatLimits",
    "HeatLimitsArcEnergy",
    "HeatLimitsHeatInput",
    "HeatLimitsTravelSpeed",
    "IntermittentFillet",
    "JointPlanAnswer",
    "JointPlanRefused",
    "LeastFillet",
    "LeftOut",
    "LengthBand",
    "LengthBandLeftOut",
    "LengthBandMethods",
    "MassBand",
    "MaterialsAnswer",
    "MaterialsMaterials",
    "MaterialsMaterialsBands",
    "MoneyBand",
    "OpenedAccount",
    "OpenedAccountForce",
    "OpenedAccountMoment",
    "OpenedAccountThroat",
    "Overweld",
    "PassCounts",
    "PassCountsCounts",
    "PlanCosts",
    "PlanHold",
    "PlanParts",
    "PlannedWay",
    "PreheatAnswer",
    "PreheatAwsD11",
    "PreheatAwsD11Printed",
    "PreheatMethodA",
    "PreheatMethodB",
    "PreheatSew088",
    "PreparationsAnswer",
    "PreparationsPreparations",
    "PreparationsPreparationsAngle",
    "PreparationsPreparationsGap",
    "PreparationsPreparationsLand",
    "PreparationsPreparationsThickness",
    "ProcessesAnswer",
    "ProcessesPositions",
    "ProcessesProcesses",
    "ProcessesProcessesRates",
    "ProcessesProcessesRatesBeadArea",
    "ProcessesProcessesRatesDepositionRate",
    "ProcessesProcessesRatesEfficiency",
    "ProcessesProcessesRatesGasFlow",
    "ProcessesProcessesRatesOperatorFactor",
    "Provenance",
    "QualityLimit",
    "RateFigure",
    "Remedy",
    "RuleSetsAnswer",
    "RuleSetsQualitySets",
    "RuleSetsQualitySetsLimits",
    "RuleSetsRuleSets",
    "RuleSetsRuleSetsLimits",
    "ServiceAnswer",
    "ServiceRuleSets",
    "ShareFigure",
    "SpacingLimit",
    "SpecifiedFilletSize",
    "TensionMemberStrength",
    "ThroatAsWelded",
    "ThroatBudget",
    "TimeBand",
    "ToleranceCheck",
    "ToleranceCheckClasses",
    "Verdict",
    "VolumeBand",
    "WeldAction",
    "WeldBalance",
    "WeldCallout",
    "WeldCost",
    "WeldEstimate",
    "WeldEstimateParts",
    "WeldGroupAnswer",
    "WeldGroupCentre",
    "WeldGroupLoadPerGroup",
    "WeldGroupLoadPerGroupForce",
    "WeldGroupLoadPerGroupMoment",
    "WeldGroupProperties",
    "WeldGroupPropertiesCentroid",
    "WeldGroupStrength",
    "WorkingStep",
    "WorkingStepWith",
    "WorkingTimeBand",
]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Calculation(Answer):
    """What every calculation answers."""

    cautions: tuple[Caution, ...]

    mark: str | None = None
    """The request's own mark."""

    provenance: Provenance

    reasons: tuple[str, ...]

    verdict: Verdict

    working: tuple[WorkingStep, ...] | None = None
    """Steps in the order computed, in engine units."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Alternative(Result):
    """Another way to the same throat."""

    area: Quantity | None

    do: str

    filler: DepositedMetal | None

    size: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class AngleBandLeftOut(Result):
    """Method that does not cover the joint."""

    method: str

    reason: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class AngleBandMethods(Result):
    """What one method gives."""

    method: str

    source: str

    sureness: str
    """How it came to us."""

    value: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class AngleBand(Result):
    """An angle by several methods."""

    high: Quantity | None
    """Null, as low is, where no method covers the joint."""

    left_out: tuple[AngleBandLeftOut, ...]

    low: Quantity | None

    methods: tuple[AngleBandMethods, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class AreaFigure(Result):
    """Figure, and who says so."""

    least: Quantity

    most: Quantity

    source: str
    """"given", or a publication."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class AsWeldedAnswer(Calculation):
    """What a weld is worth as welded."""

    actions: tuple[WeldAction, ...]

    limits: tuple[QualityLimit, ...]

    overweld: Overweld | None
    """Null of a butt."""

    quality_kept: bool
    """Whether every limit checked is kept."""

    size: Quantity | None
    """Leg of the largest equal-leg triangle inscribed; null of a butt."""

    strength_left: float
    """Worst-case throat over the required throat."""

    throat: ThroatAsWelded


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class BevelDepthCallout(Result):
    """Preparation as drawing text."""

    aws_a2_4: str

    iso_2553: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class BevelDepthAnswer(Calculation):
    """Preparation to cut."""

    alternatives: tuple[Alternative, ...]

    area: Quantity | None

    budget: ThroatBudget | None

    callout: BevelDepthCallout | None

    deduction: Quantity

    depth: Quantity | None

    filler: DepositedMetal | None

    land: Quantity | None

    setback: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class BreakTestAcceptance(Result):
    """What the outcome is worth."""

    limits: tuple[CouponCheck, ...]

    source: str

    verdict: Verdict


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class BreakTestForce(Result):
    """Force on the lever for each of them."""

    breaking: Quantity

    breaking_at_most: Quantity

    first_yield: Quantity

    hinge: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class BreakTestMoment(Result):
    """Moment on the coupon: the root yields, the throat folds (both at its least), breaks, and breaks at the most."""

    breaking: Quantity

    breaking_at_most: Quantity

    first_yield: Quantity

    hinge: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class BreakTestPlateBalance(Result):
    """Of an equal-leg fillet also its leg."""

    leg: Quantity | None

    throat: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class BreakTestPlate(Result):
    """The thinner plate: what folds it, and the throat that breaks just as it does."""

    balance: BreakTestPlateBalance
    """Of an equal-leg fillet also its leg."""

    force: Quantity

    moment: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class BreakTestStandardCoupon(Result):
    """Coupon that the rules know."""

    least_width: Quantity

    leg: Quantity

    plate: Quantity

    source: str

    specimen: Quantity

    welded_length: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class BreakTestThroat(Result):
    """Throat under the finish and the notch, as given and by its tolerances."""

    least: Quantity

    most: Quantity

    nominal: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class BreakTestAnswer(Calculation):
    """What opens a coupon from its root, counting all the throat there is."""

    acceptance: BreakTestAcceptance | None

    checks: tuple[CouponCheck, ...]

    creditable: OpenedAccount
    """Counting measured and proven penetration."""

    fold: str
    """Which way to fold it."""

    force: BreakTestForce
    """Force on the lever for each of them."""

    governs: Literal["weld", "plate"]

    length: Quantity
    """Length left between side notches."""

    moment: BreakTestMoment
    """Moment on the coupon: the root yields, the throat folds (both at its least), breaks, and breaks at the most."""

    plate: BreakTestPlate
    """The thinner plate: what folds it, and the throat that breaks just as it does."""

    standard_coupon: BreakTestStandardCoupon | None

    strength: OpenedAccount
    """Counting proven penetration alone, and no face height."""

    throat: BreakTestThroat
    """Throat under the finish and the notch, as given and by its tolerances."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Caution(Result):
    """What the figures rest on or leave out."""

    code: str

    source: str | None = None

    text: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ConcentricGroup(Result):
    """Group along and across its force: plain sum, sum with the increase across (null where it is left out)."""

    counts: Literal["plain-sum", "weighted-sum"]

    equivalent_length: Quantity
    """Length along the force that is as strong."""

    plain_sum: Quantity

    strength: Quantity

    weighted_sum: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class CouponCheck(Result):
    """One dimension against its limit."""

    least: Quantity | None = None

    most: Quantity | None = None

    name: str

    source: str

    value: Quantity

    verdict: Literal["within", "out"]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class CrackFactor(Result):
    """One reason to expect a crack, or none."""

    change: str | None

    grade: Literal["low", "raised", "high"]

    name: Literal["shape", "pass-shape", "composition", "sulphur-and-phosphorus", "face", "size", "crater"]

    reason: str

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class CrackRiskIndex(Result):
    """Units of crack susceptibility of the weld metal."""

    carbon_counted: float
    """A smaller share than 0.08 % is raised to it."""

    critical: float
    """From here on a bead of this joint and shape is likely to crack."""

    high_resistance_below: float

    low_resistance_above: float

    most_sulphur_and_phosphorus: float

    sulphur_and_phosphorus: float
    """Together, weight %."""

    ucs: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class CrackRiskShape(Result):
    """Shape of the bead."""

    depth: Quantity

    least_width_to_depth: float
    """Under it the risk is high."""

    pass_ratio: float | None

    target_width_to_depth: float
    """Width over depth that a bead of this joint is aimed at, at most."""

    width: Quantity

    width_to_depth: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class CrackRiskAnswer(Calculation):
    """Risk of cracks in a pass; the verdict is the worst grade."""

    factors: tuple[CrackFactor, ...]

    index: CrackRiskIndex | None

    least_sizes: tuple[LeastFillet, ...]

    left_out: tuple[LeftOut, ...]

    shape: CrackRiskShape | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Creditable(Result):
    """A budget that counts only what is measured or proven and what the code credits, with what follows from it."""

    allowance: Quantity
    """Most that may come off along the throat line, from the face as welded."""

    as_welded: Quantity

    cap: Quantity

    deduction: Quantity

    face: Quantity

    largest_radius: Quantity | None

    leave: Quantity | None

    margin: Quantity

    penetration: Quantity

    prepared_depth: Quantity

    remaining: Quantity

    remaining_root_sum_square: Quantity

    remaining_worst_case: Quantity

    remedies: tuple[Remedy, ...]

    removed: Quantity

    required: Quantity

    theoretical: Quantity

    verdict: Verdict


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DepositedMetal(Result):
    """Deposited metal."""

    mass_per_length: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAlternativeAngularRatio(Result):
    """By the methods that cover both."""

    high: float

    low: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAlternativeAngular(Result):
    """Least and greatest of the methods."""

    high: Quantity

    low: Quantity

    ratio: DistortionAlternativeAngularRatio | None
    """Over that of the joint asked about; null where no method covers both."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAlternativeBowingRatio(Result):
    """By the methods that cover both."""

    high: float

    low: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAlternativeBowing(Result):
    """Least and greatest of the methods."""

    high: Quantity

    low: Quantity

    ratio: DistortionAlternativeBowingRatio | None
    """Over that of the joint asked about; null where no method covers both."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAlternativeEdgeLiftRatio(Result):
    """By the methods that cover both."""

    high: float

    low: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAlternativeEdgeLift(Result):
    """Least and greatest of the methods."""

    high: Quantity

    low: Quantity

    ratio: DistortionAlternativeEdgeLiftRatio | None
    """Over that of the joint asked about; null where no method covers both."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAlternativeLongitudinalRatio(Result):
    """By the methods that cover both."""

    high: float

    low: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAlternativeLongitudinal(Result):
    """Least and greatest of the methods."""

    high: Quantity

    low: Quantity

    ratio: DistortionAlternativeLongitudinalRatio | None
    """Over that of the joint asked about; null where no method covers both."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAlternativeTransverseRatio(Result):
    """By the methods that cover both."""

    high: float

    low: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAlternativeTransverse(Result):
    """Least and greatest of the methods."""

    high: Quantity

    low: Quantity

    ratio: DistortionAlternativeTransverseRatio | None
    """Over that of the joint asked about; null where no method covers both."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAlternative(Result):
    """Another way to weld the joint."""

    angular: DistortionAlternativeAngular | None

    bowing: DistortionAlternativeBowing | None

    depth: Quantity | None = None
    """Depth of the preparation on each side."""

    do: Literal["over", "double-sided", "intermittent", "bevelled"]

    edge_lift: DistortionAlternativeEdgeLift | None

    leg: Quantity | None = None

    longitudinal: DistortionAlternativeLongitudinal | None

    metal_ratio: float
    """Metal over that of the joint asked about."""

    root_opening: Quantity | None = None

    steps: int | None = None

    strength_ratio: float
    """Throat, times the share welded, over that of the joint asked about."""

    transverse: DistortionAlternativeTransverse | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionWeld(Result):
    """The weld metal."""

    area: Quantity
    """Of one weld."""

    welded_share: float

    welds: int


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class DistortionAnswer(Calculation):
    """How a joint shrinks and turns."""

    alternatives: tuple[DistortionAlternative, ...]

    angular: AngleBand
    """Turn of the joint left free; of a flange, of each of its halves."""

    bowing: LengthBand
    """Bow of the member at the middle of its length."""

    edge_lift: LengthBand
    """Lift of each edge of a flange."""

    iso_13920: tuple[ToleranceCheck, ...]

    longitudinal: LengthBand
    """Shortening along the weld."""

    restrained_angular: AngleBand | None
    """Turn of the joint as it is held."""

    transverse: LengthBand
    """Shrinkage across the weld."""

    weld: DistortionWeld
    """The weld metal."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class EnergyBand(Result):
    """From least to most; the same where nothing was assumed."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class EstimateBasisDensity(Result):
    """Of the weld metal."""

    source: str

    value: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class EstimateBasis(Result):
    """What an estimate rests on; null where nothing says it."""

    bead_area: AreaFigure | None

    density: EstimateBasisDensity
    """Of the weld metal."""

    deposition_rate: RateFigure | None

    efficiency: ShareFigure | None

    gas_flow: FlowFigure | None

    operator_factor: ShareFigure | None

    source_efficiency: ShareFigure | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class EstimateGroup(Result):
    """Sums of one filler with one process."""

    arc_time: WorkingTimeBand | None
    """While the arc burns."""

    consumable: MassBand | None
    """What to buy."""

    cost: WeldCost | None
    """At the caller's prices; null without any."""

    count: int

    deposited: Quantity
    """Weld metal, excess and all."""

    energy: EnergyBand | None
    """From the mains."""

    filler: str | None

    gas: VolumeBand | None
    """Shielding gas while the arc burns."""

    length: Quantity

    process: str | None

    working_time: WorkingTimeBand | None
    """On the clock."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class EstimateTotals(Result):
    """Sums; null where one of the summands is not known."""

    arc_time: WorkingTimeBand | None
    """While the arc burns."""

    consumable: MassBand | None
    """What to buy."""

    cost: WeldCost | None
    """At the caller's prices; null without any."""

    count: int

    deposited: Quantity
    """Weld metal, excess and all."""

    energy: EnergyBand | None
    """From the mains."""

    gas: VolumeBand | None
    """Shielding gas while the arc burns."""

    length: Quantity

    working_time: WorkingTimeBand | None
    """On the clock."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FillerMetalsFillerMetals(Result):
    """Filler metal."""

    family: str

    id: str

    matches: str

    source: str

    standard: str

    tensile_strength: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FillerMetalsAnswer(Answer):
    """Filler metals."""

    filler_metals: tuple[FillerMetalsFillerMetals, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FillerQuantityAnswer(Calculation):
    """Weld metal, consumable, passes, hours, gas, energy and cost."""

    groups: tuple[EstimateGroup, ...]

    totals: EstimateTotals

    welds: tuple[WeldEstimate, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FilletHeatBead(Result):
    """What the deposition rate lays."""

    area: Quantity

    leg: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FilletHeatOversize(Result):
    """The leg laid against the leg required."""

    cooling_time_laid: TimeBand | None

    cooling_time_required: TimeBand | None

    heat_ratio: float
    """Arc energy of the leg laid over that of the leg required."""

    required_arc_energy: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FilletHeat(Result):
    """Leg of a single-pass fillet against arc energy."""

    bead: FilletHeatBead | None

    oversize: FilletHeatOversize | None

    usual_arc_energy: Quantity | None
    """Arc energy that the leg usually takes."""

    usual_leg: Quantity | None
    """Leg that this arc energy usually lays."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FilletSize(Result):
    """Size of a fillet."""

    leg: Quantity

    source: str

    throat: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FilletSizeLength(Result):
    """Length of one weld."""

    effective: Quantity

    factor: float

    given: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FilletSizePacking(Result):
    """Packing, and how it is welded."""

    added: Quantity
    """To the leg, which reaches over it."""

    thickness: Quantity

    welds: Literal["over-packing", "to-each-part"]
    """One leg over the packing, or a weld of this size from each part to it."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FilletSizeStrength(Result):
    """Design or allowable force per length of one weld, in the load's direction, at the size tried, less its
    tolerance.
    """

    base_metal: tuple[Quantity, ...]

    weld: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FilletSizeAnswer(Calculation):
    """Fillet to specify."""

    balance: WeldBalance | None

    concentric: ConcentricGroup | None

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

    intermittent: IntermittentFillet | None

    length: FilletSizeLength | None

    maximum: FilletSize | None

    minimum: FilletSize

    packing: FilletSizePacking | None

    required: FilletSize
    """What the weld metal needs."""

    specify: SpecifiedFilletSize | None

    strength: FilletSizeStrength | None

    tension_member: TensionMemberStrength | None

    unstiffened_flange: FlangeWidth | None

    utilisation: float | None

    z_loss: Quantity | None
    """Throat lost at the root between plates below 60 deg, included in the leg."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FlangeWidth(Result):
    """Plate on an unstiffened flange."""

    effective_width: Quantity

    least_width: Quantity
    """Below it the flange must be stiffened."""

    resistance: Quantity
    """Of the plate over the width held."""

    share: float
    """Factor k."""

    stiffen: bool


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class FlowFigure(Result):
    """Figure, and who says so."""

    least: Quantity

    most: Quantity

    source: str
    """"given", or a publication."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GrindAllowanceAnswer(Calculation):
    """What may be ground off, and what must stay."""

    allowance: Quantity
    """Most that may come off along the throat line, from the face as welded."""

    budget: ThroatBudget

    creditable: Creditable

    judged_on: Literal["nominal", "worst-case"]

    largest_radius: Quantity | None

    leave: Quantity | None

    remedies: tuple[Remedy, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GroovePreparation(Result):
    """Preparation as it would be made, one value chosen where its detail allows a range."""

    angle: Quantity | None
    """Included; of a bevel or J that of its one face."""

    area: Quantity
    """Metal deposited, without a cap."""

    deduction: Quantity
    """Taken off the depth of each side."""

    depth: Quantity | None
    """Cut from each side."""

    enough: bool

    filler: DepositedMetal

    form: str

    gap: Quantity

    id: str | None
    """Id of /v1/preparations; null for a groove by its form alone."""

    land: Quantity | None

    ref: str
    """The standard's own reference."""

    root: str
    """How the root is made."""

    setback: Quantity | None
    """On each edge that is cut."""

    standard: str | None

    throat: Quantity
    """All sides together."""

    why: str | None
    """What it lacks; null where it is enough."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GrooveSizeHolesLimits(Result):
    """Null where none is ruled."""

    largest_leg: Quantity | None

    largest_width: Quantity | None

    least_filling: Quantity | None

    least_leg: Quantity | None

    least_pitch: Quantity | None

    least_pitch_along: Quantity | None

    least_width: Quantity | None

    longest: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GrooveSizeHoles(Result):
    """Plugs, slots, or fillets all round holes or slots."""

    area: Quantity
    """Effective area of one."""

    centre_line: Quantity | None
    """Effective length of a fillet."""

    count: int

    filling: Quantity | None
    """Null of a fillet."""

    leg: Quantity | None
    """Of a fillet."""

    length: Quantity

    limits: GrooveSizeHolesLimits
    """Null where none is ruled."""

    needed: int

    strength: Quantity
    """Of one, in shear."""

    throat: Quantity | None
    """Of a fillet."""

    width: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GrooveSizeRefused(Result):
    """Detail that does not fit."""

    id: str | None

    ref: str

    why: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GrooveSizeStrength(Result):
    """Design or allowable force per length of the joint, in the load's direction."""

    base_metal: tuple[Quantity, ...]

    weld: Quantity | None
    """Null where the parts rule."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GrooveSizeTee(Result):
    """Whether a T-butt counts as full strength."""

    full_strength: bool

    largest_unwelded: Quantity

    thickness: Quantity

    throats_together: Quantity

    unwelded: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GrooveSizeAnswer(Calculation):
    """Groove, flare, plug or slot weld to specify."""

    governs: Literal["load", "full-strength", "full-penetration", "minimum-throat", "base-metal", "preparation"]

    holes: GrooveSizeHoles | None

    minimum: GrooveThroat | None

    preparation: GroovePreparation | None

    preparations: tuple[GroovePreparation, ...]
    """Those that fit the joint: enough ones first, least metal first."""

    refused: tuple[GrooveSizeRefused, ...]
    """Details of the standard that do not fit the joint, and why."""

    required: GrooveThroat | None
    """What the weld metal needs."""

    specify: GrooveThroat | None

    strength: GrooveSizeStrength | None

    tee: GrooveSizeTee | None

    utilisation: float | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GrooveThroat(Result):
    """Size of a groove."""

    depth: Quantity | None
    """Depth cut from each side; null where none is cut to depth."""

    source: str

    throat: Quantity
    """All sides together; of a minimum, of each side."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GroupPointForce(Result):
    """Along each axis."""

    x: Quantity

    y: Quantity

    z: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class GroupPoint(Result):
    """Point of a group and the force per length on its weld."""

    force: GroupPointForce
    """Along each axis."""

    resultant: Quantity

    x: Quantity

    y: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatCarbonEquivalents(Result):
    """Of the parent."""

    ce: float | None

    cet: float | None

    pcm: float | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatCoolingTransitionThickness(Result):
    """Thickness over which heat flows in three dimensions."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatCooling(Result):
    """Cooling time t8/5."""

    flow: Literal["two-dimensional", "three-dimensional", "between"] | None

    time: TimeBand

    transition_thickness: HeatCoolingTransitionThickness | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatEnergy(Result):
    """Both conventions."""

    arc_energy: Quantity | None
    """Without k: AWS D1.1, ASME IX."""

    efficiency: float | None

    heat_input: Quantity | None
    """With k: EN 1011-1."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatHardnessBand(Result):
    """Both models, with 50 HV on either side."""

    least: float

    most: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatHardnessDueren(Result):
    """Hardness HV10 by one model, at the slowest and the fastest cooling, and of pure structures."""

    bainite: float

    least: float

    martensite: float

    most: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatHardnessYurioka(Result):
    """Hardness HV10 by one model, at the slowest and the fastest cooling, and of pure structures."""

    bainite: float

    least: float

    martensite: float

    most: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatHardness(Result):
    """Hardness HV10 beside the weld."""

    band: HeatHardnessBand
    """Both models, with 50 HV on either side."""

    dueren: HeatHardnessDueren
    """Hardness HV10 by one model, at the slowest and the fastest cooling, and of pure structures."""

    limit: float | None

    source: str | None

    standing: Literal["within", "over", "open"] | None

    yurioka: HeatHardnessYurioka
    """Hardness HV10 by one model, at the slowest and the fastest cooling, and of pure structures."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatLimitsArcEnergy(Result):
    """."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatLimitsHeatInput(Result):
    """."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatLimitsTravelSpeed(Result):
    """."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatLimits(Result):
    """What keeps the cooling time in the window."""

    arc_energy: HeatLimitsArcEnergy | None

    heat_input: HeatLimitsHeatInput

    travel_speed: HeatLimitsTravelSpeed | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class HeatAnswer(Calculation):
    """Heat of a pass."""

    carbon_equivalents: HeatCarbonEquivalents
    """Of the parent."""

    cooling: HeatCooling | None

    energy: HeatEnergy | None

    fillet: FilletHeat | None

    hardness: HeatHardness | None

    left_out: tuple[LeftOut, ...]

    limits: HeatLimits | None

    preheat: PreheatAnswer


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class IntermittentFillet(Result):
    """Intermittent fillet as asked for, and what would still do."""

    callout: WeldCallout | None

    count: int | None
    """Segments on one side, one at each end; null where the length is not known."""

    end_weld: Quantity
    """Least length of the weld at each end."""

    even_gap: Quantity | None
    """Gap that spaces them evenly."""

    gap: Quantity
    """Clear gap on one side; text rounded down."""

    largest_gap: Quantity | None
    """Gap at which the size specified still does."""

    limits: tuple[SpacingLimit, ...]

    pitch: Quantity
    """From centre to centre; text rounded down."""

    segment: Quantity

    shortest_segment: Quantity | None
    """Segment that still does at this gap."""

    strength: Quantity | None
    """Of one side, per length of the line."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class JointPlanRefused(Result):
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
class JointPlanAnswer(Calculation):
    """Every way to make one joint."""

    compared_by: tuple[Literal["filler", "time", "heat", "distortion"], ...]
    """Costs with weight that are known of every way."""

    quality: Literal["iso-5817-b", "iso-5817-c", "iso-5817-d", "aws-d1-1-2020"] | None

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
    """The first of the ways; null where none keeps the rules."""

    refused: tuple[JointPlanRefused, ...]

    ways: tuple[PlannedWay, ...]
    """Best first."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class LeastFillet(Result):
    """Least fillet by one rule that guards against quick chill."""

    enough: bool | None

    leg: Quantity

    rule: str

    source: str

    throat: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class LeftOut(Result):
    """A field that is null, by its path, and what it needs."""

    field: str

    reason: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class LengthBandLeftOut(Result):
    """Method that does not cover the joint."""

    method: str

    reason: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class LengthBandMethods(Result):
    """What one method gives."""

    method: str

    source: str

    sureness: str
    """How it came to us."""

    value: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class LengthBand(Result):
    """A length by several methods."""

    high: Quantity | None
    """Null, as low is, where no method covers the joint."""

    left_out: tuple[LengthBandLeftOut, ...]

    low: Quantity | None

    methods: tuple[LengthBandMethods, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class MassBand(Result):
    """From least to most; the same where nothing was assumed."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class MaterialsMaterialsBands(Result):
    """Strengths over a range of thickness."""

    tensile_strength: Quantity

    thickness_over: Quantity

    thickness_to: Quantity | None

    welded_tensile_strength: Quantity | None

    welded_yield_strength: Quantity | None

    yield_strength: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class MaterialsMaterials(Result):
    """Base metal with its strengths by thickness, over ... up to and including."""

    bands: tuple[MaterialsMaterialsBands, ...]

    beta_w: float | None

    family: str

    form: str

    id: str

    source: str

    standard: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class MaterialsAnswer(Answer):
    """Base metals."""

    materials: tuple[MaterialsMaterials, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class MoneyBand(Result):
    """From least to most; the same where nothing was assumed."""

    least: float

    most: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class OpenedAccountForce(Result):
    """Force on the lever for each of them."""

    breaking: Quantity

    breaking_at_most: Quantity

    first_yield: Quantity

    hinge: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class OpenedAccountMoment(Result):
    """Moment on the coupon: the root yields, the throat folds (both at its least), breaks, and breaks at the most."""

    breaking: Quantity

    breaking_at_most: Quantity

    first_yield: Quantity

    hinge: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class OpenedAccountThroat(Result):
    """Throat under the finish and the notch, as given and by its tolerances."""

    least: Quantity

    most: Quantity

    nominal: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class OpenedAccount(Result):
    """What one account of the throat takes to open."""

    force: OpenedAccountForce
    """Force on the lever for each of them."""

    governs: Literal["weld", "plate"]

    moment: OpenedAccountMoment
    """Moment on the coupon: the root yields, the throat folds (both at its least), breaks, and breaks at the most."""

    throat: OpenedAccountThroat
    """Throat under the finish and the notch, as given and by its tolerances."""

    verdict: Verdict


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Overweld(Result):
    """Metal against that of the flat equal-leg fillet required; negative where it is missing."""

    extra_area: Quantity

    extra_mass: Quantity

    metal_ratio: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PassCountsCounts(Result):
    """One way to count."""

    by: Literal["single-pass-limit", "pass-thickness", "layers", "bead-area", "handbook"]

    least: int

    most: int

    source: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PassCounts(Result):
    """Passes, from least to most, and every way they were counted."""

    counts: tuple[PassCountsCounts, ...]

    least: int

    most: int


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PlanCosts(Result):
    """What a way takes; null where it cannot be told."""

    distortion: Quantity | None
    """Angular change, at most."""

    filler: Quantity | None
    """Weld metal."""

    heat: Quantity | None
    """Arc energy put into the joint."""

    time: Quantity | None
    """On the clock, at most."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PlanHold(Result):
    """What each weld is held to; null where the way or the quality set has none."""

    least_leg: Quantity | None

    least_throat: Quantity | None

    leave_face_height: Quantity | None

    most_convexity: Quantity | None

    most_reinforcement: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PlanParts(Result):
    """Answers of the single resources, as each gives it; null where a way has no use for one."""

    bevel_depth: BevelDepthAnswer | None

    crack_risk: CrackRiskAnswer | None

    distortion: DistortionAnswer | None

    filler_quantity: FillerQuantityAnswer | None

    fillet_size: FilletSizeAnswer | None

    grind_allowance: GrindAllowanceAnswer | None

    groove_size: GrooveSizeAnswer | None

    heat: HeatAnswer | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PlannedWay(Result):
    """A way that keeps the rules."""

    budget: ThroatBudget | None

    chance_short: float | None

    costs: PlanCosts

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
    """Ways no worse in anything and better in something."""

    hold: PlanHold

    left_out: tuple[LeftOut, ...]
    """Resources that had no answer, and why."""

    parts: PlanParts | None
    """Null where the request did not ask for it."""

    rank: int
    """Equal scores share one."""

    score: float
    """Weighted mean of its costs, each over the least of any way."""

    size: str
    """What to weld and cut, in words."""

    verdicts: Mapping[str, Verdict]
    """Verdict of each single resource asked."""

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


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreheatAwsD11Printed(Result):
    """The row as printed in both units; they are not conversions."""

    celsius: Quantity

    fahrenheit: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreheatAwsD11(Result):
    """AWS D1.1, by category and thickest part."""

    category: str

    met: bool
    """Whether the plate is that warm when the pass begins."""

    printed: PreheatAwsD11Printed
    """The row as printed in both units; they are not conversions."""

    source: str

    temperature: Quantity

    thickest_part: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreheatMethodA(Result):
    """EN 1011-2 method A, as far as it is no chart."""

    free_of_preheat: bool | None

    hydrogen_scale: Literal["A", "B", "C", "D", "E"]

    source: str

    without_preheat_to: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreheatMethodB(Result):
    """EN 1011-2 method B."""

    met: bool
    """Whether the plate is that warm when the pass begins."""

    source: str

    temperature: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreheatSew088(Result):
    """SEW 088, method B with two other constants."""

    met: bool
    """Whether the plate is that warm when the pass begins."""

    source: str

    temperature: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreheatAnswer(Result):
    """Preheat by each rule that the request gives enough for."""

    aws_d1_1: PreheatAwsD11 | None

    method_a: PreheatMethodA | None

    method_b: PreheatMethodB | None

    sew_088: PreheatSew088 | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreparationsPreparationsAngle(Result):
    """Limits."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreparationsPreparationsGap(Result):
    """Limits."""

    least: Quantity | None

    most: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreparationsPreparationsLand(Result):
    """Limits."""

    least: Quantity | None

    most: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreparationsPreparationsThickness(Result):
    """Limits."""

    least: Quantity | None

    most: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreparationsPreparations(Result):
    """Preparation, with the limits it holds in; null where the standard sets none."""

    angle: PreparationsPreparationsAngle | None

    form: str

    gap: PreparationsPreparationsGap | None

    gap_share_of_thickness: float | None

    id: str

    joints: tuple[str, ...]

    land: PreparationsPreparationsLand | None

    orientations: tuple[str, ...]

    penetration: Literal["full", "partial"]

    processes: tuple[str, ...]

    ref: str
    """The standard's own reference."""

    root: str
    """How the root is welded."""

    source: str

    standard: str

    thickness: PreparationsPreparationsThickness
    """Limits."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class PreparationsAnswer(Answer):
    """Preparations of grooves."""

    preparations: tuple[PreparationsPreparations, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ProcessesPositions(Result):
    """Position."""

    equivalents: tuple[str, ...]

    id: str

    orientation: str

    source: str

    title: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ProcessesProcessesRatesBeadArea(Result):
    """Figure of one publication."""

    least: Quantity

    most: Quantity

    setting: str
    """What it was found with."""

    source: str

    typical: Quantity | None

    usual: bool
    """Whether an estimate that lacks the figure spans it."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ProcessesProcessesRatesDepositionRate(Result):
    """Figure of one publication."""

    least: Quantity

    most: Quantity

    setting: str
    """What it was found with."""

    source: str

    typical: Quantity | None

    usual: bool
    """Whether an estimate that lacks the figure spans it."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ProcessesProcessesRatesEfficiency(Result):
    """Figure of one publication."""

    least: float

    most: float

    setting: str
    """What it was found with."""

    source: str

    typical: float | None

    usual: bool
    """Whether an estimate that lacks the figure spans it."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ProcessesProcessesRatesGasFlow(Result):
    """Figure of one publication."""

    least: Quantity

    most: Quantity

    setting: str
    """What it was found with."""

    source: str

    typical: Quantity | None

    usual: bool
    """Whether an estimate that lacks the figure spans it."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ProcessesProcessesRatesOperatorFactor(Result):
    """Figure of one publication."""

    least: float

    most: float

    setting: str
    """What it was found with."""

    source: str

    typical: float | None

    usual: bool
    """Whether an estimate that lacks the figure spans it."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ProcessesProcessesRates(Result):
    """What publications say it takes; an estimate spans the usual ones."""

    bead_area: tuple[ProcessesProcessesRatesBeadArea, ...]

    deposition_rate: tuple[ProcessesProcessesRatesDepositionRate, ...]

    efficiency: tuple[ProcessesProcessesRatesEfficiency, ...]

    gas_flow: tuple[ProcessesProcessesRatesGasFlow, ...]

    operator_factor: tuple[ProcessesProcessesRatesOperatorFactor, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ProcessesProcesses(Result):
    """Process."""

    id: str

    iso_4063: tuple[str, ...]

    rates: ProcessesProcessesRates
    """What publications say it takes; an estimate spans the usual ones."""

    source: str

    title: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ProcessesAnswer(Answer):
    """Welding processes and positions, each with every code it answers to."""

    positions: tuple[ProcessesPositions, ...]

    processes: tuple[ProcessesProcesses, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Provenance(Result):
    """What the answer comes from."""

    api_version: str

    clauses: tuple[str, ...]

    editions: tuple[str, ...]

    engine_version: str

    fingerprint: str
    """SHA-256 of the request in engine units with its defaults filled in."""

    parameters: Mapping[str, float]

    rule_set: str | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class QualityLimit(Result):
    """One limit of the level or code, and how the weld stands against it."""

    allowed: Quantity | None
    """Null where nothing is permitted, or without limit."""

    extent: Quantity | None
    """Length told; null where none was, or no length counts."""

    extent_allowed: Quantity | None
    """Length allowed; null where no length counts."""

    name: str

    note: str

    source: str

    value: Quantity | None
    """Worst by the gauge; null for what is there or not."""

    verdict: Literal["within", "over", "under", "not-permitted"]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class RateFigure(Result):
    """Figure, and who says so."""

    least: Quantity

    most: Quantity

    source: str
    """"given", or a publication."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Remedy(Result):
    """What would keep the throat."""

    counts: tuple[str, ...]

    depth: Quantity | None = None

    do: Literal["bevel", "leave-face", "smaller-radius", "weld-second-side"]

    face_height: Quantity | None = None

    radius: Quantity | None = None

    remaining: Quantity

    throat: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class RuleSetsQualitySetsLimits(Result):
    """Limit of scope."""

    source: str

    text: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class RuleSetsQualitySets(Result):
    """Quality level or code that a weld as made is held to."""

    clauses: tuple[str, ...]

    editions: tuple[str, ...]

    id: str

    limits: tuple[RuleSetsQualitySetsLimits, ...]

    title: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class RuleSetsRuleSetsLimits(Result):
    """Limit of scope."""

    source: str

    text: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class RuleSetsRuleSets(Result):
    """Rule set."""

    clauses: tuple[str, ...]

    editions: tuple[str, ...]

    id: str

    limits: tuple[RuleSetsRuleSetsLimits, ...]

    parameters: Mapping[str, float]

    title: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class RuleSetsAnswer(Answer):
    """Rule sets, and quality sets, with their clauses and limits."""

    quality_sets: tuple[RuleSetsQualitySets, ...]

    rule_sets: tuple[RuleSetsRuleSets, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ServiceRuleSets(Result):
    """Rule set."""

    id: str

    title: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ServiceAnswer(Answer):
    """What this service is."""

    api_version: str

    engine_version: str

    rule_sets: tuple[ServiceRuleSets, ...]

    service: str

    service_version: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ShareFigure(Result):
    """Figure, and who says so."""

    least: float

    most: float

    source: str
    """"given", or a publication."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class SpacingLimit(Result):
    """One limit of an intermittent fillet."""

    allowed: Quantity

    bound: Literal["least", "most"]

    name: Literal["segment", "gap", "nearer-gap", "pitch"]

    source: str

    value: Quantity

    verdict: Literal["within", "short", "over"]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class SpecifiedFilletSize(Result):
    """Size to specify."""

    leg: Quantity

    passes: int | None
    """Least number of passes."""

    source: str

    throat: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class TensionMemberStrength(Result):
    """Tension member held by longitudinal welds alone."""

    by_rupture: Quantity

    by_yield: Quantity

    effective_area: Quantity

    shear_lag: float
    """Factor U."""

    utilisation: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ThroatAsWelded(Result):
    """Throat of a weld as welded: as drawn through its legs or thickness; less what is missing, and with all
    penetration; with what is measured or proven; with what is proven, which strength and the verdict rest on;
    that at the worst of the tolerances; and the one required.
    """

    creditable: Quantity

    effective: Quantity

    physical: Quantity

    required: Quantity

    theoretical: Quantity

    worst_case: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ThroatBudget(Result):
    """Contributions to the throat, adding up to as_welded, and what a finish leaves of it."""

    as_welded: Quantity

    cap: Quantity

    deduction: Quantity

    face: Quantity

    margin: Quantity

    penetration: Quantity

    prepared_depth: Quantity

    remaining: Quantity

    remaining_root_sum_square: Quantity

    remaining_worst_case: Quantity

    removed: Quantity

    required: Quantity

    theoretical: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class TimeBand(Result):
    """Times between which the true one lies."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ToleranceCheckClasses(Result):
    """Plus or minus of one class."""

    class_: str

    printed_rise: float | None = None
    """Rise as the table prints it, rounded; both must be kept."""

    rise: float | None = None
    """Tangent of the angle."""

    tolerance: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class ToleranceCheck(Result):
    """One estimate against every class of its table, on the upper end of its band."""

    asked: str | None

    classes: tuple[ToleranceCheckClasses, ...]

    keeps: str | None
    """Tightest class kept; null when none is."""

    nominal: Quantity

    quantity: str

    table: str

    value: Quantity

    verdict: Literal["within", "out"] | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class VolumeBand(Result):
    """From least to most; the same where nothing was assumed."""

    least: Quantity

    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldAction(Result):
    """What to do with the weld."""

    do: Literal[
        "accept",
        "close-gap",
        "realign",
        "gouge-and-reweld",
        "add-root-pass",
        "add-pass",
        "fill-crater",
        "dress-face",
        "dress-root",
        "dress-toe",
        "repair-undercut",
    ]

    leg: Quantity | None = None
    """Leg to weld up to, rounded up to the step."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldBalance(Result):
    """Two side welds balanced about a member's centroid, the first first."""

    forces: tuple[Quantity, ...]

    least_lengths: tuple[Quantity, ...] | None
    """What the size specified needs."""

    lengths: tuple[Quantity, ...]
    """Shares of the length given."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldCallout(Result):
    """Weld as drawing text."""

    aws_a2_4: str

    iso_2553: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldCost(Result):
    """Cost by its parts; a part without a price is null and not in the total."""

    consumable: MoneyBand | None

    counts: tuple[str, ...]
    """Parts that have a price."""

    currency: str

    gas: MoneyBand | None

    labour: MoneyBand | None

    missing: tuple[str, ...]
    """Those of them that cannot be told."""

    power: MoneyBand | None

    total: MoneyBand | None
    """Null where a part that has a price cannot be told."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldEstimateParts(Result):
    """Part of the section."""

    area: Quantity

    part: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldEstimate(Result):
    """Estimate of one entry, in the order of the request."""

    arc_time: WorkingTimeBand | None
    """While the arc burns."""

    area: Quantity
    """Section as described, before its excess."""

    consumable: MassBand | None
    """What to buy."""

    cost: WeldCost | None
    """At the caller's prices; null without any."""

    deposited: Quantity
    """Weld metal, excess and all."""

    energy: EnergyBand | None
    """From the mains."""

    filler: str | None

    gas: VolumeBand | None
    """Shielding gas while the arc burns."""

    kind: str
    """Kind of its shape."""

    length: Quantity
    """Of all its welds."""

    mark: str | None = None
    """The entry's own mark."""

    mass_per_length: Quantity
    """Excess and all."""

    parts: tuple[WeldEstimateParts, ...]
    """They add up to the area; that of a hollow face is negative."""

    passes: PassCounts | None

    process: str | None

    rests_on: EstimateBasis

    working_time: WorkingTimeBand | None
    """On the clock."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldGroupCentre(Result):
    """Instantaneous centre; null for the elastic method or a translation."""

    x: Quantity

    y: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldGroupLoadPerGroupForce(Result):
    """Along each axis."""

    x: Quantity

    y: Quantity

    z: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldGroupLoadPerGroupMoment(Result):
    """About each axis."""

    x: Quantity

    y: Quantity

    z: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldGroupLoadPerGroup(Result):
    """Load of one group, through its centroid."""

    force: WeldGroupLoadPerGroupForce
    """Along each axis."""

    moment: WeldGroupLoadPerGroupMoment
    """About each axis."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldGroupPropertiesCentroid(Result):
    """From the origin of the group."""

    x: Quantity

    y: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldGroupProperties(Result):
    """One group as lines of unit throat: its length, centroid, and second moments about it."""

    centroid: WeldGroupPropertiesCentroid
    """From the origin of the group."""

    i_x: Quantity

    i_xy: Quantity

    i_y: Quantity

    j: Quantity

    length: Quantity


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldGroupStrength(Result):
    """Strength of all groups at the size given, or else at the next step up, as its shortest run counts."""

    factor: float
    """Multiple of the load that is carried."""

    force: Quantity
    """Force carried along the load."""

    moment: Quantity
    """Moment about z carried with it."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WeldGroupAnswer(Calculation):
    """Size and strength of a weld group."""

    centre: WeldGroupCentre | None

    critical: GroupPoint | None

    efficiency: float
    """Share of the strength of the same length loaded along itself."""

    equivalent_force: Quantity
    """Force per length at the critical point, or along a weld that is used as much."""

    load_per_group: WeldGroupLoadPerGroup
    """Load of one group, through its centroid."""

    method: Literal["elastic", "instantaneous-centre"]

    minimum: FilletSize

    points: tuple[GroupPoint, ...]
    """Ends of every line; elastic method only."""

    properties: WeldGroupProperties
    """One group as lines of unit throat: its length, centroid, and second moments about it."""

    required: FilletSize

    specify: FilletSize | None

    strength: WeldGroupStrength
    """Strength of all groups at the size given, or else at the next step up, as its shortest run counts."""

    utilisation: float | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WorkingStepWith(Result):
    """Argument."""

    unit: str

    value: float | bool


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WorkingStep(Result):
    """One step: a formula, what went in and what came out. A step's symbol is an argument of a later one."""

    expression: str

    meaning: str

    source: str

    symbol: str

    unit: str

    value: float

    with_: Mapping[str, WorkingStepWith]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class WorkingTimeBand(Result):
    """From least to most; the same where nothing was assumed."""

    least: Quantity

    most: Quantity


Verdict: TypeAlias = Literal[
    "enough",
    "short",
    "short-if-flush",
    "cannot-be-reached",
    "full-penetration-needed",
    "over",
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
