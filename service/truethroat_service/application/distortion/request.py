"""Request for distortion: what is welded, what holds it, and the tolerances asked of it.

Lengths in mm, angles in rad, heat input in kJ/mm.
"""

from dataclasses import dataclass
from typing import Literal

from ...standards.iso_13920_1996.table_1_linear import LinearClass
from ...standards.iso_13920_1996.table_3_form import FormClass
from ..core.answers import Common

GrooveForm = Literal["square", "single-v", "single-bevel", "double-v", "double-bevel", "by-area"]
Kind = Literal["butt", "tee", "lap", "bevelled-tee"]


@dataclass(frozen=True, slots=True)
class Groove:
    """Groove of a butt, filled flush; ``area`` and widths go with "by-area" alone."""

    groove: GrooveForm
    root_opening: float = 0.0
    land: float = 0.0
    groove_angle: float | None = None
    area: float | None = None
    face_width: float | None = None
    root_width: float | None = None


@dataclass(frozen=True, slots=True)
class Restraint:
    """Span between stiffeners, and moment for each radian on each unit of weld length, N."""

    span: float
    coefficient: float


@dataclass(frozen=True, slots=True)
class Butt:
    """Butt weld through a thickness."""

    kind: Kind
    thickness: float
    weld: Groove
    runs: int | None = None
    current: float | None = None
    restraint: Restraint | None = None


@dataclass(frozen=True, slots=True)
class Tee:
    """Fillets on one or both sides of a plate that stands on another, whose thickness and full width these are."""

    kind: Kind
    thickness: float
    leg: float
    width: float | None = None
    area: float | None = None
    sides: int = 1
    welded_share: float = 1.0
    runs: int | None = None
    restraint: Restraint | None = None


@dataclass(frozen=True, slots=True)
class Lap:
    """Two fillets of a lap; the thickness is the thinner plate's."""

    kind: Kind
    thickness: float
    leg: float
    area: float | None = None
    welded_share: float = 1.0


Joint = Butt | Tee | Lap


@dataclass(frozen=True, slots=True)
class Member:
    """Section that the welds shorten; with a second moment and how far off its axis they are, also bend."""

    area: float
    second_moment: float | None = None
    eccentricity: float | None = None


@dataclass(frozen=True, slots=True)
class Calibration:
    """What a shop measured on like joints, over the middle of a band: a factor on every method's value."""

    transverse: float = 1.0
    longitudinal: float = 1.0
    angular: float = 1.0
    bowing: float = 1.0


@dataclass(frozen=True, slots=True)
class Tolerances:
    """Classes of the drawing, and the nominal dimensions that the estimates change, mm."""

    linear_class: LinearClass | None = None
    form_class: FormClass | None = None
    across: float | None = None
    along: float | None = None
    shorter_leg: float | None = None


@dataclass(frozen=True, slots=True)
class DistortionRequest:
    """Request for distortion, in engine units; ``heat_input`` is net, of one run."""

    joint: Joint
    length: float | None = None
    member: Member | None = None
    heat_input: float | None = None
    iso_13920: Tolerances | None = None
    calibration: Calibration = Calibration()
    size_step: float | None = None
    common: Common = Common()
