"""Budynas and Nisbett, Shigley's Mechanical Engineering Design: solved problems of chapter 9 by allowable stress.

The book allows a shear stress on the throat, 0.30 of the electrode's tensile strength. The ASD rule set allows
0.60 F_EXX/2.00, the same 0.30, so an allowable stress tau stands for a filler metal of tau/0.30, and E70 for 21 ksi.
The book takes 0.707 where the service takes 1/sqrt(2): 0.015 % apart.
"""

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import ASD, FILLET_SIZE, aisc_fillet, base_metal, leg, steel, weld


def _allowing(tau: float, unit: str = "ksi") -> dict[str, str]:
    """Filler metal on whose throat the ASD rules allow a shear stress."""
    return {"tensile_strength": f"{tau / 0.30!r} {unit}"}


@pytest.mark.parametrize(
    ("tau", "length", "capacity"),
    [
        (20, 4, 17.7),  # 8th ed., solutions, Prob. 9-1
        (25, 8, 44.2),  # 10th ed., solutions, Prob. 9-4
        (25, 4, 22.1),  # 10th ed., solutions, Prob. 9-2
    ],
)
def test_allowable_force_on_parallel_fillets(ask: Ask, tau: float, length: float, capacity: float) -> None:
    """Fillets of 5/16 in along the load, allowable shear stress on the throat given: force in kips."""
    # Parts that so strong a filler metal may join.
    parts = (steel("1/4 in", "65 ksi", "80 ksi"), steel("1 in", "65 ksi", "80 ksi"))
    answer = ask(FILLET_SIZE, aisc_fillet(ASD, "5/16 in", length=f"{length} in", filler=_allowing(tau), parts=parts))
    assert length * weld(answer) == pytest.approx(capacity, rel=0.002)


def test_allowable_force_in_si(ask: Ask) -> None:
    """10th ed., solutions, Prob. 9-1: 5 mm along 100 mm at 140 MPa carries 49.5 kN."""
    request = aisc_fillet(ASD, "5 mm", length="100 mm", filler=_allowing(140, "MPa"), units="metric")
    answer = ask(FILLET_SIZE, request)
    assert 100 * weld(answer) / 1000 == pytest.approx(49.5, rel=0.001)


def test_e70_force_per_inch(ask: Ask) -> None:
    """8th ed., solutions, Prob. 9-2 (Table 9-6): 5/16 in of E70 carries 4.64 kip/in, 18.56 kips over 4 in."""
    answer = ask(FILLET_SIZE, aisc_fillet(ASD, "5/16 in", length="4 in"))
    assert weld(answer) == pytest.approx(4.64, rel=0.002)
    assert 4 * weld(answer) == pytest.approx(18.56, rel=0.002)


def test_e7010_force_per_length_in_both_systems(ask: Ask) -> None:
    """10th ed., solutions, Prob. 9-5: 5 mm of E7010 carries 2.923 kip/in, 0.512 kN/mm, 51.2 kN over 100 mm."""
    request = aisc_fillet(ASD, "5 mm", length="100 mm")
    assert weld(ask(FILLET_SIZE, request)) == pytest.approx(2.923, rel=0.002)
    metric = ask(FILLET_SIZE, {**request, "units": "metric"})
    assert weld(metric) / 1000 == pytest.approx(0.512, rel=0.002)
    assert 100 * weld(metric) / 1000 == pytest.approx(51.2, rel=0.002)


def test_base_metal_governs(ask: Ask) -> None:
    """8th ed., solutions, Prob. 9-3 (Table 9-4): min(0.30 Su, 0.40 Sy) is 12.8 ksi, 11.3 kips on the throat.

    Those are the ASD strengths of J4.2, 0.60 Fu/2.00 and 0.60 Fy/1.50; the book puts them on the throat's area, so the
    part is given the throat, 0.707 x 5/16 in, as its thickness.
    """
    part = steel(f"{0.707 * 0.3125} in", "32 ksi", "58 ksi")
    answer = ask(FILLET_SIZE, aisc_fillet(ASD, "5/16 in", length="4 in", parts=(part, part)))
    assert base_metal(answer, 1) / (0.707 * 0.3125) == pytest.approx(12.8, rel=0.003)
    assert 4 * base_metal(answer, 1) == pytest.approx(11.3, rel=0.003)


def test_throat_stress(ask: Ask) -> None:
    """8th ed., solutions, Prob. 9-4: 32 kips on 8 in of 5/16 in is 18.1 ksi; at 18.1 ksi 5/16 in is needed."""
    request = aisc_fillet(
        ASD,
        "1/16 in",
        length="8 in",
        force="32 kip",
        filler=_allowing(18.1),
        parts=(steel("1/2 in"), steel("1/2 in")),
    )
    assert leg(ask(FILLET_SIZE, request)) == pytest.approx(0.3125, rel=0.002)


def test_example_9_2_weld_metal(ask: Ask) -> None:
    """9th ed., Example 9-2, p. 492: 3/8 in of E70 carries 5.57 kip/in, 22.28 kips on two welds of 2 in."""
    bar = steel("1/2 in", "27.5 ksi", "50 ksi")
    answer = ask(FILLET_SIZE, aisc_fillet(ASD, "3/8 in", length="2 in", sides=2, parts=(bar, bar)))
    assert weld(answer) == pytest.approx(5.57, rel=0.002)
    assert 2 * 2 * weld(answer) == pytest.approx(22.28, rel=0.002)


def test_example_9_2_base_metal(ask: Ask) -> None:
    """Example 9-2, part (b), from memory: 16.5 kips put 0.40 Sy = 11.0 ksi on the legs' area, 2 x 0.375 x 2 in2.

    The leg is given as the part's thickness.
    """
    part = steel("3/8 in", "27.5 ksi", "50 ksi")
    answer = ask(FILLET_SIZE, aisc_fillet(ASD, "3/8 in", length="2 in", sides=2, parts=(part, part)))
    assert 2 * 2 * base_metal(answer, 1) == pytest.approx(16.5, rel=0.002)


def test_example_9_3_balanced_welds(ask: Ask) -> None:
    """Example 9-3, from memory: 24 kips, a bar 4 in deep, centroid 1.67 in from one edge: 14.0 and 10.0 kips.

    At 4.64 kip/in, 5/16 in of E70, that is 3.02 and 2.16 in.
    """
    request = aisc_fillet(ASD, "5/16 in", length="6 in", sides=2, parts=(steel("1/2 in"), steel("1/2 in")))
    load = {"force": "24 kip", "length": "6 in", "width": "4 in", "centroid": "1.67 in"}
    balance = ask(FILLET_SIZE, {**request, "load": load})["balance"]
    assert [force["value"] for force in balance["forces"]] == pytest.approx([14.0, 10.0], rel=0.01)
    assert [length["value"] for length in balance["least_lengths"]] == pytest.approx([3.02, 2.16], rel=0.01)
