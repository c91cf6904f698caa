"""Numbers of examples for tests that do not draw the profile's own."""

from collections.abc import Callable
from typing import Any

from hypothesis import settings

Test = Callable[..., Any]
OF_THE_SUITE = 100
"""Examples that the profile of the suite draws."""


def examples(count: int, **others: Any) -> Callable[[Test], Test]:
    """Draw `count` examples in the suite, and as many times more in another profile as that draws more of every test.

    `others` are settings that the test needs beside the profile's.
    """
    return settings(max_examples=count * settings().max_examples // OF_THE_SUITE, **others)
