"""Preheat of Supplement 1: the form of EN 1011-2 method B with two other constants, about 1 degC apart."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, tanh
from . import clause

PREHEAT = clause("preheat (as printed in Kindmann/Stracke, Verbindungen im Stahl- und Verbundbau)", "second-hand")

COEFFICIENTS = {
    "s_CET": 700.0,
    "s_d": 160.0,
    "d_0": 35.0,
    "s_HD": 62.0,
    "HD_0": 1.0,
    "s_Q": 53.0,
    "s_1": 32.0,
    "s_0": 330.0,
}
"""Coefficients in degC, mm, ml/100 g and degC mm/kJ."""


@formula(
    "T_p_SEW",
    "s_CET*CET_g + s_d*tanh(d/d_0) + s_HD*(HD/HD_0)**0.35 + (s_Q*CET_g - s_1)*Q - s_0",
    unit="degC",
    source=PREHEAT,
    args={
        "CET_g": Arg("", 0.2, 0.5),
        "d": Arg("mm", 10, 90),
        "HD": Arg("ml_per_100g", 1, 20),
        "Q": Arg("kJ/mm", 0.5, 4),
        "s_CET": Arg("degC", 700, 700),
        "s_d": Arg("degC", 160, 160),
        "d_0": Arg("mm", 35, 35),
        "s_HD": Arg("degC", 62, 62),
        "HD_0": Arg("ml_per_100g", 1, 1),
        "s_Q": Arg("degC*mm/kJ", 53, 53),
        "s_1": Arg("degC*mm/kJ", 32, 32),
        "s_0": Arg("degC", 330, 330),
    },
)
def preheat(
    CET_g: Real,
    d: Real,
    HD: Real,
    Q: Real,
    s_CET: Real,
    s_d: Real,
    d_0: Real,
    s_HD: Real,
    HD_0: Real,
    s_Q: Real,
    s_1: Real,
    s_0: Real,
) -> Real:
    """Least preheat by SEW 088."""
    return s_CET * CET_g + s_d * tanh(d / d_0) + s_HD * (HD / HD_0) ** 0.35 + (s_Q * CET_g - s_1) * Q - s_0
