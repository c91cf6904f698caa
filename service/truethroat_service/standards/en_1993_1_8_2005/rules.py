"""Section 4 as answers to the questions of a rule set; ``engine.rule_set`` says what each question asks for."""

from dataclasses import dataclass

from ...engine.formula import Source
from ...engine.numeric import Real, maximum, where
from ...engine.rounding import SAME
from ...engine.rule_set import Groove, WeldLoad, WeldMetal
from ...engine.section import equal_leg, equal_leg_throat
from . import clause, s4_5_1_length, s4_5_3_2_directional, s4_5_3_3_simplified, s4_11_long_joints


@dataclass(frozen=True, slots=True)
class EnWeld:
    """Fillet rules of clause 4 by one method; see ``engine.rule_set.WeldRules`` for each question."""

    directional: bool
    gamma_m2: float

    def required_throat(self, load: WeldLoad, metal: WeldMetal) -> Real:
        """Throat, mm, by the directional method (4.5.3.2) or the simplified one (4.5.3.3)."""
        assert metal.base is not None and metal.beta_w is not None  # noqa: S101 - refused before
        if not self.directional:
            f_vw_d = s4_5_3_3_simplified.shear_strength(f_u=metal.base, beta_w=metal.beta_w, gamma_M2=self.gamma_m2)
            return s4_5_3_3_simplified.required_throat(f=load.resultant, f_vw_d=f_vw_d)
        rules = s4_5_3_2_directional
        n_perp = rules.normal_to_throat(n=load.normal, t=load.transverse, psi=load.psi)
        v_perp = rules.shear_across_throat(n=load.normal, t=load.transverse, psi=load.psi)
        f_w = rules.equivalent_force(n_perp=n_perp, v_perp=v_perp, l=load.longitudinal)
        return rules.required_throat(
            f_w=f_w, n_perp=n_perp, f_u=metal.base, beta_w=metal.beta_w, gamma_M2=self.gamma_m2
        )

    def minimum_leg(self, thinner: Real, psi: Real) -> tuple[Real, Source]:
        """Least leg, mm: that of a throat of 3 mm (4.5.2(2))."""
        return equal_leg(a=s4_5_1_length.LEAST_THROAT, psi=psi), clause("4.5.2(2)")

    def long_weld_leg(self, throat: Real, length: Real, psi: Real, penetration: Real) -> Real:
        """Leg, mm, whose throat carries the load with the long-weld reduction (4.11(3), solved for the throat)."""
        long_throat = s4_11_long_joints.long_weld_throat(a_req=throat, L=length)
        return equal_leg(a=long_throat - penetration, psi=psi)

    def long_weld_factor(self, leg: Real, length: Real, psi: Real, penetration: Real) -> Real:
        """Share of the length that counts over 150 throats (4.11(3))."""
        throat = equal_leg_throat(z=leg, psi=psi) + penetration
        return s4_11_long_joints.length_factor(L=length, a=throat)

    def counted_leg(self, leg: Real, length: Real, psi: Real, penetration: Real = 0.0) -> Real:
        """Leg that counts, mm; 0 on a weld under 30 mm or six throats (4.5.1(2)), penetration included (4.5.2(3))."""
        throat = equal_leg_throat(z=leg, psi=psi) + penetration
        counted = s4_5_1_length.counted_throat(a=throat, L=length, L_30=s4_5_1_length.LEAST_LENGTH, same=SAME)
        return where(counted > 0.0, leg, 0.0 * leg)

    def largest_counted_leg(self, length: Real, psi: Real, penetration: Real = 0.0) -> Real:
        """Leg, mm, of a throat of a sixth of the length, over which the weld may carry no load (4.5.1(2))."""
        throat = s4_5_1_length.largest_throat(L=length, L_30=s4_5_1_length.LEAST_LENGTH, same=SAME)
        return equal_leg(a=maximum(throat - penetration, 0.0 * throat), psi=psi)

    @property
    def least_length_source(self) -> Source:
        """The clause of the least length, 4.5.1(2)."""
        return s4_5_1_length.counted_throat.source


@dataclass(frozen=True, slots=True)
class EnGroove:
    """Partial-penetration groove rules; see ``engine.rule_set.GrooveRules``."""

    face_counts: bool = False
    by_test: Source = clause("4.7.2")

    def deduction(self, groove: Groove) -> tuple[float, Source]:
        """No fixed deduction, and its clause: the throat is the depth that is achieved consistently (4.7.2)."""
        return 0.0, self.by_test

    def minimum_throat(self, thinner: float) -> tuple[float, Source]:
        """Throat of 3 mm (4.5.2(2)): a partial penetration is resisted as a fillet of deep penetration (4.7.2)."""
        return s4_5_1_length.LEAST_THROAT, clause("4.5.2(2), by 4.7.2")
