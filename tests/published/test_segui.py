"""W. T. Segui, Steel Design, 5th ed., Examples 7.9 and 7.10, from memory: 3/16 in welds on a 1/4 in gusset of A36."""

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
    # Shear and tension in turn, first by yielding, then by rupture.
    by_yield, _, by_rupture, _ = (value / KIP_PER_INCH for value in worked(answer, "r_avail")[:4])
    assert by_yield == pytest.approx(5.4, rel=0.003)
    assert by_rupture == pytest.approx(6.525, rel=0.003)


def test_longitudinal_with_transverse(ask: Ask) -> None:
    """Example 7.10: the two welds of 4 in and one of 4 in across; plain sum 50.1 kips, 0.85 and 1.5 times 53.5 kips."""
    request = aisc_fillet(LRFD, "3/16 in", length="4 in", parts=(GUSSET, GUSSET))
    load = {"force": "0.1 kip", "longitudinal_length": "8 in", "transverse_length": "4 in"}
    answer = ask(FILLET_SIZE, {**request, "load": load})
    assert answer["verdict"] == "enough"
    group = answer["concentric"]
    assert group["plain_sum"]["value"] == pytest.approx(50.1, rel=0.003)
    assert group["weighted_sum"]["value"] == pytest.approx(53.5, rel=0.003)
    assert group["strength"] == group["weighted_sum"]
    assert group["counts"] == "weighted-sum"


def test_size_for_the_group(ask: Ask) -> None:
    """The same turned round: 53.5 kips on that group need 3/16 in."""
    request = aisc_fillet(LRFD, "1/16 in", length="4 in", parts=(GUSSET, GUSSET))
    load = {"force": "53.5 kip", "longitudinal_length": "8 in", "transverse_length": "4 in"}
    answer = ask(FILLET_SIZE, {**request, "load": load})
    assert answer["required"]["leg"]["value"] == pytest.approx(3 / 16, rel=0.003)
