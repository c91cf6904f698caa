"""Service in process, asked through exchanges that are held against the document."""

import pytest
from tests.api.exchange import Exchange

from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings


@pytest.fixture(scope="session")
def service() -> Exchange:
    """Ask an open service."""
    return Exchange(create_app(Settings()))
