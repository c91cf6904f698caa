"""EN 1999-1-1:2007, Design of aluminium structures: fillets of section 8.6 and the zone their heat softens."""

from ...engine.formula import Mark, Source

EDITION = "EN 1999-1-1:2007"


def clause(text: str, mark: Mark = "from memory") -> Source:
    """Cite a clause of this edition."""
    return Source(EDITION, text, mark)
