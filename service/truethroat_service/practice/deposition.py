"""Deposited metal, and what depositing it takes: consumable, time, gas and energy.

Efficiency is the share of the consumable that becomes weld metal. A deposition rate is of deposited metal, so that
efficiency has its place in the mass to buy and none in the time.
"""

from math import pi

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real

STEEL = 7.85e-6
"""Density of carbon steel, kg/mm3; common practice, no source."""

CARBON_STEEL = Source("", "carbon steel at 7850 kg/m3", "common practice, no source")
DEPOSITED = Source("", "mass of a section with its excess over all welds", "geometry")
LIGHT = 0.95
"""Density over that of carbon steel under which a metal is not steel; the densities of steels differ by less."""

USUAL_EXCESS = 0.10
"""Share of the area that an estimator adds to a weld as drawn."""

LARGEST_USUAL_EXCESS = 1.1**2 - 1.0
"""Share of the area that a tenth more leg adds: the convex columns of estimating handbooks."""

TENTH_ON_AREA = Source("", "a tenth on the area of a weld as drawn, the usual allowance", "common practice, no source")
TENTH_ON_LEG = Source("ESAB Filler Metal Data Handbook", "section 8, p. 8-9: convex fillets, a tenth on the leg")
SAME_FEED = Source("", "the same volume of wire fed, by the density of the metal", "geometry")
ESAB = Source("ESAB Filler Metal Data Handbook", "section 8, pp. 8-6 to 8-8")
BOUGHT = Source("ESAB Filler Metal Data Handbook", "section 8, p. 8-1: P = W L/E")
STUBS = Source("ESAB Basic Welding Filler Metal Technology", "Lesson IX, Fig. 5, p. 9-8")
WIRE = Source("", "mass balance of a wire", "geometry")

SOURCE_EFFICIENCY = (0.65, 0.85)
"""Share of mains energy that reaches the arc: a rectifier, an inverter."""

SOURCES = Source("", "power sources at 65 (rectifier) to 85 % (inverter)", "common practice, no source")

JOULE = 1e-3
"""kJ in a volt ampere second."""

DENSITY = Arg("kg/mm**3", 2e-6, 9e-6)
MASS = Arg("kg", 0.1, 500.0)
SHARE = Arg("", 0.1, 1.0)
RATE = Arg("kg/s", 1e-4, 5e-3)
TIME = Arg("s", 10.0, 1e5)
ELECTRODE = Arg("mm", 300.0, 450.0)
STUB = Arg("mm", 0.0, 130.0)


@formula(
    "m",
    "rho*A",
    unit="kg/mm",
    source=CARBON_STEEL,
    args={"rho": DENSITY, "A": Arg("mm**2", 1, 500)},
)
def mass_per_length(rho: Real, A: Real) -> Real:
    """Deposited mass per length of weld."""
    return rho * A


@formula(
    "M",
    "rho*A*(1 + x)*L*n",
    unit="kg",
    source=DEPOSITED,
    args={
        "rho": DENSITY,
        "A": Arg("mm**2", 1, 500),
        "x": Arg("", 0, 0.5),
        "L": Arg("mm", 10, 1e5),
        "n": Arg("", 1, 100),
    },
)
def deposited_mass(rho: Real, A: Real, x: Real, L: Real, n: Real) -> Real:
    """Deposited mass of a number of equal welds; the excess is a share of the section."""
    return rho * A * (1.0 + x) * L * n


@formula(
    "D_rho",
    "D_s*rho/rho_s",
    unit="kg/s",
    source=SAME_FEED,
    args={"D_s": RATE, "rho": DENSITY, "rho_s": Arg("kg/mm**3", STEEL, STEEL)},
)
def rate_of_lighter_metal(D_s: Real, rho: Real, rho_s: Real) -> Real:
    """Deposition rate of a metal lighter than steel, where the same volume of wire is fed."""
    return D_s * rho / rho_s


@formula("W_c", "M/eta", unit="kg", source=BOUGHT, args={"M": MASS, "eta": SHARE})
def consumable_mass(M: Real, eta: Real) -> Real:
    """Mass of consumable to buy."""
    return M / eta


@formula(
    "eta_0",
    "eta_s*L_e/(L_e - s)",
    unit="",
    source=STUBS,
    args={"eta_s": SHARE, "L_e": ELECTRODE, "s": STUB},
)
def efficiency_before_stub(eta_s: Real, L_e: Real, s: Real) -> Real:
    """Efficiency of a stick electrode without its stub, from one that counts a stub as lost."""
    return eta_s * L_e / (L_e - s)


@formula(
    "eta",
    "eta_0*(L_e - s)/L_e",
    unit="",
    source=STUBS,
    args={"eta_0": SHARE, "L_e": ELECTRODE, "s": STUB},
)
def efficiency_with_stub(eta_0: Real, L_e: Real, s: Real) -> Real:
    """Efficiency of a stick electrode whose stub is lost."""
    return eta_0 * (L_e - s) / L_e


@formula(
    "m_w",
    "pi/(4*rad)*d**2*rho",
    unit="kg/mm",
    source=WIRE,
    args={"d": Arg("mm", 0.6, 5.0), "rho": DENSITY},
)
def wire_mass(d: Real, rho: Real) -> Real:
    """Mass per length of a solid round wire."""
    return pi / 4.0 * d * d * rho


@formula(
    "D",
    "m_w*v_w*eta",
    unit="kg/s",
    source=WIRE,
    args={"m_w": Arg("kg/mm", 1e-6, 2e-4), "v_w": Arg("mm/s", 10, 400), "eta": SHARE},
)
def deposition_rate(m_w: Real, v_w: Real, eta: Real) -> Real:
    """Deposition rate of a wire fed at a speed."""
    return m_w * v_w * eta


@formula("T_a", "M/D", unit="s", source=ESAB, args={"M": MASS, "D": RATE})
def arc_time(M: Real, D: Real) -> Real:
    """Time during which the arc burns."""
    return M / D


@formula("T_w", "T_a/k_o", unit="s", source=ESAB, args={"T_a": TIME, "k_o": SHARE})
def working_time(T_a: Real, k_o: Real) -> Real:
    """Time on the clock; the arc burns for a share of it."""
    return T_a / k_o


@formula("V_g", "q*T_a", unit="mm**3", source=ESAB, args={"q": Arg("mm**3/s", 1e5, 4e5), "T_a": TIME})
def gas_volume(q: Real, T_a: Real) -> Real:
    """Shielding gas that flows while the arc burns."""
    return q * T_a


@formula(
    "E_s",
    "U*I*T_a*k_J/eta_u",
    unit="kJ",
    source=ESAB,
    args={
        "U": Arg("V", 10, 45),
        "I": Arg("A", 50, 1000),
        "T_a": TIME,
        "k_J": Arg("kJ/(V*A*s)", JOULE, JOULE),
        "eta_u": SHARE,
    },
)
def mains_energy(U: Real, I: Real, T_a: Real, k_J: Real, eta_u: Real) -> Real:  # noqa: E741 - current
    """Energy from the mains; the power source passes on a share of it."""
    return U * I * T_a * k_J / eta_u
