"""The client against the real application in one process: every operation, with every request that is published."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from tests.sdk.document import OPERATIONS, Operation, fields
from tests.sdk.guard import lost, notices
from tests.sdk.wsgi_transport import WSGITransport

from truethroat import Answer, Calculation, Client, InvalidInput
from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings

#: Every operation with each request that its document shows; a list takes none.
ASKED = [
    (operation, request_, f"{operation.name}-{name}")
    for operation in OPERATIONS.values()
    for name, request_ in (operation.examples or {"list": {}}).items()
]


@pytest.fixture(scope="module")
def client() -> Iterator[Client]:
    """Join a client to the application."""
    with Client("http://shop.example", check_version=True) as client:
        client.session.mount("http://", WSGITransport(create_app(Settings())))
        yield client


def sent(client: Client, operation: Operation, request_: dict[str, Any]) -> dict[str, Any]:
    """Give the plain answer to a request."""
    return client.call(operation.path, request_ if operation.request else None)


def test_every_calculation_has_examples() -> None:
    """No operation that takes a request is left out for want of an example."""
    assert all(operation.examples for operation in OPERATIONS.values() if operation.request)
    assert len(ASKED) >= 40


@pytest.mark.parametrize(("operation", "request_"), [one[:2] for one in ASKED], ids=[one[2] for one in ASKED])
def test_every_answer_is_carried_whole(client: Client, operation: Operation, request_: dict[str, Any]) -> None:
    """Each field of a real answer, at any depth, has its place in the client's class and the value that was sent."""
    answer = getattr(client, operation.name)(**request_)
    assert isinstance(answer, Calculation if operation.request else Answer)
    assert answer.to_dict() == sent(client, operation, request_)
    assert list(lost(answer.to_dict(), answer)) == []
    if isinstance(answer, Calculation):
        assert (answer.working is not None) is bool(request_.get("working"))


def test_no_field_can_be_renamed_by_the_service_alone(client: Client) -> None:
    """Each field of the real answers, under a name that the client does not know, is missed or found to be lost."""
    kinds, answers = {}, []
    for operation, request_, _ in ASKED:
        kinds[operation.name] = type(getattr(client, operation.name)(**request_))
        answers.append((operation, sent(client, operation, request_)))
    sent_fields = fields(answers)
    assert len(sent_fields) > 600
    assert [
        f.pointer for f in sent_fields if not notices(kinds[f.operation.name], f.changed(f"{f.name}_renamed"))
    ] == []


def test_a_refusal(client: Client) -> None:
    """A refusal arrives with its pointers."""
    with pytest.raises(InvalidInput) as caught:
        client.fillet_size()  # type: ignore[call-arg]
    assert {fault.pointer for fault in caught.value.errors} == {"#/rule_set", "#/joint", "#/parts", "#/basis"}
    assert {fault.code for fault in caught.value.errors} == {"missing"}
