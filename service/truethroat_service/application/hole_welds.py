"""Plug and slot welds: the hole's limits, the strength of one in shear, and how many a force needs."""

from dataclasses import dataclass
from math import inf
from typing import Any

from ..engine.formula import cite
from ..engine.numeric import ceil
from ..engine.rounding import SAME, at_least, at_most
from ..engine.rule_set import HoleLimits, RuleSet, WeldMetal
from ..practice.plug_holes import hole_area
from .answers import Units
from .faults import Faults
from .groove_welds import Holes


@dataclass(frozen=True, slots=True)
class HolesFound:
    """Plugs or slots as they come out: limits, area mm2 and strength N of one, and how many the force needs."""

    limits: HoleLimits
    filling: float
    area: float
    strength: float
    needed: int
    count: int
    utilisation: float

    @property
    def enough(self) -> bool:
        """Whether the holes there are carry the force."""
        return self.count >= self.needed


def check_holes(weld: Holes, thickness: float, rules: RuleSet, faults: Faults) -> None:
    """Add what of a hole lies beyond the rules' limits; ``thickness`` in mm is that of the part with the hole."""
    assert rules.groove_weld is not None  # noqa: S101 - practice without strength is not offered
    filling = thickness if weld.filling is None else weld.filling
    text = faults.units.text
    if not at_most(filling, thickness):
        faults.out_of_range("#/weld/filling", f"the hole is {text(thickness)} deep, the thickness of part 2")
        return
    if weld.kind == "slot" and not at_least(weld.length, weld.width):
        faults.inconsistent("#/weld/length", "a slot is longer than it is wide")
        return
    limits = rules.groove_weld.hole_limits(thickness, weld.width, weld.length, filling)
    across = "#/weld/diameter" if weld.kind == "plug" else "#/weld/width"
    for pointer, value, low, high in (
        (across, weld.width, limits.least_width, limits.largest_width),
        ("#/weld/length", weld.length, 0.0, limits.longest if weld.kind == "slot" else None),
        ("#/weld/filling", filling, limits.least_filling, None),
        ("#/weld/pitch", weld.pitch, limits.least_pitch or 0.0, None),
        ("#/weld/pitch_along", weld.pitch_along, limits.least_pitch_along or 0.0, None),
    ):
        if value is None:
            continue
        if not at_least(value, low):
            faults.out_of_scope(pointer, f"{text(value)} is under the least of {text(low)} ({limits.source})")
        elif not at_most(value, inf if high is None else high):
            faults.out_of_scope(pointer, f"{text(value)} is over the largest of {text(high or 0.0)} ({limits.source})")
    for name, pitch, least in (
        ("pitch", weld.pitch, limits.least_pitch),
        ("pitch_along", weld.pitch_along, limits.least_pitch_along),
    ):
        if pitch is not None and (weld.count == 1 or least is None):
            why = "a single hole has no pitch" if weld.count == 1 else f"{rules.id} sets no least {name}"
            faults.inconsistent(f"#/weld/{name}", f"{why}; leave it out")


def holes(weld: Holes, thickness: float, force: float, rules: RuleSet, metal: WeldMetal) -> HolesFound:
    """Plugs or slots for a shear force in N on the faying surface."""
    assert rules.groove_weld is not None  # noqa: S101 - as above
    filling = thickness if weld.filling is None else weld.filling
    limits = rules.groove_weld.hole_limits(thickness, weld.width, weld.length, filling)
    cite(limits.source)
    area = float(hole_area(w=weld.width, L=weld.length))
    strength = float(rules.groove_weld.hole_strength(area, metal))
    needed = max(int(float(ceil(force / strength - SAME))), 1)
    count = needed if weld.count is None else weld.count
    return HolesFound(limits, filling, area, strength, needed, count, force / (count * strength))


def dump_holes(found: HolesFound, weld: Holes, units: Units) -> dict[str, Any]:
    """Holes as an answer shows them."""
    limits = found.limits
    return {
        "width": units.length(weld.width),
        "length": units.length(weld.length),
        "filling": units.length(found.filling),
        "area": units.area(found.area),
        "strength": units.force(found.strength),
        "needed": found.needed,
        "count": found.count,
        "limits": {
            name: None if value is None else units.length(value)
            for name, value in (
                ("least_width", limits.least_width),
                ("largest_width", limits.largest_width),
                ("longest", limits.longest if weld.kind == "slot" else None),
                ("least_filling", limits.least_filling),
                ("least_pitch", limits.least_pitch),
                ("least_pitch_along", limits.least_pitch_along if weld.kind == "slot" else None),
            )
        },
    }
