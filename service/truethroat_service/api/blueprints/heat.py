"""Resource ``/v1/heat``."""

from flask import Response

from ...application.heat import heat
from ...application.heat.examples import EXAMPLES
from ...application.heat.request import HeatRequest
from ..schemas.heat import HeatSchema
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource("heat", __name__, url_prefix="/v1", description="Heat of a pass and what it does to the steel.")


@blueprint.route("/heat", methods=["POST"])
@blueprint.doc(operationId="heat")
@blueprint.arguments(HeatSchema(), examples=EXAMPLES)
@blueprint.response(200, answer_schema("HeatAnswer"))
@refused_with(blueprint, 400, 401, 406, 413, 415, 422)
def heat_view(request: HeatRequest) -> Response:
    """Arc energy, heat input, cooling time, preheat and hardness, and the heat that keeps to a cooling window.

    A calculation: it stores nothing and may be repeated.
    """
    return json_response(heat(request))
