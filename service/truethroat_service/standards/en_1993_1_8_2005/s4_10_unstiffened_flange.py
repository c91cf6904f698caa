"""Clause 4.10: a plate welded across the unstiffened flange of an I, H or other section."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, minimum, sqrt
from . import clause

THICKNESS = Arg("mm", 4.0, 40.0)
YIELD = Arg("MPa", 235.0, 460.0)


@formula("s", "sqrt(2)*a_w", unit="mm", source=clause("4.10(2)", "from memory"), args={"a_w": Arg("mm", 3, 15)})
def weld_leg(a_w: Real) -> Real:
    """What the weld between web and flange adds beside a welded section's web; a rolled one has its root radius."""
    return sqrt(2.0) * a_w


@formula(
    "k",
    "minimum(t_f/t_p*(f_y_f/f_y_p), 1)",
    unit="",
    source=clause("4.10(2), eq. (4.6b)", "from memory"),
    args={"t_f": THICKNESS, "t_p": THICKNESS, "f_y_f": YIELD, "f_y_p": YIELD},
)
def flange_share(t_f: Real, t_p: Real, f_y_f: Real, f_y_p: Real) -> Real:
    """How far the flange spreads the plate's force, 1 at most."""
    return minimum(t_f / t_p * (f_y_f / f_y_p), 1.0)


@formula(
    "b_eff",
    "t_w + 2*s + 7*k*t_f",
    unit="mm",
    source=clause("4.10(2), eq. (4.6a)", "from memory"),
    args={"t_w": THICKNESS, "s": Arg("mm", 4, 40), "k": Arg("", 0.3, 1), "t_f": THICKNESS},
)
def effective_width(t_w: Real, s: Real, k: Real, t_f: Real) -> Real:
    """Width of the plate that an I or H section's flange holds."""
    return t_w + 2.0 * s + 7.0 * k * t_f


@formula(
    "b_eff",
    "2*t_w + 5*k*t_f",
    unit="mm",
    source=clause("4.10(4)", "from memory"),
    args={"t_w": THICKNESS, "k": Arg("", 0.3, 1), "t_f": THICKNESS},
)
def effective_width_of_box(t_w: Real, k: Real, t_f: Real) -> Real:
    """Width of the plate that the flange of a box or channel holds, the plate being about as wide as the flange."""
    # The clause gives 2 t_w + 5 t_f, and at most this; k is never over 1, so this is always the lesser.
    return 2.0 * t_w + 5.0 * k * t_f


@formula(
    "b_least",
    "f_y_p/f_u_p*b_p",
    unit="mm",
    source=clause("4.10(3), eq. (4.7)", "from memory"),
    args={"f_y_p": YIELD, "f_u_p": Arg("MPa", 340, 700), "b_p": Arg("mm", 40, 600)},
)
def least_width(f_y_p: Real, f_u_p: Real, b_p: Real) -> Real:
    """Width below which the flange must be stiffened."""
    return f_y_p / f_u_p * b_p


@formula(
    "F_plate",
    "b_held*r_p",
    unit="N",
    source=clause("4.10(2), with EN 1993-1-1 6.2.3", "from memory"),
    args={"b_held": Arg("mm", 20, 600), "r_p": Arg("N/mm", 900, 20000)},
)
def plate_resistance(b_held: Real, r_p: Real) -> Real:
    """Design resistance of the plate over the width that the flange holds."""
    return b_held * r_p
