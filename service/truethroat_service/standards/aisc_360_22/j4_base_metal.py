"""Section J4: nominal strength of the parts beside the weld, per length of it.

No hole is deducted at a weld, so gross and net thickness are the same.
"""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real
from . import clause
from .chapter_b3_available_strength import Factors

TENSION_YIELD = Factors(phi=0.90, omega=1.67)
TENSION_RUPTURE = Factors(phi=0.75, omega=2.00)
SHEAR_YIELD = Factors(phi=1.00, omega=1.50)
SHEAR_RUPTURE = Factors(phi=0.75, omega=2.00)

THICKNESS = Arg("mm", 1.0, 60.0)
STRENGTH = Arg("MPa", 150.0, 800.0)


@formula("r_n", "F_y*t", unit="N/mm", source=clause("J4.1(a), Eq. J4-1"), args={"F_y": STRENGTH, "t": THICKNESS})
def tension_yield(F_y: Real, t: Real) -> Real:
    """Nominal strength in tension yielding."""
    return F_y * t


@formula("r_n", "F_u*t", unit="N/mm", source=clause("J4.1(b), Eq. J4-2"), args={"F_u": STRENGTH, "t": THICKNESS})
def tension_rupture(F_u: Real, t: Real) -> Real:
    """Nominal strength in tension rupture."""
    return F_u * t


@formula("r_n", "0.60*F_y*t", unit="N/mm", source=clause("J4.2(a), Eq. J4-3"), args={"F_y": STRENGTH, "t": THICKNESS})
def shear_yield(F_y: Real, t: Real) -> Real:
    """Nominal strength in shear yielding."""
    return 0.60 * F_y * t


@formula("r_n", "0.60*F_u*t", unit="N/mm", source=clause("J4.2(b), Eq. J4-4"), args={"F_u": STRENGTH, "t": THICKNESS})
def shear_rupture(F_u: Real, t: Real) -> Real:
    """Nominal strength in shear rupture."""
    return 0.60 * F_u * t
