"""What a request leaves to common figures: a band from the least to the most that publications give for a process."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Annotated

from ...engine.formula import Source, cite
from ...practice import deposition
from ...reference.loader import FILLER_METALS
from ...reference.loader_welding_rates import Quantity, Rate, usual
from ..core.shape import UNSENT


@dataclass(frozen=True, slots=True)
class Figure:
    """Figure, and who says so."""

    least: float
    most: float
    source: Annotated[str, '"given", or a publication.']
    given: Annotated[bool, UNSENT, "Whether the request gave it."] = False


def given(value: float) -> Figure:
    """Figure that the request says."""
    return Figure(value, value, "given", given=True)


def density(filler: str | None, own: float | None) -> Figure:
    """Density of the weld metal: as given, of the filler, or of carbon steel."""
    if own is not None:
        return given(own)
    if filler is None or FILLER_METALS[filler].family == "carbon-steel":
        cite(deposition.CARBON_STEEL)
        return Figure(deposition.STEEL, deposition.STEEL, str(deposition.CARBON_STEEL))
    metal = FILLER_METALS[filler]
    source = Source("", f"weld metal of {filler} at {metal.density_kg_m3:g} kg/m3", "from memory")
    cite(source)
    return Figure(metal.density_kg_m3 * 1e-9, metal.density_kg_m3 * 1e-9, str(source))


def by_process(quantity: Quantity, process: str | None) -> Figure | None:
    """Usual figure of a process by any of its codes; None where no publication gives one, or no process is said."""
    return None if process is None else _spanned(usual(quantity, process), lambda rate: (rate.low, rate.high))


def stick_before_stub() -> Figure:
    """Efficiency of stick electrodes before a stub is lost, out of published ones that count one as lost."""

    def bare(rate: Rate) -> tuple[float, float]:
        assert rate.electrode is not None  # noqa: S101 - every efficiency of SMAW in the data has one
        length, stub = rate.electrode
        value = float(deposition.efficiency_before_stub(eta_s=rate.low, L_e=length, s=stub))
        return value, value

    band = _spanned(usual("efficiency", "SMAW"), bare)
    assert band is not None  # noqa: S101 - the data have rows of SMAW
    return band


def _spanned(rates: Iterable[Rate], ends: Callable[[Rate], tuple[float, float]]) -> Figure | None:
    """Figure over all rates, every one of them cited."""
    found = list(rates)
    if not found:
        return None
    sources = dict.fromkeys(Source("", rate.source, rate.mark) for rate in found)
    for source in sources:
        cite(source)
    spans = [ends(rate) for rate in found]
    return Figure(
        min(low for low, _ in spans), max(high for _, high in spans), "; ".join(str(source) for source in sources)
    )
