"""Refusals that need sound values to be found: what the request asks for does not fit together, or is out of scope."""

from dataclasses import dataclass
from typing import Literal

from .units import Units

Code = Literal["inconsistent", "out-of-scope", "out-of-range"]


@dataclass(frozen=True, slots=True)
class Fault:
    """One fault: where (a JSON pointer into the request), what is wrong and what would be right, and its kind."""

    pointer: str
    detail: str
    code: Code


class Refused(ValueError):
    """Request that cannot be answered, with every fault found."""

    def __init__(self, faults: list[Fault]) -> None:
        """Keep the faults; at least one."""
        super().__init__("; ".join(f"{fault.pointer}: {fault.detail}" for fault in faults))
        self.faults = tuple(faults)


class Faults(list[Fault]):
    """Faults gathered before the computation starts, so that all are told at once, in the request's units."""

    def __init__(self, units: Units) -> None:
        """Start with none."""
        super().__init__()
        self.units = units

    def inconsistent(self, pointer: str, detail: str) -> None:
        """Add a field that contradicts, or lacks, another."""
        self.append(Fault(pointer, detail, "inconsistent"))

    def out_of_scope(self, pointer: str, detail: str) -> None:
        """Add a value beyond the limits of the chosen rules."""
        self.append(Fault(pointer, detail, "out-of-scope"))

    def out_of_range(self, pointer: str, detail: str) -> None:
        """Add a value beyond what the section allows."""
        self.append(Fault(pointer, detail, "out-of-range"))

    def refuse(self) -> None:
        """Raise :class:`Refused` if anything was added."""
        if self:
            raise Refused(self)
