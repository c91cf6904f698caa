"""Holes and slots: area and length of a throat's centre line, against shapely's outlines."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString

from truethroat_service.practice.plug_holes import centre_line, fillet_area, hole_area


def _slot(width: float, length: float) -> LineString:
    """Middle line of a slot, from centre to centre of its half-round ends; next to a point for a round hole."""
    return LineString([(0.0, 0.0), (max(length - width, 1e-9), 0.0)])


@given(width=st.floats(10.0, 80.0), more=st.floats(0.0, 150.0), share=st.floats(0.05, 0.5))
def test_hole_and_centre_line_are_those_of_the_outline(width: float, more: float, share: float) -> None:
    """The throat runs from the root at the wall to the middle of the face, its centre a quarter leg inside the wall."""
    leg, length = share * width, width + more
    hole = _slot(width, length).buffer(width / 2.0, quad_segs=256)
    assert hole_area(w=width, L=length) == pytest.approx(hole.area, rel=1e-4)
    root, face = (0.0, 0.0), (leg / 2.0, leg / 2.0)
    inside = (root[0] + face[0]) / 2.0
    middle = _slot(width, length).buffer(width / 2.0 - inside, quad_segs=256)
    assert centre_line(w=width, L=length, z=leg) == pytest.approx(middle.exterior.length, rel=1e-4)


@given(throat=st.floats(2.0, 12.0), line=st.floats(20.0, 200.0), hole=st.floats(100.0, 2000.0))
def test_a_fillet_counts_no_more_than_its_hole(throat: float, line: float, hole: float) -> None:
    """Throat times length while the hole is larger."""
    area = fillet_area(a=throat, l_c=line, A_w=hole)
    assert area <= hole
    assert area == hole or area == pytest.approx(throat * line)
