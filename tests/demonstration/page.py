"""How the demonstration writes on its page: the line of a joint, folded texts, lengths, ranges and money."""

from __future__ import annotations

import re
from dataclasses import dataclass
from textwrap import wrap

from truethroat import Band, MassBand, Quantity, Weld, WorkingTimeBand

PAGE = 110


@dataclass(frozen=True)
class Line:
    """What the table shows of a joint. `trouble` names its heading in the summary."""

    specify: str
    work: str
    verdict: str
    notes: tuple[str, ...] = ()
    trouble: str | None = None
    metal: tuple[float, float] | None = None  # kg by habit, kg as sized
    weld: Weld | None = None  # what is priced at the end
    ways: tuple[str, ...] = ()  # lines under the joint, laid out already


def folded(text: str, width: int, first: str = "", others: str = "") -> list[str]:
    """Fold a text, but not between a number and its unit."""
    joined = re.sub(r"(?<=[0-9]) (?=(mm|in|deg)\b)", "\N{NO-BREAK SPACE}", text)
    return [
        line.replace("\N{NO-BREAK SPACE}", " ")
        for line in wrap(joined, width, initial_indent=first, subsequent_indent=others)
    ]


def short(quantity: Quantity | None) -> str:
    """Length to a tenth of a millimetre; in inches the fraction it is, or else thousandths; an angle in degrees."""
    if quantity is None:
        return "-"
    if quantity.unit == "deg":
        return str(quantity)
    if quantity.unit == "mm":
        return f"{quantity.value:.1f} mm".replace(".0 ", " ")
    return str(quantity) if quantity.value * 64 % 1 == 0 else f"{quantity.value:.3f} {quantity.unit}"


def from_to(span: MassBand | WorkingTimeBand | None) -> str:
    """Least and most, or a single figure where they are the same."""
    if span is None:
        return "-"
    low, high = f"{span.least.value:.2f}", f"{span.most.value:.2f}"
    return f"{low if low == high else f'{low} to {high}'} {span.least.unit}"


def money(span: Band | None) -> str:
    """Money from least to most."""
    if span is None:
        return "-"
    low, high = f"{span.least:.2f}", f"{span.most:.2f}"
    return low if low == high else f"{low} to {high}"
