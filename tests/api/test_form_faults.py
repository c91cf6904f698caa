"""Faults of form: what a field takes, and what a caller is told who sends something else."""

from __future__ import annotations

import json
from typing import Any

import pytest
from tests.api.exchange import Exchange, document
from tests.api.sound import (
    AISC,
    BEVEL,
    BUTT,
    CLOSED,
    EN,
    FILLET,
    GRIND,
    HALF_OPEN,
    LEFT_OUT,
    OPEN,
    THIN,
    TO_BEVEL,
    changed,
)

LENGTHS = "mm, cm, m, in, ft"
NO_LENGTH = f'is not a length; send a number and a unit such as "6 mm", with one of the units {LENGTHS}'
NOT_FINITE = "is not a finite number"
OVER_0 = "must be over 0 mm and at most 300 mm"

QUANTITIES: list[tuple[Any, str, str, str]] = [
    (6, "", "missing-unit", 'has no unit; send text such as "6 mm"'),
    (6.5, "", "missing-unit", 'has no unit; send text such as "6.5 mm"'),
    ("6", "", "missing-unit", 'has no unit; send text such as "6 mm"'),
    ("3 1/2", "", "missing-unit", 'has no unit; send text such as "3 1/2 mm"'),
    ({"value": 6}, "/unit", "missing-unit", f"is missing; use one of {LENGTHS}"),
    ("6 furlong", "", "unknown-unit", f"furlong is not a unit of length; use {LENGTHS}"),
    ("6 MM", "", "unknown-unit", f"MM is not a unit of length; use {LENGTHS}"),
    ("6 kN", "", "unknown-unit", f"kN is not a unit of length; use {LENGTHS}"),
    ({"value": 6, "unit": "kN"}, "/unit", "unknown-unit", f"is not a unit of length; use {LENGTHS}"),
    ("-6 mm", "", "out-of-range", OVER_0),
    ("0 mm", "", "out-of-range", OVER_0),
    ({"value": -0.0, "unit": "mm"}, "", "out-of-range", OVER_0),
    ("301 mm", "", "out-of-range", OVER_0),
    ("12 in", "", "out-of-range", "must be over 0 in and at most 11.81 in"),
    ("1e99 mm", "", "out-of-range", OVER_0),
    ("NaN mm", "", "not-finite", NOT_FINITE),
    ("nan", "", "not-finite", NOT_FINITE),
    ("inf mm", "", "not-finite", NOT_FINITE),
    ("-Infinity mm", "", "not-finite", NOT_FINITE),
    ("1e400 mm", "", "not-finite", NOT_FINITE),
    ("1e400", "", "not-finite", NOT_FINITE),
    (None, "", "null", "is null; leave the field out instead"),
    ("", "", "not-a-quantity", NO_LENGTH),
    ("mm", "", "not-a-quantity", NO_LENGTH),
    ("6  mm", "", "not-a-quantity", NO_LENGTH),
    ("6 mm ", "", "not-a-quantity", NO_LENGTH),
    ("6 mm\n", "", "unknown-unit", f"mm\n is not a unit of length; use {LENGTHS}"),
    ("6 mm mm", "", "not-a-quantity", NO_LENGTH),
    ("6,5 mm", "", "not-a-quantity", NO_LENGTH),
    ("1/0 mm", "", "not-a-quantity", NO_LENGTH),
    ("\u0666 mm", "", "not-a-quantity", NO_LENGTH),
    ("0x6 mm", "", "not-a-quantity", NO_LENGTH),
    ("six furlong", "", "not-a-quantity", NO_LENGTH),
    ("1/0 furlong", "", "not-a-quantity", NO_LENGTH),
    ("6^800000 mm", "", "not-a-quantity", NO_LENGTH),
    ("1" * 60 + " mm", "", "not-a-quantity", NO_LENGTH),
    (True, "", "wrong-type", 'must be a length: text such as "6 mm" or value and unit'),
    ([], "", "wrong-type", 'must be a length: text such as "6 mm" or value and unit'),
    ({"value": "6", "unit": "mm"}, "/value", "wrong-type", "must be a number"),
    ({"value": True, "unit": "mm"}, "/value", "wrong-type", "must be a number"),
    ({"value": None, "unit": "mm"}, "/value", "wrong-type", "must be a number"),
    ({"value": 6, "unit": 3}, "/unit", "wrong-type", "must be text"),
    ({"value": 6, "unit": "mm", "text": 6}, "/text", "wrong-type", "must be text"),
    ({"unit": "mm"}, "/value", "missing", "is missing"),
    (
        {"value": 6, "unit": "mm", "scale": 1},
        "/scale",
        "unknown-field",
        "is not a field here; a quantity has value and unit",
    ),
]


@pytest.mark.parametrize(("value", "below", "code", "message"), QUANTITIES, ids=lambda case: repr(case)[:40])
def test_what_is_no_length_is_refused(service: Exchange, value: Any, below: str, code: str, message: str) -> None:
    """A length that is wrong is refused at its pointer with what would be right."""
    found = service.faults(GRIND, changed(CLOSED, required_throat=value))
    assert found == [(f"#/required_throat{below}", code, message)]


@pytest.mark.parametrize("number", ["1e400", "-1e400", "1" + "0" * 400, "1" + "0" * 5000])
@pytest.mark.parametrize("form", ["%s", '{"value": %s, "unit": "mm"}'])
def test_a_number_too_large_for_a_float_is_not_finite(service: Exchange, number: str, form: str) -> None:
    """A JSON number beyond every float is told as such, bare or with a unit, however many digits it has."""
    body = json.dumps(changed(CLOSED, required_throat="@")).replace('"@"', form % number)
    response = service.send("POST", GRIND, data=body, content_type="application/json")
    assert response.status_code == 422
    assert response.json["errors"] == [
        {"pointer": "#/required_throat", "code": "not-finite", "detail": "is not a finite number"}
    ]


@pytest.mark.parametrize("constant", ["NaN", "Infinity", "-Infinity"])
def test_constants_that_are_no_json_are_refused(service: Exchange, constant: str) -> None:
    """NaN and Infinity are no JSON: the body is refused, with the word that spoils it."""
    body = json.dumps(changed(EN, parameters={"gamma_m2": 1.25})).replace("1.25", constant)
    response = service.send("POST", FILLET, data=body, content_type="application/json")
    assert response.status_code == 400
    assert response.json["type"] == "/problems/not-json"
    [fault] = response.json["errors"]
    assert (fault["pointer"], fault["code"]) == ("#", "not-json")
    assert fault["detail"] == f"holds {constant}, which is no JSON number; every number must be finite"


UNITS_OF = {
    "force": ("#/load/force", changed(EN, load__force="5 mm"), "N, kN, MN, lbf, kip"),
    "angle": ("#/load/angle", changed(EN, load__angle="5 mm"), "deg, rad"),
    "force per length": (
        "#/load/normal",
        changed(EN, load={"normal": "5 mm"}),
        "N/mm, kN/mm, kN/m, lbf/in, kip/in, kip/ft",
    ),
    "stress": (
        "#/filler/tensile_strength",
        changed(EN, filler={"tensile_strength": "5 mm"}),
        "MPa, N/mm2, GPa, ksi, psi",
    ),
}


@pytest.mark.parametrize("dimension", UNITS_OF)
def test_a_unit_of_another_dimension_is_refused(service: Exchange, dimension: str) -> None:
    """Millimetres are no unit of force, angle, force per length or stress; the message lists those that are."""
    pointer, request, units = UNITS_OF[dimension]
    assert service.faults(FILLET, request) == [
        (pointer, "unknown-unit", f"mm is not a unit of {dimension}; use {units}")
    ]


FIELDS = [
    (FILLET, changed(EN, limit=1), "#/limit", "FilletSizeRequest"),
    (FILLET, changed(EN, joint__legs=1), "#/joint/legs", "Joint"),
    (FILLET, changed(EN, parts__0__grade="x"), "#/parts/0/grade", "MaterialPart"),
    (FILLET, changed(THIN, parts__0__grade="x"), "#/parts/0/grade", "PlainPart"),
    (FILLET, changed(EN, parameters={"gamma_m1": 1.0}), "#/parameters/gamma_m1", "Parameters"),
    (FILLET, changed(EN, load__moment="1 kN"), "#/load/moment", "SharedForce"),
    (FILLET, changed(EN, load={"normal": "1 N/mm", "moment": 1}), "#/load/moment", "ForceComponents"),
    (FILLET, changed(AISC, filler={"tensile_strength": "70 ksi", "id": "E70"}), "#/filler/id", "Filler"),
    (
        FILLET,
        changed(EN, penetration={"depth": "1 mm", "vouched": "proven", "by": "me"}),
        "#/penetration/by",
        "Penetration",
    ),
    (GRIND, changed(CLOSED, cap="1 mm"), "#/cap", "GrindAllowanceRequest"),
    (GRIND, changed(CLOSED, seam__overlap="1 mm"), "#/seam/overlap", "ClosedCorner"),
    (GRIND, changed(BUTT, preparation__land="1 mm"), "#/preparation/land", "Preparation"),
    (GRIND, changed(CLOSED, finish={"to": "flush", "radius": "3 mm"}), "#/finish/radius", "Flush"),
    (GRIND, changed(CLOSED, finish={"to": "as-welded", "below": "1 mm"}), "#/finish/below", "AsWelded"),
    (BEVEL, changed(TO_BEVEL, face_height="1 mm"), "#/face_height", "BevelDepthRequest"),
]


@pytest.mark.parametrize(("path", "request_", "pointer", "component"), FIELDS, ids=[case[2] for case in FIELDS])
def test_an_unknown_field_is_refused_with_those_there_are(
    service: Exchange, path: str, request_: Any, pointer: str, component: str
) -> None:
    """A field that an object does not have is refused; the message lists every field it has, as the document does."""
    [(where, code, message)] = service.faults(path, request_)
    assert (where, code) == (pointer, "unknown-field")
    said, fields = message.split("; the fields are ")
    assert said == "is not a field here"
    # The document has the fields by the alphabet, the message in the order in which they matter.
    assert sorted(fields.split(", ")) == sorted(document()["components"]["schemas"][component]["properties"])


MISSING = [
    (FILLET, {}, ["basis", "joint", "parts", "rule_set"]),
    (FILLET, changed(EN, joint={}, load={"force": "1 kN"}), ["joint/kind", "load/angle", "load/length"]),
    (
        FILLET,
        changed(EN, parts=[{"material": "S355"}, {"yield_strength": "300 MPa"}]),
        ["parts/0/thickness", "parts/1/tensile_strength", "parts/1/thickness"],
    ),
    (
        FILLET,
        changed(EN, filler={}, penetration={}),
        ["filler/tensile_strength", "penetration/depth", "penetration/vouched"],
    ),
    (GRIND, {}, ["required_throat", "seam"]),
    (GRIND, {"seam": {}, "required_throat": "1 mm", "finish": {}}, ["finish/to", "seam/kind"]),
    (GRIND, changed(HALF_OPEN, seam={"kind": "half-open-corner"}), ["seam/overlap", "seam/thickness"]),
    (GRIND, changed(OPEN, finish={"to": "radius"}), ["finish/radius"]),
    (GRIND, {"seam": {"kind": "fillet"}, "required_throat": "1 mm"}, ["seam/legs"]),
    (BEVEL, {}, ["required_throat", "seam"]),
]


@pytest.mark.parametrize(("path", "request_", "fields"), MISSING, ids=[" ".join(case[2]) for case in MISSING])
def test_missing_fields_are_told_all_at_once(service: Exchange, path: str, request_: Any, fields: list[str]) -> None:
    """Every field a request lacks is named in one answer."""
    assert service.faults(path, request_) == [(f"#/{field}", "missing", "is missing") for field in fields]


NUMBER = "must be a number, without a unit"
FLAG = "must be true or false"
TYPES: list[tuple[str, Any, str, str, str]] = [
    (FILLET, changed(EN, parameters__gamma_m2="1.5"), "#/parameters/gamma_m2", "wrong-type", NUMBER),
    (FILLET, changed(EN, parameters__gamma_m2=True), "#/parameters/gamma_m2", "wrong-type", NUMBER),
    (FILLET, changed(EN, parameters__gamma_m2=0.9), "#/parameters/gamma_m2", "out-of-range", "must be from 1 to 2"),
    (FILLET, changed(EN, parameters__beta_w=1.6), "#/parameters/beta_w", "out-of-range", "must be from 0.5 to 1.5"),
    (
        FILLET,
        changed(EN, parameters__gamma_m2=None),
        "#/parameters/gamma_m2",
        "null",
        "is null; leave the field out instead",
    ),
    (FILLET, changed(EN, working=0), "#/working", "wrong-type", FLAG),
    (FILLET, changed(EN, working="true"), "#/working", "wrong-type", FLAG),
    (FILLET, changed(EN, end_loaded=1), "#/end_loaded", "wrong-type", FLAG),
    (FILLET, changed(EN, mark=7), "#/mark", "wrong-type", "must be text"),
    (FILLET, changed(EN, mark="x" * 201), "#/mark", "out-of-range", "must be at most 200 characters"),
    (FILLET, changed(EN, joint__sides=True), "#/joint/sides", "unknown-choice", "must be one of 1, 2"),
    (FILLET, changed(EN, joint__sides="2"), "#/joint/sides", "unknown-choice", "must be one of 1, 2"),
    (FILLET, changed(EN, joint__sides=3), "#/joint/sides", "unknown-choice", "must be one of 1, 2"),
    (
        FILLET,
        changed(EN, joint__kind="cross"),
        "#/joint/kind",
        "unknown-choice",
        'must be one of "tee", "lap", "inside-corner"',
    ),
    (FILLET, changed(EN, units="inch"), "#/units", "unknown-choice", 'must be one of "metric", "us"'),
    (FILLET, changed(EN, units=["us"]), "#/units", "unknown-choice", 'must be one of "metric", "us"'),
    (FILLET, changed(EN, edge_of=0), "#/edge_of", "unknown-choice", 'must be one of 1, 2, "both"'),
    (FILLET, changed(EN, joint=[]), "#/joint", "wrong-type", "must be an object"),
    (FILLET, changed(EN, load="240 kN"), "#/load", "wrong-type", "must be an object"),
    (FILLET, changed(EN, load=None), "#/load", "null", "is null; leave the field out instead"),
    (FILLET, changed(EN, parts__1="10 mm"), "#/parts/1", "wrong-type", "must be an object"),
    (FILLET, changed(EN, parts__1=None), "#/parts/1", "null", "is null; leave the field out instead"),
    (FILLET, changed(EN, parts={}), "#/parts", "wrong-type", "must be a list of two, part 1 first"),
    (FILLET, changed(EN, parts=[]), "#/parts", "wrong-count", "must have two entries, part 1 first; it has 0"),
    (
        FILLET,
        changed(EN, parts=EN["parts"] * 2),
        "#/parts",
        "wrong-count",
        "must have two entries, part 1 first; it has 4",
    ),
    (
        FILLET,
        changed(EN, rule_set="en-1993"),
        "#/rule_set",
        "unknown-choice",
        (
            'must be one of "aisc-360-22-lrfd", "aisc-360-22-asd", "en-1993-1-8-2005-directional",'
            ' "en-1993-1-8-2005-simplified", "en-1993-1-4-2006-directional", "en-1993-1-4-2006-simplified",'
            ' "en-1993-1-12-2007-directional", "en-1993-1-12-2007-simplified", "en-1999-1-1-2007", "thin-part"'
        ),
    ),
    (
        FILLET,
        changed(EN, joint__root_gap="-1 mm"),
        "#/joint/root_gap",
        "out-of-range",
        "must be at least 0 mm and at most 50 mm",
    ),
    (
        FILLET,
        changed(EN, load__angle="91 deg"),
        "#/load/angle",
        "out-of-range",
        "must be at least 0 deg and at most 90 deg",
    ),
    (
        FILLET,
        changed(EN, load__force="0 kN"),
        "#/load/force",
        "out-of-range",
        "must be over 0 kN and at most 100000 kN",
    ),
    (
        FILLET,
        changed(EN, load__length="0 mm"),
        "#/load/length",
        "out-of-range",
        "must be over 0 mm and at most 100000 mm",
    ),
    (
        FILLET,
        changed(EN, load={"normal": "-1001 kN/mm"}),
        "#/load/normal",
        "out-of-range",
        "must be at least -1000000 N/mm and at most 1000000 N/mm",
    ),
    (
        FILLET,
        changed(EN, size_step="0 mm"),
        "#/size_step",
        "out-of-range",
        "must be at least 0.01 mm and at most 25.4 mm",
    ),
    (
        GRIND,
        changed(CLOSED, seam__kind="lap"),
        "#/seam/kind",
        "unknown-choice",
        'must be one of "butt", "edge", "closed-corner", "half-open-corner", "open-corner", "fillet"',
    ),
    (
        GRIND,
        changed(CLOSED, seam__kind=1),
        "#/seam/kind",
        "unknown-choice",
        'must be one of "butt", "edge", "closed-corner", "half-open-corner", "open-corner", "fillet"',
    ),
    (GRIND, changed(CLOSED, seam="butt"), "#/seam", "wrong-type", "must be an object"),
    (GRIND, changed(CLOSED, seam=None), "#/seam", "null", "is null; leave the field out instead"),
    (
        GRIND,
        changed(CLOSED, seam__thickness=["8 mm"]),
        "#/seam/thickness",
        "wrong-count",
        "must have two entries, part 1 first; it has 1",
    ),
    (
        GRIND,
        changed(CLOSED, seam__thickness=["8 mm", 8]),
        "#/seam/thickness/1",
        "missing-unit",
        'has no unit; send text such as "8 mm"',
    ),
    (
        GRIND,
        changed(CLOSED, finish__to="polished"),
        "#/finish/to",
        "unknown-choice",
        'must be one of "as-welded", "flush", "flat", "radius"',
    ),
    (
        GRIND,
        changed(CLOSED, penetration__vouched="sure"),
        "#/penetration/vouched",
        "unknown-choice",
        'must be one of "assumed", "measured", "proven"',
    ),
    (
        GRIND,
        changed(OPEN, seam__angle="20 deg"),
        "#/seam/angle",
        "out-of-range",
        "must be at least 30 deg and at most 150 deg",
    ),
    (
        GRIND,
        changed(OPEN, seam__thickness__0="1/512 in"),
        "#/seam/thickness/0",
        "out-of-range",
        "must be at least 0.003937 in and at most 11.81 in",
    ),
    (
        BEVEL,
        changed(TO_BEVEL, seam={"kind": "open-corner", "thickness": ["8 mm", "6 mm"]}),
        "#/seam/kind",
        "unknown-choice",
        'must be one of "butt", "edge", "closed-corner"',
    ),
    (
        BEVEL,
        changed(TO_BEVEL, groove="double-v"),
        "#/groove",
        "unknown-choice",
        'must be one of "single-bevel", "single-v", "single-j", "single-u"',
    ),
    (BEVEL, changed(TO_BEVEL, bevelled="1"), "#/bevelled", "unknown-choice", 'must be one of 1, 2, "both"'),
    (
        BEVEL,
        changed(TO_BEVEL, groove_angle="121 deg"),
        "#/groove_angle",
        "out-of-range",
        "must be at least 5 deg and at most 120 deg",
    ),
]


@pytest.mark.parametrize(
    ("path", "request_", "pointer", "code", "message"), TYPES, ids=[f"{case[2]} {case[3]}" for case in TYPES]
)
def test_a_wrong_type_count_or_choice_is_refused(
    service: Exchange, path: str, request_: Any, pointer: str, code: str, message: str
) -> None:
    """A value of another type, a list of another length, a word of no list: each says what would be right."""
    assert service.faults(path, request_) == [(pointer, code, message)]


@pytest.mark.parametrize(
    ("field", "value", "near"),
    [
        ("parts__0__material", "S356", "S355"),
        ("parts__0__material", "s355", "S355"),
        ("filler", "E7019", "E7018"),
        ("process", "GMAV", "GMAW"),
        ("position", "1H", "1G"),
    ],
)
def test_a_word_of_a_long_list_is_refused_with_the_nearest(
    service: Exchange, field: str, value: str, near: str
) -> None:
    """A material, filler, process or position there is none of is told the nearest there are, and how many more."""
    [(pointer, code, message)] = service.faults(FILLET, changed(EN, **{field: value}))
    assert (pointer, code) == ("#/" + field.replace("__", "/"), "unknown-choice")
    assert message.startswith("must be one of ")
    assert f'"{near}"' in message
    assert message.endswith(" more")


def test_a_word_unlike_any_of_a_long_list_is_told_some(service: Exchange) -> None:
    """A material like none in the list still gets a few names to go by."""
    [(_, code, message)] = service.faults(FILLET, changed(EN, parts__0__material="\u00e9\u00e9\u00e9\u00e9\u00e9"))
    assert code == "unknown-choice"
    assert message.count('"') == 6


def test_faults_of_form_are_told_all_at_once(service: Exchange) -> None:
    """Faults of every kind in one request come in one answer, its detail counting them and telling the first."""
    request = changed(
        EN, parts__0__thickness=12, joint__sides=True, load__force="5 mm", extra=1, basis=LEFT_OUT, units=None
    )
    response = service.post(FILLET, request)
    assert response.status_code == 422
    found = {(fault["pointer"], fault["code"]) for fault in response.json["errors"]}
    assert found == {
        ("#/parts/0/thickness", "missing-unit"),
        ("#/joint/sides", "unknown-choice"),
        ("#/load/force", "unknown-unit"),
        ("#/extra", "unknown-field"),
        ("#/basis", "missing"),
        ("#/units", "null"),
    }
    first = response.json["errors"][0]
    assert response.json["detail"] == f"6 faults; the first: {first['pointer']}: {first['detail']}"


def test_pointers_escape_what_pointers_reserve(service: Exchange) -> None:
    """A slash and a tilde in a field's name are written as RFC 6901 section 3 has them."""
    [(pointer, code, _)] = service.faults(GRIND, {**CLOSED, "a/b~c": 1})
    assert (pointer, code) == ("#/a~1b~0c", "unknown-field")


@pytest.mark.parametrize(
    ("path", "request_"), [(FILLET, EN), (FILLET, AISC), (FILLET, THIN), (GRIND, CLOSED), (BEVEL, TO_BEVEL)]
)
def test_the_sound_requests_are_sound(service: Exchange, path: str, request_: Any) -> None:
    """The requests that these tests spoil are answered when they are not."""
    assert service.answer(path, request_)["verdict"]


@pytest.mark.parametrize(("field", "value"), [("joint__sides", 2.0), ("edge_of", 1.0)])
def test_a_whole_number_may_have_a_point(service: Exchange, field: str, value: float) -> None:
    """JSON has one kind of number: 2.0 is 2."""
    whole = service.answer(FILLET, changed(AISC, **{field: int(value)}))
    assert service.answer(FILLET, changed(AISC, **{field: value})) == whole
