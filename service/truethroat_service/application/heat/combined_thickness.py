"""Combined thickness of method A, from the parts that meet at the weld.

In a tee the request does not say which part runs through. The thicker one is taken to: heat then flows into it to both
sides, and the combined thickness is the largest that these two parts can have.
"""

from ...engine.formula import off_the_sheet
from ...standards.en_1011_2_2001 import c_2_method_a
from .request import SeamKind

_MOST_PARTS = 4.0
"""Plates that meet at a cruciform joint, the most that a weld has around it."""


def combined(thin: float, thick: float, seam: SeamKind) -> float:
    """Combined thickness, mm, of a thinner and a thicker part."""
    if seam == "tee-fillet":
        return float(c_2_method_a.combined_of_three(t_1=thin, t_2=thick))
    if seam == "plate":
        return float(c_2_method_a.combined_of_two(t_1=thick, t_2=thick))
    return float(c_2_method_a.combined_of_two(t_1=thin, t_2=thick))


def bounds(thin: float, thick: float, seam: SeamKind | None) -> tuple[float, float]:
    """Least and largest combined thickness, mm, that such parts can have.

    The least is that of a butt, or that of a tee whose two fillets are welded at the same time, with the thinner part
    running through. The largest is that of a cruciform joint of the thicker part.
    """
    with off_the_sheet():
        two = float(c_2_method_a.combined_of_two(t_1=thin, t_2=thick))
        half = float(c_2_method_a.combined_of_three(t_1=thick, t_2=thin)) / 2.0
    least = two if seam in ("plate", "butt-fill", "corner-fillet") else min(two, half)
    return least, _MOST_PARTS * thick
