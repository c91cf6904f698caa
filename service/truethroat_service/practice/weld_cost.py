"""What a weld costs: each quantity at the caller's own price. Prices and costs are in one currency, so bare numbers."""

from ..engine.formula import Arg, formula
from ..engine.numeric import Real
from .deposition import ESAB, MASS, TIME


@formula("C_l", "p_l*T_w", unit="", source=ESAB, args={"p_l": Arg("1/s", 0.001, 0.1), "T_w": TIME})
def labour(p_l: Real, T_w: Real) -> Real:
    """Cost of labour."""
    return p_l * T_w


@formula("C_c", "p_c*W_c", unit="", source=ESAB, args={"p_c": Arg("1/kg", 1, 40), "W_c": MASS})
def consumable(p_c: Real, W_c: Real) -> Real:
    """Cost of consumable."""
    return p_c * W_c


@formula(
    "C_g", "p_g*V_g", unit="", source=ESAB, args={"p_g": Arg("1/mm**3", 1e-9, 1e-7), "V_g": Arg("mm**3", 1e7, 1e10)}
)
def gas(p_g: Real, V_g: Real) -> Real:
    """Cost of gas."""
    return p_g * V_g


@formula("C_e", "p_e*E_s", unit="", source=ESAB, args={"p_e": Arg("1/kJ", 1e-5, 2e-4), "E_s": Arg("kJ", 100, 1e6)})
def power(p_e: Real, E_s: Real) -> Real:
    """Cost of power."""
    return p_e * E_s
