"""The OpenAPI document: committed as the code says, sound in itself, and kept to by the service."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from copy import deepcopy
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import jsonschema_rs
import pytest
import schemathesis
from tests.api.exchange import Exchange, document, paths, published, request_content, request_validator
from tests.api.sound import (
    ANGLE_ON_GUSSET,
    BEVEL,
    BRACKET,
    BREAK,
    BUTT,
    CLOSED,
    CONCENTRIC,
    CORNER_COUPON,
    COUPON,
    DISTORTION,
    EN,
    EN_GROOVE,
    ESTIMATE,
    FILLET,
    FILLET_SEAM,
    FLANGE,
    GAUGED,
    GRIND,
    GROOVE,
    GROOVED,
    GROUP,
    HALF_OPEN,
    HEAT,
    HEATED,
    LAPPED,
    LEFT_OUT,
    ON_FLANGE,
    OPEN,
    OUTSIDE,
    PLAN,
    PLUGS,
    PRICED,
    RIBS,
    SIX,
    STIFFENER,
    STITCHED,
    THROUGH,
    TO_BEVEL,
    TO_GROOVE,
    V_SHAPE,
    changed,
)

from truethroat_service.api import openapi_document
from truethroat_service.api.components import Components
from truethroat_service.application.core import remarks
from truethroat_service.application.core.answers import Provenance

Json = dict[str, Any]
COMMITTED = Path(__file__).parents[2] / "openapi" / "openapi.json"
SCHEMAS: Json = document()["components"]["schemas"]
OPERATIONS = [
    (method, path, operation)
    for path, methods in document()["paths"].items()
    for method, operation in methods.items()
    if method in ("get", "post")
]
CALCULATIONS = paths("post")


def _nodes(node: Any, where: str = "#") -> Iterator[tuple[str, Json]]:
    """Find every object in a document, with its place."""
    if isinstance(node, dict):
        yield where, node
        for key, value in node.items():
            yield from _nodes(value, f"{where}/{key}")
    elif isinstance(node, list):
        for index, value in enumerate(node):
            yield from _nodes(value, f"{where}/{index}")


def _at(reference: str) -> Any:
    """Follow a reference."""
    found: Any = document()
    for step in reference.removeprefix("#/").split("/"):
        found = found[step]
    return found


def test_the_committed_document_is_what_the_code_says() -> None:
    """The file in the repository is the document of the code, byte for byte."""
    assert COMMITTED.read_text(encoding="utf-8") == openapi_document.dump()


def test_the_service_serves_its_document(service: Exchange) -> None:
    """What /openapi.json answers is the document."""
    response = service.get("/openapi.json")
    assert response.mimetype == "application/json"
    assert response.json == json.loads(COMMITTED.read_text(encoding="utf-8"))


def test_writing_and_checking_the_file(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """The command writes the file; its check passes on that, and fails, changing nothing, on another or on none."""
    file = tmp_path / "openapi.json"
    assert openapi_document.main(["--check", str(file)]) == 1
    assert not file.exists()
    assert openapi_document.main([str(file)]) == 0
    assert file.read_text(encoding="utf-8") == COMMITTED.read_text(encoding="utf-8")
    assert openapi_document.main(["--check", str(file)]) == 0
    assert capsys.readouterr().err.count("differs from what the code says") == 1
    file.write_text("{}", encoding="utf-8")
    assert openapi_document.main(["--check", str(file)]) == 1
    assert file.read_text(encoding="utf-8") == "{}"


def test_the_document_is_openapi_3_1() -> None:
    """The document satisfies the schema of OpenAPI 3.1 that schemathesis carries."""
    assert document()["openapi"].startswith("3.1.")
    schemathesis.openapi.from_dict(deepcopy(document())).validate()


@pytest.mark.parametrize("name", SCHEMAS)
def test_every_component_is_a_json_schema(name: str) -> None:
    """Each component is a valid schema of draft 2020-12, which OpenAPI 3.1 uses."""
    jsonschema_rs.meta.validate({"$schema": "https://json-schema.org/draft/2020-12/schema", **SCHEMAS[name]})


def test_every_reference_resolves() -> None:
    """Whatever is referred to is there, discriminators' targets too."""
    references = [node["$ref"] for _, node in _nodes(document()) if isinstance(node.get("$ref"), str)]
    references += [
        target for _, node in _nodes(document()) for target in node.get("discriminator", {}).get("mapping", {}).values()
    ]
    assert references
    for reference in references:
        assert isinstance(_at(reference), dict), reference


def test_every_component_is_used() -> None:
    """No component is left over."""
    used = {node["$ref"].rpartition("/")[2] for _, node in _nodes(document()) if isinstance(node.get("$ref"), str)}
    assert set(SCHEMAS) <= used


def test_operations_are_named_for_the_client() -> None:
    """Each operation has an id of its own in snake case, a summary, and a description of what each status means."""
    ids = [operation["operationId"] for _, _, operation in OPERATIONS]
    assert len(set(ids)) == len(ids)
    for _, _, operation in OPERATIONS:
        assert re.fullmatch(r"[a-z]+(_[a-z]+)*", operation["operationId"])
        assert operation["summary"]
        assert all(_resolve(answer)["description"] for answer in operation["responses"].values())


def _resolve(node: Json) -> Json:
    """Give a node or what it refers to."""
    return _at(node["$ref"]) if "$ref" in node else node


@pytest.mark.parametrize(("method", "path", "operation"), OPERATIONS, ids=[path for _, path, _ in OPERATIONS])
def test_refusals_are_documented_as_problems(method: str, path: str, operation: Json) -> None:
    """Every refusal an operation names is a problem document; a calculation names all it can meet."""
    refusals = {status: _resolve(answer) for status, answer in operation["responses"].items() if status[0] == "4"}
    for answer in refusals.values():
        assert answer["content"] == {"application/problem+json": {"schema": {"$ref": "#/components/schemas/Problem"}}}
    if method == "post":
        assert set(refusals) == {"400", "401", "406", "413", "415", "422"}
    elif path.startswith("/v1"):
        assert set(refusals) == {"401", "406"}


def _request_components() -> set[str]:
    """Name the components that requests are made of."""
    found: set[str] = set()

    def visit(node: Any) -> None:
        for _, inner in _nodes(node):
            name = str(inner.get("$ref", "")).rpartition("/")[2]
            if name and name not in found:
                found.add(name)
                visit(SCHEMAS[name])

    for path in CALCULATIONS:
        visit(request_content(path)["schema"])
    return found


def test_requests_are_closed_and_refuse_null() -> None:
    """Every object of a request forbids fields it does not name, and nothing in a request may be null."""
    components = _request_components()
    assert {"FilletSizeRequest", "GrindAllowanceRequest", "BevelDepthRequest", "Length", "Filler"} <= components
    for name in components:
        for where, node in _nodes(SCHEMAS[name], name):
            if node.get("type") == "object":
                assert node["additionalProperties"] is False, where
            assert node.get("type") != "null", where
            assert None not in node.get("enum", []), where


def test_quantities_have_a_format_and_closed_units() -> None:
    """A quantity is a text with a pattern and a format, or a closed object of a number and a unit of a list."""
    names = [name for name in _request_components() if "anyOf" in SCHEMAS[name]]
    assert {"Length", "Force", "Stress", "Angle", "Temperature", "HandForce"} <= set(names)
    for name in names:
        text, closed = SCHEMAS[name]["anyOf"]
        assert text["type"] == "string"
        assert text["format"].replace("-", "") == name.lower()
        assert re.compile(text["pattern"])
        assert closed["properties"]["unit"]["enum"]
        assert closed["required"] == ["value", "unit"]


def test_every_example_of_a_schema_is_one() -> None:
    """Examples inside schemas satisfy the schemas they stand in."""
    count = 0
    for name in SCHEMAS:
        for where, node in _nodes(SCHEMAS[name], name):
            for example in node.get("examples", []):
                jsonschema_rs.Draft202012Validator({**node, "components": document()["components"]}).validate(example)
                count += 1
                assert where
    assert count >= 10


EXAMPLES = [pytest.param(path, example, id=f"{path} {name}") for path, name, example in published()]


@pytest.mark.parametrize(("path", "example"), EXAMPLES)
def test_every_example_of_a_request_is_answered(service: Exchange, path: str, example: Json) -> None:
    """What the document shows works as shown."""
    request_validator(path).validate(example)
    assert service.answer(path, example)["verdict"]


def test_every_calculation_shows_examples() -> None:
    """Each calculation has at least two examples, with a summary each."""
    for path in CALCULATIONS:
        examples = request_content(path)["examples"]
        assert len(examples) >= 2
        assert all(example["summary"] for example in examples.values())


_PLATE: Json = {"thickness": "20 mm"}


_CAP: Json = {"face": {"height": "2 mm", "width": "9 mm"}}


BY_SHAPE: list[Json] = [
    {"shape": shape, "length": "1 m"}
    for shape in (
        V_SHAPE,
        {"kind": "square", **_PLATE, "depth": "8 mm", "reinforcement": _CAP},
        *({"kind": f"single-{form}", **_PLATE, "angle": "30 deg", "depth": "9 mm"} for form in ("v", "bevel")),
        *({"kind": f"double-{form}", **_PLATE, "angle": "30 deg", "land": "1 mm"} for form in ("v", "bevel")),
        *(
            {"kind": f"{side}-{form}", **_PLATE, "angle": "20 deg", "root_radius": "6 mm"}
            for side in ("single", "double")
            for form in ("j", "u")
        ),
        {"kind": "flare-bevel", "radius": "8 mm"},
        {"kind": "flare-v", "radius": "8 mm"},
        {"kind": "open-corner", "thickness": ["8 mm", "6 mm"]},
        {"kind": "half-open-corner", "thickness": ["8 mm", "6 mm"], "overlap": "3 mm"},
    )
]


BY_STRENGTH: Json = {"tensile_strength": "500 MPa"}

# With the published examples these hold, between them, every object a request may hold.
HOLDING: list[tuple[str, Json]] = [
    *((path, example) for path, _, example in published()),
    (FILLET, changed(EN, penetration={"depth": "1 mm", "vouched": "proven"}, parameters={"gamma_m2": 1.3})),
    (FILLET, changed(EN, load={"normal": "100 N/mm"})),
    (FILLET, changed(EN, load={"longitudinal": "100 N/mm"})),
    (FILLET, CONCENTRIC),
    (FILLET, changed(ANGLE_ON_GUSSET, tension_member={"area": "2 in2"})),
    (FILLET, STITCHED),
    (FILLET, ON_FLANGE),
    *(
        (GRIND, changed(request, finish=finish))
        for request, finishes in (
            (CLOSED, ("as-welded", "flush", "radius")),
            (HALF_OPEN, ("flush", "flat", "radius")),
            (OPEN, ("flush", "flat", "radius")),
            (FILLET_SEAM, ("as-welded", "flat")),
            (BUTT, ("as-welded", "flush")),
            (changed(BUTT, preparation={"groove_angle": "50 deg"}, seam__kind="edge"), ("flush",)),
        )
        for finish in ({"to": to} | ({"radius": "3 mm"} if to == "radius" else {}) for to in finishes)
    ),
    (GRIND, TO_BEVEL),
    (BEVEL, changed(TO_BEVEL, seam__kind="butt", penetration={"depth": "1 mm", "vouched": "proven"})),
    (BEVEL, changed(TO_BEVEL, seam__kind="edge", finish={"to": "flush"})),
    (GAUGED, changed(SIX, extent={"of_weld": "300 mm", "throat": "20 mm"})),
    (GAUGED, changed(THROUGH, quality="aws-d1-1-2020", flush={}, face_width=LEFT_OUT)),
    (GROOVE, changed(TO_GROOVE, weld__penetration={"depth": "1 mm", "vouched": "proven"})),
    (GROOVE, changed(TO_GROOVE, load={"normal": "100 N/mm"})),
    (GROOVE, changed(TO_GROOVE, load={"longitudinal": "100 N/mm"})),
    *(
        (GROOVE, changed(TO_GROOVE, weld={"kind": kind, "radius": "20 mm"}, position=LEFT_OUT))
        for kind in ("flare-bevel", "flare-v")
    ),
    (
        GROOVE,
        changed(
            EN_GROOVE,
            joint__kind="tee",
            weld={"kind": "tee-butt", "throats": ["6 mm", "6 mm"], "unwelded": "2 mm"},
            process=LEFT_OUT,
        ),
    ),
    (GROOVE, changed(PLUGS, weld={"kind": "slot", "width": "25 mm", "length": "60 mm"})),
    (GROOVE, changed(PLUGS, weld={"kind": "fillet-in-slot", "width": "50 mm", "length": "90 mm", "leg": "6 mm"})),
    (HEAT, changed(HEATED, arc={"arc_energy": "1 kJ/mm"}, composition=LEFT_OUT, carbon_equivalents={"cet": 0.3})),
    (HEAT, changed(HEATED, arc={"heat_input": "1 kJ/mm"})),
    (ESTIMATE, PRICED),
    (ESTIMATE, {"welds": [{**RIBS, "shape": {"kind": "fillet", "throat": "4 mm", "hollow": "1 mm"}}, *BY_SHAPE]}),
    (
        ESTIMATE,
        {
            "welds": [
                {
                    "shape": {"kind": "area", "area": "30 mm2"},
                    "length": "1 m",
                    "process": "SMAW",
                    "efficiency": 0.7,
                    "electrode": {"length": "350 mm", "stub": "50 mm"},
                    "deposition": {"rate": "2 kg/h"},
                    "arc": {"voltage": "25 V", "current": "180 A"},
                    "bead": {"area": "15 mm2"},
                },
                {
                    "shape": {"kind": "area", "area": "30 mm2"},
                    "length": "1 m",
                    "efficiency": 0.9,
                    "deposition": {"wire_mass": "0.009 kg/m", "feed_speed": "8 m/min"},
                    "gas_flow": "15 L/min",
                    "density": "7850 kg/m3",
                    "bead": {"travel_speed": "300 mm/min"},
                },
                {**RIBS, "deposition": {"wire_diameter": "1.2 mm", "feed_speed": "9 m/min"}},
            ]
        },
    ),
    (GROUP, changed(BRACKET, load={"force": {"x": "9 kN"}, "at": {"y": "80 mm"}, "moment": {"z": "1 kN*m"}})),
    (GROUP, changed(BRACKET, load={"force": {"z": "9 kN"}, "at": {"z": "80 mm"}, "moment": {"x": "1 kN*m"}})),
    (DISTORTION, changed(FLANGE, iso_13920={"linear_class": "C", "across": "300 mm"}, calibration={"angular": 0.8})),
    (DISTORTION, changed(FLANGE, joint={"kind": "tee", "thickness": "12 mm", "leg": "6 mm", "runs": 2})),
    (DISTORTION, changed(FLANGE, calibration={})),
    (DISTORTION, LAPPED),
    (DISTORTION, changed(GROOVED, joint__restraint={"span": "500 mm", "coefficient": "20 kN"})),
    *(
        (DISTORTION, changed(GROOVED, joint={"kind": "butt", "thickness": "12 mm", "weld": weld}))
        for weld in (
            {"groove": "square", "root_opening": "2 mm"},
            {"groove": "single-v"},
            {"groove": "single-bevel"},
            {"groove": "double-v"},
            {"groove": "double-bevel"},
            {"groove": "by-area", "area": "80 mm2"},
        )
    ),
    (
        PLAN,
        changed(
            STIFFENER,
            penetration={"depth": "1 mm", "vouched": "measured"},
            intermittent={"loading": "tension", "widths": ["200 mm", "100 mm"]},
            held_from_turning=True,
            efficiency=0.95,
            gas_flow="15 L/min",
            preheat="100 degC",
            tolerances={"legs": "0.5 mm"},
            spread={"distribution": "normal"},
            arc={"voltage": "28 V", "current": "250 A", "travel_speed": "350 mm/min"},
            cooling_window={"least": "5 s", "most": "20 s"},
            composition={"C": 0.16, "Mn": 1.4},
            hydrogen="5 ml/100g",
            deposition={"rate": "3 kg/h"},
            bevelling_speed="300 mm/min",
            prices={"currency": "EUR", "labour": {"amount": 60, "per": "h"}},
            weights={"filler": 2},
            filler={"tensile_strength": "500 MPa"},
            parameters={"gamma_m2": 1.3},
        ),
    ),
    (PLAN, changed(OUTSIDE, spread={}, weights={"time": 2})),
    *(
        (PLAN, changed(OUTSIDE, finish=finish))
        for finish in ({"to": "as-welded"}, {"to": "flat"}, {"to": "radius", "radius": "4 mm"})
    ),
    *((PLAN, changed(STIFFENER, arc=arc)) for arc in ({"arc_energy": "1 kJ/mm"}, {"heat_input": "1 kJ/mm"})),
    (PLAN, changed(STIFFENER, deposition={"wire_diameter": "1.2 mm", "feed_speed": "8 m/min"}, filler=BY_STRENGTH)),
    (PLAN, changed(STIFFENER, deposition={"wire_mass": "0.009 kg/m", "feed_speed": "8 m/min"})),
    (BREAK, changed(CORNER_COUPON, preparation={}, notch={})),
    (BREAK, changed(CORNER_COUPON, seam={"kind": "open-corner", "thickness": ["6 mm", "8 mm"]})),
    (
        BREAK,
        changed(
            CORNER_COUPON,
            seam={"kind": "half-open-corner", "thickness": ["6 mm", "8 mm"], "overlap": "2 mm"},
            finish={"to": "radius", "radius": "2 mm"},
        ),
    ),
    (BREAK, changed(COUPON, rules="aws-d1-1-2010", outcome={"ended": "broken", "fused_to_root": True})),
    (BREAK, changed(COUPON, rules="aws-d1-1-2010", outcome={"ended": "folded-flat"}, plates={"material": "S355"})),
]


def _defaults(
    schema: Json, instance: Any, path: tuple[str | int, ...] = ()
) -> Iterator[tuple[str, tuple[Any, ...], Any]]:
    """Find the documented default of every field that an instance of a schema leaves out: owner, path and default."""
    if "$ref" in schema:
        yield from _defaults_of(schema["$ref"].rpartition("/")[2], instance, path)
    for choice in schema.get("oneOf", []):
        if jsonschema_rs.Draft202012Validator({**choice, "components": document()["components"]}).is_valid(instance):
            yield from _defaults(choice, instance, path)
    if schema.get("type") == "array":
        for index, entry in enumerate(instance):
            yield from _defaults(schema["items"], entry, (*path, index))


def _defaults_of(name: str, instance: Any, path: tuple[Any, ...]) -> Iterator[tuple[str, tuple[Any, ...], Any]]:
    """Find the defaults in an instance of a component."""
    if not isinstance(instance, dict) or "properties" not in SCHEMAS[name]:
        yield from _defaults({"oneOf": SCHEMAS[name].get("oneOf", [])}, instance, path)
        return
    for field, schema in SCHEMAS[name]["properties"].items():
        if field in instance:
            yield from _defaults(schema, instance[field], (*path, field))
        elif "default" in schema:
            yield f"{name}.{field}", (*path, field), schema["default"]


def _documented_defaults() -> set[str]:
    """Name every default that the requests' components document."""
    return {
        f"{name}.{field}"
        for name in _request_components()
        for field, schema in SCHEMAS[name].get("properties", {}).items()
        if "default" in schema
    }


def _set(request: Json, path: tuple[Any, ...], value: Any) -> Json:
    """Give a copy of a request with a field set."""
    made = deepcopy(request)
    inner: Any = made
    for step in path[:-1]:
        inner = inner[step]
    inner[path[-1]] = value
    return made


def _left_out() -> Iterator[Any]:
    """Find every default that one of the requests leaves out."""
    seen = set()
    for path, request in [*HOLDING, *(example.values for example in EXAMPLES)]:
        for owner, where, default in _defaults(request_content(path)["schema"], request):
            if (owner, path) not in seen:
                seen.add((owner, path))
                yield pytest.param(path, request, owner, where, default, id=f"{path} {owner}")


LEFT_OUT_DEFAULTS = list(_left_out())


def test_the_requests_reach_every_default() -> None:
    """The requests above and the published examples leave out each documented default somewhere."""
    assert {param.values[2] for param in LEFT_OUT_DEFAULTS} == _documented_defaults()


@pytest.mark.parametrize(("path", "request_", "owner", "where", "default"), LEFT_OUT_DEFAULTS)
def test_every_default_is_what_leaving_out_means(
    service: Exchange, path: str, request_: Json, owner: str, where: tuple[Any, ...], default: Any
) -> None:
    """A documented default satisfies its own schema, and sending it changes nothing, the fingerprint included."""
    name, _, field = owner.partition(".")
    schema = {**SCHEMAS[name]["properties"][field], "components": document()["components"]}
    jsonschema_rs.Draft202012Validator(schema).validate(default)
    assert service.answer(path, _set(request_, where, default)) == service.answer(path, request_)


ODD: list[Any] = [
    None, True, 0, 1, 2, 7.5, -1, "", "x", "6", "6 mm", "1/4 in", "30 deg", "2 kN", "6 furlong", "1e99 mm", [], {},
    ["6 mm", "6 mm"], {"value": 6, "unit": "mm"}, {"value": 6}, {"kind": "butt"}, {"to": "flush"},
]  # fmt: skip


def _places(node: Any, path: tuple[Any, ...] = ()) -> Iterator[tuple[Any, ...]]:
    """Find the path of everything in a request, and in each object of a field that is not there."""
    entries = node.items() if isinstance(node, dict) else enumerate(node) if isinstance(node, list) else ()
    for key, value in entries:
        yield (*path, key)
        yield from _places(value, (*path, key))
    if isinstance(node, dict):
        yield (*path, "nothing-of-the-kind")


@pytest.mark.parametrize(("path", "request_"), HOLDING)
def test_document_and_service_agree_on_every_field(service: Exchange, path: str, request_: Json) -> None:
    """Whatever stands in a field, the service refuses its form if, and only if, the document forbids it."""
    for where in _places(request_):
        for odd in ODD:
            # The exchange compares the service with the document.
            assert service.post(path, _set(request_, where, odd)).status_code in (200, 422), (where, odd)


def test_two_components_cannot_share_a_name() -> None:
    """Documenting another shape under a name that is taken stops the start."""

    @dataclass
    class Caution:
        """Another shape of the same name."""

    components = Components()
    assert components.record(Provenance) == {"$ref": "#/components/schemas/Provenance"}
    components.record(remarks.Caution)
    with pytest.raises(ValueError, match="two components are called Caution"):
        components.record(Caution)
