"""Weld groups by instantaneous centre: random ones, the same one at a time by scipy, and the named patterns.

Scipy's root finding is measured on the coordinates of the centre, as the method is usually written, and on the bounded
unknowns of the engine. It sees the points of its group alone, none that only fill a row.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from math import pi

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import root

from truethroat_service.engine.instantaneous_centre import Loads, solve
from truethroat_service.engine.line_group import Pieces, Points, gauss_points, properties
from truethroat_service.practice.load_deformation import LesikKennedy
from truethroat_service.practice.weld_patterns import PATTERNS, columns

Column = NDArray[np.float64]
Groups = tuple[Points, Column, Loads]
"""Points about the centroid, radius of gyration and load of each group."""

RELATION = LesikKennedy()
DEPTH, WIDTH = 200.0, 100.0
LEVERS = (0.02, 0.1, 0.25, 0.5, 1.0, 1.5, 3.0)
"""Distances of the load from the centroid, in depths of the group."""


def random_groups(count: int) -> Groups:
    """Groups of one to five random lines, and random loads."""
    rng = np.random.default_rng(2)
    pieces = np.zeros((5, count, 5))
    for row, lines in enumerate(rng.integers(1, 6, count)):
        pieces[:4, row, :lines] = rng.uniform(-100.0, 100.0, (4, lines))
    points, rho = about_centroids(Pieces(*pieces))
    turn = rng.uniform(0.0, 2.0 * pi, count)
    return points, rho, Loads(np.cos(turn), np.sin(turn), rng.uniform(-3.0, 3.0, count) * rho)


def about_centroids(pieces: Pieces) -> tuple[Points, Column]:
    """Points of each group about its centroid, and its radius of gyration."""
    shape, points = properties(pieces), gauss_points(pieces)
    about = Points(points.x - shape.x[:, None], points.y - shape.y[:, None], points.axis, points.length)
    return about, np.sqrt(shape.j / shape.length)


def slowest_of_patterns() -> tuple[float, str, int]:
    """CPU time, s, of the slowest of the named patterns under loads from all sides, which it is, and of how many."""
    taken: list[tuple[float, str]] = []
    for name, pattern in PATTERNS.items():
        sizes = {"one-line": (DEPTH,), "circle": (DEPTH,)}.get(name, (DEPTH, WIDTH))
        points, rho = about_centroids(columns(tuple(pattern(*sizes))))
        for lever in LEVERS:
            for degrees in range(0, 360, 5):
                turn = np.radians([degrees])
                loads = Loads(np.cos(turn), np.sin(turn), np.array([lever * DEPTH]))
                started = time.process_time()
                solve(points, rho, loads, RELATION)
                taken.append((time.process_time() - started, f"{name}, {degrees} deg, {lever:g} depths off"))
    return (*max(taken), len(taken))


def on_the_centre(groups: Groups, count: int) -> float:
    """Share of the first groups at a true root after scipy has looked for the coordinates of their centres."""
    return sum(_by_coordinates(*_alone(groups, row)) for row in range(count)) / count


def on_our_unknowns(groups: Groups, count: int) -> float:
    """Share of the first groups at a true root after scipy has looked for the engine's unknowns."""
    return sum(_by_motion(*_alone(groups, row)) for row in range(count)) / count


Forces = Callable[[Column, Column], Column]
"""Forces along x and y and moment over the radius of gyration, of a motion along x and y of each point."""


def _alone(groups: Groups, row: int) -> tuple[Column, Column, float, Column, Forces]:
    """Places of the points of one group, its radius of gyration, its load as ``Forces`` gives them, and its forces."""
    points, rho, loads = groups[0], float(groups[1][row]), groups[2]
    real = points.length[row] > 0.0
    x, y, length = points.x[row][real], points.y[row][real], points.length[row][real]
    cos, sin = np.cos(points.axis[row][real]), np.sin(points.axis[row][real])

    def forces(d_x: Column, d_y: Column) -> Column:
        moved = np.hypot(d_x, d_y)
        theta = np.arccos(np.minimum(np.abs(d_x * cos + d_y * sin) / moved, 1.0))
        scale = np.min(RELATION.limit(theta) / moved)
        force = RELATION.force(theta, moved * scale) * length / moved
        f_x, f_y = force * d_x, force * d_y
        return np.array([f_x.sum(), f_y.sum(), (x * f_y - y * f_x).sum() / rho])

    return x, y, rho, np.array([loads.x[row], loads.y[row], loads.moment[row] / rho]), forces


def _by_coordinates(x: Column, y: Column, rho: float, load: Column, forces: Forces) -> bool:
    """Whether the centre that scipy reports is one of equilibrium; it starts where an elastic group turns."""
    way = 1.0 if load[2] > 0.0 else -1.0

    def at(centre: Column) -> Column:
        return forces(way * (centre[1] - y), way * (x - centre[0]))

    def residual(centre: Column) -> Column:
        found = at(centre)
        return np.cross(found, load)[:2] / np.linalg.norm(found)

    solved = root(residual, rho / max(abs(load[2]), 0.1) * np.array([-load[1], load[0]]) * way)
    return bool(solved.success) and _balanced(at(solved.x), load)


def _by_motion(x: Column, y: Column, rho: float, load: Column, forces: Forces) -> bool:
    """Whether the motion that scipy reports is one of equilibrium; it starts where the engine does."""
    size = np.hypot(load[0], load[1])
    u_x, u_y = load[0] / size, load[1] / size
    way = 1.0 if load[2] > 0.0 else -1.0
    target = np.arctan2(abs(load[2]), size)

    def at(unknowns: Column) -> Column:
        across, along, turn = unknowns[0], np.cos(unknowns[1]), way * np.sin(unknowns[1]) / rho
        return forces(across * u_y + along * u_x - turn * y, along * u_y - across * u_x + turn * x)

    def residual(unknowns: Column) -> Column:
        found = at(unknowns)
        along, turning = found[0] * u_x + found[1] * u_y, way * found[2]
        across = found[0] * u_y - found[1] * u_x
        return np.array([across / np.hypot(along, turning), np.arctan2(turning, along) - target])

    solved = root(residual, np.array([0.0, target]))
    return bool(solved.success) and _balanced(at(solved.x), load)


def _balanced(found: Column, load: Column) -> bool:
    """Whether forces run along a load."""
    return bool(np.linalg.norm(np.cross(found, load)) < 1e-6 * np.linalg.norm(found) and found @ load > 0.0)
