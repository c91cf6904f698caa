"""Table 1: limits of surface and geometry by quality level, and where each number was read.

The text of 2014 was not read whole. What was read in another edition says so in its citation, and what was not read at
all is marked.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from ...engine.formula import Source, cite
from ...engine.numeric import Real
from ...engine.rounding import SAME
from . import clause, limits

Level = Literal["b", "c", "d"]
By = Literal["t", "a", "b"]
Origin = Literal["2007", "extract", "1992", "memory"]

THIN = 3.0
"""Thickness, mm, up to which the thin branch of a row holds."""

LEAST_THICKNESS = 0.5
"""Thinnest material of the standard, mm."""

SHORT_SHARE = 0.25
"""Share of the length that a short imperfection may take: 25 mm in any 100 mm, or a quarter of a shorter weld."""


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
    name: str
    by: By
    thin: Mapping[Level, Cell | Words]
    thick: Mapping[Level, Cell | Words]


@dataclass(frozen=True, slots=True)
class Allowed:
    """Limit of an imperfection at a level: ``height`` in mm, None where there is none or nothing is permitted."""

    height: Real | None
    permitted: bool
    short: bool
    source: Source


def _row(
    number: str, name: str, by: By, thick: tuple[Cell | Words, ...], thin: tuple[Cell | Words, ...] | None = None
) -> Row:
    """Build a row from its cells of levels B, C and D; without ``thin`` one set serves all thicknesses."""
    levels: tuple[Level, ...] = ("b", "c", "d")
    of = [MappingProxyType(dict(zip(levels, cells, strict=True))) for cells in (thick if thin is None else thin, thick)]
    return Row(number, name, by, *of)


def _uncapped_misalignment() -> tuple[Cell, ...]:
    return tuple(Cell(0.2, share, origin="memory") for share in (0.1, 0.15, 0.25))


ROWS: Mapping[str, Row] = MappingProxyType(
    {
        "undercut": _row(
            "5011, 5012",
            "undercut",
            "t",
            (Cell(0.0, 0.05, 0.5), Cell(0.0, 0.1, 0.5), Cell(0.0, 0.2, 1.0)),
            (Words(False), Cell(0.0, 0.1, short=True), Cell(0.0, 0.2, short=True)),
        ),
        "excess-weld-metal": _row(
            "502", "excess weld metal", "b", (Cell(1.0, 0.1, 5.0), Cell(1.0, 0.15, 7.0), Cell(1.0, 0.25, 10.0))
        ),
        "convexity": _row(
            "503", "excessive convexity", "b", (Cell(1.0, 0.1, 3.0), Cell(1.0, 0.15, 4.0), Cell(1.0, 0.25, 5.0))
        ),
        "underfill": _row(
            "509, 511",
            "sagging, underfill",
            "t",
            (
                Cell(0.0, 0.05, 0.5, True, "extract"),
                Cell(0.0, 0.1, 1.0, True, "extract"),
                Cell(0.0, 0.25, 2.0, True, "memory"),
            ),
            (
                Words(False, "extract"),
                Cell(0.0, 0.1, short=True, origin="extract"),
                Cell(0.0, 0.25, short=True, origin="memory"),
            ),
        ),
        "asymmetry": _row(
            "512",
            "excessive asymmetry of the legs",
            "a",
            (
                Cell(1.5, 0.15, origin="extract"),
                Cell(2.0, 0.15, origin="extract"),
                Cell(2.0, 0.2, origin="1992"),
            ),
        ),
        "root-concavity": _row(
            "515",
            "root concavity",
            "t",
            (
                Cell(0.0, 0.05, 0.5, True, "extract"),
                Cell(0.0, 0.1, 1.0, True, "extract"),
                Cell(0.0, 0.2, 2.0, True, "memory"),
            ),
            (
                Words(False, "extract"),
                Cell(0.0, 0.1, short=True, origin="memory"),
                Cell(0.2, 0.1, origin="memory"),
            ),
        ),
        "insufficient-throat": _row(
            "5213",
            "insufficient throat",
            "a",
            (Words(False, "extract"), Cell(0.3, 0.1, 1.0, True, "1992"), Cell(0.3, 0.1, 2.0, True, "1992")),
            (
                Words(False, "memory"),
                Cell(0.2, 0.0, short=True, origin="memory"),
                Cell(0.2, 0.1, short=True, origin="memory"),
            ),
        ),
        "excessive-throat": _row(
            "5214",
            "excessive throat",
            "a",
            (Cell(1.0, 0.15, 3.0, origin="extract"), Cell(1.0, 0.2, 4.0, origin="1992"), Words(True, "memory")),
        ),
        "misalignment": _row(
            "5071",
            "linear misalignment of plates",
            "t",
            (
                Cell(0.0, 0.1, 3.0, origin="memory"),
                Cell(0.0, 0.15, 4.0, origin="memory"),
                Cell(0.0, 0.25, 5.0, origin="memory"),
            ),
            _uncapped_misalignment(),
        ),
        "root-gap": _row(
            "617",
            "root gap of a fillet",
            "a",
            (
                Cell(0.5, 0.1, 2.0, origin="1992"),
                Cell(0.5, 0.2, 3.0, origin="1992"),
                Cell(1.0, 0.3, 4.0, origin="1992"),
            ),
            tuple(Cell(constant, 0.1, origin="memory") for constant in (0.2, 0.3, 0.5)),
        ),
    }
)


def limit(row: str, level: Level, *, t: float, x: float) -> Allowed:
    """Limit of a row at a level, for a thickness ``t``, mm; ``x`` is the length the row goes by, mm."""
    found = ROWS[row]
    cell = (found.thin if t <= THIN * (1.0 + SAME) else found.thick)[level]
    source = _source(found, level, cell.origin)
    cite(source)
    if isinstance(cell, Words):
        return Allowed(None, cell.permitted, False, source)
    return Allowed(_height(found.by, cell, x), True, cell.short, source)


def _height(by: By, cell: Cell, x: float) -> Real:
    """Evaluate a cell by the formula of its form."""
    if by == "b":
        return limits.by_width(c_0=cell.c_0, c_1=cell.c_1, b=x, cap=_cap(cell))
    if by == "a":
        if cell.cap is None:
            return limits.by_throat_uncapped(c_0=cell.c_0, c_1=cell.c_1, a=x)
        return limits.by_throat(c_0=cell.c_0, c_1=cell.c_1, a=x, cap=cell.cap)
    if cell.cap is None:
        return limits.by_thickness_uncapped(c_0=cell.c_0, c_1=cell.c_1, t=x)
    return limits.by_thickness(c_0=cell.c_0, c_1=cell.c_1, t=x, cap=cell.cap)


def _cap(cell: Cell) -> float:
    """Cap of a cell that always has one."""
    if cell.cap is None:
        raise ValueError("every limit by width is capped")
    return cell.cap


def _source(row: Row, level: Level, origin: Origin) -> Source:
    """Citation of one cell, with where its number was read."""
    where = f"Table 1, {row.number}, level {level.upper()}"
    if origin == "2007":
        return clause(f"{where}, as read in EN ISO 5817:2007", "second-hand")
    if origin == "extract":
        return clause(f"{where}, as read in an extract", "second-hand")
    if origin == "1992":
        return clause(f"{where}, as read in EN 25817:1992 only", "second-hand")
    return clause(where, "from memory")
