"""Cross-section of a weld's metal: what a request says of its shape, and its area part by part.

Lengths in mm, angles in rad, areas in mm2.
"""

from dataclasses import dataclass
from math import cos, pi, radians, sin, tan
from typing import Annotated, Any, Literal

from ...engine import fillet_section, section
from ...engine.formula import about, off_the_sheet
from ...engine.rounding import SAME, at_least, at_most
from ...practice import groove_fill, weld_sections
from ...standards.aws_d1_1_2020 import s7_21_fit_up
from ..core.faults import Faults
from ..core.quantities import AREA, LENGTH
from ..core.shape import By, Form, Numbered, Within, form, whole_form
from . import grooves
from .given import GROOVE_ANGLE, OVER_NOTHING, PLATE_ANGLE, THICKNESS, UP_TO_100, UP_TO_LARGEST, PartThickness
from .seams import GrooveForm

Fill = Literal["flat", "sharp", "rounded"]
GrooveKind = Literal[
    "square",
    "single-bevel",
    "double-bevel",
    "single-v",
    "double-v",
    "single-j",
    "double-j",
    "single-u",
    "double-u",
]
FORMS: dict[GrooveKind, GrooveForm] = {
    "single-bevel": "single-bevel",
    "double-bevel": "single-bevel",
    "single-v": "single-v",
    "double-v": "single-v",
    "single-j": "single-j",
    "double-j": "single-j",
    "single-u": "single-u",
    "double-u": "single-u",
}
"""Form of groove that each kind has, from one side or from both; a square groove has none."""

STEEPEST = radians(75.0)
"""Largest angle of a cut face."""

BOTH_EDGES: tuple[GrooveForm, ...] = ("single-v", "single-u")
"""Forms that cut both edges."""


_Leg = Annotated[float, THICKNESS, "Leg along one face."]
_Gap = Annotated[float, UP_TO_100, "Root gap."]
_Depth = Annotated[float, OVER_NOTHING, "Depth of one side."]


@dataclass(frozen=True, slots=True)
class Fillet:
    """Fillet."""

    kind: Literal["fillet"]
    legs: Annotated[tuple[_Leg, _Leg] | None, "Legs along the faces of parts 1 and 2; or a throat."] = None
    throat: Annotated[float | None, THICKNESS, "Throat of an equal-leg fillet; or legs."] = None
    angle: Annotated[float, PLATE_ANGLE, "Angle between the plates."] = pi / 2
    leg_excess: Annotated[float, Numbered(0.0, 1.0), "Share added to each leg: 0.1 makes 21 % more metal."] = 0.0
    convexity: Annotated[float | None, UP_TO_100, "Height of the face over the line between its toes."] = None
    hollow: Annotated[float | None, UP_TO_100, "Depth of a hollow face under that line, instead of convexity."] = None
    root_gap: Annotated[float, UP_TO_100, "Root gap; over 1/16 in it makes both legs larger by the whole of it."] = 0.0


@dataclass(frozen=True, slots=True)
class Cap:
    """Cap over a groove."""

    height: Annotated[float, UP_TO_100, "Height over the surface."]
    overlap: Annotated[
        float | None, UP_TO_100, "How far it runs over what the groove opens, both sides together; none when left out."
    ] = None
    width: Annotated[float | None, UP_TO_LARGEST, "Width of the cap, instead of an overlap."] = None


@dataclass(frozen=True, slots=True)
class Reinforcement:
    """Caps of a groove weld."""

    face: Annotated[Cap | None, "On the face, or on side 1."] = None
    root: Annotated[Cap | None, "On the far side, or on side 2."] = None


_Caps = Annotated[Reinforcement, "Caps."]


@dataclass(frozen=True, slots=True)
class BackGouge:
    """Gouge on the far side, filled again."""

    depth: Annotated[float, THICKNESS, "Depth of the gouge."]
    width: Annotated[float, THICKNESS, "Width of the gouge."]


@dataclass(frozen=True, slots=True)
class GrooveWeld:
    """Groove weld. A depth (``depths`` from both sides) without a land is a partial one, its gap filled as deep."""

    kind: GrooveKind
    thickness: Annotated[float, THICKNESS, "Thickness of the part."]
    angle: Annotated[
        float, GROOVE_ANGLE, "Included angle of a V or U; of a bevel or J that of its cut face, up to 75 deg."
    ] = 0.0
    root_gap: _Gap = 0.0
    land: Annotated[
        float | None,
        UP_TO_LARGEST,
        "Land of a groove that goes through; with a depth they add up to the thickness.",
    ] = None
    depth: Annotated[
        float | None,
        OVER_NOTHING,
        "Depth of the groove; without a land it is a partial one, its gap filled as deep.",
    ] = None
    depths: Annotated[
        tuple[_Depth, _Depth] | None,
        "Depths of sides 1 and 2; without a land a partial groove. Halves of what the land leaves, when left out.",
    ] = None
    root_radius: Annotated[float | None, Within(LENGTH, 1.0, most=25.0), "Root radius."] = None
    reinforcement: _Caps = Reinforcement()
    back_gouge: Annotated[BackGouge | None, "Gouge on the far side, filled again; not in a partial groove."] = None

    @property
    def double(self) -> bool:
        """Whether it is prepared from both sides."""
        return self.kind.startswith("double")

    @property
    def given_depths(self) -> tuple[float, ...] | None:
        """Depths that the request gives."""
        return self.depths if self.depth is None else (self.depth,)

    @property
    def full(self) -> bool:
        """Whether it goes through: no depth is given, a land completes it, or both sides meet."""
        depths = self.given_depths
        return depths is None or self.land is not None or bool(at_least(sum(depths), self.thickness))

    @property
    def cut(self) -> tuple[float, ...]:
        """Depth from each side."""
        if self.given_depths is not None:
            return self.given_depths
        through = self.thickness - (self.land or 0.0)
        return (through / 2.0, through / 2.0) if self.double else (through,)

    @property
    def filled(self) -> float:
        """Depth to which the gap is filled."""
        return self.thickness if self.full else sum(self.cut)


@dataclass(frozen=True, slots=True)
class FlareWeld:
    """Round edge against a plane, or two round edges, filled flush."""

    kind: Annotated[Literal["flare-bevel", "flare-v"], "Form."]
    radius: Annotated[float, THICKNESS, "Outside radius of the round edge or edges."]
    root_gap: _Gap = 0.0
    reinforcement: _Caps = Reinforcement()


@dataclass(frozen=True, slots=True)
class CornerWeld:
    """Outside corner."""

    kind: Literal["open-corner", "half-open-corner"]
    thickness: Annotated[tuple[PartThickness, PartThickness], "Thickness of parts 1 and 2."]
    fill: Annotated[
        Fill, "Filled to the line between the toes, to the outer planes, or to a radius tangent to them."
    ] = "flat"
    angle: Annotated[float, PLATE_ANGLE, "Angle between the plates."] = pi / 2
    overlap: Annotated[float, UP_TO_LARGEST, "How far the end of part 1 is covered."] = 0.0
    radius: Annotated[float | None, OVER_NOTHING, 'Radius, with fill "rounded".'] = None
    crown: Annotated[float | None, UP_TO_100, 'Height over the line between the toes, with fill "flat".'] = None

    @property
    def sides(self) -> tuple[float, float]:
        """Distances from the root to the outer planes, along which the toes lie."""
        return self.thickness[0] - self.overlap, self.thickness[1]


@dataclass(frozen=True, slots=True)
class PlainArea:
    """Section known by its area."""

    kind: Literal["area"]
    area: Annotated[float, Within(AREA, 0.1, most=1e5), "Area of the section."]


Shape = Fillet | GrooveWeld | FlareWeld | CornerWeld | PlainArea


def _groove_form(name: str, words: str, kinds: Any, *names: str, **instead: Any) -> Form:
    """Form of some kinds of groove: what every groove has, and the fields that these have beside."""
    whole = ("kind!", "thickness!", "root_gap", "reinforcement", "back_gouge")
    return form(name, words, GrooveWeld, *whole, *names, kind=kinds, **instead)


_CURVED = ("angle!", "root_radius!", "land")
_SINGLE = _groove_form(
    "SingleGrooveShape",
    "Bevel or V groove from one side.",
    Annotated[Literal["single-bevel", "single-v"], "Form."],
    "angle!",
    "land",
    "depth",
)
_DOUBLE = _groove_form(
    "DoubleGrooveShape",
    "Bevel or V grooves from both sides.",
    Annotated[Literal["double-bevel", "double-v"], "Form."],
    "angle!",
    "land",
    "depths",
)
_SINGLE_CURVED = _groove_form(
    "SingleCurvedShape",
    "J or U groove from one side.",
    Annotated[Literal["single-j", "single-u"], "Form."],
    *_CURVED,
    "depth",
)
_DOUBLE_CURVED = _groove_form(
    "DoubleCurvedShape",
    "J or U grooves from both sides.",
    Annotated[Literal["double-j", "double-u"], "Form."],
    *_CURVED,
    "depths",
)
_FLARE = whole_form(FlareWeld, "FlareShape")
_FILLED = ("fill", "radius", "crown")

SHAPE_FORMS: dict[str, Form] = {
    "fillet": whole_form(Fillet, "FilletShape"),
    "square": _groove_form(
        "SquareShape",
        "Square groove.",
        Literal["square"],
        "depth",
        depth=Annotated[float | None, OVER_NOTHING, "Depth to which the gap of a partial one is filled."],
    ),
    "single-bevel": _SINGLE,
    "single-v": _SINGLE,
    "double-bevel": _DOUBLE,
    "double-v": _DOUBLE,
    "single-j": _SINGLE_CURVED,
    "single-u": _SINGLE_CURVED,
    "double-j": _DOUBLE_CURVED,
    "double-u": _DOUBLE_CURVED,
    "flare-bevel": _FLARE,
    "flare-v": _FLARE,
    "open-corner": form(
        "OpenCornerShape",
        "Outside corner whose inner edges meet.",
        CornerWeld,
        "kind!",
        "thickness!",
        "angle",
        *_FILLED,
        kind=Literal["open-corner"],
    ),
    "half-open-corner": form(
        "HalfOpenCornerShape",
        "Outside corner at a right angle, where part 2 covers the end of part 1 in part.",
        CornerWeld,
        "kind!",
        "thickness!",
        "overlap!",
        *_FILLED,
        kind=Literal["half-open-corner"],
    ),
    "area": whole_form(PlainArea, "AreaShape"),
}
"""Shapes of every kind, as a request describes them."""

AnyShape = Annotated[Shape, By("kind", SHAPE_FORMS), "Cross-section of the weld metal."]


@dataclass(frozen=True, slots=True)
class Section:
    """Area of a section and of its parts; the leg of a fillet, the depth of a groove from each side."""

    area: float
    parts: tuple[tuple[str, float], ...]
    leg: float | None = None
    depths: tuple[float, ...] = ()


def check(shape: Shape, pointer: str, faults: Faults) -> None:
    """Find what does not fit together in a shape."""
    if isinstance(shape, Fillet):
        _check_fillet(shape, pointer, faults)
    elif isinstance(shape, GrooveWeld):
        _check_groove(shape, pointer, faults)
    elif isinstance(shape, FlareWeld):
        _check_caps(shape.reinforcement, pointer, faults)
    elif isinstance(shape, CornerWeld):
        _check_corner(shape, pointer, faults)


def measured(shape: Shape) -> Section:
    """Area of a shape that fits together, with its parts."""
    if isinstance(shape, Fillet):
        return _fillet(shape)
    if isinstance(shape, GrooveWeld):
        return _groove(shape)
    if isinstance(shape, FlareWeld):
        return _flare(shape)
    if isinstance(shape, CornerWeld):
        return _corner(shape)
    return Section(shape.area, (("area", shape.area),))


def _check_fillet(shape: Fillet, pointer: str, faults: Faults) -> None:
    if (shape.legs is None) == (shape.throat is None):
        faults.inconsistent(f"{pointer}/legs", "must be sent, or a throat, but not both")
    if shape.convexity is not None and shape.hollow is not None:
        faults.inconsistent(f"{pointer}/hollow", "must not be sent with convexity; send one of the two")
    if not at_most(shape.root_gap, s7_21_fit_up.LARGEST_GAP):
        faults.out_of_scope(
            f"{pointer}/root_gap",
            f"must be at most {faults.units.text(s7_21_fit_up.LARGEST_GAP)}; bring the parts together"
            f" ({s7_21_fit_up.FIT_UP})",
        )
    elif shape.hollow is not None and (shape.legs is None) != (shape.throat is None):
        with off_the_sheet():
            z_1, z_2 = _legs(shape)
            room = float(section.fillet_throat(z_1=z_1, z_2=z_2, psi=shape.angle))
        if shape.hollow >= room:
            faults.inconsistent(
                f"{pointer}/hollow",
                f"must be smaller than the throat of {faults.units.text(room)}; it is"
                f" {faults.units.text(shape.hollow)}",
            )


def _check_groove(shape: GrooveWeld, pointer: str, faults: Faults) -> None:
    """Find depths that do not fit the thickness, a far side that is not there, and a section without metal."""
    before = len(faults)
    if _edges(shape) == 1.0 and not at_most(shape.angle, STEEPEST):
        faults.out_of_range(f"{pointer}/angle", f"must be at most {grooves.degrees(STEEPEST)} deg for a {shape.kind}")
    _check_depths(shape, pointer, faults)
    _check_far_side(shape, pointer, faults)
    _check_caps(shape.reinforcement, pointer, faults)
    if len(faults) > before:
        return
    with off_the_sheet():
        filled = _groove(shape)
        widths = _widths(shape, _cuts(shape))
    caps = shape.reinforcement
    for name, cap, width in zip(("face", "root"), (caps.face, caps.root), widths, strict=True):
        if cap is not None and cap.height > 0.0 and width <= 0.0:
            faults.inconsistent(
                f"{pointer}/reinforcement/{name}",
                "needs a width or an overlap, because the groove does not open on this face",
            )
    if filled.area <= 0.0 and len(faults) == before:
        faults.inconsistent(pointer, "must have metal to fill: send a gap, a cap, a back-gouge or a depth")


def _check_depths(shape: GrooveWeld, pointer: str, faults: Faults) -> None:
    depths, land = shape.given_depths, shape.land
    thickness = faults.units.text(shape.thickness)
    if depths is not None and not at_most(sum(depths), shape.thickness):
        where = "depths" if shape.double else "depth"
        faults.inconsistent(f"{pointer}/{where}", f"must be at most the thickness of {thickness}")
    elif depths is not None and land is not None and not _same(sum(depths) + land, shape.thickness):
        faults.inconsistent(
            f"{pointer}/land",
            f"must add up with the depth to the thickness of {thickness}; leave out the depth, or the land of a groove"
            " that does not go through",
        )
    elif depths is None and land is not None and land >= shape.thickness:
        faults.inconsistent(f"{pointer}/land", f"must be smaller than the thickness of {thickness}")


def _check_far_side(shape: GrooveWeld, pointer: str, faults: Faults) -> None:
    if not shape.full and not shape.double and shape.reinforcement.root is not None:
        faults.inconsistent(
            f"{pointer}/reinforcement/root", "does not apply to a groove that does not go through; leave it out"
        )
    if shape.back_gouge is None:
        return
    if not shape.full:
        faults.inconsistent(
            f"{pointer}/back_gouge", "does not apply to a groove that does not go through; leave it out"
        )
    elif not at_most(shape.back_gouge.depth, shape.thickness):
        faults.inconsistent(
            f"{pointer}/back_gouge/depth", f"must be at most the thickness of {faults.units.text(shape.thickness)}"
        )


def _check_caps(caps: Reinforcement, pointer: str, faults: Faults) -> None:
    for name, cap in (("face", caps.face), ("root", caps.root)):
        if cap is not None and cap.overlap is not None and cap.width is not None:
            faults.inconsistent(
                f"{pointer}/reinforcement/{name}/overlap", "must not be sent with a width; send one of the two"
            )


def _check_corner(shape: CornerWeld, pointer: str, faults: Faults) -> None:
    """Sides that are there, and a blend that runs out on the weld."""
    if shape.overlap >= shape.thickness[0]:
        faults.inconsistent(
            f"{pointer}/overlap",
            "must be smaller than the thickness of part 1; an overlap of the whole end closes the corner",
        )
        return
    if (shape.fill == "rounded") != (shape.radius is not None):
        faults.inconsistent(f"{pointer}/radius", 'is required with fill "rounded", and applies to no other fill')
    if shape.crown is not None and shape.fill != "flat":
        faults.inconsistent(f"{pointer}/crown", 'applies to fill "flat" only; leave it out')
    if shape.fill == "flat":
        return
    gamma = pi - shape.angle
    (u, v), room = shape.sides, _to_sharp(shape)
    if min(room) <= 0.0:
        faults.inconsistent(
            f"{pointer}/fill",
            f'must be "flat" here: the outer planes do not meet beyond sides of {faults.units.text(u)} and'
            f" {faults.units.text(v)}",
        )
    elif shape.radius is not None and not at_most(shape.radius * tan(gamma / 2.0), min(room)):
        largest = min(room) / tan(gamma / 2.0)
        faults.inconsistent(
            f"{pointer}/radius", f"must be at most {faults.units.text(largest)}, so that the blend ends on the weld"
        )


def _same(one: float, other: float) -> bool:
    return bool(at_most(one, other) and at_most(other, one))


def _legs(shape: Fillet) -> tuple[float, float]:
    """Legs as they are laid: larger by their excess, and by a gap that a larger leg has to make up for."""
    if shape.legs is None:
        leg = float(section.equal_leg(a=shape.throat or 0.0, psi=shape.angle))
        legs = (leg, leg)
    else:
        legs = shape.legs
    added = 0.0
    if shape.root_gap:
        added = float(s7_21_fit_up.leg_added(g=shape.root_gap, g_free=s7_21_fit_up.FREE_GAP, same=SAME))
    share = 1.0 + shape.leg_excess
    return legs[0] * share + added, legs[1] * share + added


def _fillet(shape: Fillet) -> Section:
    """Triangle between the legs, and a parabola on or under its face."""
    z_1, z_2 = _legs(shape)
    face = (shape.convexity or 0.0) - (shape.hollow or 0.0)
    return _triangle("fillet", z_1, z_2, shape.angle, face, max(z_1, z_2))


def _triangle(name: str, side_1: float, side_2: float, angle: float, face: float, leg: float | None) -> Section:
    """Section between two sides from the root, with a parabola over the line between their ends."""
    b = float(fillet_section.face_width(z_1=side_1, z_2=side_2, psi=angle))
    area = float(fillet_section.area(z_1=side_1, z_2=side_2, psi=angle, b=b, f=face))
    with off_the_sheet():
        flat = float(fillet_section.area(z_1=side_1, z_2=side_2, psi=angle, b=b, f=0.0))
    return Section(area, ((name, flat), ("face", area - flat)) if face else ((name, flat),), leg)


def _cuts(shape: GrooveWeld) -> list[grooves.Cut]:
    """Cut from each side; none in a square groove."""
    if shape.kind == "square":
        return []
    form, cuts = FORMS[shape.kind], []
    for side, depth in enumerate(shape.cut, start=1):
        with about(f"side {side}"):
            cuts.append(grooves.cut(form, shape.angle, depth, form in BOTH_EDGES, shape.root_radius))
    return cuts


def _edges(shape: GrooveWeld) -> float:
    """How many edges are cut from each side."""
    return 2.0 if shape.kind != "square" and FORMS[shape.kind] in BOTH_EDGES else 1.0


def _widths(shape: GrooveWeld, cuts: list[grooves.Cut]) -> tuple[float, float]:
    """Width of both caps; on the far side of a groove from one side only the gap opens."""
    # Without a cut, nothing but the gap.
    opened = [_edges(shape) * cut.setback for cut in cuts] + [0.0, 0.0]
    caps = shape.reinforcement
    return _width(caps.face, shape.root_gap, opened[0]), _width(caps.root, shape.root_gap, opened[1])


def _width(cap: Cap | None, gap: float, opened: float) -> float:
    """Width of one cap, given or over what opens."""
    if cap is None:
        return 0.0
    if cap.width is not None:
        return cap.width
    return float(weld_sections.cap_width(g=gap, s_W=opened, o=cap.overlap or 0.0))


def _caps(caps: Reinforcement, widths: tuple[float, float]) -> tuple[float, float]:
    """Areas of the caps on the face and on the far side."""
    areas = []
    for name, cap, width in (("face", caps.face, widths[0]), ("root", caps.root, widths[1])):
        with about(name):
            areas.append(0.0 if cap is None else float(weld_sections.cap_area(W=width, h=cap.height)))
    return areas[0], areas[1]


def _groove(shape: GrooveWeld) -> Section:
    """What is cut off the edges, the gap, the caps and the gouge."""
    cuts, edges = _cuts(shape), _edges(shape)
    fill = 0.0
    if cuts:
        areas = [cut.area / edges for cut in cuts] + [0.0]
        fill = float(weld_sections.groove_fill(n=edges, A_g1=areas[0], A_g2=areas[1]))
    gouge = shape.back_gouge
    return _put_together(
        fill,
        gap=(shape.root_gap, shape.filled),
        caps=_caps(shape.reinforcement, _widths(shape, cuts)),
        gouge=0.0 if gouge is None else float(groove_fill.gouged(h=gouge.depth, w=gouge.width)),
        depths=shape.cut,
    )


def _flare(shape: FlareWeld) -> Section:
    """Round edges to the plane that touches them; on that plane they open as wide as they are round."""
    edges = 1.0 if shape.kind == "flare-bevel" else 2.0
    caps = shape.reinforcement
    widths = _width(caps.face, shape.root_gap, edges * shape.radius), _width(caps.root, shape.root_gap, 0.0)
    return _put_together(
        float(groove_fill.flare_fill(k=edges, R=shape.radius, h=shape.radius)),
        gap=(shape.root_gap, shape.radius),
        caps=_caps(caps, widths),
        gouge=0.0,
        depths=(shape.radius,),
    )


def _put_together(
    fill: float, gap: tuple[float, float], caps: tuple[float, float], gouge: float, depths: tuple[float, ...]
) -> Section:
    """Whole section of a groove of any kind, without the parts that are not there."""
    strip = float(weld_sections.gap_area(g=gap[0], t_g=gap[1])) if gap[0] else 0.0
    area = float(
        weld_sections.section_area(A_fill=fill, A_blend=0.0, A_gap=strip, A_face=caps[0], A_root=caps[1], A_bg=gouge)
    )
    parts = (("groove", fill), ("gap", strip), ("face", caps[0]), ("root", caps[1]), ("back-gouge", gouge))
    return Section(area, tuple((name, part) for name, part in parts if part), depths=depths)


def _to_sharp(shape: CornerWeld) -> tuple[float, float]:
    """Distances from the toes, along the outer planes, to where these meet."""
    gamma = pi - shape.angle
    u, v = shape.sides
    return (v - u * cos(gamma)) / sin(gamma), (u - v * cos(gamma)) / sin(gamma)


def _corner(shape: CornerWeld) -> Section:
    """Flat between the toes, or filled to the outer planes, sharp or blended."""
    u, v = shape.sides
    gamma = pi - shape.angle
    if shape.fill == "flat":
        return _triangle("corner", u, v, gamma, shape.crown or 0.0, None)
    fill = float(weld_sections.sharp_corner_area(t_1=u, t_2=v, gamma=gamma))
    left_out = 0.0
    if shape.radius is not None:
        left_out = float(weld_sections.blend_area(R=shape.radius, gamma=gamma))
    area = float(weld_sections.section_area(A_fill=fill, A_blend=left_out, A_gap=0.0, A_face=0.0, A_root=0.0, A_bg=0.0))
    return Section(area, (("corner", area),))
