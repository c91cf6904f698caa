"""Ways to make one joint: each sized and prepared by the single resources, on the same rules.

A way that its rules, its access or its finish rule out raises ``Unworkable`` with the reasons.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from math import cos, pi, sqrt
from types import MappingProxyType
from typing import Any, Literal

from ...engine import fillet_section, section
from ...engine.formula import Source
from ...engine.rounding import SAME, at_least, up
from ...engine.rule_set import Intermittent
from ...engine.units import INCH
from ...practice import weld_sections as section_areas
from ...standards.aisc_360_22.j2_2_fillet_limits import TABLE_J2_4
from ...standards.aws_d1_1_2020 import s7_21_fit_up
from ..bevel_depth import BevelDepthRequest
from ..core.answers import Common, Units
from ..core.faults import Faults
from ..distortion import cases
from ..fillet_size.request import FilletSizeRequest, Joint, SharedForce
from ..grind_allowance import GrindAllowanceRequest, creditable
from ..groove_size.request import CUT_BOTH, FullWeld, GrooveForce, GrooveJoint, GrooveSizeRequest, PartialWeld
from ..joints import weld_sections
from ..joints.rule_sets import rule_set
from ..joints.seams import Finish, Lengths, Penetration, Preparation, Seam, Shape
from .asking import Parts, Unworkable, engine
from .request import JointPlanRequest, Kind

Laid = Literal["fillet", "groove"]

SEGMENTS: Mapping[str, tuple[float, ...]] = MappingProxyType(
    {"metric": (50.0, 75.0, 100.0), "us": (2.0 * INCH, 3.0 * INCH, 4.0 * INCH)}
)
"""Segments of an intermittent fillet that are tried, mm, shortest first; common practice, no source."""

HALF_OPEN = 0.5
"""Share of part 1's thickness that a half-open corner covers; common practice, no source."""

ROOT_BENDING = Source("EN 1993-1-8:2005", "4.12", "from memory")

LEAST_CAP = 1.0
"""Cap that a square edge is left with before it is ground, mm; common practice, no source."""

REINFORCING = 0.25
"""Leg of a reinforcing fillet over the thickness it reinforces; common practice, no source."""


@dataclass(frozen=True, slots=True)
class Judged:
    """Section whose throat is budgeted: what it is, by how much each length may be worse, and the throat to keep."""

    shape: Shape
    lengths: Lengths
    worse: Mapping[str, float]
    required: float


@dataclass(frozen=True, slots=True)
class Made:
    """A way that works: what is laid, in how many equal welds, and what follows from it.

    ``required_throat`` is that of each weld; ``share`` the share of the length that is welded; ``leg`` that of a
    fillet, or of one on a groove; ``width`` the narrowest face, mm, nothing where none is left as welded. ``face`` is
    the face height to leave where the way rests on one; ``cuts`` how many faces are cut on its edges.
    """

    size: str
    laid: Laid
    shapes: tuple[weld_sections.Shape, ...]
    required_throat: float | None
    judged: Judged | None
    joint: cases.Joint | None
    width: float
    leg: float | None = None
    required_leg: float | None = None
    share: float = 1.0
    face: float | None = None
    cuts: int = 0


UNPREPARED = Preparation()
"""Square edge."""

Way = Callable[[JointPlanRequest, Parts], Made]


def common(request: JointPlanRequest) -> Common:
    """Units and working of the plan, for the single resources."""
    return replace(request.common, mark=None)


def _fillet(
    request: JointPlanRequest, parts: Parts, sides: Literal[1, 2], intermittent: Intermittent | None = None
) -> Made:
    """Fillets of one size on one side or on both."""
    if sides == 2:
        _needs_second_side(request)
    _as_welded_only(request)
    joint = request.joint
    kind: Any = joint.kind
    edge = (1 + request.thickness.index(request.thinner) if sides == 2 else 2) if kind == "lap" else None
    load = None
    if request.load is not None:
        load = SharedForce(request.load.force, request.length, request.load.angle)
    sized = parts.ask_for(
        ("enough",),
        "fillet_size",
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
            edge_of=edge,
            end_loaded=kind == "lap" and load is not None and load.angle < pi / 2 - SAME,
            root_bending=_opens_from_root(request, sides) and rule_set(request.rule_set).family == "en",
            leg_tolerance=request.tolerances.legs,
            penetration=request.penetration if request.penetration.depth else None,
            common=common(request),
        ),
    )
    leg = engine(sized["specify"]["leg"])
    added = s7_21_fit_up.leg_added(g=joint.root_gap, g_free=s7_21_fit_up.FREE_GAP, same=SAME)
    gap = float(s7_21_fit_up.along_the_face(g_add=added, psi=joint.angle))
    least = {size: max(engine(sized[limit][size]) for limit in ("required", "minimum")) for size in ("leg", "throat")}
    share = 1.0 if intermittent is None else _laid_share(sized["intermittent"], request.length)
    angles = (joint.angle,) if sides == 1 else (joint.angle, pi - joint.angle if kind == "tee" else joint.angle)
    shape = Shape("fillet", max(angles), True, "as-welded", 0.0, None, False)
    loose = -request.tolerances.legs
    return Made(
        size=_fillet_text(sized, sides),
        laid="fillet",
        shapes=tuple(
            # The leg laid holds what the gap takes.
            weld_sections.Fillet("fillet", legs=(leg, leg), angle=angle)
            for angle in angles
        ),
        required_throat=least["throat"],
        judged=Judged(shape, Lengths(z_1=leg - gap, z_2=leg - gap), {"z_1": loose, "z_2": loose}, least["throat"]),
        joint=_fillet_case(request, sides, leg, share),
        width=float(fillet_section.face_width(z_1=leg, z_2=leg, psi=min(angles))),
        leg=leg,
        required_leg=least["leg"] + gap,
        share=share,
    )


def _opens_from_root(request: JointPlanRequest, sides: int) -> bool:
    """Whether the load opens a tee welded on one side from its root; refuses what no rule here has a model for."""
    if sides == 2 or request.joint.kind != "tee" or not _opened(request):
        return False
    if rule_set(request.rule_set).family == "en" and request.load is not None:
        if abs(request.joint.angle - pi / 2) > SAME:
            raise Unworkable(f"bends its root open, and the model of that is for a square tee ({ROOT_BENDING})")
        return True
    raise Unworkable(
        "opens from its root unless the joint is held from turning: hold it and say held_from_turning, or weld both"
        " sides"
    )


def _laid_share(run: Mapping[str, Any], length: float) -> float:
    """Share of a line that an intermittent weld lays, its end welds in it."""
    segment, ends = engine(run["segment"]), engine(run["end_weld"])
    count: int | None = run["count"]
    if count is None:
        return segment / engine(run["pitch"])
    return min(((count - 2) * segment + 2.0 * max(segment, ends)) / length, 1.0)


def _fillet_text(sized: Mapping[str, Any], sides: int) -> str:
    """Size of a fillet as it is called for."""
    size, run = sized["specify"], sized.get("intermittent")
    text = f"{size['leg']['text']} leg, {size['throat']['text']} throat, {'both sides' if sides == 2 else 'one side'}"
    return text if run is None else f"{text}, {run['segment']['text']} every {run['pitch']['text']}"


def _fillet_case(request: JointPlanRequest, sides: Literal[1, 2], leg: float, share: float) -> cases.Joint | None:
    """What the fillets pull, where a method knows the joint."""
    if request.joint.kind == "tee":
        return cases.Tee("tee", request.thickness[0], leg, sides=sides, welded_share=share)
    if request.joint.kind == "lap" and sides == 2:
        return cases.Lap("lap", request.thinner, leg, welded_share=share)
    return None


def _one_fillet(request: JointPlanRequest, parts: Parts) -> Made:
    """Fillet on the first side alone."""
    return _fillet(request, parts, 1)


def _both_fillets(request: JointPlanRequest, parts: Parts) -> Made:
    """Fillet on both sides."""
    return _fillet(request, parts, 2)


def _intermittent(request: JointPlanRequest, parts: Parts) -> Made:
    """Intermittent fillets on both sides, with the first segment that leaves a gap and carries the load."""
    if request.load is None:
        raise Unworkable("a weld for full strength is continuous")
    told = request.intermittent
    if told is None:
        raise Unworkable("goes by what it makes and where it stands: send intermittent")
    refused: Unworkable | None = None
    for segment in SEGMENTS[request.common.units]:
        try:
            run = Intermittent(segment, told.loading, member=told.member, exposure=told.exposure, widths=told.widths)
            return _fillet(request, parts, 2, run)
        except Unworkable as error:
            refused = error
    assert refused is not None  # noqa: S101 - there are segments to try
    raise refused


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
        if sides == 1 and _opened(request) and weld.groove is None and request.access == "both-sides":
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


def _opened(request: JointPlanRequest) -> bool:
    """Whether the load opens what is welded on one side from its root."""
    return request.across and not request.held_from_turning


def _check_partial(request: JointPlanRequest, cut: Mapping[str, Any], sides: int) -> None:
    """Refuse a groove that is none, and one from one side that its load opens from the root."""
    if cut["depth"] is None or engine(cut["depth"]) <= 0.0:
        raise Unworkable("cuts no groove: what carries is a fillet alone")
    if sides == 1 and _opened(request):
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
) -> cases.Joint | None:
    """What the groove pulls, by its area and its widths at face and root."""
    if area <= 0.0:
        return None
    through = request.thickness[1] if joint == "tee" else request.thinner
    root = engine(cut["gap"])
    # What is laid on both sides alike turns nothing.
    face = root if cut["form"].startswith("double") else max(opening, root)
    weld = cases.Groove("by-area", area=area, face_width=face, root_width=root)
    return cases.Butt("butt", through, weld)


def _partial(request: JointPlanRequest, parts: Parts) -> Made:
    """Partial-penetration groove."""
    penetration = request.penetration if request.penetration.depth else None
    weld = PartialWeld(
        "partial", access=request.access, penetration=penetration, depth_tolerance=request.tolerances.depth
    )
    return _groove(request, parts, weld)


def _partial_and_fillet(request: JointPlanRequest, parts: Parts) -> Made:
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


def _full(request: JointPlanRequest, parts: Parts) -> Made:
    """Full-penetration groove."""
    return _groove(request, parts, FullWeld("full", access=request.access))


def _throat(request: JointPlanRequest) -> float:
    """Throat the finished seam must keep, mm."""
    if request.required_throat is None:
        raise Unworkable("a seam is prepared for a throat, and this plan goes by a load or by full strength")
    return request.required_throat


def _flat_seam(request: JointPlanRequest) -> Seam:
    """Closed corner, or butt, of the parts."""
    kind: Any = "closed-corner" if request.joint.kind == "outside-corner" else "butt"
    return Seam(kind, request.thickness, request.joint.angle, thickness_tolerance=request.tolerances.thickness)


def _ground(
    request: JointPlanRequest,
    parts: Parts,
    seam: Seam,
    preparation: Preparation = UNPREPARED,
    face: float | None = None,
    face_width: float | None = None,
    finish: Finish | None = None,
) -> GrindAllowanceRequest:
    """Ask whether a seam keeps its throat under the finish, on what is proven alone."""
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
        process=request.process,
        position=request.position,
        common=common(request),
    )
    found = parts.ask("grind_allowance", asked)
    if found["creditable"]["verdict"] != "enough":
        raise Unworkable(*(reason for reason in found["reasons"] if reason.startswith("Creditable")))
    return asked


def _fused(proven: Penetration, seam: Seam) -> Penetration:
    """Penetration of a seam: of a half-open corner it runs along the overlap, and no further than that."""
    if seam.kind != "half-open-corner" or proven.depth <= seam.overlap:
        return proven
    least = min(proven.depth - proven.tolerance, seam.overlap)
    return Penetration(seam.overlap, "proven", seam.overlap - least)


def _seam_made(
    request: JointPlanRequest, asked: GrindAllowanceRequest, size: str, shape: weld_sections.Shape, width: float
) -> Made:
    """Way that rests on a finished seam."""
    account = creditable(asked)
    joint = None
    if request.joint.kind == "butt":
        area = weld_sections.measured(shape).area
        weld = cases.Groove("by-area", area=area, face_width=width, root_width=request.joint.root_gap)
        joint = cases.Butt("butt", request.thinner, weld) if area > 0.0 else None
    return Made(
        size=size,
        laid="groove",
        shapes=(shape,),
        required_throat=request.required_throat,
        judged=Judged(account.shape, account.lengths, account.worse, asked.required_throat),
        joint=joint,
        width=width if asked.finish.to == "as-welded" else 0.0,
        face=(asked.face_height or None) if asked.finish.to == "as-welded" else None,
    )


def _square(request: JointPlanRequest, parts: Parts) -> Made:
    """Square edges closed tight: the throat is what penetration is proven."""
    if request.proven.depth <= 0.0:
        raise Unworkable("a tight square edge keeps only its penetration, and none is proven")
    asked = _ground(request, parts, _flat_seam(request))
    width = 2.0 * request.proven.depth
    return _seam_made(request, asked, "square edge", _cap(width, LEAST_CAP), width)


def _cap(width: float, height: float) -> weld_sections.PlainArea:
    """Cap over a square edge."""
    return weld_sections.PlainArea("area", float(section_areas.cap_area(W=width, h=height)))


def _face_left(request: JointPlanRequest, parts: Parts) -> Made:
    """Square edges with the face left standing."""
    _as_welded_only(request)
    if at_least(request.proven.depth - request.proven.tolerance, _throat(request)):
        raise Unworkable("no face is needed: the penetration that is proven keeps the throat")
    height = _throat(request) - request.proven.depth + request.proven.tolerance + request.tolerances.face_height
    step = INCH / 32 if request.common.units == "us" else 0.5
    face = float(up(max(height, step), step))
    # So wide that the nearer toe is no closer to the root than the face is high.
    width = 2.0 * face
    asked = _ground(request, parts, _flat_seam(request), face=face, face_width=width)
    return _seam_made(request, asked, "square edge, face left standing", _cap(width, face), width)


def _bevelled(request: JointPlanRequest, parts: Parts) -> Made:
    """Edge bevelled so deep that the finished seam keeps its throat."""
    minimum = rule_set(request.rule_set).groove.minimum_throat(request.thinner)
    required = _throat(request) if minimum is None else max(_throat(request), minimum[0])
    cut = parts.ask_for(
        ("enough",),
        "bevel_depth",
        BevelDepthRequest(
            seam=_flat_seam(request),
            required_throat=required,
            finish=request.finish,
            penetration=request.penetration,
            depth_tolerance=request.tolerances.depth,
            rule_set=request.rule_set,
            process=request.process,
            position=request.position,
            common=common(request),
        ),
    )
    depth = engine(cut["depth"])
    if depth <= 0.0:
        raise Unworkable("no bevel is needed")
    prepared = Preparation(depth, tolerance=request.tolerances.depth)
    asked = _ground(replace(request, required_throat=required), parts, _flat_seam(request), prepared)
    shape = weld_sections.PlainArea("area", engine(cut["area"]))
    size = f"bevel {cut['depth']['text']} deep, setback {cut['setback']['text']}"
    return replace(_seam_made(request, asked, size, shape, engine(cut["setback"])), cuts=1)


def _open(request: JointPlanRequest, parts: Parts, overlap: float) -> Made:
    """Corner opened to a groove by the way its edges meet, filled as far as the finish wants."""
    t_1, t_2 = request.thickness
    kind: Any = "half-open-corner" if overlap else "open-corner"
    sharp = request.finish.to in ("flush", "radius")
    corner = weld_sections.CornerWeld(
        kind, (t_1, t_2), "sharp" if sharp else "flat", request.joint.angle, overlap=overlap
    )
    faults = Faults(Units(request.common.units))
    weld_sections.check(corner, "#", faults)
    if faults:
        raise Unworkable(*(fault.detail for fault in faults))
    seam = Seam(
        kind, (t_1, t_2), request.joint.angle, overlap=overlap, thickness_tolerance=request.tolerances.thickness
    )
    # The sharp corner stands as far over the line between the toes as the root lies under it.
    a, b = corner.sides
    face = float(section.open_corner_toe_line(t_1=a, t_2=b, gamma=pi - request.joint.angle)) if sharp else None
    asked = _ground(request, parts, seam, face=face)
    # Filled sharp, both faces are the plates' own; flat, the face is the line between the toes.
    turn = pi - request.joint.angle
    width = 0.0 if sharp else sqrt(a * a + b * b - 2.0 * a * b * cos(turn))
    return _seam_made(request, asked, f"{kind.replace('-', ' ')}, {'filled' if sharp else 'flat'}", corner, width)


def _open_corner(request: JointPlanRequest, parts: Parts) -> Made:
    """Corner whose inner edges meet."""
    return _open(request, parts, 0.0)


def _half_open_corner(request: JointPlanRequest, parts: Parts) -> Made:
    """Corner that covers half of one edge."""
    if abs(request.joint.angle - pi / 2) > SAME:
        raise Unworkable("a half-open corner is planned at 90 deg")
    return _open(request, parts, HALF_OPEN * request.thickness[0])


def _inside_fillet(request: JointPlanRequest, parts: Parts) -> Made:
    """Fillet inside the corner, which no finish outside touches."""
    _needs_second_side(request)
    required, psi = _throat(request), request.joint.angle
    step = INCH / 16 if request.common.units == "us" else 1.0
    weld = rule_set(request.rule_set).weld
    # Where a rule set has no least size, a fillet is still not to be so small that the plate quenches it.
    least = float(TABLE_J2_4(request.thinner)) if weld is None else float(weld.minimum_leg(request.thinner, psi)[0])
    loose = request.tolerances.legs
    leg = float(up(max(float(section.equal_leg(a=required, psi=psi)) + loose, least), step))
    seam = Seam("fillet", request.thickness, psi, legs=(leg, leg), legs_tolerance=loose)
    asked = _ground(request, parts, seam, finish=Finish("as-welded"))
    made = _seam_made(
        request,
        asked,
        f"{Units(request.common.units).text(leg)} leg inside",
        weld_sections.Fillet("fillet", legs=(leg, leg), angle=psi, root_gap=request.joint.root_gap),
        float(fillet_section.face_width(z_1=leg, z_2=leg, psi=psi)),
    )
    return replace(made, laid="fillet", leg=leg, required_leg=leg)


def _needs_second_side(request: JointPlanRequest) -> None:
    if request.access == "one-side":
        raise Unworkable("needs the second side, and there is access to one only")


def _as_welded_only(request: JointPlanRequest) -> None:
    if request.finish.to != "as-welded":
        raise Unworkable(f"stands out from the finish asked for, {request.finish.to}")


WAYS: Mapping[Kind, Mapping[str, Way]] = MappingProxyType(
    {
        "tee": {
            "fillet-one-side": _one_fillet,
            "fillet-both-sides": _both_fillets,
            "fillet-intermittent": _intermittent,
            "partial-groove": _partial,
            "partial-groove-and-fillet": _partial_and_fillet,
            "full-penetration": _full,
        },
        "lap": {
            "fillet-one-side": _one_fillet,
            "fillet-both-sides": _both_fillets,
            "fillet-intermittent": _intermittent,
        },
        "inside-corner": {"fillet-one-side": _one_fillet},
        "outside-corner": {
            "square-edge": _square,
            "face-left": _face_left,
            "bevelled-edge": _bevelled,
            "half-open-corner": _half_open_corner,
            "open-corner": _open_corner,
            "fillet-inside": _inside_fillet,
        },
        "butt": {
            "square-edge": _square,
            "face-left": _face_left,
            "bevelled-edge": _bevelled,
            "partial-groove": _partial,
            "full-penetration": _full,
        },
    }
)
"""Ways to make each kind of joint, by the name answers call them."""
