"""Shapes of answers of ``/v1/distortion``."""

from .shapes import AREA, LENGTH, Json, listed, nullable, number, record, ref, result, text

_ANGLE = ref("AngleAnswer")


def _band(quantity: Json, description: str) -> Json:
    return record(
        description,
        {
            "low": nullable(quantity),
            "high": {**nullable(quantity), "description": "Null, as low is, where no method covers the joint."},
            "methods": listed(
                record(
                    "What one method gives.",
                    {"method": text(), "value": quantity, "source": text(), "sureness": text("How it came to us.")},
                )
            ),
            "left_out": listed(record("Method that does not cover the joint.", {"method": text(), "reason": text()})),
        },
    )


def _span(quantity: Json) -> Json:
    return nullable(
        record(
            "Least and greatest of the methods.",
            {
                "low": quantity,
                "high": quantity,
                "ratio": {
                    **nullable(record("By the methods that cover both.", {"low": number(), "high": number()})),
                    "description": "Over that of the joint asked about; null where no method covers both.",
                },
            },
        )
    )


_LENGTHS, _ANGLES = ref("LengthBand"), ref("AngleBand")
_LENGTH_OR_ANGLE: Json = {"anyOf": [LENGTH, _ANGLE]}
_CLASS = nullable(text())

COMPONENTS: dict[str, Json] = {
    "LengthBand": _band(LENGTH, "A length by several methods."),
    "AngleBand": _band(_ANGLE, "An angle by several methods."),
    "ToleranceCheck": record(
        "One estimate against every class of its table, on the upper end of its band.",
        {
            "quantity": text(),
            "nominal": LENGTH,
            "value": _LENGTH_OR_ANGLE,
            "classes": listed(
                record(
                    "Plus or minus of one class.",
                    {"class": text(), "tolerance": _LENGTH_OR_ANGLE},
                    {
                        "rise": number("Tangent of the angle."),
                        "printed_rise": number("Rise as the table prints it, rounded; both must be kept."),
                    },
                )
            ),
            "keeps": {**_CLASS, "description": "Tightest class kept; null when none is."},
            "asked": _CLASS,
            "verdict": {**nullable({"type": "string", "enum": ["within", "out"]})},
            "table": text(),
        },
    ),
    "DistortionAlternative": record(
        "Another way to weld the joint.",
        {
            "do": {"type": "string", "enum": ["over", "double-sided", "intermittent", "bevelled"]},
            "metal_ratio": number("Metal over that of the joint asked about."),
            "strength_ratio": number("Throat, times the share welded, over that of the joint asked about."),
            **dict.fromkeys(("transverse", "longitudinal", "edge_lift", "bowing"), _span(LENGTH)),
            "angular": _span(_ANGLE),
        },
        {
            "steps": {"type": "integer"},
            "leg": LENGTH,
            "root_opening": LENGTH,
            "depth": {**LENGTH, "description": "Depth of the preparation on each side."},
        },
    ),
    "DistortionAnswer": result(
        "How a joint shrinks and turns.",
        {
            "transverse": {**_LENGTHS, "description": "Shrinkage across the weld."},
            "longitudinal": {**_LENGTHS, "description": "Shortening along the weld."},
            "angular": {**_ANGLES, "description": "Turn of the joint left free; of a flange, of each of its halves."},
            "edge_lift": {**_LENGTHS, "description": "Lift of each edge of a flange."},
            "bowing": {**_LENGTHS, "description": "Bow of the member at the middle of its length."},
            "restrained_angular": {**nullable(_ANGLES), "description": "Turn of the joint as it is held."},
            "weld": record(
                "The weld metal.",
                {
                    "area": {**AREA, "description": "Of one weld."},
                    "welds": {"type": "integer"},
                    "welded_share": number(),
                },
            ),
            "iso_13920": listed(ref("ToleranceCheck")),
            "alternatives": listed(ref("DistortionAlternative")),
        },
    ),
}
