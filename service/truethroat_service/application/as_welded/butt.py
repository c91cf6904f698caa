"""What a butt weld is worth as gauged, and what of it a quality level or code is held to."""

from dataclasses import replace

from ...engine import butt_section
from ...engine.formula import about
from ...engine.rounding import at_least, at_most
from ...standards.iso_5817_2014.table_1 import Level, Sizes
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..joints.quality_sets import QUALITY_SETS
from . import aws_d1_1, iso_5817
from .answer import QualityLimit, ThroatAsWelded
from .limits import Judgement
from .request import ButtAsWelded

ROOT_SIDE = ("root_width", "excess_penetration", "root_concavity", "shrinkage_groove")
"""Readings of the root of a weld made through from one side."""

ANSWERING = (
    "underfill", "root-concavity", "incomplete-penetration", "incomplete-root", "lack-of-fusion", "thinning",
)  # fmt: skip
"""Limits that answer for a throat that is short: a weld they allow is enough."""

TOO_MUCH = ("reinforcement", "excess-penetration")


def check(readings: ButtAsWelded, faults: Faults) -> None:
    """Note readings that contradict each other, or lack what their limit goes by."""
    units, throat = faults.units, readings.required.throat
    if throat is not None and not at_most(throat, readings.thinner):
        faults.inconsistent(
            "#/required/throat",
            f"must be at most the {units.text(readings.thinner)} of the thinner part; it is {units.text(throat)}",
        )
    if throat is not None or readings.sides == 2:
        for name in ROOT_SIDE:
            if getattr(readings, name) is not None:
                faults.inconsistent(
                    f"#/{name}",
                    "applies only to full penetration from one side, where the root can be read; leave it out",
                )
    if QUALITY_SETS[readings.quality].level is not None:
        needs = {"face_width": ("reinforcement", "overlap"), "root_width": ("excess_penetration",)}
        for width, names in needs.items():
            if getattr(readings, width) is None and any(getattr(readings, name) is not None for name in names):
                faults.inconsistent(f"#/{width}", f"is required with {' or '.join(names)}, whose limit depends on it")
            if getattr(readings, width) is not None and all(getattr(readings, name) is None for name in names):
                faults.inconsistent(f"#/{width}", f"applies only with {' or '.join(names)}; leave it out")
            read = getattr(readings, width)
            if read is not None and read <= readings.reading_tolerance:
                faults.inconsistent(f"#/{width}", "must be more than reading_tolerance")
    if readings.flush is not None and readings.flush.thinning >= readings.thinner:
        faults.inconsistent(
            "#/flush/thinning", f"must be smaller than the {units.text(readings.thinner)} of the thinner part"
        )


def judge(readings: ButtAsWelded, remarks: Remarks) -> Judgement:
    """Verdict on a butt, the limits it is held to and its own fields of the answer; says why in ``remarks``."""
    off = readings.reading_tolerance
    theoretical = readings.required.throat or readings.thinner
    nominal = worst = _throat(readings, theoretical, 0.0)
    if off:
        with about("worst case"):
            worst = _throat(readings, theoretical, off)
    level = QUALITY_SETS[readings.quality].level
    if level is None:
        limits = [*aws_d1_1.on_any_weld(readings), *aws_d1_1.on_butt(readings)]
    else:
        limits = _iso(readings, level, theoretical)
    standing = {limit.name: limit.verdict for limit in limits}
    verdict = Verdict.ENOUGH
    if not at_least(worst, theoretical):
        allowed = all(standing.get(name, "within") == "within" for name in ANSWERING)
        verdict = Verdict.ENOUGH if allowed and not readings.unsound else Verdict.SHORT
    if verdict is Verdict.ENOUGH and any(standing.get(name, "within") != "within" for name in TOO_MUCH):
        verdict = Verdict.OVER
    _say(readings, theoretical, worst, verdict, remarks)
    # Face height is no throat, and nothing here tells who vouches for fusion, so the three accounts are one.
    throat = ThroatAsWelded(
        theoretical, physical=nominal, creditable=nominal, effective=nominal, worst_case=worst, required=theoretical
    )
    return Judgement(verdict, tuple(limits), throat, strength_left=worst / theoretical)


def _throat(readings: ButtAsWelded, theoretical: float, off: float) -> float:
    """Throat left of a butt, mm, when each reading of what is missing was ``off`` too little."""
    missing = [readings.underfill, readings.root_concavity]
    if readings.flush is not None:
        missing.append(readings.flush.thinning)
    lost = sum(read + off for read in missing if read is not None) + readings.not_fused(off)
    if readings.unsound:
        return 0.0
    return float(butt_section.throat_left(a_full=theoretical, h_lost=lost))


def _iso(readings: ButtAsWelded, level: Level, s: float) -> list[QualityLimit]:
    """Limits of ISO 5817: by the thinner part, the nominal thickness of the weld and the widths of face and root."""
    off = readings.reading_tolerance
    sizes = Sizes(t=readings.thinner, s=s, b=None if readings.face_width is None else readings.face_width - off)
    root = replace(sizes, b=None if readings.root_width is None else readings.root_width - off)
    fusion = "incomplete-penetration"
    if readings.required.penetration == "full":
        fusion = "incomplete-root" if readings.sides == 1 else "incomplete-penetration-full"
    misaligned = "misalignment-circumferential" if readings.circumferential else "misalignment"
    return [
        *iso_5817.on_any_weld(readings, level, sizes, fusion),
        *(
            limit
            for field in ("reinforcement", "underfill", "root_concavity", "shrinkage_groove")
            for limit in iso_5817.depth(readings, level, sizes, field)
        ),
        *iso_5817.depth(readings, level, root, "excess_penetration"),
        *iso_5817.depth(readings, level, sizes, "misalignment", misaligned),
    ]


def _say(readings: ButtAsWelded, theoretical: float, worst: float, verdict: Verdict, remarks: Remarks) -> None:
    """Say why, and what the figures rest on."""
    units = remarks.units
    case = "worst case" if readings.reading_tolerance else "as read"
    of = "full penetration of the thinner part" if readings.required.penetration else "partial penetration"
    remarks.because(
        f"The throat is {units.text(worst)} ({case}). The required throat is {units.text(theoretical)}, {of}."
    )
    if verdict is Verdict.SHORT and not readings.unsound:
        remarks.because("Weld metal is missing in the throat, so the joint carries less than the drawing asks for.")
    if verdict is Verdict.ENOUGH and not at_least(worst, theoretical):
        remarks.because("The throat is short by no more, and over no more length, than is allowed.")
    if verdict is Verdict.OVER:
        remarks.because(
            "There is far too much weld metal. It adds heat, which distorts the plate and coarsens its grain, it raises"
            " the stress at the toes, and it adds no strength."
        )
    if readings.incomplete_penetration is None or readings.lack_of_fusion is None:
        remarks.caution(
            "fusion-not-read",
            "Fusion through the throat is taken from the welding procedure. A gauge does not show it, and no test or"
            " macro section was sent.",
        )
