"""Section J2.4(b): concentric groups of one leg size with welds along the force and across it."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Flag, Real, where
from . import clause

LENGTH = Arg("mm", 20.0, 600.0)


@formula(
    "L_eq",
    "where(compatible & (0.85*L_l + 1.5*L_t > L_l + L_t), 0.85*L_l + 1.5*L_t, L_l + L_t)",
    unit="mm",
    source=clause("J2.4(b), Eq. J2-6 and its user note"),
    args={"L_l": LENGTH, "L_t": LENGTH, "compatible": Arg("flag")},
)
def equivalent_length(L_l: Real, L_t: Real, compatible: Flag) -> Real:
    """Length of weld along the force that is as strong as the group.

    The greater of the plain sum and of Eq. J2-6; the plain sum where the welds' strains are not compatible.
    """
    plain, weighted = L_l + L_t, 0.85 * L_l + 1.5 * L_t
    return where(compatible & (weighted > plain), weighted, plain)
