"""Section J2.2b(e) and (f): segments of an intermittent fillet, and how far the parts of a lap overlap.

The rules are written in inches and used in inches, converted exactly; lengths here are millimetres.
"""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, maximum
from ...engine.units import INCH
from . import clause

LEAST_SEGMENT = 1.5 * INCH
LEAST_OVERLAP = INCH


@formula(
    "l_seg_min",
    "maximum(4*w, l_0)",
    unit="mm",
    source=clause("J2.2b(e)"),
    args={"w": Arg("mm", 1, 20), "l_0": Arg("mm", LEAST_SEGMENT, LEAST_SEGMENT)},
)
def least_segment(w: Real, l_0: Real) -> Real:
    """Least length of a segment of an intermittent fillet."""
    return maximum(4.0 * w, l_0)


@formula(
    "l_lap_min",
    "maximum(5*t, l_0)",
    unit="mm",
    source=clause("J2.2b(f)"),
    args={"t": Arg("mm", 1, 40), "l_0": Arg("mm", LEAST_OVERLAP, LEAST_OVERLAP)},
)
def least_overlap(t: Real, l_0: Real) -> Real:
    """Least overlap of a lap joint, by the thinner part."""
    return maximum(5.0 * t, l_0)
