"""Clause 7.23 and its tables: how far a weld's face may stand out, and what a weld required flush may keep or lose."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, where
from ...engine.rounding import SAME
from ...engine.units import INCH
from . import clause

PROFILE = clause("7.23 and its table of profiles", "from memory")
REINFORCEMENT = clause("7.23, reinforcement of groove welds by thickness", "from memory")
FLUSH = clause("7.23, welds required flush, as 5.24.3.1 of the edition of 2010", "second-hand")

# The table prints 8 mm beside 5/16 in: a face between the two is held to the row that allows less.
NARROW, WIDE = 8.0, INCH
"""Face widths, mm, that end the first row and begin the last."""

CONVEXITY = (INCH / 16, INCH / 8, 3 * INCH / 16)
"""Convexity allowed in each row, mm."""

THICKNESSES = (INCH, 2 * INCH)
"""Thicknesses, mm, that end the first and the second row of reinforcement."""

HEIGHTS = (INCH / 8, 3 * INCH / 16, INCH / 4)
"""Reinforcement allowed in each row, mm; under cyclic load the last row is as the second."""

FLUSH_REST = INCH / 32
"""Most, mm, that a weld required flush may keep of its reinforcement (none on faying surfaces) or lose of its part."""


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


@formula(
    "R_max",
    "where(t <= t_1*(1 + same), r_1, where(t <= t_2*(1 + same), r_2, r_3))",
    unit="mm",
    source=REINFORCEMENT,
    args={
        "t": Arg("mm", 3, 80, THICKNESSES),
        "t_1": Arg("mm", THICKNESSES[0], THICKNESSES[0]),
        "t_2": Arg("mm", THICKNESSES[1], THICKNESSES[1]),
        "r_1": Arg("mm", HEIGHTS[0], HEIGHTS[0]),
        "r_2": Arg("mm", HEIGHTS[1], HEIGHTS[1]),
        "r_3": Arg("mm", HEIGHTS[1], HEIGHTS[2]),
        "same": Arg("", SAME, SAME),
    },
)
def largest_reinforcement(t: Real, t_1: Real, t_2: Real, r_1: Real, r_2: Real, r_3: Real, same: Real) -> Real:
    """Largest reinforcement of a groove weld by the thickness."""
    return where(t <= t_1 * (1.0 + same), r_1, where(t <= t_2 * (1.0 + same), r_2, r_3))
