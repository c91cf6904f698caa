"""What every answer carries: verdict, reasons, cautions, provenance and, when asked for, its working."""

import hashlib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, fields, is_dataclass
from typing import Annotated, Any, Generic, TypeVar

import orjson

from ... import API_VERSION
from ...engine import ENGINE_VERSION
from ...engine.formula import Sheet, Source, Step
from ...reference.loader import position as position_of
from ...reference.loader import process as process_of
from .codes import Verdict
from .quantities import UnitSystem
from .remarks import Caution, Remarks
from .shape import OMITTED, Longest
from .wire import wire

R = TypeVar("R")


@dataclass(frozen=True, slots=True)
class Common:
    """Fields that every calculation's request may have."""

    units: Annotated[UnitSystem, "Units of the answer."] = "metric"
    mark: Annotated[str | None, Longest(200), "The caller's own mark for this joint, given back with the answer."] = (
        None
    )
    working: Annotated[bool, "Whether the answer shows its working."] = False


@dataclass(frozen=True, slots=True)
class Operand:
    """Argument of a step."""

    value: float | bool
    unit: str


@dataclass(frozen=True, slots=True)
class WorkingStep:
    """One step: a formula, what went in and what came out. A step's symbol is an argument of a later one."""

    symbol: str
    meaning: str
    expression: str
    with_: Mapping[str, Operand]
    value: float | bool
    unit: str
    source: str


@dataclass(frozen=True, slots=True)
class Provenance:
    """What the answer comes from."""

    rule_set: str | None
    clauses: tuple[str, ...]
    editions: tuple[str, ...]
    parameters: Mapping[str, float]
    engine_version: str
    api_version: str
    fingerprint: Annotated[str, "SHA-256 of the request in engine units with its defaults filled in."]


@dataclass(frozen=True, slots=True)
class Head:
    """What stands before the fields of a resource's own."""

    verdict: Verdict
    reasons: tuple[str, ...]
    cautions: tuple[Caution, ...]


@dataclass(frozen=True, slots=True)
class Tail:
    """What stands after the fields of a resource's own."""

    provenance: Provenance
    mark: Annotated[str | None, OMITTED, "The request's own mark."] = None
    working: Annotated[tuple[WorkingStep, ...] | None, OMITTED, "Steps in the order computed, in engine units."] = None


@dataclass(frozen=True, slots=True)
class Answered(Generic[R]):
    """Answered of a use case: its verdict and its result in engine units; nothing is rendered before it is sent."""

    operation: str
    request: Any
    verdict: Verdict
    reasons: tuple[str, ...]
    cautions: tuple[Caution, ...]
    result: R
    sheet: Sheet
    rule_set: str | None
    parameters: Mapping[str, float]
    rests_on: "tuple[Answered[Any], ...]" = ()

    def wire(self) -> dict[str, Any]:
        """Answered as it is sent, in the units its request asked for."""
        common: Common = self.request.common
        units = common.units
        head = wire(Head(self.verdict, self.reasons, self.cautions), units)
        own: Any = wire(self.result, units) if is_dataclass(self.result) else self.result
        working = tuple(_working(self.sheet)) if common.working else None
        return {**head, **own, **wire(Tail(self._provenance(), common.mark, working), units)}

    def sources(self) -> list[Source]:
        """Sources that decided or computed something, those of the answers it rests on last."""
        own = [source for source in self.sheet.sources() if source.mark != "geometry"]
        return [*own, *(source for answer in self.rests_on for source in answer.sources())]

    def _provenance(self) -> Provenance:
        sources = self.sources()
        return Provenance(
            self.rule_set,
            tuple(dict.fromkeys([source.citation for source in sources])),
            tuple(dict.fromkeys([source.document for source in sources if source.document])),
            self.parameters,
            ENGINE_VERSION,
            API_VERSION,
            fingerprint(self.operation, self.request),
        )


def answered(
    operation: str,
    request: Any,
    sheet: Sheet,
    remarks: Remarks,
    verdict: Verdict,
    result: R,
    *,
    rule_set: str | None,
    parameters: Mapping[str, float],
    rests_on: tuple[Answered[Any], ...] = (),
) -> Answered[R]:
    """Put an answer together from what a use case found."""
    return Answered(
        operation,
        request,
        verdict,
        tuple(remarks.reasons),
        tuple(remarks.cautions),
        result,
        sheet,
        rule_set,
        parameters,
        rests_on,
    )


def fingerprint(operation: str, request: Any) -> str:
    """SHA-256 over a request dataclass in engine units, whose use case has filled in its defaults.

    How the answer is presented (units, mark, working) is left out, and numbers count to twelve figures, so that the
    same joint asked for in inches and in millimetres has one fingerprint.
    """
    content = _canonical(request)
    del content["common"]
    # GMAW and 135 are one process, 2F and PB one orientation.
    if content.get("process") is not None:
        content["process"] = process_of(content["process"]).id
    if content.get("position") is not None:
        content["position"] = position_of(content["position"]).orientation
    return hashlib.sha256(orjson.dumps([operation, content], option=orjson.OPT_SORT_KEYS)).hexdigest()


_NAMES: dict[type, tuple[str, ...]] = {}


def _canonical(value: Any) -> Any:
    """Plain content of a dataclass, with every float cut to twelve significant figures."""
    kind = type(value)
    if value is None or kind is str or kind is bool or kind is int:
        return value
    if kind is float:
        return float(f"{value:.12g}")
    if kind is tuple or kind is list:
        return [_canonical(entry) for entry in value]
    names = _NAMES.get(kind)
    if names is None:
        names = _NAMES[kind] = tuple(entry.name for entry in fields(value))
    return {name: _canonical(getattr(value, name)) for name in names}


def _working(sheet: Sheet) -> Iterator[WorkingStep]:
    """Steps of a sheet as an answer shows them, in engine units."""
    for step in sheet.steps:
        yield _step(step)


def _step(step: Step) -> WorkingStep:
    formula = step.formula
    return WorkingStep(
        formula.symbol,
        f"{formula.meaning} ({step.about})" if step.about else formula.meaning,
        formula.expression,
        {name: Operand(_plain(value), _unit(formula.args[name].unit)) for name, value in step.arguments.items()},
        _plain(step.value),
        _unit(formula.unit),
        str(formula.source),
    )


def _plain(value: Any) -> float | bool:
    """Number or flag without the type that NumPy gives it."""
    return value if isinstance(value, bool) else float(value)


def _unit(engine_unit: str) -> str:
    """Engine unit as it is printed; a flag has none."""
    return "" if engine_unit == "flag" else engine_unit.replace("**", "")
