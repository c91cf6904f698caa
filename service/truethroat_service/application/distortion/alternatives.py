"""Other ways to weld the joint, with their distortion, metal and strength; compared method by method."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any, Literal

from ...engine.formula import off_the_sheet
from .answer import DistortionAlternative, DistortionSpan, SpanRatio
from .cases import DOUBLED, Case, Setting, bevelled_tee_area, case_of, fillet_area, throat
from .estimates import QUANTITIES, Band, estimates
from .request import Butt, Joint, Lap, Tee

STEPS = (1, 2, 3)
INTERMITTENT = 0.5
"""Share welded of the intermittent alternative."""


Do = Literal["over", "double-sided", "intermittent", "bevelled"]
Sized = Literal["leg", "root_opening", "depth"]


@dataclass(frozen=True, slots=True)
class Way:
    """One other way; ``size`` is its leg, root opening or depth of bevel, mm."""

    do: Do
    size: float
    sized: Sized
    case: Case
    strength: float
    steps: int | None = None


def alternatives(
    joint: Joint, setting: Setting, step: float, chosen: Case, bands: Mapping[str, Band]
) -> tuple[DistortionAlternative, ...]:
    """Alternatives to the joint chosen; ``step`` is that of its size, mm."""
    with off_the_sheet():
        offered = _butts(joint, setting, step) if isinstance(joint, Butt) else _fillets(joint, setting, step)
        return tuple(_alternative(way, chosen, bands) for way in offered)


def _butts(joint: Butt, setting: Setting, step: float) -> list[Way]:
    """Wider openings, and the groove from both sides."""
    ways, weld = [], joint.weld
    for steps in STEPS:
        wider = replace(weld, root_opening=weld.root_opening + steps * step)
        if weld.area is not None:
            wider = replace(wider, area=weld.area + steps * step * joint.thickness)
        if weld.face_width is not None and weld.root_width is not None:
            more = steps * step
            wider = replace(wider, face_width=weld.face_width + more, root_width=weld.root_width + more)
        case = case_of(replace(joint, weld=wider), setting)
        ways.append(Way("over", wider.root_opening, "root_opening", case, 1.0, steps))
    if weld.groove in DOUBLED:
        double = replace(joint, weld=replace(weld, groove=DOUBLED[weld.groove]), runs=None)
        depth = (joint.thickness - weld.land) / 2.0
        ways.append(Way("double-sided", depth, "depth", case_of(double, setting), 1.0))
    return ways


def _fillets(joint: Tee | Lap, setting: Setting, step: float) -> list[Way]:
    """Larger legs, half the length, both sides, and a bevel with the same throat."""
    ways, leg = [], joint.leg
    for steps in STEPS:
        larger = _resized(joint, leg + steps * step)
        ways.append(Way("over", larger.leg, "leg", case_of(larger, setting), larger.leg / leg, steps))
    if joint.welded_share > INTERMITTENT:
        broken = replace(joint, welded_share=INTERMITTENT)
        ratio = INTERMITTENT / joint.welded_share
        ways.append(Way("intermittent", leg, "leg", case_of(broken, setting), ratio))
    if isinstance(joint, Tee):
        if joint.sides == 1:
            both = replace(_resized(joint, leg / 2.0), sides=2, runs=None)
            ways.append(Way("double-sided", both.leg, "leg", case_of(both, setting), 1.0))
        depth = throat(leg)
        plain = case_of(joint, setting)
        bevelled = replace(plain, kind="bevelled-tee", leg=None, area=bevelled_tee_area(depth))
        ways.append(Way("bevelled", depth, "depth", bevelled, 1.0))
    return ways


def _resized(joint: Any, leg: float) -> Any:
    """Joint with another leg; an area that the request gives changes as that of a flat fillet."""
    area = joint.area
    if area is not None:
        area = area * fillet_area(leg) / fillet_area(joint.leg)
    return replace(joint, leg=leg, area=area)


def _alternative(way: Way, chosen: Case, bands: Mapping[str, Band]) -> DistortionAlternative:
    """Way as an answer has it."""
    theirs = estimates(way.case)
    sized: dict[Sized, float] = {way.sized: way.size}
    return DistortionAlternative(
        do=way.do,
        leg=sized.get("leg"),
        root_opening=sized.get("root_opening"),
        depth=sized.get("depth"),
        steps=way.steps,
        metal_ratio=_metal(way.case) / _metal(chosen),
        strength_ratio=way.strength,
        **{name: _span(theirs[name], bands[name]) for name in QUANTITIES},
    )


def _metal(case: Case) -> float:
    """Metal of all welds, on each unit of length."""
    return case.area * case.welds * case.share


def _span(theirs: Band, mine: Band) -> DistortionSpan | None:
    """Least and greatest of the methods of another way; None where none covers it."""
    if theirs.low is None or theirs.high is None:
        return None
    values = {one.method: one.value for one in mine.estimates}
    # Other methods would compare the methods, not the joints.
    ratios = [one.value / values[one.method] for one in theirs.estimates if values.get(one.method)]
    return DistortionSpan(theirs.low, theirs.high, SpanRatio(min(ratios), max(ratios)) if ratios else None)
