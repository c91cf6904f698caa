"""Known result recomputed: whether this process computes what a published example prints."""

from math import isclose

from ..engine.units import INCH, KSI
from .core.codes import Verdict
from .fillet_size import fillet_size
from .fillet_size.request import FilletSizeRequest, Joint, SharedForce
from .joints.metals import Filler, Part

# AISC Design Examples v16.0, Example J.1: two 3/16 in fillets 27 in long, end-loaded; phi Rn = 206 kips as printed.
_EXAMPLE_J_1 = FilletSizeRequest(
    rule_set="aisc-360-22-lrfd",
    joint=Joint("lap", sides=2),
    parts=(Part(INCH / 2, None, 50 * KSI, 65 * KSI), Part(INCH / 4, None, 50 * KSI, 65 * KSI)),
    basis="load",
    load=SharedForce(force=200 * KSI * INCH**2, length=27 * INCH, angle=0.0),
    filler=Filler("E70"),
    end_loaded=True,
    size_step=INCH / 16,
)
_PRINTED = 206.0
_PRINTED_TO = 0.006


def recomputed() -> tuple[bool, str]:
    """Whether the example gives the result as printed, and both results in words."""
    answer = fillet_size(_EXAMPLE_J_1)
    strength = answer.result.strength
    kips = 0.0 if strength is None else strength.weld * 2 * 27 * INCH / (KSI * INCH**2)
    ok = answer.verdict is Verdict.ENOUGH and isclose(kips, _PRINTED, rel_tol=_PRINTED_TO)
    return ok, f"AISC Design Examples v16.0, J.1: {kips:.1f} kips, printed 206"
