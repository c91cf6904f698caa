"""Clause 8.6.3.1, Table 8.8: characteristic strength of the weld metal by the alloys it joins."""

from ...engine.formula import Source
from ...engine.rule_set import Unlisted
from . import clause

TABLE_8_8 = clause("8.6.3.1, Table 8.8")

_MAGNESIUM: dict[str, float] = {
    "5052": 170.0,
    "5083": 240.0,
    "5454": 220.0,
    "6060": 160.0,
    "6061": 190.0,
    "6005A": 180.0,
    "6082": 210.0,
    "7020": 260.0,
}
_SILICON: dict[str, float] = {
    "3103": 95.0,
    "6060": 150.0,
    "6061": 170.0,
    "6005A": 160.0,
    "6082": 190.0,
    "7020": 210.0,
}
# N/mm2; a column serves the filler metals that the note below the table puts beside its own.
_COLUMNS = {"ER5356": _MAGNESIUM, "ER5183": _MAGNESIUM, "ER4043": _SILICON}


def weld_metal_strength(alloys: tuple[str, ...], filler: str) -> tuple[float, Source]:
    """Characteristic strength of the weld metal f_w, MPa, with the row it stands in: the lower one of two alloys.

    Raises :class:`Unlisted` for a pair that the table does not list (source: EN 1999-1-1:2007 Table 8.8, from memory).
    """
    column = _COLUMNS.get(filler)
    if column is None:
        raise Unlisted(("filler", f"{TABLE_8_8} lists {', '.join(_COLUMNS)}, not {filler}"))
    missing = [alloy for alloy in dict.fromkeys(alloys) if alloy not in column]
    if missing:
        serving = [other for other, values in _COLUMNS.items() if all(alloy in values for alloy in alloys)]
        instead = f"; for these parts it has {', '.join(serving)}" if serving else ""
        raise Unlisted(("filler", f"{TABLE_8_8} has no strength of {filler} on {', '.join(missing)}{instead}"))
    weakest = min(alloys, key=column.__getitem__)
    return column[weakest], clause(f"8.6.3.1, Table 8.8: {filler} on {weakest}, {column[weakest]:g} MPa")
