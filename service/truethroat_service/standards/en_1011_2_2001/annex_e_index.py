"""Annex E: susceptibility of weld metal to centreline cracking (UCS), found on submerged-arc welds."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, maximum
from . import clause
from .c_3_method_b import Range

INDEX = clause("Annex E, UCS (as in TWI Job Knowledge 44)", "second-hand")
SCOPE = clause("Annex E, limits of UCS", "from memory")
SHAPE = clause("Annex E, UCS and the shape of the bead", "from memory")

LEAST_CARBON = 0.08
"""Share of carbon, %, that a smaller one is raised to."""

HIGH_RESISTANCE, LOW_RESISTANCE = 10.0, 30.0
"""Below the first weld metal resists cracking well, over the second it does not."""

CRITICAL = {"fillet": 20.0, "butt": 25.0}
"""UCS from which a bead about as deep as wide is likely to crack."""

SHALLOW, SHALLOW_GAIN = 0.8, 9.0
"""Depth over width up to which that value may be as much higher."""

RANGES = {
    "C": Range(0.03, 0.23, "%"),
    "S": Range(0.01, 0.05, "%"),
    "P": Range(0.01, 0.045, "%"),
    "Nb": Range(0.0, 0.07, "%"),
    "Si": Range(0.15, 0.65, "%"),
    "Mn": Range(0.45, 1.6, "%"),
}


@formula("C_u", "maximum(C, C_0)", unit="", source=INDEX, args={"C": Arg("", 0.03, 0.23), "C_0": Arg("", 0.08, 0.08)})
def carbon_counted(C: Real, C_0: Real) -> Real:
    """Share of carbon that counts, weight %."""
    return maximum(C, C_0)


@formula(
    "UCS",
    "230*C_u + 190*S + 75*P + 45*Nb - 12.3*Si - 5.4*Mn - 1",
    unit="",
    source=INDEX,
    args={
        "C_u": Arg("", 0.08, 0.23),
        "S": Arg("", 0.01, 0.05),
        "P": Arg("", 0.01, 0.045),
        "Nb": Arg("", 0, 0.07),
        "Si": Arg("", 0.15, 0.65),
        "Mn": Arg("", 0.45, 1.6),
    },
)
def susceptibility(C_u: Real, S: Real, P: Real, Nb: Real, Si: Real, Mn: Real) -> Real:
    """Units of crack susceptibility of the weld metal, of shares in weight %."""
    return 230.0 * C_u + 190.0 * S + 75.0 * P + 45.0 * Nb - 12.3 * Si - 5.4 * Mn - 1.0
