"""Table 1: limits of surface and geometry by quality level, and where each number was read.

The text of 2014 was not read whole. What was read in another edition says so in its citation, and what was not read at
all is marked.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import radians
from types import MappingProxyType
from typing import Literal

from ...engine.formula import Source
from ...engine.numeric import Real
from ...engine.rounding import SAME
from . import clause, limits

Level = Literal["b", "c", "d"]
LEVELS: tuple[Level, ...] = ("b", "c", "d")
By = Literal["t", "a", "b", "nominal"]
Origin = Literal["2014", "2007", "2003", "1992", "memory", "tighter"]

THIN = 3.0
"""Thickness, mm, up to which the thin branch of a row holds."""

LEAST_THICKNESS = 0.5
"""Thinnest material of the standard, mm."""


@dataclass(frozen=True, slots=True)
class Cell:
    """One limit: ``c_0 + c_1*x``, mm, at most ``cap``; ``short`` when only short imperfections may reach it."""

    c_0: float
    c_1: float
    cap: float | None = None
    short: bool = False
    origin: Origin = "2007"


@dataclass(frozen=True, slots=True)
class Words:
    """A limit that is no length: not permitted at all, or without limit."""

    permitted: bool
    origin: Origin = "2007"


@dataclass(frozen=True, slots=True)
class Row:
    """One imperfection: its numbers of ISO 6520-1, what its limit goes by, and cells for thin and thick material."""

    number: str
    by: By
    thin: Mapping[Level, Cell | Words]
    thick: Mapping[Level, Cell | Words]


@dataclass(frozen=True, slots=True)
class Sizes:
    """What limits go by, mm: thickness; nominal throat of a fillet or thickness of a butt weld; width of face or root.

    ``a`` is the fillet's and ``s`` the butt's: a weld has one of them.
    """

    t: float
    a: float | None = None
    s: float | None = None
    b: float | None = None


@dataclass(frozen=True, slots=True)
class Allowed:
    """Limit of an imperfection at a level: ``height`` in mm, None where there is none or nothing is permitted."""

    height: Real | None
    permitted: bool
    short: bool
    source: Source


Cells = tuple[Cell | Words, Cell | Words, Cell | Words]


def _row(number: str, by: By, thick: Cells, thin: Cells | None = None) -> Row:
    """Build a row from its cells of levels B, C and D; without ``thin`` one set serves all thicknesses."""
    of = [MappingProxyType(dict(zip(LEVELS, cells, strict=True))) for cells in (thick if thin is None else thin, thick)]
    return Row(number, by, *of)


def _recalled(*cells: tuple[float, float, float | None]) -> Cells:
    """Cells of a row recalled whole: constant, share and cap of each level."""
    b, c, d = (Cell(*cell, origin="memory") for cell in cells)
    return b, c, d


_NONE = Words(False, "memory")
_NEVER: Cells = (_NONE, _NONE, _NONE)

ROWS: Mapping[str, Row] = MappingProxyType(
    {
        "crack": _row("100, 104", "t", _NEVER),
        "lack-of-fusion": _row("401", "nominal", (_NONE, _NONE, Cell(0.0, 0.4, 4.0, True, "memory"))),
        "incomplete-penetration": _row(
            "402, partial penetration",
            "nominal",
            (Words(False, "1992"), Cell(0.0, 0.1, 1.5, True, "1992"), Cell(0.0, 0.2, 2.0, True, "memory")),
        ),
        "incomplete-penetration-fillet": _row(
            "402, fillet", "nominal", (_NONE, _NONE, Cell(0.0, 0.2, 2.0, True, "memory"))
        ),
        "incomplete-penetration-full": _row(
            "402, full penetration", "t", (_NONE, _NONE, Cell(0.0, 0.2, 2.0, True, "memory"))
        ),
        "incomplete-root": _row("4021", "t", (Words(False), Words(False), Cell(0.0, 0.2, 2.0, True))),
        "undercut": _row(
            "5011, 5012",
            "t",
            (Cell(0.0, 0.05, 0.5), Cell(0.0, 0.1, 0.5), Cell(0.0, 0.2, 1.0)),
            (Words(False), Cell(0.0, 0.1, short=True), Cell(0.0, 0.2, short=True)),
        ),
        "shrinkage-groove": _row(
            "5013",
            "t",
            (Cell(0.0, 0.05, 0.5, True), Cell(0.0, 0.1, 1.0, True), Cell(0.0, 0.2, 2.0, True)),
            (Words(False), Cell(0.0, 0.1, short=True), Cell(0.2, 0.1)),
        ),
        "reinforcement": _row(
            "502", "b", (Cell(1.0, 0.1, 5.0), Cell(1.0, 0.15, 7.0, origin="2014"), Cell(1.0, 0.25, 10.0, origin="2014"))
        ),
        "convexity": _row("503", "b", (Cell(1.0, 0.1, 3.0), Cell(1.0, 0.15, 4.0), Cell(1.0, 0.25, 5.0))),
        "excess-penetration": _row(
            "504",
            "b",
            (Cell(1.0, 0.2, 3.0), Cell(1.0, 0.6, 4.0), Cell(1.0, 1.0, 5.0)),
            (Cell(1.0, 0.1), Cell(1.0, 0.3), Cell(1.0, 0.6)),
        ),
        "overlap": _row("506", "b", (Words(False, "2014"), Words(False, "2003"), Cell(0.0, 0.2, origin="memory"))),
        "misalignment": _row(
            "5071",
            "t",
            _recalled((0.0, 0.1, 3.0), (0.0, 0.15, 4.0), (0.0, 0.25, 5.0)),
            _recalled((0.2, 0.1, None), (0.2, 0.15, None), (0.2, 0.25, None)),
        ),
        "misalignment-circumferential": _row("5072", "t", _recalled((0.0, 0.5, 2.0), (0.0, 0.5, 3.0), (0.0, 0.5, 4.0))),
        "underfill": _row(
            "509, 511",
            "t",
            (
                Cell(0.0, 0.05, 0.5, True, "2014"),
                Cell(0.0, 0.1, 1.0, True, "2003"),
                Cell(0.0, 0.25, 2.0, True, "memory"),
            ),
            (
                Words(False, "2014"),
                Cell(0.0, 0.1, short=True, origin="2003"),
                Cell(0.0, 0.25, short=True, origin="memory"),
            ),
        ),
        "burn-through": _row("510", "t", _NEVER),
        "asymmetry": _row(
            "512",
            "a",
            (Cell(1.5, 0.15, origin="2014"), Cell(2.0, 0.15, origin="2003"), Cell(2.0, 0.2, origin="1992")),
        ),
        "root-concavity": _row(
            "515",
            "t",
            (
                Cell(0.0, 0.05, 0.5, True, "2014"),
                Cell(0.0, 0.1, 1.0, True, "2003"),
                Cell(0.0, 0.2, 2.0, True, "memory"),
            ),
            (Words(False, "2014"), Cell(0.0, 0.1, short=True, origin="tighter"), Cell(0.2, 0.1, origin="memory")),
        ),
        "insufficient-throat": _row(
            "5213",
            "a",
            (Words(False, "2014"), Cell(0.3, 0.1, 1.0, True, "1992"), Cell(0.3, 0.1, 2.0, True, "1992")),
            (_NONE, Cell(0.2, 0.0, short=True, origin="memory"), Cell(0.2, 0.1, short=True, origin="memory")),
        ),
        "excessive-throat": _row(
            "5214",
            "a",
            (Cell(1.0, 0.15, 3.0, origin="2014"), Cell(1.0, 0.2, 4.0, origin="1992"), Words(True, "memory")),
        ),
        "root-gap": _row(
            "617",
            "a",
            (
                Cell(0.5, 0.1, 2.0, origin="1992"),
                Cell(0.5, 0.2, 3.0, origin="1992"),
                Cell(1.0, 0.3, 4.0, origin="1992"),
            ),
            _recalled((0.2, 0.1, None), (0.3, 0.1, None), (0.5, 0.1, None)),
        ),
        "internal-pore": _row("2011, 2012", "nominal", _recalled((0.0, 0.2, 3.0), (0.0, 0.3, 4.0), (0.0, 0.4, 5.0))),
        "surface-pore": _row(
            "2017",
            "nominal",
            (Words(False, "2014"), Cell(0.0, 0.2, 2.0, origin="2014"), Cell(0.0, 0.3, 3.0, origin="2014")),
            (Words(False, "2014"), Words(False, "2014"), Cell(0.0, 0.3, origin="2014")),
        ),
        "end-crater-pipe": _row(
            "2025",
            "t",
            (Words(False, "2014"), Cell(0.0, 0.1, 1.0, origin="2014"), Cell(0.0, 0.2, 2.0, origin="2014")),
            (Words(False, "2014"), Words(False, "2014"), Cell(0.0, 0.2, origin="2014")),
        ),
    }
)
"""Limits of every imperfection by name."""

_BUTT_TOE = {"b": (150.0, "2014"), "c": (110.0, "2003"), "d": (90.0, "memory")}
_FILLET_TOE = {"b": (110.0, "2014"), "c": (100.0, "2003"), "d": (90.0, "memory")}


def limit(row: str, level: Level, sizes: Sizes) -> Allowed:
    """Limit of a row at a level.

    Raises ``ValueError`` when ``sizes`` lacks what the row goes by.
    """
    found = ROWS[row]
    cell = (found.thin if sizes.t <= THIN * (1.0 + SAME) else found.thick)[level]
    source = _source(found.number, level, cell.origin)
    if isinstance(cell, Words):
        return Allowed(None, cell.permitted, False, source)
    return Allowed(_height(found.by, cell, sizes), True, cell.short, source)


def least_toe_angle(level: Level, fillet: bool) -> tuple[float, Source]:
    """Least angle between plate and weld face at the toe (505), rad, with its citation."""
    degrees, origin = (_FILLET_TOE if fillet else _BUTT_TOE)[level]
    source = _source(f"505, {'fillet' if fillet else 'butt'}", level, origin)  # type: ignore[arg-type]
    return radians(degrees), source


def _height(by: By, cell: Cell, sizes: Sizes) -> Real:
    """Evaluate a cell by the formula of its form."""
    c_0, c_1, cap = cell.c_0, cell.c_1, cell.cap
    if by == "b" and sizes.b is not None:
        if cap is None:
            return limits.by_width_uncapped(c_0=c_0, c_1=c_1, b=sizes.b)
        return limits.by_width(c_0=c_0, c_1=c_1, b=sizes.b, cap=cap)
    if by in ("a", "nominal") and sizes.a is not None:
        if cap is None:
            return limits.by_throat_uncapped(c_0=c_0, c_1=c_1, a=sizes.a)
        return limits.by_throat(c_0=c_0, c_1=c_1, a=sizes.a, cap=cap)
    if by == "nominal" and sizes.s is not None:
        if cap is None:
            return limits.by_butt_thickness_uncapped(c_0=c_0, c_1=c_1, s=sizes.s)
        return limits.by_butt_thickness(c_0=c_0, c_1=c_1, s=sizes.s, cap=cap)
    if by != "t":
        raise ValueError(f"a limit by {by} needs a size that is not there: {sizes}")
    if cap is None:
        return limits.by_thickness_uncapped(c_0=c_0, c_1=c_1, t=sizes.t)
    return limits.by_thickness(c_0=c_0, c_1=c_1, t=sizes.t, cap=cap)


_READ: Mapping[Origin, Source] = MappingProxyType(
    {
        "2014": clause(", as read in an extract of 2014 or later", "second-hand"),
        "2007": clause(", as read in EN ISO 5817:2007", "second-hand"),
        "2003": clause(", as read in an extract of the edition of 2003", "second-hand"),
        "1992": clause(", as read in EN 25817:1992 only", "second-hand"),
        "memory": clause("", "from memory"),
        "tighter": clause(", short only; an extract of 2003 does not say short, the tighter is taken", "from memory"),
    }
)
"""What the citation of a cell says of where its number was read."""


def _source(number: str, level: Level, origin: Origin) -> Source:
    """Citation of one cell, with where its number was read."""
    read = _READ[origin]
    return replace(read, clause=f"Table 1, {number}, level {level.upper()}{read.clause}")
