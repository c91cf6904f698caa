"""Building blocks of answer shapes, as JSON schema."""

from collections.abc import Mapping
from typing import Any

from ....application.core.quantities import Dimension

Json = dict[str, Any]


def ref(name: str) -> Json:
    """Reference to a component."""
    return {"$ref": f"#/components/schemas/{name}"}


def nullable(schema: Json) -> Json:
    """Schema or null."""
    return {"anyOf": [schema, {"type": "null"}]}


def listed(schema: Json) -> Json:
    """Array of a schema."""
    return {"type": "array", "items": schema}


def record(description: str, required: Mapping[str, Json], optional: Mapping[str, Json] | None = None) -> Json:
    """Open object."""
    return {
        "type": "object",
        "description": description,
        "properties": {**required, **(optional or {})},
        "required": list(required),
    }


def text(description: str = "") -> Json:
    """String."""
    return {"type": "string"} | ({"description": description} if description else {})


def number(description: str = "") -> Json:
    """Number."""
    return {"type": "number"} | ({"description": description} if description else {})


def answered(dimension: Dimension) -> Json:
    """Quantity of an answer; it may be sent back as it is."""
    return record(
        f"A {dimension.name} of an answer.",
        {
            "value": number("Exact."),
            "unit": {"type": "string", "enum": list(dict.fromkeys((dimension.metric, dimension.us)))},
            "text": text("As the shop writes it."),
        },
    )


LENGTH, FORCE, FORCE_PER_LENGTH = ref("LengthAnswer"), ref("ForceAnswer"), ref("ForcePerLengthAnswer")
AREA, MASS_PER_LENGTH, STRESS = ref("AreaAnswer"), ref("MassPerLengthAnswer"), ref("StressAnswer")

_COMMON_REQUIRED: dict[str, Json] = {
    "verdict": ref("Verdict"),
    "reasons": listed(text()),
    "cautions": listed(ref("Caution")),
    "provenance": ref("Provenance"),
}
_COMMON_OPTIONAL: dict[str, Json] = {
    "mark": text("The request's own mark."),
    "working": {**listed(ref("WorkingStep")), "description": "Steps in the order computed, in engine units."},
}


def result(description: str, own: Mapping[str, Json]) -> Json:
    """Answer of a calculation: its own fields and what every answer carries."""
    return record(description, {**_COMMON_REQUIRED, **own}, _COMMON_OPTIONAL)
