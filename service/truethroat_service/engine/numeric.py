"""Elementary functions that take a plain float or a column of floats.

A one-row array costs about twenty times as much as a float, so a single joint runs on floats and a list on columns,
through the same formula bodies. Each function here looks at its argument once and takes the cheaper road.
"""

import math
from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

Column: TypeAlias = NDArray[np.float64]
Flags: TypeAlias = NDArray[np.bool_]
Real: TypeAlias = float | Column
Flag: TypeAlias = bool | Flags

PLAIN = (float, int)
"""Types of a single joint's number; a tuple, since ``float | int`` would make a union anew at every look."""


def sqrt(x: Real) -> Real:
    """Square root."""
    return math.sqrt(x) if isinstance(x, PLAIN) else np.sqrt(x)


def sin(x: Real) -> Real:
    """Sine of an angle in radians."""
    return math.sin(x) if isinstance(x, PLAIN) else np.sin(x)


def cos(x: Real) -> Real:
    """Cosine of an angle in radians."""
    return math.cos(x) if isinstance(x, PLAIN) else np.cos(x)


def tan(x: Real) -> Real:
    """Tangent of an angle in radians."""
    return math.tan(x) if isinstance(x, PLAIN) else np.tan(x)


def atan(x: Real) -> Real:
    """Angle in radians whose tangent is ``x``."""
    return math.atan(x) if isinstance(x, PLAIN) else np.arctan(x)


def tanh(x: Real) -> Real:
    """Hyperbolic tangent."""
    return math.tanh(x) if isinstance(x, PLAIN) else np.tanh(x)


def exp(x: Real) -> Real:
    """Exponential function."""
    return math.exp(x) if isinstance(x, PLAIN) else np.exp(x)


def log(x: Real) -> Real:
    """Natural logarithm."""
    return math.log(x) if isinstance(x, PLAIN) else np.log(x)


def acos(x: Real) -> Real:
    """Angle in radians whose cosine is ``x``."""
    return math.acos(x) if isinstance(x, PLAIN) else np.arccos(x)


def hypot(x: Real, y: Real) -> Real:
    """Length of the hypotenuse over two sides."""
    if isinstance(x, PLAIN) and isinstance(y, PLAIN):
        return math.hypot(x, y)
    return np.hypot(x, y)


def atan2(y: Real, x: Real) -> Real:
    """Angle in radians of the point (x, y)."""
    if isinstance(x, PLAIN) and isinstance(y, PLAIN):
        return math.atan2(y, x)
    return np.arctan2(y, x)


def minimum(x: Real, y: Real) -> Real:
    """Lesser of two numbers, row by row."""
    if isinstance(x, PLAIN) and isinstance(y, PLAIN):
        return x if x <= y else y
    return np.minimum(x, y)


def maximum(x: Real, y: Real) -> Real:
    """Greater of two numbers, row by row."""
    if isinstance(x, PLAIN) and isinstance(y, PLAIN):
        return x if x >= y else y
    return np.maximum(x, y)


def where(condition: Flag, yes: Real, no: Real) -> Real:
    """``yes`` where the condition holds, else ``no``; both sides must be computable either way."""
    if isinstance(condition, bool):
        return yes if condition else no
    return np.where(condition, yes, no)


def magnitude(x: Real) -> Real:
    """Absolute value; printed expressions write it ``abs``."""
    return math.fabs(x) if isinstance(x, PLAIN) else np.abs(x)


def ceil(x: Real) -> Real:
    """Next whole number up."""
    return float(math.ceil(x)) if isinstance(x, PLAIN) else np.ceil(x)


def floor(x: Real) -> Real:
    """Next whole number down."""
    return float(math.floor(x)) if isinstance(x, PLAIN) else np.floor(x)
