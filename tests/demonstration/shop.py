"""The shop that builds the hopper: its wires, arcs, tolerances and prices, all invented."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from truethroat import Prices

WIRES: dict[str, Mapping[str, Any]] = {
    "135": {
        "process": "GMAW",
        "filler": "ER70S-6",
        "deposition": {"wire_diameter": "1.2 mm", "feed_speed": "9 m/min"},
        "efficiency": 0.95,
        "gas_flow": "16 L/min",
        "operator_factor": 0.35,
    },
    "FCAW": {
        "process": "FCAW-G",
        "filler": "E71T-1",
        "deposition": {"rate": "8 lb/h"},
        "efficiency": 0.86,
        "gas_flow": "35 ft3/h",
        "operator_factor": 0.35,
    },
    "SMAW": {
        "process": "SMAW",
        "filler": "E7018",
        "deposition": {"rate": "3.9 lb/h"},
        "electrode": {"length": "14 in", "stub": "2 in"},
        "operator_factor": 0.25,
    },
}
USUAL_WIRE = "135"
PRICES: Prices = {
    "currency": "USD",
    "labour": {"amount": 58, "per": "h"},
    "consumables": [
        {"filler": "ER70S-6", "amount": 1.15, "per": "lb"},
        {"filler": "G 42", "amount": 1.15, "per": "lb"},  # the same wire, by its European class
        {"filler": "E71T-1", "amount": 1.95, "per": "lb"},
        {"filler": "E7018", "amount": 2.10, "per": "lb"},
    ],
    "gases": [{"amount": 0.14, "per": "ft3"}],
}
#: Wire of a process that has more than one name.
SAME_WIRE = {"GMAW": "135", "FCAW-G": "FCAW"}
ARCS: dict[str, Mapping[str, str]] = {
    "135": {"voltage": "28 V", "current": "250 A", "travel_speed": "350 mm/min"},
    "FCAW": {"voltage": "26 V", "current": "220 A", "travel_speed": "300 mm/min"},
    "SMAW": {"voltage": "24 V", "current": "150 A", "travel_speed": "150 mm/min"},
}
TOLERANCES: dict[str, Mapping[str, str]] = {
    "metric": {"legs": "0.5 mm", "depth": "0.5 mm"},
    "us": {"legs": "1/32 in", "depth": "1/32 in"},
}
BEVELLING_SPEED = "300 mm/min"
#: Straightening costs this shop more than wire does.
WEIGHTS = {"filler": 1, "time": 1, "heat": 1, "distortion": 2}
