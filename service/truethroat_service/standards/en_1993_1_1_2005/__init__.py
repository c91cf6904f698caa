"""EN 1993-1-1:2005, General rules and rules for buildings: resistance of a plate beside a weld."""

from ...engine.formula import Mark, Source

EDITION = "EN 1993-1-1:2005"


def clause(text: str, mark: Mark = "from memory") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
