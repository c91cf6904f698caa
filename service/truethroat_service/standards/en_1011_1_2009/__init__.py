"""EN 1011-1:2009, Recommendations for welding of metallic materials: heat input."""

from ...engine.formula import Mark, Source

EDITION = "EN 1011-1:2009"


def clause(text: str, mark: Mark = "seen") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
