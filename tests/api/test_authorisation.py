"""Tokens: asked for where the settings name any, taken in two headers, told in one way when they are wrong."""

from __future__ import annotations

from hashlib import sha256

import pytest
from tests.api.exchange import PROBLEM, Exchange, paths
from tests.api.sound import EN, FILLET

from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings

TOKENS = ("hopper-shop", "frame-shop")
VERSIONED = paths("get")


@pytest.fixture(scope="module")
def guarded() -> Exchange:
    """Ask a service that two tokens open."""
    return Exchange(create_app(Settings(token_hashes=tuple(sha256(token.encode()).hexdigest() for token in TOKENS))))


@pytest.mark.parametrize("token", TOKENS)
@pytest.mark.parametrize("form", ["Bearer {}", "bearer {}", "BEARER {}"])
def test_a_bearer_token_opens(guarded: Exchange, token: str, form: str) -> None:
    """Any of the tokens opens as a bearer; the scheme's name has no case (RFC 9110 11.1)."""
    assert guarded.post(FILLET, EN, headers={"Authorization": form.format(token)}).status_code == 200


@pytest.mark.parametrize("token", TOKENS)
def test_a_key_opens(guarded: Exchange, token: str) -> None:
    """Any of the tokens opens as a key."""
    assert guarded.get("/v1", headers={"X-API-Key": token}).status_code == 200


@pytest.mark.parametrize(
    "headers",
    [
        {},
        {"Authorization": "Bearer"},
        {"Authorization": "Bearer "},
        {"Authorization": "Bearer hopper"},
        {"Authorization": "Bearer hopper-shop "},
        {"Authorization": "Basic hopper-shop"},
        {"Authorization": "Bearer wrong", "X-API-Key": "hopper-shop"},
        {"X-API-Key": ""},
        {"X-API-Key": "caf\u00e9"},
        {"X-API-Key": sha256(b"hopper-shop").hexdigest()},
    ],
    ids=repr,
)
def test_anything_else_is_refused(guarded: Exchange, headers: dict[str, str]) -> None:
    """No token, a wrong one, another scheme or the digest itself: 401 with a challenge (RFC 9110 15.5.2)."""
    response = guarded.get("/v1", headers=headers)
    # A header's trailing space is no part of its value (RFC 9110 5.5), but nothing strips it in process.
    assert response.status_code == 401
    assert response.mimetype == PROBLEM
    assert response.headers["WWW-Authenticate"] == 'Bearer realm="truethroat"'
    assert response.json["type"] == "/problems/not-authorised"
    assert response.json["detail"] == "Send a token as Authorization: Bearer or as X-API-Key."


@pytest.mark.parametrize("path", [*VERSIONED, *paths("post"), "/v1/nothing"])
def test_every_versioned_resource_is_guarded(guarded: Exchange, path: str) -> None:
    """Without a token nothing under /v1 answers, nor says whether it is there."""
    method = "POST" if path in paths("post") else "GET"
    assert guarded.send(method, path, json=EN if method == "POST" else None).status_code == 401


@pytest.mark.parametrize("path", ["/livez", "/readyz", "/openapi.json", "/problems/not-json"])
def test_what_is_outside_the_version_is_open(guarded: Exchange, path: str) -> None:
    """Health, the document and the meaning of problems need no token."""
    assert guarded.get(path).status_code == 200


@pytest.mark.parametrize("path", VERSIONED)
def test_no_token_is_asked_for_without_the_setting(service: Exchange, path: str) -> None:
    """A service with no tokens in its settings is open, whatever a caller sends."""
    for headers in ({}, {"Authorization": "Bearer anything"}):
        response = service.get(path, headers=headers)
        assert response.status_code == 200
        assert "WWW-Authenticate" not in response.headers
