"""Asking the single resources on behalf of a plan, and reading their answers back into engine units."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any

from ...engine.formula import off_the_sheet
from ..bevel_depth import bevel_depth
from ..core import quantities
from ..core.faults import Refused
from ..core.quantities import Dimension
from ..crack_risk import crack_risk
from ..distortion import distortion
from ..filler_quantity import filler_quantity
from ..fillet_size import fillet_size
from ..grind_allowance import grind_allowance
from ..groove_size import groove_size
from ..heat import heat

Answer = dict[str, Any]

RESOURCES: Mapping[str, Callable[[Any], Any]] = MappingProxyType(
    {
        "fillet_size": fillet_size,
        "groove_size": groove_size,
        "bevel_depth": bevel_depth,
        "grind_allowance": grind_allowance,
        "filler_quantity": filler_quantity,
        "heat": heat,
        "distortion": distortion,
        "crack_risk": crack_risk,
    }
)
"""Single resources a plan asks, by their operation."""

DIMENSIONS: Mapping[str, Dimension] = MappingProxyType(
    {
        unit: dimension
        for dimension in vars(quantities).values()
        if isinstance(dimension, Dimension) and dimension is not quantities.TIME
        for unit in (dimension.metric, dimension.us)
    }
)
"""Dimension of each unit that answers are in."""


class Unworkable(Exception):
    """A way that cannot be made under the rules, with every reason."""

    def __init__(self, *reasons: str) -> None:
        """Keep the reasons apart."""
        super().__init__("; ".join(reasons))
        self.reasons = reasons


@dataclass(slots=True)
class Parts:
    """Answers of single resources gathered for one way."""

    answers: dict[str, Answer] = field(default_factory=dict)
    whole: dict[str, Any] = field(default_factory=dict)

    def ask(self, operation: str, request: Any) -> Answer:
        """Answer of a resource; raises :class:`Unworkable` when it refuses the way."""
        try:
            with off_the_sheet():
                whole = RESOURCES[operation](request)
                made: Answer = whole.wire()
        except Refused as refused:
            raise Unworkable(*(fault.detail for fault in refused.faults)) from refused
        self.answers[operation] = made
        self.whole[operation] = whole
        return made

    def ask_for(self, verdicts: tuple[str, ...], operation: str, request: Any) -> Answer:
        """Answer of a resource that must end in one of the verdicts; its own reasons say why it does not."""
        made = self.ask(operation, request)
        if made["verdict"] not in verdicts:
            raise Unworkable(*made["reasons"])
        return made


def engine(quantity: Mapping[str, Any]) -> float:
    """Value of an answer's quantity in engine units."""
    return DIMENSIONS[quantity["unit"]].to_engine(quantity["value"], quantity["unit"])
