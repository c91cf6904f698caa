"""Request for a weld group, in engine units."""

from dataclasses import dataclass
from typing import Literal

from ...practice.weld_patterns import Piece
from ..core.answers import Common
from ..joints.metals import Filler, Part

Method = Literal["elastic", "instantaneous-centre"]


@dataclass(frozen=True, slots=True)
class Vector:
    """Three components along x, y and z."""

    x: float = 0.0
    y: float = 0.0
    z: float = 0.0


@dataclass(frozen=True, slots=True)
class GroupLoad:
    """Force in N acting at a place in mm, and moment in N mm."""

    force: Vector = Vector()
    at: Vector = Vector()
    moment: Vector = Vector()


@dataclass(frozen=True, slots=True)
class WeldGroupRequest:
    """Request for a weld group, in engine units; ``pieces`` as in ``practice.weld_patterns``."""

    rule_set: str
    group: tuple[Piece, ...]
    load: GroupLoad
    parts: tuple[Part, Part]
    method: Method = "elastic"
    count: int = 1
    filler: Filler | None = None
    parameters: tuple[tuple[str, float], ...] = ()
    leg: float | None = None
    throat: float | None = None
    size_by: Literal["leg", "throat"] | None = None
    size_step: float | None = None
    common: Common = Common()
