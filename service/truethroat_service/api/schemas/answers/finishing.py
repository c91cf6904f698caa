"""Shapes of answers of ``/v1/grind-allowance`` and ``/v1/bevel-depth``."""

from .shapes import AREA, LENGTH, Json, listed, nullable, record, ref, result, text

_REMEDY_SIZES = {"depth": LENGTH, "face_height": LENGTH, "radius": LENGTH, "throat": LENGTH}
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
    "allowance": {**LENGTH, "description": "Most that may come off along the throat line, from the face as welded."},
    "leave": nullable(LENGTH),
    "largest_radius": nullable(LENGTH),
    "remedies": listed(ref("Remedy")),
}

COMPONENTS: dict[str, Json] = {
    "ThroatBudget": record(
        "Contributions to the throat, adding up to as_welded, and what a finish leaves of it.",
        dict.fromkeys(_BUDGET_LINES, LENGTH),
    ),
    "Remedy": record(
        "What would keep the throat.",
        {
            "do": {"type": "string", "enum": ["bevel", "leave-face", "smaller-radius", "weld-second-side"]},
            "remaining": LENGTH,
            "counts": listed(text()),
        },
        _REMEDY_SIZES,
    ),
    "Creditable": record(
        "A budget that counts only what is measured or proven and what the code credits, with what follows from it.",
        {**dict.fromkeys(_BUDGET_LINES, LENGTH), "verdict": ref("Verdict"), **_FINISHING},
    ),
    "GrindAllowanceAnswer": result(
        "What may be ground off, and what must stay.",
        {
            "budget": ref("ThroatBudget"),
            **_FINISHING,
            "judged_on": {"type": "string", "enum": ["nominal", "worst-case"]},
            "creditable": ref("Creditable"),
        },
    ),
    "Alternative": record(
        "Another way to the same throat.",
        {"do": text(), "size": LENGTH, "area": nullable(AREA), "filler": nullable(ref("DepositedMetal"))},
    ),
    "BevelDepthAnswer": result(
        "Preparation to cut.",
        {
            "depth": nullable(LENGTH),
            "setback": nullable(LENGTH),
            "land": nullable(LENGTH),
            "deduction": LENGTH,
            "budget": nullable(ref("ThroatBudget")),
            "area": nullable(AREA),
            "filler": nullable(ref("DepositedMetal")),
            "callout": nullable(record("Preparation as drawing text.", {"iso_2553": text(), "aws_a2_4": text()})),
            "alternatives": listed(ref("Alternative")),
        },
    ),
}
