"""Reasons and cautions of a fillet's size: what governs, why, and what the figures do not cover."""

from dataclasses import dataclass

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
            f"Leg and throat are those of the whole section. {units.text(lost)} at the root is not fused and does not"
            " count.",
            s4_4_skewed_fillets.Z_LOSS,
        )
    _remark_penetration(request, fillets, units, remarks)
    if fillets.rules.weld is None:
        _remark_thin_part(request, sizes, remarks)
        return
    _remark_length(request, fillets, remarks)
    _remark_one_sided(request, fillets, remarks)
    _remark_details(request, fillets, units, remarks)


def _remark_penetration(request: FilletSizeRequest, fillets: Fillets, units: Units, remarks: Remarks) -> None:
    """Say whether penetration counts, and on what condition."""
    rules, penetration = fillets.rules, request.penetration
    remark_on_penetration(penetration, remarks)
    if penetration is not None and penetration.counted("strength"):
        if rules.options.penetration is not None:
            remarks.note(rules.options.penetration)
        elif rules.weld is not None:
            remarks.caution(
                "proven-penetration",
                "Penetration counts as throat only where a procedure test shows that it is achieved consistently.",
                Source(EN_1993_1_8, "4.5.2(3)"),
            )


def _remark_thin_part(request: FilletSizeRequest, sizes: Sizes, remarks: Remarks) -> None:
    """Say what a size by the thinner part is not."""
    remarks.caution(
        "no-strength-claimed",
        "This is a shop rule and claims no strength: the throat of a leg equal to the thinner part is 71 % of that"
        " part.",
    )
    if not at_most(TABLE_J2_4(float(min(part.thickness for part in request.parts))), sizes.leg - request.leg_tolerance):
        remarks.caution(
            "below-quick-chill-size",
            "A bead this small cools fast on this thickness. Codes for structures require a larger least size.",
            TABLE_J2_4.source,
        )


def _remark_length(request: FilletSizeRequest, fillets: Fillets, remarks: Remarks) -> None:
    """Say what was not checked of the length, or what it is taken for."""
    en = EN_1993_1_8 in fillets.rules.editions
    if isinstance(request.load, ConcentricForce):
        remarks.caution(
            "no-length",
            "The least length of each weld is not checked, because only the length of all welds together is known.",
        )
    elif fillets.length is None:
        remarks.caution("no-length", "The least length of the weld is not checked, because no length was sent.")
    elif en and fillets.full_size_ends:
        remarks.caution(
            "full-size-length",
            "The weld is taken as full size from end to end. Where its ends taper, take two throats off the length.",
            Source(EN_1993_1_8, "4.5.1(1)"),
        )
    long = s4_11_long_joints.STIFFENER_LENGTH
    length = request.length
    if en and request.joint.kind != "lap" and fillets.stiffener_length is None and length is not None and length > long:
        remarks.caution(
            "long-stiffener",
            f"The strength of a transverse stiffener's weld is reduced over {remarks.units.text(long)} of length. Send"
            " transverse_stiffener if this is one.",
            Source(EN_1993_1_8, "4.11(4)", "from memory"),
        )
    if en:
        remarks.caution(
            "end-returns",
            "Return the weld at full size around ends and corners for two legs wherever practicable, and show it on the"
            " drawing. An intermittent weld is returned at its last length only.",
            Source(EN_1993_1_8, "4.3.2.1(4)"),
        )


def _remark_one_sided(request: FilletSizeRequest, fillets: Fillets, remarks: Remarks) -> None:
    """Say what becomes of bending about the root of a weld from one side."""
    if fillets.root_bending:
        remarks.caution(
            "root-bending-model",
            "The clause gives no formula. The moment of the tension about the throat, from the middle of part 2, is put"
            " on the throat as on a beam. This model is severe where the joint is held from turning.",
            s4_12_single_sided.MODEL,
        )
    elif fillets.sides == 1 and float(fillets.side_loads[0].across) > SAME * float(fillets.side_loads[0].resultant):
        remarks.caution(
            "one-sided",
            "These figures leave out the bending that opens the root of a weld from one side. Keep the joint from"
            " turning, or weld the other side.",
            Source(EN_1993_1_8, "4.12", "from memory") if EN_1993_1_8 in fillets.rules.editions else None,
        )


def _remark_details(request: FilletSizeRequest, fillets: Fillets, units: Units, remarks: Remarks) -> None:
    """Say what goes with laps, intermittent welds and national rules."""
    rules, run = fillets.rules, request.intermittent
    if rules.options.lap_overlap is not None and request.joint.kind == "lap":
        overlap, source = rules.options.lap_overlap(min(part.thickness for part in request.parts))
        remarks.caution(
            "lap-overlap",
            f"The parts of the lap must overlap by at least {units.text(float(overlap))}. Weld both ends of the lap"
            " across the force, unless the lap cannot open.",
            source,
        )
    if request.minimum_throat is not None:
        remarks.caution(
            "national-least-throat",
            "The national least throat keeps a small bead from cooling too fast. It may be waived where the procedure"
            f" ensures that; the least throat is then {units.text(5.0)} from {units.text(30.0)} of thickness on.",
            fillets.least_throat[1] if fillets.least_throat else None,
        )
    if run is not None and rules.options.intermittent is not None:
        remarks.caution(
            "gaps-corrode",
            "Water gets in through the gaps. Use an intermittent weld only where it is painted or where nothing"
            " corrodes.",
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
            f"The leg covers a tolerance of {units.text(request.leg_tolerance)}. Strength and utilisation are those of"
            " the smallest leg that it allows."
        )
    if request.packing is not None:
        _because_of_packing(request.packing, fillets, sizes, units, remarks)
    if not sizes.long_enough:
        source = fillets.rules.weld.least_length_source if fillets.rules.weld else ""
        remarks.because(f"The weld is too short to carry load at any size ({source}).")
    elif not sizes.weld_carries and fillets.rules.weld:
        remarks.because(
            f"The weld is too short for its size: at most {units.text(float(sizes.largest_counted_leg or 0.0))} of"
            f" leg counts ({fillets.rules.weld.least_length_source})."
        )
    if not sizes.within_maximum and sizes.maximum_leg is not None:
        most = float(sizes.maximum_leg)
        least = max(float(sizes.required_leg), float(sizes.minimum_leg))
        finer, closer = at_most(least + request.leg_tolerance, most), at_most(least, most)
        remarks.because(
            f"The next step up, {units.text(leg)} of leg, is over the maximum of {units.text(most)} along the edge"
            f" ({sizes.maximum_source})"
            + (". A finer size_step would fit." if finer else ". A closer leg_tolerance would fit." if closer else ".")
        )
    if not sizes.parts_carry and sizes.base_utilisation is not None:
        for number, used in enumerate(sizes.base_utilisation, start=1):
            if not at_most(used, 1.0):
                remarks.because(
                    f"Part {number} fails beside the weld before the weld does: the load uses {float(used):.0%} of its"
                    " strength."
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
                "root-gap": f"With the root gap, the throat needs {units.text(leg)} of leg.",
                "packing": f"With the packing, the throat needs {units.text(leg)} of leg.",
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
        "The size is that of each of the two welds between a part and the packing. The strength of the packing is not"
        " checked.",
        rule.source,
    )
    if not sizes.packing_holds:
        remarks.because(
            f"The next step up, {units.text(float(sizes.net_leg))} of leg, is over the edge of the packing. A finer"
            " size_step would fit."
        )
