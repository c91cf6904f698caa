"""Start and stop: what a caller and the next start meet."""

from __future__ import annotations

import json
import socket
import threading

import pytest
from tests.demonstration.serving import NotStarted, service

BODY = json.dumps(
    {
        "rule_set": "thin-part",
        "basis": "thin-part",
        "joint": {"kind": "tee"},
        "parts": [{"thickness": "5 mm"}, {"thickness": "3 mm"}],
    }
).encode()


def test_a_running_request_is_finished() -> None:
    """Asked to stop while a request is half read, the service reads the rest, answers, and ends without a fault."""
    head = (
        "POST /v1/fillet-size HTTP/1.1\r\nHost: shop\r\nContent-Type: application/json\r\n"
        f"Content-Length: {len(BODY)}\r\nExpect: 100-continue\r\n\r\n"
    )
    with service() as serving, socket.create_connection(("127.0.0.1", serving.port), timeout=20) as plug:
        plug.sendall(head.encode())
        # This comes when the request has reached the application and waits for its body.
        assert plug.recv(1000).startswith(b"HTTP/1.1 100 ")
        serving.process.terminate()
        finisher = threading.Timer(1.0, plug.sendall, [BODY])
        finisher.start()
        received = b""
        while b"}" not in received and (piece := plug.recv(65536)):
            received += piece
        finisher.join()
        assert received.startswith(b"HTTP/1.1 200 ")
        assert serving.process.wait(20) == 0
        assert "Traceback" not in serving.log()


def test_a_stopped_service_frees_its_port() -> None:
    """After the end nobody listens, although a caller still holds a kept connection."""
    with service() as serving:
        plug = socket.create_connection(("127.0.0.1", serving.port), timeout=10)
        plug.sendall(b"GET /livez HTTP/1.1\r\nHost: shop\r\n\r\n")
        assert plug.recv(65536).startswith(b"HTTP/1.1 200 ")
    assert serving.process.returncode == 0
    with plug, socket.socket() as trial:
        assert trial.connect_ex(("127.0.0.1", serving.port)) != 0


@pytest.mark.parametrize(
    ("name", "value", "said"),
    [
        ("TRUETHROAT_SERVICE_LARGEST_BODI", "1000", "unknown settings: TRUETHROAT_SERVICE_LARGEST_BODI"),
        ("TRUETHROAT_SERVICE_LARGEST_BODY", "much", "TRUETHROAT_SERVICE_LARGEST_BODY: a number of bytes"),
    ],
)
def test_a_wrong_setting_stops_the_start(name: str, value: str, said: str) -> None:
    """A setting that does not exist, or has no such value, ends the start at once and is named in the log."""
    with pytest.raises(NotStarted, match=said), service(environment={name: value}):
        pass
