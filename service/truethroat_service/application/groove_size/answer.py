"""Answer of ``/v1/groove-size``, in engine units."""

from dataclasses import dataclass
from typing import Annotated, Literal

from ..core.shape import Angle, Area, Force, ForcePerLength, Length
from ..joints.grooves import DepositedMetal
from .request import CUT_BOTH, sides

Governs = Literal["load", "full-strength", "full-penetration", "minimum-throat", "base-metal", "preparation"]


@dataclass(frozen=True, slots=True)
class GrooveThroat:
    """Size of a groove."""

    throat: Annotated[Length, "Of all sides together; a minimum is of each side."]
    depth: Annotated[Length | None, "Depth cut from each side; null where none is cut to depth."]
    source: str


@dataclass(frozen=True, slots=True)
class GrooveStrength:
    """Design or allowable force per length of the joint, in the load's direction."""

    weld: Annotated[ForcePerLength | None, "Null where the strength of the parts governs."]
    base_metal: tuple[ForcePerLength, ForcePerLength]


@dataclass(frozen=True, slots=True)
class GroovePreparation:
    """Preparation as it would be made, one value chosen where its detail allows a range."""

    id: Annotated[str | None, "Id of /v1/preparations; null for a groove by its form alone."]
    ref: Annotated[str, "The standard's own reference."]
    standard: str | None
    form: str
    root: Annotated[str, "How the root is made."]
    angle: Annotated[Angle | None, "Included; of a bevel or J that of its one face."]
    gap: Length
    land: Length | None
    depth: Annotated[Length | None, "Cut from each side."]
    setback: Annotated[Length | None, "On each edge that is cut."]
    deduction: Annotated[Length, "Taken off the depth of each side."]
    throat: Annotated[Length, "All sides together."]
    area: Annotated[Area, "Metal deposited, without a cap."]
    filler: DepositedMetal
    enough: bool
    why: Annotated[str | None, "Why it is not enough; null where it is enough."]

    @property
    def sides(self) -> int:
        """Number of sides it is cut from."""
        return sides(self.form)

    @property
    def edges(self) -> int:
        """Number of edges that are cut on each side: of both parts, or of one."""
        return 2 if self.form in CUT_BOTH else 1


@dataclass(frozen=True, slots=True)
class RefusedPreparation:
    """Detail that does not fit."""

    id: str | None
    ref: str
    why: str


@dataclass(frozen=True, slots=True)
class WeldedHoleLimits:
    """Null where none is ruled."""

    least_width: Length | None
    largest_width: Length | None
    longest: Length | None
    least_filling: Length | None
    least_leg: Length | None
    largest_leg: Length | None
    least_pitch: Length | None
    least_pitch_along: Length | None


@dataclass(frozen=True, slots=True)
class WeldedHoles:
    """Plugs, slots, or fillets all round holes or slots."""

    width: Length
    length: Length
    filling: Annotated[Length | None, "Null for a fillet."]
    leg: Annotated[Length | None, "Of a fillet."]
    throat: Annotated[Length | None, "Of a fillet."]
    centre_line: Annotated[Length | None, "Effective length of a fillet."]
    area: Annotated[Area, "Effective area of one."]
    strength: Annotated[Force, "Of one, in shear."]
    needed: int
    count: int
    limits: WeldedHoleLimits


@dataclass(frozen=True, slots=True)
class TeeButtStrength:
    """Whether a T-butt counts as full strength."""

    throats_together: Length
    thickness: Length
    unwelded: Length
    largest_unwelded: Length
    full_strength: bool


@dataclass(frozen=True, slots=True)
class GrooveSizeAnswer:
    """Groove, flare, plug or slot weld to specify."""

    required: Annotated[GrooveThroat | None, "What the weld metal needs."]
    minimum: GrooveThroat | None
    specify: GrooveThroat | None
    governs: Governs
    utilisation: Annotated[
        float | None,
        "Greatest share of the strength of weld or parts that the load uses; null where no preparation is enough.",
    ]
    strength: GrooveStrength | None
    preparation: GroovePreparation | None
    preparations: Annotated[
        tuple[GroovePreparation, ...], "Those that fit the joint: enough ones first, least metal first."
    ]
    refused: Annotated[tuple[RefusedPreparation, ...], "Details of the standard that do not fit the joint, and why."]
    holes: WeldedHoles | None
    tee: TeeButtStrength | None
