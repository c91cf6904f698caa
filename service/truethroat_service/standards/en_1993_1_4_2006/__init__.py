"""EN 1993-1-4:2006, Supplementary rules for stainless steels: what it changes of EN 1993-1-8 and EN 1993-1-1."""

from ...engine.formula import Mark, Source

EDITION = "EN 1993-1-4:2006"


def clause(text: str, mark: Mark = "from memory") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
