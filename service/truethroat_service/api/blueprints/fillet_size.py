"""Resource ``/v1/fillet-size``."""

from flask import Response

from ...application.fillet_size import fillet_size
from ...application.fillet_size.examples import EXAMPLES
from ...application.fillet_size.request import FilletSizeRequest
from ..schemas.fillet_size import FilletSizeSchema
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource("fillet-size", __name__, url_prefix="/v1", description="Leg and throat of a fillet to specify.")


@blueprint.route("/fillet-size", methods=["POST"])
@blueprint.doc(operationId="fillet_size")
@blueprint.arguments(FilletSizeSchema(), examples=EXAMPLES)
@blueprint.response(200, answer_schema("FilletSizeAnswer"))
@refused_with(blueprint, 400, 401, 406, 413, 415, 422)
def fillet_size_view(request: FilletSizeRequest) -> Response:
    """Leg and throat of a fillet to specify.

    A calculation: it stores nothing and may be repeated.
    """
    return json_response(fillet_size(request))
