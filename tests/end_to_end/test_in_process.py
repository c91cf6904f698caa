"""The client against the real application in one process: nothing is lost between the two without a socket either."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from tests.api.exchange import document, paths, published
from tests.sdk.wsgi_transport import WSGITransport

from truethroat import Answer, Calculation, Client, InvalidInput
from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings

OPERATIONS: dict[str, str] = {
    path: operation["operationId"]
    for path, methods in document()["paths"].items()
    for operation in methods.values()
    if path.startswith("/v1")
}
EXAMPLES = [pytest.param(path, example, id=f"{path} {name}") for path, name, example in published()]


@pytest.fixture(scope="module")
def client() -> Iterator[Client]:
    """Join a client to the application."""
    with Client("http://shop.example", check_version=True) as client:
        client.session.mount("http://", WSGITransport(create_app(Settings())))
        yield client


@pytest.mark.parametrize(("path", "request_"), EXAMPLES)
def test_every_published_example(client: Client, path: str, request_: dict[str, Any]) -> None:
    """A published request goes through its operation's method; every field of the answer has a place of its own."""
    answer = getattr(client, OPERATIONS[path])(**request_)
    assert isinstance(answer, Calculation)
    assert answer.verdict
    assert answer.to_dict() == client.call(path, request_)
    assert bool(answer.working) is bool(request_.get("working"))
    missing = answer.to_dict().keys() - set(answer.__dataclass_fields__)
    assert missing == set()


@pytest.mark.parametrize("path", paths("get"))
def test_every_list(client: Client, path: str) -> None:
    """Each list is read into its class, and keeps all that was sent."""
    answer = getattr(client, OPERATIONS[path])()
    assert isinstance(answer, Answer)
    assert answer.to_dict() == client.call(path)


def test_a_refusal(client: Client) -> None:
    """A refusal arrives with its pointers."""
    with pytest.raises(InvalidInput) as caught:
        client.fillet_size()
    assert {fault.pointer for fault in caught.value.errors} == {"#/rule_set", "#/joint", "#/parts", "#/basis"}
    assert {fault.code for fault in caught.value.errors} == {"missing"}
