"""The same over real sockets: what the adapter really raises when a connection goes wrong."""

from __future__ import annotations

import json
import pickle
import socket
import threading
from collections.abc import Callable, Iterator
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer

import pytest
from tests.sdk.conftest import Clock
from tests.sdk.recording_service import ANSWERS

from truethroat import Client, ConnectionFailed

Behaviour = Callable[[BaseHTTPRequestHandler], None]


def answer(handler: BaseHTTPRequestHandler) -> None:
    """Answer as the service would."""
    content = json.dumps(ANSWERS[handler.path]).encode()
    handler.send_response(200)
    handler.send_header("Content-Length", str(len(content)))
    handler.end_headers()
    handler.wfile.write(content)


def unavailable(handler: BaseHTTPRequestHandler) -> None:
    """Answer that the service is down."""
    handler.send_response(503)
    handler.send_header("Retry-After", "4")
    handler.send_header("Content-Length", "0")
    handler.end_headers()


def hang_up(handler: BaseHTTPRequestHandler) -> None:
    """Close the connection without a word."""


def break_off(handler: BaseHTTPRequestHandler) -> None:
    """Promise more than is sent."""
    handler.send_response(200)
    handler.send_header("Content-Length", "1000")
    handler.end_headers()
    handler.wfile.write(b'{"verdict":')


class Server(ThreadingHTTPServer):
    """Behaves as told, request by request; `seen` keeps path and request id of each."""

    behaviours: list[Behaviour]
    seen: list[tuple[str, str | None]]
    released: threading.Event

    def stall(self, handler: BaseHTTPRequestHandler) -> None:
        """Say nothing until the test is over, a second at most."""
        self.released.wait(1)


class Handler(BaseHTTPRequestHandler):
    """Hands each request to the server's next behaviour."""

    server: Server

    def do_POST(self) -> None:
        """Read the request, then behave."""
        self.rfile.read(int(self.headers["Content-Length"]))
        self.server.seen.append((self.path, self.headers["X-Request-Id"]))
        self.server.behaviours.pop(0)(self)

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002 - the base class names it
        """Keep the test output clean."""


@pytest.fixture
def server() -> Iterator[Server]:
    """Serve on a free loopback port for one test."""
    with Server(("127.0.0.1", 0), Handler) as server:
        server.behaviours, server.seen, server.released = [], [], threading.Event()
        thread = threading.Thread(target=server.serve_forever, kwargs={"poll_interval": 0.01})
        thread.start()
        try:
            yield server
        finally:
            server.released.set()
            server.shutdown()
            thread.join()


def client_of(port: int, **options: float) -> Client:
    """Make a client of a loopback port that takes no proxy from the environment."""
    client = Client(f"http://127.0.0.1:{port}", timeout=(1, options.pop("read", 1)), **options)  # type: ignore[arg-type]
    client.session.trust_env = False
    return client


@pytest.mark.parametrize("trouble", [unavailable, hang_up, break_off])
def test_trouble_then_an_answer(server: Server, clock: Clock, trouble: Behaviour) -> None:
    """Down, hung up on or cut off at first: the second try brings the answer, under the same request id."""
    server.behaviours = [trouble, answer]
    with client_of(server.server_port) as client:
        assert client.bevel_depth().to_dict() == ANSWERS["/v1/bevel-depth"]
    assert len(server.seen) == 2
    assert len(set(server.seen)) == 1
    assert len(clock.waits) == 1


def test_retry_after_over_a_socket(server: Server, clock: Clock) -> None:
    """The wait is the one in the header."""
    server.behaviours = [unavailable, unavailable, answer]
    with client_of(server.server_port) as client:
        client.bevel_depth()
    assert clock.waits == [4, 4]


def test_silence_is_a_failed_connection(server: Server) -> None:
    """A service that says nothing within the timeout ends in an error that can be pickled."""
    server.behaviours = [server.stall]
    with client_of(server.server_port, read=0.05, retries=0) as client, pytest.raises(ConnectionFailed) as caught:
        client.bevel_depth()
    assert "timed out" in str(caught.value).lower()
    assert str(pickle.loads(pickle.dumps(caught.value))) == str(caught.value)  # noqa: S301 - our own bytes


def test_a_deadline_cuts_the_silence_short(server: Server) -> None:
    """A deadline ends a try whose own timeout is longer."""
    server.behaviours = [server.stall]
    with client_of(server.server_port, read=30, deadline=0.05) as client, pytest.raises(ConnectionFailed):
        client.bevel_depth()
    assert len(server.seen) == 1


def test_nobody_listening(clock: Clock) -> None:
    """A closed port is tried as often as allowed and the reason is told."""
    with socket.create_server(("127.0.0.1", 0)) as listener:
        port = listener.getsockname()[1]
    with client_of(port) as client, pytest.raises(ConnectionFailed, match=r"in 3 tries: .*refused") as caught:
        client.bevel_depth()
    assert "retries exceeded" not in str(caught.value)
    assert len(clock.waits) == 2
