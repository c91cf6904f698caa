"""ISO 13920:1996, general tolerances for welded constructions: lengths, angles, shape and position."""

from ...engine.formula import Mark, Source

EDITION = "ISO 13920:1996"


def clause(text: str, mark: Mark = "seen") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
