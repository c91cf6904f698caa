"""Readings of a weld held to AWS D1.1:2020, in the inches of its tables, statically or cyclically loaded."""

from collections.abc import Iterator

from ...engine.formula import Source, about
from ...engine.rounding import SAME, at_most
from ...standards.aws_d1_1_2000 import s5_24_flush
from ...standards.aws_d1_1_2020 import s7_21_fit_up, s7_23_profile, s8_1_acceptance
from .answer import QualityLimit
from .limits import Rule, Stretch, extent_of, held, seen
from .request import ButtAsWelded, FilletAsWelded, GroundFlush, Readings

SILENT = (
    "toe_angle", "surface_pore", "internal_pore", "end_crater_pipe", "burn_through",
    "shrinkage_groove", "root_concavity", "circumferential", "face_width", "root_width",
)  # fmt: skip
"""Readings that nothing here of D1.1 is held against."""

EXTENTS = ("throat", "undercut")
"""Imperfections whose length D1.1 goes by."""


def on_any_weld(readings: Readings) -> Iterator[QualityLimit]:
    """Hold what may be read of any weld."""
    if readings.crack is not None:
        yield seen("crack", readings.crack, s8_1_acceptance.CRACKS)
    for field, source in (
        ("overlap", s7_23_profile.PROFILE),
        ("incomplete_penetration", s8_1_acceptance.FUSION),
        ("lack_of_fusion", s8_1_acceptance.FUSION),
    ):
        yield from _never(readings, field, source)
    if readings.undercut is not None:
        yield _undercut(readings, readings.undercut)


def _never(readings: Readings, field: str, source: Source) -> Iterator[QualityLimit]:
    """Hold a reading, if it was taken, of what is never permitted."""
    read, worst = getattr(readings, field), readings.at_most(field)
    if worst is not None:
        yield held(field.replace("_", "-"), read, worst, Rule(None, source, permitted=False))


def _undercut(readings: Readings, read: float) -> QualityLimit:
    """Hold undercut: by thickness, twice as deep over a short length of thin parts, or by the cyclic rows."""
    t, worst = readings.thinner, readings.at_most("undercut") or 0.0
    shallow, deep = s8_1_acceptance.UNDERCUTS
    if readings.loading == "cyclic-transverse":
        deepest = s8_1_acceptance.TRANSVERSE_UNDERCUT
        note = "primary member under cyclic load, weld across the tension"
        return held("undercut", read, worst, Rule(deepest, s8_1_acceptance.CYCLIC_UNDERCUT, note=note))
    if readings.loading == "cyclic-other":
        return held("undercut", read, worst, Rule(shallow, s8_1_acceptance.CYCLIC_UNDERCUT, note="under cyclic load"))
    with about("undercut"):
        most = s8_1_acceptance.largest_undercut(t=t, t_1=s8_1_acceptance.THICK, u_1=shallow, u_2=deep, same=SAME)
        rule = Rule(float(most), s8_1_acceptance.UNDERCUT, note="statically loaded")
        extent = extent_of(readings, "undercut")
        if readings.extent is None or extent is None or at_most(worst, float(most)):
            return held("undercut", read, worst, rule)
        length = s8_1_acceptance.deeper_undercut_length(
            l_most=s8_1_acceptance.DEEPER, c_l=s8_1_acceptance.DEEPER_SHARE, l_weld=readings.extent.of_weld
        )
    short = Stretch(float(length), "up to 2 in (50 mm) in any 12 in (300 mm), a sixth of a shorter weld")
    return held("undercut", read, worst, Rule(deep, s8_1_acceptance.UNDERCUT, note=rule.note, stretch=short), extent)


def on_fillet(readings: FilletAsWelded, leg: float, width: float, missing: float) -> Iterator[QualityLimit]:
    """Hold profile, size and gap of a fillet, mm: its face at the narrowest, and what is missing of its leg."""
    r_1, r_2, r_3 = s7_23_profile.CONVEXITY
    convexity = s7_23_profile.largest_convexity(
        W=width, W_1=s7_23_profile.NARROW, W_2=s7_23_profile.WIDE, r_1=r_1, r_2=r_2, r_3=r_3, same=SAME
    )
    read, worst = readings.convexity or 0.0, readings.at_most("convexity") or 0.0
    yield held("convexity", read, worst, Rule(float(convexity), s7_23_profile.PROFILE))
    s_1, s_2 = s8_1_acceptance.SIZES
    d_1, d_2, d_3 = s8_1_acceptance.UNDER
    under = s8_1_acceptance.largest_undersize(z=leg, z_1=s_1, z_2=s_2, d_1=d_1, d_2=d_2, d_3=d_3, same=SAME)
    stretch = Stretch(None, "over at most a tenth of the length")
    if readings.extent is not None:
        length = s8_1_acceptance.undersize_length(c_l=s8_1_acceptance.SHARE, l_weld=readings.extent.of_weld)
        stretch = Stretch(float(length), stretch.note)
    rule = Rule(float(under), s8_1_acceptance.UNDERSIZE, stretch=stretch)
    yield held("undersize", missing, missing, rule, extent_of(readings, "throat"))
    worst = readings.at_most("root_gap") or 0.0
    yield held("root-gap", readings.root_gap, worst, Rule(s7_21_fit_up.LARGEST_GAP, s7_21_fit_up.FIT_UP))


def on_butt(readings: ButtAsWelded) -> Iterator[QualityLimit]:
    """Hold reinforcement, underfill, alignment and a flush finish of a butt."""
    if readings.flush is None:
        yield from _reinforcement(readings, ("reinforcement", "excess_penetration"))
    else:
        yield from _flush(readings, readings.flush)
        yield from _reinforcement(readings, ("excess_penetration",))
    yield from _never(readings, "underfill", s7_23_profile.PROFILE)
    if readings.misalignment is not None:
        most = s7_21_fit_up.largest_offset(
            c_t=s7_21_fit_up.OFFSET_SHARE, t=readings.thinner, e_cap=s7_21_fit_up.OFFSET_CAP
        )
        rule = Rule(float(most), s7_21_fit_up.ALIGNMENT)
        yield held("misalignment", readings.misalignment, readings.at_most("misalignment") or 0.0, rule)


def _reinforcement(readings: ButtAsWelded, fields: tuple[str, ...]) -> Iterator[QualityLimit]:
    """Hold the height of face and root by the thinner part, which allows less."""
    t_1, t_2 = s7_23_profile.THICKNESSES
    r_1, r_2, r_3 = s7_23_profile.HEIGHTS
    if readings.loading != "static":
        r_3 = r_2
    for field in fields:
        read, worst = getattr(readings, field), readings.at_most(field)
        if worst is not None:
            most = s7_23_profile.largest_reinforcement(
                t=readings.thinner, t_1=t_1, t_2=t_2, r_1=r_1, r_2=r_2, r_3=r_3, same=SAME
            )
            yield held(field.replace("_", "-"), read, worst, Rule(float(most), s7_23_profile.REINFORCEMENT))


def _flush(readings: ButtAsWelded, flush: GroundFlush) -> Iterator[QualityLimit]:
    """Hold what a weld required flush keeps of its reinforcement and loses of its part."""
    off, rest = readings.reading_tolerance, s7_23_profile.FLUSH_REST
    if readings.reinforcement is not None:
        rule = Rule(rest, s7_23_profile.FLUSH, note="required flush")
        if flush.faying:
            rule = Rule(None, s7_23_profile.FLUSH, permitted=False, note="none on a faying surface")
        yield held("reinforcement", readings.reinforcement, readings.at_most("reinforcement") or 0.0, rule)
    rule = Rule(rest, s7_23_profile.FLUSH)
    if flush.edition == "aws-d1-1-2000":
        most = s5_24_flush.largest_thinning(q_cap=s5_24_flush.THINNING, c_t=s5_24_flush.SHARE, t=readings.thinner)
        rule = Rule(float(most), s5_24_flush.FLUSH)
    yield held("thinning", flush.thinning, flush.thinning + off, rule)
