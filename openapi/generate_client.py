"""The part of the client that repeats the OpenAPI document: answers, requests and one method per operation.

``python openapi/generate_client.py`` writes it to ``sdk/truethroat/_generated``; with ``--check`` it changes nothing
and fails when a file there differs. Needs ruff, which formats what is written.
"""

import argparse
import json
import keyword
import re
import subprocess
import sys
import textwrap
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any, NamedTuple

ROOT = Path(__file__).resolve().parents[1]
DOCUMENT = ROOT / "openapi" / "openapi.json"
FOLDER = ROOT / "sdk" / "truethroat" / "_generated"
#: Room for words in a line of 120, less the quotes around a docstring.
WIDTH = 112

Schema = dict[str, Any]

SCALARS = {"string": "str", "number": "float", "integer": "int", "boolean": "bool", "null": "None"}
DATACLASS = "@dataclass(frozen=True, slots=True, kw_only=True, eq=False, repr=False)"  # `Result` compares and shows
NOTE = "Generated from openapi/openapi.json by openapi/generate_client.py: do not edit."
INDEX = f'''"""What the client repeats of the OpenAPI document.

{NOTE}
"""

__all__ = ["MODULES"]

#: In which module each class is.
'''
RESULTS = f'''"""What the service answers, as frozen classes.

{NOTE}
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal, TypeAlias

from truethroat.answer import Answer, Result
from truethroat.quantity import Quantity
'''
REQUESTS = f'''"""What the service takes, as typed dictionaries.

{NOTE}
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal, NotRequired, TypeAlias, TypedDict

from truethroat.quantity import QuantityInput
'''
OPERATIONS = f'''"""One method per operation of the service.

{NOTE}
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, Unpack, overload

from truethroat.answer import Answer
from truethroat.transport import Timeout

if TYPE_CHECKING:
    from truethroat._generated import requests, results

__all__ = ["Operations"]

A = TypeVar("A", bound=Answer)


class Operations(ABC):
    """The operations of the service: a method takes an operation's request and gives its answer.

    What is left out of a request is not sent, so the service's own defaults hold. Whatever else a request holds is for
    the service to judge: a refusal is raised as an error.
    """

    @abstractmethod
    def _calculate(self, path: str, kind: type[A], request: Mapping[str, object], timeout: Timeout | None) -> A: ...

    @abstractmethod
    def _look_up(self, path: str, kind: type[A], timeout: Timeout | None) -> A: ...
'''


class Operation(NamedTuple):
    """One operation: its method's name, its path, what it says of itself, and the components it takes and gives."""

    name: str
    path: str
    text: str
    request: str | None
    answer: str


def operations(document: Schema) -> list[Operation]:
    """Give the versioned operations in the order of the document."""
    versioned = []
    for path, methods in document["paths"].items():
        for verb, operation in methods.items():
            if verb not in ("get", "post") or re.fullmatch(r"/v1(/.*)?", path) is None:
                continue
            if operation.get("parameters") or "{" in path:
                raise ValueError(f"{path}: no method is written for parameters in the address")
            content = operation.get("requestBody", {"content": {}})["content"]
            text = "\n\n".join(operation[part] for part in ("summary", "description") if operation.get(part))
            request = referred(content["application/json"]["schema"]) if content else None
            answer = referred(operation["responses"]["200"]["content"]["application/json"]["schema"])
            versioned.append(Operation(operation["operationId"], path, text, request, answer))
    return versioned


def referred(schema: Schema) -> str:
    """Name the component that a schema refers to."""
    name: str = schema["$ref"].removeprefix("#/components/schemas/")
    return name


def reached(components: dict[str, Schema], start: Iterable[str]) -> set[str]:
    """Name the components that some of them are made of, themselves included."""
    names: set[str] = set()
    waiting = list(start)
    while waiting:
        name = waiting.pop()
        if name not in names:
            names.add(name)
            waiting += re.findall(r'"\$ref": "#/components/schemas/(\w+)"', json.dumps(components[name]))
    return names


def docstring(text: str, indent: str = "    ") -> str:
    """Write paragraphs, or the items of a list, as a docstring; what is too long for a line begins with a sentence."""
    text = text.replace("\\", "\\\\").replace('"""', '\\"\\"\\"')
    if "\n" not in text:
        text = text if text.endswith(".") else f"{text}."
        if len(text) > WIDTH - len(indent):
            text = re.sub(r"(?<=\.) (?=[A-Z])", "\n\n", text, count=1)
    lines = [
        textwrap.fill(line, WIDTH - len(indent), subsequent_indent="  " * line.startswith("- "), break_on_hyphens=False)
        for line in text.split("\n")
    ]
    body = textwrap.indent("\n".join(lines), indent).lstrip()
    return f'{indent}"""{body}"""' if "\n" not in body else f'{indent}"""{body}\n{indent}"""'


def words(name: str) -> str:
    """Spell a component's name out, for one that says nothing of itself."""
    return re.sub(r"(?<=[a-z])(?=[A-Z])", " ", name).capitalize()


def described(schema: Schema) -> str:
    """Say what a field is, and what the service takes it for when it is left out."""
    text: str = schema.get("description", "")
    if "default" in schema:
        default = schema["default"]
        text += f" Default: {default if isinstance(default, str) else json.dumps(default)}."
    return text.strip()


class Module:
    """The source of a module of classes, one per component and one per object without a name of its own."""

    head: str

    def __init__(self, components: dict[str, Schema], used: set[str]) -> None:
        self.components = components
        self.sources: dict[str, str] = {}
        for name, schema in components.items():
            if name in used:
                self.write(name, schema)

    def source(self) -> str:
        """Give the whole module."""
        names = ", ".join(json.dumps(name) for name in sorted(self.sources))
        # an alias is run: what it names has to be there
        sources = sorted(self.sources.values(), key=lambda source: ": TypeAlias = " in source)
        return "\n".join([self.head, f"__all__ = [{names}]", *sources])

    def write(self, name: str, schema: Schema) -> None:
        """Write one component: a class of an object, and an alias of anything else."""
        if "properties" in schema:
            self.write_class(name, schema)
        else:
            source = f"{name}: TypeAlias = {self.hint(schema, name)}\n"
            self.sources[name] = source + (docstring(schema["description"], "") if "description" in schema else "")

    def write_class(self, name: str, schema: Schema) -> None:
        """Write the class of an object."""
        raise NotImplementedError

    def fields(self, name: str, schema: Schema) -> Iterator[tuple[str, str, str]]:
        """Give each field of an object: its name, its type and its docstring."""
        for key, value in schema["properties"].items():
            text = described(value)
            inner = name.removesuffix("Answer") + "".join(word.capitalize() for word in key.split("_"))
            yield key, self.hint(value, inner), f"{docstring(text)}\n" if text else ""

    def hint(self, schema: Schema, inner: str) -> str:
        """Give the type of a schema, writing a class named `inner` for an object without a name."""
        kind = schema.get("type")
        if "$ref" in schema:
            return self.reference(referred(schema))
        if "const" in schema or "enum" in schema:
            values = schema.get("enum", [schema.get("const")])
            known = ", ".join(repr(value) for value in values if value is not None)
            return f"Literal[{known}]" + " | None" * (None in values)
        if options := schema.get("anyOf") or schema.get("oneOf"):
            hints = dict.fromkeys(self.hint(option, inner) for option in options)
            return " | ".join(sorted(hints, key="None".__eq__))
        if isinstance(kind, list):
            return " | ".join(sorted((SCALARS[option] for option in kind), key="None".__eq__))
        if kind == "array":
            return self.array(schema, self.hint(schema["items"], inner))
        if kind == "object" and "properties" in schema:
            if inner in self.components or inner in self.sources:
                raise ValueError(f"{inner}: two classes would have this name; give the object a component of its own")
            self.write_class(inner, schema)
            return inner
        if kind == "object":
            return f"Mapping[str, {self.hint(schema['additionalProperties'], inner)}]"
        return SCALARS[str(kind)]

    def reference(self, name: str) -> str:
        """Give the type of a component by its name."""
        return name

    def array(self, schema: Schema, item: str) -> str:
        """Give the type of an array of items of a type."""
        raise NotImplementedError


class Results(Module):
    """Frozen dataclasses of what the service answers."""

    head = RESULTS

    def __init__(self, components: dict[str, Schema], operations: list[Operation]) -> None:
        self.answers = {operation.answer for operation in operations} | {"Calculation"}
        self.calculations = {operation.answer for operation in operations if operation.request}
        first, *others = [components[operation.answer] for operation in operations if operation.request]
        alike = [
            key for key, value in first["properties"].items() if all(o["properties"].get(key) == value for o in others)
        ]
        self.common = {key: first["properties"][key] for key in alike}
        shared = {**first, "description": "What every calculation answers.", "properties": self.common}
        components = {"Calculation": shared, **components}
        super().__init__(components, reached(components, self.answers))

    def write(self, name: str, schema: Schema) -> None:
        """Write one component, but for quantities, whose class is written by hand."""
        if self.reference(name) == name:
            super().write(name, schema)

    def reference(self, name: str) -> str:
        """Give a component's class, or `Quantity` for a value with its unit and text."""
        return "Quantity" if set(self.components[name].get("properties", ())) == {"value", "unit", "text"} else name

    def array(self, schema: Schema, item: str) -> str:
        """Give a tuple, which nobody can change."""
        return f"tuple[{item}, ...]"

    def write_class(self, name: str, schema: Schema) -> None:
        """Write a dataclass; a field that the document requires has no default."""
        inherited = self.common if name in self.calculations else {}
        base = "Calculation" if inherited else "Answer" if name in self.answers else "Result"
        lines = [DATACLASS, f"class {name}({base}):", docstring(schema.get("description", words(name))), ""]
        for key, hint, text in self.fields(name, schema):
            if key not in inherited:
                optional = "" if key in schema.get("required", ()) else " | None = None"
                attribute = f"{key}_" if keyword.iskeyword(key) else key
                lines.append(f"    {attribute}: {hint.removesuffix(' | None') if optional else hint}{optional}\n{text}")
        self.sources[name] = "\n".join(lines)


class Requests(Module):
    """Typed dictionaries of what the service takes."""

    head = REQUESTS

    def write(self, name: str, schema: Schema) -> None:
        """Write one component; one that is text or a value with its unit is a quantity."""
        if any("format" in option for option in schema.get("anyOf", [])):
            text = docstring(schema.get("description", words(name)), "")
            self.sources[name] = f"{name}: TypeAlias = QuantityInput\n{text}"
        else:
            super().write(name, schema)

    def array(self, schema: Schema, item: str) -> str:
        """Give a sequence; of what may be text only a list or a tuple, since text is a sequence of texts itself."""
        if self.is_object(schema["items"]):
            return f"Sequence[{item}]"
        pair = [item] * schema["minItems"] if schema.get("minItems") == schema.get("maxItems") else [item, "..."]
        return f"list[{item}] | tuple[{', '.join(pair)}]"

    def is_object(self, schema: Schema) -> bool:
        """Say whether only objects fit a schema."""
        if "$ref" in schema:
            return self.is_object(self.components[referred(schema)])
        options = schema.get("oneOf", schema.get("anyOf"))
        return all(map(self.is_object, options)) if options else "properties" in schema

    def write_class(self, name: str, schema: Schema) -> None:
        """Write a typed dictionary; by its names alone where one of them is no name in Python."""
        needed = schema.get("required", ())
        members = [
            (key, hint if key in needed else f"NotRequired[{hint}]", text)
            for key, hint, text in self.fields(name, schema)
        ]
        if any(keyword.iskeyword(key) or not key.isidentifier() for key, _, _ in members):
            items = ", ".join(f"{key!r}: {hint!r}" for key, hint, _ in members)
            self.sources[name] = f"{name} = TypedDict({name!r}, {{{items}}})\n"
            return
        head = [f"class {name}(TypedDict):", docstring(schema.get("description", words(name))), ""]
        self.sources[name] = "\n".join([*head, *(f"    {key}: {hint}\n{text}" for key, hint, text in members)])


def method(components: dict[str, Schema], operation: Operation) -> str:
    """Write the method of an operation, with what its request may hold in its docstring."""
    name, path, text, request, answer = operation
    forms = [referred(form) for form in components[request].get("oneOf", [])] or [request] if request else []
    arguments = "self, *, timeout: Timeout | None = None"
    takes = [f"{arguments}, **request: Unpack[requests.{form}]" for form in forms] or [arguments]
    overloads = [f"    @overload\n    def {name}({own}) -> results.{answer}: ...\n" for own in takes if len(takes) > 1]
    own = f"{arguments}, **request: Any" if overloads else takes[0]
    listed: dict[str, str] = {}
    for form in forms:
        for key, value in components[form]["properties"].items():
            listed.setdefault(key, f"- {key}: {described(value) or json.dumps(value.get('const'))}")
    text = "\n\n".join(filter(None, [text, "\n".join(listed.values())]))
    call = f'_calculate("{path}", {answer}, request, timeout)' if forms else f'_look_up("{path}", {answer}, timeout)'
    return "\n".join(
        [
            *overloads,
            f"    def {name}({own}) -> results.{answer}:",
            docstring(text, " " * 8),
            f"        from truethroat._generated.results import {answer}\n",
            f"        return self.{call}\n",
        ]
    )


def generate(document: Schema) -> dict[str, str]:
    """Give the source of each module by its name, formatted."""
    components: dict[str, Schema] = document["components"]["schemas"]
    listed = operations(document)
    results = Results(components, listed)
    requests = Requests(components, reached(components, [one.request for one in listed if one.request]))
    if twice := results.sources.keys() & requests.sources.keys():
        raise ValueError(f"{', '.join(sorted(twice))}: both taken and answered, so two classes would have one name")
    modules = dict.fromkeys(requests.sources, "requests") | dict.fromkeys(results.sources, "results")
    sources = {
        "__init__": f"{INDEX}MODULES = {modules}\n",
        "requests": requests.source(),
        "results": results.source(),
        "operations": "\n".join([OPERATIONS, *(method(components, operation) for operation in listed)]),
    }
    return {name: formatted(name, source) for name, source in sources.items()}


def formatted(name: str, source: str) -> str:
    """Put a module into the form of the project."""
    command = [sys.executable, "-m", "ruff", "format", "--stdin-filename", str(FOLDER / f"{name}.py"), "-"]
    run = subprocess.run(command, input=source, stdout=subprocess.PIPE, text=True, check=True, cwd=ROOT)  # noqa: S603
    return run.stdout


def main(arguments: list[str] | None = None) -> int:
    """Write or check the modules; 1 when a check finds a difference."""
    parser = argparse.ArgumentParser(prog="generate_client", description=__doc__)
    parser.add_argument("--check", action="store_true", help="fail when a file differs, and leave all as they are")
    options = parser.parse_args(arguments)
    sources = {FOLDER / f"{name}.py": source for name, source in generate(json.loads(DOCUMENT.read_bytes())).items()}
    there = {path: path.read_text(encoding="utf-8") for path in FOLDER.glob("*.py")}
    if options.check:
        if there == sources:
            return 0
        sys.stderr.write(f"{FOLDER} differs from {DOCUMENT.name}; run `make openapi` and read the difference\n")
        return 1
    for path in there.keys() - sources.keys():
        path.unlink()
    for path, source in sources.items():
        path.parent.mkdir(exist_ok=True)
        path.write_text(source, encoding="utf-8")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
