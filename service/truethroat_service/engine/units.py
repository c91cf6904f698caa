"""Customary units in engine units, for rules and data that are written in them: defined exactly, rounded once.

The inch is 25.4 mm, the pound 0.45359237 kg and the pound-force 4.4482216152605 N, each exactly.
"""

from collections.abc import Mapping
from fractions import Fraction
from types import MappingProxyType

LENGTHS: Mapping[str, Fraction] = MappingProxyType({"mm": Fraction(1), "in": Fraction("25.4")})
"""Millimetres in each unit of length that data are written in."""

STRESSES: Mapping[str, Fraction] = MappingProxyType(
    {"N/mm2": Fraction(1), "ksi": 1000 * Fraction("4.4482216152605") / LENGTHS["in"] ** 2}
)
"""Megapascals in each unit of stress that data are written in."""

POUND = Fraction("0.45359237")
"""Kilograms in a pound."""

INCH = float(LENGTHS["in"])
"""Millimetres in an inch."""

KSI = float(STRESSES["ksi"])
"""Megapascals in a kip per square inch."""


def inches(*values: float) -> tuple[float, ...]:
    """Millimetres of each length in inches."""
    return tuple(value * INCH for value in values)
