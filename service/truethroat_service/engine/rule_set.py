"""What a rule set is: a frozen set of rules that a request names, never a setting of the process.

A rule set's fillet and groove rules answer the questions of the use cases, one method a question. Everything numeric is
a float or a column in millimetres, newtons per millimetre, megapascals and radians.
"""

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Literal, Protocol

from .formula import Source
from .numeric import Flag, Real


@dataclass(frozen=True, slots=True)
class Limit:
    """Limit of a rule set's scope, in words, with its source."""

    text: str
    source: Source


@dataclass(frozen=True, slots=True)
class Reading:
    """How a rule set reads a clause that is silent, borrowed or open to two readings: a sentence, and the clause."""

    text: str
    source: Source


@dataclass(frozen=True, slots=True)
class Note:
    """Caution that a rule set adds to an answer: its code, its text and the rule behind it."""

    code: str
    text: str
    source: Source | None = None


@dataclass(frozen=True, slots=True)
class PartMetal:
    """One part at the weld: thickness in mm; strengths in MPa, None where the rules in use need none.

    The strengths are those beside the weld, where welding takes some away.
    """

    thickness: Real
    yield_strength: Real | None = None
    tensile_strength: Real | None = None
    beta_w: Real | None = None
    wall: float = 1.0
    """Share of the thickness that a hollow section's strength is designed with."""

    @property
    def design_thickness(self) -> Real:
        """Thickness that decides the strength, mm."""
        return self.thickness * self.wall


@dataclass(frozen=True, slots=True)
class WeldLoad:
    """Force on one weld per length of it (see ``engine.loads``), N/mm, with the angle between the plates, rad."""

    normal: Real
    transverse: Real
    longitudinal: Real
    across: Real
    resultant: Real
    theta: Real
    psi: Real


@dataclass(frozen=True, slots=True)
class WeldMetal:
    """What the weld's own strength rests on.

    ``filler`` is the strength of the filler metal as the rules go by it; ``base`` and ``beta_w`` are those of the
    weaker part, MPa and a bare number, ``base`` cut to the filler's where the rules say so; ``compatible`` says whether
    the elements of the weld strain alike.
    """

    filler: Real | None = None
    base: Real | None = None
    beta_w: Real | None = None
    compatible: Flag = True
    least: Real | None = None
    """Least tensile strength of the parts and, where it counts, of the filler metal; None where ``base`` is it."""

    @property
    def in_tension(self) -> Real | None:
        """Tensile strength, MPa, that a pull square to the throat is held against."""
        return self.base if self.least is None else self.least


class WeldRules(Protocol):
    """Questions about the fillet itself."""

    def required_throat(self, load: WeldLoad, metal: WeldMetal) -> Real:
        """Throat the weld metal needs for the load, mm."""

    def minimum_leg(self, thinner: Real, psi: Real) -> tuple[Real, Source]:
        """Least leg along the plate face for the thinner part, mm."""

    def long_weld_leg(self, throat: Real, length: Real, psi: Real, penetration: Real) -> Real:
        """Leg whose throat, with the long-weld reduction at that leg, is worth ``throat`` over ``length``, mm."""

    def long_weld_factor(self, leg: Real, length: Real, psi: Real, penetration: Real) -> Real:
        """Share of an end-loaded weld's length that counts at the given leg."""

    def counted_leg(self, leg: Real, length: Real, psi: Real, penetration: Real = 0.0) -> Real:
        """Leg that counts in strength on a weld of the given length, mm; 0 when it is too short to carry load."""

    def largest_counted_leg(self, length: Real, psi: Real, penetration: Real = 0.0) -> Real:
        """Leg beyond which a weld of this length gains nothing, mm; 0 when it may carry nothing."""

    @property
    def least_length_source(self) -> Source:
        """Where the least length is ruled."""


class PartRules(Protocol):
    """Questions about the parts beside the weld."""

    def across(self, part: PartMetal) -> Real:
        """Strength of the part in tension across the weld, N per mm of weld."""

    def along(self, part: PartMetal) -> Real:
        """Strength of the part in shear along the weld, N per mm of weld."""

    def together(self, part: PartMetal, shear: Real, pull: Real) -> Real:
        """Use made of the part by a shear and a pull across the weld together, N per mm; 1 is all of it.

        It grows with the forces in proportion. A pull below zero is compression.
        """


class EdgeRule(Protocol):
    """Largest leg along an edge."""

    def __call__(self, thickness: Real) -> tuple[Real, Source]:
        """Largest leg, mm, along an edge of the given thickness, and where that is ruled."""


@dataclass(frozen=True, slots=True)
class FitUp:
    """What a root gap does: ``added`` gives the larger leg, ``largest`` the gap over which no leg makes up for it."""

    added: Callable[[Real], Real]
    free: float
    largest: float
    source: Source


@dataclass(frozen=True, slots=True)
class Scope:
    """Limits of a fillet's scope: least thickness mm, angles rad, yield strengths MPa, each with its words.

    ``families`` are those of the base and filler metals covered. At least one part's grade is stronger than
    ``over_yield``. ``grades`` says which product standards the strengths are meant to come from; ``plain_section`` that
    penetration counts for nothing.
    """

    least_thickness: float
    thickness: Limit
    angles: tuple[float, float]
    angle: Limit
    families: tuple[str, ...] = ("carbon-steel",)
    over_yield: float = 0.0
    largest_yield: float = float("inf")
    steel: Limit | None = None
    end_loaded_laps_only: Limit | None = None
    matching_filler: Limit | None = None
    grades: Limit | None = None
    plain_section: Limit | None = None


@dataclass(frozen=True, slots=True)
class Groove:
    """Preparation asked about: form, included angle in rad, process and position (canonical), by their codes."""

    form: str
    angle: float
    process: str | None
    orientation: str | None


class Unlisted(ValueError):
    """A combination a table does not list: each request field to change, and what would be listed."""

    def __init__(self, *faults: tuple[str, str]) -> None:
        """Keep each field beside its text."""
        super().__init__("; ".join(text for _, text in faults))
        self.faults = faults


@dataclass(frozen=True, slots=True)
class Correlation:
    """Where a rule set has its correlation factor beta_w from: ``own`` for every part, or a table by grade."""

    source: Source
    own: float | None = None


class LesserRule(Protocol):
    """Strength that counts where the filler metal may be the weaker."""

    def __call__(self, f_u_part: Real, f_u_filler: Real) -> Real:
        """Tensile strength, MPa, of the weaker part's and the filler metal's."""


class AlloyRule(Protocol):
    """Strength of weld metal by the alloys that it joins."""

    def __call__(self, alloys: tuple[str, ...], filler: str) -> tuple[float, Source]:
        """Strength, MPa, and its source; raises :class:`Unlisted` for what the table does not list."""


class SoftenedRule(Protocol):
    """How far the metal beside a weld is softened by its heat."""

    def __call__(self, thickness: Real, process: str | None) -> Real | None:
        """Distance from the weld, mm; None where the rule has no value for the process and the thickness."""


@dataclass(frozen=True, slots=True)
class MetalRules:
    """How a rule set finds the strengths of its metals.

    ``filler`` is an example of a filler metal where the rules go by one, None where they do without; ``beta_w`` is None
    where there is no correlation factor. With ``softened`` the parts' strengths are those of the heat-affected zone.
    """

    filler: str | None = None
    beta_w: Correlation | None = None
    lesser: LesserRule | None = None
    by_alloy: AlloyRule | None = None
    softened: SoftenedRule | None = None
    matched_by_group: bool = False
    """Whether filler metals are matched to the parts by the groups of AWS D1.1."""
    hollow_ends: Source | None = None
    """Where it is ruled that the end of a rectangular hollow section in tension takes no directional increase."""
    design_walls: frozenset[str] = frozenset()
    """Materials of hollow sections that are designed with less than their nominal wall."""


class RootLossRule(Protocol):
    """What a fillet between skewed plates loses of its throat at the root."""

    def __call__(self, psi: float, process: str | None, orientation: str | None) -> float | None:
        """Loss, mm; None where the rule does not apply. Raises :class:`Unlisted` for what it does not list."""


class GrooveRules(Protocol):
    """Questions a use case asks of a rule set about a partial-penetration groove."""

    @property
    def face_counts(self) -> bool:
        """Whether face height may be credited."""

    @property
    def by_test(self) -> Source | None:
        """Where the depth is ruled to be the one that tests show, with nothing taken off; None where it is not."""

    def deduction(self, groove: Groove) -> tuple[float, Source]:
        """What the code takes off the prepared depth, mm; raises :class:`Unlisted` for what it does not list."""

    def minimum_throat(self, thinner: float) -> tuple[float, Source] | None:
        """Least throat of such a groove by the thinner part, mm; None where the rules set none."""


@dataclass(frozen=True, slots=True)
class GrooveLoad:
    """Force on a groove weld, N/mm: ``normal`` square to the throat, tension positive; the others shear it."""

    normal: float
    transverse: float
    longitudinal: float

    @property
    def resultant(self) -> float:
        """Size of the force."""
        return math.hypot(self.normal, self.transverse, self.longitudinal)


@dataclass(frozen=True, slots=True)
class HoleLimits:
    """Limits of a weld in a hole or slot, mm, None where not ruled; pitches across and along, between centres."""

    source: Source
    least_width: float | None = None
    largest_width: float | None = None
    longest: float | None = None
    least_filling: float | None = None
    least_pitch: float | None = None
    least_pitch_along: float | None = None


class GrooveWeldRules(Protocol):
    """Questions a use case asks of a rule set about the strength of groove, plug and slot welds."""

    def partial_throat(self, load: GrooveLoad, metal: WeldMetal) -> Real:
        """Throat the weld metal of a partial-penetration groove needs, mm."""

    def base_throat(self, load: GrooveLoad, part: PartMetal) -> Real | None:
        """Throat over which a part's own metal carries the load, mm; None where the rules check the part alone."""

    def flare_throat(self, form: str, radius: float, process: str | None) -> Real:
        """Throat of a flare groove filled flush, mm; raises :class:`Unlisted`."""

    def hole_limits(self, thickness: float, width: float, length: float, filling: float) -> HoleLimits:
        """Limits of a plug or slot in a part of a thickness."""

    def hole_strength(self, area: float, metal: WeldMetal) -> Real:
        """Strength of one plug or slot in shear, N."""

    def hole_fillet_limits(self, thickness: float) -> HoleLimits:
        """Limits of a hole or slot with a fillet all round, through a part of a thickness."""

    def hole_fillet_strength(self, area: float, metal: WeldMetal) -> Real:
        """Strength of one fillet all round, of an effective area, in shear, N."""


Loading = Literal["tension", "compression", "shear"]
Member = Literal["built-up", "stiffener"]
Exposure = Literal["protected", "weathering-steel", "corrosive"]


@dataclass(frozen=True, slots=True)
class Intermittent:
    """Intermittent fillet: length of a segment in mm, None for a gap that is to be found, and what it is to hold.

    ``widths`` are those of parts 1 and 2, mm, None where the rules in use need none.
    """

    segment: float
    loading: Loading
    gap: float | None = None
    staggered: bool = False
    member: Member = "built-up"
    exposure: Exposure = "protected"
    widths: tuple[float, float] | None = None

    def nearer_gap(self, gap: float) -> float:
        """Clear gap to the nearest segment on either side, mm, where ``gap`` is that on one side."""
        return max((gap - self.segment) / 2.0, 0.0) if self.staggered else gap


@dataclass(frozen=True, slots=True)
class GapLimit:
    """Largest gap, gap to the nearest segment on either side, or pitch from centre to centre, mm."""

    measure: Literal["gap", "nearer-gap", "pitch"]
    most: float
    source: Source

    def largest_gap(self, run: Intermittent) -> float:
        """Largest clear gap on one side that keeps to it, mm; negative when none does."""
        if self.measure == "pitch":
            return self.most - run.segment
        if self.measure == "nearer-gap" and run.staggered:
            return 2.0 * self.most + run.segment
        return self.most


class IntermittentRules(Protocol):
    """Questions about intermittent fillets."""

    @property
    def exposure_source(self) -> Source:
        """Where it is ruled that intermittent fillets are not for corrosive conditions."""

    @property
    def exposures(self) -> tuple[Exposure, ...]:
        """Exposures that intermittent fillets are allowed in."""

    def needs_widths(self, run: Intermittent) -> bool:
        """Whether a limit depends on the widths of the parts."""

    def notes(self, run: Intermittent) -> tuple[Note, ...]:
        """Cautions for such a weld."""

    def gap_limits(self, run: Intermittent, parts: tuple[PartMetal, PartMetal]) -> tuple[GapLimit, ...]:
        """Every limit of the gap between segments."""

    def least_segment(self, leg: float, throat: float) -> tuple[float, Source]:
        """Least length of a segment of the size, mm."""

    def end_weld(self, run: Intermittent) -> tuple[float, Source] | None:
        """Least length of the weld at each end, mm, where it is more than a segment's."""


class ConcentricRules(Protocol):
    """Questions about a concentric group of one size, along the force and across it."""

    @property
    def weights(self) -> tuple[float, float]:
        """What a length along the force, and one across it, is worth where strains are compatible."""

    def equivalent_length(self, along: Real, across: Real, compatible: Flag) -> Real:
        """Length along the force that is as strong as the group, mm."""


@dataclass(frozen=True, slots=True)
class TensionStrength:
    """Tension member held by longitudinal welds alone: shear lag, effective area mm2, strengths N."""

    shear_lag: float
    effective_area: float
    by_yield: float
    by_rupture: float


class TensionMemberRule(Protocol):
    """Strength of a tension member held by longitudinal welds alone."""

    def __call__(
        self, part: PartMetal, area: float, length: float, width: float, eccentricity: float
    ) -> TensionStrength:
        """Strength of a member of an area, by the mean length of its two welds and the width between them."""


class LengthLossRules(Protocol):
    """Questions about a weld that is not full size to its ends."""

    def throat(self, needed: Real, length: Real) -> Real:
        """Throat that carries, over what is left of the length, what ``needed`` carries over all of it, mm."""

    def left(self, length: Real, throat: Real) -> Real:
        """What is left of the length, mm."""

    def largest_throat(self, length: Real) -> Real:
        """Throat beyond which what is left may not carry load, mm."""


class StiffenerRules(Protocol):
    """Questions about the long weld of a transverse stiffener."""

    def factor(self, length: Real) -> Real:
        """Share of the weld's length that counts."""

    def throat(self, needed: Real, factor: Real) -> Real:
        """Throat whose reduced strength is still that of ``needed``, mm."""


class PackingRules(Protocol):
    """Questions about packing between the parts of a lap."""

    def added(self, packing: Real, needed: Real) -> Real:
        """Leg that packing adds to the one needed, mm; 0 where it is thick enough to be welded to each part."""

    @property
    def source(self) -> Source:
        """Where it is ruled."""


class RootBendingRules(Protocol):
    """Questions about a fillet from one side, bent about its root."""

    def needed_at(self, load: WeldLoad, metal: WeldMetal, thickness: Real, throat: Real) -> Real:
        """Throat, mm, that carries the bending which a throat causes: that throat times its utilisation."""

    def required_throat(self, load: WeldLoad, metal: WeldMetal, thickness: Real) -> Real:
        """Throat needed, mm, the bending being that of the throat itself."""


@dataclass(frozen=True, slots=True)
class Flange:
    """Unstiffened flange under a plate: web and root of its section, and the width of the plate, mm."""

    web_thickness: float
    plate_width: float
    section: Literal["i", "box"] = "i"
    root_radius: float | None = None
    weld_throat: float | None = None


@dataclass(frozen=True, slots=True)
class FlangeWidths:
    """Widths of a plate on an unstiffened flange, mm; what it holds, N; and where it is ruled."""

    share: float
    effective: float
    least: float
    resistance: float
    source: Source


class FlangeRule(Protocol):
    """Width of a plate that an unstiffened flange holds."""

    def __call__(self, flange: Flange, parts: tuple[PartMetal, PartMetal], strength: float) -> FlangeWidths:
        """Widths for a plate, part 2, of a strength in N/mm on a flange, part 1."""


@dataclass(frozen=True, slots=True)
class FilletOptions:
    """Rules about fillets that only some rule sets have; None where there is none."""

    intermittent: IntermittentRules | None = None
    concentric: ConcentricRules | None = None
    tension_member: TensionMemberRule | None = None
    ends: LengthLossRules | None = None
    stiffener: StiffenerRules | None = None
    packing: PackingRules | None = None
    root_bending: RootBendingRules | None = None
    flange: FlangeRule | None = None
    penetration: Note | None = None
    """On what condition proven penetration counts."""
    needs_root_pass: bool = False
    """Whether proven penetration counts only where the request says how the root pass is made."""
    lap_overlap: Callable[[Real], tuple[Real, Source]] | None = None
    """Least overlap of a lap by its thinner part, mm."""
    packing_elsewhere: str = ""
    """Why packing is not covered, where a clause that is not held here rules on it."""
    least_throats: Mapping[str, Callable[[Real], tuple[Real, Source]]] = field(default_factory=dict)
    """Least throat by the thicker part, mm, by the name of the national rule."""
    instantaneous_centre: bool = False
    """Whether a group may be sized by its instantaneous centre, which rests on the directional increase."""


@dataclass(frozen=True, slots=True)
class GrooveOptions:
    """What a rule set has to say of grooves beside their strength; None where it says nothing.

    ``details`` is the standard whose listed preparations go with the rules; ``by_form`` says that a groove may go by
    its form alone where that standard details none.
    """

    details: str | None = None
    by_form: bool = False
    bearing: Source | None = None
    """Where it is ruled that parts finished to bear take the compression."""
    full: Source | None = None
    """Where a full penetration is ruled to be as strong as the weaker part."""
    partial: Source | None = None
    """Where a partial penetration is ruled."""
    tee_butt: Source | None = None
    """Where it is ruled when a T-butt counts as full strength."""
    one_sided: Source | None = None
    """Where bending that opens the root of a groove from one side is ruled out."""
    proven: Limit | None = None
    """Where proven penetration counts."""
    backing: Limit | None = None
    """What the filler metal must be where backing stays in at a tee or corner in tension."""


@dataclass(frozen=True, slots=True)
class RuleSet:
    """Rules chosen by a request, with their cautions and their limits.

    ``weld`` and ``parts`` are None for practice that claims no strength.
    """

    id: str
    title: str
    editions: tuple[str, ...]
    clauses: tuple[str, ...]
    limits: tuple[Limit, ...]
    weld: WeldRules | None
    parts: PartRules | None
    edge: EdgeRule
    fit_up: FitUp
    scope: Scope
    groove: GrooveRules
    metals: MetalRules = MetalRules()
    root_loss: RootLossRule | None = None
    parameters: Mapping[str, float] = field(default_factory=dict)
    groove_weld: GrooveWeldRules | None = None
    options: FilletOptions = field(default_factory=FilletOptions)
    grooves: GrooveOptions = GrooveOptions()
    size_by: Literal["leg", "throat"] = "leg"
    """What a fillet is specified by."""
    quality: Literal["aws-d1-1-2020", "iso-5817-c"] | None = None
    """Quality level or code that a weld by these rules is usually judged by."""
    readings: tuple[Reading, ...] = ()
    """How clauses are read, for the caller to see."""
