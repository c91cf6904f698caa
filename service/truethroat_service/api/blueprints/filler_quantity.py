"""Resource ``/v1/filler-quantity``."""

from flask import Response

from ...application.filler_quantity import filler_quantity
from ...application.filler_quantity.examples import EXAMPLES
from ...application.filler_quantity.request import FillerQuantityRequest
from ..schemas.filler_quantity import FillerQuantitySchema
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource(
    "filler-quantity", __name__, url_prefix="/v1", description="What welds take in metal, time, gas and money."
)


@blueprint.route("/filler-quantity", methods=["POST"])
@blueprint.doc(operationId="filler_quantity")
@blueprint.arguments(FillerQuantitySchema(), examples=EXAMPLES)
@blueprint.response(200, answer_schema("FillerQuantityAnswer"))
@refused_with(blueprint, 400, 401, 406, 413, 415, 422)
def filler_quantity_view(request: FillerQuantityRequest) -> Response:
    """What welds take in metal, time, gas and money.

    A calculation: it stores nothing and may be repeated.
    """
    return json_response(filler_quantity(request))
