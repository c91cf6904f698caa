"""Clause C.2, method A: carbon equivalent CE, hydrogen scale and combined thickness.

The preheat itself is read off charts that no formula stands for; what is here is Table C.1, the combined thickness
that may be welded without preheat. Between its columns the worse one holds.
"""

from typing import Literal

from ...engine.formula import Arg, Table, formula
from ...engine.numeric import Real, where
from ...engine.rounding import SAME, at_most
from . import clause

CE = clause("C.2, carbon equivalent CE", "second-hand")
HYDROGEN_SCALE = clause("C.2, hydrogen scale", "from memory")
TABLE_C_1 = clause("Table C.1")
COMBINED = clause("C.2, combined thickness of Figure C.1", "from memory")
CHARTS = clause("C.2, charts of Figure C.2", "from memory")

HydrogenScale = Literal["A", "B", "C", "D", "E"]

SCALES: tuple[tuple[float, HydrogenScale], ...] = ((3.0, "E"), (5.0, "D"), (10.0, "C"), (15.0, "B"))
"""Largest hydrogen content, ml/100 g, of each scale; over the last one it is A."""

COLUMNS = {"CE_1": 0.43, "CE_2": 0.49, "Q_1": 1.0, "Q_2": 2.0}
"""Carbon equivalents and heat inputs (kJ/mm) of the columns."""

SHARE = Arg("", 0, 2)


def _column(name: str, *millimetres: float) -> Table:
    """Column of Table C.1, by the hydrogen content."""
    return Table(
        name, "ml_per_100g", "mm", limits=tuple(limit for limit, _ in SCALES), values=millimetres, source=TABLE_C_1
    )


CE_43_1 = _column("C1_43_1", 100.0, 100.0, 60.0, 50.0, 40.0)
CE_43_2 = _column("C1_43_2", 100.0, 100.0, 100.0, 90.0, 80.0)
CE_49_1 = _column("C1_49_1", 60.0, 50.0, 35.0, 30.0, 25.0)
CE_49_2 = _column("C1_49_2", 100.0, 100.0, 65.0, 55.0, 50.0)


def hydrogen_scale(hydrogen: float) -> HydrogenScale:
    """Letter of a diffusible hydrogen content of the weld metal, ml/100 g; A is the worst."""
    return next((scale for limit, scale in SCALES if at_most(hydrogen, limit)), "A")


@formula(
    "CE",
    "C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15",
    unit="",
    source=CE,
    args={"C": SHARE, "Mn": SHARE, "Cr": SHARE, "Mo": SHARE, "V": SHARE, "Ni": SHARE, "Cu": SHARE},
)
def carbon_equivalent(C: Real, Mn: Real, Cr: Real, Mo: Real, V: Real, Ni: Real, Cu: Real) -> Real:
    """Carbon equivalent CE, of shares in weight %."""
    return C + Mn / 6.0 + (Cr + Mo + V) / 5.0 + (Ni + Cu) / 15.0


@formula(
    "d_free",
    "where(CE <= CE_1*(1 + same), where(Q >= Q_2*(1 - same), C1_43_2(HD), C1_43_1(HD)),"
    " where(Q >= Q_2*(1 - same), C1_49_2(HD), C1_49_1(HD)))",
    unit="mm",
    source=TABLE_C_1,
    args={
        "CE": Arg("", 0.3, 0.49, (0.43,)),
        "Q": Arg("kJ/mm", 1, 4, (2.0,)),
        "HD": Arg("ml_per_100g", 1, 25, tuple(limit for limit, _ in SCALES)),
        "CE_1": Arg("", 0.43, 0.43),
        "Q_2": Arg("kJ/mm", 2, 2),
        "same": Arg("", SAME, SAME),
    },
    tables=(CE_43_2, CE_43_1, CE_49_2, CE_49_1),
)
def without_preheat_to(CE: Real, Q: Real, HD: Real, CE_1: Real, Q_2: Real, same: Real) -> Real:
    """Largest combined thickness that may be welded without preheat."""
    hot = Q >= Q_2 * (1.0 - same)
    return where(
        CE <= CE_1 * (1.0 + same),
        where(hot, CE_43_2(HD), CE_43_1(HD)),
        where(hot, CE_49_2(HD), CE_49_1(HD)),
    )


@formula(
    "d_2",
    "t_1 + t_2",
    unit="mm",
    source=COMBINED,
    args={"t_1": Arg("mm", 1, 100), "t_2": Arg("mm", 1, 100)},
)
def combined_of_two(t_1: Real, t_2: Real) -> Real:
    """Combined thickness where heat flows into two plates: a butt, a corner, or both halves of one plate."""
    return t_1 + t_2


@formula(
    "d_3",
    "t_1 + 2*t_2",
    unit="mm",
    source=COMBINED,
    args={"t_1": Arg("mm", 1, 100), "t_2": Arg("mm", 1, 100)},
)
def combined_of_three(t_1: Real, t_2: Real) -> Real:
    """Combined thickness of a tee: its web, and its flange to both sides."""
    return t_1 + 2.0 * t_2


def in_table_c_1(CE: float, Q: float) -> bool:
    """Whether Table C.1 has a column that is no kinder than this steel and heat input."""
    return bool(at_most(CE, COLUMNS["CE_2"]) and at_most(COLUMNS["Q_1"], Q))
