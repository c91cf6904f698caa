"""Shapes of answers of ``/v1/as-welded``."""

from .shapes import AREA, LENGTH, MASS_PER_LENGTH, Json, listed, nullable, number, record, ref, result, text

COMPONENTS: dict[str, Json] = {
    "ThroatAsWelded": record(
        "Throat of a fillet as welded: of its legs; with all penetration; with what is measured or proven; with what is"
        " proven, which strength and the verdict rest on; that at the worst of the tolerances; and the one required.",
        dict.fromkeys(("theoretical", "physical", "creditable", "effective", "worst_case", "required"), LENGTH),
    ),
    "QualityLimit": record(
        "One limit of the level or code, and how the weld stands against it.",
        {
            "name": text(),
            "value": LENGTH,
            "allowed": {**nullable(LENGTH), "description": "Null where nothing is permitted, or without limit."},
            "verdict": {"type": "string", "enum": ["within", "over", "not-permitted"]},
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
        {"do": {"type": "string", "enum": ["accept", "add-pass", "dress-face", "repair-undercut", "close-gap"]}},
        {"leg": LENGTH},
    ),
    "AsWeldedAnswer": result(
        "What a fillet is worth as welded.",
        {
            "throat": ref("ThroatAsWelded"),
            "size": {**LENGTH, "description": "Leg of the largest equal-leg triangle inscribed."},
            "limits": listed(ref("QualityLimit")),
            "strength_left": number("Worst-case throat over the required throat."),
            "overweld": ref("Overweld"),
            "actions": listed(ref("WeldAction")),
        },
    ),
}
