"""Tolerances of a leg and of a cut depth: by hand, and what must hold of any weld; the sums are written beside each."""

from __future__ import annotations

from dataclasses import replace
from math import pi, sqrt
from typing import Any

import pytest
from hypothesis import strategies as st
from tests.application.asked import fillet_size, groove_size
from tests.application.grooves import partial, with_weld
from tests.application.joints import AISC, EN, RULE_SETS, fillets, given, hundredths, mm

from truethroat_service.application.fillet_size.request import FilletSizeRequest, Joint, Packing, SharedForce
from truethroat_service.application.groove_size.request import GrooveForce, GrooveJoint, GrooveSizeRequest, PartialWeld
from truethroat_service.application.joints.metals import Filler, Part
from truethroat_service.application.joints.seams import Penetration

CLOSE = 1e-9
EN_STRENGTH = 430.0 / (sqrt(3.0) * 0.85 * 1.25)
"""f_vw.d of EN 1993-1-8 4.5.3.3 for f_u 430 MPa and beta_w 0.85, MPa."""


def aisc(throat: float, **more: Any) -> FilletSizeRequest:
    """Lap along its force that needs a throat: 0.75*0.6*480 = 216 MPa (AISC 360-22 J2.4, Table J2.5)."""
    request = FilletSizeRequest(
        rule_set=AISC[0],
        joint=Joint("lap"),
        parts=(Part(12.0, None, 250.0, 400.0), Part(12.0, None, 250.0, 400.0)),
        basis="load",
        load=SharedForce(216.0 * throat * 200.0, 200.0, 0.0),
        filler=Filler(tensile_strength=480.0),
        size_step=1.0,
    )
    return replace(request, **more)


def en(throat: float, length: float = 200.0, **more: Any) -> FilletSizeRequest:
    """Tee along its force that needs a throat by the simplified method."""
    request = FilletSizeRequest(
        rule_set=EN[1],
        joint=Joint("tee"),
        parts=(Part(20.0, None, 275.0, 430.0, 0.85), Part(20.0, None, 275.0, 430.0, 0.85)),
        basis="load",
        load=SharedForce(EN_STRENGTH * throat * length, length, 0.0),
        size_step=0.5,
    )
    return replace(request, **more)


@pytest.mark.parametrize(
    ("tolerance", "gap", "leg", "worst"),
    [(0.0, 0.0, 9.0, 9.0), (0.5, 0.0, 9.0, 8.5), (1.0, 0.0, 10.0, 9.0), (1.0, 3.0, 13.0, 9.0)],
)
def test_a_leg_with_its_tolerance(tolerance: float, gap: float, leg: float, worst: float) -> None:
    """6 mm of throat is 8.485 mm of leg: 8.985, 9.485 and 12.485 with tolerance and gap, up to the next mm."""
    answer = fillet_size(aisc(6.0, leg_tolerance=tolerance, joint=Joint("lap", root_gap=gap)))
    assert mm(answer["required"]["leg"]) == pytest.approx(6.0 * sqrt(2.0))
    assert mm(answer["specify"]["leg"]) == pytest.approx(leg)
    # Of the parts 0.6*250*12 = 1800 N/mm for 1296 N/mm is less use than of the weld.
    assert answer["utilisation"] == pytest.approx(6.0 * sqrt(2.0) / worst)
    assert answer["strength"]["weld"]["value"] == pytest.approx(216.0 * worst / sqrt(2.0))
    assert any("tolerance" in reason for reason in answer["reasons"]) is (tolerance > 0.0)


def test_the_least_leg_covers_its_tolerance() -> None:
    """By hand: 400 kN on two welds of 300 mm are 667 N/mm; E70 carries 0.75 * 0.60 * 482.6 = 217.2 MPa, so 3.07 mm.

    As a leg that is 4.34 mm, under the least of 3/16 in = 4.7625 mm; a tolerance of 1 mm makes it 5.7625, to the step
    5.77. At the worst 4.77 * 0.7071 * 217.2 = 732 N/mm are carried, and 667/732 = 91 % used.
    """
    plate = Part(12.7, "A36")
    tee = aisc(0.0, joint=Joint("tee", sides=2), parts=(plate, plate), filler=Filler("E70"), size_step=0.01)
    sized = fillet_size(replace(tee, load=SharedForce(400e3, 300.0, 0.0), leg_tolerance=1.0))
    assert mm(sized["specify"]["leg"]) == pytest.approx(5.77)
    worst = 4.77 / sqrt(2) * 0.75 * 0.60 * 70 * 6.894757
    assert sized["strength"]["weld"]["value"] == pytest.approx(worst, rel=1e-6)
    assert sized["utilisation"] == pytest.approx(400e3 / 600 / worst, rel=1e-6)


def test_a_throat_with_the_tolerance_of_its_legs() -> None:
    """4 mm is a leg of 5.657 mm; 6.657 mm of leg is 4.707 mm of throat, so 5 mm; less 1 mm of leg it is 4.293 mm."""
    answer = fillet_size(en(4.0, leg_tolerance=1.0))
    assert mm(answer["specify"]["throat"]) == pytest.approx(5.0)
    assert answer["utilisation"] == pytest.approx(4.0 / (5.0 - 1.0 / sqrt(2.0)))


def test_the_least_size_is_kept_at_the_worst() -> None:
    """EN 1993-1-8 4.5.2(2): 3 mm of throat with 1 mm off the legs is 3.707 mm, so 4 mm."""
    answer = fillet_size(en(1.0, leg_tolerance=1.0))
    assert (answer["governs"], mm(answer["specify"]["throat"])) == ("minimum-size", pytest.approx(4.0))


def test_a_short_weld_carries_at_both_ends_of_its_tolerance() -> None:
    """EN 1993-1-8 4.5.1(2): over 30 mm no throat beyond 5 mm carries: 4 mm with 1.5 mm off the legs is 5.06, so 5.5 mm.

    At its worst it would be 4.44 mm, which carries; laid as specified it may not.
    """
    assert fillet_size(en(4.0, 30.0))["verdict"] == "enough"
    answer = fillet_size(en(4.0, 30.0, leg_tolerance=1.5))
    assert (answer["verdict"], answer["governs"]) == ("cannot-be-reached", "minimum-length")


def test_the_leg_as_specified_keeps_to_the_edge() -> None:
    """J2.2b(b): along an edge of 6 mm no leg over 6 mm; 4 mm of throat is 5.66 mm, 6.16 mm with 0.5 mm, so 7 mm."""
    thin = Part(6.0, None, 250.0, 400.0)
    request = aisc(4.0, parts=(Part(12.0, None, 250.0, 400.0), thin), edge_of=2)
    assert fillet_size(request)["specify"] is not None
    answer = fillet_size(replace(request, leg_tolerance=0.5))
    assert answer["verdict"] == "cannot-be-reached"
    assert any("A closer leg_tolerance would fit" in reason for reason in answer["reasons"])


def test_packing_thinner_than_the_leg_laid_is_reached_over() -> None:
    """EN 1993-1-8 4.4: 4 mm is 5.657 mm of leg, under packing of 6 mm; with 1 mm it is 6.657 mm, over it."""
    request = en(4.0, joint=Joint("lap"), packing=Packing(6.0))
    assert fillet_size(request)["packing"]["welds"] == "to-each-part"
    answer = fillet_size(replace(request, leg_tolerance=1.0))
    # (6.657 + 6)/sqrt2 = 8.95 mm of throat.
    assert (answer["packing"]["welds"], mm(answer["specify"]["throat"])) == ("over-packing", pytest.approx(9.0))


@pytest.mark.parametrize(("sides", "leg"), [(1, 7.0), (2, 6.0)])
def test_a_thin_part_with_a_tolerance(sides: int, leg: float) -> None:
    """6 mm from one side and 4.5 mm from two (common practice, no source), and 1 mm: 7 mm, and 5.5 mm, so 6 mm."""
    request = FilletSizeRequest(
        "thin-part", Joint("tee", sides=sides), (Part(6.0), Part(10.0)), "thin-part", size_step=1.0, leg_tolerance=1.0
    )
    assert mm(fillet_size(request)["specify"]["leg"]) == pytest.approx(leg)


def test_quick_chill_goes_by_the_worst_leg() -> None:
    """Table J2.4 asks for 1/8 in = 3.175 mm on 4 mm: 3.5 mm that may be laid as 3 mm is under it."""
    request = FilletSizeRequest(
        "thin-part", Joint("tee", sides=2), (Part(4.0), Part(10.0)), "thin-part", size_step=0.5, leg_tolerance=0.5
    )
    answer = fillet_size(request)
    assert mm(answer["specify"]["leg"]) == pytest.approx(3.5)
    assert "below-quick-chill-size" in {caution["code"] for caution in answer["cautions"]}


@pytest.mark.parametrize("rules", RULE_SETS)
@given(data=st.data(), less=hundredths(0, 2), more=hundredths(0, 2))
def test_a_wider_tolerance_never_specifies_less(rules: str, data: Any, less: float, more: float) -> None:
    """The leg never falls as its tolerance grows, and at its worst still covers what is required and the least."""
    request = data.draw(fillets(rules))
    close = fillet_size(replace(request, leg_tolerance=less))
    wide = fillet_size(replace(request, leg_tolerance=less + more))
    if close["specify"] is None:
        assert wide["specify"] is None
    if wide["specify"] is None:
        return
    assert mm(wide["specify"]["leg"]) >= mm(close["specify"]["leg"])
    least = max(mm(wide["required"]["leg"]), mm(wide["minimum"]["leg"]))
    assert mm(wide["specify"]["leg"]) - less - more >= least * (1 - CLOSE)
    assert wide["utilisation"] is None or wide["utilisation"] <= 1 + CLOSE


def butt(throat: float, weld: PartialWeld, **more: Any) -> GrooveSizeRequest:
    """Butt along its force that needs a throat by the simplified method (EN 1993-1-8 4.7.2)."""
    request = GrooveSizeRequest(
        rule_set=EN[1],
        joint=GrooveJoint("butt"),
        parts=(Part(20.0, None, 275.0, 430.0, 0.85), Part(20.0, None, 275.0, 430.0, 0.85)),
        weld=weld,
        basis="load",
        load=GrooveForce(EN_STRENGTH * throat * 200.0, 200.0, 0.0),
    )
    return replace(request, **more)


@pytest.mark.parametrize(
    ("form", "throat", "depth", "worst"), [("single-v", 5.8, 7.0, 6.0), ("double-v", 8.4, 5.5, 9.0)]
)
def test_a_depth_with_its_tolerance(form: Any, throat: float, depth: float, worst: float) -> None:
    """5.8 mm and 1 mm: 7 mm deep, 6 mm at worst. From two sides 4.2 and 1 mm each: 5.5 mm, 9 mm in all at worst."""
    answer = groove_size(butt(throat, PartialWeld("partial", form, depth_step=0.5, depth_tolerance=1.0)))
    made = answer["preparation"]
    assert mm(answer["required"]["throat"]) == pytest.approx(throat)
    assert mm(made["depth"]) == pytest.approx(depth)
    assert mm(made["throat"]) == mm(answer["specify"]["throat"]) == pytest.approx(worst)
    assert mm(made["land"]) == pytest.approx(20.0 - depth * (2 if form == "double-v" else 1))
    assert answer["utilisation"] == pytest.approx(throat / worst)
    # Setback and metal are those of the depth as specified.
    nominal = groove_size(butt(depth * (2 if form == "double-v" else 1), PartialWeld("partial", form, depth_step=0.5)))[
        "preparation"
    ]
    for name in ("depth", "setback", "area"):
        assert made[name]["value"] == pytest.approx(nominal[name]["value"])
    assert any("The depth covers its tolerance" in reason for reason in answer["reasons"])


def test_a_depth_of_aisc_covers_its_tolerance() -> None:
    """By hand: 600 kN over 300 mm are 2000 N/mm; E70 in tension 0.80 * 0.60 * 482.6 = 231.7 MPa, so 8.63 mm of throat.

    GMAW in the flat position loses nothing in a 45 deg bevel, so the depth is 8.64, and with 1 mm of tolerance 9.64.
    """
    assert 2000 / (0.80 * 0.60 * 70 * 6.894757) == pytest.approx(8.633, abs=1e-3)
    plate, weld = Part(25.0, "A36"), PartialWeld("partial", groove="single-bevel", depth_step=0.01)
    rules: Any = {"rule_set": AISC[0], "filler": Filler("E70"), "process": "GMAW", "position": "1G"}
    plain = butt(0.0, weld, parts=(plate, plate), load=GrooveForce(600e3, 300.0, pi / 2), **rules)
    close, loose = groove_size(plain), groove_size(with_weld(plain, depth_tolerance=1.0))
    assert mm(close["preparation"]["depth"]) == pytest.approx(8.64)
    assert mm(loose["preparation"]["depth"]) == pytest.approx(9.64)
    assert mm(loose["preparation"]["throat"]) == pytest.approx(8.64)
    assert mm(loose["preparation"]["land"]) == pytest.approx(25.0 - 9.64)


def test_where_nothing_is_cut_the_depth_has_no_tolerance() -> None:
    """Proven penetration of 8 mm keeps 6 mm by itself, whatever a cut might fall short by."""
    weld = PartialWeld("partial", "single-v", penetration=Penetration(8.0, "proven"), depth_tolerance=1.0)
    answer = groove_size(butt(6.0, weld))
    assert mm(answer["preparation"]["depth"]) == 0.0
    assert mm(answer["preparation"]["throat"]) == pytest.approx(8.0)
    assert "Nothing is cut, so the tolerance of the depth takes nothing off." in answer["reasons"]


def test_a_square_edge_that_is_chosen_has_no_tolerance() -> None:
    """On 1/4 in only a square edge has so wide a gap; its throat is what it is without the tolerance, half of that."""
    thin = Part(6.35, None, 250.0, 400.0)
    plain = GrooveSizeRequest(
        rule_set=AISC[0],
        joint=GrooveJoint("butt"),
        parts=(thin, thin),
        weld=PartialWeld("partial", gap=3.175),
        basis="load",
        load=GrooveForce(1000.0, 200.0, 0.0),
        filler=Filler(tensile_strength=482.0),
        process="SMAW",
        position="1G",
    )
    one, other = groove_size(plain), groove_size(with_weld(plain, depth_tolerance=1.0))
    assert one["preparation"]["form"] == other["preparation"]["form"] == "square"
    assert mm(one["preparation"]["throat"]) == mm(other["preparation"]["throat"]) == pytest.approx(3.175)
    assert "Nothing is cut, so the tolerance of the depth takes nothing off." in other["reasons"]


@given(
    request=partial("single-bevel", "single-v", "double-v", "single-j", "double-bevel"),
    less=hundredths(0, 1),
    more=hundredths(0, 1),
)
def test_a_wider_tolerance_never_cuts_less(request: GrooveSizeRequest, less: float, more: float) -> None:
    """The depth never falls as its tolerance grows, and at its worst keeps the throat and the least of each side."""
    close = groove_size(with_weld(request, depth_tolerance=less))
    wide = groove_size(with_weld(request, depth_tolerance=less + more))
    if close["verdict"] != "enough":
        assert wide["verdict"] != "enough"
    if wide["verdict"] != "enough":
        return
    made = wide["preparation"]
    sides = 2 if made["form"].startswith("double-") else 1
    least = mm(wide["minimum"]["throat"]) if wide["minimum"] else 0.0
    assert mm(made["depth"]) >= mm(close["preparation"]["depth"])
    assert mm(made["throat"]) == pytest.approx(sides * (mm(made["depth"]) - less - more - mm(made["deduction"])))
    assert mm(made["throat"]) >= max(mm(wide["required"]["throat"]), sides * least) - CLOSE
    assert wide["utilisation"] <= 1 + CLOSE
