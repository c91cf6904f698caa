"""Answer of ``/v1/bevel-depth``, in engine units."""

from dataclasses import dataclass

from ..core.codes import RemedyCode
from ..core.shape import Area, Length
from ..joints.grooves import DepositedMetal
from ..joints.throat_budget import ThroatBudget


@dataclass(frozen=True, slots=True)
class PreparationCallout:
    """Preparation as text for a drawing."""

    iso_2553: str
    aws_a2_4: str


@dataclass(frozen=True, slots=True)
class Alternative:
    """Another way to reach the same throat."""

    do: RemedyCode
    size: Length
    area: Area | None
    filler: DepositedMetal | None


@dataclass(frozen=True, slots=True)
class BevelDepthAnswer:
    """Preparation to cut; its depth and what follows from it are null where no partial preparation suffices."""

    depth: Length | None
    setback: Length | None
    land: Length | None
    deduction: Length
    budget: ThroatBudget | None
    area: Area | None
    filler: DepositedMetal | None
    callout: PreparationCallout | None
    alternatives: tuple[Alternative, ...]
