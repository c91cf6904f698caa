"""Quantities on the wire: every form read, and every answer's value and text.

Expected lengths are whole-number arithmetic on 1 in = 25.4 mm exactly; 1 lbf = 4.4482216152605 N (NIST SP 811).
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from copy import deepcopy
from fractions import Fraction
from math import pi
from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import (
    AISC,
    BEVEL,
    BUTT,
    CLOSED,
    EN,
    FILLET,
    FILLET_SEAM,
    GRIND,
    HALF_OPEN,
    OPEN,
    THIN,
    TO_BEVEL,
    changed,
)

INCH = 25.4
# Its parts are thicker than any length that is asked of it, for a throat must not exceed the thinner part.
THICK = changed(CLOSED, seam__thickness=["300 mm", "300 mm"])
LBF = 4.4482216152605

FORMS: list[tuple[Any, Fraction]] = [
    ("6 mm", Fraction(6)),
    ("6mm", Fraction(6)),
    ("+6 mm", Fraction(6)),
    ("6. mm", Fraction(6)),
    ("006 mm", Fraction(6)),
    ("6e0 mm", Fraction(6)),
    ("1e1 mm", Fraction(10)),
    ("1E+1mm", Fraction(10)),
    ("60e-1 mm", Fraction(6)),
    (".5 in", Fraction(127, 10)),
    ("0.25 in", Fraction(635, 100)),
    ("1/4 in", Fraction(635, 100)),
    ("1/4in", Fraction(635, 100)),
    ("16/64 in", Fraction(635, 100)),
    ("3 1/2 in", Fraction(889, 10)),
    ("0 1/4 in", Fraction(635, 100)),
    ("5/4 in", Fraction(3175, 100)),
    ("1/3 in", Fraction(254, 30)),
    ("1/2 ft", Fraction(1524, 10)),
    ("1.2 cm", Fraction(12)),
    ("0.012 m", Fraction(12)),
    ({"value": 6, "unit": "mm"}, Fraction(6)),
    ({"value": 0.25, "unit": "in"}, Fraction(635, 100)),
    ({"value": 0.25, "unit": "in", "text": "1/4 in"}, Fraction(635, 100)),
    ({"value": 6, "unit": "mm", "text": "whatever an answer said"}, Fraction(6)),
]


@pytest.mark.parametrize(("sent", "millimetres"), FORMS, ids=[str(form) for form, _ in FORMS])
def test_every_form_of_a_length_is_read(service: Exchange, sent: Any, millimetres: Fraction) -> None:
    """Decimals, fractions, mixed numbers, exponents and objects, in every unit of length, mean what they say."""
    found = service.answer(GRIND, changed(THICK, required_throat=sent))["budget"]["required"]
    assert found["unit"] == "mm"
    assert found["value"] == pytest.approx(float(millimetres), rel=1e-14)


def _fingerprint(service: Exchange, path: str, request: Any) -> str:
    """Give the fingerprint of a request's answer."""
    found: str = service.answer(path, request)["provenance"]["fingerprint"]
    return found


SAME_FORCES = ["10 kip", "10000 lbf", f"{10_000 * LBF} N", f"{10 * LBF} kN", f"{LBF / 100} MN"]
SAME_LINES = [
    "1 kip/in",
    "1000 lbf/in",
    "12 kip/ft",
    f"{1000 * LBF / INCH} N/mm",
    f"{1000 * LBF / INCH} kN/m",
    f"{LBF / INCH} kN/mm",
]
SAME_STRESSES = [
    "70 ksi",
    "70000 psi",
    f"{70_000 * LBF / INCH**2} MPa",
    f"{70_000 * LBF / INCH**2} N/mm2",
    f"{70 * LBF / INCH**2} GPa",
]


@pytest.mark.parametrize("forms", [SAME_FORCES, SAME_LINES, SAME_STRESSES, ["45 deg", f"{pi / 4} rad"]], ids=str)
def test_equal_quantities_make_one_request(service: Exchange, forms: list[str]) -> None:
    """A force, force per length, stress or angle is the same in every unit there is for it."""
    made = {
        "kip": lambda text: changed(AISC, load__force=text),
        "kip/in": lambda text: changed(AISC, load={"longitudinal": text}),
        "ksi": lambda text: changed(AISC, filler={"tensile_strength": text}),
        "deg": lambda text: changed(AISC, load__angle=text),
    }[forms[0].split(" ")[1]]
    assert len({_fingerprint(service, FILLET, made(text)) for text in forms}) == 1


def test_a_signed_quantity_may_be_negative(service: Exchange) -> None:
    """A force per length pushes or pulls; a sign changes the sense, not the size, of one along the weld."""
    pulled = service.answer(FILLET, changed(AISC, load={"longitudinal": "1 kip/in"}))
    pushed = service.answer(FILLET, changed(AISC, load={"longitudinal": "-1 kip/in"}))
    assert pulled["required"] == pushed["required"]
    assert pulled["provenance"]["fingerprint"] != pushed["provenance"]["fingerprint"]


PROVEN = {"depth": "2 mm", "vouched": "proven"}
REQUESTS = [
    (FILLET, changed(EN, size_step="0.25 mm", working=True)),
    (FILLET, changed(AISC, size_step="1/32 in", edge_of=2, end_loaded=True)),
    (FILLET, changed(THIN, size_step="1 mm", joint__root_gap="2 mm")),
    (GRIND, changed(CLOSED, required_throat="4 mm")),
    (GRIND, changed(OPEN, finish={"to": "radius", "radius": "6 mm", "tolerance": "0.3 mm"})),
    (GRIND, changed(HALF_OPEN, required_throat="3 mm")),
    (GRIND, changed(FILLET_SEAM, hollow="0.5 mm")),
    (GRIND, changed(BUTT, face_width="8 mm", face_height="2 mm")),
    (BEVEL, changed(TO_BEVEL, depth_step="0.25 mm")),
    (BEVEL, changed(TO_BEVEL, depth_step="0.25 mm", groove="single-u", penetration=PROVEN)),
    (BEVEL, changed(TO_BEVEL, depth_step="0.25 mm", required_throat="11.8 mm")),
]


def _quantities(node: Any, path: str = "") -> Iterator[tuple[str, Any]]:
    """Find every quantity in an answer, with its path."""
    if isinstance(node, dict):
        if set(node) == {"value", "unit", "text"}:
            yield path, node
        else:
            for key, value in node.items():
                yield from _quantities(value, f"{path}/{key}")
    elif isinstance(node, list):
        for index, value in enumerate(node):
            yield from _quantities(value, f"{path}/{index}")


# Factors to engine units, from the two definitions above; a pound is 0.45359237 kg exactly.
FACTORS = {
    "mm": 1.0,
    "in": INCH,
    "N/mm": 1.0,
    "kip/in": 1000 * LBF / INCH,
    "mm2": 1.0,
    "in2": INCH**2,
    "kg/m": 1.0,
    "lb/ft": 0.45359237 / 0.3048,
}


@pytest.mark.parametrize(("path", "request_"), REQUESTS)
def test_units_change_the_units_of_the_answer_alone(service: Exchange, path: str, request_: Any) -> None:
    """With the step given, metric and US answers hold the same quantities, verdict and fingerprint.

    A remedy's size is rounded to the step of its units, which no field sets, so remedies are alike in kind alone.
    """
    metric, us = (service.answer(path, changed(request_, units=units)) for units in ("metric", "us"))
    found, other = (
        {where: quantity for where, quantity in _quantities(answer) if "/remedies/" not in where}
        for answer in (metric, us)
    )
    assert found.keys() == other.keys()
    assert found
    for where, quantity in found.items():
        assert quantity["value"] * FACTORS[quantity["unit"]] == pytest.approx(
            other[where]["value"] * FACTORS[other[where]["unit"]], rel=1e-13, abs=1e-13
        ), where
    for answer in (metric, us):
        for texts in ("reasons", "cautions"):
            answer[f"{texts}_count"] = len(answer.pop(texts))
    bare = [_without_quantities(answer) for answer in (metric, us)]
    assert bare[0] == bare[1]


def _without_quantities(node: Any) -> Any:
    """Give an answer without its quantities and the texts that print them."""
    if isinstance(node, dict):
        return {
            key: _without_quantities(value)
            for key, value in node.items()
            if key not in ("value", "unit", "text", "source", "callout")
        }
    if isinstance(node, list):
        return [_without_quantities(value) for value in node]
    return node


def test_units_of_the_answer_do_not_touch_the_working(service: Exchange) -> None:
    """The working is in engine units whatever units the answer has."""
    request = changed(EN, working=True, size_step="0.25 mm")
    assert service.answer(FILLET, request)["working"] == service.answer(FILLET, changed(request, units="us"))["working"]


@pytest.mark.parametrize("units", ["metric", "us"])
@pytest.mark.parametrize(("path", "request_"), REQUESTS)
def test_an_answer_may_be_sent_back(service: Exchange, path: str, request_: Any, units: str) -> None:
    """Every length of an answer is taken as a length, as it came, and comes out as it went in."""
    answer = service.answer(path, changed(request_, units=units))
    lengths = [
        quantity
        for _, quantity in _quantities(answer)
        if quantity["unit"] in ("mm", "in") and 0.0 < quantity["value"] * FACTORS[quantity["unit"]] <= 300.0
    ]
    assert len(lengths) > 2
    for quantity in lengths:
        echo = service.answer(GRIND, changed(THICK, required_throat=quantity, units=units))["budget"]["required"]
        assert echo == {**quantity, "text": echo["text"]}


TEXTS = [
    ("1/4 in", "1/4 in"),
    ("0.1875 in", "3/16 in"),
    ("12/64 in", "3/16 in"),
    ("2 in", "2 in"),
    ("3.5 in", "3 1/2 in"),
    ("1.015625 in", "1 1/64 in"),
    ("0.3 in", "0.3 in"),
    ("0.123456 in", "0.1235 in"),
    ("6.35 mm", "1/4 in"),
    ("10 mm", "0.3937 in"),
]


@pytest.mark.parametrize(("sent", "text"), TEXTS)
def test_inches_are_written_as_fractions(service: Exchange, sent: str, text: str) -> None:
    """A multiple of 1/64 in is a fraction in lowest terms, anything else has four figures."""
    answer = service.answer(GRIND, changed(THICK, required_throat=sent, units="us"))
    assert answer["budget"]["required"]["text"] == text


METRIC_TEXTS = [
    ("6.35 mm", "6.35 mm"),
    ("6 mm", "6 mm"),
    ("1/3 in", "8.467 mm"),
    ("0.00012345 mm", "0.0001234 mm"),
    ("123.456 mm", "123.5 mm"),
]


@pytest.mark.parametrize(("sent", "text"), METRIC_TEXTS)
def test_millimetres_are_written_with_four_figures(service: Exchange, sent: str, text: str) -> None:
    """Four figures, no exponent and no zeros after the last."""
    assert service.answer(GRIND, changed(THICK, required_throat=sent))["budget"]["required"]["text"] == text


def test_negative_fractions_carry_their_sign(service: Exchange) -> None:
    """3/32 in of throat against 1/4 in is a margin of -5/32 in."""
    request = changed(
        CLOSED,
        penetration__depth="3/32 in",
        face_height="5/32 in",
        required_throat="1/4 in",
        finish={"to": "flush"},
        units="us",
    )
    assert service.answer(GRIND, request)["physical"]["margin"] == {"value": -0.15625, "unit": "in", "text": "-5/32 in"}


@pytest.mark.parametrize("sixty_fourths", range(1, 65))
def test_inches_come_back_free_of_noise(service: Exchange, sixty_fourths: int) -> None:
    """A sixty-fourth sent comes back as that float, not as its neighbour after a trip through millimetres."""
    inches = sixty_fourths / 64
    answer = service.answer(GRIND, changed(THICK, required_throat=f"{sixty_fourths}/64 in", units="us"))
    assert answer["budget"]["required"]["value"] == inches


def test_no_negative_zero_is_answered(service: Exchange) -> None:
    """Nothing is 0, never -0: not where a deduction, a cap or a hollow is nothing."""
    for request in (CLOSED, HALF_OPEN, BUTT, FILLET_SEAM):
        assert not re.search(r"-0(\.0+)?\b(?!\.)", service.post(GRIND, request).get_data(as_text=True))


def _of_text(text: str) -> float:
    """Read a text that has a whole, a fraction or a decimal before its unit."""
    number = text.rpartition(" ")[0]
    return float(sum(Fraction(part) for part in number.split(" ")))


@pytest.mark.parametrize("units", ["metric", "us"])
@pytest.mark.parametrize("throat", ["3.03 mm", "3.17 mm", "3.6 mm", "4 mm", "4.44 mm", "5 mm"])
def test_texts_round_to_the_safe_side(service: Exchange, units: str, throat: str) -> None:
    """An allowance and a radius are written rounded down, a face to leave rounded up: 0.1 mm or 1/64 in."""
    step = 0.1 if units == "metric" else 1 / 64
    request = changed(OPEN, required_throat=throat, seam__thickness=["7.77 mm", "6.66 mm"], units=units)
    answer = service.answer(GRIND, request)
    for name, up in (("allowance", False), ("leave", True), ("largest_radius", False)):
        exact, shown = answer[name]["value"], _of_text(answer[name]["text"])
        steps = shown / step
        assert steps == pytest.approx(round(steps), abs=1e-9)
        rounded_by = shown - exact if up else exact - shown
        assert -1e-9 <= rounded_by < step, name


def test_a_multiple_of_the_step_is_not_rounded(service: Exchange) -> None:
    """5/16 in of face over 3/16 in of throat may lose 1/8 in, and says so."""
    request = changed(CLOSED, penetration__depth="1/8 in", face_height="3/16 in", required_throat="3/16 in", units="us")
    assert service.answer(GRIND, request)["physical"]["allowance"] == {"value": 0.125, "unit": "in", "text": "1/8 in"}


STEPS = [
    (FILLET, EN, "metric", "specify/throat", 0.5),
    (FILLET, AISC, "metric", "specify/leg", 1.0),
    (FILLET, EN, "us", "specify/throat", 1 / 16),
    (FILLET, AISC, "us", "specify/leg", 1 / 16),
    (FILLET, changed(EN, size_by="leg"), "metric", "specify/leg", 1.0),
    (FILLET, changed(AISC, size_by="throat"), "metric", "specify/throat", 0.5),
    (FILLET, changed(AISC, size_step="0.3 mm"), "metric", "specify/leg", 0.3),
    (BEVEL, TO_BEVEL, "metric", "depth", 0.5),
    (BEVEL, changed(TO_BEVEL, required_throat="5.2 mm"), "metric", "depth", 0.5),
    (BEVEL, TO_BEVEL, "us", "depth", 1 / 32),
    (BEVEL, changed(TO_BEVEL, depth_step="0.4 mm"), "metric", "depth", 0.4),
]


@pytest.mark.parametrize(("path", "request_", "units", "field", "step"), STEPS)
def test_sizes_are_multiples_of_the_step(
    service: Exchange, path: str, request_: Any, units: str, field: str, step: float
) -> None:
    """What is specified is a multiple of its step; by default 1 mm of leg, 0.5 mm of throat or depth, 1/16, 1/32 in."""
    found: Any = service.answer(path, changed(request_, units=units))
    for name in field.split("/"):
        found = found[name]
    assert found["value"] / step == pytest.approx(round(found["value"] / step), abs=1e-9)


FINGERPRINTS_ALIKE = [
    (FILLET, EN, changed(EN, mark="rib 4")),
    (FILLET, EN, changed(EN, working=True)),
    (FILLET, changed(EN, size_step="1 mm"), changed(EN, size_step="1 mm", units="us")),
    (FILLET, EN, changed(EN, parts__0__thickness="0.012 m", load__force="240000 N")),
    (FILLET, EN, changed(EN, size_by="throat", size_step="0.5 mm")),
    (FILLET, changed(EN, process="GMAW", position="2F"), changed(EN, process="135", position="PB")),
    (GRIND, changed(THICK, required_throat="6.35 mm"), changed(THICK, required_throat="1/4 in")),
    (GRIND, changed(THICK, required_throat="6.35 mm"), changed(THICK, required_throat="0.25 in", units="us")),
    (GRIND, CLOSED, changed(CLOSED, finish={"to": "as-welded"})),
    (GRIND, BUTT, changed(BUTT, preparation__groove_angle="60 deg")),
    (BEVEL, TO_BEVEL, changed(TO_BEVEL, groove="single-bevel", bevelled=1, groove_angle="45 deg", depth_step="0.5 mm")),
    (BEVEL, changed(TO_BEVEL, bevelled="both"), changed(TO_BEVEL, groove="single-v")),
]


@pytest.mark.parametrize(("path", "one", "other"), FINGERPRINTS_ALIKE)
def test_the_same_joint_has_one_fingerprint(service: Exchange, path: str, one: Any, other: Any) -> None:
    """Units, the mark, the working, either coding and a default said out loud leave the fingerprint as it is."""
    assert _fingerprint(service, path, one) == _fingerprint(service, path, other)


def test_different_joints_have_different_fingerprints(service: Exchange) -> None:
    """Whatever of a joint changes, the fingerprint does too; so it does between two questions of the same words."""
    requests = [
        (FILLET, EN),
        (FILLET, changed(EN, rule_set="en-1993-1-8-2005-simplified")),
        (FILLET, changed(EN, parts__0__thickness="12.0001 mm")),
        (FILLET, changed(EN, parts=EN["parts"][::-1])),
        (FILLET, changed(EN, parameters={"gamma_m2": 1.3})),
        (FILLET, changed(EN, joint__sides=1, held_from_turning=True)),
        (FILLET, changed(EN, load__angle="45 deg")),
        (FILLET, changed(EN, size_step="1 mm")),
        (FILLET, AISC),
        (FILLET, THIN),
        (GRIND, CLOSED),
        (GRIND, changed(CLOSED, finish={"to": "flush"})),
        (GRIND, changed(CLOSED, penetration__vouched="proven")),
        (GRIND, changed(CLOSED, face_height_tolerance="0.1 mm")),
        (BEVEL, TO_BEVEL),
        (GRIND, deepcopy(TO_BEVEL)),
        (BEVEL, changed(TO_BEVEL, rule_set="thin-part")),
    ]
    found = [_fingerprint(service, path, request) for path, request in requests]
    assert all(len(fingerprint) == 64 for fingerprint in found)
    assert len(set(found)) == len(requests)
