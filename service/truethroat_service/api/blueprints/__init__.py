"""Resources: one blueprint a file."""

from typing import Any

import orjson
from flask import Response
from flask_smorest import Blueprint

from ..bodies import BodyParser


class Resource(Blueprint):
    """Blueprint that reads bodies strictly."""

    ARGUMENTS_PARSER = BodyParser()


def json_response(content: Any) -> Response:
    """Response of plain content; a number that is not finite never gets out."""
    return Response(orjson.dumps(content), mimetype="application/json")


def answer_schema(name: str) -> dict[str, str]:
    """Reference to an answer's component."""
    return {"$ref": f"#/components/schemas/{name}"}


REFUSALS = {
    400: "BAD_REQUEST",
    401: "UNAUTHORIZED",
    406: "NOT_ACCEPTABLE",
    413: "REQUEST_ENTITY_TOO_LARGE",
    415: "UNSUPPORTED_MEDIA_TYPE",
    422: "UNPROCESSABLE_ENTITY",
}
"""How a calculation can be refused."""


def refused_with(blueprint: Resource, *statuses: int) -> Any:
    """Decorator that documents the refusals of an operation."""

    def decorate(view: Any) -> Any:
        for status in statuses:
            view = blueprint.alt_response(status, REFUSALS[status])(view)
        return view

    return decorate
