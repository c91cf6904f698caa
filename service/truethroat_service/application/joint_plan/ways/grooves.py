"""Ways to make a joint with a groove by a listed detail: partial, under a fillet, or through."""

from collections.abc import Mapping
from dataclasses import replace
from math import pi
from typing import Any

from ....engine.rounding import SAME, up
from ....engine.units import INCH
from ...distortion import request as distortion
from ...groove_size.request import CUT_BOTH, FullWeld, GrooveForce, GrooveJoint, GrooveSizeRequest, PartialWeld
from ...joints import weld_sections
from ...joints.rule_sets import rule_set
from ...joints.seams import Lengths, Shape
from ..asking import Parts, Unworkable, engine
from ..request import JointPlanRequest
from .way import Judged, Made, common, opens_one_side

REINFORCING = 0.25
"""Leg of a reinforcing fillet over the thickness it reinforces; common practice, no source."""


def _groove(request: JointPlanRequest, parts: Parts, weld: PartialWeld | FullWeld) -> Made:
    """Groove by a listed detail."""
    if request.basis == "throat" and isinstance(weld, PartialWeld):
        raise Unworkable(
            "a listed detail is sized from a load or for full strength; a throat is prepared for by a bevel"
        )
    if request.finish.below + request.finish.tolerance > 0.0:
        raise Unworkable("is filled flush and no deeper: what is ground under that is planned for by a throat")
    if rule_set(request.rule_set).groove_weld is None:
        raise Unworkable(f"{request.rule_set} rates no groove")
    if request.joint.root_gap > 0.0:
        weld = replace(weld, gap=request.joint.root_gap)
    joint: Any = "tee" if request.joint.kind == "tee" else "butt"
    if abs(request.joint.angle - pi / 2) > SAME and joint == "tee":
        raise Unworkable("grooves are sized for plates square to each other")
    load = None
    if request.load is not None:
        load = GrooveForce(request.load.force, request.length, request.load.angle)
    sized = parts.ask(
        "groove_size",
        GrooveSizeRequest(
            rule_set=request.rule_set,
            joint=GrooveJoint(joint),
            parts=request.parts,
            weld=weld,
            basis="load" if request.basis == "load" else "full-strength",
            load=load,
            filler=request.filler,
            parameters=request.parameters,
            process=request.process,
            position=request.position,
            common=common(request),
        ),
    )
    if sized["verdict"] != "enough":
        # What stands against the nearest groove comes after what it needs.
        raise Unworkable(*reversed(sized["reasons"]))
    cut = sized["preparation"]
    if cut is None:
        raise Unworkable(
            "no preparation of the standard fits", *(f"{no['ref']}: {no['why']}" for no in sized["refused"])
        )
    # Each side is welded apart.
    sides = 2 if cut["form"].startswith("double") else 1
    if isinstance(weld, PartialWeld):
        if sides == 1 and opens_one_side(request) and weld.groove is None and request.access == "both-sides":
            return _groove(request, parts, replace(weld, groove="double-bevel"))
        _check_partial(request, cut, sides)
    area = engine(cut["area"])
    faces = 2 if cut["form"] in CUT_BOTH else 1
    opening = engine(cut["gap"]) + (0.0 if cut["setback"] is None else faces * engine(cut["setback"]))
    required = None if sized["required"] is None else engine(sized["required"]["throat"]) / sides
    if required is not None and sized["minimum"] is not None:
        required = max(required, engine(sized["minimum"]["throat"]))
    return Made(
        size=_groove_text(cut),
        laid="groove",
        shapes=(weld_sections.PlainArea("area", area / sides),) * sides,
        required_throat=required,
        judged=_one_groove(request, cut, weld, required),
        joint=_groove_case(request, joint, cut, area, opening),
        leg=weld.reinforcing_fillet or None if isinstance(weld, PartialWeld) else None,
        width=opening if request.finish.to == "as-welded" else 0.0,
        cuts=0 if cut["setback"] is None else sides * faces,
    )


def _groove_text(cut: Mapping[str, Any]) -> str:
    """Preparation as it is called for."""
    depth = "through" if cut["depth"] is None else f"{cut['depth']['text']} deep"
    angle = "" if cut["angle"] is None else f", {cut['angle']['text']}"
    return f"{cut['form'].replace('-', ' ')} {depth}{angle}, root gap {cut['gap']['text']} ({cut['ref']})"


def _check_partial(request: JointPlanRequest, cut: Mapping[str, Any], sides: int) -> None:
    """Refuse a groove that is none, and one from one side that its load opens from the root."""
    if cut["depth"] is None or engine(cut["depth"]) <= 0.0:
        raise Unworkable("cuts no groove: what carries is a fillet alone")
    if sides == 1 and opens_one_side(request):
        raise Unworkable(
            "a groove from one side opens from its root: hold the joint from turning and say held_from_turning, weld"
            " both sides or go through"
        )


def _one_groove(
    request: JointPlanRequest, cut: Mapping[str, Any], weld: PartialWeld | FullWeld, required: float | None
) -> Judged | None:
    """Section of one of the grooves that share the throat; None where the parts rule, or under a reinforcing fillet."""
    if isinstance(weld, FullWeld) or weld.reinforcing_fillet > 0.0 or required is None:
        return None
    proven = request.proven
    t_1, t_2 = request.thickness
    shape = Shape("butt", pi / 2, False, "as-welded", 0.0, None, False)
    lengths = Lengths(
        t_1=t_1,
        t_2=t_2,
        depth=engine(cut["depth"]),
        deduction=engine(cut["deduction"]),
        penetration=proven.depth,
    )
    return Judged(shape, lengths, {"depth": -request.tolerances.depth, "penetration": -proven.tolerance}, required)


def _groove_case(
    request: JointPlanRequest, joint: str, cut: Mapping[str, Any], area: float, opening: float
) -> distortion.Joint | None:
    """What the groove pulls, by its area and its widths at face and root."""
    if area <= 0.0:
        return None
    through = request.thickness[1] if joint == "tee" else request.thinner
    root = engine(cut["gap"])
    # What is laid on both sides alike turns nothing.
    face = root if cut["form"].startswith("double") else max(opening, root)
    weld = distortion.Groove("by-area", area=area, face_width=face, root_width=root)
    return distortion.Butt("butt", through, weld)


def partial(request: JointPlanRequest, parts: Parts) -> Made:
    """Partial-penetration groove."""
    penetration = request.penetration if request.penetration.depth else None
    weld = PartialWeld(
        "partial", access=request.access, penetration=penetration, depth_tolerance=request.tolerances.depth
    )
    return _groove(request, parts, weld)


def partial_and_fillet(request: JointPlanRequest, parts: Parts) -> Made:
    """Partial-penetration groove under a reinforcing fillet."""
    step = INCH / 16 if request.common.units == "us" else 1.0
    leg = float(up(REINFORCING * request.thinner, step))
    penetration = request.penetration if request.penetration.depth else None
    weld = PartialWeld(
        "partial",
        access=request.access,
        penetration=penetration,
        reinforcing_fillet=leg,
        depth_tolerance=request.tolerances.depth,
    )
    return _groove(request, parts, weld)


def full(request: JointPlanRequest, parts: Parts) -> Made:
    """Full-penetration groove."""
    return _groove(request, parts, FullWeld("full", access=request.access))
