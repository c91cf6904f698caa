"""Weld groups as lines of unit throat in one plane: straight pieces and arcs, their properties and points.

The plane has axes x and y; z is square to it. Many groups go through at once: arrays of pieces have the shape
(groups, pieces), arrays of properties (groups,). Lengths in mm, so a second moment of unit throat is in mm3; angles
in rad.
"""

from dataclasses import dataclass

import numpy as np

from .numeric import Column, Flags

ROUNDING = 1e-13
GAUSS_POINTS = 32
"""Points along a piece. Fewer err on the unsafe side: the end, where the weld tears first, is then far from a point."""
_ROOTS, _WEIGHTS = np.polynomial.legendre.leggauss(GAUSS_POINTS)


@dataclass(frozen=True, slots=True)
class Pieces:
    """Pieces of each group.

    A straight piece runs from (``x_1``, ``y_1``) to (``x_2``, ``y_2``). An arc has ``radius`` > 0 about (``x_1``,
    ``y_1``) and runs from the angle ``x_2`` over the angle ``y_2``. A row shorter than the longest is filled with
    pieces that start where they end.
    """

    x_1: Column
    y_1: Column
    x_2: Column
    y_2: Column
    radius: Column

    @property
    def arcs(self) -> Flags:
        """Which pieces are arcs."""
        return self.radius > 0.0


@dataclass(frozen=True, slots=True)
class Properties:
    """Length, centroid and second moments of each group about its centroid."""

    length: Column
    x: Column
    y: Column
    i_x: Column
    i_y: Column
    i_xy: Column

    @property
    def j(self) -> Column:
        """Polar second moment."""
        return self.i_x + self.i_y


@dataclass(frozen=True, slots=True)
class Points:
    """Points of each group, shape (groups, points): place, direction of the weld's axis, length of each."""

    x: Column
    y: Column
    axis: Column
    length: Column


def properties(pieces: Pieces) -> Properties:
    """Properties of each group, exact for straight pieces and for arcs."""
    integrals = [
        np.where(pieces.arcs, arc, line).sum(axis=1)
        for line, arc in zip(_over_lines(pieces), _over_arcs(pieces), strict=True)
    ]
    length, x, y, xx, yy, xy = integrals
    x, y = x / length, y / length
    i_x, i_y, i_xy = yy - length * y * y, xx - length * x * x, xy - length * x * y
    # What is left of a symmetric group's product by the last bits of a float is nothing.
    return Properties(length, x, y, i_x, i_y, np.where(np.abs(i_xy) <= ROUNDING * (i_x + i_y), 0.0, i_xy))


def gauss_points(pieces: Pieces) -> Points:
    """Points and weights that integrate along each piece."""
    return _points(pieces, (_ROOTS + 1.0) / 2.0, _WEIGHTS / 2.0)


def even_points(pieces: Pieces, count: int) -> Points:
    """Evenly spaced points from end to end of each piece; their length is that of the piece over their number."""
    return _points(pieces, np.linspace(0.0, 1.0, count), np.full(count, 1.0 / count))


def _points(pieces: Pieces, shares: Column, weights: Column) -> Points:
    """Points at shares of each piece, with their weights, all pieces of a group in one row."""
    groups = pieces.x_1.shape[0]
    x_1, y_1, x_2, y_2 = (column[:, :, None] for column in (pieces.x_1, pieces.y_1, pieces.x_2, pieces.y_2))
    radius, arcs = pieces.radius[:, :, None], pieces.arcs[:, :, None]
    turned = x_2 + shares * y_2
    x = np.where(arcs, x_1 + radius * np.cos(turned), x_1 + shares * (x_2 - x_1))
    y = np.where(arcs, y_1 + radius * np.sin(turned), y_1 + shares * (y_2 - y_1))
    along_line = np.broadcast_to(np.arctan2(y_2 - y_1, x_2 - x_1), turned.shape)
    axis = np.where(arcs, turned + np.pi / 2.0, along_line)
    whole = np.where(arcs, radius * np.abs(y_2), np.hypot(x_2 - x_1, y_2 - y_1))
    length = whole * weights
    return Points(*(column.reshape(groups, -1) for column in (x, y, axis, length)))


def _over_lines(p: Pieces) -> tuple[Column, ...]:
    """Integrals of 1, x, y, x2, y2 and xy along each straight piece."""
    d_x, d_y = p.x_2 - p.x_1, p.y_2 - p.y_1
    length = np.hypot(d_x, d_y)
    x, y = (p.x_1 + p.x_2) / 2.0, (p.y_1 + p.y_2) / 2.0
    return (
        length,
        length * x,
        length * y,
        length * (x * x + d_x * d_x / 12.0),
        length * (y * y + d_y * d_y / 12.0),
        length * (x * y + d_x * d_y / 12.0),
    )


def _over_arcs(p: Pieces) -> tuple[Column, ...]:
    """Integrals of 1, x, y, x2, y2 and xy along each arc."""
    r, start, end, sweep = p.radius, p.x_2, p.x_2 + p.y_2, np.abs(p.y_2)
    # Along the weld, whichever way the arc is drawn.
    way = np.sign(p.y_2)
    c = way * (np.sin(end) - np.sin(start))
    s = way * (np.cos(start) - np.cos(end))
    cc = (sweep + way * (np.sin(2.0 * end) - np.sin(2.0 * start)) / 2.0) / 2.0
    cs = way * (np.sin(end) ** 2 - np.sin(start) ** 2) / 2.0
    length, square, cube = r * sweep, r * r, r**3
    return (
        length,
        length * p.x_1 + square * c,
        length * p.y_1 + square * s,
        length * p.x_1**2 + 2.0 * p.x_1 * square * c + cube * cc,
        length * p.y_1**2 + 2.0 * p.y_1 * square * s + cube * (sweep - cc),
        length * p.x_1 * p.y_1 + square * (p.x_1 * s + p.y_1 * c) + cube * cs,
    )
