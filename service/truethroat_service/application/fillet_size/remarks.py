"""What an answer about a fillet's size says beside its figures: what governs, why, and what it does not cover."""

from dataclasses import dataclass

from ...engine import loads
from ...engine.formula import Source
from ...engine.rounding import SAME, at_most
from ...engine.rule_set import RuleSet
from ...standards.aisc_360_22.j2_2_fillet_limits import TABLE_J2_4
from ...standards.aws_d1_1_2020 import s4_4_skewed_fillets
from ...standards.en_1993_1_8_2005 import s4_11_long_joints, s4_12_single_sided
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints.metals import EN_1993_1_8
from ..joints.penetration_remarks import remark_on_penetration
from .answer import Governs
from .request import ConcentricForce, FilletSizeRequest, Packing
from .sizing import Fillets, Sizes


@dataclass(frozen=True, slots=True)
class Beyond:
    """What stands in the way beside the weld's own size: its name, and why."""

    governs: Governs
    reason: str


def governs(fillets: Fillets, sizes: Sizes, beyond: list[Beyond]) -> Governs:
    """What set the size, or what no size can meet."""
    if not sizes.long_enough or (not sizes.weld_carries and _too_short(sizes)):
        return "minimum-length"
    if not sizes.parts_carry:
        return "base-metal"
    if beyond:
        return beyond[0].governs
    if float(sizes.gap_leg) > 0.0:
        return "root-gap"
    if float(sizes.packing_leg) > 0.0:
        return "packing"
    if not at_most(sizes.minimum_leg, sizes.required_leg):
        return "minimum-size"
    return fillets.basis


def _too_short(sizes: Sizes) -> bool:
    """Whether the weld's length keeps its size from counting."""
    return sizes.largest_counted_leg is not None and not at_most(sizes.net_leg, sizes.largest_counted_leg)


def largest_loss(fillets: Fillets) -> float | None:
    """Throat lost at the root of the tighter side, mm; None where the plates stand at 60 deg or more."""
    losses = [loss for loss in fillets.root_losses if loss is not None]
    return max(losses) if losses else None


def what_carries(rules: RuleSet) -> str:
    """What of the weld a load sizes by."""
    return "weld metal or the heat-affected zone at its legs" if rules.metals.softened else "weld metal"


def remark(
    request: FilletSizeRequest,
    fillets: Fillets,
    sizes: Sizes,
    beyond: list[Beyond],
    units: Units,
    remarks: Remarks,
) -> None:
    """Say why the answer is what it is, and what it does not cover."""
    _reasons(request, fillets, sizes, beyond, units, remarks)
    lost = largest_loss(fillets)
    if lost:
        remarks.caution(
            "z-loss",
            f"Leg and throat shown are those of the whole section; {units.text(lost)} at its root is not fused and does"
            " not count.",
            s4_4_skewed_fillets.Z_LOSS,
        )
    _remark_penetration(request, fillets, units, remarks)
    if fillets.rules.weld is None:
        _remark_thin_part(request, sizes, remarks)
        return
    _remark_length(request, fillets, remarks)
    _remark_one_sided(request, fillets, remarks)
    _remark_part_1(fillets, remarks)
    _remark_details(request, fillets, units, remarks)


def _remark_penetration(request: FilletSizeRequest, fillets: Fillets, units: Units, remarks: Remarks) -> None:
    """Say whether penetration counts, and on what condition."""
    rules, penetration = fillets.rules, request.penetration
    remark_on_penetration(penetration, remarks)
    if penetration is not None and penetration.counted("strength"):
        if rules.options.needs_root_pass and request.root_pass is None:
            remarks.caution(
                "penetration-not-counted",
                f"The proven penetration of {units.text(penetration.depth)} does not count, because the request does"
                " not say that the root pass is mechanized, automatic or robotic: send root_pass.",
                rules.options.penetration.source if rules.options.penetration else None,
            )
        elif rules.options.penetration is not None:
            remarks.note(rules.options.penetration)
        elif rules.weld is not None:
            remarks.caution(
                "proven-penetration",
                "Penetration counts as throat only where a procedure test shows it consistently.",
                Source(EN_1993_1_8, "4.5.2(3)"),
            )


def _remark_thin_part(request: FilletSizeRequest, sizes: Sizes, remarks: Remarks) -> None:
    """Say what a size by the thinner part is not."""
    remarks.caution(
        "no-strength-claimed",
        "A leg equal to the thinner part from one side has 71 % of that part as throat: a shop rule, not a strength.",
    )
    if not at_most(TABLE_J2_4(float(min(part.thickness for part in request.parts))), sizes.leg - request.leg_tolerance):
        remarks.caution(
            "below-quick-chill-size",
            "So small a bead on this thickness cools fast; codes for structures ask for a larger least size.",
            TABLE_J2_4.source,
        )


def _remark_length(request: FilletSizeRequest, fillets: Fillets, remarks: Remarks) -> None:
    """Say what was not checked of the length, or what it is taken for."""
    en = EN_1993_1_8 in fillets.rules.editions
    if request.lap_along and request.end_loaded is False:
        remarks.caution(
            "long-weld-not-reduced",
            "A long lap weld that is loaded along it carries less per length. This weld is not reduced for its length,"
            " because the request says that it is not end-loaded.",
        )
    if isinstance(request.load, ConcentricForce):
        remarks.caution(
            "no-length", "The least length of each weld was not checked: only the lengths of all are known."
        )
    elif fillets.length is None:
        remarks.caution(
            "no-length",
            "Without a length the least length of the weld was not checked."
            + (
                " A long weld in a lap carries less per length; that was not checked either." if request.reduced else ""
            ),
        )
    elif en and fillets.full_size_ends:
        remarks.caution(
            "full-size-length",
            "The length is taken as full size from end to end; where ends taper, take two throats off it.",
            Source(EN_1993_1_8, "4.5.1(1)"),
        )
    long = s4_11_long_joints.STIFFENER_LENGTH
    length = request.length
    if en and request.joint.kind != "lap" and fillets.stiffener_length is None and length is not None and length > long:
        remarks.caution(
            "long-stiffener",
            "Over 1.7 m the weld of a transverse stiffener is reduced: say transverse_stiffener if it is one.",
            Source(EN_1993_1_8, "4.11(4)", "from memory"),
        )
    if en:
        remarks.caution(
            "end-returns",
            "Return the weld at full size around ends and corners for two legs wherever practicable, and show it on the"
            " drawing; of an intermittent weld only the last length.",
            Source(EN_1993_1_8, "4.3.2.1(4)"),
        )


def _remark_one_sided(request: FilletSizeRequest, fillets: Fillets, remarks: Remarks) -> None:
    """Say what becomes of bending about the root of a weld from one side."""
    if fillets.root_bending:
        remarks.caution(
            "root-bending-model",
            "The clause gives no formula: the moment of the pull about the throat, from the middle of part 2, is put on"
            " the throat as on a beam. It is a model; where the joint is held from turning it is severe.",
            s4_12_single_sided.MODEL,
        )
    elif fillets.sides == 1 and float(fillets.side_loads[0].across) > SAME * float(fillets.side_loads[0].resultant):
        remarks.caution(
            "one-sided",
            "One weld across the force: bending that opens the root is not in these figures. Keep the joint from"
            " turning or weld the other side.",
            Source(EN_1993_1_8, "4.12", "from memory") if EN_1993_1_8 in fillets.rules.editions else None,
        )


def _remark_part_1(fillets: Fillets, remarks: Remarks) -> None:
    """Say that a pull bends part 1 of a tee, which is not checked."""
    load = fillets.side_loads[0]
    if not fillets.part_1_sheared or abs(float(load.normal)) <= SAME * float(load.resultant):
        return
    remarks.caution(
        "bending-of-part-1",
        "The force across part 1 shears it through its thickness beside each weld, and that is checked. It also bends"
        " part 1, and that is not checked. Where a plate stands behind part 1, send joint.stiffened_behind.",
        loads.STATICS,
    )


def _remark_details(request: FilletSizeRequest, fillets: Fillets, units: Units, remarks: Remarks) -> None:
    """Say what goes with laps, intermittent welds and national rules."""
    rules, run = fillets.rules, request.intermittent
    if rules.options.lap_overlap is not None and request.joint.kind == "lap":
        overlap, source = rules.options.lap_overlap(min(part.thickness for part in request.parts))
        remarks.caution(
            "lap-overlap",
            f"The parts of the lap must overlap by {units.text(float(overlap))} at least, and two transverse welds hold"
            " both ends unless the lap cannot open.",
            source,
        )
    if request.minimum_throat is not None:
        remarks.caution(
            "national-least-throat",
            "The national least throat keeps a small bead from chilling; it may be waived where the procedure sees to"
            " that, and is then 5 mm from 30 mm of thickness on.",
            fillets.least_throat[1] if fillets.least_throat else None,
        )
    if run is not None and rules.options.intermittent is not None:
        remarks.caution(
            "gaps-corrode",
            "Water gets in behind the gaps: an intermittent weld is for painted places and where nothing corrodes.",
            rules.options.intermittent.exposure_source,
        )
        for note in rules.options.intermittent.notes(run):
            remarks.note(note)


def _reasons(
    request: FilletSizeRequest,
    fillets: Fillets,
    sizes: Sizes,
    beyond: list[Beyond],
    units: Units,
    remarks: Remarks,
) -> None:
    """Say what set the size, or what stands in its way."""
    leg = float(sizes.leg)
    if float(sizes.gap_leg) > 0.0:
        remarks.because(
            f"The root gap of {units.text(request.joint.root_gap)} is added whole to the leg"
            f" ({fillets.rules.fit_up.source})."
        )
    if request.leg_tolerance > 0.0:
        remarks.because(
            f"The leg covers a tolerance of {units.text(request.leg_tolerance)}; strength and use are those at its"
            " worst."
        )
    if request.packing is not None:
        _because_of_packing(request.packing, fillets, sizes, units, remarks)
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
        least = max(float(sizes.required_leg), float(sizes.minimum_leg))
        finer, closer = at_most(least + request.leg_tolerance, most), at_most(least, most)
        remarks.because(
            f"The next step up, {units.text(leg)} of leg, is over the maximum of {units.text(most)} along the edge"
            f" ({sizes.maximum_source})"
            + ("; a finer size_step would fit." if finer else "; a closer leg_tolerance would fit." if closer else ".")
        )
        if not at_most(sizes.minimum_leg, most):
            remarks.because(
                f"The least size ({sizes.minimum_source}) needs an edge of {units.text(float(sizes.minimum_leg))}."
            )
    if not sizes.parts_carry and sizes.base_utilisation is not None:
        for number, used in enumerate(sizes.base_utilisation, start=1):
            if not at_most(used, 1.0):
                remarks.because(
                    f"Part {number} fails beside the weld before any weld does: {float(used):.0%} of it is used."
                )
    for found in beyond:
        remarks.because(found.reason)
    if sizes.reached and not beyond:
        remarks.because(
            {
                "load": f"The {what_carries(fillets.rules)} sets the size.",
                "full-strength": "The strength of the thinner part sets the size."
                if request.unstiffened_flange is None
                else "The strength of the plate sets the size.",
                "thin-part": "The thickness of the thinner part sets the size.",
                "minimum-size": f"The least size sets the size ({sizes.minimum_source}).",
                "root-gap": f"With the gap, {units.text(leg)} of leg leaves the throat.",
                "packing": f"Beyond the packing, {units.text(leg)} of leg leaves the throat.",
            }[governs(fillets, sizes, beyond)]
        )


def _because_of_packing(packing: Packing, fillets: Fillets, sizes: Sizes, units: Units, remarks: Remarks) -> None:
    """Say what packing does to the weld."""
    rule, thick = fillets.rules.options.packing, units.text(packing.thickness)
    assert rule is not None  # noqa: S101 - refused before
    if float(sizes.packing_leg) > 0.0:
        remarks.because(f"The leg reaches over the packing of {thick}, which is added to it ({rule.source}).")
        remarks.caution("packing", "Trim the packing flush with the edge that is welded.", rule.source)
        return
    remarks.because(
        f"The packing of {thick} is no thinner than the leg needed, so each of the two parts is welded to it for the"
        f" whole force ({rule.source})."
    )
    remarks.caution(
        "packing",
        "The size is that of each of two welds, from either part to the packing, whose own strength is not checked.",
        rule.source,
    )
    if not sizes.packing_holds:
        remarks.because(
            f"The next step up, {units.text(float(sizes.net_leg))} of leg, is over the packing's edge; a finer"
            " size_step would fit."
        )
