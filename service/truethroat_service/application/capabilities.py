"""The table of what can be asked: one line a capability."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, get_args, get_type_hints

from .core.answers import Answered
from .fillet_size import fillet_size
from .fillet_size.examples import EXAMPLES as FILLET_SIZE
from .groove_size import groove_size
from .groove_size.examples import EXAMPLES as GROOVE_SIZE
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
)
"""Everything that can be asked, in the order of the document."""
