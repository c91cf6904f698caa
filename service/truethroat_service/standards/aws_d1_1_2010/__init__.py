"""AWS D1.1/D1.1M:2010, Structural Welding Code - Steel: the fillet weld break test, as quoted by others."""

from ...engine.formula import Mark, Source

EDITION = "AWS D1.1/D1.1M:2010"


def clause(text: str, mark: Mark = "second-hand") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
