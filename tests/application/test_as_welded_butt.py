"""Readings of butts: what is left of their throat, and properties that hold whatever was gauged."""

from dataclasses import replace
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.application.asked import as_welded

from truethroat_service.application.as_welded.request import ButtAsWelded, ExtentOfImperfections, GroundFlush, Required
from truethroat_service.application.core.answers import Common
from truethroat_service.application.joints.quality_sets import QUALITY_SETS

tenths = st.integers(30, 250).map(lambda n: n / 10)
small = st.none() | st.integers(0, 25).map(lambda n: n / 10)

FULL = Required(penetration="full")
TEN = ButtAsWelded(kind="butt", thickness=(10.0, 12.0), required=FULL, quality="iso-5817-c")


def mm(quantity: dict[str, Any]) -> float:
    """Value of a metric length."""
    assert quantity["unit"] == "mm"
    return float(quantity["value"])


@st.composite
def gauged(draw: st.DrawFn) -> ButtAsWelded:
    """Draw readings that fit together and that every quality set goes by."""
    return ButtAsWelded(
        kind="butt",
        thickness=(draw(tenths), draw(tenths)),
        required=FULL,
        quality=draw(st.sampled_from(list(QUALITY_SETS))),
        underfill=draw(small),
        misalignment=draw(small),
        undercut=draw(small),
        incomplete_penetration=draw(small),
        lack_of_fusion=draw(small),
        reading_tolerance=draw(st.sampled_from([0.0, 0.1, 0.5])),
        extent=draw(st.none() | st.builds(ExtentOfImperfections, of_weld=st.sampled_from([60.0, 400.0]))),
    )


ISO = ("iso-5817-b", "iso-5817-c", "iso-5817-d")


@given(readings=gauged(), length=st.sampled_from([5.0, 15.0, 25.0, 30.0]))
def test_a_tighter_level_passes_nothing_a_looser_refuses(readings: ButtAsWelded, length: float) -> None:
    """What keeps level B keeps C, and what keeps C keeps D, each limit by itself too."""
    told = {name: length for name in ("underfill", "undercut") if getattr(readings, name) is not None}
    readings = replace(readings, extent=ExtentOfImperfections(400.0, **told))
    for tighter, looser in pairwise(as_welded(replace(readings, quality=level)) for level in ISO):
        for tight, loose in zip(tighter["limits"], looser["limits"], strict=True):
            assert tight["verdict"] != "within" or loose["verdict"] == "within"
        assert looser["verdict"] != "short" or tighter["verdict"] == "short"


@given(readings=gauged(), more=st.integers(1, 9).map(lambda n: n / 10))
def test_a_coarser_gauge_never_betters_a_weld(readings: ButtAsWelded, more: float) -> None:
    """With a bigger tolerance what was short stays short, and a limit that was broken stays broken."""
    before = as_welded(readings)
    after = as_welded(replace(readings, reading_tolerance=readings.reading_tolerance + more))
    assert before["verdict"] != "short" or after["verdict"] == "short"
    for was, now in zip(before["limits"], after["limits"], strict=True):
        assert was["verdict"] == "within" or now["verdict"] != "within"


@given(readings=gauged())
def test_units_change_nothing(readings: ButtAsWelded) -> None:
    """Asked for in inches the weld is judged alike, and the fingerprint is the same."""
    metric, us = as_welded(readings), as_welded(replace(readings, common=Common(units="us")))
    assert us["throat"]["effective"]["value"] * 25.4 == pytest.approx(mm(metric["throat"]["effective"]))
    assert us["provenance"]["fingerprint"] == metric["provenance"]["fingerprint"]
    assert [limit["verdict"] for limit in us["limits"]] == [limit["verdict"] for limit in metric["limits"]]


def test_throat_left_of_a_butt() -> None:
    """10 mm through, 0.4 under the face, 0.3 in the root, each read 0.1 too kindly: 9.3 read, 9.1 at the worst."""
    readings = replace(TEN, underfill=0.4, root_concavity=0.3, reading_tolerance=0.1)
    answer = as_welded(readings)
    assert mm(answer["throat"]["effective"]) == pytest.approx(9.3)
    assert mm(answer["throat"]["worst_case"]) == pytest.approx(9.1)
    assert answer["strength_left"] == pytest.approx(0.91)
    assert answer["verdict"] == "short"
    assert {"do": "add-pass"} in answer["actions"]
    # Level C allows 0.1 t = 1 mm of either over 25 mm in the worst 100 mm.
    short = replace(readings, extent=ExtentOfImperfections(500.0, underfill=25.0, root_concavity=25.0))
    assert (as_welded(short)["verdict"], as_welded(short)["quality_kept"]) == ("enough", True)
    assert "imperfections-not-summed" in [caution["code"] for caution in as_welded(short)["cautions"]]


def test_reinforcement_is_no_throat() -> None:
    """However high the face, the throat is the thinner part; over the limit it is far too much."""
    answer = as_welded(replace(TEN, reinforcement=9.0, face_width=15.0))
    assert mm(answer["throat"]["effective"]) == 10.0
    assert answer["verdict"] == "over"
    assert answer["actions"] == [{"do": "dress-face"}]
    assert (answer["size"], answer["overweld"]) == (None, None)


def test_partial_penetration_has_the_throat_asked_for() -> None:
    """A throat of 6 mm in 10 mm, 0.5 of it not fused: 5.5 mm; 0.1 s = 0.6 allowed at level C over a short length."""
    readings = replace(TEN, required=Required(throat=6.0), incomplete_penetration=0.5)
    answer = as_welded(readings)
    assert mm(answer["throat"]["effective"]) == pytest.approx(5.5)
    assert answer["verdict"] == "short"
    assert (
        as_welded(replace(readings, extent=ExtentOfImperfections(500.0, incomplete_penetration=20.0)))["verdict"]
        == "enough"
    )


def test_misalignment_leaves_the_throat() -> None:
    """Parts out of line are refitted; the throat across the thinner is what it was."""
    answer = as_welded(replace(TEN, misalignment=2.0))
    assert (answer["verdict"], answer["quality_kept"]) == ("enough", False)
    assert answer["actions"] == [{"do": "realign"}]


def test_a_weld_thinned_flush_within_the_limit_is_enough() -> None:
    """0.7 mm off 10 mm is within 1/32 in (0.79 mm); 0.9 mm is not (AWS D1.1:2010 5.24.3.1)."""
    for thinning, verdict in ((0.7, "enough"), (0.9, "short")):
        readings = replace(TEN, quality="aws-d1-1-2020", flush=GroundFlush(thinning))
        assert as_welded(readings)["verdict"] == verdict


@pytest.mark.parametrize(
    ("reading", "do"),
    [
        ({"shrinkage_groove": 3.0}, "add-root-pass"),
        ({"excess_penetration": 9.0, "root_width": 5.0}, "dress-root"),
        ({"overlap": 3.0, "face_width": 15.0}, "dress-toe"),
        ({"toe_angle": 1.0}, "dress-toe"),
        ({"end_crater_pipe": 3.0}, "fill-crater"),
        ({"surface_pore": 5.0}, "gouge-and-reweld"),
        ({"internal_pore": 9.0}, "gouge-and-reweld"),
        ({"undercut": 2.0}, "repair-undercut"),
        ({"crack": True}, "gouge-and-reweld"),
    ],
)
def test_broken_limits_name_their_repair(reading: dict[str, Any], do: str) -> None:
    """What is broken is told how to mend."""
    assert as_welded(replace(TEN, **reading))["actions"] == [{"do": do}]


def test_fusion_that_nobody_looked_at_is_named() -> None:
    """Where neither test nor macro was told, the answer says that fusion rests on the procedure."""

    def codes(readings: ButtAsWelded) -> list[str]:
        return [caution["code"] for caution in as_welded(readings)["cautions"]]

    assert "fusion-not-read" in codes(TEN)
    assert "fusion-not-read" not in codes(replace(TEN, incomplete_penetration=0.0, lack_of_fusion=0.0))
