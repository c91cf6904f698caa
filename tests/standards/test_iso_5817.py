"""ISO 5817:2014 Table 1: what is said of where its limits were read, and that no level is looser than the one below."""

from itertools import pairwise
from math import inf

import pytest

from truethroat_service.standards.iso_5817_2014 import table_1
from truethroat_service.standards.iso_5817_2014.table_1 import Allowed, Sizes

FILLET, BUTT = Sizes(t=9.0, a=5.0, b=8.0), Sizes(t=9.0, s=9.0, b=8.0)


@pytest.mark.parametrize(
    ("row", "level", "t", "said"),
    # Where each was read: EN ISO 5817:2007; extracts of 2014 and 2003; EN 25817:1992; from memory.
    [
        ("undercut", "d", 9.0, "as read in EN ISO 5817:2007, second-hand"),
        ("reinforcement", "b", 9.0, "as read in EN ISO 5817:2007, second-hand"),
        ("reinforcement", "c", 9.0, "as read in an extract of 2014 or later, second-hand"),
        ("asymmetry", "c", 9.0, "as read in an extract of the edition of 2003, second-hand"),
        ("asymmetry", "d", 9.0, "as read in EN 25817:1992 only, second-hand"),
        ("incomplete-penetration", "c", 9.0, "as read in EN 25817:1992 only, second-hand"),
        ("incomplete-penetration", "d", 9.0, "level D, from memory"),
        ("misalignment", "d", 9.0, "level D, from memory"),
        ("root-gap", "c", 3.0, "level C, from memory"),
        ("root-concavity", "c", 3.0, "the tighter is taken, from memory"),
        ("root-concavity", "c", 9.0, "as read in an extract of the edition of 2003, second-hand"),
    ],
)
def test_sources_say_where_a_limit_was_read(row: str, level: table_1.Level, t: float, said: str) -> None:
    """Each cell's citation says in which edition its number was read, or that it was recalled."""
    sizes = Sizes(t=t, a=5.0, b=8.0)
    assert str(table_1.limit(row, level, sizes).source).endswith(said)


def _height(found: Allowed) -> float:
    """Height allowed, endless where there is no limit."""
    if found.height is None:
        return inf if found.permitted else 0.0
    return float(found.height)


@pytest.mark.parametrize("t", [0.5, 2.0, 3.0, 3.1, 6.0, 12.0, 60.0])
@pytest.mark.parametrize("row", table_1.ROWS)
def test_no_level_is_looser_than_the_one_below(row: str, t: float) -> None:
    """B is the strictest and D the least strict, in height and in length: ISO 5817."""
    for x in (1.0, 2.0, 5.0, 20.0):
        sizes = Sizes(t=t, a=x, b=x)
        found = [table_1.limit(row, level, sizes) for level in table_1.LEVELS]
        for stricter, looser in pairwise(found):
            assert _height(stricter) <= _height(looser)
            # What goes on along the whole weld, no height of a short limit passes.
            along = [0.0 if allowed.short else _height(allowed) for allowed in (stricter, looser)]
            assert along[0] <= along[1]


def test_toe_angles_are_steeper_where_stricter() -> None:
    """B asks for the flattest toe, and a butt for a flatter one than a fillet: ISO 5817 Table 1, 505."""
    butt, fillet = ([table_1.least_toe_angle(level, is_fillet)[0] for level in table_1.LEVELS] for is_fillet in (0, 1))
    assert butt == sorted(butt, reverse=True)
    assert fillet == sorted(fillet, reverse=True)
    assert all(b >= f for b, f in zip(butt, fillet, strict=True))


def test_a_limit_without_what_it_goes_by() -> None:
    """A limit by the width of a face is none without the width."""
    with pytest.raises(ValueError, match="needs a size that is not there"):
        table_1.limit("reinforcement", "c", Sizes(t=9.0, s=9.0))
    assert table_1.limit("lack-of-fusion", "d", BUTT).height == pytest.approx(3.6)
    assert table_1.limit("lack-of-fusion", "d", FILLET).height == pytest.approx(2.0)
