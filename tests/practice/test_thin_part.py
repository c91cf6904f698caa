"""Fillets by the thinner part: the shop's rules."""

from math import sqrt

import numpy as np
import pytest

from truethroat_service.engine.rule_set import Groove
from truethroat_service.practice import thin_part


def test_two_sides_take_three_quarters() -> None:
    """12 mm plate from both sides: legs of 9 mm, throats of 1.06 t in all (Blodgett, Design of Weldments, 6.2-7)."""
    leg = thin_part.leg_from_two_sides(t=12.0)
    assert leg == pytest.approx(9.0)
    assert 2 * leg / sqrt(2) / 12.0 == pytest.approx(1.06, rel=0.005)
    assert "Blodgett" in str(thin_part.leg_from_two_sides.source)
    assert thin_part.leg_from_two_sides.source.mark == "second-hand"


def test_one_side_takes_the_thickness() -> None:
    """One fillet: leg of the thinner part's thickness, throat 0.707 of it: common practice, no source."""
    leg = thin_part.leg_from_one_side(t=6.0)
    assert leg == 6.0
    assert leg / sqrt(2) / 6.0 == pytest.approx(0.707, abs=0.001)
    assert thin_part.leg_from_one_side.source.mark == "common practice, no source"


@pytest.mark.parametrize("thickness", [0.9, 3.0, 25.0])
def test_an_edge_offers_its_thickness(thickness: float) -> None:
    """Along an edge the leg goes up to the thickness: common practice, no source."""
    leg, source = thin_part.largest_edge_leg(thickness)
    assert leg == thickness
    assert source.mark == "common practice, no source"
    assert "edge" in str(source)


def test_grooves_of_the_shop() -> None:
    """A prepared depth counts whole, a face while it stands, and no least throat is set: common practice, no source."""
    rules = thin_part.ThinPartGroove()
    taken, source = rules.deduction(Groove("single-bevel", 0.5, None, None))
    assert taken == 0.0
    assert source.mark == "common practice, no source"
    assert rules.minimum_throat(12.0) is None
    assert rules.face_counts is True


def test_no_least_size_has_its_source() -> None:
    """That the shop sets no least fillet is itself cited: common practice, no source."""
    assert thin_part.NO_LEAST_SIZE.mark == "common practice, no source"


def test_thin_parts_of_a_list() -> None:
    """Columns go through row by row."""
    t = np.array([0.9, 6.0, 12.0])
    np.testing.assert_allclose(np.asarray(thin_part.leg_from_two_sides(t=t)), [0.675, 4.5, 9.0])
    np.testing.assert_allclose(np.asarray(thin_part.largest_edge_leg(t)[0]), t)
