"""Elementary functions: a float gives a float, a column a column, and the two agree with numpy."""

from collections.abc import Callable
from typing import Any

import numpy as np
import pytest

from truethroat_service.engine import numeric

COLUMN = np.array([0.0, 0.25, 0.5, 0.75, 1.0])
SIGNED = np.array([-2.5, -1.0, -0.25, 0.0, 0.25, 1.0, 2.5])

ONE = [
    (numeric.sqrt, np.sqrt, COLUMN),
    (numeric.sin, np.sin, SIGNED),
    (numeric.cos, np.cos, SIGNED),
    (numeric.tan, np.tan, SIGNED),
    (numeric.acos, np.arccos, COLUMN),
    (numeric.atan, np.arctan, SIGNED),
    (numeric.tanh, np.tanh, SIGNED),
    (numeric.exp, np.exp, SIGNED),
    (numeric.log, np.log, COLUMN + 0.25),
    (numeric.magnitude, np.abs, SIGNED),
    (numeric.ceil, np.ceil, SIGNED),
    (numeric.floor, np.floor, SIGNED),
]
TWO = [
    (numeric.hypot, np.hypot),
    (numeric.atan2, np.arctan2),
    (numeric.minimum, np.minimum),
    (numeric.maximum, np.maximum),
]
one = pytest.mark.parametrize(("function", "theirs", "column"), ONE, ids=lambda value: getattr(value, "__name__", ""))
two = pytest.mark.parametrize(("function", "theirs"), TWO, ids=lambda value: getattr(value, "__name__", ""))


@one
def test_one_argument(function: Callable[[Any], Any], theirs: Callable[[Any], Any], column: Any) -> None:
    """A float and a whole number give a plain float, a column gives a column, and all agree with numpy."""
    result = function(column)
    assert isinstance(result, np.ndarray)
    np.testing.assert_allclose(result, theirs(column), rtol=1e-15)
    for x in column.tolist():
        assert type(function(x)) is float
        assert function(x) == pytest.approx(float(theirs(x)), rel=1e-15)
    assert type(function(1)) is float
    assert function(1) == pytest.approx(float(theirs(1.0)), rel=1e-15)


@two
def test_two_arguments(function: Callable[[Any, Any], Any], theirs: Callable[[Any, Any], Any]) -> None:
    """Two floats give a plain float; a column on either side gives a column; all agree with numpy."""
    other = SIGNED[::-1]
    np.testing.assert_allclose(function(SIGNED, other), theirs(SIGNED, other), rtol=1e-15)
    for x, y in zip(SIGNED.tolist(), other.tolist(), strict=True):
        assert type(function(x, y)) is float
        assert function(x, y) == pytest.approx(float(theirs(x, y)), rel=1e-15)
        for mixed in ((SIGNED, y), (y, SIGNED)):
            result = function(*mixed)
            assert isinstance(result, np.ndarray)
            np.testing.assert_allclose(result, theirs(*mixed), rtol=1e-15)
    assert function(2, 1) == pytest.approx(float(theirs(2, 1)), rel=1e-15)


def test_atan2_takes_the_second_coordinate_first() -> None:
    """The angle of the point one along and none up is nought, of none along and one up a right angle."""
    assert numeric.atan2(0.0, 1.0) == 0.0
    assert numeric.atan2(1.0, 0.0) == pytest.approx(np.pi / 2)


def test_where_of_a_plain_flag() -> None:
    """A plain flag picks a side as it stands, be it float or column."""
    assert numeric.where(True, 1.0, 2.0) == 1.0
    assert numeric.where(False, 1.0, 2.0) == 2.0
    assert numeric.where(True, COLUMN, 2.0) is COLUMN


def test_where_of_a_column_of_flags() -> None:
    """A column of flags picks row by row."""
    flags = COLUMN > 0.4
    assert numeric.where(flags, 1.0, COLUMN).tolist() == [0.0, 0.25, 1.0, 1.0, 1.0]


def test_ties_keep_their_value() -> None:
    """Equal numbers are their own least and greatest."""
    assert numeric.minimum(2.0, 2.0) == 2.0
    assert numeric.maximum(2.0, 2.0) == 2.0
