"""EN 1993-1-8:2005, section 4: values worked by hand from the clause, in no print of their own.

Clauses 4.5.1(2) and 4.5.2(2) were read in a reprint with commentary; 4.5.3.2 and 4.11 are from memory.
"""

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import DIRECTIONAL, FILLET_SIZE, SIMPLIFIED, base_metal, en_fillet, leg, throat, weld

OBLIQUE = [(0, 1.0), (30, 1.0445), (45, 1.0954), (60, 1.1547), (90, 1.2247)]


@pytest.mark.parametrize(("angle", "ratio"), OBLIQUE)
def test_oblique_force_in_the_plane_of_the_plates(ask: Ask, angle: int, ratio: float) -> None:
    """4.5.3.2 over 4.5.3.3: sqrt(3/(2 + cos(phi)^2)), phi from the weld's axis."""
    directional = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "5 mm", f_u=510, beta_w=0.9, angle=f"{angle} deg"))
    simplified = ask(FILLET_SIZE, en_fillet(SIMPLIFIED, "5 mm", f_u=510, beta_w=0.9, angle=f"{angle} deg"))
    assert weld(directional) / weld(simplified) == pytest.approx(ratio, abs=1e-4)


def test_oblique_force_by_components(ask: Ask) -> None:
    """The same at 45 deg, 1.0954, of a force given by equal parts square off part 1 and along the weld."""
    load = {"normal": "100 N/mm", "longitudinal": "100 N/mm"}
    directional = ask(FILLET_SIZE, {**en_fillet(DIRECTIONAL, "5 mm", f_u=510, beta_w=0.9), "load": load})
    simplified = ask(FILLET_SIZE, {**en_fillet(SIMPLIFIED, "5 mm", f_u=510, beta_w=0.9), "load": load})
    assert weld(directional) / weld(simplified) == pytest.approx(1.0954, abs=1e-4)


@pytest.mark.parametrize(("psi", "ratio"), [(60, 1.095), (90, 1.225), (120, 1.414)])
def test_transverse_over_longitudinal_by_plate_angle(ask: Ask, psi: int, ratio: float) -> None:
    """4.5.3.2, the throat halving the plates' angle: capacity across over that along, 1.095, 1.225, 1.414.

    Worked by hand: sqrt(3)/sqrt(sin(psi/2)^2 + 3 cos(psi/2)^2).
    """
    joint = {"kind": "tee", "sides": 1, "angle": f"{psi} deg"}
    along = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "5 mm", f_u=360, beta_w=0.8, joint=joint))
    across = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "5 mm", f_u=360, beta_w=0.8, joint=joint, angle="90 deg"))
    assert weld(across) / weld(along) == pytest.approx(ratio, abs=0.0005)


@pytest.mark.parametrize(("length", "size", "factor"), [(600, 5, 1.0), (1000, 4, 0.8667)])
def test_long_lap(ask: Ask, length: int, size: int, factor: float) -> None:
    """4.11(3), eq. (4.9), from memory: 1.2 - 0.2 L/(150 a), whole at 120 a, 0.8667 at 250 a."""
    request = en_fillet(
        SIMPLIFIED, f"{size} mm", f_u=510, beta_w=0.9, joint={"kind": "lap"}, length=f"{length} mm", end_loaded=True
    )
    assert ask(FILLET_SIZE, request)["length"]["factor"] == pytest.approx(factor, abs=1e-4)


def test_throat_of_a_long_lap(ask: Ask) -> None:
    """The same solved for the throat: 4 mm over 1000 mm of S355, f_u 510, carry 261.73 x 4 x 0.8667 N/mm, 907.3 kN."""
    request = en_fillet(
        SIMPLIFIED, "0.5 mm", f_u=510, beta_w=0.9, f_y=355, joint={"kind": "lap"}, length="1000 mm", end_loaded=True
    )
    answer = ask(FILLET_SIZE, {**request, "load": {"force": "907.3 kN", "length": "1000 mm", "angle": "0 deg"}})
    assert throat(answer) == pytest.approx(4.0, rel=0.0005)


@pytest.mark.parametrize(("size", "least"), [(3, 30.0), (5, 30.0), (6, 36.0), (10, 60.0)])
def test_least_length(ask: Ask, size: int, least: float) -> None:
    """4.5.1(2): 30 mm and six throats; a tenth of a millimetre less carries nothing."""
    long_enough = en_fillet(DIRECTIONAL, f"{size} mm", f_u=360, beta_w=0.8, length=f"{least} mm")
    assert ask(FILLET_SIZE, long_enough)["verdict"] == "enough"
    answer = ask(FILLET_SIZE, {**long_enough, "load": {**long_enough["load"], "length": f"{least - 0.1} mm"}})
    assert answer["verdict"] == "cannot-be-reached"
    assert answer["governs"] == "minimum-length"


def test_ends_taken_off_a_short_weld(ask: Ask) -> None:
    """4.5.1: 46 mm overall less 2 a of 6 mm is 34 mm, under six throats: not to carry load."""
    answer = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "6 mm", f_u=360, beta_w=0.8, length="34 mm"))
    assert answer["verdict"] == "cannot-be-reached"
    assert answer["specify"] is None


def test_least_throat(ask: Ask) -> None:
    """4.5.2(2): at least 3 mm of throat."""
    answer = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "0.5 mm", f_u=360, beta_w=0.8))
    assert throat(answer, "minimum") == pytest.approx(3.0)
    assert throat(answer, "specify") == pytest.approx(3.0)


def test_edge_of_a_lap(ask: Ask) -> None:
    """Common practice, no source: along a 6 mm edge no more than 6 mm of leg."""
    request = en_fillet(SIMPLIFIED, "0.5 mm", f_u=360, beta_w=0.8, joint={"kind": "lap"}, thickness="6 mm", edge_of=2)
    assert leg(ask(FILLET_SIZE, request), "maximum") == pytest.approx(6.0)


@pytest.mark.parametrize(("angle", "strength"), [("0 deg", 1356.8), ("90 deg", 2350.0)])
def test_plate_beside_the_weld(ask: Ask, angle: str, strength: float) -> None:
    """EN 1993-1-1 6.2.3 and 6.2.6, from memory: 10 mm of S235, 235/sqrt(3) x 10 along, 235 x 10 N/mm across."""
    answer = ask(FILLET_SIZE, en_fillet(DIRECTIONAL, "4 mm", f_u=360, beta_w=0.8, angle=angle, thickness="10 mm"))
    assert base_metal(answer, 2) == pytest.approx(strength, abs=0.1)
