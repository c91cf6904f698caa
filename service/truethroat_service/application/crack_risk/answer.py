"""Answer of ``/v1/crack-risk``, in engine units."""

from dataclasses import dataclass
from typing import Annotated, Literal

from ..core.left_out import LeftOut
from ..core.shape import Lacks, Length, LengthUp

CrackGrade = Literal["low", "raised", "high"]
FactorName = Literal["shape", "pass-shape", "composition", "sulphur-and-phosphorus", "face", "size", "crater"]


@dataclass(frozen=True, slots=True)
class BeadShape:
    """Shape of the bead."""

    width: Length
    depth: Length
    width_to_depth: float
    least_width_to_depth: Annotated[float, "Width over depth below which the risk is high."]
    target_width_to_depth: Annotated[float, "Largest width over depth to aim at for this joint."]
    pass_ratio: Annotated[float | Lacks, "The larger of depth and width over the width of the face; AWS D1.1 allows 1."]


@dataclass(frozen=True, slots=True)
class SusceptibilityIndex:
    """Units of crack susceptibility of the weld metal."""

    ucs: float
    carbon_counted: Annotated[float, "Carbon that counts, weight %; at least 0.08."]
    critical: Annotated[float, "UCS from which a bead of this joint and shape is likely to crack."]
    high_resistance_below: float
    low_resistance_above: float
    sulphur_and_phosphorus: Annotated[float, "Together, weight %."]
    most_sulphur_and_phosphorus: float


@dataclass(frozen=True, slots=True)
class LeastFillet:
    """Least fillet by one rule that protects against quick chill."""

    rule: str
    leg: LengthUp
    throat: LengthUp
    enough: bool | None
    source: str


@dataclass(frozen=True, slots=True)
class CrackFactor:
    """One factor of the risk: its grade, the reason, and what to change."""

    name: FactorName
    grade: CrackGrade
    reason: str
    change: Annotated[str | None, "What to change; null where nothing has to change."]
    source: str


@dataclass(frozen=True, slots=True)
class CrackRiskAnswer:
    """Risk of cracks in a pass; the verdict is the worst grade, low only with shape and composition graded."""

    shape: BeadShape | Lacks
    index: SusceptibilityIndex | Lacks
    least_sizes: tuple[LeastFillet, ...]
    factors: tuple[CrackFactor, ...]
    left_out: tuple[LeftOut, ...] = ()
