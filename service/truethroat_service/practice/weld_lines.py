"""Elastic line method: force per length at a point of a weld group, from any force and moment through its centroid.

``x`` and ``y`` are the place of the point from the centroid; z is square to the plane of the group. The components are
those of the force of the load on the weld.
"""

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real, sqrt

LINE_METHOD = Source("AISC Steel Construction Manual", "Part 8, elastic method")
BENDING = Source("O. W. Blodgett, Design of Weldments", "weld as a line, section 7.4", "from memory")

FORCE = Arg("N", -1e6, 1e6)
MOMENT = Arg("N*mm", -1e8, 1e8)
LENGTH = Arg("mm", 100.0, 2000.0)
PLACE = Arg("mm", -500.0, 500.0)
SECOND = Arg("mm**3", 2e6, 5e7)
PRODUCT = Arg("mm**3", -1e6, 1e6)


@formula(
    "f_x",
    "P_x/L - M_z*y/J",
    unit="N/mm",
    source=LINE_METHOD,
    args={"P_x": FORCE, "M_z": MOMENT, "L": LENGTH, "J": SECOND, "y": PLACE},
)
def along_x(P_x: Real, M_z: Real, L: Real, J: Real, y: Real) -> Real:
    """Force per length along x."""
    return P_x / L - M_z * y / J


@formula(
    "f_y",
    "P_y/L + M_z*x/J",
    unit="N/mm",
    source=LINE_METHOD,
    args={"P_y": FORCE, "M_z": MOMENT, "L": LENGTH, "J": SECOND, "x": PLACE},
)
def along_y(P_y: Real, M_z: Real, L: Real, J: Real, x: Real) -> Real:
    """Force per length along y."""
    return P_y / L + M_z * x / J


_BENT = {"M_x": MOMENT, "M_y": MOMENT, "I_x": SECOND, "I_y": SECOND, "I_xy": PRODUCT}


@formula(
    "g_x",
    "-(M_y*I_x + M_x*I_xy)/(I_x*I_y - I_xy**2)",
    unit="N/mm**2",
    source=BENDING,
    args=_BENT,
)
def slope_along_x(M_x: Real, M_y: Real, I_x: Real, I_y: Real, I_xy: Real) -> Real:
    """Rise of the force out of the plane with x."""
    return -(M_y * I_x + M_x * I_xy) / (I_x * I_y - I_xy * I_xy)


@formula(
    "g_y",
    "(M_x*I_y + M_y*I_xy)/(I_x*I_y - I_xy**2)",
    unit="N/mm**2",
    source=BENDING,
    args=_BENT,
)
def slope_along_y(M_x: Real, M_y: Real, I_x: Real, I_y: Real, I_xy: Real) -> Real:
    """Rise of the force out of the plane with y."""
    return (M_x * I_y + M_y * I_xy) / (I_x * I_y - I_xy * I_xy)


@formula(
    "f_z",
    "P_z/L + g_x*x + g_y*y",
    unit="N/mm",
    source=BENDING,
    args={
        "P_z": FORCE,
        "L": LENGTH,
        "g_x": Arg("N/mm**2", -5, 5),
        "g_y": Arg("N/mm**2", -5, 5),
        "x": PLACE,
        "y": PLACE,
    },
)
def out_of_plane(P_z: Real, L: Real, g_x: Real, g_y: Real, x: Real, y: Real) -> Real:
    """Force per length out of the plane."""
    return P_z / L + g_x * x + g_y * y


@formula(
    "f",
    "sqrt(f_x**2 + f_y**2 + f_z**2)",
    unit="N/mm",
    source=LINE_METHOD,
    args={"f_x": Arg("N/mm", -2000, 2000), "f_y": Arg("N/mm", -2000, 2000), "f_z": Arg("N/mm", -2000, 2000)},
)
def resultant(f_x: Real, f_y: Real, f_z: Real) -> Real:
    """Resultant force per length."""
    return sqrt(f_x * f_x + f_y * f_y + f_z * f_z)
