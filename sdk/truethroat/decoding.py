"""From the JSON of an answer to typed results, and back: one decoder, led by the type hints of the result classes.

Fields that a class does not know are left out (they stay in `raw`), and words that it does not know are taken as they
are, so that a newer service does not break an older client. Fields that it needs and does not find are named.
"""

from __future__ import annotations

import copy
import dataclasses
import types
from collections.abc import Iterator, Mapping
from functools import cache
from typing import Any, Literal, TypeVar, Union, get_args, get_origin, get_type_hints

from truethroat.quantity import Quantity

__all__ = ["ReadOnly", "Undecodable", "decode", "encode"]

T = TypeVar("T")


class Undecodable(ValueError):
    """An answer that lacks a field, or has something else in its place."""


class ReadOnly(Mapping[str, Any]):
    """A JSON object that can be read and not changed, at any depth: arrays show as tuples."""

    __slots__ = ("_members",)

    def __init__(self, members: Mapping[str, Any]) -> None:
        self._members = dict(members)

    def __getitem__(self, key: str) -> Any:
        return _read_only(self._members[key])

    def __iter__(self) -> Iterator[str]:
        return iter(self._members)

    def __len__(self) -> int:
        return len(self._members)

    def __repr__(self) -> str:
        return f"ReadOnly({self._members!r})"

    def to_dict(self) -> dict[str, Any]:
        """Give a copy as plain dictionaries and lists, to change or to write as JSON."""
        return copy.deepcopy(self._members)


def _read_only(value: object) -> object:
    if isinstance(value, dict):
        return ReadOnly(value)
    if isinstance(value, list):
        return tuple(_read_only(item) for item in value)
    return value


def decode(kind: type[T], document: object) -> T:
    """Make one result of class `kind` from a JSON document.

    Raises Undecodable, naming the field, when the document does not fit.
    """
    result: T = _convert(kind, document, "#")
    return result


def encode(value: object) -> Any:
    """Turn a result, at any depth, into plain dictionaries and lists with the names of the wire."""
    if isinstance(raw := getattr(value, "raw", None), ReadOnly):  # an answer inside another
        return raw.to_dict()
    if dataclasses.is_dataclass(value):
        return {_wire_name(f.name): encode(getattr(value, f.name)) for f in dataclasses.fields(value)}
    if isinstance(value, Mapping):
        return {key: encode(item) for key, item in value.items()}
    if isinstance(value, (list, tuple)):
        return [encode(item) for item in value]
    return value


def _wire_name(attribute: str) -> str:
    """Drop the underscore that keeps an attribute clear of a Python keyword, as in `with_`."""
    return attribute.rstrip("_")


@cache
def _hints(kind: type) -> dict[str, Any]:
    return get_type_hints(kind)


def _convert(hint: Any, value: object, pointer: str) -> Any:
    """Make of `value` what `hint` asks for."""
    origin = get_origin(hint)
    if origin in (Union, types.UnionType):  # "X | None" and "float | bool" are used
        options = get_args(hint)
        if (value is None and types.NoneType in options) or (isinstance(value, bool) and bool in options):
            return value
        return _convert(options[0], value, pointer)
    if dataclasses.is_dataclass(hint):
        return _build(hint, _expect(dict, value, pointer), pointer)
    if origin is tuple:  # only "tuple[X, ...]" is used
        items = _expect(list, value, pointer)
        return tuple(_convert(get_args(hint)[0], item, f"{pointer}/{index}") for index, item in enumerate(items))
    if origin is Mapping:
        members = _expect(dict, value, pointer)
        return ReadOnly({key: _convert(get_args(hint)[1], item, f"{pointer}/{key}") for key, item in members.items()})
    if origin is Literal:  # a newer service may say other words
        return _expect(type(get_args(hint)[0]), value, pointer)
    if hint is float:
        return float(_expect((int, float), value, pointer))
    if hint in (str, int, bool):
        return _expect(hint, value, pointer)
    return _read_only(value)


def _build(kind: Any, members: dict[str, Any], pointer: str) -> Any:
    arguments: dict[str, Any] = {}
    for field in dataclasses.fields(kind):
        name = _wire_name(field.name)
        if field.name == "raw":
            arguments["raw"] = ReadOnly(members)
        elif name in members:
            arguments[field.name] = _convert(_hints(kind)[field.name], members[name], f"{pointer}/{name}")
        elif field.default is dataclasses.MISSING or kind is Quantity:  # only a caller's quantity may lack its text
            raise Undecodable(f"{pointer}/{name} is missing")
    return kind(**arguments)


_WORDS = {dict: "an object", list: "an array", str: "a string", bool: "true or false", int: "a whole number"}


def _expect(kind: Any, value: Any, pointer: str) -> Any:
    if not isinstance(value, kind) or (isinstance(value, bool) and kind is not bool):
        raise Undecodable(f"{pointer} is {value!r:.60}, not {_WORDS.get(kind, 'a number')}")
    return value
