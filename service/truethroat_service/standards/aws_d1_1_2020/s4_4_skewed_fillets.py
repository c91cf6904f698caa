"""Clause 4.4 with Table 4.2: what a fillet between plates at 30 to 60 deg loses of its throat at the root."""

from math import pi

from ...engine.formula import Arg, formula
from ...engine.numeric import Real
from ...engine.rounding import SAME
from ...engine.rule_set import Unlisted
from ...engine.units import INCH
from . import clause

Z_LOSS = clause("4.4 and Table 4.2", "from memory")

LOSS_BELOW = pi / 3
"""Angle from which nothing is lost, rad."""

LEAST_ANGLE = pi / 6
"""Angle below which a fillet is not counted without tests, rad."""

# Eighths of an inch lost at 60 > psi >= 45 deg and at 45 > psi >= 30 deg; None where the table has "n/a".
_OUT_OF_POSITION: dict[str, tuple[int, int] | None] = {
    "SMAW": (1, 2),
    "FCAW-S": (1, 2),
    "FCAW-G": (1, 3),
    "GMAW": None,
}
_FLAT_OR_HORIZONTAL: dict[str, tuple[int, int] | None] = {
    "SMAW": (1, 2),
    "FCAW-S": (0, 1),
    "FCAW-G": (0, 2),
    "GMAW": (0, 2),
}


def root_loss(psi: float, process: str | None, orientation: str | None) -> float | None:
    """Throat lost at the root, mm, between plates at ``psi`` rad; None from 60 deg up, where the table does not apply.

    Raises :class:`Unlisted` for a process or a position that the table needs or does not list.
    """
    if psi >= LOSS_BELOW * (1.0 - SAME):
        return None
    faults = []
    if process is None:
        faults.append(("process", "below 60 deg Table 4.2 goes by process: send SMAW, FCAW-S, FCAW-G or GMAW"))
    elif process not in _FLAT_OR_HORIZONTAL:
        faults.append(("process", f"below 60 deg Table 4.2 lists SMAW, FCAW-S, FCAW-G and GMAW, not {process}"))
    if orientation is None:
        faults.append(("position", 'below 60 deg Table 4.2 goes by position: send one such as "2F" or "PB"'))
    if faults or process is None or orientation is None:
        raise Unlisted(*faults)
    rows = _OUT_OF_POSITION if orientation in ("vertical", "overhead") else _FLAT_OR_HORIZONTAL
    row = rows[process]
    if row is None:
        raise Unlisted(("position", f"Table 4.2 has n/a for {process} in the {orientation} position below 60 deg"))
    return row[0 if psi >= pi / 4 * (1.0 - SAME) else 1] * INCH / 8


@formula(
    "a_gross",
    "a_req + Z",
    unit="mm",
    source=Z_LOSS,
    args={"a_req": Arg("mm", 0.5, 15.0), "Z": Arg("mm", 0.0, 3 * INCH / 8)},
)
def throat_before_loss(a_req: Real, Z: Real) -> Real:
    """Throat of the section, of which the root loses ``Z``."""
    return a_req + Z
