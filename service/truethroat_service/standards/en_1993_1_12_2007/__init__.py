"""EN 1993-1-12:2007, Additional rules for steel grades up to S700: what it changes of EN 1993-1-8."""

from ...engine.formula import Mark, Source

EDITION = "EN 1993-1-12:2007"


def clause(text: str, mark: Mark = "from memory") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
