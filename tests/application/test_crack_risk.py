"""Crack risk: properties that hold whatever the bead."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.application.asked import crack_risk

from truethroat_service.application.crack_risk.request import Bead, CrackRiskRequest, WeldMetal

ORDER = ("estimated", "low", "raised", "high")
tenths = st.integers(20, 200).map(lambda n: n / 10)
parts = st.integers(30, 600).map(lambda n: n / 10)
metals = st.builds(
    WeldMetal,
    C=st.integers(3, 23).map(lambda n: n / 100),
    S=st.integers(10, 50).map(lambda n: n / 1000),
    P=st.integers(10, 45).map(lambda n: n / 1000),
    Nb=st.integers(0, 70).map(lambda n: n / 1000),
    Si=st.integers(15, 65).map(lambda n: n / 100),
    Mn=st.integers(45, 160).map(lambda n: n / 100),
)
requests = st.builds(
    CrackRiskRequest,
    joint=st.just("fillet"),
    bead=st.builds(Bead, width=tenths, depth=tenths),
    hollow=st.sampled_from((None, 0.0, 1.0)),
    restrained=st.booleans(),
    weld_metal=st.none() | metals,
    thickness=st.tuples(parts, parts),
    leg=st.none() | tenths,
    low_hydrogen=st.booleans(),
    crater=st.sampled_from((None, "filled", "unfilled")),
)


@given(request=requests)
def test_the_verdict_is_the_worst_grade(request: CrackRiskRequest) -> None:
    """No grade is worse than the verdict, one is as bad unless low, and each that is bad says what to change."""
    answer = crack_risk(request)
    grades = [factor["grade"] for factor in answer["factors"]]
    worst = max(grades, key=ORDER.index)
    # Low takes the composition too; the shape is always given here.
    assert answer["verdict"] == ("estimated" if worst == "low" and request.weld_metal is None else worst)
    for factor in answer["factors"]:
        assert (factor["change"] is None) == (factor["grade"] == "low")


@given(request=requests)
def test_restraint_never_helps(request: CrackRiskRequest) -> None:
    """A joint that cannot give is graded no better than one that can."""
    free, held = (crack_risk(replace(request, restrained=held))["verdict"] for held in (False, True))
    assert ORDER.index(held) >= ORDER.index(free)


@given(metal=metals, element=st.sampled_from(("C", "S", "P", "Nb", "Si", "Mn")))
def test_the_index_goes_the_way_each_element_does(metal: WeldMetal, element: str) -> None:
    """Carbon, sulphur, phosphorus and niobium raise it, silicon and manganese lower it (signs of the formula)."""
    start = {"C": 0.08, "S": 0.01, "P": 0.01, "Nb": 0.0, "Si": 0.15, "Mn": 0.45}[element]
    low = crack_risk(CrackRiskRequest("butt", weld_metal=replace(metal, **{element: start})))["index"]["ucs"]
    high = crack_risk(CrackRiskRequest("butt", weld_metal=replace(metal, **{element: start + 0.03})))["index"]["ucs"]
    assert (high > low) == (element not in ("Si", "Mn"))


@given(throat=tenths, penetration=st.integers(0, 100).map(lambda n: n / 10))
def test_penetration_makes_a_fillet_deeper(throat: float, penetration: float) -> None:
    """The deeper fusion goes past the root, the less wide the bead for its depth; it is high beyond the throat."""
    request = CrackRiskRequest("fillet", Bead(throat=throat, penetration=penetration))
    answer = crack_risk(request)
    deeper = crack_risk(replace(request, bead=Bead(throat=throat, penetration=penetration + 0.1)))
    assert deeper["shape"]["width_to_depth"] < answer["shape"]["width_to_depth"] <= 2.0
    assert (answer["verdict"] == "high") == (penetration > throat)


def test_least_sizes_alone_judge_nothing() -> None:
    """Thickness alone gives the least sizes, and no grade."""
    answer = crack_risk(CrackRiskRequest("fillet", thickness=(10.0, 20.0)))
    assert answer["verdict"] == "estimated"
    assert answer["factors"] == []
    assert len(answer["least_sizes"]) == 4
    # EN 1993-1-8 and its annex begin at 4 mm (4.1).
    thinner = crack_risk(CrackRiskRequest("fillet", thickness=(3.5, 20.0)))["least_sizes"]
    assert [size["rule"] for size in thinner] == ["aisc-360-22", "aws-d1-1-2020"]


@pytest.mark.parametrize(("process", "said"), [(None, True), ("135", True), ("121", False)])
def test_the_index_is_that_of_submerged_arc(process: str | None, said: bool) -> None:
    """For a process other than submerged arc a caution says that the index only shows the way."""
    metal = WeldMetal(0.1, 0.02, 0.02, 0.0, 0.3, 1.2)
    answer = crack_risk(CrackRiskRequest("butt", weld_metal=metal, process=process))
    assert ("index-of-submerged-arc" in [caution["code"] for caution in answer["cautions"]]) is said


@pytest.mark.parametrize(
    "request_",
    [
        CrackRiskRequest("butt", crater="filled"),
        CrackRiskRequest("butt", hollow=0.0, restrained=True),
        CrackRiskRequest(
            "fillet",
            Bead(throat=7.4, penetration=1.0),
            restrained=True,
            thickness=(60.0, 60.0),
            leg=10.5,
            crater="filled",
        ),
    ],
)
def test_nothing_is_called_low_by_a_part_of_the_readings(request_: CrackRiskRequest) -> None:
    """Restrained plates of 60 mm crack by hydrogen whatever the crater; shape and composition were not both graded."""
    answer = crack_risk(request_)
    assert {factor["grade"] for factor in answer["factors"]} == {"low"}
    assert answer["verdict"] == "estimated"
    assert "hydrogen-cracks-not-graded" in {caution["code"] for caution in answer["cautions"]}


def test_a_clean_wide_bead_is_low() -> None:
    """UCS = 230 x 0.08 + 190 x 0.01 + 75 x 0.01 - 12.3 x 0.5 - 5.4 x 1.4 - 1 = 6.34, under 10; 1.5 times as wide."""
    metal = WeldMetal(0.08, 0.01, 0.01, 0.0, 0.5, 1.4)
    answer = crack_risk(CrackRiskRequest("butt", Bead(width=12.0, depth=8.0), weld_metal=metal))
    assert answer["index"]["ucs"] == pytest.approx(6.34, abs=0.001)
    assert answer["verdict"] == "low"
