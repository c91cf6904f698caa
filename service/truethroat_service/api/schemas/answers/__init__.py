"""Shapes of answers, as JSON schema: answers are built as plain dictionaries, and tests hold them against these.

Answers are open: a client must pass over fields it does not know.
"""

from . import (
    as_welded,
    break_test,
    catalogue,
    common,
    crack_risk,
    distortion,
    filler_quantity,
    fillet_size,
    finishing,
    heat,
    joint_plan,
)
from .shapes import Json

COMPONENTS: dict[str, Json] = {
    **common.COMPONENTS,
    **fillet_size.COMPONENTS,
    **finishing.COMPONENTS,
    **as_welded.COMPONENTS,
    **heat.COMPONENTS,
    **crack_risk.COMPONENTS,
    **filler_quantity.COMPONENTS,
    **distortion.COMPONENTS,
    **break_test.COMPONENTS,
    **joint_plan.COMPONENTS,
    **catalogue.COMPONENTS,
}
