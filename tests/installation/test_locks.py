"""The locks are whole: they name everything that an installation takes, and an installation takes nothing else."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from importlib import metadata

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name
from tests.installation.locks import ENTRY, LOCKS, applies, of_the_project, pins, text, version

PYTHONS = [{"python_version": f"3.{minor}", "python_full_version": f"3.{minor}.0"} for minor in (11, 12, 13, 14)]
SYSTEMS = [
    {"sys_platform": "linux", "platform_system": "Linux", "os_name": "posix"},
    {"sys_platform": "darwin", "platform_system": "Darwin", "os_name": "posix"},
    {"sys_platform": "win32", "platform_system": "Windows", "os_name": "nt"},
]
ENVIRONMENTS = [{**python, **system} for python in PYTHONS for system in SYSTEMS]


def demands(lock: str, environment: Mapping[str, str]) -> Iterator[tuple[str, Requirement]]:
    """What is asked for and by whom: by the project, and by each locked version that is installed here."""
    for requirement in of_the_project(lock):
        yield "pyproject.toml", requirement
    here = pins(lock)
    for name, pin in pins(lock, environment).items():
        if name in here and version(pin) == version(here[name]):
            for requirement in map(Requirement, metadata.requires(name) or ()):
                if any(applies(requirement, environment, extra) for extra in ("", *pin.extras)):
                    yield name, requirement


@pytest.mark.parametrize("environment", ENVIRONMENTS, ids=lambda e: f"{e['sys_platform']}-{e['python_version']}")
@pytest.mark.parametrize("lock", LOCKS)
def test_all_that_is_asked_for_is_locked(lock: str, environment: dict[str, str]) -> None:
    """Every requirement is met by a pin of the lock, with its extras; pip need not look further."""
    held = pins(lock, environment)
    for asker, asked in demands(lock, environment):
        pin = held.get(canonicalize_name(asked.name))
        assert pin, f"{asker} asks for {asked}, which {lock} does not name"
        assert asked.specifier.contains(version(pin)), f"{asker} asks for {asked}, but {lock} holds {pin}"
        assert asked.extras <= pin.extras, f"{asker} asks for {asked}, but {lock} holds {pin} without the extra"


def test_what_is_installed_is_locked() -> None:
    """Each distribution is installed here in its locked version, so that the check before has read all metadata."""
    locked = {name: version(pin) for name, pin in pins("requirements-test.txt").items()}
    assert {name: metadata.version(name) for name in locked} == locked


@pytest.mark.parametrize("lock", LOCKS)
def test_every_line_is_pinned_and_hashed(lock: str) -> None:
    """A lock holds nothing but pins with hashes: no address, no option, no range of versions."""
    assert ENTRY.sub("", text(lock)) == ""


def test_both_locks_agree() -> None:
    """What serves is locked alike for the tests, since both are installed into one environment."""
    ours = [{entry["pin"]: entry["hashes"] for entry in ENTRY.finditer(text(lock))} for lock in LOCKS]
    assert ours[0].items() <= ours[1].items()


@pytest.mark.parametrize("file", ["Makefile", "docker/Dockerfile"])
def test_installs_take_only_what_is_locked(file: str) -> None:
    """No install looks for dependencies; one by a lock holds to hashes and builds nothing; a check ends it."""
    commands = re.findall(r"(?:\$\(PIP\)|-m pip) (.+)", text(file))
    installs = [command.split() for command in commands if command.startswith(("install", "wheel"))]
    by_lock = [command for command in installs if "-r" in command]
    assert by_lock
    assert all("--no-deps" in command for command in installs)
    assert all({"--require-hashes", "--only-binary", ":all:"} <= set(command) for command in by_lock)
    assert any(command.startswith("check") for command in commands)
