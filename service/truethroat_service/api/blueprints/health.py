"""Resources outside the version: whether the process lives, whether it is ready, what a problem type means."""

from flask import Response, current_app
from werkzeug.exceptions import NotFound

from ...application.readiness import recomputed
from ..problems import TYPES
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource("health", __name__, description="Health, and the meaning of problem types.")


@blueprint.route("/livez", methods=["GET"])
@blueprint.doc(operationId="get_liveness")
@blueprint.response(200, answer_schema("HealthAnswer"))
@refused_with(blueprint, 406)
def get_liveness() -> Response:
    """Whether the process answers."""
    return json_response({"status": "alive"})


@blueprint.route("/readyz", methods=["GET"])
@blueprint.doc(operationId="get_readiness")
@blueprint.response(200, answer_schema("HealthAnswer"))
@blueprint.response(503, answer_schema("HealthAnswer"))
@refused_with(blueprint, 406)
def get_readiness() -> Response:
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


@blueprint.route("/problems/<string:slug>", methods=["GET"])
@blueprint.doc(operationId="get_problem_type")
@blueprint.response(200, answer_schema("ProblemTypeAnswer"))
@blueprint.alt_response(404, "NOT_FOUND")
@refused_with(blueprint, 406)
def get_problem_type(slug: str) -> Response:
    """What a problem type means."""
    if slug not in TYPES:
        raise NotFound(f"The problem types are {', '.join(TYPES)}.")
    title, description = TYPES[slug]
    return json_response({"type": f"/problems/{slug}", "title": title, "description": description})
