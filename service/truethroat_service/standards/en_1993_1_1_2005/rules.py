"""Clause 6.2 as answers to the questions about the parts beside a weld."""

from dataclasses import dataclass

from ...engine.numeric import Real
from ...engine.rule_set import PartMetal
from . import s6_2_plate_resistance


@dataclass(frozen=True, slots=True)
class EnParts:
    """Plates beside a weld; see ``engine.rule_set.PartRules``."""

    gamma_m0: float

    def across(self, part: PartMetal) -> Real:
        """Resistance of a plate in tension, N/mm (6.2.3)."""
        assert part.yield_strength is not None  # noqa: S101 - the use case refuses a part without it
        return s6_2_plate_resistance.tension(t=part.thickness, f_y=part.yield_strength, gamma_M0=self.gamma_m0)

    def along(self, part: PartMetal) -> Real:
        """Resistance of a plate in shear, N/mm (6.2.6)."""
        assert part.yield_strength is not None  # noqa: S101 - the use case refuses a part without it
        return s6_2_plate_resistance.shear(t=part.thickness, f_y=part.yield_strength, gamma_M0=self.gamma_m0)
