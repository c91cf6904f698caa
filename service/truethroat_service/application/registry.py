"""The explicit table of rule sets: the one place that composes a rule set from several editions and from practice."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from functools import cache
from math import inf, pi
from types import MappingProxyType

from ..engine.formula import Source
from ..engine.numeric import Real
from ..engine.rounding import SAME
from ..engine.rule_set import FitUp, Limit, RuleSet, Scope
from ..engine.units import KSI
from ..practice import thin_part
from ..standards import aisc_360_22, aws_d1_1_2020, en_1993_1_1_2005, en_1993_1_8_2005
from ..standards.aisc_360_22 import rules as aisc
from ..standards.aisc_360_22.chapter_b3_available_strength import Method
from ..standards.aisc_360_22.fillet_options import aisc_options
from ..standards.aisc_360_22.groove_rules import AiscGrooveWeld
from ..standards.aws_d1_1_2020 import s4_4_skewed_fillets, s7_21_fit_up
from ..standards.din_en_1993_1_8_na import na_4_5_2_throat
from ..standards.en_1993_1_1_2005 import rules as en_parts
from ..standards.en_1993_1_1_2005 import s6_2_plate_resistance
from ..standards.en_1993_1_8_2005 import parameters, s4_1_scope
from ..standards.en_1993_1_8_2005 import rules as en
from ..standards.en_1993_1_8_2005.fillet_options import en_options
from ..standards.en_1993_1_8_2005.groove_rules import EnGrooveWeld

Parameters = Mapping[str, float]


def _leg_added(gap: Real) -> Real:
    """What a root gap adds to the leg, mm, by AWS D1.1:2020 7.21.1."""
    return s7_21_fit_up.leg_added(g=gap, g_free=s7_21_fit_up.FREE_GAP, same=SAME)


def _din_least_throat(thicker: Real) -> tuple[Real, Source]:
    """Least throat, mm, of the German annex by the thicker part."""
    rule = na_4_5_2_throat
    throat = rule.least_throat(t_max=thicker, u=rule.UNIT, c=rule.OFFSET, a_0=rule.LEAST)
    return throat, rule.least_throat.source


# EN 1993-1-8 and the shop rule say nothing of a root gap; the whole-gap rule of D1.1 serves all of them.
FIT_UP = FitUp(_leg_added, s7_21_fit_up.FREE_GAP, s7_21_fit_up.LARGEST_GAP, s7_21_fit_up.FIT_UP)

_AISC_SCOPE = Scope(
    least_thickness=3.0,
    thickness=Limit("parts of 1/8 in (3 mm) and more", aws_d1_1_2020.clause("1.2", "from memory")),
    angles=(s4_4_skewed_fillets.LEAST_ANGLE, 3 * pi / 4),
    angle=Limit(
        "plates at 30 to 135 deg; below 60 deg throat is lost at the root by process and position (Z loss)",
        aws_d1_1_2020.clause("4.4.2.6 and its annex", "from memory"),
    ),
    largest_yield=100.0 * KSI,
    steel=Limit("steels up to 100 ksi (690 MPa) yield strength", aws_d1_1_2020.clause("1.2", "from memory")),
)
_EN_SCOPE = Scope(
    least_thickness=s4_1_scope.LEAST_THICKNESS,
    thickness=s4_1_scope.THICKNESS,
    angles=(s4_1_scope.LEAST_ANGLE, s4_1_scope.LARGEST_ANGLE),
    angle=s4_1_scope.ANGLE,
    largest_yield=s4_1_scope.LARGEST_YIELD,
    steel=s4_1_scope.STEEL,
    end_loaded_laps_only=s4_1_scope.END_LOADED,
    matching_filler=s4_1_scope.FILLER,
)
_ANY_THICKNESS = Limit("parts of any thickness", Source("", "shop practice", "common practice, no source"))
_THIN_PART_SCOPE = Scope(
    least_thickness=0.0,
    thickness=_ANY_THICKNESS,
    angles=(0.0, inf),
    angle=Limit("plates at any angle", _ANY_THICKNESS.source),
)


def _limits(scope: Scope) -> tuple[Limit, ...]:
    """Limits of a scope, in words."""
    every = (scope.thickness, scope.angle, scope.steel, scope.end_loaded_laps_only, scope.matching_filler)
    gap = Limit("root gaps up to 3/16 in (4.8 mm) under a fillet", FIT_UP.source)
    return (*(limit for limit in every if limit is not None), gap)


def _aisc(method: Method) -> Callable[[str, str, Parameters], RuleSet]:
    """Builder of a rule set of 360-22 by one method."""

    def build(rule_set_id: str, title: str, values: Parameters) -> RuleSet:
        return RuleSet(
            id=rule_set_id,
            title=title,
            editions=(aisc_360_22.EDITION, aws_d1_1_2020.EDITION),
            clauses=(
                "AISC J2.1",
                "AISC J2.2b",
                "AISC J2.4",
                "AISC J3.6",
                "AISC J4.1",
                "AISC J4.2",
                "AISC D2",
                "AISC D3",
                "AISC E6.2",
                "AISC G2.4",
                "AWS 7.21.1",
            ),
            limits=_limits(_AISC_SCOPE),
            weld=aisc.AiscWeld(method),
            parts=aisc.AiscParts(method),
            edge=aisc.largest_edge_leg,
            fit_up=FIT_UP,
            scope=_AISC_SCOPE,
            groove=aisc.AiscGroove(),
            groove_weld=AiscGrooveWeld(method),
            family="aisc",
            root_loss=s4_4_skewed_fillets.root_loss,
            parameters=values,
            options=aisc_options(method),
        )

    return build


def _en(directional: bool) -> Callable[[str, str, Parameters], RuleSet]:
    """Builder of a rule set of EN 1993-1-8 by one method."""
    method = "4.5.3.2" if directional else "4.5.3.3"

    def build(rule_set_id: str, title: str, values: Parameters) -> RuleSet:
        return RuleSet(
            id=rule_set_id,
            title=title,
            editions=(en_1993_1_8_2005.EDITION, en_1993_1_1_2005.EDITION, aws_d1_1_2020.EDITION),
            clauses=(
                "EN 4.1",
                "EN 4.3.2",
                "EN 4.5.1",
                "EN 4.5.2",
                f"EN {method}",
                "EN 4.7.2",
                "EN 4.10",
                "EN 4.11",
                "EN 4.12",
                "EN 1993-1-1 6.2",
            ),
            limits=_limits(_EN_SCOPE),
            weld=en.EnWeld(directional, values["gamma_m2"]),
            parts=en_parts.EnParts(values["gamma_m0"]),
            edge=thin_part.largest_edge_leg,
            fit_up=FIT_UP,
            scope=_EN_SCOPE,
            groove=en.EnGroove(),
            groove_weld=EnGrooveWeld(directional, values["gamma_m2"]),
            family="en",
            parameters=values,
            options=en_options(directional, values["gamma_m2"], {"din-na": _din_least_throat}),
        )

    return build


def _thin_part(rule_set_id: str, title: str, values: Parameters) -> RuleSet:
    """Shop rule: the fillet by the thinner part."""
    return RuleSet(
        id=rule_set_id,
        title=title,
        editions=(aisc_360_22.EDITION, aws_d1_1_2020.EDITION),
        clauses=("leg of the thinner part", "AISC J2.2b(b) on edges", "AWS 7.21.1"),
        limits=_limits(_THIN_PART_SCOPE),
        weld=None,
        parts=None,
        edge=aisc.largest_edge_leg,
        fit_up=FIT_UP,
        scope=_THIN_PART_SCOPE,
        groove=thin_part.ThinPartGroove(),
        family="practice",
        parameters=values,
    )


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of the table: how a rule set is called, built, and what a request may set in it."""

    title: str
    build: Callable[[str, str, Parameters], RuleSet]
    parameters: Parameters = field(default_factory=dict)


_NATIONAL = MappingProxyType({"gamma_m2": parameters.GAMMA_M2, "gamma_m0": s6_2_plate_resistance.GAMMA_M0})

ENTRIES: Mapping[str, Entry] = MappingProxyType(
    {
        "aisc-360-22-lrfd": Entry("AISC 360-22, load and resistance factors", _aisc("LRFD")),
        "aisc-360-22-asd": Entry("AISC 360-22, allowable strength", _aisc("ASD")),
        "en-1993-1-8-2005-directional": Entry("EN 1993-1-8:2005, directional method", _en(directional=True), _NATIONAL),
        "en-1993-1-8-2005-simplified": Entry("EN 1993-1-8:2005, simplified method", _en(directional=False), _NATIONAL),
        "thin-part": Entry("Shop practice: by the thinner part", _thin_part),
    }
)


def rule_set(rule_set_id: str, over: Parameters = MappingProxyType({})) -> RuleSet:
    """Rule set of the table with a request's parameters over its own; ``KeyError`` for an id it does not have."""
    entry = ENTRIES[rule_set_id]
    if over:
        return entry.build(rule_set_id, entry.title, {**entry.parameters, **over})
    return _as_published(rule_set_id)


@cache
def _as_published(rule_set_id: str) -> RuleSet:
    """Rule set with its own parameters; frozen, so one serves every request."""
    entry = ENTRIES[rule_set_id]
    return entry.build(rule_set_id, entry.title, MappingProxyType(dict(entry.parameters)))
