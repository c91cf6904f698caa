"""Clauses 4.5.1 and 4.5.2: the length and the throat a fillet must have to carry load."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, maximum, minimum, sqrt, where
from ...engine.rounding import SAME
from . import clause

LEAST_THROAT = 3.0
"""Least throat, mm (4.5.2(2))."""

LEAST_LENGTH = 30.0
"""Least effective length, mm (4.5.1(2)); and not less than six throats."""


@formula(
    "a_counted",
    "where((L >= L_30*(1 - same)) & (L >= 6*a*(1 - same)), a, 0*a)",
    unit="mm",
    source=clause("4.5.1(2)"),
    args={
        "a": Arg("mm", 3, 15),
        "L": Arg("mm", 10, 120, (30.0,)),
        "L_30": Arg("mm", LEAST_LENGTH, LEAST_LENGTH),
        "same": Arg("", SAME, SAME),
    },
)
def counted_throat(a: Real, L: Real, L_30: Real, same: Real) -> Real:
    """Throat that counts: none on a weld shorter than 30 mm or six throats."""
    return where((L >= L_30 * (1.0 - same)) & (L >= 6.0 * a * (1.0 - same)), a, 0.0 * a)


@formula(
    "a_most",
    "where(L >= L_30*(1 - same), L/6, 0*L)",
    unit="mm",
    source=clause("4.5.1(2)"),
    args={
        "L": Arg("mm", 10, 120, (30.0,)),
        "L_30": Arg("mm", LEAST_LENGTH, LEAST_LENGTH),
        "same": Arg("", SAME, SAME),
    },
)
def largest_throat(L: Real, L_30: Real, same: Real) -> Real:
    """Throat beyond which a weld of this length may not carry load; none below 30 mm."""
    return where(L >= L_30 * (1.0 - same), L / 6.0, 0.0 * L)


@formula(
    "l_eff",
    "maximum(L - 2*a, 0*L)",
    unit="mm",
    source=clause("4.5.1(1)"),
    args={"L": Arg("mm", 10, 120), "a": Arg("mm", 3, 15)},
)
def length_less_ends(L: Real, a: Real) -> Real:
    """Effective length of a weld not full size to its ends: two throats less."""
    return maximum(L - 2.0 * a, 0.0 * L)


@formula(
    "a_ends",
    "(L - sqrt(maximum(L**2 - 8*a_req*L, 0*L**2)))/4",
    unit="mm",
    source=clause("4.5.1(1) solved for the throat"),
    args={"a_req": Arg("mm", 0.5, 15), "L": Arg("mm", 30, 200)},
)
def throat_less_ends(a_req: Real, L: Real) -> Real:
    """Throat that carries, over the length less two of itself, what ``a_req`` carries over the whole; else ``L/4``."""
    return (L - sqrt(maximum(L * L - 8.0 * a_req * L, 0.0 * L))) / 4.0


@formula(
    "a_most",
    "maximum(minimum(L/8, (L - L_30)/2), 0*L)",
    unit="mm",
    source=clause("4.5.1(1) and (2)"),
    args={"L": Arg("mm", 10, 120), "L_30": Arg("mm", LEAST_LENGTH, LEAST_LENGTH)},
)
def largest_throat_less_ends(L: Real, L_30: Real) -> Real:
    """Throat beyond which what is left of the weld between its ends may not carry load."""
    return maximum(minimum(L / 8.0, (L - L_30) / 2.0), 0.0 * L)
