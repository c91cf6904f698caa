"""Request for the risk of cracks, in engine units."""

from dataclasses import dataclass
from typing import Annotated, Literal

from ..core.answers import Common
from ..core.quantities import LENGTH
from ..core.shape import Numbered, ToldBy, Within, form
from ..joints.given import UP_TO_50, UP_TO_100, PartThickness, Process

JointKind = Literal["butt", "fillet", "corner"]
Crater = Literal["filled", "unfilled"]

_SHARE = "Weight %."
_ACROSS = Within(LENGTH, 0.1, most=100.0)


@dataclass(frozen=True, slots=True)
class Bead:
    """One bead, mm: as measured, or a flat mitre fillet by its throat and its penetration beyond the root."""

    width: Annotated[float | None, _ACROSS, "Greatest width of the bead."] = None
    depth: Annotated[float | None, _ACROSS, "Depth of the bead from its face."] = None
    face_width: Annotated[float | None, _ACROSS, "Width of its face, where the bead is wider below the face."] = None
    throat: Annotated[float | None, _ACROSS, "Throat from the root to the face."] = None
    penetration: Annotated[float | None, UP_TO_100, "Depth of fusion beyond the root, along the throat line."] = None


BEAD_FORMS = (
    (
        ("throat", "penetration"),
        form("MitreBead", "Flat single-pass fillet of equal legs at 90 deg.", Bead, "throat!", "penetration!"),
    ),
    (
        (),
        form("MeasuredBead", "One bead as a macro section shows it.", Bead, "width!", "depth!", "face_width"),
    ),
)
"""A bead as a request describes it."""


@dataclass(frozen=True, slots=True)
class WeldMetal:
    """Weld metal as analysed, diluted by the plate."""

    C: Annotated[float, Numbered(0.0, 1.0), _SHARE]
    S: Annotated[float, Numbered(0.0, 0.5), _SHARE]
    P: Annotated[float, Numbered(0.0, 0.5), _SHARE]
    Nb: Annotated[float, Numbered(0.0, 1.0), _SHARE]
    Si: Annotated[float, Numbered(0.0, 5.0), _SHARE]
    Mn: Annotated[float, Numbered(0.0, 5.0), _SHARE]


@dataclass(frozen=True, slots=True)
class CrackRiskRequest:
    """One pass to grade; the answer grades what the request describes, and no cracks by hydrogen (see /v1/heat)."""

    joint: Annotated[JointKind, "Joint that the pass is in; corner is an outside corner."]
    bead: Annotated[Bead | None, ToldBy(BEAD_FORMS), "Shape of one bead, not of the whole weld."] = None
    hollow: Annotated[float | None, UP_TO_50, "Depth of a hollow face under the line between its toes."] = None
    restrained: Annotated[bool, "Whether the joint is held so that it cannot give as the bead shrinks."] = False
    weld_metal: Annotated[WeldMetal | None, "Composition of the weld metal, for the index UCS."] = None
    process: Process | None = None
    thickness: Annotated[
        tuple[PartThickness, PartThickness] | None, "Thickness of parts 1 and 2, for the least fillet."
    ] = None
    leg: Annotated[float | None, Within(LENGTH, 0.5, most=100.0), "Leg of the first, or only, pass."] = None
    low_hydrogen: Annotated[
        bool,
        "Whether the process is low in hydrogen or the steel is preheated. The thinner part then decides the least"
        " fillet of AWS D1.1; otherwise the thicker part does.",
    ] = False
    crater: Annotated[Crater | None, "How the crater is left."] = None
    common: Common = Common()
