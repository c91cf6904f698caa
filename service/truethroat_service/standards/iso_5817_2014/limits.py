"""Forms in which Table 1 states its limits: a constant and a share of throat, thickness or width, capped."""

from ...engine.formula import Arg, formula
from ...engine.numeric import Real, minimum
from . import clause

TABLE_1 = clause("Table 1")
CONSTANT, SHARE, CAP = Arg("mm", 0, 1), Arg("", 0.05, 0.3), Arg("mm", 1, 4)


@formula(
    "h_max",
    "minimum(c_0 + c_1*t, cap)",
    unit="mm",
    source=TABLE_1,
    args={"c_0": CONSTANT, "c_1": SHARE, "t": Arg("mm", 3, 40), "cap": CAP},
)
def by_thickness(c_0: Real, c_1: Real, t: Real, cap: Real) -> Real:
    """Largest imperfection allowed by the thickness."""
    return minimum(c_0 + c_1 * t, cap)


@formula(
    "h_max",
    "c_0 + c_1*t",
    unit="mm",
    source=TABLE_1,
    args={"c_0": CONSTANT, "c_1": SHARE, "t": Arg("mm", 0.5, 3)},
)
def by_thickness_uncapped(c_0: Real, c_1: Real, t: Real) -> Real:
    """Largest imperfection allowed by the thickness of thin material."""
    return c_0 + c_1 * t


@formula(
    "h_max",
    "minimum(c_0 + c_1*a, cap)",
    unit="mm",
    source=TABLE_1,
    args={"c_0": CONSTANT, "c_1": SHARE, "a": Arg("mm", 2, 20), "cap": CAP},
)
def by_throat(c_0: Real, c_1: Real, a: Real, cap: Real) -> Real:
    """Largest imperfection allowed by the nominal throat."""
    return minimum(c_0 + c_1 * a, cap)


@formula(
    "h_max",
    "c_0 + c_1*a",
    unit="mm",
    source=TABLE_1,
    args={"c_0": CONSTANT, "c_1": SHARE, "a": Arg("mm", 2, 20)},
)
def by_throat_uncapped(c_0: Real, c_1: Real, a: Real) -> Real:
    """Largest imperfection allowed by the nominal throat, without a cap."""
    return c_0 + c_1 * a


@formula(
    "h_max",
    "minimum(c_0 + c_1*b, cap)",
    unit="mm",
    source=TABLE_1,
    args={"c_0": CONSTANT, "c_1": SHARE, "b": Arg("mm", 2, 40), "cap": CAP},
)
def by_width(c_0: Real, c_1: Real, b: Real, cap: Real) -> Real:
    """Largest imperfection allowed by the width of the weld's face."""
    return minimum(c_0 + c_1 * b, cap)
