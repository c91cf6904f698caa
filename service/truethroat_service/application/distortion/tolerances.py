"""Estimates against ISO 13920:1996: the class that each keeps, and whether the class required is kept.

A class is judged on the upper end of the band. An angle must keep both columns of its table, because the rises are
printed rounded, those of classes B and D up to 400 mm downwards.
"""

from collections.abc import Mapping
from math import atan
from typing import Any, Literal

from ...engine.formula import Formula, about
from ...engine.rounding import at_most
from ...standards.iso_13920_1996 import table_1_linear, table_2_angular, table_3_form
from ..core.faults import Faults
from ..core.quantities import ANGLE, LENGTH
from ..core.shape import Measured
from .answer import ToleranceCheck, ToleranceClass
from .estimates import Band
from .request import WeldingTolerances


def checks(
    asked: WeldingTolerances, width: float | None, bands: Mapping[str, Band], faults: Faults
) -> list[ToleranceCheck]:
    """Checks of every estimate with a nominal dimension against its table, on the upper end of its band.

    A band of one method is widened first, as its caution says.
    Adds a fault for a dimension that no estimate changes, and for a class without a dimension to judge it by.
    """
    held: list[ToleranceCheck] = []
    across = _held_on(bands, ("transverse",), "across", asked.across, faults)
    along = _held_on(bands, ("longitudinal", "bowing"), "along", asked.along, faults)
    leg = _held_on(bands, ("angular",), "shorter_leg", asked.shorter_leg, faults)
    for nominal, quantity in ((across, "transverse"), (along, "longitudinal")):
        value = bands[quantity].judged_high
        if nominal is not None and value is not None:
            held.append(_length(quantity, nominal, value, table_1_linear.CLASSES, asked.linear_class, "Table 1"))
    turned = bands["angular"].judged_high
    if leg is not None and turned is not None:
        held.append(_angle(leg, turned, asked.linear_class))
    for nominal, quantity in ((along, "bowing"), (width, "edge_lift")):
        value = bands[quantity].judged_high
        if nominal is not None and value is not None:
            if nominal > table_3_form.OVER:
                held.append(_length(quantity, nominal, value, table_3_form.CLASSES, asked.form_class, "Table 3"))
            elif asked.form_class is not None and quantity == "bowing":
                faults.out_of_scope(
                    "#/iso_13920/along",
                    f"must be over {faults.units.text(table_3_form.OVER)} for a form_class (ISO 13920 Table 3)",
                )
    _unused(asked, held, faults)
    return held


def _held_on(
    bands: Mapping[str, Band], quantities: tuple[str, ...], name: str, nominal: float | None, faults: Faults
) -> float | None:
    """Nominal dimension; None, with a fault, where no estimate changes it."""
    if nominal is None or any(bands[quantity].estimates for quantity in quantities):
        return nominal
    reasons = {f"{left.method}: {left.reason}" for quantity in quantities for left in bands[quantity].left_out}
    faults.inconsistent(f"#/iso_13920/{name}", f"needs a method that gives its change ({'; '.join(sorted(reasons))})")
    return None


def _unused(asked: WeldingTolerances, held: list[ToleranceCheck], faults: Faults) -> None:
    """Add a fault for a class that nothing is judged by, and where every dimension is missing."""
    if faults:
        return
    tables = {check.table for check in held}
    if asked.linear_class is not None and not tables & {"Table 1", "Table 2"}:
        faults.inconsistent(
            "#/iso_13920/linear_class", "needs a dimension to judge: across, along or shorter_leg; send one"
        )
    if asked.form_class is not None and "Table 3" not in tables:
        faults.inconsistent(
            "#/iso_13920/form_class",
            "applies to the bow of a member (send along, and member with second_moment and eccentricity) and to the"
            " lift of a flange's edges (send a tee with 2 sides and its width)",
        )
    if not held:
        faults.inconsistent("#/iso_13920", "needs a dimension that changes: across, along or shorter_leg; send one")


def _verdict(keeps: str | None, asked: str | None) -> Literal["within", "out"] | None:
    """Whether the class required is kept; None where no class is required."""
    if asked is None:
        return None
    return "within" if keeps is not None and keeps <= asked else "out"


def _length(
    quantity: str,
    nominal: float,
    value: float,
    classes: Mapping[Any, Formula[Any]],
    asked: str | None,
    table: str,
) -> ToleranceCheck:
    """Length against Table 1 or 3."""
    with about(quantity):
        tolerances = {str(name): float(formula(l=nominal)) for name, formula in classes.items()}
    keeps = next((name for name, tolerance in tolerances.items() if at_most(value, tolerance)), None)
    shown = tuple(ToleranceClass(name, Measured(tolerance, LENGTH)) for name, tolerance in tolerances.items())
    return ToleranceCheck(
        quantity, nominal, Measured(value, LENGTH), shown, keeps, asked, _verdict(keeps, asked), table
    )


def _angle(leg: float, value: float, asked: str | None) -> ToleranceCheck:
    """Angle against Table 2: it keeps a class if it keeps both the angle and the rise that the table prints."""
    shown, keeps = [], None
    with about("angular"):
        for name, (angle, printed) in table_2_angular.CLASSES.items():
            alpha, rise = float(angle(l=leg)), float(printed(l=leg))
            exact = float(table_2_angular.rise(alpha=alpha))
            shown.append(ToleranceClass(str(name), Measured(alpha, ANGLE), exact, rise))
            if keeps is None and at_most(value, min(alpha, atan(rise))):
                keeps = str(name)
    return ToleranceCheck(
        "angular", leg, Measured(value, ANGLE), tuple(shown), keeps, asked, _verdict(keeps, asked), "Table 2"
    )
