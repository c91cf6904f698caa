"""Request of ``/v1/grind-allowance``."""

from ...application.core.quantities import LENGTH
from ...application.grind_allowance.request import GrindAllowanceRequest
from ...application.joints.rule_sets import ENTRIES
from ..fields import Choice, Object, Quantity
from . import RequestSchema, seams


class GrindAllowanceSchema(RequestSchema):
    """Seam to grind."""

    makes = GrindAllowanceRequest
    title = "GrindAllowanceRequest"
    seam = seams.seam()
    preparation = Object(seams.PreparationSchema(), "Prepared edge of a butt, an edge seam or a closed corner.")
    penetration = seams.penetration()
    face_height = seams.length(
        "Height of the face over its plane: the flush plane, or the line between the toes.",
        maximum=50.0,
        default="0 mm",
    )
    face_height_tolerance = seams.tolerance()
    hollow = seams.length("Depth of a hollow face under its plane, instead of face_height.", maximum=50.0)
    hollow_tolerance = seams.tolerance()
    face_width = Quantity(
        LENGTH, "Width of a flat seam's face, to cap the throat at the nearer toe.", maximum=300.0, above=True
    )
    required_throat = seams.required_throat()
    rule_set = Choice(tuple(ENTRIES), "Rules whose deduction becomes a line of the budget.")
    process = seams.process()
    position = seams.position()
    finish = seams.finish(default={"to": "as-welded"})
