"""Shrinkage of welds in the plane of the plate: across the weld, along it, and by the heat put in.

No formula here was read in its original publication; each source says how it was read, and published estimates differ
by a factor of two. ``A`` is the deposited area of one weld, ``n`` the number of equal welds, ``r_w`` the share of the
length that is welded. Formulas written in inches carry a length of theirs as an argument, converted once.
"""

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real
from ..engine.units import INCH

AREA = Arg("mm**2", 1.0, 800.0)
THICKNESS = Arg("mm", 3.0, 60.0)
LEG = Arg("mm", 3.0, 25.0)
WELDS, SHARE = Arg("", 1.0, 2.0), Arg("", 0.1, 1.0)
LENGTH = Arg("mm", 100.0, 12000.0)
SECTION = Arg("mm**2", 500.0, 50000.0)
HEAT = Arg("kJ/mm", 0.2, 5.0)
STRAIN = Arg("", 1e-6, 1e-3)

BLODGETT = Source(
    "O. W. Blodgett, Design of Welded Structures", "transverse shrinkage, a tenth of the mean weld width", "second-hand"
)
SPRARAGEN = Source("W. Spraragen and W. G. Ettinger", "transverse shrinkage of butt welds", "from memory")
MASUBUCHI = Source("K. Masubuchi", "transverse shrinkage of tees (0.04 in) and laps (0.06 in)", "from memory")
TWI = Source("TWI", "How much shall I allow for weld shrinkage (frequently asked questions)")
HANDBOOK = Source("AWS Welding Handbook", "longitudinal shrinkage by cross-sections", "from memory")
KING = Source("C. W. R. King", "longitudinal shrinkage of butt welds, in inches", "from memory")
WHITE = Source("J. D. White", "tendon force of a weld", "from memory")
OKERBLOM = Source("N. O. Okerblom", "longitudinal strain of a welded member", "from memory")
ELASTIC = Source("", "elastic member under a force", "geometry")

SCATTER = 2.0
"""Factor by which one method alone may be out: published estimates differ by so much (TWI)."""

LARGEST_LEG = 0.75
"""Leg over thickness up to which Masubuchi's fillets and TWI's allowance for them hold."""

LEAST_SECTION = 20.0
"""Section over weld metal above which the shrinkage by cross-sections holds."""

TEE, LAP = 0.04 * INCH, 0.06 * INCH
"""Shrinkage of two fillets whose leg is the plate's thickness, mm."""

KING_COEFFICIENT = 0.12 * INCH / 1e5
"""King's 0.12/100000 in per ampere, mm/A."""

FILLET_ACROSS, BUTT_ACROSS = 0.8, (1.5, 3.0)
"""Allowances across one weld, mm."""

FILLET_ALONG, BUTT_ALONG, ALLOWED_LENGTH = 0.8, 3.0, 3000.0
"""Allowances along so much weld, mm."""

MODULUS = 210_000.0
"""Modulus of elasticity of steel, MPa (EN 1993-1-1:2005 3.2.6)."""

NEWTON_MILLIMETRES = 1e6
"""N mm in a kJ."""

EXPANSION, HEAT_CAPACITY = 12e-6, 4.87e-6
"""Thermal expansion, 1/K, and heat capacity, kJ/(mm3 K), of carbon steel; from memory."""

LEAST_YIELD = 235.0
"""Yield strength of the softest structural steel, MPa; a mean stress over it is no elastic member's."""


@formula("S", "0.1*A/t", unit="mm", source=BLODGETT, args={"A": AREA, "t": THICKNESS})
def tenth_of_mean_width(A: Real, t: Real) -> Real:
    """Shrinkage across a butt weld, a tenth of its mean width."""
    return 0.1 * A / t


@formula(
    "S",
    "0.2*A/t + 0.05*g",
    unit="mm",
    source=SPRARAGEN,
    args={"A": AREA, "t": THICKNESS, "g": Arg("mm", 0.0, 10.0)},
)
def fifth_with_opening(A: Real, t: Real, g: Real) -> Real:
    """Shrinkage across a butt weld, a fifth of its mean width and a share of its root opening."""
    return 0.2 * A / t + 0.05 * g


@formula(
    "S",
    "s_0*r_w*z/t",
    unit="mm",
    source=MASUBUCHI,
    args={"s_0": Arg("mm", 1.0, 1.6), "r_w": SHARE, "z": LEG, "t": THICKNESS},
)
def two_fillets(s_0: Real, r_w: Real, z: Real, t: Real) -> Real:
    """Shrinkage across the two fillets of a tee or lap together."""
    return s_0 * r_w * z / t


@formula("S", "n*s_1", unit="mm", source=TWI, args={"n": WELDS, "s_1": Arg("mm", 0.5, 3.0)})
def allowance_across(n: Real, s_1: Real) -> Real:
    """Shrinkage across a number of welds, by an allowance for each."""
    return n * s_1


@formula(
    "dL",
    "0.025*n*r_w*A*L/A_p",
    unit="mm",
    source=HANDBOOK,
    args={"n": WELDS, "r_w": SHARE, "A": AREA, "L": LENGTH, "A_p": SECTION},
)
def by_cross_sections(n: Real, r_w: Real, A: Real, L: Real, A_p: Real) -> Real:
    """Shortening along the welds, by the area of their metal and of the section that they shorten."""
    return 0.025 * n * r_w * A * L / A_p


@formula(
    "dL",
    "c_K*I*L/t",
    unit="mm",
    source=KING,
    args={"c_K": Arg("mm/A", 2e-5, 4e-5), "I": Arg("A", 50.0, 1000.0), "L": LENGTH, "t": THICKNESS},
)
def by_current(c_K: Real, I: Real, L: Real, t: Real) -> Real:  # noqa: E741 - the symbol of a current
    """Shortening along a butt weld, by its current."""
    return c_K * I * L / t


@formula(
    "dL",
    "n*s_1*L/l_1",
    unit="mm",
    source=TWI,
    args={"n": WELDS, "s_1": Arg("mm", 0.5, 3.0), "L": LENGTH, "l_1": Arg("mm", 3000.0, 3000.0)},
)
def allowance_along(n: Real, s_1: Real, L: Real, l_1: Real) -> Real:
    """Shortening along a number of welds, by an allowance for each."""
    return n * s_1 * L / l_1


@formula("F", "0.2*k_J*Q", unit="N", source=WHITE, args={"k_J": Arg("N*mm/kJ", 1e6, 1e6), "Q": HEAT})
def tendon_force(k_J: Real, Q: Real) -> Real:
    """Force with which one weld pulls its member together, by its net heat input."""
    return 0.2 * k_J * Q


@formula(
    "sigma",
    "n*r_w*F/A_p",
    unit="MPa",
    source=ELASTIC,
    args={"n": WELDS, "r_w": SHARE, "F": Arg("N", 1e4, 1e6), "A_p": SECTION},
)
def mean_stress(n: Real, r_w: Real, F: Real, A_p: Real) -> Real:
    """Mean stress of a member under its tendon forces."""
    return n * r_w * F / A_p


@formula(
    "dL",
    "sigma*L/E",
    unit="mm",
    source=ELASTIC,
    args={"sigma": Arg("MPa", 1.0, 235.0), "L": LENGTH, "E": Arg("MPa", 2e5, 2.1e5)},
)
def by_mean_stress(sigma: Real, L: Real, E: Real) -> Real:
    """Shortening of a member under its tendon forces."""
    return sigma * L / E


@formula(
    "eps",
    "0.335*n*r_w*Q*alpha/(c_rho*A_p)",
    unit="",
    source=OKERBLOM,
    args={
        "n": WELDS,
        "r_w": SHARE,
        "Q": HEAT,
        "alpha": Arg("1/degC", 1e-5, 1.7e-5),
        "c_rho": Arg("kJ/(mm**3*degC)", 3e-6, 5e-6),
        "A_p": SECTION,
    },
)
def strain_by_heat(n: Real, r_w: Real, Q: Real, alpha: Real, c_rho: Real, A_p: Real) -> Real:
    """Strain of a member along its welds, by their net heat input."""
    return 0.335 * n * r_w * Q * alpha / (c_rho * A_p)


@formula("dL", "eps*L", unit="mm", source=OKERBLOM, args={"eps": STRAIN, "L": LENGTH})
def by_strain(eps: Real, L: Real) -> Real:
    """Shortening of a member by its strain along the welds."""
    return eps * L
