"""Request of ``/v1/break-test``."""

from ...application.break_test.request import (
    RULES,
    BreakTestRequest,
    Broken,
    FoldedFlat,
    Notch,
    Plates,
    PreparedDepth,
    Weld,
)
from ...application.core.quantities import HAND_FORCE, LENGTH, STRESS
from ...reference.loader import MATERIALS
from ..fields import Choice, Either, Flag, Object, Quantity, Variant
from . import ClosedSchema, RequestSchema, seams

SEAMS = {kind: schema for kind, schema in seams.SEAMS.items() if kind not in ("butt", "edge")}


def _strength(description: str) -> Quantity:
    return Quantity(STRESS, description, minimum=1.0, maximum=2000.0, required=True)


class WeldStrengthSchema(ClosedSchema):
    """Strengths of the weld metal."""

    makes = Weld
    yield_strength = _strength("Yield strength: at it the root begins to tear.")
    tensile_strength = _strength("Tensile strength: at it the throat breaks.")


class PlatesOfMaterialSchema(ClosedSchema):
    """Plates of a listed material."""

    makes = Plates
    material = Choice(tuple(MATERIALS), "Material by its designation; see /v1/materials.", required=True)


class PlatesOfStrengthSchema(ClosedSchema):
    """Plates of given strength."""

    makes = Plates
    yield_strength = _strength("Yield strength.")


class PreparedDepthSchema(ClosedSchema):
    """Depth cut into an edge before welding."""

    makes = PreparedDepth
    depth = seams.length("Depth of the preparation, square to the face.", default="0 mm")
    tolerance = seams.tolerance()


class NotchSchema(ClosedSchema):
    """Notches that make the weld break."""

    makes = Notch
    side = seams.length("Depth of the notch in each side, along the weld.", maximum=1000.0, default="0 mm")
    face = seams.length("Depth of the notch along the face.", maximum=100.0, default="0 mm")


class FoldedFlatSchema(ClosedSchema):
    """It folded flat on itself."""

    makes = FoldedFlat
    title = "OutcomeFoldedFlat"
    ended = Choice(("folded-flat",), required=True)


class BrokenSchema(ClosedSchema):
    """It broke."""

    makes = Broken
    title = "OutcomeBroken"
    ended = Choice(("broken",), required=True)
    fused_to_root = Flag("Whether the break shows fusion to the root all along.", required=True)
    largest_void = seams.length("Greatest dimension of the largest void or inclusion.", default="0 mm")
    sum_of_voids = seams.length("Sum of the greatest dimensions of all of them.", default="0 mm")


class BreakTestSchema(RequestSchema):
    """Coupon to open from its root."""

    makes = BreakTestRequest
    title = "BreakTestRequest"
    coupon = Choice(
        ("tee", "inside-corner", "outside-corner"),
        "What is opened: a fillet of a tee or inside a corner, or the seam outside a corner.",
        required=True,
    )
    seam = Variant("kind", SEAMS, "Its section; a fillet needs the plates' thickness here.", required=True)
    preparation = Object(PreparedDepthSchema(), "Prepared edge of a closed corner.")
    penetration = seams.penetration()
    face_height = seams.length(
        "Height of the face over its plane: the flush plane, or the line between the toes.",
        maximum=50.0,
        default="0 mm",
    )
    hollow = seams.length("Depth of a hollow face under its plane, instead of face_height.", maximum=50.0)
    finish = seams.finish(default={"to": "as-welded"})
    weld = Object(WeldStrengthSchema(), "Weld metal.", required=True)
    plates = Either(
        [(("material",), PlatesOfMaterialSchema()), (("yield_strength",), PlatesOfStrengthSchema())],
        "The plates, both of one steel.",
        required=True,
    )
    length = Quantity(
        LENGTH, "Length of weld that is opened, notches included.", minimum=5.0, maximum=2000.0, required=True
    )
    lever = Quantity(
        LENGTH, "Lever: from the root to the line of the force.", minimum=10.0, maximum=10000.0, required=True
    )
    notch = Object(NotchSchema(), "Notches that make it break.")
    hand_force = Quantity(
        HAND_FORCE,
        "What hands can pull on the lever (common practice, no source).",
        minimum=1.0,
        maximum=5000.0,
        default="250 N",
    )
    rules = Choice(RULES, "Rules for the coupon, and for what its broken faces show.")
    outcome = Variant(
        "ended",
        {"folded-flat": FoldedFlatSchema(), "broken": BrokenSchema()},
        "How the test ended, to be judged; a tee by AWS D1.1.",
    )
