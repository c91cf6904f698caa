"""Composition of a steel. A formula that needs an element which is not given is left out; no share is guessed."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Annotated, Literal

from ...engine.formula import Formula
from ...practice import pcm
from ...standards.en_1011_2_2001 import c_2_method_a, c_3_method_b
from ..core.left_out import or_lacks
from ..core.shape import Lacks, Numbered
from .answer import ParentEquivalents

ELEMENTS = ("C", "Si", "Mn", "Cr", "Mo", "Ni", "Cu", "V", "Nb", "Ti", "B")

LARGEST_ALLOY = 5.0
"""Alloying elements together, weight %, up to which steel is called low-alloy; common practice, no source."""

_SHARE = "Weight %."
_UP_TO_2, _UP_TO_5 = Numbered(0.0, 2.0), Numbered(0.0, 5.0)
EQUIVALENT = Numbered(0.01, 2.0)


@dataclass(frozen=True, slots=True)
class Composition:
    """Composition of the parent steel. No element is guessed: a result that needs one which is not given is null."""

    C: Annotated[float, Numbered(0.0, 1.0), _SHARE]
    Si: Annotated[float | None, _UP_TO_5, _SHARE] = None
    Mn: Annotated[float | None, _UP_TO_5, _SHARE] = None
    Cr: Annotated[float | None, Numbered(0.0, 30.0), _SHARE] = None
    Mo: Annotated[float | None, Numbered(0.0, 10.0), _SHARE] = None
    Ni: Annotated[float | None, Numbered(0.0, 40.0), _SHARE] = None
    Cu: Annotated[float | None, _UP_TO_5, _SHARE] = None
    V: Annotated[float | None, _UP_TO_2, _SHARE] = None
    Nb: Annotated[float | None, _UP_TO_2, _SHARE] = None
    Ti: Annotated[float | None, _UP_TO_2, _SHARE] = None
    B: Annotated[float | None, Numbered(0.0, 0.1), _SHARE] = None
    others_zero: Annotated[bool, "Whether every element that is not given is zero, as the certificate says."] = False

    def share(self, element: str) -> float | None:
        """Share of an element in weight %; None where it is not known."""
        given: float | None = getattr(self, element)
        return 0.0 if given is None and self.others_zero else given

    def known(self, elements: Iterable[str]) -> dict[str, float]:
        """Shares of those of the elements that are known."""
        shares = {element: self.share(element) for element in elements}
        return {element: share for element, share in shares.items() if share is not None}

    def alloyed(self) -> float:
        """Alloying elements together, weight %, without carbon and silicon."""
        return sum(self.known(ELEMENTS[2:]).values())


@dataclass(frozen=True, slots=True)
class CarbonEquivalents:
    """Carbon equivalents of the parent steel, where its composition is not at hand."""

    ce: Annotated[float | None, EQUIVALENT, "CE = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15."] = None
    cet: Annotated[float | None, EQUIVALENT, "CET = C + (Mn + Mo)/10 + (Cr + Cu)/20 + Ni/40."] = None
    pcm: Annotated[float | None, EQUIVALENT, "Pcm = C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5B."] = None


class Lacking(LookupError):
    """A result needs elements that were not given, or a steel that its formula covers; the text says which."""


def shares(composition: Composition, elements: tuple[str, ...]) -> dict[str, float]:
    """Share of each of the elements, weight %; raises :class:`Lacking` where one is not known."""
    known = composition.known(elements)
    missing = [element for element in elements if element not in known]
    if missing:
        raise Lacking(f"needs the share of {', '.join(missing)} or others_zero")
    return known


def equivalents(composition: Composition | None, given: CarbonEquivalents | None) -> ParentEquivalents:
    """Carbon equivalents; each that is not known says what it needs."""

    def equivalent(name: Literal["ce", "cet", "pcm"], formula: Formula[...]) -> float | Lacks:
        if composition is None:
            own: float | None = getattr(given, name) if given else None
            return or_lacks(own, f"needs composition or carbon_equivalents with {name}")
        try:
            return float(formula(**shares(composition, tuple(formula.args))))
        except Lacking as lacking:
            return Lacks(str(lacking))

    return ParentEquivalents(
        equivalent("ce", c_2_method_a.carbon_equivalent),
        equivalent("cet", c_3_method_b.carbon_equivalent),
        equivalent("pcm", pcm.parameter),
    )
