"""Answer of ``/v1/filler-quantity``, in engine units."""

from dataclasses import dataclass
from typing import Annotated, Literal

from ..core.quantities import AREA, DENSITY, ENERGY, GAS_FLOW, MASS, MASS_RATE, VOLUME, WORKING_TIME
from ..core.shape import OMITTED, Area, Band, Length, MassPerLength, Q
from ..joints.usual_rates import Figure


@dataclass(frozen=True, slots=True)
class WeldCost:
    """Cost by its parts; a part without a price is null, and the total leaves it out."""

    currency: str
    labour: Band | None
    consumable: Band | None
    gas: Band | None
    power: Band | None
    total: Annotated[Band | None, "Sum of the parts that have a price; null where one of them is not known."]
    counts: Annotated[tuple[str, ...], "Parts that have a price."]
    missing: Annotated[tuple[str, ...], "Parts that have a price but whose cost is not known."]


CountedBy = Literal["single-pass-limit", "pass-thickness", "layers", "bead-area", "handbook"]


@dataclass(frozen=True, slots=True)
class PassCount:
    """One way to count."""

    by: CountedBy
    least: int
    most: int
    source: str


@dataclass(frozen=True, slots=True)
class PassCounts:
    """Number of passes, from least to most, with every way to count them."""

    least: int
    most: int
    counts: tuple[PassCount, ...]


@dataclass(frozen=True, slots=True)
class WeldMetalDensity:
    """Density of the weld metal."""

    value: Annotated[float, Q(DENSITY)]
    source: str


@dataclass(frozen=True, slots=True)
class EstimateBasis:
    """Figures that an estimate rests on; null where neither the request nor a publication gives one."""

    density: WeldMetalDensity
    efficiency: Figure | None
    deposition_rate: Annotated[Figure | None, Q(MASS_RATE)]
    operator_factor: Figure | None
    gas_flow: Annotated[Figure | None, Q(GAS_FLOW)]
    bead_area: Annotated[Figure | None, Q(AREA)]
    source_efficiency: Figure | None


@dataclass(frozen=True, slots=True)
class SectionPart:
    """Part of the section."""

    part: str
    area: Area


@dataclass(frozen=True, slots=True)
class MetalBand:
    """Weld metal. All three are alike where the request says the excess, the convexity or the cap itself."""

    least: Annotated[float, Q(MASS), "As described."]
    typical: Annotated[float, Q(MASS), "With a tenth more area, the usual allowance."]
    most: Annotated[float, Q(MASS), "With a tenth more leg, 21 % more area, as convex welds are laid."]


# An estimate, the totals and a group share fields. Those of the last base stand first, then those of the one before it,
# and a class's own come last. Without slots, for classes with slots cannot have two bases.


@dataclass(frozen=True)
class Taken:
    """What welds take."""

    deposited: Annotated[float, Q(MASS), "Weld metal as described, its own excess included."]
    metal: Annotated[MetalBand, "Weld metal as described, as usually laid, and at most as usually laid."]
    consumable: Annotated[Band | None, Q(MASS), "Consumable to buy."]
    arc_time: Annotated[Band | None, Q(WORKING_TIME), "Time during which the arc burns."]
    working_time: Annotated[Band | None, Q(WORKING_TIME), "Time of welding on the clock."]
    gas: Annotated[Band | None, Q(VOLUME), "Shielding gas while the arc burns."]
    energy: Annotated[Band | None, Q(ENERGY), "Energy from the mains."]


Cost = Annotated[WeldCost | None, "Cost at the caller's prices; null without prices."]


@dataclass(frozen=True)
class Described:
    """What an entry is."""

    mark: Annotated[str | None, OMITTED, "The entry's own mark."]
    kind: Annotated[str, "Kind of its shape."]
    filler: str | None
    process: Annotated[str | None, "AWS letters."]
    area: Annotated[Area, "Area of the section as described, without its excess."]
    parts: Annotated[tuple[SectionPart, ...], "Parts that add up to the area; the part of a hollow face is negative."]
    length: Annotated[Length, "Length of all its welds together."]
    mass_per_length: Annotated[MassPerLength, "Weld metal for each unit of length, its excess included."]


@dataclass(frozen=True)
class WeldEstimate(Taken, Described):
    """Estimate of one entry, in the order of the request."""

    passes: PassCounts | None
    cost: Cost
    rests_on: EstimateBasis


@dataclass(frozen=True)
class Counted:
    """How much weld there is."""

    count: int
    length: Length


@dataclass(frozen=True)
class EstimateTotals(Taken, Counted):
    """Sums; a sum is null where one of its summands is not known."""

    cost: Cost


@dataclass(frozen=True)
class Grouped:
    """What a group has in common."""

    filler: str | None
    process: str | None


@dataclass(frozen=True)
class EstimateGroup(EstimateTotals, Grouped):
    """Sums of one filler with one process."""


@dataclass(frozen=True, slots=True)
class FillerQuantityAnswer:
    """Weld metal, consumable, passes, hours, gas, energy and cost."""

    welds: tuple[WeldEstimate, ...]
    totals: EstimateTotals
    groups: tuple[EstimateGroup, ...]
