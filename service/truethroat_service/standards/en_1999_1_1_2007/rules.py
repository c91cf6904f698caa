"""Section 8.6 as answers to the questions of a rule set; ``engine.rule_set`` says what each question asks for."""

from dataclasses import dataclass

from ...engine.formula import Source
from ...engine.numeric import Real
from ...engine.rounding import SAME
from ...engine.rule_set import Groove, PartMetal, WeldLoad, WeldMetal
from ...engine.section import equal_leg, equal_leg_throat
from . import clause
from . import s8_6_3_fillet_welds as fillet

NO_LEAST_SIZE = Source(
    "", "no least fillet is known of EN 1999-1-1; that of the welding procedure holds", "from memory"
)


@dataclass(frozen=True, slots=True)
class AluminiumWeld:
    """Fillet rules of 8.6.3; see ``engine.rule_set.WeldRules`` for each question."""

    gamma_mw: float

    def required_throat(self, load: WeldLoad, metal: WeldMetal) -> Real:
        """Throat, mm, for the weld metal (8.6.3.3) and for the heat-affected zone at both legs (8.6.3.4)."""
        assert metal.filler is not None and metal.base is not None  # noqa: S101 - refused before
        n, t, along = load.normal, load.transverse, load.longitudinal
        f_t = fillet.on_throat(n=n, t=t, l=along, psi=load.psi)
        g_haz = fillet.leg_in_heat_affected_zone(
            f_leg_1=fillet.on_leg_of_part_1(n=n, t=t, l=along),
            f_leg_2=fillet.on_leg_of_part_2(n=n, t=t, l=along, psi=load.psi),
            f_u_haz=metal.base,
            gamma_Mw=self.gamma_mw,
        )
        return fillet.required_throat(f_t=f_t, f_w=metal.filler, g_haz=g_haz, psi=load.psi, gamma_Mw=self.gamma_mw)

    def minimum_leg(self, thinner: Real, psi: Real) -> tuple[Real, Source]:
        """No least leg, and the source that says so."""
        return 0.0 * thinner, NO_LEAST_SIZE

    def long_weld_leg(self, throat: Real, length: Real, psi: Real, penetration: Real) -> Real:
        """Leg, mm, whose throat carries the load with the long-weld reduction (8.6.3.3, solved for the throat)."""
        return equal_leg(a=fillet.long_weld_throat(a_req=throat, L=length) - penetration, psi=psi)

    def long_weld_factor(self, leg: Real, length: Real, psi: Real, penetration: Real) -> Real:
        """Share of the length that counts on a long weld (8.6.3.3)."""
        return fillet.length_factor(L=length, a=equal_leg_throat(z=leg, psi=psi) + penetration)

    def counted_leg(self, leg: Real, length: Real, psi: Real, penetration: Real = 0.0) -> Real:
        """Leg that counts, mm; the length must be at least eight throats (8.6.3.3)."""
        throat = fillet.counted_throat(a=equal_leg_throat(z=leg, psi=psi), L=length, same=SAME)
        return equal_leg(a=throat, psi=psi)

    def largest_counted_leg(self, length: Real, psi: Real, penetration: Real = 0.0) -> Real:
        """Leg, mm, of a throat of an eighth of the length (8.6.3.3)."""
        return equal_leg(a=fillet.largest_throat(L=length), psi=psi)

    @property
    def least_length_source(self) -> Source:
        """The clause of the least length, 8.6.3.3."""
        return fillet.FILLET


@dataclass(frozen=True, slots=True)
class AluminiumParts:
    """Heat-affected zone at the toe of a weld, 8.6.3.4; see ``engine.rule_set.PartRules``."""

    gamma_mw: float

    def across(self, part: PartMetal) -> Real:
        """Strength of the heat-affected zone in tension, N/mm (8.6.3.4)."""
        assert part.tensile_strength is not None  # noqa: S101 - the use case refuses a part without it
        return fillet.tension_beside(t=part.thickness, f_u_haz=part.tensile_strength, gamma_Mw=self.gamma_mw)

    def along(self, part: PartMetal) -> Real:
        """Strength of the heat-affected zone in shear, N/mm (8.6.3.4)."""
        assert part.tensile_strength is not None  # noqa: S101 - the use case refuses a part without it
        return fillet.shear_beside(t=part.thickness, f_u_haz=part.tensile_strength, gamma_Mw=self.gamma_mw)


@dataclass(frozen=True, slots=True)
class AluminiumGroove:
    """Partial-penetration groove rules; see ``engine.rule_set.GrooveRules``."""

    face_counts: bool = False
    by_test: Source = clause("8.6.3.2")

    def deduction(self, groove: Groove) -> tuple[float, Source]:
        """No fixed deduction, and its clause: the throat is the penetration that tests show (8.6.3.2)."""
        return 0.0, self.by_test

    def minimum_throat(self, thinner: float) -> None:
        """No least throat for grooves."""
        return
