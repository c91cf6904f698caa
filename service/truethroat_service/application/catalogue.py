"""Use case: the catalogue of rule sets, materials, filler metals, processes, positions and preparations."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Annotated, Any, TypeVar

from .. import API_VERSION, SERVICE_VERSION
from ..engine import ENGINE_VERSION
from ..engine.formula import Source
from ..engine.rule_set import RuleSet
from ..reference.loader import FILLER_METALS, MATERIALS, POSITIONS, PROCESSES
from ..reference.loader_preparations import PREPARATIONS
from ..reference.loader_welding_rates import RATES
from .core.quantities import ANGLE, AREA, GAS_FLOW, LENGTH, MASS_RATE
from .core.shape import Length, Q, Stress, fields_of
from .core.wire import wire
from .joints.quality_sets import QUALITY_SETS, QualitySet
from .joints.rule_sets import ENTRIES, rule_set

Entry = TypeVar("Entry")


@dataclass(frozen=True, slots=True)
class RuleSetName:
    """Rule set by its id."""

    id: str
    title: str


@dataclass(frozen=True, slots=True)
class ServiceAnswer:
    """What this service is."""

    service: str
    service_version: str
    api_version: str
    engine_version: str
    rule_sets: tuple[RuleSetName, ...]


@dataclass(frozen=True, slots=True)
class LimitOfScope:
    """Limit of scope."""

    text: str
    source: str


@dataclass(frozen=True, slots=True)
class ReadingOfClause:
    """How a clause is read that is silent, borrowed or open to two readings."""

    text: str
    source: Annotated[str, "The clause that is read."]


@dataclass(frozen=True, slots=True)
class RuleSetEntry:
    """Rule set."""

    id: str
    title: str
    editions: tuple[str, ...]
    clauses: tuple[str, ...]
    parameters: Mapping[str, float]
    limits: tuple[LimitOfScope, ...]
    readings: tuple[ReadingOfClause, ...]


@dataclass(frozen=True, slots=True)
class QualitySetEntry:
    """Quality level or code that a finished weld is judged by."""

    id: str
    title: str
    editions: tuple[str, ...]
    clauses: tuple[str, ...]
    limits: tuple[LimitOfScope, ...]
    readings: tuple[ReadingOfClause, ...]


@dataclass(frozen=True, slots=True)
class RuleSetsAnswer:
    """Rule sets, and quality sets, with their clauses and limits."""

    rule_sets: tuple[RuleSetEntry, ...]
    quality_sets: tuple[QualitySetEntry, ...]


@dataclass(frozen=True, slots=True)
class StrengthBand:
    """Strengths over a range of thickness."""

    thickness_over: Length
    thickness_to: Length | None
    yield_strength: Stress
    tensile_strength: Stress
    welded_yield_strength: Stress | None
    welded_tensile_strength: Stress | None


@dataclass(frozen=True, slots=True)
class MaterialEntry:
    """Base metal with its strengths by thickness, over ... up to and including."""

    id: str
    standard: str
    family: str
    form: str
    beta_w: float | None
    source: str
    bands: tuple[StrengthBand, ...]


@dataclass(frozen=True, slots=True)
class MaterialsAnswer:
    """Base metals."""

    materials: tuple[MaterialEntry, ...]


@dataclass(frozen=True, slots=True)
class FillerMetalEntry:
    """Filler metal."""

    id: str
    standard: str
    family: str
    tensile_strength: Stress
    matches: str
    source: str


@dataclass(frozen=True, slots=True)
class FillerMetalsAnswer:
    """Filler metals."""

    filler_metals: tuple[FillerMetalEntry, ...]


@dataclass(frozen=True, slots=True)
class PublishedRate:
    """Figure of one publication."""

    setting: Annotated[str, "Setting in which it was measured."]
    least: float
    most: float
    typical: float | None
    usual: Annotated[bool, "Whether an estimate uses the row where the request leaves the figure out."]
    source: str


@dataclass(frozen=True, slots=True)
class PublishedRates:
    """Published figures of a process; an estimate uses the range of the usual rows."""

    efficiency: tuple[PublishedRate, ...]
    deposition_rate: Annotated[tuple[PublishedRate, ...], Q(MASS_RATE)]
    operator_factor: tuple[PublishedRate, ...]
    gas_flow: Annotated[tuple[PublishedRate, ...], Q(GAS_FLOW)]
    bead_area: Annotated[tuple[PublishedRate, ...], Q(AREA)]


@dataclass(frozen=True, slots=True)
class ProcessEntry:
    """Process."""

    id: str
    title: str
    iso_4063: tuple[str, ...]
    source: str
    rates: PublishedRates


@dataclass(frozen=True, slots=True)
class PositionEntry:
    """Position."""

    id: str
    title: str
    orientation: str
    equivalents: tuple[str, ...]
    source: str


@dataclass(frozen=True, slots=True)
class ProcessesAnswer:
    """Processes and positions, with every code each answers to."""

    processes: tuple[ProcessEntry, ...]
    positions: tuple[PositionEntry, ...]


@dataclass(frozen=True, slots=True)
class Limits:
    """Limits; null where there is none."""

    least: float | None
    most: float | None


@dataclass(frozen=True, slots=True)
class PreparationEntry:
    """Preparation with its limits; a limit is null where the standard sets none."""

    id: str
    ref: Annotated[str, "The standard's own reference."]
    standard: str
    joints: tuple[str, ...]
    penetration: str
    form: str
    root: Annotated[str, "How the root is welded."]
    thickness: Annotated[Limits, Q(LENGTH)]
    angle: Annotated[Limits | None, Q(ANGLE)]
    gap: Annotated[Limits | None, Q(LENGTH)]
    gap_share_of_thickness: float | None
    land: Annotated[Limits | None, Q(LENGTH)]
    processes: tuple[str, ...]
    orientations: tuple[str, ...]
    source: str


@dataclass(frozen=True, slots=True)
class PreparationsAnswer:
    """Preparations of grooves."""

    preparations: tuple[PreparationEntry, ...]


def sent(answer: Any) -> dict[str, Any]:
    """Answer of the catalogue as it is sent, in metric units."""
    return wire(answer, "metric")


def service() -> ServiceAnswer:
    """Versions of the service, and its rule sets by name."""
    names = tuple(RuleSetName(name, entry.title) for name, entry in ENTRIES.items())
    return ServiceAnswer("truethroat", SERVICE_VERSION, API_VERSION, ENGINE_VERSION, names)


def rule_sets() -> RuleSetsAnswer:
    """Rule sets and quality sets with their editions, clauses, parameters and limits of scope."""
    return RuleSetsAnswer(
        tuple(_entry(RuleSetEntry, found, **_words(found)) for found in map(rule_set, ENTRIES)),
        tuple(_entry(QualitySetEntry, found, **_words(found)) for found in QUALITY_SETS.values()),
    )


def _words(rules: RuleSet | QualitySet) -> dict[str, tuple[LimitOfScope | ReadingOfClause, ...]]:
    """Limits and readings of a rule set or a quality set."""
    return {
        "limits": tuple(LimitOfScope(limit.text, str(limit.source)) for limit in rules.limits),
        "readings": tuple(ReadingOfClause(reading.text, str(reading.source)) for reading in rules.readings),
    }


def materials() -> MaterialsAnswer:
    """Base metals with their strengths by thickness, in millimetres and megapascals."""
    return MaterialsAnswer(
        tuple(
            _entry(
                MaterialEntry,
                material,
                source=f"{material.source} ({material.mark})",
                bands=tuple(_entry(StrengthBand, band) for band in material.bands),
            )
            for material in MATERIALS.values()
        )
    )


def filler_metals() -> FillerMetalsAnswer:
    """Filler metals with their strength, in megapascals."""
    return FillerMetalsAnswer(
        tuple(
            _entry(FillerMetalEntry, filler, source=f"{filler.source} ({filler.mark})")
            for filler in FILLER_METALS.values()
        )
    )


def processes() -> ProcessesAnswer:
    """Processes and positions with every code they answer to, and the published figures of each process."""
    return ProcessesAnswer(
        tuple(
            _entry(ProcessEntry, process, source=f"{process.source} ({process.mark})", rates=_rates(process.id))
            for process in PROCESSES.values()
        ),
        tuple(
            _entry(PositionEntry, position, source=f"{position.source} ({position.mark})")
            for position in POSITIONS.values()
        ),
    )


def preparations() -> PreparationsAnswer:
    """Preparations of grooves with the limits each holds in, in millimetres."""
    return PreparationsAnswer(
        tuple(
            _entry(
                PreparationEntry,
                entry,
                thickness=Limits(*entry.thickness),
                angle=entry.angle and Limits(*entry.angle),
                gap=None if entry.gap_by_thickness else Limits(*entry.gap),
                gap_share_of_thickness=entry.gap[0] if entry.gap_by_thickness else None,
                land=entry.land and Limits(*entry.land),
                source=f"{entry.source}, {entry.mark}",
            )
            for entry in PREPARATIONS
        )
    )


def _entry(kind: type[Entry], thing: Any, **more: Any) -> Entry:
    """Entry of the catalogue: each field as given, or the attribute of the thing that has its name."""
    return kind(**{name: more[name] if name in more else getattr(thing, name) for name in fields_of(kind)})  # type: ignore[arg-type]


def _rates(process: str) -> PublishedRates:
    """What publications say a process takes, by quantity."""
    rates: dict[str, tuple[PublishedRate, ...]] = {
        name: tuple(
            PublishedRate(
                rate.setting, rate.low, rate.high, rate.typical, rate.usual, str(Source("", rate.source, rate.mark))
            )
            for rate in RATES
            if rate.quantity == name.replace("_", "-") and process in rate.processes
        )
        for name in fields_of(PublishedRates)
    }
    return PublishedRates(**rates)
