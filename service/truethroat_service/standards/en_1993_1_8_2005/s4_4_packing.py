"""Clause 4.4: packing between the parts that a fillet joins."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, where
from ...engine.rounding import SAME
from . import clause


@formula(
    "z_p",
    "where(t_p < z_req*(1 - same), t_p, 0*t_p)",
    unit="mm",
    source=clause("4.4(2) and (3)", "from memory"),
    args={"t_p": Arg("mm", 1, 12), "z_req": Arg("mm", 2, 12), "same": Arg("", SAME, SAME)},
)
def added_leg(t_p: Real, z_req: Real, same: Real) -> Real:
    """Leg that packing thinner than the leg needed adds; thicker packing is welded to each part instead."""
    return where(t_p < z_req * (1.0 - same), t_p, 0.0 * t_p)
