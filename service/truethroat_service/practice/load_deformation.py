"""Load-deformation relation of fillet welds after Lesik and Kennedy, as the AISC Manual uses it (Part 8).

Deformations are per unit of leg, forces per unit of the nominal strength along the weld, so both are bare numbers.
"""

from dataclasses import dataclass
from math import pi

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Column, Real, minimum, sin

LESIK_KENNEDY = Source("AISC Steel Construction Manual", "Part 8, Lesik and Kennedy", "from memory")
ANGLE = Arg("rad", 0.0, pi / 2)


@formula("d_m", "0.209/(180*theta/pi + 2)**0.32", unit="", source=LESIK_KENNEDY, args={"theta": ANGLE})
def at_greatest_force(theta: Real) -> Real:
    """Deformation at the greatest force, per unit of leg."""
    return 0.209 / (180.0 * theta / pi + 2.0) ** 0.32


@formula(
    "d_u",
    "minimum(1.087/(180*theta/pi + 6)**0.65, 0.17)",
    unit="",
    source=LESIK_KENNEDY,
    args={"theta": ANGLE},
)
def at_rupture(theta: Real) -> Real:
    """Deformation at rupture, per unit of leg."""
    return minimum(1.087 / (180.0 * theta / pi + 6.0) ** 0.65, 0.17)


@formula(
    "k_f",
    "(1 + 0.50*sin(theta)**1.5)*(d/d_m*(1.9 - 0.9*d/d_m))**0.3",
    unit="",
    source=LESIK_KENNEDY,
    args={"theta": ANGLE, "d": Arg("", 0.0, 0.06), "d_m": Arg("", 0.049, 0.17)},
)
def force(theta: Real, d: Real, d_m: Real) -> Real:
    """Force per length, per unit of nominal strength along the weld; past the greatest force it falls again."""
    p = d / d_m
    return (1.0 + 0.50 * sin(theta) ** 1.5) * (p * (1.9 - 0.9 * p)) ** 0.3


@dataclass(frozen=True, slots=True)
class LesikKennedy:
    """The relation as ``engine.instantaneous_centre.Relation``."""

    def limit(self, theta: Column) -> Column:
        """Deformation at rupture."""
        return at_rupture.body(theta=theta)  # type: ignore[return-value]

    def force(self, theta: Column, deformation: Column) -> Column:
        """Force at a deformation."""
        return force.body(theta=theta, d=deformation, d_m=at_greatest_force.body(theta=theta))  # type: ignore[return-value]
