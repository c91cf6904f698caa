"""One limit of a level or code against what was read, over the length of weld that it was read on."""

from dataclasses import dataclass

from ...engine.formula import Source, cite
from ...engine.rounding import SAME, at_least, at_most
from ..core.codes import Verdict
from ..core.quantities import ANGLE, LENGTH
from ..core.shape import Measured
from ..core.units import Units
from .answer import Overweld, QualityLimit, Standing, ThroatAsWelded
from .request import Readings


@dataclass(frozen=True, slots=True)
class Stretch:
    """Length that an imperfection may have, mm, and the note that says so; None for a share of an unknown length."""

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
class Judgement:
    """Verdict on a weld, its own fields of the answer, and the limits it is held to."""

    verdict: Verdict
    limits: tuple[QualityLimit, ...]
    throat: ThroatAsWelded
    strength_left: float
    size: float | None = None
    overweld: Overweld | None = None


def amount(measured: Measured | None) -> float:
    """What was measured, mm or rad; nothing where there is no number."""
    return 0.0 if measured is None else measured.value


def why_not_kept(limit: QualityLimit, units: Units) -> str:
    """Sentence that says why a limit is not kept."""
    name = limit.name.replace("-", " ").capitalize()
    if limit.value is None:
        return f"{name} is not permitted."
    value = _text(limit.value, units)
    if limit.allowed is None:
        return f"{name} is {value}; none is permitted."
    allowed = _text(limit.allowed, units)
    if limit.value.dimension is ANGLE:
        return f"{name} is {value}; it must be at least {allowed}."
    if at_most(limit.value.value, limit.allowed.value):
        over = "the whole weld, as its length was not sent" if limit.extent is None else units.text(limit.extent)
        short = "a part of it" if limit.extent_allowed is None else units.text(limit.extent_allowed)
        return f"{name} is {value} over {over}; that is allowed over {short} only."
    return f"{name} is {value}; at most {allowed} is allowed."


def _text(measured: Measured, units: Units) -> str:
    return units.of(measured.dimension, measured.value)["text"]


def held(name: str, read: float, worst: float, rule: Rule, extent: float | None = None) -> QualityLimit:
    """Hold a reading against a rule, mm: ``worst`` is with the gauge's tolerance, ``extent`` the length it is on.

    Where nothing at all is permitted, what counts is whether there was anything to read. What was read as nothing has
    no length either.
    """
    cite(rule.source)
    if rule.allowed is None:
        within = rule.permitted or read <= SAME
        note = rule.note or ("no limit at this level" if rule.permitted else "not permitted")
        value = Measured(worst if rule.permitted else read, LENGTH)
        return _limit(name, "within" if within else "not-permitted", note, rule.source, value)
    stretch, note = rule.stretch, rule.note
    value, allowed = Measured(worst, LENGTH), Measured(rule.allowed, LENGTH)
    verdict: Standing = "within" if at_most(worst, rule.allowed) else "over"
    if stretch is None:
        return _limit(name, verdict, note, rule.source, value, allowed)
    note = stretch.note if not note else f"{note}; {stretch.note}"
    if read > SAME and (extent is None or stretch.allowed is None or not at_most(extent, stretch.allowed)):
        verdict = "over"
        note += "; its length was not sent" if extent is None else ""
    return _limit(name, verdict, note, rule.source, value, allowed, extent, stretch.allowed)


def held_angle(name: str, read: float, least: float, source: Source) -> QualityLimit:
    """Hold an angle against the least there may be, rad; as read, for the gauge's tolerance is a length."""
    cite(source)
    verdict: Standing = "within" if at_least(read, least) else "under"
    return _limit(name, verdict, "as read", source, Measured(read, ANGLE), Measured(least, ANGLE))


def seen(name: str, there: bool, source: Source) -> QualityLimit:
    """Hold what is there or not against a rule that never permits it."""
    cite(source)
    return _limit(name, "not-permitted" if there else "within", "not permitted", source)


def _limit(
    name: str,
    verdict: Standing,
    note: str,
    source: Source,
    value: Measured | None = None,
    allowed: Measured | None = None,
    extent: float | None = None,
    extent_allowed: float | None = None,
) -> QualityLimit:
    return QualityLimit(name, value, allowed, extent, extent_allowed, verdict, note, str(source))


def extent_of(readings: Readings, name: str) -> float | None:
    """Length of an imperfection, mm; None where it was not sent, which means the whole weld."""
    return None if readings.extent is None else getattr(readings.extent, name, None)


def lack(wanted: float, had: float) -> float:
    """By how much less there is than wanted; nothing when the two are the same but for rounding."""
    return 0.0 if at_least(had, wanted) else wanted - had
