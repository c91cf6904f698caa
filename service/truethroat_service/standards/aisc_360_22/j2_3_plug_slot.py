"""Section J2.3: plug and slot welds: hole, filling, spacing, and strength in shear on the faying surface."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, ceil, maximum, where
from ...engine.rounding import SAME
from ...engine.units import INCH
from . import clause
from .chapter_b3_available_strength import Factors

SHEAR = Factors(phi=0.75, omega=2.00)
"""Table J2.5, plug and slot welds, shear on the weld metal."""

CLEAR = 5 * INCH / 16
SIXTEENTH = INCH / 16
OVER_LEAST = INCH / 8
FILLED_TO = 5 * INCH / 8
THICKNESS = Arg("mm", 3.0, 60.0, (FILLED_TO,))


@formula(
    "d_min",
    "(2*ceil(((t + c)/u - 1)/2 - same) + 1)*u",
    unit="mm",
    source=clause("J2.3b(b)"),
    args={
        "t": Arg("mm", 3.0, 60.0),
        "c": Arg("mm", CLEAR, CLEAR),
        "u": Arg("mm", SIXTEENTH, SIXTEENTH),
        "same": Arg("", SAME, SAME),
    },
)
def least_hole(t: Real, c: Real, u: Real, same: Real) -> Real:
    """Least diameter of a hole or width of a slot: 5/16 in over the thickness, up to the next odd sixteenth."""
    return (2.0 * ceil(((t + c) / u - 1.0) / 2.0 - same) + 1.0) * u


@formula(
    "d_max",
    "maximum(d_min + s, 2.25*h)",
    unit="mm",
    source=clause("J2.3b(b), the greater as in AWS D1.1", "from memory"),
    args={"d_min": Arg("mm", 12, 40), "s": Arg("mm", OVER_LEAST, OVER_LEAST), "h": Arg("mm", 3, 40)},
)
def largest_hole(d_min: Real, s: Real, h: Real) -> Real:
    """Largest diameter of a hole or width of a slot filled to a height ``h``."""
    return maximum(d_min + s, 2.25 * h)


@formula(
    "h_min",
    "where(t <= t_f*(1 + same), t, maximum(t/2, t_f))",
    unit="mm",
    source=clause("J2.3b(e)"),
    args={"t": THICKNESS, "t_f": Arg("mm", FILLED_TO, FILLED_TO), "same": Arg("", SAME, SAME)},
)
def least_filling(t: Real, t_f: Real, same: Real) -> Real:
    """Least height of filling: full up to 5/8 in, beyond it half the thickness and no less than 5/8 in."""
    return where(t <= t_f * (1.0 + same), t, maximum(t / 2.0, t_f))


@formula("L_max", "10*h", unit="mm", source=clause("J2.3b(c)"), args={"h": Arg("mm", 3, 40)})
def longest_slot(h: Real) -> Real:
    """Longest slot for a height of filling."""
    return 10.0 * h


@formula(
    "R_n",
    "0.60*F_EXX*A_w",
    unit="N",
    source=clause("Table J2.5, plug and slot welds; J2.3a"),
    args={"F_EXX": Arg("MPa", 400, 800), "A_w": Arg("mm**2", 50, 2000)},
)
def nominal_shear(F_EXX: Real, A_w: Real) -> Real:
    """Nominal strength of one plug or slot in shear on the faying surface."""
    return 0.60 * F_EXX * A_w


@formula(
    "R_avail", "phi*R_n", unit="N", source=clause("B3.1"), args={"R_n": Arg("N", 1e3, 1e6), "phi": Arg("", 0.75, 1.0)}
)
def design_shear(R_n: Real, phi: Real) -> Real:
    """Design strength of one plug, slot or fillet all round."""
    return phi * R_n


@formula(
    "R_avail",
    "R_n/Omega",
    unit="N",
    source=clause("B3.2"),
    args={"R_n": Arg("N", 1e3, 1e6), "Omega": Arg("", 1.5, 2.0)},
)
def allowable_shear(R_n: Real, Omega: Real) -> Real:
    """Allowable strength of one plug, slot or fillet all round."""
    return R_n / Omega
