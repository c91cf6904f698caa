"""Clauses 8.6.3.3 and 8.6.3.4: the fillet's throat, its length, and the heat-affected zone at its legs and beside it.

Forces are per length, so a stress is one of them over the throat, over a leg or over the part's thickness.
"""

from math import pi

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, cos, maximum, minimum, sin, sqrt, where
from ...engine.rounding import SAME
from . import clause

FILLET = clause("8.6.3.3")
HEAT_AFFECTED = clause("8.6.3.4")

FORCE = Arg("N/mm", -2000.0, 2000.0)
PLATES = Arg("rad", pi / 3, 2 * pi / 3)
STRENGTH = Arg("MPa", 90.0, 300.0)
FACTOR = Arg("", 1.0, 1.5)
LENGTH = Arg("mm", 20.0, 3000.0)
THROAT = Arg("mm", 2.0, 15.0)


@formula(
    "f_t",
    "sqrt((n*cos(psi/2) - t*sin(psi/2))**2 + 3*((n*sin(psi/2) + t*cos(psi/2))**2 + l**2))",
    unit="N/mm",
    source=FILLET,
    args={"n": FORCE, "t": FORCE, "l": FORCE, "psi": PLATES},
)
def on_throat(n: Real, t: Real, l: Real, psi: Real) -> Real:  # noqa: E741 - the component along the weld
    """Equivalent force per length on the throat, which halves the angle between the plates."""
    square = n * cos(psi / 2.0) - t * sin(psi / 2.0)
    across = n * sin(psi / 2.0) + t * cos(psi / 2.0)
    return sqrt(square * square + 3.0 * (across * across + l * l))


@formula(
    "f_leg_1",
    "sqrt(n**2 + 3*(t**2 + l**2))",
    unit="N/mm",
    source=HEAT_AFFECTED,
    args={"n": FORCE, "t": FORCE, "l": FORCE},
)
def on_leg_of_part_1(n: Real, t: Real, l: Real) -> Real:  # noqa: E741
    """Equivalent force per length where the weld is fused to part 1."""
    return sqrt(n * n + 3.0 * (t * t + l * l))


@formula(
    "f_leg_2",
    "sqrt((t*sin(psi) - n*cos(psi))**2 + 3*((n*sin(psi) + t*cos(psi))**2 + l**2))",
    unit="N/mm",
    source=HEAT_AFFECTED,
    args={"n": FORCE, "t": FORCE, "l": FORCE, "psi": PLATES},
)
def on_leg_of_part_2(n: Real, t: Real, l: Real, psi: Real) -> Real:  # noqa: E741
    """Equivalent force per length where the weld is fused to part 2."""
    square = t * sin(psi) - n * cos(psi)
    across = n * sin(psi) + t * cos(psi)
    return sqrt(square * square + 3.0 * (across * across + l * l))


@formula(
    "g_haz",
    "maximum(f_leg_1, f_leg_2)*gamma_Mw/f_u_haz",
    unit="mm",
    source=HEAT_AFFECTED,
    args={"f_leg_1": Arg("N/mm", 0, 4000), "f_leg_2": Arg("N/mm", 0, 4000), "f_u_haz": STRENGTH, "gamma_Mw": FACTOR},
)
def leg_in_heat_affected_zone(f_leg_1: Real, f_leg_2: Real, f_u_haz: Real, gamma_Mw: Real) -> Real:
    """Leg that the heat-affected zone needs at the fusion boundary."""
    return maximum(f_leg_1, f_leg_2) * gamma_Mw / f_u_haz


@formula(
    "a_req",
    "maximum(f_t*gamma_Mw/f_w, g_haz*cos(psi/2))",
    unit="mm",
    source=FILLET,
    args={"f_t": Arg("N/mm", 0, 4000), "f_w": STRENGTH, "g_haz": Arg("mm", 1, 40), "psi": PLATES, "gamma_Mw": FACTOR},
)
def required_throat(f_t: Real, f_w: Real, g_haz: Real, psi: Real, gamma_Mw: Real) -> Real:
    """Throat that the weld metal needs, or that goes with the leg the heat-affected zone needs."""
    return maximum(f_t * gamma_Mw / f_w, g_haz * cos(psi / 2.0))


@formula(
    "n_haz_Rd",
    "t*f_u_haz/gamma_Mw",
    unit="N/mm",
    source=HEAT_AFFECTED,
    args={"t": Arg("mm", 1.5, 40), "f_u_haz": STRENGTH, "gamma_Mw": FACTOR},
)
def tension_beside(t: Real, f_u_haz: Real, gamma_Mw: Real) -> Real:
    """Design resistance to tension across the weld of the heat-affected zone at its toe."""
    return t * f_u_haz / gamma_Mw


@formula(
    "v_haz_Rd",
    "t*f_u_haz/(sqrt(3)*gamma_Mw)",
    unit="N/mm",
    source=HEAT_AFFECTED,
    args={"t": Arg("mm", 1.5, 40), "f_u_haz": STRENGTH, "gamma_Mw": FACTOR},
)
def shear_beside(t: Real, f_u_haz: Real, gamma_Mw: Real) -> Real:
    """Design resistance to shear along the weld of the heat-affected zone at its toe."""
    return t * f_u_haz / (sqrt(3.0) * gamma_Mw)


@formula(
    "U_haz", "sqrt(n**2 + v**2)", unit="", source=HEAT_AFFECTED, args={"v": Arg("", 0.05, 1.5), "n": Arg("", 0.05, 1.5)}
)
def use_beside(v: Real, n: Real) -> Real:
    """Use made of the heat-affected zone at the toe by its shares in shear and in tension together."""
    return sqrt(n * n + v * v)


@formula(
    "a_counted",
    "where(L >= 8*a*(1 - same), a, 0*a)",
    unit="mm",
    source=FILLET,
    args={"a": THROAT, "L": Arg("mm", 10, 150), "same": Arg("", SAME, SAME)},
)
def counted_throat(a: Real, L: Real, same: Real) -> Real:
    """Throat that counts: none on a weld shorter than eight throats."""
    return where(L >= 8.0 * a * (1.0 - same), a, 0.0 * a)


@formula("a_most", "L/8", unit="mm", source=FILLET, args={"L": Arg("mm", 10, 150)})
def largest_throat(L: Real) -> Real:
    """Throat beyond which a weld of this length may not carry load."""
    return L / 8.0


@formula(
    "L_share",
    "minimum(1.2 - 0.2*L/(100*a), 1)",
    unit="",
    source=FILLET,
    args={"L": LENGTH, "a": THROAT},
)
def length_factor(L: Real, a: Real) -> Real:
    """Share of the length that counts where the load along it is uneven; the clause gives no lower bound."""
    return minimum(1.2 - 0.2 * L / (100.0 * a), 1.0)


@formula(
    "a_long",
    "maximum(a_req, (a_req + L/500)/1.2)",
    unit="mm",
    source=FILLET,
    args={"a_req": Arg("mm", 0.5, 15), "L": LENGTH},
)
def long_weld_throat(a_req: Real, L: Real) -> Real:
    """Throat whose reduced strength is still that of ``a_req``."""
    return maximum(a_req, (a_req + L / 500.0) / 1.2)
