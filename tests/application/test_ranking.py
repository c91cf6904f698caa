"""Ranking against scores worked out by hand, and what must not change it."""

from itertools import combinations
from math import radians

import pytest
from hypothesis import given
from hypothesis import strategies as st

from truethroat_service.application.joint_plan.ranking import comparable, ranked

KINDS = ("filler", "time")


def test_scores_worked_by_hand() -> None:
    """Weights 3 and 1, costs as multiples of the least: fourth roots of 1^3 2, of 2^3 1 and of 2^3 3."""
    ways = [{"filler": 0.5, "time": 4.0}, {"filler": 1.0, "time": 2.0}, {"filler": 1.0, "time": 6.0}]
    found = ranked(ways, {"filler": 3.0, "time": 1.0})
    assert [way.score for way in found] == pytest.approx([2**0.25, 8**0.25, 24**0.25])
    assert [way.rank for way in found] == [1, 2, 3]
    assert [way.dominated_by for way in found] == [(), (), (0, 1)]


def test_equal_ways_share_a_place_and_dominate_neither() -> None:
    """Two like ways come first together; the next is third."""
    found = ranked([{"filler": 1.0}, {"filler": 1.0}, {"filler": 2.0}], {"filler": 1.0})
    assert [way.rank for way in found] == [1, 1, 3]
    assert [way.dominated_by for way in found] == [(), (), (0, 1)]


def test_a_way_of_which_less_is_known_comes_after() -> None:
    """A cost missing of one way counts in the others; with nothing left every way scores one."""
    ways = [{"filler": 1.0, "time": None}, {"filler": 2.0, "time": 1.0}]
    assert comparable(ways, {"filler": 1.0, "time": 5.0}) == ("filler",)
    assert [way.rank for way in ranked(ways, {"filler": 1.0, "time": 5.0})] == [2, 1]
    assert [way.score for way in ranked(ways, {"time": 1.0})] == [1.0, 1.0]
    assert [way.rank for way in ranked(ways, {"filler": 0.0})] == [1, 1]


def test_nothing_is_the_least_there_can_be() -> None:
    """A way that turns nothing is taken to turn 0.1 deg, under which ways are not told apart."""
    ways = [{"distortion": 0.0}, {"distortion": radians(0.1)}, {"distortion": radians(0.4)}]
    found = ranked(ways, {"distortion": 1.0})
    assert [way.score for way in found] == pytest.approx([1.0, 1.0, 4.0])
    assert [way.rank for way in found] == [1, 1, 3]
    assert [way.score for way in ranked([{"filler": 0.0}, {"filler": 0.0}], {"filler": 1.0})] == [1.0, 1.0]


COST = st.floats(0.01, 1e3)
WAYS = st.lists(st.fixed_dictionaries({"filler": COST, "time": COST}), min_size=1, max_size=6)
WEIGHTS = st.fixed_dictionaries({"filler": st.floats(0.0, 9.0), "time": st.floats(0.1, 9.0)})


# Factors that leave 0.01 kg over the gram under which ways are not told apart.
@given(WAYS, WEIGHTS, st.floats(0.2, 1e3))
def test_units_do_not_rank(ways: list[dict[str, float]], weights: dict[str, float], factor: float) -> None:
    """The same costs in another unit score the same."""
    scaled = [{**way, "filler": way["filler"] * factor} for way in ways]
    for one, other in zip(ranked(ways, weights), ranked(scaled, weights), strict=True):
        assert one.score == pytest.approx(other.score, rel=1e-9)


@given(WAYS, WEIGHTS)
def test_a_dominated_way_never_comes_before_what_dominates_it(
    ways: list[dict[str, float]], weights: dict[str, float]
) -> None:
    """Whatever the weights."""
    found = ranked(ways, weights)
    assert min(way.rank for way in found) == 1
    for way in found:
        assert all(found[index].rank <= way.rank for index in way.dominated_by)


MAYBE = st.none() | COST
PARTLY_KNOWN = st.lists(st.fixed_dictionaries({"filler": MAYBE, "time": MAYBE}), min_size=2, max_size=6)


@given(PARTLY_KNOWN, WEIGHTS, st.data())
def test_no_third_way_changes_which_of_two_comes_first(
    ways: list[dict[str, float | None]], weights: dict[str, float], data: st.DataObject
) -> None:
    """Left out one by one, no way changes the order of the others (independence of irrelevant alternatives)."""
    behind = data.draw(st.lists(st.booleans(), min_size=len(ways), max_size=len(ways)))
    gone = data.draw(st.integers(0, len(ways) - 1))
    rest = [index for index in range(len(ways)) if index != gone]
    whole = [ranked(ways, weights, behind)[index].rank for index in rest]
    without = [way.rank for way in ranked([ways[index] for index in rest], weights, [behind[index] for index in rest])]
    for one, other in combinations(range(len(rest)), 2):
        assert (whole[one] < whole[other]) == (without[one] < without[other])
        assert (whole[one] == whole[other]) == (without[one] == without[other])


def test_an_impracticable_way_comes_last() -> None:
    """However little it costs."""
    found = ranked([{"filler": 1.0}, {"filler": 9.0}], {"filler": 1.0}, [True, False])
    assert [way.rank for way in found] == [2, 1]
    assert [way.dominated_by for way in found] == [(), ()]
    both = ranked([{"filler": 1.0}, {"filler": 9.0}], {"filler": 1.0}, [False, True])
    assert [way.dominated_by for way in both] == [(), (0,)]
