"""Request for a fillet's size, in engine units."""

from dataclasses import dataclass
from math import pi
from typing import Literal

from ...engine.rule_set import Flange, Intermittent
from ..core.answers import Common
from ..joints.loads import ForceComponents
from ..joints.metals import Filler, Part
from ..joints.seams import Penetration
from .sizing import Basis, Kind


@dataclass(frozen=True, slots=True)
class Joint:
    """Joint of a request: angle between the plates on the first weld's side in rad, root gap in mm."""

    kind: Kind
    angle: float = pi / 2
    root_gap: float = 0.0
    sides: int = 1


@dataclass(frozen=True, slots=True)
class SharedForce:
    """Force in N shared by the welds, each of a length in mm, at an angle in rad to their axis."""

    force: float
    length: float
    angle: float


@dataclass(frozen=True, slots=True)
class ConcentricForce:
    """Force in N through the centroid of a group of one size: all lengths along it, and all across it, in mm."""

    force: float
    longitudinal_length: float
    transverse_length: float


@dataclass(frozen=True, slots=True)
class BalancedForce:
    """Force in N of a member held by two side welds, their lengths shared out about its centroid.

    ``length`` is that of both welds together, ``width`` the distance between them and ``centroid`` that of the member's
    centroid from the first, mm.
    """

    force: float
    length: float
    width: float
    centroid: float


Load = SharedForce | ForceComponents | ConcentricForce | BalancedForce


@dataclass(frozen=True, slots=True)
class TensionMember:
    """Tension member, part 2: width between its welds mm, area mm2 and eccentricity mm, None where not given."""

    width: float | None = None
    area: float | None = None
    eccentricity: float = 0.0


@dataclass(frozen=True, slots=True)
class Packing:
    """Packing between the parts of a lap, mm."""

    thickness: float


@dataclass(frozen=True, slots=True)
class FilletSizeRequest:
    """Request for a fillet's size."""

    rule_set: str
    joint: Joint
    parts: tuple[Part, Part]
    basis: Basis
    load: Load | None = None
    filler: Filler | None = None
    parameters: tuple[tuple[str, float], ...] = ()
    process: str | None = None
    position: str | None = None
    end_loaded: bool = False
    transverse_stiffener: bool = False
    ends: Literal["full", "craters"] = "full"
    root_bending: bool = False
    packing: Packing | None = None
    intermittent: Intermittent | None = None
    tension_member: TensionMember | None = None
    unstiffened_flange: Flange | None = None
    minimum_throat: str | None = None
    hss_end: bool | None = None
    edge_of: int | None = None
    leg_tolerance: float = 0.0
    penetration: Penetration | None = None
    size_by: Literal["leg", "throat"] | None = None
    size_step: float | None = None
    common: Common = Common()

    @property
    def length(self) -> float | None:
        """Length of each weld, mm; of the shorter of two balanced ones; None where it is not known."""
        load = self.load
        if isinstance(load, SharedForce | ForceComponents):
            return load.length
        if isinstance(load, BalancedForce):
            return load.length * min(load.centroid, load.width - load.centroid) / load.width
        return None
