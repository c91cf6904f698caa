"""R. Kindmann and M. Stracke, Verbindungen im Stahl- und Verbundbau, 3rd ed. 2012, Table 5.7 and eqs. 5.24 to 5.26."""

import pytest
from tests.published.conftest import Ask, Read
from tests.published.fillets import DIRECTIONAL, FILLET_SIZE, en_fillet, weld


@pytest.mark.parametrize(
    ("grade", "beta_w"),
    [("S235", 0.80), ("S275", 0.85), ("S355", 0.90), ("S420N", 1.00), ("S460N", 1.00), ("S420M", 1.00)],
)
def test_beta_w_by_grade(read: Read, grade: str, beta_w: float) -> None:
    """Table 5.7: correlation factors of EN 1993-1-8:2005, as the list of materials has them."""
    found = {material["id"]: material["beta_w"] for material in read("/v1/materials")["materials"]}
    assert found[grade] == beta_w


def test_across_over_along(ask: Ask) -> None:
    """Eqs. 5.25 and 5.26: f_u a/(sqrt(2) beta_w gamma_M2) across over f_u a/(sqrt(3) beta_w gamma_M2) along, 1.2247."""
    along = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "5 mm", f_u=510, beta_w=0.9))
    across = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "5 mm", f_u=510, beta_w=0.9, angle="90 deg"))
    assert weld(across) / weld(along) == pytest.approx(1.2247, abs=1e-4)


def test_strength_along_and_across(ask: Ask) -> None:
    """Eqs. 5.25 and 5.26 worked by hand for S235, a = 4 mm: 1018 N/mm across and 831 N/mm along."""
    along = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "4 mm", f_u=360, beta_w=0.8))
    across = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "4 mm", f_u=360, beta_w=0.8, angle="90 deg"))
    assert weld(along) == pytest.approx(831, abs=0.5)
    assert weld(across) == pytest.approx(1018, abs=0.5)


@pytest.mark.parametrize(("grade", "f_u", "beta_w"), [("S420N", 520, 0.88), ("S460N", 540, 0.85), ("S420N", 520, 1.0)])
def test_national_beta_w(ask: Ask, grade: str, f_u: float, beta_w: float) -> None:
    """Table 5.7, German values 0.88 and 0.85 through parameters: f_u/(sqrt(3) beta_w 1.25), echoed in provenance."""
    part = {"thickness": "20 mm", "material": grade}
    national = {"parts": [part, part], "parameters": {"beta_w": beta_w}}
    answer = ask(FILLET_SIZE, {**en_fillet(DIRECTIONAL, "5 mm", f_u=f_u, beta_w=1.0), **national})
    assert weld(answer) / 5 == pytest.approx(f_u / (3**0.5 * beta_w * 1.25))
    assert answer["provenance"]["parameters"]["beta_w"] == beta_w
