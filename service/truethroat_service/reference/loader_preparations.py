"""Joint preparations of ISO 9692-1 and AWS D1.1, in millimetres and radians."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from math import pi
from typing import Final

from ..engine.units import LENGTHS
from .loader import PREPARATION_ROWS, Mark


@dataclass(frozen=True, slots=True)
class Preparation:
    """Preparation of a joint's edges; lengths in mm, angles in rad, None where the standard sets no limit.

    ``gap`` is a share of the thickness where ``gap_by_thickness``. ``share`` and ``less`` give the throat of a
    partial-penetration detail: a share of the depth (of the thickness, for a square edge), less a length.
    """

    id: str
    ref: str
    standard: str
    joints: tuple[str, ...]
    penetration: str
    form: str
    thickness: tuple[float, float | None]
    angle: tuple[float, float] | None
    gap: tuple[float, float]
    gap_by_thickness: bool
    land: tuple[float, float | None] | None
    root: str
    processes: tuple[str, ...]
    orientations: tuple[str, ...]
    share: float | None
    less: float
    mark: Mark
    source: str

    @property
    def both_sides(self) -> bool:
        """Whether it is welded from both sides."""
        return self.root in ("back-run", "back-gouge")


def _preparation(row: Mapping[str, str]) -> Preparation:
    """Make a preparation of one row of preparations.csv."""
    unit = LENGTHS[row["unit"]]

    def length(text: str) -> float | None:
        return float(Fraction(text) * unit) if text else None

    by_thickness = row["gap_by"] == "thickness"
    gaps = [float(Fraction(row[name]) * (1 if by_thickness else unit)) for name in ("gap_low", "gap_high")]
    angles = [float(row[name]) * pi / 180.0 for name in ("angle_low", "angle_high") if row[name]]
    land = length(row["land_low"])
    return Preparation(
        id=row["id"],
        ref=row["ref"],
        standard=row["standard"],
        joints=tuple(row["joints"].split()),
        penetration=row["penetration"],
        form=row["form"],
        thickness=(length(row["t_over"]) or 0.0, length(row["t_to"])),
        angle=(angles[0], angles[1]) if angles else None,
        gap=(gaps[0], gaps[1]),
        gap_by_thickness=by_thickness,
        land=None if land is None else (land, length(row["land_high"])),
        root=row["root"],
        processes=tuple(row["processes"].split()),
        orientations=tuple(row["orientations"].split()),
        share=float(Fraction(row["share"])) if row["share"] else None,
        less=length(row["less"]) or 0.0,
        mark="seen" if row["mark"] == "seen" else "from memory",
        source=row["source"],
    )


PREPARATIONS: Final[tuple[Preparation, ...]] = tuple(_preparation(row) for row in PREPARATION_ROWS)
"""Every preparation, in the order of the file."""
