"""Capabilities that still have a schema and an answer by hand."""

from types import SimpleNamespace

from ..application.as_welded import as_welded
from ..application.as_welded.examples import EXAMPLES as AS_WELDED
from .schemas.as_welded import AsWeldedSchema

TRANSITIONAL = (
    SimpleNamespace(
        capability=SimpleNamespace(
            use_case=as_welded,
            operation="as_welded",
            path="as-welded",
            meaning="Whether a weld as gauged has its throat and keeps its quality level.",
            summary="What a weld is worth as gauged.",
            examples=AS_WELDED,
            answer="AsWeldedAnswer",
        ),
        schema=AsWeldedSchema(),
    ),
)
