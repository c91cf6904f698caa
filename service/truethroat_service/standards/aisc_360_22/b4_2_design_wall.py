"""Section B4.2: the wall that a hollow section is designed with."""

from . import clause

DESIGN_WALL = 0.93
"""Share of the nominal wall, of sections that are not made to a tighter mass or wall."""

NOMINAL = frozenset(("A500-B", "A500-C", "A501-B", "A53-B", "A847"))
"""Materials to which it applies; A1085 is designed with its nominal wall."""

SOURCE = clause("B4.2")
