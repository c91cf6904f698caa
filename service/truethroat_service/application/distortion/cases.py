"""Flat record of a joint that the formulas take, and how it follows from a request.

Lengths in mm, angles in rad, heat input in kJ/mm.
"""

from dataclasses import dataclass
from math import pi

from ...engine import fillet_section, section
from ...practice import groove_fill, preparation, warping
from .request import Butt, Calibration, Groove, GrooveForm, Joint, Kind, Member, Restraint, Tee

DOUBLED: dict[GrooveForm, GrooveForm] = {"single-v": "double-v", "single-bevel": "double-bevel"}
"""Groove from both sides that corresponds to one from one side."""

CUT_FACES: dict[GrooveForm, float] = {"single-bevel": 1.0, "single-v": 2.0, "double-bevel": 2.0, "double-v": 4.0}
"""Faces cut on the edges, of both sides together."""

USUAL_ANGLES: dict[GrooveForm, float] = {
    "single-v": pi / 3, "double-v": pi / 3, "single-bevel": pi / 4, "double-bevel": pi / 4
}  # fmt: skip
"""Included angle when a request gives none; common practice, no source."""


@dataclass(frozen=True, slots=True)
class Setting:
    """What a request gives of a joint besides its section."""

    length: float | None = None
    member: Member | None = None
    heat_input: float | None = None
    calibration: Calibration = Calibration()


@dataclass(frozen=True, slots=True)
class Case:
    """Everything the formulas need of one joint; ``wedge`` is face width, root width and depth of its first side."""

    kind: Kind
    thickness: float
    area: float
    welds: float
    share: float = 1.0
    leg: float | None = None
    width: float | None = None
    form: GrooveForm | None = None
    opening: float = 0.0
    groove_angle: float | None = None
    wedge: tuple[float, float, float] | None = None
    runs: int | None = None
    current: float | None = None
    restraint: Restraint | None = None
    setting: Setting = Setting()


def case_of(joint: Joint, setting: Setting) -> Case:
    """Flat record of a joint, with the area of its weld metal."""
    if isinstance(joint, Butt):
        weld, t = joint.weld, joint.thickness
        area, wedge = _filled(weld, t)
        return Case(
            kind="butt", thickness=t, area=area, welds=1.0, form=weld.groove, opening=weld.root_opening,
            groove_angle=weld.groove_angle, wedge=wedge, runs=joint.runs, current=joint.current,
            restraint=joint.restraint, setting=setting,
        )  # fmt: skip
    area = fillet_area(joint.leg) if joint.area is None else joint.area
    tee = joint if isinstance(joint, Tee) else None
    return Case(
        kind=joint.kind, thickness=joint.thickness, area=area, welds=2.0 if tee is None else float(tee.sides),
        share=joint.welded_share, leg=joint.leg, width=tee.width if tee else None, runs=tee.runs if tee else None,
        restraint=tee.restraint if tee else None, setting=setting,
    )  # fmt: skip


def fillet_area(leg: float) -> float:
    """Metal of a flat equal-leg fillet between plates at a right angle, mm2."""
    width = float(fillet_section.face_width(z_1=leg, z_2=leg, psi=pi / 2))
    return float(fillet_section.area(z_1=leg, z_2=leg, psi=pi / 2, b=width, f=0.0))


def throat(leg: float) -> float:
    """Throat of such a fillet, mm."""
    return float(section.equal_leg_throat(z=leg, psi=pi / 2))


def bevelled_tee_area(depth: float) -> float:
    """Metal of a bevel of 45 deg to a depth, mm2."""
    return float(preparation.bevel_area(d=depth, beta=pi / 4))


def _filled(weld: Groove, t: float) -> tuple[float, tuple[float, float, float] | None]:
    """Area of a butt weld, and the wedge of its first side where there is one."""
    g = weld.root_opening
    if weld.groove == "by-area":
        assert weld.area is not None  # noqa: S101 - the request has it with this groove
        wedged = weld.face_width is not None and weld.root_width is not None
        return weld.area, (weld.face_width, weld.root_width, t) if wedged else None  # type: ignore[return-value]
    if weld.groove == "square":
        return float(groove_fill.full_fill(g=g, t=t, k=0.0, A_g=0.0, A_bg=0.0)), None
    assert weld.groove_angle is not None  # noqa: S101 - filled in before
    double, both = weld.groove.startswith("double"), weld.groove.endswith("v")
    depth = (t - weld.land) / (2.0 if double else 1.0)
    beta = weld.groove_angle / (2.0 if both else 1.0)
    cut = preparation.bevel_area(d=depth, beta=beta)
    area = groove_fill.full_fill(g=g, t=t, k=CUT_FACES[weld.groove], A_g=cut, A_bg=0.0)
    setback = preparation.bevel_setback(d=depth, beta=beta)
    face = float(warping.face_width(W_r=g, k_s=2.0 if both else 1.0, s=setback))
    return float(area), (face, g, depth + weld.land)
