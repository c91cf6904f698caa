"""Other ways to weld the joint, and what becomes of its distortion, its metal and its strength."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from ...engine.formula import off_the_sheet
from ..core.units import Units
from .cases import DOUBLED, Case, Setting, bevelled_tee_area, case_of, fillet_area, throat
from .estimates import QUANTITIES, Band, estimates
from .request import Butt, Joint, Lap, Tee

STEPS = (1, 2, 3)
INTERMITTENT = 0.5
"""Share welded of the intermittent alternative."""


@dataclass(frozen=True, slots=True)
class Alternative:
    """One other way: ``size`` is the leg, root opening or depth of bevel it comes to, mm."""

    do: str
    size: float
    sized: str
    case: Case
    strength: float
    steps: int | None = None


def alternatives(
    joint: Joint, setting: Setting, step: float, chosen: Case, found: Mapping[str, Band], units: Units
) -> list[dict[str, Any]]:
    """Alternatives to the joint chosen as an answer shows them; ``step`` is that of its size, mm."""
    with off_the_sheet():
        offered = _butts(joint, setting, step) if isinstance(joint, Butt) else _fillets(joint, setting, step)
        return [_dumped(way, chosen, found, units) for way in offered]


def _butts(joint: Butt, setting: Setting, step: float) -> list[Alternative]:
    """Wider openings, and the groove from both sides."""
    made, weld = [], joint.weld
    for steps in STEPS:
        wider = replace(weld, root_opening=weld.root_opening + steps * step)
        if weld.area is not None:
            wider = replace(wider, area=weld.area + steps * step * joint.thickness)
        if weld.face_width is not None and weld.root_width is not None:
            more = steps * step
            wider = replace(wider, face_width=weld.face_width + more, root_width=weld.root_width + more)
        case = case_of(replace(joint, weld=wider), setting)
        made.append(Alternative("over", wider.root_opening, "root_opening", case, 1.0, steps))
    if weld.groove in DOUBLED:
        double = replace(joint, weld=replace(weld, groove=DOUBLED[weld.groove]), runs=None)
        depth = (joint.thickness - weld.land) / 2.0
        made.append(Alternative("double-sided", depth, "depth", case_of(double, setting), 1.0))
    return made


def _fillets(joint: Tee | Lap, setting: Setting, step: float) -> list[Alternative]:
    """Larger legs, half the length, both sides, and a bevel with the same throat."""
    made, leg = [], joint.leg
    for steps in STEPS:
        larger = _resized(joint, leg + steps * step)
        made.append(Alternative("over", larger.leg, "leg", case_of(larger, setting), larger.leg / leg, steps))
    if joint.welded_share > INTERMITTENT:
        broken = replace(joint, welded_share=INTERMITTENT)
        ratio = INTERMITTENT / joint.welded_share
        made.append(Alternative("intermittent", leg, "leg", case_of(broken, setting), ratio))
    if isinstance(joint, Tee):
        if joint.sides == 1:
            both = replace(_resized(joint, leg / 2.0), sides=2, runs=None)
            made.append(Alternative("double-sided", both.leg, "leg", case_of(both, setting), 1.0))
        depth = throat(leg)
        plain = case_of(joint, setting)
        bevelled = replace(plain, kind="bevelled-tee", leg=None, area=bevelled_tee_area(depth))
        made.append(Alternative("bevelled", depth, "depth", bevelled, 1.0))
    return made


def _resized(joint: Any, leg: float) -> Any:
    """Joint with another leg; metal told by hand grows as a flat fillet's would."""
    area = joint.area
    if area is not None:
        area = area * fillet_area(leg) / fillet_area(joint.leg)
    return replace(joint, leg=leg, area=area)


def _dumped(way: Alternative, chosen: Case, found: Mapping[str, Band], units: Units) -> dict[str, Any]:
    """Alternative as an answer shows it."""
    theirs = estimates(way.case)

    def metal(case: Case) -> float:
        return case.area * case.welds * case.share

    made: dict[str, Any] = {"do": way.do, way.sized: units.length(way.size)}
    if way.steps is not None:
        made["steps"] = way.steps
    made |= {"metal_ratio": metal(way.case) / metal(chosen), "strength_ratio": way.strength}
    for name in QUANTITIES:
        band = theirs[name]
        render = units.angle if name == "angular" else units.length
        if band.low is None or band.high is None:
            made[name] = None
            continue
        mine = {one.method: one.value for one in found[name].estimates}
        # Other methods would compare the methods, not the joints.
        ratios = [one.value / mine[one.method] for one in band.estimates if mine.get(one.method)]
        made[name] = {
            "low": render(band.low),
            "high": render(band.high),
            "ratio": {"low": min(ratios), "high": max(ratios)} if ratios else None,
        }
    return made
