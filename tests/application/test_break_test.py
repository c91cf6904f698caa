"""Properties of the break-test use case over random coupons."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import strategies as st
from tests.application.joints import finishes, given, hundredths, mm, penetrations, seams

from truethroat_service.application.break_test import break_test
from truethroat_service.application.break_test.request import (
    BreakTestRequest,
    Notch,
    Plates,
    PreparedDepth,
    WeldStrength,
)
from truethroat_service.application.core.answers import Common
from truethroat_service.application.grind_allowance import grind_allowance
from truethroat_service.application.grind_allowance.request import GrindAllowanceRequest
from truethroat_service.application.joints.seams import Penetration, Preparation, Seam

STAGES = ("first_yield", "hinge", "breaking", "breaking_at_most")
KINDS = ("fillet", "closed-corner", "half-open-corner", "open-corner")


@st.composite
def coupons(draw: st.DrawFn, tolerances: bool = False) -> BreakTestRequest:
    """Draw a coupon of any kind."""
    kind = draw(st.sampled_from(KINDS))
    seam = draw(seams(kind, tolerances=tolerances))
    if kind == "fillet":
        seam = replace(seam, thickness=(draw(hundredths(3, 20)), draw(hundredths(3, 20))))
    yielding = float(draw(st.integers(350, 550)))
    most = seam.overlap if kind == "half-open-corner" else 3.0
    closed = kind == "closed-corner" and seam.thickness is not None
    return BreakTestRequest(
        coupon="outside-corner" if kind != "fillet" else draw(st.sampled_from(["tee", "inside-corner"])),
        seam=seam,
        weld=WeldStrength(yielding, yielding + draw(st.integers(0, 150))),
        plates=Plates(float(draw(st.integers(235, 460)))),
        length=float(draw(st.integers(60, 300))),
        lever=float(draw(st.integers(80, 900))),
        preparation=PreparedDepth(draw(hundredths(0, seam.runs_through))) if closed else PreparedDepth(),
        penetration=draw(penetrations(most, tolerances=tolerances)),
        face_height=draw(hundredths(0, 3)),
        finish=draw(finishes(kind, tolerances=tolerances)),
    )


def _stages(account: dict[str, Any], name: str) -> list[float]:
    """Figures of an account, stage by stage."""
    return [account[name][stage]["value"] for stage in STAGES]


@given(request=coupons(tolerances=True))
def test_stages_come_in_their_order(request: BreakTestRequest) -> None:
    """The root yields before the throat folds, folds before it breaks; tolerances widen the band and nothing else."""
    answer = break_test(request).wire()
    for account in (answer, answer["creditable"], answer["strength"]):
        force = _stages(account, "force")
        assert force == sorted(force)
        throat = account["throat"]
        assert mm(throat["least"]) <= mm(throat["nominal"]) <= mm(throat["most"])
    assert mm(answer["throat"]["nominal"]) >= mm(answer["creditable"]["throat"]["nominal"])
    assert mm(answer["creditable"]["throat"]["nominal"]) >= mm(answer["strength"]["throat"]["nominal"])


@given(request=coupons(), factor=st.sampled_from([0.5, 2.0, 3.0]))
def test_force_goes_with_length_and_against_the_lever(request: BreakTestRequest, factor: float) -> None:
    """Twice the weld takes twice the force, twice the lever half of it; the moment knows no lever."""
    base = break_test(request).wire()
    longer = break_test(replace(request, length=factor * request.length)).wire()
    levered = break_test(replace(request, lever=factor * request.lever)).wire()
    assert _stages(longer, "force") == pytest.approx([factor * force for force in _stages(base, "force")])
    assert _stages(levered, "force") == pytest.approx([force / factor for force in _stages(base, "force")])
    assert _stages(levered, "moment") == pytest.approx(_stages(base, "moment"))


@given(request=coupons())
def test_the_verdict_follows_from_the_forces(request: BreakTestRequest) -> None:
    """Over the balance the plate bends; else hands open what breaks by less than they pull, not what folds by more."""
    answer = break_test(request).wire()
    hinge, most = answer["force"]["hinge"]["value"], answer["force"]["breaking_at_most"]["value"]
    breaking, plate = answer["force"]["breaking"]["value"], answer["plate"]["force"]["value"]
    if answer["verdict"] == "plate-bends-first":
        assert breaking >= plate * (1 - 1e-9)
        return
    assert breaking <= plate * (1 + 1e-9)
    expected = "opens-by-hand" if most <= 250 else "may-open-by-hand" if hinge <= 250 else "does-not-open-by-hand"
    assert answer["verdict"] == expected


@given(request=coupons())
def test_units_change_nothing_but_the_figures(request: BreakTestRequest) -> None:
    """Asked for in pounds, the same force: 1 lbf is 4.4482216152605 N (NIST SP 811)."""
    metric, pounds = break_test(request).wire(), break_test(replace(request, common=Common(units="us"))).wire()
    assert metric["provenance"] == pounds["provenance"]
    assert metric["verdict"] == pounds["verdict"]
    assert _stages(metric, "force") == pytest.approx([4.4482216152605 * one for one in _stages(pounds, "force")])


@given(request=coupons())
def test_the_throat_is_what_grinding_leaves(request: BreakTestRequest) -> None:
    """The physical throat of a coupon is what the same seam, ground alike, keeps."""
    ground = GrindAllowanceRequest(
        seam=request.seam,
        required_throat=1.0,
        finish=request.finish,
        preparation=Preparation(request.preparation.depth),
        penetration=request.penetration,
        face_height=request.face_height,
    )
    answer = break_test(request).wire()
    for ours, theirs in ((answer, "physical"), (answer["creditable"], "budget")):
        assert ours["throat"]["nominal"] == grind_allowance(ground).wire()[theirs]["remaining"]


def _closed(**more: Any) -> BreakTestRequest:
    """Closed corner of 6 mm plates with 2 mm of penetration that somebody assumed."""
    request = BreakTestRequest(
        coupon="outside-corner",
        seam=Seam("closed-corner", (6.0, 6.0)),
        weld=WeldStrength(420.0, 500.0),
        plates=Plates(355.0),
        length=100.0,
        lever=300.0,
        penetration=Penetration(2.0, "assumed"),
    )
    return replace(request, **more)


def test_each_account_counts_what_it_may() -> None:
    """Assumed penetration is in the physical throat alone, measured also in the creditable, proven in all."""
    throats = {}
    for vouched in ("assumed", "measured", "proven"):
        answer = break_test(_closed(penetration=Penetration(2.0, vouched))).wire()  # type: ignore[arg-type]
        accounts = (answer, answer["creditable"], answer["strength"])
        throats[vouched] = [mm(account["throat"]["nominal"]) for account in accounts]
    assert throats == {"assumed": [2.0, 0.0, 0.0], "measured": [2.0, 2.0, 0.0], "proven": [2.0, 2.0, 2.0]}


def test_a_face_is_no_proven_strength() -> None:
    """1.5 mm of face over 2 mm of proven penetration: 3.5 mm as welded, 2 mm that a procedure proves."""
    answer = break_test(_closed(penetration=Penetration(2.0, "proven"), face_height=1.5)).wire()
    assert mm(answer["throat"]["nominal"]) == pytest.approx(3.5)
    assert mm(answer["strength"]["throat"]["nominal"]) == pytest.approx(2.0)


def test_notches_weaken() -> None:
    """10 mm from each side of 100 leave 80 mm; 0.5 mm along the face leaves 1.5 of 2: 0.8 x 0.5625 of the force."""
    plain = break_test(_closed()).wire()
    notched = break_test(_closed(notch=Notch(10.0, 0.5))).wire()
    assert mm(notched["length"]) == 80.0
    ratio = notched["force"]["breaking"]["value"] / plain["force"]["breaking"]["value"]
    assert ratio == pytest.approx(0.8 * (1.5 / 2) ** 2)


def test_accounts_that_differ_are_told() -> None:
    """2 mm assumed on a short lever may hold; without it nothing does, and the answer says both."""
    answer = break_test(_closed(lever=50.0)).wire()
    # 500 x 4/4 x 100/50 x 1.15 = 1150 N, and folding at 420 x 4/4 x 100/50 = 840 N.
    assert answer["force"]["breaking_at_most"]["value"] == pytest.approx(1150.0)
    assert answer["force"]["hinge"]["value"] == pytest.approx(840.0)
    assert (answer["verdict"], answer["strength"]["verdict"]) == ("does-not-open-by-hand", "opens-by-hand")
    codes = {caution["code"] for caution in answer["cautions"]}
    assert codes >= {"estimate-for-planning", "let-go", "not-for-service", "assumed-penetration", "accounts-differ"}
    between = break_test(_closed(lever=50.0, hand_force=1000.0)).wire()
    assert between["verdict"] == "may-open-by-hand"


def test_tolerances_make_the_band() -> None:
    """2 mm of penetration give or take 0.5: the root yields at 1.5 mm, and breaks at the most at 2.5."""
    answer = break_test(_closed(penetration=Penetration(2.0, "measured", 0.5))).wire()
    assert {name: mm(value) for name, value in answer["throat"].items()} == {"least": 1.5, "nominal": 2.0, "most": 2.5}
    # By hand, on 100/300: 420 x 1.5^2/4 = 236.25 N and 1.15 x 500 x 2.5^2/4 = 898.44 N.
    assert answer["force"]["hinge"]["value"] == pytest.approx(236.25 / 3)
    assert answer["force"]["breaking_at_most"]["value"] == pytest.approx(898.4375 / 3)


@pytest.mark.parametrize(
    ("coupon", "word"), [("tee", "onto the weld"), ("inside-corner", "together"), ("outside-corner", "apart")]
)
def test_each_coupon_says_which_way_to_fold(coupon: Any, word: str) -> None:
    """Root in tension: a fillet is folded onto its face, an outside seam is pulled open."""
    seam = (
        Seam("closed-corner", (6.0, 6.0)) if coupon == "outside-corner" else Seam("fillet", (6.0, 6.0), legs=(5.0, 5.0))
    )
    assert word in break_test(_closed(coupon=coupon, seam=seam)).wire()["fold"]
