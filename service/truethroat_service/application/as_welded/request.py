"""Readings of one weld, as a gauge, a macro section or the eye gave them, in engine units.

A reading that is None was not taken: nothing is known of it and nothing is held against it.
"""

from collections.abc import Iterator
from dataclasses import dataclass, fields
from math import pi, radians
from typing import Annotated, Literal

from ...engine.rounding import SAME
from ..core.answers import Common
from ..core.quantities import ANGLE, LENGTH
from ..core.shape import ToldBy, Within, form
from ..joints.given import LONGEST, UP_TO_50, PartThickness
from ..joints.quality_sets import Quality
from ..joints.seams import GivenPenetration, Penetration

Loading = Literal["static", "cyclic-transverse", "cyclic-other"]
FlushEdition = Literal["aws-d1-1-2020", "aws-d1-1-2000"]

_SIZE = Within(LENGTH, 0.5, most=100.0)
_WIDTH = Within(LENGTH, 0.5, most=300.0)
_UP_TO_20 = Within(LENGTH, most=20.0)
_UP_TO_LONGEST = Within(LENGTH, most=LONGEST)


@dataclass(frozen=True, slots=True)
class Required:
    """What the drawing asks for: an equal leg, or a throat, mm; or, of a butt, full penetration; one of them."""

    leg: Annotated[float | None, _SIZE, "Equal leg required."] = None
    throat: Annotated[float | None, _SIZE, "Throat required."] = None
    penetration: Annotated[Literal["full"] | None, "The whole of the thinner part."] = None


_THROAT = (("throat",), form("RequiredThroat", "A throat on the drawing.", Required, "throat!"))
REQUIRED_OF_FILLET = ((("leg",), form("RequiredLeg", "A leg on the drawing.", Required, "leg!")), _THROAT)
REQUIRED_OF_BUTT = (
    (
        ("penetration",),
        form("RequiredFullPenetration", "Full penetration on the drawing.", Required, "penetration!"),
    ),
    _THROAT,
)


@dataclass(frozen=True, slots=True)
class ExtentOfImperfections:
    """How long the weld is, and how long in total its imperfections are in the stretch their rule looks at.

    That is the worst 100 mm by ISO 5817; by AWS D1.1 the worst 12 in for undercut, the whole weld for its throat.
    """

    of_weld: Annotated[float, Within(LENGTH, 1.0, most=LONGEST), "Length of the weld."]
    throat: Annotated[float | None, _UP_TO_LONGEST, "Length over which throat or leg is short."] = None
    undercut: Annotated[float | None, _UP_TO_LONGEST, "Length of undercut."] = None
    shrinkage_groove: Annotated[float | None, _UP_TO_LONGEST, "Length of shrinkage groove."] = None
    underfill: Annotated[float | None, _UP_TO_LONGEST, "Length of underfill."] = None
    root_concavity: Annotated[float | None, _UP_TO_LONGEST, "Length of root concavity."] = None
    incomplete_penetration: Annotated[float | None, _UP_TO_LONGEST, "Length of incomplete penetration."] = None
    lack_of_fusion: Annotated[float | None, _UP_TO_LONGEST, "Length of lack of fusion."] = None

    def given(self) -> Iterator[tuple[str, float]]:
        """Every imperfection whose length is given, and its length, mm."""
        for field in fields(self):
            value = getattr(self, field.name)
            if field.name != "of_weld" and value is not None:
                yield field.name, value


@dataclass(frozen=True, slots=True)
class GroundFlush:
    """A butt required flush."""

    thinning: Annotated[float, UP_TO_50, "How far it is ground under the surface of the thinner part."] = 0.0
    faying: Annotated[bool, "Whether another part lies on it."] = False
    edition: Annotated[FlushEdition, "Edition whose limit of thinning holds: up to 2000 also 5 % of the part."] = (
        "aws-d1-1-2020"
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Readings:
    """What may be read of any weld."""

    thickness: Annotated[tuple[PartThickness, PartThickness], "Thickness of parts 1 and 2."]
    required: Required
    quality: Annotated[Quality, "Level or code that the weld is checked against; see /v1/rule-sets."]
    loading: Annotated[
        Loading | None,
        "Loading, for AWS D1.1: static by default; cyclic with the weld across the tension in a primary member; or"
        " other cyclic.",
    ] = None
    reading_tolerance: Annotated[
        float,
        Within(LENGTH, most=5.0),
        "Plus or minus of the gauge. It is applied to every length read, on the unsafe side. An imperfection read as"
        " zero is taken as absent; a face read as flat may still be hollow by the tolerance.",
    ] = 0.0
    extent: Annotated[
        ExtentOfImperfections | None,
        "How long imperfections are. Without its length an imperfection is taken to run along the whole weld.",
    ] = None
    undercut: Annotated[float | None, _UP_TO_20, "Deepest undercut at either toe."] = None
    overlap: Annotated[float | None, _UP_TO_20, "Widest overlap at either toe."] = None
    toe_angle: Annotated[
        float | None,
        Within(ANGLE, radians(30), most=radians(180)),
        "Least angle between plate and face at a toe, in the air.",
    ] = None
    incomplete_penetration: Annotated[
        float | None, UP_TO_50, "Depth to the root that is not fused, by a test or a macro."
    ] = None
    lack_of_fusion: Annotated[float | None, UP_TO_50, "Height of lack of fusion inside, by a test or a macro."] = None
    surface_pore: Annotated[float | None, _UP_TO_20, "Diameter of the widest pore in the surface."] = None
    internal_pore: Annotated[
        float | None, _UP_TO_20, "Diameter of the widest single pore inside, by a test or a macro."
    ] = None
    end_crater_pipe: Annotated[float | None, _UP_TO_20, "Depth of the pipe in an end crater."] = None
    crack: Annotated[
        bool | None, "Whether there is any crack, craters included; without it cracks are not checked."
    ] = None
    burn_through: Annotated[
        bool | None, "Whether the weld burnt through anywhere; without it burn-through is not checked."
    ] = None
    common: Common = Common()

    @property
    def thinner(self) -> float:
        """Thickness of the thinner part, mm."""
        return min(self.thickness)

    @property
    def unsound(self) -> bool:
        """Whether the weld is cracked or burnt through, so that no throat can be counted on."""
        return bool(self.crack or self.burn_through)

    def at_most(self, name: str) -> float | None:
        """Reading with the gauge's tolerance on it, mm; None when it was not taken.

        An imperfection read as nothing is not there: a gauge cannot show that, and the eye does.
        """
        read = getattr(self, name)
        return None if read is None else _off(float(read), self.reading_tolerance)

    def not_fused(self, off: float) -> float:
        """What is not fused of the throat, mm, when it was read ``off`` too small."""
        return _off(self.incomplete_penetration or 0.0, off) + _off(self.lack_of_fusion or 0.0, off)


def _off(read: float, off: float) -> float:
    """Reading of an imperfection that is ``off`` larger than read, mm; none is none."""
    return max(read + off, 0.0) if read > SAME else 0.0


_FilletLeg = Annotated[float, _SIZE, "Leg along one face."]


@dataclass(frozen=True, slots=True, kw_only=True)
class FilletAsWelded(Readings):
    """Fillet as it was gauged."""

    kind: Literal["fillet"] = "fillet"
    required: Annotated[Required, ToldBy(REQUIRED_OF_FILLET), "What the drawing asks for."]
    legs: Annotated[tuple[_FilletLeg, _FilletLeg], "Legs as gauged, along the faces of parts 1 and 2."]
    angle: Annotated[float, Within(ANGLE, radians(60), most=radians(120)), "Angle between the plates."] = pi / 2
    throat: Annotated[
        float | None,
        Within(LENGTH, most=100.0, above=True),
        "Throat as gauged; it limits the throat that the legs give.",
    ] = None
    convexity: Annotated[float | None, UP_TO_50, "Height of the face over the line between its toes."] = None
    hollow: Annotated[float | None, UP_TO_50, "Depth of a hollow face under that line, instead of convexity."] = None
    root_gap: Annotated[float, _UP_TO_20, "Gap between the parts at the root; parts that touch have none."] = 0.0
    penetration: GivenPenetration = Penetration(0.0, "assumed")


@dataclass(frozen=True, slots=True, kw_only=True)
class ButtAsWelded(Readings):
    """Butt weld as it was gauged."""

    kind: Literal["butt"]
    required: Annotated[
        Required,
        ToldBy(REQUIRED_OF_BUTT),
        "What the drawing asks for: full penetration, or a throat of both sides together.",
    ]
    sides: Annotated[Literal[1, 2], "Sides it was welded from."] = 1
    circumferential: Annotated[bool, "Whether the seam runs round a pipe (ISO 5817)."] = False
    face_width: Annotated[
        float | None, _WIDTH, "Width of the face, on which the limits of ISO 5817 for reinforcement and overlap depend."
    ] = None
    reinforcement: Annotated[float | None, UP_TO_50, "Height of the face over the plate."] = None
    underfill: Annotated[float | None, UP_TO_50, "Depth of the face under the plate, sagging included."] = None
    root_width: Annotated[
        float | None, _WIDTH, "Width of the root bead, on which the limit of ISO 5817 for excess penetration depends."
    ] = None
    excess_penetration: Annotated[float | None, UP_TO_50, "Height of the root bead over the plate."] = None
    root_concavity: Annotated[float | None, UP_TO_50, "Depth of a hollow root under the plate."] = None
    shrinkage_groove: Annotated[float | None, _UP_TO_20, "Depth of grooves beside the root bead."] = None
    misalignment: Annotated[float | None, UP_TO_50, "Offset of the two parts."] = None
    flush: Annotated[GroundFlush | None, "Flush finish, where the drawing requires one by AWS D1.1."] = None
