"""What metal, thickness and angle the fillet rules hold for, and the partial factor of welds."""

from math import pi

from ...engine.formula import Source
from ...engine.rule_set import Limit
from . import clause

GAMMA_MW = 1.25
"""Recommended partial factor of welded connections, clause 8.1.1."""

LEAST_THICKNESS = 1.5
"""Thinnest welded part, mm."""

ANGLES = (pi / 3, 2 * pi / 3)

THICKNESS = Limit("parts of 1.5 mm and more", clause("1.1.2"))
ANGLE = Limit(
    "fillets between faces at 60 to 120 deg, the range of EN 1993-1-8: this edition has none of its own",
    Source("", "range taken over from EN 1993-1-8:2005 4.3.2.1", "common practice, no source"),
)
METAL = Limit("alloys and filler metals that Table 8.8 pairs", clause("8.6.3.1, Table 8.8"))
GRADES = Limit("alloys with the strengths of Tables 3.2a to 3.2c", clause("3.2.2"))
PLAIN_SECTION = Limit(
    "throats of the plain section: the check in the heat-affected zone goes by the legs, so penetration is not counted",
    Source("", "the safe reading of 8.6.3.3 with 8.6.3.4", "common practice, no source"),
)
