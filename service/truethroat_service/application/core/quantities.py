"""Units at the edge: a closed list a dimension, factors computed once by pint, text as the shop writes it.

User text never reaches pint's parser. Engine units are mm, N, MPa, rad, kg, s, degC, kJ, V and A; a factor times a
value gives engine units, for a temperature less the zero of its scale.
"""

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from types import MappingProxyType
from typing import Literal, TypedDict

import pint

from ...engine.rounding import SAME, down, up

UnitSystem = Literal["metric", "us"]
Rounding = Literal["nearest", "down", "up"]

NUMBER = (
    r"[+-]?(?:(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:[eE][+-]?[0-9]{1,2})?"
    r"|(?:[0-9]{1,6} )?[0-9]{1,6}/0{0,3}[1-9][0-9]{0,5})"
)
"""A decimal ("6.35", "1e3"), a fraction ("1/4") or a whole and a fraction ("3 1/2")."""

_FRACTION = re.compile(r"(?:([0-9]+) )?([0-9]+)/([0-9]+)")


class QuantityDict(TypedDict):
    """Quantity as an answer holds it."""

    value: float
    unit: str
    text: str


@dataclass(frozen=True, slots=True)
class Dimension:
    """Dimension a field can have: the units accepted for it, those of answers, and the pattern of its text form."""

    name: str
    engine_unit: str
    factors: Mapping[str, float]
    metric: str
    us: str
    zeros: Mapping[str, float] = field(default_factory=dict)
    """Engine value of the zero of a unit, where that is not zero."""
    pattern: str = field(init=False)
    matcher: re.Pattern[str] = field(init=False)

    def __post_init__(self) -> None:
        """Build the pattern from the units."""
        units = "|".join(re.escape(unit).replace(r"\-", "-") for unit in sorted(self.factors, key=len, reverse=True))
        object.__setattr__(self, "pattern", f"^{NUMBER} ?(?:{units})$")
        object.__setattr__(self, "matcher", re.compile(f"({NUMBER}) ?({units})"))

    def parse(self, text: str) -> tuple[float, str] | None:
        """Number and unit of a text such as "3 1/2 in"; None when it does not have the form."""
        match = self.matcher.fullmatch(text)
        return (read_number(match[1]), match[2]) if match else None

    def unit(self, system: UnitSystem) -> str:
        """Unit of answers."""
        return self.us if system == "us" else self.metric

    def to_engine(self, number: float, unit: str) -> float:
        """Value in engine units."""
        return number * self.factors[unit] + self.zeros.get(unit, 0.0)

    def from_engine(self, value: float, unit: str) -> float:
        """Value in a unit, from engine units."""
        return (value - self.zeros.get(unit, 0.0)) / self.factors[unit]


def read_number(text: str) -> float:
    """Value of a number written as ``NUMBER`` allows; may be infinite when it is too large for a float."""
    sign = -1.0 if text.startswith("-") else 1.0
    digits = text.lstrip("+-")
    fraction = _FRACTION.fullmatch(digits) if "/" in digits else None
    if fraction is None:
        return sign * float(digits)
    whole, count, parts = int(fraction[1] or 0), int(fraction[2]), int(fraction[3])
    # A quotient of whole numbers is rounded once, so it is the float nearest to the fraction.
    return sign * ((whole * parts + count) / parts)


def _dimension(name: str, engine_unit: str, metric: str, us: str, units: Mapping[str, str]) -> Dimension:
    """Compute the factors of a dimension exactly, from pint's definitions."""
    target = _REGISTRY.Unit(engine_unit)
    factors = {
        unit: float(_REGISTRY.Quantity(Fraction(1), pint_name).to(target).magnitude)
        for unit, pint_name in units.items()
    }
    return Dimension(name, engine_unit, MappingProxyType(factors), metric, us)


_REGISTRY: pint.UnitRegistry[Fraction] = pint.UnitRegistry(non_int_type=Fraction, cache_folder=None)

LENGTH = _dimension(
    "length",
    "mm",
    "mm",
    "in",
    {"mm": "millimeter", "cm": "centimeter", "m": "meter", "in": "inch", "ft": "foot"},
)
FORCE = _dimension(
    "force",
    "N",
    "kN",
    "kip",
    {"N": "newton", "kN": "kilonewton", "MN": "meganewton", "lbf": "pound_force", "kip": "kip"},
)
# Of a person, whose pull reads as nothing in kips.
HAND_FORCE = _dimension("hand force", "N", "N", "lbf", {"N": "newton", "kN": "kilonewton", "lbf": "pound_force"})
FORCE_PER_LENGTH = _dimension(
    "force per length",
    "N/mm",
    "N/mm",
    "kip/in",
    {
        "N/mm": "newton/millimeter",
        "kN/mm": "kilonewton/millimeter",
        "kN/m": "kilonewton/meter",
        "lbf/in": "pound_force/inch",
        "kip/in": "kip/inch",
        "kip/ft": "kip/foot",
    },
)
MOMENT = _dimension(
    "moment",
    "N*mm",
    "kN*m",
    "kip*in",
    {
        "N*m": "newton*meter",
        "kN*m": "kilonewton*meter",
        "kip*in": "kip*inch",
        "kip*ft": "kip*foot",
        "lbf*in": "pound_force*inch",
        "lbf*ft": "pound_force*foot",
    },
)
LINE_SECOND_MOMENT = _dimension("line second moment", "mm**3", "mm3", "in3", {"mm3": "millimeter**3", "in3": "inch**3"})
STRESS = _dimension(
    "stress",
    "MPa",
    "MPa",
    "ksi",
    {
        "MPa": "megapascal",
        "N/mm2": "newton/millimeter**2",
        "GPa": "gigapascal",
        "ksi": "kip_per_square_inch",
        "psi": "pound_force_per_square_inch",
    },
)
# Angles go through pint's radian; pi is the only factor here that is not a ratio of whole numbers.
ANGLE = Dimension("angle", "rad", MappingProxyType({"deg": math.pi / 180.0, "rad": 1.0}), "deg", "deg")
AREA = _dimension("area", "mm**2", "mm2", "in2", {"mm2": "millimeter**2", "cm2": "centimeter**2", "in2": "inch**2"})
MASS_PER_LENGTH = _dimension(
    "mass per length",
    "kg/mm",
    "kg/m",
    "lb/ft",
    {"kg/m": "kilogram/meter", "lb/ft": "pound/foot", "lb/in": "pound/inch"},
)

SECOND_MOMENT = _dimension(
    "second moment of area",
    "mm**4",
    "mm4",
    "in4",
    {"mm4": "millimeter**4", "cm4": "centimeter**4", "in4": "inch**4"},
)
VOLUME = _dimension(
    "volume", "mm**3", "m3", "ft3", {"m3": "meter**3", "L": "liter", "cm3": "centimeter**3", "ft3": "foot**3"}
)
MASS = _dimension("mass", "kg", "kg", "lb", {"kg": "kilogram", "g": "gram", "t": "metric_ton", "lb": "pound"})
DENSITY = _dimension(
    "density",
    "kg/mm**3",
    "kg/m3",
    "lb/in3",
    {"kg/m3": "kilogram/meter**3", "g/cm3": "gram/centimeter**3", "lb/in3": "pound/inch**3"},
)
# Not "time": as the format of a text that is a clock time of RFC 3339.
TIME = _dimension("time span", "s", "s", "s", {"s": "second", "min": "minute", "h": "hour"})
WORKING_TIME = _dimension("working time", "s", "h", "h", {"h": "hour", "min": "minute", "s": "second"})
SPEED = _dimension(
    "speed",
    "mm/s",
    "mm/min",
    "in/min",
    {
        "mm/min": "millimeter/minute",
        "mm/s": "millimeter/second",
        "cm/min": "centimeter/minute",
        "m/min": "meter/minute",
        "in/min": "inch/minute",
    },
)
MASS_RATE = _dimension(
    "deposition rate",
    "kg/s",
    "kg/h",
    "lb/h",
    {"kg/h": "kilogram/hour", "g/min": "gram/minute", "lb/h": "pound/hour"},
)
GAS_FLOW = _dimension(
    "gas flow",
    "mm**3/s",
    "L/min",
    "ft3/h",
    {"L/min": "liter/minute", "m3/h": "meter**3/hour", "ft3/h": "foot**3/hour"},
)
VOLTAGE = _dimension("voltage", "V", "V", "V", {"V": "volt"})
CURRENT = _dimension("current", "A", "A", "A", {"A": "ampere"})
ENERGY = _dimension("energy", "kJ", "kWh", "kWh", {"kWh": "kilowatt_hour", "MJ": "megajoule", "kJ": "kilojoule"})
ENERGY_PER_LENGTH = _dimension(
    "energy per length",
    "kJ/mm",
    "kJ/mm",
    "kJ/in",
    {
        "kJ/mm": "kilojoule/millimeter",
        "kJ/cm": "kilojoule/centimeter",
        "J/mm": "joule/millimeter",
        "kJ/in": "kilojoule/inch",
    },
)
TEMPERATURE = Dimension(
    "temperature",
    "degC",
    MappingProxyType({"degC": 1.0, "degF": 5.0 / 9.0}),
    "degC",
    "degF",
    zeros=MappingProxyType({"degF": -160.0 / 9.0}),
)
# Of the weld metal, as standards on cold cracking give it; no unit of pint's.
HYDROGEN = Dimension("hydrogen content", "ml/100g", MappingProxyType({"ml/100g": 1.0}), "ml/100g", "ml/100g")

US_UNITS = frozenset(
    ("in", "ft", "lbf", "kip", "lbf/in", "kip/in", "kip/ft", "psi", "ksi", "lbf*in", "lbf*ft", "kip*in", "kip*ft")
) | frozenset(
    ("in2", "in3", "in4", "ft3", "lb", "lb/ft", "lb/in", "lb/in3", "lb/h", "in/min", "ft3/h", "kJ/in", "degF")
)
"""Units by which a request shows that it is written in US units."""

SHOP_FRACTION = 1.0 / 64.0
"""Finest fraction of an inch in an answer's text."""

_SIXTY_FOURTHS = tuple(str(Fraction(count, 64)) for count in range(64))
"""Each number of sixty-fourths under one, in lowest terms."""

_FIXED = tuple(f".{decimals}f" for decimals in range(328))
"""Format of each number of decimals; the least float above nought has its fourth figure in the 327th."""

SHOP_TENTH = 0.1
"""Step, mm, to which a metric allowance or radius is rounded in text."""

METRE = 1000.0
"""Length, mm, from which such a text is in whole millimetres, since a text has four figures."""


def render(dimension: Dimension, value: float, system: UnitSystem, rounding: Rounding = "nearest") -> QuantityDict:
    """Quantity of an answer: ``value`` exact in its unit, ``text`` as the shop writes it.

    ``rounding`` "down" or "up" rounds the text of a length to a sixty-fourth of an inch or a tenth of a millimetre (a
    whole one from 1000 mm), to the side that is safe for the reader; "nearest" keeps four figures, or the fraction when
    it is one.
    """
    unit = dimension.unit(system)
    # Fifteen figures are all a float surely holds; the sixteenth would print 3/16 in as 0.18749999999999997.
    number = float(f"{dimension.from_engine(value, unit):.15g}") + 0.0
    text = _plain(number) if rounding == "nearest" and unit != "in" else _length(number, unit, rounding)
    return {"value": number, "unit": unit, "text": f"{text} {unit}"}


def _length(number: float, unit: str, rounding: Rounding) -> str:
    """Number of a length's text."""
    if unit == "in":
        sixty_fourths = number / SHOP_FRACTION
        nearest = round(sixty_fourths)
        if abs(sixty_fourths - nearest) <= SAME * max(1.0, abs(nearest)):
            return _fraction(nearest)
        if rounding != "nearest":
            return _fraction(round(_rounded(number, SHOP_FRACTION, rounding) / SHOP_FRACTION))
    elif unit == "mm" and rounding != "nearest":
        return _plain(_rounded(number, 1.0 if abs(number) >= METRE else SHOP_TENTH, rounding))
    return _plain(number)


def _rounded(number: float, step: float, rounding: Rounding) -> float:
    """Number rounded to a step, down or up."""
    return float(up(number, step) if rounding == "up" else down(number, step))


def _plain(number: float) -> str:
    """Four figures, or all those before the point, without an exponent."""
    if number == 0.0:
        return "0"
    decimals = 3 - math.floor(math.log10(abs(number)))
    return format(number, _FIXED[decimals]).rstrip("0").rstrip(".") if decimals > 0 else f"{number:.0f}"


def _fraction(sixty_fourths: int) -> str:
    """Inches as a whole and a fraction in lowest terms."""
    sign, count = ("-", -sixty_fourths) if sixty_fourths < 0 else ("", sixty_fourths)
    whole, rest = divmod(count, 64)
    if not rest:
        return f"{sign}{whole}"
    return f"{sign}{whole} {_SIXTY_FOURTHS[rest]}" if whole else f"{sign}{_SIXTY_FOURTHS[rest]}"
