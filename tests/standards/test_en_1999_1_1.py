"""EN 1999-1-1:2007 8.6.3 and 6.1.6.3 (from memory): fillets of aluminium, and the zone that their heat softens.

Stresses on the throat and on both legs are found anew, from the force as a vector and the planes' normals.
"""

from math import pi, radians, sqrt

import numpy as np
import pytest
from tests.standards.welds import parts_of, pull

from truethroat_service.engine.rule_set import Groove, PartMetal, Unlisted, WeldMetal
from truethroat_service.standards.en_1999_1_1_2007 import EDITION, s6_1_6_heat_affected_zone, table_8_8_weld_metal
from truethroat_service.standards.en_1999_1_1_2007.rules import AluminiumGroove, AluminiumParts, AluminiumWeld

WELD, PARTS = AluminiumWeld(gamma_mw=1.25), AluminiumParts(gamma_mw=1.25)
MIXED = WeldMetal(filler=210.0, base=185.0)
"""6082-T6 with 5356: f_w and f_u,haz."""


def on_plane(force: np.ndarray, normal: np.ndarray) -> float:
    """Equivalent force per length on a plane: sqrt(square^2 + 3 sheared^2)."""
    square = float(force @ normal)
    sheared = force - square * normal
    return sqrt(square**2 + 3.0 * float(sheared @ sheared))


@pytest.mark.parametrize("psi", [60.0, 75.0, 90.0, 110.0, 120.0])
@pytest.mark.parametrize("load", [(300.0, 0.0, 0.0), (0.0, 200.0, 0.0), (0.0, 0.0, 400.0), (250.0, -120.0, 90.0)])
def test_throat_and_legs_by_vectors(psi: float, load: tuple[float, float, float]) -> None:
    """Part 1 lies along x on the weld's side, part 2 at psi; the throat halves the angle between them."""
    n, t, along = load
    force = np.array([t, n, along])
    turn = radians(psi)
    throat_normal = np.array([-np.sin(turn / 2), np.cos(turn / 2), 0.0])
    leg_1, leg_2 = np.array([0.0, 1.0, 0.0]), np.array([np.sin(turn), -np.cos(turn), 0.0])
    from_throat = on_plane(force, throat_normal) * 1.25 / 210
    from_legs = max(on_plane(force, leg_1), on_plane(force, leg_2)) * 1.25 / 185 * np.cos(turn / 2)
    found = WELD.required_throat(parts_of(n, t, along, psi), MIXED)
    assert found == pytest.approx(max(from_throat, from_legs))


def test_weld_of_a_tee_in_the_open() -> None:
    """At 90 deg the weld metal of 6082 with 5356 governs by little: 1000 sqrt(2) 1.25/210 = 8.418 mm of throat.

    The legs want 1000 sqrt(3) 1.25/185 = 11.703 mm, which is 8.275 mm of throat.
    """
    assert WELD.required_throat(pull(1000.0), MIXED) == pytest.approx(8.418, abs=0.001)
    stronger = WeldMetal(filler=260.0, base=185.0)
    assert WELD.required_throat(pull(1000.0), stronger) == pytest.approx(8.275, abs=0.001)


def test_floats_and_columns_agree() -> None:
    """A row of a column gives what a single joint gives."""
    forces = np.array([100.0, 900.0])
    columns = WELD.required_throat(pull(forces, 30.0, 70.0), MIXED)
    assert list(columns) == pytest.approx([WELD.required_throat(pull(f, 30.0, 70.0), MIXED) for f in forces])


def test_parts_beside_the_weld() -> None:
    """12 mm of 5083-O: 12 x 275/1.25 = 2640 N/mm across and 1524.2 along."""
    part = PartMetal(12.0, 125.0, 275.0)
    assert PARTS.across(part) == pytest.approx(2640.0)
    assert PARTS.along(part) == pytest.approx(1524.2, abs=0.1)


@pytest.mark.parametrize(("length", "size", "counted"), [(40.0, 5.0, 5.0), (39.9, 5.0, 0.0), (200.0, 5.0, 5.0)])
def test_eight_throats_of_length(length: float, size: float, counted: float) -> None:
    """8.6.3.3: shorter than eight throats is not counted."""
    leg = size * sqrt(2.0)
    assert WELD.counted_leg(leg, length, pi / 2) == pytest.approx(counted * sqrt(2.0))
    assert WELD.largest_counted_leg(length, pi / 2) == pytest.approx(length / 8 * sqrt(2.0))


def test_long_weld_solved_for_its_throat() -> None:
    """Throat and factor undo each other: a (1.2 - 0.2 L/(100 a)) is the throat needed."""
    leg = WELD.long_weld_leg(4.0, 1200.0, pi / 2, 0.0)
    assert leg / sqrt(2.0) * WELD.long_weld_factor(leg, 1200.0, pi / 2, 0.0) == pytest.approx(4.0)
    assert WELD.long_weld_leg(4.0, 399.0, pi / 2, 0.0) == pytest.approx(4.0 * sqrt(2.0))


@pytest.mark.parametrize(
    ("alloy", "magnesium", "silicon"),
    # Table 8.8, from memory: N/mm2 with 5356 and with 4043A; a dash is an empty cell.
    [
        ("5052", 170, None),
        ("5083", 240, None),
        ("5454", 220, None),
        ("6060", 160, 150),
        ("6061", 190, 170),
        ("6005A", 180, 160),
        ("6082", 210, 190),
        ("7020", 260, 210),
        ("3103", None, 95),
    ],
)
def test_table_8_8(alloy: str, magnesium: int | None, silicon: int | None) -> None:
    """Strength of the weld metal by alloy; what the table leaves empty is refused and named."""
    for filler, expected in (("ER5356", magnesium), ("ER5183", magnesium), ("ER4043", silicon)):
        if expected is None:
            with pytest.raises(Unlisted, match=alloy):
                table_8_8_weld_metal.weld_metal_strength((alloy, alloy), filler)
        else:
            strength, source = table_8_8_weld_metal.weld_metal_strength((alloy, alloy), filler)
            assert strength == expected
            assert source.mark == "from memory"


def test_two_alloys_have_the_lower_value() -> None:
    """6082 on 5083 with 5356: 210, named by the alloy it goes by."""
    strength, source = table_8_8_weld_metal.weld_metal_strength(("5083", "6082"), "ER5356")
    assert strength == 210
    assert "6082" in source.clause


def test_what_would_serve_is_named() -> None:
    """5083 with 4043 is refused with the filler metals that the table has for it."""
    with pytest.raises(Unlisted, match="ER5356, ER5183"):
        table_8_8_weld_metal.weld_metal_strength(("5083", "6082"), "ER4043")
    with pytest.raises(Unlisted, match="not ER1100"):
        table_8_8_weld_metal.weld_metal_strength(("5083",), "ER1100")


@pytest.mark.parametrize(
    ("thickness", "process", "extent"),
    [
        (6.0, None, 20),
        (6.1, "GMAW", 30),
        (12.0, None, 30),
        (25.0, None, 35),
        (25.1, None, 40),
        (6.0, "GTAW", 30),
        (6.1, "GTAW", None),
        (6.0, "SMAW", None),
    ],
)
def test_extent_of_the_softened_zone(thickness: float, process: str | None, extent: int | None) -> None:
    """6.1.6.3: by MIG on any thickness, by TIG up to 6 mm."""
    assert s6_1_6_heat_affected_zone.softened(thickness, process) == extent


def test_a_groove_has_no_fixed_deduction() -> None:
    """8.6.3.2: the depth is the one that tests show."""
    taken, source = AluminiumGroove().deduction(Groove("single-v", 1.0, None, None))
    assert (taken, str(source)) == (0.0, f"{EDITION}, 8.6.3.2, from memory")
    assert AluminiumGroove().minimum_throat(10.0) is None
