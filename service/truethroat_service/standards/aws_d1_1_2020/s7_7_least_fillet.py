"""Table 7.7: least fillet, by the thicker part, or the thinner one where the process is low in hydrogen."""

from ...engine.formula import Arg, Table, formula
from ...engine.numeric import Flag, Real, where
from ...engine.units import inches
from . import clause

TABLE_7_7 = Table(
    "table_7_7",
    "mm",
    "mm",
    limits=inches(1 / 4, 1 / 2, 3 / 4),
    values=inches(1 / 8, 3 / 16, 1 / 4, 5 / 16),
    source=clause("Table 7.7", "second-hand"),
)
THICKNESS = Arg("mm", 3, 60, TABLE_7_7.limits)


@formula(
    "w_least",
    "table_7_7(where(low_hydrogen, t_thin, t_thick))",
    unit="mm",
    source=clause("Table 7.7; thicker part unless low-hydrogen or preheated", "from memory"),
    args={"t_thin": THICKNESS, "t_thick": THICKNESS, "low_hydrogen": Arg("flag")},
    tables=(TABLE_7_7,),
)
def least_leg(t_thin: Real, t_thick: Real, low_hydrogen: Flag) -> Real:
    """Least leg of a single-pass fillet."""
    return TABLE_7_7(where(low_hydrogen, t_thin, t_thick))
