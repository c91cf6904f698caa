"""Properties of weld groups through the use case: symmetry, superposition, scaling, and what a method refuses."""

from __future__ import annotations

from dataclasses import replace
from math import cos, sin
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.application.asked import weld_group

from truethroat_service.application import weld_group as use_case
from truethroat_service.application.core.faults import Refused
from truethroat_service.application.joints.metals import Filler, Part
from truethroat_service.application.weld_group.request import GroupLoad, Vector, WeldGroupRequest
from truethroat_service.practice.weld_patterns import PATTERNS, Piece, line

PARTS = (Part(12.0, None, 345.0, 450.0, None), Part(10.0, None, 345.0, 450.0, None))
EN_PARTS = (Part(12.0, None, 355.0, 490.0, 0.9), Part(10.0, None, 355.0, 490.0, 0.9))
RULES = ("aisc-360-22-lrfd", "aisc-360-22-asd", "en-1993-1-8-2005-directional", "en-1993-1-8-2005-simplified")
C = tuple(PATTERNS["c"](depth=200.0, width=80.0))
numbers = st.floats(-1.0, 1.0, allow_nan=False).map(lambda value: round(value, 3))
loads = st.builds(
    lambda f, p, m: GroupLoad(
        Vector(*(1e5 * v for v in f)), Vector(*(300 * v for v in p)), Vector(*(1e7 * v for v in m))
    ),
    st.tuples(numbers, numbers, numbers),
    st.tuples(numbers, numbers, numbers),
    st.tuples(numbers, numbers, numbers),
).filter(lambda load: abs(load.force.x) + abs(load.force.y) + abs(load.force.z) > 1e3)


def request(rules: str, load: GroupLoad, group: tuple[Piece, ...] = C, **more: Any) -> WeldGroupRequest:
    """Request under a rule set."""
    en = rules.startswith("en")
    return WeldGroupRequest(rules, group, load, EN_PARTS if en else PARTS, filler=None if en else Filler("E70"), **more)


def throat(answer: dict[str, Any]) -> float:
    """Required throat, mm."""
    return float(answer["required"]["throat"]["value"])


def _turn(vector: Vector, angle: float) -> Vector:
    """Vector turned about z."""
    c, s = cos(angle), sin(angle)
    return Vector(vector.x * c - vector.y * s, vector.x * s + vector.y * c, vector.z)


@pytest.mark.parametrize("rules", RULES)
@given(load=loads, angle=st.floats(0.0, 6.0))
def test_turning_group_and_load_changes_nothing(rules: str, load: GroupLoad, angle: float) -> None:
    """A group and its load turned together need the same throat (symmetry)."""
    turned = tuple(
        line(
            *(_turn(Vector(x_1, y_1), angle).x, _turn(Vector(x_1, y_1), angle).y),
            *(_turn(Vector(x_2, y_2), angle).x, _turn(Vector(x_2, y_2), angle).y),
        )
        for x_1, y_1, x_2, y_2, _ in C
    )
    along = GroupLoad(_turn(load.force, angle), _turn(load.at, angle), _turn(load.moment, angle))
    expected = throat(weld_group(request(rules, load)))
    assert throat(weld_group(request(rules, along, turned))) == pytest.approx(expected, rel=1e-9)


@given(first=loads, second=loads)
def test_elastic_forces_add_up(first: GroupLoad, second: GroupLoad) -> None:
    """The elastic force at every end under two loads is the sum of those under each (superposition)."""

    def at_ends(load: GroupLoad) -> np.ndarray:
        points = weld_group(request(RULES[0], load))["points"]
        return np.array([[point["force"][axis]["value"] for axis in "xyz"] for point in points])

    # The same place of action, so that the loads can be written as one.
    second = replace(second, at=first.at)
    both = GroupLoad(
        Vector(*(getattr(first.force, a) + getattr(second.force, a) for a in "xyz")),
        first.at,
        Vector(*(getattr(first.moment, a) + getattr(second.moment, a) for a in "xyz")),
    )
    if max(abs(both.force.x), abs(both.force.y), abs(both.force.z)) > 1.0:
        expected = at_ends(first) + at_ends(second)
        assert at_ends(both) == pytest.approx(expected, abs=1e-6 * np.abs(expected).max())


@pytest.mark.parametrize("method", ["elastic", "instantaneous-centre"])
@given(x=st.floats(-400.0, 400.0), y=st.floats(10.0, 200.0))
def test_methods_scale_with_the_load(method: Any, x: float, y: float) -> None:
    """Twice the load needs twice the throat; two groups half; ASD needs 1.5 times LRFD's (phi Omega = 1.5)."""
    load = GroupLoad(Vector(y=1e3 * y), Vector(x=x))
    twice = GroupLoad(Vector(y=2e3 * y), Vector(x=x))
    once = throat(weld_group(request(RULES[0], load, method=method)))
    assert throat(weld_group(request(RULES[0], twice, method=method))) == pytest.approx(2 * once, rel=1e-6)
    assert throat(weld_group(request(RULES[0], load, method=method, count=2))) == pytest.approx(once / 2, rel=1e-6)
    assert throat(weld_group(request(RULES[1], load, method=method))) == pytest.approx(1.5 * once, rel=1e-6)


@given(x=st.floats(60.0, 400.0))
def test_the_centre_never_needs_more_than_the_lines(x: float) -> None:
    """The instantaneous centre of a C loaded in its plane is stronger than its lines (common practice, no source)."""
    load = GroupLoad(Vector(y=-9e4), Vector(x=x))
    lines = throat(weld_group(request(RULES[0], load)))
    assert throat(weld_group(request(RULES[0], load, method="instantaneous-centre"))) < lines


def test_strength_grows_with_the_leg() -> None:
    """A larger leg carries in proportion, and is used less in proportion."""
    load = GroupLoad(Vector(y=-9e4), Vector(x=250.0))
    small, large = (weld_group(request(RULES[0], load, leg=leg)) for leg in (4.0, 8.0))
    assert large["strength"]["factor"] == pytest.approx(2 * small["strength"]["factor"])
    assert large["utilisation"] == pytest.approx(small["utilisation"] / 2)


def test_a_straight_line_is_bent_along_itself_only() -> None:
    """A line of 200 mm under a moment across it has 6 M/d^2 at its ends (weld as a line, from memory)."""
    upright = tuple(PATTERNS["one-line"](depth=200.0))
    answer = weld_group(request(RULES[0], GroupLoad(moment=Vector(x=1e6)), upright))
    assert answer["critical"]["resultant"]["value"] == pytest.approx(6 * 1e6 / 200**2)
    assert answer["efficiency"] == 0.0


def test_a_translation_has_no_centre() -> None:
    """Two uprights loaded through their centroid along themselves go straight down: no centre, nearly all they have."""
    pair = tuple(PATTERNS["two-upright-lines"](depth=200.0, width=100.0))
    load = GroupLoad(Vector(y=-9e4), Vector(x=50.0))
    answer = weld_group(request(RULES[0], load, pair, method="instantaneous-centre"))
    assert answer["centre"] is None
    assert answer["efficiency"] == pytest.approx(1.0, rel=0.005)


def test_a_group_that_does_not_settle_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    """No group is answered silently wrong: without rounds or brackets the load is refused by name."""
    monkeypatch.setattr(use_case.instantaneous_centre, "ROUNDS", 0)
    monkeypatch.setattr(use_case.instantaneous_centre, "BRACKET_TOLERANCE", 0.0)
    with pytest.raises(Refused, match="has no instantaneous centre that the method finds"):
        weld_group(request(RULES[0], GroupLoad(Vector(y=-9e4), Vector(x=250.0)), method="instantaneous-centre"))


@pytest.mark.parametrize("number", [0, 1])
def test_a_hollow_section_has_no_instantaneous_centre(number: int) -> None:
    """J2.4(a)(2): no directional increase at the end of a rectangular hollow section, so no method that rests on it."""
    parts = list(PARTS)
    parts[number] = Part(10.0, "S355H")
    asked = replace(request(RULES[0], GroupLoad(Vector(y=-9e4), Vector(x=250.0))), parts=(parts[0], parts[1]))
    assert weld_group(asked)["verdict"] == "enough"
    with pytest.raises(Refused, match="depends on the directional increase") as found:
        weld_group(replace(asked, method="instantaneous-centre"))
    assert [(fault.pointer, fault.code) for fault in found.value.faults] == [("#/method", "out-of-scope")]


@pytest.mark.parametrize(
    ("depth", "size", "verdict"),
    [(36.0, 6.0, "enough"), (36.0, 6.1, "short"), (30.0, 5.0, "enough"), (29.0, 4.0, "short")],
)
def test_too_short_a_run_carries_nothing_by_en(depth: float, size: float, verdict: str) -> None:
    """EN 1993-1-8 4.5.1(2): under 30 mm or six throats, 36 mm for 6 mm, nothing is carried."""
    pair = tuple(PATTERNS["two-upright-lines"](depth=depth, width=100.0))
    answer = weld_group(request(RULES[3], GroupLoad(Vector(y=-1e4), Vector(x=50.0)), pair, throat=size))
    assert answer["verdict"] == verdict
    assert (answer["strength"]["factor"] > 1.0) == (verdict == "enough")
    if verdict == "short":
        assert answer["strength"]["factor"] == 0.0
        assert answer["utilisation"] is None
        assert "4.5.1(2)" in " ".join(answer["reasons"])


@pytest.mark.parametrize(("depth", "force"), [(29.0, 1e4), (36.0, 2e5)])
def test_no_size_helps_too_short_a_run(depth: float, force: float) -> None:
    """29 mm carry nothing; two of 36 mm hold 2 x 36 x 6 x 251.5 N = 109 kN at a sixth of their length, and no more."""
    pair = tuple(PATTERNS["two-upright-lines"](depth=depth, width=100.0))
    answer = weld_group(request(RULES[3], GroupLoad(Vector(y=-force), Vector(x=50.0)), pair))
    assert answer["verdict"] == "cannot-be-reached"
    assert answer["specify"] is answer["utilisation"] is None
    assert f"{depth:g} mm" in " ".join(answer["reasons"])


@pytest.mark.parametrize("method", ["elastic", "instantaneous-centre"])
def test_a_quarter_of_a_short_run_counts_by_aisc(method: Any) -> None:
    """J2.2b(c): on 40 mm a leg of 12 mm counts as one of 10 mm; two hold 2 x 40 x 10/sqrt(2) x 0.75 x 0.6 x E70."""
    pair = tuple(PATTERNS["two-upright-lines"](depth=40.0, width=100.0))
    load = GroupLoad(Vector(y=-1e4), Vector(x=50.0))
    at_10, at_12 = (weld_group(request(RULES[0], load, pair, leg=leg, method=method)) for leg in (10.0, 12.0))
    assert at_12["strength"]["factor"] == pytest.approx(at_10["strength"]["factor"])
    assert "J2.2b(c)" in " ".join(at_12["reasons"])
    if method == "elastic":
        strength = 2 * 40 * 10 / 2**0.5 * 0.75 * 0.6 * 70 * 6.894757
        assert at_12["strength"]["factor"] == pytest.approx(strength / 1e4, rel=1e-3)
    heavy = weld_group(request(RULES[0], replace(load, force=Vector(y=-2e5)), pair, method=method))
    assert (heavy["verdict"], heavy["specify"]) == ("cannot-be-reached", None)
