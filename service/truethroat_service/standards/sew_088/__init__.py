"""SEW 088 (Stahl-Eisen-Werkstoffblatt), Supplement 1: preheat of weldable fine-grained structural steels."""

from ...engine.formula import Mark, Source

EDITION = "SEW 088 Supplement 1"


def clause(text: str, mark: Mark = "seen") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
