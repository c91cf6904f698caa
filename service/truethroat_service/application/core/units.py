"""Renders numbers of the engine in the units a request asked for."""

from dataclasses import dataclass

from .quantities import (
    ANGLE,
    AREA,
    FORCE,
    FORCE_PER_LENGTH,
    LENGTH,
    LINE_SECOND_MOMENT,
    MASS_PER_LENGTH,
    MOMENT,
    STRESS,
    Dimension,
    QuantityDict,
    Rounding,
    UnitSystem,
    render,
)


@dataclass(frozen=True, slots=True)
class Units:
    """Renders numbers of the engine in the units a request asked for."""

    system: UnitSystem

    def of(self, dimension: Dimension, value: float) -> QuantityDict:
        """Quantity of any dimension, from engine units."""
        return render(dimension, value, self.system)

    def length(self, value: float, rounding: Rounding = "nearest") -> QuantityDict:
        """Length from mm."""
        return render(LENGTH, value, self.system, rounding)

    def force_per_length(self, value: float) -> QuantityDict:
        """Force per length from N/mm."""
        return render(FORCE_PER_LENGTH, value, self.system)

    def force(self, value: float) -> QuantityDict:
        """Force from N."""
        return render(FORCE, value, self.system)

    def moment(self, value: float) -> QuantityDict:
        """Moment from N mm."""
        return render(MOMENT, value, self.system)

    def line_second_moment(self, value: float) -> QuantityDict:
        """Second moment of unit throat from mm3."""
        return render(LINE_SECOND_MOMENT, value, self.system)

    def angle(self, value: float) -> QuantityDict:
        """Angle from rad."""
        return render(ANGLE, value, self.system)

    def area(self, value: float) -> QuantityDict:
        """Area from mm2."""
        return render(AREA, value, self.system)

    def mass_per_length(self, value: float) -> QuantityDict:
        """Mass per length from kg/mm."""
        return render(MASS_PER_LENGTH, value, self.system)

    def text(self, value: float) -> str:
        """Length from mm, as text in a sentence."""
        return self.length(value)["text"]

    def stress_text(self, value: float) -> str:
        """Stress from MPa, as text in a sentence."""
        return render(STRESS, value, self.system)["text"]
