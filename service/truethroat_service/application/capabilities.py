"""Table of the capabilities: one line for each."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from importlib import import_module
from typing import Any, get_args, get_type_hints

from .core.answers import Answered

ROOMS = (
    "fillet_size",
    "groove_size",
    "grind_allowance",
    "bevel_depth",
    "weld_group",
    "as_welded",
    "heat",
    "crack_risk",
    "filler_quantity",
    "distortion",
    "break_test",
    "joint_plan",
)
"""Folders of the capabilities, in the order of the document: each holds a use case of its own name, and examples."""


@dataclass(frozen=True, slots=True)
class Capability:
    """A use case with the examples of its requests; all else that is published of it follows from the function."""

    use_case: Callable[[Any], Answered[Any]]
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
        kind: type = get_args(get_type_hints(self.use_case)["return"])[0]
        return kind

    @property
    def meaning(self) -> str:
        """What it answers, in one sentence: the first line of the use case's docstring."""
        return (self.use_case.__doc__ or "").partition("\n")[0]


def _capability(room: str) -> Capability:
    package = f"{__package__}.{room}"
    return Capability(getattr(import_module(package), room), import_module(f"{package}.examples").EXAMPLES)


CAPABILITIES = tuple(map(_capability, ROOMS))
"""Every capability, in the order of the document."""
