"""Section geometry: from the deepest fused point of a seam to the planes and the arc that bound its metal.

The throat of a section is the radius of the largest circle about the deepest fused point that stays inside the metal.
The metal is bounded by planes, each taken as endless, and by the arc of a blend; so the throat is the least of a few
clearances, each a closed form below. Grinding only removes: a finish is one more clearance.

Lengths in millimetres, angles in radians; every argument is a float or a column, all columns of one length.

``psi`` is the angle between the plates and ``gamma = pi - psi`` the angle between the outward normals of a corner's
outer planes. ``u`` and ``v`` are the distances from the fused point to the outer planes of parts 1 and 2.
"""

from math import pi

from .formula import Arg, Source, formula
from .numeric import Real, cos, hypot, maximum, minimum, sin, sqrt, tan, where

GEOMETRY = Source("", "section geometry", "geometry")
LENGTH = Arg("mm", 0.5, 40.0)
PLATES = Arg("rad", pi / 6, 5 * pi / 6)
TURN = Arg("rad", pi / 6, 5 * pi / 6)


@formula(
    "a_th",
    "z_1*z_2*sin(psi)/sqrt(z_1**2 + z_2**2 - 2*z_1*z_2*cos(psi))",
    unit="mm",
    source=GEOMETRY,
    args={"z_1": LENGTH, "z_2": LENGTH, "psi": PLATES},
)
def fillet_throat(z_1: Real, z_2: Real, psi: Real) -> Real:
    """Theoretical throat of a fillet from its two legs along the plate faces."""
    return z_1 * z_2 * sin(psi) / sqrt(z_1 * z_1 + z_2 * z_2 - 2.0 * z_1 * z_2 * cos(psi))


@formula("a", "z*cos(psi/2)", unit="mm", source=GEOMETRY, args={"z": LENGTH, "psi": PLATES})
def equal_leg_throat(z: Real, psi: Real) -> Real:
    """Throat of an equal-leg fillet, legs along the plate faces."""
    return z * cos(psi / 2.0)


@formula("z", "a/cos(psi/2)", unit="mm", source=GEOMETRY, args={"a": LENGTH, "psi": PLATES})
def equal_leg(a: Real, psi: Real) -> Real:
    """Leg along the plate face of an equal-leg fillet of given throat."""
    return a / cos(psi / 2.0)


@formula("gamma", "pi - psi", unit="rad", source=GEOMETRY, args={"psi": PLATES})
def corner_turn(psi: Real) -> Real:
    """Angle through which the outer face of a corner turns."""
    return pi - psi


@formula(
    "a_toes",
    "t_1*t_2*sin(gamma)/sqrt(t_1**2 + t_2**2 - 2*t_1*t_2*cos(gamma))",
    unit="mm",
    source=GEOMETRY,
    args={"t_1": LENGTH, "t_2": LENGTH, "gamma": TURN},
)
def open_corner_toe_line(t_1: Real, t_2: Real, gamma: Real) -> Real:
    """Distance of an open corner's root to the line between its toes."""
    return t_1 * t_2 * sin(gamma) / sqrt(t_1 * t_1 + t_2 * t_2 - 2.0 * t_1 * t_2 * cos(gamma))


@formula("u", "t_1 + p*a_toes/t_1", unit="mm", source=GEOMETRY, args={"t_1": LENGTH, "p": LENGTH, "a_toes": LENGTH})
def open_corner_clearance(t_1: Real, p: Real, a_toes: Real) -> Real:
    """Distance of an open corner's fused point to an outer plane, penetration running along the throat line."""
    # The throat line leans from the plane's normal by the angle whose cosine is a_toes/t_1.
    return t_1 + p * a_toes / t_1


@formula(
    "u",
    "t_1 - (o - p)*sin(psi)",
    unit="mm",
    source=GEOMETRY,
    args={"t_1": Arg("mm", 20, 40), "o": Arg("mm", 5, 20), "p": Arg("mm", 0, 5), "psi": PLATES},
)
def half_open_clearance(t_1: Real, o: Real, p: Real, psi: Real) -> Real:
    """Distance of a half-open corner's fused point to the outer plane of part 1."""
    return t_1 - (o - p) * sin(psi)


@formula(
    "a_toes",
    "t_2*(t_1/sin(psi) - o + p)/hypot(t_1/sin(psi) - o, t_2)",
    unit="mm",
    source=GEOMETRY,
    args={"t_1": Arg("mm", 20, 40), "t_2": LENGTH, "o": Arg("mm", 5, 20), "p": Arg("mm", 0, 5), "psi": PLATES},
)
def half_open_toe_line(t_1: Real, t_2: Real, o: Real, p: Real, psi: Real) -> Real:
    """Distance of a half-open corner's fused point to the line between its toes.

    The end of part 1 lies on the inner face of part 2, and part 2 ends square at the root.
    """
    open_side = t_1 / sin(psi) - o
    return t_2 * (open_side + p) / hypot(open_side, t_2)


@formula("d_cap", "hypot(u, w)", unit="mm", source=GEOMETRY, args={"u": LENGTH, "w": LENGTH})
def nearer_toe(u: Real, w: Real) -> Real:
    """Distance of a flat seam's fused point to its nearer toe, which no face height can lengthen."""
    return hypot(u, w)


@formula(
    "W_face",
    "2*sqrt(a**2 - u**2)",
    unit="mm",
    source=GEOMETRY,
    args={"a": Arg("mm", 20, 40), "u": Arg("mm", 0, 20)},
)
def face_width(a: Real, u: Real) -> Real:
    """Width of a face, even about its root, whose toes are no nearer to the fused point than the throat ``a``."""
    return 2.0 * sqrt(a * a - u * u)


@formula(
    "R_0",
    "(maximum(u, v) - minimum(u, v)*cos(gamma))/(1 - cos(gamma))",
    unit="mm",
    source=GEOMETRY,
    args={"u": LENGTH, "v": LENGTH, "gamma": TURN},
)
def free_radius(u: Real, v: Real, gamma: Real) -> Real:
    """Largest blend radius that costs no throat."""
    return (maximum(u, v) - minimum(u, v) * cos(gamma)) / (1.0 - cos(gamma))


@formula(
    "a_blend",
    "where(R <= R_0, minimum(u, v), R - sqrt((R - u)**2 + (R - v)**2 - 2*(R - u)*(R - v)*cos(gamma))/sin(gamma))",
    unit="mm",
    source=GEOMETRY,
    args={"u": LENGTH, "v": LENGTH, "gamma": TURN, "R": Arg("mm", 0, 80), "R_0": Arg("mm", 0, 80)},
)
def blend_clearance(u: Real, v: Real, gamma: Real, R: Real, R_0: Real) -> Real:
    """Distance of the fused point to a corner filled to its outer planes and blended to a radius."""
    x, y = R - u, R - v
    on_arc = R - sqrt(x * x + y * y - 2.0 * x * y * cos(gamma)) / sin(gamma)
    return where(R <= R_0, minimum(u, v), on_arc)


@formula(
    "R_max",
    "(u + v - q*(1 + cos(gamma)) + sqrt(2*(1 + cos(gamma))*(u - q)*(v - q)))/(1 - cos(gamma))",
    unit="mm",
    source=GEOMETRY,
    args={"u": Arg("mm", 10, 40), "v": Arg("mm", 10, 40), "q": Arg("mm", 0, 10), "gamma": TURN},
)
def largest_radius(u: Real, v: Real, q: Real, gamma: Real) -> Real:
    """Largest blend radius that leaves the throat ``q``, which must not exceed ``u`` or ``v``."""
    c = 1.0 + cos(gamma)
    return (u + v - q * c + sqrt(2.0 * c * (u - q) * (v - q))) / (1.0 - cos(gamma))


@formula(
    "u_req",
    "where(R <= v, q, R - sqrt((R - q)**2 - (R - v)**2))",
    unit="mm",
    source=GEOMETRY,
    args={"R": Arg("mm", 8, 30), "q": Arg("mm", 1, 8), "v": Arg("mm", 8, 16)},
)
def clearance_for_blend(R: Real, q: Real, v: Real) -> Real:
    """Distance to the outer plane of part 1 that keeps the throat ``q`` under a blend, at a right angle, ``q <= v``."""
    # Up to R = v the plane of part 1 is nearest and the blend costs nothing.
    inside = maximum((R - q) * (R - q) - (R - v) * (R - v), 0.0)
    return where(R <= v, q, R - sqrt(inside))


@formula("x_tangent", "R*tan(gamma/2)", unit="mm", source=GEOMETRY, args={"R": LENGTH, "gamma": TURN})
def tangent_length(R: Real, gamma: Real) -> Real:
    """Distance from the sharp corner to where a blend runs out on each outer plane."""
    return R * tan(gamma / 2.0)
