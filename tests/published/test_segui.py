"""W. T. Segui, Steel Design, 5th ed., Example 7.9, from memory: two 3/16 in welds of 4 in on a 1/4 in gusset of A36."""

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import ASD, FILLET_SIZE, LRFD, aisc_fillet, base_metal, weld, worked

KIP_PER_INCH = 4448.2216152605 / 25.4
GUSSET = {"thickness": "1/4 in", "material": "A36"}


@pytest.mark.parametrize(("rules", "strength"), [(LRFD, 33.4), (ASD, 22.3)])
def test_weld_strength(ask: Ask, rules: str, strength: float) -> None:
    """The welds govern: phiRn 33.4 kips, 4.176 kip/in, and Rn/Omega 22.3 kips."""
    answer = ask(FILLET_SIZE, aisc_fillet(rules, "3/16 in", length="4 in", sides=2, parts=(GUSSET, GUSSET)))
    assert 2 * 4 * weld(answer) == pytest.approx(strength, rel=0.003)
    assert weld(answer) == pytest.approx({LRFD: 4.176, ASD: 4.176 * 2 / 3}[rules], rel=0.003)
    assert weld(answer) < base_metal(answer, 1)


def test_plate_strength(ask: Ask) -> None:
    """The gusset yields in shear at 5.4 kip/in and ruptures at 6.525 kip/in, phi 1.00 and 0.75."""
    answer = ask(FILLET_SIZE, aisc_fillet(LRFD, "3/16 in", length="4 in", sides=2, parts=(GUSSET, GUSSET)))
    assert base_metal(answer, 1) == pytest.approx(5.4, rel=0.003)
    by_yield, by_rupture = (value / KIP_PER_INCH for value in worked(answer, "r_avail")[:2])
    assert by_yield == pytest.approx(5.4, rel=0.003)
    assert by_rupture == pytest.approx(6.525, rel=0.003)
