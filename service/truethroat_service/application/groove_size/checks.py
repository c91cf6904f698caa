"""Faults of a request for a groove: what does not fit together, and what is beyond the scope of the rules."""

from ...engine.formula import Source, cite, off_the_sheet
from ...engine.rounding import SAME, at_least, at_most
from ...engine.rule_set import GrooveLoad, RuleSet, Unlisted
from ...standards.aisc_360_22 import j2_6_filler
from ...standards.aws_d1_1_2020 import s5_6_matching
from ...standards.en_1993_1_8_2005 import s4_7_butt_welds
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..joints import filler_matching, grooves
from ..joints.loads import ForceComponents
from ..joints.metals import AISC, Metals
from ..joints.seam_checks import check_tolerance
from .holes import check_holes
from .request import FlareWeld, FullWeld, GrooveForce, GrooveSizeRequest, Holes, PartialWeld, TeeButt, fits_joint, sides

Cut = PartialWeld | FullWeld


def check_request(request: GrooveSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Find what does not fit together and what is beyond the rules' scope."""
    weld = request.weld
    _check_joint(request, rules, faults)
    _check_load(request, faults)
    if isinstance(weld, Holes):
        with off_the_sheet():
            check_holes(weld, request, rules, faults)
    if isinstance(weld, PartialWeld | FullWeld):
        _check_cut(weld, request, faults)
    if isinstance(weld, PartialWeld):
        _check_partial(weld, request, rules, faults)
    if isinstance(weld, FlareWeld) and not at_most(weld.below_flush, weld.radius):
        faults.out_of_range(
            "#/weld/below_flush",
            f"must be at most the radius of {faults.units.text(weld.radius)}, where the surfaces touch",
        )
    if isinstance(weld, TeeButt) and not at_most(weld.unwelded, request.through):
        faults.out_of_range(
            "#/weld/unwelded", f"must be at most the thickness of part 2, {faults.units.text(request.through)}"
        )
    unused: dict[str, bool] = {
        "process": isinstance(weld, TeeButt | Holes),
        "position": isinstance(weld, TeeButt | Holes | FlareWeld),
    }
    for name, is_unused in unused.items():
        if is_unused and getattr(request, name) is not None:
            faults.inconsistent(f"#/{name}", f"does not apply to a {weld.kind} weld; leave it out")


def _check_joint(request: GrooveSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Refuse a weld that the joint cannot have, or the rules do not cover."""
    kind, weld = request.joint.kind, request.weld
    if isinstance(weld, Holes) != (kind == "lap"):
        right = '"lap"' if isinstance(weld, Holes) else '"butt", "tee" or "corner"'
        faults.inconsistent("#/joint/kind", f'must be {right} with a {weld.kind} weld; it is "{kind}"')
    if isinstance(weld, TeeButt):
        if kind != "tee":
            faults.inconsistent("#/joint/kind", f'must be "tee" with a T-butt; it is "{kind}"')
        if rules.grooves.tee_butt is None:
            faults.out_of_scope(
                "#/weld/kind", f"a T-butt is judged by {s4_7_butt_welds.TEE}; {rules.id} has no rule for it"
            )


def _check_load(request: GrooveSizeRequest, faults: Faults) -> None:
    """Refuse a load that the basis or the weld does not go with."""
    load, weld = request.load, request.weld
    if request.basis == "full-strength" and isinstance(weld, Holes):
        faults.inconsistent("#/basis", f'must be "load" with a {weld.kind} weld')
    if request.basis == "load" and load is None:
        faults.inconsistent("#/load", 'is required with basis "load"')
    if request.basis != "load" and load is not None:
        faults.inconsistent("#/load", f'applies to basis "load" only, not to "{request.basis}"; leave it out')
    if isinstance(load, ForceComponents):
        if isinstance(weld, Holes):
            faults.inconsistent(
                "#/load", f"must be a force with {weld.kind} welds, which share it; send load.force alone"
            )
        if not (load.normal or load.transverse or load.longitudinal):
            faults.inconsistent("#/load", "must have a component that is not zero")
    elif isinstance(load, GrooveForce):
        if load.force == 0.0:
            faults.inconsistent("#/load/force", "must not be zero")
        for name in ("length", "angle"):
            given = getattr(load, name) is not None
            if isinstance(weld, Holes) and given:
                faults.inconsistent(f"#/load/{name}", f"does not apply to a {weld.kind} weld; leave it out")
            elif not isinstance(weld, Holes) and not given:
                faults.inconsistent(f"#/load/{name}", f"is required with a {weld.kind} weld")


def _check_cut(weld: Cut, request: GrooveSizeRequest, faults: Faults) -> None:
    """Refuse a groove that the joint or its access does not allow, and an angle that belongs to none."""
    form, one_side = weld.groove, weld.access == "one-side"
    if weld.groove_angle is not None and form in (None, "square"):
        needed = (
            "does not apply to a square groove; leave it out" if form else "needs a groove; send weld.groove with it"
        )
        faults.inconsistent("#/weld/groove_angle", needed)
    if form is not None and not fits_joint(form, request.joint.kind):
        faults.inconsistent("#/weld/groove", f"a {form} cannot be cut in a {request.joint.kind} joint")
    if form is not None and sides(form) == 2 and one_side:
        faults.inconsistent("#/weld/access", f'must be "both-sides" with a {form}')
    if isinstance(weld, PartialWeld) and form == "square" and weld.depth_tolerance > 0.0:
        faults.inconsistent("#/weld/depth_tolerance", "does not apply to a square edge, which is not cut; leave it out")
    if isinstance(weld, FullWeld):
        if weld.root in ("back-run", "back-gouge") and one_side:
            faults.inconsistent(
                "#/weld/access", f'must be "both-sides" with a {weld.root}, which is made from the second side'
            )
        if weld.land is not None and form == "square":
            faults.inconsistent("#/weld/land", "does not apply to a square groove; leave it out")


def _check_partial(weld: PartialWeld, request: GrooveSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Refuse what belongs to another joint, load or rule set, and what the rules' tables do not list."""
    if weld.reinforcing_fillet > 0.0:
        pointer = "#/weld/reinforcing_fillet"
        if request.joint.kind != "tee":
            kind = request.joint.kind
            faults.inconsistent(pointer, f"applies to a tee only, not to a {kind}; leave it out")
        if weld.groove == "square":
            faults.inconsistent(
                pointer, "does not apply to a square edge: a fillet there is a fillet weld; ask /v1/fillet-size"
            )
    fused = weld.penetration
    if fused is not None:
        check_tolerance("#/weld/penetration/tolerance", fused.tolerance, fused.depth, "depth", faults)
        if not at_most(fused.depth, request.through):
            faults.out_of_range(
                "#/weld/penetration/depth",
                f"must be at most the {faults.units.text(request.through)} that the groove goes through; it is"
                f" {faults.units.text(fused.depth)}",
            )
    if weld.bears:
        if rules.grooves.bearing is None:
            faults.inconsistent("#/weld/bears", f"applies to AISC 360-22 only, not to {rules.id}; leave it out")
        elif not _presses(request.load):
            faults.inconsistent("#/weld/bears", "applies only where the load presses the parts together; leave it out")
    if weld.proven <= 0.0 and weld.groove != "square":
        try:
            # A J has a row for every process and position of the table, so what is missing here is missing for all.
            with off_the_sheet():
                rules.groove.deduction(grooves.coded("single-j", 0.0, request.process, request.position))
        except Unlisted as unlisted:
            for name, text in unlisted.faults:
                add = faults.inconsistent if getattr(request, name) is None else faults.out_of_scope
                add(f"#/{name}", text)


def _presses(load: GrooveForce | ForceComponents | None) -> bool:
    """Whether a load presses the parts together."""
    if isinstance(load, GrooveForce):
        return load.force < 0.0 and (load.angle or 0.0) > 0.0
    return load is not None and load.normal < 0.0


def check_filler(
    request: GrooveSizeRequest, rules: RuleSet, load: GrooveLoad, metal: Metals, faults: Faults, remarks: Remarks
) -> None:
    """Refuse a filler metal that the joint may not have; say what is taken for granted about it."""
    if isinstance(request.weld, Holes):
        if request.weld.leg is not None:
            filler_matching.remark_on_fillets(rules, request.parts, request.filler, request.process, remarks)
        return
    if rules.metals.matched_by_group:
        _check_filler_by_group(request, load, metal, faults, remarks)
    elif isinstance(request.weld, FullWeld | TeeButt):
        # A T-butt that counts as full strength counts as a full penetration (4.7.3(1)).
        source = rules.grooves.full
        weaker = min(float(part.tensile_strength or 0.0) for part in metal.parts)
        if metal.weld.filler is None:
            remarks.caution(
                "matching-filler-assumed",
                "The filler metal is taken to be at least as strong as the weaker part, which a full penetration"
                " requires.",
                source,
            )
        elif not at_least(metal.weld.filler, weaker):
            least = faults.units.stress_text(weaker)
            faults.out_of_scope(
                "#/filler",
                f"must have at least the {least} of the weaker part, so that the full penetration is as strong"
                f" ({source})",
            )


def _check_filler_by_group(
    request: GrooveSizeRequest, load: GrooveLoad, metal: Metals, faults: Faults, remarks: Remarks
) -> None:
    """Table J2.5: matching, one level lower for a full penetration in compression, no more than one level higher."""
    assert request.filler is not None  # noqa: S101 - refused before
    pressed_only = load.normal < 0.0 and not (load.transverse or load.longitudinal)
    lower = 1 if pressed_only else 0
    known = filler_matching.matching(request.parts, request.filler, request.process)
    if known is None:
        _check_by_strength(request, lower, metal, faults, remarks)
        return
    name = request.filler.id or "the filler metal"
    wanted, groups = known.classes_wanted, known.group_names
    source = Source(AISC, "J2.6, Table J2.5")
    cite(s5_6_matching.GROUPS)
    if known.standing == "over" and known.classes > filler_matching.PERMITTED_OVER:
        faults.out_of_scope(
            "#/filler", f"{name} must be at most one class over {wanted}, which matches {groups} ({source})"
        )
    if isinstance(request.weld, FullWeld) and known.standing == "under" and known.classes > lower:
        faults.out_of_scope(
            "#/filler", f"{name} must be at least {wanted}, which matches {groups}, for a full penetration ({source})"
        )
    filler_matching.remark_on_hydrogen(name, known, remarks)


def _check_by_strength(request: GrooveSizeRequest, lower: int, metal: Metals, faults: Faults, remarks: Remarks) -> None:
    """Refuse by levels of strength where a part is in no group of base metals; ``lower`` levels are allowed under."""
    rule, level = j2_6_filler.matching_level, j2_6_filler.LEVEL
    levels = {"l": level, "l_60": j2_6_filler.LEAST_LEVEL, "same": SAME}
    tensile = sorted(float(part.tensile_strength or 0.0) for part in metal.parts)
    weaker, stronger = (float(rule(F_u=strength, **levels)) for strength in tensile)
    filler, text = float(metal.weld.filler or 0.0), faults.units.stress_text
    if not at_most(filler, stronger + level):
        faults.out_of_scope(
            "#/filler",
            f"must be at most one level of {text(level)} over the matching {text(stronger)}; it is {text(filler)}"
            f" ({j2_6_filler.MATCHING})",
        )
    least = weaker - lower * level
    if isinstance(request.weld, FullWeld) and not at_least(filler, least):
        faults.out_of_scope(
            "#/filler",
            f"must be at least {text(least)} for a full penetration under this load; it is {text(filler)}"
            f" ({j2_6_filler.MATCHING})",
        )
    remarks.caution(
        "matching-by-strength",
        "A part is in no group of base metal, so the filler metal is matched by strength. The procedure must show that"
        " it"
        " matches." + (" Between unlike steels the deposit must be low-hydrogen." if weaker < stronger else ""),
        j2_6_filler.MATCHING,
    )
