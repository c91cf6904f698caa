"""Clause 4.11: long welds in lap joints, and of transverse stiffeners."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, maximum, minimum
from . import clause

LENGTH = Arg("mm", 50.0, 3000.0)
STIFFENER_LENGTH = 1700.0
"""Length, mm, up to which the weld of a transverse stiffener counts whole."""


@formula(
    "beta_Lw_1",
    "minimum(1.2 - 0.2*L/(150*a), 1)",
    unit="",
    source=clause("4.11(3), eq. (4.9)", "from memory"),
    args={"L": LENGTH, "a": Arg("mm", 3, 15)},
)
def length_factor(L: Real, a: Real) -> Real:
    """Reduction of a lap joint longer than 150 throats; the clause gives no lower bound."""
    return minimum(1.2 - 0.2 * L / (150.0 * a), 1.0)


@formula(
    "a_long",
    "maximum(a_req, (a_req + L/750)/1.2)",
    unit="mm",
    source=clause("4.11(3), eq. (4.9) solved for the throat", "from memory"),
    args={"a_req": Arg("mm", 0.5, 15), "L": LENGTH},
)
def long_weld_throat(a_req: Real, L: Real) -> Real:
    """Throat whose reduced strength is still that of ``a_req``."""
    return maximum(a_req, (a_req + L / 750.0) / 1.2)


@formula(
    "beta_Lw_2",
    "maximum(minimum(1.1 - L_w/L_17, 1), 0.6)",
    unit="",
    source=clause("4.11(4), eq. (4.10)", "from memory"),
    args={"L_w": Arg("mm", 200, 12000), "L_17": Arg("mm", 10 * STIFFENER_LENGTH, 10 * STIFFENER_LENGTH)},
)
def stiffener_factor(L_w: Real, L_17: Real) -> Real:
    """Reduction of a weld longer than 1.7 m that joins a transverse stiffener to a plated member."""
    return maximum(minimum(1.1 - L_w / L_17, 1.0), 0.6)


@formula(
    "a_long",
    "a_req/beta_Lw_2",
    unit="mm",
    source=clause("4.11(4), eq. (4.10) solved for the throat", "from memory"),
    args={"a_req": Arg("mm", 0.5, 15), "beta_Lw_2": Arg("", 0.6, 1)},
)
def long_stiffener_throat(a_req: Real, beta_Lw_2: Real) -> Real:
    """Throat whose reduced strength is still that of ``a_req``."""
    return a_req / beta_Lw_2
