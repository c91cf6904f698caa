"""Runs of weld: what touches end to end is one weld (EN 1993-1-8 4.5.1(1), returns count), by lengths added by hand."""

from __future__ import annotations

from math import pi

import pytest

from truethroat_service.practice.weld_patterns import PATTERNS, Piece, arc, line
from truethroat_service.practice.weld_runs import shortest_run

BENT = (line(0.0, 0.0, 50.0, 0.0), line(50.0, 40.0, 50.0, 0.0))


@pytest.mark.parametrize(
    ("group", "length"),
    [
        (PATTERNS["c"](depth=200.0, width=80.0), 200.0 + 2 * 80.0),
        (PATTERNS["two-level-lines"](depth=200.0, width=80.0), 80.0),
        (PATTERNS["rectangle"](depth=200.0, width=80.0), 560.0),
        # Both sides of each plate: four welds, none longer for the other side's.
        (PATTERNS["t"](depth=100.0, width=80.0), 80.0),
        (PATTERNS["i"](depth=70.0, width=80.0), 70.0),
        (PATTERNS["circle"](diameter=60.0), 60.0 * pi),
        (BENT, 90.0),
        # The second side of the first piece alone.
        ((*BENT, line(50.0, 0.0, 0.0, 0.0)), 50.0),
        # A line, half a turn and a line back.
        ((line(0, 0, 50, 0), arc(50, 10, -pi / 2, pi, 10), line(50, 20, 0, 20)), 100.0 + 10.0 * pi),
        # Two halves of a ring share both ends and are not one another's other side.
        ((arc(0, 0, 0, pi, 30), arc(0, 0, pi, pi, 30)), 60.0 * pi),
        # Where three meet none is taken to go through.
        ((*BENT, line(50.0, 0.0, 50.0, -20.0)), 20.0),
        # A gap of 1 mm parts two welds.
        ((line(0, 0, 50, 0), line(51, 0, 90, 0)), 39.0),
    ],
)
def test_shortest_run(group: tuple[Piece, ...], length: float) -> None:
    """Pieces that touch are added up, others not."""
    assert shortest_run(tuple(group)) == pytest.approx(length)
