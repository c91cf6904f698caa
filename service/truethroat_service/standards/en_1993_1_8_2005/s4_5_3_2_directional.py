"""Clause 4.5.3.2: the directional method.

The throat plane halves the angle between the plates; forces are per length, so a stress is one of them over the throat.
"""

from math import pi

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, cos, magnitude, maximum, sin, sqrt
from . import clause

FORCE = Arg("N/mm", -2000.0, 2000.0)
PLATES = Arg("rad", pi / 3, 2 * pi / 3)
TENSILE = Arg("MPa", 300.0, 700.0)
FACTOR = Arg("", 1.0, 1.5)


@formula(
    "n_perp",
    "n*cos(psi/2) - t*sin(psi/2)",
    unit="N/mm",
    source=clause("4.5.3.2(1)"),
    args={"n": FORCE, "t": FORCE, "psi": PLATES},
)
def normal_to_throat(n: Real, t: Real, psi: Real) -> Real:
    """Force per length square to the throat."""
    return n * cos(psi / 2.0) - t * sin(psi / 2.0)


@formula(
    "v_perp",
    "n*sin(psi/2) + t*cos(psi/2)",
    unit="N/mm",
    source=clause("4.5.3.2(1)"),
    args={"n": FORCE, "t": FORCE, "psi": PLATES},
)
def shear_across_throat(n: Real, t: Real, psi: Real) -> Real:
    """Force per length in the throat, across the weld."""
    return n * sin(psi / 2.0) + t * cos(psi / 2.0)


@formula(
    "f_w",
    "sqrt(n_perp**2 + 3*(v_perp**2 + l**2))",
    unit="N/mm",
    source=clause("4.5.3.2(6), eq. (4.1)"),
    args={"n_perp": FORCE, "v_perp": FORCE, "l": FORCE},
)
def equivalent_force(n_perp: Real, v_perp: Real, l: Real) -> Real:  # noqa: E741 - the symbol of the clause's component
    """Equivalent force per length on the throat."""
    return sqrt(n_perp * n_perp + 3.0 * (v_perp * v_perp + l * l))


@formula(
    "a_req",
    "maximum(f_w*beta_w/f_u, abs(n_perp)/(0.9*f_u_low))*gamma_M2",
    unit="mm",
    source=clause("4.5.3.2(6), eq. (4.1) solved for the throat"),
    args={
        "f_w": Arg("N/mm", 0, 4000),
        "n_perp": FORCE,
        "f_u": TENSILE,
        "f_u_low": TENSILE,
        "beta_w": Arg("", 0.5, 1.0),
        "gamma_M2": FACTOR,
    },
)
def required_throat(f_w: Real, n_perp: Real, f_u: Real, f_u_low: Real, beta_w: Real, gamma_M2: Real) -> Real:
    """Throat that meets both conditions of the method."""
    # Of two grades the one that is worth less by f_u/beta_w need not be the one of the lower f_u.
    return maximum(f_w * beta_w / f_u, magnitude(n_perp) / (0.9 * f_u_low)) * gamma_M2
