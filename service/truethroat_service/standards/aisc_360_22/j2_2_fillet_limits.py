"""Section J2.2b: least and largest fillet, least length, and the reduction for long end-loaded welds.

The rules are written in inches and used in inches, converted exactly; lengths here are millimetres.
"""

from math import pi

from ...engine.formula import Arg, Table, formula
from ...engine.numeric import Real, cos, minimum, sqrt, where
from ...engine.rounding import SAME
from ...engine.units import INCH, inches
from . import clause

TABLE_J2_4 = Table(
    "table_J2_4",
    "mm",
    "mm",
    limits=inches(1 / 4, 1 / 2, 3 / 4),
    values=inches(1 / 8, 3 / 16, 1 / 4, 5 / 16),
    source=clause("Table J2.4"),
)
EDGE_RULE_FROM = INCH / 4
EDGE_SETBACK = INCH / 16
LENGTH = Arg("mm", 10.0, 3000.0)
LEG = Arg("mm", 1.0, 20.0)
PLATES = Arg("rad", pi / 3, 3 * pi / 4)
THROAT = Arg("mm", 0.5, 15.0)
PENETRATION = Arg("mm", 0.0, 2.0)


@formula(
    "w_min",
    "table_J2_4(t)",
    unit="mm",
    source=clause("J2.2b(a), Table J2.4"),
    args={"t": Arg("mm", 1, 60, TABLE_J2_4.limits)},
    tables=(TABLE_J2_4,),
)
def minimum_leg(t: Real) -> Real:
    """Least leg, by the thinner part joined."""
    return TABLE_J2_4(t)


@formula(
    "w_max",
    "where(t < t_rule*(1 - same), t, t - setback)",
    unit="mm",
    source=clause("J2.2b(b)"),
    args={
        "t": Arg("mm", 1, 40, (EDGE_RULE_FROM,)),
        "t_rule": Arg("mm", EDGE_RULE_FROM, EDGE_RULE_FROM),
        "setback": Arg("mm", EDGE_SETBACK, EDGE_SETBACK),
        "same": Arg("", SAME, SAME),
    },
)
def maximum_leg(t: Real, t_rule: Real, setback: Real, same: Real) -> Real:
    """Largest leg along an edge of thickness ``t``; the sixteenth leaves the edge to be seen."""
    return where(t < t_rule * (1.0 - same), t, t - setback)


@formula("w_counted", "minimum(w, L/4)", unit="mm", source=clause("J2.2b(c)"), args={"w": LEG, "L": Arg("mm", 4, 120)})
def counted_leg(w: Real, L: Real) -> Real:
    """Leg that counts in strength: a weld shorter than four legs counts as a quarter of its length."""
    return minimum(w, L / 4.0)


@formula(
    "beta",
    "where(L/w <= 100, 1, where(L/w <= 300, 1.2 - 0.002*L/w, 180*w/L))",
    unit="",
    source=clause("J2.2b(d), Eq. J2-1"),
    args={"L": LENGTH, "w": LEG},
)
def length_factor(L: Real, w: Real) -> Real:
    """Share of an end-loaded weld's length that counts."""
    slenderness = L / w
    return where(slenderness <= 100.0, 1.0, where(slenderness <= 300.0, 1.2 - 0.002 * slenderness, 180.0 / slenderness))


@formula(
    "w_a",
    "(a_req - p)/cos(psi/2)",
    unit="mm",
    source=clause("J2.2b(d)(1)"),
    args={"a_req": THROAT, "psi": PLATES, "p": PENETRATION},
)
def leg_at_full_length(a_req: Real, psi: Real, p: Real) -> Real:
    """Leg, were the whole length to count."""
    return (a_req - p) / cos(psi / 2.0)


@formula(
    "w_b",
    "(b + sqrt(b**2 + 0.0096*cos(psi/2)*L*p))/(2.4*cos(psi/2))",
    unit="mm",
    source=clause("J2.2b(d)(2), Eq. J2-1 solved for the leg"),
    args={"b": Arg("mm", 0.5, 15), "L": LENGTH, "psi": PLATES, "p": PENETRATION},
)
def leg_at_reduced_length(b: Real, L: Real, psi: Real, p: Real) -> Real:
    """Leg, were the length between 100 and 300 legs."""
    k = cos(psi / 2.0)
    return (b + sqrt(b * b + 0.0096 * k * L * p)) / (2.4 * k)


@formula(
    "b",
    "a_req + 0.002*L*cos(psi/2) - 1.2*p",
    unit="mm",
    source=clause("J2.2b(d)(2), Eq. J2-1 solved for the leg"),
    args={"a_req": THROAT, "L": LENGTH, "psi": PLATES, "p": PENETRATION},
)
def linear_term(a_req: Real, L: Real, psi: Real, p: Real) -> Real:
    """Linear term of the equation for that leg."""
    return a_req + 0.002 * L * cos(psi / 2.0) - 1.2 * p


@formula(
    "w_c",
    "(sqrt(p**2 + a_req*L*cos(psi/2)/45) - p)/(2*cos(psi/2))",
    unit="mm",
    source=clause("J2.2b(d)(3), solved for the leg"),
    args={"a_req": THROAT, "L": LENGTH, "psi": PLATES, "p": PENETRATION},
)
def leg_at_180_legs(a_req: Real, L: Real, psi: Real, p: Real) -> Real:
    """Leg, were the length more than 300 legs, of which 180 count."""
    k = cos(psi / 2.0)
    return (sqrt(p * p + a_req * L * k / 45.0) - p) / (2.0 * k)


@formula(
    "z_req",
    "where(100*w_a >= L, w_a, where(300*w_b >= L, w_b, w_c))",
    unit="mm",
    source=clause("J2.2b(d)"),
    args={"w_a": Arg("mm", 1, 20), "w_b": Arg("mm", 1, 20), "w_c": Arg("mm", 1, 20), "L": LENGTH},
)
def long_weld_leg(w_a: Real, w_b: Real, w_c: Real, L: Real) -> Real:
    """Leg of an end-loaded weld: of the three, the one whose own length ratio holds."""
    return where(100.0 * w_a >= L, w_a, where(300.0 * w_b >= L, w_b, w_c))
