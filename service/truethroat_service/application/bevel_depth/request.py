"""Request for a preparation depth, in engine units."""

from dataclasses import dataclass
from typing import Annotated, Literal

from ..core.answers import Common
from ..core.quantities import LENGTH
from ..core.shape import Stated, Within
from ..joints.given import UP_TO_50, DepthStep, GrooveAngle, Position, Process, RequiredThroat, Tolerance
from ..joints.rule_sets import RULE_SET_IDS
from ..joints.seams import (
    DEFAULT_ANGLES,
    AnyFinish,
    Finish,
    FlatSeam,
    GivenPenetration,
    GrooveForm,
    Penetration,
)


@dataclass(frozen=True, slots=True)
class BevelDepthRequest:
    """Edge to prepare."""

    seam: FlatSeam
    required_throat: RequiredThroat
    finish: Annotated[AnyFinish, Stated({"to": "flush"})] = Finish("flush")
    groove: Annotated[GrooveForm, "Form of the groove."] = "single-bevel"
    groove_angle: GrooveAngle | None = None
    bevelled: Annotated[
        Literal[1, 2, "both"] | None, "Part that is cut: 1 for a bevel or J, both for a V or U, by default."
    ] = None
    root_radius: Annotated[
        float | None, Within(LENGTH, 1.0, most=25.0), "Root radius of a J (10 mm by default) or U (6 mm)."
    ] = None
    penetration: GivenPenetration = Penetration(0.0, "assumed")
    minimum_land: Annotated[float, UP_TO_50, "Least land that must stay."] = 1.0
    depth_step: DepthStep | None = None
    depth_tolerance: Tolerance = 0.0
    rule_set: Annotated[str | None, RULE_SET_IDS, "Rules whose deduction is added to the depth."] = None
    root_pass: Annotated[
        Literal["mechanized", "automatic", "robotic"] | None,
        "How the root pass is made, where it is not made by hand; AISC 360-22 counts proven penetration only then.",
    ] = None
    process: Process | None = None
    position: Position | None = None
    common: Common = Common()

    @property
    def proven(self) -> Penetration:
        """Penetration that counts: what is proven."""
        proven = self.penetration.vouched == "proven"
        return self.penetration if proven else Penetration(0.0, "proven")

    @property
    def form(self) -> GrooveForm:
        """Form of the groove; a bevel or J on both parts makes a V or U."""
        if self.bevelled == "both" and self.groove in ("single-bevel", "single-j"):
            return "single-v" if self.groove == "single-bevel" else "single-u"
        return self.groove

    @property
    def both(self) -> bool:
        """Whether both parts are cut."""
        return self.form in ("single-v", "single-u")

    @property
    def angle(self) -> float:
        """Included angle, rad: as given, or the usual one of the groove."""
        return DEFAULT_ANGLES[self.form] if self.groove_angle is None else self.groove_angle
