"""Rules of clause 4 that go beyond one fillet under one load, as answers to ``engine.rule_set.FilletOptions``."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from ...engine import loads
from ...engine.formula import Source, cite, off_the_sheet
from ...engine.numeric import Real, where
from ...engine.rounding import SAME
from ...engine.rule_set import (
    Exposure,
    FilletOptions,
    Flange,
    FlangeWidths,
    GapLimit,
    Intermittent,
    Note,
    PartMetal,
    WeldLoad,
    WeldMetal,
)
from ...engine.section import equal_leg
from . import (
    clause,
    s4_3_2_2_intermittent,
    s4_4_packing,
    s4_5_1_length,
    s4_5_3_2_directional,
    s4_5_3_3_simplified,
    s4_10_unstiffened_flange,
    s4_11_long_joints,
    s4_12_single_sided,
)


class EnIntermittent:
    """Intermittent fillets; see ``engine.rule_set.IntermittentRules`` for each question."""

    @property
    def exposure_source(self) -> Source:
        """The clause that rules out corrosive conditions, 4.3.2.2(1)."""
        return clause("4.3.2.2(1)", "from memory")

    @property
    def exposures(self) -> tuple[Exposure, ...]:
        """Exposures that intermittent fillets may have (4.3.2.2(1))."""
        return ("protected",)

    def needs_widths(self, run: Intermittent) -> bool:
        """Whether a limit depends on the widths: in compression, in shear and in built-up members (4.3.2.2(2), (5))."""
        return run.loading != "tension" or run.member == "built-up"

    def notes(self, run: Intermittent) -> tuple[Note, ...]:
        """Caution that the text and the figure of 4.3.2.2(5) differ."""
        if run.member != "built-up":
            return ()
        text = (
            "For the welds at the ends the text of the clause names the narrower part, and its figure both parts. The"
            " wider part is taken."
        )
        return (Note("end-weld", text, clause("4.3.2.2(5) and Figure 4.1", "from memory")),)

    def gap_limits(self, run: Intermittent, parts: tuple[PartMetal, PartMetal]) -> tuple[GapLimit, ...]:
        """Largest gap (4.3.2.2(2)); a segment carries the force of its pitch (4.9(7))."""
        cite(clause("4.9(7)", "from memory"))
        rules, (first, second) = s4_3_2_2_intermittent, parts
        if run.loading == "tension":
            most = rules.gap_in_tension(t=first.thickness, t_1=second.thickness, L_0=rules.MOST)
            return (GapLimit("nearer-gap", float(most), rules.gap_in_tension.source),)
        assert run.widths is not None  # noqa: S101 - the use case refuses a request without them
        most = rules.gap_in_compression(
            t=first.thickness, t_1=second.thickness, b=run.widths[0], b_1=run.widths[1], L_0=rules.MOST
        )
        return (GapLimit("nearer-gap", float(most), rules.gap_in_compression.source),)

    def least_segment(self, leg: float, throat: float) -> tuple[float, Source]:
        """Least length of a segment, mm: 30 mm and six throats (4.5.1(2))."""
        return max(s4_5_1_length.LEAST_LENGTH, 6.0 * throat), s4_5_1_length.counted_throat.source

    def end_weld(self, run: Intermittent) -> tuple[float, Source] | None:
        """Least length of the weld at each end of a built-up member, mm, and its clause (4.3.2.2(5))."""
        if run.member != "built-up":
            return None
        assert run.widths is not None  # noqa: S101 - the use case refuses a request without them
        rule = s4_3_2_2_intermittent.end_weld
        return float(rule(b=run.widths[0], b_1=run.widths[1])), rule.source


class EnEnds:
    """Welds not full size to their ends; see ``engine.rule_set.LengthLossRules`` for each question."""

    def throat(self, needed: Real, length: Real) -> Real:
        """Throat, mm, that carries the load over the length less two throats (4.5.1(1), solved for the throat)."""
        return s4_5_1_length.throat_less_ends(a_req=needed, L=length)

    def left(self, length: Real, throat: Real) -> Real:
        """Length less two throats, mm (4.5.1(1))."""
        return s4_5_1_length.length_less_ends(L=length, a=throat)

    def largest_throat(self, length: Real) -> Real:
        """Largest throat, mm, for which the length that is left may carry load (4.5.1(2))."""
        return s4_5_1_length.largest_throat_less_ends(L=length, L_30=s4_5_1_length.LEAST_LENGTH)


class EnStiffener:
    """Long welds of transverse stiffeners; see ``engine.rule_set.StiffenerRules`` for each question."""

    def factor(self, length: Real) -> Real:
        """Share of the length of a stiffener's weld that counts over 1.7 m (4.11(4))."""
        return s4_11_long_joints.stiffener_factor(L_w=length, L_17=10.0 * s4_11_long_joints.STIFFENER_LENGTH)

    def throat(self, needed: Real, factor: Real) -> Real:
        """Throat, mm, whose reduced strength is that of the throat needed (4.11(4))."""
        return s4_11_long_joints.long_stiffener_throat(a_req=needed, beta_Lw_2=factor)


class EnPacking:
    """Packing in laps; see ``engine.rule_set.PackingRules`` for each question."""

    def added(self, packing: Real, needed: Real) -> Real:
        """Leg, mm, that thin packing adds; 0 for packing that is welded to each part (4.4(2) and (3))."""
        return s4_4_packing.added_leg(t_p=packing, z_req=needed, same=SAME)

    @property
    def source(self) -> Source:
        """The clause of packing, 4.4."""
        return s4_4_packing.added_leg.source


@dataclass(frozen=True, slots=True)
class EnRootBending:
    """Fillets from one side by one method; see ``engine.rule_set.RootBendingRules`` for each question."""

    directional: bool
    gamma_m2: float

    def needed_at(self, load: WeldLoad, metal: WeldMetal, thickness: Real, throat: Real) -> Real:
        """Throat needed, mm, at a throat tried: 4.5.3 with the model of 4.12, for plates at a right angle."""
        assert metal.base is not None and metal.beta_w is not None  # noqa: S101 - refused before
        directional, simplified = s4_5_3_2_directional, s4_5_3_3_simplified
        leg = equal_leg(a=throat, psi=load.psi)
        m_root = s4_12_single_sided.moment(n=load.normal, t_2=thickness, z=leg)
        n_perp = directional.normal_to_throat(n=load.normal, t=load.transverse, psi=load.psi)
        v_perp = directional.shear_across_throat(n=load.normal, t=load.transverse, psi=load.psi)
        n_root = s4_12_single_sided.force_at_root(n_perp=n_perp, m_root=m_root, a=throat)
        if self.directional:
            f_w = directional.equivalent_force(n_perp=n_root, v_perp=v_perp, l=load.longitudinal)
            return directional.required_throat(
                f_w=f_w, n_perp=n_root, f_u=metal.base, beta_w=metal.beta_w, gamma_M2=self.gamma_m2
            )
        f_vw_d = simplified.shear_strength(f_u=metal.base, beta_w=metal.beta_w, gamma_M2=self.gamma_m2)
        across = loads.across(n=n_root, t=v_perp)
        return simplified.required_throat(f=loads.resultant(x=across, l=load.longitudinal), f_vw_d=f_vw_d)

    def required_throat(self, load: WeldLoad, metal: WeldMetal, thickness: Real) -> Real:
        """Throat, mm, that carries the bending it causes, found by bisection.

        The throat needed falls as the throat tried grows, so exactly one throat needs itself. It lies between the need
        of an endless throat, which has no bending, and the need at that throat.
        """
        with off_the_sheet():
            low = self.needed_at(load, metal, thickness, _WITHOUT_END + 0.0 * thickness)
            high = self.needed_at(load, metal, thickness, low)
            for _ in range(_HALVINGS):
                middle = (low + high) / 2.0
                short = self.needed_at(load, metal, thickness, middle) > middle
                low, high = where(short, middle, low), where(short, high, middle)
        return self.needed_at(load, metal, thickness, high)


_WITHOUT_END = 1e9
_HALVINGS = 60


def unstiffened_flange(flange: Flange, parts: tuple[PartMetal, PartMetal], strength: float) -> FlangeWidths:
    """Width of a plate that an unstiffened flange holds, and its resistance (4.10)."""
    rules, (carrier, plate) = s4_10_unstiffened_flange, parts
    assert carrier.yield_strength is not None  # noqa: S101 - refused before
    assert plate.yield_strength is not None and plate.tensile_strength is not None  # noqa: S101 - refused before
    k = rules.flange_share(
        t_f=carrier.thickness, t_p=plate.thickness, f_y_f=carrier.yield_strength, f_y_p=plate.yield_strength
    )
    if flange.section == "box":
        width = rules.effective_width_of_box(t_w=flange.web_thickness, k=k, t_f=carrier.thickness)
    else:
        beside = flange.root_radius
        if flange.weld_throat is not None:
            beside = float(rules.weld_leg(a_w=flange.weld_throat))
        assert beside is not None  # noqa: S101 - the use case refuses a request without either
        width = rules.effective_width(t_w=flange.web_thickness, s=beside, k=k, t_f=carrier.thickness)
    least = rules.least_width(f_y_p=plate.yield_strength, f_u_p=plate.tensile_strength, b_p=flange.plate_width)
    held = min(float(width), flange.plate_width)
    resistance = rules.plate_resistance(b_held=held, r_p=strength)
    return FlangeWidths(float(k), float(width), float(least), float(resistance), rules.least_width.source)


def en_options(
    directional: bool, gamma_m2: float, least_throats: Mapping[str, Callable[[Real], tuple[Real, Source]]]
) -> FilletOptions:
    """Rules that clause 4 has beyond those of every rule set, with the national least throats it is given."""
    return FilletOptions(
        intermittent=EnIntermittent(),
        ends=EnEnds(),
        stiffener=EnStiffener(),
        packing=EnPacking(),
        root_bending=EnRootBending(directional, gamma_m2),
        flange=unstiffened_flange,
        least_throats=least_throats,
    )
