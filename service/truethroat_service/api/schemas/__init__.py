"""Shapes of requests and answers, as the document publishes and the service enforces them."""

from collections.abc import Mapping
from typing import Any, ClassVar

from marshmallow import Schema, post_load

from ...application.core.answers import Common
from ..fields import Choice, Flag, Text
from ..messages import NOT_AN_OBJECT, unknown


class ClosedSchema(Schema):
    """Schema that knows all its fields, and loads into the use case's own dataclass."""

    makes: ClassVar[Any] = None
    title: ClassVar[str] = ""

    def __init__(self) -> None:
        """Word the refusals: which fields there are."""
        super().__init__()
        self.error_messages = {
            **self.error_messages,
            "type": NOT_AN_OBJECT,
            "unknown": unknown(self.load_fields),
        }

    @property
    def name(self) -> str:
        return self.title or type(self).__name__.removesuffix("Schema")

    def thorough(self, data: Any) -> Any:
        return self.load(data)

    quick = thorough

    def document(self, refer: Any) -> dict[str, Any]:
        required = [name for name, field in self.load_fields.items() if field.required]
        return {
            "type": "object",
            "properties": {name: field.component(refer) for name, field in self.load_fields.items()},
            **({"required": required} if required else {}),
            "additionalProperties": False,
        }

    @post_load
    def _make(self, data: Mapping[str, Any], **kwargs: Any) -> Any:
        """Build the dataclass; a field left out takes the dataclass's default."""
        return self.makes(**data)


class RequestSchema(ClosedSchema):
    """Schema of a calculation's request, with the fields they all share."""

    units = Choice(("metric", "us"), "Units of the answer.", default="metric")
    mark = Text("The caller's own mark for this joint, given back with the answer.", longest=200)
    working = Flag("Whether the answer shows its working.", default=False)

    @post_load
    def _make(self, data: Mapping[str, Any], **kwargs: Any) -> Any:
        """Build the request, the shared fields in their own place."""
        own = {name: value for name, value in data.items() if name not in ("units", "mark", "working")}
        common = {name: data[name] for name in ("units", "mark", "working") if name in data}
        return self.makes(common=Common(**common), **own)
