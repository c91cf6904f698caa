"""Resource ``/v1/crack-risk``."""

from flask import Response

from ...application.crack_risk import crack_risk
from ...application.crack_risk.examples import EXAMPLES
from ...application.crack_risk.request import CrackRiskRequest
from ..schemas.crack_risk import CrackRiskSchema
from . import Resource, answer_schema, json_response, refused_with

blueprint = Resource("crack-risk", __name__, url_prefix="/v1", description="How likely a pass is to crack.")


@blueprint.route("/crack-risk", methods=["POST"])
@blueprint.doc(operationId="crack_risk")
@blueprint.arguments(CrackRiskSchema(), examples=EXAMPLES)
@blueprint.response(200, answer_schema("CrackRiskAnswer"))
@refused_with(blueprint, 400, 401, 406, 413, 415, 422)
def crack_risk_view(request: CrackRiskRequest) -> Response:
    """How likely a pass is to crack along its centre or by quick chill, why, and what to change.

    A calculation: it stores nothing and may be repeated.
    """
    return json_response(crack_risk(request))
