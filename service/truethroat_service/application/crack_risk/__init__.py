"""Use case: how likely a bead is to crack along its centre or by quick chill, why, and what to change."""

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
    """One reason to expect a crack, or none."""

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

    Lengths are in mm, shares of elements in weight %. Raises ``Refused`` with every fault found.
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
    """Refuse what contradicts or needs another field, and weld metal beyond the index."""
    bead = request.bead
    graded = (bead, request.weld_metal, request.hollow, request.crater, request.leg, request.thickness)
    if all(given is None for given in graded):
        faults.inconsistent("#", "nothing to grade: send a bead, weld_metal, hollow, crater, or leg with thickness")
    if request.leg is not None and request.thickness is None:
        faults.inconsistent("#/leg", "a least size goes by the parts: send thickness")
    if request.leg is not None and request.joint != "fillet":
        faults.inconsistent("#/leg", 'a leg goes with joint "fillet"')
    if request.thickness is not None and request.joint != "fillet":
        faults.inconsistent("#/thickness", 'least sizes are those of a fillet: joint "fillet"')
    for index, thickness in enumerate(request.thickness or ()):
        if not at_least(thickness, LEAST_PART):
            faults.out_of_scope(
                f"#/thickness/{index}", f"least fillets are set for parts of {faults.units.text(LEAST_PART)} and more"
            )
    if request.low_hydrogen and request.thickness is None:
        faults.inconsistent("#/low_hydrogen", "it counts for the least size: send thickness")
    if bead is not None and bead.throat is not None and request.joint != "fillet":
        faults.inconsistent("#/bead/throat", 'a mitre fillet goes with joint "fillet"; send width and depth')
    if bead is not None and not at_most(bead.face_width or 0.0, bead.width or 0.0):
        faults.inconsistent("#/bead/face_width", "it is over the greatest width of the bead")
    if request.weld_metal is not None:
        for element, share in asdict(request.weld_metal).items():
            limits = annex_e_index.RANGES[element]
            if not (at_least(share, limits.least) and at_most(share, limits.most)):
                faults.out_of_scope(
                    f"#/weld_metal/{element}",
                    f"UCS holds for weld metal with {element} of {limits} ({annex_e_index.SCOPE}); here {share:g}",
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
    """Shape of a bead, measured or of a mitre fillet; what is aimed at goes by the joint."""
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
    """Grade of the shape: deeper than wide is bad, and so is very shallow."""
    if shape is None:
        return
    ratio = f"The bead is {shape.width_to_depth:.3g} times as wide as deep"
    wider = "Raise the voltage, lower the current, or split the bead in two"
    if not at_least(shape.width_to_depth, bead_shape.LEAST):
        yield _Factor(
            "shape",
            "high",
            f"{ratio}: deeper than wide, so that the last metal to freeze is pulled apart along its centre.",
            f"{wider}, until it is at least {bead_shape.DEEP:g} times as wide as deep.",
            bead_shape.SHAPE,
        )
    elif not at_least(shape.width_to_depth, bead_shape.DEEP):
        yield _Factor(
            "shape",
            "raised",
            f"{ratio}: allowed from {bead_shape.LEAST:g}, but deeper than {bead_shape.DEEP:g} asks for.",
            f"{wider}.",
            bead_shape.DEPTH_TO_WIDTH,
        )
    elif not at_most(shape.width_to_depth, bead_shape.WIDE):
        yield _Factor(
            "shape",
            "raised",
            f"{ratio}: more than {bead_shape.WIDE:g}, wide and shallow.",
            "Weld with more current and less weave.",
            bead_shape.DEPTH_TO_WIDTH,
        )
    else:
        yield _Factor("shape", "low", f"{ratio}.", None, bead_shape.SHAPE)
    if not isinstance(shape.pass_ratio, Lacks) and not at_most(shape.pass_ratio, 1.0):
        yield _Factor(
            "pass-shape",
            "high",
            f"Its depth or width is {shape.pass_ratio:.3g} times the width of its face; AWS D1.1 allows 1.",
            f"{wider}, or open the groove.",
            s5_pass_shape.PASS_SHAPE,
        )


def _critical(request: CrackRiskRequest, shape: BeadShape | None) -> float:
    """UCS from which this joint is likely to crack; a corner is taken as a fillet, the lower of the two."""
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
    cleaner = "Use a cleaner parent or filler, dilute less: a smaller bead, a bevel, less current."
    if not at_least(ucs, annex_e_index.HIGH_RESISTANCE):
        grade, place = "low", f"under {annex_e_index.HIGH_RESISTANCE:g}, which resists well"
    elif not at_least(ucs, critical):
        grade, place = "raised", f"from {annex_e_index.HIGH_RESISTANCE:g} and under {critical:g}"
    else:
        grade, place = "high", f"from {critical:g} on a bead like this is likely to crack"
    factors = [
        _Factor(
            "composition",
            grade,
            f"UCS of the weld metal is {ucs:.3g}: {place}.",
            None if grade == "low" else cleaner,
            annex_e_index.INDEX,
        )
    ]
    if not at_most(both, bead_shape.SULPHUR_AND_PHOSPHORUS):
        factors.append(
            _Factor(
                "sulphur-and-phosphorus",
                "raised",
                f"S and P together are {both:.3g} %, more than {bead_shape.SULPHUR_AND_PHOSPHORUS:g} %.",
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
    """Grade of the face: a hollow one is in tension as it shrinks."""
    if request.hollow is None:
        return
    if request.hollow <= 0.0:
        yield _Factor("face", "low", "The face is not hollow.", None, bead_shape.HOLLOW_FACE)
        return
    thin = " on a joint that cannot give: a thin, hollow root bead is the one that splits" if request.restrained else ""
    yield _Factor(
        "face",
        "high" if request.restrained else "raised",
        f"The face is hollow by {units.text(request.hollow)}, so it is in tension as it shrinks{thin}.",
        "Lower the voltage and the speed, weld a vertical seam upwards, and lay a slightly convex face.",
        bead_shape.HOLLOW_FACE,
    )


def _least_sizes(request: CrackRiskRequest) -> list[_Least]:
    """Least fillet by each rule that guards against quick chill."""
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
    """Grade of the size: too little metal beside thick plate is chilled, and hardens or tears."""
    if request.leg is None:
        return
    short = [size for size in sizes if not at_least(request.leg, size.leg)]
    if not short:
        yield _Factor(
            "size",
            "low",
            "The leg is not under the least of any rule listed. That is a least size, and no preheat.",
            None,
            sizes[0].source,
        )
        return
    most = max(short, key=lambda size: size.leg)
    restrained = " on a joint that cannot give" if request.restrained else ""
    yield _Factor(
        "size",
        "high" if request.restrained else "raised",
        f"A leg of {units.text(request.leg)} is under {units.length(most.leg, 'up')['text']}, the least of"
        f" {', '.join(size.rule for size in short)}: so little metal is chilled by the plate{restrained}.",
        f"Lay {units.length(most.leg, 'up')['text']} in the first pass, or preheat.",
        most.source,
    )


def _crater_factors(request: CrackRiskRequest) -> Iterable[_Factor]:
    """Grade of the crater."""
    if request.crater == "unfilled":
        yield _Factor(
            "crater",
            "raised",
            "The crater is left hollow: it shrinks on all sides and cracks like a star.",
            "Dwell or step back to fill it, or slope the current down; a crater counts in no length until it is full.",
            bead_shape.CRATER,
        )
    elif request.crater == "filled":
        yield _Factor("crater", "low", "The crater is filled.", None, bead_shape.CRATER)


def _caution(request: CrackRiskRequest, shape: BeadShape | None, remarks: Remarks) -> None:
    """Say what the grades rest on, and what they leave out."""
    remarks.caution(
        "hydrogen-cracks-not-graded",
        "Cracks by hydrogen (cold cracks) are not graded here. They come hours after welding, in thick, hard or held"
        " parts. Ask /v1/heat for the preheat.",
    )
    if request.weld_metal is not None:
        if request.process is None or process_of(request.process).id != "SAW":
            remarks.caution(
                "index-of-submerged-arc",
                "UCS was found on submerged-arc welds; for another process it only shows which way things go.",
                annex_e_index.INDEX,
            )
        remarks.caution(
            "analyse-the-weld-metal",
            "The composition is that of the weld metal as diluted, not of the filler or the plate; alloys beyond these"
            " six elements are not counted.",
            annex_e_index.SCOPE,
        )
        if shape is not None and _is_shallow(shape):
            remarks.caution(
                "shallow-bead",
                f"The critical UCS is {annex_e_index.SHALLOW_GAIN:g} higher for a depth of up to"
                f" {annex_e_index.SHALLOW:g} of the width.",
                annex_e_index.SHAPE,
            )
    if request.joint == "corner" and request.weld_metal is not None:
        remarks.caution(
            "corner-as-fillet", "A corner has no UCS value of its own: that of a fillet, the lower, is used."
        )
    if request.crater is None:
        remarks.caution(
            "crater", "Fill every crater, or run out on a tab: what is left hollow cracks.", bead_shape.CRATER
        )


def _least_answer(request: CrackRiskRequest, size: _Least) -> LeastFillet:
    """Least size, and whether the leg given has it."""
    enough = None if request.leg is None else bool(at_least(request.leg, size.leg))
    return LeastFillet(size.rule, size.leg, size.throat, enough, str(size.source))


def _without_least_sizes(request: CrackRiskRequest) -> Iterable[LeftOut]:
    """Say what least sizes need where there are none: their list is empty then, not null."""
    if request.thickness is None:
        yield LeftOut("least_sizes", 'needs thickness, of joint "fillet"')
