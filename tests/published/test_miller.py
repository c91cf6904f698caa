"""D. K. Miller, Smaller, longer fillet welds reduce welding costs (Modern Steel Construction; design series No. 2).

A 1/2 in fillet 6 in long and a 1/4 in fillet 12 in long carry the same 44 kips at 0.30 F_EXX of E70; the first needs at
least three passes horizontally, the second one. The article rounds: 0.707 x 0.30 x 70 x 0.5 x 6 is 44.5.
"""

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import ASD, FILLET_SIZE, aisc_fillet, steel, weld


@pytest.mark.parametrize(("size", "length", "passes"), [("1/2 in", 6, 3), ("1/4 in", 12, 1)])
def test_same_strength_fewer_passes(ask: Ask, size: str, length: int, passes: int) -> None:
    """Both carry 44 kips; by stick in the horizontal position the larger takes three passes, the smaller one."""
    request = aisc_fillet(
        ASD,
        size,
        length=f"{length} in",
        kind="tee",
        parts=(steel("3/8 in"), steel("3/8 in")),
        process="SMAW",
        position="2F",
    )
    answer = ask(FILLET_SIZE, request)
    assert length * weld(answer) == pytest.approx(44, rel=0.02)
    assert answer["specify"]["passes"] == passes
