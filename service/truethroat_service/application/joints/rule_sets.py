"""The explicit table of rule sets: the one place that composes a rule set from several editions and from practice."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from functools import cache
from math import inf, pi
from types import MappingProxyType
from typing import Any

from ...engine.formula import Source
from ...engine.numeric import Real
from ...engine.rounding import SAME
from ...engine.rule_set import Correlation, FitUp, GrooveOptions, Limit, MetalRules, Reading, RuleSet, Scope
from ...engine.units import KSI
from ...practice import thin_part
from ...standards import (
    aisc_360_22,
    aws_d1_1_2020,
    en_1993_1_1_2005,
    en_1993_1_4_2006,
    en_1993_1_8_2005,
    en_1993_1_12_2007,
    en_1999_1_1_2007,
)
from ...standards.aisc_360_22 import b4_2_design_wall
from ...standards.aisc_360_22 import rules as aisc
from ...standards.aisc_360_22.chapter_b3_available_strength import Method
from ...standards.aisc_360_22.fillet_options import aisc_options
from ...standards.aisc_360_22.groove_rules import AiscGrooveWeld
from ...standards.aws_d1_1_2020 import s4_4_skewed_fillets, s7_21_fit_up
from ...standards.din_en_1993_1_8_na import na_4_5_2_throat
from ...standards.en_1993_1_1_2005 import rules as en_parts
from ...standards.en_1993_1_1_2005 import s6_2_plate_resistance
from ...standards.en_1993_1_4_2006 import s5_1_partial_factors, s6_3_welds
from ...standards.en_1993_1_8_2005 import parameters, s4_1_scope, s4_7_butt_welds
from ...standards.en_1993_1_8_2005 import rules as en
from ...standards.en_1993_1_8_2005.fillet_options import en_options
from ...standards.en_1993_1_8_2005.groove_rules import EnGrooveWeld
from ...standards.en_1993_1_12_2007 import s2_8_fillet_welds
from ...standards.en_1999_1_1_2007 import rules as aluminium
from ...standards.en_1999_1_1_2007 import s6_1_6_heat_affected_zone, table_8_8_weld_metal
from ...standards.en_1999_1_1_2007 import scope as aluminium_scope
from ..core.faults import Faults
from ..core.shape import OneOf
from . import readings

Parameters = Mapping[str, float]


def _leg_added(gap: Real) -> Real:
    """What a root gap adds to the leg, mm, by AWS D1.1:2020 7.21.1."""
    return s7_21_fit_up.leg_added(g=gap, g_free=s7_21_fit_up.FREE_GAP, same=SAME)


def _din_least_throat(thicker: Real) -> tuple[Real, Source]:
    """Least throat, mm, of the German annex by the thicker part."""
    rule = na_4_5_2_throat
    throat = rule.least_throat(t_max=thicker, u=rule.UNIT, c=rule.OFFSET, a_0=rule.LEAST)
    return throat, rule.least_throat.source


# The standards that say nothing about a root gap borrow this rule; see ``readings.BORROWED_GAP``.
FIT_UP = FitUp(_leg_added, s7_21_fit_up.FREE_GAP, s7_21_fit_up.LARGEST_GAP, s7_21_fit_up.FIT_UP)

_AISC_SCOPE = Scope(
    least_thickness=3.0,
    thickness=Limit("parts of 1/8 in (3 mm) and more", aws_d1_1_2020.clause("1.2", "from memory")),
    angles=(s4_4_skewed_fillets.LEAST_ANGLE, 3 * pi / 4),
    angle=Limit(
        "plates at 30 to 135 deg; below 60 deg the weld loses throat at its root, by process and position (Z loss)",
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
_STAINLESS_SCOPE = replace(
    _EN_SCOPE,
    families=("stainless",),
    matching_filler=None,
    largest_yield=s6_3_welds.LARGEST_YIELD,
    steel=s6_3_welds.STEEL,
    grades=s6_3_welds.GRADES,
)
_HIGH_STRENGTH_SCOPE = replace(
    _EN_SCOPE,
    over_yield=s2_8_fillet_welds.OVER_YIELD,
    largest_yield=s2_8_fillet_welds.LARGEST_YIELD,
    steel=s2_8_fillet_welds.STEEL,
    matching_filler=None,
    grades=s2_8_fillet_welds.GRADES,
)
_ALUMINIUM_SCOPE = Scope(
    least_thickness=aluminium_scope.LEAST_THICKNESS,
    thickness=aluminium_scope.THICKNESS,
    angles=aluminium_scope.ANGLES,
    angle=aluminium_scope.ANGLE,
    families=("aluminium",),
    steel=aluminium_scope.METAL,
    grades=aluminium_scope.GRADES,
    plain_section=aluminium_scope.PLAIN_SECTION,
)
_ANY_THICKNESS = Limit("parts of any thickness", Source("", "shop practice", "common practice, no source"))
_THIN_PART_SCOPE = Scope(
    least_thickness=0.0,
    thickness=_ANY_THICKNESS,
    angles=(0.0, inf),
    angle=Limit("plates at any angle", _ANY_THICKNESS.source),
)


_AISC_GROOVES = GrooveOptions(
    details="AWS D1.1:2020",
    bearing=aisc_360_22.clause("Table J2.5, J1.4"),
    full=aisc_360_22.clause("Table J2.5, complete penetration"),
    one_sided=aws_d1_1_2020.clause("eccentricity of one-sided grooves", "from memory"),
    proven=Limit("only for a mechanized, automatic or robotic root pass made as tested", aisc_360_22.clause("J2.1a")),
    backing=Limit("notch-tough (20 ft-lb at 40 F)", aisc_360_22.clause("J2.6")),
)
_EN_GROOVES = GrooveOptions(
    details="ISO 9692-1:2013",
    by_form=True,
    full=s4_7_butt_welds.FULL_PENETRATION,
    partial=s4_7_butt_welds.PARTIAL_PENETRATION,
    tee_butt=s4_7_butt_welds.TEE,
    one_sided=en_1993_1_8_2005.clause("4.12", "from memory"),
)


def _limits(scope: Scope) -> tuple[Limit, ...]:
    """Limits of a scope, in words."""
    every = (
        scope.thickness,
        scope.angle,
        scope.steel,
        scope.grades,
        scope.end_loaded_laps_only,
        scope.matching_filler,
        scope.plain_section,
    )
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
                "AISC J2.2a",
                "AISC J2.2b",
                "AISC J2.3",
                "AISC J2.4",
                "AISC Table J2.5",
                "AISC J2.6",
                "AISC J3.6",
                "AISC J4.1",
                "AISC J4.2",
                "AISC D2",
                "AISC D3",
                "AISC E6.2",
                "AISC G2.4",
                "AWS 7.21.1",
                "AWS Figures 5.1 and 5.2",
            ),
            limits=_limits(_AISC_SCOPE),
            weld=aisc.AiscWeld(method),
            parts=aisc.AiscParts(method),
            edge=aisc.largest_edge_leg,
            fit_up=FIT_UP,
            scope=_AISC_SCOPE,
            groove=aisc.AiscGroove(),
            groove_weld=AiscGrooveWeld(method),
            quality="aws-d1-1-2020",
            metals=MetalRules(
                filler="E70",
                matched_by_group=True,
                hollow_ends=aisc_360_22.clause("J2.4(a)(2)"),
                design_walls=frozenset(b4_2_design_wall.NOMINAL),
            ),
            root_loss=s4_4_skewed_fillets.root_loss,
            parameters=values,
            options=aisc_options(method),
            grooves=_AISC_GROOVES,
            readings=readings.AISC,
        )

    return build


@dataclass(frozen=True, slots=True)
class _Steels:
    """What a standard changes of EN 1993-1-8 for its steels: the metals, their scope, and where that is ruled."""

    scope: Scope
    metals: MetalRules
    edition: str | None = None
    clauses: tuple[str, ...] = ()
    readings: tuple[Reading, ...] = ()


_UP_TO_S460 = _Steels(
    _EN_SCOPE,
    MetalRules(beta_w=Correlation(en_1993_1_8_2005.clause("Table 4.1"))),
    readings=readings.CARBON_STEEL,
)
_STAINLESS = _Steels(
    _STAINLESS_SCOPE,
    MetalRules(beta_w=s6_3_welds.CORRELATION, lesser=s6_3_welds.strength),
    en_1993_1_4_2006.EDITION,
    ("EN 1993-1-4 5.1", "EN 1993-1-4 6.3"),
    readings.STAINLESS,
)
_HIGH_STRENGTH = _Steels(
    _HIGH_STRENGTH_SCOPE,
    MetalRules(filler="G 69", beta_w=s2_8_fillet_welds.CORRELATION, lesser=s2_8_fillet_welds.strength),
    en_1993_1_12_2007.EDITION,
    ("EN 1993-1-12 2.8",),
    readings.HIGH_STRENGTH,
)


def _en(steels: _Steels, *, directional: bool) -> Callable[[str, str, Parameters], RuleSet]:
    """Builder of a rule set of EN 1993-1-8 by one method, for some steels."""
    method = "4.5.3.2" if directional else "4.5.3.3"
    own = () if steels.edition is None else (steels.edition,)

    def build(rule_set_id: str, title: str, values: Parameters) -> RuleSet:
        return RuleSet(
            id=rule_set_id,
            title=title,
            editions=(*own, en_1993_1_8_2005.EDITION, en_1993_1_1_2005.EDITION, aws_d1_1_2020.EDITION),
            clauses=(
                *steels.clauses,
                "EN 4.1",
                "EN 4.3.2",
                "EN 4.4",
                "EN 4.5.1",
                "EN 4.5.2",
                f"EN {method}",
                "EN 4.6",
                "EN 4.7.1",
                "EN 4.7.2",
                "EN 4.7.3",
                "EN 4.8",
                "EN 4.10",
                "EN 4.11",
                "EN 4.12",
                "EN 1993-1-1 6.2",
                "ISO 9692-1",
            ),
            limits=_limits(steels.scope),
            weld=en.EnWeld(directional, values["gamma_m2"]),
            parts=en_parts.EnParts(values["gamma_m0"]),
            edge=thin_part.largest_edge_leg,
            fit_up=FIT_UP,
            scope=steels.scope,
            groove=en.EnGroove(),
            groove_weld=EnGrooveWeld(directional, values["gamma_m2"]),
            quality="iso-5817-c",
            metals=steels.metals,
            parameters=values,
            options=en_options(directional, values["gamma_m2"], {"din-na": _din_least_throat}),
            grooves=_EN_GROOVES,
            size_by="throat",
            readings=(*readings.EN, *steels.readings),
        )

    return build


def _aluminium(rule_set_id: str, title: str, values: Parameters) -> RuleSet:
    """EN 1999-1-1: weld metal by alloy, and the heat-affected zone."""
    return RuleSet(
        id=rule_set_id,
        title=title,
        editions=(en_1999_1_1_2007.EDITION, aws_d1_1_2020.EDITION),
        clauses=("EN 1999-1-1 6.1.6.3", "EN 1999-1-1 8.6.3.1", "EN 1999-1-1 8.6.3.3", "EN 1999-1-1 8.6.3.4"),
        limits=_limits(_ALUMINIUM_SCOPE),
        weld=aluminium.AluminiumWeld(values["gamma_mw"]),
        parts=aluminium.AluminiumParts(values["gamma_mw"]),
        edge=thin_part.largest_edge_leg,
        fit_up=FIT_UP,
        scope=_ALUMINIUM_SCOPE,
        groove=aluminium.AluminiumGroove(),
        quality="iso-5817-c",
        metals=MetalRules(
            filler="ER5356",
            by_alloy=table_8_8_weld_metal.weld_metal_strength,
            softened=s6_1_6_heat_affected_zone.softened,
        ),
        parameters=values,
        size_by="throat",
        readings=readings.ALUMINIUM,
    )


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
        parameters=values,
        readings=readings.THIN_PART,
    )


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of the table: how a rule set is called, built, and what a request may set in it.

    ``parameters`` have the rule set's own values; those in ``also`` have none.
    """

    title: str
    build: Callable[[str, str, Parameters], RuleSet]
    parameters: Parameters = field(default_factory=dict)
    also: tuple[str, ...] = ()

    @property
    def settable(self) -> frozenset[str]:
        """Names of the parameters that a request may set."""
        return frozenset(self.parameters) | frozenset(self.also)


_NATIONAL = MappingProxyType({"gamma_m2": parameters.GAMMA_M2, "gamma_m0": s6_2_plate_resistance.GAMMA_M0})
_OF_STAINLESS = MappingProxyType(
    {
        "gamma_m2": s5_1_partial_factors.GAMMA_M2,
        "gamma_m0": s5_1_partial_factors.GAMMA_M0,
        "beta_w": s6_3_welds.BETA_W,
    }
)
_OF_HIGH_STRENGTH = MappingProxyType({**_NATIONAL, "beta_w": s2_8_fillet_welds.BETA_W})


def _by_both_methods(name: str, title: str, steels: _Steels, *more: Any) -> Mapping[str, Entry]:
    """Two lines of the table: the directional and the simplified method of EN 1993-1-8."""
    return {
        f"{name}-{method}": Entry(f"{title}, {method} method", _en(steels, directional=method == "directional"), *more)
        for method in ("directional", "simplified")
    }


ENTRIES: Mapping[str, Entry] = MappingProxyType(
    {
        "aisc-360-22-lrfd": Entry("AISC 360-22, load and resistance factors", _aisc("LRFD")),
        "aisc-360-22-asd": Entry("AISC 360-22, allowable strength", _aisc("ASD")),
        **_by_both_methods("en-1993-1-8-2005", "EN 1993-1-8:2005", _UP_TO_S460, _NATIONAL, ("beta_w",)),
        **_by_both_methods("en-1993-1-4-2006", "EN 1993-1-4:2006, stainless steels", _STAINLESS, _OF_STAINLESS),
        **_by_both_methods(
            "en-1993-1-12-2007", "EN 1993-1-12:2007, steels over S460 up to S700", _HIGH_STRENGTH, _OF_HIGH_STRENGTH
        ),
        "en-1999-1-1-2007": Entry("EN 1999-1-1:2007, aluminium", _aluminium, {"gamma_mw": aluminium_scope.GAMMA_MW}),
        "thin-part": Entry("Shop practice: by the thinner part", _thin_part),
    }
)


def rule_set(rule_set_id: str, over: Parameters = MappingProxyType({})) -> RuleSet:
    """Rule set of the table with a request's parameters over its own; ``KeyError`` for an id it does not have."""
    entry = ENTRIES[rule_set_id]
    if over:
        return entry.build(rule_set_id, entry.title, {**entry.parameters, **over})
    return _as_published(rule_set_id)


def chosen(rule_set_id: str, parameters: tuple[tuple[str, float], ...], faults: Faults) -> tuple[RuleSet, float | None]:
    """Rule set with the request's parameters over its own, and the beta_w the request sets."""
    given = dict(parameters)
    known = {name: value for name, value in given.items() if name in ENTRIES[rule_set_id].settable}
    for name in [name for name in given if name not in known]:
        faults.inconsistent(f"#/parameters/{name}", f"does not apply to {rule_set_id}; leave it out")
    return rule_set(rule_set_id, known), known.get("beta_w")


@cache
def _as_published(rule_set_id: str) -> RuleSet:
    """Rule set with its own parameters; frozen, so one serves every request."""
    entry = ENTRIES[rule_set_id]
    return entry.build(rule_set_id, entry.title, MappingProxyType(dict(entry.parameters)))


RULE_SET_IDS = OneOf(tuple(ENTRIES), "RuleSetId")
