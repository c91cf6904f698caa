"""Shapes of answers of ``/v1/bevel-depth``."""

from .shapes import AREA, LENGTH, Json, listed, nullable, record, ref, result, text

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
COMPONENTS: dict[str, Json] = {
    "ThroatBudget": record(
        "Contributions to the throat, adding up to as_welded, and what a finish leaves of it.",
        dict.fromkeys(_BUDGET_LINES, LENGTH),
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
