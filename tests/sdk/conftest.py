"""A client joined to the stand-in service, and a clock that sleeping moves."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

import pytest
from tests.sdk.recording_service import RecordingService
from tests.sdk.wsgi_transport import WSGITransport

from truethroat import Client


class Clock:
    """A clock that stands still except when someone sleeps; `waits` keeps each sleep."""

    def __init__(self) -> None:
        self.now = 1000.0
        self.waits: list[float] = []

    def sleep(self, seconds: float) -> None:
        """Let the time pass at once."""
        self.waits.append(seconds)
        self.now += seconds


@pytest.fixture
def clock(monkeypatch: pytest.MonkeyPatch) -> Clock:
    """Put a clock of our own under the client's waits and deadlines."""
    clock = Clock()
    monkeypatch.setattr("truethroat.transport.sleep", clock.sleep)
    monkeypatch.setattr("truethroat.transport.monotonic", lambda: clock.now)
    return clock


@pytest.fixture
def service() -> RecordingService:
    """Give a stand-in service that has received nothing yet."""
    return RecordingService()


@pytest.fixture
def connect(service: RecordingService) -> Iterator[Callable[..., Client]]:
    """Make clients of the stand-in service, closed after the test."""
    made: list[Client] = []

    def make(*arguments: Any, **options: Any) -> Client:
        client = Client("http://service.example", *arguments, **options)
        client.session.mount("http://", WSGITransport(service))
        made.append(client)
        return client

    yield make
    for client in made:
        client.close()


@pytest.fixture
def client(connect: Callable[..., Client]) -> Client:
    """Give a client as it comes, without options."""
    return connect()
