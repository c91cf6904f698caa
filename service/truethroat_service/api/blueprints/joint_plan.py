"""Resource ``/v1/joint-plan``."""

from flask import Response

from ...application.joint_plan import joint_plan
from ...application.joint_plan.examples import EXAMPLES
from ...application.joint_plan.request import JointPlanRequest
from ..schemas.joint_plan import JointPlanSchema
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource("joint-plan", __name__, url_prefix="/v1", description="Every way to make one joint, ranked.")


@blueprint.route("/joint-plan", methods=["POST"])
@blueprint.doc(operationId="joint_plan")
@blueprint.arguments(JointPlanSchema(), examples=EXAMPLES)
@blueprint.response(200, answer_schema("JointPlanAnswer"))
@refused_with(blueprint, 400, 401, 406, 413, 415, 422)
def joint_plan_view(request: JointPlanRequest) -> Response:
    """Every way to make one joint, sized, costed and ranked, with what is refused and why.

    A calculation: it stores nothing and may be repeated.
    """
    return json_response(joint_plan(request))
