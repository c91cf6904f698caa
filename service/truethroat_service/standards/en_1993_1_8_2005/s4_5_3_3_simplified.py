"""Clause 4.5.3.3: the simplified method, which asks nothing about the direction of the force."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, sqrt
from . import clause


@formula(
    "f_vw_d",
    "f_u/(sqrt(3)*beta_w*gamma_M2)",
    unit="MPa",
    source=clause("4.5.3.3(3), eq. (4.4)"),
    args={"f_u": Arg("MPa", 300, 700), "beta_w": Arg("", 0.8, 1.0), "gamma_M2": Arg("", 1.0, 1.5)},
)
def shear_strength(f_u: Real, beta_w: Real, gamma_M2: Real) -> Real:
    """Design shear strength of the weld."""
    return f_u / (sqrt(3.0) * beta_w * gamma_M2)


@formula(
    "a_req",
    "f/f_vw_d",
    unit="mm",
    source=clause("4.5.3.3(2), eq. (4.2) and (4.3) solved for the throat"),
    args={"f": Arg("N/mm", 0, 4000), "f_vw_d": Arg("MPa", 150, 300)},
)
def required_throat(f: Real, f_vw_d: Real) -> Real:
    """Throat the resultant force needs."""
    return f / f_vw_d
