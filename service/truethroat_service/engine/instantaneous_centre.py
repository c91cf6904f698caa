"""Instantaneous-centre method for weld groups loaded in their own plane, many groups at once.

The group turns about one centre; the force of every bit of weld stands on its radius and follows a relation between
force and deformation that the caller gives. Deformations are scaled so that the worst bit is at its limit. Strengths
come out per unit of nominal weld strength.

Equilibrium has a false root at infinity, where the group is carried along without turning; so the motion is written
with bounded unknowns. For a load along +y at ``e`` from the centroid, with ``rho`` the radius of gyration, the motion
is ``v_x = s``, ``v_y = cos(phi)``, ``omega = sin(phi)/rho``: a turn about the centroid at ``phi`` = 90 deg, a
translation at 0. A group that is stiffer on one side may have to turn a little backwards, or past a pure turn.
"""

from dataclasses import dataclass, replace
from math import pi
from typing import Protocol

import numpy as np

from .line_group import Points
from .numeric import Column, Flags

TOLERANCE = 1e-9
LARGEST_STEP = 0.35
ROUNDS = 40
TURNS = 181
HALVINGS = 52
BRACKET_TOLERANCE = 1e-6
"""Where a bit of weld lies on the centre its force rises so steeply that halving stops short of ``TOLERANCE``."""
PURE_TURN = pi / 2.0
LEAST_TURN, MOST_TURN = -pi / 4.0, 3.0 * pi / 4.0
WIDEST_SHIFT = 20.0


class Relation(Protocol):
    """How a bit of weld answers to a deformation across the angle ``theta`` to its axis, rad."""

    def limit(self, theta: Column) -> Column:
        """Deformation at which it tears, per unit of leg."""

    def force(self, theta: Column, deformation: Column) -> Column:
        """Force per length at a deformation per unit of leg, per unit of nominal weld strength along the axis."""


@dataclass(frozen=True, slots=True)
class Loads:
    """Load of each group through its centroid: force along x and y, N, and moment about z, N mm; shape (groups,)."""

    x: Column
    y: Column
    moment: Column


@dataclass(frozen=True, slots=True)
class Found:
    """Result for each group, shape (groups,).

    ``strength`` times the nominal weld strength per length is the multiple of the group's load that it carries, so its
    dimension is that of 1/force per length over force; ``centre_x`` and ``centre_y`` are the instantaneous centre from
    the centroid, mm, infinite for a translation; ``worst_angle`` is the angle, rad, between the force and the axis of
    the bit of weld that is at its limit; ``converged`` says whether equilibrium holds to ``TOLERANCE``.
    """

    strength: Column
    centre_x: Column
    centre_y: Column
    worst_angle: Column
    converged: Flags


@dataclass(frozen=True, slots=True)
class _Problem:
    """Groups turned so that their load runs along +y on the +x side of the centroid."""

    points: Points
    rho: Column
    target: Column
    relation: Relation

    def take(self, rows: "Flags | np.ndarray[tuple[int], np.dtype[np.intp]]") -> "_Problem":
        """Some of the groups."""
        points = Points(self.points.x[rows], self.points.y[rows], self.points.axis[rows], self.points.length[rows])
        return _Problem(points, self.rho[rows], self.target[rows], self.relation)

    def motion(self, s: Column, phi: Column) -> tuple[Column, Column, Column, Column, Column]:
        """Of every point: where it moves, how far, at what angle to its axis, and what share of its limit."""
        points, omega = self.points, np.sin(phi) / self.rho
        d_x = s[:, None] - omega[:, None] * points.y
        d_y = np.cos(phi)[:, None] + omega[:, None] * points.x
        moved = np.hypot(d_x, d_y)
        along = np.abs(d_x * np.cos(points.axis) + d_y * np.sin(points.axis)) / np.where(moved > 0.0, moved, 1.0)
        theta = np.arccos(np.minimum(along, 1.0))
        share = np.where(points.length > 0.0, moved / self.relation.limit(theta), 0.0)
        return d_x, d_y, moved, theta, share

    def worst_angle(self, s: Column, phi: Column) -> Column:
        """Angle between force and axis at the point that is at its limit."""
        _, _, _, theta, share = self.motion(s, phi)
        angles: Column = np.take_along_axis(theta, np.argmax(share, axis=1)[:, None], axis=1)[:, 0]
        return angles

    def resultant(self, s: Column, phi: Column) -> tuple[Column, Column, Column]:
        """Forces across and along the load, and moment over rho, of a motion."""
        points = self.points
        d_x, d_y, moved, theta, share = self.motion(s, phi)
        still = moved <= 0.0
        moved = np.where(still, 1.0, moved)
        counted = (points.length > 0.0) & ~still
        worst = np.max(share, axis=1)
        deformation = np.where(counted, moved, 0.0) / worst[:, None]
        force = self.relation.force(theta, deformation) * points.length
        f_x, f_y = force * d_x / moved, force * d_y / moved
        moment = (points.x * f_y - points.y * f_x).sum(axis=1)
        return f_x.sum(axis=1), f_y.sum(axis=1), moment / self.rho

    def residual(self, s: Column, phi: Column) -> tuple[Column, Column]:
        """What is left of equilibrium, shape (groups, 2), and the size of the resultant."""
        across, along, turning = self.resultant(s, phi)
        size = np.hypot(along, turning)
        return np.stack([across / size, np.arctan2(turning, along) - self.target], axis=1), size


def solve(points: Points, rho: Column, loads: Loads, relation: Relation) -> Found:
    """Centre and strength of each group.

    ``points`` are about the centroid of their group, ``rho`` is its polar radius of gyration. Broyden's method settles
    nearly all groups within a few rounds; the rest are bracketed from a pure turn downwards, so where several centres
    hold, the one nearest a pure turn is taken. A group that neither settles is reported, never answered silently.
    """
    problem, turn, mirrored, demand = _turned(points, rho, loads, relation)
    s, phi, size, settled = _broyden(problem)
    left = np.flatnonzero(~settled)
    if left.size:
        s[left], phi[left], size[left], settled[left] = _bracketed(problem.take(left))
    with np.errstate(divide="ignore", invalid="ignore"):
        omega = np.sin(phi) / rho
        # The centre is where the motion is nil: v_x = omega*y and v_y = -omega*x.
        c_x, c_y = -np.cos(phi) / omega, s / omega
    c_x = np.where(mirrored, -c_x, c_x)
    cos, sin = np.cos(turn), np.sin(turn)
    with np.errstate(invalid="ignore"):
        centre_x, centre_y = c_x * cos - c_y * sin, c_x * sin + c_y * cos
    return Found(size / demand, centre_x, centre_y, problem.worst_angle(s, phi), settled)


def _turned(points: Points, rho: Column, loads: Loads, relation: Relation) -> tuple[_Problem, Column, Flags, Column]:
    """Problem in axes whose second is the load's direction, how far they turned, which were mirrored, the demand."""
    force = np.hypot(loads.x, loads.y)
    turn = np.where(force > 0.0, np.arctan2(loads.y, loads.x) - pi / 2.0, 0.0)
    cos, sin = np.cos(turn)[:, None], np.sin(turn)[:, None]
    x, y = points.x * cos + points.y * sin, points.y * cos - points.x * sin
    axis = points.axis - turn[:, None]
    # A moment the other way round is the mirror image.
    mirrored = loads.moment < 0.0
    x = np.where(mirrored[:, None], -x, x)
    axis = np.where(mirrored[:, None], pi - axis, axis)
    target = np.arctan2(np.abs(loads.moment) / rho, force)
    demand = np.hypot(force, loads.moment / rho)
    return _Problem(replace(points, x=x, y=y, axis=axis), rho, target, relation), turn, mirrored, demand


def _broyden(problem: _Problem) -> tuple[Column, Column, Column, Flags]:
    """Motion of each group by Broyden's method from a turn that would suit an isotropic group; which ones settled."""
    groups = problem.rho.shape[0]
    unknowns = np.stack([np.zeros(groups), problem.target], axis=1)
    residual, size = problem.residual(unknowns[:, 0], unknowns[:, 1])
    inverse = np.tile(np.eye(2), (groups, 1, 1))
    for _ in range(ROUNDS):
        rows = np.flatnonzero(~(np.abs(residual).max(axis=1) < TOLERANCE))
        if not rows.size:
            break
        step = -np.einsum("gij,gj->gi", inverse[rows], residual[rows])
        step *= np.minimum(1.0, LARGEST_STEP / np.maximum(np.abs(step).max(axis=1), LARGEST_STEP))[:, None]
        moved = unknowns[rows] + step
        new, size[rows] = problem.take(rows).residual(moved[:, 0], moved[:, 1])
        change = new - residual[rows]
        applied = np.einsum("gij,gj->gi", inverse[rows], change)
        scale = np.einsum("gi,gi->g", step, applied)
        usable = np.abs(scale) > 1e-14
        correction = np.einsum("gi,gj->gij", step - applied, np.einsum("gi,gij->gj", step, inverse[rows]))
        inverse[rows] += np.where(usable, 1.0 / np.where(usable, scale, 1.0), 0.0)[:, None, None] * correction
        unknowns[rows], residual[rows] = moved, new
    settled = np.abs(residual).max(axis=1) < TOLERANCE
    # A motion far beyond a pure turn, or against the load, is another root than the load's.
    settled &= np.abs(unknowns[:, 1] - PURE_TURN / 2.0) < PURE_TURN
    return unknowns[:, 0], unknowns[:, 1], size, settled


def _bracketed(problem: _Problem) -> tuple[Column, Column, Column, Flags]:
    """Motion of each group by bracketing: the shift for every turn, then the suiting turn nearest a pure one."""
    groups = problem.rho.shape[0]
    inner, outer = np.full(groups, np.nan), np.full(groups, np.nan)
    # Less turn leans the resultant less: it leans too much at ``outer`` and too little at ``inner``.
    for turns in (np.linspace(PURE_TURN, LEAST_TURN, TURNS), np.linspace(PURE_TURN, MOST_TURN, TURNS)):
        before, at = _excess(problem, np.full(groups, turns[0])), turns[0]
        for turn in turns[1:]:
            excess = _excess(problem, np.full(groups, turn))
            crossed = np.isnan(inner) & (before * excess <= 0.0) & (np.abs(before - excess) < pi / 2.0)
            inner = np.where(crossed, np.where(excess <= 0.0, turn, at), inner)
            outer = np.where(crossed, np.where(excess <= 0.0, at, turn), outer)
            before, at = excess, turn
    found = ~np.isnan(inner)
    inner, outer = np.where(found, inner, 0.0), np.where(found, outer, 0.0)
    for _ in range(HALVINGS):
        middle = (inner + outer) / 2.0
        leans = _excess(problem, middle) >= 0.0
        outer, inner = np.where(leans, middle, outer), np.where(leans, inner, middle)
    phi = (inner + outer) / 2.0
    s = _shift(problem, phi)
    residual, size = problem.residual(s, phi)
    return s, phi, size, found & (np.abs(residual).max(axis=1) < BRACKET_TOLERANCE)


def _excess(problem: _Problem, phi: Column) -> Column:
    """How far the resultant of a turn, shifted so that nothing is left across, leans more than the load."""
    residual, _ = problem.residual(_shift(problem, phi), phi)
    excess: Column = residual[:, 1]
    return excess


def _shift(problem: _Problem, phi: Column) -> Column:
    """Shift across the load at which no force across it is left."""
    low, high = np.full(phi.shape, -WIDEST_SHIFT), np.full(phi.shape, WIDEST_SHIFT)
    for _ in range(HALVINGS):
        middle = (low + high) / 2.0
        above = problem.resultant(middle, phi)[0] >= 0.0
        high, low = np.where(above, middle, high), np.where(above, low, middle)
    shift: Column = (low + high) / 2.0
    return shift
