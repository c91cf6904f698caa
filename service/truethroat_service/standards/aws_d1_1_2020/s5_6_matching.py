"""Clause 5.6 with Tables 5.3 and 5.4: groups of base metal in prequalified procedures, and what matches each."""

from dataclasses import dataclass
from math import inf

from ...engine.rounding import at_most
from ...engine.units import INCH
from . import clause

GROUPS = clause("Tables 5.3 and 5.4", "from memory")


@dataclass(frozen=True, slots=True)
class Group:
    """Group of base metals; ``levels`` are the least and the greatest strength class that match it, ksi.

    ``low_hydrogen`` says that its stick electrodes must be low-hydrogen ones.
    """

    name: str
    levels: tuple[int, int]
    low_hydrogen: bool = True


_I = Group("group I", (60, 70), low_hydrogen=False)
_II = Group("group II", (70, 70))
_III = Group("group III", (80, 80))
_IV = Group("group IV", (90, 90))
_A514 = Group("A514 up to 2-1/2 in", (110, 110))
_A514_THICK = Group("A514 over 2-1/2 in", (100, 100))

# Up to and including a thickness, mm. AISC 360-22 J2.6 (user note, seen) has groups I to IV as far as they name A36,
# A53, A500, A572-50, A588, A992 and A913.
_MEMBERS: dict[str, tuple[tuple[float, Group], ...]] = {
    "A36": ((0.75 * INCH, _I), (inf, _II)),
    "A53-B": ((inf, _I),),
    "A500-B": ((inf, _I),),
    "A500-C": ((inf, _I),),
    "A501-B": ((inf, _II),),
    "A572-50": ((inf, _II),),
    "A588": ((inf, _II),),
    "A847": ((inf, _II),),
    "A992": ((inf, _II),),
    "A572-60": ((inf, _III),),
    "A572-65": ((inf, _III),),
    "A913-65": ((inf, _III),),
    "A913-70": ((inf, _IV),),
    "A514": ((2.5 * INCH, _A514), (inf, _A514_THICK)),
}


def group_of(material: str | None, thickness: float) -> Group | None:
    """Group of a base metal at a thickness in mm; None where the tables are not known to list it."""
    rows = _MEMBERS.get(material or "", ())
    return next((group for most, group in rows if at_most(thickness, most)), None)
