"""Limits that an inspector checks a planned weld by: least leg and throat, highest face, by quality level or code."""

from ...engine.rounding import SAME
from ...standards.aws_d1_1_2020 import s7_23_profile
from ...standards.iso_5817_2014 import table_1
from ...standards.iso_5817_2014.table_1 import Sizes
from ..joints.quality_sets import QUALITY_SETS, Quality
from .answer import PlanHold
from .request import JointPlanRequest
from .ways.way import Made


def quality_of(request: JointPlanRequest, family: str) -> Quality | None:
    """Quality set of the plan: that of the request, or the usual one of its rules."""
    if request.quality is not None:
        return request.quality
    usual: dict[str, Quality] = {"aisc": "aws-d1-1-2020", "en": "iso-5817-c"}
    return usual.get(family)


def hold(request: JointPlanRequest, way: Made, quality: Quality | None) -> PlanHold:
    """Limits of a way, mm; None where the way or the quality set has none."""
    # A fillet on a groove is checked as a fillet.
    fillet = way.leg is not None
    face = most_face(request, way, quality)
    return PlanHold(
        least_leg=way.leg,
        least_throat=way.required_throat,
        most_convexity=face if fillet else None,
        most_reinforcement=None if fillet else face,
        leave_face_height=way.face,
    )


def most_face(request: JointPlanRequest, way: Made, quality: Quality | None) -> float | None:
    """Convexity of a fillet, or reinforcement of a groove, that the quality set allows, mm."""
    if quality is None or way.width <= 0.0:
        return None
    level, t = QUALITY_SETS[quality].level, request.thinner
    if level is not None:
        row = "convexity" if way.leg is not None else "reinforcement"
        sizes = Sizes(t=t, a=way.required_throat if way.leg is not None else None, b=way.width)
        height = table_1.limit(row, level, sizes).height
        return None if height is None else float(height)
    if way.leg is not None:
        r_1, r_2, r_3 = s7_23_profile.CONVEXITY
        return float(
            s7_23_profile.largest_convexity(
                W=way.width,
                W_1=s7_23_profile.NARROW,
                W_2=s7_23_profile.WIDE,
                r_1=r_1,
                r_2=r_2,
                r_3=r_3,
                same=SAME,
            )
        )
    t_1, t_2 = s7_23_profile.THICKNESSES
    r_1, r_2, r_3 = s7_23_profile.HEIGHTS
    return float(s7_23_profile.largest_reinforcement(t=t, t_1=t_1, t_2=t_2, r_1=r_1, r_2=r_2, r_3=r_3, same=SAME))
