"""Deposited metal."""

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real

STEEL = 7.85e-6
"""Density of carbon steel, kg/mm3; common practice, no source."""

CARBON_STEEL = Source("", "carbon steel at 7850 kg/m3", "common practice, no source")


@formula(
    "m",
    "rho*A",
    unit="kg/mm",
    source=CARBON_STEEL,
    args={"rho": Arg("kg/mm**3", 2e-6, 9e-6), "A": Arg("mm**2", 1, 500)},
)
def mass_per_length(rho: Real, A: Real) -> Real:
    """Deposited mass per length of weld."""
    return rho * A
