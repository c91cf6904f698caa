"""Table 2: tolerances of angles, classes A to D, by the shorter leg of the angle; as an angle and as a rise on it.

The rise, printed in mm on a metre, is the angle's tangent rounded, mostly up: 15' is 4.36 mm and printed 4.5.
"""

from collections.abc import Mapping
from math import pi
from types import MappingProxyType
from typing import Any

from ...engine.formula import Arg, Formula, Source, Table, formula
from ...engine.numeric import Real, tan
from . import clause
from .table_1_linear import LinearClass

TABLE_2 = clause("Table 2")
LIMITS = (400.0, 1000.0)
LEG = Arg("mm", 10.0, 3000.0, LIMITS)
MINUTE = pi / 10800.0


def _angles(name: str, *minutes: float) -> Table:
    return Table(name, "mm", "rad", LIMITS, tuple(value * MINUTE for value in minutes), TABLE_2)


def _rises(name: str, *per_metre: float) -> Table:
    return Table(name, "mm", "", LIMITS, tuple(value / 1000.0 for value in per_metre), TABLE_2)


ANGLE_A = _angles("table_2_A", 20.0, 15.0, 10.0)
ANGLE_B = _angles("table_2_B", 45.0, 30.0, 20.0)
ANGLE_C = _angles("table_2_C", 60.0, 45.0, 30.0)
ANGLE_D = _angles("table_2_D", 90.0, 75.0, 60.0)
RISE_A = _rises("table_2_rise_A", 6.0, 4.5, 3.0)
RISE_B = _rises("table_2_rise_B", 13.0, 9.0, 6.0)
RISE_C = _rises("table_2_rise_C", 18.0, 13.0, 9.0)
RISE_D = _rises("table_2_rise_D", 26.0, 22.0, 18.0)


@formula("alpha", "table_2_A(l)", unit="rad", source=TABLE_2, tables=(ANGLE_A,), args={"l": LEG})
def class_a(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of an angle, class A."""
    return ANGLE_A(l)


@formula("alpha", "table_2_B(l)", unit="rad", source=TABLE_2, tables=(ANGLE_B,), args={"l": LEG})
def class_b(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of an angle, class B."""
    return ANGLE_B(l)


@formula("alpha", "table_2_C(l)", unit="rad", source=TABLE_2, tables=(ANGLE_C,), args={"l": LEG})
def class_c(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of an angle, class C."""
    return ANGLE_C(l)


@formula("alpha", "table_2_D(l)", unit="rad", source=TABLE_2, tables=(ANGLE_D,), args={"l": LEG})
def class_d(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of an angle, class D."""
    return ANGLE_D(l)


@formula("i_max", "table_2_rise_A(l)", unit="", source=TABLE_2, tables=(RISE_A,), args={"l": LEG})
def rise_a(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of an angle as a rise on its shorter leg, class A, as printed."""
    return RISE_A(l)


@formula("i_max", "table_2_rise_B(l)", unit="", source=TABLE_2, tables=(RISE_B,), args={"l": LEG})
def rise_b(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of an angle as a rise on its shorter leg, class B, as printed."""
    return RISE_B(l)


@formula("i_max", "table_2_rise_C(l)", unit="", source=TABLE_2, tables=(RISE_C,), args={"l": LEG})
def rise_c(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of an angle as a rise on its shorter leg, class C, as printed."""
    return RISE_C(l)


@formula("i_max", "table_2_rise_D(l)", unit="", source=TABLE_2, tables=(RISE_D,), args={"l": LEG})
def rise_d(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of an angle as a rise on its shorter leg, class D, as printed."""
    return RISE_D(l)


@formula(
    "i",
    "tan(alpha)",
    unit="",
    source=Source("", "rise of an angle", "geometry"),
    args={"alpha": Arg("rad", 0.001, 0.03)},
)
def rise(alpha: Real) -> Real:
    """Rise of an angle on its leg."""
    return tan(alpha)


CLASSES: Mapping[LinearClass, tuple[Formula[Any], Formula[Any]]] = MappingProxyType(
    {
        "A": (class_a, rise_a),
        "B": (class_b, rise_b),
        "C": (class_c, rise_c),
        "D": (class_d, rise_d),
    }
)
"""Tolerance by class, as an angle and as the printed rise, the tightest first."""
