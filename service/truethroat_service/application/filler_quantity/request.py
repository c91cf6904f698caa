"""Request for what welds take, in engine units."""

from dataclasses import dataclass
from typing import Annotated

from ...reference.loader import position as position_of
from ...reference.loader import process as process_of
from ..core.answers import Common
from ..core.quantities import (
    AREA,
    CURRENT,
    DENSITY,
    ENERGY,
    GAS_FLOW,
    LENGTH,
    MASS,
    MASS_PER_LENGTH,
    MASS_RATE,
    SPEED,
    VOLTAGE,
    VOLUME,
    WORKING_TIME,
    Dimension,
)
from ..core.shape import As, Form, Longest, Many, Numbered, OneOf, Pattern, ToldBy, Within, form
from ..joints.given import FILLER_IDS, Position, Process
from ..joints.weld_sections import AnyShape

MOST_WELDS, MOST_PRICES = 1000, 200
HOUR = 3600.0


@dataclass(frozen=True, slots=True)
class Electrode:
    """Stick electrode and its stub."""

    length: Annotated[float, Within(LENGTH, 100.0, most=1000.0), "Length of the electrode."]
    stub: Annotated[float, Within(LENGTH, most=500.0), "Length of the stub that is thrown away."]


@dataclass(frozen=True, slots=True)
class Deposition:
    """Deposition rate, or a wire (by its diameter or its mass per length) and its feed."""

    rate: Annotated[
        float | None,
        Within(MASS_RATE, 0.01 / HOUR, most=200.0 / HOUR),
        "Metal deposited for each unit of arc time, without spatter and slag.",
    ] = None
    wire_diameter: Annotated[float | None, Within(LENGTH, 0.3, most=8.0), "Diameter of a solid wire."] = None
    wire_mass: Annotated[
        float | None, Within(MASS_PER_LENGTH, 1e-7, most=1e-3), "Mass per length of a wire, cored or solid."
    ] = None
    feed_speed: Annotated[float | None, Within(SPEED, 1.0, most=1000.0), "Speed the wire is fed at."] = None


DEPOSITION_FORMS = (
    (
        ("wire_diameter",),
        form("DepositionBySolidWire", "Solid wire and its feed.", Deposition, "wire_diameter!", "feed_speed!"),
    ),
    (
        ("wire_mass", "feed_speed"),
        form("DepositionByWireMass", "Any wire, by its mass, and its feed.", Deposition, "wire_mass!", "feed_speed!"),
    ),
    ((), form("DepositionByRate", "Deposition rate.", Deposition, "rate!")),
)
"""Deposition as a request describes it."""

AnyDeposition = Annotated[Deposition, ToldBy(DEPOSITION_FORMS), "Deposition rate, or the wire and its feed."]


@dataclass(frozen=True, slots=True)
class Bead:
    """What one pass fills: its area, or the travel speed that it follows from."""

    area: Annotated[float | None, Within(AREA, 0.5, most=500.0), "Area that one pass fills."] = None
    travel_speed: Annotated[
        float | None, Within(SPEED, 0.1, most=200.0), "Travel speed, from which the area of a pass follows."
    ] = None


BEAD_FORMS = (
    (("travel_speed",), form("BeadBySpeed", "Pass by its travel speed.", Bead, "travel_speed!")),
    ((), form("BeadByArea", "Pass by its area.", Bead, "area!")),
)
"""A pass as a request describes it."""


@dataclass(frozen=True, slots=True)
class WeldingArc:
    """Arc and power source."""

    voltage: Annotated[float, Within(VOLTAGE, 5.0, most=100.0), "Voltage of the arc."]
    current: Annotated[float, Within(CURRENT, 1.0, most=3000.0), "Welding current."]
    source_efficiency: Annotated[
        float | None, Numbered(0.1, 1.0), "Share of the mains energy that the power source passes on."
    ] = None


@dataclass(frozen=True, slots=True)
class Weld:
    """A number of equal welds."""

    shape: AnyShape
    length: Annotated[float, Within(LENGTH, 0.1, most=1e7), "Length of one weld."]
    count: Annotated[int, Numbered(1, 100000), "Number of equal welds."] = 1
    mark: Annotated[str | None, Longest(200), "The caller's own mark for these welds, given back with them."] = None
    excess: Annotated[
        float,
        Numbered(0.0, 1.0),
        "Share added to the area of the section; send leg_excess of a fillet for a share of its legs.",
    ] = 0.0
    filler: Annotated[str | None, FILLER_IDS, "Filler metal; see /v1/filler-metals."] = None
    density: Annotated[
        float | None, Within(DENSITY, 5e-7, most=2.5e-5), "Density of the weld metal, instead of that of the filler."
    ] = None
    process: Process | None = None
    position: Position | None = None
    efficiency: Annotated[
        float | None,
        Numbered(0.05, 1.0),
        "Share of the consumable that is deposited. With electrode it does not count the loss of the stub, without it"
        " it does.",
    ] = None
    electrode: Annotated[Electrode | None, "Stick electrode, to take its stub off; SMAW only."] = None
    deposition: AnyDeposition | None = None
    operator_factor: Annotated[float | None, Numbered(0.01, 1.0), "Share of the clock during which the arc burns."] = (
        None
    )
    gas_flow: Annotated[float | None, Within(GAS_FLOW, 1e4, most=2e6), "Shielding gas while the arc burns."] = None
    arc: Annotated[WeldingArc | None, "Arc and power source, for the energy."] = None
    bead: Annotated[Bead | None, ToldBy(BEAD_FORMS), "What one pass fills, for the passes."] = None

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
    filler: Annotated[str | None, FILLER_IDS, "Filler metal it is for; any, when left out."] = None
    process: Process | None = None

    @property
    def process_id(self) -> str | None:
        """Process by its id."""
        return None if self.process is None else process_of(self.process).id


def _price(name: str, words: str, dimension: Dimension, *names: str) -> Form:
    """Amount of money for one unit of a dimension, which becomes the price of one engine unit."""

    def price(amount: float, per: str, filler: str | None = None, process: str | None = None) -> Price:
        return Price(amount / dimension.factors[per], filler, process)

    return form(
        name,
        words,
        Price,
        "amount!",
        "per!",
        *names,
        makes=price,
        amount=Annotated[float, Numbered(0.0, 1e9), "Amount in the currency."],
        per=Annotated[str, OneOf(tuple(dimension.factors)), "Unit it is the price of."],
    )


LABOUR_PRICE = _price("LabourPrice", "Price of labour and overhead.", WORKING_TIME)
CONSUMABLE_PRICE = _price("ConsumablePrice", "Price of a consumable.", MASS, "filler", "process")
GAS_PRICE = _price("GasPrice", "Price of a shielding gas.", VOLUME, "process")
POWER_PRICE = _price("PowerPrice", "Price of energy from the mains.", ENERGY)


@dataclass(frozen=True, slots=True)
class Prices:
    """Prices in one currency; the cost leaves out what has no price."""

    currency: Annotated[
        str,
        Longest(3),
        Pattern("^[A-Z]{3}$", 'must be three capital letters such as "EUR"'),
        "Code of the currency, ISO 4217.",
    ]
    labour: Annotated[Price | None, As(LABOUR_PRICE), "Labour and overhead, for the working time."] = None
    consumables: Annotated[
        tuple[Annotated[Price, As(CONSUMABLE_PRICE)], ...],
        Many("prices", most=MOST_PRICES),
        "Consumables. A weld takes the price that names its filler, else its process, else the one that names neither.",
    ] = ()
    gases: Annotated[
        tuple[Annotated[Price, As(GAS_PRICE)], ...],
        Many("prices", most=MOST_PRICES),
        "Gases. A weld takes the price that names its process, else the one that names none.",
    ] = ()
    power: Annotated[Price | None, As(POWER_PRICE), "Energy from the mains."] = None

    @property
    def priced(self) -> tuple[str, ...]:
        """Parts of a cost that have a price."""
        given = (self.labour, self.consumables, self.gases, self.power)
        return tuple(part for part, price in zip(PARTS, given, strict=True) if price)


AnyPrices = Annotated[Prices, "The caller's own prices; the service has none."]


@dataclass(frozen=True, slots=True)
class FillerQuantityRequest:
    """Welds to estimate."""

    welds: Annotated[tuple[Weld, ...], Many("welds", most=MOST_WELDS), "Welds to estimate, one entry for equal ones."]
    prices: AnyPrices | None = None
    common: Common = Common()
