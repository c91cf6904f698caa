"""AISC, Companion to the Steel Construction Manual, Volume 1: Design Examples, v16.0 (to ANSI/AISC 360-22).

Read in a transcription. Figures are printed to three figures; each tolerance says how far rounding alone carries them.
The examples give demands and strengths of whole connections; an answer is per length of one weld.
"""

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import (
    ASD,
    FILLET_SIZE,
    KSI,
    LRFD,
    aisc_fillet,
    base_metal,
    leg,
    steel,
    throat,
    weld,
    worked,
)


def _j_1(rules: str, force: str, *, end_loaded: bool = True) -> dict[str, object]:
    """Request of Example J.1: two 3/16 in fillets of 27 in along a 1/4 in plate of Fy 50, Fu 65 ksi."""
    return aisc_fillet(
        rules,
        "1/16 in",
        length="27 in",
        sides=2,
        parts=(steel("1/2 in"), steel("1/4 in")),
        force=force,
        edge_of=2,
        end_loaded=end_loaded,
    )


@pytest.mark.parametrize(("rules", "demand", "strength"), [(LRFD, "200 kip", 206), (ASD, "133 kip", 137)])
def test_example_j_1_weld_strength(ask: Ask, rules: str, demand: str, strength: float) -> None:
    """Example J.1, pp. J-2 to J-4: the size is 3/16 in; phiRn 206 kips for Pu 200, Rn/Omega 137 for Pa 133."""
    answer = ask(FILLET_SIZE, _j_1(rules, demand))
    assert leg(answer, "specify") == pytest.approx(0.1875)
    assert 2 * 27 * weld(answer) == pytest.approx(strength, rel=0.006)


def test_example_j_1_length_reduction(ask: Ask) -> None:
    """Example J.1: l/w 144, so beta 0.912 by Eq. J2-1, and Rn 274 kips (LRFD/0.75)."""
    answer = ask(FILLET_SIZE, _j_1(LRFD, "200 kip"))
    beta = next(step for step in answer["working"] if step["symbol"] == "beta")
    assert beta["with"]["L"]["value"] / beta["with"]["w"]["value"] == pytest.approx(144)
    assert answer["length"]["factor"] == pytest.approx(0.912)
    assert answer["length"]["effective"]["value"] == pytest.approx(0.912 * 27)
    assert 2 * 27 * weld(answer) / 0.75 == pytest.approx(274, rel=0.006)


def test_example_j_1_strength_per_inch(ask: Ask) -> None:
    """Example J.1: rn 5.57 kip/in before the reduction (LRFD/0.75)."""
    answer = ask(FILLET_SIZE, _j_1(LRFD, "200 kip", end_loaded=False))
    assert weld(answer) / 0.75 == pytest.approx(5.57, rel=0.006)


@pytest.mark.parametrize(("rules", "strength"), [(LRFD, 395), (ASD, 264)])
def test_example_j_1_base_metal(ask: Ask, rules: str, strength: float) -> None:
    """Example J.1: shear rupture of the plate along both welds, phiRn 395 and Rn/Omega 264 kips (Rn 527)."""
    answer = ask(FILLET_SIZE, _j_1(rules, "133 kip"))
    assert 2 * 27 * base_metal(answer, 2) == pytest.approx(strength, rel=0.006)
    assert 2 * 27 * base_metal(answer, 2) / {LRFD: 0.75, ASD: 0.5}[rules] == pytest.approx(527, rel=0.006)


def test_example_j_1_size_limits(ask: Ask) -> None:
    """Example J.1: largest fillet along the 1/4 in edge 3/16 in, least fillet 1/8 in."""
    answer = ask(FILLET_SIZE, _j_1(LRFD, "200 kip"))
    assert leg(answer, "maximum") == pytest.approx(0.1875)
    assert leg(answer, "minimum") == pytest.approx(0.125)


@pytest.mark.parametrize(("rules", "strength"), [(LRFD, 67.9), (ASD, 45.3)])
def test_example_ii_a_11a(ask: Ask, rules: str, strength: float) -> None:
    """Example II.A-11A, pp. IIA-125, -129: 3/16 in both sides of 8 1/2 in, each end held back a leg: 8.13 in."""
    answer = ask(FILLET_SIZE, aisc_fillet(rules, "3/16 in", length="8.125 in", sides=2))
    assert 2 * 8.13 * weld(answer) == pytest.approx(strength, rel=0.002)


def test_example_ii_a_11c(ask: Ask) -> None:
    """Example II.A-11C, pp. IIA-144, -145: transverse, Fnw with kds 63.0 ksi, Awe 3.74 in2, Tn 236 kips (LRFD/0.75)."""
    answer = ask(FILLET_SIZE, aisc_fillet(LRFD, "3/16 in", length="14.125 in", sides=2, angle="90 deg", kind="tee"))
    assert worked(answer, "F_nw")[0] * worked(answer, "k_ds")[0] / KSI == pytest.approx(63.0, rel=0.003)
    # The example holds each end back one leg: 14 1/2 less twice 3/16, printed as 14.1 in.
    assert 2 * 14.125 * throat(answer, "specify") == pytest.approx(3.74, rel=0.003)
    assert 2 * 14.125 * weld(answer) / 0.75 == pytest.approx(236, rel=0.003)


@pytest.mark.parametrize(("rules", "demand", "sixteenths"), [(LRFD, "161 kip", 5.51), (ASD, "108 kip", 5.54)])
def test_example_ii_b_1(ask: Ask, rules: str, demand: str, sixteenths: float) -> None:
    """Example II.B-1, pp. IIB-16, -17: flange plate across two 7 in welds, kds 1.5, D 5.51 and 5.54, 3/8 in used."""
    # Thicknesses do not enter the weld's size; they are chosen to carry the force.
    request = aisc_fillet(
        rules,
        "1/16 in",
        length="7 in",
        sides=2,
        angle="90 deg",
        kind="tee",
        parts=(steel("3/4 in"), steel("3/4 in")),
        force=demand,
    )
    answer = ask(FILLET_SIZE, request)
    assert worked(answer, "k_ds")[0] == pytest.approx(1.5)
    assert 16 * leg(answer) == pytest.approx(sixteenths, rel=0.002)
    assert leg(answer, "specify") == pytest.approx(0.375)


@pytest.mark.parametrize(
    ("rules", "demand", "length", "leg_in", "tolerance"),
    [
        # Example II.B-2, p. IIB-25: 168 and 112 kips on two 5/16 in welds.
        (LRFD, 168 / 2, 12.1, 5 / 16, 0.006),
        (ASD, 112 / 2, 12.1, 5 / 16, 0.006),
        # Example II.C-1, p. IIC-4: 168 and 112 kips on four 1/4 in welds.
        (LRFD, 168 / 4, 7.54, 1 / 4, 0.002),
        (ASD, 112 / 4, 7.54, 1 / 4, 0.002),
        # Example II.C-2, pp. IIC-18, -19: 104 and 69.2 kips on four 3/16 in welds.
        (LRFD, 104 / 4, 6.23, 3 / 16, 0.004),
        (ASD, 69.2 / 4, 6.21, 3 / 16, 0.004),
        # Example II.C-2, p. IIC-19: 165 and 110 kips on four 3/16 in welds.
        (LRFD, 165 / 4, 9.88, 3 / 16, 0.002),
        (ASD, 110 / 4, 9.88, 3 / 16, 0.002),
    ],
)
def test_lengths_required(ask: Ask, rules: str, demand: float, length: float, leg_in: float, tolerance: float) -> None:
    """At the length an example requires, the leg it chose is the leg required; forces shared by equal welds."""
    request = aisc_fillet(rules, "1/16 in", length=f"{length} in", force=f"{demand} kip", parts=(_HALF, _HALF))
    answer = ask(FILLET_SIZE, request)
    assert leg(answer) == pytest.approx(leg_in, rel=tolerance)


_HALF = steel("1/2 in")


@pytest.mark.parametrize(
    ("demand", "length", "leg_in"),
    [
        (168 / 2, "12.5 in", 5 / 16),  # Example II.B-2
        (168 / 4, "8 in", 1 / 4),  # Example II.C-1
        (104 / 4, "6.5 in", 3 / 16),  # Example II.C-2, p. IIC-18
        (165 / 4, "10 in", 3 / 16),  # Example II.C-2, p. IIC-19
    ],
)
def test_lengths_used(ask: Ask, demand: float, length: str, leg_in: float) -> None:
    """At the length an example uses, the leg it chose is the one to specify."""
    answer = ask(FILLET_SIZE, aisc_fillet(LRFD, "1/16 in", length=length, force=f"{demand} kip", parts=(_HALF, _HALF)))
    assert answer["verdict"] == "enough"
    assert leg(answer, "specify") == pytest.approx(leg_in)


def test_example_ii_b_2_base_metal(ask: Ask) -> None:
    """Example II.B-2: shear rupture of the 0.57 in flange over two 12 1/2 in welds, Rn 558, phiRn 419 kips.

    The example carries the area rounded up to 14.3 in2; the unrounded 14.25 in2 lies 0.52 % below.
    """
    answer = ask(
        FILLET_SIZE,
        aisc_fillet(LRFD, "5/16 in", length="12.5 in", sides=2, parts=(steel("0.57 in"), steel("1/2 in"))),
    )
    assert 2 * 12.5 * base_metal(answer, 1) == pytest.approx(419, rel=0.006)
    assert 2 * 12.5 * base_metal(answer, 1) / 0.75 == pytest.approx(558, rel=0.006)


def test_example_ii_c_1_least_fillet(ask: Ask) -> None:
    """Example II.C-1: least fillet 3/16 in on the 1/2 in gusset."""
    answer = ask(FILLET_SIZE, aisc_fillet(LRFD, "1/16 in", length="8 in", parts=(_HALF, _HALF)))
    assert leg(answer, "minimum") == pytest.approx(0.1875)


def test_example_ii_c_2_size_limits(ask: Ask) -> None:
    """Example II.C-2, p. IIC-18: along the 5/16 in toe of the angle at most 1/4 in, on the stem at least 3/16."""
    answer = ask(
        FILLET_SIZE,
        aisc_fillet(LRFD, "1/16 in", length="6.5 in", parts=(steel("0.43 in"), steel("5/16 in")), edge_of=2),
    )
    assert leg(answer, "maximum") == pytest.approx(0.25)
    assert leg(answer, "minimum") == pytest.approx(0.1875)


def test_example_ii_a_23_size_limits(ask: Ask) -> None:
    """Example II.A-23, pp. IIA-252, -253: on the 3/8 in bracket plate at most 5/16 in, at least 3/16 in."""
    plate = steel("3/8 in")
    answer = ask(FILLET_SIZE, aisc_fillet(LRFD, "1/16 in", length="18 in", parts=(_HALF, plate), edge_of=2))
    assert leg(answer, "maximum") == pytest.approx(0.3125)
    assert leg(answer, "minimum") == pytest.approx(0.1875)


@pytest.mark.parametrize(("rules", "strength"), [(LRFD, 128), (ASD, 85.5)])
def test_example_k_2(ask: Ask, rules: str, strength: float) -> None:
    """Example K.2, pp. K-12, -13: two 1/4 in welds of 11 1/2 in on an HSS, C 3.71, Rn 171, phiRn 128, Rn/Omega 85.5."""
    wall = {"thickness": "0.233 in", "material": "A500-C"}
    answer = ask(
        FILLET_SIZE,
        aisc_fillet(
            rules, "1/4 in", length="11.5 in", sides=2, kind="tee", parts=(wall, steel("0.4 in")), access="both-sides"
        ),
    )
    nominal = weld(answer) / {LRFD: 0.75, ASD: 0.5}[rules]
    assert 2 * 11.5 * weld(answer) == pytest.approx(strength, rel=0.003)
    assert 2 * 11.5 * nominal == pytest.approx(171, rel=0.003)
    # C is the nominal strength of the pair per inch of length and per sixteenth of leg.
    assert 2 * nominal / 4 == pytest.approx(3.71, rel=0.003)
    # Least fillet by the wall, 0.233 in.
    assert leg(answer, "minimum") == pytest.approx(0.125)
