"""Use case: leg and throat of a fillet to specify, from a load, the strength of the thinner part, or its thickness."""

from dataclasses import dataclass, field, replace
from math import pi

from ...engine import loads
from ...engine.formula import about, cite, working
from ...engine.rounding import SAME, at_most
from ...engine.rule_set import RuleSet, Unlisted, WeldLoad
from ...reference.loader import position as position_of
from ...reference.loader import process as process_of
from ...standards.aws_d1_1_2020 import s4_4_skewed_fillets, s5_pass_limits
from ..core.answers import Answered, answered
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints import filler_matching
from ..joints.fillets import FilletSize, fillet_size_of
from ..joints.given import usual_step
from ..joints.loads import ForceComponents
from ..joints.metals import Metals, metals
from ..joints.rule_sets import chosen
from . import special_loads
from .answer import (
    ConcentricGroup,
    CountedLength,
    FilletSizeAnswer,
    FilletStrength,
    FlangeWidth,
    IntermittentFillet,
    PackedFillet,
    SpecifiedFilletSize,
    TensionMemberStrength,
    WeldBalance,
)
from .checks import check
from .intermittent import Run, intermittent_fillet
from .intermittent import run as run_of
from .remarks import Beyond, governs, largest_loss, remark, what_carries
from .request import BalancedForce, ConcentricForce, FilletSizeRequest, SharedForce
from .sizing import Fillets, Sizes, component_load, shared_load, side_angles, size


@dataclass(slots=True)
class _Details:
    """Fields of an answer that only some requests ask for, and what they find in the way."""

    packing: PackedFillet | None = None
    intermittent: IntermittentFillet | None = None
    concentric: ConcentricGroup | None = None
    balance: WeldBalance | None = None
    tension_member: TensionMemberStrength | None = None
    unstiffened_flange: FlangeWidth | None = None
    beyond: list[Beyond] = field(default_factory=list)


def fillet_size(request: FilletSizeRequest) -> Answered[FilletSizeAnswer]:
    """Leg and throat of a fillet to specify.

    Lengths are in mm, forces in N, angles in rad. Raises ``Refused`` with every fault found.
    """
    units = Units(request.common.units)
    remarks, faults = Remarks(units), Faults(units)
    with working() as sheet:
        rules, beta_w = chosen(request.rule_set, request.parameters, faults)
        check(request, rules, faults)
        losses = _root_losses(request, rules, faults)
        found = metals(rules, request.parts, request.filler, beta_w, request.hss_end, faults, remarks, request.process)
        faults.refuse()
        filler_matching.check_fillets(rules, request.parts, found, request.filler, request.process, faults, remarks)
        faults.refuse()
        request = _filled(request, rules)
        run = _run(request, rules, found, faults)
        fillets = _fillets(request, rules, found, losses, run)
        sizes = size(fillets)
        passes = _passes(request, float(sizes.leg), remarks)
        details = _details(request, fillets, sizes, found, run, remarks)
        remark(request, fillets, sizes, details.beyond, units, remarks)
    reached = bool(sizes.reached) and not details.beyond
    if rules.weld is None:
        cite(sizes.minimum_source)
    return answered(
        "fillet_size",
        request,
        sheet,
        remarks,
        Verdict.ENOUGH if reached else Verdict.CANNOT_BE_REACHED,
        _result(request, fillets, sizes, passes, details, run, units),
        rule_set=rules.id,
        parameters=rules.parameters,
    )


def _filled(request: FilletSizeRequest, rules: RuleSet) -> FilletSizeRequest:
    """Request with the defaults that hang on its rule set and units."""
    size_by = request.size_by or rules.size_by
    step = request.size_step or usual_step(request.common.units, size_by)
    return replace(request, size_by=size_by, size_step=step)


def _root_losses(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> tuple[float | None, ...]:
    """Throat each side loses at its root; a process or position the rule needs or does not list is a fault."""
    joint, low = request.joint, rules.scope.angles[0] * (1 - SAME)
    angles = side_angles(joint.kind, joint.sides, joint.angle)
    rule = rules.root_loss
    if rule is None or any(float(angle) < low for angle in angles):
        return (None,) * joint.sides
    process = request.process and process_of(request.process).id
    orientation = request.position and position_of(request.position).orientation
    losses: list[float | None] = []
    try:
        losses.extend(rule(float(angle), process, orientation) for angle in angles)
    except Unlisted as unlisted:
        for name, text in unlisted.faults:
            add = faults.inconsistent if getattr(request, name) is None else faults.out_of_scope
            add(f"#/{name}", f"{text} ({s4_4_skewed_fillets.Z_LOSS})")
        return (None,) * joint.sides
    if any(loss is not None for loss in losses):
        cite(s4_4_skewed_fillets.Z_LOSS)
    return tuple(losses)


def _run(request: FilletSizeRequest, rules: RuleSet, found: Metals, faults: Faults) -> Run | None:
    """Intermittent fillet with its gap; None for a continuous one."""
    if request.intermittent is None or rules.options.intermittent is None:
        return None
    return run_of(request, rules.options.intermittent, found, faults)


def _fillets(
    request: FilletSizeRequest,
    rules: RuleSet,
    found: Metals,
    root_losses: tuple[float | None, ...],
    run: Run | None,
) -> Fillets:
    """Problem for the sizing arithmetic."""
    joint = request.joint
    proven = request.penetration if request.penetration and request.penetration.vouched == "proven" else None
    if rules.options.needs_root_pass and request.root_pass is None:
        proven = None
    assert request.size_step is not None  # noqa: S101 - filled in before
    side_loads, part_loads = _loads(request, rules, found, run)
    thicker = max(part.thickness for part in request.parts)
    return Fillets(
        rules=rules,
        kind=joint.kind,
        sides=joint.sides,
        basis=request.basis,
        psi=joint.angle,
        parts=found.parts,
        metal=found.weld,
        side_loads=side_loads,
        length=request.length if run is None else run.asked.segment,
        end_loaded=request.reduced,
        longest=request.longest,
        edges=tuple(found.parts[number - 1].thickness for number in request.edges),
        gap=joint.root_gap,
        penetration=proven.depth - proven.tolerance if proven and rules.weld else 0.0,
        by_throat=request.size_by == "throat",
        step=request.size_step,
        leg_tolerance=request.leg_tolerance,
        root_losses=root_losses,
        stiffener_length=request.length if request.transverse_stiffener else None,
        full_size_ends=request.ends == "full",
        root_bending=request.root_bending,
        packing=None if request.packing is None else request.packing.thickness,
        part_loads=part_loads,
        part_1_sheared=joint.kind == "tee" and not joint.stiffened_behind and request.unstiffened_flange is None,
        least_throat=None
        if request.minimum_throat is None
        else rules.options.least_throats[request.minimum_throat](thicker),
    )


def _loads(
    request: FilletSizeRequest, rules: RuleSet, found: Metals, run: Run | None
) -> tuple[tuple[WeldLoad, ...], tuple[WeldLoad, ...]]:
    """Load on each side, and those on the parts where they are others, from the request or the strength of a part."""
    joint, load = request.joint, request.load
    psi = joint.angle
    if isinstance(load, ConcentricForce):
        return special_loads.concentric_loads(load, rules, found, psi)
    if isinstance(load, BalancedForce):
        per_length = loads.force_per_length(P=load.force, m=1.0, L=load.length)
        return shared_load(joint.kind, joint.sides, psi, per_length, 0.0), ()
    if isinstance(load, SharedForce):
        per_length = loads.force_per_length(P=load.force, m=float(joint.sides), L=load.length)
        return shared_load(joint.kind, joint.sides, psi, _on_segments(float(per_length), run), load.angle), ()
    if isinstance(load, ForceComponents):
        components = (load.normal, load.transverse, load.longitudinal)
        return component_load(joint.kind, joint.sides, psi, *(_on_segments(f, run) for f in components)), ()
    return () if rules.parts is None else _full_strength(request, rules, found), ()


def _on_segments(per_length: float, run: Run | None) -> float:
    """Force per length of a segment, for one per length of the line."""
    if run is None or not per_length:
        return per_length
    return float(loads.on_segments(f=per_length, l_seg=run.asked.segment, e=run.gap))


def _full_strength(request: FilletSizeRequest, rules: RuleSet, found: Metals) -> tuple[WeldLoad, ...]:
    """Load on each side that is the strength of the weaker part, or that of the plate on an unstiffened flange."""
    joint = request.joint
    if request.unstiffened_flange is not None:
        with about("part 2"):
            strength = special_loads.plate_strength(rules, found.parts[1])
    else:
        strengths = []
        for number, part in enumerate(found.parts, start=1):
            with about(f"part {number}"):
                strengths.append(special_loads.plate_strength(rules, part))
        strength = min(strengths)
    # With one steel the weaker part is the thinner one.
    with about("plate" if request.unstiffened_flange is not None else "weaker part"):
        per_length = loads.force_per_length(P=strength, m=float(joint.sides), L=1.0)
    return shared_load(joint.kind, joint.sides, joint.angle, per_length, pi / 2)


def _details(
    request: FilletSizeRequest, fillets: Fillets, sizes: Sizes, found: Metals, run: Run | None, remarks: Remarks
) -> _Details:
    """Fields that only some requests ask for."""
    details, rules, units = _Details(), fillets.rules, remarks.units
    if request.packing is not None:
        details.packing = special_loads.packing(request.packing, sizes)
    if run is not None:
        details.intermittent, beyond = intermittent_fillet(request, run, fillets, sizes, units)
        details.beyond.extend(beyond)
    if isinstance(request.load, ConcentricForce):
        details.concentric = special_loads.concentric(request.load, rules, found, sizes)
    if request.tension_member is not None:
        details.tension_member, beyond = special_loads.tension_member(request, rules, found, units)
        details.beyond.extend(beyond)
    if request.unstiffened_flange is not None:
        details.unstiffened_flange, beyond = special_loads.unstiffened_flange(request, rules, found, units)
        details.beyond.extend(beyond)
    if isinstance(request.load, BalancedForce):
        reached = bool(sizes.reached) and not details.beyond
        details.balance, why = special_loads.balance(request.load, fillets, sizes, reached, units)
        if why is not None:
            remarks.because(why)
    return details


def _passes(request: FilletSizeRequest, leg: float, remarks: Remarks) -> int | None:
    """Least number of passes, where process and position tell it."""
    if request.process is None or request.position is None:
        return None
    process, position = process_of(request.process), position_of(request.position)
    limit = s5_pass_limits.single_pass_leg(process.id, position.orientation)
    if limit is None:
        remarks.because(
            f"Passes are not counted: AWS D1.1:2020 Table 5.1 has no line for {process.id} {position.orientation}."
        )
        return None
    cite(s5_pass_limits.TABLE_5_1)
    if at_most(leg, limit):
        return 1
    return int(float(s5_pass_limits.least_passes(z=leg, z_pass=limit, same=SAME)))


def _result(
    request: FilletSizeRequest,
    fillets: Fillets,
    sizes: Sizes,
    passes: int | None,
    details: _Details,
    run: Run | None,
    units: Units,
) -> FilletSizeAnswer:
    """Fields of the answer that are the resource's own."""
    matched = "the thinner part" if request.unstiffened_flange is None else "the plate"
    basis_source = {
        "load": f"{fillets.rules.id}, {what_carries(fillets.rules)}",
        "full-strength": f"{fillets.rules.id}, strength of {matched}",
        "thin-part": "by the thinner part",
    }[fillets.basis]
    reached = bool(sizes.reached) and not details.beyond
    return FilletSizeAnswer(
        required=fillet_size_of(float(sizes.required_leg), sizes.required_psi, basis_source),
        minimum=fillet_size_of(float(sizes.minimum_leg), sizes.minimum_psi, str(sizes.minimum_source)),
        maximum=None
        if sizes.maximum_leg is None
        else _size(sizes, float(sizes.maximum_leg), str(sizes.maximum_source)),
        specify=_specified(sizes, passes, units.text(float(fillets.step))) if reached else None,
        governs=governs(fillets, sizes, details.beyond),
        utilisation=_utilisation(sizes) if reached else None,
        strength=_strength(sizes),
        length=_length(request, fillets, sizes, run),
        z_loss=largest_loss(fillets),
        packing=details.packing,
        intermittent=details.intermittent,
        concentric=details.concentric,
        balance=details.balance,
        tension_member=details.tension_member,
        unstiffened_flange=details.unstiffened_flange,
    )


def _strength(sizes: Sizes) -> FilletStrength | None:
    """Strength of one weld and of the parts beside it; None where none is claimed."""
    if sizes.weld_strength is None or sizes.base_strength is None:
        return None
    first, second = sizes.base_strength
    return FilletStrength(float(sizes.weld_strength), (float(first), float(second)))


def _length(request: FilletSizeRequest, fillets: Fillets, sizes: Sizes, run: Run | None) -> CountedLength | None:
    """Length of one weld as given and as it counts; None where it is not known or claims no strength."""
    if fillets.rules.weld is None or request.length is None or sizes.length_factor is None:
        return None
    factor = float(sizes.length_factor) * (1.0 if run is None else run.share)
    return CountedLength(request.length, request.length * factor, factor)


def _utilisation(sizes: Sizes) -> float | None:
    """Greatest use made of weld or parts; None where no strength is claimed, or where no size will do."""
    if sizes.weld_utilisation is None or sizes.base_utilisation is None:
        return None
    return float(max(sizes.weld_utilisation, *sizes.base_utilisation))


def _size(sizes: Sizes, leg: float, source: str) -> FilletSize:
    """Size by its leg."""
    return fillet_size_of(leg, sizes.psi, source)


def _specified(sizes: Sizes, passes: int | None, step: str) -> SpecifiedFilletSize:
    """Size to specify."""
    size_ = _size(sizes, float(sizes.leg), f"rounded up to the next {step}")
    return SpecifiedFilletSize(size_.leg, size_.throat, size_.source, passes)
