"""Problem documents (RFC 9457): one shape for every refusal, each fault with its pointer."""

import json
from dataclasses import dataclass
from http import HTTPStatus
from typing import Annotated, Any

from flask import Flask, Response, g, request
from marshmallow import ValidationError
from werkzeug.exceptions import HTTPException

from ..application.core.codes import FaultCode
from ..application.core.faults import Refused
from .messages import faults

PROBLEM = "application/problem+json"

TYPES: dict[str, tuple[str, str]] = {
    "invalid-request": (
        "The request cannot be answered",
        "Each fault is listed with a pointer into the request, what is wrong there and what would be right.",
    ),
    "not-json": ("The body is not JSON", "The body could not be read as one JSON object with each name once."),
    "unsupported-media-type": ("The body has another media type", "Send JSON as application/json."),
    "not-acceptable": ("No answer in an acceptable form", "Answers are JSON: accept application/json."),
    "too-large": ("The body is too large", "Send a smaller body."),
    "not-authorised": ("A token is needed", "Send a token as Authorization: Bearer or as X-API-Key."),
    "not-found": ("Nothing is here", "No resource has this path."),
    "method-not-allowed": ("Another method is needed", "The Allow header lists the methods this path takes."),
    "failure": ("The service failed", "The request may be sound; report it with its request id."),
}
"""Every problem type: its title and what it means. The service answers each at /problems/<type>."""

_BY_STATUS = {
    400: "not-json",
    401: "not-authorised",
    404: "not-found",
    405: "method-not-allowed",
    406: "not-acceptable",
    413: "too-large",
    415: "unsupported-media-type",
    422: "invalid-request",
}


@dataclass(frozen=True, slots=True)
class ProblemError:
    """One fault."""

    pointer: Annotated[str, "JSON pointer into the request."]
    detail: str
    code: FaultCode


@dataclass(frozen=True, slots=True)
class Problem:
    """Problem document (RFC 9457)."""

    type: str
    title: str
    status: int
    detail: str
    instance: str
    request_id: str
    errors: tuple[ProblemError, ...]


def install(app: Flask) -> None:
    """Answer every error of an app by a problem document."""
    app.register_error_handler(HTTPException, _http_exception)
    app.register_error_handler(ValidationError, _unsound)
    app.register_error_handler(Refused, _refused)


def _problem(status: int, detail: str, errors: list[dict[str, str]], response: Response) -> Response:
    """Response with the problem document of the request at hand as its body, keeping the headers it already has."""
    slug = _BY_STATUS.get(status, "failure")
    problem = {
        "type": f"/problems/{slug}",
        "title": TYPES[slug][0] if slug != "failure" or status >= 500 else HTTPStatus(status).phrase,
        "status": status,
        "detail": _summary(errors) if errors else detail,
        "instance": request.path,
        "request_id": g.get("request_id", ""),
        "errors": errors,
    }
    response.status_code = status
    response.data = json.dumps(problem).encode()
    response.content_type = PROBLEM
    response.headers["Cache-Control"] = "no-store"
    return response


def _summary(errors: list[dict[str, str]]) -> str:
    """Faults, of which there is at least one, in one sentence."""
    first = f"{errors[0]['pointer']}: {errors[0]['detail']}"
    return first if len(errors) == 1 else f"{len(errors)} faults; the first: {first}"


def _refused(error: Refused) -> Response:
    """Answer a request whose values do not fit together or are out of scope."""
    errors = [{"pointer": fault.pointer, "detail": fault.detail, "code": fault.code} for fault in error.faults]
    return _problem(422, "", errors, Response())


def _unsound(error: ValidationError) -> Response:
    """Answer a request whose form is not sound."""
    return _problem(422, "", list(faults(error.messages)), Response())


def _http_exception(error: HTTPException) -> Response:
    """Answer any HTTP error."""
    status = error.code or 500
    if status < 400:
        return error.get_response()  # type: ignore[return-value]
    # The headers an error brings (Allow, WWW-Authenticate) stay; its page does not.
    kept = [(name, value) for name, value in error.get_headers() if name != "Content-Type"]
    errors: list[dict[str, Any]] = getattr(error, "faults", [])
    return _problem(status, error.description or "", errors, Response(headers=kept))
