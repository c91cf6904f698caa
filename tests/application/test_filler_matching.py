"""Filler metals against the groups of base metal: AISC 360-22 J2.6 and AWS D1.1 (from memory)."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from tests.application.asked import fillet_size

from truethroat_service.application.fillet_size.request import FilletSizeRequest, Joint, SharedForce
from truethroat_service.application.joints.filler_matching import matching
from truethroat_service.application.joints.metals import Filler, Part

KSI = 6.894757
INCH = 25.4


def stands(materials: tuple[str, str], filler: str, thickness: float = 12.0) -> tuple[str, int]:
    """Standing and number of classes of a filler metal."""
    found = matching([Part(thickness, name) for name in materials], Filler(filler), None)
    assert found is not None
    return found.standing, found.classes


@pytest.mark.parametrize(
    ("material", "filler", "standing", "classes"),
    [
        # J2.6 user note: E60 and E70 match group I, E70 the 50 ksi steels, E80 A913-60 and -65, E90 A913-70.
        ("A36", "E60", "matching", 0),
        ("A36", "E70", "matching", 0),
        ("A36", "E80", "over", 1),
        ("A36", "E90", "over", 2),
        ("A500-C", "E60", "matching", 0),
        ("A992", "E60", "under", 1),
        ("A992", "E7018", "matching", 0),
        ("A992", "E80", "over", 1),
        ("A992", "E90", "over", 2),
        ("A572-50", "ER70S-6", "matching", 0),
        ("A588", "E70", "matching", 0),
        ("A913-65", "E70", "under", 1),
        ("A913-65", "E80", "matching", 0),
        ("A913-70", "E90", "matching", 0),
        # D1.1, from memory: A514 takes E110, and E100 over 2-1/2 in.
        ("A514", "E110", "matching", 0),
        ("A514", "E70", "under", 4),
        # ISO 2560-A E 46: 530 N/mm2 is 76.9 ksi, of the class of 70.
        ("A992", "E 46", "matching", 0),
    ],
)
def test_standing(material: str, filler: str, standing: str, classes: int) -> None:
    """Classes of 10 ksi under the least or over the greatest that matches."""
    assert stands((material, material), filler) == (standing, classes)


def test_standing_goes_by_thickness() -> None:
    """A36 is in group I up to 3/4 in and in group II over it; A514 over 2-1/2 in takes E100."""
    assert stands(("A36", "A36"), "E60", 0.75 * INCH) == ("matching", 0)
    assert stands(("A36", "A36"), "E60", 0.76 * INCH) == ("under", 1)
    assert stands(("A514", "A514"), "E100", 2.5 * INCH) == ("under", 1)
    assert stands(("A514", "A514"), "E100", 2.6 * INCH) == ("matching", 0)


@pytest.mark.parametrize(
    ("filler", "standing", "weaker_only"),
    [("E60", "under", False), ("E70", "matching", True), ("E80", "matching", False), ("E90", "over", False)],
)
def test_unlike_steels(filler: str, standing: str, weaker_only: bool) -> None:
    """J2.6: A992 to A913-65 takes what matches the stronger (E80), or the weaker (E70) with a low-hydrogen deposit."""
    found = matching((Part(12.0, "A992"), Part(12.0, "A913-65")), Filler(filler), None)
    assert found is not None
    assert (found.standing, found.weaker_only, found.wanted) == (standing, weaker_only, (70, 80))
    assert found.needs_low_hydrogen == weaker_only


@pytest.mark.parametrize(
    ("strength", "standing"),
    # 70 ksi is 482.6 MPa; metric designations round it to 480, 485 or 490 (common practice).
    [
        (480.0, "matching"),
        (485.0, "matching"),
        (490.0, "matching"),
        (470.0, "under"),
        (415.0, "under"),
        (550.0, "over"),
    ],
)
def test_strength_by_hand(strength: float, standing: str) -> None:
    """A class named in rounded megapascals is that class."""
    found = matching((Part(12.0, "A992"), Part(12.0, "A992")), Filler(tensile_strength=strength), None)
    assert found is not None
    assert found.standing == standing


@pytest.mark.parametrize("part", [Part(12.0, "S355"), Part(12.0, None, 345.0, 450.0)])
def test_nothing_is_known_of_other_metals(part: Part) -> None:
    """A metal in no group is not judged."""
    assert matching((Part(12.0, "A992"), part), Filler("E70"), "SMAW") is None


@pytest.mark.parametrize(
    ("filler", "process", "needs", "known"),
    [
        # AWS A5.1, from memory: the last two digits 15, 16, 18, 28 and 48 are low-hydrogen coverings.
        ("E7018", "SMAW", True, True),
        ("E7018", None, True, True),
        ("E6013", "111", True, False),
        ("E6010", None, True, False),
        ("E70", "SMAW", True, None),
        ("E70", None, False, None),
        ("E70", "GMAW", False, True),
        ("ER70S-6", None, False, True),
        ("E71T-1", "136", False, True),
        ("E 42", None, True, None),
    ],
)
def test_low_hydrogen(filler: str, process: str | None, needs: bool, known: bool | None) -> None:
    """Group II wants low-hydrogen stick electrodes; wire is taken as such."""
    found = matching((Part(12.0, "A992"), Part(12.0, "A992")), Filler(filler), process)
    assert found is not None
    assert (found.needs_low_hydrogen, found.low_hydrogen) == (needs, known)


TEE = FilletSizeRequest(
    "aisc-360-22-lrfd",
    Joint("tee", sides=2),
    (Part(12.7, "A992"), Part(12.7, "A992")),
    "load",
    SharedForce(100e3, 200.0, 0.0),
    Filler("E7018"),
)


def codes(answer: dict[str, Any]) -> dict[str, str]:
    """Cautions by code."""
    return {caution["code"]: caution["text"] for caution in answer["cautions"]}


def test_a_matching_filler_needs_no_word() -> None:
    """E7018 on A992: nothing to say."""
    answer = fillet_size(TEE)
    assert not {"overmatched-filler", "low-hydrogen-needed"} & codes(answer).keys()
    assert not [reason for reason in answer["reasons"] if "matches" in reason]


def test_what_is_said_of_a_fillet() -> None:
    """Under matching is permitted and said; two classes over are cautioned, and a covering that is not low-hydrogen."""
    under = fillet_size(replace(TEE, filler=Filler("E6013"), process="SMAW"))
    assert "E6013 is weaker than the filler metal that matches group II (E70)" in " ".join(under["reasons"])
    assert "E6013 is not low-hydrogen" in codes(under)["low-hydrogen-needed"]
    assert under["specify"] is not None
    assert "overmatched-filler" not in codes(fillet_size(replace(TEE, filler=Filler("E80"))))
    assert "2 classes of 10 ksi over" in codes(fillet_size(replace(TEE, filler=Filler("E90"))))["overmatched-filler"]
    unlike = (Part(12.7, "A36"), Part(12.7, "A913-65"))
    assert (
        "weaker of group I and group III"
        in codes(fillet_size(replace(TEE, parts=unlike, filler=Filler("E70"))))["low-hydrogen-needed"]
    )
