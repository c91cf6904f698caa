"""Turning and bending by welds: angular change of a joint, lift of a flange's edge, bow of a member.

No formula here was read in its original publication. Angles are in rad; the other symbols and
units are those of ``practice.shrinkage``.
"""

from math import pi

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real
from ..engine.units import INCH
from .preparation import GROOVES
from .shrinkage import AREA, LEG, LENGTH, OKERBLOM, SECTION, SHARE, STRAIN, THICKNESS, WELDS

FLANGE = Source("O. W. Blodgett", "warpage of a flange by two fillets, in inches", "from memory")
PER_RUN = Source("", "about 1 deg a run, single V or single fillet left free", "common practice, no source")
WEDGE = Source(
    "", "a tenth of face and root widths shrinks at each, as a tenth of the mean width", "common practice, no source"
)
BOW = Source("O. W. Blodgett", "longitudinal bending", "from memory")
ELASTIC_BOW = Source("", "elastic member under a force off its axis, bent evenly", "geometry")
RESTRAINT = Source("K. Masubuchi", "angular change of a restrained fillet", "from memory")
EVEN = Source("", "equal sides welded in turn pull evenly", "common practice, no source")

FLANGE_COEFFICIENT = 0.02 * INCH**0.7
"""0.02 of the inch formula, mm**0.7: 0.1925."""

DEGREE = pi / 180.0
POISSON = 0.3
"""Of steel (EN 1993-1-1:2005 3.2.6)."""

WIDEST_WEDGE = 3.5
"""Face less root width, over the depth, of a V of 120 deg: wider is no groove."""

LARGEST_BOW = 0.1
"""Bow over length up to which an evenly bent member is its chord's parabola."""

MOMENT_AREA = Arg("mm**4", 1e5, 1e9)
ECCENTRICITY = Arg("mm", 1.0, 500.0)
FLANGE_FACTOR = Arg("mm**0.7", 0.1, 0.3)


@formula(
    "phi_0",
    "2*c_B*z**1.3*rad/t**2",
    unit="rad",
    source=FLANGE,
    args={"c_B": FLANGE_FACTOR, "z": LEG, "t": THICKNESS},
)
def flange_angle(c_B: Real, z: Real, t: Real) -> Real:
    """Angle by which two fillets turn each half of a flange that is free to turn."""
    return 2.0 * c_B * z**1.3 / (t * t)


@formula(
    "d_e",
    "c_B*W*z**1.3/t**2",
    unit="mm",
    source=FLANGE,
    args={"c_B": FLANGE_FACTOR, "W": Arg("mm", 50.0, 600.0), "z": LEG, "t": THICKNESS},
)
def edge_lift(c_B: Real, W: Real, z: Real, t: Real) -> Real:
    """Lift of each edge of a flange of full width W, drawn by two fillets."""
    return c_B * W * z**1.3 / (t * t)


@formula(
    "phi_0",
    "n_r*phi_1",
    unit="rad",
    source=PER_RUN,
    args={"n_r": Arg("", 1.0, 20.0), "phi_1": Arg("rad", 0.01, 0.02)},
)
def angle_by_runs(n_r: Real, phi_1: Real) -> Real:
    """Angular change of a one-sided joint that is free to turn, by its runs."""
    return n_r * phi_1


@formula(
    "W_f",
    "W_r + k_s*s",
    unit="mm",
    source=GROOVES,
    args={"W_r": Arg("mm", 0.0, 10.0), "k_s": Arg("", 1.0, 2.0), "s": Arg("mm", 1.0, 30.0)},
)
def face_width(W_r: Real, k_s: Real, s: Real) -> Real:
    """Width of a groove at its face, one or both of its edges cut back from the root."""
    return W_r + k_s * s


@formula(
    "phi_0",
    "0.1*rad*(W_f - W_r)/d",
    unit="rad",
    source=WEDGE,
    args={"W_f": Arg("mm", 8.0, 40.0), "W_r": Arg("mm", 0.0, 8.0), "d": THICKNESS},
)
def wedge_angle(W_f: Real, W_r: Real, d: Real) -> Real:
    """Angular change of a groove welded from one side, whose whole section shrinks at once."""
    return 0.1 * (W_f - W_r) / d


@formula(
    "R",
    "E*t**3/(12*(1 - nu**2))",
    unit="N*mm",
    source=Source("", "bending stiffness of a plate", "geometry"),
    args={"E": Arg("MPa", 2e5, 2.1e5), "t": THICKNESS, "nu": Arg("", 0.25, 0.35)},
)
def plate_stiffness(E: Real, t: Real, nu: Real) -> Real:
    """Bending stiffness of a plate, for each unit of its width."""
    return E * t**3 / (12.0 * (1.0 - nu * nu))


@formula(
    "phi",
    "phi_0/(1 + 2*R/(l*C))",
    unit="rad",
    source=RESTRAINT,
    args={
        "phi_0": Arg("rad", 0.001, 0.2),
        "R": Arg("N*mm", 1e5, 1e8),
        "l": Arg("mm", 100.0, 2000.0),
        "C": Arg("N", 1e3, 1e6),
    },
)
def restrained_angle(phi_0: Real, R: Real, l: Real, C: Real) -> Real:  # noqa: E741 - the span of the source
    """Angular change of a fillet between stiffeners."""
    return phi_0 / (1.0 + 2.0 * R / (l * C))


@formula(
    "f",
    "0.005*n*r_w*A*d*L**2/I",
    unit="mm",
    source=BOW,
    args={"n": WELDS, "r_w": SHARE, "A": AREA, "d": ECCENTRICITY, "L": LENGTH, "I": MOMENT_AREA},
)
def bow_by_area(n: Real, r_w: Real, A: Real, d: Real, L: Real, I: Real) -> Real:  # noqa: E741 - second moment
    """Bow of a member, by the metal of its welds off the axis."""
    return 0.005 * n * r_w * A * d * L * L / I


@formula(
    "f",
    "sigma*A_p*d*L**2/(8*E*I)",
    unit="mm",
    source=ELASTIC_BOW,
    args={
        "sigma": Arg("MPa", 1.0, 235.0),
        "A_p": SECTION,
        "d": ECCENTRICITY,
        "L": LENGTH,
        "E": Arg("MPa", 2e5, 2.1e5),
        "I": MOMENT_AREA,
    },
)
def bow_by_stress(sigma: Real, A_p: Real, d: Real, L: Real, E: Real, I: Real) -> Real:  # noqa: E741 - as above
    """Bow of a member under its tendon forces."""
    return sigma * A_p * d * L * L / (8.0 * E * I)


@formula(
    "f",
    "eps*A_p*d*L**2/(8*I)",
    unit="mm",
    source=OKERBLOM,
    args={"eps": STRAIN, "A_p": SECTION, "d": ECCENTRICITY, "L": LENGTH, "I": MOMENT_AREA},
)
def bow_by_strain(eps: Real, A_p: Real, d: Real, L: Real, I: Real) -> Real:  # noqa: E741 - as above
    """Bow of a member by its strain along the welds."""
    return eps * A_p * d * L * L / (8.0 * I)
