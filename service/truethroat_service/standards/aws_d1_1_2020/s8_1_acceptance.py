"""Table 8.1: how much undersize and how deep undercut are allowed, over what length, and what never is."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, minimum, where
from ...engine.rounding import SAME
from ...engine.units import INCH
from . import clause

CRACKS = clause("Table 8.1(1), cracks", "from memory")
FUSION = clause("Table 8.1(2), fusion between weld and base metal", "from memory")
UNDERSIZE = clause("Table 8.1(6)", "second-hand")
UNDERCUT = clause("Table 8.1(7A), static", "second-hand")
CYCLIC_UNDERCUT = clause("Table 8.1(7B), cyclic", "second-hand")

# The table prints 6 mm beside 1/4 in and 8 mm beside 5/16 in; a size within either is in the row, and one between two
# rows takes the lower.
SIZES = (6.0, 5 * INCH / 16)
UNDER = (INCH / 16, 3 * INCH / 32, INCH / 8)
SHARE = 0.1
"""Share of the length that may be undersize."""

THICK = INCH
UNDERCUTS = (INCH / 32, INCH / 16)
TRANSVERSE_UNDERCUT = INCH / 100
"""Undercut, mm, of a weld across the tension in a primary member under cyclic load; UNDERCUTS[0] elsewhere."""

DEEPER = 2 * INCH
"""Length, mm, in any 12 in, over which undercut of thin parts may reach UNDERCUTS[1]."""

DEEPER_SHARE = 1.0 / 6.0
"""The same two inches in twelve, of a weld shorter than that: the table is silent, so its share is kept."""


@formula(
    "d_max",
    "where(z < z_1*(1 - same), d_1, where(z < z_2*(1 - same), d_2, d_3))",
    unit="mm",
    source=UNDERSIZE,
    args={
        "z": Arg("mm", 3, 16, SIZES),
        "z_1": Arg("mm", SIZES[0], SIZES[0]),
        "z_2": Arg("mm", SIZES[1], SIZES[1]),
        "d_1": Arg("mm", UNDER[0], UNDER[0]),
        "d_2": Arg("mm", UNDER[1], UNDER[1]),
        "d_3": Arg("mm", UNDER[2], UNDER[2]),
        "same": Arg("", SAME, SAME),
    },
)
def largest_undersize(z: Real, z_1: Real, z_2: Real, d_1: Real, d_2: Real, d_3: Real, same: Real) -> Real:
    """Most by which a fillet may be under its specified size, over a tenth of its length."""
    return where(z < z_1 * (1.0 - same), d_1, where(z < z_2 * (1.0 - same), d_2, d_3))


@formula(
    "l_under",
    "c_l*l_weld",
    unit="mm",
    source=UNDERSIZE,
    args={"c_l": Arg("", SHARE, SHARE), "l_weld": Arg("mm", 10, 4000)},
)
def undersize_length(c_l: Real, l_weld: Real) -> Real:
    """Longest that a fillet may be undersize."""
    return c_l * l_weld


@formula(
    "u_max",
    "where(t < t_1*(1 - same), u_1, u_2)",
    unit="mm",
    source=UNDERCUT,
    args={
        "t": Arg("mm", 3, 50, (THICK,)),
        "t_1": Arg("mm", THICK, THICK),
        "u_1": Arg("mm", UNDERCUTS[0], UNDERCUTS[0]),
        "u_2": Arg("mm", UNDERCUTS[1], UNDERCUTS[1]),
        "same": Arg("", SAME, SAME),
    },
)
def largest_undercut(t: Real, t_1: Real, u_1: Real, u_2: Real, same: Real) -> Real:
    """Deepest undercut of a statically loaded joint, over any length."""
    return where(t < t_1 * (1.0 - same), u_1, u_2)


@formula(
    "l_deeper",
    "minimum(l_most, c_l*l_weld)",
    unit="mm",
    source=UNDERCUT,
    args={
        "l_most": Arg("mm", DEEPER, DEEPER),
        "c_l": Arg("", DEEPER_SHARE, DEEPER_SHARE),
        "l_weld": Arg("mm", 10, 4000, (12 * INCH,)),
    },
)
def deeper_undercut_length(l_most: Real, c_l: Real, l_weld: Real) -> Real:
    """Longest that undercut of a thin part may be twice as deep, in any 12 in, or in the whole of a shorter weld."""
    return minimum(l_most, c_l * l_weld)
