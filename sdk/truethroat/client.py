"""The client: a connection to the service, with one method per operation.

What a request may hold is for the service to judge: the client sends it as given and turns the refusal into an error.
"""

from __future__ import annotations

import json
import re
import sys
import warnings
from collections.abc import Mapping
from types import TracebackType
from typing import TYPE_CHECKING, Any, Self, TypeVar

import requests

from truethroat._generated.operations import Operations
from truethroat.answer import Answer
from truethroat.decoding import Undecodable, decode
from truethroat.errors import ConnectionFailed, IncompatibleVersion, NotFound, Unexpected, error_for
from truethroat.transport import Exchange, Timeout, Transport
from truethroat.version import API_MAJOR

if TYPE_CHECKING:
    from truethroat._generated import results

__all__ = ["Client"]

Object = Mapping[str, object]
A = TypeVar("A", bound=Answer)


class Client(Operations):
    """A connection to the service at `base_url`; close it, or use it in a `with` statement.

    `token` is sent as a bearer token. `timeout` is in seconds, to connect and between two bytes of an answer; each
    method takes its own. A call is repeated up to `retries` times after 429, 502, 503, 504 or a failed connection,
    calculations too, since they change nothing. `deadline` bounds a call with all its tries and waits, in seconds: no
    wait or try begins that could not end before it, and timeouts are cut to what is left. `app` is added to the user
    agent, such as "nesting/2.1". With `check_version` the first calculation is preceded by the method of that name.

    `session` is the `requests.Session` in use, for proxies, certificates or another adapter.
    """

    def __init__(
        self,
        base_url: str,
        token: str | None = None,
        *,
        timeout: Timeout = (3.05, 30),
        retries: int = 2,
        deadline: float | None = None,
        app: str | None = None,
        check_version: bool = False,
    ) -> None:
        self._transport = Transport(base_url, token=token, timeout=timeout, retries=retries, deadline=deadline, app=app)
        self._check_due = check_version

    def __repr__(self) -> str:
        return f"Client({self._transport.base_url!r})"

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, traceback: TracebackType | None
    ) -> None:
        self.close()

    @property
    def session(self) -> requests.Session:
        """The session that every request goes through."""
        return self._transport.session

    def close(self) -> None:
        """Close the connections to the service."""
        self._transport.close()

    # Around them

    def call(
        self, operation_path: str, body: Object | None = None, *, timeout: Timeout | None = None
    ) -> dict[str, Any]:
        """Call any operation by its path, such as "/v1/fillet-size", and give the answer as a plain dictionary.

        For what this version has no method for. With a body it is a POST, without one a GET; the body goes out as it
        is, quantities aside.
        """
        if body is None:
            return self._document("GET", operation_path, None, timeout)[0]
        self._check_once()
        return self._document("POST", operation_path, body, timeout)[0]

    def alive(self, *, timeout: Timeout | None = None) -> bool:
        """Say whether the service answers at all; asked once, without retries."""
        return self._healthy("/livez", timeout)

    def ready(self, *, timeout: Timeout | None = None) -> bool:
        """Say whether the service is ready to calculate; asked once, without retries."""
        return self._healthy("/readyz", timeout)

    def check_version(self, *, timeout: Timeout | None = None) -> results.ServiceAnswer:
        """Ask for the service's versions; raise IncompatibleVersion when its API is not the one this client speaks."""
        try:
            service = self.get_service(timeout=timeout)
        except NotFound as error:
            raise IncompatibleVersion(
                f"the service has no API version {API_MAJOR}, which this client speaks",
                status=error.status,
                problem=error.problem,
                request_id=error.request_id,
            ) from error
        major = re.match(r"v?([0-9]+)", service.api_version)
        if major is None or int(major[1]) != API_MAJOR:
            raise IncompatibleVersion(
                f"the service speaks API version {service.api_version}, this client version {API_MAJOR}", status=200
            )
        self._check_due = False
        return service

    def _calculate(self, path: str, kind: type[A], request: Object, timeout: Timeout | None) -> A:
        self._check_once()
        return self._typed(kind, *self._document("POST", path, request, timeout))

    def _look_up(self, path: str, kind: type[A], timeout: Timeout | None) -> A:
        return self._typed(kind, *self._document("GET", path, None, timeout))

    def _check_once(self) -> None:
        if self._check_due:
            self.check_version()

    def _document(
        self, method: str, path: str, body: Object | None, timeout: Timeout | None
    ) -> tuple[dict[str, Any], Exchange]:
        exchange = self._transport.send(method, path, body, timeout=timeout)
        response = exchange.response
        _warn_if_deprecated(method, path, response)
        if response.status_code != 200:
            raise error_for(response.status_code, response.headers, response.content, exchange.request_id)
        try:
            document = json.loads(response.content)
        except (ValueError, RecursionError) as error:
            raise _unexpected("the answer is not JSON", exchange) from error
        if not isinstance(document, dict):
            raise _unexpected("the answer is no JSON object", exchange)
        return document, exchange

    def _typed(self, kind: type[A], document: dict[str, Any], exchange: Exchange) -> A:
        try:
            return decode(kind, document)
        except Undecodable as error:
            raise _unexpected(f"the answer is not what this client expects: {error}", exchange) from error

    def _healthy(self, path: str, timeout: Timeout | None) -> bool:
        try:
            exchange = self._transport.send("GET", path, timeout=timeout, retry=False)
        except ConnectionFailed:
            return False
        response = exchange.response
        if response.status_code in (200, 503):
            return response.status_code == 200
        raise error_for(response.status_code, response.headers, response.content, exchange.request_id)


def _unexpected(message: str, exchange: Exchange) -> Unexpected:
    response = exchange.response
    return Unexpected(
        message,
        status=response.status_code,
        request_id=response.headers.get("X-Request-Id") or exchange.request_id,
    )


def _warn_if_deprecated(method: str, path: str, response: requests.Response) -> None:
    """Pass a Deprecation header on to whoever called, with what the service says about the end and the successor."""
    since = response.headers.get("Deprecation")
    if since is None:
        return
    more = [f"{name}: {response.headers[name]}" for name in ("Sunset", "Link") if name in response.headers]
    warnings.warn(
        f"{method} {path} is deprecated ({'; '.join([f'Deprecation: {since}', *more])})",
        DeprecationWarning,
        stacklevel=_callers_level(),
    )


def _callers_level() -> int:
    """Count the frames from a warning up to the code that called into this package."""
    package = __name__.partition(".")[0]
    level = 1
    frame = sys._getframe(1)
    while frame.f_back is not None and str(frame.f_globals.get("__name__")).partition(".")[0] == package:
        frame = frame.f_back
        level += 1
    return level
