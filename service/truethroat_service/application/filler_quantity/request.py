"""Request for what welds take, in engine units."""

from dataclasses import dataclass

from ...reference.loader import position as position_of
from ...reference.loader import process as process_of
from ..core.answers import Common
from ..joints.weld_sections import Shape


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


PARTS = ("labour", "consumable", "gas", "power")


@dataclass(frozen=True, slots=True)
class Price:
    """Price for one engine unit; of one filler, or with one process, where it names them."""

    amount: float
    filler: str | None = None
    process: str | None = None

    @property
    def process_id(self) -> str | None:
        """Process by its id."""
        return None if self.process is None else process_of(self.process).id


@dataclass(frozen=True, slots=True)
class Prices:
    """Prices in one currency: labour for a second, consumables for a kilogram, gases for a mm3, power for a kJ."""

    currency: str
    labour: Price | None = None
    consumables: tuple[Price, ...] = ()
    gases: tuple[Price, ...] = ()
    power: Price | None = None

    @property
    def priced(self) -> tuple[str, ...]:
        """Parts of a cost that have a price."""
        given = (self.labour, self.consumables, self.gases, self.power)
        return tuple(part for part, price in zip(PARTS, given, strict=True) if price)


@dataclass(frozen=True, slots=True)
class FillerQuantityRequest:
    """Welds to estimate, and prices to estimate them at."""

    welds: tuple[Weld, ...]
    prices: Prices | None = None
    common: Common = Common()
