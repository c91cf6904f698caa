"""Clause C.3, method B: preheat by carbon equivalent CET, thickness, hydrogen and heat input (formula C.8)."""

from dataclasses import dataclass

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, maximum, tanh
from . import clause

CET = clause("C.3, carbon equivalent CET", "second-hand")
PREHEAT = clause("C.3, formula C.8 (as printed by Latteier Ingenieurbuero, 2020)", "second-hand")
MARGIN = clause("C.3, CET of the weld metal", "from memory")
SCOPE = clause("C.3, limits of method B", "from memory")

COEFFICIENTS = {
    "b_CET": 697.0,
    "b_d": 160.0,
    "d_0": 35.0,
    "b_HD": 62.0,
    "HD_0": 1.0,
    "b_Q": 53.0,
    "b_1": 32.0,
    "b_0": 328.0,
}
"""Coefficients in degC, mm, ml/100 g and degC mm/kJ."""

WELD_METAL_MARGIN = 0.03
"""By how much the parent's CET must be over the weld metal's to count alone."""


@dataclass(frozen=True, slots=True)
class Range:
    """Least and greatest value the method holds for, and the unit that says it."""

    least: float
    most: float
    unit: str

    def __str__(self) -> str:
        """As a message words it."""
        return f"{self.least:g} to {self.most:g}{f' {self.unit}' if self.unit else ''}"


RANGES = {
    "CET": Range(0.2, 0.5, ""),
    "d": Range(10.0, 90.0, "mm"),
    "HD": Range(1.0, 20.0, "ml/100g"),
    "Q": Range(0.5, 4.0, "kJ/mm"),
}
COMPOSITION = {
    "C": Range(0.05, 0.32, "%"),
    "Si": Range(0.0, 0.8, "%"),
    "Mn": Range(0.5, 1.9, "%"),
    "Cr": Range(0.0, 1.5, "%"),
    "Cu": Range(0.0, 0.7, "%"),
    "Mo": Range(0.0, 0.75, "%"),
    "Nb": Range(0.0, 0.06, "%"),
    "Ni": Range(0.0, 2.5, "%"),
    "Ti": Range(0.0, 0.12, "%"),
    "V": Range(0.0, 0.18, "%"),
    "B": Range(0.0, 0.005, "%"),
}
SHARE = Arg("", 0, 2)


@formula(
    "CET",
    "C + (Mn + Mo)/10 + (Cr + Cu)/20 + Ni/40",
    unit="",
    source=CET,
    args={"C": SHARE, "Mn": SHARE, "Mo": SHARE, "Cr": SHARE, "Cu": SHARE, "Ni": SHARE},
)
def carbon_equivalent(C: Real, Mn: Real, Mo: Real, Cr: Real, Cu: Real, Ni: Real) -> Real:
    """Carbon equivalent CET, of shares in weight %."""
    return C + (Mn + Mo) / 10.0 + (Cr + Cu) / 20.0 + Ni / 40.0


@formula(
    "CET_g",
    "maximum(CET, CET_w + m)",
    unit="",
    source=MARGIN,
    args={"CET": Arg("", 0.2, 0.5), "CET_w": Arg("", 0.2, 0.5), "m": Arg("", WELD_METAL_MARGIN, WELD_METAL_MARGIN)},
)
def governing_equivalent(CET: Real, CET_w: Real, m: Real) -> Real:
    """Carbon equivalent CET that governs: the parent's, or the weld metal's with a margin."""
    return maximum(CET, CET_w + m)


@formula(
    "T_p",
    "b_CET*CET_g + b_d*tanh(d/d_0) + b_HD*(HD/HD_0)**0.35 + (b_Q*CET_g - b_1)*Q - b_0",
    unit="degC",
    source=PREHEAT,
    args={
        "CET_g": Arg("", 0.2, 0.5),
        "d": Arg("mm", 10, 90),
        "HD": Arg("ml_per_100g", 1, 20),
        "Q": Arg("kJ/mm", 0.5, 4),
        "b_CET": Arg("degC", 697, 697),
        "b_d": Arg("degC", 160, 160),
        "d_0": Arg("mm", 35, 35),
        "b_HD": Arg("degC", 62, 62),
        "HD_0": Arg("ml_per_100g", 1, 1),
        "b_Q": Arg("degC*mm/kJ", 53, 53),
        "b_1": Arg("degC*mm/kJ", 32, 32),
        "b_0": Arg("degC", 328, 328),
    },
)
def preheat(
    CET_g: Real,
    d: Real,
    HD: Real,
    Q: Real,
    b_CET: Real,
    b_d: Real,
    d_0: Real,
    b_HD: Real,
    HD_0: Real,
    b_Q: Real,
    b_1: Real,
    b_0: Real,
) -> Real:
    """Least preheat by method B."""
    return b_CET * CET_g + b_d * tanh(d / d_0) + b_HD * (HD / HD_0) ** 0.35 + (b_Q * CET_g - b_1) * Q - b_0
