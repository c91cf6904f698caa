"""What a fillet is worth as gauged, and what of it a quality level or code is held to."""

from collections.abc import Sequence
from dataclasses import dataclass

from ...engine import fillet_section, section
from ...engine.formula import Source, about, cite, off_the_sheet
from ...engine.rounding import SAME, at_least, at_most, up
from ...engine.units import INCH
from ...practice import deposition
from ...standards.aws_d1_1_2020 import s7_21_fit_up, s8_1_acceptance
from ...standards.iso_5817_2014.table_1 import Level, Sizes
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..joints.given import usual_step
from ..joints.penetration_remarks import remark_on_penetration
from ..joints.quality_sets import QUALITY_SETS
from ..joints.seam_checks import check_tolerance
from . import aws_d1_1, iso_5817
from .answer import Overweld, QualityLimit, ThroatAsWelded, WeldAction
from .limits import Judgement, amount, lack
from .request import FilletAsWelded

OVERSIZE = INCH / 8
"""Size beyond the required leg, mm, from which a fillet is called over where no code limits it."""

OVERSIZE_PRACTICE = Source("", "more than 1/8 in over the required leg is overwelded", "common practice, no source")
HOLLOW_CRACKS = Source(
    "", "a hollow, thin bead has its face in tension and cracks down its centreline", "common practice, no source"
)

ANSWERING = ("insufficient-throat", "undersize", "incomplete-penetration", "lack-of-fusion")
"""Limits that answer for a throat that is short: a weld they allow is enough."""


@dataclass(frozen=True, slots=True)
class Counted:
    """What one set of readings is worth, mm: ``outer`` by its legs and face, the rest with what is fused and is not."""

    theoretical: float
    outer: float
    physical: float
    creditable: float
    strength: float
    size: float


@dataclass(frozen=True, slots=True)
class Asked:
    """What the drawing asks for as both leg and throat, mm."""

    leg: float
    throat: float


def check(readings: FilletAsWelded, faults: Faults) -> None:
    """Note readings that contradict each other."""
    units, gap = faults.units, gap_taken(readings.root_gap, readings.angle)
    smaller = min(readings.legs)
    if readings.convexity is not None and readings.hollow is not None:
        faults.inconsistent("#/hollow", "must not be sent with convexity; send one of the two")
    if gap >= smaller:
        faults.inconsistent(
            "#/root_gap",
            f"must leave some of the smaller leg of {units.text(smaller)}; it is {units.text(readings.root_gap)}",
        )
    elif readings.reading_tolerance >= smaller - gap:
        faults.inconsistent(
            "#/reading_tolerance",
            f"must be smaller than the {units.text(smaller - gap)} that the gap leaves of the smaller leg",
        )
    elif readings.hollow is not None:
        with off_the_sheet():
            z_1, z_2 = (leg - gap for leg in readings.legs)
            room = float(section.fillet_throat(z_1=z_1, z_2=z_2, psi=readings.angle))
        if readings.hollow >= room:
            faults.inconsistent(
                "#/hollow",
                f"must be smaller than the throat of {units.text(room)}; it is {units.text(readings.hollow)}",
            )
    root = readings.penetration
    check_tolerance("#/penetration/tolerance", root.tolerance, root.depth, "depth", faults)
    if root.depth > 0.0 and readings.incomplete_penetration:
        faults.inconsistent("#/incomplete_penetration", "must not be sent with penetration; send one of the two")


def gap_taken(gap: float, psi: float) -> float:
    """What a root gap takes off each leg along the face, mm: beyond the free gap the whole of it."""
    added = s7_21_fit_up.leg_added(g=gap, g_free=s7_21_fit_up.FREE_GAP, same=SAME)
    return float(s7_21_fit_up.along_the_face(g_add=added, psi=psi))


def widest_gap(readings: FilletAsWelded, off: float) -> float:
    """Gap there is when the gauge read ``off`` too little, mm; parts that touch have none."""
    return max(readings.root_gap + off, 0.0) if readings.root_gap else 0.0


def asked(readings: FilletAsWelded) -> Asked:
    """Leg and throat the drawing asks for, by the one it gives."""
    leg, throat = readings.required.leg, readings.required.throat
    if leg is None:
        throat = throat or 0.0
        return Asked(float(section.equal_leg(a=throat, psi=readings.angle)), throat)
    return Asked(leg, float(section.equal_leg_throat(z=leg, psi=readings.angle)))


def counted(readings: FilletAsWelded, off: float, *, fused_off: bool = False) -> Counted:
    """Worth of the readings when the gauge read ``off`` too kindly: legs and throat over, hollow and gap under.

    With ``fused_off`` penetration is less by its own tolerance. A negative ``off`` gives the most there can be.
    """
    gap = gap_taken(widest_gap(readings, off), readings.angle)
    # With the tolerance the gap may pass what is free, and then take up all there is of a leg.
    z_1, z_2 = (max(leg - off - gap, SAME) for leg in readings.legs)
    theoretical = float(section.fillet_throat(z_1=z_1, z_2=z_2, psi=readings.angle))
    hollow = 0.0 if readings.hollow is None else max(readings.hollow + off, 0.0)
    outer = max(theoretical - hollow, 0.0)
    if readings.throat is not None:
        outer = min(outer, max(readings.throat - off, 0.0))
    worth = float(fillet_section.size(z_1=z_1, z_2=z_2, a=outer, a_th=theoretical))
    root = readings.penetration
    fused = root.depth - (root.tolerance if fused_off else 0.0)

    def throat(fused: float) -> float:
        """Throat with so much fused beyond the root."""
        return 0.0 if readings.unsound else max(outer + fused - readings.not_fused(off), 0.0)

    return Counted(
        theoretical,
        outer,
        physical=throat(fused),
        creditable=throat(fused if root.vouched != "assumed" else 0.0),
        strength=throat(fused if root.vouched == "proven" else 0.0),
        size=worth,
    )


def judge(readings: FilletAsWelded, remarks: Remarks) -> Judgement:
    """Verdict on a fillet, the limits it is held to and its own fields of the answer; says why in ``remarks``."""
    off = readings.reading_tolerance
    want = asked(readings)
    nominal = worst = counted(readings, 0.0)
    if off or readings.penetration.tolerance:
        with about("worst case"):
            worst = counted(readings, off, fused_off=True)
    # A leg on the drawing is held by the size; what is asked as a throat, by the throat.
    outer = worst.outer + _proven(readings)
    if readings.required.leg is not None:
        with off_the_sheet():
            outer = float(section.equal_leg_throat(z=worst.size, psi=readings.angle))
    missing = lack(want.throat, outer)
    with about("face at its narrowest"):
        width = _narrowest_face(readings)
    level = QUALITY_SETS[readings.quality].level
    if level is None:
        lacking = missing / want.throat * want.leg
        limits = [*aws_d1_1.on_any_weld(readings), *aws_d1_1.on_fillet(readings, want.leg, width, lacking)]
    else:
        sizes = Sizes(t=readings.thinner, a=want.throat, b=width)
        limits = _iso(readings, level, sizes, nominal, missing)
    held = 0.0 if readings.unsound else max(outer - readings.not_fused(off), 0.0)
    verdict = _verdict(readings, want, held, nominal, limits)
    overweld = _overweld(readings, want)
    _say(readings, want, worst, held, verdict, remarks)
    _caution(readings, verdict, limits, remarks)
    throat = ThroatAsWelded(
        theoretical=nominal.theoretical,
        physical=nominal.physical,
        creditable=nominal.creditable,
        effective=nominal.strength,
        worst_case=worst.strength,
        required=want.throat,
    )
    return Judgement(verdict, tuple(limits), throat, worst.strength / want.throat, nominal.size, overweld)


def add_pass(readings: FilletAsWelded, limits: Sequence[QualityLimit]) -> WeldAction:
    """Leg to weld up to so that size, throat and evenness are kept, rounded up to the step."""
    off = readings.reading_tolerance
    leg = 0.0
    for limit in limits:
        if limit.verdict == "within":
            continue
        if limit.name in ("insufficient-throat", "undersize"):
            with off_the_sheet():
                leg = max(leg, asked(readings).leg + gap_taken(widest_gap(readings, off), readings.angle) + off)
        if limit.name == "asymmetry":
            leg = max(leg, max(readings.legs) - amount(limit.allowed) + 2.0 * off)
    return WeldAction("add-pass", float(up(leg, usual_step(readings.common.units, "leg"))))


def _proven(readings: FilletAsWelded) -> float:
    """Penetration that counts in strength, at the least it may be, mm."""
    root = readings.penetration
    return root.depth - root.tolerance if root.vouched == "proven" else 0.0


def _narrowest_face(readings: FilletAsWelded) -> float:
    """Width of the face, toe to toe, at the least the gauge allows, mm: limits by width then allow least."""
    z_1, z_2 = (max(leg - readings.reading_tolerance, SAME) for leg in readings.legs)
    return float(fillet_section.face_width(z_1=z_1, z_2=z_2, psi=readings.angle))


def _iso(readings: FilletAsWelded, level: Level, sizes: Sizes, nominal: Counted, missing: float) -> list[QualityLimit]:
    """Limits of ISO 5817; its nominal throat is the required one."""
    off, q = readings.reading_tolerance, sizes.a or 0.0
    with off_the_sheet():
        most = counted(readings, -off)
    convexity = readings.convexity or 0.0
    uneven = abs(readings.legs[0] - readings.legs[1])
    surface = [
        ("convexity", convexity, readings.at_most("convexity") or 0.0, ""),
        ("asymmetry", uneven, uneven + 2.0 * off, ""),
        ("insufficient-throat", missing, missing, "throat"),
        ("excessive-throat", lack(nominal.outer, q), lack(most.outer, q), ""),
        ("root-gap", readings.root_gap, widest_gap(readings, off), ""),
    ]
    return [
        *iso_5817.on_any_weld(readings, level, sizes, "incomplete-penetration-fillet"),
        *(iso_5817.value(readings, level, sizes, *each) for each in surface),
    ]


def _verdict(
    readings: FilletAsWelded, want: Asked, held: float, nominal: Counted, limits: Sequence[QualityLimit]
) -> Verdict:
    """Short by the worst case unless the standard allows that much; over when there is too much."""
    standing = {limit.name: limit.verdict for limit in limits}
    if not at_least(held, want.throat):
        allowed = all(standing.get(name, "within") == "within" for name in ANSWERING)
        return Verdict.ENOUGH if allowed and not readings.unsound else Verdict.SHORT
    if "excessive-throat" in standing:
        return Verdict.ENOUGH if standing["excessive-throat"] == "within" else Verdict.OVER
    # A custom and no limit, so what was read is held against it without the gauge's tolerance.
    cite(OVERSIZE_PRACTICE)
    return Verdict.ENOUGH if at_most(nominal.size, want.leg + OVERSIZE) else Verdict.OVER


def _overweld(readings: FilletAsWelded, want: Asked) -> Overweld:
    """Metal there is against the metal of the flat equal-leg fillet required; negative where metal is missing."""
    z_1, z_2 = readings.legs
    face = (readings.convexity or 0.0) - (readings.hollow or 0.0)
    with off_the_sheet():
        width = float(fillet_section.face_width(z_1=z_1, z_2=z_2, psi=readings.angle))
        flat = float(fillet_section.face_width(z_1=want.leg, z_2=want.leg, psi=readings.angle))
    with about("as welded"):
        made = float(fillet_section.area(z_1=z_1, z_2=z_2, psi=readings.angle, b=width, f=face))
    with about("required"):
        needed = float(fillet_section.area(z_1=want.leg, z_2=want.leg, psi=readings.angle, b=flat, f=0.0))
    extra = made - needed
    mass = float(deposition.mass_per_length(rho=deposition.STEEL, A=extra))
    return Overweld(made / needed, extra, mass)


def _say(
    readings: FilletAsWelded,
    want: Asked,
    worst: Counted,
    held: float,
    verdict: Verdict,
    remarks: Remarks,
) -> None:
    """Say why the verdict is what it is, in plain words."""
    units = remarks.units
    case = "worst case" if readings.reading_tolerance else "as read"
    remarks.because(
        f"The throat is {units.text(worst.strength)} and the size {units.text(worst.size)} ({case}). The required"
        f" throat is {units.text(want.throat)}, and the leg {units.text(want.leg)}."
    )
    kept = at_least(worst.strength, want.throat)
    if verdict is Verdict.SHORT and kept and not readings.unsound:
        remarks.because("The weld is smaller than the required leg, although its throat is enough.")
    elif verdict is Verdict.SHORT and readings.hollow:
        remarks.because(
            "The bead is hollow and thin. A leg gauge shows more than its throat, and its face is in tension as it"
            " cools, so that it may crack along the centreline."
        )
        cite(HOLLOW_CRACKS)
    elif verdict is Verdict.SHORT and not readings.unsound:
        remarks.because("The bead is thin. It carries less than it was sized for, and may crack along its centreline.")
    if verdict is Verdict.ENOUGH and not at_least(held, want.throat):
        remarks.because("The throat is short by no more, and over no more length, than is allowed.")
    if verdict is Verdict.OVER:
        remarks.because(
            "There is far too much weld metal. It adds heat, which distorts the plate and coarsens its grain, and"
            " strength that is not needed."
        )


def _caution(readings: FilletAsWelded, verdict: Verdict, limits: Sequence[QualityLimit], remarks: Remarks) -> None:
    """Say what the figures rest on."""
    if verdict is Verdict.OVER and QUALITY_SETS[readings.quality].level is None:
        remarks.caution(
            "overwelded",
            f"The size is more than {remarks.units.text(OVERSIZE)} over the required leg. No limit of the code is"
            " exceeded.",
            OVERSIZE_PRACTICE,
        )
    if readings.convexity is None and readings.hollow is None and readings.throat is None:
        remarks.caution("face-not-given", "The face is taken as flat, because neither face nor throat was read.")
    if readings.convexity:
        remarks.caution("convexity-not-credited", "Convexity does not count as throat.")
    if gap_taken(readings.root_gap, readings.angle):
        remarks.caution(
            "gap-taken-off",
            f"The gap of {remarks.units.text(readings.root_gap)} is taken off both legs.",
            s7_21_fit_up.FIT_UP,
        )
    counted = "physical throat only" if readings.penetration.vouched == "assumed" else "physical and creditable throat"
    remark_on_penetration(readings.penetration, remarks, f"It counts in the {counted}, and in no strength or verdict.")
    if any(limit.name == "undersize" and amount(limit.value) and limit.verdict == "within" for limit in limits):
        remarks.caution(
            "no-undersize-at-girder-ends",
            "Where this weld joins a girder's web to its flange, it must not be undersize at its ends, over twice the"
            " width of the flange.",
            s8_1_acceptance.UNDERSIZE,
        )
