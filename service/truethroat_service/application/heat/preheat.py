"""Preheat by EN 1011-2 methods A and B, SEW 088 and AWS D1.1, each where the request holds what it needs.

AWS D1.1 prints its preheat in degrees Fahrenheit, with degrees Celsius beside that are no exact conversions. The
temperature is the Fahrenheit value, converted exactly; ``printed`` holds both as printed. A plate that has either of
the two has its preheat.
"""

from dataclasses import dataclass

from ...engine.formula import Source, cite
from ...engine.rounding import SAME, at_least, at_most
from ...standards.aws_d1_1_2020 import s5_preheat
from ...standards.en_1011_2_2001 import c_2_method_a, c_3_method_b
from ...standards.en_1011_2_2001.c_3_method_b import Range
from ...standards.sew_088 import preheat as sew_088
from ..core.faults import Faults
from ..core.left_out import or_lacks
from ..core.quantities import ENERGY_PER_LENGTH, HYDROGEN, TEMPERATURE
from ..core.remarks import Remarks
from .answer import CategoryPreheat, FormulaPreheat, MethodAPreheat, PrintedPreheat
from .steel import Composition

_COVERED = {"CET": "a CET", "d": "plates", "HD": "hydrogen contents", "Q": "heat inputs"}


@dataclass(frozen=True, slots=True)
class MethodB:
    """Input of method B: CET, CET of the weld metal or None, plate (mm), hydrogen (ml/100 g), heat input (kJ/mm)."""

    cet: float
    weld_metal_cet: float | None
    thickness: float
    hydrogen: float
    heat_input: float


def check_method_b(asked: MethodB, composition: Composition | None, pointers: dict[str, str], faults: Faults) -> None:
    """Add a fault for each value outside the limits of method B; ``pointers`` holds the field of each value."""
    units = faults.units
    cet = _governing(asked)
    values = {
        "CET": (cet, f"{cet:.4g}"),
        "d": (asked.thickness, units.text(asked.thickness)),
        "HD": (asked.hydrogen, units.of(HYDROGEN, asked.hydrogen)["text"]),
        "Q": (asked.heat_input, units.of(ENERGY_PER_LENGTH, asked.heat_input)["text"]),
    }
    for name, (value, text) in values.items():
        _hold(value, text, c_3_method_b.RANGES[name], pointers[name], _COVERED[name], faults)
    if composition is not None:
        for element, share in composition.known(c_3_method_b.COMPOSITION).items():
            limits = c_3_method_b.COMPOSITION[element]
            _hold(share, f"{share:.4g} %", limits, f"#/composition/{element}", f"steels with {element}", faults)


def _hold(value: float, text: str, limits: Range, pointer: str, covered: str, faults: Faults) -> None:
    """Add a fault where a value lies outside the limits."""
    if not (at_least(value, limits.least) and at_most(value, limits.most)):
        faults.out_of_scope(pointer, f"method B covers {covered} of {limits} ({c_3_method_b.SCOPE}); here it is {text}")


def _governing(asked: MethodB) -> float:
    """CET that governs, without a step in the working."""
    if asked.weld_metal_cet is None:
        return asked.cet
    return max(asked.cet, asked.weld_metal_cet + c_3_method_b.WELD_METAL_MARGIN)


def method_b(asked: MethodB, start: float, remarks: Remarks) -> tuple[FormulaPreheat, FormulaPreheat]:
    """Preheat by method B and by its variant in SEW 088, degC; ``start`` is the temperature of the plate, degC."""
    cet = asked.cet
    if asked.weld_metal_cet is None:
        remarks.caution(
            "weld-metal-cet-not-given",
            "Only the CET of the parent steel is counted. If the CET of the weld metal is less than 0.03 below it, the"
            " weld metal governs with its CET plus 0.03; send weld_metal_cet.",
            c_3_method_b.MARGIN,
        )
    else:
        cet = float(
            c_3_method_b.governing_equivalent(
                CET=asked.cet, CET_w=asked.weld_metal_cet, m=c_3_method_b.WELD_METAL_MARGIN
            )
        )
    by = {"CET_g": cet, "d": asked.thickness, "HD": asked.hydrogen, "Q": asked.heat_input}
    by_b = float(c_3_method_b.preheat(**by, **c_3_method_b.COEFFICIENTS))
    by_sew = float(sew_088.preheat(**by, **sew_088.COEFFICIENTS))
    return (
        _formula_preheat(by_b, start, c_3_method_b.PREHEAT),
        _formula_preheat(by_sew, start, sew_088.PREHEAT),
    )


def is_frozen(start: float) -> bool:
    """Whether a plate of this temperature, degC, has to be warmed first, whatever its preheat."""
    return not at_least(start, s5_preheat.FROZEN_BELOW)


def _formula_preheat(by_rule: float, start: float, source: Source) -> FormulaPreheat:
    """Preheat of a formula, degC; a frozen plate is warmed to room temperature at least."""
    temperature = _warmed(by_rule, start, s5_preheat.PRINTED_WARMED_TO)
    return FormulaPreheat(temperature, bool(at_least(start, temperature)), str(source))


def _warmed(by_rule: float, start: float, least: float) -> float:
    """Temperature of a rule, degC, or what a frozen plate is warmed to, where that is more."""
    if not is_frozen(start):
        return by_rule
    return float(s5_preheat.warmed(T_r=by_rule, T_s=start, T_0=s5_preheat.FROZEN_BELOW, T_1=least))


def method_a(
    ce: float | None,
    heat_input: float | None,
    hydrogen: float,
    combined_thickness: float | None,
    start: float,
    remarks: Remarks,
) -> MethodAPreheat:
    """Hydrogen scale and the combined thickness, mm, up to which Table C.1 needs no preheat."""
    cite(c_2_method_a.HYDROGEN_SCALE)
    free: float | None = None
    if ce is not None and heat_input is not None and c_2_method_a.in_table_c_1(ce, heat_input):
        columns = c_2_method_a.COLUMNS
        free = float(
            c_2_method_a.without_preheat_to(
                CE=ce, Q=heat_input, HD=hydrogen, CE_1=columns["CE_1"], Q_2=columns["Q_2"], same=SAME
            )
        )
    remarks.caution(
        "method-a-reads-charts",
        "Method A reads its preheat from charts and has no formula. Table C.1 is used instead, with its column on the"
        " safe side. It gives the combined thickness up to which no preheat is needed, and nothing for thicker joints.",
        c_2_method_a.CHARTS,
    )
    enough: bool | None = None
    if free is not None and combined_thickness is not None:
        enough = bool(at_most(combined_thickness, free)) and not is_frozen(start)
    return MethodAPreheat(
        hydrogen_scale=c_2_method_a.hydrogen_scale(hydrogen),
        without_preheat_to=or_lacks(
            free,
            "needs a CE of up to 0.49 and a heat input of at least 1 kJ/mm; outside these limits read the charts"
            f" ({c_2_method_a.CHARTS})",
        ),
        combined_thickness=or_lacks(combined_thickness, "needs combined_thickness, or thickness and seam"),
        free_of_preheat=or_lacks(enough, "needs combined_thickness and without_preheat_to"),
        source=str(c_2_method_a.TABLE_C_1),
    )


def remark_on_cold_steel(remarks: Remarks) -> None:
    """Add the caution that frozen steel is warmed first."""
    remarks.caution(
        "cold-steel",
        "Steel that is colder than 32 degF (0 degC) has to be heated to 70 degF (20 degC) first.",
        s5_preheat.COLD_STEEL,
    )


def remark_on_frozen_plate(remarks: Remarks) -> None:
    """Add the cautions about a plate that is frozen, once each."""
    if all(caution.code != "cold-steel" for caution in remarks.cautions):
        remark_on_cold_steel(remarks)
    remarks.caution(
        "cold-air",
        "AWS D1.1 forbids welding where the air around the weld is colder than 0 degF (-20 degC).",
        s5_preheat.COLD_AIR,
    )


def aws_d1_1(category: str, thickest: float, start: float, remarks: Remarks) -> CategoryPreheat:
    """Preheat of AWS D1.1:2020 Table 5.8, degC, by category and thickest part, mm; ``start`` is the plate's, degC."""
    temperature = _warmed(float(s5_preheat.PREHEAT[category](t=thickest)), start, s5_preheat.WARMED_TO)
    fahrenheit = float(round(TEMPERATURE.from_engine(temperature, "degF")))
    if fahrenheit == 32.0:
        remark_on_cold_steel(remarks)
    remarks.caution(
        "categories-move",
        f"Category {category} is for {s5_preheat.CATEGORIES[category]}. Editions differ in which grades a category"
        " holds; read the edition of your contract.",
    )
    celsius = s5_preheat.PRINTED[fahrenheit]
    return CategoryPreheat(
        category=category,
        temperature=temperature,
        printed=PrintedPreheat(TEMPERATURE.to_engine(fahrenheit, "degF"), celsius),
        thickest_part=thickest,
        met=bool(at_least(start, temperature) or at_least(start, celsius)),
        source=str(s5_preheat.TABLE_5_8),
    )
