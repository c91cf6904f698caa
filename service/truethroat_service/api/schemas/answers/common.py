"""Shapes that every answer uses: quantities, verdict, provenance, problems."""

from ....application.core.codes import Verdict
from ....application.core.quantities import (
    ANGLE,
    AREA,
    ENERGY_PER_LENGTH,
    FORCE,
    FORCE_PER_LENGTH,
    HAND_FORCE,
    LENGTH,
    LINE_SECOND_MOMENT,
    MOMENT,
    SPEED,
    STRESS,
    TEMPERATURE,
    TIME,
)
from ....application.core.quantities import MASS_PER_LENGTH as MASS
from .shapes import MASS_PER_LENGTH, Json, answered, listed, nullable, number, record, text

COMPONENTS: dict[str, Json] = {
    "LengthAnswer": answered(LENGTH),
    "ForcePerLengthAnswer": answered(FORCE_PER_LENGTH),
    "AreaAnswer": answered(AREA),
    "AngleAnswer": answered(ANGLE),
    "ForceAnswer": answered(FORCE),
    "HandForceAnswer": answered(HAND_FORCE),
    "MomentAnswer": answered(MOMENT),
    "LineSecondMomentAnswer": answered(LINE_SECOND_MOMENT),
    "MassPerLengthAnswer": answered(MASS),
    "StressAnswer": answered(STRESS),
    "EnergyPerLengthAnswer": answered(ENERGY_PER_LENGTH),
    "SpeedAnswer": answered(SPEED),
    "TemperatureAnswer": answered(TEMPERATURE),
    "TimeAnswer": answered(TIME),
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
    "DepositedMetal": record("Deposited metal.", {"mass_per_length": MASS_PER_LENGTH}),
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
