"""Seams as a request describes them, and the throat of one section of a seam from its lengths.

A seam's lengths go into :func:`clearances` as one flat record, so that a tolerance is one record with one length moved.
Lengths in mm, angles in rad.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, fields, replace
from math import inf, pi
from types import MappingProxyType
from typing import Annotated, Generic, Literal, TypeVar

from ...engine import section
from ...engine.numeric import Real, maximum, minimum
from ..core.codes import CautionCode
from ..core.quantities import LENGTH
from ..core.shape import By, Form, Within, form
from .given import (
    LEAST_THICKNESS,
    PLATE_ANGLE,
    UP_TO_50,
    UP_TO_LARGEST,
    WIDE_PLATE_ANGLE,
    GrooveAngle,
    PartThickness,
    Tolerance,
)

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


_VOUCHED_CODES: Mapping[Vouched, CautionCode] = MappingProxyType(
    {
        "assumed": "assumed-penetration",
        "measured": "measured-penetration",
        "proven": "proven-penetration",
    }
)


Account = Literal["physical", "creditable", "strength"]
"""A way to count a throat: all there may be, what is measured or proven, or what is proven alone."""

COUNTED: Mapping[Account, tuple[Vouched, ...]] = MappingProxyType(
    {"physical": ("assumed", "measured", "proven"), "creditable": ("measured", "proven"), "strength": ("proven",)}
)
"""Penetration that each account counts, by who vouches for it."""


@dataclass(frozen=True, slots=True)
class Penetration:
    """Fusion beyond the root or the prepared depth, and who vouches for it."""

    depth: Annotated[float, UP_TO_50, "How far fusion goes beyond the root or the prepared depth."]
    vouched: Annotated[Vouched, "Who vouches for it: nobody, a macro section of this work, or a qualified procedure."]
    tolerance: Tolerance = 0.0

    @property
    def code(self) -> CautionCode:
        """Code of the caution that says who vouches for it."""
        return _VOUCHED_CODES[self.vouched]

    def counted(self, account: Account) -> "Penetration | None":
        """Itself where an account counts it, or None."""
        return self if self.depth > 0.0 and self.vouched in COUNTED[account] else None


_FaceWidth = Annotated[float, Within(LENGTH, 1.0, most=20000.0)]
_SeamLeg = Annotated[float, Within(LENGTH, LEAST_THICKNESS, most=100.0), "Leg along one face."]


@dataclass(frozen=True, slots=True)
class Seam:
    """Seam of a request."""

    kind: SeamKind
    thickness: Annotated[tuple[PartThickness, PartThickness] | None, "Thickness of parts 1 and 2."] = None
    angle: Annotated[float, PLATE_ANGLE, "Angle between the plates."] = pi / 2
    overlap: Annotated[float, UP_TO_LARGEST, "How far the end of part 1 is covered, along part 2's inner face."] = 0.0
    legs: Annotated[tuple[_SeamLeg, _SeamLeg] | None, "Legs along the faces of parts 1 and 2."] = None
    width: Annotated[
        tuple[_FaceWidth, _FaceWidth] | None,
        "Width of the outer face of parts 1 and 2 from the corner, to check a blend against.",
    ] = None
    thickness_tolerance: Tolerance = 0.0
    overlap_tolerance: Tolerance = 0.0
    legs_tolerance: Tolerance = 0.0

    @property
    def runs_through(self) -> float:
        """What a flat seam runs through: part 1 of a closed corner, the thinner part of a butt; no end to an edge."""
        if self.kind == "edge" or self.thickness is None:
            return inf
        return self.thickness[0] if self.kind == "closed-corner" else min(self.thickness)


@dataclass(frozen=True, slots=True)
class Preparation:
    """Prepared edge of a butt, an edge seam or a closed corner."""

    depth: Annotated[float, UP_TO_LARGEST, "Depth of the preparation, square to the face."] = 0.0
    groove: Annotated[GrooveForm, "Form of the groove."] = "single-bevel"
    groove_angle: GrooveAngle | None = None
    tolerance: Tolerance = 0.0

    @property
    def angle(self) -> float:
        """Included angle, given or usual."""
        return DEFAULT_ANGLES[self.groove] if self.groove_angle is None else self.groove_angle


@dataclass(frozen=True, slots=True)
class Finish:
    """What is done to the face."""

    to: FinishTo = "as-welded"
    radius: Annotated[float | None, UP_TO_LARGEST, "Radius of the blend."] = None
    below: Annotated[float, UP_TO_50, "How far under the finishing plane the grinder goes."] = 0.0
    tolerance: Tolerance = 0.0


_PLAIN = ("thickness!", "thickness_tolerance")
FLAT_SEAM_FORMS: dict[str, Form] = {
    "butt": form("ButtSeam", "Butt of two edges.", Seam, *_PLAIN, "kind!", kind=Literal["butt"]),
    "edge": form("EdgeSeam", "Edges of two parallel plates.", Seam, *_PLAIN, "kind!", kind=Literal["edge"]),
    "closed-corner": form(
        "ClosedCorner",
        "Corner closed: the end of part 1 against the inner face of part 2, the seam in part 1's outer face.",
        Seam,
        *_PLAIN,
        "kind!",
        "angle",
        "width",
        kind=Literal["closed-corner"],
        angle=Annotated[float, WIDE_PLATE_ANGLE, "Angle between the plates; a closed corner is answered at 90 deg."],
    ),
}
"""Seams that can be prepared by cutting an edge, as a request describes them."""

SEAM_FORMS: dict[str, Form] = {
    **FLAT_SEAM_FORMS,
    "half-open-corner": form(
        "HalfOpenCorner",
        "Corner half open: the end of part 1 overlaps the end of part 2 in part.",
        Seam,
        *_PLAIN,
        "kind!",
        "angle",
        "overlap!",
        "overlap_tolerance",
        "width",
        kind=Literal["half-open-corner"],
    ),
    "open-corner": form(
        "OpenCorner",
        "Corner open: the inner edges meet.",
        Seam,
        *_PLAIN,
        "kind!",
        "angle",
        "width",
        kind=Literal["open-corner"],
    ),
    "fillet": form(
        "FilletSeam",
        "Fillet between two faces.",
        Seam,
        "kind!",
        "thickness",
        "thickness_tolerance",
        "angle",
        "legs!",
        "legs_tolerance",
        kind=Literal["fillet"],
        thickness=Annotated[
            tuple[PartThickness, PartThickness] | None,
            "Thickness of parts 1 and 2; not needed for a fillet's throat.",
        ],
    ),
}
"""Seams of every kind, as a request describes them."""

_GROUND = ("below", "tolerance")
FINISH_FORMS: dict[str, Form] = {
    "as-welded": form("AsWelded", "Nothing is ground.", Finish, "to!", to=Literal["as-welded"]),
    "flush": form("Flush", "Ground flush: a corner on both outer faces.", Finish, "to!", *_GROUND, to=Literal["flush"]),
    "flat": form("Flat", "Ground flat, to the line between the toes.", Finish, "to!", *_GROUND, to=Literal["flat"]),
    "radius": form(
        "Radius",
        "Blended to a radius, tangent to both outer faces.",
        Finish,
        "to!",
        "radius!",
        *_GROUND,
        to=Literal["radius"],
        below=Annotated[float, UP_TO_50, "How far under the blend the grinder goes."],
    ),
}
"""Finishes of a seam, as a request describes them."""

AnySeam = Annotated[Seam, By("kind", SEAM_FORMS), "The seam."]
FlatSeam = Annotated[Seam, By("kind", FLAT_SEAM_FORMS), "The seam."]
AnyFinish = Annotated[Finish, By("to", FINISH_FORMS), "What is done to the face."]
GivenPenetration = Annotated[Penetration, "Fusion beyond the root or the prepared depth."]


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
    # The edges of an edge seam lie against each other, so metal ends at the far face of the thinner part.
    v = lengths.t_2 if closed else minimum(lengths.t_1, lengths.t_2) if shape.kind == "edge" else inf
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
