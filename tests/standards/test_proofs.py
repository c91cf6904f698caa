"""Proofs over every formula there is: its printed expression, its dimensions, its floats, columns and branches.

None of these expects a value of the project's own making: the printed text is read and evaluated by
``expressions``, which shares nothing with the bodies but the tables' numbers.
"""

import importlib
import inspect
import pkgutil
from collections.abc import Callable
from typing import Any, get_args

import numpy as np
import pint
import pytest
from tests.standards.expressions import (
    UNITS,
    Malformed,
    Ways,
    parse,
    printed,
    samples,
    tables_of,
    tree_of,
    with_units,
)

import truethroat_service
from truethroat_service.engine import formula as recorder
from truethroat_service.engine.formula import Arg, Formula, Mark, Source, Table
from truethroat_service.engine.numeric import where

LAYERS = ("engine", "standards", "practice")


def _modules() -> list[Any]:
    """Import every module that may hold a formula."""
    found = []
    for layer in LAYERS:
        package = importlib.import_module(f"{truethroat_service.__name__}.{layer}")
        names = [info.name for info in pkgutil.walk_packages(package.__path__, f"{package.__name__}.")]
        found += [package, *(importlib.import_module(name) for name in names)]
    return found


MODULES = _modules()
FORMULAS = dict(recorder.FORMULAS)
every_formula = pytest.mark.parametrize("name", sorted(FORMULAS))


def _close(actual: Any, expected: Any, share: float) -> None:
    """Compare within a share of the row's value or, where a difference cancels, of the column's greatest."""
    scale = float(np.max(np.abs(expected)))
    np.testing.assert_allclose(actual, expected, rtol=share, atol=share * scale)


def test_every_formula_is_registered_under_its_own_name() -> None:
    """A formula found in a module is the one registered under that module and function; none hides another."""
    found = {
        f"{module.__name__}.{key}": value
        for module in MODULES
        for key, value in vars(module).items()
        if isinstance(value, Formula) and value.__module__ == module.__name__
    }
    assert found == FORMULAS


def test_every_layer_has_formulas() -> None:
    """The proofs below run over the engine, the standards and practice alike."""
    assert {name.split(".")[1] for name in FORMULAS} == set(LAYERS)


@every_formula
def test_words(name: str) -> None:
    """A formula says what it gives in one line, names its result and cites a source."""
    formula = FORMULAS[name]
    assert formula.meaning
    assert formula.meaning == (formula.body.__doc__ or "").strip().split("\n")[0].rstrip(".")
    assert formula.symbol.isidentifier()
    assert formula.symbol not in formula.args
    assert str(formula.source).strip()
    assert formula.source.clause.strip()
    assert formula.source.mark in get_args(Mark)
    assert formula.expression.isprintable()
    assert formula.expression == formula.expression.strip()


@every_formula
def test_ranges(name: str) -> None:
    """Every argument has a unit of the engine, and a range that holds the limits probed."""
    for arg in FORMULAS[name].args.values():
        assert arg.is_flag or UNITS.Unit(arg.unit) is not None
        assert arg.low <= arg.high
        assert all(arg.low <= limit <= arg.high for limit in arg.around)
    for table in FORMULAS[name].tables:
        assert str(table.source)
        assert UNITS.Unit(table.unit_in) is not None
        assert UNITS.Unit(table.unit_out) is not None


@every_formula
def test_dimensions(name: str) -> None:
    """The printed expression has the declared unit, angles told apart from numbers, and no unit factor is hidden."""
    formula = FORMULAS[name]
    columns = samples(name, formula.args)
    _close(with_units(formula, columns), printed(formula, columns), 1e-12)


@every_formula
def test_expression_is_the_code(name: str) -> None:
    """What the sheet prints is what is computed."""
    formula = FORMULAS[name]
    columns = samples(name, formula.args)
    value = formula.body(**columns)
    assert isinstance(value, np.ndarray)
    assert value.shape == next(iter(columns.values())).shape
    assert np.all(np.isfinite(value))
    _close(value, printed(formula, columns), 1e-12)


@every_formula
def test_row_is_scalar(name: str) -> None:
    """Every row as plain numbers gives a plain float, the same as the column's."""
    formula = FORMULAS[name]
    columns = samples(name, formula.args)
    rows = zip(*(columns[key].tolist() for key in formula.args), strict=True)
    alone = [formula.body(**dict(zip(formula.args, row, strict=True))) for row in rows]
    assert {type(value) for value in alone} == {float}
    _close(np.asarray(alone), formula.body(**columns), 1e-14)


@every_formula
def test_one_column_among_scalars(name: str) -> None:
    """A list in which one argument varies gives the same rows as one in which all are columns."""
    formula = FORMULAS[name]
    columns = samples(name, formula.args)
    for varied in formula.args:
        for row in range(8):
            mixed = {key: column if key == varied else column[row].item() for key, column in columns.items()}
            full = {key: np.broadcast_to(column, columns[varied].shape) for key, column in mixed.items()}
            with np.errstate(invalid="ignore", divide="ignore"):
                got, expected = formula.body(**mixed), formula.body(**full)
            np.testing.assert_allclose(np.broadcast_to(got, expected.shape), expected, rtol=1e-12, atol=1e-12)


@every_formula
def test_every_branch_is_met(name: str) -> None:
    """The samples take each condition, and each side of a least or greatest, both ways, and meet each table row."""
    formula = FORMULAS[name]
    ways = Ways()
    printed(formula, samples(name, formula.args), ways)
    assert ways.one_way() == []
    assert ways.rows == {key: set(range(len(table.values))) for key, table in tables_of(formula).items()}


# The proofs themselves, held against expressions that are wrong.

MM, MPA, RAD, NUMBER = Arg("mm", 1, 9), Arg("MPa", 1, 9), Arg("rad", 0.1, 1.5), Arg("", 0.1, 0.9)
STEPS = Table("steps", "mm", "MPa", (3.0, 6.0), (1.0, 2.0, 3.0), Source("", "invented for this test"))
BY_STEPS = (STEPS,)
NOWHERE = Source("", "invented for this test")


def _made(expression: str, unit: str, args: dict[str, Arg], body: Callable[..., Any] | None = None) -> Formula[Any]:
    """Make an unregistered formula of an expression and, if its value matters, a body."""

    def uncalled(**_values: Any) -> Any:
        raise NotImplementedError

    body = body or uncalled
    names = [inspect.Parameter(name, inspect.Parameter.KEYWORD_ONLY) for name in args]
    body.__signature__ = inspect.Signature(names)  # type: ignore[attr-defined]
    return Formula(body, "y", expression, unit, NOWHERE, args, BY_STEPS if "steps" in expression else ())


def _with_units(expression: str, unit: str, args: dict[str, Arg]) -> Any:
    """Evaluate an expression with units on its own samples."""
    return with_units(_made(expression, unit, args), samples(expression, args))


@pytest.mark.parametrize(
    ("expression", "unit", "args"),
    [
        ("t + f", "mm", {"t": MM, "f": MPA}),
        ("t - 1", "mm", {"t": MM}),
        ("t + 0", "mm", {"t": MM}),
        ("theta + 2", "rad", {"theta": RAD}),
        ("pi + x", "", {"x": NUMBER}),
        ("theta*t", "mm", {"theta": RAD, "t": MM}),
        ("sin(x)", "", {"x": NUMBER}),
        ("cos(t)", "", {"t": MM}),
        ("tan(x)", "", {"x": NUMBER}),
        ("acos(theta)", "rad", {"theta": RAD}),
        ("acos(x)", "", {"x": NUMBER}),
        ("atan2(t, f)", "rad", {"t": MM, "f": MPA}),
        ("atan2(t, t)", "", {"t": MM}),
        ("hypot(t, f)", "mm", {"t": MM, "f": MPA}),
        ("minimum(t, f)", "mm", {"t": MM, "f": MPA}),
        ("maximum(t, 0)", "mm", {"t": MM}),
        ("ceil(t)", "mm", {"t": MM}),
        ("sqrt(t)", "mm", {"t": MM}),
        ("where(t > 5, t, 2*t)", "mm", {"t": MM}),
        ("where(x > 0.5, t, x)", "mm", {"x": NUMBER, "t": MM}),
        ("where(theta > 0.5, t, 2*t)", "mm", {"theta": RAD, "t": MM}),
        ("t**t", "mm", {"t": MM}),
        ("t*f", "MPa", {"t": MM, "f": MPA}),
        ("t**2", "mm", {"t": MM}),
        ("2*t", "", {"t": MM}),
        ("steps(f)", "MPa", {"f": MPA}),
        ("steps(t)", "mm", {"t": MM}),
    ],
)
def test_wrong_dimensions_are_found(expression: str, unit: str, args: dict[str, Arg]) -> None:
    """The checker refuses an expression whose units do not fit, an angle taken for a number among them."""
    with pytest.raises(pint.DimensionalityError):
        _with_units(expression, unit, args)


@pytest.mark.parametrize(
    ("expression", "args"),
    [
        ("where(t, t, t)", {"t": MM}),
        ("~t", {"t": MM}),
        ("(t > 2*t) & t", {"t": MM}),
        ("(t > 2*t)*t", {"t": MM}),
        ("-(t > 2*t)", {"t": MM}),
        ("compatible*t", {"t": MM, "compatible": Arg("flag")}),
        ("t**x", {"t": MM, "x": NUMBER}),
    ],
)
def test_flags_and_powers_keep_to_their_places(expression: str, args: dict[str, Arg]) -> None:
    """A flag is no quantity, a quantity no flag, and a power of a length does not vary from row to row."""
    with pytest.raises(Malformed):
        _with_units(expression, "mm", args)


def test_a_hidden_factor_is_found() -> None:
    """A result of the right dimension in another unit differs from the plain numbers: kJ/mm is not the newton."""
    energy = {"E": Arg("kJ/mm", 1, 3)}
    columns = samples("E", energy)
    np.testing.assert_allclose(with_units(_made("2*E", "N", energy), columns), 2e6 * columns["E"], rtol=1e-12)
    np.testing.assert_allclose(printed(_made("2*E", "N", energy), columns), 2 * columns["E"], rtol=1e-12)


@pytest.mark.parametrize(
    ("expression", "unit", "args"),
    [
        ("where(flag_1 & ~flag_2 | (t <= u), t, -u)", "mm", dict.fromkeys(("flag_1", "flag_2"), Arg("flag"))),
        ("pi - 2*acos(t/hypot(t, u))*sin(pi/4 - atan2(t, u))**1.5", "rad", {}),
        ("abs(t)*(phi - sin(phi)*rad)/rad + sqrt(t*u)*ceil(t/u)", "mm", {"phi": RAD}),
        ("steps(t)*u", "N/mm", {}),
    ],
)
def test_right_dimensions_pass(expression: str, unit: str, args: dict[str, Arg]) -> None:
    """The checker lets through what is sound, so that its refusals mean something."""
    args = args | {"t": MM, "u": MM}
    columns = samples(expression, args)
    with np.errstate(invalid="ignore"):
        made = _made(expression, unit, args)
        np.testing.assert_allclose(with_units(made, columns), printed(made, columns), rtol=1e-12)


@pytest.mark.parametrize(
    "expression",
    [
        "",
        "t\n+ t",
        "t.real",
        "t[0]",
        "[t]",
        "(lambda: t)()",
        "t if t > 1 else t",
        "t and t",
        "not t",
        "+t",
        "t // 2",
        "t % 2",
        "1 < t < 2",
        "t == t",
        "abs(t, t)",
        "abs(x=t)",
        "abs(*t)",
        "sinh(t)",
        "min(t, t)",
        "__import__(t)",
        "table_of_nothing(t)",
        "'t'",
        "True*t",
        "t*1j",
        "(u := t)",
        "t + other",
        "2",
        "pi",
        "sin + t",
    ],
)
def test_only_the_closed_list_is_read(expression: str) -> None:
    """Anything but arithmetic, comparisons, flags, names, numbers and listed calls is refused, as is a stray name."""
    with pytest.raises(Malformed):
        parse(expression, {"t"}, set())


def test_a_declared_table_must_be_used() -> None:
    """A table or argument that is declared and not printed is refused."""
    with pytest.raises(Malformed):
        parse("t + 2*t", {"t"}, {"steps"})
    with pytest.raises(Malformed):
        parse("steps(t)", {"t", "u"}, {"steps"})


def test_a_drifted_expression_is_found() -> None:
    """A body that no longer does what is printed fails, were it by one part in a million."""
    drifted = _made("2*t", "mm", {"t": MM}, lambda t: 2.000002 * t)
    columns = samples("drifted", drifted.args)
    with pytest.raises(AssertionError):
        _close(drifted.body(**columns), printed(drifted, columns), 1e-12)


@pytest.mark.parametrize(
    ("expression", "missed"),
    [
        ("where(x < 2, t, 2*t)", ["x < 2"]),
        ("where(x < 0.5, t, where(x < 0.4, t, 2*t))", ["x < 0.4"]),
        ("where((x < 0.5) & (x < 0.7), t, 2*t)", ["x < 0.7"]),
        ("where((x < 0.5) | (x > 0.4), t, 2*t)", ["x < 0.5 | x > 0.4", "x > 0.4"]),
        ("minimum(t, 20*t) + 0*x*t", ["minimum(t, 20 * t)"]),
        ("where(x < 0.5, maximum(t, t*(x + 0.5)), t)", ["maximum(t, t * (x + 0.5))"]),
        ("where(x < 0.5, t, 2*t)", []),
    ],
)
def test_a_branch_never_taken_is_found(expression: str, missed: list[str]) -> None:
    """A condition is judged only in the rows that come to it, so a dead inner branch shows."""
    made = _made(expression, "mm", {"t": MM, "x": NUMBER})
    ways = Ways()
    printed(made, samples(expression, made.args), ways)
    assert [text.replace("(", "").replace(")", "") for text in ways.one_way()] == [
        text.replace("(", "").replace(")", "") for text in missed
    ]


def test_a_table_row_never_met_is_found() -> None:
    """Samples that stop short of a table's last row do not meet it."""
    made = _made("steps(t)", "MPa", {"t": Arg("mm", 1, 5)})
    ways = Ways()
    printed(made, samples("steps", made.args), ways)
    assert ways.rows == {"steps": {0, 1}}


def test_samples_probe_limits_within_the_range() -> None:
    """A limit, the floats beside it and values just beyond rounding's forgiveness are sampled, none out of range."""
    args = {"t": Arg("mm", 0.0, 5.0, (0.0, 5.0)), "u": MM}
    column = samples("probe", args)["t"]
    assert {0.0, np.nextafter(0.0, 1.0), 5.0, np.nextafter(5.0, 0.0), 5.0 * (1 - 3e-9)} <= set(column.tolist())
    assert column.min() >= 0.0
    assert column.max() <= 5.0


def test_where_of_an_array_is_no_float() -> None:
    """The scalar proof would notice a body that leaves its scalar in an array."""
    assert type(where(np.bool_(True), 1.0, 2.0)) is not float


def test_printed_text_is_parsed_whole() -> None:
    """Tree and text are one: every formula's expression parses with exactly its own names and tables."""
    assert all(tree_of(formula) is not None for formula in FORMULAS.values())
