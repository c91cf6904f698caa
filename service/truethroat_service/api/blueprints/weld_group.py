"""Resource ``/v1/weld-group``."""

from flask import Response

from ...application.weld_group import weld_group
from ...application.weld_group.examples import EXAMPLES
from ...application.weld_group.request import WeldGroupRequest
from ..schemas.weld_group import WeldGroupSchema
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource("weld-group", __name__, url_prefix="/v1", description="Lines of weld under any force and moment.")


@blueprint.route("/weld-group", methods=["POST"])
@blueprint.doc(operationId="weld_group")
@blueprint.arguments(WeldGroupSchema(), examples=EXAMPLES)
@blueprint.response(200, answer_schema("WeldGroupAnswer"))
@refused_with(blueprint, 400, 401, 406, 413, 415, 422)
def weld_group_view(request: WeldGroupRequest) -> Response:
    """Lines of weld under any force and moment.

    A calculation: it stores nothing and may be repeated.
    """
    return json_response(weld_group(request))
