"""Clause 4.12: bending about the root of a fillet welded from one side.

The clause asks that this moment be counted and gives no formula. The model here is a beam as deep as the throat: a pull
in the middle of the plate is off the middle of the throat by half the plate and a quarter of the leg, and the elastic
stress of that moment is added to the pull's own at the root.
"""

from ...engine.formula import Arg, Source, formula
from ...engine.numeric import Real, magnitude
from . import EDITION

MODEL = Source(
    EDITION, "4.12, which gives no formula: elastic bending of the throat as a beam", "common practice, no source"
)


@formula(
    "m_root",
    "abs(n)*(t_2/2 + z/4)",
    unit="N",
    source=MODEL,
    args={"n": Arg("N/mm", -2000, 2000), "t_2": Arg("mm", 4, 40), "z": Arg("mm", 2, 40)},
)
def moment(n: Real, t_2: Real, z: Real) -> Real:
    """Moment about the weld's axis, per length of it."""
    return magnitude(n) * (t_2 / 2.0 + z / 4.0)


@formula(
    "n_root",
    "abs(n_perp) + 6*m_root/a",
    unit="N/mm",
    source=MODEL,
    args={"n_perp": Arg("N/mm", -2000, 2000), "m_root": Arg("N", 0, 40000), "a": Arg("mm", 2, 30)},
)
def force_at_root(n_perp: Real, m_root: Real, a: Real) -> Real:
    """Force per length square to the throat that puts on all of it the stress at the root."""
    return magnitude(n_perp) + 6.0 * m_root / a
