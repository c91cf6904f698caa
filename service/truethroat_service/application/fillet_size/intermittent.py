"""Intermittent fillets: the gap to keep, how the segments are laid out, and what the drawing says."""

from dataclasses import dataclass, replace
from math import ceil
from typing import Any

from ...engine.formula import Source
from ...engine.rounding import SAME, at_least, at_most
from ...engine.rule_set import GapLimit, Intermittent, IntermittentRules
from ...engine.section import equal_leg_throat
from ..core.answers import Units
from ..core.faults import Faults
from ..joints.metals import Metals
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
            f"segments of {faults.units.text(asked.segment)} leave no gap within {faults.units.text(tightest.most)} of"
            f" {tightest.measure.replace('-', ' ')} ({tightest.source}); shorten them or weld it continuous",
        )
        faults.refuse()
    return replace(made, gap=made.largest_gap)


def _room(asked: Intermittent, length: float | None) -> list[float]:
    """Room for a gap between segments at both ends, mm, where the line's length is known."""
    return [] if length is None else [length - 2.0 * asked.segment]


def intermittent(
    request: FilletSizeRequest, made: Run, fillets: Fillets, sizes: Sizes, units: Units
) -> tuple[dict[str, Any], list[Beyond]]:
    """Field ``intermittent`` of the answer, and every limit that is not kept."""
    asked, gap = made.asked, made.gap
    leg = float(sizes.net_leg)
    throat = float(equal_leg_throat.body(z=leg, psi=sizes.psi)) + float(fillets.penetration)
    counted = asked.segment - (2.0 * throat if request.ends == "craters" else 0.0)
    least, least_source = made.rules.least_segment(leg, throat)
    checks = [("segment", counted, "least", least, least_source)]
    measures = {"gap": gap, "nearer-gap": asked.nearer_gap(gap), "pitch": made.pitch}
    checks += [(limit.measure, measures[limit.measure], "most", limit.most, limit.source) for limit in made.limits]
    limits, beyond = [], []
    for name, value, bound, allowed, source in checks:
        kept = at_least(value, allowed) if bound == "least" else at_most(value, allowed)
        verdict = "within" if kept else "short" if bound == "least" else "over"
        limits.append(
            {
                "name": name,
                "value": units.length(value),
                "bound": bound,
                "allowed": units.length(allowed),
                "verdict": verdict,
                "source": str(source),
            }
        )
        if not kept:
            beyond.append(
                Beyond(
                    "spacing",
                    f"The {name.replace('-', ' ')} of {units.text(value)} is {verdict}:"
                    f" {units.text(allowed)} at {bound} ({source}).",
                )
            )
    layout = _layout(made)
    reached = bool(sizes.reached) and not beyond
    carried = _carried(sizes) if reached else None
    line = float(fillets.side_loads[0].resultant) * made.share
    return {
        "segment": units.length(asked.segment),
        "gap": units.length(gap, "down"),
        "pitch": units.length(made.pitch, "down"),
        "count": layout.count,
        "even_gap": None if layout.even_gap is None else units.length(layout.even_gap, "down"),
        "end_weld": units.length(layout.ends, "up"),
        "strength": None
        if sizes.weld_strength is None
        else units.force_per_length(float(sizes.weld_strength) * made.share),
        "largest_gap": None
        if carried is None
        else units.length(min(made.largest_gap, asked.segment * (carried / line - 1.0)), "down"),
        "shortest_segment": None
        if carried is None or request.ends == "craters"
        else units.length(_shortest_segment(made, least, carried, line), "up"),
        "limits": limits,
        "callout": _callout(request, made, sizes, layout, units) if reached else None,
    }, beyond


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


def _callout(request: FilletSizeRequest, made: Run, sizes: Sizes, layout: _Layout, units: Units) -> dict[str, str]:
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
    return {
        "iso_2553": f"{size} fillet{both}, {number} x {segment} {'Z ' if asked.staggered else ''}({clear}){at_ends}",
        "aws_a2_4": f"{leg} fillet{both}{', staggered' if asked.staggered else ''}, {segment} - {pitch}{at_ends}",
    }
