"""Requests are read twice at most: quickly while they are sound, and by marshmallow, which words what is not."""

from __future__ import annotations

from copy import deepcopy
from dataclasses import dataclass
from typing import Annotated, Any, Literal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from marshmallow import ValidationError
from tests.api.test_document import HOLDING, ODD, _places, _set

from truethroat_service.api.derive import schema_of
from truethroat_service.api.resources import CALCULATIONS
from truethroat_service.application.core.quantities import LENGTH
from truethroat_service.application.core.shape import Form, Numbered, Within, form

SCHEMAS = {f"/v1/{calculation.capability.path}": calculation.schema for calculation in CALCULATIONS}


def _read(read: Any, body: Any) -> Any:
    """Give what a reading makes of a body, or that it refuses it."""
    try:
        return read(deepcopy(body))
    except ValidationError:
        return "refused"


@pytest.mark.parametrize(("path", "body"), HOLDING)
def test_a_sound_request_is_read_alike_both_ways(path: str, body: Any) -> None:
    """Every object a request may hold is read quickly into what the thorough reading makes of it."""
    quick = _read(SCHEMAS[path].quick, body)
    assert quick != "refused"
    assert quick == _read(SCHEMAS[path].thorough, body)


@given(st.sampled_from(HOLDING), st.data())
def test_both_readings_refuse_the_same(held: tuple[str, Any], data: st.DataObject) -> None:
    """Whatever stands in a field of a request, both readings take it for the same, or both refuse it."""
    path, body = held
    where = data.draw(st.sampled_from(list(_places(body))))
    broken = _set(body, where, data.draw(st.sampled_from(ODD)))
    assert _read(SCHEMAS[path].quick, broken) == _read(SCHEMAS[path].thorough, broken)


@dataclass(frozen=True)
class Bar:
    """Bar that a test describes."""

    kind: Literal["flat", "round"]
    width: Annotated[float, Within(LENGTH, most=50.0), "Its width."] = 10.0
    share: Annotated[float | None, Numbered(0.0, 1.0), "What is left of it."] = None


def test_a_schema_says_of_a_dataclass_what_its_marks_say() -> None:
    """Ranges, words, defaults and what is required are those of the dataclass, each written there alone."""
    component = schema_of(Bar).document(lambda target: getattr(target, "name", ""))
    assert component == {
        "type": "object",
        "description": "Bar that a test describes.",
        "properties": {
            "kind": {"enum": ["flat", "round"]},
            "width": {"$ref": "length", "description": "Its width. From 0 mm to 50 mm.", "default": "10 mm"},
            "share": {"type": "number", "minimum": 0.0, "maximum": 1.0, "description": "What is left of it."},
        },
        "required": ["kind"],
        "additionalProperties": False,
    }
    assert schema_of(Bar).load({"kind": "flat", "width": "25 mm"}) == Bar("flat", 25.0)


def test_a_form_takes_the_fields_it_names() -> None:
    """A form of a dataclass takes some of its fields, requires some more, and gives some another annotation."""
    flat: Form = form("FlatBar", "Flat bar.", Bar, "kind!", "width!", kind=Literal["flat"])
    component = schema_of(flat).document(lambda target: getattr(target, "name", ""))
    assert component["required"] == ["kind", "width"]
    assert component["properties"]["kind"] == {"const": "flat"}
    assert schema_of(flat).load({"kind": "flat", "width": "5 mm"}) == Bar("flat", 5.0)
    with pytest.raises(ValidationError):
        schema_of(flat).load({"kind": "flat", "width": "5 mm", "share": 1})
