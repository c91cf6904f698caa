"""Table 1: tolerances of linear dimensions, classes A to D, plus or minus.

A reprint was read, which prints the 1 mm of 2 to 30 mm once for all classes.
"""

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any, Literal

from ...engine.formula import Arg, Formula, Table, formula
from ...engine.numeric import Real
from . import clause

LinearClass = Literal["A", "B", "C", "D"]
TABLE_1 = clause("Table 1")
LEAST = 2.0
"""Shortest dimension of the table, mm."""

LIMITS = (30.0, 120.0, 400.0, 1000.0, 2000.0, 4000.0, 8000.0, 12000.0, 16000.0, 20000.0)
NOMINAL = Arg("mm", LEAST, 30000.0, LIMITS)


def _table(name: str, *values: float) -> Table:
    return Table(name, "mm", "mm", LIMITS, values, TABLE_1)


CLASS_A = _table("table_1_A", 1.0, 1.0, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0)
CLASS_B = _table("table_1_B", 1.0, 2.0, 2.0, 3.0, 4.0, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0)
CLASS_C = _table("table_1_C", 1.0, 3.0, 4.0, 6.0, 8.0, 11.0, 14.0, 18.0, 21.0, 24.0, 27.0)
CLASS_D = _table("table_1_D", 1.0, 4.0, 7.0, 9.0, 12.0, 16.0, 21.0, 27.0, 32.0, 36.0, 40.0)


@formula("d_max", "table_1_A(l)", unit="mm", source=TABLE_1, tables=(CLASS_A,), args={"l": NOMINAL})
def class_a(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of a linear dimension, class A."""
    return CLASS_A(l)


@formula("d_max", "table_1_B(l)", unit="mm", source=TABLE_1, tables=(CLASS_B,), args={"l": NOMINAL})
def class_b(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of a linear dimension, class B."""
    return CLASS_B(l)


@formula("d_max", "table_1_C(l)", unit="mm", source=TABLE_1, tables=(CLASS_C,), args={"l": NOMINAL})
def class_c(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of a linear dimension, class C."""
    return CLASS_C(l)


@formula("d_max", "table_1_D(l)", unit="mm", source=TABLE_1, tables=(CLASS_D,), args={"l": NOMINAL})
def class_d(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of a linear dimension, class D."""
    return CLASS_D(l)


CLASSES: Mapping[LinearClass, Formula[Any]] = MappingProxyType({"A": class_a, "B": class_b, "C": class_c, "D": class_d})
"""Tolerance by class, the tightest first."""
