"""AISC 360-22 section J4: the parts beside the weld, against published examples."""

from math import sqrt
from typing import Literal

import numpy as np
import pytest
from tests.standards.welds import INCH, KIP_PER_INCH, KSI

from truethroat_service.engine.rule_set import PartMetal
from truethroat_service.standards.aisc_360_22 import j4_base_metal
from truethroat_service.standards.aisc_360_22.chapter_b3_available_strength import Factors
from truethroat_service.standards.aisc_360_22.rules import AiscParts

Method = Literal["LRFD", "ASD"]


def _part(thickness: float, f_y: float, f_u: float) -> PartMetal:
    """Part by inches and ksi."""
    return PartMetal(thickness * INCH, f_y * KSI, f_u * KSI)


@pytest.mark.parametrize(
    ("factors", "phi", "omega"),
    [
        (j4_base_metal.TENSION_YIELD, 0.90, 1.67),
        (j4_base_metal.TENSION_RUPTURE, 0.75, 2.00),
        (j4_base_metal.SHEAR_YIELD, 1.00, 1.50),
        (j4_base_metal.SHEAR_RUPTURE, 0.75, 2.00),
    ],
)
def test_factors(factors: Factors, phi: float, omega: float) -> None:
    """Resistance and safety factors of the four limit states: ANSI/AISC 360-22 J4.1 and J4.2."""
    assert (factors.phi, factors.omega) == (phi, omega)


@pytest.mark.parametrize(
    ("method", "thickness", "f_y", "f_u", "length", "kip"),
    [
        # AISC Design Examples v16.0, J.1 p. J-4: 1/4 in plate, two welds of 27 in, shear rupture.
        ("LRFD", 0.25, 50, 65, 2 * 27, 395),
        ("ASD", 0.25, 50, 65, 2 * 27, 264),
        # II.B-2 p. IIB-25: 14.25 in2 of flange 0.57 in thick in shear rupture (area rounded to 14.3 in print).
        ("LRFD", 0.57, 50, 65, 25, 419),
        # Segui, Steel Design 5th ed., Example 7.9: 1/4 in gusset of A36, 5.4 kip/in by yielding, over 8 in.
        ("LRFD", 0.25, 36, 58, 8, 8 * 5.4),
    ],
)
def test_shear_along_the_weld(
    method: Method, thickness: float, f_y: float, f_u: float, length: float, kip: float
) -> None:
    """The lesser of shear yielding and rupture: AISC Design Examples v16.0 and Segui's Steel Design."""
    strength = AiscParts(method).along(_part(thickness, f_y, f_u))
    assert strength * length * INCH / KIP_PER_INCH / INCH == pytest.approx(kip, rel=0.006)


def test_shear_rupture_of_a36() -> None:
    """A 1/4 in gusset of A36 has 6.525 kip/in in shear rupture: Segui, Steel Design 5th ed., Example 7.9."""
    nominal = j4_base_metal.shear_rupture(F_u=58 * KSI, t=0.25 * INCH)
    assert j4_base_metal.SHEAR_RUPTURE.phi * nominal == pytest.approx(6.525 * KIP_PER_INCH, rel=1e-9)


@pytest.mark.parametrize(
    ("method", "f_y", "f_u", "ksi"),
    # By hand from J4.1: 0.90 F_y or F_y/1.67, 0.75 F_u or F_u/2.00, the lesser. A992 and A500 Gr C by yielding, a
    # steel of 50/55 by rupture (invented, to bring rupture first).
    [
        ("LRFD", 50, 65, 45.0),
        ("ASD", 50, 65, 29.94),
        ("LRFD", 36, 58, 32.4),
        ("LRFD", 50, 55, 41.25),
        ("ASD", 50, 55, 27.5),
    ],
)
def test_tension_across_the_weld(method: Method, f_y: float, f_u: float, ksi: float) -> None:
    """The lesser of tension yielding and rupture: ANSI/AISC 360-22 J4.1 by hand."""
    assert AiscParts(method).across(_part(0.5, f_y, f_u)) == pytest.approx(ksi * 0.5 * KIP_PER_INCH, rel=2e-4)


@pytest.mark.parametrize(("method", "ksi"), [("LRFD", 30.0), ("ASD", 20.0)])
def test_shear_yielding(method: Method, ksi: float) -> None:
    """Shear yielding at 0.60 F_y with 1.00 and 1.50: ANSI/AISC 360-22 J4.2(a) by hand, 50 ksi steel of high rupture."""
    assert AiscParts(method).along(_part(1.0, 50, 100)) == pytest.approx(ksi * KIP_PER_INCH, rel=1e-9)


@pytest.mark.parametrize("method", ["LRFD", "ASD"])
@pytest.mark.parametrize(
    ("sides", "sixteenths", "f_u", "thickness"),
    [
        (1, 3, 65, 0.143),  # Design Examples v16.0, II.A-17A p. IIA-175 and II.C-2: 3.09 D/F_u
        (1, 5, 65, 0.238),  # II.A-2A p. IIA-49
        (1, 5, 62, 0.25),  # K.3 p. K-17
        (1, 4, 62, 0.199),  # K.2 p. K-13
        (2, 4, 65, 0.381),  # II.C-1 p. IIC-4: 6.19 D/F_u
        (2, 3, 65, 0.286),  # II.A-11A p. IIA-129
    ],
)
def test_thickness_that_matches_the_weld(
    method: Method, sides: int, sixteenths: float, f_u: float, thickness: float
) -> None:
    """A part of 3.09 D/F_u (6.19 with a weld on each side) shears through with the weld: AISC Manual, Eqs. 9-6, 9-7."""
    weld = sides * sixteenths * {"LRFD": 1.392, "ASD": 0.928}[method] * KIP_PER_INCH
    # A yield strength near rupture, so that rupture alone governs as in those equations.
    assert AiscParts(method).along(_part(thickness, f_u, f_u)) == pytest.approx(weld, rel=0.004)


def test_matching_thickness_constants() -> None:
    """The constants themselves: 3.09 and 6.19 times D/F_u are 70 ksi of leg over root two, once and twice."""
    for constant, sides in ((3.09, 1), (6.19, 2)):
        nominal = j4_base_metal.shear_rupture(F_u=65 * KSI, t=constant / 65 * INCH)
        assert nominal == pytest.approx(sides * 0.60 * 70 * KSI * INCH / 16 / sqrt(2), rel=0.002)


def test_lists_of_parts() -> None:
    """A column of thicknesses gives a column of strengths, each the scalar's."""
    thickness = np.array([3.0, 6.0, 12.0])
    column = AiscParts("ASD").across(PartMetal(thickness, 250.0, 400.0))
    np.testing.assert_allclose(np.asarray(column), thickness * min(250 / 1.67, 400 / 2.0), rtol=1e-12)


@pytest.mark.parametrize("part", [PartMetal(6.0, 250.0), PartMetal(6.0, None, 400.0)])
def test_both_strengths_are_needed(part: PartMetal) -> None:
    """The rule cannot be asked without yield and tensile strength; requests are refused before."""
    for question in (AiscParts("LRFD").across, AiscParts("LRFD").along):
        with pytest.raises(AssertionError):
            question(part)
