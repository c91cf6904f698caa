"""Answer of ``/v1/fillet-size``, in engine units."""

from dataclasses import dataclass
from typing import Annotated, Literal

from ..core.shape import Area, Force, ForcePerLength, Length, LengthDown, LengthUp
from ..joints.fillets import FilletSize


@dataclass(frozen=True, slots=True)
class SpecifiedFilletSize:
    """Size to specify."""

    leg: Length
    throat: Length
    source: str
    passes: Annotated[int | None, "Least number of passes."]


@dataclass(frozen=True, slots=True)
class FilletStrength:
    """Design or allowable force per length of one weld, in the load's direction.

    It is that of the size tried, less its tolerance.
    """

    weld: ForcePerLength
    base_metal: tuple[ForcePerLength, ForcePerLength]


@dataclass(frozen=True, slots=True)
class CountedLength:
    """Length of one weld."""

    given: Length
    effective: Length
    factor: float


@dataclass(frozen=True, slots=True)
class PackedFillet:
    """Packing, and how it is welded."""

    thickness: Length
    added: Annotated[Length, "What it adds to the leg, which reaches over it."]
    welds: Annotated[
        Literal["over-packing", "to-each-part"],
        "One leg over the packing, or a weld of this size from each part to it.",
    ]


@dataclass(frozen=True, slots=True)
class SpacingLimit:
    """One limit of an intermittent fillet."""

    name: Literal["segment", "gap", "nearer-gap", "pitch"]
    value: Length
    bound: Literal["least", "most"]
    allowed: Length
    verdict: Literal["within", "short", "over"]
    source: str


@dataclass(frozen=True, slots=True)
class WeldCallout:
    """Weld as drawing text."""

    iso_2553: str
    aws_a2_4: str


@dataclass(frozen=True, slots=True)
class IntermittentFillet:
    """Intermittent fillet, and the limits at which its size is still enough."""

    segment: Length
    gap: Annotated[LengthDown, "Clear gap on one side; text rounded down."]
    pitch: Annotated[LengthDown, "From centre to centre; text rounded down."]
    count: Annotated[int | None, "Segments on one side, one at each end; null where the length is not known."]
    even_gap: Annotated[LengthDown | None, "Gap that spaces the segments evenly."]
    end_weld: Annotated[LengthUp, "Least length of the weld at each end."]
    strength: Annotated[ForcePerLength | None, "Of one side, per length of the line."]
    largest_gap: Annotated[LengthDown | None, "Largest gap at which the size specified is enough."]
    shortest_segment: Annotated[LengthUp | None, "Shortest segment that is enough at this gap."]
    limits: tuple[SpacingLimit, ...]
    callout: WeldCallout | None


@dataclass(frozen=True, slots=True)
class ConcentricGroup:
    """Group along and across its force: plain sum, sum with the increase across (null where it is left out)."""

    equivalent_length: Annotated[Length, "Length along the force that is as strong."]
    plain_sum: Force
    weighted_sum: Force | None
    counts: Literal["plain-sum", "weighted-sum"]
    strength: Force


@dataclass(frozen=True, slots=True)
class WeldBalance:
    """Two side welds balanced about a member's centroid, the first first."""

    forces: tuple[Force, Force]
    lengths: Annotated[tuple[Length, Length], "Shares of the length given."]
    least_lengths: Annotated[tuple[LengthUp, LengthUp] | None, "What the size specified needs."]


@dataclass(frozen=True, slots=True)
class TensionMemberStrength:
    """Tension member held by longitudinal welds alone."""

    shear_lag: Annotated[float, "Factor U."]
    effective_area: Area
    by_yield: Force
    by_rupture: Force
    utilisation: float


@dataclass(frozen=True, slots=True)
class FlangeWidth:
    """Plate on an unstiffened flange."""

    share: Annotated[float, "Factor k."]
    effective_width: Length
    least_width: Annotated[Length, "Below it the flange must be stiffened."]
    resistance: Annotated[Force, "Of the plate over the width held."]
    stiffen: bool


Governs = Literal[
    "load",
    "minimum-size",
    "minimum-length",
    "root-gap",
    "packing",
    "full-strength",
    "thin-part",
    "base-metal",
    "spacing",
    "tension-member",
    "flange",
]


@dataclass(frozen=True, slots=True)
class FilletSizeAnswer:
    """Fillet to specify."""

    required: Annotated[FilletSize, "What the weld metal needs."]
    minimum: FilletSize
    maximum: FilletSize | None
    specify: SpecifiedFilletSize | None
    governs: Governs
    utilisation: Annotated[
        float | None,
        "Greatest share of the strength of weld or parts that the load uses, at the size specified less its tolerance.",
    ]
    strength: FilletStrength | None
    length: CountedLength | None
    z_loss: Annotated[Length | None, "Throat lost at the root between plates below 60 deg, included in the leg."]
    packing: PackedFillet | None = None
    intermittent: IntermittentFillet | None = None
    concentric: ConcentricGroup | None = None
    balance: WeldBalance | None = None
    tension_member: TensionMemberStrength | None = None
    unstiffened_flange: FlangeWidth | None = None
