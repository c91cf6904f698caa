"""Request for the plan of one joint, in engine units."""

from collections.abc import Mapping
from dataclasses import dataclass
from math import pi
from typing import Annotated, Literal

from ...engine.rounding import SAME
from ...engine.rule_set import Exposure, Loading, Member
from ...standards.aws_d1_1_2020.s5_preheat import CATEGORIES
from ..core.answers import Common
from ..core.quantities import ANGLE, GAS_FLOW, HYDROGEN, SPEED, TEMPERATURE
from ..core.shape import Numbered, OneOf, Stated, ToldBy, Within
from ..filler_quantity.request import DEPOSITION_FORMS, AnyPrices, Deposition
from ..heat.request import AnyArc, CoolingWindow
from ..heat.steel import Composition
from ..joints.given import ANY_FORCE, LONG, OVER_NOTHING, PLATE_ANGLE, UP_TO_50, Position, Process
from ..joints.metals import AnyFiller, AnyPart, Parameters
from ..joints.quality_sets import Quality
from ..joints.rule_sets import RULE_SET_IDS, rule_set
from ..joints.seam_checks import counts_proven
from ..joints.seams import AnyFinish, Finish, GivenPenetration, Penetration
from ..joints.throat_chance import Spread
from .answer import Cost

Kind = Literal["tee", "lap", "inside-corner", "outside-corner", "butt"]
Basis = Literal["load", "full-strength", "throat"]


@dataclass(frozen=True, slots=True)
class PlanJoint:
    """How the parts meet."""

    kind: Annotated[
        Kind,
        "Tee: part 1 runs through. Lap: the face of part 1 is welded. Outside corner: the end of part 1 meets part 2;"
        " the plan tries several ways to set the edges.",
    ]
    angle: Annotated[float, PLATE_ANGLE, "Angle between the plates."] = pi / 2
    root_gap: Annotated[float, UP_TO_50, "Gap between the parts at the root."] = 0.0


@dataclass(frozen=True, slots=True)
class PlanForce:
    """Force on the whole joint."""

    force: Annotated[float, ANY_FORCE, "Force on all welds of the joint together."]
    angle: Annotated[
        float,
        Within(ANGLE, most=pi / 2),
        "Angle of the force to the weld's axis: 0 deg along it, 90 deg across it.",
    ]


@dataclass(frozen=True, slots=True)
class PlanTolerances:
    """Tolerances of the shop, plus or minus; that of grinding belongs to the finish, that of penetration to it."""

    legs: Annotated[float, UP_TO_50, "Tolerance of each leg of a fillet."] = 0.0
    depth: Annotated[float, UP_TO_50, "Tolerance of a prepared depth."] = 0.0
    thickness: Annotated[float, UP_TO_50, "Tolerance of the thickness of the parts."] = 0.0
    face_height: Annotated[float, UP_TO_50, "Tolerance of the height of a face that is left."] = 0.0


_Width = Annotated[float, LONG, "Width of one part."]


@dataclass(frozen=True, slots=True)
class PlanIntermittent:
    """What an intermittent weld carries, what it joins and where it is."""

    loading: Annotated[Loading, "What the welded parts carry."]
    member: Annotated[Member, "Plates of a built-up member, or a stiffener on its plate."] = "built-up"
    exposure: Annotated[
        Exposure,
        "Protected: painted, or where nothing corrodes. Weathering: unpainted weathering steel in the open air.",
    ] = "protected"
    widths: Annotated[tuple[_Width, _Width] | None, "Widths of parts 1 and 2, where the rules need them."] = None


_WEIGHT = Numbered(0.0, 1000.0)


@dataclass(frozen=True, slots=True)
class Weights:
    """Weight of each cost in the ranking; 0 leaves it out."""

    filler: Annotated[float, _WEIGHT, "Weld metal."] = 1.0
    time: Annotated[float, _WEIGHT, "Time on the clock."] = 1.0
    heat: Annotated[float, _WEIGHT, "Arc energy put into the joint."] = 1.0
    distortion: Annotated[float, _WEIGHT, "Angular change."] = 1.0

    def by_kind(self) -> Mapping[Cost, float]:
        """Weights by the name of the cost."""
        return {"filler": self.filler, "time": self.time, "heat": self.heat, "distortion": self.distortion}


@dataclass(frozen=True, slots=True)
class JointPlanRequest:
    """Joint to plan."""

    rule_set: Annotated[str, RULE_SET_IDS, "Rules to plan by; see /v1/rule-sets."]
    joint: Annotated[PlanJoint, "The joint."]
    parts: Annotated[tuple[AnyPart, AnyPart], "Parts 1 and 2."]
    length: Annotated[float, LONG, "Length of the seam."]
    basis: Annotated[
        Basis,
        "What the weld is sized for: a throat for an outside corner, any for a butt, a load or full strength for other"
        " joints.",
    ]
    process: Process
    position: Position
    load: Annotated[PlanForce | None, 'Load, with basis "load".'] = None
    required_throat: Annotated[
        float | None, OVER_NOTHING, 'Throat the finished seam must keep, with basis "throat".'
    ] = None
    access: Annotated[
        Literal["one-side", "both-sides"] | None,
        "Sides the seam can be welded from. A hollow section needs it said; otherwise both sides by default.",
    ] = None
    held_from_turning: Annotated[
        bool,
        "Whether the joint is held from turning about the weld, so that a load does not open a one-sided weld from its"
        " root.",
    ] = False
    finish: Annotated[AnyFinish, Stated({"to": "as-welded"})] = Finish()
    filler: AnyFiller | None = None
    parameters: Parameters = ()
    intermittent: Annotated[PlanIntermittent | None, "Intermittent weld; the plan has no such way without it."] = None
    penetration: GivenPenetration = Penetration(0.0, "assumed")
    root_pass: Annotated[
        Literal["mechanized", "automatic", "robotic"] | None,
        "How the root pass is made, where it is not made by hand; AISC 360-22 counts proven penetration only then.",
    ] = None
    tolerances: Annotated[PlanTolerances, "Tolerances of the shop, for the throat budget."] = PlanTolerances()
    spread: Annotated[Spread | None, "How lengths lie within their tolerances, for the chance of a short throat."] = (
        None
    )
    quality: Annotated[
        Quality | None,
        "Level or code that the limits come from; AWS D1.1:2020 with AISC rules and ISO 5817 level C with Eurocodes by"
        " default.",
    ] = None
    arc: Annotated[
        AnyArc | None,
        "The arc of one pass: its settings, its energy, or its heat input. Without it the heat follows from the metal"
        " laid.",
    ] = None
    preheat: Annotated[
        float | None,
        Within(TEMPERATURE, -50.0, most=400.0),
        "Temperature of the plate when a pass begins; 20 degC by default.",
    ] = None
    cooling_window: Annotated[CoolingWindow | None, "Cooling times t8/5 to judge against."] = None
    composition: Annotated[Composition | None, "Composition of the parent steel."] = None
    hydrogen: Annotated[
        float | None, Within(HYDROGEN, most=100.0, above=True), "Diffusible hydrogen of the weld metal."
    ] = None
    preheat_category: Annotated[
        str | None, OneOf(tuple(CATEGORIES)), "Category of AWS D1.1 for preheat, as /v1/heat has it."
    ] = None
    deposition: Annotated[
        Deposition | None,
        ToldBy(DEPOSITION_FORMS),
        "Deposition rate, or the wire and its feed; usual rates of the process by default.",
    ] = None
    efficiency: Annotated[float | None, Numbered(0.05, 1.0), "Share of the consumable that is deposited."] = None
    operator_factor: Annotated[float | None, Numbered(0.01, 1.0), "Share of the clock during which the arc burns."] = (
        None
    )
    gas_flow: Annotated[float | None, Within(GAS_FLOW, 1e4, most=2e6), "Shielding gas while the arc burns."] = None
    bevelling_speed: Annotated[
        float | None,
        Within(SPEED, most=1000.0, above=True),
        "Speed at which one face of an edge is cut, averaged over the time on the clock.",
    ] = None
    prices: AnyPrices | None = None
    weights: Annotated[Weights, "Weights of the costs in the ranking."] = Weights()
    detail: Annotated[
        Literal["recommended", "all"],
        "Whether the full answers of the single resources come for the recommended way only, or for all ways.",
    ] = "recommended"
    common: Common = Common()

    @property
    def thickness(self) -> tuple[float, float]:
        """Thickness of both parts, mm."""
        return self.parts[0].thickness, self.parts[1].thickness

    @property
    def reach(self) -> Literal["one-side", "both-sides"]:
        """Sides the seam can be welded from."""
        return self.access or "both-sides"

    @property
    def thinner(self) -> float:
        """Thickness of the thinner part, mm."""
        return min(self.thickness)

    @property
    def across(self) -> bool:
        """Whether the load, or full strength, acts across the weld."""
        return self.basis == "full-strength" or (self.load is not None and self.load.angle > SAME)

    @property
    def proven(self) -> Penetration:
        """Penetration that counts in strength."""
        counts = self.penetration.vouched == "proven" and counts_proven(rule_set(self.rule_set), self.root_pass)
        return self.penetration if counts else Penetration(0.0, "proven")
