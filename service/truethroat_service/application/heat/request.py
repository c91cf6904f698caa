"""Request for the heat of a pass, and what follows from it alone."""

from dataclasses import dataclass
from typing import Annotated, Literal

from ...reference.loader import process as process_of
from ...standards.aws_d1_1_2020.s5_preheat import CATEGORIES
from ...standards.en_1011_1_2009 import heat_input as en_1011_1
from ...standards.iso_15614_1_2017.hardness_limits import GROUPS
from ..core.answers import Common
from ..core.quantities import (
    CURRENT,
    ENERGY_PER_LENGTH,
    HYDROGEN,
    LENGTH,
    MASS_RATE,
    SPEED,
    TEMPERATURE,
    TIME,
    VOLTAGE,
)
from ..core.shape import As, Band, Numbered, OneOf, ToldBy, Within, form
from ..joints.given import THICKNESS, Process
from .steel import EQUIVALENT, CarbonEquivalents, Composition

SeamKind = Literal["plate", "butt-fill", "corner-fillet", "tee-fillet"]
FILLETS = ("corner-fillet", "tee-fillet")
ROOM_TEMPERATURE = 20.0

PREHEAT = Within(TEMPERATURE, -50.0, most=400.0)
_ENERGY = Within(ENERGY_PER_LENGTH, most=50.0, above=True)
_TIME = Within(TIME, 0.1, most=1000.0)
_LEG = Within(LENGTH, 0.5, most=50.0)


@dataclass(frozen=True, slots=True)
class Arc:
    """The arc, by one of: its settings (V, A, mm/s, kg/s), its energy, or its heat input (kJ/mm)."""

    voltage: Annotated[
        float | None,
        Within(VOLTAGE, most=100.0, above=True),
        "Arc voltage. For a waveform-controlled machine send arc_energy from instantaneous readings instead.",
    ] = None
    current: Annotated[float | None, Within(CURRENT, most=3000.0, above=True), "Welding current."] = None
    travel_speed: Annotated[float | None, Within(SPEED, most=1000.0, above=True), "Travel speed."] = None
    deposition_rate: Annotated[
        float | None,
        Within(MASS_RATE, most=0.1, above=True),
        "Metal deposited while the arc burns, for the bead of a fillet.",
    ] = None
    arc_energy: Annotated[float | None, _ENERGY, "Arc energy per length."] = None
    heat_input: Annotated[float | None, _ENERGY, "Heat input per length."] = None


ARC_FORMS = (
    (
        ("arc_energy",),
        form(
            "ArcEnergy",
            "Arc energy, without an efficiency: the heat input of AWS D1.1 and ASME IX.",
            Arc,
            "arc_energy!",
        ),
    ),
    (
        ("heat_input",),
        form("HeatInput", "Heat input of EN 1011-1, which includes the efficiency.", Arc, "heat_input!"),
    ),
    (
        ("voltage", "current", "travel_speed", "deposition_rate"),
        form(
            "ArcSettings",
            "Settings of the arc. Without travel_speed the answer gives the speeds that keep to the cooling window.",
            Arc,
            "voltage!",
            "current!",
            "travel_speed",
            "deposition_rate",
        ),
    ),
)
"""An arc as a request describes it."""

AnyArc = Annotated[Arc, ToldBy(ARC_FORMS), "The arc: its settings, its energy, or its heat input."]

_WINDOW = form(
    "CoolingWindow",
    "Cooling times t8/5 to keep to.",
    Band,
    "least!",
    "most!",
    least=Annotated[float, _TIME, "Shortest time that does not make the steel too hard."],
    most=Annotated[float, _TIME, "Longest time that does not make its grain too coarse."],
)
CoolingWindow = Annotated[
    Band,
    As(_WINDOW),
    "Cooling times t8/5 to judge against. Common practice: 10 to 25 s for S235 to S355, 5 to 20 s for quenched and"
    " tempered S460 to S690, 5 to 15 s for S700MC.",
]

ParentSteel = Annotated[Composition, "Composition of the parent steel."]
Hydrogen = Annotated[
    float,
    Within(HYDROGEN, most=100.0, above=True),
    "Diffusible hydrogen of the weld metal. Sending it requests methods A and B; values outside the limits of method B"
    " are refused.",
]
PreheatCategory = Annotated[
    str,
    OneOf(tuple(CATEGORIES)),
    f"Category of AWS D1.1. {' '.join(f'{key}: {grades}.' for key, grades in CATEGORIES.items())}",
]


@dataclass(frozen=True, slots=True)
class HeatRequest:
    """One pass. The answer holds what the fields given allow, and lists the rest in left_out with what it needs."""

    arc: AnyArc | None = None
    process: Process | None = None
    efficiency: Annotated[
        float | None, Numbered(0.1, 1.0), "Thermal efficiency k; that of the process when left out."
    ] = None
    thickness: Annotated[
        float | None,
        THICKNESS,
        "Thickness of the plate itself, not the combined thickness. Where two parts of unequal thickness meet, this is"
        " the thinner one; send thickest_part too.",
    ] = None
    seam: Annotated[
        SeamKind | None,
        "Seam: a run on plate, a filling run of a butt, or a single-run fillet in a corner or a tee.",
    ] = None
    preheat: Annotated[float, PREHEAT, "Temperature of the plate when the pass begins."] = ROOM_TEMPERATURE
    cooling_time: Annotated[float | None, _TIME, "Cooling time t8/5 as measured; send it instead of an arc."] = None
    cooling_window: CoolingWindow | None = None
    composition: ParentSteel | None = None
    carbon_equivalents: Annotated[
        CarbonEquivalents | None, "Carbon equivalents of the parent steel; send them instead of the composition."
    ] = None
    weld_metal_cet: Annotated[float | None, EQUIVALENT, "CET of the weld metal, for method B."] = None
    hydrogen: Hydrogen | None = None
    combined_thickness: Annotated[
        float | None,
        Within(LENGTH, most=1000.0, above=True),
        "Sum of the thicknesses that meet at the weld, for method A. Each is the mean over 75 mm. Half the sum counts"
        " for fillets on opposite sides that are welded at the same time. It follows from seam, thickness and"
        " thickest_part when left out.",
    ] = None
    preheat_category: PreheatCategory | None = None
    thickest_part: Annotated[
        float | None,
        THICKNESS,
        "Thickest part at the weld; thickness when left out. The cooling time and every preheat go by it.",
    ] = None
    steel_group: Annotated[
        int | None, OneOf(GROUPS), "Steel group of ISO/TR 15608, for the hardness limit of ISO 15614-1."
    ] = None
    heat_treated: Annotated[bool, "Whether the weld is heat treated afterwards."] = False
    leg: Annotated[float | None, _LEG, "Leg of a fillet laid in this one pass."] = None
    required_leg: Annotated[float | None, _LEG, "Leg that was required of this fillet."] = None
    common: Common = Common()


@dataclass(frozen=True, slots=True)
class Energy:
    """Arc energy and heat input, kJ/mm, and the efficiency that relates them; None where not known."""

    arc_energy: float | None
    heat_input: float | None
    efficiency: float | None


def thickest_part(request: HeatRequest) -> float | None:
    """Thickest part at the weld, mm."""
    return request.thickness if request.thickest_part is None else request.thickest_part


def parts_of(request: HeatRequest) -> tuple[float, float] | None:
    """Thickness of the thinner and the thicker part, mm, alike where one is not given; None where neither is."""
    thickest = thickest_part(request)
    if thickest is None:
        return None
    return thickest if request.thickness is None else request.thickness, thickest


def thermal_efficiency(request: HeatRequest) -> float | None:
    """Thermal efficiency: the request's own, or that of the process."""
    if request.efficiency is not None:
        return request.efficiency
    if request.process is None:
        return None
    return en_1011_1.EFFICIENCY.get(process_of(request.process).id)
