"""Cited reference data: materials, filler metals, welding processes, positions, preparations and rates.

Every data file in `data/` is a CSV in the units of the standard its figures come from, with a TOML beside it that says
where they come from, what each column holds and what the CSV's SHA-256 is. All of it is read, checked and converted to
engine units (mm, MPa) once, when this module is imported; a file that does not match its description stops the import.
"""

import csv
import hashlib
import math
import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from importlib.resources import files
from itertools import pairwise
from types import MappingProxyType
from typing import Any, Final, Literal, TypeVar, cast, get_args

from ..engine.units import LENGTHS, STRESSES

Mark = Literal["seen", "second-hand", "from memory", "common practice, no source"]
Family = Literal["carbon-steel", "stainless", "aluminium"]
Form = Literal["plate", "shape", "hollow-section", "pipe", "any"]
Orientation = Literal["flat", "horizontal", "vertical", "overhead"]

# Surest first; whatever is put together from several rows is as sure as the least sure of them.
MARKS: Final[tuple[Mark, ...]] = get_args(Mark)

# A thickness that went through another unit and back still belongs to the band whose limit it sits on.
_SAME: Final = 1e-9

_Choice = TypeVar("_Choice", bound=str)


class DataFault(RuntimeError):
    """A data file is not what the description beside it says."""


class NoBand(LookupError):
    """The standard gives no strength for this thickness; `limit` says where its figures end."""

    def __init__(self, material: str, thickness: float, limit: str, source: str) -> None:
        super().__init__(material, thickness, limit, source)
        self.material = material
        self.thickness = thickness
        self.limit = limit
        self.source = source

    def __str__(self) -> str:
        return self.text(f"{self.thickness:g} mm")

    def text(self, thickness: str) -> str:
        """What is wrong, with the thickness as the reader has it."""
        return f"{self.material}: {self.source} gives strengths {self.limit}, and none for {thickness}"


@dataclass(frozen=True, slots=True)
class MaterialBand:
    """Strengths of a material over `thickness_over` up to and including `thickness_to` (mm, MPa).

    `thickness_to` is None where the figures have no upper limit. `limits` is the band in the standard's own unit, for
    messages. The welded strengths (beside a weld, aluminium only) are None for everything else.
    """

    thickness_over: float
    thickness_to: float | None
    limits: str
    yield_strength: float
    tensile_strength: float
    welded_yield_strength: float | None
    welded_tensile_strength: float | None
    mark: Mark
    source: str

    def holds(self, thickness_mm: float) -> bool:
        """Whether a thickness lies in this band; a thickness on a limit belongs to the thinner band."""
        if not (math.isfinite(thickness_mm) and thickness_mm > self.thickness_over * (1 + _SAME)):
            return False
        return self.thickness_to is None or thickness_mm <= self.thickness_to * (1 + _SAME)


@dataclass(frozen=True, slots=True)
class Material:
    """A base metal with its strengths by thickness.

    `limits` says, in the standard's own unit, which thicknesses all bands together cover. `beta_w` is None where
    EN 1993-1-8:2005 Table 4.1 has no row for the grade. `mark` is that of the least sure band, `source` names every
    source of the bands, that of `beta_w` apart.
    """

    id: str
    standard: str
    family: Family
    form: Form
    bands: tuple[MaterialBand, ...]
    limits: str
    beta_w: float | None
    density_kg_m3: float
    mark: Mark
    source: str

    def at(self, thickness_mm: float) -> MaterialBand:
        """Return the band that holds a thickness; raise `NoBand` where the standard gives no strength."""
        for band in self.bands:
            if band.holds(thickness_mm):
                return band
        raise NoBand(self.id, thickness_mm, self.limits, self.source)


@dataclass(frozen=True, slots=True)
class FillerMetal:
    """A filler metal class, or an electrode or wire that belongs to one.

    `tensile_strength` (MPa) is the least the classification asks of all-weld metal; `yield_strength` is None where the
    data do not give one. `processes` holds process ids and is empty for a class that is made for several.
    """

    id: str
    standard: str
    family: Family
    processes: tuple[str, ...]
    tensile_strength: float
    yield_strength: float | None
    matches: str
    density_kg_m3: float
    mark: Mark
    source: str


@dataclass(frozen=True, slots=True)
class Process:
    """A welding process under its AWS letters, with every ISO 4063 number that means it."""

    id: str
    title: str
    iso_4063: tuple[str, ...]
    also: tuple[str, ...]
    mark: Mark
    source: str


@dataclass(frozen=True, slots=True)
class Position:
    """A welding position code with the orientation it stands for and the codes of the other system it answers to."""

    id: str
    title: str
    orientation: Orientation
    equivalents: tuple[str, ...]
    mark: Mark
    source: str


def _choice(text: str, allowed: tuple[_Choice, ...], where: str) -> _Choice:
    """Return text as one of the allowed words."""
    for word in allowed:
        if text == word:
            return word
    raise DataFault(f"{where}: {text!r} is none of {', '.join(allowed)}")


def _convert(text: str, unit: str, factors: Mapping[str, Fraction], where: str) -> float:
    """Convert a printed figure to the engine's unit, rounding once: decimal text times an exact factor."""
    if unit not in factors:
        raise DataFault(f"{where}: no unit {unit!r}; known: {', '.join(factors)}")
    return float(Fraction(text) * factors[unit])


def _convert_or_none(text: str, unit: str, factors: Mapping[str, Fraction], where: str) -> float | None:
    """Convert a printed figure, or return None for an empty cell."""
    return _convert(text, unit, factors, where) if text else None


def _read(name: str) -> list[dict[str, str]]:
    """Rows of a data file, held against its description."""
    folder = files(__package__) / "data"
    about: dict[str, Any] = tomllib.loads((folder / f"{name}.toml").read_text(encoding="utf-8"))
    raw = (folder / f"{name}.csv").read_bytes()
    sha256 = hashlib.sha256(raw).hexdigest()
    if sha256 != about["sha256"]:
        raise DataFault(f"{name}.csv has the SHA-256 {sha256}, {name}.toml says {about['sha256']}")
    reader = csv.DictReader(raw.decode("utf-8").splitlines(), strict=True)
    rows = list(reader)
    if list(reader.fieldnames or ()) != list(about["columns"]):
        raise DataFault(f"{name}.csv has other columns than {name}.toml describes: {reader.fieldnames}")
    for number, row in enumerate(rows, start=2):
        # DictReader keeps cells beyond the header under None and fills missing ones with None.
        if None in row or None in row.values():
            raise DataFault(f"{name}.csv line {number}: not {len(about['columns'])} cells")
    return rows


def _limits(over: str, to: str, unit: str) -> str:
    """Word a band in the standard's own unit."""
    if over and to:
        return f"over {over} up to {to} {unit}"
    if to:
        return f"up to {to} {unit}"
    return f"over {over or '0'} {unit}, without an upper limit"


def _band(row: Mapping[str, str]) -> MaterialBand:
    """Make a band of one row of materials.csv."""
    where = f"materials.csv, {row['id']}"
    length, stress = row["length_unit"], row["stress_unit"]
    return MaterialBand(
        thickness_over=_convert(row["thickness_over"] or "0", length, LENGTHS, where),
        thickness_to=_convert_or_none(row["thickness_to"], length, LENGTHS, where),
        limits=_limits(row["thickness_over"], row["thickness_to"], length),
        yield_strength=_convert(row["yield_strength"], stress, STRESSES, where),
        tensile_strength=_convert(row["tensile_strength"], stress, STRESSES, where),
        welded_yield_strength=_convert_or_none(row["welded_yield_strength"], stress, STRESSES, where),
        welded_tensile_strength=_convert_or_none(row["welded_tensile_strength"], stress, STRESSES, where),
        mark=_choice(row["mark"], MARKS, where),
        source=row["source"],
    )


# What all bands of one material share; a row that says otherwise is a slip in the file.
_PER_MATERIAL: Final = (
    "standard",
    "family",
    "form",
    "length_unit",
    "beta_w",
    "beta_w_mark",
    "beta_w_source",
    "density_kg_m3",
)


def _material(rows: list[dict[str, str]]) -> Material:
    """Put the rows of one material together."""
    first, where = rows[0], f"materials.csv, {rows[0]['id']}"
    for row in rows:
        for column in _PER_MATERIAL:
            if row[column] != first[column]:
                raise DataFault(f"{where}: its rows disagree in {column}")
    bands = tuple(_band(row) for row in rows)
    for thinner, thicker in pairwise(bands):
        if thicker.thickness_over != thinner.thickness_to:
            raise DataFault(f"{where}: its bands leave a gap or overlap at {thicker.limits}")
    return Material(
        id=first["id"],
        standard=first["standard"],
        family=_choice(first["family"], cast(tuple[Family, ...], get_args(Family)), where),
        form=_choice(first["form"], cast(tuple[Form, ...], get_args(Form)), where),
        bands=bands,
        limits=_limits(first["thickness_over"], rows[-1]["thickness_to"], first["length_unit"]),
        beta_w=float(first["beta_w"]) if first["beta_w"] else None,
        density_kg_m3=float(first["density_kg_m3"]),
        mark=max((band.mark for band in bands), key=MARKS.index),
        source="; ".join(dict.fromkeys(band.source for band in bands)),
    )


def _materials(rows: list[dict[str, str]]) -> Iterator[Material]:
    """Group the rows by material, in the order of the file."""
    grouped: dict[str, list[dict[str, str]]] = {}
    for row in rows:
        grouped.setdefault(row["id"], []).append(row)
    for group in grouped.values():
        yield _material(group)


def _filler_metal(row: Mapping[str, str]) -> FillerMetal:
    """Make a filler metal of one row of filler_metals.csv."""
    where = f"filler_metals.csv, {row['id']}"
    return FillerMetal(
        id=row["id"],
        standard=row["standard"],
        family=_choice(row["family"], cast(tuple[Family, ...], get_args(Family)), where),
        processes=tuple(row["processes"].split()),
        tensile_strength=_convert(row["tensile_strength"], row["stress_unit"], STRESSES, where),
        yield_strength=_convert_or_none(row["yield_strength"], row["stress_unit"], STRESSES, where),
        matches=row["matches"],
        density_kg_m3=float(row["density_kg_m3"]),
        mark=_choice(row["mark"], MARKS, where),
        source=row["source"],
    )


def _process(row: Mapping[str, str]) -> Process:
    """Make a process of one row of processes.csv."""
    return Process(
        id=row["id"],
        title=row["title"],
        iso_4063=tuple(row["iso_4063"].split()),
        also=tuple(row["also"].split()),
        mark=_choice(row["mark"], MARKS, f"processes.csv, {row['id']}"),
        source=row["source"],
    )


def _position(row: Mapping[str, str]) -> Position:
    """Make a position of one row of positions.csv."""
    where = f"positions.csv, {row['id']}"
    return Position(
        id=row["id"],
        title=row["title"],
        orientation=_choice(row["orientation"], cast(tuple[Orientation, ...], get_args(Orientation)), where),
        equivalents=tuple(row["equivalents"].split()),
        mark=_choice(row["mark"], MARKS, where),
        source=row["source"],
    )


_Entry = TypeVar("_Entry", Material, FillerMetal, Process, Position)


def _by_id(entries: list[_Entry]) -> Mapping[str, _Entry]:
    """Index entries by id, read-only, in the order of the file."""
    found: dict[str, _Entry] = {}
    for entry in entries:
        if entry.id in found:
            raise DataFault(f"{type(entry).__name__} {entry.id!r} stands twice")
        found[entry.id] = entry
    return MappingProxyType(found)


def _by_code(processes: Mapping[str, Process]) -> Mapping[str, Process]:
    """Index processes by every code that means them: ids first, then ISO 4063 numbers, then other letters."""
    codes: dict[str, Process] = dict(processes)
    for entry in processes.values():
        for code in (*entry.iso_4063, *entry.also):
            if code in codes:
                raise DataFault(f"process code {code!r} stands for {codes[code].id} and {entry.id}")
            codes[code] = entry
    return MappingProxyType(codes)


MATERIALS: Final[Mapping[str, Material]] = _by_id(list(_materials(_read("materials"))))
"""Base metals by id."""

FILLER_METALS: Final[Mapping[str, FillerMetal]] = _by_id([_filler_metal(row) for row in _read("filler_metals")])
"""Filler metals by id."""

PROCESSES: Final[Mapping[str, Process]] = _by_id([_process(row) for row in _read("processes")])
"""Welding processes by AWS letters."""

POSITIONS: Final[Mapping[str, Position]] = _by_id([_position(row) for row in _read("positions")])
"""Welding positions by code, AWS and ISO 6947 alike."""

PREPARATION_ROWS: Final[tuple[Mapping[str, str], ...]] = tuple(_read("preparations"))
"""Rows of preparations.csv as they stand; ``loader_preparations`` makes preparations of them."""

RATE_ROWS: Final[tuple[Mapping[str, str], ...]] = tuple(_read("welding_rates"))
"""Rows of welding_rates.csv as they stand; ``loader_welding_rates`` makes rates of them."""

_PROCESS_BY_CODE: Final = _by_code(PROCESSES)

PROCESS_CODES: Final[tuple[str, ...]] = tuple(_PROCESS_BY_CODE)
"""Every process code accepted: the ids in the order of the file, then the other codes in the same order."""

POSITION_CODES: Final[tuple[str, ...]] = tuple(POSITIONS)
"""Every position code accepted, in the order of the file."""


def process(code: str) -> Process:
    """Return the process that AWS letters or an ISO 4063 number stand for; KeyError for any other code."""
    return _PROCESS_BY_CODE[code]


def position(code: str) -> Position:
    """Return the position that an AWS or ISO 6947 code stands for; KeyError for any other code."""
    return POSITIONS[code]
