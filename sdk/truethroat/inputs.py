"""The nested objects of requests, as typed dictionaries.

They are plain dictionaries at run time (`Joint(kind="tee", sides=2)` is `{"kind": "tee", "sides": 2}`), so that a type
checker knows their fields and nothing else changes; any other mapping will do as well. What the fields may hold is for
the service to say.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Literal, TypedDict

from truethroat.quantity import QuantityInput

__all__ = [
    "BalancedLoad",
    "ConcentricLoad",
    "Filler",
    "Finish",
    "GrooveJoint",
    "GrooveLoad",
    "GrooveWeld",
    "GroundFlush",
    "Intermittent",
    "Joint",
    "LineLoad",
    "Load",
    "Packing",
    "Parameters",
    "Part",
    "Penetration",
    "Preparation",
    "Price",
    "Prices",
    "RequiredWeld",
    "Seam",
    "TensionMember",
    "UnstiffenedFlange",
    "Weld",
    "WeldExtent",
]


class Joint(TypedDict, total=False):
    """How two plates meet at a fillet weld."""

    kind: Literal["tee", "lap", "inside-corner"]
    angle: QuantityInput
    root_gap: QuantityInput
    sides: Literal[1, 2]


class Part(TypedDict, total=False):
    """One of the two plates, by the name of its material or by its strengths."""

    thickness: QuantityInput
    material: str
    wall: Literal["design", "nominal"]
    yield_strength: QuantityInput
    tensile_strength: QuantityInput
    beta_w: float


class Parameters(TypedDict, total=False):
    """National or project values put in place of the rule set's own."""

    gamma_m2: float
    gamma_m0: float
    gamma_mw: float
    beta_w: float


class Filler(TypedDict, total=False):
    """A filler metal by its strength, where its name will not do."""

    tensile_strength: QuantityInput


class Load(TypedDict, total=False):
    """A force shared by the welds: 0 deg along them, 90 deg across."""

    force: QuantityInput
    length: QuantityInput
    angle: QuantityInput


class LineLoad(TypedDict, total=False):
    """Signed forces per length on one weld."""

    normal: QuantityInput
    transverse: QuantityInput
    longitudinal: QuantityInput
    length: QuantityInput


class ConcentricLoad(TypedDict, total=False):
    """A force on welds along and across it, each kind's lengths together."""

    force: QuantityInput
    longitudinal_length: QuantityInput
    transverse_length: QuantityInput


class BalancedLoad(TypedDict, total=False):
    """A force along a member held by two side welds: their whole length, their distance, and where its centroid is."""

    force: QuantityInput
    length: QuantityInput
    width: QuantityInput
    centroid: QuantityInput


class Intermittent(TypedDict, total=False):
    """Segments and gaps of an intermittent fillet, and what it is to hold."""

    segment: QuantityInput
    gap: QuantityInput
    staggered: bool
    loading: Literal["tension", "compression", "shear"]
    member: Literal["built-up", "stiffener"]
    exposure: Literal["protected", "weathering-steel", "corrosive"]
    widths: list[QuantityInput] | tuple[QuantityInput, QuantityInput]


class Packing(TypedDict, total=False):
    """Packing between the parts of a lap."""

    thickness: QuantityInput


class TensionMember(TypedDict, total=False):
    """A tension member held by longitudinal welds alone."""

    width: QuantityInput
    area: QuantityInput
    eccentricity: QuantityInput


class UnstiffenedFlange(TypedDict, total=False):
    """The section whose unstiffened flange a plate stands on."""

    web_thickness: QuantityInput
    plate_width: QuantityInput
    section: Literal["i", "box"]
    root_radius: QuantityInput
    weld_throat: QuantityInput


class GrooveJoint(TypedDict, total=False):
    """How two plates meet at a groove, plug or slot weld."""

    kind: Literal["butt", "tee", "corner", "lap"]


class GrooveLoad(TypedDict, total=False):
    """A force on the joint over a length, negative where it presses, or signed forces per length."""

    force: QuantityInput
    length: QuantityInput
    angle: QuantityInput
    normal: QuantityInput
    transverse: QuantityInput
    longitudinal: QuantityInput


class GrooveWeld(TypedDict, total=False):
    """A weld of one of the kinds, with the fields that the service gives the kind."""

    kind: Literal[
        "partial", "full", "flare-bevel", "flare-v", "tee-butt", "plug", "slot", "fillet-in-hole", "fillet-in-slot"
    ]
    groove: Literal[
        "square",
        "single-bevel",
        "double-bevel",
        "single-v",
        "double-v",
        "single-j",
        "double-j",
        "single-u",
        "double-u",
    ]
    groove_angle: QuantityInput
    root: Literal["open", "backing", "back-run", "back-gouge"]
    gap: QuantityInput
    land: QuantityInput
    access: Literal["one-side", "both-sides"]
    penetration: Penetration
    reinforcing_fillet: QuantityInput
    minimum_land: QuantityInput
    depth_step: QuantityInput
    depth_tolerance: QuantityInput
    bears: bool
    radius: QuantityInput
    below_flush: QuantityInput
    throats: list[QuantityInput] | tuple[QuantityInput, QuantityInput]
    unwelded: QuantityInput
    diameter: QuantityInput
    width: QuantityInput
    length: QuantityInput
    leg: QuantityInput
    filling: QuantityInput
    count: int
    pitch: QuantityInput
    pitch_along: QuantityInput


class Penetration(TypedDict, total=False):
    """Fusion beyond the prepared root, and who vouches for it."""

    depth: QuantityInput
    vouched: Literal["assumed", "measured", "proven"]


class Seam(TypedDict, total=False):
    """The kind of seam and the plates it joins."""

    kind: Literal["butt", "edge", "closed-corner", "half-open-corner", "open-corner", "fillet"]
    thickness: list[QuantityInput] | tuple[QuantityInput, QuantityInput]
    angle: QuantityInput
    overlap: QuantityInput
    legs: list[QuantityInput] | tuple[QuantityInput, QuantityInput]
    width: list[QuantityInput] | tuple[QuantityInput, QuantityInput]
    thickness_tolerance: QuantityInput
    overlap_tolerance: QuantityInput
    legs_tolerance: QuantityInput


class Preparation(TypedDict, total=False):
    """The edge as cut: how deep, and with which groove."""

    depth: QuantityInput
    groove_angle: QuantityInput
    groove: Literal["single-bevel", "single-v", "single-j", "single-u"]
    tolerance: QuantityInput


class Finish(TypedDict, total=False):
    """What the grinder leaves: flush, flat or a radius, and how far below."""

    to: Literal["as-welded", "flush", "flat", "radius"]
    radius: QuantityInput
    below: QuantityInput
    tolerance: QuantityInput


class RequiredWeld(TypedDict, total=False):
    """What was asked for of a weld as made: a leg or a throat of a fillet, a throat or full penetration of a butt."""

    leg: QuantityInput
    throat: QuantityInput
    penetration: Literal["full"]


class WeldExtent(TypedDict, total=False):
    """Length of the weld, and of its imperfections in the stretch their rule looks at."""

    of_weld: QuantityInput
    throat: QuantityInput
    undercut: QuantityInput
    shrinkage_groove: QuantityInput
    underfill: QuantityInput
    root_concavity: QuantityInput
    incomplete_penetration: QuantityInput
    lack_of_fusion: QuantityInput


class GroundFlush(TypedDict, total=False):
    """A butt required flush: how far it thins the part, on what surface, by which edition."""

    thinning: QuantityInput
    faying: bool
    edition: Literal["aws-d1-1-2020", "aws-d1-1-2000"]


class Weld(TypedDict, total=False):
    """So many equal welds: their section, length and what welding them takes, as far as the shop knows it."""

    shape: Mapping[str, object]
    length: QuantityInput
    count: int
    mark: str
    excess: float
    filler: str
    density: QuantityInput
    process: str
    position: str
    efficiency: float
    electrode: Mapping[str, QuantityInput]
    deposition: Mapping[str, QuantityInput]
    operator_factor: float
    gas_flow: QuantityInput
    arc: Mapping[str, object]
    bead: Mapping[str, QuantityInput]


class Price(TypedDict, total=False):
    """An amount of money for one unit, such as 52 per "h"; of one filler or with one process, where it names them."""

    amount: float
    per: str
    filler: str
    process: str


class Prices(TypedDict, total=False):
    """The shop's own prices, in one currency."""

    currency: str
    labour: Price
    consumables: Sequence[Price]
    gases: Sequence[Price]
    power: Price
