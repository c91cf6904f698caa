"""The data files: what their descriptions promise, and what the loader refuses."""

import csv
import hashlib
import math
import shutil
import tomllib
from dataclasses import replace
from importlib.resources import files
from pathlib import Path
from typing import Any

import pytest

from truethroat_service.reference import loader

NAMES = ("materials", "filler_metals", "processes", "positions", "preparations", "welding_rates")
DATA = files("truethroat_service.reference") / "data"


def _raw(name: str) -> bytes:
    """Read a data file byte for byte."""
    return (DATA / f"{name}.csv").read_bytes()


def _rows(name: str) -> list[dict[str, str]]:
    """Read the rows of a data file without the loader."""
    return list(csv.DictReader(_raw(name).decode("utf-8").splitlines()))


def _about(name: str) -> dict[str, Any]:
    """Read the description of a data file without the loader."""
    return tomllib.loads((DATA / f"{name}.toml").read_text(encoding="utf-8"))


@pytest.fixture
def copied(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Give the loader a copy of the data folder that a test may spoil."""
    folder = tmp_path / "data"
    shutil.copytree(str(DATA), folder)
    monkeypatch.setattr(loader, "files", lambda _package: tmp_path)
    return folder


def _sign(folder: Path, name: str) -> None:
    """Write the SHA-256 of a spoiled file into its description, so that the next check is reached."""
    description = folder / f"{name}.toml"
    sha256 = hashlib.sha256((folder / f"{name}.csv").read_bytes()).hexdigest()
    text = description.read_text(encoding="utf-8").replace(_about(name)["sha256"], sha256)
    description.write_text(text, encoding="utf-8")


def test_every_data_file_is_described_and_loaded() -> None:
    """The folder holds these files, each with its description, and nothing else."""
    assert {entry.name for entry in DATA.iterdir()} == {f"{name}.{kind}" for name in NAMES for kind in ("csv", "toml")}
    assert all(loader._read(name) == _rows(name) for name in NAMES)


@pytest.mark.parametrize("name", NAMES)
def test_sha256_is_that_of_the_file(name: str) -> None:
    """The SHA-256 worked out here and the one written down are the same."""
    assert _about(name)["sha256"] == hashlib.sha256(_raw(name)).hexdigest()


@pytest.mark.parametrize("name", NAMES)
def test_description_says_where_the_figures_come_from(name: str) -> None:
    """Title, edition, source, table and a meaning for every column are given."""
    about = _about(name)
    assert all(about[key].strip() for key in ("title", "edition", "source", "table"))
    assert list(about["columns"]) == _raw(name).decode("utf-8").splitlines()[0].split(",")
    assert all(column["meaning"].strip() for column in about["columns"].values())
    assert set(about["marks"]) <= set(loader.MARKS)


@pytest.mark.parametrize("name", NAMES)
def test_every_row_has_a_source_and_a_mark(name: str) -> None:
    """No figure stands without where it comes from and how sure it is."""
    rows = _rows(name)
    assert rows
    assert all(row["source"].strip() and row["mark"] in _about(name)["marks"] for row in rows)
    if name == "materials":
        for row in rows:
            assert bool(row["beta_w"]) == bool(row["beta_w_mark"]) == bool(row["beta_w_source"]), row["id"]
            assert row["beta_w_mark"] in ("", *loader.MARKS), row["id"]


@pytest.mark.parametrize("name", NAMES)
def test_cells_carry_no_stray_space(name: str) -> None:
    """A cell never begins or ends with a space, which would make two ids of one."""
    assert all(cell == cell.strip() for row in _rows(name) for cell in row.values())


def test_figures_are_finite_and_positive() -> None:
    """Every figure in the files is a finite decimal number above zero."""
    figures = [
        (row["id"], column, float(row[column]))
        for name in ("materials", "filler_metals")
        for row in _rows(name)
        for column, about in _about(name)["columns"].items()
        if "unit" in about and row[column]
    ]
    assert len(figures) > 4 * len(_rows("materials"))
    assert [figure for figure in figures if not (math.isfinite(figure[2]) and figure[2] > 0)] == []


def test_ids_are_unique() -> None:
    """An id stands once; only the bands of one material share theirs, and they stand together."""
    for name in NAMES[1:]:
        ids = [row["id"] for row in _rows(name)]
        assert len(ids) == len(set(ids))
    ids = [row["id"] for row in _rows("materials")]
    turns = [id_ for previous, id_ in zip(["", *ids], ids, strict=False) if id_ != previous]
    assert turns == list(loader.MATERIALS)
    assert len(turns) == len(set(turns))


def test_a_changed_file_is_refused(copied: Path) -> None:
    """A figure changed without its description stops the loader."""
    path = copied / "materials.csv"
    path.write_bytes(path.read_bytes().replace(b"235,360", b"235,380", 1))
    with pytest.raises(loader.DataFault, match="SHA-256"):
        loader._read("materials")


def test_columns_that_are_not_described_are_refused(copied: Path) -> None:
    """A column the description does not know stops the loader."""
    path = copied / "processes.csv"
    path.write_bytes(path.read_bytes().replace(b"also", b"otherwise", 1))
    _sign(copied, "processes")
    with pytest.raises(loader.DataFault, match="other columns"):
        loader._read("processes")


@pytest.mark.parametrize("line", [b"9F,AWS\n", b"9F,AWS,t,flat,,fillet,PA,seen,s,more\n"])
def test_a_row_with_too_few_or_too_many_cells_is_refused(copied: Path, line: bytes) -> None:
    """A row that does not fill the columns stops the loader and is named by its line."""
    path = copied / "positions.csv"
    path.write_bytes(path.read_bytes() + line)
    _sign(copied, "positions")
    with pytest.raises(loader.DataFault, match="line 17: not 9 cells"):
        loader._read("positions")


@pytest.mark.parametrize(
    ("column", "value", "message"),
    [
        ("stress_unit", "psi", "no unit 'psi'"),
        ("length_unit", "cm", "no unit 'cm'"),
        ("mark", "certain", "'certain' is none of"),
        ("family", "steel", "'steel' is none of"),
        ("form", "bar", "'bar' is none of"),
    ],
)
def test_a_word_outside_the_vocabulary_is_refused(column: str, value: str, message: str) -> None:
    """Units, marks, families and forms are closed lists."""
    row = _rows("materials")[0] | {column: value}
    with pytest.raises(loader.DataFault, match=message):
        loader._material([row])


def test_bands_with_a_gap_are_refused() -> None:
    """The bands of a material must meet."""
    thin, thick = _rows("materials")[:2]
    with pytest.raises(loader.DataFault, match="gap or overlap"):
        loader._material([thin, thick | {"thickness_over": "50"}])


def test_bands_that_disagree_about_the_material_are_refused() -> None:
    """What belongs to the material is the same in all its rows."""
    thin, thick = _rows("materials")[:2]
    with pytest.raises(loader.DataFault, match="disagree in beta_w"):
        loader._material([thin, thick | {"beta_w": "0.9"}])


def test_an_id_or_code_that_stands_twice_is_refused() -> None:
    """Neither an id nor a process code may mean two things."""
    wire, stick = loader.PROCESSES["GMAW"], loader.PROCESSES["SMAW"]
    with pytest.raises(loader.DataFault, match="stands twice"):
        loader._by_id([wire, wire])
    with pytest.raises(loader.DataFault, match="'135' stands for SMAW and GMAW"):
        loader._by_code({"SMAW": replace(stick, iso_4063=("111", "135")), "GMAW": wire})
