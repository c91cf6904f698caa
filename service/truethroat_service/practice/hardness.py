"""Hardness HV10 beside a weld, from composition and cooling time t8/5, by two models; shares in weight %.

TWI compared twelve such models with more than 300 welds: none was best, and the best blend of them had a standard
deviation of 28 HV. So neither is shown better than plus or minus 50.
"""

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real, atan, exp, log, maximum, minimum, sqrt, tanh

DUEREN = Source("Lorenz and Dueren 1981", "hardness by C, X and t8/5", "from memory")
YURIOKA = Source("N. Yurioka et al., Metal Construction 19 (1987), 217R", "hardness by arctangent", "from memory")
SCATTER = Source(
    "Nicholas and Abson, TWI, 17th Computer Technology in Welding conference, 2008", "SD 28 HV of the best"
)

MARGIN = 50.0
"""HV on either side of the models; about two of the standard deviations above."""

SECOND = 1.0
"""Time, s, that a cooling time is counted in."""

ELEMENTS = ("C", "Si", "Mn", "Cu", "Cr", "Ni", "Mo", "V", "Nb")
"""Elements that the two models go by."""

CARBON, SHARE = Arg("", 0.05, 0.3), Arg("", 0, 2)
SMALL = Arg("", 0, 0.2)
TIME, ONE_SECOND = Arg("s", 1, 100), Arg("s", SECOND, SECOND)
HARDNESS = Arg("", 150, 500)


@formula(
    "X",
    "Si/11 + Mn/8 + Cu/9 + Cr/5 + Ni/17 + Mo/6 + V/3",
    unit="",
    source=DUEREN,
    args={"Si": SHARE, "Mn": SHARE, "Cu": SHARE, "Cr": SHARE, "Ni": SHARE, "Mo": SHARE, "V": SMALL},
)
def alloying(Si: Real, Mn: Real, Cu: Real, Cr: Real, Ni: Real, Mo: Real, V: Real) -> Real:
    """Effect of the alloying elements besides carbon."""
    return Si / 11.0 + Mn / 8.0 + Cu / 9.0 + Cr / 5.0 + Ni / 17.0 + Mo / 6.0 + V / 3.0


@formula("HV_M", "802*C + 305", unit="", source=DUEREN, args={"C": CARBON})
def dueren_martensite(C: Real) -> Real:
    """Hardness of martensite."""
    return 802.0 * C + 305.0


@formula("HV_B", "350*(C + X) + 101", unit="", source=DUEREN, args={"C": CARBON, "X": SHARE})
def dueren_bainite(C: Real, X: Real) -> Real:
    """Hardness of bainite."""
    return 350.0 * (C + X) + 101.0


@formula(
    "HV_x",
    "2019*(C*(1 - 0.5*log(t/s_1)/log(10)) + 0.3*X) + 66*(1 - 0.8*log(t/s_1)/log(10))",
    unit="",
    source=DUEREN,
    args={"C": CARBON, "X": SHARE, "t": TIME, "s_1": ONE_SECOND},
)
def dueren_mixed(C: Real, X: Real, t: Real, s_1: Real) -> Real:
    """Hardness of a mixed structure."""
    decades = log(t / s_1) / log(10.0)
    return 2019.0 * (C * (1.0 - 0.5 * decades) + 0.3 * X) + 66.0 * (1.0 - 0.8 * decades)


@formula(
    "HV_D",
    "maximum(minimum(HV_x, HV_M), minimum(HV_B, HV_M))",
    unit="",
    source=DUEREN,
    args={"HV_x": HARDNESS, "HV_M": Arg("", 250, 500), "HV_B": Arg("", 150, 500)},
)
def dueren(HV_x: Real, HV_M: Real, HV_B: Real) -> Real:
    """Hardness, between that of bainite and that of martensite, which none exceeds."""
    return maximum(minimum(HV_x, HV_M), minimum(HV_B, HV_M))


@formula(
    "CE_1",
    "C + Si/24 + Mn/6 + Cu/15 + Ni/12 + Cr*(1 - 0.16*sqrt(Cr))/8 + Mo/4",
    unit="",
    source=YURIOKA,
    args={"C": CARBON, "Si": SHARE, "Mn": SHARE, "Cu": SHARE, "Ni": SHARE, "Cr": SHARE, "Mo": SHARE},
)
def equivalent_martensite(C: Real, Si: Real, Mn: Real, Cu: Real, Ni: Real, Cr: Real, Mo: Real) -> Real:
    """Carbon equivalent of the time to martensite."""
    return C + Si / 24.0 + Mn / 6.0 + Cu / 15.0 + Ni / 12.0 + Cr * (1.0 - 0.16 * sqrt(Cr)) / 8.0 + Mo / 4.0


@formula(
    "CE_2",
    "C + Si/24 + Mn/5 + Cu/10 + Ni/18 + Cr/5 + Mo/2.5 + V/5 + Nb/3",
    unit="",
    source=YURIOKA,
    args={
        "C": CARBON,
        "Si": SHARE,
        "Mn": SHARE,
        "Cu": SHARE,
        "Ni": SHARE,
        "Cr": SHARE,
        "Mo": SHARE,
        "V": SMALL,
        "Nb": SMALL,
    },
)
def equivalent_bainite(C: Real, Si: Real, Mn: Real, Cu: Real, Ni: Real, Cr: Real, Mo: Real, V: Real, Nb: Real) -> Real:
    """Carbon equivalent of the hardness without martensite."""
    return C + Si / 24.0 + Mn / 5.0 + Cu / 10.0 + Ni / 18.0 + Cr / 5.0 + Mo / 2.5 + V / 5.0 + Nb / 3.0


@formula(
    "CE_3",
    "C + Mn/3.6 + Cu/20 + Ni/9 + Cr/5 + Mo/4",
    unit="",
    source=YURIOKA,
    args={"C": CARBON, "Mn": SHARE, "Cu": SHARE, "Ni": SHARE, "Cr": SHARE, "Mo": SHARE},
)
def equivalent_end(C: Real, Mn: Real, Cu: Real, Ni: Real, Cr: Real, Mo: Real) -> Real:
    """Carbon equivalent of the time without martensite."""
    return C + Mn / 3.6 + Cu / 20.0 + Ni / 9.0 + Cr / 5.0 + Mo / 4.0


@formula("H_M", "884*C*(1 - 0.3*C**2) + 294", unit="", source=YURIOKA, args={"C": CARBON})
def yurioka_martensite(C: Real) -> Real:
    """Hardness of martensite by Yurioka."""
    return 884.0 * C * (1.0 - 0.3 * C**2) + 294.0


@formula("H_B", "145 + 130*tanh(2.65*CE_2 - 0.69)", unit="", source=YURIOKA, args={"CE_2": Arg("", 0.1, 1)})
def yurioka_bainite(CE_2: Real) -> Real:
    """Hardness without martensite by Yurioka."""
    return 145.0 + 130.0 * tanh(2.65 * CE_2 - 0.69)


@formula(
    "t_M",
    "s_1*exp(10.6*CE_1 - 4.8)",
    unit="s",
    source=YURIOKA,
    args={"CE_1": Arg("", 0.1, 0.8), "s_1": ONE_SECOND},
)
def time_to_martensite(CE_1: Real, s_1: Real) -> Real:
    """Longest cooling time that gives martensite alone."""
    return s_1 * exp(10.6 * CE_1 - 4.8)


@formula(
    "t_B",
    "s_1*exp(6.2*CE_3 + 0.74)",
    unit="s",
    source=YURIOKA,
    args={"CE_3": Arg("", 0.1, 1), "s_1": ONE_SECOND},
)
def time_without_martensite(CE_3: Real, s_1: Real) -> Real:
    """Shortest cooling time that gives no martensite."""
    return s_1 * exp(6.2 * CE_3 + 0.74)


@formula(
    "HV_Y",
    "(H_M + H_B)/2 - (H_M - H_B)*atan(4*log(t/t_M)/log(t_B/t_M) - 2)/(2.2*rad)",
    unit="",
    source=YURIOKA,
    args={
        "H_M": HARDNESS,
        "H_B": HARDNESS,
        "t": TIME,
        "t_M": Arg("s", 0.2, 5),
        "t_B": Arg("s", 10, 200),
    },
)
def yurioka(H_M: Real, H_B: Real, t: Real, t_M: Real, t_B: Real) -> Real:
    """Hardness by Yurioka."""
    return (H_M + H_B) / 2.0 - (H_M - H_B) * atan(4.0 * log(t / t_M) / log(t_B / t_M) - 2.0) / 2.2
