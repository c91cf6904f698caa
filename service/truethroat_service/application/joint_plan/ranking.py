"""Ranking of ways to do one thing by what each costs, on a caller's weights.

A way's score is the weighted mean of its costs, each as a multiple of the least that any way has of it. So the score
depends on no unit, and a score of one is the best of every kind at once. A cost that is not known for every way ranks
none of them (``not-compared``).
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from ...engine.rounding import at_most
from .answer import Cost

Costs = Mapping[Cost, float | None]


@dataclass(frozen=True, slots=True)
class Ranked:
    """One way: its score, its place from one, and the ways that are no worse in any cost and better in one."""

    score: float
    rank: int
    dominated_by: tuple[int, ...]


def comparable(costs: Sequence[Costs], weights: Mapping[Cost, float]) -> tuple[Cost, ...]:
    """Kinds of cost that have a weight and are known for every way."""
    return tuple(
        kind for kind, weight in weights.items() if weight > 0.0 and all(way[kind] is not None for way in costs)
    )


def ranked(costs: Sequence[Costs], weights: Mapping[Cost, float]) -> list[Ranked]:
    """Rank ways; equal scores share a place. ``costs`` are not negative; a kind that one way lacks is left out.

    Where nothing can be compared every way scores one.
    """
    kinds = comparable(costs, weights)
    rows = [[float(way[kind] or 0.0) for kind in kinds] for way in costs]
    spans = [(min(column), max(column)) for column in zip(*rows, strict=True)]
    whole = sum(weights[kind] for kind in kinds)
    scores = [
        sum(weights[kind] * _multiple(cost, *span) for kind, cost, span in zip(kinds, row, spans, strict=True)) / whole
        if kinds
        else 1.0
        for row in rows
    ]
    return [
        Ranked(
            score,
            1 + sum(not at_most(score, other) for other in scores),
            tuple(index for index, other in enumerate(rows) if _dominates(other, row)),
        )
        for score, row in zip(scores, rows, strict=True)
    ]


def _multiple(cost: float, least: float, most: float) -> float:
    """Cost as a multiple of the least; where the least is zero, one plus its share of the most."""
    if least > 0.0:
        return cost / least
    return 1.0 + (cost / most if most > 0.0 else 0.0)


def _dominates(one: Sequence[float], other: Sequence[float]) -> bool:
    """Whether one way is no worse than another in any cost and better in one."""
    return all(at_most(a, b) for a, b in zip(one, other, strict=True)) and any(
        not at_most(b, a) for a, b in zip(one, other, strict=True)
    )
