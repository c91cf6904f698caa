"""Opening a weld from its root: the throat bends as a strip, until its root tears or the plate beside it folds.

``m`` is a moment for each unit of length, in N (N mm on a millimetre). Weld metal's yield strength ``f_yw`` for the
first tearing and for folding, its tensile strength ``f_uw`` for breaking.
"""

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real, sqrt

STRIP = Source("", "bending of a strip as thick as the throat", "common practice, no source")
BALANCE = Source("", "hinge of the throat against hinge of the plate", "common practice, no source")
LEVER = Source("", "moment on a lever measured from the root", "geometry")

PLANE_STRAIN = 1.15
"""By how much a long strip is stronger than a free one at most: 2/sqrt(3); common practice, no source."""

HAND_FORCE = 250.0
"""What one person pulls on a lever with both hands, N; common practice, no source."""

THROAT, STRENGTH = Arg("mm", 0.2, 20.0), Arg("MPa", 200.0, 800.0)
MOMENT = Arg("N", 10.0, 50000.0)


@formula("m_el", "f_yw*a**2/6", unit="N", source=STRIP, args={"f_yw": STRENGTH, "a": THROAT})
def first_yield(f_yw: Real, a: Real) -> Real:
    """Moment on a length at which the root begins to yield."""
    return f_yw * a * a / 6.0


@formula("m_pl", "f_yw*a**2/4", unit="N", source=STRIP, args={"f_yw": STRENGTH, "a": THROAT})
def hinge(f_yw: Real, a: Real) -> Real:
    """Moment on a length at which the whole throat yields and folds."""
    return f_yw * a * a / 4.0


@formula("m_u", "f_uw*a**2/4", unit="N", source=STRIP, args={"f_uw": STRENGTH, "a": THROAT})
def breaking(f_uw: Real, a: Real) -> Real:
    """Moment on a length at which the throat breaks."""
    return f_uw * a * a / 4.0


@formula("m_max", "k_ps*m_u", unit="N", source=STRIP, args={"k_ps": Arg("", 1.0, 1.15), "m_u": MOMENT})
def breaking_at_most(k_ps: Real, m_u: Real) -> Real:
    """Moment on a length at which the throat breaks when it cannot narrow along its length."""
    return k_ps * m_u


@formula("m_p", "f_y*t**2/4", unit="N", source=STRIP, args={"f_y": STRENGTH, "t": Arg("mm", 1.0, 40.0)})
def plate_hinge(f_y: Real, t: Real) -> Real:
    """Moment on a length at which the plate folds."""
    return f_y * t * t / 4.0


@formula(
    "a_bal",
    "t*sqrt(f_y/f_uw)",
    unit="mm",
    source=BALANCE,
    args={"t": Arg("mm", 1.0, 40.0), "f_y": STRENGTH, "f_uw": STRENGTH},
)
def balanced_throat(t: Real, f_y: Real, f_uw: Real) -> Real:
    """Throat that breaks just as the plate folds; a larger one bends the plate."""
    return t * sqrt(f_y / f_uw)


@formula("M", "m*b", unit="N*mm", source=LEVER, args={"m": MOMENT, "b": Arg("mm", 20.0, 400.0)})
def moment(m: Real, b: Real) -> Real:
    """Moment on a coupon."""
    return m * b


@formula("P", "M/l", unit="N", source=LEVER, args={"M": Arg("N*mm", 1e3, 1e7), "l": Arg("mm", 50.0, 2000.0)})
def lever_force(M: Real, l: Real) -> Real:  # noqa: E741 - a lever's length
    """Force on the lever that makes the moment."""
    return M / l
