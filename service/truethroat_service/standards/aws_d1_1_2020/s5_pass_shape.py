"""Width and depth of one pass against the width of its face."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, maximum
from . import clause

PASS_SHAPE = clause("width and depth of a pass (3.7.2 in 2010)", "from memory")
LENGTH = Arg("mm", 1, 30)


@formula("f_pass", "maximum(D, W)/W_f", unit="", source=PASS_SHAPE, args={"D": LENGTH, "W": LENGTH, "W_f": LENGTH})
def pass_ratio(D: Real, W: Real, W_f: Real) -> Real:
    """Depth or greatest width of a pass, whichever is more, over the width of its face."""
    return maximum(D, W) / W_f
