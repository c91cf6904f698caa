"""Metal of a weld's cross-section beyond fillets and cut faces: gap, caps and outside corners.

Lengths in millimetres, angles in radians; every argument is a float or a column.
"""

from math import pi

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real, cos, sin, tan

SECTION = Source("", "geometry of a weld's section", "geometry")
CAP = Source("ESAB Filler Metal Data Handbook", "section 8, p. 8-9: a cap is a parabola, two thirds of its box")

LENGTH = Arg("mm", 0.5, 40.0)
SMALL = Arg("mm", 0.0, 6.0)
PART = Arg("mm**2", 0.0, 500.0)
TURN = Arg("rad", pi / 6, 5 * pi / 6)


@formula("A_gap", "g*t_g", unit="mm**2", source=SECTION, args={"g": SMALL, "t_g": LENGTH})
def gap_area(g: Real, t_g: Real) -> Real:
    """Metal in a root gap, as deep as it is filled."""
    return g * t_g


@formula(
    "A_fill",
    "n*(A_g1 + A_g2)",
    unit="mm**2",
    source=SECTION,
    args={"n": Arg("", 1, 2), "A_g1": PART, "A_g2": PART},
)
def groove_fill(n: Real, A_g1: Real, A_g2: Real) -> Real:
    """Metal in what is cut off the edges, ``n`` of them cut from each side."""
    return n * (A_g1 + A_g2)


@formula("W", "g + s_W + o", unit="mm", source=SECTION, args={"g": SMALL, "s_W": LENGTH, "o": SMALL})
def cap_width(g: Real, s_W: Real, o: Real) -> Real:
    """Width of a cap: gap, what the groove opens on the face, and how far the cap runs over it in all."""
    return g + s_W + o


@formula("A_cap", "2*W*h/3", unit="mm**2", source=CAP, args={"W": LENGTH, "h": SMALL})
def cap_area(W: Real, h: Real) -> Real:
    """Metal of a cap."""
    return 2.0 * W * h / 3.0


@formula(
    "A_fill",
    "(2*t_1*t_2 - (t_1**2 + t_2**2)*cos(gamma))/(2*sin(gamma))",
    unit="mm**2",
    source=SECTION,
    args={"t_1": LENGTH, "t_2": LENGTH, "gamma": TURN},
)
def sharp_corner_area(t_1: Real, t_2: Real, gamma: Real) -> Real:
    """Metal of an outside corner filled to where its outer planes meet."""
    return (2.0 * t_1 * t_2 - (t_1 * t_1 + t_2 * t_2) * cos(gamma)) / (2.0 * sin(gamma))


@formula(
    "A_blend",
    "R**2*(tan(gamma/2) - gamma/(2*rad))",
    unit="mm**2",
    source=SECTION,
    args={"R": LENGTH, "gamma": TURN},
)
def blend_area(R: Real, gamma: Real) -> Real:
    """Metal that a blend leaves out of a sharp corner."""
    return R * R * (tan(gamma / 2.0) - gamma / 2.0)


@formula(
    "A",
    "A_fill - A_blend + A_gap + A_face + A_root + A_bg",
    unit="mm**2",
    source=SECTION,
    args={"A_fill": PART, "A_blend": PART, "A_gap": PART, "A_face": PART, "A_root": PART, "A_bg": PART},
)
def section_area(A_fill: Real, A_blend: Real, A_gap: Real, A_face: Real, A_root: Real, A_bg: Real) -> Real:
    """Metal of a whole section."""
    return A_fill - A_blend + A_gap + A_face + A_root + A_bg
