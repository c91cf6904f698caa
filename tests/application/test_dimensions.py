"""Units of every dimension against NIST SP 811, appendix B, and the two systems of answers."""

import pytest

from truethroat_service.application.core import quantities
from truethroat_service.application.core.quantities import Dimension, render

DIMENSIONS = [value for value in vars(quantities).values() if isinstance(value, Dimension)]

# What one of each unit is in engine units: the inch is 25.4 mm, the pound 0.45359237 kg, both exactly.
FACTORS = [
    (quantities.SECOND_MOMENT, "in4", 25.4**4),
    (quantities.VOLUME, "ft3", 304.8**3),
    (quantities.VOLUME, "L", 1e6),
    (quantities.MASS, "lb", 0.45359237),
    (quantities.DENSITY, "kg/m3", 1e-9),
    (quantities.DENSITY, "lb/in3", 0.45359237 / 25.4**3),
    (quantities.TIME, "h", 3600.0),
    (quantities.SPEED, "in/min", 25.4 / 60),
    (quantities.SPEED, "mm/min", 1 / 60),
    (quantities.MASS_RATE, "lb/h", 0.45359237 / 3600),
    (quantities.GAS_FLOW, "ft3/h", 304.8**3 / 3600),
    (quantities.GAS_FLOW, "L/min", 1e6 / 60),
    (quantities.ENERGY, "kWh", 3600.0),
    (quantities.ENERGY_PER_LENGTH, "kJ/in", 1 / 25.4),
    (quantities.ENERGY_PER_LENGTH, "J/mm", 1e-3),
]

# (degC, degF), whole numbers of 1.8 t + 32.
TEMPERATURES = [(0.0, 32.0), (100.0, 212.0), (-40.0, -40.0), (150.0, 302.0), (20.0, 68.0)]


@pytest.mark.parametrize(("dimension", "unit", "factor"), FACTORS, ids=lambda value: getattr(value, "name", value))
def test_a_unit_is_worth_what_nist_says(dimension: Dimension, unit: str, factor: float) -> None:
    """The factor goes in, and comes out again."""
    assert dimension.to_engine(1.0, unit) == pytest.approx(factor, rel=1e-14)
    assert dimension.from_engine(factor, unit) == pytest.approx(1.0, rel=1e-14)


@pytest.mark.parametrize(("celsius", "fahrenheit"), TEMPERATURES)
def test_a_temperature_has_its_own_zero(celsius: float, fahrenheit: float) -> None:
    """Degrees Fahrenheit do not begin where degrees Celsius do."""
    assert quantities.TEMPERATURE.to_engine(fahrenheit, "degF") == pytest.approx(celsius, abs=1e-12)
    shown = render(quantities.TEMPERATURE, celsius, "us")
    assert shown["value"] == pytest.approx(fahrenheit, abs=1e-12)
    assert shown["unit"] == "degF"


@pytest.mark.parametrize("dimension", DIMENSIONS, ids=lambda dimension: dimension.name)
def test_a_dimension_answers_in_units_it_accepts(dimension: Dimension) -> None:
    """What an answer says may be sent back as it is."""
    for system in ("metric", "us"):
        shown = render(dimension, 3.0, system)
        assert shown["unit"] in dimension.factors
        assert dimension.parse(shown["text"]) is not None


def test_every_us_unit_belongs_to_a_dimension() -> None:
    """The list by which a request shows its units names nothing that no field takes."""
    known = {unit for dimension in DIMENSIONS for unit in dimension.factors}
    assert known >= quantities.US_UNITS
