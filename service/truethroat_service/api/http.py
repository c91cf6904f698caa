"""What every exchange has: a request id, a form the caller accepts, a token where asked for, a line in the log."""

import hashlib
import hmac
import json
import os
import re
import sys
import time

from flask import Flask, Response, g, request
from werkzeug.exceptions import NotAcceptable, Unauthorized

from .settings import Settings

_SAFE_ID = re.compile(r"[A-Za-z0-9._-]{1,64}")
_QUIET = ("/livez", "/readyz")
_ANY_JSON = ("*/*", "application/json")


def install(app: Flask, settings: Settings) -> None:
    """Hang the common parts of an exchange on an app."""

    @app.before_request
    def receive() -> None:
        """Name the exchange, and refuse a caller whom no answer suits or who has no token."""
        given = request.headers.get("X-Request-Id", "")
        # The caller's own id is taken where it is safe to print.
        g.request_id = given if given and _SAFE_ID.fullmatch(given) else os.urandom(16).hex()
        g.started = time.perf_counter()
        if request.environ.get("HTTP_ACCEPT", "*/*") not in _ANY_JSON:
            _negotiate()
        if settings.token_hashes and request.path.startswith("/v1"):
            _authorise(settings.token_hashes)

    @app.after_request
    def finish(response: Response) -> Response:
        """Send the request id back, keep calculations out of caches, and log."""
        response.headers["X-Request-Id"] = g.get("request_id", "")
        response.headers.setdefault("Cache-Control", "no-store")
        if g.get("challenge"):
            response.headers["WWW-Authenticate"] = 'Bearer realm="truethroat"'
        if settings.log_requests and request.path not in _QUIET:
            line = {
                "method": request.method,
                "path": request.path,
                "status": response.status_code,
                "ms": round((time.perf_counter() - g.get("started", time.perf_counter())) * 1000, 2),
                "request_id": g.get("request_id", ""),
            }
            sys.stdout.write(json.dumps(line) + "\n")
            sys.stdout.flush()
        return response


def _negotiate() -> None:
    """Refuse a caller who accepts no JSON."""
    accepted = request.accept_mimetypes
    if accepted and not accepted.best_match(["application/json", "application/problem+json"]):
        raise NotAcceptable("Answers are JSON: accept application/json.")


def _authorise(token_hashes: tuple[str, ...]) -> None:
    """Refuse a caller without one of the tokens."""
    kind, _, bearer = request.headers.get("Authorization", "").partition(" ")
    token = bearer if kind.lower() == "bearer" else request.headers.get("X-API-Key", "")
    digest = hashlib.sha256(token.encode()).hexdigest()
    # Every hash is compared, in constant time, so that timing tells nothing about which one is near.
    matches = [hmac.compare_digest(digest, known) for known in token_hashes]
    if not any(matches):
        error = Unauthorized("Send a token as Authorization: Bearer or as X-API-Key.")
        error.www_authenticate = None
        g.challenge = True
        raise error
