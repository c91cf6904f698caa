"""Whether a filler metal matches the base metals it joins, by the groups of AWS D1.1, and what must be said of it."""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from math import floor
from typing import Literal

from ...engine.formula import Source
from ...engine.rule_set import RuleSet
from ...engine.units import KSI
from ...reference.loader import FILLER_METALS
from ...reference.loader import process as process_of
from ...standards.aws_d1_1_2020 import s5_6_matching
from ...standards.aws_d1_1_2020.s5_6_matching import Group
from ..core.remarks import Remarks
from .metals import AISC, Filler, Part

Standing = Literal["under", "matching", "over"]

LEVEL = 10
"""Step between strength classes, ksi."""

PERMITTED_OVER = 1
"""Classes over matching that AISC 360-22 Table J2.5 permits everywhere."""

# A class named in rounded megapascals (480 for E70, 550 for E80) is still that class.
_ROUNDED = 1.01
_LOW_HYDROGEN_COVERINGS = ("15", "16", "18", "28", "48")
J2_6 = Source(AISC, "J2.6")


@dataclass(frozen=True, slots=True)
class Matching:
    """How a filler metal stands to the base metals; ``classes`` counts steps of 10 ksi under or over matching.

    ``wanted`` are the least and the greatest matching class, ksi: the least matches the weaker base metal, the greatest
    the stronger one. ``weaker_only`` says that the stronger is not matched, which wants a low-hydrogen deposit.
    ``low_hydrogen`` is whether the filler metal is known to be low-hydrogen, None where that is not told.
    """

    standing: Standing
    classes: int
    wanted: tuple[int, int]
    groups: tuple[Group, ...]
    weaker_only: bool
    needs_low_hydrogen: bool
    low_hydrogen: bool | None

    @property
    def classes_wanted(self) -> str:
        """Least and greatest matching class, as a sentence has them."""
        return " to ".join(f"E{level}" for level in dict.fromkeys(self.wanted))

    @property
    def group_names(self) -> str:
        """Groups of the base metals, as a sentence has them."""
        return " and ".join(group.name for group in self.groups)


def matching(parts: Iterable[Part], filler: Filler, process: str | None) -> Matching | None:
    """Standing of a filler metal to the parts; None where a part is in no group, so that nothing is known of it.

    ``process`` is any accepted code. Source: AWS D1.1:2020 Tables 5.3 and 5.4, and AISC 360-22 J2.6 for unlike steels.
    """
    groups = []
    for part in parts:
        group = s5_6_matching.group_of(part.material, part.thickness)
        if group is None:
            return None
        groups.append(group)
    level = _level(filler)
    weaker = min(groups, key=lambda group: group.levels)
    stronger = max(groups, key=lambda group: group.levels)
    least, greatest = weaker.levels[0], stronger.levels[1]
    steps = max(least - level, 0) // LEVEL or max(level - greatest, 0) // LEVEL
    weaker_only = least <= level < stronger.levels[0]
    stick = _is_stick(filler, process)
    return Matching(
        standing="under" if level < least else "over" if level > greatest else "matching",
        classes=steps,
        wanted=(least, greatest),
        groups=tuple(dict.fromkeys(groups)),
        weaker_only=weaker_only,
        needs_low_hydrogen=weaker_only or (stick and any(group.low_hydrogen for group in groups)),
        low_hydrogen=_low_hydrogen(filler, process),
    )


def remark_on_fillets(
    rules: RuleSet, parts: tuple[Part, Part], filler: Filler | None, process: str | None, remarks: Remarks
) -> None:
    """Say what AISC 360-22 has to say of a filler metal for fillets: one that matches, or less, or one class over."""
    if filler is None or not rules.metals.matched_by_group:
        return
    known = matching(parts, filler, process)
    if known is None:
        return
    name, wanted, groups = filler.id or "The filler metal", known.classes_wanted, known.group_names
    if known.standing == "under":
        remarks.because(
            f"{name} is weaker than the filler metal that matches {groups} ({wanted}). Fillets may have it, at its own"
            f" strength ({AISC}, Table J2.5)."
        )
    if known.standing == "over" and known.classes > PERMITTED_OVER:
        remarks.caution(
            "overmatched-filler",
            f"{name} is {known.classes} classes of 10 ksi over the filler metal that matches {groups} ({wanted}). One"
            " class is permitted.",
            Source(AISC, "Table J2.5"),
        )
    remark_on_hydrogen(name, known, remarks)


def remark_on_hydrogen(name: str, known: Matching, remarks: Remarks) -> None:
    """Say so where the deposit must be low-hydrogen and the filler metal is not known to give one."""
    if known.needs_low_hydrogen and not known.low_hydrogen:
        strict = " and ".join(group.name for group in known.groups if group.low_hydrogen)
        why = (
            f"it matches only the weaker of {known.group_names}"
            if known.weaker_only
            else f"stick welds of {strict} must be low-hydrogen"
        )
        is_not = "is not known to be" if known.low_hydrogen is None else "is not"
        remarks.caution(
            "low-hydrogen-needed",
            f"{name} {is_not} low-hydrogen. Its deposit must be low-hydrogen, because {why}.",
            J2_6 if known.weaker_only else s5_6_matching.GROUPS,
        )


def _level(filler: Filler) -> int:
    """Strength class of a filler metal, ksi: the last full step of 10 it reaches."""
    strength = FILLER_METALS[filler.id].tensile_strength if filler.id is not None else filler.tensile_strength or 0.0
    return LEVEL * floor(strength / KSI * _ROUNDED / LEVEL)


def _is_stick(filler: Filler, process: str | None) -> bool:
    """Whether the weld is known to be made with stick electrodes."""
    if process is not None:
        return process_of(process).id == "SMAW"
    return filler.id is not None and FILLER_METALS[filler.id].processes == ("SMAW",)


def _low_hydrogen(filler: Filler, process: str | None) -> bool | None:
    """Whether the deposit is low-hydrogen: by the covering of an AWS electrode, or by a process without covering."""
    processes = () if filler.id is None else FILLER_METALS[filler.id].processes
    if process is not None:
        processes = (process_of(process).id,)
    if not processes:
        return None
    if "SMAW" not in processes:
        # Wire and flux are taken as low-hydrogen, as AWS D1.1 does for preheat (Table 5.8, category B).
        return True
    electrode = re.fullmatch(r"E\d{2,3}(\d{2})", filler.id or "")
    return None if electrode is None else electrode[1] in _LOW_HYDROGEN_COVERINGS
