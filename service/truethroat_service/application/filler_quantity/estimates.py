"""Welds of an estimate as a request describes them, what the estimate of each rests on, and what comes of it."""

from collections.abc import Mapping
from dataclasses import dataclass

from ...reference.loader import position as position_of
from ...reference.loader import process as process_of
from ..joints.usual_rates import Band
from ..joints.weld_sections import Section, Shape
from .passes import Passes
from .prices import Span


@dataclass(frozen=True, slots=True)
class Electrode:
    """Stick electrode: its length and the stub thrown away, mm."""

    length: float
    stub: float


@dataclass(frozen=True, slots=True)
class Deposition:
    """Deposition rate in kg/s, or a wire (by diameter in mm, or mass per length in kg/mm) and its feed in mm/s."""

    rate: float | None = None
    wire_diameter: float | None = None
    wire_mass: float | None = None
    feed_speed: float | None = None


@dataclass(frozen=True, slots=True)
class Bead:
    """What one pass fills: its area in mm2, or the travel speed in mm/s that it follows from."""

    area: float | None = None
    travel_speed: float | None = None


@dataclass(frozen=True, slots=True)
class Arc:
    """Voltage in V and current in A, and the share of the mains energy that the power source passes on."""

    voltage: float
    current: float
    source_efficiency: float | None = None


@dataclass(frozen=True, slots=True)
class Weld:
    """So many equal welds, in engine units; ``excess`` is a share of the section's area."""

    shape: Shape
    length: float
    count: int = 1
    mark: str | None = None
    excess: float = 0.0
    filler: str | None = None
    density: float | None = None
    process: str | None = None
    position: str | None = None
    efficiency: float | None = None
    electrode: Electrode | None = None
    deposition: Deposition | None = None
    operator_factor: float | None = None
    gas_flow: float | None = None
    arc: Arc | None = None
    bead: Bead | None = None

    @property
    def process_id(self) -> str | None:
        """Process by its id."""
        return None if self.process is None else process_of(self.process).id

    @property
    def orientation(self) -> str | None:
        """Orientation that the position stands for."""
        return None if self.position is None else position_of(self.position).orientation


@dataclass(frozen=True, slots=True)
class Figures:
    """What an estimate rests on; None where neither the request nor a publication says it."""

    density: Band
    efficiency: Band | None
    rate: Band | None
    factor: Band | None
    gas_flow: Band | None
    bead: Band | None
    source_efficiency: Band | None


@dataclass(frozen=True, slots=True)
class Estimate:
    """Estimate of the welds of one entry; spans from least to most."""

    weld: Weld
    section: Section
    figures: Figures
    deposited: float
    consumable: Span | None
    arc_time: Span | None
    working_time: Span | None
    gas: Span | None
    energy: Span | None
    passes: Passes | None
    costs: Mapping[str, Span | None] | None
