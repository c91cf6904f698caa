"""DIN EN 1993-1-8/NA, the German annex to Design of joints: what a fillet's least throat needs."""

from ...engine.formula import Mark, Source

EDITION = "DIN EN 1993-1-8/NA"


def clause(text: str, mark: Mark = "from memory") -> Source:
    """Cite a clause of this annex."""
    return Source(EDITION, text, mark)
