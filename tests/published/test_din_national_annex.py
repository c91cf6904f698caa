"""DIN 18800-1, later DIN EN 1993-1-8/NA to 4.5.2: least throat sqrt(t_max) - 0.5, from memory."""

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import DIRECTIONAL, FILLET_SIZE, en_fillet, throat


@pytest.mark.parametrize(
    ("thickness", "least"),
    # sqrt(25) - 0.5; sqrt(36) - 0.5; sqrt(9) - 0.5 is under the 3 mm of 4.5.2(2).
    [("25 mm", 4.5), ("36 mm", 5.5), ("9 mm", 3.0)],
)
def test_least_throat(ask: Ask, thickness: str, least: float) -> None:
    """The thicker part counts."""
    request = en_fillet(DIRECTIONAL, "0.5 mm", f_u=360, beta_w=0.8, thickness=thickness, minimum_throat="din-na")
    thin = {**request["parts"][1], "thickness": "6 mm"}
    answer = ask(FILLET_SIZE, {**request, "parts": [request["parts"][0], thin]})
    assert throat(answer, "minimum") == pytest.approx(least, abs=0.01)
    assert throat(answer, "specify") == pytest.approx(least, abs=0.01)
