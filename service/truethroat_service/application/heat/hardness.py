"""Hardness beside a weld as a band around two models, compared with the limit of a steel group."""

from ...engine.formula import Formula, about, cite
from ...engine.rounding import at_least, at_most
from ...practice import hardness as models
from ...standards.en_1011_2_2001 import c_3_method_b
from ...standards.iso_15614_1_2017 import hardness_limits
from ..core.left_out import or_lacks
from ..core.remarks import Remarks
from ..core.shape import Band
from .answer import HardnessBesideWeld, HardnessStanding, ModelHardness
from .steel import Composition, Lacking, shares


def hardness(
    composition: Composition, time: Band, group: int | None, heat_treated: bool, remarks: Remarks
) -> HardnessBesideWeld:
    """Hardness HV10 over a band of cooling times, s; raises :class:`Lacking` for a steel outside the models."""
    _check(composition)
    known = shares(composition, models.ELEMENTS)
    dueren, yurioka = _dueren(known, time), _yurioka(known, time)
    least = min(dueren.least, yurioka.least) - models.MARGIN
    most = max(dueren.most, yurioka.most) + models.MARGIN
    remarks.caution(
        "hardness-scatter",
        f"No model of hardness is more accurate than {models.MARGIN:g} HV; the band is that much wider on either side.",
        models.SCATTER,
    )
    if composition.share("B"):
        remarks.caution("boron-hardens", "Boron hardens the steel more than either model counts. Measure the hardness.")
    limit: float | None = None
    standing: HardnessStanding | None = None
    if group is not None:
        cite(hardness_limits.LIMITS)
        limit = hardness_limits.largest_hardness(group, heat_treated)
        standing = "within" if at_most(most, limit) else "over" if not at_least(limit, least) else "open"
    needs = "needs steel_group"
    return HardnessBesideWeld(
        dueren,
        yurioka,
        Band(least, most),
        limit=or_lacks(limit, needs),
        standing=or_lacks(standing, needs),
        source=or_lacks(None if group is None else str(hardness_limits.LIMITS), needs),
    )


def _check(composition: Composition) -> None:
    """Raise :class:`Lacking` for a steel outside the models; the limits of method B serve as theirs."""
    for element, share in composition.known(c_3_method_b.COMPOSITION).items():
        limits = c_3_method_b.COMPOSITION[element]
        if not (at_least(share, limits.least) and at_most(share, limits.most)):
            raise Lacking(f"needs a steel with {element} of {limits} ({c_3_method_b.SCOPE})")


def _of(known: dict[str, float], formula: Formula[...]) -> float:
    """Value of a formula whose arguments are shares of elements."""
    return float(formula(**{element: known[element] for element in formula.args}))


def _dueren(known: dict[str, float], time: Band) -> ModelHardness:
    """Hardness by Dueren."""
    carbon, worth = known["C"], _of(known, models.alloying)
    martensite = models.dueren_martensite(C=carbon)
    bainite = models.dueren_bainite(C=carbon, X=worth)
    ends = []
    for seconds in (time.most, time.least):
        with about(f"{seconds:.4g} s"):
            mixed = models.dueren_mixed(C=carbon, X=worth, t=seconds, s_1=models.SECOND)
            ends.append(float(models.dueren(HV_x=mixed, HV_M=martensite, HV_B=bainite)))
    return ModelHardness(ends[0], ends[1], float(martensite), float(bainite))


def _yurioka(known: dict[str, float], time: Band) -> ModelHardness:
    """Hardness by Yurioka."""
    first = _of(known, models.equivalent_martensite)
    second = _of(known, models.equivalent_bainite)
    third = _of(known, models.equivalent_end)
    martensite = models.yurioka_martensite(C=known["C"])
    bainite = models.yurioka_bainite(CE_2=second)
    t_M = models.time_to_martensite(CE_1=first, s_1=models.SECOND)
    t_B = models.time_without_martensite(CE_3=third, s_1=models.SECOND)
    ends = []
    for seconds in (time.most, time.least):
        with about(f"{seconds:.4g} s"):
            ends.append(float(models.yurioka(H_M=martensite, H_B=bainite, t=seconds, t_M=t_M, t_B=t_B)))
    return ModelHardness(ends[0], ends[1], float(martensite), float(bainite))
