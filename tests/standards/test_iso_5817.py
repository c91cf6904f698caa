"""ISO 5817:2014 Table 1: limits that fillet readings do not show, and what is said of where they were read."""

import pytest

from truethroat_service.standards.iso_5817_2014 import table_1

# By hand from the constants of EN ISO 5817:2007 (502), of extracts (511, 515, B and C) and from memory (5071, D).
BUTTS = [
    ("excess-weld-metal", 12.0, 15.0, (2.5, 3.25, 4.75)),
    ("misalignment", 12.0, 12.0, (1.2, 1.8, 3.0)),
    ("misalignment", 2.0, 2.0, (0.4, 0.5, 0.7)),
    ("underfill", 10.0, 10.0, (0.5, 1.0, 2.0)),
    ("root-concavity", 8.0, 8.0, (0.4, 0.8, 1.6)),
]


@pytest.mark.parametrize(("row", "t", "x", "expected"), BUTTS)
def test_limits_of_butts(row: str, t: float, x: float, expected: tuple[float, ...]) -> None:
    """Each level's limit is its constant and share, capped: ISO 5817 Table 1."""
    for level, height in zip(("b", "c", "d"), expected, strict=True):
        assert table_1.limit(row, level, t=t, x=x).height == pytest.approx(height, abs=0.001)  # type: ignore[arg-type]


def test_thin_material_at_level_b() -> None:
    """Undercut, underfill, root concavity and a thin throat are not permitted up to 3 mm: ISO 5817 Table 1."""
    for row in ("undercut", "underfill", "root-concavity", "insufficient-throat"):
        found = table_1.limit(row, "b", t=3.0, x=3.0)
        assert (found.height, found.permitted) == (None, False)


def test_sources_say_where_a_limit_was_read() -> None:
    """A recalled limit is marked so, and one read in another edition names it."""
    assert str(table_1.limit("misalignment", "d", t=9.0, x=9.0).source).endswith("from memory")
    assert "EN ISO 5817:2007" in str(table_1.limit("undercut", "d", t=9.0, x=9.0).source)
