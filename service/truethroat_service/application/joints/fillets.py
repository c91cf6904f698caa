"""Size of a fillet as answers show it."""

from dataclasses import dataclass

from ...engine.numeric import Real
from ...engine.section import equal_leg_throat
from ..core.shape import Length


@dataclass(frozen=True, slots=True)
class FilletSize:
    """Size of a fillet."""

    leg: Length
    throat: Length
    source: str


def fillet_size_of(leg: float, psi: Real, source: str) -> FilletSize:
    """Size by a leg between plates at an angle in rad."""
    return FilletSize(leg, float(equal_leg_throat.body(z=leg, psi=psi)), source)
