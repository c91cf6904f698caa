"""Shape of an answer of ``/v1/groove-size``."""

from .shapes import AREA, FORCE_PER_LENGTH, LENGTH, Json, listed, nullable, number, record, ref, result, text

_HOLE_LIMITS = (
    "least_width",
    "largest_width",
    "longest",
    "least_filling",
    "least_leg",
    "largest_leg",
    "least_pitch",
    "least_pitch_along",
)

COMPONENTS: dict[str, Json] = {
    "GrooveThroat": record(
        "Size of a groove.",
        {
            "throat": {**LENGTH, "description": "All sides together; of a minimum, of each side."},
            "depth": {**nullable(LENGTH), "description": "Depth cut from each side; null where none is cut to depth."},
            "source": text(),
        },
    ),
    "GroovePreparation": record(
        "Preparation as it would be made, one value chosen where its detail allows a range.",
        {
            "id": {**nullable(text()), "description": "Id of /v1/preparations; null for a groove by its form alone."},
            "ref": text("The standard's own reference."),
            "standard": nullable(text()),
            "form": text(),
            "root": text("How the root is made."),
            "angle": {**nullable(ref("AngleAnswer")), "description": "Included; of a bevel or J that of its one face."},
            "gap": LENGTH,
            "land": nullable(LENGTH),
            "depth": {**nullable(LENGTH), "description": "Cut from each side."},
            "setback": {**nullable(LENGTH), "description": "On each edge that is cut."},
            "deduction": {**LENGTH, "description": "Taken off the depth of each side."},
            "throat": {**LENGTH, "description": "All sides together."},
            "area": {**AREA, "description": "Metal deposited, without a cap."},
            "filler": ref("DepositedMetal"),
            "enough": {"type": "boolean"},
            "why": {**nullable(text()), "description": "What it lacks; null where it is enough."},
        },
    ),
    "GrooveSizeAnswer": result(
        "Groove, flare, plug or slot weld to specify.",
        {
            "required": {**nullable(ref("GrooveThroat")), "description": "What the weld metal needs."},
            "minimum": nullable(ref("GrooveThroat")),
            "specify": nullable(ref("GrooveThroat")),
            "governs": {
                "type": "string",
                "enum": [
                    "load",
                    "full-strength",
                    "full-penetration",
                    "minimum-throat",
                    "base-metal",
                    "preparation",
                ],
            },
            "utilisation": nullable(number("Greatest use made of weld or parts; null where no preparation does.")),
            "strength": nullable(
                record(
                    "Design or allowable force per length of the joint, in the load's direction.",
                    {
                        "weld": {**nullable(FORCE_PER_LENGTH), "description": "Null where the parts rule."},
                        "base_metal": {**listed(FORCE_PER_LENGTH), "minItems": 2, "maxItems": 2},
                    },
                )
            ),
            "preparation": nullable(ref("GroovePreparation")),
            "preparations": {
                **listed(ref("GroovePreparation")),
                "description": "Those that fit the joint: enough ones first, least metal first.",
            },
            "refused": {
                **listed(record("Detail that does not fit.", {"id": nullable(text()), "ref": text(), "why": text()})),
                "description": "Details of the standard that do not fit the joint, and why.",
            },
            "holes": nullable(
                record(
                    "Plugs, slots, or fillets all round holes or slots.",
                    {
                        "width": LENGTH,
                        "length": LENGTH,
                        "filling": {**nullable(LENGTH), "description": "Null of a fillet."},
                        "leg": {**nullable(LENGTH), "description": "Of a fillet."},
                        "throat": {**nullable(LENGTH), "description": "Of a fillet."},
                        "centre_line": {**nullable(LENGTH), "description": "Effective length of a fillet."},
                        "area": {**AREA, "description": "Effective area of one."},
                        "strength": {**ref("ForceAnswer"), "description": "Of one, in shear."},
                        "needed": {"type": "integer"},
                        "count": {"type": "integer"},
                        "limits": record("Null where none is ruled.", dict.fromkeys(_HOLE_LIMITS, nullable(LENGTH))),
                    },
                )
            ),
            "tee": nullable(
                record(
                    "Whether a T-butt counts as full strength.",
                    {
                        "throats_together": LENGTH,
                        "thickness": LENGTH,
                        "unwelded": LENGTH,
                        "largest_unwelded": LENGTH,
                        "full_strength": {"type": "boolean"},
                    },
                )
            ),
        },
    ),
}
