"""Shapes of what says what there is."""

from .shapes import LENGTH, STRESS, Json, listed, nullable, number, record, text

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
        "Rule sets with their clauses and limits.",
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
                        "limits": listed(record("Limit of scope.", {"text": text(), "source": text()})),
                    },
                )
            )
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
                record("Process.", {"id": text(), "title": text(), "iso_4063": listed(text()), "source": text()})
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
}
