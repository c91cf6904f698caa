"""Clause 7.21: what a root gap does to a fillet, and how far the parts of a butt may be out of line."""

from math import pi

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, minimum, sin, where
from ...engine.rounding import SAME
from ...engine.units import INCH
from . import clause

FREE_GAP = INCH / 16
"""Gap that needs no larger leg, mm."""

LARGEST_GAP = 3 * INCH / 16
"""Gap over which parts must be brought together, mm (5/16 in for parts of 3 in and more on backing)."""

FIT_UP = clause("7.21.1", "second-hand")
ALIGNMENT = clause("7.21.3", "second-hand")
OFFSET_SHARE, OFFSET_CAP = 0.1, INCH / 8
"""Offset of the parts of a butt: share of the thinner, and most, mm."""


@formula(
    "g_add",
    "where(g > g_free*(1 + same), g, 0*g)",
    unit="mm",
    source=FIT_UP,
    args={
        "g": Arg("mm", 0, 5, (FREE_GAP,)),
        "g_free": Arg("mm", FREE_GAP, FREE_GAP),
        "same": Arg("", SAME, SAME),
    },
)
def leg_added(g: Real, g_free: Real, same: Real) -> Real:
    """What a root gap adds to the leg: beyond the free gap the whole of it, not the excess."""
    return where(g > g_free * (1.0 + same), g, 0.0 * g)


@formula(
    "g_face",
    "g_add/sin(psi)",
    unit="mm",
    source=clause("7.21.1, the leg of a skewed joint standing square on the other plate", "from memory"),
    args={"g_add": Arg("mm", 0, 5), "psi": Arg("rad", pi / 6, 5 * pi / 6)},
)
def along_the_face(g_add: Real, psi: Real) -> Real:
    """What a gap adds to a leg along the plate's face."""
    return g_add / sin(psi)


@formula(
    "e_max",
    "minimum(c_t*t, e_cap)",
    unit="mm",
    source=ALIGNMENT,
    args={
        "c_t": Arg("", OFFSET_SHARE, OFFSET_SHARE),
        "t": Arg("mm", 3, 60),
        "e_cap": Arg("mm", OFFSET_CAP, OFFSET_CAP),
    },
)
def largest_offset(c_t: Real, t: Real, e_cap: Real) -> Real:
    """Most by which the parts of a butt may be out of line, by the thinner."""
    return minimum(c_t * t, e_cap)
