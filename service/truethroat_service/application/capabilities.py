"""The table of what can be asked: one line a capability."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, get_args, get_type_hints

from .bevel_depth import bevel_depth
from .bevel_depth.examples import EXAMPLES as BEVEL_DEPTH
from .break_test import break_test
from .break_test.examples import EXAMPLES as BREAK_TEST
from .core.answers import Answered
from .crack_risk import crack_risk
from .crack_risk.examples import EXAMPLES as CRACK_RISK
from .distortion import distortion
from .distortion.examples import EXAMPLES as DISTORTION
from .filler_quantity import filler_quantity
from .filler_quantity.examples import EXAMPLES as FILLER_QUANTITY
from .fillet_size import fillet_size
from .fillet_size.examples import EXAMPLES as FILLET_SIZE
from .grind_allowance import grind_allowance
from .grind_allowance.examples import EXAMPLES as GRIND_ALLOWANCE
from .groove_size import groove_size
from .groove_size.examples import EXAMPLES as GROOVE_SIZE
from .heat import heat
from .heat.examples import EXAMPLES as HEAT
from .joint_plan import joint_plan
from .joint_plan.examples import EXAMPLES as JOINT_PLAN
from .weld_group import weld_group
from .weld_group.examples import EXAMPLES as WELD_GROUP


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
    Capability(groove_size, "How much groove, plug or slot is enough.", GROOVE_SIZE),
    Capability(weld_group, "Lines of weld under any force and moment.", WELD_GROUP),
    Capability(filler_quantity, "What welds take in metal, time, gas and money.", FILLER_QUANTITY),
    Capability(bevel_depth, "How deep to prepare an edge before welding.", BEVEL_DEPTH),
    Capability(break_test, "What opens a coupon from its root.", BREAK_TEST),
    Capability(grind_allowance, "How much of a seam may be ground away.", GRIND_ALLOWANCE),
    Capability(distortion, "How a joint shrinks and turns when welded.", DISTORTION),
    Capability(crack_risk, "How likely a pass is to crack.", CRACK_RISK),
    Capability(heat, "Heat of a pass and what it does to the steel.", HEAT),
    Capability(joint_plan, "Every way to make one joint, ranked.", JOINT_PLAN),
)
"""Everything that can be asked, in the order of the document."""
