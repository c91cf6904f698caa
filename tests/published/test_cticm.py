"""CTICM Metaletech, A. Rodier, Soudures âme-semelle de PRS #4, exemple de calcul (May 2022): minimum welds.

S355 with f_u 470: V 455 kN on a girder 500 mm deep with 20 mm flanges, web welded on both sides.
"""

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import FILLET_SIZE, SIMPLIFIED, en_fillet, throat, weld, worked


def test_design_shear_strength(ask: Ask) -> None:
    """f_vw,d 241 N/mm2, printed whole."""
    answer = ask(FILLET_SIZE, en_fillet(SIMPLIFIED, "3 mm", f_u=470, beta_w=0.9))
    assert worked(answer, "f_vw_d")[0] == pytest.approx(241, abs=0.5)
    assert weld(answer) / throat(answer, "specify") == pytest.approx(241, abs=0.5)


def test_web_to_flange_fillet(ask: Ask) -> None:
    """Throat V/(2 (h - t_f) f_vw,d) is 1.97 mm, and the least throat of 3 mm is adopted.

    The example's shear flow is V over the distance of the flanges, 480 mm, shared by two welds.
    """
    request = en_fillet(SIMPLIFIED, "0.5 mm", f_u=470, beta_w=0.9, joint={"kind": "tee", "sides": 2}, f_y=355)
    answer = ask(FILLET_SIZE, {**request, "load": {"force": "455 kN", "length": "480 mm", "angle": "0 deg"}})
    assert throat(answer) == pytest.approx(1.97, abs=0.01)
    assert throat(answer, "specify") == pytest.approx(3.0)
    assert answer["governs"] == "minimum-size"
