"""Shapes of answers of ``/v1/crack-risk``."""

from .shapes import LENGTH, Json, listed, nullable, number, record, ref, result, text

COMPONENTS: dict[str, Json] = {
    "CrackFactor": record(
        "One reason to expect a crack, or none.",
        {
            "name": {
                "type": "string",
                "enum": ["shape", "pass-shape", "composition", "sulphur-and-phosphorus", "face", "size", "crater"],
            },
            "grade": {"type": "string", "enum": ["low", "raised", "high"]},
            "reason": text(),
            "change": nullable(text("What to change; null when nothing need be.")),
            "source": text(),
        },
    ),
    "LeastFillet": record(
        "Least fillet by one rule that guards against quick chill.",
        {
            "rule": text(),
            "leg": LENGTH,
            "throat": LENGTH,
            "enough": nullable({"type": "boolean"}),
            "source": text(),
        },
    ),
    "CrackRiskAnswer": result(
        "Risk of cracks in a pass; the verdict is the worst grade.",
        {
            "shape": nullable(
                record(
                    "Shape of the bead.",
                    {
                        "width": LENGTH,
                        "depth": LENGTH,
                        "width_to_depth": number(),
                        "least_width_to_depth": number("Under it the risk is high."),
                        "target_width_to_depth": number(
                            "Width over depth that a bead of this joint is aimed at, at most."
                        ),
                        "pass_ratio": nullable(
                            number("Depth or width, whichever is more, over the width of the face; AWS D1.1 allows 1.")
                        ),
                    },
                )
            ),
            "index": nullable(
                record(
                    "Units of crack susceptibility of the weld metal.",
                    {
                        "ucs": number(),
                        "carbon_counted": number("A smaller share than 0.08 % is raised to it."),
                        "critical": number("From here on a bead of this joint and shape is likely to crack."),
                        "high_resistance_below": number(),
                        "low_resistance_above": number(),
                        "sulphur_and_phosphorus": number("Together, weight %."),
                        "most_sulphur_and_phosphorus": number(),
                    },
                )
            ),
            "least_sizes": listed(ref("LeastFillet")),
            "factors": listed(ref("CrackFactor")),
            "left_out": listed(ref("LeftOut")),
        },
    ),
}
