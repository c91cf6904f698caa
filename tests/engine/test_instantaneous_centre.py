"""Instantaneous centre of random groups, against scipy's root finding on the centre and against symmetries."""

from __future__ import annotations

from math import cos, pi, sin, sqrt

import numpy as np
import pytest
from scipy.optimize import root

from truethroat_service.engine import instantaneous_centre as method
from truethroat_service.engine.instantaneous_centre import Loads, solve
from truethroat_service.engine.line_group import Pieces, Points, gauss_points, properties
from truethroat_service.practice.load_deformation import LesikKennedy


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


def test_brackets_agree_where_broyden_settles(monkeypatch: pytest.MonkeyPatch) -> None:
    """With no rounds for Broyden's method the brackets find the same strengths; what none settles is reported."""
    points, rho, loads = groups(12, seed=9)
    found = solve(points, rho, loads, LesikKennedy())
    monkeypatch.setattr(method, "ROUNDS", 0)
    again = solve(points, rho, loads, LesikKennedy())
    assert again.converged.all()
    assert again.strength == pytest.approx(found.strength, rel=1e-5)
    monkeypatch.setattr(method, "BRACKET_TOLERANCE", 0.0)
    assert not solve(points, rho, loads, LesikKennedy()).converged.any()
