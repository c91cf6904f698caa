"""ANSI/AISC 360-22, Specification for Structural Steel Buildings: chapter J as far as welds need it."""

from ...engine.formula import Mark, Source

EDITION = "ANSI/AISC 360-22"


def clause(text: str, mark: Mark = "seen") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
