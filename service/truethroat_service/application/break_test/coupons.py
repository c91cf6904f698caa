"""Rules for the coupon of a break test, and what its broken faces must show."""

from dataclasses import dataclass
from typing import Any, Literal

from ...engine.formula import Source, cite
from ...engine.rounding import at_least, at_most
from ...standards.aws_d1_1_2010 import s4_31_fillet_break as d1_1
from ...standards.iso_9017 import pieces
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..core.units import Units
from .request import Broken, Coupon, FoldedFlat, Notch, Rules


@dataclass(frozen=True, slots=True)
class Check:
    """One dimension of a coupon, mm, against its limit: at least or at most that."""

    name: str
    value: float
    limit: float
    least: bool
    source: Source

    @property
    def verdict(self) -> Literal["within", "out"]:
        """Whether the limit is kept."""
        kept = at_least(self.value, self.limit) if self.least else at_most(self.value, self.limit)
        return "within" if kept else "out"

    def dump(self, units: Units) -> dict[str, Any]:
        """Check as an answer shows it."""
        return {
            "name": self.name,
            "value": units.length(self.value),
            "least" if self.least else "most": units.length(self.limit),
            "verdict": self.verdict,
            "source": str(self.source),
        }


def check(
    rules: Rules | None, coupon: Coupon, length: float, outcome: FoldedFlat | Broken | None, faults: Faults
) -> None:
    """Find an outcome that no rule judges here, or that contradicts itself; ``length`` of the specimen in mm."""
    if outcome is None:
        return
    if rules != "aws-d1-1-2010" or coupon != "tee":
        faults.inconsistent(
            "#/outcome", 'is judged by rules "aws-d1-1-2010" and for a tee; leave it out, or send those'
        )
    elif not (at_least(length, d1_1.SHORTEST_SPECIMEN) and at_most(length, d1_1.SPECIMEN)):
        faults.out_of_scope(
            "#/length",
            f"the outcome is judged on a specimen of {faults.units.text(d1_1.SPECIMEN)}, or of"
            f" {faults.units.text(d1_1.SHORTEST_SPECIMEN)} ({d1_1.ACCEPTANCE})",
        )
    if isinstance(outcome, Broken) and not at_most(outcome.largest_void, outcome.sum_of_voids):
        faults.inconsistent("#/outcome/sum_of_voids", "the sum is under the largest void alone")


def checks(rules: Rules | None, thinner: float, notch: Notch, throat: float) -> list[Check]:
    """Hold a coupon against the rules asked for; ``throat`` is what is left of it under a notch, mm."""
    if rules != "iso-9017":
        return []
    source = pieces.PIECES
    cite(source)
    whole = throat + notch.face
    return [
        Check("thickness", thinner, pieces.LEAST_THICKNESS, True, source),
        Check("side-notch", notch.side, pieces.DEEPEST_SIDE_NOTCH, False, source),
        Check("throat-under-face-notch", throat, pieces.SECTION_LEFT * whole, True, source),
    ]


def standard_coupon(rules: Rules | None, units: Units) -> dict[str, Any] | None:
    """Coupon as the rules would have it, where they are known to."""
    if rules != "aws-d1-1-2010":
        return None
    cite(d1_1.COUPON)
    return {
        "plate": units.length(d1_1.PLATE),
        "leg": units.length(d1_1.LEG),
        "least_width": units.length(d1_1.LEAST_WIDTH),
        "welded_length": units.length(d1_1.WELDED_LENGTH),
        "specimen": units.length(d1_1.SPECIMEN),
        "source": str(d1_1.COUPON),
    }


def acceptance(outcome: FoldedFlat | Broken, units: Units, remarks: Remarks) -> dict[str, Any]:
    """Judge what a fillet break specimen shows."""
    source = d1_1.ACCEPTANCE
    cite(source)
    limits: list[Check] = []
    accepted = True
    if isinstance(outcome, Broken):
        limits = [
            Check("largest-void", outcome.largest_void, d1_1.LARGEST_VOID, False, source),
            Check("sum-of-voids", outcome.sum_of_voids, d1_1.SUM_OF_VOIDS, False, source),
        ]
        accepted = outcome.fused_to_root and all(one.verdict == "within" for one in limits)
        if not outcome.fused_to_root:
            remarks.because("The break shows no complete fusion to the root.")
    remarks.caution(
        "second-hand-limits",
        "The limits were read as quoted by others, for a specimen with a stop and a start in it; a certified inspector"
        " judges the real one.",
        source,
    )
    return {
        "verdict": (Verdict.ACCEPTED if accepted else Verdict.REJECTED).value,
        "limits": [one.dump(units) for one in limits],
        "source": str(source),
    }
