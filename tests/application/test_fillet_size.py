"""Sizing of fillets: what must hold of any joint, whatever the figures."""

from __future__ import annotations

from dataclasses import replace
from math import cos, pi, sin
from typing import Any

import pytest
from hypothesis import assume
from hypothesis import strategies as st
from tests.application.asked import fillet_size
from tests.application.joints import (
    AISC,
    ALUMINIUM,
    EN,
    EUROCODES,
    FORCE_ANGLES,
    HIGH_STRENGTH,
    RULE_SETS,
    STAINLESS,
    WITH_STRENGTH,
    component_fillets,
    fillets,
    given,
    hundredths,
    mm,
)

from truethroat_service.application.fillet_size.request import FilletSizeRequest, Joint, SharedForce
from truethroat_service.application.joints.loads import ForceComponents
from truethroat_service.application.joints.metals import Filler
from truethroat_service.application.joints.seams import Penetration

ROBOT: dict[str, Any] = {"root_pass": "robotic"}
TIGHT = 1e-11
with_strength = pytest.mark.parametrize("rules", WITH_STRENGTH)
every_rule_set = pytest.mark.parametrize("rules", RULE_SETS)


def required(request: FilletSizeRequest) -> float:
    """Throat that the weld metal needs, mm."""
    return mm(fillet_size(request)["required"]["throat"])


def loaded(request: FilletSizeRequest, factor: float) -> FilletSizeRequest:
    """Request with its load made larger."""
    load = request.load
    if isinstance(load, SharedForce):
        return replace(request, load=replace(load, force=load.force * factor))
    assert isinstance(load, ForceComponents)
    grown = (factor * part for part in (load.normal, load.transverse, load.longitudinal))
    return replace(request, load=ForceComponents(*grown, load.length))


@with_strength
@given(data=st.data(), factor=st.floats(1.0, 20.0))
def test_the_throat_grows_with_the_load(rules: str, data: Any, factor: float) -> None:
    """The throat needed is proportional to the load, so more load never needs less weld."""
    request = data.draw(fillets(rules) | component_fillets(rules))
    assert required(loaded(request, factor)) == pytest.approx(factor * required(request), rel=TIGHT)


@with_strength
@given(data=st.data(), more=st.floats(1.0, 20.0))
def test_more_load_never_specifies_less(rules: str, data: Any, more: float) -> None:
    """The size specified never falls as the load grows, and once out of reach it stays so."""
    request = data.draw(fillets(rules))
    before, after = fillet_size(request)["specify"], fillet_size(loaded(request, more))["specify"]
    if before is None:
        assert after is None
    elif after is not None:
        assert mm(after["leg"]) >= mm(before["leg"])


@pytest.mark.parametrize("rules", AISC)
@given(data=st.data(), factor=st.floats(1.0, 2.0))
def test_a_stronger_filler_needs_less(rules: str, data: Any, factor: float) -> None:
    """By AISC the throat is inverse to the filler metal's strength (AISC 360-22 Table J2.5)."""
    request = data.draw(fillets(rules))
    assert request.filler is not None
    assert request.filler.tensile_strength is not None
    weaker = replace(request, filler=Filler(tensile_strength=request.filler.tensile_strength / factor))
    assert required(request) == pytest.approx(required(weaker) / factor, rel=TIGHT)


@given(request=fillets("aisc-360-22-lrfd") | component_fillets("aisc-360-22-lrfd"))
def test_lrfd_and_asd_agree_at_a_load_ratio_of_1_5(request: FilletSizeRequest) -> None:
    """Omega = 1.5/phi (AISC 360-22 commentary to B3): 1.5 times the load by LRFD needs what the load needs by ASD."""
    asd = replace(request, rule_set="aisc-360-22-asd")
    assert required(loaded(request, 1.5)) == pytest.approx(required(asd), rel=TIGHT)


@pytest.mark.parametrize("rules", [EN, STAINLESS, HIGH_STRENGTH])
@given(data=st.data())
def test_the_simplified_method_never_needs_less(rules: tuple[str, str], data: Any) -> None:
    """EN 1993-1-8 4.5.3.3 takes every force as shear along the throat, so it never needs less than 4.5.3.2."""
    directional = data.draw(fillets(rules[0]) | component_fillets(rules[0]))
    assert required(replace(directional, rule_set=rules[1])) >= required(directional) * (1 - TIGHT)


@pytest.mark.parametrize("rules", [STAINLESS[0], HIGH_STRENGTH[0]])
@given(data=st.data(), factor=st.floats(1.0, 2.0))
def test_stronger_parts_never_need_more(rules: str, data: Any, factor: float) -> None:
    """A higher f_u of either part never needs more throat, and of both less, unless the filler metal is the weaker."""
    request = data.draw(fillets(rules) | component_fillets(rules))
    first, second = request.parts
    assert first.tensile_strength is not None
    assert second.tensile_strength is not None
    one = replace(request, parts=(replace(first, tensile_strength=first.tensile_strength * factor), second))
    both = replace(one, parts=(one.parts[0], replace(second, tensile_strength=second.tensile_strength * factor)))
    assert required(request) * (1 + TIGHT) >= required(one) >= required(both) * (1 - TIGHT)
    if rules == STAINLESS[0]:
        assert required(both) == pytest.approx(required(request) / factor, rel=TIGHT)


@given(data=st.data(), factor=st.floats(1.0, 3.0))
def test_a_weaker_filler_counts_with_its_own_strength(data: Any, factor: float) -> None:
    """EN 1993-1-12 2.8: the throat is inverse to the lesser of the weaker part's and the filler metal's f_u."""
    request = data.draw(fillets(HIGH_STRENGTH[0]))
    weaker = min(part.tensile_strength or 0.0 for part in request.parts)
    at_par = required(replace(request, filler=Filler(tensile_strength=weaker)))
    assert required(replace(request, filler=Filler(tensile_strength=weaker * factor))) == at_par
    weak = required(replace(request, filler=Filler(tensile_strength=weaker / factor)))
    assert weak == pytest.approx(at_par * factor, rel=TIGHT)


@given(data=st.data())
def test_alloys_may_be_named_in_either_order(data: Any) -> None:
    """EN 1999-1-1 Table 8.8: of two alloys the lower value counts, whichever part has it, at 90 deg along the weld."""
    request = data.draw(fillets(ALUMINIUM))
    assert isinstance(request.load, SharedForce)
    request = replace(request, joint=replace(request.joint, angle=pi / 2), load=replace(request.load, angle=0.0))
    swapped = replace(request, parts=(request.parts[1], request.parts[0]))
    assert required(swapped) == pytest.approx(required(request), rel=TIGHT)


@every_rule_set
@given(data=st.data(), gap=hundredths(0, 4.76))
def test_what_is_specified_is_the_next_step_up(rules: str, data: Any, gap: float) -> None:
    """The size specified covers what is required and the minimum, with the gap, by less than a step."""
    request = data.draw(fillets(rules))
    request = replace(request, joint=replace(request.joint, root_gap=gap))
    answer = fillet_size(request)
    assume(answer["specify"] is not None)
    # AWS D1.1:2020 7.21.1: a gap over 1/16 in is added whole to the leg, which stands square on the other plate.
    added = (gap if gap > 25.4 / 16 else 0.0) / sin(request.joint.angle)
    least = max(mm(answer["required"]["leg"]), mm(answer["minimum"]["leg"])) + added
    leg = mm(answer["specify"]["leg"])
    assert leg >= least * (1 - 1e-9)
    ratio = mm(answer["specify"]["throat"]) / leg
    by_throat = rules in EUROCODES
    step = request.size_step or 0.0
    assert (leg - least) * (ratio if by_throat else 1.0) < step * (1 + 1e-9)
    sized = mm(answer["specify"]["throat" if by_throat else "leg"])
    assert sized / step == pytest.approx(round(sized / step), abs=1e-9)
    if answer["maximum"] is not None:
        assert leg - added <= mm(answer["maximum"]["leg"]) * (1 + 1e-9)


@with_strength
@given(data=st.data())
def test_a_size_that_is_enough_is_not_used_up(rules: str, data: Any) -> None:
    """Enough means a utilisation of at most 1, and a strength of at least the load; otherwise nothing is specified."""
    request = data.draw(fillets(rules) | component_fillets(rules))
    answer = fillet_size(request)
    if answer["verdict"] == "enough":
        assert answer["utilisation"] <= 1 + 1e-9
        assert answer["specify"] is not None
    else:
        assert answer["verdict"] == "cannot-be-reached"
        assert answer["specify"] is None
        assert answer["reasons"]
    load = request.load
    if isinstance(load, SharedForce):
        per_length = load.force / (request.joint.sides * load.length)
    else:
        assert isinstance(load, ForceComponents)
        per_length = (load.normal**2 + load.transverse**2 + load.longitudinal**2) ** 0.5
    if answer["utilisation"] is not None:
        strengths = [answer["strength"]["weld"], *answer["strength"]["base_metal"]]
        used = max(per_length / strength["value"] for strength in strengths)
        assert answer["utilisation"] == pytest.approx(used, rel=1e-9)


@with_strength
@given(data=st.data(), angle=FORCE_ANGLES)
def test_a_force_is_its_components(rules: str, data: Any, angle: float) -> None:
    """A force in the plane of part 2, and its components on each weld by statics, need the same throat and parts."""
    request = data.draw(fillets(rules))
    # On a lap the two welds face opposite ways: shared, both are pushed from the root; by components one is pulled.
    psi = pi / 2 if request.joint.kind == "lap" else request.joint.angle
    assert isinstance(request.load, SharedForce)
    request = replace(request, joint=replace(request.joint, angle=psi), load=replace(request.load, angle=angle))
    assert isinstance(request.load, SharedForce)
    f = request.load.force / (request.joint.sides * request.load.length)
    across = f * sin(angle)
    components = ForceComponents(across * sin(psi), across * cos(psi), f * cos(angle), request.load.length)
    shared, apart = fillet_size(request), fillet_size(replace(request, load=components))
    for name in ("required", "minimum"):
        assert mm(apart[name]["throat"]) == pytest.approx(mm(shared[name]["throat"]), rel=1e-9, abs=1e-12)
    assert apart["verdict"] == shared["verdict"]
    if shared["utilisation"] is not None:
        assert apart["utilisation"] == pytest.approx(shared["utilisation"], rel=1e-7)


@with_strength
@given(data=st.data())
def test_a_tee_may_be_looked_at_from_either_side(rules: str, data: Any) -> None:
    """Naming the other side of a tee the first one changes no size."""
    request = data.draw(fillets(rules))
    one = replace(request, joint=Joint("tee", request.joint.angle, sides=2))
    other = replace(one, joint=replace(one.joint, angle=pi - one.joint.angle))
    for name in ("required", "minimum", "specify"):
        found, mirrored = fillet_size(one)[name], fillet_size(other)[name]
        if found is None:
            assert mirrored is None
        else:
            assert mm(mirrored["leg"]) == pytest.approx(mm(found["leg"]), rel=1e-9)


@with_strength
@given(data=st.data(), sense=st.sampled_from([1.0, -1.0]))
def test_a_push_to_the_far_side_is_a_push_seen_from_there(rules: str, data: Any, sense: float) -> None:
    """With components, mirroring a tee turns the transverse force's sign and nothing else."""
    request = data.draw(component_fillets(rules))
    assert isinstance(request.load, ForceComponents)
    one = replace(request, joint=Joint("tee", request.joint.angle, sides=2))
    load = replace(request.load, transverse=-request.load.transverse, longitudinal=sense * request.load.longitudinal)
    other = replace(one, joint=replace(one.joint, angle=pi - one.joint.angle), load=load)
    assert required(other) == pytest.approx(required(one), rel=1e-9)


@with_strength
@given(data=st.data())
def test_two_welds_carry_twice(rules: str, data: Any) -> None:
    """Twice the force on both sides needs the throat that the force needs on one, where both sides are alike."""
    request = data.draw(fillets(rules))
    assume(request.joint.kind != "inside-corner")
    psi = pi / 2 if request.joint.kind == "tee" else request.joint.angle
    one = replace(request, joint=replace(request.joint, sides=1, angle=psi))
    two = replace(request, joint=replace(request.joint, sides=2, angle=psi))
    assert required(loaded(two, 2.0)) == pytest.approx(required(one), rel=TIGHT)


@pytest.mark.parametrize("rules", [rules for rules in WITH_STRENGTH if rules != ALUMINIUM])
@given(data=st.data(), depth=hundredths(0.1, 3))
def test_only_proven_penetration_counts(rules: str, data: Any, depth: float) -> None:
    """Assumed and measured penetration change no size and are named in a caution; proven takes its depth off."""
    request = data.draw(fillets(rules))
    if rules in AISC:
        # J2.2a: proven penetration counts for a root pass that is not made by hand.
        request = replace(request, **ROBOT)
    bare = fillet_size(request)
    for vouched in ("assumed", "measured"):
        answer = fillet_size(replace(request, penetration=Penetration(depth, vouched)))
        assert answer["required"] == bare["required"]
        assert answer["specify"] == bare["specify"]
        assert f"{vouched}-penetration" in {caution["code"] for caution in answer["cautions"]}
    proven = fillet_size(replace(request, penetration=Penetration(depth, "proven")))
    assert mm(proven["required"]["leg"]) <= mm(bare["required"]["leg"])
    # Between unlike sides the one with the larger leg may change over.
    assume(request.joint.sides == 1 or request.joint.kind == "lap" or request.joint.angle == pi / 2)
    expected = max(mm(bare["required"]["throat"]) - depth, 0.0)
    assert mm(proven["required"]["throat"]) == pytest.approx(expected, rel=1e-9, abs=1e-12)


@pytest.mark.parametrize("rules", WITH_STRENGTH)
@given(data=st.data(), length=st.integers(100, 6000).map(float))
def test_a_long_weld_never_carries_more(rules: str, data: Any, length: float) -> None:
    """The long-weld reduction never lessens what is required, and its factor is that of the size specified."""
    request = data.draw(fillets(rules))
    assert isinstance(request.load, SharedForce)
    angle = request.load.angle
    request = replace(
        request,
        joint=replace(request.joint, kind="lap"),
        load=SharedForce(length * 300, length, angle),
        end_loaded=False,
    )
    short, long = fillet_size(request), fillet_size(replace(request, end_loaded=True))
    assert mm(long["required"]["throat"]) >= mm(short["required"]["throat"]) * (1 - TIGHT)
    factor = long["length"]["factor"]
    assert 0.0 <= factor <= 1.0
    assert mm(long["length"]["effective"]) == pytest.approx(length * factor, rel=1e-12)
    assert short["length"]["factor"] == 1.0
    if long["verdict"] == "enough":
        # What is left of the throat by the factor still is the throat needed without it.
        kept = mm(long["specify"]["throat"]) * factor
        assert kept >= mm(short["required"]["throat"]) * (1 - 1e-9)


@with_strength
@given(data=st.data(), other=hundredths(4, 40))
def test_full_strength_is_a_load_of_the_thinner_parts_strength(rules: str, data: Any, other: float) -> None:
    """Between parts of one steel, full strength needs what a load of the thinner part's strength across needs."""
    request = data.draw(fillets(rules))
    # A tee with a plate behind it: no part 1 shears through before part 2 is used up, and no edge limits the leg.
    request = replace(request, joint=replace(request.joint, kind="tee", stiffened_behind=True))
    request = replace(request, parts=(request.parts[0], replace(request.parts[0], thickness=other)))
    full = fillet_size(replace(request, basis="full-strength", load=None))
    assert full["governs"] in ("full-strength", "minimum-size")
    assert max(full["utilisation"], 1.0) == pytest.approx(1.0)
    # From one side nothing is shared: the strengths answered are those of the parts.
    alone = fillet_size(replace(request, joint=replace(request.joint, sides=1), basis="full-strength", load=None))
    strength = min(part["value"] for part in alone["strength"]["base_metal"])
    load = SharedForce(strength * 1000.0, 1000.0, pi / 2)
    assert required(replace(request, load=load)) == pytest.approx(mm(full["required"]["throat"]), rel=1e-9)


@given(request=fillets("thin-part"))
def test_the_thin_part_sets_the_leg(request: FilletSizeRequest) -> None:
    """The leg is the thinner thickness from one side and three quarters of it from two: common practice, no source."""
    answer = fillet_size(request)
    thinner = min(part.thickness for part in request.parts)
    assert mm(answer["required"]["leg"]) == pytest.approx(thinner * (1.0 if request.joint.sides == 1 else 0.75))
    assert answer["strength"] is None
    assert answer["utilisation"] is None
    assert "no-strength-claimed" in {caution["code"] for caution in answer["cautions"]}


@every_rule_set
@given(data=st.data())
def test_every_answer_says_it_is_an_estimate(rules: str, data: Any) -> None:
    """The safety caution comes first in every answer, and every answer names the rules it comes from."""
    answer = fillet_size(data.draw(fillets(rules)))
    assert answer["cautions"][0]["code"] == "estimate-for-planning"
    assert "licensed engineer" in answer["cautions"][0]["text"]
    assert answer["provenance"]["rule_set"] == rules
    assert answer["provenance"]["clauses"]
    assert answer["reasons"]
