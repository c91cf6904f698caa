"""Readings of a rule that would be unsafe the other way, each worked by hand."""

from __future__ import annotations

from dataclasses import replace
from math import pi, radians, sin, sqrt

import pytest
from tests.application.asked import as_welded, fillet_size, groove_size
from tests.application.joints import mm

from truethroat_service.application.as_welded.request import FilletAsWelded, Required
from truethroat_service.application.core.faults import Refused
from truethroat_service.application.fillet_size.request import BalancedForce, FilletSizeRequest, Joint, SharedForce
from truethroat_service.application.groove_size.request import GrooveJoint, GrooveSizeRequest, TeeButt
from truethroat_service.application.joints.metals import Filler, Part
from truethroat_service.application.joints.seams import Penetration

PSI = 6.894757 / 1000
E70 = 0.75 * 0.60 * 70_000 * PSI
"""Design shear of E70 weld metal, MPa (AISC 360-22 Table J2.5)."""

AISC = FilletSizeRequest(
    rule_set="aisc-360-22-lrfd",
    joint=Joint("tee"),
    parts=(Part(12.0, "A36"), Part(12.0, "A36")),
    basis="load",
    load=SharedForce(300e3, 200.0, 0.0),
    filler=Filler("E70"),
    size_step=0.01,
)
EN = FilletSizeRequest(
    rule_set="en-1993-1-8-2005-simplified",
    joint=Joint("tee"),
    parts=(Part(12.0, "S355"), Part(12.0, "S355")),
    basis="load",
    load=SharedForce(82e3, 40.0, 0.0),
)


@pytest.mark.parametrize("angle", [60.0, 120.0])
def test_a_gap_under_skewed_plates_takes_more_of_a_leg_along_the_face(angle: float) -> None:
    """By hand: 1500 N/mm take 6.907 mm of throat; D1.1's leg is z sin(psi), so a gap of 4 mm takes 4/sin(psi) of z."""
    sized = fillet_size(replace(AISC, joint=Joint("tee", angle=radians(angle), root_gap=4.0)))
    throat = 1500.0 / E70
    leg = throat / sin(pi / 2 - radians(angle) / 2) + 4.0 / sin(radians(angle))
    assert mm(sized["specify"]["leg"]) == pytest.approx(leg, abs=0.011)
    assert mm(sized["specify"]["leg"]) >= leg


def test_a_gap_under_skewed_plates_takes_more_of_a_gauged_leg() -> None:
    """By hand: 11 mm at 120 deg keep 11 - 3/sin(120 deg) = 7.54 mm over a gap of 3 mm, under the 8 mm asked for."""
    readings = FilletAsWelded(
        legs=(11.0, 11.0),
        angle=radians(120.0),
        root_gap=3.0,
        thickness=(12.0, 12.0),
        required=Required(leg=8.0),
        quality="iso-5817-b",
        hollow=0.0,
    )
    answer = as_welded(readings)
    assert answer["verdict"] == "short"
    assert mm(answer["size"]) == pytest.approx(11 - 3 / sin(radians(120)))


def test_penetration_counts_in_the_throat_that_a_length_goes_by() -> None:
    """By hand: 4.5 mm and 4 proven are 8.5 mm of throat, six of which are 51 mm: 40 mm may carry nothing (4.5.1(2)).

    The largest throat of 40 mm is 6.67, and 2050 N/mm need 2050/(490/(sqrt(3) 0.9 1.25)) = 8.15.
    """
    proven = replace(EN, penetration=Penetration(4.0, "proven"))
    answer = fillet_size(proven)
    assert (answer["verdict"], answer["governs"]) == ("cannot-be-reached", "minimum-length")
    longer = replace(proven, load=SharedForce(164e3, 80.0, 0.0))
    assert fillet_size(longer)["verdict"] == "enough"


def test_a_hollow_section_is_as_strong_as_its_design_wall() -> None:
    """By hand: 1/4 in of A500 Grade C is designed with 0.93 * 6.35 = 5.906 mm (AISC 360-22 B4.2).

    0.90 * 50 ksi and 0.75 * 62 ksi are 310.3 and 320.6 MPa, so 1832 N/mm, and 1940 are too many.
    """
    told = replace(
        AISC,
        parts=(Part(25.4, "A992"), Part(6.35, "A500-C", wall="nominal")),
        load=SharedForce(194e3, 100.0, pi / 2),
    )
    answer = fillet_size(told)
    assert answer["strength"]["base_metal"][1]["value"] == pytest.approx(0.90 * 50_000 * PSI * 0.93 * 6.35, rel=1e-6)
    assert (answer["verdict"], answer["governs"]) == ("cannot-be-reached", "base-metal")
    assert "design-wall" in {caution["code"] for caution in answer["cautions"]}
    # Where the thickness sent is the design wall already, nothing is taken off it, and the answer says so.
    plain = fillet_size(replace(told, parts=(Part(25.4, "A992"), Part(5.906, "A500-C"))))
    assert plain["strength"]["base_metal"][1]["value"] == pytest.approx(0.90 * 50_000 * PSI * 5.906, rel=1e-6)
    assert "design-wall" in {caution["code"] for caution in plain["cautions"]}
    with pytest.raises(Refused, match="applies to a hollow section"):
        fillet_size(replace(told, parts=(Part(25.4, "A992", wall="nominal"), Part(6.35, "A500-C"))))


def test_parts_of_one_tensile_strength_go_by_the_higher_beta_w() -> None:
    """By hand: S235 and S275MH both have 360 MPa; 0.85 of S275 needs 1000/(360/(sqrt(3) 0.85 1.25)) = 5.11 mm."""
    load = SharedForce(200e3, 200.0, 0.0)
    for parts in ((Part(10.0, "S235"), Part(10.0, "S275MH")), (Part(10.0, "S275MH"), Part(10.0, "S235"))):
        required = fillet_size(replace(EN, parts=parts, load=load))["required"]
        assert mm(required["throat"]) == pytest.approx(1000.0 * sqrt(3) * 0.85 * 1.25 / 360.0)


def test_penetration_ends_where_the_part_does() -> None:
    """A depth over the thinner part is refused."""
    with pytest.raises(Refused, match="must be at most the 12 mm of the thinner part"):
        fillet_size(replace(EN, penetration=Penetration(12.1, "proven")))


def test_a_t_butt_counts_as_full_strength_only_with_the_filler_of_a_full_penetration() -> None:
    """EN 1993-1-8 4.7.3(1) counts it as 4.7.1, which wants a filler metal no weaker than the part: 490 MPa of S355."""
    tee = GrooveSizeRequest(
        rule_set="en-1993-1-8-2005-simplified",
        joint=GrooveJoint("tee"),
        parts=(Part(20.0, "S355"), Part(20.0, "S355")),
        weld=TeeButt("tee-butt", (10.0, 10.0), 2.0),
        basis="full-strength",
        filler=Filler(tensile_strength=400.0),
    )
    with pytest.raises(Refused, match="must have at least the 490 MPa of the weaker part"):
        groove_size(tee)
    assert groove_size(replace(tee, filler=Filler(tensile_strength=500.0)))["verdict"] == "enough"
    unnamed = groove_size(replace(tee, filler=None))
    assert "matching-filler-assumed" in {caution["code"] for caution in unnamed["cautions"]}


@pytest.mark.parametrize(("base", "shortest"), [(AISC, 20.0), (EN, 30.0)])
def test_balanced_welds_are_no_shorter_than_a_weld_may_be(base: FilletSizeRequest, shortest: float) -> None:
    """By hand: four legs of 5 mm (AISC 360-22 J2.2b(c)), or 30 mm (EN 1993-1-8 4.5.1(2)); the other is 4 times as long.

    The centroid lies at a fifth of the width, so the first weld takes four times the force of the second.
    """
    request = replace(
        base,
        joint=Joint("lap", sides=2),
        load=BalancedForce(60e3, 200.0, 100.0, 20.0),
        size_step=1.0 if base is AISC else None,
    )
    answer = fillet_size(request)
    first, second = (mm(length) for length in answer["balance"]["least_lengths"])
    assert second == pytest.approx(shortest)
    assert first == pytest.approx(4 * shortest)
    assert any("least length" in reason for reason in answer["reasons"])
