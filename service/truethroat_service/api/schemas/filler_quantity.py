"""Request of ``/v1/filler-quantity``."""

from collections.abc import Mapping
from typing import Any

from marshmallow import ValidationError, post_load

from ...application.core.quantities import (
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
from ...application.filler_quantity.request import (
    Arc,
    Bead,
    Deposition,
    Electrode,
    FillerQuantityRequest,
    Price,
    Prices,
    Weld,
)
from ...reference.loader import FILLER_METALS
from ..fields import Choice, Either, Entries, Number, Object, Quantity, Text, Whole
from ..messages import Message
from . import ClosedSchema, RequestSchema, seams
from .weld_shapes import SHAPES

MOST_WELDS, MOST_PRICES = 1000, 200
HOUR = 3600.0


def _share(description: str, low: float, high: float = 1.0, **more: Any) -> Number:
    return Number(description, minimum=low, maximum=high, **more)


class ElectrodeSchema(ClosedSchema):
    """Stick electrode and its stub."""

    makes = Electrode
    length = Quantity(LENGTH, "Length of the electrode.", minimum=100.0, maximum=1000.0, required=True)
    stub = Quantity(LENGTH, "Length thrown away.", maximum=500.0, required=True)


def _feed() -> Quantity:
    return Quantity(SPEED, "Speed the wire is fed at.", minimum=1.0, maximum=1000.0, required=True)


class DepositionRateSchema(ClosedSchema):
    """Deposition rate."""

    makes = Deposition
    title = "DepositionByRate"
    rate = Quantity(
        MASS_RATE,
        "Metal deposited while the arc burns, spatter and slag not counted.",
        minimum=0.01 / HOUR,
        maximum=200.0 / HOUR,
        required=True,
    )


class SolidWireSchema(ClosedSchema):
    """Solid wire and its feed."""

    makes = Deposition
    title = "DepositionBySolidWire"
    wire_diameter = Quantity(LENGTH, "Diameter of a solid wire.", minimum=0.3, maximum=8.0, required=True)
    feed_speed = _feed()


class WeighedWireSchema(ClosedSchema):
    """Any wire, by its mass, and its feed."""

    makes = Deposition
    title = "DepositionByWireMass"
    wire_mass = Quantity(
        MASS_PER_LENGTH, "Mass per length of a wire, cored or solid.", minimum=1e-7, maximum=1e-3, required=True
    )
    feed_speed = _feed()


class BeadAreaSchema(ClosedSchema):
    """Pass by its area."""

    makes = Bead
    title = "BeadByArea"
    area = Quantity(AREA, "Area that one pass fills.", minimum=0.5, maximum=500.0, required=True)


class BeadSpeedSchema(ClosedSchema):
    """Pass by its travel speed."""

    makes = Bead
    title = "BeadBySpeed"
    travel_speed = Quantity(
        SPEED, "Travel speed, from which the area of a pass follows.", minimum=0.1, maximum=200.0, required=True
    )


class ArcSchema(ClosedSchema):
    """Arc and power source."""

    makes = Arc
    title = "WeldingArc"
    voltage = Quantity(VOLTAGE, "Voltage of the arc.", minimum=5.0, maximum=100.0, required=True)
    current = Quantity(CURRENT, "Welding current.", minimum=1.0, maximum=3000.0, required=True)
    source_efficiency = _share("Share of the mains energy that the power source passes on.", 0.1)


class WeldSchema(ClosedSchema):
    """So many equal welds."""

    makes = Weld
    shape = SHAPES
    length = Quantity(LENGTH, "Length of one weld.", minimum=0.1, maximum=1e7, required=True)
    count = Whole("Equal welds.", minimum=1, maximum=100000, default=1)
    mark = Text("The caller's own mark for these welds, given back with them.", longest=200)
    excess = _share("Share added to the area of the section; on the legs of a fillet it is leg_excess.", 0.0, default=0)
    filler = Choice(tuple(FILLER_METALS), "Filler metal; see /v1/filler-metals.")
    density = Quantity(DENSITY, "Density of the weld metal, over that of the filler.", minimum=5e-7, maximum=2.5e-5)
    process = seams.process()
    position = seams.position()
    efficiency = _share(
        "Share of the consumable that is deposited; with electrode before its stub is lost, else after.", 0.05
    )
    electrode = Object(ElectrodeSchema(), "Stick electrode, to take its stub off; SMAW only.")
    deposition = Either(
        (
            (("wire_diameter",), SolidWireSchema()),
            (("wire_mass", "feed_speed"), WeighedWireSchema()),
            ((), DepositionRateSchema()),
        ),
        "Deposition rate, or the wire and its feed.",
    )
    operator_factor = _share("Share of the clock during which the arc burns.", 0.01)
    gas_flow = Quantity(GAS_FLOW, "Shielding gas while the arc burns.", minimum=1e4, maximum=2e6)
    arc = Object(ArcSchema(), "Arc and power source, for the energy.")
    bead = Either(
        ((("travel_speed",), BeadSpeedSchema()), ((), BeadAreaSchema())), "What one pass fills, for the passes."
    )


class _PriceSchema(ClosedSchema):
    """Amount of money for one unit of a dimension."""

    dimension: Dimension
    makes = Price

    @post_load
    def _make(self, data: Mapping[str, Any], **kwargs: Any) -> Price:
        """Price of one engine unit."""
        amount = data["amount"] / self.dimension.factors[data["per"]]
        return Price(amount, data.get("filler"), data.get("process"))


def _amount() -> Number:
    return Number("Amount in the currency.", minimum=0.0, maximum=1e9, required=True)


def _per(dimension: Dimension) -> Choice:
    return Choice(tuple(dimension.factors), "Unit it is the price of.", required=True)


class LabourPriceSchema(_PriceSchema):
    """Price of labour and overhead."""

    dimension = WORKING_TIME
    amount = _amount()
    per = _per(WORKING_TIME)


class ConsumablePriceSchema(_PriceSchema):
    """Price of a consumable."""

    dimension = MASS
    amount = _amount()
    per = _per(MASS)
    filler = Choice(tuple(FILLER_METALS), "Filler metal it is for; any, when left out.")
    process = seams.process()


class GasPriceSchema(_PriceSchema):
    """Price of a shielding gas."""

    dimension = VOLUME
    amount = _amount()
    per = _per(VOLUME)
    process = seams.process()


class PowerPriceSchema(_PriceSchema):
    """Price of energy from the mains."""

    dimension = ENERGY
    amount = _amount()
    per = _per(ENERGY)


class Currency(Text):
    """Currency by its code."""

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> str:
        code = super()._deserialize(value, attr, data, **kwargs)
        if not (len(code) == 3 and code.isascii() and code.isalpha() and code.isupper()):
            raise ValidationError(Message('must be three capital letters such as "EUR"', "unknown-choice"))
        return code

    def document(self, refer: Any) -> dict[str, Any]:
        """Three capital letters."""
        return {"type": "string", "pattern": "^[A-Z]{3}$"}


class PricesSchema(ClosedSchema):
    """Prices in one currency; what has none is not in the cost."""

    makes = Prices
    currency = Currency("Code of the currency, ISO 4217.", longest=3, required=True)
    labour = Object(LabourPriceSchema(), "Labour and overhead, on the clock.")
    consumables = Entries(
        Object(ConsumablePriceSchema()),
        "prices",
        "Consumables; a weld takes the price that names its filler, else its process, else neither.",
        most=MOST_PRICES,
    )
    gases = Entries(
        Object(GasPriceSchema()),
        "prices",
        "Gases; a price that names the weld's process comes first.",
        most=MOST_PRICES,
    )
    power = Object(PowerPriceSchema(), "Energy from the mains.")


class FillerQuantitySchema(RequestSchema):
    """Welds to estimate."""

    makes = FillerQuantityRequest
    title = "FillerQuantityRequest"
    welds = Entries(Object(WeldSchema()), "welds", "Welds.", most=MOST_WELDS, required=True)
    prices = Object(PricesSchema(), "The caller's own prices; there are no others.")
