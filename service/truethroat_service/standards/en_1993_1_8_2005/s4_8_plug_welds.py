"""Clauses 4.3.5 and 4.8: plug welds: hole, filling, and resistance in shear."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, maximum, where
from ...engine.rounding import SAME
from . import clause

CLEAR = 8.0
"""What a hole or slot is wider than the plate is thick, mm (4.3.5)."""

FILLED_TO = 16.0
"""Thickness up to which the hole is filled, mm (4.3.5)."""


@formula(
    "d_min",
    "t + d_8",
    unit="mm",
    source=clause("4.3.5(2)", "from memory"),
    args={"t": Arg("mm", 4, 60), "d_8": Arg("mm", CLEAR, CLEAR)},
)
def least_hole(t: Real, d_8: Real) -> Real:
    """Least diameter of a hole or width of a slot."""
    return t + d_8


@formula(
    "h_min",
    "where(t <= t_16*(1 + same), t, maximum(t/2, t_16))",
    unit="mm",
    source=clause("4.3.5(4)", "from memory"),
    args={"t": Arg("mm", 4, 60, (FILLED_TO,)), "t_16": Arg("mm", FILLED_TO, FILLED_TO), "same": Arg("", SAME, SAME)},
)
def least_filling(t: Real, t_16: Real, same: Real) -> Real:
    """Least height of filling: full up to 16 mm, beyond it half the thickness and no less than 16 mm."""
    return where(t <= t_16 * (1.0 + same), t, maximum(t / 2.0, t_16))


@formula(
    "F_w_Rd",
    "f_vw_d*A_w",
    unit="N",
    source=clause("4.8(1)", "from memory"),
    args={"f_vw_d": Arg("MPa", 150, 300), "A_w": Arg("mm**2", 50, 2000)},
)
def resistance(f_vw_d: Real, A_w: Real) -> Real:
    """Design resistance of one plug weld in shear."""
    return f_vw_d * A_w
