"""Use case: what there is to ask about: rule sets, materials, filler metals, processes and positions."""

from collections.abc import Mapping
from typing import Any

from .. import API_VERSION, SERVICE_VERSION
from ..engine import ENGINE_VERSION
from ..engine.formula import Source
from ..reference.loader import FILLER_METALS, MATERIALS, POSITIONS, PROCESSES
from ..reference.loader_preparations import PREPARATIONS
from ..reference.loader_welding_rates import RATES
from .core.answers import Units
from .core.quantities import AREA, GAS_FLOW, LENGTH, MASS_RATE, STRESS, Dimension, QuantityDict, UnitSystem, render
from .joints.quality_sets import QUALITY_SETS
from .joints.rule_sets import ENTRIES, rule_set


def service() -> dict[str, Any]:
    """Versions, and the rule sets by name."""
    return {
        "service": "truethroat",
        "service_version": SERVICE_VERSION,
        "api_version": API_VERSION,
        "engine_version": ENGINE_VERSION,
        "rule_sets": [{"id": name, "title": entry.title} for name, entry in ENTRIES.items()],
    }


def rule_sets() -> dict[str, Any]:
    """Every rule set with its editions, clauses, own parameters and limits of scope, and every quality set."""
    listed = []
    for name in ENTRIES:
        rules = rule_set(name)
        listed.append(
            {
                "id": rules.id,
                "title": rules.title,
                "editions": list(rules.editions),
                "clauses": list(rules.clauses),
                "parameters": dict(rules.parameters),
                "limits": [{"text": limit.text, "source": str(limit.source)} for limit in rules.limits],
            }
        )
    return {"rule_sets": listed, "quality_sets": _quality_sets()}


def _quality_sets() -> list[dict[str, Any]]:
    """Every level and code that a weld as made can be held to, with its editions, clauses and limits of scope."""
    return [
        {
            "id": found.id,
            "title": found.title,
            "editions": list(found.editions),
            "clauses": list(found.clauses),
            "limits": [{"text": limit.text, "source": str(limit.source)} for limit in found.limits],
        }
        for found in QUALITY_SETS.values()
    ]


def materials(units: UnitSystem) -> dict[str, Any]:
    """Every base metal with its strengths by thickness, and those beside a weld where welding takes some away."""

    def length(value: float) -> QuantityDict:
        return render(LENGTH, value, units)

    def stress(value: float) -> QuantityDict:
        return render(STRESS, value, units)

    def beside(value: float | None) -> QuantityDict | None:
        return None if value is None else stress(value)

    return {
        "materials": [
            {
                "id": material.id,
                "standard": material.standard,
                "family": material.family,
                "form": material.form,
                "beta_w": material.beta_w,
                "source": f"{material.source} ({material.mark})",
                "bands": [
                    {
                        "thickness_over": length(band.thickness_over),
                        "thickness_to": None if band.thickness_to is None else length(band.thickness_to),
                        "yield_strength": stress(band.yield_strength),
                        "tensile_strength": stress(band.tensile_strength),
                        "welded_yield_strength": beside(band.welded_yield_strength),
                        "welded_tensile_strength": beside(band.welded_tensile_strength),
                    }
                    for band in material.bands
                ],
            }
            for material in MATERIALS.values()
        ]
    }


def filler_metals(units: UnitSystem) -> dict[str, Any]:
    """Every filler metal with its tensile strength."""
    return {
        "filler_metals": [
            {
                "id": filler.id,
                "standard": filler.standard,
                "family": filler.family,
                "tensile_strength": render(STRESS, filler.tensile_strength, units),
                "matches": filler.matches,
                "source": f"{filler.source} ({filler.mark})",
            }
            for filler in FILLER_METALS.values()
        ]
    }


_IN: Mapping[str, Dimension | None] = {
    "efficiency": None,
    "deposition-rate": MASS_RATE,
    "operator-factor": None,
    "gas-flow": GAS_FLOW,
    "bead-area": AREA,
}
"""Dimension of each quantity of the rates; none for a share."""


def _rates(process: str, units: UnitSystem) -> dict[str, Any]:
    """What publications say a process takes, by quantity."""

    def shown(value: float, dimension: Dimension | None) -> float | QuantityDict:
        return value if dimension is None else render(dimension, value, units)

    return {
        quantity.replace("-", "_"): [
            {
                "setting": rate.setting,
                "least": shown(rate.low, dimension),
                "most": shown(rate.high, dimension),
                "typical": None if rate.typical is None else shown(rate.typical, dimension),
                "usual": rate.usual,
                "source": str(Source("", rate.source, rate.mark)),
            }
            for rate in RATES
            if rate.quantity == quantity and process in rate.processes
        ]
        for quantity, dimension in _IN.items()
    }


def processes(units: UnitSystem) -> dict[str, Any]:
    """Every process and position with the codes it answers to, and what publications say each process takes."""
    return {
        "processes": [
            {
                "id": process.id,
                "title": process.title,
                "iso_4063": list(process.iso_4063),
                "source": f"{process.source} ({process.mark})",
                "rates": _rates(process.id, units),
            }
            for process in PROCESSES.values()
        ],
        "positions": [
            {
                "id": position.id,
                "title": position.title,
                "orientation": position.orientation,
                "equivalents": list(position.equivalents),
                "source": f"{position.source} ({position.mark})",
            }
            for position in POSITIONS.values()
        ],
    }


def preparations(units: UnitSystem) -> dict[str, Any]:
    """Every preparation of a groove with its limits."""
    shown = Units(units)

    def length(value: float | None) -> QuantityDict | None:
        return None if value is None else shown.length(value)

    return {
        "preparations": [
            {
                "id": entry.id,
                "ref": entry.ref,
                "standard": entry.standard,
                "joints": list(entry.joints),
                "penetration": entry.penetration,
                "form": entry.form,
                "root": entry.root,
                "thickness": {"least": length(entry.thickness[0]), "most": length(entry.thickness[1])},
                "angle": entry.angle and {"least": shown.angle(entry.angle[0]), "most": shown.angle(entry.angle[1])},
                "gap": None
                if entry.gap_by_thickness
                else {"least": length(entry.gap[0]), "most": length(entry.gap[1])},
                "gap_share_of_thickness": entry.gap[0] if entry.gap_by_thickness else None,
                "land": entry.land and {"least": length(entry.land[0]), "most": length(entry.land[1])},
                "processes": list(entry.processes),
                "orientations": list(entry.orientations),
                "source": f"{entry.source}, {entry.mark}",
            }
            for entry in PREPARATIONS
        ]
    }
