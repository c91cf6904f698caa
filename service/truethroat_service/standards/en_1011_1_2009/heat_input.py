"""Arc energy and, with the thermal efficiency of the process, heat input.

AWS D1.1 and ASME IX call the arc energy heat input and use no efficiency; this standard multiplies by k.
"""

from collections.abc import Mapping
from types import MappingProxyType

from ...engine.formula import Arg, Source, formula
from ...engine.numeric import Real
from . import clause

HEAT_INPUT = clause("heat input, Q = k U I/v", "second-hand")
TABLE_1 = clause("Table 1, thermal efficiency k", "second-hand")
ARC_ENERGY = Source("AWS D1.1, ASME IX, EN 1011-1", "U I/v, without an efficiency", "second-hand")

EFFICIENCY: Mapping[str, float] = MappingProxyType(
    {"SAW": 1.0, "SMAW": 0.8, "GMAW": 0.8, "FCAW": 0.8, "FCAW-G": 0.8, "FCAW-S": 0.8, "GTAW": 0.6, "PAW": 0.6}
)
"""Thermal efficiency k by process; the standard has none for a flame or a beam."""

JOULE = 1e-3
"""Kilojoules in a volt ampere second."""

VOLTS, AMPERES, SPEED = Arg("V", 8, 45), Arg("A", 20, 1200), Arg("mm/s", 0.5, 60)
ENERGY, SHARE = Arg("kJ/mm", 0.1, 10), Arg("", 0.3, 1)
ONE_JOULE = Arg("kJ/(V*A*s)", JOULE, JOULE)


@formula(
    "E",
    "J*U*I/v",
    unit="kJ/mm",
    source=ARC_ENERGY,
    args={"U": VOLTS, "I": AMPERES, "v": SPEED, "J": ONE_JOULE},
)
def arc_energy(U: Real, I: Real, v: Real, J: Real) -> Real:  # noqa: E741 - the trade's symbol
    """Arc energy per length."""
    return J * U * I / v


@formula("Q", "k*E", unit="kJ/mm", source=HEAT_INPUT, args={"k": SHARE, "E": ENERGY})
def heat_input(k: Real, E: Real) -> Real:
    """Heat input per length, the efficiency in it."""
    return k * E


@formula("E", "Q/k", unit="kJ/mm", source=HEAT_INPUT, args={"Q": ENERGY, "k": SHARE})
def arc_energy_of_heat_input(Q: Real, k: Real) -> Real:
    """Arc energy per length that gives a heat input."""
    return Q / k


@formula(
    "v",
    "J*k*U*I/Q",
    unit="mm/s",
    source=HEAT_INPUT,
    args={"U": VOLTS, "I": AMPERES, "k": SHARE, "Q": ENERGY, "J": ONE_JOULE},
)
def travel_speed(U: Real, I: Real, k: Real, Q: Real, J: Real) -> Real:  # noqa: E741 - the trade's symbol
    """Travel speed that gives a heat input."""
    return J * k * U * I / Q
