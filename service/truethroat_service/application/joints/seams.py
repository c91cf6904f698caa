"""Seams as a request describes them, and the throat of one section of a seam from its lengths.

A seam's lengths go into :func:`clearances` as one flat record, so that a tolerance is one record with one length moved.
Lengths in mm, angles in rad.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, fields, replace
from math import inf, pi
from types import MappingProxyType
from typing import Generic, Literal, TypeVar

from ...engine import section
from ...engine.numeric import Real, maximum, minimum

SeamKind = Literal["butt", "edge", "closed-corner", "half-open-corner", "open-corner", "fillet"]
FinishTo = Literal["as-welded", "flush", "flat", "radius"]
N = TypeVar("N", bound=Real)
Vouched = Literal["assumed", "measured", "proven"]
GrooveForm = Literal["single-bevel", "single-v", "single-j", "single-u"]

FLAT_SEAMS: tuple[SeamKind, ...] = ("butt", "edge", "closed-corner")
CORNERS: tuple[SeamKind, ...] = ("closed-corner", "half-open-corner", "open-corner")

FINISHES: Mapping[SeamKind, tuple[FinishTo, ...]] = MappingProxyType(
    {
        "butt": ("as-welded", "flush"),
        "edge": ("as-welded", "flush"),
        "closed-corner": ("as-welded", "flush", "radius"),
        "half-open-corner": ("as-welded", "flush", "flat", "radius"),
        "open-corner": ("as-welded", "flush", "flat", "radius"),
        "fillet": ("as-welded", "flat"),
    }
)
"""Finishes each seam can have."""

DEFAULT_ANGLES: Mapping[GrooveForm, float] = MappingProxyType(
    {"single-bevel": pi / 4, "single-v": pi / 3, "single-j": pi / 9, "single-u": pi / 9}
)
"""Included angle of a groove when a request gives none; common practice, no source."""


@dataclass(frozen=True, slots=True)
class Penetration:
    """Fusion beyond the root or the prepared depth, and who vouches for it."""

    depth: float
    vouched: Vouched
    tolerance: float = 0.0


@dataclass(frozen=True, slots=True)
class Seam:
    """Seam of a request; ``thickness`` of parts 1 and 2, ``width`` of their outer faces from the corner, if known."""

    kind: SeamKind
    thickness: tuple[float, float] | None = None
    angle: float = pi / 2
    overlap: float = 0.0
    legs: tuple[float, float] | None = None
    width: tuple[float, float] | None = None
    thickness_tolerance: float = 0.0
    overlap_tolerance: float = 0.0
    legs_tolerance: float = 0.0

    @property
    def runs_through(self) -> float:
        """What a flat seam runs through: part 1 of a closed corner, the thinner part of a butt; no end to an edge."""
        if self.kind == "edge" or self.thickness is None:
            return inf
        return self.thickness[0] if self.kind == "closed-corner" else min(self.thickness)


@dataclass(frozen=True, slots=True)
class Preparation:
    """Prepared edge: depth of the cut, form and included angle of the groove."""

    depth: float = 0.0
    groove: GrooveForm = "single-bevel"
    groove_angle: float | None = None
    tolerance: float = 0.0

    @property
    def angle(self) -> float:
        """Included angle, given or usual."""
        return DEFAULT_ANGLES[self.groove] if self.groove_angle is None else self.groove_angle


@dataclass(frozen=True, slots=True)
class Finish:
    """What is done to the face: ``below`` is how far under the finishing plane the grinder goes."""

    to: FinishTo = "as-welded"
    radius: float | None = None
    below: float = 0.0
    tolerance: float = 0.0


@dataclass(frozen=True, slots=True)
class Lengths:
    """Every length that a section's throat depends on, a number or a column; ``face`` is negative for a hollow."""

    t_1: Real = 0.0
    t_2: Real = 0.0
    overlap: Real = 0.0
    z_1: Real = 0.0
    z_2: Real = 0.0
    depth: Real = 0.0
    deduction: Real = 0.0
    penetration: Real = 0.0
    face: Real = 0.0
    below: Real = 0.0


@dataclass(frozen=True, slots=True)
class Shape:
    """What of a section is not a length: kind, angle, finish, face width and how much of the face counts."""

    kind: SeamKind
    psi: float
    through: bool
    finish: FinishTo
    radius: float
    toe: float | None
    face_counts: bool


@dataclass(frozen=True, slots=True)
class Section(Generic[N]):
    """Throat of a section: contributions, as welded and remaining; and the distances it is made of.

    ``u`` and ``v`` are the distances to the outer planes (``u`` to the flush plane of a flat seam), ``root_to_plane``
    the distance to the plane face height counts from, ``limit`` the least clearance no face height can lengthen.
    """

    theoretical: N
    prepared_depth: N
    deduction: N
    penetration: N
    face: N
    cap: N
    as_welded: N
    remaining: N
    u: N
    v: N
    root_to_plane: N
    limit: N


Clearances = Section[float]
"""Throat of one section."""


def clearances(shape: Shape, lengths: Lengths) -> Clearances:
    """Throat of one section as welded and finished, by ``engine.section``.

    Metal that the finish breaks through leaves a throat of nothing, not a negative one.
    """
    found = _KINDS[shape.kind](shape, lengths)
    return Section(*(float(getattr(found, field.name)) for field in fields(found)))


def throats_left(shape: Shape, lengths: Lengths) -> Real:
    """Throat left by the finish, mm, of many sections of one shape whose lengths are columns."""
    return _KINDS[shape.kind](shape, lengths).remaining


def _flat(shape: Shape, lengths: Lengths) -> Section[Real]:
    """Butt, edge and closed corner."""
    closed = shape.kind == "closed-corner"
    taken = minimum(lengths.deduction, lengths.depth)
    fused = lengths.depth - taken + lengths.penetration
    through = lengths.t_1 if closed else minimum(lengths.t_1, lengths.t_2)
    u = minimum(fused, through) if shape.through else fused
    v = lengths.t_2 if closed else inf
    toe = inf if shape.toe is None else section.nearer_toe(u=u, w=shape.toe)
    return _finished(
        shape, lengths, theoretical=0.0, prepared=lengths.depth, taken=taken,
        penetration=lengths.penetration, u=u, v=v, plane=u, limit=minimum(toe, v),
    )  # fmt: skip


def _open_corner(shape: Shape, lengths: Lengths) -> Section[Real]:
    """Corner whose inner edges meet."""
    gamma = section.corner_turn(psi=shape.psi)
    line = section.open_corner_toe_line(t_1=lengths.t_1, t_2=lengths.t_2, gamma=gamma)
    u = section.open_corner_clearance(t_1=lengths.t_1, p=lengths.penetration, a_toes=line)
    v = section.open_corner_clearance(t_1=lengths.t_2, p=lengths.penetration, a_toes=line)
    return _finished(
        shape, lengths, theoretical=line, penetration=lengths.penetration,
        u=u, v=v, plane=line + lengths.penetration, limit=minimum(u, v),
    )  # fmt: skip


def _half_open_corner(shape: Shape, lengths: Lengths) -> Section[Real]:
    """Corner whose edges overlap in part."""
    t_1, t_2, o, p = lengths.t_1, lengths.t_2, lengths.overlap, lengths.penetration
    u = section.half_open_clearance(t_1=t_1, o=o, p=p, psi=shape.psi)
    line = section.half_open_toe_line(t_1=t_1, t_2=t_2, o=o, p=p, psi=shape.psi)
    unfused = section.half_open_toe_line.body(t_1=t_1, t_2=t_2, o=o, p=0.0, psi=shape.psi)
    return _finished(
        shape, lengths, theoretical=unfused, penetration=line - unfused, u=u, v=t_2, plane=line, limit=minimum(u, t_2)
    )


def _fillet(shape: Shape, lengths: Lengths) -> Section[Real]:
    """Fillet: convexity is never credited, a hollow always taken off."""
    throat = section.fillet_throat(z_1=lengths.z_1, z_2=lengths.z_2, psi=shape.psi)
    plane = throat + lengths.penetration
    return _finished(
        replace(shape, face_counts=False), lengths, theoretical=throat, penetration=lengths.penetration,
        u=plane, v=inf, plane=plane, limit=inf,
    )  # fmt: skip


def _finished(
    shape: Shape,
    lengths: Lengths,
    *,
    theoretical: Real,
    penetration: Real,
    u: Real,
    v: Real,
    plane: Real,
    limit: Real,
    prepared: Real = 0.0,
    taken: Real = 0.0,
) -> Section[Real]:
    """Face and finish on a section whose distances are known; ``plane`` is where face height counts from."""
    face = lengths.face if shape.face_counts else minimum(lengths.face, 0.0)
    as_welded = maximum(minimum(plane + face, limit), 0.0)
    return Section(
        theoretical=theoretical,
        prepared_depth=prepared,
        deduction=-taken,
        penetration=penetration,
        face=face,
        cap=as_welded - (theoretical + prepared - taken + penetration + face),
        as_welded=as_welded,
        remaining=maximum(minimum(as_welded, _to_finish(shape, lengths.below, u, v, plane)), 0.0),
        u=u,
        v=v,
        root_to_plane=plane,
        limit=limit,
    )


def _to_finish(shape: Shape, below: Real, u: Real, v: Real, plane: Real) -> Real:
    """Distance of the fused point to the finished surface; endless when nothing is ground."""
    if shape.finish == "as-welded":
        return inf
    if shape.finish == "flat":
        return plane - below
    if shape.finish == "radius":
        gamma = section.corner_turn(psi=shape.psi)
        free = section.free_radius(u=u, v=v, gamma=gamma)
        return section.blend_clearance(u=u, v=v, gamma=gamma, R=shape.radius, R_0=free) - below
    # Flush: a flat seam is ground on the one face it opens in, a corner on both outer faces.
    return (u if shape.kind in FLAT_SEAMS else minimum(u, v)) - below


_KINDS: Mapping[SeamKind, Callable[[Shape, Lengths], Section[Real]]] = MappingProxyType(
    {
        "butt": _flat,
        "edge": _flat,
        "closed-corner": _flat,
        "half-open-corner": _half_open_corner,
        "open-corner": _open_corner,
        "fillet": _fillet,
    }
)


def nearer_toe_distance(width: float, preparation: Preparation, opening: float) -> float:
    """Distance along the face from the root line to the nearer toe of a face that overlaps its groove evenly.

    The root of a bevel or J lies under its uncut side, that of a V, U or square edge under the middle; negative when
    the face is narrower than the groove's ``opening``. Common practice, no source.
    """
    one_sided = preparation.depth > 0.0 and preparation.groove in ("single-bevel", "single-j")
    overlap = (width - opening) / 2.0
    return overlap if one_sided else overlap + opening / 2.0


def tangent_run(radius: float, psi: float) -> float:
    """Distance from the sharp corner to where a blend runs out on each outer face, mm."""
    return float(section.tangent_length(R=radius, gamma=section.corner_turn(psi=psi)))


def largest_radius(found: Clearances, psi: float, throat: Real) -> float:
    """Largest blend radius that leaves a throat no greater than either distance to the outer planes, mm."""
    gamma = float(section.corner_turn(psi=psi))
    return float(section.largest_radius(u=found.u, v=found.v, q=throat, gamma=gamma))
