"""Código Técnico de la Edificación, DB SE-A, 8.6.2, Table 8.1: f_u and beta_w of S235, S275 and S355.

The table has f_u 510 for S355, as EN 1993-1-1 had before its corrigendum of 2009; the service's list has the 490 of the
corrigendum, so that strength is given by hand.
"""

import pytest
from tests.published.conftest import Ask, Read
from tests.published.fillets import FILLET_SIZE, SIMPLIFIED, en_fillet, throat, weld, worked


@pytest.mark.parametrize(("grade", "beta_w"), [("S235", 0.80), ("S275", 0.85), ("S355", 0.90)])
def test_beta_w(read: Read, grade: str, beta_w: float) -> None:
    """Table 8.1 against the list of materials: beta_w."""
    [material] = [entry for entry in read("/v1/materials")["materials"] if entry["id"] == grade]
    assert material["beta_w"] == beta_w


@pytest.mark.parametrize(("grade", "f_u", "f_vw_d"), [("S235", 360, 207.85), ("S275", 430, 233.66)])
def test_listed_grades(ask: Ask, read: Read, grade: str, f_u: float, f_vw_d: float) -> None:
    """Table 8.1 against the list of materials: f_u, and the shear strength that follows at gamma_M2 1.25."""
    [material] = [entry for entry in read("/v1/materials")["materials"] if entry["id"] == grade]
    assert material["bands"][0]["tensile_strength"]["value"] == f_u
    by_grade = {"thickness": "20 mm", "material": grade}
    # The parts by hand are replaced by parts of the grade.
    request = {**en_fillet(SIMPLIFIED, "5 mm", f_u=f_u, beta_w=1.0), "parts": [by_grade, by_grade]}
    assert worked(ask(FILLET_SIZE, request), "f_vw_d")[0] == pytest.approx(f_vw_d, abs=0.01)


@pytest.mark.parametrize(("f_u", "beta_w", "f_vw_d"), [(360, 0.80, 207.85), (430, 0.85, 233.66), (510, 0.90, 261.73)])
def test_design_shear_strength(ask: Ask, f_u: float, beta_w: float, f_vw_d: float) -> None:
    """The table's rows at gamma_M2 1.25, worked by hand: f_u/(sqrt(3) beta_w gamma_M2)."""
    answer = ask(FILLET_SIZE, en_fillet(SIMPLIFIED, "5 mm", f_u=f_u, beta_w=beta_w))
    assert worked(answer, "f_vw_d")[0] == pytest.approx(f_vw_d, abs=0.01)
    assert weld(answer) / throat(answer, "specify") == pytest.approx(f_vw_d, abs=0.01)
