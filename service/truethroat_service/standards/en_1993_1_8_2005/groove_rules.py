"""Butt and plug welds of clause 4 put together as answers to the questions of a rule set."""

from dataclasses import dataclass

from ...engine.numeric import Real, hypot
from ...engine.rounding import SAME
from ...engine.rule_set import GrooveLoad, HoleLimits, PartMetal, Unlisted, WeldMetal
from . import clause, s4_5_3_3_simplified, s4_6_hole_fillets, s4_7_butt_welds, s4_8_plug_welds


@dataclass(frozen=True, slots=True)
class EnGrooveWeld:
    """Butt and plug welds by one method; see ``engine.rule_set.GrooveWeldRules`` for each question."""

    directional: bool
    gamma_m2: float

    def partial_throat(self, load: GrooveLoad, metal: WeldMetal) -> Real:
        """Throat, mm, as of a fillet of deep penetration by the rule set's method (4.7.2)."""
        assert metal.base is not None and metal.beta_w is not None  # noqa: S101 - refused before
        if self.directional:
            return s4_7_butt_welds.partial_throat(
                load.normal, load.transverse, load.longitudinal, metal.base, metal.beta_w, self.gamma_m2
            )
        force = hypot(load.normal, hypot(load.transverse, load.longitudinal))
        strength = s4_5_3_3_simplified.shear_strength(f_u=metal.base, beta_w=metal.beta_w, gamma_M2=self.gamma_m2)
        return s4_5_3_3_simplified.required_throat(f=force, f_vw_d=strength)

    def compression(self, part: PartMetal) -> None:
        """None, because a plate in compression is checked as in tension."""
        return

    def flare_throat(self, form: str, radius: float, process: str | None) -> Real:
        """Always raises ``Unlisted``: 4.3.6 covers solid bars only, and a hollow section needs a test."""
        raise Unlisted(
            (
                "weld/kind",
                (
                    "must not be a flare groove: a procedure test must find the throat at a hollow section"
                    f" ({clause('4.3.6, 7.3.1(7)', 'from memory')})"
                ),
            )
        )

    def hole_limits(self, thickness: float, width: float, length: float, filling: float) -> HoleLimits:
        """Least size and filling of plug welds, mm (4.3.5)."""
        rules = s4_8_plug_welds
        return HoleLimits(
            least_width=float(rules.least_hole(t=thickness, d_8=rules.CLEAR)),
            least_filling=float(rules.least_filling(t=thickness, t_16=rules.FILLED_TO, same=SAME)),
            source=clause("4.3.5", "from memory"),
        )

    def hole_strength(self, area: float, metal: WeldMetal) -> Real:
        """Strength of one plug or slot in shear, N (4.8)."""
        assert metal.base is not None and metal.beta_w is not None  # noqa: S101 - refused before
        strength = s4_5_3_3_simplified.shear_strength(f_u=metal.base, beta_w=metal.beta_w, gamma_M2=self.gamma_m2)
        return s4_8_plug_welds.resistance(f_vw_d=strength, A_w=area)

    def hole_fillet_limits(self, thickness: float) -> HoleLimits:
        """Least size of a hole with a fillet around it, mm (4.3.3)."""
        least = s4_6_hole_fillets.least_hole(t=thickness)
        return HoleLimits(least_width=float(least), source=clause("4.3.3", "from memory"))

    def hole_fillet_strength(self, area: float, metal: WeldMetal) -> Real:
        """Strength of one fillet around a hole, N, by the simplified method, the least in any direction (4.6)."""
        assert metal.base is not None and metal.beta_w is not None  # noqa: S101 - refused before
        strength = s4_5_3_3_simplified.shear_strength(f_u=metal.base, beta_w=metal.beta_w, gamma_M2=self.gamma_m2)
        return s4_6_hole_fillets.resistance(f_vw_d=strength, A_we=area)
