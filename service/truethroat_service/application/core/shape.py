"""Marks by which a dataclass says, once, what each of its fields is on the wire: its quantity, its range, its words.

A request or an answer is a dataclass in engine units. Its annotations carry these marks:
``Annotated[float, Within(LENGTH, most=300.0, above=True), "Length of the seam."]``. A plain text among the marks is the
field's description. `core/wire.py` writes answers by the marks, `api/derive.py` reads requests by them, and the
document's components follow from them, so that a field is written in one place.
"""

import dataclasses as dc
import types
from collections.abc import Callable, Mapping, Sequence
from functools import cache
from typing import Annotated, Any, Literal, NamedTuple, TypeVar, Union, get_args, get_origin, get_type_hints

from .quantities import (
    ANGLE,
    AREA,
    FORCE,
    FORCE_PER_LENGTH,
    LENGTH,
    MASS_PER_LENGTH,
    STRESS,
    Dimension,
    Rounding,
)

MISSING = dc.MISSING


@dc.dataclass(frozen=True, slots=True, eq=False)
class Q:
    """Number of an answer that is a quantity; ``text`` is the side to which its text is rounded.

    On a dataclass such as :class:`Band` it holds for each of its floats that has no mark of its own.
    """

    dimension: Dimension
    text: Rounding = "nearest"


@dc.dataclass(frozen=True, slots=True)
class Measured:
    """Number of an answer that brings its own dimension."""

    value: float
    dimension: Dimension


@dc.dataclass(frozen=True, slots=True, eq=False)
class Among:
    """Dimensions that a :class:`Measured` number may have."""

    dimensions: tuple[Dimension, ...]


@dc.dataclass(frozen=True, slots=True, eq=False)
class Within:
    """Quantity of a request and its range in engine units; with ``above`` the least value itself is refused."""

    dimension: Dimension
    least: float = 0.0
    most: float = dc.field(kw_only=True)
    above: bool = False


@dc.dataclass(frozen=True, slots=True)
class Numbered:
    """Number of a request without a unit, and its range; on an ``int`` a whole number."""

    least: float
    most: float


@dc.dataclass(frozen=True, slots=True)
class OneOf:
    """Text or whole number of a request out of a closed list that is known when the service starts.

    A list with a name is a component of its own, so that the document holds it once.
    """

    choices: tuple[str | int, ...]
    name: str = ""


@dc.dataclass(frozen=True, slots=True)
class Longest:
    """Text of a request, and how many characters it may have."""

    characters: int


@dc.dataclass(frozen=True, slots=True)
class Pattern:
    """Text of a request that has a form: its regular expression, and the message that says what would be right."""

    expression: str
    message: str


@dc.dataclass(frozen=True, slots=True)
class Many:
    """Entries of a list in a request: what a message calls them, and how many there may be."""

    what: str
    least: int = dc.field(default=1, kw_only=True)
    most: int = dc.field(kw_only=True)


@dc.dataclass(frozen=True, slots=True, eq=False)
class Form:
    """One form of an object of a request: the component's name and words, its fields, and what they make."""

    name: str
    words: str
    makes: Callable[..., Any]
    fields: Mapping[str, "Field"]


@dc.dataclass(frozen=True, slots=True, eq=False)
class By:
    """Object of a request whose form goes by the value of one of its own fields; several values may share a form."""

    field: str
    forms: Mapping[str, "type | Form"]


@dc.dataclass(frozen=True, slots=True, eq=False)
class ToldBy:
    """Object of a request whose form goes by which field is present; the last form is taken when none is."""

    forms: Sequence[tuple[tuple[str, ...], "type | Form"]]


@dc.dataclass(frozen=True, slots=True, eq=False)
class OrName:
    """Object of a request in a form, or a text of a closed list that stands for one."""

    names: OneOf
    makes: Callable[[str], Any]
    form: Form


@dc.dataclass(frozen=True, slots=True, eq=False)
class As:
    """Object of a request that is sent in a form."""

    form: Form


@dc.dataclass(frozen=True, slots=True, eq=False)
class Stated:
    """Default of a request's object as the document states it."""

    default: Any


class Omitted:
    """Field of an answer that is left out where it is ``None``, instead of being null."""


class Unsent:
    """Field of an answer that other use cases read and no caller is sent."""


class Inlined:
    """Object of an answer whose fields are sent in its place, among those of the answer itself."""


class Bare:
    """Field of an answer for which the quantity of its dataclass does not hold."""


OMITTED, UNSENT, INLINED, BARE = Omitted(), Unsent(), Inlined(), Bare()

Length = Annotated[float, Q(LENGTH)]
LengthDown = Annotated[float, Q(LENGTH, "down")]
LengthUp = Annotated[float, Q(LENGTH, "up")]
Angle = Annotated[float, Q(ANGLE)]
Area = Annotated[float, Q(AREA)]
Force = Annotated[float, Q(FORCE)]
ForcePerLength = Annotated[float, Q(FORCE_PER_LENGTH)]
MassPerLength = Annotated[float, Q(MASS_PER_LENGTH)]
Stress = Annotated[float, Q(STRESS)]
LengthOrAngle = Annotated[Measured, Among((LENGTH, ANGLE))]


@dc.dataclass(frozen=True, slots=True)
class Band:
    """From least to most; both are the same where nothing was assumed."""

    least: float
    most: float


@dc.dataclass(frozen=True, slots=True)
class Lacks:
    """Value of an answer's field that cannot be answered: null on the wire, with the reason why."""

    reason: str


class Hint(NamedTuple):
    """Annotation taken apart: the bare type, whether it may be null, its marks and its description."""

    type: Any
    optional: bool
    marks: tuple[Any, ...]
    words: str

    def quantity(self, around: Q | None) -> Q | None:
        """Quantity of the floats in a value of an answer; ``around`` is that of the dataclass it stands in."""
        return self.mark(Q) or (None if BARE in self.marks else around)

    def mark(self, kind: "type[_Mark]") -> "_Mark | None":
        """Mark of a kind, or None."""
        return next((mark for mark in self.marks if isinstance(mark, kind)), None)


_Mark = TypeVar("_Mark")


class Field(NamedTuple):
    """Field of a form: its annotation and its default, ``MISSING`` where it is required."""

    hint: Any
    default: Any = MISSING


def taken_apart(hint: Any) -> Hint:
    """Annotation as a :class:`Hint`; a union of several types stays whole, but for None and :class:`Lacks`."""
    marks: tuple[Any, ...] = ()
    optional = False
    while True:
        if get_origin(hint) is Annotated:
            hint, *more = get_args(hint)
            # Of two marks of one kind the outer one holds: it is written later, and may be on an alias of the inner.
            marks = (*marks, *reversed(more))
        elif get_origin(hint) in (Union, types.UnionType):
            rest = tuple(one for one in get_args(hint) if one not in (types.NoneType, Lacks))
            optional |= len(rest) < len(get_args(hint))
            if len(rest) > 1:
                return Hint(Union[rest], optional, marks, _words(marks))  # noqa: UP007 - made from a tuple
            hint = rest[0]
        else:
            return Hint(hint, optional, marks, _words(marks))


def _words(marks: tuple[Any, ...]) -> str:
    return next((mark for mark in marks if isinstance(mark, str)), "")


@cache
def fields_of(kind: type) -> Mapping[str, Field]:
    """Fields of a dataclass, by name."""
    hints = get_type_hints(kind, include_extras=True)
    return {entry.name: Field(hints[entry.name], _default(entry)) for entry in dc.fields(kind)}


def _default(entry: "dc.Field[Any]") -> Any:
    return entry.default_factory() if entry.default_factory is not MISSING else entry.default


def form(
    name: str, words: str, kind: type, /, *names: str, makes: Callable[..., Any] | None = None, **instead: Any
) -> Form:
    """Form of a dataclass that has several: the fields it takes by ``names``, an ``!`` after one that it requires.

    ``instead`` gives a field another annotation than the dataclass's own; one that may not be ``None`` is required.
    """
    own = fields_of(kind) if dc.is_dataclass(kind) else {}
    chosen: dict[str, Field] = {}
    for entry in names:
        field = entry.removesuffix("!")
        if field in instead:
            hint = instead[field]
            needed = entry.endswith("!") or not (taken_apart(hint).optional or field in own)
            chosen[field] = Field(hint, MISSING if needed else own[field].default if field in own else None)
        else:
            chosen[field] = Field(own[field].hint, MISSING if entry.endswith("!") else own[field].default)
    return Form(name, words, makes or kind, chosen)


def whole_form(kind: type, name: str = "") -> Form:
    """Form of a dataclass that has one: all its fields, under its own name or another."""
    return Form(name or kind.__name__, component_words(kind), kind, fields_of(kind))


def component_words(kind: type) -> str:
    """Description of the component of a dataclass: its docstring on one line."""
    return " ".join((kind.__doc__ or "").split())


def choices_of(hint: Hint) -> tuple[str | int, ...] | None:
    """Closed list that a field's value is out of, or None."""
    named = hint.mark(OneOf)
    if named is not None:
        return named.choices
    return get_args(hint.type) if get_origin(hint.type) is Literal else None
