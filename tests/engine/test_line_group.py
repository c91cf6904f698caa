"""Properties of weld groups as lines, against handbook closed forms and against integration by scipy."""

from __future__ import annotations

from math import cos, hypot, pi, sin
from typing import Any

import numpy as np
import pytest
from scipy.integrate import quad

from truethroat_service.engine.line_group import Pieces, Properties, even_points, gauss_points, properties
from truethroat_service.practice.weld_patterns import PATTERNS, Piece, arc, line

B, D = 3.0, 5.0
# Width b 3, depth d 5, unit throat: J about the centroid and S about its level axis at the top (Blodgett, section 7.4,
# from memory; several rows also in Shigley Tables 9-1 and 9-2).
CLOSED_FORMS: dict[str, tuple[float, float]] = {
    "one-line": (D**3 / 12, D**2 / 6),
    "two-upright-lines": (D * (3 * B**2 + D**2) / 6, D**2 / 3),
    "two-level-lines": (B * (B**2 + 3 * D**2) / 6, B * D),
    "l": (((B + D) ** 4 - 6 * B**2 * D**2) / (12 * (B + D)), (4 * B * D + D**2) / 6),
    "c": ((2 * B + D) ** 3 / 12 - B**2 * (B + D) ** 2 / (2 * B + D), B * D + D**2 / 6),
    "u": ((B + 2 * D) ** 3 / 12 - D**2 * (B + D) ** 2 / (B + 2 * D), (2 * B * D + D**2) / 3),
    "rectangle": ((B + D) ** 3 / 6, B * D + D**2 / 3),
    "t": (D**3 * (4 * B + D) / (6 * (B + D)) + B**3 / 6, (4 * B * D + D**2) / 3),
    "i": ((2 * B**3 + 6 * B * D**2 + D**3) / 6, 2 * B * D + D**2 / 3),
    "circle": (pi * D**3 / 4, pi * D**2 / 4),
}


def row(pieces: list[Piece]) -> Pieces:
    """One group."""
    return Pieces(*np.array(pieces).T[:, None, :])


def of(name: str) -> list[Piece]:
    """Pieces of a pattern with b 3 and d 5."""
    sizes = {"one-line": {"depth": D}, "circle": {"diameter": D}}.get(name, {"depth": D, "width": B})
    return PATTERNS[name](**sizes)


@pytest.mark.parametrize("name", CLOSED_FORMS)
def test_patterns_have_their_handbook_properties(name: str) -> None:
    """Polar moment and top section modulus of every named pattern are the handbook's closed forms."""
    pieces = row(of(name))
    found = properties(pieces)
    top = even_points(pieces, 721).y.max() - found.y[0]
    polar, modulus = CLOSED_FORMS[name]
    assert found.j[0] == pytest.approx(polar, rel=1e-12)
    assert found.i_x[0] / top == pytest.approx(modulus, rel=1e-5)


def test_every_pattern_is_checked() -> None:
    """The closed forms above are those of every pattern there is."""
    assert set(CLOSED_FORMS) == set(PATTERNS)


def _by_scipy(pieces: list[Piece]) -> Properties:
    """Properties by adaptive quadrature of each piece."""
    sums = np.zeros(6)
    for x_1, y_1, x_2, y_2, radius in pieces:

        def at(share: float, piece: tuple[float, ...] = (x_1, y_1, x_2, y_2, radius)) -> tuple[float, float]:
            a, b, c, d, r = piece
            if r:
                return a + r * cos(c + share * d), b + r * sin(c + share * d)
            return a + share * (c - a), b + share * (d - b)

        length = radius * abs(y_2) if radius else hypot(x_2 - x_1, y_2 - y_1)
        for index, term in enumerate(
            (
                lambda p: 1.0,
                lambda p: p[0],
                lambda p: p[1],
                lambda p: p[0] ** 2,
                lambda p: p[1] ** 2,
                lambda p: p[0] * p[1],
            )
        ):
            sums[index] += length * quad(lambda share, at=at, term=term: term(at(share)), 0.0, 1.0, epsabs=1e-11)[0]
    whole, x, y, xx, yy, xy = sums
    x, y = x / whole, y / whole
    arrays: list[Any] = [
        np.array([v]) for v in (whole, x, y, yy - whole * y * y, xx - whole * x * x, xy - whole * x * y)
    ]
    return Properties(*arrays)


def test_any_lines_and_arcs_against_quadrature() -> None:
    """Random lines and arcs, either way round, have the properties that scipy integrates."""
    rng = np.random.default_rng(8)
    for _ in range(40):
        pieces = [line(*rng.uniform(-5, 5, 4)) for _ in range(rng.integers(1, 4))]
        pieces += [
            arc(
                *rng.uniform(-5, 5, 2), rng.uniform(-6, 6), rng.uniform(0.2, 6) * rng.choice([-1, 1]), rng.uniform(1, 4)
            )
            for _ in range(rng.integers(0, 3))
        ]
        found, expected = properties(row(pieces)), _by_scipy(pieces)
        for name in ("length", "x", "y", "i_x", "i_y", "i_xy"):
            assert getattr(found, name)[0] == pytest.approx(getattr(expected, name)[0], rel=1e-9, abs=1e-9)


def test_points_lie_on_their_pieces() -> None:
    """Gauss weights sum to the length; ends of even points are the ends of the piece; an arc's axis is its tangent."""
    pieces = row([line(0, 0, 3, 4), arc(1, 1, 0, pi / 2, 2)])
    gauss, even = gauss_points(pieces), even_points(pieces, 3)
    assert gauss.length.sum() == pytest.approx(5 + pi)
    assert (even.x[0][:3], even.y[0][:3]) == (pytest.approx([0, 1.5, 3]), pytest.approx([0, 2, 4]))
    assert (even.x[0][3], even.y[0][3]) == (pytest.approx(3), pytest.approx(1))
    assert even.axis[0][3] == pytest.approx(pi / 2)


def test_a_row_filled_up_is_the_same_group() -> None:
    """Pieces of no length that fill a row change none of its properties."""
    alone = properties(row(of("c")))
    filled = properties(row([*of("c"), line(0, 0, 0, 0)]))
    assert filled.j[0] == alone.j[0]
    assert filled.x[0] == alone.x[0]
