"""Use case: whether a weld as gauged has its throat and keeps its quality level, and what to do if not."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType

from ...engine.formula import working
from ...engine.rounding import at_least, at_most
from ...standards.aws_d1_1_2020 import clause as d1_1
from ..core.answers import Answered, answered
from ..core.codes import RemedyCode
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints.quality_sets import QUALITY_SETS, QualitySet
from . import aws_d1_1, butt, fillet
from .answer import AsWeldedAnswer, QualityLimit, WeldAction
from .limits import amount, why_not_kept
from .request import ButtAsWelded, FilletAsWelded, Readings

REPAIRS: Mapping[RemedyCode, tuple[str, ...]] = MappingProxyType(
    {
        "close-gap": ("root-gap",),
        "realign": ("misalignment",),
        "gouge-and-reweld": (
            "crack", "burn-through", "lack-of-fusion", "incomplete-penetration", "surface-pore", "internal-pore",
        ),
        "add-root-pass": ("root-concavity", "shrinkage-groove"),
        "add-pass": ("insufficient-throat", "undersize", "asymmetry", "underfill", "thinning"),
        "fill-crater": ("end-crater-pipe",),
        "dress-face": ("convexity", "excessive-throat", "reinforcement"),
        "dress-root": ("excess-penetration",),
        "dress-toe": ("overlap", "toe-angle"),
        "repair-undercut": ("undercut",),
    }
)  # fmt: skip
"""What to do about each limit that is not kept, in the order of the work."""


def as_welded(request: FilletAsWelded | ButtAsWelded) -> Answered[AsWeldedAnswer]:
    """Whether a weld as gauged has its throat and keeps its quality level.

    Lengths are in mm, angles in rad. Raises ``Refused`` with every fault found.
    """
    units = Units(request.common.units)
    remarks = Remarks(units)
    rules = QUALITY_SETS[request.quality]
    _check(request, rules, units)
    if rules.level is None:
        request = replace(request, loading=request.loading or "static")
    with working() as sheet:
        judged = fillet.judge(request, remarks) if isinstance(request, FilletAsWelded) else butt.judge(request, remarks)
        _say(request, rules, judged.limits, remarks)
    answer = AsWeldedAnswer(
        judged.throat,
        judged.size,
        judged.strength_left,
        judged.overweld,
        judged.limits,
        quality_kept=all(limit.verdict == "within" for limit in judged.limits),
        actions=_actions(request, judged.limits),
    )
    return answered(
        "as_welded",
        request,
        sheet,
        remarks,
        judged.verdict,
        answer,
        rule_set=None,
        parameters={},
    )


def _check(readings: FilletAsWelded | ButtAsWelded, rules: QualitySet, units: Units) -> None:
    """Refuse readings that contradict each other or have no limit, and parts beyond the standard."""
    faults = Faults(units)
    if isinstance(readings, FilletAsWelded):
        fillet.check(readings, faults)
    else:
        butt.check(readings, faults)
    if rules.level is None:
        for name in aws_d1_1.SILENT:
            value = getattr(readings, name, None)
            if value is not None and value is not False:
                faults.inconsistent(
                    f"#/{name}", f"does not apply to {readings.quality}, which has no limit for it; leave it out"
                )
    else:
        for name in ("loading", "flush"):
            if getattr(readings, name, None) is not None:
                faults.inconsistent(f"#/{name}", "applies to aws-d1-1-2020 only, not to ISO 5817; leave it out")
    _check_extent(readings, rules, faults)
    for index, thickness in enumerate(readings.thickness):
        if not at_least(thickness, rules.least_thickness):
            faults.out_of_scope(
                f"#/thickness/{index}",
                f"must be at least {units.text(rules.least_thickness)} for {readings.quality}; it is"
                f" {units.text(thickness)}",
            )
    faults.refuse()


def _check_extent(readings: Readings, rules: QualitySet, faults: Faults) -> None:
    """Refuse the length of an imperfection that was not read or has no limit by length, and one over the weld's own."""
    if readings.extent is None:
        return
    for name, length in readings.extent.given():
        pointer = f"#/extent/{name}"
        if rules.level is None and name not in aws_d1_1.EXTENTS:
            faults.inconsistent(
                pointer, f"does not apply to {readings.quality}, which has no limit by this length; leave it out"
            )
        elif name == "undercut" and readings.loading not in (None, "static"):
            faults.inconsistent(
                pointer, "does not apply to cyclic load, under which one depth holds over any length; leave it out"
            )
        elif name == "throat" and isinstance(readings, ButtAsWelded):
            faults.inconsistent(
                pointer,
                "does not apply to a butt: send the length of underfill, root concavity, incomplete penetration or"
                " lack of fusion",
            )
        elif name != "throat" and getattr(readings, name, None) is None:
            faults.inconsistent(pointer, f"needs the reading {name}; send it, or leave the length out")
        elif not at_most(length, readings.extent.of_weld):
            faults.inconsistent(
                pointer,
                f"must be at most the {faults.units.text(readings.extent.of_weld)} of the weld; it is"
                f" {faults.units.text(length)}",
            )


def _actions(readings: FilletAsWelded | ButtAsWelded, limits: Sequence[QualityLimit]) -> tuple[WeldAction, ...]:
    """What to do, first that which comes first in the shop; "accept" alone when there is nothing to do."""
    failed = {limit.name for limit in limits if limit.verdict != "within"}
    actions = tuple(
        fillet.add_pass(readings, limits)
        if do == "add-pass" and isinstance(readings, FilletAsWelded)
        else WeldAction(do)
        for do, names in REPAIRS.items()
        if not failed.isdisjoint(names)
    )
    return actions or (WeldAction("accept"),)


def _say(readings: Readings, rules: QualitySet, limits: Sequence[QualityLimit], remarks: Remarks) -> None:
    """Say which limits are not kept, and what was not looked at."""
    if readings.unsound:
        remarks.because(
            "The weld is cracked or burnt through, so no throat counts until it is cut out and welded again."
        )
    for limit in limits:
        if limit.verdict != "within":
            remarks.because(why_not_kept(limit, remarks.units))
    answering = {*fillet.ANSWERING, *butt.ANSWERING}
    if sum(1 for limit in limits if limit.name in answering and amount(limit.value)) > 1:
        remarks.caution(
            "imperfections-not-summed",
            "Each imperfection is checked against its own limit. Together in one section they may still be too much.",
        )
    if readings.undercut is None:
        remarks.caution("undercut-not-given", "Undercut is not checked, because it was not read.")
    if rules.level is None:
        if readings.loading == "static":
            remarks.caution(
                "static-only", "The limits are those of statically loaded joints.", d1_1("Table 8.1", "second-hand")
            )
        remarks.caution(
            "code-in-part",
            "Only what was read is checked against the code. Pores, craters and toe angles are not checked.",
        )
    else:
        remarks.caution(
            "level-in-part", "Only what was read is checked against the level. What was not read may still exceed it."
        )
