"""Resources that say what there is: the service, rule sets, materials, filler metals, processes and positions."""

from hashlib import sha256
from typing import Any

import orjson
from flask import Response, request

from ... import SERVICE_VERSION
from ...application import catalogue
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource("catalogue", __name__, url_prefix="/v1", description="What there is to ask about.")


def _cached(content: Any) -> Response:
    """Response with a strong tag of its bytes, 304 where the caller has them."""
    response = json_response(content)
    response.set_etag(sha256(SERVICE_VERSION.encode() + orjson.dumps(content)).hexdigest()[:32])
    response.headers["Cache-Control"] = "public, max-age=3600"
    response.headers["Vary"] = "Accept"
    response.make_conditional(request)
    return response


@blueprint.route("", methods=["GET"])
@blueprint.doc(operationId="get_service")
@blueprint.response(200, answer_schema("ServiceAnswer"))
@refused_with(blueprint, 401, 406)
def get_service() -> Response:
    """Versions of the service, and its rule sets by name."""
    return _cached(catalogue.service())


@blueprint.route("/rule-sets", methods=["GET"])
@blueprint.doc(operationId="list_rule_sets")
@blueprint.response(200, answer_schema("RuleSetsAnswer"))
@refused_with(blueprint, 401, 406)
def list_rule_sets() -> Response:
    """Rule sets and quality sets with their editions, clauses, parameters and limits of scope."""
    return _cached(catalogue.rule_sets())


@blueprint.route("/materials", methods=["GET"])
@blueprint.doc(operationId="list_materials")
@blueprint.response(200, answer_schema("MaterialsAnswer"))
@refused_with(blueprint, 401, 406)
def list_materials() -> Response:
    """Base metals with their strengths by thickness, in millimetres and megapascals."""
    return _cached(catalogue.materials("metric"))


@blueprint.route("/filler-metals", methods=["GET"])
@blueprint.doc(operationId="list_filler_metals")
@blueprint.response(200, answer_schema("FillerMetalsAnswer"))
@refused_with(blueprint, 401, 406)
def list_filler_metals() -> Response:
    """Filler metals with their strength, in megapascals."""
    return _cached(catalogue.filler_metals("metric"))


@blueprint.route("/processes", methods=["GET"])
@blueprint.doc(operationId="list_processes")
@blueprint.response(200, answer_schema("ProcessesAnswer"))
@refused_with(blueprint, 401, 406)
def list_processes() -> Response:
    """Processes and positions with every code they answer to, and what publications say each process takes."""
    return _cached(catalogue.processes("metric"))


@blueprint.route("/preparations", methods=["GET"])
@blueprint.doc(operationId="list_preparations")
@blueprint.response(200, answer_schema("PreparationsAnswer"))
@refused_with(blueprint, 401, 406)
def list_preparations() -> Response:
    """Preparations of grooves with the limits each holds in, in millimetres."""
    return _cached(catalogue.preparations("metric"))
