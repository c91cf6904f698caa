"""Figure 5.2: throat of a prequalified square groove, by the thickness it stands in."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real
from . import clause


@formula(
    "a_e",
    "k_T*T - c",
    unit="mm",
    source=clause("Figure 5.2, B-P1a, B-P1b and B-P1c"),
    args={"k_T": Arg("", 0.5, 1.0), "T": Arg("mm", 3.0, 6.35), "c": Arg("mm", 0.0, 1.0)},
)
def square_throat(k_T: Real, T: Real, c: Real) -> Real:
    """Throat of a square groove: a share of the thickness, less a length."""
    return k_T * T - c
