"""ISO 5817:2014, quality levels for imperfections of fusion-welded joints in steel: surface and geometry, Table 1."""

from ...engine.formula import Mark, Source

EDITION = "ISO 5817:2014"


def clause(text: str, mark: Mark = "seen") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
