"""Cooling time t8/5 of a seam by EN 1011-2 Annex D, and the heat input that keeps it in a window.

The factor F2 of single-run fillets follows a curve that was not available, so their cooling time is a band between the
ends of that factor. A verdict of "within" holds for the whole band. For each end of the band the longer of the two
cooling times (two- and three-dimensional flow) is taken, so the result is continuous at the transition thickness.
"""

from dataclasses import dataclass

from ...engine.formula import about, off_the_sheet
from ...standards.en_1011_2_2001 import annex_d_cooling as annex_d
from ..core.shape import Band
from .answer import HeatFlow


@dataclass(frozen=True, slots=True)
class Seam:
    """A seam, the plate that its heat flows into, mm, and the temperature it begins at, degC."""

    kind: str
    thickness: float
    preheat: float

    @property
    def factors(self) -> annex_d.SeamFactors:
        """Factors of the seam."""
        return annex_d.SEAMS[self.kind]


@dataclass(frozen=True, slots=True)
class Cooling:
    """Cooling time, s, the flow of heat, and the thickness, mm, at which it changes; these two are None if measured."""

    time: Band
    flow: HeatFlow | None = None
    transition: Band | None = None


def cooling(seam: Seam, heat_input: float) -> Cooling:
    """Cooling time, s, of a seam at a heat input, kJ/mm."""
    factors = seam.factors
    three = _thick(seam, heat_input)
    thin, times, transitions = [], [], []
    for factor in _ends(factors):
        with about(f"F2 = {factor:g}"):
            t_2 = annex_d.time_in_thin_plate(
                Q=heat_input, d=seam.thickness, T_0=seam.preheat, F_2=factor, **annex_d.TWO, **annex_d.RANGE
            )
            times.append(float(annex_d.cooling_time(t_3=three, t_2=t_2)))
            transitions.append(_transition(seam, heat_input, factor))
            thin.append(float(t_2) > three)
    flow: HeatFlow = "between" if len(set(thin)) > 1 else "two-dimensional" if thin[0] else "three-dimensional"
    return Cooling(Band(times[0], times[-1]), flow, Band(transitions[0], transitions[-1]))


def cooling_off_the_sheet(seam: Seam, heat_input: float) -> Band:
    """Cooling time, s, at another heat input, kJ/mm, without a step in the working."""
    with off_the_sheet():
        return cooling(seam, heat_input).time


def heat_input_within(seam: Seam, window: Band) -> Band | None:
    """Heat inputs, kJ/mm, that keep the whole band of cooling times in a window, s; None where none does."""
    least_factor, most_factor = _ends(seam.factors)[0], _ends(seam.factors)[-1]
    # The least heat must hold the lower end of the band in the window, the most heat the upper end.
    with about("least heat input"):
        least = _heat(seam, window.least, least_factor)
    with about("largest heat input"):
        most = _heat(seam, window.most, most_factor)
    return Band(least, most) if least <= most else None


def _ends(factors: annex_d.SeamFactors) -> list[float]:
    """Ends of the two-dimensional factor, each once."""
    return list(dict.fromkeys(factors.two))


def _thick(seam: Seam, heat_input: float) -> float:
    """Cooling time in three-dimensional flow."""
    return float(
        annex_d.time_in_thick_plate(
            Q=heat_input, T_0=seam.preheat, F_3=seam.factors.three, **annex_d.THREE, **annex_d.RANGE
        )
    )


def _transition(seam: Seam, heat_input: float, factor: float) -> float:
    """Thickness, mm, at which the flow changes."""
    return float(
        annex_d.transition_thickness(
            Q=heat_input,
            T_0=seam.preheat,
            F_2=factor,
            F_3=seam.factors.three,
            **annex_d.TWO,
            **annex_d.THREE,
            **annex_d.RANGE,
        )
    )


def _heat(seam: Seam, time: float, factor: float) -> float:
    """Heat input, kJ/mm, that cools in a given time, s."""
    thick = annex_d.heat_in_thick_plate(
        t=time, T_0=seam.preheat, F_3=seam.factors.three, **annex_d.THREE, **annex_d.RANGE
    )
    thin = annex_d.heat_in_thin_plate(
        t=time, d=seam.thickness, T_0=seam.preheat, F_2=factor, **annex_d.TWO, **annex_d.RANGE
    )
    return float(annex_d.heat_for_cooling_time(Q_3=thick, Q_2=thin))
