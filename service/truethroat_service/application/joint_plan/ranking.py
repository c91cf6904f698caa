"""Ranking of ways to do one thing by what each costs, on a caller's weights.

A way's score is the weighted geometric mean of its costs, each as a multiple of the least that any way has of it. So it
depends on no unit, a score of one is the best of every kind at once, and which of two ways comes first never depends on
a third way: the least is a common factor of both.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import exp, fsum, log, pi
from types import MappingProxyType

from ...engine.rounding import at_most
from .answer import Cost

Costs = Mapping[Cost, float | None]

LEAST_TOLD_APART: Mapping[Cost, float] = MappingProxyType(
    {"filler": 1e-3, "time": 1.0, "heat": 1.0, "distortion": pi / 1800}
)
"""Cost under which two ways are not told apart: 1 g, 1 s, 1 kJ and 0.1 deg; common practice, no source."""


@dataclass(frozen=True, slots=True)
class Ranked:
    """One way: its score, its place from one, and the ways that are no worse in any cost and better in one."""

    score: float
    rank: int
    dominated_by: tuple[int, ...]


def weighted(weights: Mapping[Cost, float]) -> tuple[Cost, ...]:
    """Kinds of cost that carry weight."""
    return tuple(kind for kind, weight in weights.items() if weight > 0.0)


def comparable(costs: Sequence[Costs], weights: Mapping[Cost, float]) -> tuple[Cost, ...]:
    """Kinds of cost that carry weight and are known of every way."""
    return tuple(kind for kind in weighted(weights) if all(way[kind] is not None for way in costs))


def ranked(
    costs: Sequence[Costs], weights: Mapping[Cost, float], impracticable: Sequence[bool] | None = None
) -> list[Ranked]:
    """Rank ways; equal scores share a place. ``costs`` are not negative.

    A way that is impracticable comes after all that are not. A way of which a kind of cost with weight is not known
    comes after those of which more kinds are known. Where nothing can be compared every way scores one.
    """
    kinds = weighted(weights)
    last = impracticable or [False] * len(costs)
    least = {
        kind: min((_told_apart(way, kind) for way in costs if way[kind] is not None), default=1.0) for kind in kinds
    }
    scores = [_score(way, kinds, weights, least) for way in costs]
    tiers = [_tier(way, kinds, behind) for way, behind in zip(costs, last, strict=True)]
    return [
        Ranked(
            score,
            1
            + sum(
                before < tier or (before == tier and not at_most(score, other))
                for other, before in zip(scores, tiers, strict=True)
            ),
            tuple(
                index
                for index, (other, before) in enumerate(zip(costs, tiers, strict=True))
                if before[0] <= tier[0] and before[1:] == tier[1:] and _dominates(other, way, kinds)
            ),
        )
        for way, score, tier in zip(costs, scores, tiers, strict=True)
    ]


def _tier(way: Costs, kinds: Sequence[Cost], behind: bool) -> tuple[bool, int, tuple[int, ...]]:
    """What comes before the score: whether a way is impracticable, and which kinds of its cost are not known."""
    unknown = tuple(place for place, kind in enumerate(kinds) if way[kind] is None)
    return behind, len(unknown), unknown


def _told_apart(way: Costs, kind: Cost) -> float:
    """Cost of a way, no less than what is told apart."""
    return max(way[kind] or 0.0, LEAST_TOLD_APART[kind])


def _score(way: Costs, kinds: Sequence[Cost], weights: Mapping[Cost, float], least: Mapping[Cost, float]) -> float:
    """Weighted geometric mean of the costs that are known, each over the least of any way."""
    known = [kind for kind in kinds if way[kind] is not None]
    if not known:
        return 1.0
    whole = fsum(weights[kind] for kind in known)
    return exp(fsum(weights[kind] * log(_told_apart(way, kind) / least[kind]) for kind in known) / whole)


def _dominates(one: Costs, other: Costs, kinds: Sequence[Cost]) -> bool:
    """Whether one way is no worse than another in everything and better in something."""
    pairs = [(one[kind] or 0.0, other[kind] or 0.0) for kind in kinds]
    return all(at_most(a, b) for a, b in pairs) and any(not at_most(b, a) for a, b in pairs)
