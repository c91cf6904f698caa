"""Spacing of intermittent fillets: J3.6 for connectors of built-up members, E6.2 in compression, G2.4(c) at stiffeners.

J3.6 and E6.2 rule the spacing. Whether that runs from centre to centre or between the ends is not said of welds; from
centre to centre is the shorter and is taken. G2.4(c) rules the clear distance.
"""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, minimum, sqrt
from ...engine.units import INCH, KSI
from . import clause

ELASTIC = 29000.0 * KSI
PROTECTED = (24.0, 12.0 * INCH)
"""Painted members and members where nothing corrodes: thicknesses of the thinner part, and mm."""
WEATHERING = (14.0, 7.0 * INCH)
"""Unpainted members of weathering steel in the open air."""
MOST_IN_COMPRESSION = 12.0 * INCH
MOST_AT_STIFFENER = 10.0 * INCH
THICKNESS = Arg("mm", 2.0, 40.0)


@formula(
    "s_max",
    "minimum(k_t*t, s_0)",
    unit="mm",
    source=clause("J3.6, by D4 and E6"),
    args={"k_t": Arg("", 14, 24), "t": THICKNESS, "s_0": Arg("mm", 7 * INCH, 12 * INCH)},
)
def connector_spacing(k_t: Real, t: Real, s_0: Real) -> Real:
    """Largest spacing of what holds a plate to a shape or to a plate, by the thinner part."""
    return minimum(k_t * t, s_0)


@formula(
    "s_c_max",
    "minimum(0.75*t*sqrt(E/F_y), s_0)",
    unit="mm",
    source=clause("E6.2"),
    args={
        "t": THICKNESS,
        "E": Arg("MPa", ELASTIC, ELASTIC),
        "F_y": Arg("MPa", 200, 690),
        "s_0": Arg("mm", MOST_IN_COMPRESSION, MOST_IN_COMPRESSION),
    },
)
def compression_spacing(t: Real, E: Real, F_y: Real, s_0: Real) -> Real:
    """Largest spacing of intermittent welds along an outside plate in compression."""
    return minimum(0.75 * t * sqrt(E / F_y), s_0)


@formula(
    "e_max",
    "minimum(16*t_w, e_0)",
    unit="mm",
    source=clause("G2.4(c)", "from memory"),
    args={"t_w": THICKNESS, "e_0": Arg("mm", MOST_AT_STIFFENER, MOST_AT_STIFFENER)},
)
def stiffener_gap(t_w: Real, e_0: Real) -> Real:
    """Largest clear distance between welds of a stiffener to a girder's web."""
    return minimum(16.0 * t_w, e_0)
