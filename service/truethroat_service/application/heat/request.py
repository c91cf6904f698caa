"""Request for the heat of a pass, and what follows from it alone."""

from dataclasses import dataclass
from typing import Literal

from ...reference.loader import process as process_of
from ...standards.en_1011_1_2009 import heat_input as en_1011_1
from ..core.answers import Common
from .cooling import Band
from .steel import Composition, Equivalents

SeamKind = Literal["plate", "butt-fill", "corner-fillet", "tee-fillet"]
FILLETS = ("corner-fillet", "tee-fillet")
ROOM_TEMPERATURE = 20.0


@dataclass(frozen=True, slots=True)
class Arc:
    """One of: settings of the arc (V, A, mm/s, kg/s), its energy, or its heat input (kJ/mm)."""

    voltage: float | None = None
    current: float | None = None
    travel_speed: float | None = None
    deposition_rate: float | None = None
    arc_energy: float | None = None
    heat_input: float | None = None


@dataclass(frozen=True, slots=True)
class HeatRequest:
    """One pass, in engine units; what is left out is not answered for."""

    arc: Arc | None = None
    process: str | None = None
    efficiency: float | None = None
    thickness: float | None = None
    seam: SeamKind | None = None
    preheat: float = ROOM_TEMPERATURE
    cooling_time: float | None = None
    cooling_window: Band | None = None
    composition: Composition | None = None
    carbon_equivalents: Equivalents | None = None
    weld_metal_cet: float | None = None
    hydrogen: float | None = None
    combined_thickness: float | None = None
    preheat_category: str | None = None
    thickest_part: float | None = None
    steel_group: int | None = None
    heat_treated: bool = False
    leg: float | None = None
    required_leg: float | None = None
    common: Common = Common()


@dataclass(frozen=True, slots=True)
class Energy:
    """Arc energy and heat input, kJ/mm, and the efficiency between them, as far as known."""

    arc_energy: float | None
    heat_input: float | None
    efficiency: float | None


def thickest_part(request: HeatRequest) -> float | None:
    """Thickest part at the weld, mm."""
    return request.thickness if request.thickest_part is None else request.thickest_part


def thermal_efficiency(request: HeatRequest) -> float | None:
    """Thermal efficiency: the request's own, or that of the process."""
    if request.efficiency is not None:
        return request.efficiency
    if request.process is None:
        return None
    return en_1011_1.EFFICIENCY.get(process_of(request.process).id)
