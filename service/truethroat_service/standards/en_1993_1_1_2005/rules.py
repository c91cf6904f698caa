"""Clause 6.2 as answers to the questions about the parts beside a weld."""

from dataclasses import dataclass

from ...engine.numeric import Real, magnitude, maximum
from ...engine.rule_set import PartMetal
from . import s6_2_plate_interaction, s6_2_plate_resistance


@dataclass(frozen=True, slots=True)
class EnParts:
    """Plates beside a weld; see ``engine.rule_set.PartRules``."""

    gamma_m0: float

    def across(self, part: PartMetal) -> Real:
        """6.2.3: tension."""
        assert part.yield_strength is not None  # noqa: S101 - the use case refuses a part without it
        return s6_2_plate_resistance.tension(t=part.thickness, f_y=part.yield_strength, gamma_M0=self.gamma_m0)

    def along(self, part: PartMetal) -> Real:
        """6.2.6: shear."""
        assert part.yield_strength is not None  # noqa: S101 - the use case refuses a part without it
        return s6_2_plate_resistance.shear(t=part.thickness, f_y=part.yield_strength, gamma_M0=self.gamma_m0)

    def together(self, part: PartMetal, shear: Real, pull: Real) -> Real:
        """6.2.1(5), and 6.2.10 where the shear is over half of what the plate resists."""
        v, n = magnitude(shear) / self.along(part), magnitude(pull) / self.across(part)
        return maximum(s6_2_plate_interaction.equivalent(v=v, n=n), s6_2_plate_interaction.reduced_by_shear(v=v, n=n))
