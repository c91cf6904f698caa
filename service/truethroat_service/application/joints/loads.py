"""Loads that several capabilities are asked with, in engine units."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class ForceComponents:
    """Force per length on one weld, N/mm, signed as in ``engine.loads``; length in mm where given."""

    normal: float = 0.0
    transverse: float = 0.0
    longitudinal: float = 0.0
    length: float | None = None
