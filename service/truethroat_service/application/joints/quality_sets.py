"""The quality levels and codes that a weld as made can be held to, with where their scope ends."""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from ...engine.formula import Source
from ...engine.rule_set import Limit, Reading
from ...engine.units import INCH
from ...standards import aws_d1_1_2000, aws_d1_1_2020, iso_5817_2014
from ...standards.aws_d1_1_2020 import s7_21_fit_up, s7_23_profile, s8_1_acceptance
from ...standards.iso_5817_2014 import table_1
from ...standards.iso_5817_2014.table_1 import Level
from . import readings

Quality = Literal["iso-5817-b", "iso-5817-c", "iso-5817-d", "aws-d1-1-2020"]


@dataclass(frozen=True, slots=True)
class QualitySet:
    """A level or code by name; ``level`` is that of ISO 5817, None of a code without levels."""

    id: Quality
    title: str
    editions: tuple[str, ...]
    clauses: tuple[str, ...]
    limits: tuple[Limit, ...]
    readings: tuple[Reading, ...]
    least_thickness: float
    level: Level | None = None


_PRACTICE = Source("", "scope of this service", "common practice, no source")


def _iso(name: Quality, level: Level, said: str) -> QualitySet:
    """Level of ISO 5817."""
    numbers = [row.number for row in table_1.ROWS.values()]
    return QualitySet(
        id=name,
        title=f"ISO 5817:2014, quality level {level.upper()} ({said})",
        editions=(iso_5817_2014.EDITION,),
        clauses=tuple(f"Table 1, {number}" for number in [*numbers, "505"]),
        limits=(
            Limit("fusion welds in parts of 0.5 mm and more", iso_5817_2014.clause("1", "from memory")),
            Limit("each imperfection is checked alone, even where several meet in one section", _PRACTICE),
            Limit("fillets of 60 to 120 deg, and butt welds", _PRACTICE),
        ),
        readings=readings.ISO_5817,
        least_thickness=table_1.LEAST_THICKNESS,
        level=level,
    )


QUALITY_SETS: Mapping[str, QualitySet] = MappingProxyType(
    {
        found.id: found
        for found in (
            _iso("iso-5817-b", "b", "stringent"),
            _iso("iso-5817-c", "c", "intermediate"),
            _iso("iso-5817-d", "d", "moderate"),
            QualitySet(
                id="aws-d1-1-2020",
                title="AWS D1.1/D1.1M:2020, profile, fit-up and visual acceptance of nontubular connections",
                editions=(aws_d1_1_2020.EDITION, aws_d1_1_2000.EDITION),
                clauses=tuple(
                    source.clause
                    for source in (
                        s7_21_fit_up.FIT_UP,
                        s7_21_fit_up.ALIGNMENT,
                        s7_23_profile.PROFILE,
                        s7_23_profile.REINFORCEMENT,
                        s7_23_profile.FLUSH,
                        s8_1_acceptance.CRACKS,
                        s8_1_acceptance.FUSION,
                        s8_1_acceptance.UNDERSIZE,
                        s8_1_acceptance.UNDERCUT,
                        s8_1_acceptance.CYCLIC_UNDERCUT,
                    )
                ),
                limits=(
                    Limit("parts of 1/8 in (3 mm) and more", aws_d1_1_2020.clause("1.2", "from memory")),
                    Limit("nontubular connections, statically or cyclically loaded", _PRACTICE),
                    Limit("limits of pores, craters and toe angles are not checked", _PRACTICE),
                    Limit(
                        "at each end of a girder's web-to-flange weld no fillet may be undersize, over twice the flange"
                        " width; this is not checked",
                        s8_1_acceptance.UNDERSIZE,
                    ),
                ),
                readings=readings.D1_1,
                # 1/8 in is 3.175 mm; the metric text says 3.
                least_thickness=min(3.0, INCH / 8),
            ),
        )
    }
)
"""Every quality set by id."""
