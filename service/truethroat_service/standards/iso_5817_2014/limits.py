"""Forms in which Table 1 states its limits: a constant and a share of throat, thickness or width, mostly capped.

And how long an imperfection may be where the table allows it over a short length only.
"""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, minimum
from . import clause

TABLE_1 = clause("Table 1")
SHORT = clause("definition of a short imperfection", "from memory")
CONSTANT, SHARE, CAP = Arg("mm", 0, 1), Arg("", 0.05, 1), Arg("mm", 0.5, 10)
THICKNESS, THIN_THICKNESS = Arg("mm", 3, 40), Arg("mm", 0.5, 3)
NOMINAL, WIDTH = Arg("mm", 2, 20), Arg("mm", 2, 40)

MOST_SHORT = 25.0
"""Total length, mm, of a short imperfection in the worst 100 mm of weld."""

SHORT_SHARE = 0.25
"""Share of a weld under 100 mm that a short imperfection may take."""


@formula(
    "h_max",
    "minimum(c_0 + c_1*t, cap)",
    unit="mm",
    source=TABLE_1,
    args={"c_0": CONSTANT, "c_1": SHARE, "t": THICKNESS, "cap": CAP},
)
def by_thickness(c_0: Real, c_1: Real, t: Real, cap: Real) -> Real:
    """Largest imperfection allowed by the thickness."""
    return minimum(c_0 + c_1 * t, cap)


@formula(
    "h_max",
    "c_0 + c_1*t",
    unit="mm",
    source=TABLE_1,
    args={"c_0": CONSTANT, "c_1": SHARE, "t": THIN_THICKNESS},
)
def by_thickness_uncapped(c_0: Real, c_1: Real, t: Real) -> Real:
    """Largest imperfection allowed by the thickness of thin material."""
    return c_0 + c_1 * t


@formula(
    "h_max",
    "minimum(c_0 + c_1*a, cap)",
    unit="mm",
    source=TABLE_1,
    args={"c_0": CONSTANT, "c_1": SHARE, "a": NOMINAL, "cap": CAP},
)
def by_throat(c_0: Real, c_1: Real, a: Real, cap: Real) -> Real:
    """Largest imperfection allowed by the nominal throat."""
    return minimum(c_0 + c_1 * a, cap)


@formula(
    "h_max",
    "c_0 + c_1*a",
    unit="mm",
    source=TABLE_1,
    args={"c_0": CONSTANT, "c_1": SHARE, "a": NOMINAL},
)
def by_throat_uncapped(c_0: Real, c_1: Real, a: Real) -> Real:
    """Largest imperfection allowed by the nominal throat, without a cap."""
    return c_0 + c_1 * a


@formula(
    "h_max",
    "minimum(c_0 + c_1*s, cap)",
    unit="mm",
    source=TABLE_1,
    args={"c_0": CONSTANT, "c_1": SHARE, "s": NOMINAL, "cap": CAP},
)
def by_butt_thickness(c_0: Real, c_1: Real, s: Real, cap: Real) -> Real:
    """Largest imperfection allowed by the nominal thickness of a butt weld."""
    return minimum(c_0 + c_1 * s, cap)


@formula(
    "h_max",
    "c_0 + c_1*s",
    unit="mm",
    source=TABLE_1,
    args={"c_0": CONSTANT, "c_1": SHARE, "s": NOMINAL},
)
def by_butt_thickness_uncapped(c_0: Real, c_1: Real, s: Real) -> Real:
    """Largest imperfection allowed by the nominal thickness of a butt weld in thin material."""
    return c_0 + c_1 * s


@formula(
    "h_max",
    "minimum(c_0 + c_1*b, cap)",
    unit="mm",
    source=TABLE_1,
    args={"c_0": CONSTANT, "c_1": SHARE, "b": WIDTH, "cap": CAP},
)
def by_width(c_0: Real, c_1: Real, b: Real, cap: Real) -> Real:
    """Largest imperfection allowed by the width of the weld's face or root."""
    return minimum(c_0 + c_1 * b, cap)


@formula(
    "h_max",
    "c_0 + c_1*b",
    unit="mm",
    source=TABLE_1,
    args={"c_0": CONSTANT, "c_1": SHARE, "b": WIDTH},
)
def by_width_uncapped(c_0: Real, c_1: Real, b: Real) -> Real:
    """Largest imperfection allowed by the width of the weld's face or root, without a cap."""
    return c_0 + c_1 * b


@formula(
    "l_short",
    "minimum(l_most, c_l*l_weld)",
    unit="mm",
    source=SHORT,
    args={"l_most": Arg("mm", 25, 25), "c_l": Arg("", 0.25, 0.25), "l_weld": Arg("mm", 10, 400)},
)
def short_length(l_most: Real, c_l: Real, l_weld: Real) -> Real:
    """Longest that a short imperfection may be in the worst 100 mm of weld, or in the whole of a shorter one."""
    return minimum(l_most, c_l * l_weld)
