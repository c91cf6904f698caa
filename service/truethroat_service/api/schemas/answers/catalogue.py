"""Shapes of what says what there is."""

from .shapes import AREA, LENGTH, STRESS, Json, listed, nullable, number, record, ref, text


def _range(of: Json) -> Json:
    """Least and most."""
    return record("Limits.", {"least": of, "most": of})


_LIMIT_OF_SCOPE: Json = record("Limit of scope.", {"text": text(), "source": text()})


def _rates(of: Json) -> Json:
    """Figures of one quantity."""
    return listed(
        record(
            "Figure of one publication.",
            {
                "setting": text("What it was found with."),
                "least": of,
                "most": of,
                "typical": nullable(of),
                "usual": {"type": "boolean", "description": "Whether an estimate that lacks the figure spans it."},
                "source": text(),
            },
        )
    )


COMPONENTS: dict[str, Json] = {
    "ServiceAnswer": record(
        "What this service is.",
        {
            "service": text(),
            "service_version": text(),
            "api_version": text(),
            "engine_version": text(),
            "rule_sets": listed(record("Rule set.", {"id": text(), "title": text()})),
        },
    ),
    "RuleSetsAnswer": record(
        "Rule sets, and quality sets, with their clauses and limits.",
        {
            "rule_sets": listed(
                record(
                    "Rule set.",
                    {
                        "id": text(),
                        "title": text(),
                        "editions": listed(text()),
                        "clauses": listed(text()),
                        "parameters": {"type": "object", "additionalProperties": number()},
                        "limits": listed(_LIMIT_OF_SCOPE),
                    },
                )
            ),
            "quality_sets": listed(
                record(
                    "Quality level or code that a weld as made is held to.",
                    {
                        "id": text(),
                        "title": text(),
                        "editions": listed(text()),
                        "clauses": listed(text()),
                        "limits": listed(_LIMIT_OF_SCOPE),
                    },
                )
            ),
        },
    ),
    "MaterialsAnswer": record(
        "Base metals.",
        {
            "materials": listed(
                record(
                    "Base metal with its strengths by thickness, over ... up to and including.",
                    {
                        "id": text(),
                        "standard": text(),
                        "family": text(),
                        "form": text(),
                        "beta_w": nullable(number()),
                        "source": text(),
                        "bands": listed(
                            record(
                                "Strengths over a range of thickness.",
                                {
                                    "thickness_over": LENGTH,
                                    "thickness_to": nullable(LENGTH),
                                    "yield_strength": STRESS,
                                    "tensile_strength": STRESS,
                                    "welded_yield_strength": nullable(STRESS),
                                    "welded_tensile_strength": nullable(STRESS),
                                },
                            )
                        ),
                    },
                )
            )
        },
    ),
    "FillerMetalsAnswer": record(
        "Filler metals.",
        {
            "filler_metals": listed(
                record(
                    "Filler metal.",
                    {
                        "id": text(),
                        "standard": text(),
                        "family": text(),
                        "tensile_strength": STRESS,
                        "matches": text(),
                        "source": text(),
                    },
                )
            )
        },
    ),
    "ProcessesAnswer": record(
        "Welding processes and positions, each with every code it answers to.",
        {
            "processes": listed(
                record(
                    "Process.",
                    {
                        "id": text(),
                        "title": text(),
                        "iso_4063": listed(text()),
                        "source": text(),
                        "rates": record(
                            "What publications say it takes; an estimate spans the usual ones.",
                            {
                                "efficiency": _rates(number()),
                                "deposition_rate": _rates(ref("DepositionRateAnswer")),
                                "operator_factor": _rates(number()),
                                "gas_flow": _rates(ref("GasFlowAnswer")),
                                "bead_area": _rates(AREA),
                            },
                        ),
                    },
                )
            ),
            "positions": listed(
                record(
                    "Position.",
                    {
                        "id": text(),
                        "title": text(),
                        "orientation": text(),
                        "equivalents": listed(text()),
                        "source": text(),
                    },
                )
            ),
        },
    ),
    "PreparationsAnswer": record(
        "Preparations of grooves.",
        {
            "preparations": listed(
                record(
                    "Preparation, with the limits it holds in; null where the standard sets none.",
                    {
                        "id": text(),
                        "ref": text("The standard's own reference."),
                        "standard": text(),
                        "joints": listed(text()),
                        "penetration": {"type": "string", "enum": ["full", "partial"]},
                        "form": text(),
                        "root": text("How the root is welded."),
                        "thickness": _range(nullable(LENGTH)),
                        "angle": nullable(_range(ref("AngleAnswer"))),
                        "gap": nullable(_range(nullable(LENGTH))),
                        "gap_share_of_thickness": nullable(number()),
                        "land": nullable(_range(nullable(LENGTH))),
                        "processes": listed(text()),
                        "orientations": listed(text()),
                        "source": text(),
                    },
                )
            )
        },
    ),
}
