"""Resource ``/v1/groove-size``."""

from flask import Response

from ...application.groove_size import groove_size
from ...application.groove_size.examples import EXAMPLES
from ...application.groove_size.request import GrooveSizeRequest
from ..schemas.groove_size import GrooveSizeSchema
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource("groove-size", __name__, url_prefix="/v1", description="How much groove, plug or slot is enough.")


@blueprint.route("/groove-size", methods=["POST"])
@blueprint.doc(operationId="groove_size")
@blueprint.arguments(GrooveSizeSchema(), examples=EXAMPLES)
@blueprint.response(200, answer_schema("GrooveSizeAnswer"))
@refused_with(blueprint, 400, 401, 406, 413, 415, 422)
def groove_size_view(request: GrooveSizeRequest) -> Response:
    """How much groove, plug or slot is enough, and the preparation it needs.

    A calculation: it stores nothing and may be repeated.
    """
    return json_response(groove_size(request))
