"""Request for a preparation depth, in engine units."""

from dataclasses import dataclass
from typing import Literal

from ..core.answers import Common
from ..joints.seams import DEFAULT_ANGLES, Finish, GrooveForm, Penetration, Seam

Bevelled = Literal[1, 2, "both"]


@dataclass(frozen=True, slots=True)
class BevelDepthRequest:
    """Request for a preparation depth, in engine units."""

    seam: Seam
    required_throat: float
    finish: Finish = Finish("flush")
    groove: GrooveForm = "single-bevel"
    groove_angle: float | None = None
    bevelled: Bevelled | None = None
    root_radius: float | None = None
    penetration: Penetration = Penetration(0.0, "assumed")
    minimum_land: float = 1.0
    depth_step: float | None = None
    depth_tolerance: float = 0.0
    rule_set: str | None = None
    process: str | None = None
    position: str | None = None
    common: Common = Common()

    @property
    def proven(self) -> Penetration:
        """Penetration that counts."""
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
        """Included angle, given or usual."""
        return DEFAULT_ANGLES[self.form] if self.groove_angle is None else self.groove_angle
