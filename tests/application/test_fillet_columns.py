"""Sizing on columns: a list of joints sized at once is each of them sized alone."""

from __future__ import annotations

from dataclasses import fields
from math import pi
from typing import Any

import numpy as np
import pytest

from truethroat_service.application.fillet_size.sizing import Fillets, Sizes, component_load, shared_load, size
from truethroat_service.application.joints.rule_sets import ENTRIES, rule_set
from truethroat_service.engine.rule_set import PartMetal, WeldMetal

ROWS = 200
NUMBERS = [field.name for field in fields(Sizes) if not field.name.endswith("_source")]
FORMS = ("shared", "components", "long", "short", "stiffener", "ends", "root", "packing")
FEWER = {"thin": ("thin-part",), "aisc": FORMS[:4]}
JOINTS = (("tee", 1), ("tee", 2), ("lap", 1), ("lap", 2), ("inside-corner", 1))
LAPS = (("lap", 1), ("lap", 2))
ONLY = {"long": LAPS, "packing": LAPS, "root": (("tee", 1),)}
CASES = [
    (rules, kind, sides, form)
    for rules in ENTRIES
    for kind, sides in JOINTS
    for form in FEWER.get(rules.split("-")[0], FORMS)
    if (kind, sides) in ONLY.get(form, JOINTS)
]


def _columns(seed: int) -> dict[str, Any]:
    """Draw columns of joints, some of them on the limits of the tables."""
    draw = np.random.default_rng(seed)
    thickness = np.where(
        draw.random((2, ROWS)) < 0.3, draw.choice([6.35, 12.7, 19.05], (2, ROWS)), draw.uniform(4, 40, (2, ROWS))
    )
    return {
        "thickness": thickness,
        "f_y": draw.uniform(235, 460, (2, ROWS)),
        "f_u": draw.uniform(470, 600, (2, ROWS)),
        "beta_w": draw.choice([0.8, 0.9, 1.0], ROWS),
        "filler": draw.uniform(420, 760, ROWS),
        "compatible": draw.random(ROWS) < 0.8,
        "psi": draw.uniform(pi / 3, 2 * pi / 3, ROWS),
        "force": draw.uniform(50, 4000, ROWS),
        "theta": draw.uniform(0, pi / 2, ROWS),
        "normal": draw.uniform(-1500, 1500, ROWS),
        "transverse": draw.uniform(-1500, 1500, ROWS),
        "along": draw.uniform(-1500, 1500, ROWS),
        "gap": draw.choice([0.0, 1.0, 25.4 / 16, 3.0], ROWS),
        "penetration": draw.choice([0.0, 1.5], ROWS),
        "step": draw.choice([0.5, 1.0, 25.4 / 16], ROWS),
        "length": draw.uniform(20, 200, ROWS),
        "packing": draw.uniform(1, 20, ROWS),
        "long": draw.uniform(200, 4000, ROWS),
    }


def _fillets(rules_id: str, kind: Any, sides: int, form: str, row: dict[str, Any]) -> Fillets:
    """Make the problem of columns, or of one row of them."""
    parts = tuple(PartMetal(row["thickness"][i], row["f_y"][i], row["f_u"][i], row["beta_w"]) for i in (0, 1))
    if form == "thin-part":
        loads: Any = ()
    elif form == "components":
        loads = component_load(kind, sides, row["psi"], row["normal"], row["transverse"], row["along"])
    else:
        loads = shared_load(kind, sides, row["psi"], row["force"], row["theta"])
    return Fillets(
        rules=rule_set(rules_id),
        kind=kind,
        sides=sides,
        basis="thin-part" if form == "thin-part" else "load",
        psi=row["psi"],
        parts=(parts[0], parts[1]),
        metal=WeldMetal(row["filler"], row["f_u"][0], row["beta_w"], row["compatible"]),
        side_loads=loads,
        length={"short": row["length"], "ends": row["length"], "long": row["long"]}.get(form),
        end_loaded=form == "long",
        edge=row["thickness"][1] if kind == "lap" else None,
        gap=row["gap"],
        penetration=row["penetration"],
        by_throat=rule_set(rules_id).size_by == "throat",
        step=row["step"],
        stiffener_length=3.0 * row["long"] if form == "stiffener" else None,
        full_size_ends=form != "ends",
        root_bending=form == "root",
        packing=row["packing"] if form == "packing" else None,
        leg_tolerance=0.7 if sides == 2 else 0.0,
    )


@pytest.mark.parametrize(("rules", "kind", "sides", "form"), CASES)
def test_columns_are_rows(rules: str, kind: str, sides: int, form: str) -> None:
    """Every size, limit, strength and flag of a column is that of its row sized alone."""
    columns = _columns(len(rules) + 7 * sides)
    whole = size(_fillets(rules, kind, sides, form, columns))
    for index in range(ROWS):
        row = {
            name: [part[index].item() for part in values] if values.ndim == 2 else values[index].item()
            for name, values in columns.items()
        }
        alone = size(_fillets(rules, kind, sides, form, row))
        for name in NUMBERS:
            found, expected = getattr(whole, name), getattr(alone, name)
            if expected is None:
                assert found is None, name
                continue
            pairs = zip(found, expected, strict=True) if isinstance(expected, tuple) else [(found, expected)]
            for of_column, of_row in pairs:
                at_row = np.broadcast_to(np.asarray(of_column), (ROWS,))[index]
                np.testing.assert_allclose(float(at_row), float(of_row), rtol=1e-12, atol=1e-12, err_msg=name)
        assert np.broadcast_to(whole.reached, (ROWS,))[index] == bool(alone.reached)
        assert alone.minimum_source == whole.minimum_source


@pytest.mark.parametrize("form", ["shared", "short"])
@pytest.mark.parametrize("rules", [rules for rules in ENTRIES if rules != "thin-part"])
def test_the_columns_meet_every_outcome(rules: str, form: str) -> None:
    """The columns above are no easy ones: some sizes are reached and some are not."""
    reached = size(_fillets(rules, "lap", 1, form, _columns(31))).reached
    assert 0 < np.count_nonzero(reached) < ROWS
