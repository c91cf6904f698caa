"""Texts of a request in US units: no fault, reason or caution gives it a length in millimetres."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

import pytest
from flask.testing import FlaskClient
from tests.api import sound
from tests.api.sound import LEFT_OUT, changed

from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings
from truethroat_service.application.capabilities import CAPABILITIES

Json = dict[str, Any]

MILLIMETRES = re.compile(r"[0-9] ?mm\b")
METRIC_RULE = re.compile(
    r"covers parts of [0-9.]+ mm and more \(EN |EN [0-9-]+:[0-9]+ Table [^,]+ gives strengths up to [0-9]+ mm"
    r"|plates of 10 to 90 mm \(EN |[0-9] in \([0-9.]+ mm\)"
)
"""Limits that a rule prints in metric units are quoted as printed, and so is one that is printed in both."""

WRONG: tuple[Any, ...] = (
    LEFT_OUT,
    None,
    7,
    [],
    {"value": 7},
    "7",
    "7 furlong",
    "-1 mm",
    "1/64 in",
    "0.3 in",
    "1 in",
    "11 in",
    "1e6 in",
    "3 deg",
    "50 deg",
    "5 kip",
    "other",
)
"""Values put in place of each entry of a request; quantities among them are sound in some place and not in another."""

SOUND = [
    (sound.FILLET, body)
    for body in (sound.EN, sound.AISC, sound.ANGLE_ON_GUSSET, sound.CONCENTRIC, sound.STITCHED, sound.ON_FLANGE)
] + [
    (sound.FILLET, sound.THIN),
    *((sound.GRIND, body) for body in (sound.CLOSED, sound.HALF_OPEN, sound.OPEN, sound.FILLET_SEAM, sound.BUTT)),
    (sound.BEVEL, sound.TO_BEVEL),
    (sound.GROUP, sound.BRACKET),
    *((sound.GROOVE, body) for body in (sound.TO_GROOVE, sound.EN_GROOVE, sound.PLUGS)),
    *((sound.GAUGED, body) for body in (sound.SIX, sound.THROUGH)),
    *(
        (sound.ESTIMATE, body)
        for body in (sound.JOB, sound.PRICED, {"welds": [{**sound.RIBS, "shape": sound.V_SHAPE}]})
    ),
    (sound.HEAT, sound.HEATED),
    (sound.CRACK, sound.GRADED),
    *((sound.DISTORTION, body) for body in (sound.FLANGE, sound.GROOVED, sound.LAPPED)),
    *((sound.BREAK, body) for body in (sound.COUPON, sound.CORNER_COUPON)),
    *((sound.PLAN, body) for body in (sound.STIFFENER, sound.OUTSIDE)),
]
EXAMPLES = [(f"/v1/{entry.path}", example["value"]) for entry in CAPABILITIES for example in entry.examples.values()]


@pytest.fixture(scope="module")
def client() -> FlaskClient:
    """Ask an open service, without holding each answer against the document."""
    return create_app(Settings()).test_client()


def _entries(node: Any, path: str = "") -> Iterator[str]:
    """Path of every entry of a request, as :func:`changed` takes it."""
    for step, inner in node.items() if isinstance(node, dict) else enumerate(node):
        here = f"{path}__{step}" if path else str(step)
        yield here
        if isinstance(inner, dict | list):
            yield from _entries(inner, here)


def _texts(node: Any, key: str = "") -> Iterator[str]:
    """Every text of faults, reasons and cautions, those of what an answer rests on among them."""
    if isinstance(node, dict):
        for name, inner in node.items():
            if name not in ("working", "provenance", "source", "limits", "mark"):
                yield from _texts(inner, name)
    elif isinstance(node, list):
        for inner in node:
            yield from _texts(inner, key)
    elif isinstance(node, str):
        yield node


@pytest.mark.parametrize(("path", "body"), [*SOUND, *EXAMPLES], ids=lambda case: case if isinstance(case, str) else "")
def test_no_text_gives_millimetres(client: FlaskClient, path: str, body: Json) -> None:
    """Whatever is wrong with a request in US units, what it is told of lengths is in inches."""
    us = {**body, "units": "us"}
    broken = [us] + [changed(us, **{entry: wrong}) for entry in _entries(body) if entry != "units" for wrong in WRONG]
    told = {}
    for request in broken:
        response = client.post(path, json=request)
        assert response.status_code in (200, 422)
        told |= dict.fromkeys(_texts(response.json), request)
    metric = {text: request for text, request in told.items() if MILLIMETRES.search(METRIC_RULE.sub("", text))}
    assert not metric
