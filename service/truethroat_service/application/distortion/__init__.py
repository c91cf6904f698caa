"""Use case: how a joint shrinks and turns when welded, as a band of named methods, and what distorts less.

Every method that covers a joint is in its band. A method that does not cover it stands in ``left_out`` with the
reason; no method is stretched beyond its limits. Where a method can be read in two ways, the safe reading is taken: an
allowance "per weld" counts each fillet, the heat of equal welds is added up, the angle of a groove from both sides ends
at that of its first side welded out alone, and intermittent welds turn a plate as continuous ones do. Alternatives are
compared method by method. Inch formulas take their coefficient as an argument that is converted once.
"""

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
    """How a joint shrinks and turns when welded, by named methods, and what distorts less.

    The request and the answer are in engine units: lengths in mm, angles in rad, heat input in kJ/mm. The answer holds
    a band for each quantity, the estimates against ISO 13920 and the alternatives. Raises ``Refused`` with every fault
    of the request.
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
    """Angular change of a joint that is held; None for one that turns freely."""
    if case.restraint is None:
        return None
    if not free.estimates:
        faults.inconsistent(
            "#/joint/restraint", "needs an angular change that a method gives; send runs, or the widths of the weld"
        )
        return None
    return restrained(case, case.restraint, free)


def _filled(request: DistortionRequest) -> DistortionRequest:
    """Request with the defaults that depend on its other fields."""
    joint = request.joint
    if isinstance(joint, Butt) and joint.weld.groove in USUAL_ANGLES and joint.weld.groove_angle is None:
        joint = replace(joint, weld=replace(joint.weld, groove_angle=USUAL_ANGLES[joint.weld.groove]))
    step = request.size_step
    if step is None:
        step = usual_step(request.common.units, "leg")
    return replace(request, joint=joint, size_step=step)


def _check(request: DistortionRequest, faults: Faults) -> None:
    """Add every fault of fields that do not fit together."""
    joint, member = request.joint, request.member
    if isinstance(joint, Butt):
        _check_butt(joint, request.length, faults)
    elif isinstance(joint, Tee) and joint.sides == 2 and joint.runs is not None:
        faults.inconsistent("#/joint/runs", "does not apply to a tee with 2 sides; leave it out")
    elif isinstance(joint, Tee) and joint.sides == 1 and joint.width is not None:
        faults.inconsistent("#/joint/width", "applies to a tee with 2 sides only; leave it out")
    if member is not None:
        if request.length is None:
            faults.inconsistent("#/member", "needs length; send it too")
        if (member.second_moment is None) != (member.eccentricity is None):
            missing, given = "eccentricity", "second_moment"
            if member.second_moment is None:
                missing, given = given, missing
            faults.inconsistent(f"#/member/{missing}", f"is required with {given}")
    elif request.heat_input is not None:
        faults.inconsistent("#/heat_input", "needs member; send it too")


def _check_butt(joint: Butt, length: float | None, faults: Faults) -> None:
    """Add every fault of a butt whose fields do not fit together."""
    weld, text = joint.weld, faults.units.text
    if at_least(weld.land, joint.thickness):
        faults.inconsistent(
            "#/joint/weld/land",
            f"must be smaller than the thickness of {text(joint.thickness)}; it is {text(weld.land)}",
        )
    if (weld.face_width is None) != (weld.root_width is None):
        missing, given = "root_width", "face_width"
        if weld.face_width is None:
            missing, given = given, missing
        faults.inconsistent(f"#/joint/weld/{missing}", f"is required with {given}")
    elif weld.face_width is not None and not at_most(weld.root_width or 0.0, weld.face_width):
        faults.inconsistent(
            "#/joint/weld/root_width",
            f"must be at most the face width of {text(weld.face_width)}; it is {text(weld.root_width or 0.0)}."
            " Turn the section over",
        )
    if joint.runs is not None and weld.groove in ("square", "double-v", "double-bevel"):
        faults.inconsistent("#/joint/runs", f"does not apply to a {weld.groove} groove; leave it out")
    if joint.current is not None and length is None:
        faults.inconsistent("#/joint/current", "needs length; send it too")


def _verdict(tolerances: list[ToleranceCheck]) -> Verdict:
    """Out of tolerance where a class required is not kept; estimated where no class is required."""
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
    """Add the estimates and their classes as reasons, and the cautions on what the figures rest on."""
    for name, band in bands.items():
        if band.low is not None and band.high is not None:
            render = remarks.units.angle if name == "angular" else remarks.units.length
            low, high = render(band.low)["text"], render(band.high)["text"]
            label = name.replace("_", " ").capitalize()
            count = f"{len(band.estimates)} method{'s' if len(band.estimates) > 1 else ''}"
            remarks.because(f"{label}: {low if low == high else f'{low} to {high}'} by {count}.")
    for check in tolerances:
        kept = f"keeps class {check.keeps}" if check.keeps else "keeps no class"
        label = check.quantity.replace("_", " ").capitalize()
        remarks.because(f"{label}: the upper end of the band {kept} of ISO 13920.")
    remarks.caution(
        "rough-estimate",
        "Shrinkage is hard to predict: published estimates differ by a factor of two, and none of these formulas was"
        " read in its original publication. Weld a sample and send its result as calibration.",
        TWI,
    )
    single = [name.replace("_", " ") for name, band in judged.items() if len(band.estimates) == 1]
    if single:
        held = " A tolerance is held against twice the estimate." if tolerances else ""
        remarks.caution(
            "one-method",
            f"Only one method covers these results: {', '.join(single)}. Expect from half to twice as much.{held}",
        )
    if bands["angular"].estimates:
        remarks.caution(
            "left-free",
            "The angles are those of parts that turn freely. Clamps and stiffeners reduce them and leave stress in the"
            " joint.",
        )
    if tolerances:
        remarks.caution(
            "later-edition",
            "The tables are those of ISO 13920:1996. The edition of 2023 was not available; check that it does not"
            " differ.",
        )
    if any(check.quantity == "edge_lift" for check in tolerances):
        remarks.caution(
            "flatness-by-width",
            "The lift of a flange's edges is judged by the flatness for its width. The table uses the longer side,"
            " which allows more.",
            table_3_form.LONGER_SIDE,
        )
    joint = request.joint
    runs = joint.runs if isinstance(joint, Butt | Tee) else None
    if runs is not None and runs > 1:
        remarks.caution(
            "runs",
            "Many small runs turn a joint more. Few large runs shorten it more, along and across. Choose by the"
            " distortion that matters.",
            TWI,
        )
    if request.heat_input is not None:
        remarks.caution(
            "heat-of-one-run",
            "The heat input is that of one run, with the arc efficiency included. The heat of equal welds is added up,"
            " which is the safe reading.",
        )
    if not isinstance(joint, Butt):
        if joint.welded_share < 1.0:
            remarks.caution(
                "intermittent",
                "For the shortening and the bow the metal is averaged over the length (common practice, no source). The"
                " angles and the allowances are those of a continuous weld.",
            )
        remarks.caution(
            "alternatives-not-sized",
            "The alternatives keep the throat, or strength_ratio shows what they lose. Their least sizes and the rules"
            " of a code are not checked.",
        )
