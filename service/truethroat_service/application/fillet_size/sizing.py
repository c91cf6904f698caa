"""Sizing of fillets: the arithmetic of the use case, for one joint on floats or for a list on columns.

All joints of a call share the rule set, the kind of joint, the number of sides and what the size is based on; their
numbers may be columns of one length. Engine units throughout.
"""

from dataclasses import dataclass
from math import pi
from typing import Literal

from ...engine import loads
from ...engine.formula import Source, about
from ...engine.numeric import Flag, Real, magnitude, maximum, minimum, where
from ...engine.rounding import SAME, at_most, up
from ...engine.rule_set import PartMetal, RuleSet, WeldLoad, WeldMetal, WeldRules
from ...engine.section import equal_leg, equal_leg_throat
from ...practice import thin_part
from ...standards.aws_d1_1_2020 import s4_4_skewed_fillets, s7_21_fit_up

Kind = Literal["tee", "lap", "inside-corner"]
Basis = Literal["load", "full-strength", "thin-part"]


@dataclass(frozen=True, slots=True)
class Fillets:
    """Fillets to size.

    ``side_loads`` holds one load a side, empty for the thin-part basis; ``length`` is None where none was given;
    ``edges`` are the thicknesses of the edges that the welds run along; ``penetration`` is proven.
    """

    rules: RuleSet
    kind: Kind
    sides: int
    basis: Basis
    psi: Real
    parts: tuple[PartMetal, PartMetal]
    metal: WeldMetal
    side_loads: tuple[WeldLoad, ...]
    length: Real | None
    end_loaded: bool
    edges: tuple[Real, ...]
    gap: Real
    penetration: Real
    by_throat: bool
    step: Real
    longest: Real | None = None
    """Length, mm, of the longest weld, which the long-weld reduction goes by."""
    leg_tolerance: float = 0.0
    """How much smaller than specified both legs may be laid, mm."""
    root_losses: tuple[float | None, ...] = (None, None)
    """Throat each side loses at its root, mm; None where none is lost."""
    stiffener_length: Real | None = None
    """Length, mm, by which the weld of a transverse stiffener is reduced; None where it is none."""
    full_size_ends: bool = True
    root_bending: bool = False
    packing: Real | None = None
    """Thickness of packing between the parts, mm; None where there is none."""
    part_loads: tuple[WeldLoad, ...] = ()
    """Loads on the parts, each at another place beside the welds, where they are not that of the first side."""
    part_1_sheared: bool = False
    """Whether a pull off part 1 of a tee reaches its supports as shear through its thickness beside each weld."""
    least_throat: tuple[Real, Source] | None = None
    """Least throat, mm, beyond that of the rule set, and where it is ruled."""


@dataclass(frozen=True, slots=True)
class Sizes:
    """Sizes and strengths found; legs in mm along the plate faces, strengths in N/mm, None where not claimed.

    ``psi`` is the angle on the side that needs the larger leg, ``required_psi`` that on the side where the weld metal
    does, ``minimum_psi`` that on the blunter side, where a least throat takes the larger leg. ``leg`` is the size
    rounded up, whether or not the limits allow it; ``reached`` says whether they do.
    """

    psi: Real
    required_psi: Real
    minimum_psi: Real
    required_leg: Real
    minimum_leg: Real
    minimum_source: Source
    maximum_leg: Real | None
    maximum_source: Source | None
    gap_leg: Real
    packing_leg: Real
    leg: Real
    largest_counted_leg: Real | None
    length_factor: Real | None
    weld_strength: Real | None
    weld_utilisation: Real | None
    base_strength: tuple[Real, Real] | None
    base_utilisation: tuple[Real, Real] | None
    within_maximum: Flag
    packing_holds: Flag
    long_enough: Flag
    weld_carries: Flag
    parts_carry: Flag

    @property
    def net_leg(self) -> Real:
        """Leg as specified, without what makes up for a gap or reaches over packing, mm."""
        return self.leg - self.gap_leg - self.packing_leg

    @property
    def reached(self) -> Flag:
        """Whether the size satisfies every limit."""
        return self.within_maximum & self.packing_holds & self.long_enough & self.weld_carries & self.parts_carry


def side_angles(kind: Kind, sides: int, psi: Real) -> tuple[Real, ...]:
    """Angle between the plates on each side; the far side of a tee has the rest of 180 deg."""
    if sides == 1:
        return (psi,)
    return (psi, pi - psi if kind == "tee" else psi)


def shared_load(kind: Kind, sides: int, psi: Real, per_length: Real, theta: Real) -> tuple[WeldLoad, ...]:
    """Load on each side from a force per length in the plane of part 2 at ``theta`` from the weld's axis."""
    made = []
    for number, angle in enumerate(side_angles(kind, sides, psi), start=1):
        with about(f"side {number}" if sides == 2 else ""):
            along = loads.along(f=per_length, theta=theta)
            normal = loads.off_part_1(f=per_length, theta=theta, psi=angle)
            transverse = loads.towards_weld(f=per_length, theta=theta, psi=angle)
            across = loads.across(n=normal, t=transverse)
        made.append(WeldLoad(normal, transverse, along, across, per_length, theta, angle))
    return tuple(made)


def component_load(
    kind: Kind, sides: int, psi: Real, normal: Real, transverse: Real, longitudinal: Real
) -> tuple[WeldLoad, ...]:
    """Load on each side from force components per length; what pushes towards one side pulls from the other."""
    across = loads.across(n=normal, t=transverse)
    resultant = loads.resultant(x=across, l=longitudinal)
    theta = loads.angle_to_axis(x=across, l=longitudinal)
    return tuple(
        WeldLoad(normal, sign * transverse, longitudinal, across, resultant, theta, angle)
        for sign, angle in zip((1.0, -1.0), side_angles(kind, sides, psi), strict=False)
    )


def thickness_shares(kind: Kind, sides: int) -> tuple[tuple[float, float], tuple[float, float]]:
    """How many welds load each part's thickness, in shear along them and in tension across them.

    Both welds of a tee lie on the two faces of part 2, which they share; part 1 shears beside each weld apart. The
    welds of a lap lie on two edges: they shear apart, but the pull across both runs through each part once.
    """
    if sides == 1:
        return ((1.0, 1.0), (1.0, 1.0))
    if kind == "tee":
        return ((1.0, 1.0), (2.0, 2.0))
    return ((1.0, 2.0), (1.0, 2.0))


def size(fillets: Fillets) -> Sizes:
    """Size fillets: what the weld metal needs, the limits, the step up, then the strength at that size."""
    rules = fillets.rules
    thinner = minimum(fillets.parts[0].thickness, fillets.parts[1].thickness)
    required_psi, required_leg, throats = _required(fillets, thinner)
    blunter = _blunter(fillets)
    minimum_leg, minimum_source = (
        (0.0 * thinner, thin_part.NO_LEAST_SIZE) if rules.weld is None else rules.weld.minimum_leg(thinner, blunter)
    )
    if fillets.least_throat is not None:
        least, minimum_source = fillets.least_throat
        minimum_leg = maximum(minimum_leg, equal_leg(a=least, psi=blunter))
    psi = where(minimum_leg > required_leg, blunter, required_psi)
    gap_leg = s7_21_fit_up.along_the_face(g_add=rules.fit_up.added(fillets.gap), psi=psi)
    # What is needed with the tolerance is what is laid, which packing has to be thicker than.
    needed_leg = maximum(required_leg, minimum_leg) + fillets.leg_tolerance
    packing_leg = _packing_leg(fillets, needed_leg)
    unrounded = needed_leg + gap_leg + packing_leg
    if fillets.by_throat:
        throat = up(equal_leg_throat(z=unrounded, psi=psi), fillets.step)
        leg = equal_leg(a=throat, psi=psi)
    else:
        leg = up(unrounded, fillets.step)
    maximum_leg, maximum_source = _largest_along_edges(fillets)
    net_leg = leg - gap_leg - packing_leg
    within_maximum: Flag = True if maximum_leg is None else at_most(net_leg, maximum_leg)
    # Packing that the leg does not reach over has a weld of its own along its edge.
    packing_holds: Flag = True if fillets.packing is None else (packing_leg > 0.0) | at_most(net_leg, fillets.packing)
    strength, at_worst = _Strength(), _Strength()
    if rules.weld is not None:
        strength = at_worst = _strength(fillets, rules.weld, throats, net_leg)
        if fillets.leg_tolerance > 0.0:
            at_worst = _strength(fillets, rules.weld, throats, net_leg - fillets.leg_tolerance)
    most = None if rules.weld is None or fillets.length is None else _largest_counted_leg(fillets, rules.weld, psi)
    base_strength, base_utilisation = _base_metal(fillets)
    parts_carry: Flag = (
        True if base_utilisation is None else at_most(maximum(base_utilisation[0], base_utilisation[1]), 1.0)
    )
    return Sizes(
        psi=psi,
        required_psi=required_psi,
        minimum_psi=blunter,
        required_leg=required_leg,
        minimum_leg=minimum_leg,
        minimum_source=minimum_source,
        maximum_leg=maximum_leg,
        maximum_source=maximum_source,
        gap_leg=gap_leg,
        packing_leg=packing_leg,
        leg=leg,
        largest_counted_leg=most,
        length_factor=at_worst.factor,
        weld_strength=at_worst.weld,
        weld_utilisation=at_worst.utilisation,
        base_strength=base_strength,
        base_utilisation=base_utilisation,
        within_maximum=within_maximum,
        packing_holds=packing_holds,
        long_enough=True if most is None else most > 0.0,
        # Laid in full, it may be too large for its length; laid short, too small for its load.
        weld_carries=_carries(strength) & _carries(at_worst),
        parts_carry=parts_carry,
    )


def _largest_along_edges(fillets: Fillets) -> tuple[Real | None, Source | None]:
    """Largest leg along the thinnest edge that carries weld, mm, and where it is ruled."""
    if not fillets.edges:
        return None, None
    thinnest = fillets.edges[0]
    for edge in fillets.edges[1:]:
        thinnest = minimum(thinnest, edge)
    return fillets.rules.edge(thinnest)


def _blunter(fillets: Fillets) -> Real:
    """Angle between the plates on the blunter side, where the same leg leaves the lesser throat."""
    angles = side_angles(fillets.kind, fillets.sides, fillets.psi)
    return angles[0] if fillets.sides == 1 else maximum(angles[0], angles[1])


def _packing_leg(fillets: Fillets, needed_leg: Real) -> Real:
    """Leg that reaches over packing, mm."""
    rule = fillets.rules.options.packing
    return 0.0 * needed_leg if fillets.packing is None or rule is None else rule.added(fillets.packing, needed_leg)


def _required(fillets: Fillets, thinner: Real) -> tuple[Real, Real, tuple[Real, ...]]:
    """Angle and leg of the side that needs the larger leg, and the throat the weld metal needs on each side."""
    weld = fillets.rules.weld
    if weld is None:
        rule = thin_part.leg_from_one_side if fillets.sides == 1 else thin_part.leg_from_two_sides
        return _blunter(fillets), rule(t=thinner), ()
    legs, throats = [], []
    for number, (load, loss) in enumerate(zip(fillets.side_loads, fillets.root_losses, strict=False), start=1):
        with about(f"side {number}" if fillets.sides == 2 else ""):
            throat = _needed_throat(fillets, weld, load)
            throats.append(throat)
            if fillets.end_loaded and fillets.longest is not None:
                leg = weld.long_weld_leg(throat, fillets.longest, load.psi, fillets.penetration - (loss or 0.0))
            else:
                throat = _made_up_for_length(fillets, throat)
                gross = throat if loss is None else s4_4_skewed_fillets.throat_before_loss(a_req=throat, Z=loss)
                leg = equal_leg(a=gross - fillets.penetration, psi=load.psi)
            legs.append(maximum(leg, 0.0 * leg))
    if fillets.sides == 1:
        return fillets.side_loads[0].psi, legs[0], tuple(throats)
    first = legs[0] >= legs[1]
    psi = where(first, fillets.side_loads[0].psi, fillets.side_loads[1].psi)
    return psi, maximum(legs[0], legs[1]), tuple(throats)


def _needed_throat(fillets: Fillets, weld: WeldRules, load: WeldLoad) -> Real:
    """Throat the weld metal needs on one side, were the whole length to count."""
    bending = fillets.rules.options.root_bending
    if fillets.root_bending and bending is not None:
        return bending.required_throat(load, fillets.metal, fillets.parts[1].thickness)
    return weld.required_throat(load, fillets.metal)


def _made_up_for_length(fillets: Fillets, throat: Real) -> Real:
    """Throat made larger for what the length of a stiffener's weld, or its ends, take off."""
    options = fillets.rules.options
    if fillets.stiffener_length is not None and options.stiffener is not None:
        throat = options.stiffener.throat(throat, options.stiffener.factor(fillets.stiffener_length))
    if not fillets.full_size_ends and options.ends is not None and fillets.length is not None:
        throat = options.ends.throat(throat, fillets.length)
    return throat


def _largest_counted_leg(fillets: Fillets, weld: WeldRules, psi: Real) -> Real:
    """Leg beyond which a weld of the given length gains nothing, mm."""
    assert fillets.length is not None  # noqa: S101 - asked only then
    ends = fillets.rules.options.ends
    if fillets.full_size_ends or ends is None:
        return weld.largest_counted_leg(fillets.length, psi, fillets.penetration)
    throat = ends.largest_throat(fillets.length)
    return equal_leg(a=maximum(throat - fillets.penetration, 0.0 * throat), psi=psi)


def _carries(strength: "_Strength") -> Flag:
    """Whether no more is used of a weld than it has."""
    return True if strength.utilisation is None else at_most(strength.utilisation, 1.0)


@dataclass(frozen=True, slots=True)
class _Strength:
    """Strength of one weld in the direction of its load, the worse side's."""

    factor: Real | None = None
    weld: Real | None = None
    utilisation: Real | None = None


def _strength(fillets: Fillets, weld: WeldRules, throats: tuple[Real, ...], leg: Real) -> _Strength:
    """Strength and utilisation at a leg, gap and packing already taken off."""
    length, options = fillets.length, fillets.rules.options
    worst: Real | None = None
    carries: Flag = True
    least_factor: Real = 1.0
    for needed, load, loss in zip(throats, fillets.side_loads, fillets.root_losses, strict=False):
        beyond = fillets.penetration - (loss or 0.0)
        left = length
        if not fillets.full_size_ends and options.ends is not None and length is not None:
            left = options.ends.left(length, equal_leg_throat(z=leg, psi=load.psi) + beyond)
        counted = leg if left is None else weld.counted_leg(leg, left, load.psi, beyond)
        throat = equal_leg_throat(z=counted, psi=load.psi)
        # Penetration adds to a weld that carries, not to one too short to; a skewed root takes its loss off.
        throat = where(counted > 0.0, throat + beyond, throat)
        factor: Real = 1.0
        if fillets.end_loaded and fillets.longest is not None:
            factor = maximum(weld.long_weld_factor(leg, fillets.longest, load.psi, beyond), 0.0)
        elif left is not None and length is not None:
            factor = left / length
        if fillets.stiffener_length is not None and options.stiffener is not None:
            factor = factor * options.stiffener.factor(fillets.stiffener_length)
        worth = throat * factor
        carries = carries & (worth > 0.0)
        asked = needed
        if fillets.root_bending and options.root_bending is not None:
            # Bending is the throat's own: at another throat than the one needed, another is needed.
            tried = maximum(worth, SAME * needed)
            asked = options.root_bending.needed_at(load, fillets.metal, fillets.parts[1].thickness, tried)
        # A weld that may not carry load is used beyond any measure; the answer shows no number for it.
        used = asked / maximum(worth, SAME * needed + SAME)
        worst = used if worst is None else maximum(worst, used)
        least_factor = minimum(least_factor, factor)
    assert worst is not None  # noqa: S101 - rules with a weld come with loads
    strength = fillets.side_loads[0].resultant / worst
    return _Strength(least_factor, where(carries, strength, 0.0 * strength), worst)


def _base_metal(fillets: Fillets) -> tuple[tuple[Real, Real] | None, tuple[Real, Real] | None]:
    """Strength of both parts beside one weld in the direction of the load, and the use made of it."""
    rules = fillets.rules.parts
    if rules is None:
        return None, None
    strengths, used = [], []
    shares = thickness_shares(fillets.kind, fillets.sides)
    for number, (part, (in_shear, in_tension)) in enumerate(zip(fillets.parts, shares, strict=True), start=1):
        use: Real = 0.0
        with about(f"part {number}"):
            for load in fillets.part_loads or fillets.side_loads[:1]:
                shear, pull = load.longitudinal, load.across
                if number == 1 and fillets.part_1_sheared:
                    shear, pull = loads.through_part_1(n=load.normal, l=shear), magnitude(load.transverse)
                use = maximum(use, rules.together(part, in_shear * shear, in_tension * pull))
        used.append(use)
        strengths.append(fillets.side_loads[0].resultant / use)
    return (strengths[0], strengths[1]), (used[0], used[1])
