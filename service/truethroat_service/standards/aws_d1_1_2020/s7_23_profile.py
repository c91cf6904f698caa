"""Clause 7.23: how far a fillet's face may stand over the line between its toes."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, where
from ...engine.rounding import SAME
from ...engine.units import INCH
from . import clause

PROFILE = clause("7.23 and its table of profiles", "from memory")
NARROW, WIDE = 5 * INCH / 16, INCH
"""Face widths, mm, that end the first row and begin the last."""

CONVEXITY = (INCH / 16, INCH / 8, 3 * INCH / 16)
"""Convexity allowed in each row, mm."""


@formula(
    "r_max",
    "where(W <= W_1*(1 + same), r_1, where(W < W_2*(1 - same), r_2, r_3))",
    unit="mm",
    source=PROFILE,
    args={
        "W": Arg("mm", 2, 40, (NARROW, WIDE)),
        "W_1": Arg("mm", NARROW, NARROW),
        "W_2": Arg("mm", WIDE, WIDE),
        "r_1": Arg("mm", CONVEXITY[0], CONVEXITY[0]),
        "r_2": Arg("mm", CONVEXITY[1], CONVEXITY[1]),
        "r_3": Arg("mm", CONVEXITY[2], CONVEXITY[2]),
        "same": Arg("", SAME, SAME),
    },
)
def largest_convexity(W: Real, W_1: Real, W_2: Real, r_1: Real, r_2: Real, r_3: Real, same: Real) -> Real:
    """Largest convexity of a fillet by the width of its face."""
    return where(W <= W_1 * (1.0 + same), r_1, where(W < W_2 * (1.0 - same), r_2, r_3))
