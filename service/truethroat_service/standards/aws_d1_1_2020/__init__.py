"""AWS D1.1/D1.1M:2020, Structural Welding Code - Steel: what the shop rules borrow from it."""

from ...engine.formula import Mark, Source

EDITION = "AWS D1.1/D1.1M:2020"


def clause(text: str, mark: Mark = "seen") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
