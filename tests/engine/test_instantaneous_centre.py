"""Instantaneous centre of random groups, against scipy's root finding on the centre and against symmetries."""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import pairwise
from math import cos, pi, sin, sqrt

import numpy as np
import pytest
from scipy.optimize import brentq, root

from truethroat_service.engine import instantaneous_centre as method
from truethroat_service.engine.instantaneous_centre import Loads, solve
from truethroat_service.engine.line_group import Pieces, Points, gauss_points, properties
from truethroat_service.engine.numeric import Column
from truethroat_service.practice.load_deformation import LesikKennedy
from truethroat_service.practice.weld_patterns import PATTERNS, Piece, line


def groups(count: int, seed: int) -> tuple[Points, np.ndarray, Loads]:
    """Random groups of one to five lines about their centroids, with their radii of gyration and random loads."""
    rng = np.random.default_rng(seed)
    pieces = np.zeros((5, count, 5))
    for row in range(count):
        lines = rng.integers(1, 6)
        pieces[:4, row, :lines] = rng.uniform(-100, 100, (4, lines))
    shape = properties(Pieces(*pieces))
    points = gauss_points(Pieces(*pieces))
    about = Points(points.x - shape.x[:, None], points.y - shape.y[:, None], points.axis, points.length)
    rho = np.sqrt(shape.j / shape.length)
    turn = rng.uniform(0, 2 * pi, count)
    return about, rho, Loads(np.cos(turn), np.sin(turn), rng.uniform(-3, 3, count) * rho)


def _forces_about(points: Points, row: int, centre: tuple[float, float], way: float) -> np.ndarray:
    """Resultant of a turn about a centre, written out after Lesik and Kennedy without our engine (from memory)."""
    x, y = points.x[row] - centre[0], points.y[row] - centre[1]
    real = points.length[row] > 0
    x, y, axis, length = x[real], y[real], points.axis[row][real], points.length[row][real]
    radius = np.hypot(x, y)
    u_x, u_y = -way * y / radius, way * x / radius
    theta = np.degrees(np.arccos(np.minimum(np.abs(u_x * np.cos(axis) + u_y * np.sin(axis)), 1.0)))
    rupture = np.minimum(1.087 * (theta + 6) ** -0.65, 0.17)
    deformation = radius * np.min(rupture / radius)
    p = deformation / (0.209 * (theta + 2) ** -0.32)
    force = (1 + 0.5 * np.sin(np.radians(theta)) ** 1.5) * (p * (1.9 - 0.9 * p)) ** 0.3 * length
    f_x, f_y = force * u_x, force * u_y
    return np.array([f_x.sum(), f_y.sum(), (points.x[row][real] * f_y - points.y[row][real] * f_x).sum()])


def test_equilibrium_holds_for_every_group() -> None:
    """About the centre found, the forces of the relation, written out here, balance the load (statics)."""
    points, rho, loads = groups(300, seed=3)
    found = solve(points, rho, loads, LesikKennedy())
    assert found.converged.all()
    for row in range(300):
        centre = (float(found.centre_x[row]), float(found.centre_y[row]))
        wanted = np.array([loads.x[row], loads.y[row], loads.moment[row]]) * found.strength[row]
        scale = np.array([1.0, 1.0, rho[row]])
        size = np.linalg.norm(wanted / scale)
        errors = [np.linalg.norm((_forces_about(points, row, centre, way) - wanted) / scale) / size for way in (1, -1)]
        assert min(errors) < 1e-6


def test_strength_against_scipy() -> None:
    """Where scipy's root on the centre's place finds a true root, it is the strength found, or a greater one."""
    points, rho, loads = groups(60, seed=4)
    found = solve(points, rho, loads, LesikKennedy())
    agreed = 0
    for row in range(60):
        load = np.array([loads.x[row], loads.y[row], loads.moment[row] / rho[row]])
        way = 1.0 if loads.moment[row] > 0 else -1.0

        def residual(place: np.ndarray, row: int = row, load: np.ndarray = load, way: float = way) -> np.ndarray:
            forces = _forces_about(points, row, (place[0], place[1]), way) / np.array([1, 1, rho[row]])
            across = np.cross(forces, load)
            return np.array([across[0], across[1]]) / np.linalg.norm(forces)

        start = rho[row] / max(abs(load[2]), 0.1) * np.array([-load[1], load[0]]) * way
        solved = root(residual, start, tol=1e-10)
        forces = _forces_about(points, row, tuple(solved.x), way) / np.array([1, 1, rho[row]])
        true_root = (
            solved.success
            and np.linalg.norm(np.cross(forces, load)) < 1e-7 * np.linalg.norm(forces)
            and forces @ load > 0
        )
        if true_root:
            strength = np.linalg.norm(forces) / np.linalg.norm(load)
            assert found.strength[row] == pytest.approx(strength, rel=1e-5) or found.strength[row] < strength
            agreed += abs(found.strength[row] / strength - 1) < 1e-5
    assert agreed >= 30


def _turned(points: Points, loads: Loads, angle: float) -> tuple[Points, Loads]:
    """Groups and loads turned together."""
    c, s = cos(angle), sin(angle)
    return (
        Points(points.x * c - points.y * s, points.x * s + points.y * c, points.axis + angle, points.length),
        Loads(loads.x * c - loads.y * s, loads.x * s + loads.y * c, loads.moment),
    )


def test_turning_a_group_with_its_load_changes_nothing() -> None:
    """Strength is the same whichever way the paper lies, and the centre turns along (symmetry)."""
    points, rho, loads = groups(50, seed=5)
    found = solve(points, rho, loads, LesikKennedy())
    turned, along = _turned(points, loads, 0.7)
    again = solve(turned, rho, along, LesikKennedy())
    assert again.strength == pytest.approx(found.strength, rel=1e-6)
    assert np.hypot(again.centre_x, again.centre_y) == pytest.approx(np.hypot(found.centre_x, found.centre_y), rel=1e-4)


def test_mirror_image_has_the_same_strength() -> None:
    """A group in a mirror, its moment the other way round, is as strong (symmetry)."""
    points, rho, loads = groups(50, seed=6)
    found = solve(points, rho, loads, LesikKennedy())
    mirrored = Points(-points.x, points.y, pi - points.axis, points.length)
    again = solve(mirrored, rho, Loads(-loads.x, loads.y, -loads.moment), LesikKennedy())
    assert again.strength == pytest.approx(found.strength, rel=1e-6)


def test_twice_the_size_and_moment_is_twice_the_strength() -> None:
    """Every length doubled carries twice the force at twice the lever (similarity)."""
    points, rho, loads = groups(50, seed=7)
    found = solve(points, rho, loads, LesikKennedy())
    larger = Points(2 * points.x, 2 * points.y, points.axis, 2 * points.length)
    again = solve(larger, 2 * rho, Loads(loads.x, loads.y, 2 * loads.moment), LesikKennedy())
    assert again.strength == pytest.approx(2 * found.strength, rel=1e-6)


def test_a_line_loaded_along_itself_is_worth_its_length() -> None:
    """One line, concentric and along: all of it at its greatest force, so about its length (Table 8-4 caps at 1.0)."""
    y, weights = np.polynomial.legendre.leggauss(32)
    points = Points(np.zeros((1, 32)), y[None] * 50, np.full((1, 32), pi / 2), weights[None] * 50)
    load = Loads(np.zeros(1), np.ones(1), np.zeros(1))
    found = solve(points, np.array([100 / sqrt(12)]), load, LesikKennedy())
    assert found.strength[0] == pytest.approx(100, rel=0.005)
    assert not np.isfinite(found.centre_x[0])


def test_a_line_loaded_across_itself_is_half_as_strong_again() -> None:
    """One line, concentric and across: 1.5 of its length at most (AISC 360-22 J2.4(a))."""
    x, weights = np.polynomial.legendre.leggauss(32)
    points = Points(x[None] * 50, np.zeros((1, 32)), np.zeros((1, 32)), weights[None] * 50)
    load = Loads(np.zeros(1), np.ones(1), np.zeros(1))
    found = solve(points, np.array([100 / sqrt(12)]), load, LesikKennedy())
    assert 0.98 * 150 < found.strength[0] <= 150 * (1 + 1e-9)


def test_a_pure_moment_turns_about_the_centroid_of_a_circle() -> None:
    """A ring under a moment: the centre is its centre, every bit at 0 deg at rupture (symmetry)."""
    turn = np.linspace(0, 2 * pi, 360, endpoint=False)[None]
    points = Points(30 * np.cos(turn), 30 * np.sin(turn), turn + pi / 2, np.full((1, 360), 30 * 2 * pi / 360))
    found = solve(points, np.array([30.0]), Loads(np.zeros(1), np.zeros(1), np.ones(1)), LesikKennedy())
    assert found.converged.all()
    assert np.hypot(found.centre_x[0], found.centre_y[0]) < 1e-6
    assert found.worst_angle[0] == pytest.approx(0, abs=1e-6)


def test_every_way_leads_to_the_same_centre(monkeypatch: pytest.MonkeyPatch) -> None:
    """Without the first attempt many starts find the same strengths, without any the brackets do; else it is said."""
    points, rho, loads = groups(20, seed=9)
    found = solve(points, rho, loads, LesikKennedy())
    monkeypatch.setattr(method, "TOLERANCE", 0.0)
    started = solve(points, rho, loads, LesikKennedy())
    monkeypatch.setattr(method, "ROUNDS", 0)
    bracketed = solve(points, rho, loads, LesikKennedy())
    for again in (started, bracketed):
        assert again.converged.all()
        assert again.strength == pytest.approx(found.strength, rel=1e-6)
    monkeypatch.setattr(method, "BRACKET_TOLERANCE", 0.0)
    assert not solve(points, rho, loads, LesikKennedy()).converged.any()


# --- Groups that Broyden's method leaves at the first attempt ---


def _in_pieces(pattern: list[Piece], count: int) -> list[Piece]:
    """The same straight lines, each drawn as many short ones."""
    ends = np.linspace(0.0, 1.0, count + 1)
    return [
        line(*(x_1 + t * (x_2 - x_1), y_1 + t * (y_2 - y_1)), *(x_1 + u * (x_2 - x_1), y_1 + u * (y_2 - y_1)))
        for x_1, y_1, x_2, y_2, _ in pattern
        for t, u in pairwise(ends)
    ]


def _one(pieces: list[Piece], angle: float, lever: float) -> tuple[Points, np.ndarray, Loads]:
    """One group under a unit force at an angle, deg, as far from its centroid as the lever says."""
    columns = Pieces(*np.array(pieces).T[:, None, :])
    shape, points = properties(columns), gauss_points(columns)
    about = Points(points.x - shape.x[:, None], points.y - shape.y[:, None], points.axis, points.length)
    direction = np.radians([angle])
    return about, np.sqrt(shape.j / shape.length), Loads(np.cos(direction), np.sin(direction), np.array([lever]))


TWO_LINES, APART = (PATTERNS["two-level-lines"](depth=200.0, width=width) for width in (100.0, 40.0))
UNSETTLED = {
    "i": (PATTERNS["i"](depth=200.0, width=100.0), 0.0, 300.0),
    "two level lines": (TWO_LINES, 5.0, 4.0),
    "two level lines, steeper": (TWO_LINES, 20.0, 4.0),
    "circle": (PATTERNS["circle"](diameter=200.0), 30.0, 100.0),
    "t, its centre on the stem": (PATTERNS["t"](depth=100.0, width=200.0), 180.0, 30.0),
    "200 lines": (_in_pieces(APART, 100), 95.0, 500.0),
}
"""Loads that took from one to thirteen seconds by halving alone."""


@dataclass(frozen=True)
class Counted(LesikKennedy):
    """The relation, and how many points it was asked about at each call."""

    asked: list[int] = field(default_factory=list)

    def force(self, theta: Column, deformation: Column) -> Column:
        """Force at a deformation."""
        self.asked.append(theta.size)
        return super().force(theta, deformation)


@pytest.mark.parametrize("name", UNSETTLED)
def test_a_group_that_does_not_settle_takes_few_evaluations(name: str) -> None:
    """Forces are worked out at most 500 times one after the other, and for three million points in all."""
    points, rho, loads = _one(*UNSETTLED[name])
    relation = Counted()
    assert solve(points, rho, loads, relation).converged.all()
    assert method.ROUNDS < len(relation.asked) <= 500
    assert sum(relation.asked) <= 3e6


@pytest.mark.parametrize("name", UNSETTLED)
def test_a_group_that_does_not_settle_at_once_has_the_strength_of_scipy(name: str) -> None:
    """Scipy's bracketed roots, one within the other, find the same strength at the first turn from a pure one down."""
    points, rho, loads = _one(*UNSETTLED[name])
    found = solve(points, rho, loads, LesikKennedy())
    assert found.strength[0] == pytest.approx(_by_brackets(points, float(rho[0]), loads), rel=1e-6)


def _by_brackets(points: Points, rho: float, loads: Loads) -> float:
    """Strength by scipy alone: for each turn the shift without a force across, then the turn that leans as the load."""
    turned, along = _turned(points, loads, pi / 2 - float(np.arctan2(loads.y[0], loads.x[0])))
    target = float(np.arctan2(along.moment[0] / rho, along.y[0]))

    def forces(shift: float, turn: float) -> np.ndarray:
        centre = (-rho / np.tan(turn), rho * shift / np.sin(turn))
        return _forces_about(turned, 0, centre, 1.0 if turn > 0 else -1.0) / np.array([1.0, 1.0, rho])

    def balanced(turn: float) -> np.ndarray:
        return forces(brentq(lambda shift: forces(shift, turn)[0], -20.0, 20.0, xtol=1e-15, rtol=1e-15), turn)

    def excess(turn: float) -> float:
        _, force, moment = balanced(turn)
        return float(np.arctan2(moment, force)) - target

    turns = np.linspace(pi / 2, 0.01, 60)
    for more, less in pairwise(turns):
        if excess(more) >= 0.0 > excess(less):
            return float(np.linalg.norm(balanced(brentq(excess, less, more, xtol=1e-16, rtol=1e-15)))) / float(
                np.hypot(along.y[0], along.moment[0] / rho)
            )
    raise AssertionError("no turn leans as the load")
