"""Clause 4.3.2.2: intermittent fillet welds.

The gap that counts is the lesser of that on one side and that to the segment on the opposite side (4.3.2.2(3)).
"""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, maximum, minimum
from . import clause

MOST = 200.0
"""Largest clear gap, mm."""

THICKNESS = Arg("mm", 4.0, 40.0)
WIDTH = Arg("mm", 40.0, 1000.0)


@formula(
    "e_t_max",
    "minimum(16*minimum(t, t_1), L_0)",
    unit="mm",
    source=clause("4.3.2.2(2), Figure 4.1", "from memory"),
    args={"t": THICKNESS, "t_1": THICKNESS, "L_0": Arg("mm", MOST, MOST)},
)
def gap_in_tension(t: Real, t_1: Real, L_0: Real) -> Real:
    """Largest clear gap in tension."""
    return minimum(16.0 * minimum(t, t_1), L_0)


@formula(
    "e_c_max",
    "minimum(minimum(12*minimum(t, t_1), 0.25*minimum(b, b_1)), L_0)",
    unit="mm",
    source=clause("4.3.2.2(2), Figure 4.1", "from memory"),
    args={"t": THICKNESS, "t_1": THICKNESS, "b": WIDTH, "b_1": WIDTH, "L_0": Arg("mm", MOST, MOST)},
)
def gap_in_compression(t: Real, t_1: Real, b: Real, b_1: Real, L_0: Real) -> Real:
    """Largest clear gap in compression or shear; of the two widths the narrower."""
    return minimum(minimum(12.0 * minimum(t, t_1), 0.25 * minimum(b, b_1)), L_0)


@formula(
    "L_we",
    "0.75*maximum(b, b_1)",
    unit="mm",
    source=clause("4.3.2.2(5) and Figure 4.1", "from memory"),
    args={"b": WIDTH, "b_1": WIDTH},
)
def end_weld(b: Real, b_1: Real) -> Real:
    """Continuous weld at each end of a built-up member.

    The text goes by the narrower plate, the figure by each; the wider is taken.
    """
    return 0.75 * maximum(b, b_1)
