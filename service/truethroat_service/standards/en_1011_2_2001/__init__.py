"""EN 1011-2:2001, Recommendations for welding of metallic materials: arc welding of ferritic steels."""

from ...engine.formula import Mark, Source

EDITION = "EN 1011-2:2001"


def clause(text: str, mark: Mark = "seen") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
