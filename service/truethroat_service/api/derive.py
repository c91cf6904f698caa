"""Schemas of requests, derived from their dataclasses: a field is written once, with its marks, in the dataclass."""

import dataclasses as dc
from collections.abc import Mapping
from functools import cache
from typing import Any, get_args, get_origin

from marshmallow import Schema as MarshmallowSchema
from marshmallow import ValidationError

from ..application.core.answers import Common
from ..application.core.quantities import render
from ..application.core.shape import (
    MISSING,
    As,
    By,
    Field,
    Form,
    Hint,
    Longest,
    Many,
    Numbered,
    OneOf,
    OrName,
    Pattern,
    Stated,
    ToldBy,
    Within,
    choices_of,
    fields_of,
    taken_apart,
    whole_form,
)
from . import fields
from .fields import UNSOUND
from .messages import NOT_AN_OBJECT, unknown

COMMON = tuple(fields_of(Common))


class Schema(MarshmallowSchema):
    """Schema of one object of a request, which knows all its fields; it loads into what the object makes."""

    def __init__(self, kind: type | Form) -> None:
        """Build a field for each field of a dataclass or a form; those of ``common`` stand beside the others."""
        form = kind if isinstance(kind, Form) else whole_form(kind)
        self.form, self.name, self.words = form, form.name, form.words
        self.shares_common = "common" in form.fields and taken_apart(form.fields["common"].hint).type is Common
        own = {name: field for name, field in form.fields.items() if not (self.shares_common and name == "common")}
        given = {**(fields_of(Common) if self.shares_common else {}), **own}
        self._declared_fields = {name: schema_field(field) for name, field in given.items()}
        super().__init__()
        self.error_messages = {**self.error_messages, "type": NOT_AN_OBJECT, "unknown": unknown(self.load_fields)}
        self.own_fields: dict[str, fields.Field] = dict(self.load_fields)  # type: ignore[arg-type]
        self._readers = {name: field.quick for name, field in self.own_fields.items()}
        self._required = frozenset(name for name, field in self.own_fields.items() if field.required)

    def load(self, data: Any, **kwargs: Any) -> Any:
        """Load a body: quickly while it is sound; if it is not, once more by marshmallow, which gathers every fault."""
        try:
            return self.quick(data)
        except ValidationError:
            with fields.units_of(data):
                return self.thorough(data, **kwargs)

    def thorough(self, data: Any, **kwargs: Any) -> Any:
        """Load by marshmallow; raises ``ValidationError`` with every fault: of known fields first, then as sent."""
        try:
            loaded = super().load(data, **kwargs)
        except ValidationError as error:
            # Marshmallow finds unknown fields in a set, whose order is another in each process.
            order = [*self.own_fields, *(data if isinstance(data, dict) else ()), "_schema"]
            raise ValidationError({name: error.messages[name] for name in order if name in error.messages}) from error
        return self._made(loaded)

    def quick(self, data: Any) -> Any:
        """Load what is sound, field by field as sent; raises ``ValidationError`` at the first fault."""
        if not isinstance(data, dict):
            raise UNSOUND
        readers, loaded = self._readers, {}
        try:
            for name, value in data.items():
                loaded[name] = readers[name](value)
        except KeyError as error:
            raise UNSOUND from error
        if not self._required <= loaded.keys():
            raise UNSOUND
        return self._made(loaded)

    def _made(self, loaded: dict[str, Any]) -> Any:
        """What the object makes; a field left out takes the dataclass's default."""
        if self.shares_common:
            common = {name: loaded.pop(name) for name in COMMON if name in loaded}
            return self.form.makes(common=Common(**common), **loaded)
        return self.form.makes(**loaded)

    def document(self, refer: Any) -> dict[str, Any]:
        """JSON schema of the object."""
        required = [name for name, field in self.own_fields.items() if field.required]
        return {
            "type": "object",
            "description": self.words,
            "properties": {name: field.component(refer) for name, field in self.own_fields.items()},
            **({"required": required} if required else {}),
            "additionalProperties": False,
        }


class KindsSchema:
    """Body whose schema is chosen by its ``kind``; a body without one is of the first kind."""

    def __init__(self, name: str, kinds: Mapping[str, Schema]) -> None:
        """Keep the schema of each kind."""
        self.name, self.kinds = name, kinds

    def load(self, data: Any) -> Any:
        """Load by the schema of its kind."""
        return self._of(data).load(data)

    def quick(self, data: Any) -> Any:
        """Load what is sound by the schema of its kind."""
        return self._of(data).quick(data)

    def thorough(self, data: Any) -> Any:
        """Load by marshmallow, by the schema of its kind."""
        return self._of(data).thorough(data)

    def _of(self, data: Any) -> Schema:
        """Schema of a body's kind."""
        if not isinstance(data, dict):
            raise ValidationError({"_schema": [NOT_AN_OBJECT]})
        kind = data.get("kind", next(iter(self.kinds)))
        if not isinstance(kind, str) or kind not in self.kinds:
            raise ValidationError({"kind": [fields.unknown_choice(tuple(self.kinds))]})
        return self.kinds[kind]

    def document(self, refer: Any) -> dict[str, Any]:
        """One of the schemas; no discriminator, for the field may be left out."""
        return {"oneOf": [{"$ref": refer(schema)} for schema in self.kinds.values()]}


@cache
def schema_of(kind: type | Form) -> Schema:
    """Schema of a dataclass or a form, one for each."""
    return Schema(kind)


def request_schema(name: str, hint: Any) -> Schema | KindsSchema:
    """Schema of a request, called ``name``: of a dataclass, or of a union of them that their ``kind`` chooses."""
    if dc.is_dataclass(hint):
        return schema_of(hint)  # type: ignore[arg-type]
    kinds = {
        str(choice): schema_of(kind)
        for kind in get_args(hint)
        for choice in choices_of(taken_apart(fields_of(kind)["kind"].hint)) or ()
    }
    return KindsSchema(name, kinds)


def schema_field(field: Field) -> fields.Field:
    """Field of a schema, from its annotation and its default; an object's default is documented where it is stated."""
    hint = taken_apart(field.hint)
    more: dict[str, Any] = {"description": hint.words, "required": field.default is MISSING}
    stated = hint.mark(Stated)
    if stated is not None:
        more["default"] = stated.default
    elif isinstance(field.default, str | int | float):
        more["default"] = _wire_default(hint, field.default)
    return _typed(hint, more)


def _typed(hint: Hint, more: dict[str, Any]) -> fields.Field:
    """Field for a bare type and its marks."""
    within, numbered = hint.mark(Within), hint.mark(Numbered)
    if within is not None and get_origin(hint.type) is not tuple:
        return fields.Quantity(within.dimension, minimum=within.least, maximum=within.most, above=within.above, **more)
    choices = choices_of(hint)
    if numbered is not None and hint.type is int:
        return fields.Whole(minimum=int(numbered.least), maximum=int(numbered.most), **more)
    if numbered is not None and hint.type is float:
        return fields.Number(minimum=numbered.least, maximum=numbered.most, **more)
    sent_as, named = hint.mark(As), hint.mark(OrName)
    if sent_as is not None:
        return fields.Object(schema_of(sent_as.form), **more)
    if named is not None:
        names = fields.Named(named.names.choices, named.makes, named.names.name)
        return fields.ChoiceOrObject(names, schema_of(named.form), **more)
    if hint.mark(By) is not None or hint.mark(ToldBy) is not None:
        return _object(hint, more)
    if get_origin(hint.type) is tuple:
        return _several(hint, more)
    if choices is not None:
        listed = hint.mark(OneOf)
        return fields.Choice(choices, name="" if listed is None else listed.name, **more)
    if hint.type is bool:
        return fields.Flag(**more)
    if hint.type is str:
        return _text(hint, more)
    return _object(hint, more)


def _text(hint: Hint, more: dict[str, Any]) -> fields.Field:
    pattern, longest = hint.mark(Pattern), hint.mark(Longest)
    if longest is None:
        raise TypeError(f"a text of a request has no mark that bounds it: {hint}")
    if pattern is not None:
        return fields.Coded(pattern.expression, pattern.message, longest=longest.characters, **more)
    return fields.Text(longest=longest.characters, **more)


def _several(hint: Hint, more: dict[str, Any]) -> fields.Field:
    """Pair, or list of entries."""
    inner, *rest = get_args(hint.type)
    many = hint.mark(Many)
    entry = taken_apart(inner)
    field = _typed(entry, {"description": entry.words})
    if many is not None and rest == [Ellipsis]:
        return fields.Entries(field, many.what, least=many.least, most=many.most, **more)
    if len(rest) == 1 and rest != [Ellipsis]:
        return fields.Pair(field, **more)
    raise TypeError(f"a list of a request is neither a pair nor marked by how many there may be: {hint}")


def _object(hint: Hint, more: dict[str, Any]) -> fields.Field:
    by, told_by = hint.mark(By), hint.mark(ToldBy)
    if by is not None:
        return fields.Variant(by.field, {value: schema_of(kind) for value, kind in by.forms.items()}, **more)
    if told_by is not None:
        return fields.Either([(names, schema_of(kind)) for names, kind in told_by.forms], **more)
    return fields.Object(schema_of(hint.type), **more)


def _wire_default(hint: Hint, value: str | float) -> str | float:
    """Default as a caller would send it: a quantity as metric text."""
    within = hint.mark(Within)
    return value if within is None else render(within.dimension, float(value), "metric")["text"]
