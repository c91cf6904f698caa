"""The OpenAPI document: what the code says."""

from functools import cache
from http import HTTPStatus

from .. import API_VERSION
from .components import Components, Json, camel
from .problems import PROBLEM, Problem
from .resources import CALCULATIONS, READINGS, TAGS, Calculation, Reading

_DESCRIPTION = (
    "Sizes welds by their throat. Every answer is an estimate for planning, to be confirmed by the governing local"
    " code, the welding procedure and a licensed engineer or certified inspector."
)
_REFUSALS = (400, 401, 406, 413, 415, 422)
"""How a calculation can be refused."""


@cache
def document() -> Json:
    """Document of the service."""
    components = Components()
    paths = {f"/v1/{entry.capability.path}": {"post": _asked(entry, components)} for entry in CALCULATIONS}
    for reading in READINGS:
        paths[reading.path.replace("<string:slug>", "{slug}")] = _read(reading, components)
    problem = {PROBLEM: {"schema": components.record(Problem)}}
    refusals = sorted({*_REFUSALS, *(status for reading in READINGS for status in reading.refusals)})
    return {
        "openapi": "3.1.0",
        "info": {
            "title": "truethroat",
            "version": API_VERSION,
            "description": _DESCRIPTION,
            "license": {"name": "Apache-2.0", "identifier": "Apache-2.0"},
        },
        "tags": [{"name": name, "description": said} for name, said in TAGS.items()],
        "paths": paths,
        "components": {
            "schemas": components.schemas,
            "responses": {
                HTTPStatus(status).name: {"description": HTTPStatus(status).phrase, "content": problem}
                for status in refusals
            },
            "securitySchemes": {
                "bearer": {"type": "http", "scheme": "bearer"},
                "key": {"type": "apiKey", "in": "header", "name": "X-API-Key"},
            },
        },
    }


def _asked(calculation: Calculation, components: Components) -> Json:
    """Operation of a calculation."""
    capability = calculation.capability
    body = {
        "schema": {"$ref": components.request(calculation.schema)},
        "examples": dict(capability.examples),
    }
    return {
        "operationId": capability.operation,
        "tags": [capability.path],
        "summary": capability.meaning,
        "description": "A calculation: it stores nothing and may be repeated.",
        "requestBody": {"required": True, "content": {"application/json": body}},
        "responses": {
            "200": _answered(200, components.answer(camel(capability.operation) + "Answer", capability.answer)),
            **_refused(_REFUSALS),
        },
    }


def _read(reading: Reading, components: Components) -> Json:
    """Path of a resource that is read."""
    answer = components.record(reading.answer)
    operation: Json = {
        "operationId": reading.operation,
        "tags": [reading.tag],
        "summary": reading.summary,
        "responses": {str(status): _answered(status, answer) for status in reading.statuses}
        | _refused(reading.refusals),
    }
    if "<" not in reading.path:
        return {"get": operation}
    slug = {"in": "path", "name": "slug", "required": True, "schema": {"minLength": 1, "type": "string"}}
    return {"get": operation, "parameters": [slug]}


def _answered(status: int, schema: Json) -> Json:
    return {"description": HTTPStatus(status).phrase, "content": {"application/json": {"schema": schema}}}


def _refused(statuses: tuple[int, ...]) -> Json:
    return {str(status): {"$ref": f"#/components/responses/{HTTPStatus(status).name}"} for status in statuses}
