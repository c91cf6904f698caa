"""Estimates held against ISO 13920: which class each keeps, and whether the class asked for is kept."""

from collections.abc import Mapping
from dataclasses import dataclass
from math import atan
from typing import Any, Literal

from ...engine.formula import Formula, about
from ...engine.rounding import at_most
from ...standards.iso_13920_1996 import table_1_linear, table_2_angular, table_3_form
from ..core.faults import Faults
from ..core.units import Units
from .estimates import Band
from .request import Tolerances


@dataclass(frozen=True, slots=True)
class Check:
    """One estimate against every class of its table: tolerances in mm or rad, with the rise of an angle."""

    quantity: str
    nominal: float
    value: float
    tolerances: Mapping[str, float]
    rises: Mapping[str, tuple[float, float]]
    """Exact and printed rise of each class's angle; empty for lengths."""
    keeps: str | None
    asked: str | None
    table: str

    @property
    def verdict(self) -> Literal["within", "out"] | None:
        """Whether the class asked for is kept; None when none was asked for."""
        if self.asked is None:
            return None
        return "within" if self.keeps is not None and self.keeps <= self.asked else "out"

    def dump(self, units: Units) -> dict[str, Any]:
        """Check as an answer shows it."""
        render = units.angle if self.rises else units.length
        classes = []
        for name, tolerance in self.tolerances.items():
            entry: dict[str, Any] = {"class": name, "tolerance": render(tolerance)}
            if self.rises:
                exact, printed = self.rises[name]
                entry |= {"rise": exact, "printed_rise": printed}
            classes.append(entry)
        return {
            "quantity": self.quantity,
            "nominal": units.length(self.nominal),
            "value": render(self.value),
            "classes": classes,
            "keeps": self.keeps,
            "asked": self.asked,
            "verdict": self.verdict,
            "table": self.table,
        }


def checks(asked: Tolerances, width: float | None, found: Mapping[str, Band], faults: Faults) -> list[Check]:
    """Hold every estimate with a nominal dimension against its table, on the upper end of its band.

    A dimension that nothing estimated changes is a fault, and so is a class without a dimension to hold it against.
    """
    made: list[Check] = []
    across = _held_on(found, ("transverse",), "across", asked.across, faults)
    along = _held_on(found, ("longitudinal", "bowing"), "along", asked.along, faults)
    leg = _held_on(found, ("angular",), "shorter_leg", asked.shorter_leg, faults)
    for nominal, quantity in ((across, "transverse"), (along, "longitudinal")):
        value = found[quantity].high
        if nominal is not None and value is not None:
            made.append(_length(quantity, nominal, value, table_1_linear.CLASSES, asked.linear_class, "Table 1"))
    turned = found["angular"].high
    if leg is not None and turned is not None:
        made.append(_angle(leg, turned, asked.linear_class))
    for nominal, quantity in ((along, "bowing"), (width, "edge_lift")):
        value = found[quantity].high
        if nominal is not None and value is not None:
            if nominal > table_3_form.OVER:
                made.append(_length(quantity, nominal, value, table_3_form.CLASSES, asked.form_class, "Table 3"))
            elif asked.form_class is not None and quantity == "bowing":
                faults.out_of_scope("#/iso_13920/along", f"Table 3 begins over {faults.units.text(table_3_form.OVER)}")
    _unused(asked, made, faults)
    return made


def _held_on(
    found: Mapping[str, Band], quantities: tuple[str, ...], name: str, nominal: float | None, faults: Faults
) -> float | None:
    """Nominal dimension, unless nothing estimated changes it."""
    if nominal is None or any(found[quantity].estimates for quantity in quantities):
        return nominal
    reasons = {f"{left.method}: {left.reason}" for quantity in quantities for left in found[quantity].left_out}
    faults.inconsistent(
        f"#/iso_13920/{name}", f"no method gives what changes this dimension ({'; '.join(sorted(reasons))})"
    )
    return None


def _unused(asked: Tolerances, made: list[Check], faults: Faults) -> None:
    """Refuse a class that nothing is held against, and dimensions that are missing altogether."""
    if faults:
        return
    tables = {check.table for check in made}
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
    if not made:
        faults.inconsistent("#/iso_13920", "needs the dimension that changes: across, along or shorter_leg")


def _length(
    quantity: str,
    nominal: float,
    value: float,
    classes: Mapping[Any, Formula[Any]],
    asked: str | None,
    table: str,
) -> Check:
    """Length against Table 1 or 3."""
    with about(quantity):
        tolerances = {str(name): float(formula(l=nominal)) for name, formula in classes.items()}
    keeps = next((name for name, tolerance in tolerances.items() if at_most(value, tolerance)), None)
    return Check(quantity, nominal, value, tolerances, {}, keeps, asked, table)


def _angle(leg: float, value: float, asked: str | None) -> Check:
    """Angle against Table 2: it keeps a class when it keeps both the angle and the rise printed for it."""
    tolerances, rises, keeps = {}, {}, None
    with about("angular"):
        for name, (angle, printed) in table_2_angular.CLASSES.items():
            alpha, rise = float(angle(l=leg)), float(printed(l=leg))
            tolerances[str(name)] = alpha
            rises[str(name)] = (float(table_2_angular.rise(alpha=alpha)), rise)
            if keeps is None and at_most(value, min(alpha, atan(rise))):
                keeps = name
    return Check("angular", leg, value, tolerances, rises, keeps, asked, "Table 2")
