"""A number with its unit, as it travels to the service and back."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import NotRequired, TypeAlias, TypedDict

__all__ = ["Quantity", "QuantityDict", "QuantityInput", "to_wire"]


@dataclass(frozen=True, slots=True)
class Quantity:
    """A value and its unit; nothing here converts one unit to another.

    `text` is the service's own wording of the value (a shop fraction in inches, say). It takes no part in comparison.
    """

    value: float
    unit: str
    text: str = field(default="", compare=False)

    def __str__(self) -> str:
        return self.text or f"{str(self.value).removesuffix('.0')} {self.unit}".rstrip()

    def to_wire(self) -> dict[str, object]:
        """Give the object form that requests take: value and unit, in full precision."""
        return {"value": self.value, "unit": self.unit}

    def to_dict(self) -> dict[str, object]:
        """Give the form that answers have: value, unit and text."""
        return {"value": self.value, "unit": self.unit, "text": self.text}


class QuantityDict(TypedDict):
    """A value and its unit as a plain dictionary; the service ignores the text of an answer's own quantity."""

    value: float
    unit: str
    text: NotRequired[str]


#: What a method takes for a quantity: `"6 mm"`, `Quantity(6, "mm")` or `{"value": 6, "unit": "mm"}`.
QuantityInput: TypeAlias = str | Quantity | QuantityDict


def to_wire(value: object) -> object:
    """Turn quantities, at any depth of mappings and sequences, into what JSON can hold; leave the rest alone."""
    if isinstance(value, Quantity):
        return value.to_wire()
    if isinstance(value, Mapping):
        return {key: to_wire(item) for key, item in value.items()}
    if isinstance(value, (list, tuple)):
        return [to_wire(item) for item in value]
    return value
