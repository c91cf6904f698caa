"""Readings of fillets: properties that hold whatever was gauged."""

from dataclasses import replace
from math import pi, sqrt
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from truethroat_service.application.as_welded import QUALITIES, AsWeldedRequest, Required, as_welded
from truethroat_service.application.seams import Penetration

tenths = st.integers(30, 150).map(lambda n: n / 10)
small = st.integers(0, 15).map(lambda n: n / 10)


def mm(quantity: dict[str, Any]) -> float:
    """Value of a metric length."""
    assert quantity["unit"] == "mm"
    return float(quantity["value"])


@st.composite
def gauged(draw: st.DrawFn) -> AsWeldedRequest:
    """Draw readings that fit together."""
    required = Required(leg=draw(tenths)) if draw(st.booleans()) else Required(throat=draw(tenths))
    return AsWeldedRequest(
        (draw(tenths), draw(tenths)),
        (draw(tenths), draw(tenths)),
        required,
        draw(st.sampled_from(QUALITIES)),  # type: ignore[arg-type]
        convexity=draw(small),
        reading_tolerance=draw(small) / 2,
        undercut=draw(small),
        root_gap=draw(small),
    )


@given(request=gauged(), more=small)
def test_convexity_is_never_credited(request: AsWeldedRequest, more: float) -> None:
    """However convex, the throat and the size stay (AWS A3.0: theoretical throat is under the line of the toes)."""
    before, after = as_welded(request), as_welded(replace(request, convexity=(request.convexity or 0.0) + more))
    assert (before["throat"], before["size"]) == (after["throat"], after["size"])


@given(request=gauged(), depth=st.integers(1, 10).map(lambda n: n / 10))
def test_a_hollow_is_taken_off(request: AsWeldedRequest, depth: float) -> None:
    """A hollow comes off the throat whole (geometry), and never makes the size larger."""
    before = as_welded(replace(request, convexity=None))
    after = as_welded(replace(request, convexity=None, hollow=depth))
    assert mm(after["throat"]["effective"]) == pytest.approx(mm(before["throat"]["effective"]) - depth)
    assert mm(after["size"]) < mm(before["size"])


@given(request=gauged())
def test_the_worst_case_is_no_better(request: AsWeldedRequest) -> None:
    """The worst case is never more than what was read, and what was read never more than the theoretical throat."""
    throat = as_welded(request)["throat"]
    assert mm(throat["worst_case"]) <= mm(throat["effective"]) <= mm(throat["theoretical"])


@given(request=gauged(), measured=tenths)
def test_a_measured_throat_only_caps(request: AsWeldedRequest, measured: float) -> None:
    """A throat gauged lower counts; one gauged higher than the legs allow does not."""
    without = mm(as_welded(request)["throat"]["effective"])
    found = mm(as_welded(replace(request, throat=measured))["throat"]["effective"])
    assert found == pytest.approx(min(measured, without))


@given(request=gauged())
def test_short_is_below_what_is_required(request: AsWeldedRequest) -> None:
    """Without a share told, a fillet is short exactly when its worst case is: by size against a leg, else by throat."""
    answer = as_welded(replace(request, reading_tolerance=0.0))
    leg = request.required.leg
    if leg is None:
        lacks = mm(answer["throat"]["effective"]) < mm(answer["throat"]["required"]) * (1 - 1e-8)
    else:
        lacks = mm(answer["size"]) < leg * (1 - 1e-8)
    assert (answer["verdict"] == "short") == lacks
    assert any(action["do"] == "add-pass" for action in answer["actions"]) or not lacks


@given(request=gauged())
def test_accepted_alone_and_only_when_nothing_is_wrong(request: AsWeldedRequest) -> None:
    """Accept stands alone; a limit that is broken always asks for something else."""
    answer = as_welded(request)
    does = [action["do"] for action in answer["actions"]]
    broken = any(limit["verdict"] != "within" for limit in answer["limits"])
    assert (does == ["accept"]) == (not broken and answer["verdict"] != "short")
    assert "accept" not in does or len(does) == 1


@given(request=gauged())
def test_welding_to_the_leg_told_is_enough(request: AsWeldedRequest) -> None:
    """With both legs brought to the size told, the fillet has its throat."""
    answer = as_welded(request)
    for action in answer["actions"]:
        if action["do"] == "add-pass" and answer["verdict"] == "short":
            leg = mm(action["leg"])
            after = as_welded(replace(request, legs=(max(leg, request.legs[0]), max(leg, request.legs[1]))))
            assert after["verdict"] != "short"


def test_over_by_the_throat_or_by_an_eighth() -> None:
    """Level C allows 1 + 0.2 a too much throat (EN 25817:1992); D1.1 none, so 1/8 in (common practice, no source)."""
    request = AsWeldedRequest((10.0, 10.0), (10.0, 10.0), Required(throat=5.0), "iso-5817-c")
    # 7.07 mm of throat, 2.07 too much against 2.0.
    assert as_welded(request)["verdict"] == "over"
    assert as_welded(replace(request, quality="iso-5817-d"))["verdict"] == "enough"
    held = replace(request, required=Required(leg=6.7), quality="aws-d1-1-2020")
    assert as_welded(held)["verdict"] == "over"
    assert as_welded(replace(held, required=Required(leg=7.0)))["verdict"] == "enough"


@pytest.mark.parametrize(
    ("vouched", "creditable", "counted"), [("assumed", 0.0, 0.0), ("measured", 2.0, 0.0), ("proven", 2.0, 2.0)]
)
def test_penetration_counts_by_who_vouches(vouched: Any, creditable: float, counted: float) -> None:
    """Only proven penetration is strength; a macro's is creditable beside it, an assumed one neither; none is size."""
    request = AsWeldedRequest((8.0, 8.0), (10.0, 10.0), Required(throat=5.0), "iso-5817-c")
    answer = as_welded(replace(request, penetration=Penetration(2.0, vouched, 0.5)))
    assert mm(answer["throat"]["physical"]) == pytest.approx(8 / sqrt(2) + 2.0)
    assert mm(answer["throat"]["creditable"]) == pytest.approx(8 / sqrt(2) + creditable)
    assert mm(answer["throat"]["effective"]) == pytest.approx(8 / sqrt(2) + counted)
    assert mm(answer["throat"]["worst_case"]) == pytest.approx(8 / sqrt(2) + (1.5 if counted else 0.0))
    assert mm(answer["size"]) == pytest.approx(8.0)


@pytest.mark.parametrize(("vouched", "verdict"), [("assumed", "short"), ("measured", "short"), ("proven", "enough")])
def test_the_verdict_rests_on_strength(vouched: Any, verdict: str) -> None:
    """5.66 mm of legs' throat (8 x 0.707) has 7 only with penetration, and that must be proven to count."""
    request = AsWeldedRequest((8.0, 8.0), (10.0, 10.0), Required(throat=7.0), "iso-5817-c")
    assert as_welded(replace(request, penetration=Penetration(2.0, vouched)))["verdict"] == verdict


def test_a_flat_face_may_be_as_hollow_as_the_gauge_is_coarse() -> None:
    """A hollow read as nothing is one of up to the tolerance: 7.5 mm legs (5.30 mm) less 0.5; unread, it is none."""
    request = AsWeldedRequest(
        (8.0, 8.0), (10.0, 10.0), Required(throat=5.0), "iso-5817-c", hollow=0.0, reading_tolerance=0.5
    )
    assert mm(as_welded(request)["throat"]["worst_case"]) == pytest.approx(7.5 / sqrt(2) - 0.5)
    assert as_welded(request)["verdict"] == "short"
    assert mm(as_welded(replace(request, hollow=None))["throat"]["worst_case"]) == pytest.approx(7.5 / sqrt(2))


def test_metal_of_a_convex_face() -> None:
    """A parabola over a chord holds two thirds of its box (Archimedes): 2/3 x 10 x 1.5 over the 6, 8, 10 triangle."""
    request = AsWeldedRequest((6.0, 8.0), (9.0, 9.0), Required(leg=6.0), "iso-5817-d", angle=pi / 2, convexity=1.5)
    overweld = as_welded(request)["overweld"]
    assert overweld["extra_area"]["value"] == pytest.approx(24.0 + 10.0 - 18.0)
    assert overweld["metal_ratio"] == pytest.approx(34.0 / 18.0)
    # 7850 kg/m3: common practice, no source.
    assert overweld["extra_mass"]["value"] == pytest.approx(16.0 * 7850e-6)


def test_broken_limits_name_their_repair() -> None:
    """Too much convexity is dressed, undercut repaired, a wide gap closed, a lopsided fillet built up."""
    request = AsWeldedRequest((14.0, 8.0), (10.0, 10.0), Required(leg=6.0), "iso-5817-b", root_gap=2.0)
    answer = as_welded(replace(request, convexity=3.5, undercut=1.0))
    assert [action["do"] for action in answer["actions"]] == [
        "close-gap",
        "add-pass",
        "dress-face",
        "repair-undercut",
    ]
