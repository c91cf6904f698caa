"""Shapes of answers, as JSON schema: answers are built as plain dictionaries, and tests hold them against these.

Answers are open: a client must pass over fields it does not know.
"""

from . import common, as_welded
from .shapes import Json

COMPONENTS: dict[str, Json] = {
    **common.COMPONENTS,
    **as_welded.COMPONENTS,
}
