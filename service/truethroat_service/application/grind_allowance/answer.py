"""Answer of ``/v1/grind-allowance``, in engine units."""

from dataclasses import dataclass, field
from typing import Annotated, Literal

from ..core.codes import RemedyCode, Verdict
from ..core.shape import INLINED, OMITTED, UNSENT, Length, LengthDown, LengthUp
from ..joints.throat_budget import ThroatBudget, ToleratedSection


@dataclass(frozen=True, slots=True)
class Remedy:
    """What would keep the throat."""

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

    allowance: Annotated[LengthDown, "Most that may come off along the throat line, from the face as welded."]
    leave: LengthUp | None
    largest_radius: LengthDown | None


@dataclass(frozen=True, slots=True)
class Creditable:
    """A budget that counts only what is measured or proven and what the code credits, with what follows from it."""

    verdict: Verdict
    budget: Annotated[ThroatBudget, INLINED]
    grinding: Annotated[Grinding, INLINED]
    remedies: tuple[Remedy, ...]
    reasons: Annotated[tuple[str, ...], UNSENT]
    section: Annotated[ToleratedSection, UNSENT]


@dataclass(frozen=True, slots=True)
class GrindAllowanceAnswer:
    """What may be ground off, and what must stay."""

    budget: ThroatBudget
    grinding: Annotated[Grinding, INLINED]
    judged_on: Literal["nominal", "worst-case"]
    remedies: tuple[Remedy, ...]
    creditable: Creditable
