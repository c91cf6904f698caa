"""Clause 6.1.6.3: how far from a weld its heat softens the metal, with no more than 60 degC between passes."""

from ...engine.formula import Arg, Table, cite, formula
from ...engine.numeric import Real
from ...engine.rounding import at_most
from . import clause

EXTENT = clause("6.1.6.3")

MIG = Table("table_b_haz", "mm", "mm", limits=(6.0, 12.0, 25.0), values=(20.0, 30.0, 35.0, 40.0), source=EXTENT)
TIG_EXTENT = 30.0
"""Extent by TIG on parts up to ``TIG_THICKEST``, mm."""

TIG_THICKEST = 6.0


@formula(
    "b_haz",
    "table_b_haz(t)",
    unit="mm",
    source=EXTENT,
    tables=(MIG,),
    args={"t": Arg("mm", 1.5, 40.0, MIG.limits)},
)
def extent_by_mig(t: Real) -> Real:
    """Extent of the heat-affected zone from the weld, by MIG."""
    return MIG(t)


def softened(thickness: Real, process: str | None) -> Real | None:
    """Extent of the heat-affected zone, mm, by MIG where the process is not said; None where the clause has none."""
    if process == "GTAW" and at_most(thickness, TIG_THICKEST):
        cite(EXTENT)
        return TIG_EXTENT
    return extent_by_mig(t=thickness) if process in (None, "GMAW") else None
