"""Customary units in engine units, and what a rule set is."""

from dataclasses import FrozenInstanceError

import pytest

from truethroat_service.engine import ENGINE_VERSION
from truethroat_service.engine.formula import Source
from truethroat_service.engine.rule_set import FitUp, Unlisted
from truethroat_service.engine.units import INCH, KSI, inches
from truethroat_service.standards.aisc_360_22.rules import AiscGroove, AiscParts, AiscWeld
from truethroat_service.standards.en_1993_1_1_2005.rules import EnParts
from truethroat_service.standards.en_1993_1_8_2005.rules import EnGroove, EnWeld


def test_inch_is_exact() -> None:
    """An inch is 25.4 mm (international yard and pound agreement, 1959)."""
    assert INCH == 25.4
    assert inches(1 / 4, 1, 2) == (6.35, 25.4, 50.8)
    assert inches() == ()


def test_ksi_is_6_894757_megapascals() -> None:
    """A kip per square inch is 6.894 757 MPa (NIST SP 811, appendix B.9); 70 ksi are 482.6 MPa."""
    assert pytest.approx(6.894757, abs=5e-7) == KSI
    assert pytest.approx(482.6, abs=0.05) == 70 * KSI


def test_a_refusal_names_the_field_to_change() -> None:
    """An unlisted combination says which field to change and why, and is a ValueError."""
    refusal = Unlisted(("process", "the table does not list it"))
    assert refusal.faults == (("process", "the table does not list it"),)
    assert str(refusal) == "the table does not list it"
    assert isinstance(refusal, ValueError)


def test_rules_are_frozen() -> None:
    """What a rule set holds cannot be changed by a request that runs beside another."""
    rules = FitUp(added=lambda gap: gap, free=1.0, largest=3.0, source=Source("", "invented for this test"))
    with pytest.raises(FrozenInstanceError):
        rules.free = 9.0  # type: ignore[misc]
    for instance in (AiscWeld("LRFD"), AiscParts("ASD"), AiscGroove(), EnWeld(True, 1.25), EnParts(1.0), EnGroove()):
        for name in type(instance).__slots__:
            with pytest.raises(FrozenInstanceError):
                setattr(instance, name, None)


def test_engine_has_a_version() -> None:
    """The engine's version is a whole number as text, to be raised when answers change."""
    assert ENGINE_VERSION.isdecimal()
