"""Points spread evenly over a unit cube, the same in every run; chances are counted on them.

Halton's sequence: in each direction the digits of the point's number, mirrored about the radix point, to a prime base
of its own. It has no seed, so a chance counted on it never depends on the run.
"""

from functools import cache
from statistics import NormalDist

import numpy as np

from .numeric import Column

COUNT = 16384
"""Points there are; a chance below one in so many is counted as none."""

_BASES = (2, 3, 5, 7, 11, 13, 17, 19, 23, 29)


@cache
def uniform(directions: int) -> tuple[Column, ...]:
    """Coordinates between 0 and 1 of :data:`COUNT` points, a column a direction; ``ValueError`` over ten directions."""
    if directions > len(_BASES):
        raise ValueError(f"at most {len(_BASES)} directions, not {directions}")
    return tuple(_read_only(_mirrored(base)) for base in _BASES[:directions])


@cache
def normal(directions: int) -> tuple[Column, ...]:
    """Standard normal quantiles at the same points, a column a direction."""
    quantile = NormalDist().inv_cdf
    return tuple(
        _read_only(np.fromiter(map(quantile, column.tolist()), float, COUNT)) for column in uniform(directions)
    )


def _mirrored(base: int) -> Column:
    """Radical inverse of 1 to COUNT in a base."""
    number = np.arange(1, COUNT + 1)
    made, share = np.zeros(COUNT), 1.0 / base
    while number.any():
        made += share * (number % base)
        number //= base
        share /= base
    return made


def _read_only(column: Column) -> Column:
    """Protect a cached column from changes."""
    column.flags.writeable = False
    return column
