"""Table 3: tolerances of straightness, flatness and parallelism, classes E to H.

Classes E and F and the first row of G were read on a reprint; the rest of G, and H, are from memory.
"""

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any, Literal

from ...engine.formula import Arg, Formula, Source, Table, formula
from ...engine.numeric import Real
from . import clause

FormClass = Literal["E", "F", "G", "H"]
READ, RECALLED = clause("Table 3"), clause("Table 3, classes G and H", "from memory")
LONGER_SIDE = clause("Table 3, by the longer side of a surface", "from memory")
OVER = 30.0
"""Dimension, mm, above which the table begins."""

LIMITS = (120.0, 400.0, 1000.0, 2000.0, 4000.0, 8000.0, 12000.0, 16000.0, 20000.0)
NOMINAL = Arg("mm", OVER, 30000.0, LIMITS)


def _table(name: str, source: Source, *values: float) -> Table:
    return Table(name, "mm", "mm", LIMITS, values, source)


CLASS_E = _table("table_3_E", READ, 0.5, 1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0)
CLASS_F = _table("table_3_F", READ, 1.0, 1.5, 3.0, 4.5, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0)
CLASS_G = _table("table_3_G", RECALLED, 1.5, 3.0, 5.5, 9.0, 11.0, 16.0, 20.0, 22.0, 25.0, 25.0)
CLASS_H = _table("table_3_H", RECALLED, 2.5, 5.0, 9.0, 14.0, 18.0, 26.0, 32.0, 36.0, 40.0, 40.0)


@formula("d_max", "table_3_E(l)", unit="mm", source=READ, tables=(CLASS_E,), args={"l": NOMINAL})
def class_e(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of straightness, flatness and parallelism, class E."""
    return CLASS_E(l)


@formula("d_max", "table_3_F(l)", unit="mm", source=READ, tables=(CLASS_F,), args={"l": NOMINAL})
def class_f(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of straightness, flatness and parallelism, class F."""
    return CLASS_F(l)


@formula("d_max", "table_3_G(l)", unit="mm", source=RECALLED, tables=(CLASS_G,), args={"l": NOMINAL})
def class_g(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of straightness, flatness and parallelism, class G."""
    return CLASS_G(l)


@formula("d_max", "table_3_H(l)", unit="mm", source=RECALLED, tables=(CLASS_H,), args={"l": NOMINAL})
def class_h(l: Real) -> Real:  # noqa: E741 - the symbol of the standard
    """Tolerance of straightness, flatness and parallelism, class H."""
    return CLASS_H(l)


CLASSES: Mapping[FormClass, Formula[Any]] = MappingProxyType({"E": class_e, "F": class_f, "G": class_g, "H": class_h})
"""Tolerance by class, the tightest first."""
