"""The package itself: what it offers and what it needs."""

from __future__ import annotations

import ast
import importlib
import importlib.metadata
import pkgutil
import sys
from pathlib import Path

import pytest

import truethroat

FOLDER = Path(truethroat.__file__).parent
MODULES = sorted(module.name for module in pkgutil.iter_modules([str(FOLDER)]) if module.name != "__main__")
#: Machinery of the client that its users do not meet.
INSIDE = {"command_line", "decoding", "transport", "version"}


@pytest.mark.parametrize("name", ["truethroat", *(f"truethroat.{module}" for module in MODULES)])
def test_all_is_complete_and_true(name: str) -> None:
    """A module's list of names holds exactly the public classes and functions it defines, and names that exist."""
    module = importlib.import_module(name)
    for listed in module.__all__:
        assert hasattr(module, listed)
    assert len(set(module.__all__)) == len(module.__all__)
    here = {key for key, thing in vars(module).items() if getattr(thing, "__module__", None) == name and key[0] != "_"}
    inner = {"error_for", "seconds_asked_for", "T", "A", "C"}
    assert here - inner <= set(module.__all__)


@pytest.mark.parametrize("module", [module for module in MODULES if module not in INSIDE])
def test_what_a_user_needs_is_at_the_top(module: str) -> None:
    """Every class of the client, its errors, inputs and results can be imported from the package."""
    names = set(importlib.import_module(f"truethroat.{module}").__all__)
    assert names - {"to_wire"} <= set(truethroat.__all__)


def test_everything_imported_at_the_top_is_listed() -> None:
    """What the package imports for its users is in its list of names."""
    tree = ast.parse((FOLDER / "__init__.py").read_text(encoding="utf-8"))
    imported = {alias.name for node in tree.body if isinstance(node, ast.ImportFrom) for alias in node.names}
    assert imported - {"VERSION"} == set(truethroat.__all__) - {"__version__"}


def test_version_is_the_installed_one() -> None:
    """The package says the version it was installed as."""
    assert truethroat.__version__ == importlib.metadata.version("truethroat")


def test_types_are_shipped() -> None:
    """The marker that tells type checkers to trust the annotations is there."""
    assert (FOLDER / "py.typed").is_file()


def test_only_requests_is_needed() -> None:
    """The client imports the standard library, requests and the urllib3 that requests brings, and nothing else."""
    found = set()
    for path in FOLDER.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Import):
                found |= {alias.name.partition(".")[0] for alias in node.names}
            elif isinstance(node, ast.ImportFrom):
                found.add((node.module or "").partition(".")[0])
    assert found - set(sys.stdlib_module_names) == {"truethroat", "requests", "urllib3"}
