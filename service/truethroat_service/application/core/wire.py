"""Writes an answer as it is sent: a dataclass in engine units becomes a plain dictionary in the caller's units."""

import dataclasses as dc
from collections.abc import Callable, Mapping
from functools import cache
from typing import Any, get_args, get_origin

from .quantities import UnitSystem, render
from .shape import OMITTED, UNSENT, Hint, Lacks, Measured, Q, fields_of, taken_apart

Writer = Callable[[Any, UnitSystem], Any]


def wire(value: Any, units: UnitSystem, measured: Q | None = None) -> dict[str, Any]:
    """Dataclass as it is sent; ``measured`` is the quantity of its floats that have no mark of their own."""
    sent: dict[str, Any] = {}
    for name, key, write, omitted in _writers(value.__class__, measured):
        entry = getattr(value, name)
        if entry is None or entry.__class__ is Lacks:
            if not omitted:
                sent[key] = None
        else:
            sent[key] = entry if write is None else write(entry, units)
    return sent


@cache
def _writers(kind: Any, measured: Q | None) -> tuple[tuple[str, str, Writer | None, bool], ...]:
    """Name, key and writer of each field that is sent (no writer where it goes as it is), and whether it is omitted."""
    found = []
    for name, field in fields_of(kind).items():
        hint = taken_apart(field.hint)
        if UNSENT not in hint.marks:
            found.append((name, wire_name(name), _writer(hint, measured), OMITTED in hint.marks))
    return tuple(found)


def wire_name(name: str) -> str:
    """Name of a field on the wire: without the underscore that keeps it apart from a word of the language."""
    return name.removesuffix("_")


def _writer(hint: Hint, measured: Q | None) -> Writer | None:
    """Writer of a value that is not None; None where the value goes as it is."""
    quantity = hint.quantity(measured)
    kind = get_origin(hint.type) or hint.type
    if kind is tuple:
        inner = _writer(taken_apart(get_args(hint.type)[0]), quantity)
        return _listed if inner is None else _each(inner)
    if kind is Mapping:
        inner = _writer(taken_apart(get_args(hint.type)[1]), None)
        return _as_dict if inner is None else _by_key(inner)
    if hasattr(kind, "wire"):
        return _own
    if kind is Measured:
        return _measured
    if dc.is_dataclass(kind):
        return lambda value, units: wire(value, units, quantity)
    if kind is float and quantity is not None:
        dimension, text = quantity.dimension, quantity.text
        return lambda value, units: render(dimension, value, units, text)
    return None


def _measured(value: Measured, units: UnitSystem) -> Any:
    return render(value.dimension, value.value, units)


def _own(value: Any, units: UnitSystem) -> Any:
    return value.wire()


def _listed(value: Any, units: UnitSystem) -> Any:
    return list(value)


def _as_dict(value: Any, units: UnitSystem) -> Any:
    return dict(value)


def _each(inner: Writer) -> Writer:
    return lambda value, units: [None if entry is None else inner(entry, units) for entry in value]


def _by_key(inner: Writer) -> Writer:
    return lambda value, units: {key: None if entry is None else inner(entry, units) for key, entry in value.items()}
