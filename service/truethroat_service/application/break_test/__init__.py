"""Use case: the force on a lever that opens a coupon from its root, and what its broken faces must show."""

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
    "tee": "Push the standing plate over onto the weld: its root is then in tension.",
    "inside-corner": "Push the plates together over the weld: its root is then in tension.",
    "outside-corner": "Pull the plates apart from inside: the root is then in tension.",
}
EN_ROOT = Source("EN 1993-1-8:2005", "4.12, eccentricity that puts the root in tension", "from memory")


def break_test(request: BreakTestRequest) -> Answered[BreakTestAnswer]:
    """What opens a coupon from its root, and whether it breaks before its plate bends.

    Lengths are in mm, forces in N, strengths in MPa, angles in rad. Raises ``Refused`` with every fault found.
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
    """Find what does not fit together."""
    seam, finish, prepared = request.seam, request.finish, request.preparation
    check_seam(seam, faults)
    check_finish(seam, finish, faults)
    check_penetration(seam, request.penetration, faults)
    outside = request.coupon == "outside-corner"
    if (seam.kind in CORNERS) != outside:
        wanted = ", ".join(CORNERS) if outside else "fillet"
        faults.inconsistent("#/coupon", f"{request.coupon} goes with a seam of kind {wanted}, not {seam.kind}")
    if seam.thickness is None:
        faults.inconsistent("#/seam/thickness", "the plates' thickness decides whether they bend first; give it")
    if prepared.depth > 0.0 and seam.kind not in FLAT_SEAMS:
        faults.inconsistent("#/preparation/depth", f"a prepared depth belongs to a closed corner, not to {seam.kind}")
    elif not at_most(prepared.depth, seam.runs_through):
        faults.out_of_range(
            "#/preparation/depth",
            f"deeper than the {faults.units.text(seam.runs_through)} the seam runs through",
        )
    check_tolerance("#/preparation/tolerance", prepared.tolerance, prepared.depth, "depth", faults)
    if request.face_height is not None and request.hollow is not None:
        faults.inconsistent("#/hollow", "a face stands above its plane or is hollow: send face_height or hollow")
    if at_least(2.0 * request.notch.side, request.length):
        faults.inconsistent("#/notch/side", "notches from both sides meet: nothing is left to break")
    if request.weld.yield_strength > request.weld.tensile_strength:
        faults.inconsistent("#/weld/yield_strength", "the yield strength is over the tensile strength")
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
        faults.out_of_scope("#/plates/material", str(error))
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
    """Throat of one account under its notch: with every tolerance at its worse end, with none, and at its better."""
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
    """What opens one account of the throat: its low side at the least throat, its high side at the most."""
    throat = _throat(request, name)
    f_yw, f_uw = request.weld.yield_strength, request.weld.tensile_strength
    m_u = float(opening.breaking(f_uw=f_uw, a=throat.nominal))
    with about(f"{name}, most throat" if throat.most != throat.nominal else name):
        m_most = float(opening.breaking.body(f_uw=f_uw, a=throat.most))
        m_max = float(opening.breaking_at_most(k_ps=opening.PLANE_STRAIN, m_u=m_most))
    first_yield = float(opening.first_yield(f_yw=f_yw, a=throat.least))
    folding = float(opening.hinge(f_yw=f_yw, a=throat.least))
    # The verdict goes by these two; the others are shown beside them.
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
    """Whether hands open it, N, or its plate bends before."""
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
    """Say why, what the figures rest on, and how to do it without being hurt."""
    units = remarks.units
    hand = units.of(HAND_FORCE, request.hand_force)["text"]
    for name, account in accounts.items():
        opened = account.opened
        if not opened.throat.nominal:
            remarks.because(f"{name.capitalize()}: there is no throat to break.")
            continue
        low, high = (units.of(HAND_FORCE, f)["text"] for f in (opened.force.hinge, opened.force.breaking_at_most))
        text = f"{name.capitalize()}: {units.text(opened.throat.nominal)} of throat folds at {low} and breaks by {high}"
        text += f" on the lever; {hand} is taken for what hands can pull."
        if opened.governs == "plate":
            text += " The plate bends before the weld breaks."
        remarks.because(text)
    for check in checks:
        if check.verdict == "out":
            remarks.because(f"{check.name}: {units.text(check.value)} against {units.text(check.limit)}.")
    remarks.caution(
        "let-go",
        "A weld may let go at once and the lever kick. Clamp the coupon, stand beside the lever's path and not under"
        " it, shield eyes, hands and bystanders, and build the load up slowly.",
    )
    remarks.caution(
        "not-for-service",
        "A test for coupons. In service no load should open a one-sided weld from its root.",
        EN_ROOT,
    )
    remarks.caution(
        "nominal-strengths",
        "Weld and plate are mostly stronger than their nominal strength, and a flaw at the root opens at less: the test"
        " shows what the figures cannot.",
    )
    remark_on_penetration(
        request.penetration, remarks, "The verdict counts it, because it may be there; strength does not."
    )
    if len({account.verdict for account in accounts.values()}) > 1:
        remarks.caution(
            "accounts-differ",
            "The verdict is for all the throat there may be; what is vouched for alone ends otherwise, as its own"
            " account says.",
        )
    if request.rules == "iso-9017":
        room = units.of(TEMPERATURE, pieces.TEMPERATURE)["text"]
        remarks.caution(
            "room-temperature", f"Break it at room temperature, {room}: cold, it breaks sooner.", pieces.PIECES
        )
    root = request.preparation.depth + request.penetration.depth
    if request.seam.kind in FLAT_SEAMS and request.finish.to == "as-welded" and request.face > root:
        remarks.caution(
            "face-width-not-known",
            "The face stands higher than the root lies deep; past the nearer toe that is no throat, so less force may"
            " open it.",
        )
