"""Ranking against scores worked out by hand, and what must not change it."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from truethroat_service.application.joint_plan.ranking import comparable, ranked

KINDS = ("filler", "time")


def test_scores_worked_by_hand() -> None:
    """Weights 3 and 1, costs as multiples of the least: (1*3 + 2*1)/4, (2*3 + 1*1)/4, (2*3 + 3*1)/4."""
    ways = [{"filler": 0.5, "time": 4.0}, {"filler": 1.0, "time": 2.0}, {"filler": 1.0, "time": 6.0}]
    found = ranked(ways, {"filler": 3.0, "time": 1.0})
    assert [way.score for way in found] == [1.25, 1.75, 2.25]
    assert [way.rank for way in found] == [1, 2, 3]
    assert [way.dominated_by for way in found] == [(), (), (0, 1)]


def test_equal_ways_share_a_place_and_dominate_neither() -> None:
    """Two like ways come first together; the next is third."""
    found = ranked([{"filler": 1.0}, {"filler": 1.0}, {"filler": 2.0}], {"filler": 1.0})
    assert [way.rank for way in found] == [1, 1, 3]
    assert [way.dominated_by for way in found] == [(), (), (0, 1)]


def test_what_is_not_known_of_all_counts_for_none() -> None:
    """A cost missing of one way ranks nobody; with nothing left every way scores one."""
    ways = [{"filler": 1.0, "time": None}, {"filler": 2.0, "time": 1.0}]
    assert comparable(ways, {"filler": 1.0, "time": 5.0}) == ("filler",)
    assert [way.score for way in ranked(ways, {"filler": 1.0, "time": 5.0})] == [1.0, 2.0]
    assert [way.score for way in ranked(ways, {"time": 1.0})] == [1.0, 1.0]
    assert [way.rank for way in ranked(ways, {"filler": 0.0})] == [1, 1]


def test_nothing_is_the_least_there_can_be() -> None:
    """Against a way that costs nothing the others are told apart by their share of the most."""
    ways = [{"filler": 0.0}, {"filler": 1.0}, {"filler": 4.0}]
    assert [way.score for way in ranked(ways, {"filler": 1.0})] == [1.0, 1.25, 2.0]
    assert [way.score for way in ranked([{"filler": 0.0}, {"filler": 0.0}], {"filler": 1.0})] == [1.0, 1.0]


COST = st.floats(0.01, 1e3)
WAYS = st.lists(st.fixed_dictionaries({"filler": COST, "time": COST}), min_size=1, max_size=6)
WEIGHTS = st.fixed_dictionaries({"filler": st.floats(0.0, 9.0), "time": st.floats(0.1, 9.0)})


@given(WAYS, WEIGHTS, st.floats(1e-3, 1e3))
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
