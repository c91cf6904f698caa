"""How many passes a weld takes, by the metal one pass lays, by layers, and by the handbook's count."""

from ..engine.formula import Arg, Source, Table, formula
from ..engine.numeric import Real, ceil
from ..engine.rounding import SAME
from ..engine.units import INCH
from .deposition import DENSITY, RATE

BEADS = Source("", "passes by the area one pass fills", "common practice, no source")
LAYERS = Source("", "horizontal fillets build up in layers of 1, 2, 3 passes", "common practice, no source")
BALANCE = Source("", "mass balance of a pass", "geometry")
MANUAL = Source(
    "AISC Steel Construction Manual",
    "approximate number of passes, fillets, Table 8-12 (13th and 14th ed.)",
    "from memory",
)

LARGEST_LISTED = 0.75 * INCH
"""Largest leg of the Manual's table, mm."""

SIZES = Table(
    "passes_by_leg",
    "mm",
    "",
    limits=(5 * INCH / 16, 3 * INCH / 8, INCH / 2, 5 * INCH / 8),
    values=(1.0, 3.0, 4.0, 6.0, 8.0),
    source=MANUAL,
)


@formula(
    "A_b",
    "D/(rho*v_t)",
    unit="mm**2",
    source=BALANCE,
    args={"D": RATE, "rho": DENSITY, "v_t": Arg("mm/s", 1.0, 20.0)},
)
def bead_area(D: Real, rho: Real, v_t: Real) -> Real:
    """Area that one pass fills at a deposition rate and a travel speed."""
    return D / (rho * v_t)


@formula(
    "N_b",
    "ceil(A*(1 + x)/A_b - same)",
    unit="",
    source=BEADS,
    args={
        "A": Arg("mm**2", 1, 500),
        "x": Arg("", 0, 0.5),
        "A_b": Arg("mm**2", 5, 80),
        "same": Arg("", SAME, SAME),
    },
)
def passes_by_area(A: Real, x: Real, A_b: Real, same: Real) -> Real:
    """Passes that fill a section with its excess."""
    return ceil(A * (1.0 + x) / A_b - same)


@formula(
    "n_l",
    "ceil(z/z_pass - same)",
    unit="",
    source=LAYERS,
    args={"z": Arg("mm", 3, 25), "z_pass": Arg("mm", 7, 13), "same": Arg("", SAME, SAME)},
)
def layers(z: Real, z_pass: Real, same: Real) -> Real:
    """Layers of a fillet; none is higher than the largest single-pass fillet."""
    return ceil(z / z_pass - same)


@formula("N_l", "n_l*(n_l + 1)/2", unit="", source=LAYERS, args={"n_l": Arg("", 1, 4)})
def passes_in_layers(n_l: Real) -> Real:
    """Passes of a horizontal fillet; each layer has one pass more than the layer under it."""
    return n_l * (n_l + 1.0) / 2.0


@formula("N_t", "passes_by_leg(z)", unit="", source=MANUAL, args={"z": Arg("mm", 3, 19, SIZES.limits)}, tables=(SIZES,))
def passes_by_table(z: Real) -> Real:
    """Passes of a fillet by its leg, as a handbook counts them."""
    return SIZES(z)
