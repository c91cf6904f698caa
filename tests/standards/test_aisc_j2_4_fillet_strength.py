"""AISC 360-22 sections J2.4 and B3 with Table J2.5: strength of fillets, against published examples."""

from math import pi, radians, sqrt
from typing import Literal

import numpy as np
import pytest
from tests.standards.welds import INCH, KIP_PER_INCH, KSI, pull

from truethroat_service.engine.rule_set import PartMetal, WeldMetal
from truethroat_service.standards.aisc_360_22 import EDITION, j2_4_fillet_strength
from truethroat_service.standards.aisc_360_22.chapter_b3_available_strength import (
    Factors,
    available,
    nominal_needed,
)
from truethroat_service.standards.aisc_360_22.rules import AiscParts, AiscWeld

Method = Literal["LRFD", "ASD"]
E70 = WeldMetal(filler=70 * KSI)
APART = WeldMetal(filler=70 * KSI, compatible=False)
SIXTEENTH = INCH / 16


def _sixteenths(method: Method, kip_per_inch: float, theta: float = 0.0, metal: WeldMetal = E70) -> float:
    """Leg, in sixteenths of an inch, of a square fillet that carries a force per length."""
    throat = AiscWeld(method).required_throat(pull(kip_per_inch * KIP_PER_INCH, theta), metal)
    return float(throat) * sqrt(2) / SIXTEENTH


def test_nominal_stress_of_e70() -> None:
    """Weld metal of 70 ksi has a nominal stress of 42 ksi: ANSI/AISC 360-22 Table J2.5, 0.60 F_EXX."""
    assert j2_4_fillet_strength.nominal_stress(F_EXX=70 * KSI) == pytest.approx(42 * KSI, rel=1e-12)


@pytest.mark.parametrize(("method", "constant"), [("LRFD", 1.392), ("ASD", 0.928)])
def test_design_constants(method: Method, constant: float) -> None:
    """A sixteenth of E70 leg carries 1.392 (LRFD) or 0.928 (ASD) kip per inch: AISC Manual, part 8."""
    assert _sixteenths(method, constant) == pytest.approx(1.0, rel=5e-4)
    assert _sixteenths(method, 6 * constant) == pytest.approx(6.0, rel=5e-4)


def test_nominal_constant() -> None:
    """A sixteenth of E70 leg has a nominal 1.856 kip per inch: AISC Manual, part 8."""
    throat = j2_4_fillet_strength.required_throat(r_n_req=1.856 * KIP_PER_INCH, F_nw=42 * KSI, k_ds=1.0)
    assert throat * sqrt(2) == pytest.approx(SIXTEENTH, rel=5e-4)


@pytest.mark.parametrize(
    ("theta", "factor"),
    # 1.5 at 90 deg: AISC Design Examples v16.0, II.B-1 p. IIB-16. The rest by hand from Eq. J2-5.
    [(0, 1.0), (30, 1.1768), (45, 1.2973), (60, 1.4030), (90, 1.5)],
)
def test_directional_factor(theta: float, factor: float) -> None:
    """Strength grows with the angle to the axis where the elements strain alike: ANSI/AISC 360-22 Eq. J2-5."""
    alike = j2_4_fillet_strength.directional_factor(theta=radians(theta), compatible=True)
    assert alike == pytest.approx(factor, abs=5e-5)
    assert j2_4_fillet_strength.directional_factor(theta=radians(theta), compatible=False) == 1.0


def test_directional_factor_of_a_list() -> None:
    """Each row of a list has its own say whether its elements strain alike: ANSI/AISC 360-22 J2.4(a)(1) and (3)."""
    theta = np.radians([0.0, 90.0, 90.0])
    factors = j2_4_fillet_strength.directional_factor(theta=theta, compatible=np.array([True, True, False]))
    np.testing.assert_allclose(np.asarray(factors), [1.0, 1.5, 1.0])
    np.testing.assert_allclose(j2_4_fillet_strength.directional_factor(theta=theta, compatible=False), np.ones(3))


def test_nominal_stress_of_a_transverse_weld() -> None:
    """Across its axis an E70 fillet has 63.0 ksi: AISC Design Examples v16.0, II.A-11C p. IIA-144."""
    k_ds = j2_4_fillet_strength.directional_factor(theta=pi / 2, compatible=True)
    assert j2_4_fillet_strength.nominal_stress(F_EXX=70 * KSI) * k_ds == pytest.approx(63.0 * KSI, rel=1e-9)


@pytest.mark.parametrize(
    ("method", "kip", "inches_of_weld", "theta", "sixteenths", "share"),
    # AISC Design Examples v16.0, published to three figures.
    [
        ("LRFD", 161, 2 * 7, 90, 5.51, 0.002),  # II.B-1 p. IIB-16
        ("ASD", 108, 2 * 7, 90, 5.54, 0.002),
        ("LRFD", 168, 2 * 12.1, 0, 5, 0.006),  # II.B-2 p. IIB-25
        ("ASD", 112, 2 * 12.1, 0, 5, 0.006),
        ("LRFD", 168, 4 * 7.54, 0, 4, 0.002),  # II.C-1 p. IIC-4
        ("ASD", 112, 4 * 7.54, 0, 4, 0.002),
        ("LRFD", 104, 4 * 6.23, 0, 3, 0.004),  # II.C-2 p. IIC-18
        ("ASD", 69.2, 4 * 6.21, 0, 3, 0.004),
        ("LRFD", 165, 4 * 9.88, 0, 3, 0.002),  # II.C-2 p. IIC-19
        ("ASD", 110, 4 * 9.88, 0, 3, 0.002),
        ("LRFD", 67.9, 2 * 8.125, 0, 3, 0.002),  # II.A-11A p. IIA-125
        ("ASD", 45.3, 2 * 8.125, 0, 3, 0.003),  # printed 45.3, Table 10-4 prints 45.2
        ("LRFD", 128, 2 * 11.5, 0, 4, 0.003),  # K.2 p. K-12
        ("ASD", 85.5, 2 * 11.5, 0, 4, 0.003),
    ],
)
def test_legs_of_worked_examples(
    method: Method, kip: float, inches_of_weld: float, theta: float, sixteenths: float, share: float
) -> None:
    """Legs, or legs that go with printed lengths, of AISC Design Examples v16.0."""
    assert _sixteenths(method, kip / inches_of_weld, theta) == pytest.approx(sixteenths, rel=share)


@pytest.mark.parametrize(("method", "kip"), [("LRFD", 206), ("ASD", 137)])
def test_long_weld_of_the_design_example(method: Method, kip: float) -> None:
    """Two 27 in welds of 3/16 in at 0.912 carry 206 (LRFD), 137 kip (ASD): AISC Design Examples v16.0, J.1 p. J-3."""
    assert _sixteenths(method, kip / (2 * 27)) == pytest.approx(3 * 0.912, rel=0.006)


@pytest.mark.parametrize(
    ("method", "per_inch"),
    # McCormac & Csernak, Structural Steel Design 5th ed., Example 14-1 (uses 0.707): 1/4 in leg.
    [("LRFD", 5.56), ("ASD", 3.71)],
)
def test_quarter_inch_fillet(method: Method, per_inch: float) -> None:
    """A 1/4 in fillet carries 5.56 (LRFD), 3.71 kip per inch (ASD): McCormac & Csernak, Example 14-1."""
    assert _sixteenths(method, per_inch) == pytest.approx(4.0, rel=0.003)


def test_fillet_to_develop_a_branch_wall() -> None:
    """A 50 ksi wall needs an E70 throat of 1.43 t, with the directional factor 0.95 t: 360-22 commentary K5."""
    wall = AiscParts("LRFD").across(PartMetal(1.0, 50 * KSI, 62 * KSI))
    assert AiscWeld("LRFD").required_throat(pull(float(wall)), APART) == pytest.approx(1.43, abs=0.005)
    assert AiscWeld("LRFD").required_throat(pull(float(wall)), E70) == pytest.approx(0.95, abs=0.005)


@pytest.mark.parametrize(("method", "from_nominal"), [("LRFD", 0.75), ("ASD", 0.5)])
def test_from_nominal_to_available_and_back(method: Method, from_nominal: float) -> None:
    """LRFD multiplies by phi and ASD divides by Omega: ANSI/AISC 360-22 B3.1 and B3.2, fillets 0.75 and 2.00."""
    fillet = j2_4_fillet_strength.FILLET_SHEAR
    assert fillet == Factors(phi=0.75, omega=2.00)
    assert available(method, fillet, 100.0) == pytest.approx(100.0 * from_nominal)
    assert nominal_needed(method, fillet, 100.0 * from_nominal) == pytest.approx(100.0)


def test_sources() -> None:
    """Each step cites its clause of this edition."""
    assert str(j2_4_fillet_strength.directional_factor.source) == f"{EDITION}, J2.4(a), Eq. J2-5"
    assert str(j2_4_fillet_strength.nominal_stress.source) == f"{EDITION}, Table J2.5, fillet welds"


def test_filler_strength_is_needed() -> None:
    """The rule cannot be asked without a filler metal; requests are refused before."""
    with pytest.raises(AssertionError):
        AiscWeld("LRFD").required_throat(pull(100.0), WeldMetal())
