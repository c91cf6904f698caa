"""Answer of ``/v1/heat``, in engine units; a field that lacks something says what, instead of being ``None``."""

from dataclasses import dataclass
from typing import Annotated, Any, Literal

from ...standards.en_1011_2_2001.c_2_method_a import HydrogenScale
from ..core.left_out import LeftOut
from ..core.quantities import ENERGY_PER_LENGTH, LENGTH, SPEED, TEMPERATURE, TIME, render
from ..core.shape import Area, Band, Lacks, Length, LengthDown, LengthUp, Q

Temperature = Annotated[float, Q(TEMPERATURE)]
EnergyPerLength = Annotated[float, Q(ENERGY_PER_LENGTH)]
EnergyBand = Annotated[Band, Q(ENERGY_PER_LENGTH)]
TimeBand = Annotated[Band, Q(TIME)]
HeatFlow = Literal["two-dimensional", "three-dimensional", "between"]
HardnessStanding = Literal["within", "over", "open"]
Subject = Literal["window", "preheat", "hardness"]
Standing = Literal["within", "too-fast", "too-slow", "short", "over", "open"]


@dataclass(frozen=True, slots=True)
class PassEnergy:
    """Energy of a pass by both conventions."""

    arc_energy: Annotated[EnergyPerLength | Lacks, "Arc energy, which AWS D1.1 and ASME IX call heat input."]
    heat_input: Annotated[EnergyPerLength | Lacks, "Heat input of EN 1011-1: the arc energy times the efficiency."]
    efficiency: Annotated[float | Lacks, "Thermal efficiency k of EN 1011-1."]


@dataclass(frozen=True, slots=True)
class PassCooling:
    """Cooling time t8/5."""

    time: TimeBand
    flow: HeatFlow | Lacks
    transition_thickness: Annotated[Band | Lacks, Q(LENGTH), "Thickness over which heat flows in three dimensions."]


@dataclass(frozen=True, slots=True)
class HeatLimits:
    """Limits that keep the cooling time in the window."""

    heat_input: EnergyBand
    arc_energy: EnergyBand | Lacks
    travel_speed: Annotated[Band | Lacks, Q(SPEED)]


@dataclass(frozen=True, slots=True)
class ParentEquivalents:
    """Carbon equivalents of the parent steel."""

    ce: float | Lacks
    cet: float | Lacks
    pcm: float | Lacks


@dataclass(frozen=True, slots=True)
class MethodAPreheat:
    """EN 1011-2 method A, without its charts."""

    hydrogen_scale: HydrogenScale
    without_preheat_to: LengthDown | Lacks
    combined_thickness: Annotated[
        LengthUp | Lacks, "Combined thickness that was compared: the one given, or that of the parts."
    ]
    free_of_preheat: Annotated[
        bool | Lacks, "Whether no preheat is needed. A frozen plate is never free of it: it is warmed first."
    ]
    source: str


PlateIsWarm = Annotated[bool, "Whether the plate is that warm when the pass begins."]


@dataclass(frozen=True, slots=True)
class FormulaPreheat:
    """Preheat by the formula of one rule."""

    temperature: Temperature
    met: PlateIsWarm
    source: str


@dataclass(frozen=True, slots=True)
class PrintedPreheat:
    """Preheat as the table prints it in both units; the two are not exact conversions of each other."""

    fahrenheit: Temperature
    celsius: Temperature

    def wire(self) -> dict[str, Any]:
        """Both as printed, whatever units the request asked for."""
        return {
            "fahrenheit": render(TEMPERATURE, self.fahrenheit, "us"),
            "celsius": render(TEMPERATURE, self.celsius, "metric"),
        }


@dataclass(frozen=True, slots=True)
class CategoryPreheat:
    """Preheat of AWS D1.1 by category and thickest part."""

    category: str
    temperature: Temperature
    printed: PrintedPreheat
    thickest_part: Length
    met: PlateIsWarm
    source: str


@dataclass(frozen=True, slots=True)
class PreheatAnswer:
    """Preheat by each rule that the request gives enough for."""

    method_a: MethodAPreheat | Lacks
    method_b: Annotated[FormulaPreheat | Lacks, "EN 1011-2 method B."]
    sew_088: Annotated[FormulaPreheat | Lacks, "SEW 088, method B with two other constants."]
    aws_d1_1: CategoryPreheat | Lacks


@dataclass(frozen=True, slots=True)
class ModelHardness:
    """Hardness HV10 by one model, at the slowest and the fastest cooling, and of pure structures."""

    least: float
    most: float
    martensite: float
    bainite: float


@dataclass(frozen=True, slots=True)
class HardnessBesideWeld:
    """Hardness HV10 beside the weld."""

    dueren: ModelHardness
    yurioka: ModelHardness
    band: Annotated[Band, "Band of both models, 50 HV wider on either side."]
    limit: Annotated[float | Lacks, "Limit of ISO 15614-1 for the steel group."]
    standing: HardnessStanding | Lacks
    source: str | Lacks


@dataclass(frozen=True, slots=True)
class DepositedBead:
    """Bead that the deposition rate lays."""

    area: Area
    leg: Length


@dataclass(frozen=True, slots=True)
class OversizeHeat:
    """Heat of the leg laid against that of the leg required."""

    required_arc_energy: EnergyPerLength
    heat_ratio: Annotated[float, "Arc energy of the leg laid over that of the leg required."]
    cooling_time_required: TimeBand | Lacks
    cooling_time_laid: TimeBand | Lacks


@dataclass(frozen=True, slots=True)
class FilletHeat:
    """Leg of a single-pass fillet against arc energy."""

    usual_leg: Annotated[Length | Lacks, "Leg that this arc energy usually lays."]
    bead: DepositedBead | Lacks
    usual_arc_energy: Annotated[EnergyPerLength | Lacks, "Arc energy that the leg usually takes."]
    oversize: OversizeHeat | Lacks


@dataclass(frozen=True, slots=True)
class Judged:
    """One thing that was judged."""

    what: Annotated[Subject, "The cooling time against the window, the plate against its preheat, or the hardness."]
    standing: Annotated[
        Standing, "How it stands. Open means that the rule leaves it open, or that only part of a band keeps the limit."
    ]


@dataclass(frozen=True, slots=True)
class HeatAnswer:
    """Heat of a pass and what follows from it; each field that is null is listed in left_out with what it needs."""

    energy: PassEnergy | Lacks
    cooling: PassCooling | Lacks
    limits: HeatLimits | Lacks
    carbon_equivalents: ParentEquivalents
    preheat: PreheatAnswer
    hardness: HardnessBesideWeld | Lacks
    fillet: FilletHeat | Lacks
    judged: Annotated[
        tuple[Judged, ...],
        "Everything that was judged. The verdict is the first of these that fails; else open if one is open; else"
        " within. It is estimated where nothing was judged.",
    ] = ()
    left_out: tuple[LeftOut, ...] = ()
