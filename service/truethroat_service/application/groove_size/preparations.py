"""Choice of a preparation: which listed details a joint allows, and what each of them comes to.

A detail holds for joints, thicknesses, processes and positions; one that does not fit is refused with every reason.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from ...engine.formula import Source
from ...engine.rounding import at_least, at_most, down, up
from ...engine.rule_set import RuleSet, Unlisted
from ...practice import groove_fill, groove_throat
from ...reference.loader_preparations import PREPARATIONS, Preparation
from ...standards.aws_d1_1_2020.s5_square_grooves import square_throat
from ..core.units import Units
from ..joints import grooves
from .answer import GroovePreparation, RefusedPreparation
from .request import CUT_BOTH, FORMS, FullWeld, JointKind, PartialWeld, fits_joint, sides, single, usual_angle

BY_FORM = "by form; no detail of the standard"


@dataclass(frozen=True, slots=True)
class Place:
    """Where the weld is made: joint, thickness it goes through in mm, process and orientation by canonical name."""

    joint: JointKind
    thickness: float
    process: str | None
    position: str | None
    process_id: str | None
    orientation: str | None


@dataclass(frozen=True, slots=True)
class Detail:
    """Preparation with one value chosen in each of its ranges; ``land`` of a partial one is the least."""

    id: str | None
    ref: str
    standard: str | None
    form: str
    root: str
    angle: float | None
    gap: float
    land: float
    share: float | None = None
    less: float = 0.0
    source: Source | None = None

    @property
    def sides(self) -> int:
        """Sides it is cut from."""
        return sides(self.form)


@dataclass(frozen=True, slots=True)
class Need:
    """What a partial-penetration groove must give: throat for the load in all, least throat a side, mm."""

    throat: float
    least: float
    step: float


@dataclass(frozen=True, slots=True)
class SizedDetail:
    """Detail as it would be made; mm and mm2.

    ``needed_depth`` is the load's own need, ``throat`` that of the shallowest cut its tolerance allows.
    ``why`` says what the detail lacks, ``deeper`` that it lacks depth.
    """

    detail: Detail
    depth: float | None
    needed_depth: float | None
    land: float | None
    setback: float | None
    deduction: float
    throat: float
    area: float
    why: str | None = None
    deeper: bool = False

    def preparation(self) -> GroovePreparation:
        """Preparation of the answer."""
        detail = self.detail
        return GroovePreparation(
            id=detail.id,
            ref=detail.ref,
            standard=detail.standard,
            form=detail.form,
            root=detail.root,
            angle=detail.angle,
            gap=detail.gap,
            land=self.land,
            depth=self.depth,
            setback=self.setback,
            deduction=self.deduction,
            throat=self.throat,
            area=self.area,
            filler=grooves.deposited_metal(self.area),
            enough=self.why is None,
            why=self.why,
        )


def listed(
    weld: PartialWeld | FullWeld, place: Place, standard: str | None, units: Units
) -> tuple[list[Detail], list[RefusedPreparation]]:
    """Details of a standard that a joint allows, and those that it does not; other forms and roots are passed over."""
    fitting, refused = [], []
    for row in PREPARATIONS:
        if row.standard != standard or row.penetration != weld.kind or weld.groove not in (None, row.form):
            continue
        if isinstance(weld, FullWeld) and weld.root not in (None, row.root):
            continue
        against = [*_against_place(row, place, units), *_against_weld(row, weld, place, units)]
        detail = _detail(row, weld, place)
        if detail.angle is not None and at_least(detail.land, place.thickness):
            against.append(f"a land of {units.text(detail.land)} leaves nothing to cut")
        if against:
            refused.append(RefusedPreparation(row.id, row.ref, "; ".join(against)))
        else:
            fitting.append(detail)
    return fitting, refused


def _against_place(row: Preparation, place: Place, units: Units) -> Iterable[str]:
    """What of the joint a detail does not hold for."""
    if place.joint not in row.joints:
        yield f"is for {' and '.join(row.joints)} joints, not for a {place.joint}"
    low, high = row.thickness
    if not at_least(place.thickness, low) or (high is not None and not at_most(place.thickness, high)):
        limits = [f"from {units.text(low)}"] if low else []
        limits += [f"up to {units.text(high)}"] if high is not None else []
        yield f"is for thicknesses {' '.join(limits)}, not for {units.text(place.thickness)}"
    if place.process_id is not None and place.process_id not in row.processes:
        yield f"is for {', '.join(row.processes)}, not for {place.process_id}"
    if place.orientation is not None and place.orientation not in row.orientations:
        yield f"is for the {', '.join(row.orientations)} position, not for {place.orientation}"


def _against_weld(row: Preparation, weld: PartialWeld | FullWeld, place: Place, units: Units) -> Iterable[str]:
    """What of the weld asked for a detail does not allow."""
    if weld.access == "one-side" and row.both_sides:
        yield f"needs the second side ({row.root})"
    if weld.groove_angle is not None and row.angle is not None and not _inside(weld.groove_angle, row.angle):
        low, high = (grooves.degrees(angle) for angle in row.angle)
        yield f"is for an angle of {low} deg" if low == high else f"is for angles of {low} to {high} deg"
    gaps = _gaps(row, place.thickness)
    if weld.gap is not None and not _inside(weld.gap, gaps):
        yield f"is for a gap {_range(gaps, units)}, not for {units.text(weld.gap)}"
    if isinstance(weld, FullWeld) and weld.land is not None:
        if row.land is None:
            yield "has no land"
        elif not _inside(weld.land, row.land):
            yield f"is for a land {_range(row.land, units)}, not for {units.text(weld.land)}"


def _range(limits: tuple[float, float | None], units: Units) -> str:
    """Range of a length, in words."""
    low, high = limits
    if high is None:
        return f"of at least {units.text(low)}"
    return f"of {units.text(low)}" if low == high else f"of {units.text(low)} to {units.text(high)}"


def _inside(value: float, limits: tuple[float, float | None]) -> bool:
    low, high = limits
    return bool(at_least(value, low)) and (high is None or bool(at_most(value, high)))


def _gaps(row: Preparation, thickness: float) -> tuple[float, float]:
    """Root gaps a detail allows, mm."""
    scale = thickness if row.gap_by_thickness else 1.0
    return row.gap[0] * scale, row.gap[1] * scale


def _detail(row: Preparation, weld: PartialWeld | FullWeld, place: Place) -> Detail:
    """Detail with the value asked for in each range, or else the usual angle and the middle of gap and land."""
    angle = None
    if row.angle is not None:
        angle = weld.groove_angle if weld.groove_angle is not None else usual_angle(row.form, *row.angle)
    land = 0.0
    if row.land is not None:
        low, high = row.land
        chosen = weld.land if isinstance(weld, FullWeld) else low
        land = chosen if chosen is not None else low if high is None else (low + high) / 2.0
    gap = weld.gap if weld.gap is not None else sum(_gaps(row, place.thickness)) / 2.0
    if isinstance(weld, PartialWeld):
        land = max(land, weld.minimum_land)
    return Detail(
        id=row.id,
        ref=row.ref,
        standard=row.standard,
        form=row.form,
        root=row.root,
        angle=angle,
        gap=gap,
        land=land,
        share=row.share if row.form == "square" else None,
        less=row.less,
        source=Source(row.standard, row.ref, row.mark),
    )


def by_form(weld: PartialWeld, place: Place) -> list[Detail]:
    """Grooves of a partial-penetration weld that no standard details, by their form alone."""
    details = []
    for form in FORMS if weld.groove is None else (weld.groove,):
        if form == "square" and (weld.proven <= 0.0 or weld.reinforcing_fillet > 0.0):
            continue
        if not fits_joint(form, place.joint) or (sides(form) == 2 and weld.access == "one-side"):
            continue
        angle = None if form == "square" else weld.groove_angle or usual_angle(form)
        root = "back-run" if sides(form) == 2 else "open"
        details.append(Detail(None, BY_FORM, None, form, root, angle, weld.gap or 0.0, weld.minimum_land))
    return details


def size_full(detail: Detail, place: Place, throat: float) -> SizedDetail:
    """Full-penetration groove of a detail."""
    setback, depth, faces, cut = None, None, 0.0, 0.0
    if detail.angle is not None:
        depth = (place.thickness - detail.land) / detail.sides
        setback, faces, cut = _cut(detail, depth)
    gouge = 0.0
    if detail.root == "back-gouge":
        gouge = float(groove_fill.gouged(h=groove_fill.GOUGE_DEPTH, w=groove_fill.GOUGE_WIDTH))
    area = groove_fill.full_fill(g=detail.gap, t=place.thickness, k=faces, A_g=cut, A_bg=gouge)
    land = None if detail.angle is None else detail.land
    return SizedDetail(detail, depth, depth, land, setback, 0.0, throat, float(area))


def size_partial(
    detail: Detail, weld: PartialWeld, place: Place, need: Need, rules: RuleSet, units: Units
) -> SizedDetail:
    """Partial-penetration groove of a detail; raises ``Unlisted`` for a groove the rules do not list."""
    if detail.form == "square":
        return _size_square(detail, weld, place, need, units)
    assert detail.angle is not None  # noqa: S101 - only a square groove has none
    m = float(detail.sides)
    # What is proven to fuse replaces the deduction; it is never added to it.
    loss = 0.0
    if weld.proven <= 0.0:
        coded = grooves.coded(single(detail.form), detail.angle, place.process, place.position)
        loss = max(grooves.deduction(rules, coded), detail.less / m)
    side = groove_throat.side_throat(a_req=need.throat, m=m)
    if weld.reinforcing_fillet > 0.0:
        distance = groove_throat.distance_under_fillet(a_1=side, c=loss, w=weld.reinforcing_fillet)
    else:
        distance = groove_throat.distance_for_throat(a_1=side, c=loss)
    needed = float(groove_throat.depth_needed(D_req=distance, a_min=need.least, c=loss, p=weld.proven))
    room = max((place.thickness - detail.land) / m, 0.0)
    # Where nothing is cut, nothing can be cut too shallow.
    depth = float(up(needed + weld.depth_tolerance, need.step)) if needed > 0.0 else 0.0
    deeper = not at_most(depth, room)
    why = None
    if deeper:
        land = units.text(detail.land)
        each = " from each side" if detail.sides == 2 else ""
        why = f"needs a depth of {units.text(depth)}{each}; a land of {land} leaves room for {units.text(room)}"
        depth = float(down(room, need.step))
    throat = max(_throat(detail, weld, place, max(depth - weld.depth_tolerance, 0.0), loss), 0.0)
    if why is None and not at_least(throat, need.throat):
        # Proven penetration ends where the metal does.
        why, deeper = f"its throat of {units.text(throat)} is the most that the thickness allows", True
    setback, faces, cut = _cut(detail, depth)
    area = groove_fill.partial_fill(k=faces, A_g=cut, m=m, g=detail.gap, d=depth, w=weld.reinforcing_fillet)
    land_left = place.thickness - m * depth
    by_load = max(float(distance) - weld.proven, 0.0)
    return SizedDetail(detail, depth, by_load, land_left, setback, loss, throat, float(area), why, deeper)


def _throat(detail: Detail, weld: PartialWeld, place: Place, depth: float, loss: float) -> float:
    """Throat of a cut depth, all sides together."""
    m = float(detail.sides)
    fused = min(weld.proven, place.thickness / m - depth)
    if weld.reinforcing_fillet > 0.0:
        shortest = groove_throat.distance_to_finished_face(d=depth, p=fused, w=weld.reinforcing_fillet)
        return float(groove_throat.reinforced_throat(m=m, a_r=shortest, c=loss))
    return float(groove_throat.groove_throat(m=m, d=depth, p=fused, c=loss))


def _size_square(detail: Detail, weld: PartialWeld, place: Place, need: Need, units: Units) -> SizedDetail:
    """Square groove: the throat of a listed detail, or what is proven to fuse."""
    if detail.share is not None:
        throat = float(square_throat(k_T=detail.share, T=place.thickness, c=detail.less))
    else:
        throat = float(groove_throat.groove_throat(m=1.0, d=0.0, p=min(weld.proven, place.thickness), c=0.0))
    least = need.least * (2.0 if detail.root == "back-run" else 1.0)
    wanted = max(need.throat, least)
    why = None
    if not at_least(throat, wanted):
        asks = "the least throat asks for" if least > need.throat else "the load needs"
        why = f"its throat of {units.text(throat)} is under the {units.text(wanted)} that {asks}"
    area = groove_fill.partial_fill(k=1.0, A_g=0.0, m=1.0, g=detail.gap, d=throat, w=weld.reinforcing_fillet)
    return SizedDetail(detail, None, None, None, None, 0.0, throat, float(area), why)


def _cut(detail: Detail, depth: float) -> tuple[float, float, float]:
    """Setback on each cut edge, number of cut faces, and area one of them opens."""
    assert detail.angle is not None  # noqa: S101 - only a square groove has none
    both = detail.form in CUT_BOTH
    if depth <= 0.0:
        return 0.0, 1.0, 0.0
    made = grooves.cut(single(detail.form), detail.angle, depth, both, None)
    edges = 2.0 if both else 1.0
    return made.setback, edges * detail.sides, made.area / edges


def ranked(sized: Iterable[SizedDetail]) -> list[SizedDetail]:
    """Preparations, those that do first, least metal first."""
    return sorted(sized, key=lambda one: (one.why is not None, one.area))


def size_all(
    details: Iterable[Detail], weld: PartialWeld, place: Place, need: Need, rules: RuleSet, units: Units
) -> tuple[list[SizedDetail], list[RefusedPreparation], list[Unlisted]]:
    """Every detail sized, least metal first; those the rules do not list, and what they say of them."""
    sized, refused, unlisted = [], [], []
    for detail in details:
        try:
            sized.append(size_partial(detail, weld, place, need, rules, units))
        except Unlisted as error:
            unlisted.append(error)
            refused.append(RefusedPreparation(detail.id, f"{detail.form}, {detail.ref}", str(error)))
    return ranked(sized), refused, unlisted
