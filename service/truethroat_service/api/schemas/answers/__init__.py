"""Shapes of answers, as JSON schema: answers are built as plain dictionaries, and tests hold them against these.

Answers are open: a client must pass over fields it does not know.
"""

from . import (
    break_test,
    catalogue,
    common,
    fillet_size,
    finishing,
    groove_size,
    joint_plan,
    weld_group,
)
from .shapes import Json

COMPONENTS: dict[str, Json] = {
    **common.COMPONENTS,
    **fillet_size.COMPONENTS,
    **groove_size.COMPONENTS,
    **finishing.COMPONENTS,
    **weld_group.COMPONENTS,
    **break_test.COMPONENTS,
    **joint_plan.COMPONENTS,
    **catalogue.COMPONENTS,
}
