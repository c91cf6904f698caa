"""Intermittent, grouped, balanced, one-sided and long fillets: what must hold of any of them."""

from __future__ import annotations

from dataclasses import replace
from math import pi, sqrt
from typing import Any

import pytest
from hypothesis import assume
from hypothesis import strategies as st
from scipy.optimize import brentq
from tests.application.asked import fillet_size
from tests.application.joints import AISC, EN, given, hundredths, mm

from truethroat_service.application.core.faults import Refused
from truethroat_service.application.fillet_size.request import (
    BalancedForce,
    ConcentricForce,
    FilletSizeRequest,
    Joint,
    SharedForce,
    TensionMember,
)
from truethroat_service.application.joints.loads import ForceComponents
from truethroat_service.application.joints.metals import Filler, Part
from truethroat_service.engine.rule_set import Intermittent

with_strength = pytest.mark.parametrize("rules", [*AISC, *EN])


def plain(rules: str, **more: Any) -> FilletSizeRequest:
    """Fillets on both sides of a tee of thick plates, along a force."""
    en = rules in EN
    part = Part(20.0, None, 355.0, 490.0, 0.9 if en else None)
    request = FilletSizeRequest(
        rules,
        Joint("tee", sides=2),
        (part, part),
        "load",
        SharedForce(60e3, 1000.0, 0.0),
        None if en else Filler("E70"),
        size_step=0.5,
    )
    return replace(request, **more)


def run(rules: str, gap: float | None = None, **more: Any) -> Intermittent:
    """Segments of 60 mm, with the widths that EN rules go by."""
    widths = (600.0, 600.0) if rules in EN else None
    return replace(Intermittent(60.0, "shear", gap, widths=widths), **more)


@with_strength
@given(gap=hundredths(1, 150), more=hundredths(0.01, 80))
def test_strength_falls_as_the_gap_grows(rules: str, gap: float, more: float) -> None:
    """A segment carries its pitch, so the throat needed is (l + e)/l of the continuous weld's, whatever the rules."""
    load = ForceComponents(longitudinal=100.0)
    continuous = fillet_size(plain(rules, load=load))
    needed, strengths = [], []
    for one in (gap, gap + more):
        answer = fillet_size(plain(rules, load=load, intermittent=run(rules, one)))
        needed.append(mm(answer["required"]["throat"]))
        strengths.append(answer["intermittent"]["strength"]["value"] / answer["strength"]["weld"]["value"])
        assert needed[-1] == pytest.approx(mm(continuous["required"]["throat"]) * (60 + one) / 60, rel=1e-9)
        assert strengths[-1] == pytest.approx(60 / (60 + one), rel=1e-9)
    assert needed[1] > needed[0]
    assert strengths[1] < strengths[0]


@with_strength
@given(length=hundredths(150, 4000), gap=hundredths(5, 80), member=st.sampled_from(["built-up", "stiffener"]))
def test_the_layout_fills_the_line(rules: str, length: float, gap: float, member: Any) -> None:
    """Ends, segments and even gaps make up the line, no gap over the one asked for; one segment fewer would be."""
    # EN 1993-1-8 4.3.2.2(5): 0.75 of the wider part at both ends of a built-up member, 2 x 112.5 mm.
    assume(gap <= length - 120 and (rules not in EN or member == "stiffener" or length > 225.0))
    load = ForceComponents(longitudinal=50.0, length=length)
    widths = (100.0, 150.0) if rules in EN else None
    answer = fillet_size(plain(rules, load=load, intermittent=run(rules, gap, member=member, widths=widths)))
    found = answer["intermittent"]
    ends = mm(found["end_weld"])
    # EN 1993-1-8 4.3.2.2(5): 0.75 of the wider part in a built-up member; elsewhere a segment.
    assert ends == pytest.approx(max(60.0, 112.5 if rules in EN and member == "built-up" else 0.0))
    if found["count"] is None:
        assert found["even_gap"] is None
        return
    even, inner = mm(found["even_gap"]), found["count"] - 2
    assert 0.0 < even <= gap * (1 + 1e-9)
    assert 2 * ends + inner * 60 + (inner + 1) * even == pytest.approx(length, rel=1e-9)
    if inner:
        assert (length - 2 * ends - (inner - 1) * 60) / inner > gap * (1 - 1e-9)


@pytest.mark.parametrize(("length", "refused"), [(300.0, True), (450.0, True), (460.0, False)])
def test_ends_that_meet_leave_no_gap(length: float, refused: bool) -> None:
    """EN 1993-1-8 4.3.2.2(5), from memory: 0.75 x 300 mm at each end are 450 mm, all of the line or more."""
    load = ForceComponents(longitudinal=50.0, length=length)
    request = plain(EN[0], load=load, intermittent=run(EN[0], 50.0, widths=(300.0, 200.0)))
    if not refused:
        # What is left between the ends, 460 - 450 mm, is the one gap.
        assert mm(fillet_size(request)["intermittent"]["even_gap"]) == pytest.approx(10.0)
        return
    with pytest.raises(Refused, match="take up the whole length") as found:
        fillet_size(request)
    assert [(fault.pointer, fault.code) for fault in found.value.faults] == [("#/intermittent", "inconsistent")]


@with_strength
@given(load=hundredths(20, 400), gap=hundredths(5, 90))
def test_the_largest_gap_and_the_shortest_segment_still_do(rules: str, load: float, gap: float) -> None:
    """At the size specified the gap may grow to the largest, and the segment shrink to the shortest, and no further."""
    force = ForceComponents(longitudinal=load)
    request = plain(rules, load=force, intermittent=run(rules, gap))
    answer = fillet_size(request)
    assume(answer["verdict"] == "enough")
    leg = mm(answer["specify"]["leg"])
    found = answer["intermittent"]
    largest, shortest = mm(found["largest_gap"]), mm(found["shortest_segment"])
    assert largest >= gap * (1 - 1e-9)
    assert shortest <= 60 * (1 + 1e-9)
    wider = fillet_size(replace(request, intermittent=run(rules, largest * (1 - 1e-9))))
    assert mm(wider["specify"]["leg"]) == pytest.approx(leg)
    shorter = fillet_size(replace(request, intermittent=run(rules, gap, segment=shortest * (1 + 1e-9))))
    assert mm(shorter["specify"]["leg"]) == pytest.approx(leg)
    over = fillet_size(replace(request, intermittent=run(rules, largest * 1.01)))
    assert over["specify"] is None or mm(over["specify"]["leg"]) > leg


@with_strength
def test_left_out_the_gap_is_the_largest_allowed(rules: str) -> None:
    """What the answer then finds keeps to every limit, and one of them it uses up."""
    answer = fillet_size(plain(rules, intermittent=run(rules)))
    limits = [limit for limit in answer["intermittent"]["limits"] if limit["bound"] == "most"]
    assert all(limit["verdict"] == "within" for limit in limits)
    assert any(mm(limit["value"]) == pytest.approx(mm(limit["allowed"])) for limit in limits)
    # A longer gap is over it, whatever the size.
    wider = fillet_size(plain(rules, intermittent=run(rules, mm(answer["intermittent"]["gap"]) + 0.1)))
    assert (wider["verdict"], wider["governs"]) == ("cannot-be-reached", "spacing")
    assert wider["specify"] is wider["intermittent"]["callout"] is wider["utilisation"] is None
    assert "at most" in wider["reasons"][0]


def test_segments_too_long_for_any_gap() -> None:
    """AISC counts from centre to centre: 24 x 4 mm is less than a segment of 100 mm."""
    part = Part(4.0, None, 355.0, 490.0)
    request = plain(AISC[0], parts=(part, part), intermittent=run(AISC[0], segment=100.0))
    with pytest.raises(Refused) as refused:
        fillet_size(request)
    [fault] = refused.value.faults
    assert (fault.pointer, fault.code) == ("#/intermittent/segment", "out-of-range")


@pytest.mark.parametrize(
    ("request_", "iso", "aws"),
    [
        (
            plain(EN[0], intermittent=run(EN[0], 100.0, member="stiffener")),
            # 1000 = 7 x 60 + 6 x 96.67; text is rounded down.
            "a 3 mm fillet, both sides, 7 x 60 mm (96.6 mm)",
            "4.243 mm fillet, both sides, 60 mm - 156.6 mm",
        ),
        (
            plain(AISC[0], load=ForceComponents(longitudinal=50.0), intermittent=run(AISC[0], 90.0, staggered=True)),
            "z 8 mm fillet, both sides, n x 60 mm Z (90 mm)",
            "8 mm fillet, both sides, staggered, 60 mm - 150 mm",
        ),
        (
            plain(EN[0], intermittent=run(EN[0], 100.0, loading="tension", widths=(400.0, 300.0))),
            # Ends of 0.75 x 400 mm leave 400: two segments and three gaps of 93.33.
            "a 3 mm fillet, both sides, 2 x 60 mm (93.3 mm), 300 mm at each end",
            "4.243 mm fillet, both sides, 60 mm - 153.3 mm, 300 mm at each end",
        ),
        (
            plain(EN[0], intermittent=run(EN[0], 100.0, loading="tension", widths=(600.0, 300.0))),
            "a 3 mm fillet, both sides, 2 x 450 mm (100 mm)",
            "4.243 mm fillet, both sides, 450 mm - 550 mm",
        ),
    ],
)
def test_callout(request_: FilletSizeRequest, iso: str, aws: str) -> None:
    """ISO 2553 writes number, length and clear gap, AWS A2.4 length and pitch (both from memory)."""
    callout = fillet_size(request_)["intermittent"]["callout"]
    assert callout == {"iso_2553": iso, "aws_a2_4": aws}


def group(along: float, across: float, **more: Any) -> FilletSizeRequest:
    """Group of welds along and across a force, by AISC."""
    return plain(AISC[0], joint=Joint("lap"), load=ConcentricForce(100e3, along, across), end_loaded=False, **more)


@given(along=hundredths(50, 500), across=hundredths(10, 500))
def test_a_group_carries_the_greater_sum(along: float, across: float) -> None:
    """J2.4(b) and its user note: max(Rwl + Rwt, 0.85 Rwl + 1.5 Rwt), which changes over at Rwt = 0.30 Rwl."""
    needed = mm(fillet_size(group(along, across))["required"]["throat"])
    # 0.75 x 0.60 x 70 ksi on the throat.
    stress = 0.75 * 0.60 * 70 * 6.894757293168361
    expected = 100e3 / stress / max(along + across, 0.85 * along + 1.5 * across)
    assert needed == pytest.approx(expected, rel=1e-9)
    counts = fillet_size(group(along, across))["concentric"]["counts"]
    if abs(across - 0.3 * along) > 1e-6 * along:
        assert counts == ("weighted-sum" if across > 0.3 * along else "plain-sum")


@given(along=hundredths(50, 500))
def test_the_change_over_makes_no_step(along: float) -> None:
    """A hair either side of Rwt = 0.30 Rwl the throat needed is the same."""
    less, more = (fillet_size(group(along, 0.3 * along * factor)) for factor in (1 - 1e-6, 1 + 1e-6))
    assert [answer["concentric"]["counts"] for answer in (less, more)] == ["plain-sum", "weighted-sum"]
    assert mm(less["required"]["throat"]) == pytest.approx(mm(more["required"]["throat"]), rel=1e-5)


def test_no_increase_at_the_end_of_a_hollow_section() -> None:
    """J2.4(a)(2): the plain sum alone, and no weighted one is shown."""
    answer = fillet_size(group(200.0, 200.0, hss_end=True))
    assert answer["concentric"]["counts"] == "plain-sum"
    assert answer["concentric"]["weighted_sum"] is None
    assert mm(answer["concentric"]["equivalent_length"]) == pytest.approx(400.0)


def test_parts_beside_a_group() -> None:
    """Beside the transverse weld a part has 1.5 of the equivalent length's force: 100 kN on 470 mm is 319.1 N/mm of it.

    A part of 3 mm at 250 MPa (400) in tension holds the lesser of 0.9*250 and 0.75*400 MPa, 675 N/mm; in shear, beside
    0.85 of it, 0.6*250 MPa (J4.2, 1.00) and 0.75*0.6*400: 450 N/mm.
    """
    thin = Part(3.0, None, 250.0, 400.0)
    answer = fillet_size(group(200.0, 200.0, parts=(Part(20.0, None, 250.0, 400.0), thin)))
    per_length = 100e3 / 470
    used = max(1.5 * per_length / 675, 0.85 * per_length / 450)
    assert answer["strength"]["base_metal"][1]["value"] == pytest.approx(per_length / used, rel=1e-9)


@given(width=hundredths(60, 200), share=st.integers(5, 95), force=hundredths(50, 300))
def test_balanced_welds_turn_nothing(width: float, share: int, force: float) -> None:
    """The two forces add up to the member's and have no moment about its centroid; lengths go with forces."""
    centroid = width * share / 100
    load = BalancedForce(force * 1e3, 900.0, width, centroid)
    answer = fillet_size(plain(EN[1], joint=Joint("lap", sides=2), load=load))
    first, second = (entry["value"] for entry in answer["balance"]["forces"])
    assert first + second == pytest.approx(force, rel=1e-12)
    assert first * centroid == pytest.approx(second * (width - centroid), rel=1e-9)
    lengths = [mm(entry) for entry in answer["balance"]["lengths"]]
    assert lengths[0] / lengths[1] == pytest.approx(first / second, rel=1e-9)
    assert mm(answer["length"]["given"]) == pytest.approx(min(lengths), rel=1e-9)


@given(length=hundredths(60, 600), width=hundredths(30, 300))
def test_shear_lag_wanes_with_length(length: float, width: float) -> None:
    """Table D3.1 case 4: U grows with the welds and is never over 1; two plate widths give 12/13."""

    def lag(at: float) -> float:
        request = plain(AISC[0], joint=Joint("lap", sides=2), load=SharedForce(1e3, at, 0.0))
        answer = fillet_size(replace(request, tension_member=TensionMember(width=width)))
        return float(answer["tension_member"]["shear_lag"])

    assert lag(length) < lag(length * 1.1) < 1.0
    assert lag(2 * width) == pytest.approx(12 / 13)


def test_a_member_too_weak_says_so() -> None:
    """100 x 20 mm at 355 MPa yields at 0.9*355*2000 N = 639 kN: welds for 700 kN do not help."""
    request = plain(AISC[0], joint=Joint("lap", sides=2), load=SharedForce(7e5, 600.0, 0.0))
    answer = fillet_size(replace(request, tension_member=TensionMember(width=100.0)))
    assert (answer["verdict"], answer["governs"]) == ("cannot-be-reached", "tension-member")
    assert "639 kN" in " ".join(answer["reasons"])
    assert answer["specify"] is None


@pytest.mark.parametrize("rules", EN)
@given(pull=hundredths(5, 400), along=hundredths(0, 300), thickness=hundredths(4, 40))
def test_root_bending_meets_the_stress_it_makes(rules: str, pull: float, along: float, thickness: float) -> None:
    """The throat found is the root of the stress equation, as scipy finds it; it is never under the one without."""
    part = Part(thickness, None, 355.0, 490.0, 0.9)
    load = ForceComponents(normal=pull, longitudinal=along)
    request = plain(rules, joint=Joint("tee"), load=load, parts=(part, part), root_bending=True)

    def excess(a: float) -> float:
        arm = thickness / 2 + sqrt(2) * a / 4
        normal = pull / sqrt(2) / a + pull * arm * 6 / a**2
        shear = pull / sqrt(2) / a
        if rules == EN[0]:
            stress = sqrt(normal**2 + 3 * (shear**2 + (along / a) ** 2)) - 490 / 0.9 / 1.25
            return max(stress, normal - 0.9 * 490 / 1.25)
        return sqrt(normal**2 + shear**2 + (along / a) ** 2) - 490 / sqrt(3) / 0.9 / 1.25

    needed = mm(fillet_size(request)["required"]["throat"])
    assert needed == pytest.approx(brentq(excess, 1e-3, 1e3, xtol=1e-12), rel=1e-9)
    assert needed >= mm(fillet_size(replace(request, root_bending=False, held_from_turning=True))["required"]["throat"])


@pytest.mark.parametrize("rules", EN)
@given(pull=hundredths(5, 60))
def test_use_of_a_weld_bent_at_its_root_is_proportional(rules: str, pull: float) -> None:
    """At one size twice the pull uses twice as much of it, and the strength stays."""
    load = ForceComponents(normal=pull)
    request = plain(rules, joint=Joint("tee"), load=load, root_bending=True, size_step=25.0)
    once = fillet_size(request)
    twice = fillet_size(replace(request, load=ForceComponents(normal=2 * pull)))
    assert twice["utilisation"] == pytest.approx(2 * once["utilisation"], rel=1e-9)
    assert twice["strength"]["weld"] == once["strength"]["weld"]


@pytest.mark.parametrize("rules", EN)
@given(length=hundredths(60, 400), force=hundredths(5, 120))
def test_craters_take_two_throats_off(rules: str, length: float, force: float) -> None:
    """What the throat found carries over L - 2a is what the one without carries over L."""
    request = plain(rules, load=SharedForce(force * 1e3, length, 0.0))
    whole = mm(fillet_size(request)["required"]["throat"])
    assume(whole <= length / 8)
    answer = fillet_size(replace(request, ends="craters"))
    throat = mm(answer["required"]["throat"])
    assert throat * (length - 2 * throat) == pytest.approx(whole * length, rel=1e-9)
    if answer["verdict"] == "enough":
        specified = mm(answer["specify"]["throat"])
        assert mm(answer["length"]["effective"]) == pytest.approx(length - 2 * specified, rel=1e-9)
        assert answer["utilisation"] <= 1 + 1e-9


@given(length=st.integers(100, 20000).map(float), longer=st.floats(1.0, 3.0))
def test_a_stiffeners_factor_falls_from_one_to_its_floor(length: float, longer: float) -> None:
    """EN 1993-1-8 4.11(4): whole up to 1.7 m, falling, never under 0.6 (from memory)."""

    def factor(at: float) -> float:
        answer = fillet_size(plain(EN[0], load=SharedForce(60e3, at, 0.0), transverse_stiffener=True))
        return float(answer["length"]["factor"])

    assert 0.6 <= factor(length * longer) <= factor(length) <= 1.0
    if length <= 1700.0:
        assert factor(length) == 1.0


def test_cautions_of_the_options() -> None:
    """Each option brings what must be known of it."""
    cases: list[tuple[str, FilletSizeRequest]] = [
        ("gaps-corrode", plain(EN[0], intermittent=run(EN[0], 50.0))),
        ("end-weld", plain(EN[0], intermittent=run(EN[0], 50.0))),
        ("recalled-limit", plain(AISC[0], intermittent=run(AISC[0], 50.0, member="stiffener"))),
        ("spacing-by-pitch", plain(AISC[0], intermittent=run(AISC[0], 50.0))),
        ("root-bending-model", plain(EN[0], joint=Joint("tee"), root_bending=True)),
        ("national-least-throat", plain(EN[0], minimum_throat="din-na")),
        ("long-stiffener", plain(EN[0], load=SharedForce(60e3, 1701.0, 0.0))),
        ("end-returns", plain(EN[0])),
        ("lap-overlap", plain(AISC[0], joint=Joint("lap"))),
        ("no-length", group(100.0, 100.0)),
    ]
    bare = {caution["code"] for caution in fillet_size(plain(AISC[0]))["cautions"]}
    for code, request in cases:
        assert code in {caution["code"] for caution in fillet_size(request)["cautions"]}, code
        assert code not in bare
    across = plain(EN[0], joint=Joint("tee"), load=SharedForce(60e3, 1000.0, pi / 2), root_bending=True)
    assert "one-sided" not in {caution["code"] for caution in fillet_size(across)["cautions"]}
