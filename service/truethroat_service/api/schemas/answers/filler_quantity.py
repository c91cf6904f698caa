"""Shapes of answers of ``/v1/filler-quantity``."""

from ....application.core.quantities import DENSITY, ENERGY, GAS_FLOW, MASS, MASS_RATE, VOLUME, WORKING_TIME
from .shapes import AREA, LENGTH, MASS_PER_LENGTH, Json, answered, listed, nullable, number, record, ref, result, text

_WHOLE: Json = {"type": "integer"}


def _span(of: Json) -> Json:
    """Least and most."""
    return record("From least to most; the same where nothing was assumed.", {"least": of, "most": of})


def _figure(of: Json) -> Json:
    """Least and most of a figure, and where it comes from."""
    return record("Figure, and who says so.", {"least": of, "most": of, "source": text('"given", or a publication.')})


_MASS, _TIME = ref("MassAnswer"), ref("WorkingTimeAnswer")
_MONEY = nullable(ref("MoneyBand"))

_TAKEN: dict[str, Json] = {
    "deposited": {**_MASS, "description": "Weld metal, excess and all."},
    "consumable": {**nullable(ref("MassBand")), "description": "What to buy."},
    "arc_time": {**nullable(ref("WorkingTimeBand")), "description": "While the arc burns."},
    "working_time": {**nullable(ref("WorkingTimeBand")), "description": "On the clock."},
    "gas": {**nullable(ref("VolumeBand")), "description": "Shielding gas while the arc burns."},
    "energy": {**nullable(ref("EnergyBand")), "description": "From the mains."},
    "cost": {**nullable(ref("WeldCost")), "description": "At the caller's prices; null without any."},
}
_SUMS: dict[str, Json] = {"count": _WHOLE, "length": LENGTH, **_TAKEN}

COMPONENTS: dict[str, Json] = {
    "MassAnswer": answered(MASS),
    "WorkingTimeAnswer": answered(WORKING_TIME),
    "VolumeAnswer": answered(VOLUME),
    "EnergyAnswer": answered(ENERGY),
    "DensityAnswer": answered(DENSITY),
    "DepositionRateAnswer": answered(MASS_RATE),
    "GasFlowAnswer": answered(GAS_FLOW),
    "MassBand": _span(_MASS),
    "WorkingTimeBand": _span(_TIME),
    "VolumeBand": _span(ref("VolumeAnswer")),
    "EnergyBand": _span(ref("EnergyAnswer")),
    "MoneyBand": _span(number()),
    "ShareFigure": _figure(number()),
    "RateFigure": _figure(ref("DepositionRateAnswer")),
    "FlowFigure": _figure(ref("GasFlowAnswer")),
    "AreaFigure": _figure(AREA),
    "WeldCost": record(
        "Cost by its parts; a part without a price is null and not in the total.",
        {
            "currency": text(),
            "labour": _MONEY,
            "consumable": _MONEY,
            "gas": _MONEY,
            "power": _MONEY,
            "total": {**_MONEY, "description": "Null where a part that has a price cannot be told."},
            "counts": {**listed(text()), "description": "Parts that have a price."},
            "missing": {**listed(text()), "description": "Those of them that cannot be told."},
        },
    ),
    "PassCounts": record(
        "Passes, from least to most, and every way they were counted.",
        {
            "least": _WHOLE,
            "most": _WHOLE,
            "counts": listed(
                record(
                    "One way to count.",
                    {
                        "by": {
                            "type": "string",
                            "enum": ["single-pass-limit", "pass-thickness", "layers", "bead-area", "handbook"],
                        },
                        "least": _WHOLE,
                        "most": _WHOLE,
                        "source": text(),
                    },
                )
            ),
        },
    ),
    "EstimateBasis": record(
        "What an estimate rests on; null where nothing says it.",
        {
            "density": record("Of the weld metal.", {"value": ref("DensityAnswer"), "source": text()}),
            "efficiency": nullable(ref("ShareFigure")),
            "deposition_rate": nullable(ref("RateFigure")),
            "operator_factor": nullable(ref("ShareFigure")),
            "gas_flow": nullable(ref("FlowFigure")),
            "bead_area": nullable(ref("AreaFigure")),
            "source_efficiency": nullable(ref("ShareFigure")),
        },
    ),
    "WeldEstimate": record(
        "Estimate of one entry, in the order of the request.",
        {
            "kind": text("Kind of its shape."),
            "filler": nullable(text()),
            "process": nullable(text("AWS letters.")),
            "area": {**AREA, "description": "Section as described, before its excess."},
            "parts": {
                **listed(record("Part of the section.", {"part": text(), "area": AREA})),
                "description": "They add up to the area; that of a hollow face is negative.",
            },
            "length": {**LENGTH, "description": "Of all its welds."},
            "mass_per_length": {**MASS_PER_LENGTH, "description": "Excess and all."},
            **_TAKEN,
            "passes": nullable(ref("PassCounts")),
            "rests_on": ref("EstimateBasis"),
        },
        {"mark": text("The entry's own mark.")},
    ),
    "EstimateTotals": record("Sums; null where one of the summands is not known.", _SUMS),
    "EstimateGroup": record(
        "Sums of one filler with one process.",
        {"filler": nullable(text()), "process": nullable(text()), **_SUMS},
    ),
    "FillerQuantityAnswer": result(
        "Weld metal, consumable, passes, hours, gas, energy and cost.",
        {
            "welds": listed(ref("WeldEstimate")),
            "totals": ref("EstimateTotals"),
            "groups": listed(ref("EstimateGroup")),
        },
    ),
}
