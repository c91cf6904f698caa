"""Groove, plug and slot welds, and fillets in holes, as a request describes them, in engine units."""

from dataclasses import dataclass
from math import pi
from typing import Annotated, Any, Literal, get_args

from ..core.answers import Common
from ..core.quantities import FORCE, LENGTH
from ..core.shape import By, OneOf, ToldBy, Within, form
from ..joints.given import (
    FORCE_LIMIT,
    GROOVE_ANGLE,
    LONG,
    QUARTER_TURN,
    SIGNED_LINE_FORCE,
    THICKNESS,
    UP_TO_50,
    UP_TO_100,
    UP_TO_LARGEST,
    DepthStep,
    Position,
    Process,
)
from ..joints.loads import ForceComponents
from ..joints.metals import AnyFiller, AnyPart, Parameters
from ..joints.rule_sets import ENTRIES, rule_set
from ..joints.seams import DEFAULT_ANGLES, GivenPenetration, GrooveForm

MOST_HOLES = 200

JointKind = Literal["butt", "tee", "corner", "lap"]
Form = Literal[
    "square",
    "single-bevel",
    "double-bevel",
    "single-v",
    "double-v",
    "single-j",
    "double-j",
    "single-u",
    "double-u",
]
Root = Literal["open", "backing", "back-run", "back-gouge"]

FORMS: tuple[Form, ...] = get_args(Form)
CUT_BOTH = ("single-v", "double-v", "single-u", "double-u")
"""Forms that cut the edges of both parts."""


_GivenForm = Annotated[
    Form, "Form of the groove; without it the form with the least metal is chosen of those that fit."
]
_GivenAngle = Annotated[float, GROOVE_ANGLE, "Included angle of the groove; for a bevel or J that of its one cut face."]
_Gap = Annotated[float, UP_TO_50, "Root gap; by default the middle of the range that the detail allows."]
_Access = Annotated[Literal["one-side", "both-sides"], "Sides the seam can be welded from."]


@dataclass(frozen=True, slots=True)
class PartialWeld:
    """Partial-penetration groove."""

    kind: Literal["partial"]
    groove: _GivenForm | None = None
    groove_angle: _GivenAngle | None = None
    gap: _Gap | None = None
    access: _Access = "both-sides"
    penetration: GivenPenetration | None = None
    reinforcing_fillet: Annotated[float, UP_TO_50, "Leg of an equal-leg fillet on the groove's face, tee only."] = 0.0
    minimum_land: Annotated[float, UP_TO_50, "Least land that must stay; a detail may ask for more."] = 1.0
    depth_step: DepthStep | None = None
    depth_tolerance: Annotated[
        float, UP_TO_50, "How much shallower an edge may be cut than specified; the depth covers it."
    ] = 0.0
    bears: Annotated[bool, "Whether the parts are finished to bear, so that they take the compression; AISC only."] = (
        False
    )

    @property
    def proven(self) -> float:
        """Penetration that counts, mm, at its least."""
        fused = self.penetration
        return fused.depth - fused.tolerance if fused is not None and fused.vouched == "proven" else 0.0


@dataclass(frozen=True, slots=True)
class FullWeld:
    """Full-penetration groove."""

    kind: Literal["full"]
    groove: _GivenForm | None = None
    groove_angle: _GivenAngle | None = None
    root: Annotated[Root | None, "How the root is made; without it the root is chosen."] = None
    gap: _Gap | None = None
    land: Annotated[float | None, UP_TO_50, "Land; by default the middle of the range that the detail allows."] = None
    access: _Access = "both-sides"


_HOLE = Within(LENGTH, 1.0, most=500.0)
_SideThroat = Annotated[float, THICKNESS]


@dataclass(frozen=True, slots=True)
class FlareWeld:
    """Flare groove along a round surface."""

    kind: Literal["flare-bevel", "flare-v"]
    radius: Annotated[float, _HOLE, "Radius of the joint's surface."]
    below_flush: Annotated[float, UP_TO_100, "How far the face lies below flush."] = 0.0


@dataclass(frozen=True, slots=True)
class TeeButt:
    """T-butt welded from both sides, to be judged by EN 1993-1-8 4.7.3."""

    kind: Literal["tee-butt"]
    throats: Annotated[tuple[_SideThroat, _SideThroat], "Throat of each side, fillets on it included."]
    unwelded: Annotated[float, UP_TO_LARGEST, "Unwelded gap between the two sides, through part 2."]


@dataclass(frozen=True, slots=True)
class Holes:
    """Holes or slots through part 2, filled or with a fillet all round; a hole is as long as it is wide.

    ``leg`` is the fillet's, None where the hole is filled; ``count`` is found where none is given.
    """

    kind: Literal["plug", "slot", "fillet-in-hole", "fillet-in-slot"]
    width: Annotated[float, _HOLE, "Width of the slot."]
    length: Annotated[float, _HOLE, "Length over all."]
    leg: Annotated[float | None, _HOLE, "Leg of the fillet, the same on wall and face."] = None
    filling: Annotated[
        float | None,
        _HOLE,
        "Height of the filling; by default the thickness of part 2, which has the hole.",
    ] = None
    count: Annotated[
        int | None,
        OneOf(tuple(range(1, MOST_HOLES + 1))),
        "Number of welds; without it the number needed is taken.",
    ] = None
    pitch: Annotated[float | None, _HOLE, "Least distance between lines of slots, across them."] = None
    pitch_along: Annotated[float | None, _HOLE, "Least distance between centres along a line of slots."] = None

    @property
    def is_slot(self) -> bool:
        """Whether it is a slot, not a round hole."""
        return self.kind.endswith("slot")

    @property
    def several(self) -> str:
        """What several of them are called."""
        return {"fillet-in-hole": "holes", "fillet-in-slot": "slots"}.get(self.kind, f"{self.kind}s")

    def counted(self, number: int) -> str:
        """Give a number of them as a sentence has it."""
        return f"{number} {self.several.removesuffix('s') if number == 1 else self.several}"


def _round(*, diameter: float, **rest: Any) -> Holes:
    """Holes as long as they are wide."""
    return Holes(width=diameter, length=diameter, **rest)


_DIAMETER: Any = Annotated[float, _HOLE, "Diameter of the hole."]

WELD_FORMS: dict[str, Any] = {
    "partial": PartialWeld,
    "full": FullWeld,
    "flare-bevel": form(
        "FlareBevel",
        "Flare bevel: a round surface on a flat one.",
        FlareWeld,
        "kind",
        "radius",
        "below_flush",
        kind=Literal["flare-bevel"],
    ),
    "flare-v": form(
        "FlareV", "Flare V: two round surfaces.", FlareWeld, "kind", "radius", "below_flush", kind=Literal["flare-v"]
    ),
    "tee-butt": TeeButt,
    "plug": form(
        "Plug",
        "Plug welds in round holes through part 2.",
        Holes,
        "kind",
        "diameter",
        "filling",
        "count",
        "pitch",
        kind=Literal["plug"],
        diameter=_DIAMETER,
        pitch=Annotated[float | None, _HOLE, "Least distance between centres."],
        makes=_round,
    ),
    "slot": form(
        "Slot",
        "Slot welds, their ends half round, through part 2.",
        Holes,
        "kind",
        "width",
        "length",
        "filling",
        "count",
        "pitch",
        "pitch_along",
        kind=Literal["slot"],
    ),
    "fillet-in-hole": form(
        "FilletInHole",
        "Fillets all round the inside of round holes through part 2.",
        Holes,
        "kind",
        "diameter",
        "leg!",
        "count",
        kind=Literal["fillet-in-hole"],
        diameter=_DIAMETER,
        makes=_round,
    ),
    "fillet-in-slot": form(
        "FilletInSlot",
        "Fillets all round the inside of slots, their ends half round, through part 2.",
        Holes,
        "kind",
        "width",
        "length",
        "leg!",
        "count",
        kind=Literal["fillet-in-slot"],
    ),
}
"""A weld as a request describes it."""

Weld = PartialWeld | FullWeld | FlareWeld | TeeButt | Holes


@dataclass(frozen=True, slots=True)
class GrooveJoint:
    """Joint of two parts."""

    kind: Annotated[
        JointKind, "Kind of joint, its plates square to each other; a lap for welds in holes and slots alone."
    ]


@dataclass(frozen=True, slots=True)
class GrooveForce:
    """Force on the joint."""

    force: Annotated[
        float,
        Within(FORCE, -FORCE_LIMIT, most=FORCE_LIMIT),
        "Force on the joint, all sides together; one that presses the parts together is negative.",
    ]
    length: Annotated[float | None, LONG, "Length of the weld; those in holes and slots have none."] = None
    angle: Annotated[
        float | None,
        QUARTER_TURN,
        "Angle of the force to the weld's axis: 0 deg along it, 90 deg across it; those in holes have none.",
    ] = None


COMPONENTS_FORM = form(
    "GrooveComponents",
    "Force per length on the joint, all sides together.",
    ForceComponents,
    "normal",
    "transverse",
    "longitudinal",
    normal=Annotated[
        float,
        SIGNED_LINE_FORCE,
        "Square to the throat: pulls the parts apart when positive, presses them when negative.",
    ],
    transverse=Annotated[float, SIGNED_LINE_FORCE, "Across the weld, shearing the throat."],
    longitudinal=Annotated[float, SIGNED_LINE_FORCE, "Along the weld, shearing the throat."],
)


@dataclass(frozen=True, slots=True)
class GrooveSizeRequest:
    """Groove, flare, plug or slot weld to size."""

    rule_set: Annotated[
        str,
        OneOf(tuple(name for name in ENTRIES if rule_set(name).groove_weld is not None)),
        "Rules to size by; see /v1/rule-sets.",
    ]
    joint: Annotated[GrooveJoint, "The joint."]
    parts: Annotated[
        tuple[AnyPart, AnyPart],
        "Parts 1 and 2. Part 1 is the part that runs through (tee), whose end meets part 2 (corner), whose face is"
        " welded (lap).",
    ]
    weld: Annotated[Weld, By("kind", WELD_FORMS), "The weld."]
    basis: Annotated[Literal["load", "full-strength"], "What the size is based on."]
    load: Annotated[
        GrooveForce | ForceComponents | None,
        ToldBy(((("force",), GrooveForce), ((), COMPONENTS_FORM))),
        'Load, with basis "load": a force on the joint, or components per length.',
    ] = None
    filler: AnyFiller | None = None
    parameters: Annotated[Parameters, "Parameters that replace the rule set's own; EN 1993-1-8 only."] = ()
    process: Process | None = None
    position: Position | None = None
    common: Common = Common()

    @property
    def through(self) -> float:
        """Thickness the groove goes through, mm: the standing part of a tee, part 1 of a corner, a butt's thinner."""
        first, second = (part.thickness for part in self.parts)
        return {"tee": second, "corner": first}.get(self.joint.kind, min(first, second))

    @property
    def thinner(self) -> float:
        """Thickness of the thinner part, mm."""
        return min(part.thickness for part in self.parts)


def single(form: str) -> GrooveForm:
    """Form of one side of a cut groove."""
    form_of_side: GrooveForm = form.replace("double-", "single-")  # type: ignore[assignment]
    return form_of_side


def sides(form: str) -> int:
    """Number of sides a form is cut from."""
    return 2 if form.startswith("double-") else 1


def usual_angle(form: str, low: float = 0.0, high: float = pi) -> float:
    """Usual included angle of a form, within limits."""
    return min(max(DEFAULT_ANGLES[single(form)], low), high)


def fits_joint(form: str, joint: JointKind) -> bool:
    """Whether a joint's edges can be cut to a form: a tee has one edge, and a corner no far side for a V or U."""
    if form not in CUT_BOTH:
        return True
    return joint == "butt" or (joint == "corner" and form.startswith("single-"))
