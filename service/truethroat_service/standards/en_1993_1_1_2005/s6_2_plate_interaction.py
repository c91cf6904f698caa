"""Clauses 6.2.1(5) and 6.2.10: normal force and shear together in a plate, each as a share of its resistance."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, hypot, maximum
from . import clause

SHARE = Arg("", 0.05, 1.5)


@formula(
    "U_eq", "hypot(n, v)", unit="", source=clause("6.2.1(5), eq. (6.1)", "from memory"), args={"v": SHARE, "n": SHARE}
)
def equivalent(v: Real, n: Real) -> Real:
    """Use made by the equivalent stress."""
    return hypot(n, v)


@formula(
    "U_rho",
    "maximum(n, 4*v**2/maximum(4*v - n, n))",
    unit="",
    source=clause("6.2.10(3), eq. (6.45), solved for the share", "from memory"),
    args={"v": SHARE, "n": SHARE},
)
def reduced_by_shear(v: Real, n: Real) -> Real:
    """Use made where shear over half of the resistance reduces the yield strength."""
    # With the forces at 1/U of their size: n/U = 1 - (2*v/U - 1)**2, so U = 4*v**2/(4*v - n); at n = 2*v it is n.
    return maximum(n, 4.0 * v * v / maximum(4.0 * v - n, n))
