"""Runs of weld in a group: pieces that touch end to end are one weld, whose length the rules on length use."""

import numpy as np

from ..engine.line_group import even_points
from ..engine.numeric import Column, Flags
from .weld_patterns import Piece, columns, length

TOUCHING = 0.01
"""Distance, mm, under which two ends are at one place."""


def shortest_run(group: tuple[Piece, ...]) -> float:
    """Length of the shortest run, mm.

    A piece drawn twice is a weld on either side of its plate, two runs. Where more than two ends meet it is not known
    which are welded through, so none is taken to be: that errs towards the shorter run.
    """
    points = even_points(columns(group), 3)
    x, y = (places[0].reshape(len(group), 3) for places in (points.x, points.y))
    side = _sides(x, y)
    ends_x, ends_y, side_of = x[:, ::2].ravel(), y[:, ::2].ravel(), np.repeat(side, 2)
    meets = _near(ends_x, ends_y, ends_x, ends_y) & (side_of[:, None] == side_of)
    np.fill_diagonal(meets, val=False)
    alone = meets.sum(axis=1) == 1
    run = list(range(len(group)))
    for end, other in np.argwhere(meets & alone[:, None] & alone):
        joined, into = run[end // 2], run[other // 2]
        run = [into if number == joined else number for number in run]
    totals: dict[int, float] = {}
    for number, piece in zip(run, group, strict=True):
        totals[number] = totals.get(number, 0.0) + length(piece)
    return min(totals.values())


def _near(x: Column, y: Column, to_x: Column, to_y: Column) -> Flags:
    """Which places of one list coincide with which of another."""
    near: Flags = np.hypot(x[:, None] - to_x, y[:, None] - to_y) <= TOUCHING
    return near


def _sides(x: Column, y: Column) -> Column:
    """How many earlier pieces lie where each does, by its ends and its middle."""
    start, middle, end = ((x[:, place], y[:, place]) for place in range(3))
    one_way = _near(*start, *start) & _near(*end, *end)
    other_way = _near(*start, *end) & _near(*end, *start)
    same = (one_way | other_way) & _near(*middle, *middle)
    sides: Column = np.tril(same, -1).sum(axis=1)
    return sides
