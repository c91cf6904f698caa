"""The package itself: what it offers and what it needs."""

from __future__ import annotations

import ast
import importlib
import importlib.metadata
import subprocess
import sys
import textwrap
from pathlib import Path

import pytest
from tests.sdk.recording_service import ANSWERS

import truethroat
from truethroat import Client, errors

FOLDER = Path(truethroat.__file__).parent
MODULES = sorted(
    ".".join(path.relative_to(FOLDER.parent).with_suffix("").parts)
    for path in FOLDER.rglob("*.py")
    if not path.name.startswith("__")
)
#: Machinery of the client that its users do not meet.
INSIDE = {"command_line", "decoding", "operations", "transport", "version"}


def examples(docstring: str) -> list[str]:
    """Find the code in a docstring: what stands indented from an import on."""
    indented = [line for line in docstring.splitlines() if line.startswith("    ") or not line]
    code = textwrap.dedent("\n".join(indented)).strip("\n")
    return [code] if code.startswith(("import", "from")) else []


@pytest.mark.parametrize("name", ["truethroat", *MODULES])
def test_all_is_complete_and_true(name: str) -> None:
    """A module's list of names holds exactly the public classes and functions it defines, and names that exist."""
    module = importlib.import_module(name)
    for listed in module.__all__:
        assert hasattr(module, listed)
    assert len(set(module.__all__)) == len(module.__all__)
    here = {key for key, thing in vars(module).items() if getattr(thing, "__module__", None) == name and key[0] != "_"}
    inner = {"error_for", "seconds_asked_for", "T", "A"}
    assert here - inner <= set(module.__all__)


@pytest.mark.parametrize("module", [module for module in MODULES if module.rpartition(".")[2] not in INSIDE])
def test_what_a_user_needs_is_at_the_top(module: str) -> None:
    """Every class of the client, its errors, requests and results can be imported from the package."""
    for name in importlib.import_module(module).__all__:
        assert getattr(truethroat, name) is getattr(sys.modules[module], name)
        assert name in truethroat.__all__


def test_a_name_that_is_not_there() -> None:
    """A name that no module has is an error like any other module's."""
    with pytest.raises(AttributeError, match="module 'truethroat' has no attribute 'Sprocket'"):
        _ = truethroat.Sprocket


def test_the_classes_wait_until_they_are_asked_for() -> None:
    """To import the package, and to use its command line, makes none of the classes of requests and results."""
    script = "import sys, truethroat.command_line; print([name for name in sys.modules if '_generated.r' in name])"
    run = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, timeout=60, check=True)
    assert run.stdout == "[]\n"


@pytest.mark.parametrize("module", ["truethroat", *MODULES])
def test_examples_in_docstrings_are_python(module: str) -> None:
    """What stands indented in a module's docstring from an import on can be copied and compiled."""
    for example in examples(importlib.import_module(module).__doc__ or ""):
        compile(example, module, "exec")


def test_the_package_shows_an_example(client: Client, capsys: pytest.CaptureFixture[str]) -> None:
    """The example in the package's docstring runs, and prints what the service answers."""
    (example,) = examples(truethroat.__doc__ or "")
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(truethroat, "Client", lambda _: client)
        exec(example, {})  # noqa: S102 - our own text
    answer = ANSWERS["/v1/bevel-depth"]
    assert capsys.readouterr().out == f"{answer['depth']['text']} {answer['verdict']}\n"


def test_the_tree_of_errors_is_the_classes_own() -> None:
    """In the docstring of the errors each class stands under the class that it is one of."""
    above: list[tuple[int, str]] = [(0, "Exception")]
    shown = set()
    for line in (errors.__doc__ or "").splitlines():
        if line.startswith("    "):
            name = line.split()[0]
            depth = len(line) - len(line.lstrip())
            above = [(at, kind) for at, kind in above if at < depth]
            assert getattr(errors, name).__base__.__name__ == above[-1][1]
            above.append((depth, name))
            shown.add(name)
    assert shown == set(errors.__all__) - {"FieldError"}


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
