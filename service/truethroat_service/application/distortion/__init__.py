"""Use case: how a joint shrinks and turns when welded, as a band of named methods, and what would do less."""

from dataclasses import asdict, replace

from ...engine.formula import working
from ...engine.rounding import at_least, at_most
from ...practice.shrinkage import TWI
from ...standards.iso_13920_1996 import table_3_form
from ..core.answers import Answered, answered
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints.given import usual_step
from .alternatives import alternatives
from .answer import DistortionAnswer, ShrinkingWeld, ToleranceCheck
from .cases import USUAL_ANGLES, Case, Setting, case_of
from .estimates import Band, estimates, restrained
from .request import Butt, DistortionRequest, Tee
from .tolerances import checks


def distortion(request: DistortionRequest) -> Answered[DistortionAnswer]:
    """How a joint shrinks and turns when welded, by named methods, and what would do less.

    Lengths are in mm, angles in rad, heat input in kJ/mm. Raises ``Refused`` with every fault found.
    """
    units = Units(request.common.units)
    remarks = Remarks(units)
    request = _filled(request)
    faults = Faults(units)
    _check(request, faults)
    faults.refuse()
    setting = Setting(request.length, request.member, request.heat_input, request.calibration)
    with working() as sheet:
        case = case_of(request.joint, setting)
        bands = estimates(case)
        held = _restrained(case, bands["angular"], faults)
        judged = bands if held is None else {**bands, "angular": held}
        tolerances = [] if request.iso_13920 is None else checks(request.iso_13920, case.width, judged, faults)
        faults.refuse()
    assert request.size_step is not None  # noqa: S101 - filled in
    others = alternatives(request.joint, setting, request.size_step, case, bands)
    _say(request, bands, judged, tolerances, remarks)
    return answered(
        "distortion",
        request,
        sheet,
        remarks,
        _verdict(tolerances),
        DistortionAnswer(
            **{name: band.answer() for name, band in bands.items()},
            restrained_angular=None if held is None else held.answer(),
            weld=ShrinkingWeld(case.area, int(case.welds), case.share),
            iso_13920=tuple(tolerances),
            alternatives=others,
        ),
        rule_set=None,
        parameters={name: factor for name, factor in asdict(request.calibration).items() if factor != 1.0},
    )


def _restrained(case: Case, free: Band, faults: Faults) -> Band | None:
    """Angular change of a joint that is held, if it is."""
    if case.restraint is None:
        return None
    if not free.estimates:
        faults.inconsistent("#/joint/restraint", "no method gives an angle to restrain; give what one goes by")
        return None
    return restrained(case, case.restraint, free)


def _filled(request: DistortionRequest) -> DistortionRequest:
    """Request with the defaults that hang on its other fields."""
    joint = request.joint
    if isinstance(joint, Butt) and joint.weld.groove in USUAL_ANGLES and joint.weld.groove_angle is None:
        joint = replace(joint, weld=replace(joint.weld, groove_angle=USUAL_ANGLES[joint.weld.groove]))
    step = request.size_step
    if step is None:
        step = usual_step(request.common.units, "leg")
    return replace(request, joint=joint, size_step=step)


def _check(request: DistortionRequest, faults: Faults) -> None:
    """Find what does not fit together."""
    joint, member = request.joint, request.member
    if isinstance(joint, Butt):
        _check_butt(joint, request.length, faults)
    elif isinstance(joint, Tee) and joint.sides == 2 and joint.runs is not None:
        faults.inconsistent("#/joint/runs", "runs count where one side is welded; leave them out with two sides")
    elif isinstance(joint, Tee) and joint.sides == 1 and joint.width is not None:
        faults.inconsistent("#/joint/width", "the flange's width counts where two fillets draw it; leave it out")
    if member is not None:
        if request.length is None:
            faults.inconsistent("#/member", "a member shortens by its length: give length too")
        if (member.second_moment is None) != (member.eccentricity is None):
            missing = "eccentricity" if member.eccentricity is None else "second_moment"
            faults.inconsistent(f"#/member/{missing}", "second_moment and eccentricity go together")
    elif request.heat_input is not None:
        faults.inconsistent("#/heat_input", "the methods by heat input go by the member: give it too")


def _check_butt(joint: Butt, length: float | None, faults: Faults) -> None:
    """Find what does not fit together in a butt."""
    weld = joint.weld
    if at_least(weld.land, joint.thickness):
        faults.inconsistent("#/joint/weld/land", "the land takes up the whole thickness")
    if (weld.face_width is None) != (weld.root_width is None):
        missing = "root_width" if weld.root_width is None else "face_width"
        faults.inconsistent(f"#/joint/weld/{missing}", "face_width and root_width go together")
    elif weld.face_width is not None and not at_most(weld.root_width or 0.0, weld.face_width):
        faults.inconsistent("#/joint/weld/root_width", "the root is wider than the face; turn the section over")
    if joint.runs is not None and weld.groove in ("square", "double-v", "double-bevel"):
        faults.inconsistent("#/joint/runs", f"runs count in a groove from one side, not in a {weld.groove}")
    if joint.current is not None and length is None:
        faults.inconsistent("#/joint/current", "the method by current goes by length: give it too")


def _verdict(tolerances: list[ToleranceCheck]) -> Verdict:
    """Out of tolerance as soon as one class asked for is not kept; estimated when none was asked for."""
    verdicts = [check.verdict for check in tolerances if check.verdict is not None]
    if not verdicts:
        return Verdict.ESTIMATED
    return Verdict.OUT_OF_TOLERANCE if "out" in verdicts else Verdict.WITHIN_TOLERANCE


def _say(
    request: DistortionRequest,
    bands: dict[str, Band],
    judged: dict[str, Band],
    tolerances: list[ToleranceCheck],
    remarks: Remarks,
) -> None:
    """Say what was estimated and held, and what the figures rest on."""
    for name, band in bands.items():
        if band.low is not None and band.high is not None:
            render = remarks.units.angle if name == "angular" else remarks.units.length
            low, high = render(band.low)["text"], render(band.high)["text"]
            label = name.replace("_", " ").capitalize()
            count = f"{len(band.estimates)} method{'s' if len(band.estimates) > 1 else ''}"
            remarks.because(f"{label}: {low if low == high else f'{low} to {high}'} by {count}.")
    for check in tolerances:
        kept = f"keeps class {check.keeps}" if check.keeps else "keeps no class"
        remarks.because(f"{check.quantity.replace('_', ' ').capitalize()} {kept} of ISO 13920 at its upper end.")
    remarks.caution(
        "rough-estimate",
        "Shrinkage can hardly be predicted: published estimates differ by a factor of two, and no formula here was"
        " read in its own book. Weld a sample, and calibrate by it.",
        TWI,
    )
    single = [name.replace("_", " ") for name, band in judged.items() if len(band.estimates) == 1]
    if single:
        held = " A tolerance is held against twice the estimate." if tolerances else ""
        remarks.caution(
            "one-method",
            f"One method alone covers: {', '.join(single)}. Allow for half as much and twice as much.{held}",
        )
    if bands["angular"].estimates:
        remarks.caution(
            "left-free", "Angles are those of parts left free; clamps and stiffeners leave less, and lock in stress."
        )
    if tolerances:
        remarks.caution(
            "later-edition", "ISO 13920 has an edition of 2023, which was not read: see that it changes nothing."
        )
    if any(check.quantity == "edge_lift" for check in tolerances):
        remarks.caution(
            "flatness-by-width",
            "A flange's edges are held to the flatness of its width; the table goes by the longer side, which allows"
            " more.",
            table_3_form.LONGER_SIDE,
        )
    joint = request.joint
    runs = joint.runs if isinstance(joint, Butt | Tee) else None
    if runs is not None and runs > 1:
        remarks.caution(
            "runs",
            "Many small runs turn a joint more; few large ones shorten it more along and across. Both pieces of advice"
            " are right, each about its own mode.",
            TWI,
        )
    if request.heat_input is not None:
        remarks.caution(
            "heat-of-one-run",
            "Heat input is taken as net of arc efficiency and of one run; equal welds are added up, the safe reading.",
        )
    if not isinstance(joint, Butt):
        if joint.welded_share < 1.0:
            remarks.caution(
                "intermittent",
                "Along the welds and for bows the metal is averaged over the length (common practice, no source);"
                " angles and allowances are those of a continuous weld.",
            )
        remarks.caution(
            "alternatives-not-sized",
            "Alternatives keep the throat or say what they lose; least sizes and the code's rules are not checked.",
        )
