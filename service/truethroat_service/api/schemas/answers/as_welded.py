"""Shapes of answers of ``/v1/as-welded``."""

from ....application.as_welded import REPAIRS
from .shapes import AREA, LENGTH, MASS_PER_LENGTH, Json, listed, nullable, number, record, ref, result, text

_MEASURE: Json = {"anyOf": [LENGTH, ref("AngleAnswer"), {"type": "null"}]}

COMPONENTS: dict[str, Json] = {
    "ThroatAsWelded": record(
        "Throat of a weld as welded: as drawn through its legs or thickness; less what is missing, and with all"
        " penetration; with what is measured or proven; with what is proven, which strength and the verdict rest on;"
        " that at the worst of the tolerances; and the one required.",
        dict.fromkeys(("theoretical", "physical", "creditable", "effective", "worst_case", "required"), LENGTH),
    ),
    "QualityLimit": record(
        "One limit of the level or code, and how the weld stands against it.",
        {
            "name": text(),
            "value": {**_MEASURE, "description": "Worst by the gauge; null for what is there or not."},
            "allowed": {**_MEASURE, "description": "Null where nothing is permitted, or without limit."},
            "extent": {**nullable(LENGTH), "description": "Length told; null where none was, or no length counts."},
            "extent_allowed": {**nullable(LENGTH), "description": "Length allowed; null where no length counts."},
            "verdict": {"type": "string", "enum": ["within", "over", "under", "not-permitted"]},
            "note": text(),
            "source": text(),
        },
    ),
    "Overweld": record(
        "Metal against that of the flat equal-leg fillet required; negative where it is missing.",
        {"metal_ratio": number(), "extra_area": AREA, "extra_mass": MASS_PER_LENGTH},
    ),
    "WeldAction": record(
        "What to do with the weld.",
        {"do": {"type": "string", "enum": ["accept", *REPAIRS]}},
        {"leg": {**LENGTH, "description": "Leg to weld up to, rounded up to the step."}},
    ),
    "AsWeldedAnswer": result(
        "What a weld is worth as welded.",
        {
            "throat": ref("ThroatAsWelded"),
            "size": {
                **nullable(LENGTH),
                "description": "Leg of the largest equal-leg triangle inscribed; null of a butt.",
            },
            "limits": listed(ref("QualityLimit")),
            "quality_kept": {"type": "boolean", "description": "Whether every limit checked is kept."},
            "strength_left": number("Worst-case throat over the required throat."),
            "overweld": {**nullable(ref("Overweld")), "description": "Null of a butt."},
            "actions": listed(ref("WeldAction")),
        },
    ),
}
