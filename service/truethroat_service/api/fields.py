"""Fields of requests: strict about types, clear about what would be right, and documented as they behave.

Marshmallow's own fields take ``"1.5"`` for a number and ``0`` for false; these do not. Each tells the OpenAPI document
what it accepts through :meth:`Field.document`. A sound entry is read by :meth:`Field.quick`, which does not say why
it fails; marshmallow then reads the request once more and words every fault.
"""

import math
import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from contextvars import ContextVar
from difflib import get_close_matches
from typing import Any

from marshmallow import ValidationError, fields, missing

from ..application.core.quantities import US_UNITS, Dimension, QuantityDict, UnitSystem, read_number, render
from .messages import MISSING, NOT_AN_OBJECT, NOT_FINITE, NULL, Message

STANDARD: dict[str, str | list[Any] | dict[Any, Any]] = {
    "required": MISSING,
    "null": NULL,
    "validator_failed": Message("is not valid", "invalid"),
}
UNSOUND = ValidationError("is not sound")
"""Raised by the quick reading; the thorough one then says why."""
MANY = 12
"""Choices a message still lists in full; of longer lists it names the nearest."""
TEXT_LIMIT = 60
"""Longest text form of a quantity."""
LEAST = 1e-12
"""Least size of a quantity that is not 0, in engine units; no shop measures less, and its square still has a value."""

_UNITS: ContextVar[UnitSystem] = ContextVar("units", default="metric")
"""Units of the request that is being read."""


@contextmanager
def units_of(data: Any) -> Iterator[None]:
    """Word the faults of a body in the units that it asks for."""
    us = isinstance(data, dict) and data.get("units") == "us"
    token = _UNITS.set("us" if us else "metric")
    try:
        yield
    finally:
        _UNITS.reset(token)


class Field(fields.Field[Any]):
    """Base of the strict fields: ``description`` and, for a field with one, the wire form of its default."""

    default_error_messages = STANDARD

    def __init__(
        self, description: str = "", *, default: object = missing, required: bool = False, **more: Any
    ) -> None:
        """Keep what the document says of the field."""
        metadata = {"description": description} | ({} if default is missing else {"default": default}) | more
        super().__init__(required=required, metadata={key: value for key, value in metadata.items() if value != ""})

    def quick(self, value: Any) -> Any:
        """Value of a sound entry; raises ``ValidationError`` at the first fault, without a full account of it."""
        return self._deserialize(value, None, None)

    def component(self, refer: Any) -> dict[str, Any]:
        """JSON schema of the field with its description and its default."""
        return self.document(refer) | dict(self.metadata)

    def document(self, refer: Any) -> dict[str, Any]:
        """JSON schema of what the field accepts; ``refer`` turns a schema or a dimension into a reference."""
        raise NotImplementedError


class Quantity(Field):
    """Quantity with a unit: a text such as ``"1/4 in"`` or an object of value and unit; loads to engine units.

    ``minimum`` and ``maximum`` are in engine units; with ``above`` the minimum itself is refused. A field whose kind
    has a symmetric range (a signed force) gives its own minimum.
    """

    def __init__(
        self,
        dimension: Dimension,
        description: str = "",
        *,
        minimum: float = 0.0,
        maximum: float,
        above: bool = False,
        **more: Any,
    ) -> None:
        """Keep the dimension and the range, and say the range in the description."""
        self.dimension, self.minimum, self.maximum, self.above = dimension, minimum, maximum, above
        low = self._text(minimum, "metric")
        words = f"{description} From {low}{' (exclusive)' if above else ''} to {self._text(maximum, 'metric')}."
        super().__init__(words.strip(), **more)

    def _text(self, value: float, system: UnitSystem) -> str:
        return render(self.dimension, value, system)["text"]

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> float:
        number, unit = self._read(value)
        if not math.isfinite(number):
            raise ValidationError(NOT_FINITE)
        engine = self.dimension.to_engine(number, unit)
        inside = (engine > self.minimum if self.above else engine >= self.minimum) and engine <= self.maximum
        if not inside or 0.0 < abs(engine) < LEAST:
            system: UnitSystem = "us" if unit in US_UNITS else _UNITS.get()
            least = f"{'over' if self.above else 'at least'} {self._text(self.minimum, system)}"
            why = "; this is too close to 0 for a real size" if inside else ""
            raise ValidationError(
                Message(f"must be {least} and at most {self._text(self.maximum, system)}{why}", "out-of-range")
            )
        return engine

    def _read(self, value: Any) -> tuple[float, str]:
        """Number and unit of either form."""
        units = ", ".join(self.dimension.factors)
        if isinstance(value, str):
            read = self.dimension.parse(value) if len(value) <= TEXT_LIMIT else None
            if read is None:
                raise ValidationError(self._refused_text(value, units))
            return read
        if isinstance(value, dict):
            return self._read_object(value, units)
        if isinstance(value, int | float) and not isinstance(value, bool):
            if not math.isfinite(value):
                raise ValidationError(NOT_FINITE)
            raise ValidationError(self._without_unit(f"{value:g}"))
        raise ValidationError(
            Message(f"must be {self._named}: text such as {self._example} or value and unit", "wrong-type")
        )

    @property
    def _named(self) -> str:
        """Name of the dimension with its article."""
        name = self.dimension.name
        return f"{'an' if name[0] in 'aeiou' else 'a'} {name}"

    @property
    def _example(self) -> str:
        """Text of a quantity, in the units of the request."""
        unit = self.dimension.unit(_UNITS.get())
        return f'"{"1/4" if unit == "in" else "6"} {unit}"'

    def _without_unit(self, number: str) -> Message:
        """Message for a number without a unit."""
        unit = self.dimension.unit(_UNITS.get())
        return Message(f'has no unit; send text such as "{number} {unit}"', "missing-unit")

    def _refused_text(self, value: str, units: str) -> Message:
        """Message for a text that is no quantity of this dimension."""
        number, _, unit = value[:TEXT_LIMIT].rpartition(" ")
        if self._is_endless(value) or self._is_endless(number):
            return NOT_FINITE
        try:
            read_number(value.strip())
        except (ValueError, ZeroDivisionError, OverflowError):
            pass
        else:
            return self._without_unit(value.strip())
        if number and unit and unit not in self.dimension.factors and self._is_number(number):
            return Message(f"{unit} is not a unit of {self.dimension.name}; use {units}", "unknown-unit")
        return Message(
            f"is not {self._named}; send a number and a unit such as {self._example}, with one of the units {units}",
            "not-a-quantity",
        )

    @staticmethod
    def _is_endless(text: str) -> bool:
        """Whether a text is infinite, too large for a float, or names no number."""
        try:
            return not math.isfinite(float(text))
        except ValueError:
            return False

    @staticmethod
    def _is_number(text: str) -> bool:
        try:
            read_number(text.strip())
        except (ValueError, ZeroDivisionError, OverflowError):
            return False
        return True

    def _read_object(self, value: dict[str, Any], units: str) -> tuple[float, str]:
        """Number and unit of the object form; an answer's ``text`` may come back with them."""
        errors: dict[str, list[str]] = {}
        for key in value:
            if key not in ("value", "unit", "text"):
                errors[key] = [Message("is not a field here; a quantity has value and unit", "unknown-field")]
        if not isinstance(value.get("text", ""), str):
            errors["text"] = [Message("must be text", "wrong-type")]
        number, unit = value.get("value"), value.get("unit")
        if "value" not in value:
            errors["value"] = [MISSING]
        elif isinstance(number, bool) or not isinstance(number, int | float):
            errors["value"] = [Message("must be a number", "wrong-type")]
        if "unit" not in value:
            errors["unit"] = [Message(f"is missing; use one of {units}", "missing-unit")]
        elif not isinstance(unit, str):
            errors["unit"] = [Message("must be text", "wrong-type")]
        elif unit not in self.dimension.factors:
            errors["unit"] = [Message(f"is not a unit of {self.dimension.name}; use {units}", "unknown-unit")]
        if errors:
            raise ValidationError(errors)
        return float(number), unit  # type: ignore[arg-type, return-value]

    def document(self, refer: Any) -> dict[str, Any]:
        """Reference to the dimension's component."""
        return {"$ref": refer(self.dimension)}


def dimension_schema(dimension: Dimension) -> dict[str, Any]:
    """Component of a dimension: text of a number and a unit, or a closed object."""
    example: QuantityDict = render(dimension, dimension.to_engine(6.0, dimension.metric), "metric")
    text = {
        "type": "string",
        "format": dimension.name.replace(" ", "-"),
        "pattern": dimension.pattern,
        "maxLength": TEXT_LIMIT,
        "examples": [example["text"]],
    }
    closed = {
        "type": "object",
        "properties": {
            "value": {"type": "number"},
            "unit": {"type": "string", "enum": list(dimension.factors)},
            "text": {"type": "string", "description": "An answer's own text; ignored."},
        },
        "required": ["value", "unit"],
        "additionalProperties": False,
        "examples": [{"value": example["value"], "unit": example["unit"]}],
    }
    return {"description": f"A {dimension.name} with its unit.", "anyOf": [text, closed]}


class Number(Field):
    """Bare number within a range, for what has no unit."""

    def __init__(self, description: str = "", *, minimum: float, maximum: float, **more: Any) -> None:
        """Keep the range."""
        self.minimum, self.maximum = minimum, maximum
        super().__init__(description, **more)

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> float:
        if isinstance(value, bool) or not isinstance(value, int | float):
            raise ValidationError(Message("must be a number, without a unit", "wrong-type"))
        if not self.minimum <= value <= self.maximum:
            raise ValidationError(Message(f"must be from {self.minimum:g} to {self.maximum:g}", "out-of-range"))
        return float(value)

    def document(self, refer: Any) -> dict[str, Any]:
        """Number with its range."""
        return {"type": "number", "minimum": self.minimum, "maximum": self.maximum}


class Whole(Field):
    """Whole number within a range."""

    def __init__(self, description: str = "", *, minimum: int, maximum: int, **more: Any) -> None:
        """Keep the range."""
        self.minimum, self.maximum = minimum, maximum
        super().__init__(description, **more)

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> int:
        # JSON has one number type, so 2.0 is 2.
        if isinstance(value, bool) or not isinstance(value, int | float) or value != value // 1:
            raise ValidationError(Message("must be a whole number, without a unit", "wrong-type"))
        if not self.minimum <= value <= self.maximum:
            raise ValidationError(Message(f"must be from {self.minimum} to {self.maximum}", "out-of-range"))
        return int(value)

    def document(self, refer: Any) -> dict[str, Any]:
        """Integer with its range."""
        return {"type": "integer", "minimum": self.minimum, "maximum": self.maximum}


class Flag(Field):
    """True or false; no other value is taken for them."""

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> bool:
        if not isinstance(value, bool):
            raise ValidationError(Message("must be true or false", "wrong-type"))
        return value

    def document(self, refer: Any) -> dict[str, Any]:
        """Boolean."""
        return {"type": "boolean"}


class Text(Field):
    """Text of limited length, given back as it came."""

    def __init__(self, description: str = "", *, longest: int, **more: Any) -> None:
        """Keep the limit."""
        self.longest = longest
        super().__init__(description, **more)

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> str:
        if not isinstance(value, str):
            raise ValidationError(Message("must be text", "wrong-type"))
        if len(value) > self.longest:
            raise ValidationError(Message(f"must be at most {self.longest} characters", "out-of-range"))
        return value

    def document(self, refer: Any) -> dict[str, Any]:
        """String with its limit."""
        return {"type": "string", "maxLength": self.longest}


class Choice(Field):
    """One of a closed list of texts or whole numbers."""

    def __init__(self, choices: Sequence[str | int], description: str = "", *, name: str = "", **more: Any) -> None:
        """Keep the list, and its name where it is a component of its own."""
        self.choices, self.list_name = tuple(choices), name
        super().__init__(description, **more)

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> str | int:
        # 1 == True and 1 == 1.0; JSON has one number type, so 1.0 is 1, but true is not.
        if not isinstance(value, bool) and isinstance(value, str | int | float):
            for choice in self.choices:
                if value == choice:
                    return choice
        near = self.choices
        if len(self.choices) > MANY:
            texts = [choice for choice in self.choices if isinstance(choice, str)]
            near = tuple(get_close_matches(str(value), texts, n=3, cutoff=0.4)) or self.choices[:3]
        raise ValidationError(unknown_choice(near, len(self.choices)))

    def document(self, refer: Any) -> dict[str, Any]:
        """Constant or enumeration, by reference where it has a name."""
        if self.list_name:
            return {"$ref": refer(self)}
        return {"const": self.choices[0]} if len(self.choices) == 1 else self.listed()

    def listed(self) -> dict[str, Any]:
        """Enumeration."""
        return {"enum": list(self.choices)}


def unknown_choice(near: Sequence[str | int], of: int | None = None) -> Message:
    """Message for a value that is none of the choices; ``near`` are those it names, ``of`` how many there are."""
    of = len(near) if of is None else of
    listed = ", ".join(f'"{choice}"' if isinstance(choice, str) else str(choice) for choice in near)
    if len(near) < of:
        listed += f" and {of - len(near)} more"
    return Message(f"must be {'one of ' if of > 1 else ''}{listed}", "unknown-choice")


class Named(Choice):
    """One of a closed list of names, each of which stands for an object."""

    def __init__(self, names: Sequence[str | int], makes: Callable[[str], Any], name: str) -> None:
        """Keep the names and what they make."""
        self.makes = makes
        super().__init__(names, name=name)

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> Any:
        return self.makes(str(super()._deserialize(value, attr, data, **kwargs)))


class Coded(Text):
    """Text that has a form."""

    def __init__(self, expression: str, message: str, description: str = "", *, longest: int, **more: Any) -> None:
        """Keep the form, and the message that says what would be right."""
        self.expression, self.message = expression, message
        super().__init__(description, longest=longest, **more)

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> str:
        text = super()._deserialize(value, attr, data, **kwargs)
        if not re.fullmatch(self.expression, text):
            raise ValidationError(Message(self.message, "unknown-choice"))
        return text

    def document(self, refer: Any) -> dict[str, Any]:
        """String of that form."""
        return {"type": "string", "pattern": self.expression}


class Pair(Field):
    """Exactly two values of one field: one a part, part 1 first."""

    def __init__(self, inner: Field, description: str = "", **more: Any) -> None:
        """Keep the field of each."""
        self.inner = inner
        super().__init__(description, **more)

    def quick(self, value: Any) -> tuple[Any, ...]:
        """Both values."""
        if not isinstance(value, list) or len(value) != 2:
            raise UNSOUND
        return (self.inner.quick(value[0]), self.inner.quick(value[1]))

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> tuple[Any, ...]:
        if not isinstance(value, list):
            raise ValidationError(Message("must be a list of two, part 1 first", "wrong-type"))
        if len(value) != 2:
            raise ValidationError(Message(f"must have two entries, part 1 first; it has {len(value)}", "wrong-count"))
        loaded, errors = [], {}
        for index, entry in enumerate(value):
            try:
                loaded.append(self.inner.deserialize(entry, str(index), None, **kwargs))
            except ValidationError as error:
                errors[index] = error.messages
        if errors:
            raise ValidationError(errors)
        return tuple(loaded)

    def document(self, refer: Any) -> dict[str, Any]:
        """Array of two."""
        return {"type": "array", "items": self.inner.component(refer), "minItems": 2, "maxItems": 2}


class Entries(Field):
    """List of values of one field, from ``least`` to ``most`` of them."""

    def __init__(
        self, inner: Field, what: str, description: str = "", *, least: int = 1, most: int, **more: Any
    ) -> None:
        """Keep the field of each, what they are called in a message, and how many there may be."""
        self.inner, self.what, self.least, self.most = inner, what, least, most
        super().__init__(description, **more)

    def quick(self, value: Any) -> tuple[Any, ...]:
        """Every value."""
        if not isinstance(value, list) or not self.least <= len(value) <= self.most:
            raise UNSOUND
        return tuple([self.inner.quick(entry) for entry in value])

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> tuple[Any, ...]:
        if not isinstance(value, list):
            raise ValidationError(Message(f"must be a list of {self.what}", "wrong-type"))
        if not self.least <= len(value) <= self.most:
            raise ValidationError(Message(f"must have from {self.least} to {self.most} entries", "wrong-count"))
        loaded, errors = [], {}
        for index, entry in enumerate(value):
            try:
                loaded.append(self.inner.deserialize(entry, str(index), None, **kwargs))
            except ValidationError as error:
                errors[index] = error.messages
        if errors:
            raise ValidationError(errors)
        return tuple(loaded)

    def document(self, refer: Any) -> dict[str, Any]:
        """Array within its limits."""
        return {
            "type": "array",
            "items": self.inner.document(refer),
            "minItems": self.least,
            "maxItems": self.most,
        }


class Object(Field):
    """Nested object of one schema."""

    def __init__(self, schema: Any, description: str = "", **more: Any) -> None:
        """Keep the schema instance."""
        self.schema = schema
        super().__init__(description, **more)

    def quick(self, value: Any) -> Any:
        """Object of the schema."""
        return self.schema.quick(value)

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> Any:
        return self.schema.thorough(value)

    def document(self, refer: Any) -> dict[str, Any]:
        """Reference to the schema's component."""
        return {"$ref": refer(self.schema)}


class Variant(Field):
    """Nested object whose schema is chosen by the value of one of its own fields; several values may share a schema."""

    def __init__(self, by: str, schemas: Mapping[str, Any], description: str = "", **more: Any) -> None:
        """Keep the deciding field and the schema of each of its values."""
        self.by, self.schemas = by, dict(schemas)
        super().__init__(description, **more)

    def quick(self, value: Any) -> Any:
        """Object of the schema that its deciding field names."""
        try:
            schema = self.schemas[value[self.by]]
        except (KeyError, TypeError) as error:
            raise UNSOUND from error
        return schema.quick(value)

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> Any:
        if not isinstance(value, dict):
            raise ValidationError(NOT_AN_OBJECT)
        if self.by not in value:
            raise ValidationError({self.by: [MISSING]})
        chosen = value[self.by]
        if not isinstance(chosen, str) or chosen not in self.schemas:
            listed = ", ".join(f'"{name}"' for name in self.schemas)
            raise ValidationError({self.by: [Message(f"must be one of {listed}", "unknown-choice")]})
        return self.schemas[chosen].thorough(value)

    def document(self, refer: Any) -> dict[str, Any]:
        """One of the schemas, by the value of the deciding field."""
        references = {name: refer(schema) for name, schema in self.schemas.items()}
        return {
            "oneOf": [{"$ref": reference} for reference in dict.fromkeys(references.values())],
            "discriminator": {"propertyName": self.by, "mapping": references},
        }


class Either(Field):
    """Nested object whose schema is chosen by the field that is present; the last schema is taken where none is."""

    def __init__(self, choices: Sequence[tuple[tuple[str, ...], Any]], description: str = "", **more: Any) -> None:
        """Keep each schema with the fields that choose it."""
        self.choices_by_field = tuple(choices)
        super().__init__(description, **more)

    def quick(self, value: Any) -> Any:
        """Object of the schema that its fields choose."""
        if not isinstance(value, dict):
            raise UNSOUND
        return self._chosen(value).quick(value)

    def _chosen(self, value: Mapping[str, Any]) -> Any:
        """Schema that the fields of an object choose."""
        for present, schema in self.choices_by_field:
            for name in present:
                if name in value:
                    return schema
        return self.choices_by_field[-1][1]

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> Any:
        if not isinstance(value, dict):
            raise ValidationError(NOT_AN_OBJECT)
        return self._chosen(value).thorough(value)

    def document(self, refer: Any) -> dict[str, Any]:
        """One of the schemas."""
        return {"oneOf": [{"$ref": refer(schema)} for _, schema in self.choices_by_field]}


class ChoiceOrObject(Field):
    """Text of a closed list, or an object that spells it out."""

    def __init__(self, choice: Choice, schema: Any, description: str = "", **more: Any) -> None:
        """Keep both forms."""
        self.choice, self.schema = choice, schema
        super().__init__(description, **more)

    def quick(self, value: Any) -> Any:
        """Either form."""
        return self.schema.quick(value) if isinstance(value, dict) else self.choice.quick(value)

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> Any:
        if isinstance(value, dict):
            return self.schema.thorough(value)
        return self.choice.deserialize(value)

    def document(self, refer: Any) -> dict[str, Any]:
        """Either form."""
        return {"oneOf": [self.choice.document(refer), {"$ref": refer(self.schema)}]}
