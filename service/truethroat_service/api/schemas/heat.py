"""Request of ``/v1/heat``."""

from ...application.core.quantities import (
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
from ...application.heat.cooling import Band
from ...application.heat.request import Arc, HeatRequest
from ...standards.aws_d1_1_2020.s5_preheat import CATEGORIES
from ...standards.en_1011_2_2001.annex_d_cooling import SEAMS
from ...standards.iso_15614_1_2017.hardness_limits import GROUPS
from ..fields import Choice, Either, Flag, Number, Object, Quantity
from . import ClosedSchema, RequestSchema, seams
from .steel import CompositionSchema, EquivalentsSchema


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


class HeatSchema(RequestSchema):
    """One pass; what a field left out would be needed for is left out of the answer, with the reason."""

    makes = HeatRequest
    title = "HeatRequest"
    arc = Either(
        [
            (("arc_energy",), ArcEnergySchema()),
            (("heat_input",), HeatInputSchema()),
            (("voltage", "current", "travel_speed", "deposition_rate"), ArcSettingsSchema()),
        ],
        "The arc: its settings, its energy, or its heat input.",
    )
    process = seams.process()
    efficiency = Number("Thermal efficiency k, instead of the process's own.", minimum=0.1, maximum=1.0)
    thickness = seams.thickness("Thickness of the plate itself, not the combined thickness.")
    seam = Choice(
        tuple(SEAMS), "Seam: a run on plate, a filling run of a butt, or a single-run fillet in a corner or a tee."
    )
    preheat = Quantity(
        TEMPERATURE,
        "Temperature of the plate when the pass begins.",
        minimum=-50.0,
        maximum=400.0,
        default="20 degC",
    )
    cooling_time = _time("Cooling time t8/5 as measured, instead of an arc.")
    cooling_window = Object(
        WindowSchema(),
        "Cooling times t8/5 to judge against. Common practice: 10 to 25 s for S235 to S355, 5 to 20 s for quenched and"
        " tempered S460 to S690, 5 to 15 s for S700MC.",
    )
    composition = Object(CompositionSchema(), "Composition of the parent steel.")
    carbon_equivalents = Object(EquivalentsSchema(), "Its carbon equivalents, instead of the composition.")
    weld_metal_cet = Number("CET of the weld metal; method B.", minimum=0.01, maximum=2.0)
    hydrogen = Quantity(
        HYDROGEN,
        "Diffusible hydrogen of the weld metal. It asks for methods A and B, and their limits hold.",
        maximum=100.0,
        above=True,
    )
    combined_thickness = Quantity(
        LENGTH,
        "Thicknesses that meet at the weld, added; each the mean over 75 mm, and half the sum for directly opposed"
        " fillets welded together. Method A.",
        maximum=1000.0,
        above=True,
    )
    preheat_category = Choice(
        tuple(CATEGORIES), f"Category of AWS D1.1. {' '.join(f'{key}: {said}.' for key, said in CATEGORIES.items())}"
    )
    thickest_part = seams.thickness("Thickest part at the weld, for AWS D1.1; the thickness when left out.")
    steel_group = Choice(GROUPS, "Steel group of ISO/TR 15608, for the hardness limit of ISO 15614-1.")
    heat_treated = Flag("Whether the weld is heat treated afterwards.", default=False)
    leg = _leg("Leg of a fillet laid in this one pass.")
    required_leg = _leg("Leg that was required of it.")
