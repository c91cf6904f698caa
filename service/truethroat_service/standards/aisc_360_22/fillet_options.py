"""Rules of 360-22 that go beyond one fillet under one load, as answers to ``engine.rule_set.FilletOptions``."""

from dataclasses import dataclass

from ...engine.formula import Source, about
from ...engine.numeric import Flag, Real
from ...engine.rule_set import Exposure, FilletOptions, GapLimit, Intermittent, Note, PartMetal, TensionStrength
from . import clause, d3_shear_lag, j2_2_intermittent, j2_4_concentric_groups, j3_6_spacing
from .chapter_b3_available_strength import Factors, Method
from .j4_base_metal import TENSION_RUPTURE, TENSION_YIELD


class AiscIntermittent:
    """Intermittent fillets; see ``engine.rule_set.IntermittentRules`` for each question."""

    @property
    def exposure_source(self) -> Source:
        """The clause that covers painted parts, parts that do not corrode, and weathering steel, J3.6."""
        return clause("J3.6")

    @property
    def exposures(self) -> tuple[Exposure, ...]:
        """Exposures that intermittent fillets may have (J3.6)."""
        return ("protected", "weathering-steel")

    def needs_widths(self, run: Intermittent) -> bool:
        """False, because no limit depends on the widths."""
        return False

    def notes(self, run: Intermittent) -> tuple[Note, ...]:
        """Cautions: G2.4(c) was not read in print, and J3.6 leaves open how staggered segments are spaced."""
        if run.member == "stiffener":
            text = "The limits of 16 web thicknesses and 10 in are from memory. Check them in the standard."
            return (Note("recalled-limit", text, clause("G2.4(c)", "from memory")),)
        text = "The spacing is measured from centre to centre of segments, staggered or not, which allows less gap."
        return (Note("spacing-by-pitch", text),)

    def gap_limits(self, run: Intermittent, parts: tuple[PartMetal, PartMetal]) -> tuple[GapLimit, ...]:
        """Limits of the gap: G2.4(c) at a stiffener, J3.6 in a built-up member, and E6.2 with it in compression."""
        rules = j3_6_spacing
        if run.member == "stiffener":
            gap = rules.stiffener_gap(t_w=parts[0].thickness, e_0=rules.MOST_AT_STIFFENER)
            return (GapLimit("gap", float(gap), rules.stiffener_gap.source),)
        k_t, s_0 = rules.WEATHERING if run.exposure == "weathering-steel" else rules.PROTECTED
        thinner = min(float(part.thickness) for part in parts)
        spacing = rules.connector_spacing(k_t=k_t, t=thinner, s_0=s_0)
        limits = [GapLimit("pitch", float(spacing), rules.connector_spacing.source)]
        if run.loading == "compression":
            limits.append(GapLimit("pitch", _in_compression(parts), rules.compression_spacing.source))
        return tuple(limits)

    def least_segment(self, leg: float, throat: float) -> tuple[float, Source]:
        """Least length of a segment, mm, and its clause (J2.2b(e))."""
        rule = j2_2_intermittent.least_segment
        return float(rule(w=leg, l_0=j2_2_intermittent.LEAST_SEGMENT)), rule.source

    def end_weld(self, run: Intermittent) -> None:
        """None, because the ends need no more than a segment."""
        return


def _in_compression(parts: tuple[PartMetal, PartMetal]) -> float:
    """Largest spacing in compression, mm (E6.2). Either part may be the outside plate, so the lesser holds."""
    rules, found = j3_6_spacing, []
    for number, part in enumerate(parts, start=1):
        assert part.yield_strength is not None  # noqa: S101 - refused before
        with about(f"part {number}"):
            spacing = rules.compression_spacing(
                t=part.thickness, E=rules.ELASTIC, F_y=part.yield_strength, s_0=rules.MOST_IN_COMPRESSION
            )
        found.append(float(spacing))
    return min(found)


class AiscConcentric:
    """Concentric groups; see ``engine.rule_set.ConcentricRules`` for each question."""

    @property
    def weights(self) -> tuple[float, float]:
        """Weights of a length along the force and of one across it (Eq. J2-6)."""
        return (0.85, 1.5)

    def equivalent_length(self, along: Real, across: Real, compatible: Flag) -> Real:
        """Length along the force that is as strong as the group, mm: the better of both sums (J2.4(b))."""
        return j2_4_concentric_groups.equivalent_length(L_l=along, L_t=across, compatible=compatible)


@dataclass(frozen=True, slots=True)
class AiscTensionMember:
    """Chapter D by one method; see ``engine.rule_set.TensionMemberRule``."""

    method: Method

    def __call__(
        self, part: PartMetal, area: float, length: float, width: float, eccentricity: float
    ) -> TensionStrength:
        """Strength of a member held by longitudinal welds alone, with its shear lag (D2, D3 and Table D3.1, case 4)."""
        assert part.yield_strength is not None and part.tensile_strength is not None  # noqa: S101 - refused before
        rules = d3_shear_lag
        factor = rules.shear_lag(l=length, w=width, x_bar=eccentricity)
        effective = rules.effective_area(A_n=area, U=factor)
        by_yield = rules.tension_yield(F_y=part.yield_strength, A_g=area)
        by_rupture = rules.tension_rupture(F_u=part.tensile_strength, A_e=effective)
        return TensionStrength(
            float(factor),
            float(effective),
            self._available(TENSION_YIELD, by_yield),
            self._available(TENSION_RUPTURE, by_rupture),
        )

    def _available(self, factors: Factors, nominal: Real) -> float:
        """Available strength, N."""
        if self.method == "LRFD":
            return float(d3_shear_lag.design_tension(P_n=nominal, phi=factors.phi))
        return float(d3_shear_lag.allowable_tension(P_n=nominal, Omega=factors.omega))


def aisc_options(method: Method) -> FilletOptions:
    """Rules that 360-22 has beyond those of every rule set."""
    return FilletOptions(
        intermittent=AiscIntermittent(),
        concentric=AiscConcentric(),
        tension_member=AiscTensionMember(method),
        instantaneous_centre=True,
        penetration=Note(
            "proven-penetration",
            "Proven penetration counts only for a mechanized, automatic or robotic root pass, made with the current and"
            " travel speed of the test.",
            clause("J2.2a"),
        ),
        lap_overlap=_lap_overlap,
        packing_elsewhere="fillers have rules of their own in AISC 360-22 J5, which are not covered",
    )


def _lap_overlap(thinner: Real) -> tuple[Real, Source]:
    """Least overlap of a lap by its thinner part, mm, and its clause (J2.2b(f))."""
    rule = j2_2_intermittent.least_overlap
    return rule(t=thinner, l_0=j2_2_intermittent.LEAST_OVERLAP), rule.source
