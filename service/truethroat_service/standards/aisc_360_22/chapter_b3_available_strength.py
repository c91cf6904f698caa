"""Section B3: from nominal to available strength, by load and resistance factors (LRFD) or a safety factor (ASD)."""

from dataclasses import dataclass
from typing import Literal

from ...engine.formula import Arg, formula
from ...engine.numeric import Real
from . import clause

Method = Literal["LRFD", "ASD"]
NOMINAL = Arg("N/mm", 1.0, 5000.0)


@dataclass(frozen=True, slots=True)
class Factors:
    """Resistance factor and safety factor of one limit state."""

    phi: float
    omega: float


@formula("r_n_req", "f/phi", unit="N/mm", source=clause("B3.1"), args={"f": NOMINAL, "phi": Arg("", 0.75, 1.0)})
def nominal_needed_lrfd(f: Real, phi: Real) -> Real:
    """Nominal strength per length that the factored force needs."""
    return f / phi


@formula("r_n_req", "f*Omega", unit="N/mm", source=clause("B3.2"), args={"f": NOMINAL, "Omega": Arg("", 1.5, 2.0)})
def nominal_needed_asd(f: Real, Omega: Real) -> Real:
    """Nominal strength per length that the service force needs."""
    return f * Omega


@formula("r_avail", "phi*r_n", unit="N/mm", source=clause("B3.1"), args={"r_n": NOMINAL, "phi": Arg("", 0.75, 1.0)})
def design_strength(r_n: Real, phi: Real) -> Real:
    """Design strength per length."""
    return phi * r_n


@formula("r_avail", "r_n/Omega", unit="N/mm", source=clause("B3.2"), args={"r_n": NOMINAL, "Omega": Arg("", 1.5, 2.0)})
def allowable_strength(r_n: Real, Omega: Real) -> Real:
    """Allowable strength per length."""
    return r_n / Omega


def available(method: Method, factors: Factors, r_n: Real) -> Real:
    """Available strength per length by the chosen method, N/mm, from the nominal one."""
    if method == "LRFD":
        return design_strength(r_n=r_n, phi=factors.phi)
    return allowable_strength(r_n=r_n, Omega=factors.omega)


def nominal_needed(method: Method, factors: Factors, f: Real) -> Real:
    """Nominal strength per length, N/mm, that a force per length needs by the chosen method."""
    if method == "LRFD":
        return nominal_needed_lrfd(f=f, phi=factors.phi)
    return nominal_needed_asd(f=f, Omega=factors.omega)
