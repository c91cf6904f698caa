"""Ways to make a joint as a seam that keeps a throat under its finish: square, bevelled, open or filleted inside."""

from dataclasses import dataclass, replace
from math import cos, pi, sqrt
from typing import Any

from ....engine import fillet_section, section
from ....engine.rounding import SAME, at_least, at_most, up
from ....practice import weld_sections as section_areas
from ....standards.aisc_360_22.j2_2_fillet_limits import TABLE_J2_4
from ...bevel_depth import bevel_depth
from ...bevel_depth.request import BevelDepthRequest
from ...core.codes import Verdict
from ...core.faults import Faults
from ...core.units import Units
from ...distortion import request as distortion
from ...grind_allowance import grind_allowance
from ...grind_allowance.request import GrindAllowanceRequest
from ...joints import weld_sections
from ...joints.given import usual_depth_step, usual_step
from ...joints.rule_sets import rule_set
from ...joints.seams import Finish, Penetration, Preparation, Seam
from ...joints.throat_budget import ToleratedSection
from ..asking import Parts, Unworkable, reasons_of
from ..request import JointPlanRequest
from .way import Judged, Made, as_welded_only, common, needs_second_side

HALF_OPEN = 0.5
"""Share of part 1's thickness that a half-open corner covers; common practice, no source."""


LEAST_CAP = 1.0
"""Height of the cap on a square edge before it is ground, mm; common practice, no source."""


UNPREPARED = Preparation()
"""Square edge."""


def _throat(request: JointPlanRequest) -> float:
    """Throat the finished seam must keep, mm."""
    if request.required_throat is None:
        raise Unworkable('A seam is prepared for a throat; send basis "throat" and required_throat.')
    return request.required_throat


def _flat_seam(request: JointPlanRequest) -> Seam:
    """Closed corner, or butt, of the parts."""
    kind: Any = "closed-corner" if request.joint.kind == "outside-corner" else "butt"
    return Seam(kind, request.thickness, request.joint.angle, thickness_tolerance=request.tolerances.thickness)


@dataclass(frozen=True, slots=True)
class _Kept:
    """Seam that keeps its throat under its finish: the request about it, and its section."""

    asked: GrindAllowanceRequest
    section: ToleratedSection


def _ground(
    request: JointPlanRequest,
    parts: Parts,
    seam: Seam,
    preparation: Preparation = UNPREPARED,
    face: float | None = None,
    face_width: float | None = None,
    finish: Finish | None = None,
) -> _Kept:
    """Seam that keeps its throat under the finish by what is proven; raises ``Unworkable`` where it does not."""
    asked = GrindAllowanceRequest(
        seam=seam,
        required_throat=_throat(request),
        finish=request.finish if finish is None else finish,
        preparation=preparation,
        penetration=_fused(request.proven, seam),
        face_height=face,
        face_height_tolerance=request.tolerances.face_height if face else 0.0,
        face_width=face_width,
        rule_set=request.rule_set,
        root_pass=request.root_pass,
        process=request.process,
        position=request.position,
        common=common(request),
    )
    answer = parts.ask(grind_allowance, asked)
    if answer.verdict is not Verdict.ENOUGH:
        raise Unworkable(*answer.result.account)
    return _Kept(asked, answer.result.section)


def _fused(proven: Penetration, seam: Seam) -> Penetration:
    """Penetration of a seam; in a half-open corner it is no deeper than the overlap."""
    if seam.kind != "half-open-corner" or proven.depth <= seam.overlap:
        return proven
    least = min(proven.depth - proven.tolerance, seam.overlap)
    return Penetration(seam.overlap, "proven", seam.overlap - least)


def _seam_made(request: JointPlanRequest, kept: _Kept, size: str, shape: weld_sections.Shape, width: float) -> Made:
    """Way that rests on a finished seam."""
    asked, section_ = kept.asked, kept.section
    joint = None
    if request.joint.kind == "butt":
        area = weld_sections.measured(shape).area
        weld = distortion.Groove("by-area", area=area, face_width=width, root_width=request.joint.root_gap)
        joint = distortion.Butt("butt", request.thinner, weld) if area > 0.0 else None
    return Made(
        size=size,
        laid="groove",
        shapes=(shape,),
        required_throat=request.required_throat,
        judged=Judged(section_.shape, section_.lengths, section_.worse, asked.required_throat),
        joint=joint,
        width=width if asked.finish.to == "as-welded" else 0.0,
        face=(asked.face_height or None) if asked.finish.to == "as-welded" else None,
    )


def square(request: JointPlanRequest, parts: Parts) -> Made:
    """Square edges closed tight; their throat is the proven penetration."""
    if request.penetration.vouched == "proven" and request.penetration.depth > request.proven.depth:
        raise Unworkable(
            "The throat of a tight square edge is its penetration, and that of a root pass by hand does not count. Send"
            " root_pass."
        )
    if request.proven.depth <= 0.0:
        raise Unworkable("The throat of a tight square edge is its penetration, and none is proven.")
    kept = _ground(request, parts, _flat_seam(request))
    width = 2.0 * request.proven.depth
    return _seam_made(request, kept, "square edge", _cap(width, LEAST_CAP), width)


def _cap(width: float, height: float) -> weld_sections.PlainArea:
    """Cap over a square edge."""
    return weld_sections.PlainArea("area", float(section_areas.cap_area(W=width, h=height)))


def face_left(request: JointPlanRequest, parts: Parts) -> Made:
    """Square edges whose face is left above its plane."""
    as_welded_only(request)
    if at_least(request.proven.depth - request.proven.tolerance, _throat(request)):
        raise Unworkable("The proven penetration keeps the throat, so no face is needed.")
    height = _throat(request) - request.proven.depth + request.proven.tolerance + request.tolerances.face_height
    step = usual_depth_step(request.common.units)
    face = float(up(max(height, step), step))
    # The face is so wide that the nearer toe is at least as far from the root as the face is high.
    width = 2.0 * face
    kept = _ground(request, parts, _flat_seam(request), face=face, face_width=width)
    return _seam_made(request, kept, "square edge, face left standing", _cap(width, face), width)


def bevelled(request: JointPlanRequest, parts: Parts) -> Made:
    """Edge bevelled so deep that the finished seam keeps its throat."""
    minimum = rule_set(request.rule_set).groove.minimum_throat(request.thinner)
    required = _throat(request) if minimum is None else max(_throat(request), minimum[0])
    cut = parts.ask_for_enough(
        bevel_depth,
        BevelDepthRequest(
            seam=_flat_seam(request),
            required_throat=required,
            finish=request.finish,
            penetration=request.penetration,
            depth_tolerance=request.tolerances.depth,
            rule_set=request.rule_set,
            root_pass=request.root_pass,
            process=request.process,
            position=request.position,
            common=common(request),
        ),
    )
    assert cut.depth is not None and cut.setback is not None and cut.area is not None  # noqa: S101 - it is enough
    if cut.depth <= 0.0:
        raise Unworkable("The proven penetration keeps the throat, so no bevel is needed.")
    prepared = Preparation(cut.depth, tolerance=request.tolerances.depth)
    kept = _ground(replace(request, required_throat=required), parts, _flat_seam(request), prepared)
    units = Units(request.common.units)
    size = f"bevel {units.text(cut.depth)} deep, setback {units.text(cut.setback)}"
    shape = weld_sections.PlainArea("area", cut.area)
    return replace(_seam_made(request, kept, size, shape, cut.setback), cuts=1)


def _open(request: JointPlanRequest, parts: Parts, overlap: float) -> Made:
    """Corner whose edges form a groove, filled as far as the finish requires."""
    t_1, t_2 = request.thickness
    kind: Any = "half-open-corner" if overlap else "open-corner"
    sharp = request.finish.to in ("flush", "radius")
    corner = weld_sections.CornerWeld(
        kind, (t_1, t_2), "sharp" if sharp else "flat", request.joint.angle, overlap=overlap
    )
    faults = Faults(Units(request.common.units))
    weld_sections.check(corner, "#", faults)
    if faults:
        raise Unworkable(*reasons_of(faults))
    seam = Seam(
        kind, (t_1, t_2), request.joint.angle, overlap=overlap, thickness_tolerance=request.tolerances.thickness
    )
    # The sharp corner is as far above the line between the toes as the root is below it.
    a, b = corner.sides
    face = float(section.open_corner_toe_line(t_1=a, t_2=b, gamma=pi - request.joint.angle)) if sharp else None
    kept = _ground(request, parts, seam, face=face)
    # Filled sharp, the faces are those of the plates; filled flat, the face is the line between the toes.
    turn = pi - request.joint.angle
    width = 0.0 if sharp else sqrt(a * a + b * b - 2.0 * a * b * cos(turn))
    return _seam_made(request, kept, f"{kind.replace('-', ' ')}, {'filled' if sharp else 'flat'}", corner, width)


def open_corner(request: JointPlanRequest, parts: Parts) -> Made:
    """Corner whose inner edges meet."""
    return _open(request, parts, 0.0)


def half_open_corner(request: JointPlanRequest, parts: Parts) -> Made:
    """Corner that covers half of one edge."""
    if abs(request.joint.angle - pi / 2) > SAME:
        raise Unworkable("A half-open corner is planned at 90 deg only.")
    return _open(request, parts, HALF_OPEN * request.thickness[0])


def inside_fillet(request: JointPlanRequest, parts: Parts) -> Made:
    """Fillet inside the corner; the finish outside does not touch it."""
    needs_second_side(request)
    required, psi = _throat(request), request.joint.angle
    step = usual_step(request.common.units, "leg")
    weld = rule_set(request.rule_set).weld
    # Where a rule set has no least size, the fillet must still be large enough that the plate does not quench it.
    least = float(TABLE_J2_4(request.thinner)) if weld is None else float(weld.minimum_leg(request.thinner, psi)[0])
    loose = request.tolerances.legs
    needed = float(section.equal_leg(a=required, psi=psi)) + loose
    leg = float(up(max(needed, least), step))
    seam = Seam("fillet", request.thickness, psi, legs=(leg, leg), legs_tolerance=loose)
    kept = _ground(request, parts, seam, finish=Finish("as-welded"))
    made = _seam_made(
        request,
        kept,
        f"{Units(request.common.units).text(leg)} leg inside",
        weld_sections.Fillet("fillet", legs=(leg, leg), angle=psi, root_gap=request.joint.root_gap),
        float(fillet_section.face_width(z_1=leg, z_2=leg, psi=psi)),
    )
    return replace(made, laid="fillet", leg=leg, required_leg=leg, least_governs=not at_most(least, needed))
