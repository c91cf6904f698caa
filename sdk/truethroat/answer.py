"""What every answer can do, whatever it says."""

from __future__ import annotations

from dataclasses import dataclass, field, fields
from typing import Any

from truethroat.decoding import ReadOnly, encode

__all__ = ["Answer", "Result"]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Result:
    """Anything that came in an answer: a frozen dataclass, equal to another of its class with equal fields.

    Comparison and text are written here once. Made for each class anew, they would double the time of an import.
    """

    def __eq__(self, other: object) -> bool:
        return type(other) is type(self) and self._compared() == other._compared()

    def __hash__(self) -> int:
        return hash(self._compared())

    def __repr__(self) -> str:
        shown = ", ".join(f"{f.name}={getattr(self, f.name)!r}" for f in fields(self) if f.repr)
        return f"{type(self).__name__}({shown})"

    def _compared(self) -> tuple[object, ...]:
        return tuple(getattr(self, f.name) for f in fields(self) if f.compare)

    def to_dict(self) -> dict[str, Any]:
        """Give the fields as plain dictionaries and lists, by the names they have on the wire."""
        document: dict[str, Any] = encode(self)
        return document


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)
class Answer(Result):
    """What came with everything the service said about it, in `raw`, fields unknown to this version among it.

    Lengths, forces and so on are `Quantity`: in the units the request asked for, and never converted here.
    """

    raw: ReadOnly = field(repr=False, compare=False)

    def to_dict(self) -> dict[str, Any]:
        """Give all that the service sent, as plain dictionaries and lists."""
        return self.raw.to_dict()
