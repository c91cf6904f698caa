"""Resource ``/v1/distortion``."""

from flask import Response

from ...application.distortion import distortion
from ...application.distortion.examples import EXAMPLES
from ...application.distortion.request import DistortionRequest
from ..schemas.distortion import DistortionSchema
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource("distortion", __name__, url_prefix="/v1", description="How a joint shrinks and turns when welded.")


@blueprint.route("/distortion", methods=["POST"])
@blueprint.doc(operationId="distortion")
@blueprint.arguments(DistortionSchema(), examples=EXAMPLES)
@blueprint.response(200, answer_schema("DistortionAnswer"))
@refused_with(blueprint, 400, 401, 406, 413, 415, 422)
def distortion_view(request: DistortionRequest) -> Response:
    """How a joint shrinks and turns when welded, by named methods, and what would do less.

    A calculation: it stores nothing and may be repeated.
    """
    return json_response(distortion(request))
