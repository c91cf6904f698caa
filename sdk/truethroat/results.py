"""What the service answers, as frozen classes.

An answer keeps everything the service sent in `raw`, fields unknown to this version among it. Lengths, forces and so on
are `Quantity`: in the units the request asked for, and never converted here.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from truethroat.decoding import ReadOnly, encode
from truethroat.quantity import Quantity

__all__ = [
    "Acceptance",
    "Alternative",
    "Answer",
    "AsWelded",
    "BalancedThroat",
    "BeadShape",
    "BevelDepth",
    "BreakTest",
    "Budget",
    "Calculation",
    "Callout",
    "CarbonEquivalents",
    "Caution",
    "Components",
    "ConcentricGroup",
    "Cooling",
    "CouponCheck",
    "CrackFactor",
    "CrackIndex",
    "CrackRisk",
    "Creditable",
    "DensityFigure",
    "Distortion",
    "DistortionAlternative",
    "DistortionBand",
    "DistortionEstimate",
    "DistortionSpan",
    "EffectiveLength",
    "EstimateBasis",
    "EstimateGroup",
    "EstimateTotals",
    "Figure",
    "FillerMass",
    "FillerMetal",
    "FillerMetalList",
    "FillerQuantity",
    "FilletBead",
    "FilletHeat",
    "FilletSize",
    "FlangeWidth",
    "FoldingPlate",
    "GrindAllowance",
    "GroovePreparation",
    "GroovePreparationList",
    "GrooveSize",
    "GrooveStrength",
    "GrooveThroat",
    "GroupLoad",
    "GroupPoint",
    "GroupProperties",
    "GroupStrength",
    "Hardness",
    "HardnessModel",
    "Heat",
    "HeatLimits",
    "HoleLimits",
    "Holes",
    "IntermittentFillet",
    "JointPlan",
    "LeastFillet",
    "LeftOut",
    "Limit",
    "Material",
    "MaterialList",
    "MethodA",
    "MethodLeftOut",
    "NumberBand",
    "OpenedAccount",
    "OpeningStages",
    "Operand",
    "Oversize",
    "Overweld",
    "PackedFillet",
    "PassCount",
    "PassCounts",
    "PassEnergy",
    "Place",
    "PlanCosts",
    "PlanHold",
    "PlanParts",
    "PlannedWay",
    "Position",
    "Preheat",
    "PreheatD11",
    "PreheatRules",
    "PrintedPreheat",
    "Process",
    "ProcessList",
    "Provenance",
    "QualityLimit",
    "QualitySet",
    "QuantityBand",
    "RefusedPreparation",
    "RefusedWay",
    "Remedy",
    "Result",
    "RuleSet",
    "RuleSetList",
    "RuleSetName",
    "SectionPart",
    "Service",
    "ShareFigure",
    "ShrinkingWeld",
    "SizeStep",
    "SizedPreparation",
    "SpacingLimit",
    "SpanRatio",
    "StandardCoupon",
    "Step",
    "Strength",
    "TeeButt",
    "TensionMemberStrength",
    "ThroatAsWelded",
    "ThroatRange",
    "ToleranceCheck",
    "ToleranceClass",
    "WeldAction",
    "WeldBalance",
    "WeldCost",
    "WeldEstimate",
    "WeldGroup",
]


class Result:
    """Anything that came in an answer."""

    __slots__ = ()

    def to_dict(self) -> dict[str, Any]:
        """Give the fields as plain dictionaries and lists, by the names they have on the wire."""
        document: dict[str, Any] = encode(self)
        return document


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer(Result):
    """What came with everything the service said about it, in `raw`."""

    raw: ReadOnly = field(repr=False, compare=False)

    def to_dict(self) -> dict[str, Any]:
        """Give all that the service sent, as plain dictionaries and lists."""
        return self.raw.to_dict()


@dataclass(frozen=True, slots=True, kw_only=True)
class Caution(Result):
    """Something to know before relying on the answer."""

    code: str
    text: str
    source: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Provenance(Result):
    """Where the answer comes from: rules, editions, versions, and a fingerprint of the request as understood."""

    rule_set: str | None = None
    clauses: tuple[str, ...]
    editions: tuple[str, ...]
    parameters: Mapping[str, Any]
    engine_version: str
    api_version: str
    fingerprint: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Operand(Result):
    """What was put into a formula for one of its symbols: a number with its unit, or true or false."""

    value: float | bool
    unit: str

    def __str__(self) -> str:
        return f"{str(self.value).removesuffix('.0')} {self.unit}".rstrip()


@dataclass(frozen=True, slots=True, kw_only=True)
class Step(Result):
    """One line of the working: the formula, the values put in, and what came out."""

    symbol: str
    meaning: str
    expression: str
    with_: Mapping[str, Operand]
    value: float | bool
    unit: str
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Calculation(Answer):
    """What every calculation answers."""

    verdict: str
    reasons: tuple[str, ...]
    cautions: tuple[Caution, ...]
    provenance: Provenance
    mark: str | None = None
    working: tuple[Step, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class SizeStep(Result):
    """A fillet's size, as leg and as throat, and the rule that gives it."""

    leg: Quantity
    throat: Quantity
    source: str
    passes: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Strength(Result):
    """Force per length that one weld, and the metal of each part beside it, can carry."""

    weld: Quantity
    base_metal: tuple[Quantity, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class EffectiveLength(Result):
    """The length of a weld as given, as it counts, and the ratio."""

    given: Quantity
    effective: Quantity
    factor: float


@dataclass(frozen=True, slots=True, kw_only=True)
class SpacingLimit(Result):
    """One limit of an intermittent fillet; `bound` says whether `allowed` is the least or the most."""

    name: str
    value: Quantity
    bound: str
    allowed: Quantity
    verdict: str
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Callout(Result):
    """What the drawing says: the weld, or the preparation, as text."""

    iso_2553: str
    aws_a2_4: str


@dataclass(frozen=True, slots=True, kw_only=True)
class IntermittentFillet(Result):
    """Segments and gaps as asked for, how they are laid out, and what would still do."""

    segment: Quantity
    gap: Quantity
    pitch: Quantity
    count: int | None = None
    even_gap: Quantity | None = None
    end_weld: Quantity
    strength: Quantity | None = None
    largest_gap: Quantity | None = None
    shortest_segment: Quantity | None = None
    limits: tuple[SpacingLimit, ...]
    callout: Callout | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ConcentricGroup(Result):
    """Strength of welds along and across one force, as a plain sum and with the increase across."""

    equivalent_length: Quantity
    plain_sum: Quantity
    weighted_sum: Quantity | None = None
    counts: str
    strength: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class WeldBalance(Result):
    """Force and length of each of two side welds about a member's centroid, the first first."""

    forces: tuple[Quantity, ...]
    lengths: tuple[Quantity, ...]
    least_lengths: tuple[Quantity, ...] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class TensionMemberStrength(Result):
    """Strength of a tension member held by longitudinal welds alone, and its shear lag."""

    shear_lag: float
    effective_area: Quantity
    by_yield: Quantity
    by_rupture: Quantity
    utilisation: float


@dataclass(frozen=True, slots=True, kw_only=True)
class FlangeWidth(Result):
    """How much of a plate an unstiffened flange holds, and whether it must be stiffened."""

    share: float
    effective_width: Quantity
    least_width: Quantity
    resistance: Quantity
    stiffen: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class PackedFillet(Result):
    """Packing under a fillet, what it adds to the leg, and whether the leg reaches over it or joins each part to it."""

    thickness: Quantity
    added: Quantity
    welds: str


@dataclass(frozen=True, slots=True, kw_only=True)
class FilletSize(Calculation):
    """The fillet weld to specify, and what decided it."""

    required: SizeStep
    minimum: SizeStep
    maximum: SizeStep | None = None
    specify: SizeStep | None = None
    governs: str
    utilisation: float | None = None
    strength: Strength | None = None
    length: EffectiveLength | None = None
    z_loss: Quantity | None = None
    packing: PackedFillet | None = None
    intermittent: IntermittentFillet | None = None
    concentric: ConcentricGroup | None = None
    balance: WeldBalance | None = None
    tension_member: TensionMemberStrength | None = None
    unstiffened_flange: FlangeWidth | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class GrooveThroat(Result):
    """A groove's size: throat of all sides together (of a minimum, of each side), and depth cut from each side."""

    throat: Quantity
    depth: Quantity | None = None
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class GrooveStrength(Result):
    """Force per length that the weld (None where the parts rule), and the metal of each part beside it, can carry."""

    weld: Quantity | None = None
    base_metal: tuple[Quantity, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class SizedPreparation(Result):
    """A preparation as it would be made; `why` says what it lacks."""

    id: str | None = None
    ref: str
    standard: str | None = None
    form: str
    root: str
    angle: Quantity | None = None
    gap: Quantity
    land: Quantity | None = None
    depth: Quantity | None = None
    setback: Quantity | None = None
    deduction: Quantity
    throat: Quantity
    area: Quantity
    filler: FillerMass
    enough: bool
    why: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class RefusedPreparation(Result):
    """A preparation that does not fit the joint, and why."""

    id: str | None = None
    ref: str
    why: str


@dataclass(frozen=True, slots=True, kw_only=True)
class HoleLimits(Result):
    """Limits of a weld in a hole or slot; None where none is ruled."""

    least_width: Quantity | None = None
    largest_width: Quantity | None = None
    longest: Quantity | None = None
    least_filling: Quantity | None = None
    least_leg: Quantity | None = None
    largest_leg: Quantity | None = None
    least_pitch: Quantity | None = None
    least_pitch_along: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Holes(Result):
    """Plugs, slots or fillets all round: area and strength of one, how many the force needs, and how many there are."""

    width: Quantity
    length: Quantity
    filling: Quantity | None = None
    leg: Quantity | None = None
    throat: Quantity | None = None
    centre_line: Quantity | None = None
    area: Quantity
    strength: Quantity
    needed: int
    count: int
    limits: HoleLimits


@dataclass(frozen=True, slots=True, kw_only=True)
class TeeButt(Result):
    """Whether a T-butt counts as full strength, and by which lengths."""

    throats_together: Quantity
    thickness: Quantity
    unwelded: Quantity
    largest_unwelded: Quantity
    full_strength: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class GrooveSize(Calculation):
    """The groove, flare, plug or slot weld to specify, the preparation it needs, and what decided it."""

    required: GrooveThroat | None = None
    minimum: GrooveThroat | None = None
    specify: GrooveThroat | None = None
    governs: str
    utilisation: float | None = None
    strength: GrooveStrength | None = None
    preparation: SizedPreparation | None = None
    preparations: tuple[SizedPreparation, ...]
    refused: tuple[RefusedPreparation, ...]
    holes: Holes | None = None
    tee: TeeButt | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Budget(Result):
    """Where the throat comes from and where it goes; the lines add up to `as_welded`."""

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


@dataclass(frozen=True, slots=True, kw_only=True)
class Remedy(Result):
    """One way to keep the throat: `do` says which, one of the sizes how much, `remaining` what it leaves."""

    do: str
    depth: Quantity | None = None
    face_height: Quantity | None = None
    radius: Quantity | None = None
    throat: Quantity | None = None
    remaining: Quantity
    counts: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Creditable(Budget):
    """A budget of only the lines that someone vouches for, with its own verdict and what follows from it."""

    verdict: str
    reasons: tuple[str, ...] = ()
    allowance: Quantity
    leave: Quantity | None = None
    largest_radius: Quantity | None = None
    remedies: tuple[Remedy, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class GrindAllowance(Calculation):
    """How much of a weld may come off, and how much must stay."""

    budget: Budget
    allowance: Quantity
    leave: Quantity | None = None
    largest_radius: Quantity | None = None
    judged_on: str
    remedies: tuple[Remedy, ...]
    creditable: Creditable


@dataclass(frozen=True, slots=True, kw_only=True)
class FillerMass(Result):
    """Weld metal per length of seam."""

    mass_per_length: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class Alternative(Result):
    """Another way to the same throat, and what it takes."""

    do: str
    size: Quantity
    area: Quantity | None = None
    filler: FillerMass | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class BevelDepth(Calculation):
    """How deep to cut the edge so that the finished seam keeps its throat."""

    depth: Quantity | None = None
    setback: Quantity | None = None
    land: Quantity | None = None
    deduction: Quantity
    budget: Budget | None = None
    area: Quantity | None = None
    filler: FillerMass | None = None
    callout: Callout | None = None
    alternatives: tuple[Alternative, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ThroatAsWelded(Result):
    """Throat of a weld as welded: as drawn, then with all, with measured or proven, and with proven penetration.

    `effective` counts only what is proven; it, at the worst of the tolerances, is what the verdict rests on.
    """

    theoretical: Quantity
    physical: Quantity
    creditable: Quantity
    effective: Quantity
    worst_case: Quantity
    required: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class QualityLimit(Result):
    """One limit of a quality level; `allowed` is None where nothing is permitted, or where there is no limit.

    `value` is None for what is there or not, such as a crack; `extent_allowed` where no length counts.
    """

    name: str
    value: Quantity | None = None
    allowed: Quantity | None = None
    extent: Quantity | None = None
    extent_allowed: Quantity | None = None
    verdict: str
    note: str
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Overweld(Result):
    """Metal there is against the metal required."""

    metal_ratio: float
    extra_area: Quantity
    extra_mass: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class WeldAction(Result):
    """What to do with a weld: `do` says which, `leg` how large to make it."""

    do: str
    leg: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class AsWelded(Calculation):
    """What a weld is worth as welded; a butt has no `size` and no `overweld`."""

    throat: ThroatAsWelded
    size: Quantity | None = None
    limits: tuple[QualityLimit, ...]
    quality_kept: bool
    strength_left: float
    overweld: Overweld | None = None
    actions: tuple[WeldAction, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class WeldCost(Result):
    """Cost by its parts, and which of them the total counts; `missing` are those that could not be told."""

    currency: str
    labour: NumberBand | None = None
    consumable: NumberBand | None = None
    gas: NumberBand | None = None
    power: NumberBand | None = None
    total: NumberBand | None = None
    counts: tuple[str, ...]
    missing: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class PassCount(Result):
    """One way to count passes, and the rule."""

    by: str
    least: int
    most: int
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PassCounts(Result):
    """Passes from least to most, and every way they were counted."""

    least: int
    most: int
    counts: tuple[PassCount, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class DensityFigure(Result):
    """Density of the weld metal, and who says so."""

    value: Quantity
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Figure(Result):
    """A figure from least to most, and who says so: "given", or a publication."""

    least: Quantity
    most: Quantity
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ShareFigure(Result):
    """A share from least to most, and who says so: "given", or a publication."""

    least: float
    most: float
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class EstimateBasis(Result):
    """What an estimate rests on."""

    density: DensityFigure
    efficiency: ShareFigure | None = None
    deposition_rate: Figure | None = None
    operator_factor: ShareFigure | None = None
    gas_flow: Figure | None = None
    bead_area: Figure | None = None
    source_efficiency: ShareFigure | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SectionPart(Result):
    """A part of a weld's section."""

    part: str
    area: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class WeldEstimate(Result):
    """What one entry's welds take."""

    mark: str | None = None
    kind: str
    filler: str | None = None
    process: str | None = None
    area: Quantity
    parts: tuple[SectionPart, ...]
    length: Quantity
    mass_per_length: Quantity
    deposited: Quantity
    consumable: QuantityBand | None = None
    arc_time: QuantityBand | None = None
    working_time: QuantityBand | None = None
    gas: QuantityBand | None = None
    energy: QuantityBand | None = None
    cost: WeldCost | None = None
    passes: PassCounts | None = None
    rests_on: EstimateBasis


@dataclass(frozen=True, slots=True, kw_only=True)
class EstimateTotals(Result):
    """Sums over welds; None where one of the summands is not known."""

    count: int
    length: Quantity
    deposited: Quantity
    consumable: QuantityBand | None = None
    arc_time: QuantityBand | None = None
    working_time: QuantityBand | None = None
    gas: QuantityBand | None = None
    energy: QuantityBand | None = None
    cost: WeldCost | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class EstimateGroup(EstimateTotals):
    """Sums over the welds of one filler with one process."""

    filler: str | None = None
    process: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FillerQuantity(Calculation):
    """What welds take in metal, time, gas, energy and money."""

    welds: tuple[WeldEstimate, ...]
    totals: EstimateTotals
    groups: tuple[EstimateGroup, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class LeftOut(Result):
    """A field that is None, by its path in the answer, and what it needs."""

    field: str
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class QuantityBand(Result):
    """Two quantities between which the true one lies, or may lie."""

    least: Quantity
    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class NumberBand(Result):
    """Two numbers between which the true one lies."""

    least: float
    most: float


@dataclass(frozen=True, slots=True, kw_only=True)
class PassEnergy(Result):
    """Energy of a pass: `arc_energy` without an efficiency (AWS, ASME), `heat_input` with it (EN, ISO)."""

    arc_energy: Quantity | None = None
    heat_input: Quantity | None = None
    efficiency: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Cooling(Result):
    """Cooling time from 800 to 500 degC; `flow` is None when it was measured."""

    time: QuantityBand
    flow: str | None = None
    transition_thickness: QuantityBand | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatLimits(Result):
    """What keeps the cooling time in its window."""

    heat_input: QuantityBand
    arc_energy: QuantityBand | None = None
    travel_speed: QuantityBand | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class CarbonEquivalents(Result):
    """Carbon equivalents of the parent steel, as far as its composition is known."""

    ce: float | None = None
    cet: float | None = None
    pcm: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class MethodA(Result):
    """EN 1011-2 method A, as far as it is no chart."""

    hydrogen_scale: str
    without_preheat_to: Quantity | None = None
    free_of_preheat: bool | None = None
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Preheat(Result):
    """Preheat by one rule, and whether the plate has it."""

    temperature: Quantity
    met: bool
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintedPreheat(Result):
    """A row of preheats as printed in both units."""

    fahrenheit: Quantity
    celsius: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class PreheatD11(Result):
    """Preheat of AWS D1.1, and whether the plate has it."""

    temperature: Quantity
    met: bool
    source: str
    category: str
    printed: PrintedPreheat
    thickest_part: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class PreheatRules(Result):
    """Preheat by each rule; None where the request does not give what the rule goes by."""

    method_a: MethodA | None = None
    method_b: Preheat | None = None
    sew_088: Preheat | None = None
    aws_d1_1: PreheatD11 | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class HardnessModel(Result):
    """Hardness HV10 by one model, and of pure structures."""

    least: float
    most: float
    martensite: float
    bainite: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Hardness(Result):
    """Hardness HV10 beside the weld; `standing` holds the band against `limit`."""

    dueren: HardnessModel
    yurioka: HardnessModel
    band: NumberBand
    limit: float | None = None
    standing: str | None = None
    source: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FilletBead(Result):
    """The bead that a deposition rate lays."""

    area: Quantity
    leg: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class Oversize(Result):
    """A leg laid against the leg required."""

    required_arc_energy: Quantity
    heat_ratio: float
    cooling_time_required: QuantityBand | None = None
    cooling_time_laid: QuantityBand | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FilletHeat(Result):
    """Leg of a single-pass fillet against arc energy."""

    usual_leg: Quantity | None = None
    bead: FilletBead | None = None
    usual_arc_energy: Quantity | None = None
    oversize: Oversize | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Heat(Calculation):
    """Heat of a pass and what it does to the steel; what is None is in `left_out` with what it needs."""

    energy: PassEnergy | None = None
    cooling: Cooling | None = None
    limits: HeatLimits | None = None
    carbon_equivalents: CarbonEquivalents
    preheat: PreheatRules
    hardness: Hardness | None = None
    fillet: FilletHeat | None = None
    left_out: tuple[LeftOut, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class BeadShape(Result):
    """Shape of a bead."""

    width: Quantity
    depth: Quantity
    width_to_depth: float
    least_width_to_depth: float
    target_width_to_depth: float
    pass_ratio: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class CrackIndex(Result):
    """Units of crack susceptibility of the weld metal, and what they are held against."""

    ucs: float
    carbon_counted: float
    critical: float
    high_resistance_below: float
    low_resistance_above: float
    sulphur_and_phosphorus: float
    most_sulphur_and_phosphorus: float


@dataclass(frozen=True, slots=True, kw_only=True)
class LeastFillet(Result):
    """Least fillet by one rule that guards against quick chill."""

    rule: str
    leg: Quantity
    throat: Quantity
    enough: bool | None = None
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CrackFactor(Result):
    """One reason to expect a crack, or none; `change` is None when nothing need change."""

    name: str
    grade: str
    reason: str
    change: str | None = None
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CrackRisk(Calculation):
    """How likely a pass is to crack; the verdict is the worst grade of `factors`."""

    shape: BeadShape | None = None
    index: CrackIndex | None = None
    least_sizes: tuple[LeastFillet, ...]
    factors: tuple[CrackFactor, ...]
    left_out: tuple[LeftOut, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class DistortionEstimate(Result):
    """What one method gives, and how the method came to the service."""

    method: str
    value: Quantity
    source: str
    sureness: str


@dataclass(frozen=True, slots=True, kw_only=True)
class MethodLeftOut(Result):
    """A method that does not cover the joint, and why."""

    method: str
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class DistortionBand(Result):
    """One quantity by its methods; `low` and `high` are None where none covers the joint."""

    low: Quantity | None = None
    high: Quantity | None = None
    methods: tuple[DistortionEstimate, ...]
    left_out: tuple[MethodLeftOut, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ShrinkingWeld(Result):
    """The weld metal that shrinks: area of one weld, their number, the share of the length welded."""

    area: Quantity
    welds: int
    welded_share: float


@dataclass(frozen=True, slots=True, kw_only=True)
class ToleranceClass(Result):
    """Plus or minus of one class; of an angle also its tangent, exact and as the standard prints it."""

    class_: str
    tolerance: Quantity
    rise: float | None = None
    printed_rise: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ToleranceCheck(Result):
    """One estimate against every class of its table, on the upper end of its band."""

    quantity: str
    nominal: Quantity
    value: Quantity
    classes: tuple[ToleranceClass, ...]
    keeps: str | None = None
    asked: str | None = None
    verdict: str | None = None
    table: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SpanRatio(Result):
    """A span over that of the joint asked about, method by method."""

    low: float
    high: float


@dataclass(frozen=True, slots=True, kw_only=True)
class DistortionSpan(Result):
    """Least and greatest of the methods; `ratio` is None where no method covers both joints."""

    low: Quantity
    high: Quantity
    ratio: SpanRatio | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class DistortionAlternative(Result):
    """Another way to weld the joint: `do` says which, one of the sizes how large."""

    do: str
    steps: int | None = None
    leg: Quantity | None = None
    root_opening: Quantity | None = None
    depth: Quantity | None = None
    metal_ratio: float
    strength_ratio: float
    transverse: DistortionSpan | None = None
    longitudinal: DistortionSpan | None = None
    angular: DistortionSpan | None = None
    edge_lift: DistortionSpan | None = None
    bowing: DistortionSpan | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Distortion(Calculation):
    """How a joint shrinks and turns when welded."""

    transverse: DistortionBand
    longitudinal: DistortionBand
    angular: DistortionBand
    edge_lift: DistortionBand
    bowing: DistortionBand
    restrained_angular: DistortionBand | None = None
    weld: ShrinkingWeld
    iso_13920: tuple[ToleranceCheck, ...]
    alternatives: tuple[DistortionAlternative, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ThroatRange(Result):
    """A throat as given, and at its least and most by its tolerances."""

    least: Quantity
    nominal: Quantity
    most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class OpeningStages(Result):
    """Moment or force at which the root yields, the throat folds, breaks, and breaks at the most."""

    first_yield: Quantity
    hinge: Quantity
    breaking: Quantity
    breaking_at_most: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class OpenedAccount(Result):
    """What one account of the throat takes to open."""

    verdict: str
    throat: ThroatRange
    moment: OpeningStages
    force: OpeningStages
    governs: str


@dataclass(frozen=True, slots=True, kw_only=True)
class BalancedThroat(Result):
    """The throat that breaks just as the plate folds, and the leg of a fillet that has it."""

    throat: Quantity
    leg: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FoldingPlate(Result):
    """What folds the thinner plate."""

    moment: Quantity
    force: Quantity
    balance: BalancedThroat


@dataclass(frozen=True, slots=True, kw_only=True)
class CouponCheck(Result):
    """One dimension of a coupon or its broken faces against its limit, a least or a most."""

    name: str
    value: Quantity
    least: Quantity | None = None
    most: Quantity | None = None
    verdict: str
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class StandardCoupon(Result):
    """The coupon that the rules know."""

    plate: Quantity
    leg: Quantity
    least_width: Quantity
    welded_length: Quantity
    specimen: Quantity
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Acceptance(Result):
    """What the outcome of a test is worth."""

    verdict: str
    limits: tuple[CouponCheck, ...]
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class BreakTest(Calculation):
    """What opens a coupon from its root, counting all the throat there is."""

    throat: ThroatRange
    moment: OpeningStages
    force: OpeningStages
    governs: str
    creditable: OpenedAccount
    strength: OpenedAccount
    plate: FoldingPlate
    length: Quantity
    fold: str
    checks: tuple[CouponCheck, ...]
    standard_coupon: StandardCoupon | None = None
    acceptance: Acceptance | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class RuleSetName(Result):
    """A rule set by id and title."""

    id: str
    title: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Service(Answer):
    """What is answering, and in which versions."""

    service: str
    service_version: str
    api_version: str
    engine_version: str
    rule_sets: tuple[RuleSetName, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Limit(Result):
    """Where a rule set's scope ends, and who says so."""

    text: str
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Place(Result):
    """A place in the plane of a group."""

    x: Quantity
    y: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class Components(Result):
    """A force or moment along each axis."""

    x: Quantity
    y: Quantity
    z: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class GroupProperties(Result):
    """One group as lines of unit throat, about its centroid."""

    length: Quantity
    centroid: Place
    i_x: Quantity
    i_y: Quantity
    i_xy: Quantity
    j: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class GroupLoad(Result):
    """The load of one group, through its centroid."""

    force: Components
    moment: Components


@dataclass(frozen=True, slots=True, kw_only=True)
class GroupPoint(Result):
    """A point of a group and the force per length on its weld."""

    x: Quantity
    y: Quantity
    force: Components
    resultant: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class GroupStrength(Result):
    """What all groups carry, as a multiple of the load and along it."""

    factor: float
    force: Quantity
    moment: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class WeldGroup(Calculation):
    """Size and strength of a weld group."""

    properties: GroupProperties
    load_per_group: GroupLoad
    method: str
    critical: GroupPoint | None = None
    points: tuple[GroupPoint, ...] = ()
    centre: Place | None = None
    required: SizeStep
    minimum: SizeStep
    specify: SizeStep | None = None
    utilisation: float | None = None
    strength: GroupStrength
    equivalent_force: Quantity
    efficiency: float


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanCosts(Result):
    """What a way takes; None where it cannot be told."""

    filler: Quantity | None
    time: Quantity | None
    heat: Quantity | None
    distortion: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanHold(Result):
    """What a planned weld is held to; None where the way or the quality set has nothing."""

    least_leg: Quantity | None
    least_throat: Quantity | None
    most_convexity: Quantity | None
    most_reinforcement: Quantity | None
    leave_face_height: Quantity | None


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanParts(Result):
    """What the single resources answer for one way; None where it has no use for one."""

    fillet_size: FilletSize | None = None
    groove_size: GrooveSize | None = None
    bevel_depth: BevelDepth | None = None
    grind_allowance: GrindAllowance | None = None
    filler_quantity: FillerQuantity | None = None
    heat: Heat | None = None
    distortion: Distortion | None = None
    crack_risk: CrackRisk | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PlannedWay(Result):
    """A way to make a joint that keeps the rules, with its place among the others."""

    way: str
    size: str
    rank: int
    score: float
    dominated_by: tuple[str, ...]
    costs: PlanCosts
    budget: Budget | None
    chance_short: float | None
    hold: PlanHold
    verdicts: Mapping[str, str]
    left_out: tuple[LeftOut, ...]
    parts: PlanParts | None


@dataclass(frozen=True, slots=True, kw_only=True)
class RefusedWay(Result):
    """A way that does not keep the rules, and why."""

    way: str
    why: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class JointPlan(Calculation):
    """Every way to make one joint, best first, and those that are refused."""

    recommended: str | None
    compared_by: tuple[str, ...]
    quality: str | None
    ways: tuple[PlannedWay, ...]
    refused: tuple[RefusedWay, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class RuleSet(Answer):
    """A set of rules to calculate by."""

    id: str
    title: str
    editions: tuple[str, ...]
    clauses: tuple[str, ...]
    parameters: Mapping[str, Any]
    limits: tuple[Limit, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class QualitySet(Answer):
    """A quality level or code that a weld as made is held to."""

    id: str
    title: str
    editions: tuple[str, ...]
    clauses: tuple[str, ...]
    limits: tuple[Limit, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class RuleSetList(Answer):
    """Every rule set the service has, and every quality set."""

    rule_sets: tuple[RuleSet, ...]
    quality_sets: tuple[QualitySet, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Material(Answer):
    """A parent metal the service knows; its strengths by thickness are in `raw`."""

    id: str
    standard: str | None = None
    family: str | None = None
    form: str | None = None
    source: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class MaterialList(Answer):
    """Every parent metal the service knows."""

    materials: tuple[Material, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class FillerMetal(Answer):
    """A filler metal the service knows; its strengths are in `raw`."""

    id: str
    standard: str | None = None
    family: str | None = None
    processes: tuple[str, ...] = ()
    source: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FillerMetalList(Answer):
    """Every filler metal the service knows."""

    filler_metals: tuple[FillerMetal, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Process(Answer):
    """A welding process the service knows, with the other codes it goes by in `raw`."""

    id: str
    title: str | None = None
    family: str | None = None
    source: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Position(Answer):
    """A welding position the service knows, with the orientation it stands for."""

    id: str
    title: str | None = None
    orientation: str | None = None
    source: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class GroovePreparation(Answer):
    """A preparation of a groove; the limits it holds in are in `raw`."""

    id: str
    ref: str | None = None
    standard: str | None = None
    penetration: str | None = None
    form: str | None = None
    root: str | None = None
    source: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class GroovePreparationList(Answer):
    """Every preparation of a groove the service knows."""

    preparations: tuple[GroovePreparation, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ProcessList(Answer):
    """Every welding process and position the service knows."""

    processes: tuple[Process, ...]
    positions: tuple[Position, ...] = ()
