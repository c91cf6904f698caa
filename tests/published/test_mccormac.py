"""J. McCormac and S. Csernak, Structural Steel Design, 5th ed., Example 14-1, from memory: 1/4 in of E70, end-loaded.

The book takes 0.707 and rounds on the way: 0.3 %.
"""

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import ASD, FILLET_SIZE, LRFD, aisc_fillet, weld


@pytest.mark.parametrize(("rules", "strength"), [(LRFD, 5.56), (ASD, 3.71)])
def test_strength_per_inch(ask: Ask, rules: str, strength: float) -> None:
    """Rn 7.42, phiRn 5.56 and Rn/Omega 3.71 kip/in."""
    answer = ask(FILLET_SIZE, aisc_fillet(rules, "1/4 in", length="1 in", end_loaded=True))
    assert weld(answer) == pytest.approx(strength, rel=0.003)
    assert weld(answer) / {LRFD: 0.75, ASD: 0.5}[rules] == pytest.approx(7.42, rel=0.003)


@pytest.mark.parametrize(
    ("rules", "length", "factor", "strength"),
    [(LRFD, 20, 1.0, 111.2), (LRFD, 30, 0.96, 160.1), (ASD, 30, 0.96, 106.8)],
)
def test_long_weld(ask: Ask, rules: str, length: int, factor: float, strength: float) -> None:
    """20 in carries 111.2 kips whole; 30 in is 120 legs, beta 0.96: 160.1 (LRFD) and 106.8 kips (ASD)."""
    answer = ask(FILLET_SIZE, aisc_fillet(rules, "1/4 in", length=f"{length} in", end_loaded=True))
    assert answer["length"]["factor"] == pytest.approx(factor)
    assert length * weld(answer) == pytest.approx(strength, rel=0.003)
