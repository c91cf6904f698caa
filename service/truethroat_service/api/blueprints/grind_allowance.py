"""Resource ``/v1/grind-allowance``."""

from flask import Response

from ...application.grind_allowance import grind_allowance
from ...application.grind_allowance.examples import EXAMPLES
from ...application.grind_allowance.request import GrindAllowanceRequest
from ..schemas.grind_allowance import GrindAllowanceSchema
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource(
    "grind-allowance", __name__, url_prefix="/v1", description="How much of a seam may be ground away."
)


@blueprint.route("/grind-allowance", methods=["POST"])
@blueprint.doc(operationId="grind_allowance")
@blueprint.arguments(GrindAllowanceSchema(), examples=EXAMPLES)
@blueprint.response(200, answer_schema("GrindAllowanceAnswer"))
@refused_with(blueprint, 400, 401, 406, 413, 415, 422)
def grind_allowance_view(request: GrindAllowanceRequest) -> Response:
    """How much of a seam may be ground away.

    A calculation: it stores nothing and may be repeated.
    """
    return json_response(grind_allowance(request))
