"""Clause 4.7: butt welds with full and with partial penetration, and the tee that counts as full strength."""

from ...engine.formula import Arg, Source, formula
from ...engine.numeric import Real, minimum
from ...engine.rounding import at_least, at_most
from . import clause, s4_5_3_2_directional

FULL_PENETRATION: Source = clause("4.7.1")
PARTIAL_PENETRATION: Source = clause("4.7.2")
TEE: Source = clause("4.7.3(1)")

LARGEST_UNWELDED = 3.0
"""Largest unwelded gap of a tee that counts as full strength, mm; and no more than a fifth of the thickness."""


@formula(
    "a_nom",
    "a_nom_1 + a_nom_2",
    unit="mm",
    source=TEE,
    args={"a_nom_1": Arg("mm", 2, 20), "a_nom_2": Arg("mm", 2, 20)},
)
def throat_of_both(a_nom_1: Real, a_nom_2: Real) -> Real:
    """Throats of both sides of a tee together."""
    return a_nom_1 + a_nom_2


@formula(
    "c_max",
    "minimum(t/5, c_3)",
    unit="mm",
    source=TEE,
    args={"t": Arg("mm", 4, 60, (15.0,)), "c_3": Arg("mm", LARGEST_UNWELDED, LARGEST_UNWELDED)},
)
def largest_unwelded(t: Real, c_3: Real) -> Real:
    """Largest unwelded gap between the two sides."""
    return minimum(t / 5.0, c_3)


def tee_is_full_strength(first: float, second: float, thickness: float, unwelded: float) -> bool:
    """4.7.3(1): whether the two sides of a tee count as full penetration; lengths in mm."""
    both = throat_of_both(a_nom_1=first, a_nom_2=second)
    most = largest_unwelded(t=thickness, c_3=LARGEST_UNWELDED)
    return bool(at_least(both, thickness)) and bool(at_most(unwelded, most))


def partial_throat(
    normal: Real, transverse: Real, longitudinal: Real, f_u: Real, f_u_low: Real, beta_w: Real, gamma_M2: Real
) -> Real:
    """4.7.2(1): throat, mm, of a partial-penetration weld, by the directional method of 4.5.3.2.

    The throat stands square to the plates, so the force across them is square to it.
    """
    force = s4_5_3_2_directional.equivalent_force(n_perp=normal, v_perp=transverse, l=longitudinal)
    return s4_5_3_2_directional.required_throat(
        f_w=force, n_perp=normal, f_u=f_u, f_u_low=f_u_low, beta_w=beta_w, gamma_M2=gamma_M2
    )
