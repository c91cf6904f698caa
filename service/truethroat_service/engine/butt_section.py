"""Cross-section of a butt weld as it was welded: what is left of its throat. Lengths in millimetres."""

from .formula import Arg, formula
from .numeric import Real, maximum
from .section import GEOMETRY, LENGTH


@formula(
    "a_left",
    "maximum(a_full - h_lost, 0*a_full)",
    unit="mm",
    source=GEOMETRY,
    args={"a_full": LENGTH, "h_lost": Arg("mm", 0, 20)},
)
def throat_left(a_full: Real, h_lost: Real) -> Real:
    """Throat of a butt after its hollows, its thinning and its unfused depth are taken off."""
    return maximum(a_full - h_lost, 0.0 * a_full)
