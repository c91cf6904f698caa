"""Coupon of a break test against the rules chosen, and what its broken faces must show."""

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
    """Check of a dimension against the least it may be, mm."""
    return CouponCheck(name, value, "within" if at_least(value, limit) else "out", str(source), least=limit)


def _most(name: str, value: float, limit: float, source: Source) -> CouponCheck:
    """Check of a dimension against the most it may be, mm."""
    return CouponCheck(name, value, "within" if at_most(value, limit) else "out", str(source), most=limit)


def check(rules: Rules | None, coupon: Coupon, length: float, outcome: Outcome | None, faults: Faults) -> None:
    """Add a fault for an outcome that no rule judges, or that contradicts itself; ``length`` of the coupon in mm."""
    if outcome is None:
        return
    if rules != "aws-d1-1-2010" or coupon != "tee":
        faults.inconsistent(
            "#/outcome", 'is judged with rules "aws-d1-1-2010" and coupon "tee" only; leave it out otherwise'
        )
    elif not (at_least(length, d1_1.SHORTEST_SPECIMEN) and at_most(length, d1_1.SPECIMEN)):
        faults.out_of_scope(
            "#/length",
            f"must be from {faults.units.text(d1_1.SHORTEST_SPECIMEN)} to {faults.units.text(d1_1.SPECIMEN)} where an"
            f" outcome is judged ({d1_1.ACCEPTANCE}); it is {faults.units.text(length)}",
        )
    if isinstance(outcome, OutcomeBroken) and not at_most(outcome.largest_void, outcome.sum_of_voids):
        faults.inconsistent(
            "#/outcome/sum_of_voids",
            f"must be at least the largest void of {faults.units.text(outcome.largest_void)}; it is"
            f" {faults.units.text(outcome.sum_of_voids)}",
        )


def checks(rules: Rules | None, thinner: float, notch: Notch, throat: float) -> tuple[CouponCheck, ...]:
    """Check a coupon against the rules chosen; ``throat`` is what the face notch leaves of it, mm."""
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
    """Standard coupon of the rules chosen; None where they have none."""
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
    """Judge what the broken faces of a fillet break specimen show; adds a reason and a caution."""
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
            remarks.because("The broken faces show no complete fusion to the root.")
    remarks.caution(
        "second-hand-limits",
        "The limits were read second-hand, for a specimen that contains a stop and a start. Have a certified inspector"
        " judge the real one.",
        source,
    )
    return CouponAcceptance(Verdict.ACCEPTED if accepted else Verdict.REJECTED, limits, str(source))
