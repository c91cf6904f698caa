"""Shapes of answers, as JSON schema: answers are built as plain dictionaries, and tests hold them against these.

Answers are open: a client must pass over fields it does not know.
"""

from collections.abc import Mapping
from typing import Any

from ...application.answers import Verdict
from ...application.quantities import AREA, FORCE_PER_LENGTH, LENGTH, MASS_PER_LENGTH, STRESS, Dimension

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


_LENGTH, _FORCE = ref("LengthAnswer"), ref("ForcePerLengthAnswer")
_AREA, _MASS = ref("AreaAnswer"), ref("MassPerLengthAnswer")

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


def _result(description: str, own: Mapping[str, Json]) -> Json:
    """Answer of a calculation."""
    return record(description, {**_COMMON_REQUIRED, **own}, _COMMON_OPTIONAL)


_SIZE = {"leg": _LENGTH, "throat": _LENGTH, "source": text()}
_REMEDY_SIZES = {"depth": _LENGTH, "face_height": _LENGTH, "radius": _LENGTH, "throat": _LENGTH}
_BUDGET_LINES = (
    "theoretical",
    "prepared_depth",
    "deduction",
    "penetration",
    "face",
    "cap",
    "as_welded",
    "removed",
    "remaining",
    "remaining_worst_case",
    "remaining_root_sum_square",
    "required",
    "margin",
)
_FINISHING: dict[str, Json] = {
    "allowance": {**_LENGTH, "description": "Most that may come off along the throat line, from the face as welded."},
    "leave": nullable(_LENGTH),
    "largest_radius": nullable(_LENGTH),
    "remedies": listed(ref("Remedy")),
}

COMPONENTS: dict[str, Json] = {
    "LengthAnswer": answered(LENGTH),
    "ForcePerLengthAnswer": answered(FORCE_PER_LENGTH),
    "AreaAnswer": answered(AREA),
    "MassPerLengthAnswer": answered(MASS_PER_LENGTH),
    "StressAnswer": answered(STRESS),
    "Verdict": {"type": "string", "enum": [verdict.value for verdict in Verdict]},
    "Caution": record("What the figures rest on or leave out.", {"code": text(), "text": text()}, {"source": text()}),
    "Provenance": record(
        "What the answer comes from.",
        {
            "rule_set": nullable(text()),
            "clauses": listed(text()),
            "editions": listed(text()),
            "parameters": {"type": "object", "additionalProperties": number()},
            "engine_version": text(),
            "api_version": text(),
            "fingerprint": text("SHA-256 of the request in engine units with its defaults filled in."),
        },
    ),
    "WorkingStep": record(
        "One step: a formula, what went in and what came out. A step's symbol is an argument of a later one.",
        {
            "symbol": text(),
            "meaning": text(),
            "expression": text(),
            "with": {
                "type": "object",
                "additionalProperties": record("Argument.", {"value": {"type": ["number", "boolean"]}, "unit": text()}),
            },
            "value": number(),
            "unit": text(),
            "source": text(),
        },
    ),
    "FilletSize": record("Size of a fillet.", _SIZE),
    "SpecifiedFilletSize": record(
        "Size to specify.", {**_SIZE, "passes": {"type": ["integer", "null"], "description": "Least number of passes."}}
    ),
    "FilletSizeAnswer": _result(
        "Fillet to specify.",
        {
            "required": {**ref("FilletSize"), "description": "What the weld metal needs."},
            "minimum": ref("FilletSize"),
            "maximum": nullable(ref("FilletSize")),
            "specify": nullable(ref("SpecifiedFilletSize")),
            "governs": {
                "type": "string",
                "enum": [
                    "load",
                    "minimum-size",
                    "minimum-length",
                    "root-gap",
                    "full-strength",
                    "thin-part",
                    "base-metal",
                ],
            },
            "utilisation": nullable(number("Greatest use made of weld or parts at the size tried.")),
            "strength": nullable(
                record(
                    "Design or allowable force per length of one weld, in the load's direction, at the size tried.",
                    {"weld": _FORCE, "base_metal": {**listed(_FORCE), "minItems": 2, "maxItems": 2}},
                )
            ),
            "length": nullable(
                record("Length of one weld.", {"given": _LENGTH, "effective": _LENGTH, "factor": number()})
            ),
        },
    ),
    "ThroatBudget": record(
        "Contributions to the throat, adding up to as_welded, and what a finish leaves of it.",
        dict.fromkeys(_BUDGET_LINES, _LENGTH),
    ),
    "Remedy": record(
        "What would keep the throat.",
        {
            "do": {"type": "string", "enum": ["bevel", "leave-face", "smaller-radius", "weld-second-side"]},
            "remaining": _LENGTH,
            "counts": listed(text()),
        },
        _REMEDY_SIZES,
    ),
    "Creditable": record(
        "A budget that counts only what is measured or proven and what the code credits, with what follows from it.",
        {**dict.fromkeys(_BUDGET_LINES, _LENGTH), "verdict": ref("Verdict"), **_FINISHING},
    ),
    "GrindAllowanceAnswer": _result(
        "What may be ground off, and what must stay.",
        {
            "budget": ref("ThroatBudget"),
            **_FINISHING,
            "judged_on": {"type": "string", "enum": ["nominal", "worst-case"]},
            "creditable": ref("Creditable"),
        },
    ),
    "DepositedMetal": record("Deposited metal.", {"mass_per_length": _MASS}),
    "Alternative": record(
        "Another way to the same throat.",
        {"do": text(), "size": _LENGTH, "area": nullable(_AREA), "filler": nullable(ref("DepositedMetal"))},
    ),
    "BevelDepthAnswer": _result(
        "Preparation to cut.",
        {
            "depth": nullable(_LENGTH),
            "setback": nullable(_LENGTH),
            "land": nullable(_LENGTH),
            "deduction": _LENGTH,
            "budget": nullable(ref("ThroatBudget")),
            "area": nullable(_AREA),
            "filler": nullable(ref("DepositedMetal")),
            "callout": nullable(record("Preparation as drawing text.", {"iso_2553": text(), "aws_a2_4": text()})),
            "alternatives": listed(ref("Alternative")),
        },
    ),
    "ServiceAnswer": record(
        "What this service is.",
        {
            "service": text(),
            "service_version": text(),
            "api_version": text(),
            "engine_version": text(),
            "rule_sets": listed(record("Rule set.", {"id": text(), "title": text()})),
        },
    ),
    "RuleSetsAnswer": record(
        "Rule sets with their clauses and limits.",
        {
            "rule_sets": listed(
                record(
                    "Rule set.",
                    {
                        "id": text(),
                        "title": text(),
                        "editions": listed(text()),
                        "clauses": listed(text()),
                        "parameters": {"type": "object", "additionalProperties": number()},
                        "limits": listed(record("Limit of scope.", {"text": text(), "source": text()})),
                    },
                )
            )
        },
    ),
    "MaterialsAnswer": record(
        "Base metals.",
        {
            "materials": listed(
                record(
                    "Base metal with its strengths by thickness, over ... up to and including.",
                    {
                        "id": text(),
                        "standard": text(),
                        "family": text(),
                        "form": text(),
                        "beta_w": nullable(number()),
                        "source": text(),
                        "bands": listed(
                            record(
                                "Strengths over a range of thickness.",
                                {
                                    "thickness_over": _LENGTH,
                                    "thickness_to": nullable(_LENGTH),
                                    "yield_strength": ref("StressAnswer"),
                                    "tensile_strength": ref("StressAnswer"),
                                },
                            )
                        ),
                    },
                )
            )
        },
    ),
    "FillerMetalsAnswer": record(
        "Filler metals.",
        {
            "filler_metals": listed(
                record(
                    "Filler metal.",
                    {
                        "id": text(),
                        "standard": text(),
                        "family": text(),
                        "tensile_strength": ref("StressAnswer"),
                        "matches": text(),
                        "source": text(),
                    },
                )
            )
        },
    ),
    "ProcessesAnswer": record(
        "Welding processes and positions, each with every code it answers to.",
        {
            "processes": listed(
                record("Process.", {"id": text(), "title": text(), "iso_4063": listed(text()), "source": text()})
            ),
            "positions": listed(
                record(
                    "Position.",
                    {
                        "id": text(),
                        "title": text(),
                        "orientation": text(),
                        "equivalents": listed(text()),
                        "source": text(),
                    },
                )
            ),
        },
    ),
    "HealthAnswer": record("Health of the service.", {"status": text()}, {"checks": {"type": "object"}}),
    "ProblemTypeAnswer": record("What a problem type means.", {"type": text(), "title": text(), "description": text()}),
    "Problem": record(
        "Problem document (RFC 9457).",
        {
            "type": text(),
            "title": text(),
            "status": {"type": "integer"},
            "detail": text(),
            "instance": text(),
            "request_id": text(),
            "errors": listed(
                record(
                    "One fault.",
                    {"pointer": text("JSON pointer into the request."), "detail": text(), "code": text()},
                )
            ),
        },
    ),
}
