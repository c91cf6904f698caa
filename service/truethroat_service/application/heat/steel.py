"""Composition of a steel, and what formulas may take from it: an element that is not given is never guessed."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Literal

from ...engine.formula import Formula
from ...practice import pcm
from ...standards.en_1011_2_2001 import c_2_method_a, c_3_method_b

ELEMENTS = ("C", "Si", "Mn", "Cr", "Mo", "Ni", "Cu", "V", "Nb", "Ti", "B")
Name = Literal["ce", "cet", "pcm"]

LARGEST_ALLOY = 5.0
"""Alloying elements together, weight %, up to which steel is called low-alloy; common practice, no source."""


@dataclass(frozen=True, slots=True)
class Composition:
    """Shares in weight %; None where not given. With ``others_zero`` an element not given is none."""

    C: float
    Si: float | None = None
    Mn: float | None = None
    Cr: float | None = None
    Mo: float | None = None
    Ni: float | None = None
    Cu: float | None = None
    V: float | None = None
    Nb: float | None = None
    Ti: float | None = None
    B: float | None = None
    others_zero: bool = False

    def share(self, element: str) -> float | None:
        """Share of an element, if it is known."""
        given: float | None = getattr(self, element)
        return 0.0 if given is None and self.others_zero else given

    def known(self, elements: Iterable[str]) -> dict[str, float]:
        """Shares of those of the elements that are known."""
        shares = {element: self.share(element) for element in elements}
        return {element: share for element, share in shares.items() if share is not None}

    def alloyed(self) -> float:
        """Alloying elements together, carbon and silicon left out."""
        return sum(self.known(ELEMENTS[2:]).values())


@dataclass(frozen=True, slots=True)
class Equivalents:
    """Carbon equivalents, where the composition itself is not given."""

    ce: float | None = None
    cet: float | None = None
    pcm: float | None = None


class Lacking(LookupError):
    """What is asked needs elements that were not given; its text says which."""


def shares(composition: Composition, elements: tuple[str, ...]) -> dict[str, float]:
    """Shares of all of the elements; raises :class:`Lacking` when one is not given."""
    known = composition.known(elements)
    missing = [element for element in elements if element not in known]
    if missing:
        raise Lacking(f"needs the share of {', '.join(missing)}, or others_zero")
    return known


_FORMULAS: Mapping[Name, tuple[Formula[...], tuple[str, ...]]] = {
    "ce": (c_2_method_a.carbon_equivalent, tuple(c_2_method_a.carbon_equivalent.args)),
    "cet": (c_3_method_b.carbon_equivalent, tuple(c_3_method_b.carbon_equivalent.args)),
    "pcm": (pcm.parameter, tuple(pcm.parameter.args)),
}


def equivalents(
    composition: Composition | None, given: Equivalents | None
) -> tuple[dict[Name, float | None], dict[Name, str]]:
    """Carbon equivalents, and of those that are not known what they need."""
    found: dict[Name, float | None] = {}
    needs: dict[Name, str] = {}
    for name, (made, elements) in _FORMULAS.items():
        if composition is None:
            found[name] = getattr(given, name) if given else None
            lack = f"needs composition, or carbon_equivalents with {name}"
        else:
            try:
                found[name] = float(made(**shares(composition, elements)))
            except Lacking as lacking:
                found[name], lack = None, str(lacking)
        if found[name] is None:
            needs[name] = lack
    return found, needs
