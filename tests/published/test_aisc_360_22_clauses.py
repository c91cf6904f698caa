"""ANSI/AISC 360-22, chapters D, E, G and J: values worked by hand from the clause, in no print of their own.

G2.4(c) is from memory. Shares of a continuous weld: O. W. Blodgett, Design of Weldments, sect. 7.4, from memory.
"""

from typing import Any

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import ASD, FILLET_SIZE, LRFD, aisc_fillet


def _part(thickness: str) -> dict[str, str]:
    return {"thickness": thickness, "material": "A36"}


def _intermittent(thickness: str, *, leg: str = "3/16 in", load: str = "0.1 kip/in", **more: Any) -> dict[str, Any]:
    """Request for segments of a fillet between plates of one thickness."""
    request = aisc_fillet(LRFD, leg, length="1 in", sides=2, kind="tee", parts=(_part(thickness), _part(thickness)))
    return {**request, "load": {"longitudinal": load}, "intermittent": {"segment": "2 in", **more}}


@pytest.mark.parametrize(
    ("thickness", "more", "pitch"),
    [
        ("3/8 in", {"loading": "tension"}, 9.0),  # J3.6: 24 x 3/8
        ("3/4 in", {"loading": "tension"}, 12.0),  # 12 in at most
        ("3/8 in", {"loading": "shear", "exposure": "weathering-steel"}, 5.25),  # 14 x 3/8
        ("3/4 in", {"loading": "shear", "exposure": "weathering-steel"}, 7.0),  # 7 in at most
        ("3/8 in", {"loading": "compression"}, 7.983),  # E6.2: 0.75 x 3/8 x sqrt(29000/36)
        ("1 in", {"loading": "compression"}, 12.0),  # 12 in at most
        ("1/2 in", {"loading": "shear", "member": "stiffener"}, 10.0),  # G2.4(c): 16 x 1/2 clear, and the segment
        ("3/4 in", {"loading": "shear", "member": "stiffener"}, 12.0),  # 10 in clear at most
    ],
)
def test_spacing(ask: Ask, thickness: str, more: dict[str, Any], pitch: float) -> None:
    """Largest pitch, segments of 2 in."""
    answer = ask(FILLET_SIZE, _intermittent(thickness, **more))
    assert answer["intermittent"]["pitch"]["value"] == pytest.approx(pitch, abs=0.001)


@pytest.mark.parametrize(("leg", "least"), [("3/16 in", 1.5), ("1/2 in", 2.0)])
def test_least_segment(ask: Ask, leg: str, least: float) -> None:
    """J2.2b(e): four legs, and 1-1/2 in."""
    answer = ask(FILLET_SIZE, _intermittent("3/4 in", leg=leg, loading="tension"))
    [limit] = [limit for limit in answer["intermittent"]["limits"] if limit["name"] == "segment"]
    # 3/16 in is under the least leg of 3/4 in plate, 1/4 in, so the next 3/16 in step, 3/8 in, is specified: 4 x 3/8.
    assert limit["allowed"]["value"] == pytest.approx(least)


@pytest.mark.parametrize(
    ("segment", "pitch", "share"),
    [(2, 4, 0.50), (3, 6, 0.50), (2, 6, 0.33), (3, 7, 0.43), (3, 8, 0.375), (2, 8, 0.25)],
)
def test_share_of_a_continuous_weld(ask: Ask, segment: int, pitch: int, share: float) -> None:
    """Blodgett's table of intermittent welds: length and pitch against the share of a continuous weld."""
    request = _intermittent("1/2 in", loading="tension", gap=f"{pitch - segment} in")
    request["intermittent"]["segment"] = f"{segment} in"
    answer = ask(FILLET_SIZE, request)
    # 3/16 in of E70: 3 x 1.392 kip/in (AISC Manual Part 8).
    assert answer["intermittent"]["strength"]["value"] == pytest.approx(3 * 1.392 * share, rel=0.011)


@pytest.mark.parametrize(("rules", "by_yield", "by_rupture"), [(LRFD, 48.6, 56.83), (ASD, 32.34, 37.89)])
def test_shear_lag_of_a_flat_bar(ask: Ask, rules: str, by_yield: float, by_rupture: float) -> None:
    """Table D3.1 case 4: 4 in by 3/8 in of A36, two welds of 6 in: U = 3*36/(3*36 + 16) = 0.871.

    0.90*36*1.5 and 0.75*58*1.5*0.871 kips; 36*1.5/1.67 and 58*1.5*0.871/2.
    """
    request = aisc_fillet(rules, "5/16 in", length="6 in", sides=2, parts=(_part("1/2 in"), _part("3/8 in")))
    member = ask(FILLET_SIZE, {**request, "tension_member": {"width": "4 in"}})["tension_member"]
    assert member["shear_lag"] == pytest.approx(0.871, abs=0.0005)
    assert member["by_yield"]["value"] == pytest.approx(by_yield, rel=0.0005)
    assert member["by_rupture"]["value"] == pytest.approx(by_rupture, rel=0.0005)


def test_shear_lag_of_an_angle(ask: Ask) -> None:
    """The same with an eccentricity of 1 in and balanced welds of 10 in together: 75/91*(1 - 1/5) = 0.6593."""
    request = aisc_fillet(LRFD, "3/16 in", length="6 in", sides=2, parts=(_part("1/2 in"), _part("3/8 in")))
    load = {"force": "40 kip", "length": "10 in", "width": "4 in", "centroid": "1.2 in"}
    more = {"load": load, "tension_member": {"area": "3 in2", "eccentricity": "1 in"}}
    member = ask(FILLET_SIZE, {**request, **more})["tension_member"]
    assert member["shear_lag"] == pytest.approx(0.6593, abs=0.0001)
    assert member["effective_area"]["value"] == pytest.approx(1.978, abs=0.001)


def test_overlap_of_a_lap(ask: Ask) -> None:
    """J2.2b(f): five times the thinner part, 5 x 3/8 in, and 1 in at least."""
    request = aisc_fillet(LRFD, "3/16 in", length="6 in", parts=(_part("1/2 in"), _part("3/8 in")))
    [caution] = [caution for caution in ask(FILLET_SIZE, request)["cautions"] if caution["code"] == "lap-overlap"]
    assert "overlap by at least 1 7/8 in" in caution["text"]
