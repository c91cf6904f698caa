"""Ways to make a joint with fillets: on one side, on both, or intermittent."""

from collections.abc import Mapping
from math import pi
from types import MappingProxyType
from typing import Any, Literal

from ....engine import fillet_section
from ....engine.formula import Source
from ....engine.rounding import SAME, at_most
from ....engine.rule_set import Intermittent
from ....engine.units import INCH
from ....standards.aws_d1_1_2020 import s7_21_fit_up
from ...core.units import Units
from ...distortion import request as distortion
from ...fillet_size import fillet_size
from ...fillet_size.answer import IntermittentFillet, SpecifiedFilletSize
from ...fillet_size.request import FilletSizeRequest, Joint, SharedForce
from ...joints import weld_sections
from ...joints.metals import is_hollow
from ...joints.rule_sets import rule_set
from ...joints.seams import Lengths, Shape
from ..asking import Parts, Unworkable
from ..request import JointPlanRequest
from .way import Judged, Made, as_welded_only, common, needs_second_side, opens_one_side

SEGMENTS: Mapping[str, tuple[float, ...]] = MappingProxyType(
    {"metric": (50.0, 75.0, 100.0), "us": (2.0 * INCH, 3.0 * INCH, 4.0 * INCH)}
)
"""Segments of an intermittent fillet that are tried, mm, shortest first; common practice, no source."""


ROOT_BENDING = Source("EN 1993-1-8:2005", "4.12", "from memory")


def _fillet(
    request: JointPlanRequest, parts: Parts, sides: Literal[1, 2], intermittent: Intermittent | None = None
) -> Made:
    """Fillets of one size on one side or on both."""
    if sides == 2:
        needs_second_side(request)
    as_welded_only(request)
    joint = request.joint
    kind: Any = joint.kind
    load = None
    if request.load is not None:
        load = SharedForce(request.load.force, request.length, request.load.angle)
    sized = parts.ask_for_enough(
        fillet_size,
        FilletSizeRequest(
            rule_set=request.rule_set,
            joint=Joint(kind, joint.angle, joint.root_gap, sides),
            parts=request.parts,
            basis="load" if request.basis == "load" else "full-strength",
            load=load,
            filler=request.filler,
            parameters=request.parameters,
            process=request.process,
            position=request.position,
            intermittent=intermittent,
            root_bending=_opens_from_root(request, sides)
            and rule_set(request.rule_set).options.root_bending is not None,
            held_from_turning=request.held_from_turning,
            access=request.access
            if any(part.material and is_hollow(part.material) for part in request.parts)
            else None,
            leg_tolerance=request.tolerances.legs,
            penetration=request.penetration if request.penetration.depth else None,
            root_pass=request.root_pass,
            common=common(request),
        ),
    )
    assert sized.specify is not None  # noqa: S101 - what is enough has a size
    leg = sized.specify.leg
    added = s7_21_fit_up.leg_added(g=joint.root_gap, g_free=s7_21_fit_up.FREE_GAP, same=SAME)
    gap = float(s7_21_fit_up.along_the_face(g_add=added, psi=joint.angle))
    least_leg = max(sized.required.leg, sized.minimum.leg)
    least_throat = max(sized.required.throat, sized.minimum.throat)
    share = 1.0 if sized.intermittent is None else _laid_share(sized.intermittent, request.length)
    angles = (joint.angle,) if sides == 1 else (joint.angle, pi - joint.angle if kind == "tee" else joint.angle)
    shape = Shape("fillet", max(angles), True, "as-welded", 0.0, None, False)
    loose = -request.tolerances.legs
    return Made(
        size=_fillet_text(sized.specify, sized.intermittent, sides, Units(request.common.units)),
        laid="fillet",
        shapes=tuple(
            # The leg laid includes what the root gap takes away.
            weld_sections.Fillet("fillet", legs=(leg, leg), angle=angle)
            for angle in angles
        ),
        required_throat=least_throat,
        judged=Judged(shape, Lengths(z_1=leg - gap, z_2=leg - gap), {"z_1": loose, "z_2": loose}, least_throat),
        joint=_fillet_case(request, sides, leg, share),
        width=float(fillet_section.face_width(z_1=leg, z_2=leg, psi=min(angles))),
        leg=leg,
        required_leg=least_leg + gap,
        least_governs=not at_most(sized.minimum.leg, sized.required.leg),
        share=share,
    )


def _opens_from_root(request: JointPlanRequest, sides: int) -> bool:
    """Whether the load opens one weld from its root; raises ``Unworkable`` if no rule covers that."""
    kind = request.joint.kind
    if sides == 2 or not opens_one_side(request):
        return False
    if kind == "lap":
        raise Unworkable(
            "A lap that is pulled across takes a weld at both ends, because one weld opens from its root. Weld both, or"
            " hold the joint from turning and send held_from_turning."
        )
    if kind == "inside-corner":
        raise Unworkable(
            "The load opens the weld from its root. Hold the joint from turning and send held_from_turning."
        )
    if _models_root_bending(request) and request.load is not None:
        if abs(request.joint.angle - pi / 2) > SAME:
            raise Unworkable(
                f"The load opens the root, and the rules cover that for a square tee only ({ROOT_BENDING})."
            )
        return True
    raise Unworkable(
        "The load opens the weld from its root. Hold the joint from turning and send held_from_turning, or weld both"
        " sides."
    )


def _models_root_bending(request: JointPlanRequest) -> bool:
    """Whether the rules have a model of a tee that its load opens from the root."""
    return rule_set(request.rule_set).options.root_bending is not None


def _laid_share(run: IntermittentFillet, length: float) -> float:
    """Share of the length that an intermittent weld covers, its end welds included."""
    if run.count is None:
        return run.segment / run.pitch
    return min(((run.count - 2) * run.segment + 2.0 * max(run.segment, run.end_weld)) / length, 1.0)


def _fillet_text(size: SpecifiedFilletSize, run: IntermittentFillet | None, sides: int, units: Units) -> str:
    """Size of a fillet in words."""
    where = "both sides" if sides == 2 else "one side"
    text = f"{units.text(size.leg)} leg, {units.text(size.throat)} throat, {where}"
    if run is None:
        return text
    return f"{text}, {units.text(run.segment)} every {units.length(run.pitch, 'down')['text']}"


def _fillet_case(request: JointPlanRequest, sides: Literal[1, 2], leg: float, share: float) -> distortion.Joint | None:
    """Joint of the fillets for the estimate of distortion; None where no method covers it."""
    if request.joint.kind == "tee":
        return distortion.Tee("tee", request.thickness[0], leg, sides=sides, welded_share=share)
    if request.joint.kind == "lap" and sides == 2:
        return distortion.Lap("lap", request.thinner, leg, welded_share=share)
    return None


def one_side(request: JointPlanRequest, parts: Parts) -> Made:
    """Fillet on the first side only."""
    return _fillet(request, parts, 1)


def both_sides(request: JointPlanRequest, parts: Parts) -> Made:
    """Fillet on both sides."""
    return _fillet(request, parts, 2)


def intermittent(request: JointPlanRequest, parts: Parts) -> Made:
    """Intermittent fillets on both sides, with the first segment that leaves a gap and carries the load."""
    if request.load is None:
        raise Unworkable("A weld for full strength has to be continuous.")
    run_of = request.intermittent
    if run_of is None:
        raise Unworkable("An intermittent weld needs the field intermittent.")
    refused: Unworkable | None = None
    for segment in SEGMENTS[request.common.units]:
        try:
            run = Intermittent(
                segment, run_of.loading, member=run_of.member, exposure=run_of.exposure, widths=run_of.widths
            )
            return _fillet(request, parts, 2, run)
        except Unworkable as error:
            refused = error
    assert refused is not None  # noqa: S101 - there are segments to try
    raise refused
