"""Use case: whether a fillet as gauged has its throat and keeps its quality level, and what to do if not."""

from dataclasses import dataclass
from math import pi
from typing import Any, Literal, cast

from ..engine import fillet_section, section
from ..engine.formula import Source, about, cite, off_the_sheet, working
from ..engine.rounding import SAME, at_least, at_most
from ..engine.units import INCH
from ..practice import deposition
from ..standards.aws_d1_1_2020 import clause as d1_1
from ..standards.aws_d1_1_2020 import s7_21_fit_up, s7_23_profile, s8_1_acceptance
from ..standards.iso_5817_2014 import table_1
from .answers import Common, Remarks, Units, Verdict, answer
from .faults import Faults
from .seams import Penetration

Quality = Literal["iso-5817-b", "iso-5817-c", "iso-5817-d", "aws-d1-1-2020"]
QUALITIES = ("iso-5817-b", "iso-5817-c", "iso-5817-d", "aws-d1-1-2020")
D1_1 = "aws-d1-1-2020"

OVERSIZE = INCH / 8
"""Size beyond the required leg, mm, from which a fillet is called over where no code limits it."""

OVERSIZE_PRACTICE = Source("", "more than 1/8 in over the required leg is overwelded", "common practice, no source")
LEAST_D1_1 = 3.0
"""Thinnest part under D1.1, mm (1/8 in)."""


@dataclass(frozen=True, slots=True)
class Required:
    """What the drawing asks for: an equal leg, or a throat, mm; one of the two."""

    leg: float | None = None
    throat: float | None = None


@dataclass(frozen=True, slots=True)
class AsWeldedRequest:
    """Readings of one fillet, in engine units."""

    legs: tuple[float, float]
    thickness: tuple[float, float]
    required: Required
    quality: Quality
    angle: float = pi / 2
    throat: float | None = None
    convexity: float | None = None
    hollow: float | None = None
    root_gap: float = 0.0
    undercut: float | None = None
    reading_tolerance: float = 0.0
    short_share: float | None = None
    penetration: Penetration = Penetration(0.0, "assumed")
    common: Common = Common()


@dataclass(frozen=True, slots=True)
class _Counted:
    """What one set of readings is worth, mm: ``base`` is without penetration, ``throat`` with what is proven of it."""

    theoretical: float
    base: float
    physical: float
    creditable: float
    throat: float
    size: float


@dataclass(slots=True)
class _Check:
    """One limit and how the weld stands against it; ``allowed`` is None where nothing, or everything, is permitted."""

    name: str
    value: float
    allowed: float | None
    verdict: Literal["within", "over", "not-permitted"]
    note: str
    source: Source


def as_welded(request: AsWeldedRequest) -> dict[str, Any]:
    """Answer for a fillet as welded; raises ``Refused`` with every fault found."""
    remarks, units = Remarks(), Units(request.common.units)
    gap = _gap_taken(request.root_gap)
    _check(request, gap, units)
    required = request.required
    with working() as sheet:
        if required.leg is None:
            q = required.throat or 0.0
            leg = float(section.equal_leg(a=q, psi=request.angle))
        else:
            leg = required.leg
            q = float(section.equal_leg_throat(z=leg, psi=request.angle))
        nominal = _counted(request, 0.0)
        with about("worst case"):
            worst = _counted(request, request.reading_tolerance) if request.reading_tolerance else nominal
            if not request.reading_tolerance and request.penetration.tolerance:
                worst = _counted(request, 0.0, worst=True)
        # A leg on the drawing is held by the size; what is asked as a throat, by the throat.
        have = worst.throat
        if required.leg is not None:
            with off_the_sheet():
                have = float(section.equal_leg_throat(z=worst.size, psi=request.angle))
        checks = _iso(request, q, have, nominal) if request.quality != D1_1 else _aws(request, leg, q, have)
        verdict = _verdict(request, leg, q, have, nominal, checks)
        overweld = _overweld(request, leg, units)
        _say(request, leg, q, worst, verdict, checks, units, remarks)
    return answer(
        "as_welded",
        request,
        sheet,
        remarks,
        verdict,
        {
            "throat": {
                "theoretical": units.length(nominal.theoretical),
                "physical": units.length(nominal.physical),
                "creditable": units.length(nominal.creditable),
                "effective": units.length(nominal.throat),
                "worst_case": units.length(worst.throat),
                "required": units.length(q),
            },
            "size": units.length(nominal.size),
            "limits": [
                {
                    "name": check.name,
                    "value": units.length(check.value),
                    "allowed": None if check.allowed is None else units.length(check.allowed),
                    "verdict": check.verdict,
                    "note": check.note,
                    "source": str(check.source),
                }
                for check in checks
            ],
            "strength_left": worst.throat / q,
            "overweld": overweld,
            "actions": _actions(request, leg, verdict, checks, units),
        },
        rule_set=None,
        parameters={},
    )


def _gap_taken(gap: float) -> float:
    """What a root gap takes off each leg, mm: beyond the free gap the whole of it."""
    return float(s7_21_fit_up.leg_added(g=gap, g_free=s7_21_fit_up.FREE_GAP, same=SAME))


def _widest_gap(request: AsWeldedRequest, off: float) -> float:
    """Gap there may be when the gauge read ``off`` too little, mm; parts that touch have none."""
    return request.root_gap + off if request.root_gap else 0.0


def _check(request: AsWeldedRequest, gap: float, units: Units) -> None:
    """Refuse readings that contradict each other, and parts thinner than the standard goes."""
    faults = Faults(units)
    smaller = min(request.legs)
    if request.convexity is not None and request.hollow is not None:
        faults.inconsistent("#/hollow", "a face is convex or hollow: send convexity or hollow, not both")
    if gap >= smaller:
        faults.inconsistent("#/root_gap", "the gap takes up the whole of the smaller leg")
    elif request.reading_tolerance >= smaller - gap:
        faults.inconsistent("#/reading_tolerance", "the tolerance is over what the gap leaves of the smaller leg")
    elif request.hollow is not None:
        with off_the_sheet():
            z_1, z_2 = (leg - gap for leg in request.legs)
            room = float(section.fillet_throat(z_1=z_1, z_2=z_2, psi=request.angle))
        if request.hollow >= room:
            faults.inconsistent("#/hollow", f"the hollow reaches the root, {units.text(room)} under the face")
    if request.penetration.tolerance > request.penetration.depth:
        faults.inconsistent("#/penetration/tolerance", "the tolerance is over the depth itself")
    least = LEAST_D1_1 if request.quality == D1_1 else table_1.LEAST_THICKNESS
    for index, thickness in enumerate(request.thickness):
        if not at_least(thickness, least):
            faults.out_of_scope(
                f"#/thickness/{index}", f"{request.quality} is for parts of {units.text(least)} and more"
            )
    faults.refuse()


def _counted(request: AsWeldedRequest, off: float, worst: bool = False) -> _Counted:
    """Worth of the readings when the gauge read ``off`` too kindly: legs and throat over, hollow and gap under."""
    gap = _gap_taken(_widest_gap(request, off))
    # With the tolerance the gap may pass what is free, and then take up all there is of a leg.
    z_1, z_2 = (max(leg - off - gap, SAME) for leg in request.legs)
    theoretical = float(section.fillet_throat(z_1=z_1, z_2=z_2, psi=request.angle))
    hollow = 0.0 if request.hollow is None else request.hollow + off
    base = max(theoretical - hollow, 0.0)
    if request.throat is not None:
        base = min(base, max(request.throat - off, 0.0))
    fused, vouched = request.penetration.depth, request.penetration.vouched
    fused -= request.penetration.tolerance if off or worst else 0.0
    worth = float(fillet_section.size(z_1=z_1, z_2=z_2, a=base, a_th=theoretical))
    return _Counted(
        theoretical,
        base,
        physical=base + fused,
        creditable=base + (fused if vouched != "assumed" else 0.0),
        throat=base + (fused if vouched == "proven" else 0.0),
        size=worth,
    )


def _held(name: str, value: float, allowed: float | None, note: str, source: Source, permitted: bool = True) -> _Check:
    """Hold a value against a limit."""
    if allowed is None:
        within = permitted or value <= SAME
        return _Check(name, value, None, "within" if within else "not-permitted", note, source)
    return _Check(name, value, allowed, "within" if at_most(value, allowed) else "over", note, source)


def _iso(request: AsWeldedRequest, q: float, have: float, nominal: _Counted) -> list[_Check]:
    """Checks by ISO 5817: its thickness is here the thinner part's, its nominal throat the required one."""
    level = cast(table_1.Level, request.quality[-1])
    t = min(request.thickness)
    z_1, z_2 = request.legs
    width = float(fillet_section.face_width(z_1=z_1, z_2=z_2, psi=request.angle))
    readings: list[tuple[str, float, float]] = [
        ("convexity", request.convexity or 0.0, width),
        ("asymmetry", abs(z_1 - z_2), q),
        ("insufficient-throat", _lack(q, have), q),
        ("excessive-throat", _lack(nominal.base, q), q),
        ("root-gap", request.root_gap, q),
    ]
    if request.undercut is not None:
        readings.insert(0, ("undercut", request.undercut, t))
    checks = []
    for name, value, x in readings:
        with about(name):
            found = table_1.limit(name, level, t=t, x=x)
        note = "short imperfections only: 25 mm in any 100 mm" if found.short else ""
        if found.height is None:
            note = "no limit at this level" if found.permitted else "not permitted at this level"
        allowed = None if found.height is None else float(found.height)
        check = _held(name, value, allowed, note, found.source, found.permitted)
        if name == "insufficient-throat" and found.short and value > 0.0:
            _hold_share(request, check, table_1.SHORT_SHARE)
        checks.append(check)
    return checks


def _aws(request: AsWeldedRequest, leg: float, q: float, have: float) -> list[_Check]:
    """Checks by AWS D1.1, statically loaded, in the inches of its tables."""
    z_1, z_2 = request.legs
    width = float(fillet_section.face_width(z_1=z_1, z_2=z_2, psi=request.angle))
    r_1, r_2, r_3 = s7_23_profile.CONVEXITY
    convexity = s7_23_profile.largest_convexity(
        W=width, W_1=s7_23_profile.NARROW, W_2=s7_23_profile.WIDE, r_1=r_1, r_2=r_2, r_3=r_3, same=SAME
    )
    s_1, s_2 = s8_1_acceptance.SIZES
    d_1, d_2, d_3 = s8_1_acceptance.UNDER
    under = s8_1_acceptance.largest_undersize(z=leg, z_1=s_1, z_2=s_2, d_1=d_1, d_2=d_2, d_3=d_3, same=SAME)
    checks = [_held("convexity", request.convexity or 0.0, float(convexity), "", s7_23_profile.PROFILE)]
    lacking = _lack(q, have) / q * leg
    undersize = _held(
        "undersize", lacking, float(under), "over at most a tenth of the length", s8_1_acceptance.UNDERSIZE
    )
    if lacking > 0.0:
        _hold_share(request, undersize, s8_1_acceptance.SHARE)
    checks.append(undersize)
    if request.undercut is not None:
        u_1, u_2 = s8_1_acceptance.UNDERCUTS
        t = min(request.thickness)
        deepest = s8_1_acceptance.largest_undercut(t=t, t_1=s8_1_acceptance.THICK, u_1=u_1, u_2=u_2, same=SAME)
        note = "statically loaded"
        if deepest < u_2:
            note += "; to 1/16 in (1.6 mm) for up to 2 in (50 mm) in any 12 in (300 mm)"
        checks.append(_held("undercut", request.undercut, float(deepest), note, s8_1_acceptance.UNDERCUT))
    checks.append(_held("root-gap", request.root_gap, s7_21_fit_up.LARGEST_GAP, "", s7_21_fit_up.FIT_UP))
    return checks


def _lack(wanted: float, had: float) -> float:
    """By how much less there is than wanted; nothing when the two are the same but for rounding."""
    return 0.0 if at_least(had, wanted) else wanted - had


def _hold_share(request: AsWeldedRequest, check: _Check, most: float) -> None:
    """Hold a check to the share of the length that may be short; a share not told is the whole length."""
    share = 1.0 if request.short_share is None else request.short_share
    if check.verdict == "within" and not at_most(share, most):
        check.verdict = "over"
        check.note += f"; here over {100 * share:.4g} % of it"
        check.note += " (short_share not given)" if request.short_share is None else ""


def _verdict(
    request: AsWeldedRequest, leg: float, q: float, have: float, nominal: _Counted, checks: list[_Check]
) -> Verdict:
    """Short by the worst case unless the standard allows that much; over when there is too much."""
    standing = {check.name: check.verdict for check in checks}
    if not at_least(have, q):
        allowance = standing.get("insufficient-throat", standing.get("undersize"))
        return Verdict.ENOUGH if allowance == "within" else Verdict.SHORT
    if request.quality == D1_1:
        cite(OVERSIZE_PRACTICE)
        return Verdict.ENOUGH if at_most(nominal.size, leg + OVERSIZE) else Verdict.OVER
    return Verdict.ENOUGH if standing["excessive-throat"] == "within" else Verdict.OVER


def _overweld(request: AsWeldedRequest, leg: float, units: Units) -> dict[str, Any]:
    """Metal there is against the metal of the flat equal-leg fillet required; negative where metal is missing."""
    z_1, z_2 = request.legs
    face = (request.convexity or 0.0) - (request.hollow or 0.0)
    with off_the_sheet():
        width = float(fillet_section.face_width(z_1=z_1, z_2=z_2, psi=request.angle))
        flat = float(fillet_section.face_width(z_1=leg, z_2=leg, psi=request.angle))
    with about("as welded"):
        made = float(fillet_section.area(z_1=z_1, z_2=z_2, psi=request.angle, b=width, f=face))
    with about("required"):
        needed = float(fillet_section.area(z_1=leg, z_2=leg, psi=request.angle, b=flat, f=0.0))
    extra = made - needed
    mass = float(deposition.mass_per_length(rho=deposition.STEEL, A=extra))
    return {
        "metal_ratio": made / needed,
        "extra_area": units.area(extra),
        "extra_mass": units.mass_per_length(mass),
    }


def _actions(
    request: AsWeldedRequest, leg: float, verdict: Verdict, checks: list[_Check], units: Units
) -> list[dict[str, Any]]:
    """What to do, first that which comes first in the shop; "accept" alone when there is nothing to do."""
    failed = {check.name: check for check in checks if check.verdict != "within"}
    actions: list[dict[str, Any]] = []
    if "root-gap" in failed:
        actions.append({"do": "close-gap"})
    build_up = 0.0
    if verdict is Verdict.SHORT:
        with off_the_sheet():
            build_up = leg + _gap_taken(_widest_gap(request, request.reading_tolerance))
    asymmetry = failed.get("asymmetry")
    if asymmetry is not None:
        build_up = max(build_up, max(request.legs) - (asymmetry.allowed or 0.0))
    if build_up:
        actions.append({"do": "add-pass", "leg": units.length(build_up + request.reading_tolerance, "up")})
    if "convexity" in failed or "excessive-throat" in failed:
        actions.append({"do": "dress-face"})
    if "undercut" in failed:
        actions.append({"do": "repair-undercut"})
    return actions or [{"do": "accept"}]


def _say(
    request: AsWeldedRequest,
    leg: float,
    q: float,
    worst: _Counted,
    verdict: Verdict,
    checks: list[_Check],
    units: Units,
    remarks: Remarks,
) -> None:
    """Say why, and what the figures rest on."""
    case = "worst case" if request.reading_tolerance else "as read"
    remarks.because(
        f"{units.text(worst.throat)} of throat and a size of {units.text(worst.size)} ({case}); required are"
        f" {units.text(q)} of throat, a leg of {units.text(leg)}."
    )
    for check in checks:
        if check.verdict != "within":
            allowed = "nothing" if check.allowed is None else units.text(check.allowed)
            remarks.because(f"{check.name}: {units.text(check.value)} against {allowed} allowed.")
    if verdict is Verdict.OVER and request.quality == D1_1:
        remarks.caution(
            "overwelded", "More than 1/8 in over the required leg; no code limit is broken.", OVERSIZE_PRACTICE
        )
    if request.convexity:
        remarks.caution("convexity-not-credited", "Convexity is no throat and is left out of it.")
    if _gap_taken(request.root_gap):
        remarks.caution(
            "gap-taken-off", f"The gap of {units.text(request.root_gap)} is taken off both legs.", s7_21_fit_up.FIT_UP
        )
    if request.penetration.depth > 0.0 and request.penetration.vouched != "proven":
        counted = (
            "physical throat only" if request.penetration.vouched == "assumed" else "physical and creditable throat"
        )
        remarks.caution(
            f"{request.penetration.vouched}-penetration",
            f"Penetration is {request.penetration.vouched}: it counts in the {counted}, and in no strength or verdict"
            " until a qualified procedure proves it.",
        )
    if request.undercut is None:
        remarks.caution("undercut-not-given", "Undercut was not read, so it is not checked.")
    if request.quality == D1_1:
        remarks.caution(
            "static-only", "Limits are those of statically loaded joints.", d1_1("Table 8.1", "second-hand")
        )
    else:
        remarks.caution(
            "level-in-part", "Only what these readings show is held to the level: no cracks, pores or fusion."
        )
