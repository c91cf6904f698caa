"""Random groove welds for the use case, in engine units and within every rule set's scope."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from hypothesis import strategies as st
from tests.application.joints import AISC, EN, HIGH_STRENGTH, STAINLESS, hundredths

from truethroat_service.application.groove_size.request import (
    FlareWeld,
    FullWeld,
    GrooveJoint,
    GrooveSizeRequest,
    PartialWeld,
)
from truethroat_service.application.joints.loads import ForceComponents
from truethroat_service.application.joints.metals import Filler, Part

BUTT_ONLY = ("double-v", "double-u")
RATED = (*AISC, *EN, STAINLESS[0], HIGH_STRENGTH[0])
"""Rule sets that rate grooves."""


@st.composite
def _base(draw: st.DrawFn, rules: str, weld: Any, joint: str) -> GrooveSizeRequest:
    """Draw parts of one steel, the filler metal that matches it, and force components that are not all nothing."""
    beta_w = draw(st.sampled_from([0.8, 0.9])) if rules in EN else None
    f_y, f_u = (690.0, 770.0) if rules in HIGH_STRENGTH else (250.0, 400.0)
    parts = tuple(Part(draw(hundredths(6, 40)), None, f_y, f_u, beta_w) for _ in range(2))
    fillers = {AISC[0]: 482.0, AISC[1]: 482.0, HIGH_STRENGTH[0]: 770.0}
    per_length = st.integers(-900, 900).map(float)
    return GrooveSizeRequest(
        rule_set=rules,
        joint=GrooveJoint(joint),  # type: ignore[arg-type]
        parts=(parts[0], parts[1]),
        weld=weld,
        basis="load",
        load=ForceComponents(draw(per_length), draw(per_length), float(draw(st.integers(1, 900)))),
        filler=Filler(tensile_strength=fillers[rules]) if rules in fillers else None,
        process=draw(st.sampled_from(["SMAW", "GMAW", "FCAW-G"])),
        position=draw(st.sampled_from(["1G", "2G", "3G"])),
    )


@st.composite
def partial(draw: st.DrawFn, *forms: str, rules: str | None = None, fillet: bool = False) -> GrooveSizeRequest:
    """Draw a partial-penetration groove of one of the forms, in a joint that can have it."""
    form = draw(st.sampled_from(forms))
    if fillet:
        joint = "tee"
    elif form in BUTT_ONLY:
        joint = "butt"
    else:
        joint = draw(st.sampled_from(["butt", "corner"] if form.endswith(("-v", "-u")) else ["butt", "tee", "corner"]))
    weld = PartialWeld(
        "partial",
        groove=form,  # type: ignore[arg-type]
        reinforcing_fillet=draw(hundredths(2, 20)) if fillet else 0.0,
        depth_step=draw(st.sampled_from([0.1, 0.5, 0.79375, 1.0])),
    )
    return draw(_base(rules or draw(st.sampled_from(RATED)), weld, joint))


@st.composite
def whole(draw: st.DrawFn) -> GrooveSizeRequest:
    """Draw a full-penetration groove of any form and root."""
    joint = draw(st.sampled_from(["butt", "tee", "corner"]))
    return draw(_base(draw(st.sampled_from(RATED)), FullWeld("full"), joint))


@st.composite
def flares(draw: st.DrawFn, *kinds: str) -> GrooveSizeRequest:
    """Draw a flare groove."""
    radius = draw(hundredths(10, 60))
    weld = FlareWeld(draw(st.sampled_from(kinds)), radius, draw(hundredths(0, radius / 2)))  # type: ignore[arg-type]
    return replace(draw(_base(draw(st.sampled_from(AISC)), weld, "butt")), position=None)


def with_weld(request: GrooveSizeRequest, **changes: Any) -> GrooveSizeRequest:
    """Give the groove of a request other fields."""
    return replace(request, weld=replace(request.weld, **changes))
