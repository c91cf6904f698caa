"""ISO 9017, fracture test of welds, as a welding school's instruction gives it, which does not say the edition."""

from ...engine.formula import Mark, Source

EDITION = "ISO 9017"


def clause(text: str, mark: Mark = "second-hand") -> Source:
    """Cite this standard."""
    return Source(EDITION, text, mark)
