"""EN 1993-1-1:2005 clause 6.2: a plate beside a weld, in tension across it and in shear along it."""

from math import sqrt

import numpy as np
import pytest

from truethroat_service.engine.rule_set import PartMetal
from truethroat_service.standards.en_1993_1_1_2005 import EDITION, s6_2_plate_resistance
from truethroat_service.standards.en_1993_1_1_2005.rules import EnParts


def test_tension_of_a_plate() -> None:
    """A plate 20 by 100 of S235 yields at 470 kN: EN 1993-1-1 eq. (6.6), from memory, by hand."""
    assert EnParts(1.0).across(PartMetal(20.0, 235.0)) * 100.0 == pytest.approx(470000.0)


def test_shear_of_a_plate() -> None:
    """10 mm of S355 shears at 10 x 355/sqrt 3 = 2049.6 N/mm: EN 1993-1-1 eq. (6.18), from memory, by hand."""
    assert EnParts(1.0).along(PartMetal(10.0, 355.0)) == pytest.approx(2049.6, abs=0.05)


def test_partial_factor() -> None:
    """A national gamma_M0 divides both resistances; 1.0 is recommended: EN 1993-1-1 6.1, from memory."""
    assert s6_2_plate_resistance.GAMMA_M0 == 1.0
    part = PartMetal(10.0, 355.0)
    for question in ("across", "along"):
        assert getattr(EnParts(1.0), question)(part) / getattr(EnParts(1.1), question)(part) == pytest.approx(1.1)


def test_plates_of_a_list() -> None:
    """A column of plates gives a column, tension root three times the shear."""
    part = PartMetal(np.array([4.0, 12.0]), np.array([235.0, 460.0]))
    across, along = EnParts(1.0).across(part), EnParts(1.0).along(part)
    np.testing.assert_allclose(np.asarray(across), [940.0, 5520.0])
    np.testing.assert_allclose(np.asarray(across) / np.asarray(along), sqrt(3))


def test_rules_are_marked_as_recalled() -> None:
    """This edition was not read: its citations say so."""
    for formula in (s6_2_plate_resistance.tension, s6_2_plate_resistance.shear):
        assert str(formula.source).startswith(EDITION)
        assert str(formula.source).endswith(", from memory")


def test_yield_strength_is_needed() -> None:
    """The rule cannot be asked without a yield strength; requests are refused before."""
    for question in (EnParts(1.0).across, EnParts(1.0).along):
        with pytest.raises(AssertionError):
            question(PartMetal(10.0))
