"""Shapes of answers, as JSON schema: answers are built as plain dictionaries, and tests hold them against these.

Answers are open: a client must pass over fields it does not know.
"""

from . import common, groove_size, weld_group, as_welded, joint_plan
from .shapes import Json

COMPONENTS: dict[str, Json] = {
    **common.COMPONENTS,
    **groove_size.COMPONENTS,
    **weld_group.COMPONENTS,
    **as_welded.COMPONENTS,
    **joint_plan.COMPONENTS,
}
