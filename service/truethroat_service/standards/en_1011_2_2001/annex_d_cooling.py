"""Annex D: cooling time t8/5 between 800 and 500 degC of unalloyed and low-alloy ferritic steel.

Heat that spreads in depth and breadth is three-dimensional flow, heat that a thin plate lets spread in breadth alone is
two-dimensional; the slower cooling of the two is the one that applies. ``F_2`` and ``F_3`` are the factors of the seam.
"""

from dataclasses import dataclass

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, maximum, minimum, sqrt
from . import clause

COOLING = clause("Annex D (formulas as in the SSAB Welding Handbook, p. 17)", "second-hand")
SLOWER = clause("Annex D, the slower cooling applies; derived from its two formulas", "from memory")
SEAM_FACTORS = clause("Annex D, seam factors F2 and F3", "from memory")
FERRITIC = clause("Annex D, unalloyed and low-alloy ferritic steel", "second-hand")

THREE = {"c_3": 6700.0, "e_3": 5.0}
"""Three-dimensional flow: s degC mm/kJ, and s mm/kJ a degree of preheat."""

TWO = {"c_2": 4300e5, "e_2": 4.3e5}
"""Two-dimensional flow: s degC2 mm4/kJ2, and s degC mm4/kJ2 a degree of preheat."""

RANGE = {"T_5": 500.0, "T_8": 800.0}
"""Temperatures between which the time counts, degC."""

HEAT, PLATE, START, FACTOR = Arg("kJ/mm", 0.2, 6), Arg("mm", 2, 80), Arg("degC", -20, 350), Arg("", 0.4, 1)
TIME = Arg("s", 0.5, 120)
C_3, E_3 = Arg("s*degC*mm/kJ", 6700, 6700), Arg("s*mm/kJ", 5, 5)
C_2, E_2 = Arg("s*degC**2*mm**4/kJ**2", 4300e5, 4300e5), Arg("s*degC*mm**4/kJ**2", 4.3e5, 4.3e5)
T_5, T_8 = Arg("degC", 500, 500), Arg("degC", 800, 800)


@dataclass(frozen=True, slots=True)
class SeamFactors:
    """Factors of a seam; ``two`` runs between its ends as Q/d changes, by a curve that is not at hand."""

    two: tuple[float, float]
    three: float


SEAMS = {
    "plate": SeamFactors((1.0, 1.0), 1.0),
    "butt-fill": SeamFactors((0.9, 0.9), 0.9),
    "corner-fillet": SeamFactors((0.67, 0.9), 0.67),
    "tee-fillet": SeamFactors((0.45, 0.67), 0.67),
}


@formula(
    "t_3",
    "(c_3 - e_3*T_0)*Q*(1/(T_5 - T_0) - 1/(T_8 - T_0))*F_3",
    unit="s",
    source=COOLING,
    args={"Q": HEAT, "T_0": START, "F_3": FACTOR, "c_3": C_3, "e_3": E_3, "T_5": T_5, "T_8": T_8},
)
def time_in_thick_plate(Q: Real, T_0: Real, F_3: Real, c_3: Real, e_3: Real, T_5: Real, T_8: Real) -> Real:
    """Cooling time t8/5 in three-dimensional flow."""
    return (c_3 - e_3 * T_0) * Q * (1.0 / (T_5 - T_0) - 1.0 / (T_8 - T_0)) * F_3


@formula(
    "t_2",
    "(c_2 - e_2*T_0)*(Q/d)**2*(1/(T_5 - T_0)**2 - 1/(T_8 - T_0)**2)*F_2",
    unit="s",
    source=COOLING,
    args={"Q": HEAT, "d": PLATE, "T_0": START, "F_2": FACTOR, "c_2": C_2, "e_2": E_2, "T_5": T_5, "T_8": T_8},
)
def time_in_thin_plate(Q: Real, d: Real, T_0: Real, F_2: Real, c_2: Real, e_2: Real, T_5: Real, T_8: Real) -> Real:
    """Cooling time t8/5 in two-dimensional flow."""
    return (c_2 - e_2 * T_0) * (Q / d) ** 2 * (1.0 / (T_5 - T_0) ** 2 - 1.0 / (T_8 - T_0) ** 2) * F_2


@formula("t_85", "maximum(t_3, t_2)", unit="s", source=SLOWER, args={"t_3": TIME, "t_2": TIME})
def cooling_time(t_3: Real, t_2: Real) -> Real:
    """Cooling time t8/5 that applies."""
    return maximum(t_3, t_2)


@formula(
    "d_t",
    "sqrt((c_2 - e_2*T_0)/(c_3 - e_3*T_0)*Q*(1/(T_5 - T_0) + 1/(T_8 - T_0))*F_2/F_3)",
    unit="mm",
    source=SLOWER,
    args={
        "Q": HEAT,
        "T_0": START,
        "F_2": FACTOR,
        "F_3": FACTOR,
        "c_2": C_2,
        "e_2": E_2,
        "c_3": C_3,
        "e_3": E_3,
        "T_5": T_5,
        "T_8": T_8,
    },
)
def transition_thickness(
    Q: Real, T_0: Real, F_2: Real, F_3: Real, c_2: Real, e_2: Real, c_3: Real, e_3: Real, T_5: Real, T_8: Real
) -> Real:
    """Thickness at which the two flows give one cooling time; a thicker plate cools in three dimensions."""
    spread = 1.0 / (T_5 - T_0) + 1.0 / (T_8 - T_0)
    return sqrt((c_2 - e_2 * T_0) / (c_3 - e_3 * T_0) * Q * spread * F_2 / F_3)


@formula(
    "Q_3",
    "t/((c_3 - e_3*T_0)*(1/(T_5 - T_0) - 1/(T_8 - T_0))*F_3)",
    unit="kJ/mm",
    source=clause("Annex D, three-dimensional flow solved for the heat input", "second-hand"),
    args={"t": TIME, "T_0": START, "F_3": FACTOR, "c_3": C_3, "e_3": E_3, "T_5": T_5, "T_8": T_8},
)
def heat_in_thick_plate(t: Real, T_0: Real, F_3: Real, c_3: Real, e_3: Real, T_5: Real, T_8: Real) -> Real:
    """Heat input that cools in a given time in three-dimensional flow."""
    return t / ((c_3 - e_3 * T_0) * (1.0 / (T_5 - T_0) - 1.0 / (T_8 - T_0)) * F_3)


@formula(
    "Q_2",
    "d*sqrt(t/((c_2 - e_2*T_0)*(1/(T_5 - T_0)**2 - 1/(T_8 - T_0)**2)*F_2))",
    unit="kJ/mm",
    source=clause("Annex D, two-dimensional flow solved for the heat input", "second-hand"),
    args={"t": TIME, "d": PLATE, "T_0": START, "F_2": FACTOR, "c_2": C_2, "e_2": E_2, "T_5": T_5, "T_8": T_8},
)
def heat_in_thin_plate(t: Real, d: Real, T_0: Real, F_2: Real, c_2: Real, e_2: Real, T_5: Real, T_8: Real) -> Real:
    """Heat input that cools in a given time in two-dimensional flow."""
    return d * sqrt(t / ((c_2 - e_2 * T_0) * (1.0 / (T_5 - T_0) ** 2 - 1.0 / (T_8 - T_0) ** 2) * F_2))


@formula(
    "Q_t",
    "minimum(Q_3, Q_2)",
    unit="kJ/mm",
    source=SLOWER,
    args={"Q_3": HEAT, "Q_2": HEAT},
)
def heat_for_cooling_time(Q_3: Real, Q_2: Real) -> Real:
    """Heat input that cools in a given time: more of it would cool slower in one of the flows."""
    return minimum(Q_3, Q_2)
