"""Requests of a plan to the single resources, whose answers stay objects in engine units."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from typing import Any, TypeVar

from ...engine.formula import off_the_sheet
from ..core.answers import Answered
from ..core.codes import Verdict
from ..core.faults import Fault, Refused

Request = TypeVar("Request")
Result = TypeVar("Result")


class Unworkable(Exception):
    """A way that does not keep the rules, with every reason as a full sentence."""

    def __init__(self, *reasons: str) -> None:
        """Keep the reasons apart."""
        super().__init__("; ".join(reasons))
        self.reasons = reasons


def reasons_of(faults: Iterable[Fault]) -> list[str]:
    """Faults of a single resource as reasons: the field of its request, and what is wrong there."""
    return [f"{fault.pointer.removeprefix('#/')}: {fault.detail}" for fault in faults]


@dataclass(slots=True)
class Parts:
    """Answers of single resources gathered for one way, by their operation."""

    answers: dict[str, Answered[Any]] = field(default_factory=dict)

    def ask(self, use_case: Callable[[Request], Answered[Result]], request: Request) -> Answered[Result]:
        """Answer of a resource; raises :class:`Unworkable` when it refuses the way."""
        try:
            with off_the_sheet():
                answer = use_case(request)
        except Refused as refused:
            raise Unworkable(*reasons_of(refused.faults)) from refused
        self.answers[answer.operation] = answer
        return answer

    def ask_for_enough(self, use_case: Callable[[Request], Answered[Result]], request: Request) -> Result:
        """Result of a resource that ends in "enough"; raises :class:`Unworkable` with its reasons where it does not."""
        answer = self.ask(use_case, request)
        if answer.verdict is not Verdict.ENOUGH:
            raise Unworkable(*answer.reasons)
        return answer.result
