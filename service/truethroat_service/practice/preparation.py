"""Cut and fill of a groove: setback on the face, and area, by form, depth and angle.

``d`` is the depth square to the face and ``beta`` the angle a cut face makes with it, so the included angle of a bevel
or J and half of that of a V or U. ``r`` is the root radius of a J or U. Millimetres and radians; floats or columns.
"""

from math import pi

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real, acos, cos, maximum, minimum, sin, tan, where

GROOVES = Source("", "geometry of a groove face", "geometry")
DEPTH = Arg("mm", 0.5, 40.0)
ANGLE = Arg("rad", pi / 36, pi / 3)
RADIUS = Arg("mm", 3.0, 12.0)

J_ROOT_RADIUS = 10.0
U_ROOT_RADIUS = 6.0
ROOT_RADII = Source("AWS D1.1/D1.1M", "J and U grooves, root radius 3/8 in (10 mm) and 1/4 in (6 mm)", "from memory")


@formula("s", "d*tan(beta)", unit="mm", source=GROOVES, args={"d": DEPTH, "beta": ANGLE})
def bevel_setback(d: Real, beta: Real) -> Real:
    """Setback of a straight bevel, scribed from the edge on the face."""
    return d * tan(beta)


@formula("A_g", "d**2*tan(beta)/2", unit="mm**2", source=GROOVES, args={"d": DEPTH, "beta": ANGLE})
def bevel_area(d: Real, beta: Real) -> Real:
    """Area that one straight bevel opens."""
    return d * d * tan(beta) / 2.0


@formula(
    "H", "maximum(d - r*(1 - sin(beta)), 0*d)", unit="mm", source=GROOVES, args={"d": DEPTH, "beta": ANGLE, "r": RADIUS}
)
def straight_height(d: Real, beta: Real, r: Real) -> Real:
    """Height of the straight face above the root radius of a J or U."""
    return maximum(d - r * (1.0 - sin(beta)), 0.0 * d)


@formula(
    "phi",
    "where(H > 0*H, pi/2 - beta, acos(1 - minimum(d/r, 1)))",
    unit="rad",
    source=GROOVES,
    args={"d": DEPTH, "beta": ANGLE, "r": RADIUS, "H": Arg("mm", 0, 20, (0.0,))},
)
def root_arc(d: Real, beta: Real, r: Real, H: Real) -> Real:
    """Angle of the arc at the root of a J or U, cut short when the groove is shallower than its radius."""
    return where(H > 0.0, pi / 2.0 - beta, acos(1.0 - minimum(d / r, 1.0)))


@formula(
    "s",
    "r*sin(phi) + H*tan(beta)",
    unit="mm",
    source=GROOVES,
    args={"beta": ANGLE, "r": RADIUS, "H": Arg("mm", 0, 20), "phi": Arg("rad", 0.1, 1.5)},
)
def curved_setback(beta: Real, r: Real, H: Real, phi: Real) -> Real:
    """Setback of a J, or of half a U."""
    return r * sin(phi) + H * tan(beta)


@formula(
    "A_g",
    "r**2*(phi - sin(phi)*cos(phi)*rad)/(2*rad) + r*sin(phi)*H + H**2*tan(beta)/2",
    unit="mm**2",
    source=GROOVES,
    args={"beta": ANGLE, "r": RADIUS, "H": Arg("mm", 0, 20), "phi": Arg("rad", 0.1, 1.5)},
)
def curved_area(beta: Real, r: Real, H: Real, phi: Real) -> Real:
    """Area that a J, or half a U, opens."""
    return r * r * (phi - sin(phi) * cos(phi)) / 2.0 + r * sin(phi) * H + H * H * tan(beta) / 2.0
