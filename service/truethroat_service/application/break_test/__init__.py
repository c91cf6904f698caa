"""Use case: the force on a lever that opens a coupon from its root, and what its broken faces must show."""

from dataclasses import dataclass, replace
from typing import Any, cast

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
from ..joints.seam_checks import check_finish, check_penetration, check_seam
from ..joints.seams import CORNERS, FLAT_SEAMS, Lengths, Shape
from ..joints.throat_budget import Budget, budget
from . import coupons
from .request import BreakTestRequest

FOLDED = {
    "tee": "Push the standing plate over onto the weld: its root is then in tension.",
    "inside-corner": "Push the plates together over the weld: its root is then in tension.",
    "outside-corner": "Pull the plates apart from inside: the root is then in tension.",
}
EN_ROOT = Source("EN 1993-1-8:2005", "4.12, eccentricity that puts the root in tension", "from memory")


@dataclass(frozen=True, slots=True)
class _Opened:
    """One account of the throat: mm, at its least and most by tolerances; moments on a length, N."""

    throat: tuple[float, float, float]
    moments: dict[str, float]
    plate_first: bool
    verdict: Verdict


def break_test(request: BreakTestRequest) -> Answered[dict[str, Any]]:
    """Answer a request for a break test; raises ``Refused`` with every fault found."""
    units = Units(request.common.units)
    remarks = Remarks(units)
    faults = Faults(units)
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
            plate = _levered(request, m_p, length)
        with about("physical"):
            physical = _opened(request, "physical", balance, length)
        with off_the_sheet():
            creditable = _opened(request, "creditable", balance, length)
            strength = _opened(request, "strength", balance, length)
            leg = float(section.equal_leg(a=balance, psi=request.seam.angle)) if request.seam.kind == "fillet" else None
        cite(EN_ROOT)
        checks = coupons.checks(request.rules, thinner, request.notch, physical.throat[1])
        standard = coupons.standard_coupon(request.rules, units)
        acceptance = None if request.outcome is None else coupons.acceptance(request.outcome, units, remarks)
    accounts = {"physical": physical, "creditable": creditable, "strength": strength}
    _say(request, accounts, checks, length, units, remarks)
    return answered(
        "break_test",
        request,
        sheet,
        remarks,
        physical.verdict,
        {
            **_dumped(request, physical, length, units),
            "creditable": _dumped(request, creditable, length, units),
            "strength": _dumped(request, strength, length, units),
            "plate": {
                "moment": units.moment(plate[0]),
                "force": units.of(HAND_FORCE, plate[1]),
                "balance": {
                    "throat": units.length(balance),
                    "leg": None if leg is None else units.length(leg),
                },
            },
            "length": units.length(length),
            "fold": FOLDED[request.coupon],
            "checks": [check.dump(units) for check in checks],
            "standard_coupon": standard,
            "acceptance": acceptance,
        },
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
    if prepared.tolerance > prepared.depth:
        faults.inconsistent("#/preparation/tolerance", "the tolerance is over the depth itself")
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


def _budget(request: BreakTestRequest, account: str, better: bool) -> Budget:
    """Throat of one account; ``better`` moves every tolerance to the side that makes it larger."""
    seam, penetration = request.seam, request.penetration
    vouched = {"physical": ("assumed", "measured", "proven"), "creditable": ("measured", "proven")}
    counted = penetration.depth > 0.0 and penetration.vouched in vouched.get(account, ("proven",))
    t_1, t_2 = seam.thickness or (0.0, 0.0)
    z_1, z_2 = seam.legs or (0.0, 0.0)
    lengths = Lengths(
        t_1=t_1, t_2=t_2, overlap=seam.overlap, z_1=z_1, z_2=z_2, depth=request.preparation.depth,
        penetration=penetration.depth if counted else 0.0, face=request.face, below=request.finish.below,
    )  # fmt: skip
    shape = Shape(
        kind=seam.kind,
        psi=seam.angle,
        through=True,
        finish=request.finish.to,
        radius=request.finish.radius or 0.0,
        toe=None,
        # No procedure proves how high a face stands.
        face_counts=account != "strength" and seam.kind != "fillet",
    )
    worse = {
        "t_1": -seam.thickness_tolerance,
        "t_2": -seam.thickness_tolerance,
        "overlap": seam.overlap_tolerance,
        "z_1": -seam.legs_tolerance,
        "z_2": -seam.legs_tolerance,
        "depth": -request.preparation.tolerance,
        "penetration": -penetration.tolerance if counted else 0.0,
        "below": request.finish.tolerance,
    }
    side = -1.0 if better else 1.0
    return budget(shape, lengths, {name: side * move for name, move in worse.items()}, 0.0)


def _opened(request: BreakTestRequest, account: str, balance: float, length: float) -> _Opened:
    """What opens one account of the throat: its low side at the least throat, its high side at the most."""
    made = _budget(request, account, better=False)
    with off_the_sheet():
        best = _budget(request, account, better=True)
    notched = request.notch.face
    least, nominal, most = (
        max(throat - notched, 0.0) for throat in (made.worst.remaining, made.nominal.remaining, best.worst.remaining)
    )
    f_yw, f_uw = request.weld.yield_strength, request.weld.tensile_strength
    m_u = float(opening.breaking(f_uw=f_uw, a=nominal))
    with about(f"{account}, most throat" if most != nominal else account):
        m_most = float(opening.breaking.body(f_uw=f_uw, a=most))
        m_max = float(opening.breaking_at_most(k_ps=opening.PLANE_STRAIN, m_u=m_most))
    moments = {
        "first_yield": float(opening.first_yield(f_yw=f_yw, a=least)),
        "hinge": float(opening.hinge(f_yw=f_yw, a=least)),
        "breaking": m_u,
        "breaking_at_most": m_max,
    }
    plate_first = bool(at_least(nominal, balance))
    hinge, most_force = (_levered(request, moments[name], length)[1] for name in ("hinge", "breaking_at_most"))
    if plate_first:
        verdict = Verdict.PLATE_BENDS_FIRST
    elif at_most(most_force, request.hand_force):
        verdict = Verdict.OPENS_BY_HAND
    elif at_most(hinge, request.hand_force):
        verdict = Verdict.MAY_OPEN_BY_HAND
    else:
        verdict = Verdict.DOES_NOT_OPEN_BY_HAND
    return _Opened((least, nominal, most), moments, plate_first, verdict)


def _levered(request: BreakTestRequest, m: float, length: float) -> tuple[float, float]:
    """Moment on the coupon, N mm, and force on the lever, N."""
    moment = float(opening.moment(m=m, b=length))
    return moment, float(opening.lever_force(M=moment, l=request.lever))


def _dumped(request: BreakTestRequest, opened: _Opened, length: float, units: Units) -> dict[str, Any]:
    """Account as an answer shows it."""
    least, nominal, most = opened.throat
    with off_the_sheet():
        levered = {name: _levered(request, m, length) for name, m in opened.moments.items()}
    return {
        "verdict": opened.verdict.value,
        "throat": {
            "least": units.length(least),
            "nominal": units.length(nominal),
            "most": units.length(most),
        },
        "moment": {name: units.moment(moment) for name, (moment, _) in levered.items()},
        "force": {name: units.of(HAND_FORCE, force) for name, (_, force) in levered.items()},
        "governs": "plate" if opened.plate_first else "weld",
    }


def _say(
    request: BreakTestRequest,
    accounts: dict[str, _Opened],
    checks: list[coupons.Check],
    length: float,
    units: Units,
    remarks: Remarks,
) -> None:
    """Say why, what the figures rest on, and how to do it without being hurt."""
    hand = units.of(HAND_FORCE, request.hand_force)["text"]
    for name, opened in accounts.items():
        with off_the_sheet():
            low, high = (
                units.of(HAND_FORCE, _levered(request, opened.moments[key], length)[1])["text"]
                for key in ("hinge", "breaking_at_most")
            )
        if not opened.throat[1]:
            remarks.because(f"{name.capitalize()}: there is no throat to break.")
            continue
        text = f"{name.capitalize()}: {units.text(opened.throat[1])} of throat folds at {low} and breaks by {high} on"
        text += f" the lever; {hand} is taken for what hands can pull."
        if opened.plate_first:
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
    if request.penetration.depth > 0.0 and request.penetration.vouched != "proven":
        remarks.caution(
            f"{request.penetration.vouched}-penetration",
            f"Penetration is {request.penetration.vouched}: the verdict counts it, as it may be there; strength does"
            " not, until a qualified procedure proves it.",
        )
    if len({opened.verdict for opened in accounts.values()}) > 1:
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
