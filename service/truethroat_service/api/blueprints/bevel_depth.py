"""Resource ``/v1/bevel-depth``."""

from flask import Response

from ...application.bevel_depth import bevel_depth
from ...application.bevel_depth.examples import EXAMPLES
from ...application.bevel_depth.request import BevelDepthRequest
from ..schemas.bevel_depth import BevelDepthSchema
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource(
    "bevel-depth", __name__, url_prefix="/v1", description="How deep to prepare an edge before welding."
)


@blueprint.route("/bevel-depth", methods=["POST"])
@blueprint.doc(operationId="bevel_depth")
@blueprint.arguments(BevelDepthSchema(), examples=EXAMPLES)
@blueprint.response(200, answer_schema("BevelDepthAnswer"))
@refused_with(blueprint, 400, 401, 406, 413, 415, 422)
def bevel_depth_view(request: BevelDepthRequest) -> Response:
    """How deep to prepare an edge before welding.

    A calculation: it stores nothing and may be repeated.
    """
    return json_response(bevel_depth(request))
