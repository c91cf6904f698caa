"""Use case: how likely a bead is to crack along its centre or by quick chill, why, and what to change.

The verdict is the worst grade of any factor. Where sources differ, the safer grade is given with its source: the ratio
of width to depth is judged from 1.0 and from 1.25, and the least fillet of AWS D1.1 by the thicker part.
"""

from collections.abc import Iterable
from dataclasses import asdict, dataclass, replace
from math import pi
from typing import get_args

from ...engine.formula import Source, cite, off_the_sheet, working
from ...engine.rounding import at_least, at_most
from ...engine.section import equal_leg, equal_leg_throat
from ...practice import bead_shape
from ...reference.loader import process as process_of
from ...standards.aisc_360_22 import j2_2_fillet_limits
from ...standards.aws_d1_1_2020 import s5_pass_shape, s7_7_least_fillet
from ...standards.din_en_1993_1_8_na import na_4_5_2_throat
from ...standards.en_1011_2_2001 import annex_e_index
from ...standards.en_1993_1_8_2005 import clause as en_1993_1_8
from ...standards.en_1993_1_8_2005 import s4_1_scope
from ...standards.en_1993_1_8_2005.s4_5_1_length import LEAST_THROAT
from ..core.answers import Answered, answered
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.left_out import LeftOut, left_out, or_lacks
from ..core.remarks import Remarks
from ..core.shape import Lacks
from ..core.units import Units
from .answer import (
    BeadShape,
    CrackFactor,
    CrackGrade,
    CrackRiskAnswer,
    FactorName,
    LeastFillet,
    SusceptibilityIndex,
)
from .request import Bead, CrackRiskRequest

RIGHT_ANGLE = pi / 2
LEAST_PART = 3.0
"""Thinnest part, mm (1/8 in), that AWS D1.1 sets a least fillet for."""

GRADES: tuple[CrackGrade, ...] = get_args(CrackGrade)
"""From the best to the worst."""


@dataclass(frozen=True, slots=True)
class _Factor:
    """One factor: its grade, the reason, and what to change."""

    name: FactorName
    grade: CrackGrade
    reason: str
    change: str | None
    source: Source


@dataclass(frozen=True, slots=True)
class _Least:
    """Least size by one rule, mm, as leg and throat."""

    rule: str
    leg: float
    throat: float
    source: Source


def crack_risk(request: CrackRiskRequest) -> Answered[CrackRiskAnswer]:
    """How likely a pass is to crack along its centre or by quick chill, why, and what to change.

    The request and the answer are in engine units: lengths in mm, shares of elements in weight %. The answer holds the
    shape of the bead, the index UCS, the least sizes and a grade for each factor; the reasons are those of the worst
    grade. Raises ``Refused`` with every fault of the request.
    """
    units = Units(request.common.units)
    remarks = Remarks(units)
    _check(request, Faults(units))
    with working() as sheet:
        shape = None if request.bead is None else _shape(request, request.bead)
        index, index_factors = _index(request, shape)
        sizes = _least_sizes(request)
        factors = [
            *_shape_factors(request, shape),
            *index_factors,
            *_face_factors(request, units),
            *_chill_factors(request, sizes, units),
            *_crater_factors(request),
        ]
        for factor in factors:
            cite(factor.source)
        worst = max((factor.grade for factor in factors), key=GRADES.index, default=None)
        for factor in factors:
            if factor.grade == worst:
                remarks.because(factor.reason)
        verdict = _verdict(request, worst, remarks)
        _caution(request, shape, remarks)
    answer = CrackRiskAnswer(
        shape=or_lacks(shape, "needs bead"),
        index=or_lacks(index, "needs weld_metal"),
        least_sizes=tuple(_least_answer(request, size) for size in sizes),
        factors=tuple(
            CrackFactor(factor.name, factor.grade, factor.reason, factor.change, str(factor.source))
            for factor in factors
        ),
    )
    return answered(
        "crack_risk",
        request,
        sheet,
        remarks,
        verdict,
        replace(answer, left_out=(*left_out(answer), *_without_least_sizes(request))),
        rule_set=None,
        parameters={},
    )


def _check(request: CrackRiskRequest, faults: Faults) -> None:
    """Refuse fields that contradict or need another one, and weld metal outside the scope of the index."""
    bead = request.bead
    graded = (bead, request.weld_metal, request.hollow, request.crater, request.leg, request.thickness)
    if all(given is None for given in graded):
        faults.inconsistent("#", "holds nothing to grade; send bead, weld_metal, hollow, crater, or leg with thickness")
    if request.leg is not None and request.thickness is None:
        faults.inconsistent("#/leg", "needs thickness, which decides the least size; send it too")
    if request.leg is not None and request.joint != "fillet":
        faults.inconsistent("#/leg", 'applies to joint "fillet" only; leave it out')
    if request.thickness is not None and request.joint != "fillet":
        faults.inconsistent("#/thickness", 'applies to joint "fillet" only; leave it out')
    for index, thickness in enumerate(request.thickness or ()):
        if not at_least(thickness, LEAST_PART):
            faults.out_of_scope(
                f"#/thickness/{index}",
                f"must be at least {faults.units.text(LEAST_PART)}; AWS D1.1 sets no least fillet for thinner parts",
            )
    if request.low_hydrogen and request.thickness is None:
        faults.inconsistent("#/low_hydrogen", "needs thickness, which decides the least size; send it too")
    if bead is not None and bead.throat is not None and request.joint != "fillet":
        faults.inconsistent("#/bead/throat", 'applies to joint "fillet" only; send width and depth instead')
    if bead is not None and not at_most(bead.face_width or 0.0, bead.width or 0.0):
        faults.inconsistent(
            "#/bead/face_width",
            f"must be at most the width of the bead of {faults.units.text(bead.width or 0.0)}; it is"
            f" {faults.units.text(bead.face_width or 0.0)}",
        )
    if request.weld_metal is not None:
        for element, share in asdict(request.weld_metal).items():
            limits = annex_e_index.RANGES[element]
            if not (at_least(share, limits.least) and at_most(share, limits.most)):
                faults.out_of_scope(
                    f"#/weld_metal/{element}",
                    f"must be from {limits} for the index UCS ({annex_e_index.SCOPE}); it is {share:g} %",
                )
    faults.refuse()


def _verdict(request: CrackRiskRequest, worst: CrackGrade | None, remarks: Remarks) -> Verdict:
    """Worst grade; nothing is called low unless both the shape and the composition were graded."""
    if worst is None:
        return Verdict.ESTIMATED
    missing = [name for name in ("bead", "weld_metal") if getattr(request, name) is None]
    if worst == "low" and missing:
        remarks.because(
            "The risk as a whole is not called low: that takes the shape of the bead and the composition of the weld"
            f" metal. Send {' and '.join(missing)}."
        )
        return Verdict.ESTIMATED
    return Verdict(worst)


def _shape(request: CrackRiskRequest, bead: Bead) -> BeadShape:
    """Shape of a bead that is measured, or of a mitre fillet; the joint decides the ratio to aim at."""
    if bead.throat is not None:
        face = float(bead_shape.face_width(a=bead.throat))
        width, depth = face, float(bead_shape.fillet_depth(a=bead.throat, p=bead.penetration or 0.0))
        bead = Bead(face_width=face)
    else:
        width, depth = bead.width or 0.0, bead.depth or 0.0
    ratio = float(bead_shape.width_to_depth(W=width, D=depth))
    pass_ratio: float | None = None
    if bead.face_width is not None:
        pass_ratio = float(s5_pass_shape.pass_ratio(D=depth, W=width, W_f=bead.face_width))
    return BeadShape(
        width,
        depth,
        ratio,
        least_width_to_depth=bead_shape.LEAST,
        target_width_to_depth=bead_shape.TARGET if request.joint == "butt" else bead_shape.WIDE,
        pass_ratio=or_lacks(pass_ratio, "needs face_width"),
    )


def _shape_factors(request: CrackRiskRequest, shape: BeadShape | None) -> Iterable[_Factor]:
    """Grade of the shape: a bead that is deeper than wide cracks easily; a very shallow one is graded too."""
    if shape is None:
        return
    ratio = f"The bead is {shape.width_to_depth:.3g} times as wide as deep"
    wider = "Raise the voltage, lower the current, or split the bead in two"
    if not at_least(shape.width_to_depth, bead_shape.LEAST):
        yield _Factor(
            "shape",
            "high",
            f"{ratio}. It is deeper than wide, so the last metal to freeze is pulled apart along the centre.",
            f"{wider}, until it is at least {bead_shape.DEEP:g} times as wide as deep.",
            bead_shape.SHAPE,
        )
    elif not at_least(shape.width_to_depth, bead_shape.DEEP):
        yield _Factor(
            "shape",
            "raised",
            f"{ratio}. Some sources allow {bead_shape.LEAST:g}; others ask for at least {bead_shape.DEEP:g}.",
            f"{wider}.",
            bead_shape.DEPTH_TO_WIDTH,
        )
    elif not at_most(shape.width_to_depth, bead_shape.WIDE):
        yield _Factor(
            "shape",
            "raised",
            f"{ratio}. It is wide and shallow: the ratio should not exceed {bead_shape.WIDE:g}.",
            "Weld with more current and less weave.",
            bead_shape.DEPTH_TO_WIDTH,
        )
    else:
        yield _Factor("shape", "low", f"{ratio}.", None, bead_shape.SHAPE)
    if not isinstance(shape.pass_ratio, Lacks) and not at_most(shape.pass_ratio, 1.0):
        yield _Factor(
            "pass-shape",
            "high",
            f"The larger of its depth and width is {shape.pass_ratio:.3g} times the width of its face; AWS D1.1 allows"
            " 1.",
            f"{wider}, or open the groove.",
            s5_pass_shape.PASS_SHAPE,
        )


def _critical(request: CrackRiskRequest, shape: BeadShape | None) -> float:
    """UCS from which this joint is likely to crack; a corner counts as a fillet, whose value is the lower one."""
    critical = annex_e_index.CRITICAL["butt" if request.joint == "butt" else "fillet"]
    if shape is not None and _is_shallow(shape):
        cite(annex_e_index.SHAPE)
        critical += annex_e_index.SHALLOW_GAIN
    return critical


def _is_shallow(shape: BeadShape) -> bool:
    """Whether a bead is shallow enough for the critical UCS to be higher."""
    return bool(at_most(1.0 / shape.width_to_depth, annex_e_index.SHALLOW))


def _index(request: CrackRiskRequest, shape: BeadShape | None) -> tuple[SusceptibilityIndex | None, list[_Factor]]:
    """Index of the weld metal, and its grades."""
    metal = request.weld_metal
    if metal is None:
        return None, []
    carbon = annex_e_index.carbon_counted(C=metal.C, C_0=annex_e_index.LEAST_CARBON)
    ucs = float(annex_e_index.susceptibility(C_u=carbon, S=metal.S, P=metal.P, Nb=metal.Nb, Si=metal.Si, Mn=metal.Mn))
    both = float(bead_shape.sulphur_and_phosphorus(S=metal.S, P=metal.P))
    critical = min(_critical(request, shape), annex_e_index.LOW_RESISTANCE)
    grade: CrackGrade
    cleaner = (
        "Use a cleaner parent steel or filler metal, or reduce the dilution by a smaller bead, a bevel or less current."
    )
    if not at_least(ucs, annex_e_index.HIGH_RESISTANCE):
        grade, place = "low", f"below {annex_e_index.HIGH_RESISTANCE:g} weld metal resists cracking well"
    elif not at_least(ucs, critical):
        grade, place = "raised", f"it is from {annex_e_index.HIGH_RESISTANCE:g} to less than {critical:g}"
    else:
        grade, place = "high", f"from {critical:g} a bead like this is likely to crack"
    factors = [
        _Factor(
            "composition",
            grade,
            f"The UCS of the weld metal is {ucs:.3g}; {place}.",
            None if grade == "low" else cleaner,
            annex_e_index.INDEX,
        )
    ]
    if not at_most(both, bead_shape.SULPHUR_AND_PHOSPHORUS):
        factors.append(
            _Factor(
                "sulphur-and-phosphorus",
                "raised",
                f"Sulphur and phosphorus together are {both:.3g} %, which is more than"
                f" {bead_shape.SULPHUR_AND_PHOSPHORUS:g} %.",
                cleaner,
                bead_shape.SULPHUR,
            )
        )
    index = SusceptibilityIndex(
        ucs=ucs,
        carbon_counted=float(carbon),
        critical=critical,
        high_resistance_below=annex_e_index.HIGH_RESISTANCE,
        low_resistance_above=annex_e_index.LOW_RESISTANCE,
        sulphur_and_phosphorus=both,
        most_sulphur_and_phosphorus=bead_shape.SULPHUR_AND_PHOSPHORUS,
    )
    return index, factors


def _face_factors(request: CrackRiskRequest, units: Units) -> Iterable[_Factor]:
    """Grade of the face: a hollow face is in tension while it shrinks."""
    if request.hollow is None:
        return
    if request.hollow <= 0.0:
        yield _Factor("face", "low", "The face is not hollow.", None, bead_shape.HOLLOW_FACE)
        return
    thin = " The joint cannot give, and a thin, hollow root bead is the one that splits." if request.restrained else ""
    yield _Factor(
        "face",
        "high" if request.restrained else "raised",
        f"The face is hollow by {units.text(request.hollow)}, so it is in tension while it shrinks.{thin}",
        "Lower the voltage and the speed, weld a vertical seam upwards, and lay a slightly convex face.",
        bead_shape.HOLLOW_FACE,
    )


def _least_sizes(request: CrackRiskRequest) -> list[_Least]:
    """Least fillet by each rule that protects against quick chill."""
    if request.thickness is None:
        return []
    thin, thick = min(request.thickness), max(request.thickness)
    legs = {
        "aisc-360-22": (j2_2_fillet_limits.minimum_leg(t=thin), j2_2_fillet_limits.minimum_leg.source),
        "aws-d1-1-2020": (
            s7_7_least_fillet.least_leg(t_thin=thin, t_thick=thick, low_hydrogen=request.low_hydrogen),
            s7_7_least_fillet.least_leg.source,
        ),
    }
    throats = {}
    if at_least(thin, s4_1_scope.LEAST_THICKNESS):
        national = na_4_5_2_throat.least_throat(
            t_max=thick, u=na_4_5_2_throat.UNIT, c=na_4_5_2_throat.OFFSET, a_0=na_4_5_2_throat.LEAST
        )
        throats = {
            "en-1993-1-8-2005": (LEAST_THROAT, en_1993_1_8("4.5.2(2)")),
            "din-en-1993-1-8-na": (float(national), na_4_5_2_throat.least_throat.source),
        }
    with off_the_sheet():
        sizes = [
            _Least(rule, float(leg), float(equal_leg_throat(z=leg, psi=RIGHT_ANGLE)), source)
            for rule, (leg, source) in legs.items()
        ] + [
            _Least(rule, float(equal_leg(a=throat, psi=RIGHT_ANGLE)), throat, source)
            for rule, (throat, source) in throats.items()
        ]
    for size in sizes:
        cite(size.source)
    return sizes


def _chill_factors(request: CrackRiskRequest, sizes: list[_Least], units: Units) -> Iterable[_Factor]:
    """Grade of the size: thick plate chills a small fillet, which then hardens or tears."""
    if request.leg is None:
        return
    short = [size for size in sizes if not at_least(request.leg, size.leg)]
    if not short:
        yield _Factor(
            "size",
            "low",
            "The leg is not smaller than the least leg of any rule listed. That is a least size, and no preheat.",
            None,
            sizes[0].source,
        )
        return
    most = max(short, key=lambda size: size.leg)
    restrained = ", and the joint cannot give" if request.restrained else ""
    yield _Factor(
        "size",
        "high" if request.restrained else "raised",
        f"The leg of {units.text(request.leg)} is smaller than the least leg of"
        f" {', '.join(size.rule for size in short)}, up to {units.length(most.leg, 'up')['text']}. The plate chills so"
        f" little metal quickly{restrained}.",
        f"Lay {units.length(most.leg, 'up')['text']} in the first pass, or preheat.",
        most.source,
    )


def _crater_factors(request: CrackRiskRequest) -> Iterable[_Factor]:
    """Grade of the crater."""
    if request.crater == "unfilled":
        yield _Factor(
            "crater",
            "raised",
            "The crater is left hollow, so it shrinks from all sides and cracks like a star.",
            "Fill the crater: pause, step back, or lower the current gradually. A crater counts in no length until it"
            " is full.",
            bead_shape.CRATER,
        )
    elif request.crater == "filled":
        yield _Factor("crater", "low", "The crater is filled.", None, bead_shape.CRATER)


def _caution(request: CrackRiskRequest, shape: BeadShape | None, remarks: Remarks) -> None:
    """Add the cautions on what the grades rest on, and on what they leave out."""
    remarks.caution(
        "hydrogen-cracks-not-graded",
        "Cracks by hydrogen (cold cracks) are not graded here. They come hours after welding, in thick, hard or held"
        " parts. Ask /v1/heat for the preheat.",
    )
    if request.weld_metal is not None:
        if request.process is None or process_of(request.process).id != "SAW":
            remarks.caution(
                "index-of-submerged-arc",
                "UCS comes from tests on submerged-arc welds. For another process it only shows a tendency.",
                annex_e_index.INDEX,
            )
        remarks.caution(
            "analyse-the-weld-metal",
            "Send the composition of the weld metal as diluted by the plate, not that of the filler metal or the plate."
            " Elements other than these six do not count.",
            annex_e_index.SCOPE,
        )
        if shape is not None and _is_shallow(shape):
            remarks.caution(
                "shallow-bead",
                f"The critical UCS is {annex_e_index.SHALLOW_GAIN:g} higher, because the bead is no deeper than"
                f" {annex_e_index.SHALLOW:g} of its width.",
                annex_e_index.SHAPE,
            )
    if request.joint == "corner" and request.weld_metal is not None:
        remarks.caution(
            "corner-as-fillet",
            "A corner has no critical UCS of its own. The value of a fillet is used, which is the lower one.",
        )
    if request.crater is None:
        remarks.caution(
            "crater",
            "Fill every crater, or end the weld on a run-off tab. A crater that is left hollow cracks.",
            bead_shape.CRATER,
        )


def _least_answer(request: CrackRiskRequest, size: _Least) -> LeastFillet:
    """Least size, and whether the leg given reaches it."""
    enough = None if request.leg is None else bool(at_least(request.leg, size.leg))
    return LeastFillet(size.rule, size.leg, size.throat, enough, str(size.source))


def _without_least_sizes(request: CrackRiskRequest) -> Iterable[LeftOut]:
    """What the least sizes need; their list is empty, not null, where they lack it."""
    if request.thickness is None:
        yield LeftOut("least_sizes", 'needs thickness of joint "fillet"')
