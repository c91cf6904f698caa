"""Table 5.1: the largest fillet that one pass may make in a prequalified procedure, and the passes it implies."""

from math import inf

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, ceil
from ...engine.rounding import SAME
from ...engine.units import INCH
from . import clause

TABLE_5_1 = clause("Table 5.1")

# Sixteenths of an inch, and the millimetres printed beside them; they are not conversions of each other.
_PRINTED_MM = {5: 8.0, 6: 10.0, 8: 12.0}
_STICK: dict[str, int | None] = {"flat": 6, "horizontal": 5, "vertical": 8, "overhead": 5}
_WIRE: dict[str, int | None] = {"flat": 8, "horizontal": 6, "vertical": 8, "overhead": 5}
# A single electrode; flat is without limit. Vertical and overhead are not in the table.
_SUBMERGED: dict[str, int | None] = {"flat": None, "horizontal": 5}
_SIXTEENTHS = {
    "SMAW": _STICK,
    "GMAW": _WIRE,
    "FCAW": _WIRE,
    "FCAW-G": _WIRE,
    "FCAW-S": _WIRE,
    "SAW": _SUBMERGED,
}


def single_pass_leg(process: str, orientation: str) -> float | None:
    """Largest single-pass leg, mm, for a process and an orientation; infinite where the table sets no limit.

    The table prints inches and millimetres side by side; a leg within either is within the table. None for what it does
    not list (source: AWS D1.1:2020 Table 5.1).
    """
    row = _SIXTEENTHS.get(process)
    if row is None or orientation not in row:
        return None
    sixteenths = row[orientation]
    return inf if sixteenths is None else max(sixteenths * INCH / 16, _PRINTED_MM[sixteenths])


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
