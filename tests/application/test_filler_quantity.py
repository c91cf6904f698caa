"""Estimates of filler: what holds whatever the welds, their order and their units."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from truethroat_service.application.core.answers import Common
from truethroat_service.application.filler_quantity import filler_quantity
from truethroat_service.application.filler_quantity.request import (
    Bead,
    Deposition,
    Electrode,
    FillerQuantityRequest,
    Price,
    Prices,
    Weld,
    WeldingArc,
)
from truethroat_service.application.joints.weld_sections import Fillet, PlainArea

HOUR = 3600.0
SPANS = ("consumable", "arc_time", "working_time", "gas")

PRICES = Prices(
    "EUR",
    labour=Price(50 / HOUR),
    consumables=(Price(3.0), Price(5.0, process="111"), Price(9.0, filler="E7018"), Price(2.0, "ER70S-6", "135")),
    gases=(Price(4e-9), Price(6e-9, process="FCAW-G")),
)
MADE_FOR = {"SMAW": ("E7018", "E 46"), "GMAW": ("ER70S-6", "G 42"), "FCAW-G": ("E71T-1",), "SAW": ("F7A2-EM12K",)}

lengths = st.integers(1, 4000).map(float)


@st.composite
def welds(draw: st.DrawFn) -> Weld:
    """Draw welds of which some things are told and some left to the process."""
    process = draw(st.sampled_from(sorted(MADE_FOR)))
    leg = draw(st.integers(3, 20)) * 1.0
    return Weld(
        Fillet("fillet", (leg, draw(st.integers(3, 20)) * 1.0)),
        draw(lengths),
        count=draw(st.integers(1, 9)),
        excess=draw(st.sampled_from((0.0, 0.1))),
        filler=draw(st.sampled_from(MADE_FOR[process])),
        process=process,
        position=draw(st.sampled_from(("PA", "2F", None))),
        efficiency=draw(st.sampled_from((None, 0.9))),
        deposition=draw(st.sampled_from((None, Deposition(2.5 / HOUR)))),
        operator_factor=draw(st.sampled_from((None, 0.4))),
    )


def ends(span: dict[str, Any]) -> tuple[float, float]:
    """Least and most of a span of quantities or of money."""
    low, high = span["least"], span["most"]
    return (low["value"], high["value"]) if isinstance(low, dict) else (low, high)


@given(listed=st.lists(welds(), min_size=1, max_size=6))
def test_totals_are_the_sum_of_the_rows(listed: list[Weld]) -> None:
    """Every total is the sum over the welds and over the groups, and no least is above its most."""
    answer = filler_quantity(FillerQuantityRequest(tuple(listed), PRICES)).wire()
    totals, rows, groups = answer["totals"], answer["welds"], answer["groups"]
    for parts in (rows, groups):
        assert totals["deposited"]["value"] == pytest.approx(sum(part["deposited"]["value"] for part in parts))
        for name in SPANS:
            for end in (0, 1):
                assert ends(totals[name])[end] == pytest.approx(sum(ends(part[name])[end] for part in parts))
        for name in ("labour", "consumable", "gas", "total"):
            for end in (0, 1):
                summed = sum(ends(part["cost"][name])[end] for part in parts)
                assert ends(totals["cost"][name])[end] == pytest.approx(summed)
    for name in SPANS:
        assert all(ends(part[name])[0] <= ends(part[name])[1] for part in (totals, *rows, *groups))
    assert totals["count"] == sum(weld.count for weld in listed) == sum(group["count"] for group in groups)
    for row in rows:
        cost = row["cost"]
        assert ends(cost["total"])[0] == pytest.approx(sum(ends(cost[part])[0] for part in cost["counts"]))


@given(listed=st.lists(welds(), min_size=2, max_size=6), data=st.data())
def test_order_does_not_matter(listed: list[Weld], data: st.DataObject) -> None:
    """However the welds are listed, totals and groups are the same to the last bit, and each weld has its own row."""
    other = data.draw(st.permutations(range(len(listed))))
    one = filler_quantity(FillerQuantityRequest(tuple(listed), PRICES)).wire()
    two = filler_quantity(FillerQuantityRequest(tuple(listed[index] for index in other), PRICES)).wire()
    assert (one["totals"], one["groups"]) == (two["totals"], two["groups"])
    assert two["welds"] == [one["welds"][index] for index in other]


@given(weld=welds(), leg=st.integers(3, 15))
def test_metal_grows_with_the_leg_squared(weld: Weld, leg: int) -> None:
    """Twice the leg is four times the metal, and with it the wire, the hours and the cost."""

    def of(size: float) -> dict[str, Any]:
        made = replace(weld, shape=Fillet("fillet", (size, size)))
        row: dict[str, Any] = filler_quantity(FillerQuantityRequest((made,), PRICES)).wire()["welds"][0]
        return row

    small, large = of(leg), of(2.0 * leg)
    assert large["deposited"]["value"] == pytest.approx(4 * small["deposited"]["value"])
    for name in SPANS:
        assert ends(large[name]) == pytest.approx([4 * end for end in ends(small[name])])
    assert ends(large["cost"]["total"]) == pytest.approx([4 * end for end in ends(small["cost"]["total"])])


@given(weld=welds())
def test_many_equal_welds_are_one_long_one(weld: Weld) -> None:
    """So many welds of a length take what one of the whole length takes."""
    one = replace(weld, count=1, length=weld.length * weld.count)
    several, whole = (filler_quantity(FillerQuantityRequest((made,))).wire()["totals"] for made in (weld, one))
    assert several["deposited"]["value"] == pytest.approx(whole["deposited"]["value"])
    assert several["length"]["value"] == pytest.approx(whole["length"]["value"])


@given(weld=welds())
def test_units_only_change_how_it_is_told(weld: Weld) -> None:
    """The same estimate in pounds: 0.45359237 kg, 0.3048 m, by definition; hours and money do not change."""
    metric, us = (
        filler_quantity(FillerQuantityRequest((weld,), PRICES, Common(units=units))).wire()
        for units in ("metric", "us")
    )
    assert metric["totals"]["deposited"]["value"] == pytest.approx(us["totals"]["deposited"]["value"] * 0.45359237)
    assert ends(metric["totals"]["gas"]) == pytest.approx([end * 0.3048**3 for end in ends(us["totals"]["gas"])])
    assert metric["totals"]["working_time"] == us["totals"]["working_time"]
    assert metric["totals"]["cost"] == us["totals"]["cost"]
    assert metric["provenance"]["fingerprint"] == us["provenance"]["fingerprint"]


@given(weld=welds())
def test_what_is_told_narrows_the_band(weld: Weld) -> None:
    """A figure inside the band of a process gives an estimate inside that of the band."""
    free = replace(weld, efficiency=None, deposition=None, operator_factor=None)
    row = filler_quantity(FillerQuantityRequest((free,))).wire()["welds"][0]
    rests = row["rests_on"]
    told = replace(
        free,
        efficiency=(rests["efficiency"]["least"] + rests["efficiency"]["most"]) / 2,
        deposition=Deposition(rests["deposition_rate"]["least"]["value"] / HOUR),
        operator_factor=rests["operator_factor"]["most"],
    )
    inside = filler_quantity(FillerQuantityRequest((told,))).wire()["welds"][0]
    for name in ("consumable", "arc_time", "working_time"):
        low, high = ends(inside[name])
        assert low == high
        assert ends(row[name])[0] * (1 - 1e-12) <= low <= ends(row[name])[1] * (1 + 1e-12)


def row_of(weld: Weld, prices: Prices | None = None) -> dict[str, Any]:
    """Estimate of one weld."""
    made: dict[str, Any] = filler_quantity(FillerQuantityRequest((weld,), prices)).wire()["welds"][0]
    return made


PLAIN = Weld(PlainArea("area", 25.0), 1000.0)


def test_efficiency_is_in_the_wire_and_not_in_the_hours() -> None:
    """A deposition rate is of deposited metal: efficiency moves the mass to buy alone (ESAB handbook, p. 8-6)."""
    told = replace(PLAIN, process="GMAW", deposition=Deposition(3.0 / HOUR), operator_factor=0.5)
    half, whole = (row_of(replace(told, efficiency=share)) for share in (0.5, 1.0))
    assert ends(half["consumable"])[0] == pytest.approx(2 * ends(whole["consumable"])[0])
    assert half["arc_time"] == whole["arc_time"]
    assert half["working_time"] == whole["working_time"]
    # 25 mm2 x 1 m at 7850 kg/m3 (common practice, no source) at 3 kg/h and half the clock: 0.19625 kg, 0.1308 h.
    assert ends(whole["working_time"])[0] == pytest.approx(0.19625 / 3.0 / 0.5)


def test_without_a_process_nothing_is_made_up() -> None:
    """Metal is known from the section; what needs a process is null and named."""
    answer = filler_quantity(FillerQuantityRequest((PLAIN,), PRICES)).wire()
    (row,) = answer["welds"]
    assert row["deposited"]["value"] == pytest.approx(0.19625)
    assert [row[name] for name in (*SPANS, "passes", "energy")] == [None] * 6
    assert row["cost"]["missing"] == ["labour", "consumable", "gas"]
    assert row["cost"]["total"] is None
    codes = {caution["code"] for caution in answer["cautions"]}
    assert codes >= {
        "no-efficiency",
        "no-deposition-rate",
        "no-operator-factor",
        "cost-incomplete",
        "carbon-steel-assumed",
    }


def test_an_unknown_weld_leaves_no_total() -> None:
    """A sum with an unknown in it is no number; what is known of every weld still is."""
    known = replace(PLAIN, process="GMAW")
    totals = filler_quantity(FillerQuantityRequest((known, PLAIN))).wire()["totals"]
    assert [totals[name] for name in SPANS] == [None] * 4
    assert totals["deposited"]["value"] == pytest.approx(2 * 0.19625)


@pytest.mark.parametrize(
    ("process", "code"),
    [("GMAW", "usual-gas-flow"), ("SMAW", "usual-deposition-rate"), ("SAW", "usual-operator-factor")],
)
def test_what_a_default_is_made_of_is_named(process: str, code: str) -> None:
    """Each figure the request leaves out is a caution with its source, and stands in the provenance."""
    answer = filler_quantity(FillerQuantityRequest((replace(PLAIN, process=process),))).wire()
    found = [caution for caution in answer["cautions"] if caution["code"] == code]
    assert found
    assert all(caution["source"] for caution in found)
    assert "Weld 1: no " in found[0]["text"]
    assert all(source in "; ".join(answer["provenance"]["clauses"]) for source in found[0]["source"].split("; "))


def test_cautions_name_welds_once() -> None:
    """A hundred welds of two processes give one caution a figure and process, with the first few numbers."""
    listed = tuple(replace(PLAIN, process=process) for process in ("SMAW", "GMAW") for _ in range(50))
    cautions = filler_quantity(FillerQuantityRequest(listed)).wire()["cautions"]
    assert len(cautions) < 20
    (first, second) = [caution["text"] for caution in cautions if caution["code"] == "usual-efficiency"]
    assert first.startswith("Welds 1, 2, 3, 4, 5, 6, 7, 8 and 42 more: ")
    assert second.startswith("Welds 51, ")


def test_no_gas_is_no_cost() -> None:
    """Stick and submerged arc take no shielding gas: nothing flows, and nothing is missing from the cost."""
    for process in ("SMAW", "SAW", "FCAW-S"):
        row = row_of(replace(PLAIN, process=process), PRICES)
        assert ends(row["gas"]) == (0.0, 0.0)
        assert ends(row["cost"]["gas"]) == (0.0, 0.0)
        assert row["cost"]["missing"] == []
    # Whether plain FCAW needs gas is not said, so neither is how much.
    assert row_of(replace(PLAIN, process="FCAW"), PRICES)["cost"]["missing"] == ["gas"]


@pytest.mark.parametrize(
    ("filler", "process", "price"),
    [("E7018", "SMAW", 9.0), ("E 46", "111", 5.0), ("G 42", "GMAW", 3.0), ("ER70S-6", "GMAW", 2.0)],
)
def test_the_price_that_says_most(filler: str, process: str, price: float) -> None:
    """A weld takes the price of its filler, else of its process, else the one for all."""
    row = row_of(replace(PLAIN, filler=filler, process=process, efficiency=1.0), PRICES)
    assert ends(row["cost"]["consumable"]) == pytest.approx((0.19625 * price, 0.19625 * price))


def test_no_price_fits() -> None:
    """A weld that no price is for leaves the cost without a total."""
    prices = replace(PRICES, consumables=(Price(3.0, filler="E7018"),))
    row = row_of(replace(PLAIN, filler="ER70S-6", process="GMAW"), prices)
    assert row["cost"]["missing"] == ["consumable"]
    assert row["cost"]["total"] is None
    assert row["cost"]["labour"] is not None


def test_metal_cored_wire_is_another_wire() -> None:
    """138 is GMAW by its letters, with 93 % and the gas of cored wire (ESAB handbook pp. 8-2 and 8-7)."""
    cored, solid = (row_of(replace(PLAIN, process=code)) for code in ("138", "135"))
    assert (cored["process"], solid["process"]) == ("GMAW", "GMAW")
    shares = [(row["rests_on"]["efficiency"]["least"], row["rests_on"]["efficiency"]["most"]) for row in (cored, solid)]
    assert shares == [(0.93, 0.93), (0.88, 0.98)]
    prints = [
        filler_quantity(FillerQuantityRequest((replace(PLAIN, process=code),))).wire()["provenance"]["fingerprint"]
        for code in ("138", "135", "GMAW")
    ]
    assert prints[0] != prints[1] == prints[2]


def test_energy_of_the_mains() -> None:
    """25 V x 200 A for the 235.5 s of 0.19625 kg at 3 kg/h are 1.1775 MJ of arc, over 0.65 to 0.85 at the meter."""
    told = replace(PLAIN, process="GMAW", deposition=Deposition(3.0 / HOUR), arc=WeldingArc(25.0, 200.0))
    assert ends(row_of(told)["energy"]) == pytest.approx((1.1775 / 3.6 / 0.85, 1.1775 / 3.6 / 0.65))
    meter = replace(told, arc=WeldingArc(25.0, 200.0, 0.8))
    assert ends(row_of(meter)["energy"]) == pytest.approx((1.1775 / 3.6 / 0.8,) * 2)


def test_a_stub_is_lost_once() -> None:
    """350 mm sticks with 50 mm stubs at 0.7 of what melts: 0.6 of what is bought, and a caution that says so."""
    stick = replace(PLAIN, process="SMAW", efficiency=0.7, electrode=Electrode(350.0, 50.0))
    answer = filler_quantity(FillerQuantityRequest((stick,))).wire()
    assert answer["welds"][0]["rests_on"]["efficiency"]["least"] == pytest.approx(0.6)
    assert "stub-taken-off" in {caution["code"] for caution in answer["cautions"]}
    plain = filler_quantity(FillerQuantityRequest((replace(stick, electrode=None),))).wire()
    assert plain["welds"][0]["rests_on"]["efficiency"]["least"] == 0.7
    assert "stub-in-efficiency" in {caution["code"] for caution in plain["cautions"]}


def test_other_metals_have_their_density() -> None:
    """Aluminium wire at 2640 kg/m3 (from memory): a third of the mass of steel."""
    row = row_of(replace(PLAIN, filler="ER5356", process="GMAW"))
    assert row["deposited"]["value"] == pytest.approx(25e-6 * 2640)
    assert "from memory" in row["rests_on"]["density"]["source"]


def test_marks_and_codes_do_not_change_the_fingerprint() -> None:
    """2F and PB, GMAW and 135 are one, and a mark is no part of the question."""
    one = replace(PLAIN, process="GMAW", position="2F", mark="a")
    two = replace(PLAIN, process="135", position="PB", mark="b")
    prints = {
        filler_quantity(FillerQuantityRequest((weld,))).wire()["provenance"]["fingerprint"] for weld in (one, two)
    }
    assert len(prints) == 1
    assert row_of(one)["mark"] == "a"


def test_a_bead_by_its_speed_follows_the_rate() -> None:
    """3 kg/h at 300 mm/min at 7850 kg/m3 fill 3/(60 x 7850 x 0.3) m2 = 21.2 mm2 (mass balance): 25 mm2 take two."""
    told = replace(PLAIN, deposition=Deposition(3.0 / HOUR), bead=Bead(travel_speed=5.0))
    row = row_of(told)
    assert row["rests_on"]["bead_area"]["least"]["value"] == pytest.approx(21.23, abs=0.01)
    assert (row["passes"]["least"], row["passes"]["most"]) == (2, 2)
    # With the band of a process for the rate, the bead is a band too.
    band = row_of(replace(told, deposition=None, process="GMAW"))["rests_on"]["bead_area"]
    assert band["least"]["value"] < 21.23 < band["most"]["value"]


def test_a_thousand_welds_keep_to_one_answer() -> None:
    """As many welds as a request may hold, each with its own row."""
    listed = tuple(replace(PLAIN, process="GMAW", length=float(length)) for length in range(1, 1001))
    answer = filler_quantity(FillerQuantityRequest(listed, PRICES)).wire()
    assert len(answer["welds"]) == 1000
    # 25 mm2 x 7850 kg/m3 x 500.5 m
    assert answer["totals"]["deposited"]["value"] == pytest.approx(25e-6 * 7850 * 500.5)


def _one(weld: Weld) -> tuple[dict[str, Any], set[str]]:
    """Row of one weld, and the codes of its cautions."""
    answer = filler_quantity(FillerQuantityRequest((weld,))).wire()
    return answer["welds"][0], {caution["code"] for caution in answer["cautions"]}


def test_metal_is_a_band_unless_its_excess_is_given() -> None:
    """6 x 6/2 x 10000 x 7850e-9 = 1.413 kg as drawn, 1.1 times that usually, 1.1^2 times with a tenth more leg."""
    plain = Weld(Fillet("fillet", (6.0, 6.0)), 10000.0)
    row, codes = _one(plain)
    assert [row["metal"][name]["value"] for name in ("least", "typical", "most")] == pytest.approx(
        [1.413, 1.5543, 1.70973]
    )
    assert "laid-larger-than-drawn" in codes
    row, codes = _one(replace(plain, excess=0.05))
    assert [row["metal"][name]["value"] for name in ("least", "typical", "most")] == pytest.approx([1.413 * 1.05] * 3)
    assert "laid-larger-than-drawn" not in codes


def test_hands_have_a_fastest_travel() -> None:
    """3 mm legs by stick at the fastest usual rate run at 1926 mm/min; hands run sticks at up to 250 (practice)."""
    stick = Weld(Fillet("fillet", (3.0, 3.0)), 100_000.0, process="SMAW", position="PB")
    row, codes = _one(stick)
    assert 100_000 / (row["arc_time"]["least"]["value"] * 60) > 250
    assert "faster-than-hands" in codes
    assert "faster-than-hands" not in _one(replace(stick, deposition=Deposition(0.3 / HOUR)))[1]
