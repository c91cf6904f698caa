"""EN 1993-1-8:2005, Design of joints: clause 4, welded connections."""

from ...engine.formula import Mark, Source

EDITION = "EN 1993-1-8:2005"


def clause(text: str, mark: Mark = "seen") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
