"""Random weld groups, scipy's root finding on their centres one at a time, and named patterns one load at a time."""

from __future__ import annotations

import time
from math import pi
from statistics import median

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import root

from truethroat_service.engine.instantaneous_centre import Loads, solve
from truethroat_service.engine.line_group import Pieces, Points, gauss_points, properties
from truethroat_service.practice.load_deformation import LesikKennedy
from truethroat_service.practice.weld_patterns import PATTERNS, columns

Column = NDArray[np.float64]


def random_groups(count: int) -> tuple[Points, Column, Loads]:
    """Groups of one to five random lines about their centroids, their radii of gyration, and random loads."""
    rng = np.random.default_rng(2)
    pieces = np.zeros((5, count, 5))
    for row, lines in enumerate(rng.integers(1, 6, count)):
        pieces[:4, row, :lines] = rng.uniform(-100.0, 100.0, (4, lines))
    shape = properties(Pieces(*pieces))
    points = gauss_points(Pieces(*pieces))
    about = Points(points.x - shape.x[:, None], points.y - shape.y[:, None], points.axis, points.length)
    rho = np.sqrt(shape.j / shape.length)
    turn = rng.uniform(0.0, 2.0 * pi, count)
    return about, rho, Loads(np.cos(turn), np.sin(turn), rng.uniform(-3.0, 3.0, count) * rho)


def scipy_roots(points: Points, rho: Column, loads: Loads, count: int) -> float:
    """Share of the first groups for which scipy's root, where it reports success, is a true one."""
    relation, true_roots = LesikKennedy(), 0
    for row in range(count):
        load = np.array([loads.x[row], loads.y[row], loads.moment[row] / rho[row]])
        way = 1.0 if loads.moment[row] > 0.0 else -1.0

        def forces(place: Column, row: int = row, way: float = way) -> Column:
            x, y = points.x[row] - place[0], points.y[row] - place[1]
            radius = np.hypot(x, y)
            u_x, u_y = -way * y / radius, way * x / radius
            axis = points.axis[row]
            theta = np.arccos(np.minimum(np.abs(u_x * np.cos(axis) + u_y * np.sin(axis)), 1.0))
            real = points.length[row] > 0.0
            scale = np.min(np.where(real, relation.limit(theta) / radius, np.inf))
            force = relation.force(theta, np.where(real, radius * scale, 0.0)) * points.length[row]
            f_x, f_y = force * u_x, force * u_y
            moment = (points.x[row] * f_y - points.y[row] * f_x).sum() / rho[row]
            return np.array([f_x.sum(), f_y.sum(), moment])

        def residual(place: Column, load: Column = load) -> Column:
            found = forces(place)
            return np.cross(found, load)[:2] / np.linalg.norm(found)

        start = rho[row] / max(abs(load[2]), 0.1) * np.array([-load[1], load[0]]) * way
        solved = root(residual, start)
        found = forces(solved.x)
        balanced = np.linalg.norm(np.cross(found, load)) < 1e-6 * np.linalg.norm(found)
        true_roots += bool(solved.success and balanced and found @ load > 0.0)
    return true_roots / count


def slowest_pattern(turns: int) -> tuple[str, float, float, int]:
    """Named pattern, 200 mm deep and 100 mm wide, with the slowest load; its and the median seconds; how many loads.

    Each load is solved alone, as a request is: so many directions from along x to along y, at eccentricities of 0.02 to
    2 depths.
    """
    depth, width, taken = 200.0, 100.0, []
    for name, pattern in PATTERNS.items():
        pieces = columns(tuple(pattern(depth) if name in ("one-line", "circle") else pattern(depth, width)))
        shape, points = properties(pieces), gauss_points(pieces)
        about = Points(points.x - shape.x[:, None], points.y - shape.y[:, None], points.axis, points.length)
        for turn in np.linspace(0.0, pi / 2.0, turns):
            for share in (0.02, 0.1, 0.25, 0.5, 1.0, 1.5, 2.0):
                load = Loads(np.cos([turn]), np.sin([turn]), np.array([share * depth]))
                started = time.process_time()
                solve(about, np.sqrt(shape.j / shape.length), load, LesikKennedy())
                taken.append((time.process_time() - started, name))
    slowest, name = max(taken)
    return name, slowest, median(seconds for seconds, _ in taken), len(taken)
