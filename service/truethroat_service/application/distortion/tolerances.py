"""Estimates held against ISO 13920: which class each keeps, and whether the class asked for is kept."""

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
    """Hold every estimate with a nominal dimension against its table, on the upper end of its band.

    A band of one method is widened first, as its caution says.

    A dimension that nothing estimated changes is a fault, and so is a class without a dimension to hold it against.
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
                faults.out_of_scope("#/iso_13920/along", f"Table 3 begins over {faults.units.text(table_3_form.OVER)}")
    _unused(asked, held, faults)
    return held


def _held_on(
    bands: Mapping[str, Band], quantities: tuple[str, ...], name: str, nominal: float | None, faults: Faults
) -> float | None:
    """Nominal dimension, unless nothing estimated changes it."""
    if nominal is None or any(bands[quantity].estimates for quantity in quantities):
        return nominal
    reasons = {f"{left.method}: {left.reason}" for quantity in quantities for left in bands[quantity].left_out}
    faults.inconsistent(
        f"#/iso_13920/{name}", f"no method gives what changes this dimension ({'; '.join(sorted(reasons))})"
    )
    return None


def _unused(asked: WeldingTolerances, held: list[ToleranceCheck], faults: Faults) -> None:
    """Refuse a class that nothing is held against, and dimensions that are missing altogether."""
    if faults:
        return
    tables = {check.table for check in held}
    if asked.linear_class is not None and not tables & {"Table 1", "Table 2"}:
        faults.inconsistent(
            "#/iso_13920/linear_class", "needs a dimension to hold it against: across, along or shorter_leg"
        )
    if asked.form_class is not None and "Table 3" not in tables:
        faults.inconsistent(
            "#/iso_13920/form_class",
            "holds for the bow of a member (send along, and member with second_moment and eccentricity) and for the"
            " lift of a flange's edges (two fillets, and width)",
        )
    if not held:
        faults.inconsistent("#/iso_13920", "needs the dimension that changes: across, along or shorter_leg")


def _verdict(keeps: str | None, asked: str | None) -> Literal["within", "out"] | None:
    """Whether the class asked for is kept; None when none was asked for."""
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
    """Angle against Table 2: it keeps a class when it keeps both the angle and the rise printed for it."""
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
