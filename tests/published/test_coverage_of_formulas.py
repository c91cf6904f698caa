"""Which formulas no published check names yet: an error in a text and in its code alike lives through all other proofs.

Runs last, over what the working of every answer to the other files' questions has shown.
"""

import pkgutil
from importlib import import_module

import pytest
from tests.published.conftest import WHOLE_FOLDER

import truethroat_service
from truethroat_service.engine.formula import FORMULAS

# A formula counts whether or not a resource imports its module yet.
for _module in pkgutil.walk_packages(truethroat_service.__path__, "truethroat_service."):
    import_module(_module.name)

NOT_YET_NAMED: dict[str, str] = {}
"""Formula, and why no published check names it."""


def test_every_formula_is_named_or_excused(pytestconfig: pytest.Config, named: set[tuple[str, str]]) -> None:
    """Every formula is in the working of some published check, or listed with a reason; no reason outlives its need."""
    if not pytestconfig.stash[WHOLE_FOLDER]:
        pytest.skip("only part of the published checks ran")
    unnamed = {name for name, formula in FORMULAS.items() if (formula.symbol, formula.expression) not in named}
    assert sorted(unnamed - set(NOT_YET_NAMED)) == [], "no published check names these"
    assert sorted(set(NOT_YET_NAMED) - unnamed) == [], "named by now, or gone: take these off the list"


def test_working_tells_formulas_apart() -> None:
    """Symbol and expression together belong to one formula, so a step of a working names it."""
    shown = [(formula.symbol, formula.expression) for formula in FORMULAS.values()]
    assert len(set(shown)) == len(shown)
