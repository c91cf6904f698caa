"""Clauses 2.1 and 6.3: the steels, and the correlation factor of their fillets."""

from ...engine.rule_set import Correlation, Limit
from . import clause

LARGEST_YIELD = 480.0
"""Strongest steel by nominal yield strength, MPa."""

STEEL = Limit("stainless steels up to 480 MPa nominal yield strength", clause("2.1.1"))
GRADES = Limit("grades of EN 10088", clause("2.1.1, Table 2.1"))

BETA_W = 1.0
"""Correlation factor of every stainless steel, unless tests show that a lower value will do."""

CORRELATION = Correlation(clause("6.3"), own=BETA_W)
