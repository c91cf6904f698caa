"""Use case: leg and throat of a fillet to specify, from a load, the strength of the thinner part, or its thickness."""

from dataclasses import dataclass, replace
from math import pi
from typing import Any, Literal

from ..engine import loads
from ..engine.formula import Source, about, cite, working
from ..engine.rounding import SAME, at_most
from ..engine.rule_set import RuleSet, Unlisted, WeldLoad
from ..engine.section import equal_leg_throat
from ..engine.units import INCH
from ..reference.loader import position as position_of
from ..reference.loader import process as process_of
from ..standards.aisc_360_22.j2_2_fillet_limits import TABLE_J2_4
from ..standards.aws_d1_1_2020 import s4_4_skewed_fillets, s5_pass_limits
from .answers import Common, Remarks, Units, Verdict, answer
from .faults import Faults
from .fillet_sizing import Basis, Fillets, Kind, Sizes, component_load, shared_load, side_angles, size
from .joint_parts import Filler, Metals, Part, metals
from .registry import ENTRIES, rule_set
from .seams import Penetration


@dataclass(frozen=True, slots=True)
class Joint:
    """Joint of a request: angle between the plates on the first weld's side in rad, root gap in mm."""

    kind: Kind
    angle: float = pi / 2
    root_gap: float = 0.0
    sides: int = 1


@dataclass(frozen=True, slots=True)
class SharedForce:
    """Force in N shared by the welds, each of a length in mm, at an angle in rad to their axis."""

    force: float
    length: float
    angle: float


@dataclass(frozen=True, slots=True)
class ForceComponents:
    """Force per length on one weld, N/mm, signed as in ``engine.loads``; length in mm where given."""

    normal: float = 0.0
    transverse: float = 0.0
    longitudinal: float = 0.0
    length: float | None = None


@dataclass(frozen=True, slots=True)
class FilletSizeRequest:
    """Request for a fillet's size, in engine units."""

    rule_set: str
    joint: Joint
    parts: tuple[Part, Part]
    basis: Basis
    load: SharedForce | ForceComponents | None = None
    filler: Filler | None = None
    parameters: tuple[tuple[str, float], ...] = ()
    process: str | None = None
    position: str | None = None
    end_loaded: bool = False
    hss_end: bool | None = None
    edge_of: int | None = None
    penetration: Penetration | None = None
    size_by: Literal["leg", "throat"] | None = None
    size_step: float | None = None
    common: Common = Common()


def fillet_size(request: FilletSizeRequest) -> dict[str, Any]:
    """Answer a request for a fillet's size; raises ``Refused`` with every fault found."""
    remarks, units = Remarks(), Units(request.common.units)
    faults = Faults(units)
    with working() as sheet:
        rules, beta_w = _rules(request, faults)
        _check(request, rules, faults)
        losses = _root_losses(request, rules, faults)
        found = metals(rules, request.parts, request.filler, beta_w, request.hss_end, faults, remarks)
        faults.refuse()
        request = _filled(request, rules)
        fillets = _fillets(request, rules, found, losses)
        sizes = size(fillets)
        passes = _passes(request, float(sizes.leg), remarks)
        _remark(request, fillets, sizes, units, remarks)
    reached = bool(sizes.reached)
    if rules.weld is None:
        cite(sizes.minimum_source)
    return answer(
        "fillet_size",
        request,
        sheet,
        remarks,
        Verdict.ENOUGH if reached else Verdict.CANNOT_BE_REACHED,
        _result(request, fillets, sizes, passes, units),
        rule_set=rules.id,
        parameters=rules.parameters,
    )


def _filled(request: FilletSizeRequest, rules: RuleSet) -> FilletSizeRequest:
    """Request with the defaults that hang on its rule set and units."""
    size_by = request.size_by or ("throat" if rules.family == "en" else "leg")
    step = request.size_step
    if step is None:
        step = INCH / 16 if request.common.units == "us" else 0.5 if size_by == "throat" else 1.0
    return replace(request, size_by=size_by, size_step=step)


def _rules(request: FilletSizeRequest, faults: Faults) -> tuple[RuleSet, float | None]:
    """Rule set with the request's parameters over its own, and the beta_w the request sets."""
    given = dict(request.parameters)
    allowed = {*ENTRIES[request.rule_set].parameters, *(("beta_w",) if ENTRIES[request.rule_set].parameters else ())}
    for name in given:
        if name not in allowed:
            faults.inconsistent(f"#/parameters/{name}", f"{request.rule_set} has no parameter {name}; leave it out")
    beta_w = given.pop("beta_w", None)
    known = {name: value for name, value in given.items() if name in allowed}
    return rule_set(request.rule_set, known), beta_w


def _check(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Find what does not fit together and what is beyond the rules' scope."""
    joint = request.joint
    thin_part = rules.weld is None
    if thin_part != (request.basis == "thin-part"):
        right = '"thin-part"' if thin_part else '"load" or "full-strength"'
        faults.inconsistent("#/basis", f"basis {request.basis} does not go with rule set {rules.id}; use {right}")
    if request.basis == "load" and request.load is None:
        faults.inconsistent("#/load", 'basis "load" needs a load: force, length and angle, or components per length')
    if request.basis != "load" and request.load is not None:
        faults.inconsistent("#/load", f'a load goes with basis "load", not with {request.basis}; leave it out')
    if isinstance(request.load, ForceComponents) and not (
        request.load.normal or request.load.transverse or request.load.longitudinal
    ):
        faults.inconsistent("#/load", "every component is zero; give the one that acts")
    if joint.kind == "inside-corner" and joint.sides == 2:
        faults.inconsistent("#/joint/sides", "an inside corner has one inside: sides is 1")
    if request.edge_of is not None and joint.kind != "lap":
        faults.inconsistent("#/edge_of", f"edge_of belongs to a lap joint, not to {joint.kind}; leave it out")
    _check_angles(joint, rules, faults)
    if not at_most(joint.root_gap, rules.fit_up.largest):
        faults.out_of_scope(
            "#/joint/root_gap",
            f"{faults.units.text(joint.root_gap)} is over {faults.units.text(rules.fit_up.largest)}: a larger leg makes"
            f" up for a gap of 3/16 in at most; bring the parts together ({rules.fit_up.source})",
        )
    if request.penetration is not None and request.penetration.tolerance > request.penetration.depth:
        faults.inconsistent("#/penetration/tolerance", "the tolerance is over the depth itself")
    if request.end_loaded:
        _check_end_loaded(request, rules, faults)
    if request.hss_end is not None and rules.family != "aisc":
        faults.inconsistent("#/hss_end", f"hss_end belongs to AISC 360-22, not to {rules.id}; leave it out")


def _check_angles(joint: Joint, rules: RuleSet, faults: Faults) -> None:
    """Refuse an angle the rules do not cover, on either side."""
    low, high = rules.scope.angles
    for angle in side_angles(joint.kind, joint.sides, joint.angle):
        if not (low * (1 - SAME) <= float(angle) <= high * (1 + SAME)):
            limit = rules.scope.angle
            faults.out_of_scope(
                "#/joint/angle",
                f"{float(angle) * 180 / pi:.4g} deg between the plates: {rules.id} covers {limit.text}"
                f" ({limit.source})",
            )


def _check_end_loaded(request: FilletSizeRequest, rules: RuleSet, faults: Faults) -> None:
    """Refuse a long-weld reduction that the rules do not have, or that has no length to go by."""
    limit = rules.scope.end_loaded_laps_only
    if rules.weld is None:
        faults.inconsistent("#/end_loaded", f"{rules.id} claims no strength, so it reduces none; leave it out")
    elif limit and request.joint.kind != "lap":
        faults.out_of_scope("#/end_loaded", f"{rules.id} has {limit.text} alone, not in a {request.joint.kind}")
    elif request.basis != "load":
        faults.inconsistent("#/end_loaded", 'the long-weld reduction goes with basis "load"; leave it out')
    elif request.load is not None and request.load.length is None:
        faults.inconsistent("#/end_loaded", "the long-weld reduction needs the length of the weld: load.length")


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


def _fillets(
    request: FilletSizeRequest, rules: RuleSet, found: Metals, root_losses: tuple[float | None, ...]
) -> Fillets:
    """Problem for the sizing arithmetic."""
    joint = request.joint
    proven = request.penetration if request.penetration and request.penetration.vouched == "proven" else None
    assert request.size_step is not None  # noqa: S101 - filled in before
    return Fillets(
        rules=rules,
        kind=joint.kind,
        sides=joint.sides,
        basis=request.basis,
        psi=joint.angle,
        parts=found.parts,
        metal=found.weld,
        side_loads=_side_loads(request, rules, found),
        length=request.load.length if request.load else None,
        end_loaded=request.end_loaded,
        edge=None if request.edge_of is None else found.parts[request.edge_of - 1].thickness,
        gap=joint.root_gap,
        penetration=proven.depth - proven.tolerance if proven and rules.weld else 0.0,
        by_throat=request.size_by == "throat",
        step=request.size_step,
        root_losses=root_losses,
    )


def _side_loads(request: FilletSizeRequest, rules: RuleSet, found: Metals) -> tuple[WeldLoad, ...]:
    """Load on each side, from the request or from the strength of the thinner part."""
    joint, load = request.joint, request.load
    if isinstance(load, SharedForce):
        per_length = loads.force_per_length(P=load.force, m=float(joint.sides), L=load.length)
        return shared_load(joint.kind, joint.sides, joint.angle, per_length, load.angle)
    if isinstance(load, ForceComponents):
        return component_load(joint.kind, joint.sides, joint.angle, load.normal, load.transverse, load.longitudinal)
    if rules.parts is None:
        return ()
    strengths = []
    for number, part in enumerate(found.parts, start=1):
        with about(f"part {number}"):
            strengths.append(float(rules.parts.across(part)))
    # With one steel the weaker part is the thinner one.
    with about("weaker part"):
        strength = min(strengths)
        per_length = loads.force_per_length(P=strength, m=float(joint.sides), L=1.0)
    return shared_load(joint.kind, joint.sides, joint.angle, per_length, pi / 2)


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


def _governs(fillets: Fillets, sizes: Sizes) -> str:
    """What set the size, or what no size can meet."""
    if not sizes.long_enough or (not sizes.weld_carries and _too_short(sizes)):
        return "minimum-length"
    if not sizes.parts_carry:
        return "base-metal"
    if float(sizes.gap_leg) > 0.0:
        return "root-gap"
    if not at_most(sizes.minimum_leg, sizes.required_leg):
        return "minimum-size"
    return fillets.basis


def _too_short(sizes: Sizes) -> bool:
    """Whether the weld's length keeps its size from counting."""
    return sizes.largest_counted_leg is not None and not at_most(sizes.leg - sizes.gap_leg, sizes.largest_counted_leg)


def _result(
    request: FilletSizeRequest, fillets: Fillets, sizes: Sizes, passes: int | None, units: Units
) -> dict[str, Any]:
    """Fields of the answer that are the resource's own."""
    weld = fillets.rules.weld
    basis_source = {
        "load": f"{fillets.rules.id}, weld metal",
        "full-strength": f"{fillets.rules.id}, strength of the thinner part",
        "thin-part": "by the thinner part",
    }[fillets.basis]
    specified = None
    if sizes.reached:
        source = f"rounded up to the next {units.text(float(fillets.step))}"
        specified = {**_size(sizes, float(sizes.leg), source, units), "passes": passes}
    length = None
    if weld is not None and fillets.length is not None and sizes.length_factor is not None:
        given, factor = float(fillets.length), float(sizes.length_factor)
        length = {"given": units.length(given), "effective": units.length(given * factor), "factor": factor}
    return {
        "required": _size(sizes, float(sizes.required_leg), basis_source, units),
        "minimum": _size(sizes, float(sizes.minimum_leg), str(sizes.minimum_source), units),
        "maximum": None
        if sizes.maximum_leg is None
        else _size(sizes, float(sizes.maximum_leg), str(sizes.maximum_source), units),
        "specify": specified,
        "governs": _governs(fillets, sizes),
        "utilisation": _utilisation(sizes),
        "strength": None
        if sizes.weld_strength is None or sizes.base_strength is None
        else {
            "weld": units.force_per_length(float(sizes.weld_strength)),
            "base_metal": [units.force_per_length(float(strength)) for strength in sizes.base_strength],
        },
        "length": length,
        "z_loss": _z_loss(fillets, units),
    }


def _z_loss(fillets: Fillets, units: Units) -> dict[str, Any] | None:
    """Throat lost at the root of the tighter side; None where the plates stand at 60 deg or more."""
    losses = [loss for loss in fillets.root_losses if loss is not None]
    return {**units.length(max(losses))} if losses else None


def _utilisation(sizes: Sizes) -> float | None:
    """Greatest use made of weld or parts; None where no strength is claimed, or where no size will do."""
    if sizes.weld_utilisation is None or sizes.base_utilisation is None or not sizes.reached:
        return None
    return float(max(sizes.weld_utilisation, *sizes.base_utilisation))


def _size(sizes: Sizes, leg: float, source: str, units: Units) -> dict[str, Any]:
    """Size as an answer shows it."""
    throat = float(equal_leg_throat.body(z=leg, psi=sizes.psi))
    return {"leg": units.length(leg), "throat": units.length(throat), "source": source}


def _remark(request: FilletSizeRequest, fillets: Fillets, sizes: Sizes, units: Units, remarks: Remarks) -> None:
    """Say why the answer is what it is, and what it does not cover."""
    _reasons(request, fillets, sizes, units, remarks)
    rules, penetration = fillets.rules, request.penetration
    lost = _z_loss(fillets, units)
    if lost is not None and lost["value"] > 0.0:
        remarks.caution(
            "z-loss",
            f"Leg and throat shown are those of the whole section; {lost['text']} at its root is not fused and does not"
            " count.",
            s4_4_skewed_fillets.Z_LOSS,
        )
    if penetration is not None and penetration.depth > 0.0:
        if penetration.vouched != "proven":
            remarks.caution(
                f"{penetration.vouched}-penetration",
                f"Penetration of {units.text(penetration.depth)} is {penetration.vouched}, not proven by a qualified"
                " procedure, so it does not count.",
            )
        elif rules.family == "aisc":
            remarks.caution(
                "proven-penetration",
                "Proven penetration counts only for a mechanized, automatic or robotic root pass at the tested current"
                " and travel speed.",
                Source("ANSI/AISC 360-22", "J2.2a"),
            )
        elif rules.family == "en":
            remarks.caution(
                "proven-penetration",
                "Penetration counts as throat only where a procedure test shows it consistently.",
                Source("EN 1993-1-8:2005", "4.5.2(3)"),
            )
    if rules.weld is None:
        remarks.caution(
            "no-strength-claimed",
            "A leg equal to the thinner part from one side has 71 % of that part as throat: a shop rule, not a"
            " strength.",
        )
        if not at_most(TABLE_J2_4(float(min(part.thickness for part in request.parts))), sizes.leg):
            remarks.caution(
                "below-quick-chill-size",
                "So small a bead on this thickness cools fast; codes for structures ask for a larger least size.",
                TABLE_J2_4.source,
            )
        return
    if fillets.sides == 1 and float(fillets.side_loads[0].across) > SAME * float(fillets.side_loads[0].resultant):
        remarks.caution(
            "one-sided",
            "One weld across the force: bending that opens the root is not in these figures. Keep the joint from"
            " turning"
            " or weld the other side.",
            Source("EN 1993-1-8:2005", "4.12", "from memory") if rules.family == "en" else None,
        )
    if fillets.length is None:
        remarks.caution("no-length", "Without a length the least length of the weld was not checked.")
    elif rules.family == "en":
        remarks.caution(
            "full-size-length",
            "The length is taken as full size from end to end; where ends taper, take two throats off it.",
            Source("EN 1993-1-8:2005", "4.5.1(1)"),
        )


def _reasons(request: FilletSizeRequest, fillets: Fillets, sizes: Sizes, units: Units, remarks: Remarks) -> None:
    """Say what set the size, or what stands in its way."""
    leg = float(sizes.leg)
    if float(sizes.gap_leg) > 0.0:
        remarks.because(
            f"The root gap of {units.text(request.joint.root_gap)} is added whole to the leg"
            f" ({fillets.rules.fit_up.source})."
        )
    if not sizes.long_enough:
        source = fillets.rules.weld.least_length_source if fillets.rules.weld else ""
        remarks.because(f"The weld is too short to carry load at any size ({source}).")
    elif not sizes.weld_carries and fillets.rules.weld:
        remarks.because(
            f"The weld is too short for its size: no more than {units.text(float(sizes.largest_counted_leg or 0.0))} of"
            f" leg counts ({fillets.rules.weld.least_length_source})."
        )
    if not sizes.within_maximum and sizes.maximum_leg is not None:
        most = float(sizes.maximum_leg)
        fits = at_most(max(float(sizes.required_leg), float(sizes.minimum_leg)), most)
        remarks.because(
            f"The next step up, {units.text(leg)} of leg, is over the maximum of {units.text(most)} along the edge"
            f" ({sizes.maximum_source})" + ("; a finer size_step would fit." if fits else ".")
        )
    if not sizes.parts_carry and sizes.base_utilisation is not None:
        for number, used in enumerate(sizes.base_utilisation, start=1):
            if not at_most(used, 1.0):
                remarks.because(
                    f"Part {number} fails beside the weld before any weld does: {float(used):.0%} of it is used."
                )
    if sizes.reached:
        remarks.because(
            {
                "load": "The weld metal sets the size.",
                "full-strength": "The strength of the thinner part sets the size.",
                "thin-part": "The thickness of the thinner part sets the size.",
                "minimum-size": f"The least size sets the size ({sizes.minimum_source}).",
                "root-gap": f"With the gap, {units.text(leg)} of leg leaves the throat.",
            }[_governs(fillets, sizes)]
        )
