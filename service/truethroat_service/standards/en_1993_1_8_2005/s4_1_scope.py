"""Clauses 4.1 and 4.3.2.1: what thickness, steel and angle the fillet rules hold for."""

from math import pi

from ...engine.rule_set import Limit
from . import clause

LEAST_THICKNESS = 4.0
"""Thinnest part, mm."""

LEAST_ANGLE = pi / 3
LARGEST_ANGLE = 2 * pi / 3

LARGEST_YIELD = 460.0
"""Strongest steel by nominal yield strength, MPa; EN 1993-1-12 goes beyond."""

THICKNESS = Limit("parts of 4 mm and more", clause("4.1(1)"))
ANGLE = Limit(
    "fillets between faces at 60 to 120 deg: below that they are partial-penetration welds, above it to be tested",
    clause("4.3.2.1"),
)
STEEL = Limit("steels up to S460", clause("4.1(1) with EN 1993-1-1 3.1", "from memory"))
END_LOADED = Limit("the long-weld reduction in lap joints", clause("4.11(1)", "from memory"))
FILLER = Limit("filler metal at least as strong as the parent metal", clause("4.2(2)"))
