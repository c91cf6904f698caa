"""Texts of quantities for each format of the document: mostly what a shop writes, now and then an extreme."""

from __future__ import annotations

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
    "angle": (
        {"deg": (30.0, 135.0), "rad": (0.5, 2.3)},
        ["90 deg", "60 deg", "45 deg", "0 deg", "180 deg", "-1 rad", "1e9 deg"],
    ),
}


def quantity_texts(name: str) -> st.SearchStrategy[str]:
    """Make texts of one format: nine of ten in the usual range."""
    units, others = SHOP[name]

    @st.composite
    def usual(draw: st.DrawFn) -> str:
        """Draw a unit, then a number of four figures at most in its range."""
        unit = draw(st.sampled_from(sorted(units)))
        low, high = units[unit]
        share = draw(st.integers(0, 200)) / 200
        return f"{low + share * (high - low):.4g} {unit}"

    return st.integers(0, 9).flatmap(lambda die: usual() if die else st.sampled_from(others))


def register() -> None:
    """Give every format of the document its texts."""
    for name in SHOP:
        schemathesis.openapi.format(name, quantity_texts(name))
