"""The table of what can be asked: one line a capability."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, get_args, get_type_hints

from .as_welded import as_welded
from .as_welded.examples import EXAMPLES as AS_WELDED
from .core.answers import Answered
from .crack_risk import crack_risk
from .crack_risk.examples import EXAMPLES as CRACK_RISK
from .distortion import distortion
from .distortion.examples import EXAMPLES as DISTORTION
from .filler_quantity import filler_quantity
from .filler_quantity.examples import EXAMPLES as FILLER_QUANTITY
from .fillet_size import fillet_size
from .fillet_size.examples import EXAMPLES as FILLET_SIZE
from .heat import heat
from .heat.examples import EXAMPLES as HEAT


@dataclass(frozen=True, slots=True)
class Capability:
    """A use case with the examples of its requests; its name, its request and its answer follow from the function."""

    use_case: Callable[[Any], Answered[Any]]
    summary: str
    examples: Mapping[str, Any]

    @property
    def operation(self) -> str:
        """Name of the operation, as the document and the client have it."""
        return self.use_case.__name__

    @property
    def path(self) -> str:
        """Last step of its path."""
        return self.operation.replace("_", "-")

    @property
    def request(self) -> Any:
        """Dataclass of its request, or a union of them."""
        hints = get_type_hints(self.use_case)
        return next(hint for name, hint in hints.items() if name != "return")

    @property
    def answer(self) -> type:
        """Dataclass of its answer."""
        found: type = get_args(get_type_hints(self.use_case)["return"])[0]
        return found

    @property
    def meaning(self) -> str:
        """What it answers, in one sentence: the first line of the use case's docstring."""
        return (self.use_case.__doc__ or "").strip().partition("\n")[0]


CAPABILITIES = (
    Capability(fillet_size, "Leg and throat of a fillet to specify.", FILLET_SIZE),
    Capability(as_welded, "What a weld is worth as gauged.", AS_WELDED),
    Capability(crack_risk, "How likely a pass is to crack.", CRACK_RISK),
    Capability(heat, "Heat of a pass and what it does to the steel.", HEAT),
    Capability(filler_quantity, "What welds take in metal, time, gas and money.", FILLER_QUANTITY),
    Capability(distortion, "How a joint shrinks and turns when welded.", DISTORTION),
)
"""Everything that can be asked, in the order of the document."""
