"""Table 5.1: the largest fillet that one pass may make in a prequalified procedure, and the passes it implies."""

from math import inf

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, ceil, maximum
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


# Largest thickness of a root pass in a groove, by orientation, and of any later pass, as above. Submerged arc has no
# limit to the thickness of its root pass, and no vertical or overhead row.
_ROOT_SIXTEENTHS = {"flat": 6, "horizontal": 5, "vertical": 8, "overhead": 5}
_FILL_SIXTEENTHS = {"SMAW": 3, "GMAW": 4, "FCAW": 4, "FCAW-G": 4, "FCAW-S": 4, "SAW": 4}
_FILL_PRINTED_MM = {3: 5.0, 4: 6.0}


def pass_thickness(process: str, orientation: str) -> tuple[float, float] | None:
    """Largest thickness of the root pass and of a fill pass in a groove, mm; None for what the table does not list.

    A single electrode for submerged arc, whose root pass is not limited (source: AWS D1.1:2020 Table 5.1).
    """
    fill = _FILL_SIXTEENTHS.get(process)
    if fill is None or (process == "SAW" and orientation not in _SUBMERGED):
        return None
    root = _ROOT_SIXTEENTHS[orientation]
    root_mm = inf if process == "SAW" else max(root * INCH / 16, _PRINTED_MM[root])
    return root_mm, max(fill * INCH / 16, _FILL_PRINTED_MM[fill])


@formula(
    "N_g",
    "1 + ceil(maximum(d - t_root, 0*d)/t_fill - same)",
    unit="",
    source=clause("Table 5.1, no root pass and no fill pass thicker than its limit"),
    args={
        "d": Arg("mm", 3, 40),
        "t_root": Arg("mm", 7, 13),
        "t_fill": Arg("mm", 4, 7),
        "same": Arg("", SAME, SAME),
    },
)
def least_groove_passes(d: Real, t_root: Real, t_fill: Real, same: Real) -> Real:
    """Least number of passes of a groove from one side, one to a layer."""
    return 1.0 + ceil(maximum(d - t_root, 0.0 * d) / t_fill - same)
