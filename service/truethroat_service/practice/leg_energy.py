"""Leg of a single-pass fillet against its arc energy, and the bead that a deposition rate lays."""

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real, sqrt
from ..engine.units import INCH

LEG = Source(
    "D. K. Miller, Fabricators' and Erectors' Guide to Welded Steel Construction, 1999",
    "leg = sqrt(H/500), in inches and kJ/in",
    "from memory",
)
BEAD = Source("", "deposited metal over the length laid", "geometry")

ENERGY_PER_SQUARE = 500.0 / INCH**3
"""Arc energy over the leg squared, kJ/mm3: 500 kJ/in for a leg of 1 in."""

PER_SQUARE = Arg("kJ/mm**3", ENERGY_PER_SQUARE, ENERGY_PER_SQUARE)


@formula("z_E", "sqrt(E/h)", unit="mm", source=LEG, args={"E": Arg("kJ/mm", 0.2, 6), "h": PER_SQUARE})
def leg_of_energy(E: Real, h: Real) -> Real:
    """Leg that a single pass of this arc energy usually lays."""
    return sqrt(E / h)


@formula("E_z", "h*z**2", unit="kJ/mm", source=LEG, args={"z": Arg("mm", 2, 16), "h": PER_SQUARE})
def energy_of_leg(z: Real, h: Real) -> Real:
    """Arc energy that a single pass of this leg usually takes."""
    return h * z**2


@formula(
    "A_laid",
    "G/(rho*v)",
    unit="mm**2",
    source=BEAD,
    args={"G": Arg("kg/s", 1e-4, 5e-3), "rho": Arg("kg/mm**3", 7e-6, 8e-6), "v": Arg("mm/s", 1, 30)},
)
def bead_area(G: Real, rho: Real, v: Real) -> Real:
    """Area of the bead that a deposition rate lays."""
    return G / (rho * v)


@formula("z_A", "sqrt(2*A_laid)", unit="mm", source=BEAD, args={"A_laid": Arg("mm**2", 5, 150)})
def leg_of_area(A_laid: Real) -> Real:
    """Leg of a flat fillet of equal legs at 90 deg with this area."""
    return sqrt(2.0 * A_laid)
