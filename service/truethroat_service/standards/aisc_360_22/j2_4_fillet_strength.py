"""Section J2.4 and Table J2.5: strength of fillet welds, with the directional factor and its conditions."""

from math import pi

from ...engine.formula import Arg, formula
from ...engine.numeric import Flag, Real, sin, where
from . import clause
from .chapter_b3_available_strength import Factors

FILLET_SHEAR = Factors(phi=0.75, omega=2.00)
"""Table J2.5, fillet welds, shear on the weld metal."""

FILLER = Arg("MPa", 400.0, 800.0)


@formula("F_nw", "0.60*F_EXX", unit="MPa", source=clause("Table J2.5, fillet welds"), args={"F_EXX": FILLER})
def nominal_stress(F_EXX: Real) -> Real:
    """Nominal stress of the weld metal."""
    return 0.60 * F_EXX


@formula(
    "k_ds",
    "where(compatible, 1 + 0.50*sin(theta)**1.5, 1)",
    unit="",
    source=clause("J2.4(a), Eq. J2-5"),
    args={"theta": Arg("rad", 0.0, pi / 2), "compatible": Arg("flag")},
)
def directional_factor(theta: Real, compatible: Flag) -> Real:
    """Directional strength increase; 1 unless the elements of the weld strain alike, so never at an HSS end."""
    return where(compatible, 1.0 + 0.50 * sin(theta) ** 1.5, 0.0 * theta + 1.0)


@formula(
    "a_req",
    "r_n_req/(F_nw*k_ds)",
    unit="mm",
    source=clause("J2.4(a), Eq. J2-4 solved for the throat"),
    args={"r_n_req": Arg("N/mm", 1, 5000), "F_nw": FILLER, "k_ds": Arg("", 1, 1.5)},
)
def required_throat(r_n_req: Real, F_nw: Real, k_ds: Real) -> Real:
    """Throat the weld metal needs."""
    return r_n_req / (F_nw * k_ds)


@formula(
    "R_n",
    "F_nw*A_we",
    unit="N",
    source=clause("J2.4(a)(3), Eq. J2-4 with k_ds = 1; J2.2a"),
    args={"F_nw": Arg("MPa", 240, 480), "A_we": Arg("mm**2", 50, 2000)},
)
def all_round_shear(F_nw: Real, A_we: Real) -> Real:
    """Nominal strength of a fillet all round a hole or slot, in shear on the faying surface."""
    return F_nw * A_we
