"""The lock files, read as pip reads them."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator, Mapping
from pathlib import Path

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).resolve().parents[2]
LOCKS = {"requirements.txt": ("service",), "requirements-test.txt": ("service", "test")}
"""Lock, and the extras of the project that it is resolved for."""

ENTRY = re.compile(
    r"(?P<pin>[a-z0-9-]+(\[[a-z0-9,-]+\])?==[^\s;]+( ; [^\\\n]+)?)"
    r"(?P<hashes>( \\\n    --hash=sha256:[0-9a-f]{64})+)\n"
    r"(    # .+\n)+"
)
"""A distribution with extras, one version, perhaps a marker, hashes, and who asks for it; nothing else has a place."""


def text(lock: str) -> str:
    """Read a lock."""
    return (ROOT / lock).read_text()


def pins(lock: str, environment: Mapping[str, str] | None = None) -> dict[str, Requirement]:
    """Distributions that a lock names for an environment, this one if none is given, by their names."""
    found = (Requirement(entry["pin"]) for entry in ENTRY.finditer(text(lock)))
    return {canonicalize_name(pin.name): pin for pin in found if applies(pin, environment)}


def applies(requirement: Requirement, environment: Mapping[str, str] | None = None, extra: str = "") -> bool:
    """Whether a requirement counts in an environment, this one if none is given."""
    return requirement.marker is None or requirement.marker.evaluate({**(environment or {}), "extra": extra})


def version(pin: Requirement) -> str:
    """The version a pin names."""
    return str(pin.specifier).removeprefix("==")


def of_the_project(lock: str) -> Iterator[Requirement]:
    """What the project itself asks for, to be built and to run."""
    read = tomllib.loads(text("pyproject.toml"))
    yield from map(Requirement, read["build-system"]["requires"])
    yield from map(Requirement, read["project"]["dependencies"])
    for extra in LOCKS[lock]:
        yield from map(Requirement, read["project"]["optional-dependencies"][extra])
