"""Every code that a caller's program may meet: verdicts, cautions, remedies and faults, each kind in one list."""

from enum import StrEnum
from typing import Literal


class Verdict(StrEnum):
    """Every verdict an answer can end in."""

    ENOUGH = "enough"
    ENOUGH_ON_TRUST = "enough-on-trust"
    SHORT = "short"
    SHORT_WHEN_FINISHED = "short-when-finished"
    CANNOT_BE_REACHED = "cannot-be-reached"
    FULL_PENETRATION_NEEDED = "full-penetration-needed"
    OVER = "over"
    OPEN = "open"
    ESTIMATED = "estimated"
    WITHIN = "within"
    TOO_FAST = "too-fast"
    TOO_SLOW = "too-slow"
    LOW = "low"
    RAISED = "raised"
    HIGH = "high"
    WITHIN_TOLERANCE = "within-tolerance"
    OUT_OF_TOLERANCE = "out-of-tolerance"
    OPENS_BY_HAND = "opens-by-hand"
    MAY_OPEN_BY_HAND = "may-open-by-hand"
    DOES_NOT_OPEN_BY_HAND = "does-not-open-by-hand"
    PLATE_BENDS_FIRST = "plate-bends-first"
    ACCEPTED = "accepted"
    REJECTED = "rejected"


CautionCode = Literal[
    "accounts-differ",
    "allowance-thins",
    "alternatives-not-sized",
    "analyse-the-weld-metal",
    "assumed-penetration",
    "back-gouge",
    "backing-left-in",
    "base-metal-not-checked",
    "bending-of-part-1",
    "below-minimum-throat",
    "below-quick-chill-size",
    "boron-hardens",
    "carbon-steel-assumed",
    "categories-move",
    "code-in-part",
    "cold-air",
    "cold-steel",
    "combined-thickness-of-parts",
    "convexity-not-credited",
    "corner-as-fillet",
    "cost-incomplete",
    "crater",
    "depth-consistently-achieved",
    "design-wall",
    "designed-to-bear",
    "elastic-method",
    "end-returns",
    "end-weld",
    "estimate-for-planning",
    "excess-on-area",
    "face-not-credited",
    "face-not-given",
    "face-width-not-given",
    "face-width-not-known",
    "factor-band",
    "faster-than-hands",
    "ferritic-only",
    "flare-radius",
    "flatness-by-width",
    "flux-not-counted",
    "full-size-length",
    "fusion-not-read",
    "gap-and-land",
    "gap-in-leg",
    "gap-taken-off",
    "gaps-corrode",
    "hardness-over",
    "hardness-scatter",
    "heat-affected-zone",
    "heat-of-one-run",
    "hollow-section",
    "hydrogen-cracks-not-graded",
    "imperfections-not-summed",
    "index-of-submerged-arc",
    "intermittent",
    "lap-overlap",
    "laid-larger-than-drawn",
    "later-edition",
    "left-free",
    "leg-from-energy",
    "let-go",
    "level-in-part",
    "long-stiffener",
    "long-weld-not-reduced",
    "low-hydrogen-needed",
    "lower-beta-w",
    "matching-by-strength",
    "matching-filler-assumed",
    "may-be-short",
    "measured-penetration",
    "metal-as-carbon-steel",
    "method-a-reads-charts",
    "methods-differ",
    "national-least-throat",
    "no-deposition-rate",
    "no-efficiency",
    "no-gas-flow",
    "no-length",
    "no-listed-preparation",
    "no-operator-factor",
    "no-rule-set",
    "no-strength-claimed",
    "no-undersize-at-girder-ends",
    "nominal-strengths",
    "not-a-listed-detail",
    "not-all-timed",
    "not-compared",
    "not-for-service",
    "one-method",
    "one-side-without-backing",
    "one-thickness",
    "one-sided",
    "other-standard",
    "overwelded",
    "packing",
    "parts-not-checked",
    "penetration-not-counted",
    "pitch-not-checked",
    "preheat-short",
    "proven-penetration",
    "radius-needs-width",
    "rates-of-steel",
    "recalled-limit",
    "room-temperature",
    "root-bending-model",
    "root-opening",
    "rough-estimate",
    "runs",
    "seam-factors",
    "second-hand-limits",
    "shallow-bead",
    "spacing-by-pitch",
    "static-only",
    "stub-in-efficiency",
    "stub-taken-off",
    "thinner-part-cools-slower",
    "thinning",
    "throat-to-finished-face",
    "too-fast",
    "too-slow",
    "raised",
    "high",
    "two-heat-inputs",
    "undercut-not-given",
    "usual-bead-area",
    "usual-deposition-rate",
    "usual-efficiency",
    "usual-gas-flow",
    "usual-operator-factor",
    "usual-source-efficiency",
    "weld-metal-cet-not-given",
    "welding-alone",
    "z-loss",
]
"""What a caution of an answer may be called."""

RemedyCode = Literal[
    "accept",
    "add-pass",
    "add-root-pass",
    "bevel",
    "bevelled",
    "close-gap",
    "double-sided",
    "dress-face",
    "dress-root",
    "dress-toe",
    "fill-crater",
    "fillet-inside",
    "full-penetration",
    "gouge-and-reweld",
    "intermittent",
    "leave-face",
    "over",
    "realign",
    "repair-undercut",
    "single-bevel",
    "single-j",
    "single-u",
    "single-v",
    "smaller-radius",
    "weld-second-side",
]
"""What a remedy, an action or an alternative may do."""

FaultCode = Literal[
    "inconsistent",
    "out-of-scope",
    "out-of-range",
    "invalid",
    "missing",
    "missing-unit",
    "not-a-quantity",
    "not-finite",
    "not-json",
    "null",
    "unknown-choice",
    "unknown-field",
    "unknown-unit",
    "wrong-count",
    "wrong-type",
]
"""What a fault of a request may be called."""
