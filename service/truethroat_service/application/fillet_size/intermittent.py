"""Intermittent fillets: the gap to keep, how the segments are laid out, and the text for the drawing.

A segment carries the force of its pitch, so its force per length is that of the line times (segment + gap)/segment,
whatever the number of segments. How each rule set measures the gap stands in its readings.
"""

from dataclasses import dataclass, replace
from math import ceil

from ...engine.formula import Source
from ...engine.rounding import SAME, at_least, at_most
from ...engine.rule_set import GapLimit, Intermittent, IntermittentRules
from ...engine.section import equal_leg_throat
from ..core.faults import Faults
from ..core.units import Units
from ..joints.metals import Metals
from .answer import IntermittentFillet, SpacingLimit, WeldCallout
from .remarks import Beyond
from .request import FilletSizeRequest
from .sizing import Fillets, Sizes


@dataclass(frozen=True, slots=True)
class Run:
    """Intermittent fillet with its gap, the limits of that, and what each end must be."""

    rules: IntermittentRules
    asked: Intermittent
    gap: float
    limits: tuple[GapLimit, ...]
    end_weld: tuple[float, Source] | None
    length: float | None

    @property
    def pitch(self) -> float:
        """Distance of segments from centre to centre, mm."""
        return self.asked.segment + self.gap

    @property
    def share(self) -> float:
        """Share of the line that is welded."""
        return self.asked.segment / self.pitch

    @property
    def largest_gap(self) -> float:
        """Largest clear gap that every limit, and the line's length, allows, mm."""
        return min([limit.largest_gap(self.asked) for limit in self.limits] + _room(self.asked, self.length))


def run(request: FilletSizeRequest, rules: IntermittentRules, found: Metals, faults: Faults) -> Run:
    """Intermittent fillet of a request; where it names no gap, with the largest that is allowed."""
    asked = request.intermittent
    assert asked is not None  # noqa: S101 - asked only then
    limits = rules.gap_limits(asked, found.parts)
    made = Run(rules, asked, 0.0, limits, rules.end_weld(asked), request.length)
    if asked.gap is not None:
        return replace(made, gap=asked.gap)
    if not made.largest_gap > 0.0:
        tightest = min(limits, key=lambda limit: limit.largest_gap(asked))
        faults.out_of_range(
            "#/intermittent/segment",
            f"must leave a gap within the largest {tightest.measure.replace('-', ' ')} of"
            f" {faults.units.text(tightest.most)} ({tightest.source}); it is {faults.units.text(asked.segment)}."
            " Shorten the segments or make the weld continuous",
        )
        faults.refuse()
    return replace(made, gap=made.largest_gap)


def _room(asked: Intermittent, length: float | None) -> list[float]:
    """Room for a gap between segments at both ends, mm, where the line's length is known."""
    return [] if length is None else [length - 2.0 * asked.segment]


def intermittent_fillet(
    request: FilletSizeRequest, made: Run, fillets: Fillets, sizes: Sizes, units: Units
) -> tuple[IntermittentFillet, list[Beyond]]:
    """Intermittent fillet at the size found, and every limit that is not kept."""
    asked, gap = made.asked, made.gap
    leg = float(sizes.net_leg)
    throat = float(equal_leg_throat.body(z=leg, psi=sizes.psi)) + float(fillets.penetration)
    counted = asked.segment - (2.0 * throat if request.ends == "craters" else 0.0)
    least, least_source = made.rules.least_segment(leg, throat)
    kept = at_least(counted, least)
    limits = [SpacingLimit("segment", counted, "least", least, "within" if kept else "short", str(least_source))]
    measures = {"gap": gap, "nearer-gap": asked.nearer_gap(gap), "pitch": made.pitch}
    for limit in made.limits:
        value = measures[limit.measure]
        kept = at_most(value, limit.most)
        limits.append(
            SpacingLimit(limit.measure, value, "most", limit.most, "within" if kept else "over", str(limit.source))
        )
    beyond = [
        Beyond(
            "spacing",
            f"The {limit.name.replace('-', ' ')} of {units.text(limit.value)} is {limit.verdict}:"
            f" {units.text(limit.allowed)} at {limit.bound} ({limit.source}).",
        )
        for limit in limits
        if limit.verdict != "within"
    ]
    layout = _layout(made)
    reached = bool(sizes.reached) and not beyond
    carried = _carried(sizes) if reached else None
    line = float(fillets.side_loads[0].resultant) * made.share
    answer = IntermittentFillet(
        segment=asked.segment,
        gap=gap,
        pitch=made.pitch,
        count=layout.count,
        even_gap=layout.even_gap,
        end_weld=layout.ends,
        strength=None if sizes.weld_strength is None else float(sizes.weld_strength) * made.share,
        largest_gap=None if carried is None else min(made.largest_gap, asked.segment * (carried / line - 1.0)),
        shortest_segment=None
        if carried is None or request.ends == "craters"
        else _shortest_segment(made, least, carried, line),
        limits=tuple(limits),
        callout=_callout(request, made, sizes, layout, units) if reached else None,
    )
    return answer, beyond


def _carried(sizes: Sizes) -> float:
    """Force per length that a segment, and the parts beside it, carry, N/mm."""
    assert sizes.weld_strength is not None and sizes.base_strength is not None  # noqa: S101 - rules claim strength
    return min(float(sizes.weld_strength), *(float(strength) for strength in sizes.base_strength))


def _shortest_segment(made: Run, least: float, carried: float, line: float) -> float:
    """Shortest segment at the gap asked for, mm."""
    # A segment carries its pitch: carried*l = line*(l + gap). One that carries has carried over line.
    return max(least, line * made.gap / (carried - line)) if carried > line * (1.0 + SAME) else made.asked.segment


@dataclass(frozen=True, slots=True)
class _Layout:
    """Length of the welds at the ends, number of segments those included, and the even gap between, mm.

    ``count`` and ``even_gap`` are None where the line's length is not known, or leaves no gap between such ends.
    """

    ends: float
    count: int | None = None
    even_gap: float | None = None


def _layout(made: Run) -> _Layout:
    """Fewest segments between welds at both ends that keep to the gap, spaced evenly."""
    segment = made.asked.segment
    ends = max(segment, made.end_weld[0] if made.end_weld else 0.0)
    if made.length is None or made.length <= 2.0 * ends:
        return _Layout(ends)
    between = made.length - 2.0 * ends
    inner = max(0, ceil((between - made.gap) / (segment + made.gap) - SAME))
    even = (between - inner * segment) / (inner + 1)
    return _Layout(ends, inner + 2, even) if even > 0.0 else _Layout(ends)


def _callout(request: FilletSizeRequest, made: Run, sizes: Sizes, layout: _Layout, units: Units) -> WeldCallout:
    """Weld as drawing text: ISO 2553 writes the clear gap in brackets, AWS A2.4 length and pitch."""
    asked, gap = made.asked, made.gap if layout.even_gap is None else layout.even_gap
    leg = units.text(float(sizes.leg))
    throat = units.text(float(equal_leg_throat.body(z=sizes.leg, psi=sizes.psi)))
    segment, ends = units.text(asked.segment), units.length(layout.ends, "up")["text"]
    longer_ends = layout.ends > asked.segment * (1.0 + SAME)
    clear, pitch = (units.length(length, "down")["text"] for length in (gap, asked.segment + gap))
    number = "n" if layout.count is None else str(layout.count - 2 if longer_ends else layout.count)
    if longer_ends and layout.count == 2:
        number, segment, longer_ends = "2", ends, False
        pitch = units.length(layout.ends + gap, "down")["text"]
    both = ", both sides" if request.joint.sides == 2 else ""
    at_ends = f", {ends} at each end" if longer_ends else ""
    size = f"a {throat}" if request.size_by == "throat" else f"z {leg}"
    return WeldCallout(
        iso_2553=f"{size} fillet{both}, {number} x {segment} {'Z ' if asked.staggered else ''}({clear}){at_ends}",
        aws_a2_4=f"{leg} fillet{both}{', staggered' if asked.staggered else ''}, {segment} - {pitch}{at_ends}",
    )
