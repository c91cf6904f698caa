"""Instantaneous-centre method for weld groups loaded in their own plane, many groups at once.

The group turns about one centre; the force of every bit of weld is square to its radius and follows a relation between
force and deformation that the caller gives. Deformations are scaled so that the worst bit is at its limit. Strengths
come out per unit of nominal weld strength.

Equilibrium has a false root at infinity, where the group is carried along without turning; so the motion is written
with bounded unknowns. For a load along +y at ``e`` from the centroid, with ``rho`` the radius of gyration, the motion
is ``v_x = s``, ``v_y = cos(phi)``, ``omega = sin(phi)/rho``: a turn about the centroid at ``phi`` = 90 deg, a
translation at 0. A group that is stiffer on one side may have to turn a little backwards, or past a pure turn.

Three ways lead to the motion, each for the groups that the one before leaves:

1. Broyden's method from the turn that would suit an isotropic group settles all but a few in a thousand, within about
   eight evaluations of the forces.
2. Broyden's method from eight motions at once settles most of the others, whose worst bit changes on the way. Of
   several motions that hold equilibrium, the one nearest a pure turn is taken.
3. Brackets settle the rest. The force of a bit of weld that lies on the centre all but jumps to its opposite, and only
   bracketing comes near enough to that. For every turn of a fan the shift is found at which no force across the load is
   left. Between two turns of which one leans the resultant more than the load and the other less lies the one looked
   for. The fan opens from a pure turn downwards, then upwards, and the first such step is taken.

A group that none of them settles is reported, never answered silently.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace
from itertools import product
from math import ceil, pi
from typing import Protocol, TypeAlias

import numpy as np

from .line_group import Points
from .numeric import Column, Flags

Rows: TypeAlias = "np.ndarray[tuple[int], np.dtype[np.intp]]"

CHUNK = 256
"""Groups solved at once; their points stay in the processor's cache."""
STILL = 1e-200
"""A point that moves no more than this stands still, and its direction is none."""
TOLERANCE, CLOSE_TOLERANCE = 1e-9, 1e-11
"""Equilibrium at the first attempt, and later, when several ways lead to one motion and must not show."""
LARGEST_STEP = 0.35
ROUNDS = 40
PURE_TURN = pi / 2.0
LEAST_TURN, MOST_TURN = -pi / 4.0, 3.0 * pi / 4.0
STARTS = tuple(product((-0.5, 0.5), (-0.6, 0.3, 1.2, 2.2)))
"""Shift and turn of each motion from which a group starts again that did not settle."""
ENOUGH_POINTS = 256
"""A group of more points starts again with only some of them, and is bracketed between fewer turns."""
STEPS_DOWN, STEPS_UP, MOST_CROWDED = 120, 40, 10
"""Steps of a fan of turns, and how many times fewer there are at least in a group of many points."""
CHORDS = 200
ROUGHLY, CLOSELY = 1e-9, 1e-15
"""How closely the shift is bracketed for a fan, and within one of its steps."""
BRACKET_TOLERANCE = 1e-6
"""Where a bit of weld lies on the centre its force rises so steeply that halving stops short of ``TOLERANCE``."""


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
    """Groups turned so that their load runs along +y on the +x side of the centroid.

    ``points`` holds a row of each group for the place x and y of its points, the cosine and sine of the weld's axis
    there, the length each stands for, and 1 for a real point or 0 for one that only fills the row.
    """

    points: Column
    rho: Column
    target: Column
    relation: Relation

    def take(self, rows: "Flags | Rows") -> "_Problem":
        """Some of the groups."""
        return _Problem(self.points[:, rows], self.rho[rows], self.target[rows], self.relation)

    @property
    def crowd(self) -> int:
        """How many times as many points a group has as are enough."""
        return ceil(self.points.size / self.points[:, :, 0].size / ENOUGH_POINTS)

    def thinned(self) -> "_Problem":
        """The groups with no more points than are enough, evenly picked."""
        return replace(self, points=self.points[:, :, self.crowd // 2 :: self.crowd])

    def motion(self, s: Column, phi: Column) -> tuple[Column, Column, Column, Column, Column]:
        """Of every point: where it moves, how far, at what angle to its axis, and what share of its limit."""
        x, y, cos, sin, _, real = self.points
        omega = (np.sin(phi) / self.rho)[:, None]
        d_x = s[:, None] - omega * y
        d_y = np.cos(phi)[:, None] + omega * x
        moved = np.hypot(d_x, d_y) * real
        along = np.abs(d_x * cos + d_y * sin) / np.maximum(moved, STILL)
        theta = np.arccos(np.minimum(along, 1.0))
        return d_x, d_y, moved, theta, moved / self.relation.limit(theta)

    def worst_angle(self, s: Column, phi: Column) -> Column:
        """Angle between force and axis at the point that is at its limit."""
        _, _, _, theta, share = self.motion(s, phi)
        angles: Column = np.take_along_axis(theta, np.argmax(share, axis=1)[:, None], axis=1)[:, 0]
        return angles

    def resultant(self, s: Column, phi: Column) -> tuple[Column, Column, Column]:
        """Forces across and along the load, and moment over rho, of a motion."""
        x, y, _, _, length, _ = self.points
        d_x, d_y, moved, theta, share = self.motion(s, phi)
        force = self.relation.force(theta, moved / share.max(axis=1)[:, None]) * length
        moved = np.maximum(moved, STILL)
        f_x, f_y = force * d_x / moved, force * d_y / moved
        moment = (x * f_y - y * f_x).sum(axis=1)
        return f_x.sum(axis=1), f_y.sum(axis=1), moment / self.rho

    def residual(self, s: Column, phi: Column) -> tuple[Column, Column]:
        """What is left of equilibrium, shape (groups, 2), and the size of the resultant."""
        across, along, turning = self.resultant(s, phi)
        size = np.hypot(along, turning)
        return np.stack([across / size, np.arctan2(turning, along) - self.target], axis=1), size


def solve(points: Points, rho: Column, loads: Loads, relation: Relation) -> Found:
    """Centre and strength of each group.

    ``points`` are about the centroid of their group, ``rho`` is its polar radius of gyration.
    """
    filled = points.length.shape[1] - np.argmax(points.length[:, ::-1] > 0.0, axis=1)
    # Groups of about as many points go together, so that few points only fill their rows.
    order = np.argsort(filled, kind="stable")
    strength, centre_x, centre_y, angle = np.empty((4, rho.size))
    found = Found(strength, centre_x, centre_y, angle, np.empty(rho.size, dtype=np.bool_))
    for start in range(0, rho.size, CHUNK):
        rows = order[start : start + CHUNK]
        most = int(filled[rows[-1]])
        some = Points(*(column[rows, :most] for column in (points.x, points.y, points.axis, points.length)))
        of_some = Loads(loads.x[rows], loads.y[rows], loads.moment[rows])
        part = _solved(some, rho[rows], of_some, relation)
        for name in Found.__slots__:
            getattr(found, name)[rows] = getattr(part, name)
    return found


def _solved(points: Points, rho: Column, loads: Loads, relation: Relation) -> Found:
    """Result for groups that fit into the cache together."""
    problem, turn, mirrored, demand = _turned(points, rho, loads, relation)
    s, phi, size, settled = _broyden(problem, np.zeros(rho.size), problem.target, TOLERANCE)
    for another in (_from_many_starts, _bracketed):
        left = np.flatnonzero(~settled)
        if left.size:
            s[left], phi[left], size[left], settled[left] = another(problem.take(left))
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
    columns = np.array([x, y, np.cos(axis), np.sin(axis), points.length, points.length > 0.0])
    return _Problem(columns, rho, target, relation), turn, mirrored, demand


def _broyden(problem: _Problem, s: Column, phi: Column, tolerance: float) -> tuple[Column, Column, Column, Flags]:
    """Motion of each group by Broyden's method from a given one; which ones settled."""
    unknowns = np.stack([s, phi], axis=1)
    residual, size = problem.residual(s, phi)
    inverse = np.tile(np.eye(2), (s.size, 1, 1))
    rows, some = np.arange(s.size), problem
    for _ in range(ROUNDS):
        unsettled = ~(np.abs(residual[rows]).max(axis=1) < tolerance)
        if not unsettled.all():
            rows, some = rows[unsettled], some.take(unsettled)
        if not rows.size:
            break
        step = -np.einsum("gij,gj->gi", inverse[rows], residual[rows])
        step *= np.minimum(1.0, LARGEST_STEP / np.maximum(np.abs(step).max(axis=1), LARGEST_STEP))[:, None]
        moved = unknowns[rows] + step
        new, size[rows] = some.residual(moved[:, 0], moved[:, 1])
        change = new - residual[rows]
        applied = np.einsum("gij,gj->gi", inverse[rows], change)
        scale = np.einsum("gi,gi->g", step, applied)
        usable = np.abs(scale) > 1e-14
        correction = np.einsum("gi,gj->gij", step - applied, np.einsum("gi,gij->gj", step, inverse[rows]))
        inverse[rows] += np.where(usable, 1.0 / np.where(usable, scale, 1.0), 0.0)[:, None, None] * correction
        unknowns[rows], residual[rows] = moved, new
    settled = np.abs(residual).max(axis=1) < tolerance
    # A motion far beyond a pure turn, or against the load, is another root than the load's.
    settled &= np.abs(unknowns[:, 1] - PURE_TURN / 2.0) < PURE_TURN
    return unknowns[:, 0], unknowns[:, 1], size, settled


def _from_many_starts(problem: _Problem) -> tuple[Column, Column, Column, Flags]:
    """Motion of each group by Broyden's method from many starts: of those that settle, the one nearest a pure turn."""
    groups, starts = problem.rho.size, len(STARTS)
    shifts, turns = np.tile(np.transpose(STARTS), groups)
    many = problem.thinned().take(np.repeat(np.arange(groups), starts))
    s, phi, size, settled = _broyden(many, shifts, turns, CLOSE_TOLERANCE)
    # Any turn short of a pure one comes before those past it, as it does in a fan.
    away = np.where(settled, np.where(phi <= PURE_TURN, PURE_TURN, MOST_TURN + PURE_TURN) - phi, np.inf)
    nearest = away.reshape(groups, starts).argmin(axis=1) + np.arange(groups) * starts
    if problem.crowd > 1:
        return _broyden(problem, s[nearest], phi[nearest], CLOSE_TOLERANCE)
    return s[nearest], phi[nearest], size[nearest], settled[nearest]


def _bracketed(problem: _Problem) -> tuple[Column, Column, Column, Flags]:
    """Motion of each group by bracketing: a fan of turns, each with its shift, then within the step that suits."""
    groups = np.arange(problem.rho.size)
    down, up = (steps // min(problem.crowd, MOST_CROWDED) for steps in (STEPS_DOWN, STEPS_UP))
    fan = np.concatenate([np.linspace(PURE_TURN, LEAST_TURN, down + 1), np.linspace(PURE_TURN, MOST_TURN, up + 1)])
    every = problem.take(np.repeat(groups, fan.size))
    excess = _excess(every, np.tile(fan, groups.size), ROUGHLY).reshape(groups.size, fan.size)
    before, after = excess[:, :-1], excess[:, 1:]
    suits = (before * after <= 0.0) & (np.abs(after - before) < pi / 2.0)
    # From the last turn down to the first one up is no step.
    suits[:, down] = False
    # A group without a step that suits keeps one turn.
    found, step = suits.any(axis=1), suits.argmax(axis=1)
    falls = before[groups, step] > after[groups, step]
    low, high = fan[step + (found & falls)], fan[step + (found & ~falls)]

    def closely(turns: Column, rows: Rows) -> Column:
        return _excess(problem.take(rows), turns, CLOSELY)

    phi = _crossing(closely, low, high, CLOSELY, np.full(groups.size, CLOSE_TOLERANCE))
    s = _shift(problem, phi, CLOSELY)
    residual, size = problem.residual(s, phi)
    return s, phi, size, found & (np.abs(residual).max(axis=1) < BRACKET_TOLERANCE)


def _excess(problem: _Problem, phi: Column, width: float) -> Column:
    """How far turns, shifted so that nothing is left across, lean the resultant more than the load."""
    residual, _ = problem.residual(_shift(problem, phi, width), phi)
    excess: Column = residual[:, 1]
    return excess


def _shift(problem: _Problem, phi: Column, width: float) -> Column:
    """Shift across the load at which no force across it is left."""
    # A shift under all that the turn carries the points across moves them all one way, one over it the other way.
    carried = (np.sin(phi) / problem.rho)[:, None] * problem.points[1]
    return _crossing(
        lambda s, rows: problem.take(rows).resultant(s, phi[rows])[0],
        carried.min(axis=1),
        carried.max(axis=1),
        width,
        width * problem.points[4].sum(axis=1),
    )


def _crossing(
    function: Callable[[Column, Rows], Column], low: Column, high: Column, width: float, nil: Column
) -> Column:
    """Where a function of each row crosses nil, from under it at ``low`` to over it at ``high``: the Illinois method.

    It follows the chord; an end that stays twice counts half, so that the next chord falls beyond the crossing. An end
    that is on the wrong side by a last bit is the crossing itself.
    """
    rows = np.arange(low.size)
    values, last = np.array([function(low, rows), function(high, rows)]), np.full(low.size, -1)
    ends = np.array([np.where(values[1] < 0.0, high, low), np.where(values[0] > 0.0, low, high)])
    for _ in range(CHORDS):
        rows = np.flatnonzero(np.abs(ends[1] - ends[0]) > width)
        if not rows.size:
            break
        (low, high), (below, above) = ends[:, rows], values[:, rows]
        rise = above - below
        place = np.where(rise > 0.0, (low * above - high * below) / np.where(rise > 0.0, rise, 1.0), (low + high) / 2.0)
        value = function(place, rows)
        under, over = value <= nil[rows], value >= -nil[rows]
        weight = np.where(over == last[rows], 0.5, 1.0)
        ends[:, rows] = np.where(under, place, low), np.where(over, place, high)
        values[:, rows] = np.where(under, value, below * weight), np.where(over, value, above * weight)
        last[rows] = over
    crossing: Column = ends.mean(axis=0)
    return crossing
