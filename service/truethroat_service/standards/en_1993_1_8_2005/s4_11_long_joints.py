"""Clause 4.11: long welds in lap joints."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, maximum, minimum
from . import clause

LENGTH = Arg("mm", 50.0, 3000.0)


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
