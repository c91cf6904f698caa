"""The committed OpenAPI document, as the tests of the client read it: the one thing client and service share."""

from __future__ import annotations

import itertools
import json
import re
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any, NamedTuple

DOCUMENT: dict[str, Any] = json.loads(
    (Path(__file__).parents[2] / "openapi" / "openapi.json").read_text(encoding="utf-8")
)
COMPONENTS: dict[str, dict[str, Any]] = DOCUMENT["components"]["schemas"]


class Operation(NamedTuple):
    """An operation: its id, what it is, where it is, what it takes and gives, and the requests it is shown with."""

    name: str
    summary: str
    verb: str
    path: str
    request: dict[str, Any] | None
    answer: dict[str, Any]
    examples: dict[str, dict[str, Any]]


def _operations() -> Iterator[Operation]:
    for path, methods in DOCUMENT["paths"].items():
        for verb, operation in methods.items():
            if verb in ("get", "post") and path.startswith("/v1"):
                takes = operation.get("requestBody", {}).get("content", {}).get("application/json", {})
                gives = operation["responses"]["200"]["content"]["application/json"]["schema"]
                shown = {name: example["value"] for name, example in takes.get("examples", {}).items()}
                yield Operation(
                    operation["operationId"],
                    operation["summary"],
                    verb.upper(),
                    path,
                    takes.get("schema"),
                    gives,
                    shown,
                )


OPERATIONS = {operation.name: operation for operation in _operations()}


def reached() -> list[str]:
    """Name the components that the requests and answers of the operations are made of."""
    names: list[str] = []
    waiting = [json.dumps([operation.request, operation.answer]) for operation in OPERATIONS.values()]
    while waiting:
        for name in re.findall(r"#/components/schemas/(\w+)", waiting.pop()):
            if name not in names:
                names.append(name)
                waiting.append(json.dumps(COMPONENTS[name]))
    return sorted(names)


def resolved(schema: dict[str, Any]) -> dict[str, Any]:
    """Follow a reference, and take the first of several forms that is not null."""
    if "$ref" in schema:
        return resolved(COMPONENTS[schema["$ref"].rpartition("/")[2]])
    if isinstance(schema.get("type"), list):
        return {**schema, "type": next(kind for kind in schema["type"] if kind != "null")}
    options = [option for option in schema.get("anyOf", []) if option != {"type": "null"}]
    return resolved(options[0]) if options else schema


def may_be_null(schema: dict[str, Any]) -> bool:
    """Say whether null is a value of a schema."""
    return {"type": "null"} in schema.get("anyOf", []) or "null" in schema.get("type", ())


def stand_in(schema: dict[str, Any], *, full: bool, numbers: Iterator[int] | None = None) -> Any:
    """Make a value that a schema allows: all it may hold, or only what it must.

    No number and no text comes twice, so that each shows where it went.
    """
    numbers = numbers or itertools.count(101)
    if may_be_null(schema) and not full:
        return None
    schema = resolved(schema)
    kind = schema.get("type")
    if "enum" in schema:
        return schema["enum"][0]
    if "properties" in schema:
        names = schema["properties"] if full else schema.get("required", ())
        return {name: stand_in(schema["properties"][name], full=full, numbers=numbers) for name in names}
    if kind == "object":
        return {"invented": stand_in(schema["additionalProperties"], full=full, numbers=numbers)}
    if kind == "array":
        count = schema.get("minItems", 2 if full else 0)
        return [stand_in(schema["items"], full=full, numbers=numbers) for _ in range(count)]
    if kind == "boolean":
        return True
    number = next(numbers)
    return {"string": f"invented {number}", "integer": number}.get(str(kind), number + 0.5)


class Field(NamedTuple):
    """A field of an answer: the answer it is in, the way to its object there, its name, and whether it is required."""

    operation: Operation
    answer: dict[str, Any]
    way: tuple[str | int, ...]
    name: str
    required: bool

    @property
    def pointer(self) -> str:
        """The field as a JSON pointer."""
        return "/".join(["#", *map(str, self.way), self.name])

    def changed(self, name: str | None) -> dict[str, Any]:
        """Copy the answer with the field under another name, or without it."""
        copy: dict[str, Any] = json.loads(json.dumps(self.answer))
        place: Any = copy
        for part in self.way:
            place = place[part]
        value = place.pop(self.name)
        if name is not None:
            place[name] = value
        return copy


def fields(answers: Iterable[tuple[Operation, dict[str, Any]]]) -> list[Field]:
    """Find every field of some answers; one that many objects of one schema have is taken once, from a short answer."""
    places: dict[tuple[int, str], Field] = {}

    def look(schema: dict[str, Any], value: Any, way: tuple[str | int, ...]) -> None:
        schema = resolved(schema)
        if isinstance(value, list):
            for index, item in enumerate(value):
                look(schema["items"], item, (*way, index))
        elif isinstance(value, dict):
            known = schema.get("properties", {})
            for name, item in value.items():
                if known:
                    required = name in schema.get("required", ())
                    places.setdefault((id(known), name), Field(operation, answer, way, name, required))
                look(known[name] if known else schema["additionalProperties"], item, (*way, name))

    for operation, answer in sorted(answers, key=lambda pair: len(json.dumps(pair[1]))):
        look(operation.answer, answer, ())
    return list(places.values())
