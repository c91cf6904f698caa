"""Rules for the coupon of a break test, and what its broken faces must show."""

from ...engine.formula import Source, cite
from ...engine.rounding import at_least, at_most
from ...standards.aws_d1_1_2010 import s4_31_fillet_break as d1_1
from ...standards.iso_9017 import pieces
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.remarks import Remarks
from .answer import CouponAcceptance, CouponCheck, StandardCoupon
from .request import Coupon, Notch, Outcome, OutcomeBroken, Rules


def _least(name: str, value: float, limit: float, source: Source) -> CouponCheck:
    """Hold a dimension against the least it may be, mm."""
    return CouponCheck(name, value, "within" if at_least(value, limit) else "out", str(source), least=limit)


def _most(name: str, value: float, limit: float, source: Source) -> CouponCheck:
    """Hold a dimension against the most it may be, mm."""
    return CouponCheck(name, value, "within" if at_most(value, limit) else "out", str(source), most=limit)


def check(rules: Rules | None, coupon: Coupon, length: float, outcome: Outcome | None, faults: Faults) -> None:
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
    if isinstance(outcome, OutcomeBroken) and not at_most(outcome.largest_void, outcome.sum_of_voids):
        faults.inconsistent("#/outcome/sum_of_voids", "the sum is under the largest void alone")


def checks(rules: Rules | None, thinner: float, notch: Notch, throat: float) -> tuple[CouponCheck, ...]:
    """Hold a coupon against the rules asked for; ``throat`` is what is left of it under a notch, mm."""
    if rules != "iso-9017":
        return ()
    source = pieces.PIECES
    cite(source)
    whole = throat + notch.face
    return (
        _least("thickness", thinner, pieces.LEAST_THICKNESS, source),
        _most("side-notch", notch.side, pieces.DEEPEST_SIDE_NOTCH, source),
        _least("throat-under-face-notch", throat, pieces.SECTION_LEFT * whole, source),
    )


def standard_coupon(rules: Rules | None) -> StandardCoupon | None:
    """Coupon as the rules would have it, where they are known to."""
    if rules != "aws-d1-1-2010":
        return None
    cite(d1_1.COUPON)
    return StandardCoupon(
        plate=d1_1.PLATE,
        leg=d1_1.LEG,
        least_width=d1_1.LEAST_WIDTH,
        welded_length=d1_1.WELDED_LENGTH,
        specimen=d1_1.SPECIMEN,
        source=str(d1_1.COUPON),
    )


def acceptance(outcome: Outcome, remarks: Remarks) -> CouponAcceptance:
    """Judge what a fillet break specimen shows."""
    source = d1_1.ACCEPTANCE
    cite(source)
    limits: tuple[CouponCheck, ...] = ()
    accepted = True
    if isinstance(outcome, OutcomeBroken):
        limits = (
            _most("largest-void", outcome.largest_void, d1_1.LARGEST_VOID, source),
            _most("sum-of-voids", outcome.sum_of_voids, d1_1.SUM_OF_VOIDS, source),
        )
        accepted = outcome.fused_to_root and all(one.verdict == "within" for one in limits)
        if not outcome.fused_to_root:
            remarks.because("The break shows no complete fusion to the root.")
    remarks.caution(
        "second-hand-limits",
        "The limits were read as quoted by others, for a specimen with a stop and a start in it; a certified inspector"
        " judges the real one.",
        source,
    )
    return CouponAcceptance(Verdict.ACCEPTED if accepted else Verdict.REJECTED, limits, str(source))
