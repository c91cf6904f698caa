"""Filler metals: least strengths against the classes' own names and the standards."""

import math
import re

import pytest
from scipy import constants

from truethroat_service.reference import loader
from truethroat_service.reference.loader import FILLER_METALS, PROCESSES, FillerMetal

CLASS = {row["id"]: row["filler_class"] for row in loader._read("filler_metals")}
"""Class that each electrode or wire belongs to; a class is its own."""

KSI = 1000 * constants.psi / 1e6  # MPa, from CODATA's table of exact conversions as scipy carries it


@pytest.mark.parametrize(
    ("filler", "ksi", "mpa", "mark"),
    [
        # AISC 360-22 J2.6 user note names the first four classes; the metric figure is that of the AWS specifications
        ("E60", 60, 415, "seen"),
        ("E70", 70, 485, "seen"),
        ("E80", 80, 550, "seen"),
        ("E90", 90, 620, "seen"),
        # AWS A5.5, from memory
        ("E100", 100, 690, "from memory"),
        ("E110", 110, 760, "from memory"),
        # AWS A5.4, A5.9, from memory
        ("E308L", 75, 520, "from memory"),
        ("E309L", 75, 520, "from memory"),
        ("E316L", 70, 485, "from memory"),
    ],
)
def test_strength_of_a_class(filler: str, ksi: float, mpa: float, mark: str) -> None:
    """A class is its ksi exactly; the rounded MPa printed beside it lies within 1 %."""
    metal = FILLER_METALS[filler]
    assert metal.tensile_strength == pytest.approx(ksi * KSI, rel=1e-12)
    assert metal.tensile_strength == pytest.approx(mpa, rel=0.01)
    assert metal.mark == mark


def test_e70_is_not_a_rounded_metric_value() -> None:
    """70 ksi is 482.633 MPa, not the 480, 485 or 490 that circulate (lbf and inch by definition)."""
    assert FILLER_METALS["E70"].tensile_strength == pytest.approx(70000 * 4.4482216152605 / 645.16, rel=1e-15)


@pytest.mark.parametrize(("filler", "ksi"), [("ER4043", 24), ("ER5356", 35), ("ER5183", 40)])
def test_aluminium_fillers(filler: str, ksi: float) -> None:
    """Tensile strengths of aluminium fillers are those of the Aluminum Design Manual (from memory)."""
    assert FILLER_METALS[filler].tensile_strength == pytest.approx(ksi * KSI, rel=1e-12)
    assert FILLER_METALS[filler].family == "aluminium"
    assert FILLER_METALS[filler].mark == "from memory"


@pytest.mark.parametrize(
    ("filler", "filler_class", "process"),
    [
        # AWS A5.1, A5.17, A5.18, A5.20, from memory
        ("E6010", "E60", "SMAW"),
        ("E6011", "E60", "SMAW"),
        ("E6013", "E60", "SMAW"),
        ("E7018", "E70", "SMAW"),
        ("ER70S-3", "E70", "GMAW"),
        ("ER70S-6", "E70", "GMAW"),
        ("E71T-1", "E70", "FCAW-G"),
        ("E71T-8", "E70", "FCAW-S"),
        ("E70T-4", "E70", "FCAW-S"),
        ("F7A2-EM12K", "E70", "SAW"),
    ],
)
def test_electrodes_carry_the_strength_of_their_class(filler: str, filler_class: str, process: str) -> None:
    """An electrode or wire is as strong as its class, and the digits after its letters say the same strength."""
    metal = FILLER_METALS[filler]
    assert CLASS[filler] == filler_class
    assert metal.tensile_strength == FILLER_METALS[filler_class].tensile_strength
    assert metal.processes[0] == process
    assert metal.mark == "from memory"
    digits = re.match(r"(?:ER|E|F)(\d+)", filler)
    assert digits is not None
    # Stick and solid wire give two digits of ksi; cored wire (second digit: position) and flux give tens of ksi.
    tens = int(digits.group(1)[0])
    assert metal.tensile_strength == pytest.approx(10 * tens * KSI, rel=1e-12)


@pytest.mark.parametrize("letter", list("EGTSW"))
@pytest.mark.parametrize(
    ("symbol", "fy", "fu"),
    # ISO 2560-A and ISO 14341-A Table 1, second-hand (makers' guides); ISO 17632-A, 14171-A, 636-A, from memory
    [("35", 355, 440), ("38", 380, 470), ("42", 420, 500), ("46", 460, 530), ("50", 500, 560)],
)
def test_iso_classes(letter: str, symbol: str, fy: float, fu: float) -> None:
    """An ISO class has the least yield and tensile strength of its symbol, whatever the product."""
    metal = FILLER_METALS[f"{letter} {symbol}"]
    assert (metal.yield_strength, metal.tensile_strength) == (fy, fu)
    assert (
        metal.standard
        == {
            "E": "ISO 2560-A",
            "G": "ISO 14341-A",
            "T": "ISO 17632-A",
            "S": "ISO 14171-A",
            "W": "ISO 636-A",
        }[letter]
    )
    assert metal.mark == ("second-hand" if letter in "EG" else "from memory")


@pytest.mark.parametrize(
    ("letter", "standard", "symbol", "fy", "fu"),
    # ISO 18275-A and ISO 16834-A Table 1, from memory
    [
        ("E", "ISO 18275-A", "55", 550, 610),
        ("E", "ISO 18275-A", "62", 620, 690),
        ("E", "ISO 18275-A", "69", 690, 760),
        ("G", "ISO 16834-A", "55", 550, 640),
        ("G", "ISO 16834-A", "62", 620, 700),
        ("G", "ISO 16834-A", "69", 690, 770),
    ],
)
def test_iso_classes_of_high_strength(letter: str, standard: str, symbol: str, fy: float, fu: float) -> None:
    """A class for high-strength steel has the least yield and tensile strength of its symbol."""
    metal = FILLER_METALS[f"{letter} {symbol}"]
    assert (metal.standard, metal.yield_strength, metal.tensile_strength) == (standard, fy, fu)
    assert metal.mark == "from memory"


@pytest.mark.parametrize("metal", list(FILLER_METALS.values()), ids=list(FILLER_METALS))
def test_a_filler_metal_makes_sense(metal: FillerMetal) -> None:
    """Strengths are finite and in order, the class and the processes exist, and what it matches is said."""
    assert 0 < (metal.yield_strength or 1) < metal.tensile_strength < math.inf
    filler_class = CLASS[metal.id]
    assert CLASS[filler_class] == filler_class
    assert FILLER_METALS[filler_class].family == metal.family
    assert set(metal.processes) <= set(PROCESSES)
    assert metal.matches
    assert metal.standard


def test_density_of_weld_metal() -> None:
    """Weld metal weighs 7850 kg/m3 (common practice, no source) unless it is stainless or aluminium (from memory)."""
    others = {"E308L": 7900, "E309L": 7900, "E316L": 8000, "ER4043": 2680, "ER5356": 2640, "ER5183": 2660}
    assert {id_: metal.density_kg_m3 for id_, metal in FILLER_METALS.items()} == {
        id_: others.get(id_, 7850) for id_ in FILLER_METALS
    }


@pytest.mark.parametrize(
    ("filler", "ksi"),
    [
        # AWS A5.1, from memory
        ("E6010", 48),
        ("E6011", 48),
        ("E6013", 48),
        ("E7018", 58),
        # AWS A5.18, A5.20, A5.17, from memory
        ("ER70S-3", 58),
        ("ER70S-6", 58),
        ("E71T-1", 58),
        ("E70T-4", 58),
        ("E71T-8", 58),
        ("F7A2-EM12K", 58),
    ],
)
def test_yield_strength_of_electrodes(filler: str, ksi: float) -> None:
    """Least yield strengths are those of the AWS specification of the electrode (from memory)."""
    assert FILLER_METALS[filler].yield_strength == pytest.approx(ksi * KSI, rel=1e-12)


def test_a_class_of_several_products_has_no_yield_strength() -> None:
    """The yield strength differs between the products of one AWS class, so a class has none."""
    classes = [m for m in FILLER_METALS.values() if m.id == CLASS[m.id] and not m.standard.startswith("ISO")]
    assert len(classes) == 12
    assert all(metal.yield_strength is None for metal in classes)
