"""Area of a plug or slot weld in the faying surface."""

from math import pi

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real

HOLE = Source("", "round hole, or slot with half-round ends", "geometry")


@formula(
    "A_w",
    "w*(L - w) + pi*w**2/(4*rad)",
    unit="mm**2",
    source=HOLE,
    args={"w": Arg("mm", 8, 40), "L": Arg("mm", 40, 200)},
)
def hole_area(w: Real, L: Real) -> Real:
    """Area of a slot of a width and an overall length; a round hole is as long as it is wide."""
    return w * (L - w) + pi * w * w / 4.0
