"""Section J2.6: filler metal that matches a base metal in no group of AWS D1.1, by levels of strength."""

from ...engine.formula import Arg, Source, formula
from ...engine.numeric import Real, ceil, maximum
from ...engine.rounding import SAME
from ...engine.units import KSI
from . import EDITION

LEVEL = 10.0 * KSI
LEAST_LEVEL = 60.0 * KSI

MATCHING = Source(
    EDITION,
    "J2.6 and Table J2.5; matching taken as the least level of 10 ksi, from E60, not under the part's tensile strength",
    "common practice, no source",
)


@formula(
    "F_match",
    "maximum(l*ceil(F_u/l - same), l_60)",
    unit="MPa",
    source=MATCHING,
    args={
        "F_u": Arg("MPa", 300.0, 800.0),
        "l": Arg("MPa", LEVEL, LEVEL),
        "l_60": Arg("MPa", LEAST_LEVEL, LEAST_LEVEL),
        "same": Arg("", SAME, SAME),
    },
)
def matching_level(F_u: Real, l: Real, l_60: Real, same: Real) -> Real:  # noqa: E741 - a level
    """Strength level of the filler metal that matches a part."""
    return maximum(l * ceil(F_u / l - same), l_60)
