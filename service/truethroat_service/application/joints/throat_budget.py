"""Throat budget: one section's contributions, with tolerances carried through as worst case and root sum square."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import hypot
from typing import Any, Literal

from ...engine.formula import off_the_sheet
from ..core.shape import Length
from ..core.units import Units
from ..core.wire import wire
from .seams import Clearances, Finish, Lengths, Penetration, Seam, Shape, clearances


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

    @property
    def basis(self) -> Literal["nominal", "worst-case"]:
        """What a verdict rests on."""
        return "worst-case" if self.judged_on_worst else "nominal"

    def dump(self, units: Units) -> dict[str, Any]:
        """Budget as the plan still shows it."""
        return wire(throat_budget(self), units.system)


@dataclass(frozen=True, slots=True)
class ThroatBudget:
    """Contributions to the throat, adding up to as_welded, and what a finish leaves of it."""

    theoretical: Length
    prepared_depth: Length
    deduction: Length
    penetration: Length
    face: Length
    cap: Length
    as_welded: Length
    removed: Length
    remaining: Length
    remaining_worst_case: Length
    remaining_root_sum_square: Length
    required: Length
    margin: Length


def throat_budget(budget: Budget) -> ThroatBudget:
    """Budget as an answer shows it: the lines are those of the nominal section."""
    lines = budget.nominal
    return ThroatBudget(
        theoretical=lines.theoretical,
        prepared_depth=lines.prepared_depth,
        deduction=lines.deduction,
        penetration=lines.penetration,
        face=lines.face,
        cap=lines.cap,
        as_welded=lines.as_welded,
        removed=lines.as_welded - lines.remaining,
        remaining=lines.remaining,
        remaining_worst_case=budget.worst.remaining,
        remaining_root_sum_square=budget.root_sum_square,
        required=budget.required,
        margin=lines.remaining - budget.required,
    )


@dataclass(frozen=True, slots=True)
class ToleratedSection:
    """Section of a seam, and by how much each of its lengths moves to its worse end, signed, mm."""

    shape: Shape
    lengths: Lengths
    worse: Mapping[str, float]

    def budget(self, required: float) -> Budget:
        """Budget of the section for a throat to keep, mm."""
        return budget(self.shape, self.lengths, self.worse, required)


def seam_section(
    seam: Seam,
    finish: Finish,
    penetration: Penetration | None,
    *,
    depth: float,
    depth_tolerance: float,
    deduction: float = 0.0,
    face: float = 0.0,
    face_tolerance: float = 0.0,
    face_counts: bool = False,
    toe: float | None = None,
) -> ToleratedSection:
    """Section of a seam under its finish, with the penetration that counts; face height counts of no fillet.

    ``depth`` is that of the preparation and ``deduction`` what rules take off it; ``face`` is negative for a hollow;
    ``toe`` is the distance to the nearer toe, None where it is not known. All in mm.
    """
    t_1, t_2 = seam.thickness or (0.0, 0.0)
    z_1, z_2 = seam.legs or (0.0, 0.0)
    lengths = Lengths(
        t_1=t_1,
        t_2=t_2,
        overlap=seam.overlap,
        z_1=z_1,
        z_2=z_2,
        depth=depth,
        deduction=deduction,
        penetration=penetration.depth if penetration else 0.0,
        face=face,
        below=finish.below,
    )
    shape = Shape(
        kind=seam.kind,
        psi=seam.angle,
        through=seam.kind != "edge",
        finish=finish.to,
        radius=finish.radius or 0.0,
        toe=toe,
        face_counts=face_counts and seam.kind != "fillet",
    )
    worse = {
        "t_1": -seam.thickness_tolerance,
        "t_2": -seam.thickness_tolerance,
        "overlap": seam.overlap_tolerance,
        "z_1": -seam.legs_tolerance,
        "z_2": -seam.legs_tolerance,
        "depth": -depth_tolerance,
        "penetration": -penetration.tolerance if penetration else 0.0,
        "face": -face_tolerance,
        "below": finish.tolerance,
    }
    return ToleratedSection(shape, lengths, worse)


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
