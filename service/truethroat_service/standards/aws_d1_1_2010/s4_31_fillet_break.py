"""Clause 4.31.4.1: what a fillet weld break specimen must show; and the coupon it comes from.

Only inches were seen quoted; the code's own metric figures are not known here.
"""

from ...engine.units import INCH
from . import clause

ACCEPTANCE = clause("4.31.4.1, fillet weld break test")
COUPON = clause("fillet weld break and macroetch test plate, option 1", "from memory")

SPECIMEN = 6.0 * INCH
"""Length of the specimen broken, mm."""

SHORTEST_SPECIMEN = 150.0
"""The same as metric shops cut it, mm."""

LARGEST_VOID = 3.0 * INCH / 32.0
"""Greatest dimension of any void or inclusion, mm."""

SUM_OF_VOIDS = 3.0 * INCH / 8.0
"""Sum of the greatest dimensions of all of them in a specimen, mm."""

PLATE, LEG = INCH / 2.0, 5.0 * INCH / 16.0
LEAST_WIDTH, WELDED_LENGTH = 4.0 * INCH, 8.0 * INCH
"""Plate thickness, fillet leg, least width of each plate and length welded, mm."""
