"""Heat of a pass: properties that hold whatever is welded, and inverses held against scipy."""

from dataclasses import replace
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import brentq
from tests.application.asked import heat

from truethroat_service.application.core.faults import Refused
from truethroat_service.application.core.shape import Band
from truethroat_service.application.heat.request import Arc, HeatRequest, SeamKind
from truethroat_service.application.heat.steel import CarbonEquivalents, Composition
from truethroat_service.standards.en_1011_2_2001.c_3_method_b import COMPOSITION

SEAMS: tuple[SeamKind, ...] = ("plate", "butt-fill", "corner-fillet", "tee-fillet")
seams = st.sampled_from(SEAMS)
heats = st.integers(20, 600).map(lambda n: n / 100)
plates = st.integers(20, 800).map(lambda n: n / 10)
starts = st.integers(-20, 350).map(float)
PLAIN = Composition(0.16, 0.3, 1.4, others_zero=True)


def passed(heat_input: float, thickness: float, seam: SeamKind, preheat: float = 20.0) -> HeatRequest:
    """Request of a pass."""
    return HeatRequest(Arc(heat_input=heat_input), thickness=thickness, seam=seam, preheat=preheat)


def times(request: HeatRequest) -> tuple[float, float]:
    """Ends of the band of cooling times, s."""
    time = heat(request)["cooling"]["time"]
    return float(time["least"]["value"]), float(time["most"]["value"])


def ends(band: dict[str, Any]) -> tuple[float, float]:
    """Values of a band."""
    return float(band["least"]["value"]), float(band["most"]["value"])


@given(heat_input=heats, more=heats, thickness=plates, seam=seams, preheat=starts)
def test_more_heat_and_more_preheat_cool_slower(
    heat_input: float, more: float, thickness: float, seam: SeamKind, preheat: float
) -> None:
    """The cooling time grows with heat input and preheat, and never with thickness."""
    base = times(passed(heat_input, thickness, seam, preheat))
    assert all(a > b for a, b in zip(times(passed(heat_input + more, thickness, seam, preheat)), base, strict=True))
    assert all(a > b for a, b in zip(times(passed(heat_input, thickness, seam, preheat + 10)), base, strict=True))
    thicker = times(passed(heat_input, thickness + 1, seam, preheat))
    assert all(a <= b * (1 + 1e-12) for a, b in zip(thicker, base, strict=True))


@given(heat_input=heats, seam=seams, preheat=starts)
def test_cooling_is_continuous_at_the_transition(heat_input: float, seam: SeamKind, preheat: float) -> None:
    """Just thinner and just thicker than where the flow changes, the time is the same."""
    transition = heat(passed(heat_input, 20.0, seam, preheat))["cooling"]["transition_thickness"]
    for end, thickness in enumerate(ends(transition)):
        sides = [times(passed(heat_input, thickness * (1 + side), seam, preheat))[end] for side in (-1e-9, 1e-9)]
        assert sides[0] == pytest.approx(sides[1], rel=1e-7)


@given(heat_input=heats, seam=seams)
def test_flow_goes_by_the_transition(heat_input: float, seam: SeamKind) -> None:
    """Thinner than both ends is two-dimensional, thicker three-dimensional, and between them neither is sure."""
    low, high = ends(heat(passed(heat_input, 20.0, seam))["cooling"]["transition_thickness"])
    for thickness, flow in ((low * 0.99, "two-dimensional"), (high * 1.01, "three-dimensional")):
        assert heat(passed(heat_input, thickness, seam))["cooling"]["flow"] == flow
    if high > low * 1.01:
        assert heat(passed(heat_input, (low + high) / 2, seam))["cooling"]["flow"] == "between"


windows = st.tuples(st.integers(10, 300), st.integers(11, 900)).map(lambda t: Band(t[0] / 10, (t[0] + t[1]) / 10))


# A frozen plate is short of its preheat, whatever the window.
@given(window=windows, thickness=plates, seam=seams, preheat=st.integers(0, 350).map(float))
def test_limits_come_back_to_the_window(window: Band, thickness: float, seam: SeamKind, preheat: float) -> None:
    """Welded at the least or the most heat the answer stays within; a little beyond either it does not."""
    request = replace(passed(1.0, thickness, seam, preheat), cooling_window=window)
    limits = heat(request)["limits"]
    assume(limits is not None)
    least, most = ends(limits["heat_input"])
    assert times(passed(least, thickness, seam, preheat))[0] == pytest.approx(window.least, rel=1e-9)
    assert times(passed(most, thickness, seam, preheat))[1] == pytest.approx(window.most, rel=1e-9)
    for heat_input, verdict in (
        (least, "within"),
        (most, "within"),
        (least * 0.999, "too-fast"),
        (most * 1.001, "too-slow"),
    ):
        assert heat(replace(request, arc=Arc(heat_input=heat_input)))["verdict"] == verdict


@given(window=windows, thickness=plates, seam=seams)
def test_limits_against_a_root_finder(window: Band, thickness: float, seam: SeamKind) -> None:
    """Scipy's bracketing of the forward answer finds the heat that the closed form gives."""
    limits = heat(replace(passed(1.0, thickness, seam), cooling_window=window))["limits"]
    assume(limits is not None)
    for end, (found, aim) in enumerate(zip(ends(limits["heat_input"]), (window.least, window.most), strict=True)):
        root = brentq(lambda q, end=end, aim=aim: times(passed(q, thickness, seam))[end] - aim, 1e-3, 100.0, xtol=1e-12)
        assert found == pytest.approx(root, rel=1e-8)


def test_the_least_speed_gives_the_most_heat() -> None:
    """At the speeds told, the arc itself stays within the window; a little slower it does not."""
    window = Band(6.0, 15.0)
    request = HeatRequest(Arc(28.0, 250.0), "135", thickness=12.0, seam="butt-fill", cooling_window=window)
    slow, fast = (speed / 60 for speed in ends(heat(request)["limits"]["travel_speed"]))
    assert slow < fast
    for speed, verdict in ((slow, "within"), (fast, "within"), (slow * 0.99, "too-slow"), (fast * 1.01, "too-fast")):
        assert heat(replace(request, arc=Arc(28.0, 250.0, speed)))["verdict"] == verdict


def test_a_window_narrower_than_the_band_has_no_heat() -> None:
    """On a thin tee the band runs from 0.45 to 0.67: a window of 10 to 11 s holds it at no heat input."""
    answer = heat(replace(passed(1.0, 4.0, "tee-fillet"), cooling_window=Band(10.0, 11.0)))
    assert answer["limits"] is None
    reasons = {entry["field"]: entry["reason"] for entry in answer["left_out"]}
    assert reasons["limits"] == "needs a window that is wider than the band of cooling times"


cets = st.integers(20, 49).map(lambda n: n / 100)


@given(cet=cets, thickness=st.integers(10, 89), hydrogen=st.integers(1, 19), heat_input=st.integers(5, 39))
def test_preheat_grows_with_what_hardens_and_falls_with_heat(
    cet: float, thickness: int, hydrogen: int, heat_input: int
) -> None:
    """More alloy, more thickness, more hydrogen or less heat never ask for less preheat."""
    request = HeatRequest(
        Arc(heat_input=heat_input / 10),
        thickness=float(thickness),
        carbon_equivalents=CarbonEquivalents(cet=cet),
        hydrogen=float(hydrogen),
    )

    def preheats(**changes: Any) -> list[float]:
        made = heat(replace(request, **changes))["preheat"]
        return [made[name]["temperature"]["value"] for name in ("method_b", "sew_088")]

    base = preheats()
    for changes in (
        {"carbon_equivalents": CarbonEquivalents(cet=cet + 0.01)},
        {"thickness": thickness + 1.0},
        {"hydrogen": hydrogen + 1.0},
    ):
        assert all(a > b for a, b in zip(preheats(**changes), base, strict=True))
    hotter = preheats(arc=Arc(heat_input=heat_input / 10 + 0.1))
    assert all(a < b for a, b in zip(hotter, base, strict=True))


@given(start=st.integers(0, 200).map(float))
def test_preheat_is_met_when_the_plate_is_as_warm(start: float) -> None:
    """Whether the preheat is there goes by the temperature the pass begins at; what lacks is said."""
    request = HeatRequest(
        Arc(heat_input=1.0), thickness=30.0, preheat=start, carbon_equivalents=CarbonEquivalents(cet=0.36), hydrogen=4.0
    )
    answer = heat(request)
    found = answer["preheat"]["method_b"]
    assert found["met"] is (start >= found["temperature"]["value"])
    assert ("preheat-short" in [caution["code"] for caution in answer["cautions"]]) is not (
        found["met"] and answer["preheat"]["sew_088"]["met"]
    )


@given(
    seconds=st.lists(st.integers(5, 2000).map(lambda n: n / 10), min_size=2, max_size=4, unique=True),
    carbon=st.integers(5, 30).map(lambda n: n / 100),
    manganese=st.integers(5, 18).map(lambda n: n / 10),
)
def test_slower_cooling_is_never_harder(seconds: list[float], carbon: float, manganese: float) -> None:
    """Hardness falls with the cooling time by both models."""
    steel = Composition(carbon, 0.3, manganese, others_zero=True)
    found = [heat(HeatRequest(cooling_time=time, composition=steel))["hardness"] for time in sorted(seconds)]
    assume(all(found))
    for fast, slow in pairwise(found):
        for model in ("dueren", "yurioka"):
            assert slow[model]["most"] <= fast[model]["most"] + 1e-9


@given(heat_input=heats, thickness=plates, seam=seams, preheat=starts)
def test_units_change_nothing(heat_input: float, thickness: float, seam: SeamKind, preheat: float) -> None:
    """Asked in US units the answer is the same, fingerprint and verdict too."""
    request = replace(passed(heat_input, thickness, seam, preheat), cooling_window=Band(5.0, 20.0))
    metric = heat(request)
    us = heat(replace(request, common=replace(request.common, units="us")))
    assert (us["verdict"], us["provenance"]) == (metric["verdict"], metric["provenance"])
    assert us["energy"]["heat_input"]["value"] == pytest.approx(25.4 * heat_input)
    assert ends(us["cooling"]["time"]) == ends(metric["cooling"]["time"])
    assert [25.4 * value for value in ends(us["cooling"]["transition_thickness"])] == pytest.approx(
        ends(metric["cooling"]["transition_thickness"])
    )


def test_an_element_that_is_not_given_is_not_guessed() -> None:
    """Without the rest of the elements there is no CE and no hardness, and each says what it lacks."""
    answer = heat(HeatRequest(cooling_time=8.0, composition=Composition(0.16, 0.3, 1.4)))
    assert set(answer["carbon_equivalents"].values()) == {None}
    assert answer["hardness"] is None
    reasons = {entry["field"]: entry["reason"] for entry in answer["left_out"]}
    assert reasons["carbon_equivalents/ce"] == "needs the share of Cr, Mo, V, Ni, Cu or others_zero"
    assert reasons["carbon_equivalents/cet"] == "needs the share of Mo, Cr, Cu, Ni or others_zero"
    assert reasons["hardness"] == "needs the share of Cu, Cr, Ni, Mo, V, Nb or others_zero"
    whole = heat(HeatRequest(cooling_time=8.0, composition=PLAIN))
    assert whole["carbon_equivalents"]["ce"] == pytest.approx(0.16 + 1.4 / 6)
    assert whole["hardness"] is not None


def nulls(node: dict[str, Any], path: str = "") -> set[str]:
    """Paths of all that is null."""
    found = set()
    for name, value in node.items():
        found |= (
            {path + name} if value is None else nulls(value, f"{path}{name}/") if isinstance(value, dict) else set()
        )
    return found


@given(
    arc=st.sampled_from(
        (None, Arc(28.0, 250.0), Arc(28.0, 250.0, 6.0, 1e-3), Arc(arc_energy=1.0), Arc(heat_input=1.0))
    ),
    process=st.sampled_from((None, "135")),
    thickness=st.sampled_from((None, 12.0)),
    seam=st.sampled_from((None, "tee-fillet", "corner-fillet")),
    composition=st.sampled_from((None, PLAIN, Composition(0.1))),
    window=st.sampled_from((None, Band(5.0, 20.0), Band(5.0, 5.1))),
    hydrogen=st.sampled_from((None, 4.0)),
    category=st.sampled_from((None, "B")),
    leg=st.sampled_from((None, 8.0)),
)
def test_every_null_says_what_it_needs(
    arc: Arc | None,
    process: str | None,
    thickness: float | None,
    seam: SeamKind | None,
    composition: Composition | None,
    window: Band | None,
    hydrogen: float | None,
    category: str | None,
    leg: float | None,
) -> None:
    """Whatever is given, each null of the answer is left out with a reason, and nothing else is."""
    if seam is None:
        leg, arc = None, replace(arc, deposition_rate=None) if arc else None
    request = HeatRequest(
        arc,
        process,
        None,
        thickness,
        seam,
        composition=composition,
        cooling_window=window,
        hydrogen=hydrogen,
        preheat_category=category,
        leg=leg,
        required_leg=leg,
    )
    try:
        answer = heat(request)
    except Refused:
        assume(False)
    told = {entry["field"]: entry["reason"] for entry in answer["left_out"]}
    own = {name: answer[name] for name in answer if name not in ("provenance", "mark")}
    assert set(told) == nulls(own)
    assert all(told.values())


def test_a_measured_time_is_judged_as_it_is() -> None:
    """A measured time needs no arc: it is held against the window, and no flow is claimed."""
    request = HeatRequest(cooling_time=8.0, cooling_window=Band(10.0, 20.0))
    answer = heat(request)
    assert (answer["verdict"], answer["cooling"]["flow"]) == ("too-fast", None)
    assert heat(replace(request, cooling_time=10.0))["verdict"] == "within"
    assert heat(replace(request, cooling_window=None))["verdict"] == "estimated"


@pytest.mark.parametrize(("carbon", "standing"), [(0.06, "within"), (0.16, "open"), (0.30, "over")])
def test_hardness_is_open_where_the_band_holds_the_limit(carbon: float, standing: str) -> None:
    """The whole band under 380 HV10 is within, the whole band over it is over, and between it is open."""
    request = HeatRequest(cooling_time=3.0, composition=Composition(carbon, 0.3, 1.4, others_zero=True), steel_group=1)
    found = heat(request)["hardness"]
    assert found["standing"] == standing
    assert (found["band"]["most"] <= 380, found["band"]["least"] > 380) == (standing == "within", standing == "over")


@given(
    shares=st.fixed_dictionaries(
        {
            element: st.integers(0, 20).map(lambda n, r=limits: r.least + n / 20 * (r.most - r.least))  # type: ignore[misc]
            for element, limits in COMPOSITION.items()
        }
    ),
    seconds=st.integers(1, 3000).map(lambda n: n / 10),
)
def test_every_steel_of_the_models_has_a_hardness(shares: dict[str, float], seconds: float) -> None:
    """Within the limits of composition both models answer.

    Dueren is capped by martensite; an arctangent of half a turn at most, over 2.2, goes 0.214 of the span beyond it.
    """
    answer = heat(HeatRequest(cooling_time=seconds, composition=Composition(**shares)))
    dueren, yurioka = (answer["hardness"][model] for model in ("dueren", "yurioka"))
    assert 100.0 < dueren["most"] <= dueren["martensite"]
    span = yurioka["martensite"] - yurioka["bainite"]
    assert yurioka["bainite"] - 0.215 * span < yurioka["most"] < yurioka["martensite"] + 0.215 * span
    boron = "boron-hardens" in [caution["code"] for caution in answer["cautions"]]
    assert boron is (shares["B"] > 0.0)


def test_steel_beyond_the_models_has_no_hardness() -> None:
    """With 0.45 % of carbon there is a CE, and no hardness: the reason names the limit."""
    answer = heat(HeatRequest(cooling_time=8.0, composition=Composition(0.45, 0.3, 0.7, others_zero=True)))
    assert answer["carbon_equivalents"]["ce"] == pytest.approx(0.45 + 0.7 / 6)
    assert answer["hardness"] is None
    reasons = {entry["field"]: entry["reason"] for entry in answer["left_out"]}
    assert "C of 0.05 to 0.32 %" in reasons["hardness"]
