"""AWS D1.1:2020: root gaps of fillets, and the largest fillet of one pass."""

from math import inf

import numpy as np
import pytest
from tests.standards.welds import INCH

from truethroat_service.engine.rounding import SAME
from truethroat_service.standards.aws_d1_1_2020 import EDITION, s5_pass_limits, s7_21_fit_up


@pytest.mark.parametrize(
    ("gap", "leg"),
    # AWS D1.1:2020 7.21.1 (second-hand quotation), a specified leg of 5/16 in: beyond 1/16 in the whole gap is added.
    [(0.0, 5 / 16), (1 / 16, 5 / 16), (3 / 32, 13 / 32), (1 / 8, 7 / 16), (3 / 16, 1 / 2)],
)
def test_leg_for_a_root_gap(gap: float, leg: float) -> None:
    """A gap over 1/16 in is added whole to the leg: AWS D1.1:2020 7.21.1."""
    added = s7_21_fit_up.leg_added(g=gap * INCH, g_free=s7_21_fit_up.FREE_GAP, same=SAME)
    assert 5 / 16 * INCH + added == pytest.approx(leg * INCH, rel=1e-12)


def test_metric_leg_for_a_root_gap() -> None:
    """A 6 mm leg over a gap of 3 mm becomes 9 mm: AWS D1.1, assembly clause (from memory)."""
    assert 6.0 + s7_21_fit_up.leg_added(g=3.0, g_free=s7_21_fit_up.FREE_GAP, same=SAME) == pytest.approx(9.0)


def test_gap_limits() -> None:
    """1/16 in is free and 3/16 in the most: AWS D1.1:2020 7.21.1 (second-hand)."""
    assert pytest.approx(1.0) == s7_21_fit_up.FREE_GAP * 16 / INCH
    assert pytest.approx(3.0) == s7_21_fit_up.LARGEST_GAP * 16 / INCH
    assert str(s7_21_fit_up.FIT_UP) == f"{EDITION}, 7.21.1, second-hand"


def test_a_sixteenth_is_free_whatever_its_last_bit() -> None:
    """A gap of 1/16 in adds nothing even when its float falls just above."""
    for gap in (np.nextafter(INCH / 16, 9), INCH * 0.1 * 0.625, 1.5875):
        assert s7_21_fit_up.leg_added(g=float(gap), g_free=s7_21_fit_up.FREE_GAP, same=SAME) == 0.0
    assert s7_21_fit_up.leg_added(g=1.588, g_free=s7_21_fit_up.FREE_GAP, same=SAME) == 1.588


@pytest.mark.parametrize(
    ("process", "orientation", "inches", "millimetres"),
    # AWS D1.1:2020 Table 5.1, inches and the millimetres printed beside them.
    [
        ("SMAW", "flat", 3 / 8, 10),
        ("SMAW", "horizontal", 5 / 16, 8),
        ("SMAW", "vertical", 1 / 2, 12),
        ("SMAW", "overhead", 5 / 16, 8),
        *(
            (process, *row)
            for process in ("GMAW", "FCAW", "FCAW-G", "FCAW-S")
            for row in (
                ("flat", 1 / 2, 12),
                ("horizontal", 3 / 8, 10),
                ("vertical", 1 / 2, 12),
                ("overhead", 5 / 16, 8),
            )
        ),
        ("SAW", "flat", inf, inf),
        ("SAW", "horizontal", 5 / 16, 8),
    ],
)
def test_largest_single_pass(process: str, orientation: str, inches: float, millimetres: float) -> None:
    """Largest fillet of one pass, by the inches or the millimetres printed: AWS D1.1:2020 Table 5.1."""
    largest = s5_pass_limits.single_pass_leg(process, orientation)
    assert largest == pytest.approx(max(inches * INCH, millimetres), rel=1e-12)


@pytest.mark.parametrize(
    ("process", "orientation"), [("SAW", "vertical"), ("SAW", "overhead"), ("GTAW", "flat"), ("SMAW", "sideways")]
)
def test_unlisted_single_pass(process: str, orientation: str) -> None:
    """What Table 5.1 does not list has no answer."""
    assert s5_pass_limits.single_pass_leg(process, orientation) is None


@pytest.mark.parametrize(
    ("leg", "largest", "passes"),
    [
        (1 / 4, 5 / 16, 1),  # D. K. Miller: a 1/4 in fillet, horizontal by stick, is one pass
        (1 / 2, 5 / 16, 3),  # and a 1/2 in one at least three
        (5 / 16, 5 / 16, 1),  # the largest itself
        (5 / 16, 3 / 8, 1),
        (3 / 8, 5 / 16, 2),  # by area: 36 sixteenths squared in beads of 25
        (5 / 8, 5 / 16, 4),  # twice the leg is four times the metal
        (0.6251, 5 / 16, 5),
        (15 / 16, 5 / 16, 9),
    ],
)
def test_least_passes(leg: float, largest: float, passes: int) -> None:
    """No pass larger than the largest single-pass fillet, so metal by leg squared; Miller's counts and by hand."""
    assert s5_pass_limits.least_passes(z=leg * INCH, z_pass=largest * INCH, same=SAME) == passes


def test_whole_ratios_need_no_pass_more() -> None:
    """A leg of a whole number of largest passes is not given one more by float noise."""
    for count in range(1, 40):
        leg = float(np.nextafter(np.sqrt(count) * 8.0, 999))
        assert s5_pass_limits.least_passes(z=leg, z_pass=8.0, same=SAME) == count
