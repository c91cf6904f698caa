"""Clauses 6.2.3 and 6.2.6: plastic resistance of a plate in tension and in shear, per length."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, sqrt
from . import clause

GAMMA_M0 = 1.0
"""Recommended partial factor for the resistance of cross-sections, clause 6.1."""

THICKNESS = Arg("mm", 1.0, 60.0)
YIELD = Arg("MPa", 200.0, 460.0)
FACTOR = Arg("", 1.0, 1.1)


@formula(
    "n_pl_Rd",
    "t*f_y/gamma_M0",
    unit="N/mm",
    source=clause("6.2.3(2), eq. (6.6)"),
    args={"t": THICKNESS, "f_y": YIELD, "gamma_M0": FACTOR},
)
def tension(t: Real, f_y: Real, gamma_M0: Real) -> Real:
    """Design resistance of the plate to tension across the weld."""
    return t * f_y / gamma_M0


@formula(
    "v_pl_Rd",
    "t*f_y/(sqrt(3)*gamma_M0)",
    unit="N/mm",
    source=clause("6.2.6(2), eq. (6.18)"),
    args={"t": THICKNESS, "f_y": YIELD, "gamma_M0": FACTOR},
)
def shear(t: Real, f_y: Real, gamma_M0: Real) -> Real:
    """Design resistance of the plate to shear along the weld."""
    return t * f_y / (sqrt(3.0) * gamma_M0)
