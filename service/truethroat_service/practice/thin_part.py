"""Sizing a fillet by the thinner part instead of by a load."""

from dataclasses import dataclass

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real
from ..engine.rule_set import Groove

NO_LEAST_SIZE = Source("", "shop practice sets no least fillet", "common practice, no source")
NO_DEDUCTION = Source("", "shop practice takes nothing off a prepared depth", "common practice, no source")

THICKNESS = Arg("mm", 0.5, 40.0)


@formula(
    "z_req",
    "t",
    unit="mm",
    source=Source("", "leg of the thinner thickness from one side", "common practice, no source"),
    args={"t": THICKNESS},
)
def leg_from_one_side(t: Real) -> Real:
    """Leg of a fillet from one side, by the thinner part."""
    return t


@formula(
    "z_req",
    "0.75*t",
    unit="mm",
    source=Source("O. W. Blodgett, Design of Weldments", "6.2-7, leg of three quarters of the plate", "second-hand"),
    args={"t": THICKNESS},
)
def leg_from_two_sides(t: Real) -> Real:
    """Leg of each of two fillets, by the thinner part."""
    return 0.75 * t


@formula(
    "z_max",
    "t",
    unit="mm",
    source=Source("", "an edge offers no more leg than its thickness", "common practice, no source"),
    args={"t": THICKNESS},
)
def edge_leg(t: Real) -> Real:
    """Largest leg along an edge where no code sets one."""
    return t


def largest_edge_leg(thickness: Real) -> tuple[Real, Source]:
    """Largest leg, mm, along an edge of the given thickness, where no code sets one."""
    return edge_leg(t=thickness), edge_leg.source


@dataclass(frozen=True, slots=True)
class ThinPartGroove:
    """Grooves in shop practice: the whole prepared depth counts, and the face height until it is ground off."""

    face_counts: bool = True
    by_test: Source | None = None

    def deduction(self, groove: Groove) -> tuple[float, Source]:
        """No deduction."""
        return 0.0, NO_DEDUCTION

    def minimum_throat(self, thinner: float) -> None:
        """No least throat."""
        return
