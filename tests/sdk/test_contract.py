"""The client against the committed OpenAPI document: the one thing client and service share."""

from __future__ import annotations

import inspect
import json
from pathlib import Path
from typing import Any

import pytest
from tests.sdk.recording_service import RecordingService

from truethroat import Client

DOCUMENT = Path(__file__).parents[2] / "openapi" / "openapi.json"


@pytest.fixture(scope="module")
def document() -> dict[str, Any]:
    """Read the document."""
    if not DOCUMENT.exists():
        pytest.skip(f"{DOCUMENT.name} is not written yet")
    content: dict[str, Any] = json.loads(DOCUMENT.read_text(encoding="utf-8"))
    return content


def operations(document: dict[str, Any]) -> dict[str, tuple[str, str, dict[str, Any]]]:
    """Give the versioned operations by id: method, path, description."""
    return {
        operation["operationId"]: (method.upper(), path, operation)
        for path, methods in document["paths"].items()
        for method, operation in methods.items()
        if method in ("get", "post") and (path == "/v1" or path.startswith("/v1/"))
    }


def properties(document: dict[str, Any], schema: dict[str, Any]) -> set[str]:
    """Name the properties that a schema, or any of the schemas it is put together from, may have."""
    while "$ref" in schema:
        found: Any = document
        for part in schema["$ref"].removeprefix("#/").split("/"):
            found = found[part]
        schema = found
    names = set(schema.get("properties", {}))
    for together in ("oneOf", "anyOf", "allOf"):
        for part in schema.get(together, []):
            names |= properties(document, part)
    return names


def test_every_operation_has_its_method(document: dict[str, Any], client: Client, service: RecordingService) -> None:
    """Each operation of the document is a method of the same name that goes to the operation's path."""
    found = operations(document)
    assert found
    for name, (method, path, _) in found.items():
        getattr(client, name)()
        assert (service.received[-1].method, service.received[-1].path) == (method, path), name


def test_every_field_has_its_argument(document: dict[str, Any]) -> None:
    """A calculation's arguments are the fields of its request, no more and no fewer."""
    for name, (method, _, operation) in operations(document).items():
        if method == "POST":
            schema = operation["requestBody"]["content"]["application/json"]["schema"]
            arguments = set(inspect.signature(getattr(Client, name)).parameters) - {"self", "timeout"}
            assert arguments == properties(document, schema), name
