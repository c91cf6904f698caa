"""Metal a groove takes: the gap, the cut faces, what is gouged out behind, and a fillet on its face.

Nothing is added for a cap. Millimetres and square millimetres; floats or columns.
"""

from math import pi

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real, acos, sqrt

SECTION = Source("", "section of a groove filled flush", "geometry")
GAP = Arg("mm", 0.0, 10.0)
FACES = Arg("", 1.0, 4.0)
SIDES = Arg("", 1.0, 2.0)
CUT = Arg("mm**2", 0.0, 400.0)

GOUGE_DEPTH, GOUGE_WIDTH = 6.0, 9.0
GOUGE = Source("", "back-gouge 6 mm deep and 9 mm wide, rounded", "common practice, no source")


@formula(
    "A",
    "k*A_g + m*(g*d + w**2/2)",
    unit="mm**2",
    source=SECTION,
    args={
        "k": FACES,
        "A_g": CUT,
        "m": SIDES,
        "g": GAP,
        "d": Arg("mm", 0.5, 40.0),
        "w": Arg("mm", 0.0, 20.0),
    },
)
def partial_fill(k: Real, A_g: Real, m: Real, g: Real, d: Real, w: Real) -> Real:
    """Area of a partial-penetration groove: its cut faces, the gap as deep as it is filled, a fillet on each side."""
    return k * A_g + m * (g * d + w * w / 2.0)


@formula(
    "A",
    "g*t + k*A_g + A_bg",
    unit="mm**2",
    source=SECTION,
    args={"g": GAP, "t": Arg("mm", 1.0, 60.0), "k": FACES, "A_g": CUT, "A_bg": Arg("mm**2", 0.0, 60.0)},
)
def full_fill(g: Real, t: Real, k: Real, A_g: Real, A_bg: Real) -> Real:
    """Area of a full-penetration groove: the gap through the thickness, its cut faces, what is gouged behind."""
    return g * t + k * A_g + A_bg


@formula(
    "A_bg",
    "2*h*w/3",
    unit="mm**2",
    source=GOUGE,
    args={"h": Arg("mm", 4.0, 9.0), "w": Arg("mm", 6.0, 12.0)},
)
def gouged(h: Real, w: Real) -> Real:
    """Area a back-gouge opens: two thirds of its depth and width."""
    return 2.0 * h * w / 3.0


@formula(
    "A",
    "k*(R*h - (h*sqrt(R**2 - h**2) + R**2*(pi/2 - acos(h/R))/rad)/2)",
    unit="mm**2",
    source=Source("", "between a round surface and the plane it touches", "geometry"),
    args={"k": SIDES, "R": Arg("mm", 10.0, 16.0), "h": Arg("mm", 6.0, 9.9)},
)
def flare_fill(k: Real, R: Real, h: Real) -> Real:
    """Area of a flare groove filled to a height over where the surfaces touch; a flare V has two such halves."""
    return k * (R * h - (h * sqrt(R * R - h * h) + R * R * (pi / 2.0 - acos(h / R))) / 2.0)
