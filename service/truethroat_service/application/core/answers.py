"""What every answer carries: verdict, reasons, cautions, provenance and, when asked for, its working."""

import hashlib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any

import orjson

from ... import API_VERSION
from ...engine import ENGINE_VERSION
from ...engine.formula import Sheet, Source, Step
from ...reference.loader import position as position_of
from ...reference.loader import process as process_of
from .quantities import (
    ANGLE,
    AREA,
    FORCE,
    FORCE_PER_LENGTH,
    LENGTH,
    LINE_SECOND_MOMENT,
    MASS_PER_LENGTH,
    MOMENT,
    STRESS,
    Dimension,
    QuantityDict,
    Rounding,
    UnitSystem,
    render,
)


class Verdict(StrEnum):
    """Every verdict an answer can end in."""

    ENOUGH = "enough"
    SHORT = "short"
    SHORT_IF_FLUSH = "short-if-flush"
    CANNOT_BE_REACHED = "cannot-be-reached"
    FULL_PENETRATION_NEEDED = "full-penetration-needed"
    OVER = "over"
    ESTIMATED = "estimated"
    WITHIN = "within"
    TOO_FAST = "too-fast"
    TOO_SLOW = "too-slow"
    LOW = "low"
    RAISED = "raised"
    HIGH = "high"
    WITHIN_TOLERANCE = "within-tolerance"
    OUT_OF_TOLERANCE = "out-of-tolerance"
    OPENS_BY_HAND = "opens-by-hand"
    MAY_OPEN_BY_HAND = "may-open-by-hand"
    DOES_NOT_OPEN_BY_HAND = "does-not-open-by-hand"
    PLATE_BENDS_FIRST = "plate-bends-first"
    ACCEPTED = "accepted"
    REJECTED = "rejected"


SAFETY = {
    "code": "estimate-for-planning",
    "text": "An estimate for planning. Confirm it by the governing local code, the welding procedure and a licensed"
    " engineer or certified inspector before anything is cut, welded or loaded.",
}


@dataclass(frozen=True, slots=True)
class Common:
    """Fields that every calculation request may have."""

    units: UnitSystem = "metric"
    mark: str | None = None
    working: bool = False


@dataclass(slots=True)
class Remarks:
    """Reasons and cautions gathered while an answer is made."""

    reasons: list[str] = field(default_factory=list)
    cautions: list[dict[str, str]] = field(default_factory=lambda: [SAFETY])

    def because(self, text: str) -> None:
        """Add a reason."""
        self.reasons.append(text)

    def caution(self, code: str, text: str, source: Source | None = None) -> None:
        """Add a caution, with the rule behind it if there is one."""
        self.cautions.append({"code": code, "text": text} | ({"source": str(source)} if source else {}))


@dataclass(frozen=True, slots=True)
class Units:
    """Renders numbers of the engine in the units a request asked for."""

    system: UnitSystem

    def of(self, dimension: Dimension, value: float) -> QuantityDict:
        """Quantity of any dimension, from engine units."""
        return render(dimension, value, self.system)

    def length(self, value: float, rounding: Rounding = "nearest") -> QuantityDict:
        """Length from mm."""
        return render(LENGTH, value, self.system, rounding)

    def force_per_length(self, value: float) -> QuantityDict:
        """Force per length from N/mm."""
        return render(FORCE_PER_LENGTH, value, self.system)

    def force(self, value: float) -> QuantityDict:
        """Force from N."""
        return render(FORCE, value, self.system)

    def moment(self, value: float) -> QuantityDict:
        """Moment from N mm."""
        return render(MOMENT, value, self.system)

    def line_second_moment(self, value: float) -> QuantityDict:
        """Second moment of unit throat from mm3."""
        return render(LINE_SECOND_MOMENT, value, self.system)

    def angle(self, value: float) -> QuantityDict:
        """Angle from rad."""
        return render(ANGLE, value, self.system)

    def area(self, value: float) -> QuantityDict:
        """Area from mm2."""
        return render(AREA, value, self.system)

    def mass_per_length(self, value: float) -> QuantityDict:
        """Mass per length from kg/mm."""
        return render(MASS_PER_LENGTH, value, self.system)

    def text(self, value: float) -> str:
        """Length from mm, as text in a sentence."""
        return self.length(value)["text"]

    def stress_text(self, value: float) -> str:
        """Stress from MPa, as text in a sentence."""
        return render(STRESS, value, self.system)["text"]


def fingerprint(operation: str, request: Any) -> str:
    """SHA-256 over a request dataclass in engine units, whose use case has filled in its defaults.

    How the answer is presented (units, mark, working) is left out, and numbers count to twelve figures, so that the
    same joint asked for in inches and in millimetres has one fingerprint.
    """
    content = orjson.loads(orjson.dumps(request))
    content.pop("common")
    # GMAW and 135 are one process, 2F and PB one orientation.
    if content.get("process") is not None:
        content["process"] = process_of(content["process"]).id
    if content.get("position") is not None:
        content["position"] = position_of(content["position"]).orientation
    canonical = orjson.dumps([operation, _twelve_figures(content)], option=orjson.OPT_SORT_KEYS)
    return hashlib.sha256(canonical).hexdigest()


def _twelve_figures(value: Any) -> Any:
    """Content with every float cut to twelve significant figures."""
    if isinstance(value, float):
        return float(f"{value:.12g}")
    if isinstance(value, dict):
        return {key: _twelve_figures(entry) for key, entry in value.items()}
    if isinstance(value, list | tuple):
        return [_twelve_figures(entry) for entry in value]
    return value


def answer(
    operation: str,
    request: Any,
    sheet: Sheet,
    remarks: Remarks,
    verdict: Verdict,
    result: Mapping[str, Any],
    *,
    rule_set: str | None,
    parameters: Mapping[str, float],
) -> dict[str, Any]:
    """Put an answer together: its verdict, its own fields, then what every answer carries."""
    common: Common = request.common
    sources = [source for source in sheet.sources() if source.mark != "geometry"]
    made = {
        "verdict": verdict.value,
        "reasons": remarks.reasons,
        "cautions": remarks.cautions,
        **result,
        "provenance": {
            "rule_set": rule_set,
            "clauses": [str(source) for source in sources],
            "editions": list(dict.fromkeys(source.document for source in sources if source.document)),
            "parameters": dict(parameters),
            "engine_version": ENGINE_VERSION,
            "api_version": API_VERSION,
            "fingerprint": fingerprint(operation, request),
        },
    }
    if common.mark is not None:
        made["mark"] = common.mark
    if common.working:
        made["working"] = list(_working(sheet.steps))
    return made


def _working(steps: Iterable[Step]) -> Iterable[dict[str, Any]]:
    """Steps of a sheet as an answer shows them, in engine units."""
    for step in steps:
        formula = step.formula
        meaning = f"{formula.meaning} ({step.about})" if step.about else formula.meaning
        yield {
            "symbol": formula.symbol,
            "meaning": meaning,
            "expression": formula.expression,
            "with": {
                name: {"value": _plain(value), "unit": _unit(formula.args[name].unit)}
                for name, value in step.arguments.items()
            },
            "value": _plain(step.value),
            "unit": _unit(formula.unit),
            "source": str(formula.source),
        }


def _plain(value: Any) -> float | bool:
    """Number or flag without the type that NumPy gives it."""
    return value if isinstance(value, bool) else float(value)


def _unit(engine_unit: str) -> str:
    """Engine unit as it is printed; a flag has none."""
    return "" if engine_unit == "flag" else engine_unit.replace("**", "")
