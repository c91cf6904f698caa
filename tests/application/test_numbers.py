"""Numbers as they are read and shown, against exact arithmetic: rational and decimal numbers have no last bit."""

from __future__ import annotations

import re
from decimal import ROUND_HALF_EVEN, Decimal, localcontext
from fractions import Fraction

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from truethroat_service.application.core.quantities import (
    HYDROGEN,
    LENGTH,
    NUMBER,
    STRESS,
    UnitSystem,
    read_number,
    render,
)

steady = settings(derandomize=True, deadline=None, database=None)
WRITTEN = st.from_regex(re.compile(NUMBER, re.ASCII), fullmatch=True)
ANY = st.floats(-1e307, 1e307)
SHOP = st.floats(-1e6, 1e6)


def _exact(text: str) -> Fraction:
    """Value of a number as it is written; a whole and a fraction are a sum with one sign."""
    sign = -1 if text.startswith("-") else 1
    return sign * sum((Fraction(part) for part in text.lstrip("+-").split(" ")), Fraction(0))


@steady
@given(WRITTEN)
@example("3 1/2")
@example("-999999 999999/999983")
@example("+.5e-3")
@example("1/3")
def test_a_number_is_the_float_nearest_to_what_is_written(text: str) -> None:
    """Python rounds a fraction to the nearest float, so one rounding is all that reading may cost."""
    assert read_number(text) == float(_exact(text))


@pytest.mark.parametrize("text", ["", "-", "1/", "/2", "1//2", "1 2", "1/2/3", "1.5/2", "1 1.5/2", "x", "1/x"])
def test_what_is_no_number_is_refused(text: str) -> None:
    """Texts that only look like a number are none."""
    with pytest.raises(ValueError, match=r"could not convert|invalid"):
        read_number(text)


def test_a_fraction_of_nothing_is_refused() -> None:
    """Nothing can be cut into no parts."""
    with pytest.raises(ZeroDivisionError):
        read_number("1/0")


def _figures(number: Decimal, figures: int) -> Decimal:
    """Number rounded to so many figures, a half to the even neighbour, as IEEE 754 and Python do."""
    with localcontext(prec=figures, rounding=ROUND_HALF_EVEN):
        return +number


def _four_figures(number: float) -> Fraction:
    """Number rounded to four figures or, beyond four before the point, to a whole; a half goes to the even one."""
    size = abs(Fraction(number))
    step = Fraction(1)
    while size and size < 1000 * step:
        step /= 10
    return round(Fraction(number) / step) * step


@steady
@given(ANY)
@example(5e-324)
@example(-0.0)
@example(0.18749999999999997)
def test_a_value_keeps_fifteen_figures(number: float) -> None:
    """A unit that is the engine's own shows the number itself, to the fifteen figures that a float surely holds."""
    shown = render(HYDROGEN, number, "metric")
    assert Fraction(shown["value"]) == Fraction(float(_figures(Decimal(number), 15)))
    assert str(shown["value"]) != "-0.0"


@steady
@given(ANY)
@example(5e-324)
@example(9999.5)
@example(0.00012345)
@example(100.0)
@example(-1e300)
def test_a_text_has_four_figures_and_no_exponent(number: float) -> None:
    """The text is the value rounded to four figures, or to a whole when it has more before the point."""
    shown = render(HYDROGEN, number, "metric")
    text, _, unit = shown["text"].partition(" ")
    assert unit == "ml/100g"
    assert Fraction(text) == _four_figures(shown["value"])
    assert re.fullmatch(r"-?(0|[1-9][0-9]*)(\.[0-9]*[1-9])?", text)


@steady
@given(st.integers(-64_000, 64_000))
def test_sixty_fourths_of_an_inch_are_shown_in_lowest_terms(count: int) -> None:
    """A length on a sixty-fourth is a whole and a fraction in lowest terms; 64 in are 1625.6 mm."""
    shown = render(LENGTH, count * 25.4 / 64, "us")
    text = shown["text"].removesuffix(" in")
    assert Fraction(shown["value"]) == Fraction(count, 64)
    assert _exact(text) == Fraction(count, 64)
    fraction = text.lstrip("-").rpartition(" ")[2]
    assert "/" not in fraction or fraction == str(Fraction(abs(count) % 64, 64))


SYSTEMS: list[tuple[UnitSystem, Fraction]] = [("metric", Fraction(1, 10)), ("us", Fraction(1, 64))]


@steady
@given(st.one_of(st.floats(0.0, 999.9), st.floats(999.9, 1e6)), st.sampled_from(SYSTEMS))
@example(1001.7, SYSTEMS[0])
@example(1000.4, SYSTEMS[0])
def test_a_length_is_rounded_to_the_safe_side(millimetres: float, system: tuple[UnitSystem, Fraction]) -> None:
    """Down never says more than the value and up never less, and both are on the shop's step, within one of it.

    From 1000 mm, where a text has no decimal, the metric step is a whole millimetre.
    """
    name, step = system
    if name == "metric" and millimetres >= 1000.0:
        step = Fraction(1)
    down, up = render(LENGTH, millimetres, name, "down"), render(LENGTH, millimetres, name, "up")
    low, high = (_exact(shown["text"].rpartition(" ")[0]) for shown in (down, up))
    value, noise = Fraction(down["value"]), Fraction(1, 10**9)
    assert value - step * (1 + noise) - value * noise <= low <= value + step * noise + value * noise
    assert value - step * noise - value * noise <= high <= value + step * (1 + noise) + value * noise


@steady
@given(SHOP)
def test_a_stress_in_ksi_is_the_exact_quotient(megapascals: float) -> None:
    """One ksi is 1000 lbf of 4.4482216152605 N over 25.4 mm by 25.4 mm (NIST SP 811); 15 figures of the quotient."""
    exact = Fraction(megapascals) * Fraction("25.4") ** 2 / Fraction("4448.2216152605")
    assert render(STRESS, megapascals, "us")["value"] == pytest.approx(float(exact), rel=6e-15, abs=1e-320)
