"""NDP to 4.5.2: least throat by the thicker part, so that a small bead does not chill on a thick plate."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, maximum, sqrt
from . import clause

UNIT = 1.0
"""The millimetre in which the rule is written."""
OFFSET = 0.5
LEAST = 3.0


@formula(
    "a_min",
    "maximum(sqrt(t_max*u) - c, a_0)",
    unit="mm",
    source=clause("NDP to 4.5.2, (NA.1)"),
    args={
        "t_max": Arg("mm", 3, 80),
        "u": Arg("mm", UNIT, UNIT),
        "c": Arg("mm", OFFSET, OFFSET),
        "a_0": Arg("mm", LEAST, LEAST),
    },
)
def least_throat(t_max: Real, u: Real, c: Real, a_0: Real) -> Real:
    """Least throat: the root of the thicker part's millimetres, less half a millimetre, and 3 mm."""
    return maximum(sqrt(t_max * u) - c, a_0)
