"""Parts and filler metal of a request: strengths looked up or taken as given, and checked against the rules' scope."""

from dataclasses import dataclass

from ..engine.formula import Source, cite
from ..engine.rounding import at_least, at_most
from ..engine.rule_set import PartMetal, RuleSet, WeldMetal
from ..reference.loader import FILLER_METALS, MATERIALS, NoBand
from .answers import Remarks
from .faults import Faults

AISC = "ANSI/AISC 360-22"


@dataclass(frozen=True, slots=True)
class Part:
    """Part of a request: thickness in mm, and either a material's id or its strengths in MPa."""

    thickness: float
    material: str | None = None
    yield_strength: float | None = None
    tensile_strength: float | None = None
    beta_w: float | None = None


@dataclass(frozen=True, slots=True)
class Filler:
    """Filler metal of a request: an id, or a tensile strength in MPa."""

    id: str | None = None
    tensile_strength: float | None = None


@dataclass(frozen=True, slots=True)
class Metals:
    """Metal of both parts and of the weld."""

    parts: tuple[PartMetal, PartMetal]
    weld: WeldMetal


def metals(
    rules: RuleSet,
    parts: tuple[Part, Part],
    filler: Filler | None,
    beta_w: float | None,
    hss_end: bool | None,
    faults: Faults,
    remarks: Remarks,
) -> Metals:
    """Metals the rules will use; ``beta_w`` is the request's own over that of the grades. Faults are added, not raised.

    ``hss_end`` says whether the weld ends a rectangular hollow section in tension; not said, any hollow section is
    taken for one.

    With practice that claims no strength only the thicknesses are used.
    """
    if rules.weld is None:
        if filler is not None:
            faults.inconsistent("#/filler", f"{rules.id} claims no strength, so it uses no filler metal; leave it out")
        plain = (PartMetal(parts[0].thickness), PartMetal(parts[1].thickness))
        return Metals(plain, WeldMetal())
    found = tuple(_part(rules, index, part, beta_w, faults) for index, part in enumerate(parts))
    _thicknesses(rules, parts, faults)
    hollow = [part.material for part in parts if part.material and _is_hollow(part.material)]
    at_hss_end = bool(hollow) if hss_end is None else hss_end
    if rules.family == "aisc" and (at_hss_end or hollow):
        remarks.caution("hollow-section", _about_hollow_section(hss_end, hollow), Source(AISC, "J2.4(a)(2)"))
    weaker = min(found, key=lambda part: part.tensile_strength or 0.0)
    filler_strength = _filler(rules, filler, weaker, faults, remarks)
    weld = WeldMetal(filler_strength, weaker.tensile_strength, weaker.beta_w, compatible=not at_hss_end)
    return Metals((found[0], found[1]), weld)


def _about_hollow_section(hss_end: bool | None, hollow: list[str]) -> str:
    """Say what becomes of the directional increase at a hollow section, and on whose word."""
    if hss_end is None:
        return f"The directional increase is left out because {', '.join(hollow)} is a hollow section."
    if hss_end:
        return "The directional increase is left out at the end of a rectangular hollow section in tension."
    return (
        f"The directional increase is kept at {', '.join(hollow)} on the request's word that this is no end of a"
        " rectangular hollow section in tension."
    )


def _is_hollow(material: str) -> bool:
    return MATERIALS[material].form == "hollow-section"


def _thicknesses(rules: RuleSet, parts: tuple[Part, Part], faults: Faults) -> None:
    """Refuse parts thinner than the rules cover."""
    limit = rules.scope.thickness
    for index, part in enumerate(parts):
        if not at_least(part.thickness, rules.scope.least_thickness):
            faults.out_of_scope(
                f"#/parts/{index}/thickness",
                f"{faults.units.text(part.thickness)} is too thin: {rules.id} covers {limit.text} ({limit.source})",
            )


def _part(rules: RuleSet, index: int, part: Part, beta_w: float | None, faults: Faults) -> PartMetal:
    """Strengths of one part."""
    pointer = f"#/parts/{index}"
    if part.material is not None:
        f_y, f_u, own_beta_w = _looked_up(rules, pointer, part.material, part.thickness, faults)
        # A grade the table has no row for may still be welded with a beta_w the caller vouches for.
        own_beta_w = beta_w if beta_w is not None else own_beta_w
        if rules.family == "en" and own_beta_w is None and MATERIALS[part.material].family == "carbon-steel":
            faults.out_of_scope(
                f"{pointer}/material",
                f"{part.material} has no row in EN 1993-1-8:2005 Table 4.1; send parameters.beta_w for it",
            )
    elif part.yield_strength is None or part.tensile_strength is None:
        faults.inconsistent(
            pointer, f"{rules.id} needs the part's strength: a material, or yield_strength and tensile_strength"
        )
        return PartMetal(part.thickness, 1.0, 1.0, 1.0)
    else:
        f_y, f_u = part.yield_strength, part.tensile_strength
        own_beta_w = beta_w if beta_w is not None else part.beta_w
        if rules.family == "en" and own_beta_w is None:
            faults.inconsistent(
                f"{pointer}/beta_w", "strengths given by hand need beta_w with EN 1993-1-8, such as 0.9 for S355"
            )
        if rules.family != "en" and part.beta_w is not None:
            faults.inconsistent(f"{pointer}/beta_w", f"beta_w belongs to EN 1993-1-8, not to {rules.id}; leave it out")
        if f_y > f_u:
            faults.inconsistent(f"{pointer}/yield_strength", "the yield strength is over the tensile strength")
    steel = rules.scope.steel
    if steel and not at_most(f_y, rules.scope.largest_yield):
        faults.out_of_scope(
            f"{pointer}/{'material' if part.material else 'yield_strength'}",
            f"yield strength {faults.units.stress_text(f_y)}: {rules.id} covers {steel.text} ({steel.source})",
        )
    return PartMetal(part.thickness, f_y, f_u, own_beta_w)


def _looked_up(
    rules: RuleSet, pointer: str, material_id: str, thickness: float, faults: Faults
) -> tuple[float, float, float | None]:
    """Strengths of a listed material at a thickness."""
    material = MATERIALS[material_id]
    if material.family != "carbon-steel":
        faults.out_of_scope(
            f"{pointer}/material", f"{rules.id} covers carbon and low-alloy steel; {material_id} is {material.family}"
        )
    try:
        band = material.at(thickness)
    except NoBand as error:
        faults.out_of_scope(f"{pointer}/thickness", str(error))
        return 1.0, 1.0, 1.0
    cite(Source("", f"{material_id}: {band.source}", band.mark))
    return band.yield_strength, band.tensile_strength, material.beta_w


def _filler(rules: RuleSet, filler: Filler | None, weaker: PartMetal, faults: Faults, remarks: Remarks) -> float | None:
    """Tensile strength of the filler metal, MPa, where the rules rest on it."""
    strength = None
    if filler is not None:
        if filler.id is None:
            strength = filler.tensile_strength
        else:
            listed = FILLER_METALS[filler.id]
            strength = listed.tensile_strength
            cite(Source("", f"{filler.id}: {listed.source}", listed.mark))
            if listed.family != "carbon-steel":
                faults.out_of_scope("#/filler", f"{filler.id} is {listed.family}; {rules.id} covers carbon steel")
    elif rules.family == "aisc":
        faults.inconsistent("#/filler", f'{rules.id} goes by the filler metal: send one such as "E70"')
    matching = rules.scope.matching_filler
    base = weaker.tensile_strength
    if matching and strength is not None and isinstance(base, float) and not at_least(strength, base):
        remarks.caution(
            "undermatched-filler",
            f"The filler metal's {faults.units.stress_text(strength)} is under the part's"
            f" {faults.units.stress_text(base)}: the rules expect {matching.text}.",
            matching.source,
        )
    return strength
