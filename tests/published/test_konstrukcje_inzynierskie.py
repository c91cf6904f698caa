"""konstrukcjeinzynierskie.pl, welded frame connections to PN-EN 1993-1-8, p. 3, joint A (2 December 2022).

Two transverse fillets of 14 mm throat on a plate 100 x 20 mm of S235. The example sets P at 712 kN, the weld's capacity
rounded down; the plate itself yields sooner, so the weld's figure is compared alone.
"""

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import DIRECTIONAL, FILLET_SIZE, base_metal, en_fillet, throat, weld


def test_double_transverse_fillet(ask: Ask) -> None:
    """A_w 2800 mm2 carries 712 kN."""
    request = en_fillet(
        DIRECTIONAL,
        "14 mm",
        f_u=360,
        beta_w=0.8,
        angle="90 deg",
        length="100 mm",
        joint={"kind": "tee", "sides": 2},
    )
    answer = ask(FILLET_SIZE, request)
    assert 2 * 100 * throat(answer, "specify") == pytest.approx(2800)
    assert 2 * 100 * weld(answer) / 1000 == pytest.approx(712, rel=0.002)
    # The plate, by hand: 100 x 20 x 235 N/mm2.
    assert 2 * 100 * base_metal(answer, 2) / 1000 == pytest.approx(470)
