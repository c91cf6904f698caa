"""Groove, flare, plug and slot welds of chapter J put together as answers to the questions of a rule set."""

from dataclasses import dataclass

from ...engine.numeric import Real, hypot, magnitude
from ...engine.rounding import SAME
from ...engine.rule_set import GrooveLoad, HoleLimits, PartMetal, WeldMetal
from . import clause, j2_2_flare_grooves, j2_3_plug_slot, j2_4_fillet_strength, table_j2_5_grooves
from .chapter_b3_available_strength import Factors, Method, available, nominal_needed


@dataclass(frozen=True, slots=True)
class AiscGrooveWeld:
    """Groove welds of 360-22 by one method; see ``engine.rule_set.GrooveWeldRules`` for each question."""

    method: Method

    def partial_throat(self, load: GrooveLoad, metal: WeldMetal) -> Real:
        """Throat, mm, for tension or compression square to the axis, for shear, and for both together (Table J2.5)."""
        assert metal.filler is not None  # noqa: S101 - the use case refuses a request without it
        rows = table_j2_5_grooves
        in_tension = load.normal >= 0.0
        factors = rows.WELD_TENSION if in_tension else rows.WELD_COMPRESSION
        normal = nominal_needed(self.method, factors, magnitude(load.normal))
        across = (rows.throat_in_tension if in_tension else rows.throat_in_compression)(
            r_n_req=normal, F_EXX=metal.filler
        )
        shear = nominal_needed(self.method, rows.WELD_SHEAR, hypot(load.transverse, load.longitudinal))
        along = rows.throat_in_shear(r_n_req=shear, F_EXX=metal.filler)
        return rows.required_throat(a_n=across, a_v=along)

    def compression(self, part: PartMetal) -> Real:
        """Strength of the base metal in compression, N/mm (Table J2.5)."""
        assert part.yield_strength is not None  # noqa: S101 - refused before
        nominal = table_j2_5_grooves.base_compression(t=part.design_thickness, F_y=part.yield_strength)
        return available(self.method, table_j2_5_grooves.BASE_COMPRESSION, nominal)

    def flare_throat(self, form: str, radius: float, process: str | None) -> Real:
        """Throat of a flare groove filled flush, mm, by its radius; raises ``Unlisted`` (Table J2.2)."""
        share = j2_2_flare_grooves.radius_share(form, process, radius)
        return j2_2_flare_grooves.flare_throat(k_R=share, R=radius)

    def hole_limits(self, thickness: float, width: float, length: float, filling: float) -> HoleLimits:
        """Least and largest size, filling and pitch of plug and slot welds, mm (J2.3b)."""
        rules = j2_3_plug_slot
        least = rules.least_hole(t=thickness, c=rules.CLEAR, u=rules.SIXTEENTH, same=SAME)
        return HoleLimits(
            least_width=float(least),
            largest_width=float(rules.largest_hole(d_min=least, s=rules.OVER_LEAST, h=filling)),
            longest=float(rules.longest_slot(h=filling)),
            least_filling=float(rules.least_filling(t=thickness, t_f=rules.FILLED_TO, same=SAME)),
            least_pitch=4.0 * width,
            least_pitch_along=2.0 * length,
            source=clause("J2.3b"),
        )

    def hole_strength(self, area: float, metal: WeldMetal) -> Real:
        """Strength of one plug or slot in shear, N (Table J2.5)."""
        assert metal.filler is not None  # noqa: S101 - the use case refuses a request without it
        nominal = j2_3_plug_slot.nominal_shear(F_EXX=metal.filler, A_w=area)
        return self._of_one(nominal, j2_3_plug_slot.SHEAR)

    def hole_fillet_limits(self, thickness: float) -> HoleLimits:
        """No limits: the clauses limit only the effective area (J2.2a and J2.3)."""
        return HoleLimits(source=clause("J2.2a"))

    def hole_fillet_strength(self, area: float, metal: WeldMetal) -> Real:
        """Strength of one fillet around a hole, N; it has every direction, so no increase (Table J2.5)."""
        assert metal.filler is not None  # noqa: S101 - as above
        stress = j2_4_fillet_strength.nominal_stress(F_EXX=metal.filler)
        return self._of_one(
            j2_4_fillet_strength.all_round_shear(F_nw=stress, A_we=area), j2_4_fillet_strength.FILLET_SHEAR
        )

    def _of_one(self, nominal: Real, factors: Factors) -> Real:
        """Strength of one by the method."""
        if self.method == "LRFD":
            return j2_3_plug_slot.design_shear(R_n=nominal, phi=factors.phi)
        return j2_3_plug_slot.allowable_shear(R_n=nominal, Omega=factors.omega)
