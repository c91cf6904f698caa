"""ISO 15614-1:2017, qualification of welding procedures: hardness of a test piece."""

from ...engine.formula import Mark, Source

EDITION = "ISO 15614-1:2017"


def clause(text: str, mark: Mark = "seen") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
