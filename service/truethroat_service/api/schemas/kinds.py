"""A request body of several kinds."""

from collections.abc import Callable, Mapping
from typing import Any, ClassVar

from marshmallow import Schema, ValidationError

from ..messages import NOT_AN_OBJECT, Message


class KindsSchema(Schema):
    """Body whose schema goes by its ``kind``; a body that names none is of the first."""

    kinds: ClassVar[Mapping[str, Schema]]
    name = "AsWeldedRequest"

    def load(self, data: Any, **kwargs: Any) -> Any:
        """Load by the schema of its kind."""
        if not isinstance(data, dict):
            raise ValidationError({"_schema": [NOT_AN_OBJECT]})
        kind = data.get("kind", next(iter(self.kinds)))
        if not isinstance(kind, str) or kind not in self.kinds:
            listed = ", ".join(f'"{name}"' for name in self.kinds)
            raise ValidationError({"kind": [Message(f"must be one of {listed}", "unknown-choice")]})
        return self.kinds[kind].load(data, **kwargs)

    def document(self, refer: Callable[[Schema], str]) -> dict[str, Any]:
        """One of the schemas; no discriminator, for the field may be left out."""
        return {"oneOf": [{"$ref": refer(schema)} for schema in self.kinds.values()]}
