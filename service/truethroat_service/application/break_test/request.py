"""Request for a break test, in engine units."""

from dataclasses import dataclass
from typing import Literal

from ...practice import break_test as opening
from ..core.answers import Common
from ..joints.seams import Finish, Penetration, Seam

Rules = Literal["aws-d1-1-2010", "iso-9017"]
RULES: tuple[Rules, ...] = ("aws-d1-1-2010", "iso-9017")
Coupon = Literal["tee", "inside-corner", "outside-corner"]


@dataclass(frozen=True, slots=True)
class Notch:
    """Notch cut to start the break: into each side, and along the face, mm."""

    side: float = 0.0
    face: float = 0.0


@dataclass(frozen=True, slots=True)
class FoldedFlat:
    """The specimen folded flat on itself without breaking."""

    ended: Literal["folded-flat"]


@dataclass(frozen=True, slots=True)
class Broken:
    """The specimen broke: what its faces show, mm."""

    ended: Literal["broken"]
    fused_to_root: bool
    largest_void: float = 0.0
    sum_of_voids: float = 0.0


@dataclass(frozen=True, slots=True)
class Weld:
    """Strengths of the weld metal, MPa."""

    yield_strength: float
    tensile_strength: float


@dataclass(frozen=True, slots=True)
class Plates:
    """Yield strength of the plates, MPa, or their material's id."""

    yield_strength: float | None = None
    material: str | None = None


@dataclass(frozen=True, slots=True)
class PreparedDepth:
    """Depth cut into the edge of a closed corner, mm."""

    depth: float = 0.0
    tolerance: float = 0.0


@dataclass(frozen=True, slots=True)
class BreakTestRequest:
    """Request for a break test, in engine units."""

    coupon: Coupon
    seam: Seam
    weld: Weld
    plates: Plates
    length: float
    lever: float
    preparation: PreparedDepth = PreparedDepth()
    penetration: Penetration = Penetration(0.0, "assumed")
    face_height: float | None = None
    hollow: float | None = None
    finish: Finish = Finish()
    notch: Notch = Notch()
    hand_force: float = opening.HAND_FORCE
    rules: Rules | None = None
    outcome: FoldedFlat | Broken | None = None
    common: Common = Common()

    @property
    def face(self) -> float:
        """Height of the face over its plane, negative for a hollow, mm."""
        return -self.hollow if self.hollow is not None else self.face_height or 0.0
