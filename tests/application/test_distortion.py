"""Properties of the distortion use case over random joints."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from math import degrees, pi
from typing import Any

import pytest
from hypothesis import assume
from hypothesis import strategies as st
from tests.application.joints import given, hundredths, mm

from truethroat_service.application.core.answers import Common
from truethroat_service.application.core.faults import Refused
from truethroat_service.application.distortion import distortion
from truethroat_service.application.distortion.request import (
    Butt,
    Calibration,
    DistortionRequest,
    Groove,
    Joint,
    Lap,
    Member,
    Tee,
    WeldingTolerances,
)

QUANTITIES = ("transverse", "longitudinal", "angular", "edge_lift", "bowing")


@st.composite
def butts(draw: st.DrawFn) -> Butt:
    """Draw a butt with any groove."""
    form = draw(st.sampled_from(["square", "single-v", "single-bevel", "double-v", "double-bevel", "by-area"]))
    opening = draw(hundredths(0.5, 5))
    one_sided = form in ("single-v", "single-bevel", "by-area")
    runs = draw(st.none() | st.integers(1, 9)) if one_sided else None
    if form == "by-area":
        weld = Groove("by-area", opening, area=draw(hundredths(20, 300)), face_width=20.0, root_width=opening)
    elif form == "square":
        weld = Groove("square", opening)
    else:
        weld = Groove(form, opening, draw(hundredths(0, 3)), draw(st.sampled_from([None, pi / 4, pi / 3])))
    return Butt("butt", draw(hundredths(6, 40)), weld, runs, draw(st.none() | st.just(220.0)))


@st.composite
def tees(draw: st.DrawFn, sides: int | None = None) -> Tee:
    """Draw a tee."""
    sides = draw(st.sampled_from([1, 2])) if sides is None else sides
    thickness = draw(hundredths(6, 40))
    return Tee(
        "tee",
        thickness,
        draw(hundredths(3, 15)),
        width=draw(hundredths(60, 400)) if sides == 2 else None,
        sides=sides,
        welded_share=draw(st.sampled_from([1.0, 0.6, 0.25])),
        runs=draw(st.none() | st.integers(1, 6)) if sides == 1 else None,
    )


LAPS = st.builds(Lap, st.just("lap"), hundredths(6, 40), hundredths(3, 15))


@st.composite
def requests(draw: st.DrawFn, joints: st.SearchStrategy[Joint] | None = None) -> DistortionRequest:
    """Draw a request, with a member more often than not."""
    joint = draw(st.one_of(butts(), tees(), LAPS) if joints is None else joints)
    member = None
    if draw(st.booleans()):
        member = Member(float(draw(st.integers(1500, 20000))))
        if draw(st.booleans()):
            second = float(draw(st.integers(100, 9000))) * 1e4
            member = replace(member, second_moment=second, eccentricity=draw(hundredths(5, 200)))
    heat = draw(st.none() | hundredths(0.3, 3)) if member else None
    return DistortionRequest(joint, length=float(draw(st.integers(300, 6000))), member=member, heat_input=heat)


def _value(quantity: dict[str, Any]) -> float:
    """Value of an answered quantity."""
    return float(quantity["value"])


def _methods(band: dict[str, Any]) -> dict[str, float]:
    """Values of a band by method."""
    return {one["method"]: _value(one["value"]) for one in band["methods"]}


@given(request=requests())
def test_a_band_holds_every_method(request: DistortionRequest) -> None:
    """Low and high are the least and greatest method; without a method there are no ends, and a reason."""
    answer = distortion(request).wire()
    for name in QUANTITIES:
        band = answer[name]
        values = _methods(band).values()
        if not values:
            assert (band["low"], band["high"]) == (None, None)
            assert band["left_out"]
            continue
        assert _value(band["low"]) == min(values)
        assert _value(band["high"]) == max(values)
        assert all(value >= 0.0 for value in values)
        assert not set(_methods(band)) & {left["method"] for left in band["left_out"]}


@given(request=requests())
def test_units_change_nothing_but_the_figures(request: DistortionRequest) -> None:
    """Answered in inches, every length is the same length, and the request has the same fingerprint."""
    request = replace(request, size_step=1.0)
    metric = distortion(request).wire()
    inches = distortion(replace(request, common=Common(units="us"))).wire()
    assert metric["provenance"] == inches["provenance"]
    for name in ("transverse", "longitudinal", "edge_lift", "bowing"):
        for one, other in zip(metric[name]["methods"], inches[name]["methods"], strict=True):
            assert _value(one["value"]) == pytest.approx(25.4 * _value(other["value"]), rel=1e-12)
    assert metric["angular"] == inches["angular"]


@given(request=requests(tees(sides=2)), factor=st.sampled_from([1.1, 1.5, 2.0]))
def test_a_flange_turns_with_leg_to_the_1_3(request: DistortionRequest, factor: float) -> None:
    """Angular change of a flange grows with the power 1.3 of the leg, metal with its square, the throat with itself."""
    joint = request.joint
    assert isinstance(joint, Tee)
    assume(factor * joint.leg <= joint.thickness)
    small, large = (
        distortion(request).wire(),
        distortion(replace(request, joint=replace(joint, leg=factor * joint.leg))).wire(),
    )
    for name in ("angular", "edge_lift"):
        ratio = _methods(large[name])["flange"] / _methods(small[name])["flange"]
        assert ratio == pytest.approx(factor**1.3)
    assert _value(large["weld"]["area"]) == pytest.approx(factor**2 * _value(small["weld"]["area"]))


@given(request=requests(st.one_of(tees(), LAPS)))
def test_steps_over_cost_metal_by_the_square_and_give_strength_by_themselves(request: DistortionRequest) -> None:
    """Metal ratio is never shown as strength ratio: one is the other's square."""
    ways = [way for way in distortion(request).wire()["alternatives"] if way["do"] == "over"]
    assert [way["steps"] for way in ways] == [1, 2, 3]
    for way in ways:
        assert way["metal_ratio"] == pytest.approx(way["strength_ratio"] ** 2)
        assert way["strength_ratio"] > 1.0
    assert all(one["metal_ratio"] < two["metal_ratio"] for one, two in pairwise(ways))


@given(request=requests())
def test_alternatives_are_what_asking_for_them_answers(request: DistortionRequest) -> None:
    """Each alternative's band is that of the joint so changed, asked for by itself."""
    joint = request.joint
    for way in distortion(request).wire()["alternatives"]:
        changed: Joint | None = None
        if way["do"] == "over" and not isinstance(joint, Butt):
            changed = replace(joint, leg=mm(way["leg"]))
        elif way["do"] == "intermittent" and not isinstance(joint, Butt):
            changed = replace(joint, welded_share=0.5)
        elif way["do"] == "double-sided" and isinstance(joint, Tee):
            changed = replace(joint, sides=2, leg=mm(way["leg"]), runs=None)
        elif way["do"] == "double-sided" and isinstance(joint, Butt):
            form = joint.weld.groove.replace("single", "double")
            changed = replace(joint, weld=replace(joint.weld, groove=form), runs=None)  # type: ignore[arg-type]
        if changed is None:
            continue
        asked = distortion(replace(request, joint=changed)).wire()
        for name in QUANTITIES:
            if way[name] is None:
                assert asked[name]["low"] is None
            else:
                assert _value(way[name]["low"]) == pytest.approx(_value(asked[name]["low"]), rel=1e-9)
                assert _value(way[name]["high"]) == pytest.approx(_value(asked[name]["high"]), rel=1e-9)


@given(request=requests(), factor=st.sampled_from([0.5, 0.8, 1.25, 3.0]))
def test_calibration_moves_every_method_alike(request: DistortionRequest, factor: float) -> None:
    """What the shop measured over the methods is a factor on each, in the alternatives too."""
    plain = distortion(request).wire()
    tuned = distortion(replace(request, calibration=Calibration(transverse=factor))).wire()
    for one, other in zip(plain["transverse"]["methods"], tuned["transverse"]["methods"], strict=True):
        assert _value(other["value"]) == pytest.approx(factor * _value(one["value"]))
    for one, other in zip(plain["alternatives"], tuned["alternatives"], strict=True):
        if one["transverse"] is not None:
            assert _value(other["transverse"]["high"]) == pytest.approx(factor * _value(one["transverse"]["high"]))
        assert one["longitudinal"] == other["longitudinal"]
    assert plain["longitudinal"] == tuned["longitudinal"]
    assert tuned["provenance"]["parameters"] == {"transverse": factor}


@given(
    request=requests(butts()),
    across=st.sampled_from([20.0, 300.0, 2500.0]),
    asked=st.sampled_from(["A", "B", "C", "D"]),
)
def test_a_class_is_kept_by_the_upper_end(request: DistortionRequest, across: float, asked: Any) -> None:
    """The class told is the tightest whose tolerance the upper end keeps; the verdict goes by the one asked for."""
    answer = distortion(replace(request, iso_13920=WeldingTolerances(linear_class=asked, across=across))).wire()
    (check,) = answer["iso_13920"]
    assert check["value"] == answer["transverse"]["high"]
    kept = [entry["class"] for entry in check["classes"] if mm(entry["tolerance"]) >= mm(check["value"]) * (1 - 1e-9)]
    assert check["keeps"] == (kept[0] if kept else None)
    assert answer["verdict"] == ("within-tolerance" if asked in kept else "out-of-tolerance")
    unasked = distortion(replace(request, iso_13920=WeldingTolerances(across=across))).wire()
    assert (unasked["verdict"], unasked["iso_13920"][0]["verdict"]) == ("estimated", None)


def test_a_small_section_is_left_out_of_the_heat_methods() -> None:
    """0.2 x 3 kJ/mm is 600 kN: on 2500 mm2 240 MPa, over the 235 MPa of the softest structural steel, on 2600 231."""
    joint = Butt("butt", 12.0, Groove("by-area", area=50.0))
    small = DistortionRequest(joint, length=1000.0, member=Member(2500.0), heat_input=3.0)
    assert "tendon-force" not in _methods(distortion(small).wire()["longitudinal"])
    large = replace(small, member=Member(2600.0))
    # 600000/2600 MPa over 210000 MPa, on a metre.
    assert _methods(distortion(large).wire()["longitudinal"])["tendon-force"] == pytest.approx(
        600e3 / 2600 / 210e3 * 1000
    )


def test_a_bow_that_no_member_takes_is_left_out() -> None:
    """0.005 x 200 x 50 x 3000^2/1e6 = 450 mm, over a tenth of the length; ten times the second moment makes it 45."""
    joint = Butt("butt", 12.0, Groove("by-area", area=200.0))
    request = DistortionRequest(joint, length=3000.0, member=Member(5000.0, 1e6, 50.0))
    assert _methods(distortion(request).wire()["bowing"]) == {}
    stiff = replace(request, member=Member(5000.0, 1e7, 50.0))
    assert _methods(distortion(stiff).wire()["bowing"]) == {"by-metal": pytest.approx(45.0)}


def test_a_double_v_is_no_better_than_its_first_side() -> None:
    """Sides welded in turn cancel; the first welded out alone turns by its own wedge, so the band ends there, not at 0.

    12 mm, no land: each side 6 mm deep, 6 tan 30 to each side: 0.1 x 6.928/6 = 0.11547 rad = 6.616 deg.
    """
    weld = Groove("double-v", 2.0, groove_angle=pi / 3)
    band = distortion(DistortionRequest(Butt("butt", 12.0, weld))).wire()["angular"]
    assert _methods(band) == {"sides-in-turn": 0.0, "first-side-alone": pytest.approx(6.616, abs=1e-3)}


def test_one_method_is_told() -> None:
    """A band of one method is no band, and says so; two equal welds of heat are told to be added up."""
    request = DistortionRequest(Tee("tee", 12.0, 6.0, sides=2), length=1000.0, member=Member(5000.0), heat_input=1.0)
    codes = {caution["code"] for caution in distortion(request).wire()["cautions"]}
    assert codes >= {"estimate-for-planning", "rough-estimate", "one-method", "heat-of-one-run", "left-free"}
    assert "runs" not in codes
    runs = replace(request, joint=Tee("tee", 12.0, 6.0, runs=3))
    assert "runs" in {caution["code"] for caution in distortion(runs).wire()["cautions"]}


def test_nothing_to_hold_a_class_against_is_refused() -> None:
    """A lap has no method for angles, so a shorter leg cannot be held against anything."""
    request = DistortionRequest(Lap("lap", 10.0, 6.0), iso_13920=WeldingTolerances(shorter_leg=300.0))
    with pytest.raises(Refused) as caught:
        distortion(request)
    assert [fault.pointer for fault in caught.value.faults] == ["#/iso_13920/shorter_leg"]


def test_one_method_is_doubled_before_it_is_judged() -> None:
    """The flange formula alone: 0.02 x 25.4^0.7 x 8^1.3/20^2 rad each side are under 1 deg, twice that is not.

    ISO 13920 Table 2, class C to 400 mm: 1 deg; published estimates differ by a factor of two (TWI).
    """
    request = DistortionRequest(
        Tee("tee", 20.0, 8.0, sides=2), iso_13920=WeldingTolerances(linear_class="C", shorter_leg=300.0)
    )
    answer = distortion(request).wire()
    (check,) = answer["iso_13920"]
    by_hand = degrees(2 * 0.02 * 25.4**0.7 * 8**1.3 / 20**2)
    assert by_hand == pytest.approx(0.823, abs=0.002)
    assert _value(answer["angular"]["high"]) == pytest.approx(by_hand)
    assert _value(check["value"]) == pytest.approx(2 * by_hand)
    assert (check["verdict"], answer["verdict"]) == ("out", "out-of-tolerance")
