"""What an answer leaves out: each of its fields that is null says itself what it needs."""

from collections.abc import Iterator
from dataclasses import dataclass, fields, is_dataclass
from typing import Any, TypeVar

from .shape import Lacks

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class LeftOut:
    """A field that is null, by its path, and what it needs."""

    field: str
    reason: str


def or_lacks(value: T | None, reason: str) -> T | Lacks:
    """Value, or what it needs where it is not known."""
    return Lacks(reason) if value is None else value


def known(value: T | Lacks) -> T | None:
    """Value, or None where it is not known."""
    return None if isinstance(value, Lacks) else value


def left_out(answer: Any, path: str = "") -> Iterator[LeftOut]:
    """Every field of an answer that lacks something, at any depth."""
    for field in fields(answer):
        value = getattr(answer, field.name)
        if isinstance(value, Lacks):
            yield LeftOut(f"{path}{field.name}", value.reason)
        elif is_dataclass(value):
            yield from left_out(value, f"{path}{field.name}/")
