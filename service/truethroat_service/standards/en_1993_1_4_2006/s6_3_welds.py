"""Clauses 2.1 and 6.3: the steels, and the correlation factor of their fillets."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, minimum
from ...engine.rule_set import Correlation, Limit
from . import clause

LARGEST_YIELD = 480.0
"""Strongest steel by nominal yield strength, MPa."""

STEEL = Limit("stainless steels up to 480 MPa nominal yield strength", clause("2.1.1"))
GRADES = Limit("grades of EN 10088", clause("2.1.1, Table 2.1"))

BETA_W = 1.0
"""Correlation factor of every stainless steel, unless tests show that a lower value will do."""

CORRELATION = Correlation(clause("6.3"), own=BETA_W)


@formula(
    "f_u_joint",
    "minimum(f_u_part, f_u_filler)",
    unit="MPa",
    source=clause("6.3, with EN 1993-1-8 4.2(2)"),
    args={"f_u_part": Arg("MPa", 480.0, 750.0), "f_u_filler": Arg("MPa", 450.0, 800.0)},
)
def strength(f_u_part: Real, f_u_filler: Real) -> Real:
    """Strength that counts where the filler metal is the weaker, as the usual ones for stainless steel may be."""
    return minimum(f_u_part, f_u_filler)
