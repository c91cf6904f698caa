"""Formula recorder: a formula is written once, computes floats and columns alike, and can show its working.

``@formula`` keeps beside each function its symbol, the printed expression, the units and ranges of its arguments and
its source. While a :class:`Sheet` is open every call is noted on it by reference, so recording costs per step and not
per row. Tests read :data:`FORMULAS` and prove of every entry that the printed expression is dimensionally sound, that
it computes what the body computes, that a row of a column equals the scalar, and that each branch is taken both ways.
"""

import functools
import inspect
from bisect import bisect_left
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass, field
from typing import Any, Generic, Literal, NamedTuple, ParamSpec

import numpy as np

from .numeric import Real
from .rounding import SAME

P = ParamSpec("P")

Mark = Literal["seen", "second-hand", "from memory", "common practice, no source", "geometry"]


@dataclass(frozen=True, slots=True)
class Source:
    """Citation of a rule, and how it was read.

    ``mark`` is "seen" for a rule read in print, "second-hand" for one read as a quotation, "from memory" for a recalled
    one, "common practice, no source" for a custom of the trade and "geometry" for what follows from a drawing.
    """

    document: str
    clause: str
    mark: Mark = "seen"
    citation: str = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        """Write the citation once; every answer prints it."""
        citation = f"{self.document}, {self.clause}" if self.document else self.clause
        sure = self.mark in ("seen", "geometry")
        object.__setattr__(self, "citation", citation if sure else f"{citation}, {self.mark}")

    def __str__(self) -> str:
        """Citation as it is printed, with its mark where the rule was not seen in print."""
        return self.citation

    def __hash__(self) -> int:
        """Hash of the citation, which Python keeps with the text."""
        return hash(self.citation)


@dataclass(frozen=True, slots=True)
class Arg:
    """Unit of an argument and the range over which the proofs sample it; ``around`` names limits to probe closely."""

    unit: str
    low: float = 0.0
    high: float = 1.0
    around: tuple[float, ...] = ()

    @property
    def is_flag(self) -> bool:
        """Whether the argument is true or false rather than a number."""
        return self.unit == "flag"


@dataclass(frozen=True, slots=True)
class Table:
    """Stepwise table of a standard: the value of the first row whose limit is not exceeded.

    ``limits`` are the upper ends of all rows but the last, which is open; a limit belongs to the row it ends.
    Units are those of the engine.
    """

    name: str
    unit_in: str
    unit_out: str
    limits: tuple[float, ...]
    values: tuple[float, ...]
    source: Source

    def __post_init__(self) -> None:
        """Refuse a table whose rows and limits do not match."""
        if len(self.values) != len(self.limits) + 1 or list(self.limits) != sorted(self.limits):
            raise ValueError(f"{self.name}: {len(self.values)} values for {len(self.limits)} limits")

    def __call__(self, x: Real) -> Real:
        """Value for ``x`` (scalar or column, unit ``unit_in``); a value within ``SAME`` of a limit is on it."""
        x = x * (1.0 - SAME)
        if isinstance(x, float):
            return self.values[bisect_left(self.limits, x)]
        return np.asarray(self.values)[np.searchsorted(self.limits, x, side="left")]


class Step(NamedTuple):
    """One recorded call: the formula, its subject, its arguments and its value."""

    formula: "Formula[Any]"
    about: str
    arguments: Mapping[str, Any]
    value: Real


@dataclass(slots=True)
class Sheet:
    """Working sheet: the steps in the order they were computed."""

    steps: list[Step] = field(default_factory=list)
    cited: list[Source] = field(default_factory=list)
    about: str = ""

    def sources(self) -> list[Source]:
        """Every source behind the answer, each once: those of formulas in the order used, then those cited."""
        # Formulas differ by identity, sources by their texts, which takes longer: so each formula is asked once.
        formulas = dict.fromkeys(step.formula for step in self.steps)
        return list(dict.fromkeys([*(formula.source for formula in formulas), *self.cited]))


_SHEET: ContextVar[Sheet | None] = ContextVar("sheet", default=None)
FORMULAS: dict[str, "Formula[Any]"] = {}
"""Every formula by ``module.function``; the proofs run over this."""


@contextmanager
def working() -> Iterator[Sheet]:
    """Open a working sheet for the calls made inside; a thread started inside must carry the context itself."""
    sheet = Sheet()
    token = _SHEET.set(sheet)
    try:
        yield sheet
    finally:
        _SHEET.reset(token)


@contextmanager
def off_the_sheet() -> Iterator[None]:
    """Compute inside without recording, for a second account, alternatives or a search."""
    token = _SHEET.set(None)
    try:
        yield
    finally:
        _SHEET.reset(token)


class about:  # noqa: N801 - reads as the statement it is
    """Name the subject of the steps recorded inside ("part 2", "side 1"); costs nothing when no sheet is open.

    A class, since a generator behind ``contextmanager`` took a tenth of the time of a large answer.
    """

    __slots__ = ("_before", "_sheet", "_subject")

    def __init__(self, subject: str) -> None:
        self._subject = subject

    def __enter__(self) -> None:
        self._sheet = sheet = _SHEET.get()
        if sheet is not None:
            self._before, sheet.about = sheet.about, self._subject

    def __exit__(self, *error: object) -> None:
        if self._sheet is not None:
            self._sheet.about = self._before


def cite(source: Source) -> None:
    """Note on the open sheet, if any, a rule that was applied without a formula, such as a table of words."""
    sheet = _SHEET.get()
    if sheet is not None:
        sheet.cited.append(source)


class Formula(Generic[P]):
    """Callable formula with what its sheet and its proofs need."""

    def __init__(
        self,
        body: Callable[P, Real],
        symbol: str,
        expression: str,
        unit: str,
        source: Source,
        args: Mapping[str, Arg],
        tables: tuple[Table, ...],
    ) -> None:
        """Check that every argument of the body is declared, with the same names in the same order."""
        names = list(inspect.signature(body).parameters)
        if names != list(args):
            raise TypeError(f"{body.__name__}: takes {names}, declares {list(args)}")
        functools.update_wrapper(self, body)
        self.body = body
        self.symbol = symbol
        self.expression = expression
        self.unit = unit
        self.source = source
        self.args = args
        self.tables = tables
        self.meaning = (body.__doc__ or "").strip().split("\n")[0].rstrip(".")

    def __call__(self, *args: P.args, **kwargs: P.kwargs) -> Real:
        """Compute, and note the step when a sheet is open; arguments go by keyword, or ``TypeError`` is raised."""
        if args:
            raise TypeError(f"{self.symbol}: arguments go by keyword, so that the sheet can name them")
        value = self.body(*args, **kwargs)
        sheet = _SHEET.get()
        if sheet is not None:
            sheet.steps.append(Step(self, sheet.about, kwargs, value))
        return value


def formula(
    symbol: str,
    expression: str,
    *,
    unit: str,
    source: Source,
    args: Mapping[str, Arg],
    tables: tuple[Table, ...] = (),
) -> Callable[[Callable[P, Real]], Formula[P]]:
    """Register a formula.

    ``symbol`` names the result, as later formulas name it among their arguments; ``expression`` is what the sheet
    prints, in Python's arithmetic with the functions of ``engine.numeric`` and the ``tables`` by name; ``unit`` is the
    engine unit of the result, "" for a bare number. Raises ``TypeError`` when ``args`` differ from the body's.
    """

    def register(body: Callable[P, Real]) -> Formula[P]:
        made = Formula(body, symbol, expression, unit, source, args, tables)
        FORMULAS[f"{body.__module__}.{body.__name__}"] = made
        return made

    return register
