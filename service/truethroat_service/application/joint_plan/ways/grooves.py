"""Ways to make a joint with a groove by a listed detail: partial, under a fillet, or through."""

from dataclasses import replace
from math import pi
from types import MappingProxyType
from typing import Any

from ....engine.rounding import SAME, up
from ...core.codes import Verdict
from ...core.units import Units
from ...distortion import request as distortion
from ...groove_size import groove_size
from ...groove_size.answer import GroovePreparation
from ...groove_size.request import FullWeld, GrooveForce, GrooveJoint, GrooveSizeRequest, PartialWeld
from ...joints import weld_sections
from ...joints.given import usual_step
from ...joints.rule_sets import rule_set
from ...joints.seams import Lengths, Shape
from ..asking import Parts, Unworkable
from ..request import JointPlanRequest
from .way import Judged, Made, common, opens_one_side

_ROOTS = MappingProxyType(
    {
        "open": "root open",
        "backing": "on a backing that is left in",
        "back-gouge": "root gouged out from the second side and welded again",
        "back-run": "root welded again from the second side",
    }
)
"""How a root is made, in words for the shop."""

REINFORCING = 0.25
"""Leg of a reinforcing fillet over the thickness it reinforces; common practice, no source."""


def _groove(request: JointPlanRequest, parts: Parts, weld: PartialWeld | FullWeld) -> Made:
    """Groove by a listed detail."""
    if request.basis == "throat" and isinstance(weld, PartialWeld):
        raise Unworkable(
            'A groove of a listed detail needs basis "load" or "full-strength"; for a throat see bevelled-edge.'
        )
    if request.finish.below + request.finish.tolerance > 0.0:
        raise Unworkable('A groove of a listed detail is filled flush. Grinding below flush needs basis "throat".')
    if rule_set(request.rule_set).groove_weld is None:
        raise Unworkable(f"{request.rule_set} has no rules for grooves.")
    if request.joint.root_gap > 0.0:
        weld = replace(weld, gap=request.joint.root_gap)
    joint: Any = "tee" if request.joint.kind == "tee" else "butt"
    if abs(request.joint.angle - pi / 2) > SAME and joint == "tee":
        raise Unworkable("A groove of a tee is sized for plates at 90 deg only.")
    load = None
    if request.load is not None:
        load = GrooveForce(request.load.force, request.length, request.load.angle)
    answer = parts.ask(
        groove_size,
        GrooveSizeRequest(
            rule_set=request.rule_set,
            joint=GrooveJoint(joint),
            parts=request.parts,
            weld=weld,
            basis="load" if request.basis == "load" else "full-strength",
            load=load,
            filler=request.filler,
            parameters=request.parameters,
            root_pass=request.root_pass if isinstance(weld, PartialWeld) else None,
            process=request.process,
            position=request.position,
            common=common(request),
        ),
    )
    if answer.verdict is not Verdict.ENOUGH:
        # The reason against the nearest groove follows what it needs, and is shown first.
        raise Unworkable(*reversed(answer.reasons))
    sized = answer.result
    cut = sized.preparation
    if cut is None:
        raise Unworkable("No preparation of the standard fits.", *(f"{no.ref}: {no.why}" for no in sized.refused))
    if isinstance(weld, PartialWeld):
        if cut.sides == 1 and opens_one_side(request) and weld.groove is None and request.reach == "both-sides":
            return _groove(request, parts, replace(weld, groove="double-bevel"))
        _check_partial(request, cut)
    opening = cut.gap + (0.0 if cut.setback is None else cut.edges * cut.setback)
    # Each side is a weld of its own.
    required = None if sized.required is None else sized.required.throat / cut.sides
    if required is not None and sized.minimum is not None:
        required = max(required, sized.minimum.throat)
    return Made(
        size=_groove_text(cut, Units(request.common.units)),
        laid="groove",
        shapes=(weld_sections.PlainArea("area", cut.area / cut.sides),) * cut.sides,
        required_throat=required,
        judged=_one_groove(request, cut, weld, required),
        joint=_groove_case(request, joint, cut, opening),
        leg=weld.reinforcing_fillet or None if isinstance(weld, PartialWeld) else None,
        width=opening if request.finish.to == "as-welded" else 0.0,
        cuts=0 if cut.setback is None else cut.sides * cut.edges,
    )


def _groove_text(cut: GroovePreparation, units: Units) -> str:
    """Preparation in words."""
    depth = "through" if cut.depth is None else f"{units.text(cut.depth)} deep"
    if cut.sides == 2 and cut.depth is not None:
        depth += " from each side"
    angle = "" if cut.angle is None else f", {units.angle(cut.angle)['text']}"
    land = f", land {units.text(cut.land)}" if cut.land else ""
    root = f"root gap {units.text(cut.gap)}, {_ROOTS[cut.root]}"
    return f"{cut.form.replace('-', ' ')} {depth}{angle}{land}, {root} ({cut.ref})"


def _check_partial(request: JointPlanRequest, cut: GroovePreparation) -> None:
    """Refuse a groove without depth, and one from one side that its load opens from the root."""
    if cut.depth is None or cut.depth <= 0.0:
        raise Unworkable("The detail cuts no groove, so only its fillet would carry.")
    if cut.sides == 1 and opens_one_side(request):
        raise Unworkable(
            "The load opens a groove from one side from its root. Hold the joint from turning and send"
            " held_from_turning, weld both sides, or weld the full thickness."
        )


def _one_groove(
    request: JointPlanRequest, cut: GroovePreparation, weld: PartialWeld | FullWeld, required: float | None
) -> Judged | None:
    """Section of one of the equal grooves; None where the parts decide, or under a reinforcing fillet."""
    if isinstance(weld, FullWeld) or weld.reinforcing_fillet > 0.0 or required is None:
        return None
    proven = request.proven
    t_1, t_2 = request.thickness
    shape = Shape("butt", pi / 2, False, "as-welded", 0.0, None, False)
    lengths = Lengths(
        t_1=t_1,
        t_2=t_2,
        depth=cut.depth or 0.0,
        deduction=cut.deduction,
        penetration=proven.depth,
    )
    return Judged(shape, lengths, {"depth": -request.tolerances.depth, "penetration": -proven.tolerance}, required)


def _groove_case(
    request: JointPlanRequest, joint: str, cut: GroovePreparation, opening: float
) -> distortion.Joint | None:
    """Joint of the groove for the estimate of distortion, by its area and its widths; None where it has no area."""
    if cut.area <= 0.0:
        return None
    through = request.thickness[1] if joint == "tee" else request.thinner
    # Equal welds on both sides do not turn the joint.
    face = cut.gap if cut.sides == 2 else max(opening, cut.gap)
    weld = distortion.Groove("by-area", area=cut.area, face_width=face, root_width=cut.gap)
    return distortion.Butt("butt", through, weld)


def partial(request: JointPlanRequest, parts: Parts) -> Made:
    """Partial-penetration groove."""
    penetration = request.penetration if request.penetration.depth else None
    weld = PartialWeld(
        "partial", access=request.reach, penetration=penetration, depth_tolerance=request.tolerances.depth
    )
    return _groove(request, parts, weld)


def partial_and_fillet(request: JointPlanRequest, parts: Parts) -> Made:
    """Partial-penetration groove under a reinforcing fillet."""
    step = usual_step(request.common.units, "leg")
    leg = float(up(REINFORCING * request.thinner, step))
    penetration = request.penetration if request.penetration.depth else None
    weld = PartialWeld(
        "partial",
        access=request.reach,
        penetration=penetration,
        reinforcing_fillet=leg,
        depth_tolerance=request.tolerances.depth,
    )
    return _groove(request, parts, weld)


def full(request: JointPlanRequest, parts: Parts) -> Made:
    """Full-penetration groove."""
    return _groove(request, parts, FullWeld("full", access=request.reach))
