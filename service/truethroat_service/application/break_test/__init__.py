"""Use case: the force on a lever that opens a coupon from its root, and what its broken faces must show.

The answer is a prediction, so its verdict counts all the throat there may be; the accounts of what is measured and of
what is proven stand beside it. The force is a band. Its lower end folds the least throat at the yield strength of the
weld metal; its upper end breaks the most throat at 1.15 of the tensile strength. The plate bends first where the moment
that folds it is smaller than the moment that breaks the throat at its tensile strength.
"""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import cast

from ...engine import section
from ...engine.formula import Source, about, cite, off_the_sheet, working
from ...engine.rounding import at_least, at_most
from ...practice import break_test as opening
from ...reference.loader import MATERIALS, NoBand
from ...standards.iso_9017 import pieces
from ..core.answers import Answered, answered
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.quantities import HAND_FORCE, TEMPERATURE
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints.penetration_remarks import remark_on_penetration
from ..joints.seam_checks import check_finish, check_penetration, check_seam, check_tolerance
from ..joints.seams import CORNERS, FLAT_SEAMS, Account
from ..joints.throat_budget import ToleratedSection, seam_section
from . import coupons
from .answer import (
    BreakTestAnswer,
    CouponCheck,
    FoldedPlate,
    Opened,
    OpenedAccount,
    OpenedThroat,
    Stages,
    ThroatInBalance,
)
from .request import BreakTestRequest

FOLDED = {
    "tee": "Push the standing plate over onto the weld, so that the root is in tension.",
    "inside-corner": "Push the plates together over the weld, so that the root is in tension.",
    "outside-corner": "Pull the plates apart from inside, so that the root is in tension.",
}
EN_ROOT = Source("EN 1993-1-8:2005", "4.12, eccentricity that puts the root in tension", "from memory")


def break_test(request: BreakTestRequest) -> Answered[BreakTestAnswer]:
    """What opens a coupon from its root, and whether it breaks before its plate bends.

    The request and the answer are in engine units: lengths in mm, forces in N, moments in N mm, strengths in MPa,
    angles in rad. The answer holds moment and force at each stage for three accounts of the throat, what folds the
    plate, and the coupon against the rules chosen. Raises ``Refused`` with every fault of the request.
    """
    units = Units(request.common.units)
    remarks, faults = Remarks(units), Faults(units)
    _check(request, faults)
    if request.hollow is None and request.face_height is None:
        request = replace(request, face_height=0.0)
    thinner = min(request.seam.thickness or (0.0, 0.0))
    length = request.length - 2.0 * request.notch.side
    with working() as sheet:
        f_y = _plate_yield(request, faults)
        faults.refuse()
        with about("plate"):
            m_p = float(opening.plate_hinge(f_y=f_y, t=thinner))
            balance = float(opening.balanced_throat(t=thinner, f_y=f_y, f_uw=request.weld.tensile_strength))
            plate_moment, plate_force = _levered(request, m_p, length)
        with about("physical"):
            physical = _account(request, "physical", balance, length)
        with off_the_sheet():
            creditable = _account(request, "creditable", balance, length)
            strength = _account(request, "strength", balance, length)
            leg = float(section.equal_leg(a=balance, psi=request.seam.angle)) if request.seam.kind == "fillet" else None
        cite(EN_ROOT)
        checks = coupons.checks(request.rules, thinner, request.notch, physical.opened.throat.nominal)
        standard = coupons.standard_coupon(request.rules)
        acceptance = None if request.outcome is None else coupons.acceptance(request.outcome, remarks)
    _say(request, {"physical": physical, "creditable": creditable, "strength": strength}, checks, remarks)
    return answered(
        "break_test",
        request,
        sheet,
        remarks,
        physical.verdict,
        BreakTestAnswer(
            opened=physical.opened,
            creditable=creditable,
            strength=strength,
            plate=FoldedPlate(plate_moment, plate_force, ThroatInBalance(balance, leg)),
            length=length,
            fold=FOLDED[request.coupon],
            checks=checks,
            standard_coupon=standard,
            acceptance=acceptance,
        ),
        rule_set=None,
        parameters={},
    )


def _check(request: BreakTestRequest, faults: Faults) -> None:
    """Add every fault of fields that do not fit together."""
    seam, finish, prepared = request.seam, request.finish, request.preparation
    check_seam(seam, faults)
    check_finish(seam, finish, faults)
    check_penetration(seam, request.penetration, faults)
    outside = request.coupon == "outside-corner"
    if (seam.kind in CORNERS) != outside:
        wanted = ", ".join(CORNERS) if outside else "fillet"
        faults.inconsistent("#/coupon", f"{request.coupon} needs a seam of kind {wanted}, not {seam.kind}")
    if seam.thickness is None:
        faults.inconsistent("#/seam/thickness", "is required, because it decides whether the plates bend first")
    if prepared.depth > 0.0 and seam.kind not in FLAT_SEAMS:
        faults.inconsistent(
            "#/preparation/depth", f"applies to a seam of kind closed-corner, not to {seam.kind}; leave it out"
        )
    elif not at_most(prepared.depth, seam.runs_through):
        faults.out_of_range(
            "#/preparation/depth",
            f"must be at most the {faults.units.text(seam.runs_through)} that the seam runs through; it is"
            f" {faults.units.text(prepared.depth)}",
        )
    check_tolerance("#/preparation/tolerance", prepared.tolerance, prepared.depth, "depth", faults)
    if request.face_height is not None and request.hollow is not None:
        faults.inconsistent("#/hollow", "cannot be sent together with face_height; send one of them")
    if at_least(2.0 * request.notch.side, request.length):
        faults.inconsistent(
            "#/notch/side",
            f"must be smaller than half the length of {faults.units.text(request.length)}; the notches of both sides"
            " leave nothing to break",
        )
    if request.weld.yield_strength > request.weld.tensile_strength:
        faults.inconsistent(
            "#/weld/yield_strength",
            f"must be at most the tensile strength of {faults.units.stress_text(request.weld.tensile_strength)}; it is"
            f" {faults.units.stress_text(request.weld.yield_strength)}",
        )
    coupons.check(request.rules, request.coupon, request.length, request.outcome, faults)


def _plate_yield(request: BreakTestRequest, faults: Faults) -> float:
    """Yield strength of the thinner plate, MPa."""
    plates = request.plates
    if plates.material is None:
        return cast(float, plates.yield_strength)
    if request.seam.thickness is None:
        return 1.0
    try:
        band = MATERIALS[plates.material].at(min(request.seam.thickness))
    except NoBand as error:
        faults.out_of_scope("#/plates/material", error.text(faults.units.text(error.thickness)))
        return 1.0
    cite(Source("", f"{plates.material}: {band.source}", band.mark))
    return band.yield_strength


def _section(request: BreakTestRequest, account: Account) -> ToleratedSection:
    """Section of the seam by one account."""
    return seam_section(
        request.seam,
        request.finish,
        request.penetration.counted(account),
        depth=request.preparation.depth,
        depth_tolerance=request.preparation.tolerance,
        face=request.face,
        # No procedure proves how high a face stands.
        face_counts=account != "strength",
    )


def _throat(request: BreakTestRequest, account: Account) -> OpenedThroat:
    """Throat of one account under its face notch: at the worse end of every tolerance, at none, at the better end."""
    worse = _section(request, account)
    better = replace(worse, worse={name: -move for name, move in worse.worse.items()})
    budget = worse.budget(0.0)
    with off_the_sheet():
        most = better.budget(0.0).worst.remaining
    least, nominal, most = (
        max(throat - request.notch.face, 0.0) for throat in (budget.worst.remaining, budget.nominal.remaining, most)
    )
    return OpenedThroat(least, nominal, most)


def _account(request: BreakTestRequest, name: Account, balance: float, length: float) -> OpenedAccount:
    """What opens one account of the throat: yield and fold at the least throat, the highest force at the most."""
    throat = _throat(request, name)
    f_yw, f_uw = request.weld.yield_strength, request.weld.tensile_strength
    m_u = float(opening.breaking(f_uw=f_uw, a=throat.nominal))
    with about(f"{name}, most throat" if throat.most != throat.nominal else name):
        m_most = float(opening.breaking.body(f_uw=f_uw, a=throat.most))
        m_max = float(opening.breaking_at_most(k_ps=opening.PLANE_STRAIN, m_u=m_most))
    first_yield = float(opening.first_yield(f_yw=f_yw, a=throat.least))
    folding = float(opening.hinge(f_yw=f_yw, a=throat.least))
    # These two decide the verdict; the others are shown beside them.
    hinge, most = (_levered(request, m, length) for m in (folding, m_max))
    with off_the_sheet():
        yielding, breaking = (_levered(request, m, length) for m in (first_yield, m_u))
    plate_first = bool(at_least(throat.nominal, balance))
    opened = Opened(
        throat,
        moment=Stages(yielding[0], hinge[0], breaking[0], most[0]),
        force=Stages(yielding[1], hinge[1], breaking[1], most[1]),
        governs="plate" if plate_first else "weld",
    )
    return OpenedAccount(_verdict(opened, request.hand_force), opened)


def _verdict(opened: Opened, hand_force: float) -> Verdict:
    """Whether hands open it with a force in N, or its plate bends first."""
    if opened.governs == "plate":
        return Verdict.PLATE_BENDS_FIRST
    if at_most(opened.force.breaking_at_most, hand_force):
        return Verdict.OPENS_BY_HAND
    if at_most(opened.force.hinge, hand_force):
        return Verdict.MAY_OPEN_BY_HAND
    return Verdict.DOES_NOT_OPEN_BY_HAND


def _levered(request: BreakTestRequest, m: float, length: float) -> tuple[float, float]:
    """Moment on the coupon, N mm, and force on the lever, N."""
    moment = float(opening.moment(m=m, b=length))
    return moment, float(opening.lever_force(M=moment, l=request.lever))


def _say(
    request: BreakTestRequest,
    accounts: Mapping[Account, OpenedAccount],
    checks: Iterable[CouponCheck],
    remarks: Remarks,
) -> None:
    """Add the reasons, the cautions on what the figures rest on, and those on how to test without being hurt."""
    units = remarks.units
    hand = units.of(HAND_FORCE, request.hand_force)["text"]
    for name, account in accounts.items():
        opened = account.opened
        if not opened.throat.nominal:
            remarks.because(f"{name.capitalize()}: nothing of the throat is left to break.")
            continue
        low, high = (units.of(HAND_FORCE, f)["text"] for f in (opened.force.hinge, opened.force.breaking_at_most))
        text = f"{name.capitalize()}: a throat of {units.text(opened.throat.nominal)} folds at {low} on the lever and"
        text += f" breaks at {high} at the latest; hands are taken to pull {hand}."
        if opened.governs == "plate":
            text += " The plate bends before the weld breaks."
        remarks.because(text)
    for check in checks:
        if check.verdict == "out":
            limit = "is smaller than the least" if check.least is not None else "is larger than the most"
            reading = check.name.replace("-", " ").capitalize()
            remarks.because(f"{reading}: {units.text(check.value)} {limit} of {units.text(check.limit)}.")
    remarks.caution(
        "let-go",
        "The weld may break suddenly and the lever may kick. Clamp the coupon, stand beside the path of the lever and"
        " not under it, protect eyes, hands and bystanders, and raise the load slowly.",
    )
    remarks.caution(
        "not-for-service",
        "This is a test for coupons. In service no load should open a one-sided weld from its root.",
        EN_ROOT,
    )
    remarks.caution(
        "nominal-strengths",
        "Weld and plate are mostly stronger than their nominal strength, and a weld with a flaw at the root opens at a"
        " smaller force. Only the test shows the true force.",
    )
    remark_on_penetration(
        request.penetration, remarks, "The verdict counts it, because it may be there; strength does not."
    )
    if len({account.verdict for account in accounts.values()}) > 1:
        remarks.caution(
            "accounts-differ",
            "The verdict counts all the throat there may be. Without penetration that is only assumed or measured the"
            " result differs: see creditable and strength.",
        )
    if request.rules == "iso-9017":
        room = units.of(TEMPERATURE, pieces.TEMPERATURE)["text"]
        remarks.caution(
            "room-temperature",
            f"Break the coupon at room temperature, {room}; a cold coupon breaks at a smaller force.",
            pieces.PIECES,
        )
    root = request.preparation.depth + request.penetration.depth
    if request.seam.kind in FLAT_SEAMS and request.finish.to == "as-welded" and request.face > root:
        remarks.caution(
            "face-width-not-known",
            "The face is higher than the root is deep. What lies beyond the nearer toe is no throat, so a smaller force"
            " may open the coupon.",
        )
