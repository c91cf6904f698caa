"""The client's classes and methods against the committed OpenAPI document, field by field."""

from __future__ import annotations

import dataclasses
import inspect
import typing
from types import NoneType
from typing import Any

import pytest
from tests.sdk.document import COMPONENTS, OPERATIONS, may_be_null, reached
from tests.sdk.recording_service import RecordingService

import truethroat
from truethroat import Client

#: The components that are classes of the client: all objects but an answer's quantities, which share one class.
CLASSES = [name for name in reached() if COMPONENTS[name].get("properties", {}).keys() - {"value", "unit", "text"}]


def test_every_operation_has_its_method(client: Client, service: RecordingService) -> None:
    """Each operation of the document is a method of the same name that goes to the operation's path."""
    assert len(OPERATIONS) >= 18
    for operation in OPERATIONS.values():
        getattr(client, operation.name)()
        received = service.received[-1]
        assert (received.method, received.path) == (operation.verb, operation.path), operation.name
        assert received.body == (b"{}" if operation.verb == "POST" else b"")


@pytest.mark.parametrize("operation", OPERATIONS.values(), ids=OPERATIONS)
def test_arguments_go_by_keyword(operation: Any) -> None:
    """No method takes an argument by position, and a calculation takes the fields of its request."""
    _, *parameters = inspect.signature(getattr(Client, operation.name)).parameters.values()
    kinds = {parameter.name: parameter.kind for parameter in parameters}
    request = {"request": inspect.Parameter.VAR_KEYWORD} if operation.request else {}
    assert kinds == {"timeout": inspect.Parameter.KEYWORD_ONLY, **request}


@pytest.mark.parametrize("operation", OPERATIONS.values(), ids=OPERATIONS)
def test_a_method_says_what_the_document_says(operation: Any) -> None:
    """A method's docstring begins with the operation's summary and names every field of its request."""
    text = inspect.getdoc(getattr(Client, operation.name)) or ""
    assert text.startswith(operation.summary)
    if operation.request:
        name = operation.request["$ref"].rpartition("/")[2]
        forms = [form["$ref"].rpartition("/")[2] for form in COMPONENTS[name].get("oneOf", [])] or [name]
        assert all(f"\n- {field}: " in text for form in forms for field in COMPONENTS[form]["properties"])


@pytest.mark.parametrize("name", CLASSES)
def test_a_class_has_the_fields_of_its_component(name: str) -> None:
    """A component's fields are its class's, required where the document requires them and null where it allows null."""
    kind, schema = getattr(truethroat, name), COMPONENTS[name]
    hints = typing.get_type_hints(kind, include_extras=True)
    required = {field for field in schema["properties"] if field in schema.get("required", ())}
    if dataclasses.is_dataclass(kind):
        fields = {field.name.rstrip("_"): field for field in dataclasses.fields(kind) if field.name != "raw"}
        assert {field for field in fields if fields[field].default is dataclasses.MISSING} == required
        nullable = {name.rstrip("_") for name, hint in hints.items() if NoneType in typing.get_args(hint)}
        allowed = {field for field, value in schema["properties"].items() if may_be_null(value)}
        assert nullable == allowed | (schema["properties"].keys() - required)
    else:
        fields = hints
        assert {field for field in hints if typing.get_origin(hints[field]) is not typing.NotRequired} == required
    assert fields.keys() == schema["properties"].keys()
