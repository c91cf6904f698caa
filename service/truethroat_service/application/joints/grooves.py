"""Groove of a preparation: what a rule set takes off its depth, what it opens on the face, what it holds."""

from dataclasses import dataclass
from math import pi

from ...engine.formula import cite
from ...engine.rule_set import Groove, RuleSet
from ...practice import deposition, preparation
from ...reference.loader import position as position_of
from ...reference.loader import process as process_of
from ..core.shape import MassPerLength
from .seams import GrooveForm


@dataclass(frozen=True, slots=True)
class Cut:
    """Groove as cut: setback on each bevelled part and area opened, mm and mm2."""

    setback: float
    area: float


@dataclass(frozen=True, slots=True)
class DepositedMetal:
    """Deposited metal."""

    mass_per_length: MassPerLength


def coded(form: GrooveForm, angle: float, process: str | None, position: str | None) -> Groove:
    """Groove with its process and position by their canonical names."""
    return Groove(
        form,
        angle,
        process_of(process).id if process is not None else None,
        position_of(position).orientation if position is not None else None,
    )


def deduction(rules: RuleSet | None, groove: Groove) -> float:
    """What the rules take off the prepared depth, mm; nothing without rules. Raises ``Unlisted``."""
    if rules is None:
        return 0.0
    taken, source = rules.groove.deduction(groove)
    cite(source)
    return taken


def cut(form: GrooveForm, angle: float, depth: float, both: bool, root_radius: float | None) -> Cut:
    """Setback and area of a groove of a depth and an included angle, on one part or shared by both."""
    sides = 2.0 if both else 1.0
    beta = angle / sides
    if form in ("single-bevel", "single-v"):
        setback = float(preparation.bevel_setback(d=depth, beta=beta))
        return Cut(setback, sides * float(preparation.bevel_area(d=depth, beta=beta)))
    usual = preparation.J_ROOT_RADIUS if form == "single-j" else preparation.U_ROOT_RADIUS
    r = usual if root_radius is None else root_radius
    if root_radius is None:
        cite(preparation.ROOT_RADII)
    straight = preparation.straight_height(d=depth, beta=beta, r=r)
    phi = preparation.root_arc(d=depth, beta=beta, r=r, H=straight)
    setback = float(preparation.curved_setback(beta=beta, r=r, H=straight, phi=phi))
    return Cut(setback, sides * float(preparation.curved_area(beta=beta, r=r, H=straight, phi=phi)))


def deposited_metal(area: float) -> DepositedMetal:
    """Deposited metal of an area, as carbon steel."""
    return DepositedMetal(float(deposition.mass_per_length(rho=deposition.STEEL, A=area)))


def opening(form: GrooveForm, angle: float, depth: float) -> float:
    """Width a groove opens on the face, mm."""
    if depth <= 0.0:
        return 0.0
    both = form in ("single-v", "single-u")
    return (2.0 if both else 1.0) * cut(form, angle, depth, both, None).setback


def degrees(angle: float) -> str:
    """Angle in degrees, for text."""
    return f"{angle * 180.0 / pi:.4g}"
