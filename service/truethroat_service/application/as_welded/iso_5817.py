"""Readings of a weld held to a quality level of ISO 5817: its thickness is here the thinner part's."""

from collections.abc import Iterator

from ...engine.formula import about
from ...standards.iso_5817_2014 import limits, table_1
from ...standards.iso_5817_2014.table_1 import Level, Sizes
from .answer import QualityLimit
from .limits import Rule, Stretch, extent_of, held, held_angle, seen
from .request import Readings

DEPTHS = ("undercut", "overlap", "lack_of_fusion", "surface_pore", "internal_pore", "end_crater_pipe")
"""Readings of any weld that a row of the table is named for."""


def on_any_weld(readings: Readings, level: Level, sizes: Sizes, fusion_row: str) -> Iterator[QualityLimit]:
    """Hold what may be read of any weld; ``fusion_row`` is the row of its incomplete penetration."""
    for name in DEPTHS:
        yield from depth(readings, level, sizes, name)
    yield from depth(readings, level, sizes, "incomplete_penetration", fusion_row)
    if readings.toe_angle is not None:
        least, source = table_1.least_toe_angle(level, fillet=sizes.a is not None)
        yield held_angle("toe-angle", readings.toe_angle, least, source)
    for name, there in (("crack", readings.crack), ("burn-through", readings.burn_through)):
        if there is not None:
            yield seen(name, there, table_1.limit(name, level, sizes).source)


def depth(readings: Readings, level: Level, sizes: Sizes, field: str, row: str | None = None) -> Iterator[QualityLimit]:
    """Hold one reading, if it was taken, to the row of its name or to another."""
    read, worst = getattr(readings, field), readings.at_most(field)
    if worst is not None:
        yield value(readings, level, sizes, field.replace("_", "-"), read, worst, field, row)


def value(
    readings: Readings,
    level: Level,
    sizes: Sizes,
    name: str,
    read: float,
    worst: float,
    extent: str = "",
    row: str | None = None,
) -> QualityLimit:
    """Hold a value, mm, that goes on over the length told under ``extent``."""
    with about(name):
        found = table_1.limit(row or name, level, sizes)
        stretch = _short(readings) if found.short else None
    allowed = None if found.height is None else float(found.height)
    note = "" if allowed is not None or found.permitted else "not permitted at this level"
    rule = Rule(allowed, found.source, found.permitted, note, stretch)
    return held(name, read, worst, rule, extent_of(readings, extent))


def _short(readings: Readings) -> Stretch:
    """Length that a short imperfection may have; of a weld of any length when its own is not told."""
    allowed = limits.MOST_SHORT
    if readings.extent is not None:
        length = limits.short_length(l_most=limits.MOST_SHORT, c_l=limits.SHORT_SHARE, l_weld=readings.extent.of_weld)
        allowed = float(length)
    return Stretch(allowed, "short imperfections only: 25 mm in the worst 100 mm, a quarter of a shorter weld")
