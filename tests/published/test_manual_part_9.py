"""AISC Steel Construction Manual, 16th ed., Eqs. 9-6 and 9-7: thickness at which base metal matches the weld.

3.09 D/Fu where a weld lies on one face and 6.19 D/Fu where welds lie on both, D sixteenths of E70 leg, Fu in ksi, as
the Design Examples v16.0 apply them; with the design constants per sixteenth of leg of Part 8.
"""

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import ASD, FILLET_SIZE, LRFD, aisc_fillet, base_metal, steel, weld


@pytest.mark.parametrize(("rules", "constant"), [(LRFD, 1.392), (ASD, 0.928)])
def test_strength_per_sixteenth(ask: Ask, rules: str, constant: float) -> None:
    """Manual Part 8: an E70 fillet carries 1.392 (LRFD) or 0.928 (ASD) kip/in per sixteenth, 1.856 nominal."""
    answer = ask(FILLET_SIZE, aisc_fillet(rules, "1/4 in", length="10 in"))
    assert weld(answer) / 4 == pytest.approx(constant, abs=0.0005)
    assert weld(answer) / 4 / {LRFD: 0.75, ASD: 0.5}[rules] == pytest.approx(1.856, abs=0.0005)


@pytest.mark.parametrize("rules", [LRFD, ASD])
@pytest.mark.parametrize(
    ("sixteenths", "f_u", "printed"),
    [
        (5, "65 ksi", 0.238),  # Example II.A-2A, p. IIA-49, and K.3, p. K-17 (0.237 in one place)
        (4, "65 ksi", 0.190),  # Example II.A-3, p. IIA-65, welds B; Example II.A-31, p. IIA-303
        (3, "65 ksi", 0.143),  # Example II.A-17A, p. IIA-175; Example II.C-2, p. IIC-18, angle
        (4, "62 ksi", 0.199),  # Example K.2, pp. K-12, -13
        (5, "62 ksi", 0.250),  # Example K.3, p. K-17
    ],
)
def test_support_with_weld_on_one_face(ask: Ask, rules: str, sixteenths: int, f_u: str, printed: float) -> None:
    """A support of the printed thickness is as strong beside a weld on one face as the weld itself."""
    request = aisc_fillet(
        rules,
        f"{sixteenths}/16 in",
        length="10 in",
        sides=2,
        kind="tee",
        parts=(steel(f"{printed} in", f_u=f_u), steel("1/2 in")),
    )
    answer = ask(FILLET_SIZE, request)
    # Three figures of an inch are printed: half a unit of the last is 0.35 % of 0.143 in.
    assert base_metal(answer, 1) == pytest.approx(weld(answer), rel=0.004)


@pytest.mark.parametrize("rules", [LRFD, ASD])
@pytest.mark.parametrize(
    ("sixteenths", "printed"),
    [
        (3, 0.286),  # Example II.A-3, p. IIA-65, welds A; II.A-11A, p. IIA-129; II.C-2, p. IIC-18, stem
        (4, 0.381),  # Example II.C-1, p. IIC-4, gusset
    ],
)
def test_support_with_welds_on_both_faces(ask: Ask, rules: str, sixteenths: int, printed: float) -> None:
    """A web or gusset of the printed thickness, Fu 65 ksi, is as strong as the welds on both its faces."""
    request = aisc_fillet(
        rules,
        f"{sixteenths}/16 in",
        length="10 in",
        sides=2,
        kind="tee",
        parts=(steel("1/2 in"), steel(f"{printed} in")),
    )
    answer = ask(FILLET_SIZE, request)
    assert base_metal(answer, 2) == pytest.approx(weld(answer), rel=0.002)
