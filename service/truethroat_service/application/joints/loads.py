"""Loads that several capabilities are asked with, in engine units."""

from dataclasses import dataclass
from typing import Annotated

from .given import LONG, SIGNED_LINE_FORCE


@dataclass(frozen=True, slots=True)
class ForceComponents:
    """Force per length on one weld, signed as in ``engine.loads``."""

    normal: Annotated[float, SIGNED_LINE_FORCE, "Pulls part 2 off part 1 when positive."] = 0.0
    transverse: Annotated[float, SIGNED_LINE_FORCE, "Pushes to the side the weld is on when positive."] = 0.0
    longitudinal: Annotated[float, SIGNED_LINE_FORCE, "Runs along the weld."] = 0.0
    length: Annotated[float | None, LONG, "Length of the weld, where its length rules are to be checked."] = None
