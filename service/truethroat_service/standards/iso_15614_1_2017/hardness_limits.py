"""Largest hardness HV10 of a procedure's test piece, by steel group of ISO/TR 15608."""

from . import clause

LIMITS = clause("hardness limits", "from memory")

_LARGEST = {1: (380.0, 320.0), 2: (380.0, 320.0), 3: (450.0, 380.0)}
GROUPS = tuple(_LARGEST)


def largest_hardness(group: int, heat_treated: bool) -> float:
    """Largest HV10 of a steel group, as welded or heat treated after it."""
    return _LARGEST[group][heat_treated]
