"""Reads the printed expression of a formula a second time, apart from the code that computes it.

An expression is parsed into a closed list of node types and evaluated twice: on columns of plain numbers, noting which
way each condition went, and on quantities of a registry in which the angle is a dimension of its own. Neither
evaluation knows anything of the formula's body.
"""

import ast
import operator
import zlib
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Any

import numpy as np
import pint
from numpy.typing import NDArray

from truethroat_service.engine.formula import Arg, Formula, Table

Columns = dict[str, NDArray[Any]]

FUNCTIONS: dict[str, int] = {
    "sin": 1,
    "cos": 1,
    "tan": 1,
    "acos": 1,
    "atan": 1,
    "tanh": 1,
    "exp": 1,
    "log": 1,
    "sqrt": 1,
    "abs": 1,
    "ceil": 1,
    "atan2": 2,
    "hypot": 2,
    "minimum": 2,
    "maximum": 2,
    "where": 3,
}
"""Every function an expression may call, with the number of its arguments; tables are called by their own names."""

CONSTANTS = {"pi", "rad"}
"""Names that need no argument: half a turn, and one radian."""

ARITHMETIC: dict[type[ast.operator], Callable[[Any, Any], Any]] = {
    ast.Add: operator.add,
    ast.Sub: operator.sub,
    ast.Mult: operator.mul,
    ast.Div: operator.truediv,
}
LOGIC: dict[type[ast.operator], Callable[[Any, Any], Any]] = {ast.BitAnd: operator.and_, ast.BitOr: operator.or_}
COMPARISONS: dict[type[ast.cmpop], Callable[[Any, Any], Any]] = {
    ast.Lt: operator.lt,
    ast.LtE: operator.le,
    ast.Gt: operator.gt,
    ast.GtE: operator.ge,
}


class Malformed(ValueError):
    """An expression holds something the closed list does not name, or its names are not those declared."""


UNITS = pint.UnitRegistry(None)
for _definition in (
    "millimetre = [length] = mm",
    "kilogram = [mass] = kg",
    "second = [time] = s",
    "degree_celsius = [temperature] = degC",
    "radian = [angle] = rad",
    "newton = 1000 * kilogram * millimetre / second ** 2 = N",
    "megapascal = newton / millimetre ** 2 = MPa",
    "kilojoule = 1e6 * newton * millimetre = kJ",
    "ampere = [current] = A",
    "volt = 1e-3 * kilojoule / (ampere * second) = V",
    "millilitre_per_100_gram = [hydrogen] = ml_per_100g",
):
    UNITS.define(_definition)


def parse(expression: str, names: set[str], tables: set[str]) -> ast.expr:
    """Parse an expression of the closed list, in which exactly ``names`` and ``tables`` must appear."""
    if not expression or not expression.isprintable():
        raise Malformed(f"not one printed line: {expression!r}")
    tree = ast.parse(expression, mode="eval").body
    used: set[str] = set()
    called: set[str] = set()
    _check(tree, used, called, tables)
    if used - CONSTANTS != names or called - set(FUNCTIONS) != tables:
        raise Malformed(f"{expression}: uses {sorted(used | called)}, declared are {sorted(names | tables)}")
    return tree


def _check(node: ast.expr, used: set[str], called: set[str], tables: set[str]) -> None:
    """Refuse a node outside the closed list and gather the names met on the way."""
    match node:
        case ast.Name(id=name):
            used.add(name)
        case ast.Constant(value=value) if type(value) in (int, float):
            pass
        case ast.UnaryOp(op=ast.USub() | ast.Invert(), operand=operand):
            _check(operand, used, called, tables)
        case ast.BinOp(left=left, op=op, right=right) if type(op) in ARITHMETIC | LOGIC or isinstance(op, ast.Pow):
            _check(left, used, called, tables)
            _check(right, used, called, tables)
        case ast.Compare(left=left, ops=[op], comparators=[right]) if type(op) in COMPARISONS:
            _check(left, used, called, tables)
            _check(right, used, called, tables)
        case ast.Call(func=ast.Name(id=name), args=arguments, keywords=[]):
            if len(arguments) != (dict.fromkeys(tables, 1) | FUNCTIONS).get(name):
                raise Malformed(f"{name} is not a function of {len(arguments)} arguments")
            called.add(name)
            for argument in arguments:
                _check(argument, used, called, tables)
        case _:
            raise Malformed(f"{ast.dump(node)} is not in the closed list")


# Numbers: the expression on columns, with a note of every way taken.


@dataclass
class Ways:
    """Which ways the evaluated rows went: condition or operand by its text, to the outcomes seen."""

    seen: dict[str, set[bool]] = field(default_factory=dict)
    rows: dict[str, set[int]] = field(default_factory=dict)

    def note(self, text: str, outcomes: NDArray[np.bool_]) -> None:
        """Add the outcomes met."""
        self.seen.setdefault(text, set()).update(bool(outcome) for outcome in np.unique(outcomes))

    def one_way(self) -> list[str]:
        """Texts that went one way only."""
        return sorted(text for text, seen in self.seen.items() if seen != {True, False})


@dataclass
class Numbers:
    """Evaluates a parsed expression on columns of plain numbers."""

    columns: Columns
    tables: Mapping[str, Table]
    ways: Ways = field(default_factory=Ways)

    PLAIN = {  # noqa: RUF012 - never changed
        "sin": np.sin,
        "cos": np.cos,
        "tan": np.tan,
        "acos": np.arccos,
        "atan": np.arctan,
        "tanh": np.tanh,
        "exp": np.exp,
        "log": np.log,
        "sqrt": np.sqrt,
        "abs": np.abs,
        "ceil": np.ceil,
        "atan2": np.arctan2,
        "hypot": np.hypot,
        "minimum": np.minimum,
        "maximum": np.maximum,
    }

    def __call__(self, tree: ast.expr) -> NDArray[Any]:
        """Value of the whole expression, row by row."""
        rows = len(next(iter(self.columns.values())))
        with np.errstate(invalid="ignore", divide="ignore"):
            return np.broadcast_to(self._value(tree, np.ones(rows, dtype=bool)), rows)

    def _value(self, node: ast.expr, reached: NDArray[np.bool_]) -> Any:
        """Value of a node; only rows ``reached`` count as having gone some way."""
        match node:
            case ast.Constant(value=value):
                return value
            case ast.Name(id=name):
                return {"pi": np.pi, "rad": 1.0}[name] if name in CONSTANTS else self.columns[name]
            case ast.UnaryOp(op=ast.USub(), operand=operand):
                return -self._value(operand, reached)
            case ast.UnaryOp(operand=operand):
                return ~self._value(operand, reached)
            case ast.BinOp(left=left, op=op, right=right) if type(op) in LOGIC:
                first = self._flag(left, reached)
                # The second side decides only where the first has not.
                second = self._flag(right, reached & (first if isinstance(op, ast.BitAnd) else ~first))
                return LOGIC[type(op)](first, second)
            case ast.BinOp(left=left, op=ast.Pow(), right=right):
                return self._value(left, reached) ** self._value(right, reached)
            case ast.BinOp(left=left, op=op, right=right):
                return ARITHMETIC[type(op)](self._value(left, reached), self._value(right, reached))
            case ast.Compare(left=left, ops=[cmp], comparators=[right]):
                return COMPARISONS[type(cmp)](self._value(left, reached), self._value(right, reached))
            case ast.Call(func=ast.Name(id="where"), args=[condition, yes, no]):
                holds = self._flag(condition, reached)
                return np.where(holds, self._value(yes, reached & holds), self._value(no, reached & ~holds))
            case ast.Call(func=ast.Name(id=name), args=arguments):
                values = [self._value(argument, reached) for argument in arguments]
                return (
                    self._table(name, values[0], reached) if name in self.tables else self._call(node, values, reached)
                )
        raise AssertionError(ast.dump(node))

    def _flag(self, node: ast.expr, reached: NDArray[np.bool_]) -> NDArray[np.bool_]:
        """Value of a condition, both ways of which must be met in the rows reached."""
        value: NDArray[np.bool_] = np.broadcast_to(self._value(node, reached), reached.shape)
        self.ways.note(ast.unparse(node), value[reached])
        return value

    def _call(self, node: ast.expr, values: list[Any], reached: NDArray[np.bool_]) -> Any:
        """Call a function; each side of a least or greatest must win in some row reached."""
        assert isinstance(node, ast.Call)
        assert isinstance(node.func, ast.Name)
        if node.func.id in ("minimum", "maximum"):
            left, right = (np.broadcast_to(value, reached.shape)[reached] for value in values)
            self.ways.note(ast.unparse(node), (left < right)[left != right])
        return self.PLAIN[node.func.id](*values)

    def _table(self, name: str, x: NDArray[Any], reached: NDArray[np.bool_]) -> NDArray[Any]:
        """Look a value up by counting the limits below it, apart from the table's own search."""
        table = self.tables[name]
        limits = np.asarray(table.limits)[:, np.newaxis]
        row = (x > limits * (1.0 + 1e-9)).sum(axis=0)
        self.ways.rows.setdefault(name, set()).update(int(index) for index in np.unique(row[reached]))
        return np.asarray(table.values)[row]


# Quantities: the expression with units, the angle a dimension.


@dataclass
class Quantities:
    """Evaluates a parsed expression on quantities; raises ``pint.DimensionalityError`` where the units do not fit."""

    values: dict[str, Any]
    tables: Mapping[str, Table]

    def __call__(self, node: ast.expr) -> Any:
        """Quantity, or column of flags, of a node."""
        match node:
            case ast.Constant(value=value):
                return UNITS.Quantity(float(value), "")
            case ast.Name(id=name):
                return (
                    UNITS.Quantity({"pi": np.pi, "rad": 1.0}[name], "rad") if name in CONSTANTS else self.values[name]
                )
            case ast.UnaryOp(op=ast.USub(), operand=operand):
                return -_quantity(self(operand))
            case ast.UnaryOp(operand=operand):
                return ~_flags(self(operand))
            case ast.BinOp(left=left, op=op, right=right) if type(op) in LOGIC:
                return LOGIC[type(op)](_flags(self(left)), _flags(self(right)))
            case ast.BinOp(left=left, op=ast.Pow(), right=right):
                return _power(_quantity(self(left)), _in(self(right), ""))
            case ast.BinOp(left=left, op=op, right=right):
                return ARITHMETIC[type(op)](_quantity(self(left)), _quantity(self(right)))
            case ast.Compare(left=left, ops=[cmp], comparators=[right]):
                low, high = _quantity(self(left)), _quantity(self(right))
                return COMPARISONS[type(cmp)](low.magnitude, _in(high, low.units))
            case ast.Call(func=ast.Name(id=name), args=arguments):
                return self._call(name, [self(argument) for argument in arguments])
        raise AssertionError(ast.dump(node))

    def _call(self, name: str, values: list[Any]) -> Any:
        """Call a function or a table by what it takes and gives."""
        if name in self.tables:
            table = self.tables[name]
            return UNITS.Quantity(table(_in(values[0], table.unit_in)), table.unit_out)
        if name == "where":
            unit = _quantity(values[1]).units
            return UNITS.Quantity(np.where(_flags(values[0]), values[1].magnitude, _in(values[2], unit)), unit)
        plain = Numbers.PLAIN[name]
        if name in ("sin", "cos", "tan"):
            return UNITS.Quantity(plain(_in(values[0], "rad")), "")
        if name in ("acos", "atan"):
            return UNITS.Quantity(plain(_in(values[0], "")), "rad")
        if name in ("ceil", "tanh", "exp", "log"):
            return UNITS.Quantity(plain(_in(values[0], "")), "")
        if name == "sqrt":
            return _quantity(values[0]) ** 0.5
        unit = _quantity(values[0]).units
        result = plain(values[0].magnitude, *(_in(value, unit) for value in values[1:]))
        return UNITS.Quantity(result, "rad" if name == "atan2" else unit)


def _quantity(value: Any) -> Any:
    """Refuse a flag where a quantity is wanted."""
    if not isinstance(value, UNITS.Quantity):
        raise Malformed("a flag stands where a quantity belongs")
    return value


def _flags(value: Any) -> NDArray[np.bool_]:
    """Refuse a quantity where a flag is wanted."""
    if isinstance(value, UNITS.Quantity):
        raise Malformed("a quantity stands where a flag belongs")
    flags: NDArray[np.bool_] = np.asarray(value, dtype=bool)
    return flags


def _in(value: Any, unit: Any) -> Any:
    """Magnitude in a unit; raises when the dimension is another."""
    return _quantity(value).to(unit).magnitude


def _power(base: Any, exponent: Any) -> Any:
    """Raise to a power, which must be one and the same number in every row unless the base is a bare number."""
    if base.dimensionless:
        return UNITS.Quantity(_in(base, "") ** exponent, "")
    if np.ndim(exponent):
        raise Malformed("a quantity is raised to a power that varies")
    return base**exponent


# Samples of a formula's arguments.

UNIFORM = 400
PER_LIMIT = 24


def samples(name: str, args: Mapping[str, Arg]) -> Columns:
    """Columns for the arguments of a formula: uniform in their ranges, then each named limit and its neighbours.

    The seed is the formula's own name, so one formula's rows never depend on another's.
    """
    draw = np.random.default_rng(zlib.crc32(name.encode()))
    probes = [(key, value) for key, arg in args.items() for limit in arg.around for value in _neighbours(arg, limit)]
    rows = UNIFORM + PER_LIMIT * len(probes)
    columns: Columns = {
        key: draw.integers(0, 2, rows).astype(bool) if arg.is_flag else draw.uniform(arg.low, arg.high, rows)
        for key, arg in args.items()
    }
    for index, (key, value) in enumerate(probes):
        start = UNIFORM + PER_LIMIT * index
        columns[key][start : start + PER_LIMIT] = value
    return columns


def _neighbours(arg: Arg, limit: float) -> list[float]:
    """Limit of a rule with the floats next to it, and with values just beyond what rounding forgives, in range."""
    close = (np.nextafter(limit, -np.inf), limit, np.nextafter(limit, np.inf), limit * (1 - 3e-9), limit * (1 + 3e-9))
    return [float(value) for value in close if arg.low <= value <= arg.high]


# What the proofs ask of one formula.


def tree_of(formula: Formula[Any]) -> ast.expr:
    """Parsed expression of a formula, its names held against its arguments and tables."""
    return parse(formula.expression, set(formula.args), {table.name for table in formula.tables})


def tables_of(formula: Formula[Any]) -> dict[str, Table]:
    """Tables of a formula by name."""
    return {table.name: table for table in formula.tables}


def printed(formula: Formula[Any], columns: Columns, ways: Ways | None = None) -> NDArray[Any]:
    """What the printed expression gives for columns of plain numbers."""
    return Numbers(columns, tables_of(formula), Ways() if ways is None else ways)(tree_of(formula))


def with_units(formula: Formula[Any], columns: Columns) -> NDArray[Any]:
    """What the printed expression gives with units, in the unit the formula declares."""
    values = {
        key: columns[key] if arg.is_flag else UNITS.Quantity(columns[key], arg.unit)
        for key, arg in formula.args.items()
    }
    with np.errstate(invalid="ignore", divide="ignore"):
        result: NDArray[Any] = _in(Quantities(values, tables_of(formula))(tree_of(formula)), formula.unit)
    return result
