"""Texts of quantities for each format of the document: mostly what a shop writes, now and then an extreme."""

from __future__ import annotations

from functools import partial
from random import Random

import schemathesis
from hypothesis import strategies as st

# By format: units with a usual least and greatest number, then texts to be met anyway.
SHOP: dict[str, tuple[dict[str, tuple[float, float]], list[str]]] = {
    "length": (
        {"mm": (0.5, 40.0), "cm": (0.1, 4.0), "m": (0.001, 0.04), "in": (0.03, 1.5), "ft": (0.01, 0.1)},
        ["1/4 in", "3/16 in", "1 1/2 in", "0 mm", "-3 mm", "1e9 mm", "1e-9 mm", "300 mm", "100000 mm"],
    ),
    "force": (
        {"kN": (1.0, 400.0), "N": (100.0, 400_000.0), "kip": (0.5, 90.0), "lbf": (100.0, 90_000.0), "MN": (0.01, 0.4)},
        ["0 kN", "-5 kN", "100000 kN", "1e-9 N"],
    ),
    "hand-force": ({"N": (20.0, 900.0), "kN": (0.02, 0.9), "lbf": (5.0, 200.0)}, ["0 N", "-1 lbf", "1e9 kN"]),
    "force-per-length": (
        {"N/mm": (-900.0, 900.0), "kN/m": (-900.0, 900.0), "kip/in": (-5.0, 5.0), "lbf/in": (-5000.0, 5000.0)},
        ["0 N/mm", "1e9 kN/mm", "-1e9 kip/ft", "1000000 N/mm", "1e-9 N/mm"],
    ),
    "stress": (
        {"MPa": (200.0, 690.0), "N/mm2": (200.0, 690.0), "ksi": (30.0, 100.0), "psi": (30_000.0, 100_000.0)},
        ["0 MPa", "1 MPa", "2 GPa", "9e9 psi"],
    ),
    "moment": (
        {"kN*m": (-40.0, 40.0), "N*m": (-9000.0, 9000.0), "kip*in": (-200.0, 200.0), "kip*ft": (-20.0, 20.0)},
        ["0 kN*m", "1e9 kN*m", "-1e9 kip*ft", "1000 lbf*in", "50 lbf*ft"],
    ),
    "area": ({"mm2": (5.0, 400.0), "cm2": (0.05, 4.0), "in2": (0.01, 0.6)}, ["0 mm2", "-1 mm2", "1e9 cm2"]),
    "second-moment-of-area": (
        {"mm4": (1e5, 1e8), "cm4": (10.0, 1e4), "in4": (0.3, 250.0)},
        ["0 mm4", "-1 cm4", "1e30 in4"],
    ),
    "volume": ({"m3": (0.1, 10.0), "L": (100.0, 9999.0), "cm3": (100.0, 9999.0), "ft3": (3.0, 300.0)}, ["0 m3"]),
    "mass": ({"kg": (0.1, 500.0), "g": (1.0, 9999.0), "t": (0.01, 2.0), "lb": (0.2, 999.0)}, ["0 kg", "-1 lb"]),
    "density": (
        {"kg/m3": (2600.0, 8900.0), "g/cm3": (2.6, 8.9), "lb/in3": (0.094, 0.32)},
        ["0 kg/m3", "-1 g/cm3", "1e9 lb/in3"],
    ),
    "mass-per-length": (
        {"kg/m": (0.01, 5.0), "lb/ft": (0.01, 3.0), "lb/in": (0.001, 0.3)},
        ["0 kg/m", "-1 lb/ft", "1e9 kg/m"],
    ),
    "time-span": ({"s": (1.0, 60.0), "min": (0.1, 1.0), "h": (0.001, 0.01)}, ["0 s", "-1 s", "1e9 h"]),
    "working-time": ({"h": (0.1, 40.0), "min": (5.0, 999.0), "s": (60.0, 9999.0)}, ["0 h", "-1 h", "1e9 h"]),
    "speed": (
        {"mm/min": (100.0, 900.0), "mm/s": (2.0, 15.0), "cm/min": (10.0, 90.0), "m/min": (0.1, 12.0)}
        | {"in/min": (4.0, 500.0)},
        ["0 mm/min", "-1 mm/s", "1e9 m/min"],
    ),
    "deposition-rate": (
        {"kg/h": (0.5, 10.0), "g/min": (10.0, 160.0), "lb/h": (1.0, 20.0)},
        ["0 kg/h", "-1 lb/h", "1e9 kg/h"],
    ),
    "gas-flow": ({"L/min": (8.0, 25.0), "m3/h": (0.5, 1.5), "ft3/h": (15.0, 50.0)}, ["0 L/min", "-1 ft3/h"]),
    "voltage": ({"V": (10.0, 40.0)}, ["0 V", "-1 V", "1e9 V"]),
    "current": ({"A": (60.0, 500.0)}, ["0 A", "-1 A", "1e9 A"]),
    "energy": ({"kWh": (0.1, 100.0), "MJ": (1.0, 400.0), "kJ": (100.0, 9999.0)}, ["0 kWh", "-1 kJ"]),
    "energy-per-length": (
        {"kJ/mm": (0.4, 4.0), "kJ/cm": (4.0, 40.0), "J/mm": (400.0, 4000.0), "kJ/in": (10.0, 100.0)},
        ["0 kJ/mm", "-1 kJ/in", "1e9 kJ/mm"],
    ),
    "temperature": ({"degC": (0.0, 250.0), "degF": (32.0, 450.0)}, ["0 degC", "-40 degF", "1e9 degC", "-300 degC"]),
    "hydrogen-content": ({"ml/100g": (1.0, 20.0)}, ["0 ml/100g", "-1 ml/100g", "1e9 ml/100g"]),
    "angle": (
        {"deg": (30.0, 135.0), "rad": (0.5, 2.3)},
        ["90 deg", "60 deg", "45 deg", "0 deg", "180 deg", "-1 rad", "1e9 deg"],
    ),
}


def text(name: str, chance: Random) -> str:
    """Write a text of one format: nine of ten in the usual range, with four figures at most."""
    units, others = SHOP[name]
    if chance.random() < 0.1:
        return chance.choice(others)
    unit = chance.choice(sorted(units))
    return f"{chance.uniform(*units[unit]):.4g} {unit}"


def _seeded(name: str, seed: int) -> str:
    """Write a text of one format that follows from a number."""
    return text(name, Random(seed))  # noqa: S311


def register() -> None:
    """Give every format of the document its texts."""
    for name in SHOP:
        schemathesis.openapi.format(name, st.integers(0, 2**32 - 1).map(partial(_seeded, name)))
