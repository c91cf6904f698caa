"""Resource ``/v1/break-test``."""

from flask import Response

from ...application.break_test import break_test
from ...application.break_test.examples import EXAMPLES
from ...application.break_test.request import BreakTestRequest
from ..schemas.break_test import BreakTestSchema
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource("break-test", __name__, url_prefix="/v1", description="What opens a coupon from its root.")


@blueprint.route("/break-test", methods=["POST"])
@blueprint.doc(operationId="break_test")
@blueprint.arguments(BreakTestSchema(), examples=EXAMPLES)
@blueprint.response(200, answer_schema("BreakTestAnswer"))
@refused_with(blueprint, 400, 401, 406, 413, 415, 422)
def break_test_view(request: BreakTestRequest) -> Response:
    """What opens a coupon from its root, and whether it breaks before its plate bends.

    A calculation: it stores nothing and may be repeated.
    """
    return json_response(break_test(request))
