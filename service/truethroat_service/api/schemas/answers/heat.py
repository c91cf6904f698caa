"""Shapes of answers of ``/v1/heat``."""

from .shapes import LENGTH, Json, listed, nullable, number, record, ref, result, text

TIME, TEMPERATURE = ref("TimeAnswer"), ref("TemperatureAnswer")
SPEED, ENERGY = ref("SpeedAnswer"), ref("EnergyPerLengthAnswer")


def _band(of: Json, description: str = "") -> Json:
    """Least and most."""
    return record(description, {"least": of, "most": of})


def _preheat(description: str, more: dict[str, Json] | None = None) -> Json:
    """Preheat by one rule."""
    met = {"type": "boolean", "description": "Whether the plate is that warm when the pass begins."}
    return record(description, {"temperature": TEMPERATURE, "met": met, "source": text(), **(more or {})})


_MODEL = record(
    "Hardness HV10 by one model, at the slowest and the fastest cooling, and of pure structures.",
    dict.fromkeys(("least", "most", "martensite", "bainite"), number()),
)

COMPONENTS: dict[str, Json] = {
    "LeftOut": record("A field that is null, by its path, and what it needs.", {"field": text(), "reason": text()}),
    "TimeBand": _band(TIME, "Times between which the true one lies."),
    "PreheatAnswer": record(
        "Preheat by each rule that the request gives enough for.",
        {
            "method_a": nullable(
                record(
                    "EN 1011-2 method A, as far as it is no chart.",
                    {
                        "hydrogen_scale": {"type": "string", "enum": ["A", "B", "C", "D", "E"]},
                        "without_preheat_to": nullable(LENGTH),
                        "free_of_preheat": nullable({"type": "boolean"}),
                        "source": text(),
                    },
                )
            ),
            "method_b": nullable(_preheat("EN 1011-2 method B.")),
            "sew_088": nullable(_preheat("SEW 088, method B with two other constants.")),
            "aws_d1_1": nullable(
                _preheat(
                    "AWS D1.1, by category and thickest part.",
                    {
                        "category": text(),
                        "printed": record(
                            "The row as printed in both units; they are not conversions.",
                            dict.fromkeys(("fahrenheit", "celsius"), TEMPERATURE),
                        ),
                        "thickest_part": LENGTH,
                    },
                )
            ),
        },
    ),
    "FilletHeat": record(
        "Leg of a single-pass fillet against arc energy.",
        {
            "usual_leg": {**nullable(LENGTH), "description": "Leg that this arc energy usually lays."},
            "bead": nullable(record("What the deposition rate lays.", {"area": ref("AreaAnswer"), "leg": LENGTH})),
            "usual_arc_energy": {**nullable(ENERGY), "description": "Arc energy that the leg usually takes."},
            "oversize": nullable(
                record(
                    "The leg laid against the leg required.",
                    {
                        "required_arc_energy": ENERGY,
                        "heat_ratio": number("Arc energy of the leg laid over that of the leg required."),
                        "cooling_time_required": nullable(ref("TimeBand")),
                        "cooling_time_laid": nullable(ref("TimeBand")),
                    },
                )
            ),
        },
    ),
    "HeatAnswer": result(
        "Heat of a pass.",
        {
            "energy": nullable(
                record(
                    "Both conventions.",
                    {
                        "arc_energy": {**nullable(ENERGY), "description": "Without k: AWS D1.1, ASME IX."},
                        "heat_input": {**nullable(ENERGY), "description": "With k: EN 1011-1."},
                        "efficiency": nullable(number("k.")),
                    },
                )
            ),
            "cooling": nullable(
                record(
                    "Cooling time t8/5.",
                    {
                        "time": ref("TimeBand"),
                        "flow": nullable(
                            {"type": "string", "enum": ["two-dimensional", "three-dimensional", "between"]}
                        ),
                        "transition_thickness": nullable(
                            _band(LENGTH, "Thickness over which heat flows in three dimensions.")
                        ),
                    },
                )
            ),
            "limits": nullable(
                record(
                    "What keeps the cooling time in the window.",
                    {
                        "heat_input": _band(ENERGY),
                        "arc_energy": nullable(_band(ENERGY)),
                        "travel_speed": nullable(_band(SPEED)),
                    },
                )
            ),
            "carbon_equivalents": record("Of the parent.", dict.fromkeys(("ce", "cet", "pcm"), nullable(number()))),
            "preheat": ref("PreheatAnswer"),
            "hardness": nullable(
                record(
                    "Hardness HV10 beside the weld.",
                    {
                        "dueren": _MODEL,
                        "yurioka": _MODEL,
                        "band": _band(number(), "Both models, with 50 HV on either side."),
                        "limit": nullable(number("Of ISO 15614-1.")),
                        "standing": nullable({"type": "string", "enum": ["within", "over", "open"]}),
                        "source": nullable(text()),
                    },
                )
            ),
            "fillet": nullable(ref("FilletHeat")),
            "left_out": listed(ref("LeftOut")),
        },
    ),
}
