"""Clause 2.8: fillets of steels over S460 up to S700, whose filler metal may be the weaker."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, minimum
from ...engine.rule_set import Correlation, Limit
from . import clause

OVER_YIELD = 460.0
LARGEST_YIELD = 700.0
"""Grades covered by nominal yield strength, MPa."""

STEEL = Limit("joints of a steel over S460, up to S700, with another up to S700", clause("1.1"))
GRADES = Limit("grades of EN 10025-6 and EN 10149-2", clause("2.1, Tables 1 and 2"))

BETA_W = 1.0
"""Correlation factor of every such steel, and on the safe side of a weaker one in the joint."""

CORRELATION = Correlation(clause("2.8"), own=BETA_W)

STRENGTH = Arg("MPa", 400.0, 1000.0)


@formula(
    "f_u_w",
    "minimum(f_u_part, f_u_filler)",
    unit="MPa",
    source=clause("2.8, the lesser of parent and filler metal"),
    args={"f_u_part": STRENGTH, "f_u_filler": STRENGTH},
)
def strength(f_u_part: Real, f_u_filler: Real) -> Real:
    """Tensile strength that counts: the weaker part's, or the filler metal's where that is less."""
    return minimum(f_u_part, f_u_filler)
