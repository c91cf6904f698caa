"""Size of a fillet as answers show it, and the step it is rounded up to."""

from dataclasses import dataclass

from ...engine.numeric import Real
from ...engine.section import equal_leg_throat
from ...engine.units import INCH
from ..core.quantities import UnitSystem
from ..core.shape import Length
from .given import Sizing


@dataclass(frozen=True, slots=True)
class FilletSize:
    """Size of a fillet."""

    leg: Length
    throat: Length
    source: str


def fillet_size_of(leg: float, psi: Real, source: str) -> FilletSize:
    """Size by a leg between plates at an angle in rad."""
    return FilletSize(leg, float(equal_leg_throat.body(z=leg, psi=psi)), source)


def usual_step(units: UnitSystem, size_by: Sizing) -> float:
    """Step of a size, mm, when a request gives none."""
    if units == "us":
        return INCH / 16
    return 0.5 if size_by == "throat" else 1.0
