"""Throat budget: one section's contributions, with tolerances carried through as worst case and root sum square."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import hypot
from typing import Any

from ...engine.formula import off_the_sheet
from ..core.units import Units
from .seams import Clearances, Lengths, Shape, clearances


@dataclass(frozen=True, slots=True)
class Budget:
    """Nominal section, the section with every length at its worse end, and what is left by root sum square."""

    nominal: Clearances
    worst: Clearances
    root_sum_square: float
    required: float
    judged_on_worst: bool

    @property
    def judged(self) -> Clearances:
        """Section a verdict rests on: the worst case as soon as there is a tolerance."""
        return self.worst if self.judged_on_worst else self.nominal

    def dump(self, units: Units) -> dict[str, Any]:
        """Budget as an answer shows it."""
        lines = self.nominal
        return {
            "theoretical": units.length(lines.theoretical),
            "prepared_depth": units.length(lines.prepared_depth),
            "deduction": units.length(lines.deduction),
            "penetration": units.length(lines.penetration),
            "face": units.length(lines.face),
            "cap": units.length(lines.cap),
            "as_welded": units.length(lines.as_welded),
            "removed": units.length(lines.as_welded - lines.remaining),
            "remaining": units.length(lines.remaining),
            "remaining_worst_case": units.length(self.worst.remaining),
            "remaining_root_sum_square": units.length(self.root_sum_square),
            "required": units.length(self.required),
            "margin": units.length(lines.remaining - self.required),
        }


def budget(shape: Shape, lengths: Lengths, worse: Mapping[str, float], required: float) -> Budget:
    """Budget of a section; ``worse`` says by how much each toleranced length moves to its worse end, signed.

    The throat falls steadily with every one of them, so the worst case is the section with all moved at once; root sum
    square adds up the fall each brings alone.
    """
    nominal = clearances(shape, lengths)
    moves = {name: move for name, move in worse.items() if move}
    if not moves:
        return Budget(nominal, nominal, nominal.remaining, required, judged_on_worst=False)
    with off_the_sheet():
        worst = clearances(shape, _moved(lengths, moves))
        falls = [
            nominal.remaining - clearances(shape, _moved(lengths, {name: move})).remaining
            for name, move in moves.items()
        ]
    # Where clearances change places, falls taken one by one can add up to more than all of them at once.
    root_sum_square = max(nominal.remaining - hypot(*falls), worst.remaining)
    return Budget(nominal, worst, root_sum_square, required, judged_on_worst=True)


def _moved(lengths: Lengths, moves: Mapping[str, float]) -> Lengths:
    """Lengths with some moved; none but the face, which is hollow there, falls under nothing."""
    moved = {name: getattr(lengths, name) + move for name, move in moves.items()}
    return replace(lengths, **{name: to if name == "face" else max(to, 0.0) for name, to in moved.items()})
