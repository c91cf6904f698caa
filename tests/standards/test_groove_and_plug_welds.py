"""Groove, flare and plug welds, clause by clause, against figures of the standards."""

import pytest

from truethroat_service.engine.rule_set import Unlisted
from truethroat_service.standards.aisc_360_22 import j2_2_flare_grooves, j2_3_plug_slot, table_j2_5_grooves
from truethroat_service.standards.en_1993_1_8_2005 import s4_7_butt_welds, s4_8_plug_welds
from truethroat_service.standards.en_1993_1_8_2005.s4_5_3_3_simplified import shear_strength


@pytest.mark.parametrize(
    ("form", "process", "throat"),
    [
        ("flare-bevel", "GMAW", 0.46875),
        ("flare-bevel", "FCAW-G", 0.46875),
        ("flare-bevel", "SMAW", 0.234375),
        ("flare-bevel", "FCAW-S", 0.234375),
        ("flare-bevel", "SAW", 0.234375),
        ("flare-v", "GMAW", 0.5625),
        ("flare-v", "SMAW", 0.46875),
        ("flare-v", "SAW", 0.375),
    ],
)
def test_flare_throat(form: str, process: str, throat: float) -> None:
    """AISC 360-22 Table J2.2, R = 3/4 in: throats in inches."""
    share = j2_2_flare_grooves.radius_share(form, process, 19.05)
    assert j2_2_flare_grooves.flare_throat(k_R=share, R=0.75) == pytest.approx(throat)


def test_small_flare_bevel_is_unlisted() -> None:
    """AISC 360-22 Table J2.2: a flare bevel under 3/8 in of radius does not count."""
    with pytest.raises(Unlisted):
        j2_2_flare_grooves.radius_share("flare-bevel", "GMAW", 9.5)


def test_factors_of_table_j2_5() -> None:
    """AISC 360-22 Table J2.5: the pairs as printed, each product 1.5 as the two methods are tied (0.5 % in print)."""
    rows = table_j2_5_grooves
    printed = {
        rows.WELD_TENSION: (0.80, 1.88),
        rows.WELD_SHEAR: (0.75, 2.00),
        rows.BASE_COMPRESSION: (0.90, 1.67),
    }
    for factors, pair in printed.items():
        assert (factors.phi, factors.omega) == pair
        assert factors.phi * factors.omega == pytest.approx(1.5, rel=0.005)
    assert rows.WELD_COMPRESSION == rows.WELD_TENSION


def test_en_plug() -> None:
    """EN 1993-1-8 4.3.5 and 4.8, from memory: 24 mm hole in 12 mm, f_u 430, beta_w 0.85: 20 mm least, 105.7 kN."""
    assert s4_8_plug_welds.least_hole(t=12.0, d_8=8.0) == pytest.approx(20.0)
    strength = shear_strength(f_u=430.0, beta_w=0.85, gamma_M2=1.25)
    assert s4_8_plug_welds.resistance(f_vw_d=strength, A_w=452.39) == pytest.approx(105.7e3, rel=2e-4)


@pytest.mark.parametrize(
    ("first", "second", "thickness", "unwelded", "full"),
    [(10, 10, 20, 3, True), (9, 10, 20, 2, False), (12, 10, 20, 3.5, False), (6, 6, 10, 2.5, False)],
)
def test_tee_of_full_strength(first: float, second: float, thickness: float, unwelded: float, full: bool) -> None:
    """EN 1993-1-8 4.7.3(1): both throats reach the thickness, and the gap is within 3 mm and a fifth of it."""
    assert s4_7_butt_welds.tee_is_full_strength(float(first), float(second), float(thickness), float(unwelded)) is full


@pytest.mark.parametrize(("sixteenths", "least"), [(8, 13), (6, 11), (9, 15)])
def test_least_hole(sixteenths: int, least: int) -> None:
    """AISC 360-22 J2.3b: thickness plus 5/16 in, up to the next odd sixteenth (13 and 11 stand, 14 goes to 15)."""
    rules = j2_3_plug_slot
    found = rules.least_hole(t=sixteenths * rules.SIXTEENTH, c=rules.CLEAR, u=rules.SIXTEENTH, same=1e-9)
    assert found == pytest.approx(least * rules.SIXTEENTH)
