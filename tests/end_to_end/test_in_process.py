"""The client against the real application in one process: nothing is lost between the two without a socket either."""

from __future__ import annotations

from collections.abc import Iterator
from importlib import import_module
from typing import Any

import pytest
from tests.sdk.wsgi_transport import WSGITransport

from truethroat import Answer, Calculation, Client, InvalidInput
from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings

EXAMPLES = [
    pytest.param(operation, example["value"], id=f"{operation}-{name}")
    for operation in (
        "fillet_size",
        "grind_allowance",
        "bevel_depth",
        "as_welded",
        "groove_size",
        "heat",
        "crack_risk",
        "distortion",
        "break_test",
        "joint_plan",
    )
    for name, example in import_module(f"truethroat_service.application.{operation}.examples").EXAMPLES.items()
]
LISTS = {
    "get_service": "/v1",
    "list_rule_sets": "/v1/rule-sets",
    "list_materials": "/v1/materials",
    "list_filler_metals": "/v1/filler-metals",
    "list_processes": "/v1/processes",
}


@pytest.fixture(scope="module")
def client() -> Iterator[Client]:
    """Join a client to the application."""
    with Client("http://shop.example", check_version=True) as client:
        client.session.mount("http://", WSGITransport(create_app(Settings())))
        yield client


@pytest.mark.parametrize(("operation", "request_"), EXAMPLES)
def test_every_published_example(client: Client, operation: str, request_: dict[str, Any]) -> None:
    """A published request goes through its operation's method; every field of the answer has a place of its own."""
    answer = getattr(client, operation)(**request_)
    assert isinstance(answer, Calculation)
    assert answer.verdict
    path = f"/v1/{operation.replace('_', '-')}"
    assert answer.to_dict() == client.call(path, request_)
    assert bool(answer.working) is bool(request_.get("working"))
    missing = answer.to_dict().keys() - set(answer.__dataclass_fields__)
    assert missing == set()


@pytest.mark.parametrize(("operation", "path"), LISTS.items())
def test_every_list(client: Client, operation: str, path: str) -> None:
    """Each list is read into its class, and keeps all that was sent."""
    answer = getattr(client, operation)()
    assert isinstance(answer, Answer)
    assert answer.to_dict() == client.call(path)


def test_a_refusal(client: Client) -> None:
    """A refusal arrives with its pointers."""
    with pytest.raises(InvalidInput) as caught:
        client.fillet_size()
    assert {fault.pointer for fault in caught.value.errors} == {"#/rule_set", "#/joint", "#/parts", "#/basis"}
    assert {fault.code for fault in caught.value.errors} == {"missing"}
