"""One limit of a level or code held against what was read, over the length of weld it was read on."""

from dataclasses import dataclass
from typing import Any, Literal

from ...engine.formula import Source, cite
from ...engine.rounding import SAME, at_least, at_most
from ..core.units import Units
from .request import Readings

Standing = Literal["within", "over", "under", "not-permitted"]


@dataclass(frozen=True, slots=True)
class Stretch:
    """Length of weld an imperfection may take, mm, None for a share of one not told, and how a note says it."""

    allowed: float | None
    note: str


@dataclass(frozen=True, slots=True)
class Rule:
    """What a level or code says of an imperfection, mm; ``allowed`` None: nothing is permitted, or all of it."""

    allowed: float | None
    source: Source
    permitted: bool = True
    note: str = ""
    stretch: Stretch | None = None


@dataclass(frozen=True, slots=True)
class Check:
    """One limit and how the weld stands against it; value and limit in mm, or rad, or None for what is or is not."""

    name: str
    verdict: Standing
    source: Source
    note: str = ""
    value: float | None = None
    allowed: float | None = None
    extent: float | None = None
    extent_allowed: float | None = None
    is_angle: bool = False

    def dump(self, units: Units) -> dict[str, Any]:
        """Limit as an answer shows it."""
        render = units.angle if self.is_angle else units.length

        def shown(value: float | None, length: bool = False) -> Any:
            return None if value is None else units.length(value) if length else render(value)

        return {
            "name": self.name,
            "value": shown(self.value),
            "allowed": shown(self.allowed),
            "extent": shown(self.extent, length=True),
            "extent_allowed": shown(self.extent_allowed, length=True),
            "verdict": self.verdict,
            "note": self.note,
            "source": str(self.source),
        }

    def said(self, units: Units) -> str:
        """Why a limit that is not kept is not kept."""
        if self.value is None:
            return f"{self.name}: not permitted."
        render = units.angle if self.is_angle else units.length
        value = render(self.value)["text"]
        if self.allowed is None:
            return f"{self.name}: {value}, none is permitted."
        allowed = render(self.allowed)["text"]
        if self.is_angle:
            return f"{self.name}: {value} against at least {allowed}."
        if at_most(self.value, self.allowed):
            over = "the whole weld, for all that was told" if self.extent is None else units.text(self.extent)
            short = "a part of it" if self.extent_allowed is None else units.text(self.extent_allowed)
            return f"{self.name}: {value} over {over}, allowed over {short} only."
        return f"{self.name}: {value} against {allowed} allowed."


def held(name: str, read: float, worst: float, rule: Rule, extent: float | None = None) -> Check:
    """Hold a reading against a rule, mm: ``worst`` is with the gauge's tolerance, ``extent`` the length it is on.

    Where nothing at all is permitted, what counts is whether there was anything to read. What was read as nothing has
    no length either.
    """
    cite(rule.source)
    if rule.allowed is None:
        within = rule.permitted or read <= SAME
        note = rule.note or ("no limit at this level" if rule.permitted else "not permitted")
        value = worst if rule.permitted else read
        return Check(name, "within" if within else "not-permitted", rule.source, note, value)
    stretch, note = rule.stretch, rule.note
    verdict: Standing = "within" if at_most(worst, rule.allowed) else "over"
    if stretch is None:
        return Check(name, verdict, rule.source, note, worst, rule.allowed)
    note = stretch.note if not note else f"{note}; {stretch.note}"
    if read > SAME and (extent is None or stretch.allowed is None or not at_most(extent, stretch.allowed)):
        verdict = "over"
        note += "; its length is not given" if extent is None else ""
    return Check(name, verdict, rule.source, note, worst, rule.allowed, extent, stretch.allowed)


def held_angle(name: str, read: float, least: float, source: Source) -> Check:
    """Hold an angle against the least there may be, rad; as read, for the gauge's tolerance is a length."""
    cite(source)
    verdict: Standing = "within" if at_least(read, least) else "under"
    return Check(name, verdict, source, "as read", read, least, is_angle=True)


def seen(name: str, there: bool, source: Source) -> Check:
    """Hold what is there or not against a rule that never permits it."""
    cite(source)
    return Check(name, "not-permitted" if there else "within", source, "not permitted")


def extent_of(readings: Readings, name: str) -> float | None:
    """Length told of an imperfection, mm; None when it is not, which means the whole weld."""
    return None if readings.extent is None else getattr(readings.extent, name, None)


def lack(wanted: float, had: float) -> float:
    """By how much less there is than wanted; nothing when the two are the same but for rounding."""
    return 0.0 if at_least(had, wanted) else wanted - had
