"""Teaches apispec our fields: what each accepts, by reference to named components."""

from typing import Any

from apispec import APISpec
from apispec.ext.marshmallow import MarshmallowPlugin
from apispec.ext.marshmallow.common import make_schema_key
from marshmallow import Schema

from ..application.core.quantities import Dimension
from .fields import Field, dimension_schema
from .schemas.kinds import KindsSchema


def component_name(schema: Any) -> str:
    """Name of a schema's component: its title, or its class without ``Schema``."""
    kind = schema if isinstance(schema, type) else type(schema)
    return str(getattr(kind, "title", "") or kind.__name__.removesuffix("Schema"))


class FieldPlugin(MarshmallowPlugin):
    """Marshmallow plug-in that documents our fields."""

    def __init__(self) -> None:
        """Name components by :func:`component_name`."""
        super().__init__(schema_name_resolver=component_name)
        self._named: dict[str, object] = {}

    def init_spec(self, spec: APISpec) -> None:
        """Attach our fields to the converter of a document."""
        super().init_spec(spec)
        assert self.converter is not None  # noqa: S101 - made by init_spec

        def document(converter: Any, field: Any, **kwargs: Any) -> dict[str, Any]:
            """JSON schema of one of our fields; nothing for others."""
            return field.document(self._refer) if isinstance(field, Field) else {}

        self.converter.add_attribute_function(document)  # type: ignore[no-untyped-call]

    def schema_helper(  # type: ignore[override]
        self, name: str, _: Any, schema: Any = None, **kwargs: Any
    ) -> dict[str, Any] | None:
        """JSON schema of a component; of a body of several kinds, one of theirs."""
        if isinstance(schema, KindsSchema):
            assert self.converter is not None  # noqa: S101 - made by init_spec
            self.converter.refs[make_schema_key(schema)] = name
            return schema.document(self._refer)
        made: dict[str, Any] | None = super().schema_helper(name, _, schema, **kwargs)  # type: ignore[no-untyped-call]
        return made

    def _refer(self, target: Schema | Dimension) -> str:
        """Reference to a component, made on first use."""
        assert self.spec is not None  # noqa: S101 - set by init_spec
        named: object = target
        if isinstance(target, Dimension):
            name = "".join(word.capitalize() for word in target.name.split())
            if name not in self.spec.components.schemas:
                self.spec.components.schema(name, dimension_schema(target))
                self._named[name] = named
        else:
            name, named = component_name(target), type(target)
            if name not in self.spec.components.schemas:
                self.spec.components.schema(name, schema=target)
                self._named[name] = named
        if self._named.get(name) is not named:
            raise ValueError(f"two components are called {name}")
        return f"#/components/schemas/{name}"
