"""Sizes that cover the tolerance they are made to: legs of fillets and depths of grooves, worked by hand."""

from __future__ import annotations

from dataclasses import replace
from math import pi, sqrt

import pytest
from hypothesis import strategies as st
from tests.application.asked import fillet_size, groove_size
from tests.application.joints import given, hundredths, mm

from truethroat_service.application.fillet_size.request import FilletSizeRequest, Joint, SharedForce
from truethroat_service.application.groove_size.request import GrooveForce, GrooveJoint, GrooveSizeRequest, PartialWeld
from truethroat_service.application.joints.metals import Filler, Part

TEE = FilletSizeRequest(
    rule_set="aisc-360-22-lrfd",
    joint=Joint("tee", sides=2),
    parts=(Part(12.7, "A36"), Part(12.7, "A36")),
    basis="load",
    load=SharedForce(400e3, 300.0, 0.0),
    filler=Filler("E70"),
    size_step=0.01,
)
GROOVE = GrooveSizeRequest(
    rule_set="aisc-360-22-lrfd",
    joint=GrooveJoint("butt"),
    parts=(Part(25.0, "A36"), Part(25.0, "A36")),
    weld=PartialWeld("partial", groove="single-bevel", depth_step=0.01),
    basis="load",
    load=GrooveForce(600e3, 300.0, pi / 2),
    filler=Filler("E70"),
    process="GMAW",
    position="1G",
)


def test_a_leg_covers_its_tolerance() -> None:
    """By hand: 400 kN on two welds of 300 mm are 667 N/mm; E70 carries 0.75 * 0.60 * 482.6 = 217.2 MPa, so 3.07 mm.

    As a leg that is 4.34 mm, under the least of 3/16 in = 4.7625 mm; a tolerance of 1 mm makes it 5.7625, to the step
    5.77. At the worst 4.77 * 0.7071 * 217.2 = 732 N/mm are carried, and 667/732 = 91 % used.
    """
    sized = fillet_size(replace(TEE, leg_tolerance=1.0))
    assert mm(sized["specify"]["leg"]) == pytest.approx(5.77)
    worst = 4.77 / sqrt(2) * 0.75 * 0.60 * 70 * 6.894757
    assert sized["strength"]["weld"]["value"] == pytest.approx(worst, rel=1e-6)
    assert sized["utilisation"] == pytest.approx(400e3 / 600 / worst, rel=1e-6)


def test_a_leg_along_an_edge_keeps_its_maximum() -> None:
    """By hand: the edge of 6 mm takes 6 mm of leg (J2.2b(b), under 1/4 in); 4.7625 mm and 1.5 of tolerance are over."""
    lap = replace(TEE, joint=Joint("lap", sides=2), parts=(Part(6.0, "A36"), Part(12.7, "A36")), edge_of=1)
    assert fillet_size(replace(lap, leg_tolerance=1.5, load=SharedForce(60e3, 300.0, 0.0)))["verdict"] == "enough"
    assert fillet_size(replace(lap, leg_tolerance=3.0, load=SharedForce(60e3, 300.0, 0.0)))["verdict"] != "enough"


def test_a_depth_covers_its_tolerance() -> None:
    """By hand: 600 kN over 300 mm are 2000 N/mm; E70 in tension 0.80 * 0.60 * 482.6 = 231.7 MPa, so 8.63 mm of throat.

    GMAW in the flat position loses nothing in a 45 deg bevel, so the depth is 8.64, and with 1 mm of tolerance 9.64.
    """
    stress = 0.80 * 0.60 * 70 * 6.894757
    assert 2000 / stress == pytest.approx(8.633, abs=1e-3)
    plain, loose = groove_size(GROOVE), groove_size(replace(GROOVE, weld=replace(GROOVE.weld, depth_tolerance=1.0)))
    assert mm(plain["preparation"]["depth"]) == pytest.approx(8.64)
    assert mm(loose["preparation"]["depth"]) == pytest.approx(9.64)
    assert mm(loose["preparation"]["throat"]) == pytest.approx(8.64)
    assert mm(loose["preparation"]["land"]) == pytest.approx(25.0 - 9.64)


@given(first=hundredths(0, 3), more=hundredths(0, 3), force=st.integers(50, 500))
def test_a_wider_tolerance_never_asks_for_less(first: float, more: float, force: int) -> None:
    """Legs and depths grow with what they have to cover, and are never used over what they have at the worst."""
    load = SharedForce(force * 1e3, 300.0, pi / 4)
    fillets = [fillet_size(replace(TEE, load=load, leg_tolerance=off)) for off in (first, first + more)]
    legs = [sized["specify"]["leg"]["value"] for sized in fillets if sized["specify"] is not None]
    assert legs == sorted(legs)
    assert all(sized["utilisation"] <= 1.0 + 1e-9 for sized in fillets if sized["utilisation"] is not None)
    grooves = [
        groove_size(replace(GROOVE, weld=replace(GROOVE.weld, depth_tolerance=off))) for off in (first, first + more)
    ]
    depths = [sized["preparation"]["depth"]["value"] for sized in grooves if sized["preparation"] is not None]
    assert depths == sorted(depths)
    assert all(sized["utilisation"] <= 1.0 + 1e-9 for sized in grooves if sized["utilisation"] is not None)
