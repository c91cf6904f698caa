"""Welds required flush: how much a weld required flush may be thinned."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, minimum
from ...engine.units import INCH
from . import clause

FLUSH = clause("5.24, welds required flush, as in editions before", "from memory")
THINNING, SHARE = INCH / 32, 0.05
"""Most that may be taken off the part, mm, and as a share of the thinner."""


@formula(
    "q_max",
    "minimum(q_cap, c_t*t)",
    unit="mm",
    source=FLUSH,
    args={"q_cap": Arg("mm", THINNING, THINNING), "c_t": Arg("", SHARE, SHARE), "t": Arg("mm", 3, 60)},
)
def largest_thinning(q_cap: Real, c_t: Real, t: Real) -> Real:
    """Most by which grinding flush may thin the part or the weld."""
    return minimum(q_cap, c_t * t)
