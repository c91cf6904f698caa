"""Request for a weld group, in engine units."""

from dataclasses import dataclass
from math import pi
from typing import Annotated, Any, Literal

from ...practice.weld_patterns import PATTERNS, Piece, arc, line
from ..core.answers import Common
from ..core.quantities import ANGLE, FORCE, LENGTH, MOMENT, Dimension
from ..core.shape import As, By, Form, Many, OneOf, ToldBy, Within, form
from ..joints.given import FORCE_LIMIT, LONGEST, SizeBy, SizeStep
from ..joints.metals import AnyFiller, AnyPart, Parameters
from ..joints.rule_sets import ENTRIES, rule_set

MOST_LINES, MOST_GROUPS = 200, 12
LARGEST_MOMENT = 1e12

Method = Literal["elastic", "instantaneous-centre"]

_EXTENT = Within(LENGTH, 1.0, most=LONGEST)
_Coordinate = Annotated[float, Within(LENGTH, -LONGEST, most=LONGEST)]
_Point = tuple[_Coordinate, _Coordinate]


def _pattern(*, pattern: str, **sizes: float) -> tuple[Piece, ...]:
    """Pieces of a named pattern."""
    return tuple(PATTERNS[pattern](**sizes))


def _pattern_form(name: str, pattern: str, **sizes: Any) -> Form:
    """Form of a named pattern with the sizes it takes."""
    return form(
        name,
        PATTERNS[pattern].__doc__ or "",
        tuple,
        "pattern",
        *sizes,
        makes=_pattern,
        pattern=Literal[pattern],
        **sizes,
    )


def _two_sided(pattern: str) -> Form:
    """Form of a pattern that has a depth and a width."""
    return _pattern_form(
        "".join(word.capitalize() for word in pattern.split("-")) + "Group",
        pattern,
        depth=Annotated[float, _EXTENT, "Extent along y."],
        width=Annotated[float, _EXTENT, "Extent along x."],
    )


def _straight(*, start: tuple[float, float], end: tuple[float, float]) -> Piece:
    return line(*start, *end)


def _arc(*, centre: tuple[float, float], radius: float, start_angle: float, sweep: float) -> Piece:
    return arc(*centre, start_angle, sweep, radius)


PIECE_FORMS = (
    (
        ("centre", "radius", "start_angle", "sweep"),
        form(
            "Arc",
            "Arc of weld.",
            tuple,
            "centre",
            "radius",
            "start_angle",
            "sweep",
            makes=_arc,
            centre=Annotated[_Point, "Its centre: x, then y."],
            radius=Annotated[float, _EXTENT, "Radius."],
            start_angle=Annotated[
                float, Within(ANGLE, -2 * pi, most=2 * pi), "Angle from the x axis at which it starts."
            ],
            sweep=Annotated[float, Within(ANGLE, 0.01, most=2 * pi), "Angle it runs over."],
        ),
    ),
    (
        (),
        form(
            "Straight",
            "Straight line of weld.",
            tuple,
            "start",
            "end",
            makes=_straight,
            start=Annotated[_Point, "Where it starts: x, then y."],
            end=Annotated[_Point, "Where it ends: x, then y."],
        ),
    ),
)
"""A line or an arc as a request describes it."""


def _lines(*, pattern: str, lines: tuple[Piece, ...]) -> tuple[Piece, ...]:
    return lines


GROUP_FORMS: dict[str, Form] = {
    "one-line": _pattern_form("OneLine", "one-line", depth=Annotated[float, _EXTENT, "Length of the line."]),
    **{pattern: _two_sided(pattern) for pattern in PATTERNS if pattern not in ("one-line", "circle")},
    "circle": _pattern_form("Circle", "circle", diameter=Annotated[float, _EXTENT, "Diameter."]),
    "lines": form(
        "LinesGroup",
        "Any lines and arcs, given by their coordinates.",
        tuple,
        "pattern",
        "lines",
        makes=_lines,
        pattern=Literal["lines"],
        lines=Annotated[
            tuple[Annotated[Piece, ToldBy(PIECE_FORMS)], ...],
            Many("lines and arcs", most=MOST_LINES),
            "Lines and arcs.",
        ],
    ),
}
"""A group as a request describes it."""


@dataclass(frozen=True, slots=True)
class Vector:
    """Three components along x, y and z."""

    x: float = 0.0
    y: float = 0.0
    z: float = 0.0


def _vector_form(name: str, words: str, dimension: Dimension, limit: float) -> Form:
    """Form of a vector of one quantity."""
    within = Within(dimension, -limit, most=limit)
    along: dict[str, Any] = {axis: Annotated[float, within, f"Along {axis}."] for axis in ("x", "y", "z")}
    return form(name, words, Vector, *along, **along)


FORCE_VECTOR = _vector_form("ForceVector", "Force along each axis.", FORCE, FORCE_LIMIT)
PLACE = _vector_form("Place", "Place from the origin of the group.", LENGTH, LONGEST)
MOMENT_VECTOR = _vector_form("MomentVector", "Moment about each axis, by the right hand.", MOMENT, LARGEST_MOMENT)


@dataclass(frozen=True, slots=True)
class GroupLoad:
    """Load of all groups together."""

    force: Annotated[Vector, As(FORCE_VECTOR), "Force."] = Vector()
    at: Annotated[Vector, As(PLACE), "Where the force acts, from the origin of the group."] = Vector()
    moment: Annotated[Vector, As(MOMENT_VECTOR), "Moment in addition to that of the force."] = Vector()


@dataclass(frozen=True, slots=True)
class WeldGroupRequest:
    """Weld group to size."""

    rule_set: Annotated[
        str,
        OneOf(tuple(name for name in ENTRIES if rule_set(name).weld is not None)),
        "Rules to size by; see /v1/rule-sets.",
    ]
    group: Annotated[
        tuple[Piece, ...], By("pattern", GROUP_FORMS), "The group: a named pattern, or its lines and arcs."
    ]
    load: Annotated[GroupLoad, "Load of all groups together."]
    parts: Annotated[tuple[AnyPart, AnyPart], "Parts 1 and 2, for the least size and, with EN 1993, the strength."]
    method: Annotated[Method, "Elastic line method, or instantaneous centre for loads in the plane (AISC)."] = "elastic"
    count: Annotated[int, OneOf(tuple(range(1, MOST_GROUPS + 1))), "Equal groups that share the load."] = 1
    filler: AnyFiller | None = None
    parameters: Annotated[Parameters, "Parameters that replace the rule set's own; EN 1993-1-8 only."] = ()
    leg: Annotated[float | None, Within(LENGTH, 0.5, most=100.0), "Leg of the weld, to find what it carries."] = None
    throat: Annotated[float | None, Within(LENGTH, 0.3, most=100.0), "Throat of the weld, instead of the leg."] = None
    size_by: SizeBy | None = None
    size_step: SizeStep | None = None
    common: Common = Common()
