"""Request for what may be ground off a seam, in engine units."""

from dataclasses import dataclass
from typing import Annotated, Literal

from ..core.answers import Common
from ..core.shape import Stated
from ..joints.given import OVER_NOTHING, FaceHeight, Hollow, Position, Process, RequiredThroat, Tolerance
from ..joints.rule_sets import RULE_SET_IDS
from ..joints.seams import AnyFinish, AnySeam, Finish, GivenPenetration, Penetration, Preparation


@dataclass(frozen=True, slots=True)
class GrindAllowanceRequest:
    """Seam to grind."""

    seam: AnySeam
    required_throat: RequiredThroat
    finish: Annotated[AnyFinish, Stated({"to": "as-welded"})] = Finish()
    preparation: Annotated[Preparation, "Prepared edge of a butt, an edge seam or a closed corner."] = Preparation()
    penetration: GivenPenetration = Penetration(0.0, "assumed")
    face_height: FaceHeight | None = None
    hollow: Hollow | None = None
    face_height_tolerance: Tolerance = 0.0
    hollow_tolerance: Tolerance = 0.0
    face_width: Annotated[
        float | None,
        OVER_NOTHING,
        "Width of a flat seam's face; it limits the throat to the distance to the nearer toe. Without it the toes of"
        " a groove are taken at its edges.",
    ] = None
    rule_set: Annotated[str | None, RULE_SET_IDS, "Rules whose deduction the budget takes off the prepared depth."] = (
        None
    )
    root_pass: Annotated[
        Literal["mechanized", "automatic", "robotic"] | None,
        "How the root pass is made, where it is not made by hand; AISC 360-22 counts proven penetration only then.",
    ] = None
    process: Process | None = None
    position: Position | None = None
    common: Common = Common()

    @property
    def face(self) -> float:
        """Height of the face over its plane, negative for a hollow, mm."""
        return -self.hollow if self.hollow is not None else self.face_height or 0.0
