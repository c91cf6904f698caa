"""Mends a request that the service refuses, by nothing but the faults it tells and the document it publishes.

A generator knows each field's form and nothing of how fields go together, so that hardly one of its requests can be
answered. The service knows: each fault points at the field that does not go with the rest. That field is left out, or
takes another value, and the request is asked again.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from contextlib import suppress
from copy import copy
from random import Random
from typing import Any, cast

from tests.api.exchange import document, request_content, request_validator
from tests.contract import strategies

Json = dict[str, Any]
Steps = list[str | int]

ABSENT = object()
"""In place of a value: there is none."""

NUMBER = r"-?[0-9]+(?:\.[0-9]+)?"


def mended(path: str, body: Json, faults: list[dict[str, str]]) -> Json:
    """Give the request with the field of each fault changed; the document allows it, or forbids it, as before.

    What is drawn follows from the request itself, so that a run can be repeated.
    """
    chance = Random(json.dumps(body, sort_keys=True))  # noqa: S311
    is_allowed = request_validator(path).is_valid
    as_before = is_allowed(body)
    changed: list[Steps] = [_steps(fault["pointer"]) for fault in faults]
    for fault in faults:
        for steps, other in _others(path, body, fault, changed, chance):
            if is_allowed(other) is as_before and other != body:
                body = other
                changed.append(steps)
                break
    return body


def _steps(pointer: str) -> Steps:
    """Read a JSON pointer."""
    names = [name.replace("~1", "/").replace("~0", "~") for name in pointer.split("/")[1:]]
    return [int(name) if name.isdecimal() else name for name in names]


def _others(
    path: str, body: Json, fault: dict[str, str], changed: list[Steps], chance: Random
) -> Iterator[tuple[Steps, Json]]:
    """Make other requests out of one, each with the place of its change: the fault's, or that of a field it names."""
    place = _steps(fault["pointer"])
    if not place:
        yield place, {**_published(path, chance), **body}
    places = [steps for steps in _named(path, body, place, fault["detail"]) if steps not in changed]
    chance.shuffle(places)
    places.insert(0 if _at(body, place) is ABSENT else chance.choice((0, 0, len(places))), place)
    # What holds the place comes last: more of the request would change with it.
    for steps in [*places, *(place[:length] for length in range(len(place) - 1, 0, -1))]:
        schemas = _schemas(path, steps)
        values = [ABSENT, _at(_published(path, chance), steps)]
        values += [_drawn(chance.choice(schemas), chance) for _ in schemas[:1]]
        chance.shuffle(values)
        if steps == place and re.search("leave|goes with|belongs", fault["detail"]):
            values.insert(0, ABSENT)
        told = _told(fault, schemas, chance)
        for value in told + values if chance.random() < 0.6 else values + told:
            with suppress(IndexError, KeyError, TypeError):
                yield steps, _with(body, steps, value)


def _named(path: str, body: Json, place: Steps, detail: str) -> list[Steps]:
    """Find the places of the fields that a fault names, beside its own and at the head of the request."""
    words = [word.split(".") for word in re.findall(r"[a-z_0-9.]*[a-z_0-9]", detail)]
    places = [steps for word in words for steps in ([*place[:-1], *word], [*word]) if _schemas(path, steps)]
    return [steps for steps in places if not isinstance(_at(body, steps), dict | list)]


def _told(fault: dict[str, str], schemas: list[Json], chance: Random) -> list[Any]:
    """Find the values that a fault tells: choices of the field, a quantity within a range, or one near those named."""
    choices = [choice for schema in schemas for choice in _choices(schema)]
    values = [word for choice in choices for word in choice.get("enum", ()) if str(word) in fault["detail"]]
    if any(choice.get("type") == "number" for choice in choices):
        values += [float(number) for number in re.findall(NUMBER, fault["detail"])]
    quantities = re.findall(f"({NUMBER}) ([A-Za-z0-9/*]+)", fault["detail"])
    if fault["code"] != "out-of-range":
        values += [f"{float(number) * chance.choice((0.9, 1, 1.1)):.4g} {unit}" for number, unit in quantities]
    elif len(quantities) == 2:
        (low, unit), (high, _) = quantities
        least = max(float(low), float(high) / 1000)
        values.append(f"{least * (float(high) / least) ** chance.random():.4g} {unit}")
    chance.shuffle(values)
    return values


def _published(path: str, chance: Random) -> Json:
    """Choose a published example of an operation."""
    example = chance.choice(list(request_content(path)["examples"].values()))
    return cast(Json, example["value"])


def _at(node: Any, steps: Steps) -> Any:
    """Find what a place of a request holds."""
    for step in steps:
        try:
            node = node[step]
        except (IndexError, KeyError, TypeError):
            return ABSENT
    return node


def _with(node: Any, steps: Steps, value: Any) -> Any:
    """Copy a node of a request, with another value in a place of it."""
    step, *rest = steps
    other = copy(node)
    if rest:
        other[step] = _with(node[step], rest, value)
    elif value is ABSENT:
        del other[step]
    else:
        other[step] = value
    return other


def _schemas(path: str, steps: Steps) -> list[Json]:
    """Find the schemas that the document has for a place of a request."""
    schemas: list[Json] = [request_content(path)["schema"]]
    for step in steps:
        holders = [choice for schema in schemas for choice in _choices(schema)]
        if isinstance(step, int):
            schemas = [holder["items"] for holder in holders if "items" in holder]
        else:
            schemas = [holder["properties"][step] for holder in holders if step in holder.get("properties", {})]
    return schemas


def _choices(schema: Json) -> list[Json]:
    """Find the schemas of which a value meets one."""
    if "$ref" in schema:
        return _choices(document()["components"]["schemas"][schema["$ref"].rpartition("/")[2]])
    choices = schema.get("oneOf", schema.get("anyOf"))
    return [schema] if choices is None else [found for choice in choices for found in _choices(choice)]


def _drawn(schema: Json, chance: Random) -> Any:
    """Draw a value that a schema allows."""
    schema = chance.choice(_choices(schema))
    if "const" in schema:
        return schema["const"]
    if "enum" in schema:
        return chance.choice(schema["enum"])
    match schema["type"]:
        case "object":
            fields = schema["properties"]
            named = [name for name in fields if name in schema.get("required", ()) or chance.random() < 0.3]
            return {name: _drawn(fields[name], chance) for name in named}
        case "array":
            most = min(schema.get("maxItems", 3), 3)
            return [_drawn(schema["items"], chance) for _ in range(max(schema.get("minItems", 1), most))]
        case "boolean":
            return chance.random() < 0.5
        case "string":
            usual = schema.get("format") in strategies.SHOP
            return strategies.text(schema["format"], chance) if usual else schema.get("examples", ["ABC"])[0]
        case "integer":
            return chance.randint(schema.get("minimum", 1), schema.get("maximum", 9))
        case _:
            return round(chance.uniform(schema.get("minimum", 0), schema.get("maximum", 1)), 3)
