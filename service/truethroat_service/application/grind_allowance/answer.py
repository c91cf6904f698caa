"""Answer of ``/v1/grind-allowance``, in engine units."""

from dataclasses import dataclass, field
from typing import Annotated, Literal

from ..core.codes import RemedyCode, Verdict
from ..core.shape import INLINED, OMITTED, UNSENT, Length, LengthDown, LengthUp
from ..joints.throat_budget import ThroatBudget, ToleratedSection


@dataclass(frozen=True, slots=True)
class Remedy:
    """One change that keeps the throat, with the throat that remains and what it counts."""

    do: RemedyCode
    depth: Annotated[Length | None, OMITTED] = field(default=None, kw_only=True)
    face_height: Annotated[Length | None, OMITTED] = field(default=None, kw_only=True)
    radius: Annotated[LengthDown | None, OMITTED] = field(default=None, kw_only=True)
    throat: Annotated[Length | None, OMITTED] = field(default=None, kw_only=True)
    remaining: Length
    counts: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Grinding:
    """How far a face may be ground."""

    allowance: Annotated[LengthDown, "Most that may be ground off along the throat line, from the face as welded."]
    leave: Annotated[
        LengthUp | None, "Face height to leave above the plane of the face; null where no face height keeps the throat."
    ]
    largest_radius: Annotated[
        LengthDown | None, "Largest blend radius of a corner that keeps the throat; null where none does."
    ]
    allowance_below_plane: Annotated[
        Length, "How much of the allowance lies below the plane of the face, where the grinder thins the parts too."
    ]
    least_face_width: Annotated[
        LengthUp | None,
        "Width of the face that the throat needs, where a square edge's face counts without face_width; else null.",
    ]


@dataclass(frozen=True, slots=True)
class Physical:
    """Budget that counts everything there is, assumed penetration too, with its own verdict."""

    verdict: Verdict
    budget: Annotated[ThroatBudget, INLINED]
    grinding: Annotated[Grinding, INLINED]


@dataclass(frozen=True, slots=True)
class GrindAllowanceAnswer:
    """How much may be ground off a seam, and how much must stay, counting only what somebody vouches for."""

    budget: ThroatBudget
    grinding: Annotated[Grinding, INLINED]
    judged_on: Literal["nominal", "worst-case"]
    remedies: tuple[Remedy, ...]
    physical: Physical
    account: Annotated[tuple[str, ...], UNSENT]
    section: Annotated[ToleratedSection, UNSENT]
