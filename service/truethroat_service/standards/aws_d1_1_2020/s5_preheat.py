"""Table 5.8 (Table 3.3 in 2015): least preheat and interpass temperature by category and thickest part.

The table prints degrees Fahrenheit and, not as conversions of them, degrees Celsius; thickness is taken in inches.
"""

from collections.abc import Mapping
from types import MappingProxyType

from ...engine.formula import Arg, Formula, Table, formula
from ...engine.numeric import Real, where
from ...engine.units import inches
from . import clause

TABLE_5_8 = clause("Table 5.8 (read as Table 3.3 of the 2015 edition)", "second-hand")
COLD_STEEL = clause("Table 5.8, base metal below 32 degF", "second-hand")
COLD_AIR = clause("7.11, environment (no welding below 0 degF)", "from memory")

FROZEN_BELOW = 0.0
"""Temperature of the plate, degC (32 degF), below which it is warmed first, whatever its preheat."""

WARMED_TO = (70.0 - 32.0) / 1.8
"""Temperature, degC (70 degF), that frozen steel is warmed to at least."""

PRINTED_WARMED_TO = 20.0
"""Degrees Celsius printed beside the 70 degF."""

CATEGORIES: Mapping[str, str] = MappingProxyType(
    {
        "A": "SMAW with other than low-hydrogen electrodes on A36, A53 B, A500 and the like",
        "B": "low-hydrogen SMAW, SAW, GMAW or FCAW on A36, A572-42 to -55, A588, A992, A913-50, A500",
        "C": "A572-60 and -65, A633 E, A913-60 and -65, A709 HPS 70W",
        "D": "A913 and A710 with H8 consumables",
    }
)
PRINTED: Mapping[float, float] = MappingProxyType(
    {32.0: 0.0, 50.0: 10.0, 70.0: PRINTED_WARMED_TO, 150.0: 65.0, 225.0: 110.0, 300.0: 150.0}
)
"""Degrees Celsius printed beside degrees Fahrenheit."""

THICKNESS = inches(3 / 4, 1.5, 2.5)
PART = Arg("mm", 3, 120, THICKNESS)


def _celsius(*fahrenheit: float) -> tuple[float, ...]:
    """Exact degrees Celsius."""
    return tuple((value - 32.0) / 1.8 for value in fahrenheit)


A = Table("preheat_A", "mm", "degC", limits=THICKNESS, values=_celsius(32, 150, 225, 300), source=TABLE_5_8)
B = Table("preheat_B", "mm", "degC", limits=THICKNESS, values=_celsius(32, 50, 150, 225), source=TABLE_5_8)
C = Table("preheat_C", "mm", "degC", limits=THICKNESS, values=_celsius(50, 150, 225, 300), source=TABLE_5_8)
D = Table("preheat_D", "mm", "degC", limits=(), values=_celsius(32), source=TABLE_5_8)


@formula("T_pre", "preheat_A(t)", unit="degC", source=TABLE_5_8, args={"t": PART}, tables=(A,))
def preheat_a(t: Real) -> Real:
    """Least preheat in category A, by the thickest part."""
    return A(t)


@formula("T_pre", "preheat_B(t)", unit="degC", source=TABLE_5_8, args={"t": PART}, tables=(B,))
def preheat_b(t: Real) -> Real:
    """Least preheat in category B, by the thickest part."""
    return B(t)


@formula("T_pre", "preheat_C(t)", unit="degC", source=TABLE_5_8, args={"t": PART}, tables=(C,))
def preheat_c(t: Real) -> Real:
    """Least preheat in category C, by the thickest part."""
    return C(t)


@formula("T_pre", "preheat_D(t)", unit="degC", source=TABLE_5_8, args={"t": PART}, tables=(D,))
def preheat_d(t: Real) -> Real:
    """Least preheat in category D, whatever the thickness."""
    return D(t)


@formula(
    "T_w",
    "where(T_s < T_0, where(T_r < T_1, T_1, T_r), T_r)",
    unit="degC",
    source=COLD_STEEL,
    args={
        "T_r": Arg("degC", -100, 300),
        "T_s": Arg("degC", -50, 100),
        "T_0": Arg("degC", FROZEN_BELOW, FROZEN_BELOW),
        "T_1": Arg("degC", PRINTED_WARMED_TO, WARMED_TO),
    },
)
def warmed(T_r: Real, T_s: Real, T_0: Real, T_1: Real) -> Real:
    """Temperature to warm a plate to: that of the rule, and at least that of a frozen plate where it is frozen."""
    return where(T_s < T_0, where(T_r < T_1, T_1, T_r), T_r)


PREHEAT: Mapping[str, Formula[...]] = MappingProxyType({"A": preheat_a, "B": preheat_b, "C": preheat_c, "D": preheat_d})
