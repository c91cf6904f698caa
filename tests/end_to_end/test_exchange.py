"""HTTP itself, as gunicorn and the service speak it over a socket."""

from __future__ import annotations

import http.client
import json
import socket
from collections.abc import Iterator

import pytest
from tests.demonstration.serving import Serving

from truethroat import Client, InvalidInput

SHEET = {
    "rule_set": "thin-part",
    "basis": "thin-part",
    "joint": {"kind": "tee"},
    "parts": [{"thickness": "5 mm"}, {"thickness": "3 mm"}],
}
BODY = json.dumps(SHEET).encode()


@pytest.fixture
def connection(serving: Serving) -> Iterator[http.client.HTTPConnection]:
    """Open one connection that is kept."""
    connection = http.client.HTTPConnection("127.0.0.1", serving.port, timeout=10)
    yield connection
    connection.close()


def read_until_closed(plug: socket.socket) -> bytes:
    """Read until the other side closes."""
    received = b""
    while piece := plug.recv(65536):
        received += piece
    return received


def test_a_request_written_by_hand(serving: Serving) -> None:
    """The bytes of a plain request on a socket, without any client, bring JSON and the request's own id."""
    head = (
        "POST /v1/fillet-size HTTP/1.1\r\nHost: shop\r\nContent-Type: application/json\r\n"
        f"Content-Length: {len(BODY)}\r\nX-Request-Id: by-hand-1\r\nConnection: close\r\n\r\n"
    )
    with socket.create_connection(("127.0.0.1", serving.port), timeout=10) as plug:
        plug.sendall(head.encode() + BODY)
        headers, _, content = read_until_closed(plug).partition(b"\r\n\r\n")
    assert headers.startswith(b"HTTP/1.1 200 ")
    assert b"x-request-id: by-hand-1" in headers.lower()
    assert json.loads(content)["specify"]["leg"]["text"] == "3 mm"  # common practice, no source


def test_a_body_in_chunks(serving: Serving) -> None:
    """A body sent in chunks, without its length, is read whole."""
    head = (
        "POST /v1/fillet-size HTTP/1.1\r\nHost: shop\r\nContent-Type: application/json\r\n"
        "Transfer-Encoding: chunked\r\nConnection: close\r\n\r\n"
    )
    with socket.create_connection(("127.0.0.1", serving.port), timeout=10) as plug:
        plug.sendall(head.encode())
        for piece in (BODY[:20], BODY[20:]):
            plug.sendall(f"{len(piece):x}\r\n".encode() + piece + b"\r\n")
        plug.sendall(b"0\r\n\r\n")
        headers, _, content = read_until_closed(plug).partition(b"\r\n\r\n")
    assert headers.startswith(b"HTTP/1.1 200 ")
    assert json.loads(content)["verdict"] == "enough"


def test_a_connection_is_kept(connection: http.client.HTTPConnection) -> None:
    """Calculations, lists and refusals follow each other on one connection."""
    connection.connect()
    plug = connection.sock
    for body, status in ((BODY, 200), (b"{}", 422), (b"nothing", 400), (BODY, 200)):
        connection.request("POST", "/v1/fillet-size", body, {"Content-Type": "application/json"})
        response = connection.getresponse()
        assert response.status == status
        assert response.getheader("X-Request-Id")
        response.read()
        assert connection.sock is plug


def test_head_has_no_body(connection: http.client.HTTPConnection) -> None:
    """HEAD gives the headers of GET and nothing after them, so that the connection stays usable."""
    connection.request("GET", "/v1/rule-sets")
    whole = connection.getresponse()
    content = whole.read()
    connection.request("HEAD", "/v1/rule-sets")
    head = connection.getresponse()
    assert (head.status, head.read()) == (200, b"")
    assert head.getheader("Content-Length") == str(len(content))
    assert head.getheader("ETag") == whole.getheader("ETag")
    connection.request("GET", "/livez")
    assert connection.getresponse().status == 200


def test_a_list_already_held(connection: http.client.HTTPConnection) -> None:
    """A list that the caller holds under its tag is not sent again."""
    connection.request("GET", "/v1/materials")
    first = connection.getresponse()
    first.read()
    tag = first.getheader("ETag")
    assert tag
    assert not tag.startswith("W/")
    connection.request("GET", "/v1/materials", headers={"If-None-Match": tag})
    second = connection.getresponse()
    assert (second.status, second.read(), second.getheader("ETag")) == (304, b"", tag)


def test_another_method(connection: http.client.HTTPConnection) -> None:
    """A method that a resource does not take is answered with those it takes."""
    connection.request("DELETE", "/v1/fillet-size")
    response = connection.getresponse()
    assert response.status == 405
    assert "POST" in (response.getheader("Allow") or "")
    assert response.getheader("Content-Type") == "application/problem+json"
    assert json.loads(response.read())["status"] == 405


@pytest.mark.parametrize("size", [530_000, 3_000_000])
def test_too_large_a_body(client: Client, size: int) -> None:
    """A body over the limit is refused with 413, which the client raises; the next request is answered."""
    with pytest.raises(InvalidInput) as caught:
        client.call("/v1/fillet-size", {**SHEET, "mark": "m" * size})
    assert caught.value.status == 413
    assert caught.value.request_id
    assert client.call("/v1/fillet-size", SHEET)["verdict"] == "enough"


def test_the_document_is_served(connection: http.client.HTTPConnection) -> None:
    """The OpenAPI document is there, with each calculation under the name of the client's method."""
    connection.request("GET", "/openapi.json")
    response = connection.getresponse()
    document = json.loads(response.read())
    assert response.status == 200
    for path, method in {"fillet-size": "fillet_size", "grind-allowance": "grind_allowance"}.items():
        assert document["paths"][f"/v1/{path}"]["post"]["operationId"] == method
        assert callable(getattr(Client, method))
