"""Groove, plug and slot welds, and fillets in holes, as a request describes them, in engine units."""

from dataclasses import dataclass
from math import pi
from typing import Literal

from ..core.answers import Common
from ..joints.loads import ForceComponents
from ..joints.metals import Filler, Part
from ..joints.seams import DEFAULT_ANGLES, GrooveForm, Penetration

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
Access = Literal["one-side", "both-sides"]

FORMS: tuple[Form, ...] = (
    "square",
    "single-bevel",
    "double-bevel",
    "single-v",
    "double-v",
    "single-j",
    "double-j",
    "single-u",
    "double-u",
)
ROOTS: tuple[Root, ...] = ("open", "backing", "back-run", "back-gouge")
CUT_BOTH = ("single-v", "double-v", "single-u", "double-u")
"""Forms that cut the edges of both parts."""


@dataclass(frozen=True, slots=True)
class PartialWeld:
    """Partial-penetration groove; the form is chosen where none is given."""

    kind: Literal["partial"]
    groove: Form | None = None
    groove_angle: float | None = None
    gap: float | None = None
    access: Access = "both-sides"
    penetration: Penetration | None = None
    reinforcing_fillet: float = 0.0
    minimum_land: float = 1.0
    depth_step: float | None = None
    depth_tolerance: float = 0.0
    bears: bool = False

    @property
    def proven(self) -> float:
        """Penetration that counts, mm, at its least."""
        fused = self.penetration
        return fused.depth - fused.tolerance if fused is not None and fused.vouched == "proven" else 0.0


@dataclass(frozen=True, slots=True)
class FullWeld:
    """Full-penetration groove; form and root are chosen where none is given."""

    kind: Literal["full"]
    groove: Form | None = None
    groove_angle: float | None = None
    root: Root | None = None
    gap: float | None = None
    land: float | None = None
    access: Access = "both-sides"


@dataclass(frozen=True, slots=True)
class FlareWeld:
    """Flare groove along a round surface."""

    kind: Literal["flare-bevel", "flare-v"]
    radius: float
    below_flush: float = 0.0


@dataclass(frozen=True, slots=True)
class TeeButt:
    """T-butt welded from both sides, as it is: the throat of each side, and what stays unwelded between them."""

    kind: Literal["tee-butt"]
    throats: tuple[float, float]
    unwelded: float


@dataclass(frozen=True, slots=True)
class Holes:
    """Holes or slots through part 2, filled or with a fillet all round; a hole is as long as it is wide.

    ``leg`` is the fillet's, None where the hole is filled; ``count`` is found where none is given.
    """

    kind: Literal["plug", "slot", "fillet-in-hole", "fillet-in-slot"]
    width: float
    length: float
    leg: float | None = None
    filling: float | None = None
    count: int | None = None
    pitch: float | None = None
    pitch_along: float | None = None

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


Weld = PartialWeld | FullWeld | FlareWeld | TeeButt | Holes


@dataclass(frozen=True, slots=True)
class GrooveJoint:
    """Joint of a request; plates of a tee or corner stand square to each other."""

    kind: JointKind


@dataclass(frozen=True, slots=True)
class GrooveForce:
    """Force on the joint in N, tension positive, over a length in mm at an angle in rad to the weld's axis.

    Welds in holes share it as shear on the faying surface, so they have neither length nor angle.
    """

    force: float
    length: float | None = None
    angle: float | None = None


@dataclass(frozen=True, slots=True)
class GrooveSizeRequest:
    """Request for a groove, flare, plug or slot weld, in engine units."""

    rule_set: str
    joint: GrooveJoint
    parts: tuple[Part, Part]
    weld: Weld
    basis: Literal["load", "full-strength"]
    load: GrooveForce | ForceComponents | None = None
    filler: Filler | None = None
    parameters: tuple[tuple[str, float], ...] = ()
    process: str | None = None
    position: str | None = None
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
