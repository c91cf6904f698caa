"""What does not fit together in a request for a fillet's size, and what is beyond the rules' scope."""

from math import pi

from ...engine.formula import Source, off_the_sheet
from ...engine.rounding import SAME, at_least, at_most
from ...engine.rule_set import Intermittent, IntermittentRules, RuleSet
from ...reference.loader import process as process_of
from ..core.faults import Faults
from ..joints.loads import ForceComponents
from ..joints.metals import EN_1993_1_8, is_hollow
from ..joints.seam_checks import check_tolerance
from ..joints.seams import Penetration
from .request import BalancedForce, ConcentricForce, FilletSizeRequest, Joint, SharedForce
from .sizing import side_angles

OPENS = Source(EN_1993_1_8, "4.12", "from memory")
NO_STRENGTH = "which claims no strength; leave it out"


def check(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Add every fault that the request has with these rules."""
    _check_joint(request, rules, faults)
    _check_basis(request, rules, faults)
    if isinstance(request.load, ConcentricForce):
        _check_concentric(request, rules, faults)
    if isinstance(request.load, BalancedForce):
        _check_balanced(request, request.load, faults)
    if request.penetration is not None:
        _check_penetration(request.penetration, request, rules, faults)
    if request.end_loaded:
        _check_end_loaded(request, rules, faults)
    _check_what_is_told(request, rules, faults)
    if request.transverse_stiffener:
        _check_transverse_stiffener(request, rules, faults)
    if request.ends == "craters":
        _check_ends(request, rules, faults)
    if request.root_bending:
        _check_root_bending(request, rules, faults)
    if request.intermittent is not None:
        _check_intermittent(request, request.intermittent, rules, faults)
    if request.tension_member is not None:
        _check_tension_member(request, rules, faults)
    if request.unstiffened_flange is not None:
        _check_flange(request, rules, faults)
    if request.minimum_throat is not None and request.minimum_throat not in rules.options.least_throats:
        faults.inconsistent("#/minimum_throat", f"applies to EN 1993-1-8 only, not to {rules.id}; leave it out")


def _check_penetration(penetration: Penetration, request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Find a depth that its tolerance uses up, or one that the rules do not count."""
    plain = rules.scope.plain_section
    if plain and penetration.vouched == "proven":
        faults.out_of_scope("#/penetration", f"{rules.id} covers {plain.text} ({plain.source})")
    check_tolerance("#/penetration/tolerance", penetration.tolerance, penetration.depth, "depth", faults)
    thinner = min(part.thickness for part in request.parts)
    if not at_most(penetration.depth, thinner):
        faults.out_of_range(
            "#/penetration/depth",
            f"must be at most the {faults.units.text(thinner)} of the thinner part; it is"
            f" {faults.units.text(penetration.depth)}",
        )


def _check_what_is_told(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Refuse what only the caller's word makes sound, and words that have no place in the rules."""
    if request.opens and not request.held_from_turning and not request.root_bending:
        faults.out_of_scope(
            "#/held_from_turning",
            "a pull opens one weld from its root: weld both sides, or hold the joint from turning about the weld and"
            " send held_from_turning true" + (f" ({OPENS})" if EN_1993_1_8 in rules.editions else ""),
        )
    _check_access(request, faults)
    if request.root_pass is not None:
        _check_root_pass(request, rules, faults)
    if request.hss_end is not None and rules.metals.hollow_ends is None:
        faults.inconsistent("#/hss_end", f"applies to AISC 360-22 only, not to {rules.id}; leave it out")


def _check_access(request: FilletSizeRequest, faults: Faults) -> None:
    """Refuse two welds where only one can be laid, or where nobody says that the inside of a section can be reached."""
    joint = request.joint
    if joint.sides == 1:
        return
    hollow = [part.material for part in request.parts if part.material and is_hollow(part.material)]
    if request.access == "one-side":
        faults.inconsistent("#/joint/sides", "2 sides are welded, and access says that only one can be reached")
    elif joint.kind == "tee" and hollow and request.access is None:
        faults.inconsistent(
            "#/access",
            f"{', '.join(hollow)} is a hollow section, which can often be welded from outside alone: send access"
            ' "both-sides", or joint.sides 1',
        )


def _check_root_pass(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Refuse a root pass that the rules do not ask for, or that the process does not make."""
    if not rules.options.needs_root_pass:
        faults.inconsistent("#/root_pass", f"root_pass belongs to AISC 360-22, not to {rules.id}; leave it out")
    elif request.process is not None and process_of(request.process).id == "SMAW":
        faults.inconsistent(
            "#/root_pass", f"{request.process} is welding by hand, not {request.root_pass}; leave it out"
        )


def _check_joint(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Find faults of the joint itself."""
    joint = request.joint
    if joint.stiffened_behind and joint.kind != "tee":
        faults.inconsistent(
            "#/joint/stiffened_behind", f"stiffened_behind belongs to a tee, not to a {joint.kind}; leave it out"
        )
    if joint.kind == "inside-corner" and joint.sides == 2:
        faults.inconsistent("#/joint/sides", "must be 1, because an inside corner is welded from one side")
    if request.edge_of is not None and joint.kind != "lap":
        faults.inconsistent("#/edge_of", f"applies to a lap only, not to {joint.kind}; leave it out")
    if request.packing is not None:
        _check_packing(request, rules, faults)
    _check_angles(joint, rules, faults)
    if not at_most(joint.root_gap, rules.fit_up.largest):
        faults.out_of_scope(
            "#/joint/root_gap",
            f"must be at most {faults.units.text(rules.fit_up.largest)}, the largest gap that a larger leg makes up"
            f" for; it is {faults.units.text(joint.root_gap)}. Bring the parts together ({rules.fit_up.source})",
        )


def _check_angles(joint: Joint, rules: RuleSet, faults: Faults) -> None:
    """Refuse an angle the rules do not cover, on either side."""
    low, high = rules.scope.angles
    for angle in side_angles(joint.kind, joint.sides, joint.angle):
        if not (low * (1 - SAME) <= float(angle) <= high * (1 + SAME)):
            limit = rules.scope.angle
            faults.out_of_scope(
                "#/joint/angle",
                f"the angle between the plates is {float(angle) * 180 / pi:.4g} deg; {rules.id} covers {limit.text}"
                f" ({limit.source})",
            )


def _check_basis(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Find a basis that does not go with the rules, or a load that does not go with the basis."""
    thin_part = rules.weld is None
    if thin_part != (request.basis == "thin-part"):
        right = '"thin-part"' if thin_part else '"load" or "full-strength"'
        faults.inconsistent("#/basis", f'must be {right} with {rules.id}; it is "{request.basis}"')
    if request.basis == "load" and request.load is None:
        faults.inconsistent(
            "#/load", 'is required with basis "load": send force, length and angle, or components per length'
        )
    if request.basis != "load" and request.load is not None:
        faults.inconsistent("#/load", f'applies to basis "load" only, not to "{request.basis}"; leave it out')
    if isinstance(request.load, ForceComponents) and not (
        request.load.normal or request.load.transverse or request.load.longitudinal
    ):
        faults.inconsistent("#/load", "must have a component that is not zero")


def _check_concentric(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Find faults of a group along and across its force."""
    if rules.options.concentric is None:
        faults.out_of_scope(
            "#/load",
            f"{rules.id} has no rule for welds along and across one force together; send the load of each weld, or ask"
            " /v1/weld-group",
        )
    if request.joint.kind != "lap":
        faults.inconsistent(
            "#/joint/kind", f'must be "lap" with welds along and across one force; it is "{request.joint.kind}"'
        )
    if request.joint.sides != 1:
        faults.inconsistent(
            "#/joint/sides", "does not apply, because the lengths are those of all welds together; leave it out"
        )


def _check_balanced(request: FilletSizeRequest, load: BalancedForce, faults: Faults) -> None:
    """Find faults of two side welds balanced about a centroid."""
    if (request.joint.kind, request.joint.sides) != ("lap", 2):
        faults.inconsistent("#/joint", "must be a lap welded on 2 sides with a balanced load")
    if not load.centroid < load.width:
        faults.inconsistent(
            "#/load/centroid",
            f"must be less than the {faults.units.text(load.width)} between the welds; it is"
            f" {faults.units.text(load.centroid)}",
        )


def _check_end_loaded(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Refuse a long-weld reduction that the rules do not have, or that has no length to go by."""
    limit = rules.scope.end_loaded_laps_only
    if rules.weld is None:
        faults.inconsistent("#/end_loaded", f"does not apply to {rules.id}, {NO_STRENGTH}")
    elif limit and request.joint.kind != "lap":
        faults.out_of_scope("#/end_loaded", f"applies to a lap only: {rules.id} covers {limit.text} ({limit.source})")
    else:
        _needs_one_length(request, "end_loaded", faults)


def _needs_one_length(request: FilletSizeRequest, field: str, faults: Faults) -> None:
    """Refuse what goes by the length of one continuous weld where that is not known."""
    if request.basis != "load":
        what = "the long-weld reduction " if field == "end_loaded" else ""
        faults.inconsistent(f"#/{field}", f'{what}applies to basis "load" only; leave it out')
    elif isinstance(request.load, ConcentricForce | BalancedForce) and field != "end_loaded":
        faults.inconsistent(
            f"#/{field}", "needs the length of one weld; ask for each weld alone, with its share of the load"
        )
    elif isinstance(request.load, ForceComponents) and request.load.length is None:
        what = "the long-weld reduction " if field == "end_loaded" else ""
        faults.inconsistent(f"#/{field}", f"{what}needs the length of the weld; send load.length")


def _check_transverse_stiffener(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Refuse the reduction of stiffeners' welds where there is none."""
    if rules.options.stiffener is None:
        faults.inconsistent("#/transverse_stiffener", f"applies to EN 1993-1-8 only, not to {rules.id}; leave it out")
    elif request.joint.kind == "lap":
        faults.inconsistent(
            "#/transverse_stiffener", "does not apply to a lap; leave it out, and send end_loaded for a long lap"
        )
    else:
        _needs_one_length(request, "transverse_stiffener", faults)


def _check_ends(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Refuse ends that take length off where no rule says how much."""
    if rules.options.ends is None:
        faults.inconsistent(
            "#/ends", f"does not apply to {rules.id}; send the length that is full size, and leave ends out"
        )
    elif request.reduced:
        faults.inconsistent(
            "#/ends", "must not be combined with the reduction of an end-loaded weld; send the length that is full size"
        )
    elif request.intermittent is None:
        _needs_one_length(request, "ends", faults)


def _check_root_bending(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Refuse bending about the root where the model does not hold."""
    joint, load = request.joint, request.load
    if rules.options.root_bending is None:
        faults.inconsistent(
            "#/root_bending",
            f"does not apply to {rules.id}, which has no rule for bending about the root; leave it out",
        )
        return
    if (joint.kind, joint.sides) != ("tee", 1):
        faults.inconsistent("#/root_bending", "applies to a tee welded from one side only")
    elif abs(joint.angle - pi / 2) > SAME:
        faults.out_of_scope("#/joint/angle", "must be 90 deg with root_bending")
    if isinstance(load, ForceComponents) and load.transverse:
        faults.out_of_scope(
            "#/load/transverse",
            "must be zero with root_bending, whose model covers normal and longitudinal forces only",
        )
    if request.transverse_stiffener or request.ends == "craters":
        faults.inconsistent("#/root_bending", "must not be combined with a reduced length; send the length that counts")


def _check_packing(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Refuse packing where no rule here covers it, or where something does not go with it."""
    if rules.options.packing is None:
        why = rules.options.packing_elsewhere or "it has no rule for packing"
        faults.out_of_scope("#/packing", f"does not apply to {rules.id}: {why}; join the parts without packing")
        return
    if request.joint.kind != "lap":
        faults.inconsistent("#/packing", f"applies to a lap only, not to {request.joint.kind}; leave it out")
    if request.penetration is not None and request.penetration.vouched == "proven":
        faults.inconsistent("#/penetration", "does not count where packing lies at the root; leave one of the two out")


def _check_intermittent(request: FilletSizeRequest, run: Intermittent, rules: RuleSet, faults: Faults) -> None:
    """Find faults of an intermittent fillet."""
    options, here = rules.options.intermittent, "#/intermittent"
    if rules.weld is None:
        faults.inconsistent(here, f"does not apply to {rules.id}, {NO_STRENGTH}")
        return
    if options is None:
        faults.out_of_scope(
            here, f"does not apply to {rules.id}, which has no rule for intermittent fillets; make the weld continuous"
        )
        return
    if request.basis != "load":
        faults.inconsistent(
            here, 'does not apply to basis "full-strength", which needs a continuous weld; leave it out'
        )
    if isinstance(request.load, ConcentricForce | BalancedForce):
        faults.inconsistent(here, "does not apply to a group, whose welds are continuous; leave it out")
    for field in ("end_loaded", "transverse_stiffener"):
        if getattr(request, field):
            faults.inconsistent(f"#/{field}", "applies to a continuous weld only; leave it out")
    if run.staggered and request.joint.sides != 2:
        faults.inconsistent(f"{here}/staggered", "applies to a joint welded on 2 sides only")
    _check_exposure(run, rules, faults)
    wanted = rules.options.intermittent is not None and rules.options.intermittent.needs_widths(run)
    if wanted and run.widths is None:
        faults.inconsistent(
            f"{here}/widths", f"is required here: a limit of {rules.id} depends on the widths of both parts"
        )
    if not wanted and run.widths is not None:
        faults.inconsistent(
            f"{here}/widths", "does not apply here, because no limit depends on the widths; leave it out"
        )
    length = request.length
    if length is not None and not at_most(2.0 * run.segment, length):
        faults.inconsistent(
            f"{here}/segment",
            f"must leave room for two segments in {faults.units.text(length)}; it is {faults.units.text(run.segment)}."
            " Make the weld continuous",
        )
    elif length is not None and run.gap is not None and not at_most(run.gap, length - 2.0 * run.segment):
        faults.inconsistent(
            f"{here}/gap",
            f"must be at most {faults.units.text(length - 2.0 * run.segment)}, which segments at both ends of"
            f" {faults.units.text(length)} leave; it is {faults.units.text(run.gap)}",
        )
    elif length is not None and run.widths is not None and _ends_meet(run, options, length):
        faults.inconsistent(
            here,
            f"the welds at both ends take up the whole length of {faults.units.text(length)}; make the weld continuous",
        )


def _ends_meet(run: Intermittent, options: IntermittentRules, length: float) -> bool:
    """Whether the welds that both ends must have leave no gap between them."""
    with off_the_sheet():
        end = options.end_weld(run)
    return end is not None and bool(at_least(2.0 * end[0], length))


def _check_exposure(run: Intermittent, rules: RuleSet, faults: Faults) -> None:
    """Refuse gaps where they would corrode."""
    options = rules.options.intermittent
    if options is None or run.exposure == "protected":
        return
    where = "#/intermittent/exposure"
    if run.exposure not in options.exposures:
        faults.out_of_scope(
            where,
            "intermittent fillets must not be exposed to these conditions; make the weld continuous"
            f" ({options.exposure_source})",
        )
    elif run.member == "stiffener":
        faults.inconsistent(where, "weathering-steel applies to built-up members only, not to a stiffener")


def _check_tension_member(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Find faults of a tension member held by longitudinal welds."""
    member, load, here = request.tension_member, request.load, "#/tension_member"
    assert member is not None  # noqa: S101 - asked only then
    if rules.options.tension_member is None:
        faults.inconsistent(here, f"applies to AISC 360-22 only, not to {rules.id}; leave it out")
        return
    balanced = isinstance(load, BalancedForce)
    along = (
        isinstance(load, SharedForce) and load.angle == 0.0 and (request.joint.kind, request.joint.sides) == ("lap", 2)
    )
    if not balanced and not along:
        faults.inconsistent(
            here, "applies to a lap held by two welds along the force only: send sides 2 and angle 0 deg"
        )
    elif request.intermittent is not None:
        faults.inconsistent(here, "applies to continuous welds only; leave intermittent out")
    if balanced and member.width is not None:
        faults.inconsistent(
            f"{here}/width", "does not apply beside load.width, which gives the same distance; leave it out"
        )
    if along and member.width is None:
        faults.inconsistent(f"{here}/width", "is required: shear lag depends on the width between the two welds")
    length = mean_length(request)
    if length is not None and not member.eccentricity < length:
        faults.inconsistent(f"{here}/eccentricity", "must be less than the mean length of the welds")


def mean_length(request: FilletSizeRequest) -> float | None:
    """Mean length of the welds that hold a tension member, mm."""
    load = request.load
    if isinstance(load, BalancedForce):
        return load.length / 2.0
    return load.length if isinstance(load, SharedForce) else None


def _check_flange(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Find faults of a plate on an unstiffened flange."""
    flange, here = request.unstiffened_flange, "#/unstiffened_flange"
    assert flange is not None  # noqa: S101 - asked only then
    if rules.options.flange is None:
        faults.inconsistent(here, f"applies to EN 1993-1-8 only, not to {rules.id}; leave it out")
        return
    if request.joint.kind != "tee":
        faults.inconsistent(here, f"applies to a tee only, not to {request.joint.kind}; leave it out")
    if request.basis != "full-strength":
        faults.inconsistent("#/basis", 'must be "full-strength" with an unstiffened flange (EN 1993-1-8:2005, 4.10(5))')
    beside = (flange.root_radius, flange.weld_throat)
    if flange.section == "box" and beside != (None, None):
        faults.inconsistent(here, "a box has no root radius and no weld throat beside its webs; leave both out")
    if flange.section == "i" and (beside[0] is None) == (beside[1] is None):
        faults.inconsistent(here, "needs root_radius for a rolled section, or weld_throat for a welded one")
