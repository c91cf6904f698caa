"""Least throat beside a thick part that draws the heat away, by DIN 18800-1."""

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real, sqrt

DIN_18800 = Source("DIN 18800-1", "least throat by the thickest part", "from memory")

MILLIMETRE = 1.0
"""Length, mm, that the rule counts in."""


@formula(
    "a_DIN",
    "sqrt(t*u) - 0.5*u",
    unit="mm",
    source=DIN_18800,
    args={"t": Arg("mm", 3, 100), "u": Arg("mm", MILLIMETRE, MILLIMETRE)},
)
def least_throat(t: Real, u: Real) -> Real:
    """Least throat, by the thickest part."""
    return sqrt(t * u) - 0.5 * u
