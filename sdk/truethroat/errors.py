"""What can go wrong in a call, told apart by what the caller can do about it.

Each class is one of the class it stands under:

    TruethroatError
        ServiceError                status, problem, request_id
            ConnectionFailed        no answer at all: unreachable, cut off, too late
            InvalidInput            the request cannot be answered as it stands; see `errors`
            NotAuthorised           the token is missing, unknown or not allowed
            NotFound                the service has no such resource
            RateLimited             too many requests; see `retry_after`
            ServiceUnavailable      the service, or what stands before it, is down for now
            IncompatibleVersion     the service speaks another version of the API
            Unexpected              anything else, an answer that cannot be read among it
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from http import HTTPStatus
from typing import Any

from urllib3.exceptions import InvalidHeader
from urllib3.util import Retry

__all__ = [
    "ConnectionFailed",
    "FieldError",
    "IncompatibleVersion",
    "InvalidInput",
    "NotAuthorised",
    "NotFound",
    "RateLimited",
    "ServiceError",
    "ServiceUnavailable",
    "TruethroatError",
    "Unexpected",
]


class TruethroatError(Exception):
    """Everything this package raises about a call."""


class ServiceError(TruethroatError):
    """A call that brought no usable answer.

    `status` is the HTTP status, None when nothing came back; `problem` the problem document, None when there was none;
    `request_id` what the service's log knows the call by.
    """

    def __init__(
        self,
        message: str,
        *,
        status: int | None = None,
        problem: dict[str, Any] | None = None,
        request_id: str | None = None,
    ) -> None:
        super().__init__(message)
        self.message = message
        self.status = status
        self.problem = problem
        self.request_id = request_id

    def __str__(self) -> str:
        return f"{self.message} [request {self.request_id}]" if self.request_id else self.message


class ConnectionFailed(ServiceError):
    """The service could not be reached, or did not answer in time."""


class NotAuthorised(ServiceError):
    """The service wants a token, or another one."""


class NotFound(ServiceError):
    """The service has no such resource: often a wrong base address."""


class ServiceUnavailable(ServiceError):
    """The service cannot answer for now, and did not after the retries either."""


class IncompatibleVersion(ServiceError):
    """The service speaks another version of the API than this client."""


class Unexpected(ServiceError):
    """An answer that this client has no use for."""


class RateLimited(ServiceError):
    """Too many requests; `retry_after` is the wait the service asked for, in seconds."""

    def __init__(self, message: str, *, retry_after: float | None = None, **about: Any) -> None:
        super().__init__(message, **about)
        self.retry_after = retry_after


@dataclass(frozen=True, slots=True)
class FieldError:
    """One fault of a request: where (a JSON pointer such as `#/parts/0/thickness`), what, and of which sort."""

    pointer: str
    detail: str
    code: str

    def __str__(self) -> str:
        where = f"{self.pointer}: " if self.pointer else ""
        return f"{where}{self.detail}" + (f" ({self.code})" if self.code else "")


class InvalidInput(ServiceError):
    """A request that the service refused; `errors` names each fault."""

    def __init__(self, message: str, *, errors: tuple[FieldError, ...] = (), **about: Any) -> None:
        super().__init__(message, **about)
        self.errors = errors

    def __str__(self) -> str:
        return "\n  ".join([super().__str__(), *map(str, self.errors)])


_BY_STATUS: dict[int, type[ServiceError]] = {
    400: InvalidInput,
    401: NotAuthorised,
    403: NotAuthorised,
    404: NotFound,
    410: NotFound,
    413: InvalidInput,
    422: InvalidInput,
    429: RateLimited,
    502: ServiceUnavailable,
    503: ServiceUnavailable,
    504: ServiceUnavailable,
}


def error_for(status: int, headers: Mapping[str, str], body: bytes, request_id: str) -> ServiceError:
    """Make the error that an answer other than 200 stands for, whatever its body holds."""
    problem = _problem(body)
    about: dict[str, Any] = {
        "status": status,
        "problem": problem,
        "request_id": headers.get("X-Request-Id") or _text(problem, "request_id") or request_id,
    }
    message = _message(status, headers, problem)
    kind = _BY_STATUS.get(status, Unexpected)
    if kind is InvalidInput:
        return InvalidInput(message, errors=_field_errors(problem), **about)
    if kind is RateLimited:
        return RateLimited(message, retry_after=seconds_asked_for(headers.get("Retry-After")), **about)
    return kind(message, **about)


def seconds_asked_for(retry_after: str | None) -> float | None:
    """Read a Retry-After header, given in seconds or as a date; None when absent or unreadable."""
    if retry_after is None:
        return None
    try:
        return float(Retry(0).parse_retry_after(retry_after))
    except (InvalidHeader, ValueError, OverflowError):
        return None


def _problem(body: bytes) -> dict[str, Any] | None:
    """Read a problem document: any JSON object will do, since proxies mislabel them."""
    try:
        document = json.loads(body)
    except (ValueError, RecursionError):
        return None
    return document if isinstance(document, dict) else None


def _text(document: Mapping[str, Any] | None, key: str) -> str:
    value = (document or {}).get(key)
    return value if isinstance(value, str) else ""


def _message(status: int, headers: Mapping[str, str], problem: dict[str, Any] | None) -> str:
    try:
        phrase = HTTPStatus(status).phrase
    except ValueError:
        phrase = "an unregistered status"
    if 300 <= status < 400:
        return f"{status} {phrase}: sent on to {headers.get('Location', 'nowhere')}; give the client the final address"
    if problem is None:
        return f"{status} {phrase}, without a problem document"
    title = _text(problem, "title") or phrase
    detail = _text(problem, "detail")
    return f"{status} {title}: {detail}" if detail else f"{status} {title}"


def _field_errors(problem: dict[str, Any] | None) -> tuple[FieldError, ...]:
    entries = (problem or {}).get("errors")
    if not isinstance(entries, list):
        return ()
    return tuple(
        FieldError(
            pointer=_text(entry, "pointer") or _text(entry, "parameter") or _text(entry, "header"),
            detail=_text(entry, "detail"),
            code=_text(entry, "code"),
        )
        for entry in entries
        if isinstance(entry, dict)
    )
