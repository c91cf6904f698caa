"""Request of ``/v1/heat``."""

from ...application.core.quantities import (
    CURRENT,
    ENERGY_PER_LENGTH,
    LENGTH,
    MASS_RATE,
    SPEED,
    TIME,
    VOLTAGE,
)
from ...application.core.shape import Band
from ...application.heat.request import Arc
from ..fields import Quantity
from . import ClosedSchema


def _energy(description: str) -> Quantity:
    return Quantity(ENERGY_PER_LENGTH, description, maximum=50.0, above=True, required=True)


def _leg(description: str) -> Quantity:
    return Quantity(LENGTH, description, minimum=0.5, maximum=50.0)


def _time(description: str, required: bool = False) -> Quantity:
    return Quantity(TIME, description, minimum=0.1, maximum=1000.0, required=required)


class ArcSettingsSchema(ClosedSchema):
    """Settings of the arc; without its speed, what speed it may have."""

    makes = Arc
    title = "ArcSettings"
    voltage = Quantity(
        VOLTAGE,
        "Arc voltage. Of a waveform-controlled machine send arc_energy from instantaneous readings instead.",
        maximum=100.0,
        above=True,
        required=True,
    )
    current = Quantity(CURRENT, "Welding current.", maximum=3000.0, above=True, required=True)
    travel_speed = Quantity(SPEED, "Travel speed.", maximum=1000.0, above=True)
    deposition_rate = Quantity(
        MASS_RATE, "Metal deposited while the arc burns, for the bead of a fillet.", maximum=0.1, above=True
    )


class ArcEnergySchema(ClosedSchema):
    """Arc energy, without an efficiency: the heat input of AWS D1.1 and ASME IX."""

    makes = Arc
    title = "ArcEnergy"
    arc_energy = _energy("Arc energy per length.")


class HeatInputSchema(ClosedSchema):
    """Heat input of EN 1011-1, the efficiency in it."""

    makes = Arc
    title = "HeatInput"
    heat_input = _energy("Heat input per length.")


class WindowSchema(ClosedSchema):
    """Cooling times t8/5 to keep to."""

    makes = Band
    title = "CoolingWindow"
    least = _time("Shortest time that does not harden the steel too much.", required=True)
    most = _time("Longest time that does not coarsen its grain too much.", required=True)
