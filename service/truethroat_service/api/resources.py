"""Every resource: one loop over the table of capabilities, and what is read."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from hashlib import sha256
from typing import Annotated, Any

import orjson
from flask import Flask, Response, current_app, request
from werkzeug.exceptions import NotFound

from .. import SERVICE_VERSION
from ..application import catalogue
from ..application.capabilities import CAPABILITIES, Capability
from ..application.core.shape import OMITTED
from ..application.readiness import recomputed
from .bodies import body_of
from .components import camel
from .derive import KindsSchema, Schema, request_schema
from .problems import TYPES


@dataclass(frozen=True, slots=True)
class Calculation:
    """Resource that answers a request, read by a schema, with what a use case makes of it."""

    capability: Capability
    schema: Schema | KindsSchema

    def view(self) -> Response:
        """Answer the request at hand."""
        return json_response(self.capability.use_case(self.schema.load(body_of(request))).wire())


@dataclass(frozen=True, slots=True)
class Reading:
    """Resource that is read: where it is, what it is called, and what it answers."""

    path: str
    operation: str
    tag: str
    answer: type
    view: Callable[..., Response]
    statuses: tuple[int, ...] = (200,)
    refusals: tuple[int, ...] = (401, 406)

    @property
    def summary(self) -> str:
        """What it answers, in one sentence."""
        found = self.view.args[0] if isinstance(self.view, partial) else self.view
        return (found.__doc__ or "").strip().partition("\n")[0]


@dataclass(frozen=True, slots=True)
class HealthAnswer:
    """Health of the service."""

    status: str
    checks: Annotated["HealthChecks | None", OMITTED] = None


@dataclass(frozen=True, slots=True)
class HealthChecks:
    """What was tried."""

    known_result: str


@dataclass(frozen=True, slots=True)
class ProblemTypeAnswer:
    """What a problem type means."""

    type: str
    title: str
    description: str


def json_response(content: Any) -> Response:
    """Response of plain content; a number that is not finite never gets out."""
    return Response(orjson.dumps(content), content_type="application/json")


def _cached(read: Callable[[], Any]) -> Response:
    """Response with a strong tag of its bytes, 304 where the caller has them."""
    response = json_response(catalogue.sent(read()))
    response.set_etag(sha256(SERVICE_VERSION.encode() + response.get_data()).hexdigest()[:32])
    response.headers["Cache-Control"] = "public, max-age=3600"
    response.headers["Vary"] = "Accept"
    response.make_conditional(request)
    return response


def _liveness() -> Response:
    """Whether the process answers."""
    return json_response({"status": "alive"})


def _readiness() -> Response:
    """Whether a published result comes out as printed."""
    try:
        ok, found = recomputed()
    except Exception:
        # Whatever an engine breaks by, the answer is that it is broken; the log says how.
        current_app.logger.exception("The known result could not be recomputed")
        ok, found = False, "could not be recomputed"
    response = json_response({"status": "ready" if ok else "not-ready", "checks": {"known_result": found}})
    response.status_code = 200 if ok else 503
    return response


def _problem_type(slug: str) -> Response:
    """What a problem type means."""
    if slug not in TYPES:
        raise NotFound(f"The problem types are {', '.join(TYPES)}.")
    title, description = TYPES[slug]
    return json_response({"type": f"/problems/{slug}", "title": title, "description": description})


def _listed(path: str, operation: str, answer: type, read: Callable[[], Any]) -> Reading:
    """Resource of the catalogue."""
    return Reading(f"/v1{path}", operation, "catalogue", answer, partial(_cached, read))


CALCULATIONS = tuple(
    Calculation(entry, request_schema(f"{camel(entry.operation)}Request", entry.request)) for entry in CAPABILITIES
)
"""Resources that are asked, in the order of the table."""

READINGS = (
    _listed("", "get_service", catalogue.ServiceAnswer, catalogue.service),
    _listed("/rule-sets", "list_rule_sets", catalogue.RuleSetsAnswer, catalogue.rule_sets),
    _listed("/materials", "list_materials", catalogue.MaterialsAnswer, catalogue.materials),
    _listed("/filler-metals", "list_filler_metals", catalogue.FillerMetalsAnswer, catalogue.filler_metals),
    _listed("/processes", "list_processes", catalogue.ProcessesAnswer, catalogue.processes),
    _listed("/preparations", "list_preparations", catalogue.PreparationsAnswer, catalogue.preparations),
    Reading("/livez", "get_liveness", "health", HealthAnswer, _liveness, refusals=(406,)),
    Reading("/readyz", "get_readiness", "health", HealthAnswer, _readiness, (200, 503), (406,)),
    Reading(
        "/problems/<string:slug>", "get_problem_type", "health", ProblemTypeAnswer, _problem_type, refusals=(404, 406)
    ),
)
"""Resources that are read."""

TAGS = {
    **{entry.path: entry.meaning for entry in CAPABILITIES},
    "catalogue": "What there is to ask about.",
    "health": "Health, and the meaning of problem types.",
}


def install(app: Flask) -> None:
    """Hang every resource on an app."""
    for calculation in CALCULATIONS:
        path = calculation.capability.path
        app.add_url_rule(f"/v1/{path}", path, calculation.view, methods=["POST"])
    for reading in READINGS:
        app.add_url_rule(reading.path, reading.operation, reading.view, methods=["GET"])
