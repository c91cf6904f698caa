"""AWS D1.1/D1.1M:2000, Structural Welding Code - Steel: the one limit of it that still holds on older drawings."""

from ...engine.formula import Mark, Source

EDITION = "AWS D1.1:2000"


def clause(text: str, mark: Mark = "seen") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
