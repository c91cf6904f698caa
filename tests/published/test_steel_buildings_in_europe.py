"""Steel Buildings in Europe, Multi-Storey Steel Buildings Part 5, Joint design, 2.2.6, p. 5-11.

Throat of each of two fillets, over the web's thickness, that makes the joint as strong as the web: gamma_M0 1.0,
gamma_M2 1.25. Two decimals are printed. The ratio of S355 belongs to f_u 510, that of S460 to f_u 550.
"""

from typing import Any

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import DIRECTIONAL, FILLET_SIZE, throat


def _full_strength(f_y: float, f_u: float, beta_w: float, thickness: float) -> dict[str, Any]:
    """Request for the double fillet that makes up a plate."""
    part = {
        "thickness": f"{thickness} mm",
        "yield_strength": f"{f_y} MPa",
        "tensile_strength": f"{f_u} MPa",
        "beta_w": beta_w,
    }
    return {
        "rule_set": DIRECTIONAL,
        "basis": "full-strength",
        "joint": {"kind": "tee", "sides": 2},
        "parts": [part, part],
    }


@pytest.mark.parametrize("thickness", [10.0, 16.0])
@pytest.mark.parametrize(
    ("f_y", "f_u", "beta_w", "ratio"),
    [(235, 360, 0.80, 0.46), (275, 430, 0.85, 0.48), (355, 510, 0.90, 0.55), (460, 550, 1.00, 0.74)],
)
def test_full_strength_double_fillet(
    ask: Ask, f_y: float, f_u: float, beta_w: float, ratio: float, thickness: float
) -> None:
    """S235 0.46, S275 0.48, S355 0.55, S460 0.74."""
    answer = ask(FILLET_SIZE, _full_strength(f_y, f_u, beta_w, thickness))
    assert throat(answer) / thickness == pytest.approx(ratio, abs=0.005)


@pytest.mark.parametrize(
    ("f_y", "f_u", "beta_w", "ratio"),
    [
        (355, 470, 0.90, 0.6009),
        (420, 520, 1.00, 0.7139),
        (420, 520, 0.88, 0.6282),  # German national value of beta_w
        (460, 540, 1.00, 0.7529),
        (460, 540, 0.85, 0.6400),  # German national value of beta_w
        (460, 570, 1.00, 0.7133),
    ],
)
def test_full_strength_of_other_grades(ask: Ask, f_y: float, f_u: float, beta_w: float, ratio: float) -> None:
    """Not printed there: the same rule, f_y beta_w 1.25/(sqrt(2) f_u) by EN 1993-1-8:2005 4.5.3.2, worked by hand."""
    answer = ask(FILLET_SIZE, _full_strength(f_y, f_u, beta_w, 10.0))
    assert throat(answer) / 10.0 == pytest.approx(ratio, abs=0.0002)


def test_national_beta_w_over_that_of_the_grade(ask: Ask) -> None:
    """The German 0.88 for S420 sent as a parameter, over the grade's own 1.00: 0.6282 t for f_u 520."""
    request = {
        "rule_set": DIRECTIONAL,
        "basis": "full-strength",
        "joint": {"kind": "tee", "sides": 2},
        "parts": [{"thickness": "10 mm", "material": "S420N"}] * 2,
    }
    assert throat(ask(FILLET_SIZE, request)) / 10.0 == pytest.approx(0.7139, abs=0.0002)
    national = ask(FILLET_SIZE, {**request, "parameters": {"beta_w": 0.88}})
    assert throat(national) / 10.0 == pytest.approx(0.6282, abs=0.0002)
