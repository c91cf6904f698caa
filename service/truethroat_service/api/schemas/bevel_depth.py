"""Request of ``/v1/bevel-depth``."""

from ...application.bevel_depth.request import BevelDepthRequest
from ...application.core.quantities import LENGTH
from ...application.joints.rule_sets import ENTRIES
from ..fields import Choice, Quantity
from . import RequestSchema, seams


class BevelDepthSchema(RequestSchema):
    """Edge to prepare."""

    makes = BevelDepthRequest
    title = "BevelDepthRequest"
    seam = seams.flat_seam()
    required_throat = seams.required_throat()
    finish = seams.finish(default={"to": "flush"})
    groove = Choice(seams.GROOVES, "Form of the groove.", default="single-bevel")
    groove_angle = seams.groove_angle()
    bevelled = Choice((1, 2, "both"), "Part that is cut: 1 for a bevel or J, both for a V or U, by default.")
    root_radius = Quantity(LENGTH, "Root radius of a J (10 mm by default) or U (6 mm).", minimum=1.0, maximum=25.0)
    penetration = seams.penetration()
    minimum_land = seams.length("Least land that must stay.", maximum=50.0, default="1 mm")
    depth_step = Quantity(
        LENGTH, "Step the depth is rounded up to: 0.5 mm, or 1/32 in (us), by default.", minimum=0.01, maximum=25.4
    )
    depth_tolerance = seams.tolerance()
    rule_set = Choice(tuple(ENTRIES), "Rules whose deduction the depth makes up for.")
    process = seams.process()
    position = seams.position()
