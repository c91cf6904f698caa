"""A service that asks for a token."""

from __future__ import annotations

import hashlib

import pytest
from tests.demonstration.serving import service

from truethroat import Client, NotAuthorised


def test_only_callers_with_the_token_are_answered() -> None:
    """With a token's digest in the environment, the token is let in, none or another is not, and health is open."""
    digest = hashlib.sha256(b"shop-floor").hexdigest()
    with service(environment={"TRUETHROAT_SERVICE_TOKEN_HASHES": digest}) as serving:
        for token, let_in in (("shop-floor", True), ("shop-door", False), (None, False)):
            with Client(serving.url, token) as client:
                client.session.trust_env = False
                assert client.ready()
                if let_in:
                    assert client.get_service().service == "truethroat"
                else:
                    with pytest.raises(NotAuthorised) as caught:
                        client.get_service()
                    assert caught.value.status == 401
