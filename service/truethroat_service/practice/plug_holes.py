"""Area of a plug or slot in the faying surface, and of a fillet all round a hole or slot."""

from math import pi

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real, minimum

HOLE = Source("", "round hole, or slot with half-round ends", "geometry")
ALL_ROUND = Source("", "fillet along the wall of a hole or slot with half-round ends", "geometry")


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


@formula(
    "l_c",
    "2*(L - w) + pi*(w - z/2)/rad",
    unit="mm",
    source=ALL_ROUND,
    args={"w": Arg("mm", 16, 60), "L": Arg("mm", 60, 200), "z": Arg("mm", 3, 8)},
)
def centre_line(w: Real, L: Real, z: Real) -> Real:
    """Length of the centre line of the throat of a fillet all round; it runs a quarter of the leg inside the wall."""
    return 2.0 * (L - w) + pi * (w - z / 2.0)


@formula(
    "A_we",
    "minimum(a*l_c, A_w)",
    unit="mm**2",
    source=ALL_ROUND,
    args={"a": Arg("mm", 2, 12), "l_c": Arg("mm", 20, 200), "A_w": Arg("mm**2", 100, 2000)},
)
def fillet_area(a: Real, l_c: Real, A_w: Real) -> Real:
    """Effective area of a fillet all round a hole or slot, no more than that of the hole itself."""
    return minimum(a * l_c, A_w)
