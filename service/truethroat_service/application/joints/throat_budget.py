"""Throat budget: one section's contributions, with tolerances carried through as worst case and root sum square."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from itertools import product
from math import hypot
from types import MappingProxyType
from typing import Any, Literal

from ...engine.formula import off_the_sheet
from ..core.shape import Length
from ..core.units import Units
from ..core.wire import wire
from .seams import Clearances, Finish, Lengths, Penetration, Seam, Shape, clearances

BOTH_WAYS: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {"open-corner": ("t_1", "t_2"), "half-open-corner": ("t_1", "overlap")}
)
"""Lengths of a corner's opening, whose longer end may be the worse one."""

DISTANCES = ("as_welded", "remaining", "u", "v", "root_to_plane", "limit")
"""Distances of a section that a verdict or a limit rests on."""


@dataclass(frozen=True, slots=True)
class Budget:
    """Nominal section, the section with every distance at its least, and what is left by root sum square.

    ``cases`` are the sections that the tolerances allow at their ends; ``worst`` has the least of each distance.
    """

    nominal: Clearances
    worst: Clearances
    cases: tuple[Clearances, ...]
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

    @property
    def most(self) -> float:
        """Throat that the finish leaves where every tolerance falls well, mm."""
        better = {name: -move for name, move in self.worse.items() if move}
        return max(case.remaining for case in _cases(self.shape, self.lengths, better))


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

    The worst case is the section with all of them moved at once; root sum square adds up the fall each brings alone.
    """
    nominal = clearances(shape, lengths)
    moves = {name: move for name, move in worse.items() if move}
    if not moves:
        return Budget(nominal, nominal, (nominal,), nominal.remaining, required, judged_on_worst=False)
    with off_the_sheet():
        cases = _cases(shape, lengths, moves)
        falls = [
            nominal.remaining - min(case.remaining for case in _cases(shape, lengths, {name: move}))
            for name, move in moves.items()
        ]
    # Each distance at its least, whichever case it is in: no verdict and no limit rests on a better one.
    least = {name: min(getattr(case, name) for case in cases) for name in DISTANCES}
    worst = replace(cases[0], **least)
    # Where clearances change places, falls taken one by one can add up to more than all of them at once.
    root_sum_square = max(nominal.remaining - hypot(*falls), worst.remaining)
    return Budget(nominal, worst, cases, root_sum_square, required, judged_on_worst=True)


def _cases(shape: Shape, lengths: Lengths, moves: Mapping[str, float]) -> tuple[Clearances, ...]:
    """Sections with the lengths moved, the first with each moved as told.

    The toe line of an open corner first rises and then falls with the lengths of its opening, so its least is at one
    end of them or the other: they are moved both ways.
    """
    both = [name for name in BOTH_WAYS.get(shape.kind, ()) if name in moves]
    ways = product((1.0, -1.0), repeat=len(both))
    return tuple(
        clearances(
            shape,
            _moved(lengths, {**moves, **{name: sign * moves[name] for name, sign in zip(both, way, strict=True)}}),
        )
        for way in ways
    )


def _moved(lengths: Lengths, moves: Mapping[str, float]) -> Lengths:
    """Lengths with some moved; none but the face, which is hollow there, falls under nothing."""
    moved = {name: getattr(lengths, name) + move for name, move in moves.items()}
    return replace(lengths, **{name: to if name == "face" else max(to, 0.0) for name, to in moved.items()})
