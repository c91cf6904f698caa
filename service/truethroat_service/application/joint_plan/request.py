"""Request for the plan of one joint, in engine units."""

from collections.abc import Mapping
from dataclasses import asdict, dataclass
from math import pi
from typing import Literal

from ...engine.rounding import SAME
from ...engine.rule_set import Exposure, Loading, Member
from ..core.answers import Common
from ..core.shape import Band
from ..filler_quantity.request import Deposition, Prices
from ..heat.request import Arc
from ..heat.steel import Composition
from ..joints.metals import Filler, Part
from ..joints.quality_sets import Quality
from ..joints.seams import Finish, Penetration
from ..joints.throat_chance import Spread

Kind = Literal["tee", "lap", "inside-corner", "outside-corner", "butt"]
Basis = Literal["load", "full-strength", "throat"]


@dataclass(frozen=True, slots=True)
class PlanJoint:
    """Joint of a request: how the parts meet, whatever is then done to weld them."""

    kind: Kind
    angle: float = pi / 2
    root_gap: float = 0.0


@dataclass(frozen=True, slots=True)
class PlanForce:
    """Force in N on the whole joint, at an angle in rad to the weld's axis."""

    force: float
    angle: float


@dataclass(frozen=True, slots=True)
class PlanTolerances:
    """Plus or minus of what the shop makes, mm; the grinder's is in the finish, penetration's with it."""

    legs: float = 0.0
    depth: float = 0.0
    thickness: float = 0.0
    face_height: float = 0.0


@dataclass(frozen=True, slots=True)
class PlanIntermittent:
    """What an intermittent weld carries, what it makes, where it stands, and the widths of parts 1 and 2 in mm."""

    loading: Loading
    member: Member = "built-up"
    exposure: Exposure = "protected"
    widths: tuple[float, float] | None = None


@dataclass(frozen=True, slots=True)
class Weights:
    """What each cost of a way counts against the others; nothing leaves it out."""

    filler: float = 1.0
    time: float = 1.0
    heat: float = 1.0
    distortion: float = 1.0

    def by_kind(self) -> Mapping[str, float]:
        """Weights by the name of the cost."""
        return asdict(self)


@dataclass(frozen=True, slots=True)
class JointPlanRequest:
    """One joint to plan."""

    rule_set: str
    joint: PlanJoint
    parts: tuple[Part, Part]
    length: float
    basis: Basis
    process: str
    position: str
    load: PlanForce | None = None
    required_throat: float | None = None
    access: Literal["one-side", "both-sides"] = "both-sides"
    held_from_turning: bool = False
    finish: Finish = Finish()
    filler: Filler | None = None
    parameters: tuple[tuple[str, float], ...] = ()
    intermittent: PlanIntermittent | None = None
    penetration: Penetration = Penetration(0.0, "assumed")
    tolerances: PlanTolerances = PlanTolerances()
    spread: Spread | None = None
    quality: Quality | None = None
    arc: Arc | None = None
    preheat: float | None = None
    cooling_window: Band | None = None
    composition: Composition | None = None
    hydrogen: float | None = None
    preheat_category: str | None = None
    deposition: Deposition | None = None
    efficiency: float | None = None
    operator_factor: float | None = None
    gas_flow: float | None = None
    bevelling_speed: float | None = None
    prices: Prices | None = None
    weights: Weights = Weights()
    detail: Literal["recommended", "all"] = "recommended"
    common: Common = Common()

    @property
    def thickness(self) -> tuple[float, float]:
        """Thickness of both parts, mm."""
        return self.parts[0].thickness, self.parts[1].thickness

    @property
    def thinner(self) -> float:
        """Thickness of the thinner part, mm."""
        return min(self.thickness)

    @property
    def across(self) -> bool:
        """Whether what is carried pulls or presses across the weld; full strength does."""
        return self.basis == "full-strength" or (self.load is not None and self.load.angle > SAME)

    @property
    def proven(self) -> Penetration:
        """Penetration that counts in strength."""
        return self.penetration if self.penetration.vouched == "proven" else Penetration(0.0, "proven")
