"""Processes and positions: both codings of each mean one thing."""

import pytest

from truethroat_service.reference import loader
from truethroat_service.reference.loader import (
    POSITION_CODES,
    POSITIONS,
    PROCESS_CODES,
    PROCESSES,
    position,
    process,
)

# ISO 4063:2009 numbers. 111, 114, 121, 125, 131, 135, 136, 141 and 15 second-hand (a published summary of the list),
# the rest from memory; the AWS letters from memory of AWS A3.0.
NUMBERS = {
    "SMAW": ("111",),
    "GMAW": ("135", "131", "133", "138"),
    "FCAW-G": ("136", "132"),
    "FCAW-S": ("114",),
    "FCAW": (),
    "SAW": ("121", "125"),
    "GTAW": ("141", "142"),
    "PAW": ("15",),
    "OFW": ("311", "31", "312", "313"),
    "EBW": ("51", "511", "512"),
    "LBW": ("52", "521", "522"),
}

ROWS = {row["id"]: row for row in loader._read("positions")}
"""Rows of the positions, which say more of a position than the service asks."""

# ISO 6947 words second-hand (a published chart), the AWS codes they answer to from memory:
# code, orientation, progression, AWS fillet and groove positions.
ISO_POSITIONS = [
    ("PA", "flat", None, ("1F", "1G")),
    ("PB", "horizontal", None, ("2F",)),
    ("PC", "horizontal", None, ("2G",)),
    ("PD", "overhead", None, ("4F",)),
    ("PE", "overhead", None, ("4G",)),
    ("PF", "vertical", "up", ("3F", "3G")),
    ("PG", "vertical", "down", ("3F", "3G")),
]


@pytest.mark.parametrize(("letters", "numbers"), list(NUMBERS.items()))
def test_letters_and_numbers_mean_one_process(letters: str, numbers: tuple[str, ...]) -> None:
    """Every ISO 4063 number resolves to the process its AWS letters name."""
    assert process(letters).id == letters
    assert process(letters).iso_4063 == numbers
    for number in numbers:
        assert process(number) is process(letters)


def test_every_process_is_checked() -> None:
    """No process stands outside the table of this file."""
    assert tuple(PROCESSES) == tuple(NUMBERS)


@pytest.mark.parametrize("code", ["OAW", "OHW"])
def test_gas_welding_by_fuel_is_gas_welding(code: str) -> None:
    """AWS A3.0 counts oxyacetylene and oxyhydrogen welding to oxyfuel welding (from memory)."""
    assert process(code).id == "OFW"


@pytest.mark.parametrize("code", ["13", "3", "gmaw", "135 ", "", "GMAW-S", "MIG"])
def test_other_process_codes_are_refused(code: str) -> None:
    """A group of processes, another spelling or a word of the shop is no code."""
    with pytest.raises(KeyError):
        process(code)


def test_process_codes_are_all_that_is_accepted() -> None:
    """The list names every code once, ids first, and each of them resolves."""
    assert len(PROCESS_CODES) == len(set(PROCESS_CODES))
    assert PROCESS_CODES[: len(PROCESSES)] == tuple(PROCESSES)
    assert set(PROCESS_CODES) == set(PROCESSES) | {n for numbers in NUMBERS.values() for n in numbers} | {"OAW", "OHW"}
    assert all(process(code).id in PROCESSES for code in PROCESS_CODES)


def test_codes_do_not_claim_to_be_surer_than_they_are() -> None:
    """No list of codes was read whole in its own publication, so every row is marked as recalled."""
    assert {entry.mark for entry in (*PROCESSES.values(), *POSITIONS.values())} == {"from memory"}


def test_processes_are_named() -> None:
    """Every process has a title, and in the file a family."""
    assert all(entry.title for entry in PROCESSES.values())
    assert all(row["family"] for row in loader._read("processes"))


@pytest.mark.parametrize(
    ("number", "orientation"), [("1", "flat"), ("2", "horizontal"), ("3", "vertical"), ("4", "overhead")]
)
@pytest.mark.parametrize(("letter", "weld"), [("F", "fillet"), ("G", "groove")])
def test_aws_positions(number: str, orientation: str, letter: str, weld: str) -> None:
    """AWS A3.0 (second-hand): 1 flat, 2 horizontal, 3 vertical, 4 overhead; F fillet, G groove; no progression."""
    row = ROWS[number + letter]
    assert (row["coding"], row["orientation"], row["progression"], row["welds"]) == ("AWS", orientation, "", weld)


@pytest.mark.parametrize(("code", "orientation", "progression", "answers_to"), ISO_POSITIONS)
def test_iso_positions(code: str, orientation: str, progression: str | None, answers_to: tuple[str, ...]) -> None:
    """ISO 6947 codes have their orientation and progression, and the AWS codes for the same thing."""
    row = ROWS[code]
    assert (row["coding"], row["orientation"], row["progression"]) == ("ISO 6947", orientation, progression or "")
    assert position(code).orientation == orientation
    assert position(code).equivalents == answers_to
    welds = {"F": "fillet", "G": "groove"}
    kinds = {welds[other[1]] for other in answers_to}
    assert row["welds"] == (kinds.pop() if len(kinds) == 1 else "both")


def test_positions_answer_to_each_other() -> None:
    """When one code answers to another, the other answers back, from the other coding and in the same orientation."""
    for entry in POSITIONS.values():
        assert entry.equivalents
        for other in entry.equivalents:
            assert entry.id in position(other).equivalents
            assert position(other).orientation == entry.orientation
            assert ROWS[other]["coding"] != ROWS[entry.id]["coding"]


def test_position_codes_are_all_that_is_accepted() -> None:
    """The list names every code once, AWS first, and no other code resolves."""
    aws = tuple(number + letter for letter in "FG" for number in "1234")
    assert aws + tuple(row[0] for row in ISO_POSITIONS) == POSITION_CODES
    for code in ("5G", "PH", "pa", "", "2"):
        with pytest.raises(KeyError):
            position(code)
