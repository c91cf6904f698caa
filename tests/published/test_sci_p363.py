"""Weld resistances in the manner of SCI P363, Steel Building Design: Design Data: throat 0.7 of the leg, UK f_u.

Not a match with a printed page: the table was not seen, and its entries as recalled are 0.7 x leg x f_vw,d rounded to
two decimals, times sqrt(3/2) across. Legs of 3 and 4 mm are left out: their throats are under the 3 mm of 4.5.2(2), so
the service specifies none.
"""

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import DIRECTIONAL, FILLET_SIZE, SIMPLIFIED, en_fillet, weld

S275 = {
    5: (0.78, 0.96),
    6: (0.94, 1.15),
    8: (1.25, 1.53),
    10: (1.56, 1.91),
    12: (1.87, 2.29),
    15: (2.34, 2.87),
    18: (2.81, 3.44),
    20: (3.12, 3.82),
    22: (3.43, 4.20),
    25: (3.90, 4.78),
}
S355 = {
    5: (0.84, 1.03),
    6: (1.01, 1.24),
    8: (1.35, 1.65),
    10: (1.69, 2.07),
    12: (2.03, 2.48),
    15: (2.53, 3.10),
    18: (3.04, 3.72),
    20: (3.38, 4.14),
    22: (3.71, 4.55),
    25: (4.22, 5.17),
}


@pytest.mark.parametrize(
    ("f_u", "beta_w", "leg", "along", "across"),
    [
        *((410, 0.85, leg, *strengths) for leg, strengths in S275.items()),
        *((470, 0.90, leg, *strengths) for leg, strengths in S355.items()),
    ],
)
def test_strength_by_leg(ask: Ask, f_u: float, beta_w: float, leg: int, along: float, across: float) -> None:
    """kN/mm along the weld by the simplified method, across it by the directional one."""
    size = f"{0.7 * leg} mm"
    longitudinal = ask(FILLET_SIZE, en_fillet(SIMPLIFIED, size, f_u=f_u, beta_w=beta_w))
    transverse = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, size, f_u=f_u, beta_w=beta_w, angle="90 deg"))
    assert weld(longitudinal) / 1000 == pytest.approx(along, abs=0.006)
    assert weld(transverse) / 1000 == pytest.approx(across, abs=0.006)
