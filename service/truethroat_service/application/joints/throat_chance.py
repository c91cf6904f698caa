"""Chance that the throat left is short, from the tolerances of the lengths it is made of.

A tolerance says how far a length may be off; a spread says how it is off within that: evenly, or normally with so many
standard deviations to the tolerance. The lengths are taken as independent of each other.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Annotated, Literal

import numpy as np

from ...engine import even_points
from ...engine.formula import Source, off_the_sheet
from ...engine.numeric import maximum
from ...engine.rounding import SAME, at_least
from ..core.shape import Numbered
from .seams import Lengths, Shape, throats_left

EVEN = Source("JCGM 100:2008", "4.3.7, bounds with nothing known between them: evenly spread", "from memory")
NORMAL = Source("JCGM 100:2008", "4.3.4, a tolerance of so many standard deviations", "from memory")


USUAL_DEVIATIONS = 2.0
"""Standard deviations to a tolerance; common practice, no source."""


@dataclass(frozen=True, slots=True)
class Spread:
    """How lengths lie within their tolerances."""

    distribution: Annotated[
        Literal["even", "normal"],
        "Evenly between the ends of the tolerance, where nothing more is known; or normally about the middle.",
    ] = "even"
    deviations: Annotated[
        float | None,
        Numbered(1.0, 6.0),
        "Standard deviations that a tolerance is, of a normal distribution; two by default.",
    ] = None

    @property
    def source(self) -> Source:
        """Where the reading of a tolerance stands."""
        return EVEN if self.distribution == "even" else NORMAL


def chance_short(
    shape: Shape, lengths: Lengths, tolerances: Mapping[str, float], required: float, spread: Spread
) -> float:
    """Share of sections whose throat left is under ``required``, mm; ``tolerances``, mm, are by the names of lengths.

    No length falls to nothing, but for the face, which is hollow under it.
    """
    loose = {name: abs(tolerance) for name, tolerance in tolerances.items() if tolerance}
    if spread.distribution == "even":
        offsets = [2.0 * column - 1.0 for column in even_points.uniform(len(loose))]
    else:
        offsets = [column / (spread.deviations or USUAL_DEVIATIONS) for column in even_points.normal(len(loose))]
    moved = {name: getattr(lengths, name) + loose[name] * offset for name, offset in zip(loose, offsets, strict=True)}
    kept = {name: column if name == "face" else maximum(column, SAME) for name, column in moved.items()}
    with off_the_sheet():
        left = throats_left(shape, replace(lengths, **kept))
    return 1.0 - float(np.mean(at_least(left, required)))
