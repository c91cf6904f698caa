"""Readings of one weld, as a gauge, a macro section or the eye gave them, in engine units.

A reading that is None was not taken: nothing is known of it and nothing is held against it.
"""

from collections.abc import Iterator
from dataclasses import dataclass, fields
from math import pi
from typing import Literal

from ...engine.rounding import SAME
from ..core.answers import Common
from ..joints.quality_sets import Quality
from ..joints.seams import Penetration

Loading = Literal["static", "cyclic-transverse", "cyclic-other"]
LOADINGS = ("static", "cyclic-transverse", "cyclic-other")
FlushEdition = Literal["aws-d1-1-2020", "aws-d1-1-2000"]
FLUSH_EDITIONS = ("aws-d1-1-2020", "aws-d1-1-2000")


@dataclass(frozen=True, slots=True)
class Required:
    """What the drawing asks for: an equal leg, or a throat, mm; or, of a butt, full penetration; one of them."""

    leg: float | None = None
    throat: float | None = None
    penetration: Literal["full"] | None = None


@dataclass(frozen=True, slots=True)
class Extent:
    """How long the weld is, and how long in total each imperfection is in the stretch its rule looks at, mm.

    The stretch is the worst 100 mm of weld by ISO 5817; by AWS D1.1 the worst 12 in for undercut, the whole weld for a
    throat that is short. One not told is taken for the whole weld.
    """

    of_weld: float
    throat: float | None = None
    undercut: float | None = None
    shrinkage_groove: float | None = None
    underfill: float | None = None
    root_concavity: float | None = None
    incomplete_penetration: float | None = None
    lack_of_fusion: float | None = None

    def told(self) -> Iterator[tuple[str, float]]:
        """Every imperfection whose length is told."""
        for field in fields(self):
            value = getattr(self, field.name)
            if field.name != "of_weld" and value is not None:
                yield field.name, value


@dataclass(frozen=True, slots=True)
class Flush:
    """A butt ground flush: how far under the surface of the thinner part, on what surface, by which edition."""

    thinning: float = 0.0
    faying: bool = False
    edition: FlushEdition = "aws-d1-1-2020"


@dataclass(frozen=True, slots=True, kw_only=True)
class Readings:
    """What may be read of any weld: depths, heights and diameters in mm, angles in rad."""

    thickness: tuple[float, float]
    required: Required
    quality: Quality
    loading: Loading | None = None
    reading_tolerance: float = 0.0
    extent: Extent | None = None
    undercut: float | None = None
    overlap: float | None = None
    toe_angle: float | None = None
    incomplete_penetration: float | None = None
    lack_of_fusion: float | None = None
    surface_pore: float | None = None
    internal_pore: float | None = None
    end_crater_pipe: float | None = None
    crack: bool | None = None
    burn_through: bool | None = None
    common: Common = Common()

    @property
    def thinner(self) -> float:
        """Thickness of the thinner part, mm."""
        return min(self.thickness)

    @property
    def unsound(self) -> bool:
        """Whether the weld is cracked or burnt through, so that no throat can be counted on."""
        return bool(self.crack or self.burn_through)

    def at_most(self, name: str) -> float | None:
        """Reading with the gauge's tolerance on it, mm; None when it was not taken.

        An imperfection read as nothing is not there: a gauge cannot show that, and the eye does.
        """
        read = getattr(self, name)
        return None if read is None else _off(float(read), self.reading_tolerance)

    def not_fused(self, off: float) -> float:
        """What is not fused of the throat, mm, when it was read ``off`` too small."""
        return _off(self.incomplete_penetration or 0.0, off) + _off(self.lack_of_fusion or 0.0, off)


def _off(read: float, off: float) -> float:
    """Reading of an imperfection that is ``off`` larger than read, mm; none is none."""
    return max(read + off, 0.0) if read > SAME else 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class FilletReadings(Readings):
    """Readings of one fillet."""

    legs: tuple[float, float]
    kind: Literal["fillet"] = "fillet"
    angle: float = pi / 2
    throat: float | None = None
    convexity: float | None = None
    hollow: float | None = None
    root_gap: float = 0.0
    penetration: Penetration = Penetration(0.0, "assumed")


@dataclass(frozen=True, slots=True, kw_only=True)
class ButtReadings(Readings):
    """Readings of one butt weld, welded from one side or from both; ``circumferential`` round a pipe."""

    kind: Literal["butt"] = "butt"
    sides: Literal[1, 2] = 1
    circumferential: bool = False
    face_width: float | None = None
    reinforcement: float | None = None
    underfill: float | None = None
    root_width: float | None = None
    excess_penetration: float | None = None
    root_concavity: float | None = None
    shrinkage_groove: float | None = None
    misalignment: float | None = None
    flush: Flush | None = None
