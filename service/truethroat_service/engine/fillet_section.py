"""Cross-section of a fillet as it was welded: width of its face, its metal, and the size that it counts as.

Lengths in millimetres, angles in radians; ``psi`` is the angle between the plates, the legs lie along their faces.
"""

from .formula import Arg, Source, formula
from .numeric import Real, cos, minimum, sin, sqrt
from .section import GEOMETRY, LENGTH, PLATES


@formula(
    "b",
    "sqrt(z_1**2 + z_2**2 - 2*z_1*z_2*cos(psi))",
    unit="mm",
    source=GEOMETRY,
    args={"z_1": LENGTH, "z_2": LENGTH, "psi": PLATES},
)
def face_width(z_1: Real, z_2: Real, psi: Real) -> Real:
    """Width of a fillet's face, toe to toe."""
    return sqrt(z_1 * z_1 + z_2 * z_2 - 2.0 * z_1 * z_2 * cos(psi))


@formula(
    "A",
    "z_1*z_2*sin(psi)/2 + 2*b*f/3",
    unit="mm**2",
    source=GEOMETRY,
    args={"z_1": LENGTH, "z_2": LENGTH, "psi": PLATES, "b": LENGTH, "f": Arg("mm", -2, 5)},
)
def area(z_1: Real, z_2: Real, psi: Real, b: Real, f: Real) -> Real:
    """Metal of a fillet whose face is a parabola, ``f`` above or below the line between the toes."""
    return z_1 * z_2 * sin(psi) / 2.0 + 2.0 * b * f / 3.0


@formula(
    "s",
    "minimum(z_1, z_2)*a/a_th",
    unit="mm",
    source=Source("AWS A3.0", "fillet weld size: leg of the largest triangle inscribed", "second-hand"),
    args={"z_1": LENGTH, "z_2": LENGTH, "a": LENGTH, "a_th": LENGTH},
)
def size(z_1: Real, z_2: Real, a: Real, a_th: Real) -> Real:
    """Leg of the equal-leg triangle that fits under a face moved in parallel until it leaves the throat ``a``."""
    return minimum(z_1, z_2) * a / a_th
