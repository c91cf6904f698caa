"""Request for the risk of cracks, in engine units."""

from dataclasses import dataclass
from typing import Literal

from ..core.answers import Common

JointKind = Literal["butt", "fillet", "corner"]
Crater = Literal["filled", "unfilled"]


@dataclass(frozen=True, slots=True)
class Bead:
    """One bead, mm: measured across, or a flat mitre fillet by its throat and its penetration past the root."""

    width: float | None = None
    depth: float | None = None
    face_width: float | None = None
    throat: float | None = None
    penetration: float | None = None


@dataclass(frozen=True, slots=True)
class WeldMetal:
    """Composition of the weld metal, weight %."""

    C: float
    S: float
    P: float
    Nb: float
    Si: float
    Mn: float


@dataclass(frozen=True, slots=True)
class CrackRiskRequest:
    """One pass, in engine units; what is left out is not graded."""

    joint: JointKind
    bead: Bead | None = None
    hollow: float | None = None
    restrained: bool = False
    weld_metal: WeldMetal | None = None
    process: str | None = None
    thickness: tuple[float, float] | None = None
    leg: float | None = None
    low_hydrogen: bool = False
    crater: Crater | None = None
    common: Common = Common()
