"""Components of the document: each dataclass of a request or an answer becomes one, and so does each quantity."""

import dataclasses as dc
import types
from collections.abc import Mapping
from enum import StrEnum
from typing import Any, Literal, Union, get_args, get_origin

from ..application.core.answers import Answered, Head, Tail
from ..application.core.codes import CautionCode, FaultCode, RemedyCode
from ..application.core.quantities import Dimension
from ..application.core.shape import (
    INLINED,
    OMITTED,
    UNSENT,
    Among,
    Hint,
    Q,
    component_words,
    fields_of,
    taken_apart,
)
from ..application.core.wire import wire_name
from .derive import KindsSchema, Schema
from .fields import Choice, dimension_schema

Json = dict[str, Any]

_PLAIN = {str: "string", float: "number", bool: "boolean", int: "integer"}


_LISTS = {CautionCode: "CautionCode", RemedyCode: "RemedyCode", FaultCode: "FaultCode"}
"""Lists of codes that are components of their own."""


class Components:
    """Components by name, made on first use; two different things of one name are a mistake."""

    def __init__(self) -> None:
        """Start with none."""
        self.schemas: dict[str, Json] = {}
        self._what: dict[str, object] = {}

    def request(self, target: Schema | KindsSchema | Dimension | Choice) -> str:
        """Reference to an object, a quantity or a list of choices of a request."""
        if isinstance(target, Dimension):
            return self._named(camel(target.name), target, lambda: dimension_schema(target))
        if isinstance(target, Choice):
            return self._named(target.list_name, target.choices, target.listed)
        return self._named(target.name, target, lambda: target.document(self.request))

    def answer(self, name: str, result: type) -> Json:
        """Reference to the answer of a calculation: head, the fields of its own, tail."""
        return {"$ref": self._named(name, result, lambda: self._answer(result))}

    def record(self, kind: Any, measured: Q | None = None) -> Json:
        """Reference to a dataclass of an answer, its floats measured in a quantity where they are."""
        name = kind.__name__ if measured is None else camel(measured.dimension.name) + kind.__name__
        return {
            "$ref": self._named(name, (kind, measured and measured.dimension), lambda: self._record(kind, measured))
        }

    def _named(self, name: str, what: object, make: Any) -> str:
        if name not in self._what:
            self._what[name] = what
            self.schemas[name] = {}
            self.schemas[name] = make()
        if self._what[name] != what:
            raise ValueError(f"two components are called {name}")
        return f"#/components/schemas/{name}"

    def _answer(self, result: type) -> Json:
        head, own, tail = (self._record(kind, None) for kind in (Head, result, Tail))
        return {
            "type": "object",
            "description": own["description"],
            "properties": head["properties"] | own["properties"] | tail["properties"],
            "required": head["required"] + own["required"] + tail["required"],
        }

    def _record(self, kind: Any, measured: Q | None) -> Json:
        sent = _sent(kind)
        return {
            "type": "object",
            "description": component_words(kind),
            "properties": {name: self._property(hint, measured) for name, hint in sent.items()},
            "required": [name for name, hint in sent.items() if OMITTED not in hint.marks],
        }

    def _property(self, hint: Hint, measured: Q | None) -> Json:
        schema = self._bare(hint, measured)
        if hint.optional and OMITTED not in hint.marks:
            kind = schema.get("type")
            options = schema.get("anyOf", [schema])
            schema = {"type": [kind, "null"]} if schema == {"type": kind} else {"anyOf": [*options, {"type": "null"}]}
        return schema | ({"description": hint.words} if hint.words else {})

    def _bare(self, hint: Hint, measured: Q | None) -> Json:
        """Schema of a value that is not None."""
        quantity = hint.quantity(measured)
        kind, arguments = get_origin(hint.type) or hint.type, get_args(hint.type)
        if kind is float and quantity is not None:
            return {"$ref": self._quantity(quantity.dimension)}
        among = hint.mark(Among)
        if among is not None:
            return {"anyOf": [{"$ref": self._quantity(dimension)} for dimension in among.dimensions]}
        if kind in _PLAIN:
            return {"type": _PLAIN[kind]}
        if kind is Literal:
            listed = {"type": _PLAIN[type(arguments[0])], "enum": list(arguments)}
            name = _LISTS.get(hint.type)
            return {"$ref": self._named(name, arguments, lambda: listed)} if name else listed
        if kind in (Union, types.UnionType):
            return {"type": [_PLAIN[one] for one in arguments]}
        if kind is tuple:
            return self._array(arguments, quantity)
        if kind is Mapping:
            return {"type": "object", "additionalProperties": self._property(taken_apart(arguments[1]), None)}
        if kind is Answered:
            return self.answer(arguments[0].__name__, arguments[0])
        if dc.is_dataclass(kind):
            return self.record(kind, quantity)
        if isinstance(kind, type) and issubclass(kind, StrEnum):
            reference = self._named(
                kind.__name__, kind, lambda: {"type": "string", "enum": [one.value for one in kind]}
            )
            return {"$ref": reference}
        raise TypeError(f"no schema for {hint}")

    def _array(self, arguments: tuple[Any, ...], quantity: Q | None) -> Json:
        schema: Json = {"type": "array", "items": self._property(taken_apart(arguments[0]), quantity)}
        if Ellipsis not in arguments:
            schema |= {"minItems": len(arguments), "maxItems": len(arguments)}
        return schema

    def _quantity(self, dimension: Dimension) -> str:
        return self._named(
            f"{camel(dimension.name)}Answer", ("answer", dimension.name), lambda: answered_quantity(dimension)
        )


def _sent(kind: Any) -> dict[str, Hint]:
    """Annotations of what is sent of a dataclass, those of an inlined object in its place."""
    sent: dict[str, Hint] = {}
    for name, field in fields_of(kind).items():
        hint = taken_apart(field.hint)
        if INLINED in hint.marks:
            sent |= _sent(hint.type)
        elif UNSENT not in hint.marks:
            sent[wire_name(name)] = hint
    return sent


def answered_quantity(dimension: Dimension) -> Json:
    """Quantity of an answer; it may be sent back as it is."""
    return {
        "type": "object",
        "description": f"A {dimension.name} of an answer.",
        "properties": {
            "value": {"type": "number", "description": "Exact."},
            "unit": {"type": "string", "enum": list(dict.fromkeys((dimension.metric, dimension.us)))},
            "text": {"type": "string", "description": "As the shop writes it."},
        },
        "required": ["value", "unit", "text"],
    }


def camel(words: str) -> str:
    """Words put together, each with a capital."""
    return "".join(word[:1].upper() + word[1:] for word in words.replace("-", " ").replace("_", " ").split())
