"""AISC 360-22 section J2.1: root deduction of partial-penetration grooves, and their least throat."""

from math import nextafter, radians

import numpy as np
import pytest
from tests.standards.welds import INCH

from truethroat_service.engine.rule_set import Groove, Unlisted
from truethroat_service.standards.aisc_360_22 import EDITION, j2_1_partial_penetration
from truethroat_service.standards.aisc_360_22.rules import AiscGroove

RULES = AiscGroove()
GAS = ("GMAW", "FCAW", "FCAW-G", "FCAW-S")
EVERYWHERE = ("flat", "horizontal", "vertical", "overhead")


def _throat(depth: float, form: str, degrees: float, process: str | None, orientation: str | None) -> float:
    """Throat, in, of a groove of the depth, in."""
    taken, source = RULES.deduction(Groove(form, radians(degrees), process, orientation))
    assert str(source) == f"{EDITION}, Table J2.1"
    return depth - taken / INCH


@pytest.mark.parametrize("orientation", EVERYWHERE)
@pytest.mark.parametrize("process", ["SMAW", *GAS])
@pytest.mark.parametrize("form", ["single-j", "single-u"])
def test_j_and_u_keep_their_depth(form: str, process: str, orientation: str) -> None:
    """J and U: throat = depth, by stick or wire in every position, whatever the angle: 360-22 Table J2.1."""
    for degrees in (20, 45, 60):
        assert _throat(0.5, form, degrees, process, orientation) == 0.5


@pytest.mark.parametrize("orientation", EVERYWHERE)
@pytest.mark.parametrize("process", ["SMAW", *GAS])
def test_sixty_degree_v_keeps_its_depth(process: str, orientation: str) -> None:
    """A 60 deg V: throat = depth, by stick or wire in every position: 360-22 Table J2.1 (depth 1/2 in: 1/2 in)."""
    assert _throat(0.5, "single-v", 60, process, orientation) == 0.5
    assert _throat(0.5, "single-v", 75, process, orientation) == 0.5


@pytest.mark.parametrize(
    ("form", "degrees"), [("single-bevel", 60), ("single-v", 60), ("single-j", 20), ("single-u", 20)]
)
def test_submerged_arc_flat_keeps_its_depth(form: str, degrees: float) -> None:
    """Submerged arc, flat, J or U or 60 deg bevel or V: throat = depth: 360-22 Table J2.1; AWS D1.1 TC-P4-S."""
    assert _throat(0.5, form, degrees, "SAW", "flat") == 0.5


@pytest.mark.parametrize("form", ["single-bevel", "single-v"])
@pytest.mark.parametrize("degrees", [45, 50, 59.99])
@pytest.mark.parametrize(
    ("process", "orientation", "throat"),
    [
        *((process, where, 0.5) for process in GAS for where in ("flat", "horizontal")),
        *((process, where, 0.375) for process in GAS for where in ("vertical", "overhead")),
        *(("SMAW", where, 0.375) for where in EVERYWHERE),
    ],
)
def test_forty_five_degree_groove(form: str, degrees: float, process: str, orientation: str, throat: float) -> None:
    """45 deg and up to 60: all of 1/2 in by wire flat or horizontal, else 1/8 in less: 360-22 Table J2.1."""
    assert _throat(0.5, form, degrees, process, orientation) == pytest.approx(throat, abs=1e-12)


def test_stick_bevel_of_the_prequalified_joint() -> None:
    """Stick, 45 deg, all positions: the depth less 1/8 in (3 mm): AWS D1.1:2020 Fig. 5.2, BTC-P4."""
    assert _throat(8 / 25.4, "single-bevel", 45, "SMAW", "vertical") * 25.4 == pytest.approx(5.0, abs=0.2)
    assert j2_1_partial_penetration.ROOT_DEDUCTION == 3.175


def test_angles_are_taken_as_meant() -> None:
    """45 and 60 deg count as such even when their floats in radians fall a bit short."""
    short_45, short_60 = nextafter(radians(45), 0), nextafter(radians(60), 0)
    assert RULES.deduction(Groove("single-bevel", short_45, "SMAW", "flat"))[0] == pytest.approx(INCH / 8)
    assert RULES.deduction(Groove("single-v", short_60, "SMAW", "flat"))[0] == 0.0


@pytest.mark.parametrize(
    ("form", "degrees", "process", "orientation", "field", "words"),
    [
        ("single-bevel", 45, None, "flat", "process", "goes by process"),
        ("single-bevel", 45, None, None, "process", "goes by process"),
        ("single-bevel", 45, "SMAW", None, "position", "goes by position"),
        ("single-j", 45, "GTAW", "flat", "process", "not GTAW"),
        ("single-bevel", 60, "SAW", "horizontal", "position", "flat position only, not horizontal"),
        ("single-u", 60, "SAW", "overhead", "position", "flat position only, not overhead"),
        ("single-bevel", 44, "SMAW", "flat", "groove_angle", "45 deg and more"),
        ("single-v", 30, "GMAW", "flat", "groove_angle", "45 deg and more"),
        ("single-bevel", 40, "SAW", "flat", "groove_angle", "45 deg and more"),
        ("single-bevel", 45, "SAW", "flat", "groove_angle", "from 60 deg up"),
        ("single-v", 59.9, "SAW", "flat", "groove_angle", "from 60 deg up"),
        ("single-bevel", 60, "SMAW", "flat", "groove_angle", "for SMAW it lists the 45 deg bevel"),
        ("single-bevel", 60, "GMAW", "vertical", "groove_angle", "for GMAW it lists the 45 deg bevel"),
    ],
)
def test_unlisted_combinations_are_refused(
    form: str, degrees: float, process: str | None, orientation: str | None, field: str, words: str
) -> None:
    """What Table J2.1 does not list is refused, naming what to change and what it lists."""
    with pytest.raises(Unlisted, match=words) as refusal:
        _throat(0.5, form, degrees, process, orientation)
    assert field in [name for name, _ in refusal.value.faults]
    assert "Table J2.1" in str(refusal.value)


@pytest.mark.parametrize(
    ("thinner", "throat"),
    # ANSI/AISC 360-22 Table J2.3, also Structural Steel Designer's Handbook Table 5.4 (after AISC 2005), inches.
    [
        (1 / 8, 1 / 8),
        (1 / 4, 1 / 8),
        (0.2501, 3 / 16),
        (1 / 2, 3 / 16),
        (0.5001, 1 / 4),
        (3 / 4, 1 / 4),
        (0.7501, 5 / 16),
        (1.5, 5 / 16),
        (1.5001, 3 / 8),
        (2.25, 3 / 8),
        (2.2501, 1 / 2),
        (6.0, 1 / 2),
        (6.0001, 5 / 8),
        (8.0, 5 / 8),
    ],
)
def test_minimum_throat(thinner: float, throat: float) -> None:
    """Least throat by the thinner part, a limit belonging to the row it ends: ANSI/AISC 360-22 Table J2.3."""
    least, source = RULES.minimum_throat(thinner * INCH)
    assert least == pytest.approx(throat * INCH, rel=1e-12)
    assert str(source) == f"{EDITION}, J2.1b, Table J2.3"


def test_minimum_throats_of_a_list() -> None:
    """A column of thicknesses reads the same table row by row: ANSI/AISC 360-22 Table J2.3."""
    column = j2_1_partial_penetration.minimum_throat(t=np.array([6.0, 10.0, 16.0, 30.0, 50.0, 100.0, 160.0]))
    expected = np.array([1 / 8, 3 / 16, 1 / 4, 5 / 16, 3 / 8, 1 / 2, 5 / 8]) * INCH
    np.testing.assert_allclose(np.asarray(column), expected, rtol=1e-12)


def test_face_height_is_not_credited() -> None:
    """Reinforcement is no part of a groove's throat: ANSI/AISC 360-22 J2.1a (depth, filled flush)."""
    assert RULES.face_counts is False


def test_every_unlisted_field_is_told_at_once() -> None:
    """Neither process nor position given: both are told (AISC 360-22 Table J2.1 goes by both)."""
    with pytest.raises(Unlisted) as refusal:
        j2_1_partial_penetration.root_deduction(Groove("single-bevel", radians(45.0), None, None))
    assert [name for name, _ in refusal.value.faults] == ["process", "position"]
