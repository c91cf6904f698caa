"""Width and depth of one bead, and the sulphur and phosphorus in it: what a centreline crack starts from."""

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real

MITRE = Source("", "flat fillet of equal legs at 90 deg, penetration along the bisector", "geometry")
SHAPE = Source(
    "A. R. Tamboli, Handbook of Structural Steel Connection Design and Details", "p. 186, width to depth of a bead"
)
DEPTH_TO_WIDTH = Source("TWI Job Knowledge 44", "depth to width of 0.5 to 0.8", "from memory")
HOLLOW_FACE = Source(SHAPE.document, "p. 186, concave faces")
SULPHUR = Source("TWI Job Knowledge 44", "S + P up to 0.06 % in C-Mn steel")
CRATER = Source("TWI Job Knowledge 44", "craters")

LEAST, TARGET = 1.0, 1.4
"""Width over depth: under the first a bead is at risk, to the second it is aimed at in a groove."""

DEEP, WIDE = 1.25, 2.0
"""Width over depth of the second source."""

SULPHUR_AND_PHOSPHORUS = 0.06
"""Most of both together, weight %."""

LENGTH = Arg("mm", 1, 30)


@formula("W", "2*a", unit="mm", source=MITRE, args={"a": LENGTH})
def face_width(a: Real) -> Real:
    """Width of the face of a fillet by its throat."""
    return 2.0 * a


@formula("D", "a + p", unit="mm", source=MITRE, args={"a": LENGTH, "p": Arg("mm", 0, 15)})
def fillet_depth(a: Real, p: Real) -> Real:
    """Depth of a fillet from its face."""
    return a + p


@formula("WD", "W/D", unit="", source=SHAPE, args={"W": LENGTH, "D": LENGTH})
def width_to_depth(W: Real, D: Real) -> Real:
    """Width of a bead over its depth."""
    return W / D


@formula("SP", "S + P", unit="", source=SULPHUR, args={"S": Arg("", 0, 0.05), "P": Arg("", 0, 0.05)})
def sulphur_and_phosphorus(S: Real, P: Real) -> Real:
    """Sulphur and phosphorus together, weight %."""
    return S + P
