"""AISC Steel Construction Manual, Eq. 9-1: shear and tension together in an element that a weld loads."""

from ...engine.formula import Arg, Source, formula
from ...engine.numeric import Real, sqrt

INTERACTION = Source(
    "AISC Steel Construction Manual", "Eq. 9-1, as in Example J.2B of its Design Examples v16.0", "second-hand"
)
FORCE = Arg("N/mm", 0.0, 2000.0)
STRENGTH = Arg("N/mm", 500.0, 5000.0)


@formula(
    "U_vn",
    "sqrt(((n/r_n)**2 + sqrt((n/r_n)**4 + 4*(v/r_v)**4))/2)",
    unit="",
    source=INTERACTION,
    args={"v": FORCE, "n": FORCE, "r_v": STRENGTH, "r_n": STRENGTH},
)
def use_made(v: Real, n: Real, r_v: Real, r_n: Real) -> Real:
    """Use made by one limit state in shear and in tension together."""
    # With the forces at 1/U of their size (n/r_n)**2 + (v/r_v)**4 is 1.
    in_tension, in_shear = (n / r_n) ** 2, (v / r_v) ** 2
    return sqrt((in_tension + sqrt(in_tension * in_tension + 4.0 * in_shear * in_shear)) / 2.0)
