"""Groups, members and flanges that a fillet's size is asked for: their loads, and their fields of the answer."""

from ...engine import loads
from ...engine.formula import about, off_the_sheet
from ...engine.rounding import at_least, at_most
from ...engine.rule_set import PartMetal, RuleSet, WeldLoad, WeldRules
from ..core.units import Units
from ..joints.metals import Metals
from .answer import ConcentricGroup, FlangeWidth, PackedFillet, TensionMemberStrength, WeldBalance
from .checks import mean_length
from .remarks import Beyond
from .request import BalancedForce, ConcentricForce, FilletSizeRequest, Packing, SharedForce
from .sizing import Fillets, Sizes, shared_load


def packing(asked: Packing, sizes: Sizes) -> PackedFillet:
    """Packing, and whether the leg reaches over it."""
    added = float(sizes.packing_leg)
    return PackedFillet(asked.thickness, added, "over-packing" if added > 0.0 else "to-each-part")


def concentric_loads(
    load: ConcentricForce, rules: RuleSet, found: Metals, psi: float
) -> tuple[tuple[WeldLoad, ...], WeldLoad]:
    """Load on the equivalent length along the force, and that on the parts beside each kind of weld."""
    concentric = rules.options.concentric
    assert concentric is not None  # noqa: S101 - refused before
    length = concentric.equivalent_length(load.longitudinal_length, load.transverse_length, bool(found.weld.compatible))
    per_length = loads.force_per_length(P=load.force, m=1.0, L=length)
    made = shared_load("lap", 1, psi, per_length, 0.0)
    along, across = _worth(load, rules, found)
    beside = WeldLoad(0.0, 0.0, along * per_length, across * per_length, per_length, 0.0, psi)
    return made, beside


def _worth(load: ConcentricForce, rules: RuleSet, found: Metals) -> tuple[float, float]:
    """What a length along the force, and one across it, carries for one of the equivalent length."""
    plain, weighted = _lengths(load, rules)
    assert rules.options.concentric is not None  # noqa: S101 - refused before
    return rules.options.concentric.weights if found.weld.compatible and weighted > plain else (1.0, 1.0)


def _lengths(load: ConcentricForce, rules: RuleSet) -> tuple[float, float]:
    """Equivalent length as the plain sum and as the weighted one, mm."""
    assert rules.options.concentric is not None  # noqa: S101 - refused before
    along, across = rules.options.concentric.weights
    plain = load.longitudinal_length + load.transverse_length
    return plain, along * load.longitudinal_length + across * load.transverse_length


def concentric(load: ConcentricForce, rules: RuleSet, found: Metals, sizes: Sizes) -> ConcentricGroup:
    """Strength of a concentric group at the size found."""
    plain, weighted = _lengths(load, rules)
    counts = _worth(load, rules, found) != (1.0, 1.0)
    assert sizes.weld_strength is not None  # noqa: S101 - only rules that claim strength have such groups
    strength = float(sizes.weld_strength)
    return ConcentricGroup(
        equivalent_length=weighted if counts else plain,
        plain_sum=strength * plain,
        weighted_sum=strength * weighted if found.weld.compatible else None,
        counts="weighted-sum" if counts else "plain-sum",
        strength=strength * (weighted if counts else plain),
    )


def shares(load: BalancedForce) -> tuple[float, float]:
    """Force in each of two balanced side welds, N."""
    first = float(loads.balanced_share(P=load.force, b=load.width, c=load.centroid))
    return first, load.force - first


def balance(
    load: BalancedForce, fillets: Fillets, sizes: Sizes, reached: bool, units: Units
) -> tuple[WeldBalance, str | None]:
    """Two balanced side welds, and why their lengths are more than the load needs, if they are."""
    forces = shares(load)
    least: tuple[float, float] | None = None
    why = None
    weld = fillets.rules.weld
    if reached and sizes.weld_strength is not None and weld is not None:
        lengths = [force / float(sizes.weld_strength) for force in forces]
        shortest = least_length(weld, float(sizes.net_leg), float(sizes.psi), float(fillets.penetration))
        if not at_least(min(lengths), shortest):
            # Both grow alike, so that they stay balanced about the centroid.
            lengths = [length * shortest / min(lengths) for length in lengths]
            why = (
                f"The shorter of the balanced welds needs the least length of its size, {units.text(shortest)}, and the"
                f" other grows with it ({weld.least_length_source})."
            )
        least = (lengths[0], lengths[1])
    first, second = (load.length * force / load.force for force in forces)
    return WeldBalance(forces, (first, second), least), why


def least_length(weld: WeldRules, leg: float, psi: float, penetration: float) -> float:
    """Least length, mm, over which all of a leg counts, found by halving."""
    short, long = 0.0, 100.0 * (leg + penetration) + 100.0
    with off_the_sheet():
        for _ in range(60):
            middle = (short + long) / 2.0
            if at_least(float(weld.counted_leg(leg, middle, psi, penetration)), leg):
                long = middle
            else:
                short = middle
    return long


def tension_member(
    request: FilletSizeRequest, rules: RuleSet, found: Metals, units: Units
) -> tuple[TensionMemberStrength, list[Beyond]]:
    """Strength of the tension member, and whether it is too weak."""
    member, load, rule = request.tension_member, request.load, rules.options.tension_member
    assert member is not None and rule is not None  # noqa: S101 - refused before
    assert isinstance(load, SharedForce | BalancedForce)  # noqa: S101 - refused before
    width = load.width if isinstance(load, BalancedForce) else member.width
    length, part = mean_length(request), found.parts[1]
    assert width is not None and length is not None  # noqa: S101 - refused before
    area = member.area if member.area is not None else width * float(part.thickness)
    with about("tension member"):
        strength = rule(part, area, length, width, member.eccentricity)
    carries = min(strength.by_yield, strength.by_rupture)
    beyond = []
    if not at_most(load.force, carries):
        beyond.append(
            Beyond(
                "tension-member",
                f"The member itself carries {units.force(carries)['text']} only. Shear lag leaves"
                f" {strength.shear_lag:.3g} of its area in rupture; lengthen the welds, or weld its end as well.",
            )
        )
    member_strength = TensionMemberStrength(
        strength.shear_lag, strength.effective_area, strength.by_yield, strength.by_rupture, load.force / carries
    )
    return member_strength, beyond


def unstiffened_flange(
    request: FilletSizeRequest, rules: RuleSet, found: Metals, units: Units
) -> tuple[FlangeWidth, list[Beyond]]:
    """Width of the plate that the flange holds, and whether the flange must be stiffened."""
    flange, rule = request.unstiffened_flange, rules.options.flange
    assert flange is not None and rule is not None and rules.parts is not None  # noqa: S101 - refused before
    with about("plate"):
        widths = rule(flange, found.parts, plate_strength(rules, found.parts[1]))
    stiffen = not at_least(widths.effective, widths.least)
    beyond = []
    if stiffen:
        beyond.append(
            Beyond(
                "flange",
                f"The flange holds {units.text(widths.effective)} of the plate and must hold"
                f" {units.text(widths.least)}. Stiffen the flange ({widths.source}).",
            )
        )
    return FlangeWidth(widths.share, widths.effective, widths.least, widths.resistance, stiffen), beyond


def plate_strength(rules: RuleSet, plate: PartMetal) -> float:
    """Strength of a plate in tension, N/mm of its width."""
    assert rules.parts is not None  # noqa: S101 - only rules that claim strength are asked
    return float(rules.parts.across(plate))
