"""Table J2.5: partial-penetration and flare grooves, in weld metal and base metal, with each row's factors.

A complete-penetration groove rests on the base metal beside it (section J4) and has no row of its own to compute.
"""

from ...engine.formula import Arg, Source, formula
from ...engine.numeric import Real, hypot
from . import clause
from .chapter_b3_available_strength import Factors
from .j4_base_metal import STRENGTH, THICKNESS

WELD_TENSION = Factors(phi=0.80, omega=1.88)
"""Weld metal, tension square to the axis, on 0.60 F_EXX."""

WELD_COMPRESSION = Factors(phi=0.80, omega=1.88)
"""Weld metal, compression in a joint not designed to bear, on 0.90 F_EXX."""

WELD_SHEAR = Factors(phi=0.75, omega=2.00)
"""Weld metal, shear, on 0.60 F_EXX."""

BASE_COMPRESSION = Factors(phi=0.90, omega=1.67)
"""Base metal, compression in a joint not designed to bear, on F_y."""

UNIT = 1.0
"""Throat whose use is found first, mm."""

NEEDED = Arg("N/mm", 1.0, 5000.0)
FILLER = Arg("MPa", 400.0, 800.0)
THROAT = Arg("mm", 0.5, 40.0)


@formula(
    "a_n",
    "r_n_req/(0.60*F_EXX)",
    unit="mm",
    source=clause("Table J2.5, partial penetration, tension"),
    args={"r_n_req": NEEDED, "F_EXX": FILLER},
)
def throat_in_tension(r_n_req: Real, F_EXX: Real) -> Real:
    """Throat the weld metal needs for tension square to the axis."""
    return r_n_req / (0.60 * F_EXX)


@formula(
    "a_n",
    "r_n_req/(0.90*F_EXX)",
    unit="mm",
    source=clause("Table J2.5, partial penetration, compression not designed to bear"),
    args={"r_n_req": NEEDED, "F_EXX": FILLER},
)
def throat_in_compression(r_n_req: Real, F_EXX: Real) -> Real:
    """Throat the weld metal needs for compression in a joint not designed to bear."""
    return r_n_req / (0.90 * F_EXX)


@formula(
    "a_v",
    "r_n_req/(0.60*F_EXX)",
    unit="mm",
    source=clause("Table J2.5, partial penetration, shear"),
    args={"r_n_req": NEEDED, "F_EXX": FILLER},
)
def throat_in_shear(r_n_req: Real, F_EXX: Real) -> Real:
    """Throat the weld metal needs for shear."""
    return r_n_req / (0.60 * F_EXX)


@formula(
    "a_req",
    "hypot(a_n, a_v)",
    unit="mm",
    source=Source(
        "", "normal force and shear on one throat, by the root of their squares", "common practice, no source"
    ),
    args={"a_n": THROAT, "a_v": THROAT},
)
def required_throat(a_n: Real, a_v: Real) -> Real:
    """Throat the weld metal needs for both together; the table rates each alone."""
    return hypot(a_n, a_v)


@formula(
    "r_n",
    "t*F_y",
    unit="N/mm",
    source=clause("Table J2.5, partial penetration, compression not designed to bear, base metal"),
    args={"t": THICKNESS, "F_y": STRENGTH},
)
def base_compression(t: Real, F_y: Real) -> Real:
    """Nominal strength of a part in compression over a throat."""
    return t * F_y


@formula(
    "a_base",
    "U_1*t_1",
    unit="mm",
    source=clause("Table J2.5, partial penetration, base metal over the effective area", "second-hand"),
    args={"U_1": Arg("", 0.0, 60.0), "t_1": Arg("mm", UNIT, UNIT)},
)
def throat_of_base_metal(U_1: Real, t_1: Real) -> Real:
    """Throat over which the base metal carries the load, from the use made of the metal over a unit of throat."""
    return U_1 * t_1
