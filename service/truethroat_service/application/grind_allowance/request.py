"""Request for what may be ground off a seam, in engine units."""

from dataclasses import dataclass

from ..core.answers import Common
from ..joints.seams import (
    Finish,
    Penetration,
    Preparation,
    Seam,
)


@dataclass(frozen=True, slots=True)
class GrindAllowanceRequest:
    """Request for what may be ground, in engine units."""

    seam: Seam
    required_throat: float
    finish: Finish = Finish()
    preparation: Preparation = Preparation()
    penetration: Penetration = Penetration(0.0, "assumed")
    face_height: float | None = None
    hollow: float | None = None
    face_height_tolerance: float = 0.0
    hollow_tolerance: float = 0.0
    face_width: float | None = None
    rule_set: str | None = None
    process: str | None = None
    position: str | None = None
    common: Common = Common()

    @property
    def face(self) -> float:
        """Height of the face over its plane, negative for a hollow, mm."""
        return -self.hollow if self.hollow is not None else self.face_height or 0.0
