"""One service under gunicorn for all of these tests, and clients of it."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from tests.demonstration.serving import Serving, service

from truethroat import Client


@pytest.fixture(scope="session")
def serving() -> Iterator[Serving]:
    """Serve for the session."""
    with service() as serving:
        yield serving


@pytest.fixture
def client(serving: Serving) -> Iterator[Client]:
    """Give a client of the service that takes no proxy from the environment."""
    with Client(serving.url) as client:
        client.session.trust_env = False
        yield client
