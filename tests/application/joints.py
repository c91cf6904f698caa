"""Random joints, seams and edges for the use cases, in engine units and within every rule set's scope."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import pi
from typing import Any

import hypothesis
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st

from truethroat_service.application.bevel_depth.request import BevelDepthRequest
from truethroat_service.application.fillet_size.request import FilletSizeRequest, Joint, SharedForce
from truethroat_service.application.grind_allowance.request import GrindAllowanceRequest
from truethroat_service.application.joints.loads import ForceComponents
from truethroat_service.application.joints.metals import Filler, Part
from truethroat_service.application.joints.seams import FINISHES, FLAT_SEAMS, Finish, Penetration, Preparation, Seam

AISC = ("aisc-360-22-lrfd", "aisc-360-22-asd")
EN = ("en-1993-1-8-2005-directional", "en-1993-1-8-2005-simplified")
STAINLESS = ("en-1993-1-4-2006-directional", "en-1993-1-4-2006-simplified")
HIGH_STRENGTH = ("en-1993-1-12-2007-directional", "en-1993-1-12-2007-simplified")
ALUMINIUM = "en-1999-1-1-2007"
EUROCODES = (*EN, *STAINLESS, *HIGH_STRENGTH, ALUMINIUM)
WITH_STRENGTH = (*AISC, *EN, STAINLESS[0], HIGH_STRENGTH[0], ALUMINIUM)
RULE_SETS = (*WITH_STRENGTH, "thin-part")
NONE = Penetration(0.0, "assumed")

# Some tests want joints of a kind that chance makes rarely; one that finds none fails all the same.
_SETTINGS = settings(suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much])


def given(**drawn: st.SearchStrategy[Any]) -> Callable[[Callable[..., None]], Callable[..., None]]:
    """Run a test on joints drawn at random."""

    def decorate(test: Callable[..., None]) -> Callable[..., None]:
        return _SETTINGS(hypothesis.given(**drawn)(test))

    return decorate


def hundredths(low: float, high: float) -> st.SearchStrategy[float]:
    """Make lengths in whole hundredths of a millimetre, so that none lies a hair beside a step."""
    return st.integers(round(low * 100), round(high * 100)).map(lambda count: count / 100)


ANGLES = st.integers(60, 120).map(lambda degrees: degrees * pi / 180)
"""Angles between plates that every rule set covers on both sides of a tee."""

FORCE_ANGLES = st.integers(0, 90).map(lambda degrees: degrees * pi / 180)


@st.composite
def parts(draw: st.DrawFn, rules: str) -> tuple[Part, Part]:
    """Draw two parts with strengths by hand, or with thicknesses alone for rules that claim no strength."""
    made = []
    for _ in range(2):
        thickness = draw(hundredths(4, 40))
        if rules == "thin-part":
            made.append(Part(thickness))
        elif rules == ALUMINIUM:
            made.append(Part(thickness, draw(st.sampled_from(["6082-T6", "5083-O", "5083-H22"]))))
        else:
            yield_strength = float(draw(st.integers(461, 700) if rules in HIGH_STRENGTH else st.integers(235, 460)))
            tensile = yield_strength + draw(st.integers(60, 150))
            beta_w = draw(st.sampled_from([0.8, 0.85, 0.9, 1.0])) if rules in EN else None
            made.append(Part(thickness, None, yield_strength, tensile, beta_w))
    return made[0], made[1]


def fillers(rules: str, of: tuple[Part, Part]) -> st.SearchStrategy[Filler | None]:
    """Make a filler metal where the rules go by one; by AISC no more than one level over what matches the parts."""
    if rules == ALUMINIUM:
        return st.just(Filler("ER5356"))
    if rules in AISC:
        stronger = max(part.tensile_strength or 0.0 for part in of)
        # The matching level of 10 ksi and one more: no less than 10 ksi, 68.9 MPa, over the part itself.
        most = int(max(stronger, 414.0) + 68.0)
        return st.integers(min(300, most), most).map(lambda strength: Filler(tensile_strength=float(strength)))
    if rules in HIGH_STRENGTH:
        return st.integers(420, 760).map(lambda strength: Filler(tensile_strength=float(strength)))
    return st.none()


@st.composite
def fillets(draw: st.DrawFn, rules: str, **fixed: Any) -> FilletSizeRequest:
    """Draw a fillet under a shared force, or by the thin part; ``fixed`` fields stay as given."""
    kind = draw(st.sampled_from(["tee", "lap", "inside-corner"]))
    sides = 1 if kind == "inside-corner" else draw(st.sampled_from([1, 2]))
    load = SharedForce(draw(st.integers(1, 600)) * 1e3, float(draw(st.integers(150, 900))), draw(FORCE_ANGLES))
    made = draw(parts(rules))
    filler = draw(fillers(rules, made))
    request = FilletSizeRequest(
        rule_set=rules,
        joint=Joint(kind, draw(ANGLES), sides=sides),
        parts=made,
        basis="thin-part" if rules == "thin-part" else "load",
        load=None if rules == "thin-part" else load,
        filler=filler,
        # The properties are those of a joint held from turning, whose length takes nothing off.
        held_from_turning=True,
        end_loaded=False,
        size_step=draw(st.sampled_from([0.5, 1.0, 1.5875])),
    )
    return replace(request, **fixed)


@st.composite
def component_fillets(draw: st.DrawFn, rules: str) -> FilletSizeRequest:
    """Draw a fillet under force components of any sign, not all nothing."""
    per_length = st.integers(-1500, 1500).map(float)
    load = ForceComponents(draw(per_length), draw(per_length), float(draw(st.integers(1, 1500))))
    return draw(fillets(rules, load=load))


@st.composite
def seams(draw: st.DrawFn, kind: str, *, tolerances: bool = False) -> Seam:
    """Draw a seam of one kind."""
    off = hundredths(0, 0.5) if tolerances else st.just(0.0)
    thickness = (draw(hundredths(3, 20)), draw(hundredths(3, 20)))
    angle = draw(st.integers(60, 120).map(lambda degrees: degrees * pi / 180))
    if kind == "fillet":
        legs = (draw(hundredths(3, 15)), draw(hundredths(3, 15)))
        return Seam("fillet", angle=angle, legs=legs, legs_tolerance=draw(off))
    if kind in FLAT_SEAMS:
        return Seam(kind, thickness, thickness_tolerance=draw(off))
    if kind == "half-open-corner":
        overlap = draw(hundredths(0.5, thickness[0]))
        return Seam(
            kind, thickness, angle, overlap, thickness_tolerance=draw(off), overlap_tolerance=min(draw(off), overlap)
        )
    return Seam(kind, thickness, angle, thickness_tolerance=draw(off))


@st.composite
def penetrations(draw: st.DrawFn, most: float, *, tolerances: bool = False) -> Penetration:
    """Draw a penetration, vouched for in any way."""
    depth = min(draw(hundredths(0, 3)), most)
    tolerance = min(draw(hundredths(0, 0.5)), depth) if tolerances else 0.0
    return Penetration(depth, draw(st.sampled_from(["assumed", "measured", "proven"])), tolerance)


@st.composite
def finishes(draw: st.DrawFn, kind: str, *, tolerances: bool = False) -> Finish:
    """Draw a finish that a kind of seam can have."""
    to = draw(st.sampled_from(FINISHES[kind]))  # type: ignore[index]
    if to == "as-welded":
        return Finish()
    tolerance = draw(hundredths(0, 0.4)) if tolerances else 0.0
    return Finish(to, draw(hundredths(0, 25)) if to == "radius" else None, draw(hundredths(0, 1)), tolerance)


@st.composite
def grounds(draw: st.DrawFn, *kinds: str, tolerances: bool = False, rules: bool = True) -> GrindAllowanceRequest:
    """Draw a seam to grind, of one of the kinds, with any face, penetration, preparation and finish."""
    kind = draw(st.sampled_from(kinds or tuple(FINISHES)))
    seam = draw(seams(kind, tolerances=tolerances))
    off = hundredths(0, 0.5) if tolerances else st.just(0.0)
    face = draw(st.sampled_from(["none", "height", "hollow"]))
    prepared = Preparation()
    if kind in FLAT_SEAMS:
        most = min(seam.runs_through, 20.0)
        depth = draw(st.just(0.0) | hundredths(1, most))
        form = draw(st.sampled_from(["single-bevel", "single-v", "single-j", "single-u"]))
        prepared = Preparation(depth, form, None, min(draw(off), depth))
    hollow = min(draw(hundredths(0.05, 1.5)), 1.5) if face == "hollow" else None
    return GrindAllowanceRequest(
        seam=seam,
        # No weld makes a flat seam's thinner part thicker.
        required_throat=draw(hundredths(0.5, 12 if kind not in FLAT_SEAMS else min(12, *(seam.thickness or ())))),
        finish=draw(finishes(kind, tolerances=tolerances)),
        preparation=prepared,
        penetration=draw(penetrations(seam.overlap if kind == "half-open-corner" else 3.0, tolerances=tolerances)),
        face_height=draw(hundredths(0, 6)) if face == "height" else None,
        hollow=hollow,
        face_height_tolerance=draw(off) if face == "height" else 0.0,
        hollow_tolerance=draw(off) if face == "hollow" else 0.0,
        rule_set=draw(st.sampled_from([None, *RULE_SETS])) if rules else None,
        # Table J2.1 lists this process and position with every groove's usual angle.
        process=draw(st.sampled_from(["SMAW", "GMAW"])),
        position=draw(st.sampled_from(["1G", "3G"])),
    )


@st.composite
def edges(draw: st.DrawFn, *, tolerances: bool = False) -> BevelDepthRequest:
    """Draw an edge to prepare, whose throat the parts can hold."""
    kind = draw(st.sampled_from(FLAT_SEAMS))
    thickness = (draw(hundredths(6, 40)), draw(hundredths(6, 40)))
    finish = draw(finishes(kind, tolerances=tolerances))
    off = hundredths(0, 0.5) if tolerances else st.just(0.0)
    thinner_by = draw(off)
    spare = finish.below + finish.tolerance + thinner_by
    vouched = draw(st.sampled_from(["assumed", "proven"]))
    depth = draw(hundredths(0, 2))
    return BevelDepthRequest(
        seam=Seam(kind, thickness, thickness_tolerance=thinner_by),
        required_throat=draw(hundredths(0.5, min(thickness) - spare)),
        finish=finish,
        groove=draw(st.sampled_from(["single-bevel", "single-v", "single-j", "single-u"])),
        bevelled=None,
        penetration=Penetration(depth, vouched, min(draw(off), depth)),
        minimum_land=draw(hundredths(0, 3)),
        depth_step=draw(st.sampled_from([0.1, 0.25, 0.5, 0.79375, 1.0])),
        depth_tolerance=draw(off),
        rule_set=draw(st.sampled_from([None, *RULE_SETS])),
        process=draw(st.sampled_from(["SMAW", "GMAW"])),
        position=draw(st.sampled_from(["1G", "3G"])),
    )


def mm(quantity: dict[str, Any]) -> float:
    """Give the value of an answered length that is in millimetres."""
    assert quantity["unit"] == "mm"
    return float(quantity["value"])
