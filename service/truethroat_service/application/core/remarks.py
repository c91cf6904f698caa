"""Reasons and cautions, gathered while an answer is made."""

from dataclasses import dataclass, field
from typing import Annotated, cast

from ...engine.formula import Source
from ...engine.rule_set import Note
from .codes import CautionCode
from .shape import OMITTED
from .units import Units


@dataclass(frozen=True, slots=True)
class Caution:
    """What the figures rest on or leave out."""

    code: CautionCode
    text: str
    source: Annotated[str | None, OMITTED] = None


SAFETY = Caution(
    "estimate-for-planning",
    "An estimate for planning. Confirm it by the governing local code, the welding procedure and a licensed"
    " engineer or certified inspector before anything is cut, welded or loaded.",
)


@dataclass(slots=True)
class Remarks:
    """Reasons and cautions of one answer, in the units of its request; the safety caution is always the first."""

    units: Units
    reasons: list[str] = field(default_factory=list)
    cautions: list[Caution] = field(default_factory=lambda: [SAFETY])

    def because(self, text: str) -> None:
        """Add a reason."""
        self.reasons.append(text)

    def caution(self, code: CautionCode, text: str, source: Source | None = None) -> None:
        """Add a caution, with the rule behind it if there is one."""
        self.cautions.append(Caution(code, text, str(source) if source else None))

    def note(self, note: Note) -> None:
        """Add the caution that a rule set asks for."""
        self.caution(cast(CautionCode, note.code), note.text, note.source)
