"""Exchanges with the service in which every answer is held against the document as it comes back."""

from __future__ import annotations

import re
from copy import deepcopy
from functools import cache
from typing import Any

import jsonschema_rs
from flask import Flask
from werkzeug.test import TestResponse

from truethroat_service.api.document import document as document_of

PROBLEM = "application/problem+json"
Json = dict[str, Any]


@cache
def document() -> Json:
    """Give the document of the service as it is built."""
    return document_of()


def paths(method: str) -> list[str]:
    """List the paths of a version that take a method, as the document names them."""
    return [path for path, methods in document()["paths"].items() if method in methods and path.startswith("/v1")]


def request_content(path: str) -> Json:
    """Give what the document says of a calculation's request: its schema and examples."""
    content: Json = document()["paths"][path]["post"]["requestBody"]["content"]["application/json"]
    return content


def published() -> list[tuple[str, str, Json]]:
    """List every published example of a request: the path it goes to, its name and its body."""
    return [
        (path, name, example["value"])
        for path in paths("post")
        for name, example in request_content(path)["examples"].items()
    ]


def _closed(schema: Any, inside: bool = True) -> Any:
    """Give an answer's schema without its openness, so that a field the document does not name is a fault."""
    if isinstance(schema, list):
        return [_closed(entry) for entry in schema]
    if not isinstance(schema, dict):
        return schema
    made = {key: value if key in ("enum", "const", "required") else _closed(value) for key, value in schema.items()}
    if isinstance(schema.get("properties"), dict) and schema.get("type") == "object":
        made.setdefault("additionalProperties", False)
    return made


FIT = {"inconsistent", "out-of-scope"}
"""Codes of faults that the document does not tell: what is sound alone and does not fit together."""


@cache
def request_validator(path: str) -> jsonschema_rs.Draft202012Validator:
    """Build the validator of a calculation's request, as the document publishes it."""
    return jsonschema_rs.Draft202012Validator(
        {**request_content(path)["schema"], "components": document()["components"]}
    )


def hold_request_against_document(path: str, body: Any, response: TestResponse) -> None:
    """Check that the document allows what the service takes, and that it forbids what is refused for its form."""
    allowed = request_validator(path).is_valid(body)
    codes = {fault["code"] for fault in response.json.get("errors", [])}
    if response.status_code == 200 or (codes and codes <= FIT):
        assert allowed, f"the document forbids what {path} takes: {body}"
    elif codes - FIT - {"out-of-range"}:
        assert not allowed, f"the document allows what {path} refuses as {codes}: {body}"


@cache
def _validator(reference: str) -> jsonschema_rs.Draft202012Validator:
    """Build the validator of a component, every object in it closed."""
    components = {"schemas": _closed(deepcopy(document()["components"]["schemas"]))}
    return jsonschema_rs.Draft202012Validator({"$ref": reference, "components": components})


def _operation(method: str, path: str) -> Json | None:
    """Find the documented operation of a method and a path, or None."""
    for template, methods in document()["paths"].items():
        if re.fullmatch(re.sub(r"\{[^}]+\}", "[^/]+", template), path):
            found: Json | None = methods.get({"HEAD": "get"}.get(method, method.lower()))
            return found
    return None


def _resolved(node: Json) -> Json:
    """Follow a reference into the document."""
    if "$ref" not in node:
        return node
    found: Any = document()
    for step in node["$ref"].removeprefix("#/").split("/"):
        found = found[step]
    return _resolved(found)


def hold_against_document(method: str, path: str, response: TestResponse) -> None:
    """Check that an answer has the form its operation promises, and a refusal the form of a problem."""
    assert re.fullmatch(r"[A-Za-z0-9._-]{1,64}", response.headers["X-Request-Id"])
    operation = _operation(method, path)
    if response.status_code >= 400 and response.mimetype == PROBLEM:
        _validator("#/components/schemas/Problem").validate(response.json)
        assert response.json["status"] == response.status_code
        assert response.json["request_id"] == response.headers["X-Request-Id"]
        assert response.json["instance"] == path
    if operation is None or response.status_code == 500:
        assert response.mimetype == PROBLEM or path == "/openapi.json" or method == "OPTIONS"
        return
    if response.status_code in (304, 405) or method == "HEAD":
        return
    promised = _resolved(operation["responses"][str(response.status_code)])
    assert response.mimetype in promised["content"], f"{method} {path} answers {response.mimetype}"
    _validator(promised["content"][response.mimetype]["schema"]["$ref"]).validate(response.json)


class Exchange:
    """Caller of an app that checks each answer as it takes it."""

    def __init__(self, app: Flask) -> None:
        """Keep a client of the app."""
        self._client = app.test_client()

    def send(self, method: str, path: str, **how: Any) -> TestResponse:
        """Send any request."""
        response = self._client.open(path, method=method, **how)
        hold_against_document(method, path, response)
        return response

    def get(self, path: str, **how: Any) -> TestResponse:
        """Send a GET."""
        return self.send("GET", path, **how)

    def post(self, path: str, body: Any, **how: Any) -> TestResponse:
        """Send a body as JSON."""
        response = self.send("POST", path, json=body, **how)
        if response.status_code in (200, 422):
            hold_request_against_document(path, body, response)
        return response

    def answer(self, path: str, body: Any) -> Json:
        """Send a request that must be answered, and give the answer."""
        response = self.post(path, body)
        assert response.status_code == 200, response.get_data(as_text=True)
        content: Json = response.json
        return content

    def faults(self, path: str, body: Any) -> list[tuple[str, str, str]]:
        """Send a request that must be refused, and give each fault's pointer, code and message, in a fixed order."""
        response = self.post(path, body)
        assert response.status_code == 422, response.get_data(as_text=True)
        assert response.json["type"] == "/problems/invalid-request"
        return sorted((fault["pointer"], fault["code"], fault["detail"]) for fault in response.json["errors"])
