"""Problem documents (RFC 9457): one shape for every refusal, each fault with its pointer."""

import json
from http import HTTPStatus
from typing import Any, cast

from flask import Response, g, request
from flask_smorest import Api
from werkzeug.exceptions import HTTPException, UnprocessableEntity

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


def problem(status: int, detail: str, errors: list[dict[str, str]], slug: str | None = None) -> dict[str, Any]:
    """Problem document of the request at hand."""
    slug = slug or _BY_STATUS.get(status, "failure")
    title = TYPES[slug][0] if slug != "failure" or status >= 500 else HTTPStatus(status).phrase
    return {
        "type": f"/problems/{slug}",
        "title": title,
        "status": status,
        "detail": detail,
        "instance": request.path,
        "request_id": g.get("request_id", ""),
        "errors": errors,
    }


def problem_response(document: dict[str, Any], response: Response) -> Response:
    """Response with the document as its body, keeping the headers it already has."""
    response.data = json.dumps(document).encode()
    response.content_type = PROBLEM
    response.headers["Cache-Control"] = "no-store"
    return response


def handle_refused(error: Refused) -> Response:
    """Answer a request whose values do not fit together or are out of scope."""
    errors = [{"pointer": fault.pointer, "detail": fault.detail, "code": fault.code} for fault in error.faults]
    return problem_response(problem(422, _summary(errors), errors), Response(status=422))


def _summary(errors: list[dict[str, str]]) -> str:
    """Faults, of which there is at least one, in one sentence."""
    first = f"{errors[0]['pointer']}: {errors[0]['detail']}"
    return first if len(errors) == 1 else f"{len(errors)} faults; the first: {first}"


class ProblemApi(Api):
    """API whose errors are problem documents, in its answers and in its document."""

    DEFAULT_ERROR_RESPONSE_NAME = None

    def _register_responses(self) -> None:
        """Name a problem response for each error status; the document includes those an operation names."""
        for status in HTTPStatus:
            if status >= 400:
                content = {PROBLEM: {"schema": {"$ref": "#/components/schemas/Problem"}}}
                self.spec.components.response(
                    status.name, {"description": status.phrase, "content": content}, lazy=True
                )

    def _register_pagination_header(self) -> None:
        """Document no pages: every answer is whole."""

    def handle_http_exception(self, error: HTTPException) -> Response:
        """Answer any HTTP error."""
        status = error.code or 500
        if status < 400:
            return cast(Response, error.get_response())
        # The headers an error brings (Allow, WWW-Authenticate) stay; its page does not.
        kept = [(name, value) for name, value in error.get_headers() if name != "Content-Type"]
        response = Response(status=status, headers=kept)
        errors: list[dict[str, str]] = getattr(error, "faults", [])
        detail = error.description or ""
        if isinstance(error, UnprocessableEntity) and not errors:
            messages = getattr(error, "data", {}).get("messages", {})
            errors = list(faults(messages.get("json", messages)))
        if errors:
            detail = _summary(errors)
        return problem_response(problem(status, detail, errors), response)
