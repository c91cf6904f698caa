"""Resource ``/v1/as-welded``."""

from flask import Response

from ...application.as_welded import as_welded
from ...application.as_welded.examples import EXAMPLES
from ...application.as_welded.request import ButtReadings, FilletReadings
from ..schemas.as_welded import AsWeldedSchema
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource("as-welded", __name__, url_prefix="/v1", description="What a weld is worth as gauged.")


@blueprint.route("/as-welded", methods=["POST"])
@blueprint.doc(operationId="as_welded")
@blueprint.arguments(AsWeldedSchema(), examples=EXAMPLES)
@blueprint.response(200, answer_schema("AsWeldedAnswer"))
@refused_with(blueprint, 400, 401, 406, 413, 415, 422)
def as_welded_view(request: FilletReadings | ButtReadings) -> Response:
    """Whether a weld as gauged has its throat and keeps its quality level.

    A calculation: it stores nothing and may be repeated.
    """
    return json_response(as_welded(request))
