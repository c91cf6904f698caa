"""Chapter J as answers to the questions of a rule set; ``engine.rule_set`` says what each question asks for."""

from dataclasses import dataclass

from ...engine.formula import Source
from ...engine.numeric import Real, minimum
from ...engine.rounding import SAME
from ...engine.rule_set import Groove, PartMetal, WeldLoad, WeldMetal
from . import (
    clause,
    j2_1_partial_penetration,
    j2_2_fillet_limits,
    j2_4_fillet_strength,
    j4_base_metal,
)
from .chapter_b3_available_strength import Method, available, nominal_needed


@dataclass(frozen=True, slots=True)
class AiscWeld:
    """Fillet rules of 360-22 by one method; see ``engine.rule_set.WeldRules`` for each question."""

    method: Method

    def required_throat(self, load: WeldLoad, metal: WeldMetal) -> Real:
        """Throat, mm, by the nominal stress of the filler metal and the directional increase (J2.4 and Table J2.5)."""
        assert metal.filler is not None  # noqa: S101 - the use case refuses a request without it
        k_ds = j2_4_fillet_strength.directional_factor(theta=load.theta, compatible=metal.compatible)
        f_nw = j2_4_fillet_strength.nominal_stress(F_EXX=metal.filler)
        needed = nominal_needed(self.method, j2_4_fillet_strength.FILLET_SHEAR, load.resultant)
        return j2_4_fillet_strength.required_throat(r_n_req=needed, F_nw=f_nw, k_ds=k_ds)

    def minimum_leg(self, thinner: Real, psi: Real) -> tuple[Real, Source]:
        """Least leg, mm, by the thinner part (J2.2b(a), Table J2.4)."""
        return j2_2_fillet_limits.minimum_leg(t=thinner), j2_2_fillet_limits.minimum_leg.source

    def long_weld_leg(self, throat: Real, length: Real, psi: Real, penetration: Real) -> Real:
        """Leg, mm, whose throat carries the load with the long-weld reduction (J2.2b(d), solved for the leg)."""
        rules = j2_2_fillet_limits
        w_a = rules.leg_at_full_length(a_req=throat, psi=psi, p=penetration)
        b = rules.linear_term(a_req=throat, L=length, psi=psi, p=penetration)
        w_b = rules.leg_at_reduced_length(b=b, L=length, psi=psi, p=penetration)
        w_c = rules.leg_at_180_legs(a_req=throat, L=length, psi=psi, p=penetration)
        return rules.long_weld_leg(w_a=w_a, w_b=w_b, w_c=w_c, L=length)

    def long_weld_factor(self, leg: Real, length: Real, psi: Real, penetration: Real) -> Real:
        """Share of the length that counts over 100 legs (J2.2b(d))."""
        return j2_2_fillet_limits.length_factor(L=length, w=leg)

    def counted_leg(self, leg: Real, length: Real, psi: Real, penetration: Real = 0.0) -> Real:
        """Leg that counts, mm: at most a quarter of the length (J2.2b(c))."""
        return j2_2_fillet_limits.counted_leg(w=leg, L=length)

    def largest_counted_leg(self, length: Real, psi: Real, penetration: Real = 0.0) -> Real:
        """A quarter of the length, mm, beyond which no leg counts (J2.2b(c))."""
        return length / 4.0

    @property
    def least_length_source(self) -> Source:
        """The clause of the least length, J2.2b(c)."""
        return j2_2_fillet_limits.counted_leg.source


@dataclass(frozen=True, slots=True)
class AiscParts:
    """Base metal beside a weld by one method; see ``engine.rule_set.PartRules``."""

    method: Method

    def across(self, part: PartMetal) -> Real:
        """Strength in tension, N/mm: the lesser of yielding and rupture (J4.1)."""
        f_y, f_u = _strengths(part)
        by_yield = j4_base_metal.tension_yield(F_y=f_y, t=part.design_thickness)
        by_rupture = j4_base_metal.tension_rupture(F_u=f_u, t=part.design_thickness)
        return minimum(
            available(self.method, j4_base_metal.TENSION_YIELD, by_yield),
            available(self.method, j4_base_metal.TENSION_RUPTURE, by_rupture),
        )

    def along(self, part: PartMetal) -> Real:
        """Strength in shear, N/mm: the lesser of yielding and rupture (J4.2)."""
        f_y, f_u = _strengths(part)
        by_yield = j4_base_metal.shear_yield(F_y=f_y, t=part.design_thickness)
        by_rupture = j4_base_metal.shear_rupture(F_u=f_u, t=part.design_thickness)
        return minimum(
            available(self.method, j4_base_metal.SHEAR_YIELD, by_yield),
            available(self.method, j4_base_metal.SHEAR_RUPTURE, by_rupture),
        )


def largest_edge_leg(thickness: Real) -> tuple[Real, Source]:
    """Largest leg, mm, along an edge of the given thickness, and its clause (J2.2b(b))."""
    rules = j2_2_fillet_limits
    leg = rules.maximum_leg(t=thickness, t_rule=rules.EDGE_RULE_FROM, setback=rules.EDGE_SETBACK, same=SAME)
    return leg, rules.maximum_leg.source


@dataclass(frozen=True, slots=True)
class AiscGroove:
    """Partial-penetration groove rules of 360-22; see ``engine.rule_set.GrooveRules``."""

    face_counts: bool = False
    by_test: Source | None = None

    def deduction(self, groove: Groove) -> tuple[float, Source]:
        """What the table takes off the depth of a groove, mm, and its source; raises ``Unlisted`` (Table J2.1)."""
        return j2_1_partial_penetration.root_deduction(groove), j2_1_partial_penetration.TABLE_J2_1

    def minimum_throat(self, thinner: float) -> tuple[float, Source]:
        """Least throat, mm, by the thinner part, and its source (J2.1b, Table J2.3)."""
        throat = j2_1_partial_penetration.minimum_throat(t=thinner)
        assert isinstance(throat, float)  # noqa: S101 - a scalar gives a scalar
        return throat, clause("J2.1b, Table J2.3")


def _strengths(part: PartMetal) -> tuple[Real, Real]:
    assert part.yield_strength is not None and part.tensile_strength is not None  # noqa: S101 - refused before
    return part.yield_strength, part.tensile_strength
