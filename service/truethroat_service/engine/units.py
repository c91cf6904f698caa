"""Customary units in engine units: exact, for rules that are written in inches and kips."""

INCH = 25.4
"""Millimetres in an inch, exactly."""

KSI = 4448.2216152605 / INCH**2
"""Megapascals in a kip per square inch: 1000 lbf of 4.4482216152605 N exactly, over a square inch."""


def inches(*values: float) -> tuple[float, ...]:
    """Millimetres of each length in inches."""
    return tuple(value * INCH for value in values)
