"""What the estimate of each weld rests on, and what comes of it."""

from collections.abc import Mapping
from dataclasses import dataclass

from ..joints.usual_rates import Band
from ..joints.weld_sections import Section
from .passes import Passes
from .prices import Span
from .request import Weld


@dataclass(frozen=True, slots=True)
class Figures:
    """What an estimate rests on; None where neither the request nor a publication says it."""

    density: Band
    efficiency: Band | None
    rate: Band | None
    factor: Band | None
    gas_flow: Band | None
    bead: Band | None
    source_efficiency: Band | None


@dataclass(frozen=True, slots=True)
class Estimate:
    """Estimate of the welds of one entry; spans from least to most."""

    weld: Weld
    section: Section
    figures: Figures
    deposited: float
    consumable: Span | None
    arc_time: Span | None
    working_time: Span | None
    gas: Span | None
    energy: Span | None
    passes: Passes | None
    costs: Mapping[str, Span | None] | None
