"""Table 5.1: the largest fillet that one pass may make in a prequalified procedure, and the passes it implies."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, ceil
from ...engine.rounding import SAME
from ...engine.units import INCH
from . import clause

TABLE_5_1 = clause("Table 5.1")

_STICK = {"flat": 6, "horizontal": 5, "vertical": 8, "overhead": 5}
_WIRE = {"flat": 8, "horizontal": 6, "vertical": 8, "overhead": 5}
_SIXTEENTHS: dict[str, dict[str, int | None]] = {
    "SMAW": dict(_STICK),
    "GMAW": dict(_WIRE),
    "FCAW": dict(_WIRE),
    "FCAW-G": dict(_WIRE),
    "FCAW-S": dict(_WIRE),
    # Single electrode; flat is without limit. Vertical and overhead are not in the table.
    "SAW": {"flat": None, "horizontal": 5},
}


def single_pass_leg(process: str, orientation: str) -> float | None:
    """Largest single-pass leg, mm, for a process and an orientation; infinite where the table sets no limit.

    None for what the table does not list (source: AWS D1.1:2020 Table 5.1).
    """
    row = _SIXTEENTHS.get(process)
    if row is None or orientation not in row:
        return None
    sixteenths = row[orientation]
    return float("inf") if sixteenths is None else sixteenths * INCH / 16


@formula(
    "N",
    "ceil((z/z_pass)**2 - same)",
    unit="",
    source=clause("Table 5.1, no pass larger than the largest single-pass fillet"),
    args={"z": Arg("mm", 3, 25), "z_pass": Arg("mm", 7, 13), "same": Arg("", SAME, SAME)},
)
def least_passes(z: Real, z_pass: Real, same: Real) -> Real:
    """Least number of passes, none holding more metal than the largest single-pass fillet."""
    return ceil((z / z_pass) ** 2 - same)
