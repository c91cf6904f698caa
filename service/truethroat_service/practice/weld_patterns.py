"""Named patterns of weld groups as pieces; handbooks print closed forms of their properties, which check them.

``depth`` runs along y and ``width`` along x, mm. The origin is named with each pattern; what is welded on both sides of
a plate is drawn twice.
"""

from collections.abc import Callable, Mapping
from math import hypot, pi
from types import MappingProxyType

import numpy as np

from ..engine.line_group import Pieces

Piece = tuple[float, float, float, float, float]
"""Straight piece (x, y, x, y, 0), or arc (x, y, start angle, sweep, radius)."""


def line(x_1: float, y_1: float, x_2: float, y_2: float) -> Piece:
    """Straight piece."""
    return (x_1, y_1, x_2, y_2, 0.0)


def arc(x: float, y: float, start: float, sweep: float, radius: float) -> Piece:
    """Arc about (x, y)."""
    return (x, y, start, sweep, radius)


def length(piece: Piece) -> float:
    """Length of a piece, mm."""
    x_1, y_1, x_2, y_2, radius = piece
    return radius * abs(y_2) if radius else hypot(x_2 - x_1, y_2 - y_1)


def columns(group: tuple[Piece, ...]) -> Pieces:
    """One group as a row of pieces."""
    return Pieces(*np.array(group, dtype=np.float64).T[:, None, :])


def _upright(x: float, depth: float) -> Piece:
    return line(x, -depth / 2.0, x, depth / 2.0)


def _level(y: float, width: float) -> Piece:
    return line(0.0, y, width, y)


def one_line(depth: float) -> list[Piece]:
    """One upright line; origin at its middle."""
    return [_upright(0.0, depth)]


def two_upright_lines(depth: float, width: float) -> list[Piece]:
    """Two upright lines; origin at the middle of the left one."""
    return [_upright(0.0, depth), _upright(width, depth)]


def two_level_lines(depth: float, width: float) -> list[Piece]:
    """Two level lines; origin midway between their left ends."""
    return [_level(-depth / 2.0, width), _level(depth / 2.0, width)]


def l_shape(depth: float, width: float) -> list[Piece]:
    """Upright line with a level one at its top; origin at the middle of the upright one."""
    return [_upright(0.0, depth), _level(depth / 2.0, width)]


def c_shape(depth: float, width: float) -> list[Piece]:
    """Upright line with level ones at both ends; origin at the middle of the upright one."""
    return [_upright(0.0, depth), _level(-depth / 2.0, width), _level(depth / 2.0, width)]


def u_shape(depth: float, width: float) -> list[Piece]:
    """Level line on top of two upright ones; origin at the middle of the left one."""
    return [_level(depth / 2.0, width), _upright(0.0, depth), _upright(width, depth)]


def rectangle(depth: float, width: float) -> list[Piece]:
    """All round a rectangle; origin at the middle of its left side."""
    return [*c_shape(depth, width), _upright(width, depth)]


def t_shape(depth: float, width: float) -> list[Piece]:
    """Both sides of a stem below both sides of a level plate; origin at the middle of the level plate's left end."""
    stem = line(width / 2.0, -depth, width / 2.0, 0.0)
    return [_level(0.0, width), _level(0.0, width), stem, stem]


def i_shape(depth: float, width: float) -> list[Piece]:
    """All round an I: both sides of both flanges and of the web; origin at the middle of the web's left."""
    web = _upright(width / 2.0, depth)
    flanges = [_level(y, width) for y in (-depth / 2.0, -depth / 2.0, depth / 2.0, depth / 2.0)]
    return [*flanges, web, web]


def circle(diameter: float) -> list[Piece]:
    """All round a circle; origin at its centre."""
    return [arc(0.0, 0.0, 0.0, 2.0 * pi, diameter / 2.0)]


PATTERNS: Mapping[str, Callable[..., list[Piece]]] = MappingProxyType(
    {
        "one-line": one_line,
        "two-upright-lines": two_upright_lines,
        "two-level-lines": two_level_lines,
        "l": l_shape,
        "c": c_shape,
        "u": u_shape,
        "t": t_shape,
        "i": i_shape,
        "rectangle": rectangle,
        "circle": circle,
    }
)
"""Patterns of the standard list by their names in requests."""
