"""Clauses 4.3.3 and 4.6: fillet welds all round a hole or slot: least hole, and resistance in shear."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real
from . import clause


@formula("d_min", "4*t", unit="mm", source=clause("4.3.3", "from memory"), args={"t": Arg("mm", 4, 60)})
def least_hole(t: Real) -> Real:
    """Least diameter of a hole or width of a slot that has a fillet all round."""
    return 4.0 * t


@formula(
    "F_w_Rd",
    "f_vw_d*A_we",
    unit="N",
    source=clause("4.6(1), by 4.5.3.3"),
    args={"f_vw_d": Arg("MPa", 150, 300), "A_we": Arg("mm**2", 50, 2000)},
)
def resistance(f_vw_d: Real, A_we: Real) -> Real:
    """Design resistance of one fillet all round, in shear."""
    return f_vw_d * A_we
