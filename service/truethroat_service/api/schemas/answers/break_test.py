"""Shapes of answers of ``/v1/break-test``."""

from .shapes import LENGTH, Json, listed, nullable, record, ref, result, text

_MOMENT, _FORCE = ref("MomentAnswer"), ref("HandForceAnswer")
_STAGES = ("first_yield", "hinge", "breaking", "breaking_at_most")

_OPENED: dict[str, Json] = {
    "throat": record(
        "Throat under the finish and the notch, as given and by its tolerances.",
        dict.fromkeys(("least", "nominal", "most"), LENGTH),
    ),
    "moment": record(
        "Moment on the coupon: the root yields, the throat folds (both at its least), breaks, and breaks at the most.",
        dict.fromkeys(_STAGES, _MOMENT),
    ),
    "force": record("Force on the lever for each of them.", dict.fromkeys(_STAGES, _FORCE)),
    "governs": {"type": "string", "enum": ["weld", "plate"]},
}

COMPONENTS: dict[str, Json] = {
    "OpenedAccount": record("What one account of the throat takes to open.", {"verdict": ref("Verdict"), **_OPENED}),
    "CouponCheck": record(
        "One dimension against its limit.",
        {"name": text(), "value": LENGTH, "verdict": {"type": "string", "enum": ["within", "out"]}, "source": text()},
        {"least": LENGTH, "most": LENGTH},
    ),
    "BreakTestAnswer": result(
        "What opens a coupon from its root, counting all the throat there is.",
        {
            **_OPENED,
            "creditable": {**ref("OpenedAccount"), "description": "Counting measured and proven penetration."},
            "strength": {
                **ref("OpenedAccount"),
                "description": "Counting proven penetration alone, and no face height.",
            },
            "plate": record(
                "The thinner plate: what folds it, and the throat that breaks just as it does.",
                {
                    "moment": _MOMENT,
                    "force": _FORCE,
                    "balance": record(
                        "Of an equal-leg fillet also its leg.", {"throat": LENGTH, "leg": nullable(LENGTH)}
                    ),
                },
            ),
            "length": {**LENGTH, "description": "Length left between side notches."},
            "fold": text("Which way to fold it."),
            "checks": listed(ref("CouponCheck")),
            "standard_coupon": nullable(
                record(
                    "Coupon that the rules know.",
                    {
                        **dict.fromkeys(("plate", "leg", "least_width", "welded_length", "specimen"), LENGTH),
                        "source": text(),
                    },
                )
            ),
            "acceptance": nullable(
                record(
                    "What the outcome is worth.",
                    {"verdict": ref("Verdict"), "limits": listed(ref("CouponCheck")), "source": text()},
                )
            ),
        },
    ),
}
