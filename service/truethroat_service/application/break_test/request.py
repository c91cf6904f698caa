"""Request for a break test, in engine units."""

from dataclasses import dataclass
from typing import Annotated, Literal

from ...practice import break_test as opening
from ..core.answers import Common
from ..core.quantities import HAND_FORCE, LENGTH
from ..core.shape import By, Stated, ToldBy, Within, form
from ..joints.given import MATERIAL_IDS, STRENGTH, UP_TO_100, UP_TO_LARGEST, FaceHeight, Hollow, Tolerance
from ..joints.seams import SEAM_FORMS, AnyFinish, Finish, GivenPenetration, Penetration, Seam

Rules = Literal["aws-d1-1-2010", "iso-9017"]
Coupon = Literal["tee", "inside-corner", "outside-corner"]


@dataclass(frozen=True, slots=True)
class Notch:
    """Notches that make the weld break."""

    side: Annotated[float, Within(LENGTH, most=1000.0), "Depth of the notch in each side, along the weld."] = 0.0
    face: Annotated[float, UP_TO_100, "Depth of the notch along the face."] = 0.0


@dataclass(frozen=True, slots=True)
class OutcomeFoldedFlat:
    """The coupon folded flat on itself."""

    ended: Literal["folded-flat"]


@dataclass(frozen=True, slots=True)
class OutcomeBroken:
    """The coupon broke."""

    ended: Literal["broken"]
    fused_to_root: Annotated[bool, "Whether the broken faces show fusion to the root over the whole length."]
    largest_void: Annotated[float, UP_TO_LARGEST, "Greatest dimension of the largest void or inclusion."] = 0.0
    sum_of_voids: Annotated[float, UP_TO_LARGEST, "Sum of the greatest dimensions of all voids and inclusions."] = 0.0


Outcome = OutcomeFoldedFlat | OutcomeBroken
OUTCOMES = {"folded-flat": OutcomeFoldedFlat, "broken": OutcomeBroken}


@dataclass(frozen=True, slots=True)
class WeldStrength:
    """Strengths of the weld metal."""

    yield_strength: Annotated[float, STRENGTH, "Yield strength, at which the root begins to yield."]
    tensile_strength: Annotated[float, STRENGTH, "Tensile strength, at which the throat breaks."]


@dataclass(frozen=True, slots=True)
class Plates:
    """Plates, by their yield strength or their material."""

    yield_strength: Annotated[float | None, STRENGTH, "Yield strength."] = None
    material: Annotated[str | None, MATERIAL_IDS, "Material by its designation; see /v1/materials."] = None


PLATES_FORMS = (
    (("material",), form("PlatesOfMaterial", "Plates of a listed material.", Plates, "material!")),
    (("yield_strength",), form("PlatesOfStrength", "Plates of given strength.", Plates, "yield_strength!")),
)
"""Plates as a request describes them."""


@dataclass(frozen=True, slots=True)
class PreparedDepth:
    """Depth cut into an edge before welding."""

    depth: Annotated[float, UP_TO_LARGEST, "Depth of the preparation, square to the face."] = 0.0
    tolerance: Tolerance = 0.0


COUPON_SEAM_FORMS = {kind: seam for kind, seam in SEAM_FORMS.items() if kind not in ("butt", "edge")}
"""Seams that a coupon can have, as a request describes them."""


@dataclass(frozen=True, slots=True)
class BreakTestRequest:
    """Coupon to open from its root."""

    coupon: Annotated[Coupon, "What is opened: a fillet of a tee or inside a corner, or the seam outside a corner."]
    seam: Annotated[
        Seam, By("kind", COUPON_SEAM_FORMS), "Section of the weld; a fillet needs the thickness of its plates too."
    ]
    weld: Annotated[WeldStrength, "Weld metal."]
    plates: Annotated[Plates, ToldBy(PLATES_FORMS), "The plates, both of one steel."]
    length: Annotated[float, Within(LENGTH, 5.0, most=2000.0), "Length of weld that is opened, notches included."]
    lever: Annotated[float, Within(LENGTH, 10.0, most=10000.0), "Lever: from the root to the line of the force."]
    preparation: Annotated[PreparedDepth, "Prepared edge of a closed corner."] = PreparedDepth()
    penetration: GivenPenetration = Penetration(0.0, "assumed")
    face_height: FaceHeight | None = None
    hollow: Hollow | None = None
    finish: Annotated[AnyFinish, Stated({"to": "as-welded"})] = Finish()
    notch: Annotated[Notch, "Notches that make the weld break."] = Notch()
    hand_force: Annotated[
        float,
        Within(HAND_FORCE, 1.0, most=5000.0),
        "Force that hands can pull on the lever (common practice, no source).",
    ] = opening.HAND_FORCE
    rules: Annotated[Rules | None, "Rules for the coupon, and for what its broken faces show."] = None
    outcome: Annotated[
        Outcome | None, By("ended", OUTCOMES), "How the test ended, to be judged by AWS D1.1; for a tee only."
    ] = None
    common: Common = Common()

    @property
    def face(self) -> float:
        """Height of the face over its plane, negative for a hollow, mm."""
        return -self.hollow if self.hollow is not None else self.face_height or 0.0
