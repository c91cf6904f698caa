"""Rounding to a shop step and comparing, held against exact fractions."""

from fractions import Fraction
from math import ceil, floor

import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from truethroat_service.engine.rounding import SAME, at_least, at_most, down, up

INCH = 25.4
SIXTEENTH = INCH / 16


def test_three_eighths_is_not_made_of_five_sixteenths() -> None:
    """5/16 in, whatever the last bit of its float, stays 5/16 when rounded up; only more than that makes 3/8."""
    five = sum([SIXTEENTH] * 5)
    noisy = [five, 5 / 16 * INCH, 7.9375, np.nextafter(7.9375, 99), np.nextafter(7.9375, 0), 0.3125 / 2 * INCH * 2]
    for leg in noisy:
        assert up(float(leg), SIXTEENTH) == pytest.approx(7.9375, abs=1e-12)
        assert down(float(leg), SIXTEENTH) == pytest.approx(7.9375, abs=1e-12)
    assert up(7.9376, SIXTEENTH) == pytest.approx(9.525, abs=1e-12)
    assert down(7.9374, SIXTEENTH) == pytest.approx(6.35, abs=1e-12)


def test_tenths_that_miss_by_a_bit() -> None:
    """0.1 + 0.2 is three tenths: plain ceiling would make it four."""
    assert ceil((0.1 + 0.2) / 0.1) == 4
    assert up(0.1 + 0.2, 0.1) == pytest.approx(0.3, abs=1e-12)
    assert down(0.3, 0.1) == pytest.approx(0.3, abs=1e-12)
    assert floor(0.3 / 0.1) == 2


@given(
    st.integers(0, 400), st.sampled_from([1.0, 0.5, 0.1, SIXTEENTH, INCH / 32, INCH / 64, 1 / 3]), st.integers(-2, 2)
)
def test_a_value_on_a_step_stays(count: int, step: float, ulps: int) -> None:
    """Within two bits of a multiple, either rounding gives that multiple."""
    value = count * step
    for _ in range(abs(ulps)):
        value = float(np.nextafter(value, np.inf if ulps > 0 else -np.inf))
    assert up(value, step) == pytest.approx(count * step, rel=1e-12, abs=1e-12)
    assert down(value, step) == pytest.approx(count * step, rel=1e-12, abs=1e-12)


@given(st.fractions(0, 60, max_denominator=1000), st.sampled_from([Fraction(1), Fraction(1, 2), Fraction(127, 80)]))
@example(Fraction(127, 16), Fraction(127, 80))
def test_rounding_agrees_with_exact_fractions(value: Fraction, step: Fraction) -> None:
    """Up and down give what exact arithmetic gives (127/80 mm is a sixteenth of an inch)."""
    assert up(float(value), float(step)) == pytest.approx(float(ceil(value / step) * step), rel=1e-12)
    assert down(float(value), float(step)) == pytest.approx(float(floor(value / step) * step), rel=1e-12)


@pytest.mark.parametrize(
    ("excess", "steps_up", "steps_down"),
    [(0.5e-9, 3, 3), (-0.5e-9, 3, 3), (2e-9, 4, 3), (-2e-9, 3, 2), (1e-6, 4, 3), (-1e-6, 3, 2)],
)
def test_forgiveness_is_a_billionth_of_a_step(excess: float, steps_up: int, steps_down: int) -> None:
    """Half a billionth of a step beside a multiple is on it; two billionths are not."""
    value = (3 + excess) * SIXTEENTH
    assert up(value, SIXTEENTH) == pytest.approx(steps_up * SIXTEENTH, rel=1e-12)
    assert down(value, SIXTEENTH) == pytest.approx(steps_down * SIXTEENTH, rel=1e-12)
    assert SAME == 1e-9


def test_columns_round_row_by_row() -> None:
    """A column of values, or of steps, rounds as its rows do."""
    values = np.array([0.0, 0.1, 1.0, 1.0000001, 7.9375, 7.94])
    np.testing.assert_allclose(up(values, 1.0), [0, 1, 1, 2, 8, 8])
    np.testing.assert_allclose(down(values, 1.0), [0, 0, 1, 1, 7, 7])
    np.testing.assert_allclose(up(7.94, np.array([1.0, 0.5, SIXTEENTH])), [8, 8, 9.525])
    assert type(up(7.94, 1.0)) is float
    assert type(down(7.94, 1.0)) is float


@pytest.mark.parametrize(
    ("value", "limit", "least", "most"),
    [
        (3.0, 3.0, True, True),
        (3.0000000001, 3.0, True, True),
        (2.9999999999, 3.0, True, True),
        (3.00000001, 3.0, True, False),
        (2.99999999, 3.0, False, True),
        (-3.0, -3.0000000001, True, True),
        (-3.0, -2.9999, False, True),
        (0.0, 0.0, True, True),
        (-1e-12, 0.0, False, True),
        (1e9 + 0.5, 1e9, True, True),
        (1e9 + 5.0, 1e9, True, False),
    ],
)
def test_comparing_forgives_a_billionth_of_the_limit(value: float, limit: float, least: bool, most: bool) -> None:
    """Equal within a billionth of the limit counts as equal, either way round."""
    assert at_least(value, limit) is least
    assert at_most(value, limit) is most


def test_comparing_columns() -> None:
    """A column compares row by row with a limit or with another column."""
    column = np.array([1.0, 2.0, 2.0 + 1e-12, 3.0])
    assert at_least(column, 2.0).tolist() == [False, True, True, True]
    assert at_most(column, 2.0).tolist() == [True, True, True, False]
    assert at_least(2.0, column).tolist() == [True, True, True, False]
    assert at_most(column, column[::-1]).tolist() == [True, True, True, False]


@given(st.floats(0.0, 1e12), st.floats(0.0, 1e12))
@example(3.0, 3.0 * (1 + 1e-9))
@example(0.0, 0.0)
def test_what_is_not_most_is_more(value: float, limit: float) -> None:
    """One of the two always holds, both only within a billionth; a row of a column compares as the number alone."""
    least, most = at_least(value, limit), at_most(value, limit)
    assert least or most
    assert (least and most) == (abs(Fraction(value) - Fraction(limit)) <= Fraction(limit) / 10**9) or (
        # Within the rounding of the slack itself, either is right.
        abs(abs(Fraction(value) - Fraction(limit)) - Fraction(limit) / 10**9) <= Fraction(limit) * Fraction(2, 2**52)
    )
    column = np.array([value])
    assert at_least(column, limit).tolist() == [least]
    assert at_most(column, limit).tolist() == [most]
