"""Chapter D: a tension member held by longitudinal welds alone, with its shear lag (Table D3.1, case 4)."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real
from . import clause

LENGTH = Arg("mm", 60.0, 600.0)
WIDTH = Arg("mm", 30.0, 400.0)
AREA = Arg("mm**2", 200.0, 20000.0)
STRENGTH = Arg("MPa", 200.0, 800.0)


@formula(
    "U",
    "3*l**2/(3*l**2 + w**2)*(1 - x_bar/l)",
    unit="",
    source=clause("Table D3.1, case 4"),
    args={"l": LENGTH, "w": WIDTH, "x_bar": Arg("mm", 0, 50)},
)
def shear_lag(l: Real, w: Real, x_bar: Real) -> Real:  # noqa: E741 - the symbol of the table
    """Shear lag factor: of the mean length of the welds, the width between them and the connection's eccentricity."""
    return 3.0 * l * l / (3.0 * l * l + w * w) * (1.0 - x_bar / l)


@formula("A_e", "A_n*U", unit="mm**2", source=clause("D3, Eq. D3-1"), args={"A_n": AREA, "U": Arg("", 0, 1)})
def effective_area(A_n: Real, U: Real) -> Real:
    """Effective net area; no hole is deducted at a weld, so the net area is the whole."""
    return A_n * U


@formula("P_n", "F_y*A_g", unit="N", source=clause("D2(a), Eq. D2-1"), args={"F_y": STRENGTH, "A_g": AREA})
def tension_yield(F_y: Real, A_g: Real) -> Real:
    """Nominal strength of the member in yielding."""
    return F_y * A_g


@formula("P_n", "F_u*A_e", unit="N", source=clause("D2(b), Eq. D2-2"), args={"F_u": STRENGTH, "A_e": AREA})
def tension_rupture(F_u: Real, A_e: Real) -> Real:
    """Nominal strength of the member in rupture."""
    return F_u * A_e


@formula(
    "P_avail_lrfd",
    "phi*P_n",
    unit="N",
    source=clause("D2, by B3.1"),
    args={"P_n": Arg("N", 1e4, 1e7), "phi": Arg("", 0.75, 0.9)},
)
def design_tension(P_n: Real, phi: Real) -> Real:
    """Design tensile strength of the member."""
    return phi * P_n


@formula(
    "P_avail_asd",
    "P_n/Omega",
    unit="N",
    source=clause("D2, by B3.2"),
    args={"P_n": Arg("N", 1e4, 1e7), "Omega": Arg("", 1.67, 2.0)},
)
def allowable_tension(P_n: Real, Omega: Real) -> Real:
    """Allowable tensile strength of the member."""
    return P_n / Omega
