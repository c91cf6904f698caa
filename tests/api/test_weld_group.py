"""What a weld group's request is refused for, and that its answer holds together."""

from __future__ import annotations

from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import BRACKET, GROUP, LEFT_OUT, changed

EN_PART = {"thickness": "10 mm", "material": "S355"}
STRAIGHT = {"start": ["0 mm", "0 mm"], "end": ["0 mm", "100 mm"]}
REFUSED: dict[str, tuple[dict[str, Any], str, str, str]] = {
    "a line of no length": (
        changed(BRACKET, group={"pattern": "lines", "lines": [STRAIGHT, {**STRAIGHT, "end": ["0 mm", "0 mm"]}]}),
        "#/group",
        "inconsistent",
        "must not have a piece that ends where it starts; leave that piece out",
    ),
    "both a leg and a throat": (
        changed(BRACKET, leg="6 mm", throat="4 mm"),
        "#/throat",
        "inconsistent",
        "must not be sent with a leg; send one of the two",
    ),
    "no load": (changed(BRACKET, load={}), "#/load", "inconsistent", "must have a force or a moment that is not zero"),
    "instantaneous centre with EN": (
        changed(
            BRACKET,
            rule_set="en-1993-1-8-2005-simplified",
            method="instantaneous-centre",
            parts=[EN_PART, EN_PART],
            filler=LEFT_OUT,
        ),
        "#/method",
        "out-of-scope",
        "must be elastic with en-1993-1-8-2005-simplified; the instantaneous centre applies to the AISC rule sets only",
    ),
    "instantaneous centre out of the plane": (
        changed(BRACKET, method="instantaneous-centre", load={"force": {"z": "10 kN"}}),
        "#/load",
        "out-of-scope",
        "must lie in the plane of the group for the instantaneous centre; for a load out of the plane use method",
    ),
    "a line bent about itself": (
        changed(BRACKET, group={"pattern": "one-line", "depth": "300 mm"}, load={"moment": {"y": "1 kN*m"}}),
        "#/load",
        "inconsistent",
        "must not bend a group on one straight line about that line, where it has no strength",
    ),
    "a parameter of EN with AISC": (
        changed(BRACKET, parameters={"gamma_m2": 1.3}),
        "#/parameters/gamma_m2",
        "inconsistent",
        "does not apply to aisc-360-22-lrfd; leave it out",
    ),
    "no filler with AISC": (
        changed(BRACKET, filler=LEFT_OUT),
        "#/filler",
        "inconsistent",
        'is required with aisc-360-22-lrfd: send a filler metal such as "E70"',
    ),
    "a rule that claims no strength": (
        changed(BRACKET, rule_set="thin-part"),
        "#/rule_set",
        "unknown-choice",
        "must be one of",
    ),
    "an empty list of lines": (
        changed(BRACKET, group={"pattern": "lines", "lines": []}),
        "#/group/lines",
        "wrong-count",
        "must have from 1 to 200 entries",
    ),
    "lines that are no list": (
        changed(BRACKET, group={"pattern": "lines", "lines": STRAIGHT}),
        "#/group/lines",
        "wrong-type",
        "must be a list of lines and arcs",
    ),
    "a line without its end": (
        changed(BRACKET, group={"pattern": "lines", "lines": [STRAIGHT, {"start": ["0 mm", "0 mm"]}]}),
        "#/group/lines/1/end",
        "missing",
        "is missing",
    ),
    "a place without a unit": (
        changed(BRACKET, load={"force": {"y": "-90 kN"}, "at": {"x": 250}}),
        "#/load/at/x",
        "missing-unit",
        "has no unit",
    ),
    "an unknown pattern": (
        changed(BRACKET, group={"pattern": "z"}),
        "#/group/pattern",
        "unknown-choice",
        "must be one",
    ),
}


@pytest.mark.parametrize("case", REFUSED)
def test_what_a_group_is_refused_for(service: Exchange, case: str) -> None:
    """Each refusal names the field, its kind and what is wrong."""
    request, pointer, code, message = REFUSED[case]
    [(where, what, detail)] = service.faults(GROUP, request)
    assert (where, what) == (pointer, code)
    assert detail.startswith(message)


def test_a_given_size_is_judged(service: Exchange) -> None:
    """A leg under the need is short, one over it enough, and the need is the same either way."""
    need = service.answer(GROUP, BRACKET)["required"]
    short = service.answer(GROUP, changed(BRACKET, leg="3 mm"))
    ample = service.answer(GROUP, changed(BRACKET, throat="15 mm"))
    assert (short["verdict"], ample["verdict"]) == ("short", "enough")
    assert short["required"] == ample["required"] == need
    assert short["strength"]["factor"] < 1.0 < ample["strength"]["factor"]


def test_working_shows_the_critical_point(service: Exchange) -> None:
    """The working of the elastic method shows the forces at the critical point, and what each gives is used on."""
    steps = service.answer(GROUP, changed(BRACKET, working=True))["working"]
    critical = [step for step in steps if "critical point" in step["meaning"]]
    assert {"f_x", "f_y", "f_z", "f", "a_req"} <= {step["symbol"] for step in critical}
    resultant = next(step for step in critical if step["symbol"] == "f")
    parts = [resultant["with"][name]["value"] for name in ("f_x", "f_y", "f_z")]
    assert sum(part * part for part in parts) ** 0.5 == pytest.approx(resultant["value"])
