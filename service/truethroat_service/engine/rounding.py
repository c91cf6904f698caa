"""Rounding to a shop step, and comparing, in the one way the whole service does it.

A value within ``SAME`` of a step counts as being on it: 3/16 in summed from sixteenths must not become 1/4 in because
of the last bit of a float.
"""

from .numeric import Flag, Real, ceil, floor, magnitude

SAME = 1e-9
"""Share of a step, or of a limit, below which two numbers are the same."""


def up(value: Real, step: Real) -> Real:
    """Least multiple of ``step`` that is not below ``value``; scalars or columns, both in one unit, step > 0."""
    return ceil(value / step - SAME) * step


def down(value: Real, step: Real) -> Real:
    """Greatest multiple of ``step`` that is not above ``value``; scalars or columns, both in one unit, step > 0."""
    return floor(value / step + SAME) * step


def at_least(value: Real, limit: Real) -> Flag:
    """Whether ``value >= limit``, the two taken as equal within ``SAME`` of the limit's magnitude."""
    return value >= limit - SAME * magnitude(limit)


def at_most(value: Real, limit: Real) -> Flag:
    """Whether ``value <= limit``, the two taken as equal within ``SAME`` of the limit's magnitude."""
    return value <= limit + SAME * magnitude(limit)
