"""Section J2.1: what a partial-penetration groove loses at its root (Table J2.1), and its least throat (Table J2.3)."""

from math import radians

from ...engine.formula import Arg, Table, formula
from ...engine.numeric import Real
from ...engine.rounding import SAME
from ...engine.rule_set import Groove, Unlisted
from ...engine.units import INCH, inches
from . import clause

TABLE_J2_1 = clause("Table J2.1")
ROOT_DEDUCTION = INCH / 8
WIRE = ("GMAW", "FCAW", "FCAW-G", "FCAW-S")

TABLE_J2_3 = Table(
    "table_J2_3",
    "mm",
    "mm",
    limits=inches(1 / 4, 1 / 2, 3 / 4, 3 / 2, 9 / 4, 6),
    values=inches(1 / 8, 3 / 16, 1 / 4, 5 / 16, 3 / 8, 1 / 2, 5 / 8),
    source=clause("Table J2.3"),
)


@formula(
    "a_min",
    "table_J2_3(t)",
    unit="mm",
    source=clause("J2.1b, Table J2.3"),
    args={"t": Arg("mm", 1, 180, TABLE_J2_3.limits)},
    tables=(TABLE_J2_3,),
)
def minimum_throat(t: Real) -> Real:
    """Least throat of a partial-penetration groove, by the thinner part joined."""
    return TABLE_J2_3(t)


def root_deduction(groove: Groove) -> float:
    """What the table takes off the groove depth, mm, for one preparation.

    Between its rows the row of the tighter groove holds: from 45 deg up to 60 deg the 45 deg row, from 60 deg the
    60 deg row; a J or U has rows of its own. Raises :class:`Unlisted` for a combination the table does not list.
    """
    _check_listed(groove)
    if groove.form in ("single-j", "single-u"):
        return 0.0
    if groove.angle < radians(45.0) * (1.0 - SAME):
        raise Unlisted(("groove_angle", "Table J2.1 lists grooves of 45 deg and more; this one is tighter"))
    if groove.angle >= radians(60.0) * (1.0 - SAME):
        if groove.form == "single-v" or groove.process == "SAW":
            return 0.0
        listed = f"for {groove.process} it lists the 45 deg bevel (45 up to 60 deg) and the 60 deg V"
        raise Unlisted(("groove_angle", f"Table J2.1 lists a 60 deg bevel for SAW alone; {listed}"))
    if groove.process == "SAW":
        raise Unlisted(("groove_angle", "Table J2.1 lists SAW from 60 deg up, not between 45 and 60 deg"))
    if groove.process in WIRE and groove.orientation in ("flat", "horizontal"):
        return 0.0
    return ROOT_DEDUCTION


def _check_listed(groove: Groove) -> None:
    """Raise :class:`Unlisted` for a process and a position that no row has, both at once."""
    process, position = groove.process, groove.orientation
    faults = []
    if process is None:
        faults.append(("process", "Table J2.1 goes by process: send one of SMAW, GMAW, FCAW, FCAW-G, FCAW-S, SAW"))
    elif process not in (*WIRE, "SMAW", "SAW"):
        faults.append(("process", f"Table J2.1 lists SMAW, GMAW, FCAW and SAW, not {process}"))
    if position is None:
        faults.append(("position", 'Table J2.1 goes by position: send one such as "1G", "2G", "PA" or "PC"'))
    elif process == "SAW" and position != "flat":
        faults.append(("position", f"Table J2.1 lists SAW in the flat position only, not {position}"))
    if faults:
        raise Unlisted(*faults)
