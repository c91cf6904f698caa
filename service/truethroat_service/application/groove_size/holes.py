"""Welds in holes or slots, filled or with a fillet all round: limits, strength in shear, how many a force needs."""

from dataclasses import dataclass
from math import inf, pi

from ...engine.formula import Source, cite
from ...engine.numeric import ceil
from ...engine.rounding import SAME, at_least, at_most
from ...engine.rule_set import HoleLimits, RuleSet, WeldMetal
from ...engine.section import equal_leg_throat
from ...practice.plug_holes import centre_line, fillet_area, hole_area
from ..core.faults import Faults
from .answer import WeldedHoleLimits, WeldedHoles
from .request import GrooveSizeRequest, Holes


@dataclass(frozen=True, slots=True)
class LegLimits:
    """Least and largest leg of a fillet all round, mm, and where each is ruled."""

    least: float
    least_source: Source
    largest: float
    largest_source: Source


@dataclass(frozen=True, slots=True)
class SizedHoles:
    """Welds in holes as they come out: limits, sizes mm, area mm2 and strength N of one, and how many the force needs.

    A filled hole has a filling, one with a fillet all round a throat and the length of that throat's centre line.
    """

    limits: HoleLimits
    leg_limits: LegLimits | None
    filling: float | None
    throat: float | None
    centre_line: float | None
    area: float
    strength: float
    needed: int
    count: int
    utilisation: float

    @property
    def enough(self) -> bool:
        """Whether the holes there are carry the force."""
        return self.count >= self.needed

    @property
    def limited(self) -> bool:
        """Whether the area of the hole limits that of the fillet."""
        if self.throat is None or self.centre_line is None:
            return False
        return not at_most(self.throat * self.centre_line, self.area)


def check_holes(weld: Holes, request: GrooveSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Add what of a hole through part 2 lies beyond the rules' limits."""
    assert rules.groove_weld is not None  # noqa: S101 - practice without strength is not offered
    thickness, text = request.parts[1].thickness, faults.units.text
    if weld.is_slot and not at_least(weld.length, weld.width):
        faults.inconsistent(
            "#/weld/length", f"must be at least the width of the slot, {text(weld.width)}; it is {text(weld.length)}"
        )
        return
    if weld.leg is None:
        filling = thickness if weld.filling is None else weld.filling
        if not at_most(filling, thickness):
            faults.out_of_range(
                "#/weld/filling", f"must be at most the thickness of part 2, {text(thickness)}; it is {text(filling)}"
            )
            return
        limits = rules.groove_weld.hole_limits(thickness, weld.width, weld.length, filling)
    else:
        filling = None
        limits = rules.groove_weld.hole_fillet_limits(thickness)
        if not _leg_fits(weld, weld.leg, request, rules, faults):
            return
    across = "#/weld/width" if weld.is_slot else "#/weld/diameter"
    for pointer, value, low, high in (
        (across, weld.width, limits.least_width, limits.largest_width),
        ("#/weld/length", weld.length, None, limits.longest if weld.is_slot else None),
        ("#/weld/filling", filling, limits.least_filling, None),
        ("#/weld/pitch", weld.pitch, limits.least_pitch, None),
        ("#/weld/pitch_along", weld.pitch_along, limits.least_pitch_along, None),
    ):
        if value is None:
            continue
        if not at_least(value, low or 0.0):
            faults.out_of_scope(pointer, f"must be at least {text(low or 0.0)} ({limits.source}); it is {text(value)}")
        elif not at_most(value, inf if high is None else high):
            faults.out_of_scope(pointer, f"must be at most {text(high or 0.0)} ({limits.source}); it is {text(value)}")
    for name, pitch, least in (
        ("pitch", weld.pitch, limits.least_pitch),
        ("pitch_along", weld.pitch_along, limits.least_pitch_along),
    ):
        if pitch is not None and (weld.count == 1 or least is None):
            why = (
                "does not apply to a single hole"
                if weld.count == 1
                else f"does not apply to {rules.id}, which sets no least {name}"
            )
            faults.inconsistent(f"#/weld/{name}", f"{why}; leave it out")


def _leg_fits(weld: Holes, leg: float, request: GrooveSizeRequest, rules: RuleSet, faults: Faults) -> bool:
    """Whether a leg leaves the hole open and keeps to the limits of a fillet along an edge; if not, a fault says so."""
    text = faults.units.text
    if not at_most(2.0 * leg, weld.width):
        name = "slot" if weld.is_slot else "plug"
        faults.inconsistent(
            "#/weld/leg",
            f"must be at most half the width of {text(weld.width)}; it is {text(leg)}. Legs that meet make a {name}"
            " weld",
        )
        return False
    limits = _leg_limits(request, rules)
    if not at_least(leg, limits.least):
        faults.out_of_scope(
            "#/weld/leg", f"must be at least {text(limits.least)} ({limits.least_source}); it is {text(leg)}"
        )
    elif not at_most(leg, limits.largest):
        faults.out_of_scope(
            "#/weld/leg", f"must be at most {text(limits.largest)} ({limits.largest_source}); it is {text(leg)}"
        )
    return True


def _leg_limits(request: GrooveSizeRequest, rules: RuleSet) -> LegLimits:
    """Least leg by the thinner part, and the largest along the edge of the hole."""
    assert rules.weld is not None  # noqa: S101 - as above
    least, least_source = rules.weld.minimum_leg(request.thinner, pi / 2)
    largest, largest_source = rules.edge(request.parts[1].thickness)
    return LegLimits(float(least), least_source, float(largest), largest_source)


def holes(weld: Holes, request: GrooveSizeRequest, force: float, rules: RuleSet, metal: WeldMetal) -> SizedHoles:
    """Welds in holes for a shear force in N on the faying surface."""
    assert rules.groove_weld is not None  # noqa: S101 - as above
    thickness = request.parts[1].thickness
    leg_limits = filling = throat = line = None
    if weld.leg is None:
        filling = thickness if weld.filling is None else weld.filling
        limits = rules.groove_weld.hole_limits(thickness, weld.width, weld.length, filling)
        area = float(hole_area(w=weld.width, L=weld.length))
        strength = float(rules.groove_weld.hole_strength(area, metal))
    else:
        leg_limits, limits = _leg_limits(request, rules), rules.groove_weld.hole_fillet_limits(thickness)
        throat = float(equal_leg_throat(z=weld.leg, psi=pi / 2))
        line = float(centre_line(w=weld.width, L=weld.length, z=weld.leg))
        area = float(fillet_area(a=throat, l_c=line, A_w=hole_area(w=weld.width, L=weld.length)))
        strength = float(rules.groove_weld.hole_fillet_strength(area, metal))
    cite(limits.source)
    needed = max(int(float(ceil(force / strength - SAME))), 1)
    count = needed if weld.count is None else weld.count
    used = force / (count * strength)
    return SizedHoles(limits, leg_limits, filling, throat, line, area, strength, needed, count, used)


def welded_holes(sized: SizedHoles, weld: Holes) -> WeldedHoles:
    """Holes of the answer."""
    limits, legs = sized.limits, sized.leg_limits
    return WeldedHoles(
        width=weld.width,
        length=weld.length,
        filling=sized.filling,
        leg=weld.leg,
        throat=sized.throat,
        centre_line=sized.centre_line,
        area=sized.area,
        strength=sized.strength,
        needed=sized.needed,
        count=sized.count,
        limits=WeldedHoleLimits(
            least_width=limits.least_width,
            largest_width=limits.largest_width,
            longest=limits.longest if weld.is_slot else None,
            least_filling=limits.least_filling,
            least_leg=None if legs is None else legs.least,
            largest_leg=None if legs is None else legs.largest,
            least_pitch=limits.least_pitch,
            least_pitch_along=limits.least_pitch_along if weld.is_slot else None,
        ),
    )
