"""Parts and filler metal of a request: strengths looked up or taken as given, and checked against the rules' scope."""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Annotated, Any, Literal

from ...engine.formula import Source, about, cite
from ...engine.rounding import SAME, at_least, at_most
from ...engine.rule_set import PartMetal, RuleSet, Unlisted, WeldMetal
from ...reference.loader import FILLER_METALS, MATERIALS, NoBand
from ...reference.loader import process as process_of
from ...standards.aisc_360_22 import b4_2_design_wall
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..core.shape import As, Form, Numbered, OrName, ToldBy, form
from .given import FILLER_IDS, MATERIAL_IDS, STRENGTH, THICKNESS

AISC = "ANSI/AISC 360-22"
EN_1993_1_8 = "EN 1993-1-8:2005"

FAMILIES: Mapping[str, str] = MappingProxyType(
    {"carbon-steel": "carbon and low-alloy steel", "stainless": "stainless steel", "aluminium": "aluminium"}
)
"""Families of metal, in words."""


@dataclass(frozen=True, slots=True)
class Part:
    """Part of a request: its thickness, and either a listed material or its strengths."""

    thickness: Annotated[float, THICKNESS, "Thickness."]
    material: Annotated[str | None, MATERIAL_IDS, "Material by its designation; see /v1/materials."] = None
    yield_strength: Annotated[float | None, STRENGTH, "Yield strength."] = None
    tensile_strength: Annotated[float | None, STRENGTH, "Tensile strength."] = None
    beta_w: Annotated[
        float | None, Numbered(0.5, 1.5), "Correlation factor of EN 1993-1-8:2005, which requires it."
    ] = None
    wall: Annotated[
        Literal["design", "nominal"] | None,
        "Which wall of a hollow section the thickness is, with AISC rules: the design wall, which is taken by"
        " default, or the nominal wall.",
    ] = None


PART_FORMS = (
    (("material",), form("MaterialPart", "Part of a listed material.", Part, "thickness!", "material!", "wall")),
    (
        ("yield_strength", "tensile_strength", "beta_w"),
        form(
            "StrengthPart",
            "Part of given strength.",
            Part,
            "thickness!",
            "yield_strength!",
            "tensile_strength!",
            "beta_w",
        ),
    ),
    ((), form("PlainPart", "Part with a thickness only, for rules that claim no strength.", Part, "thickness!")),
)
"""A part as a request describes it."""

AnyPart = Annotated[Part, ToldBy(PART_FORMS)]


@dataclass(frozen=True, slots=True)
class Filler:
    """Filler metal of given strength."""

    id: str | None = None
    tensile_strength: Annotated[float | None, STRENGTH, "Tensile strength of the deposited metal."] = None


def _filler_named(name: str) -> Filler:
    return Filler(id=name)


FILLER_FORM = form("Filler", "Filler metal of given strength.", Filler, "tensile_strength!")
AnyFiller = Annotated[
    Filler,
    OrName(FILLER_IDS, _filler_named, FILLER_FORM),
    "Filler metal: an id (see /v1/filler-metals) or its strength.",
]


def _sorted_parameters(**given: float) -> tuple[tuple[str, float], ...]:
    return tuple(sorted(given.items()))


def _parameters() -> Form:
    """Parameters of a request, which load into pairs of name and value in a fixed order."""

    def factor(words: str, least: float, most: float) -> Any:
        return Annotated[float | None, Numbered(least, most), words]

    return form(
        "Parameters",
        "National or contract parameters that replace the rule set's own.",
        tuple,
        "gamma_m2",
        "gamma_m0",
        "gamma_mw",
        "beta_w",
        makes=_sorted_parameters,
        gamma_m2=factor("Partial factor of welds, EN 1993-1-8.", 1.0, 2.0),
        gamma_m0=factor("Partial factor of cross-sections, EN 1993-1-1.", 1.0, 2.0),
        gamma_mw=factor("Partial factor of welds, EN 1999-1-1.", 1.0, 2.0),
        beta_w=factor("Correlation factor of both parts; it replaces that of their grades.", 0.5, 1.5),
    )


Parameters = Annotated[
    tuple[tuple[str, float], ...], As(_parameters()), "Parameters that replace the rule set's own; Eurocodes only."
]


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
    process: str | None = None,
) -> Metals:
    """Metals the rules will use; ``beta_w`` is the request's own over that of the grades. Faults are added, not raised.

    ``hss_end`` says whether the weld ends a rectangular hollow section in tension; with None every hollow section is
    taken as one.

    With practice that claims no strength only the thicknesses are used.
    """
    if rules.weld is None:
        if filler is not None:
            faults.inconsistent("#/filler", f"does not apply to {rules.id}, which claims no strength; leave it out")
        plain = (PartMetal(parts[0].thickness), PartMetal(parts[1].thickness))
        return Metals(plain, WeldMetal())
    found = tuple(_part(rules, index, part, beta_w, faults) for index, part in enumerate(parts))
    _thicknesses(rules, parts, faults)
    _strong_enough(rules, parts, faults)
    hollow = [part.material for part in parts if part.material and is_hollow(part.material)]
    at_hss_end = bool(hollow) if hss_end is None else hss_end
    if rules.metals.hollow_ends is not None and (at_hss_end or hollow):
        remarks.caution("hollow-section", _about_hollow_section(hss_end, hollow), rules.metals.hollow_ends)
    _remark_on_walls(rules, parts, faults, remarks)
    _remark(rules, parts, found, beta_w, process, faults, remarks)
    # The lower grade is taken for the one whose weld is worth less: at one tensile strength, of the higher beta_w.
    weaker = min(found, key=lambda part: (part.tensile_strength or 0.0) / (part.beta_w or 1.0))
    filler_strength = _filler(rules, filler, parts, weaker, faults, remarks)
    base = weaker.tensile_strength
    # The pull square to the throat is held against the lower tensile strength, whatever its beta_w (4.5.3.2(7)).
    least = min((part.tensile_strength for part in found if part.tensile_strength is not None), default=None)
    if rules.metals.lesser is not None and base is not None and least is not None and filler_strength is not None:
        base, least = (rules.metals.lesser(f_u_part=f_u, f_u_filler=filler_strength) for f_u in (base, least))
    weld = WeldMetal(filler_strength, base, weaker.beta_w, compatible=not at_hss_end, least=least)
    return Metals((found[0], found[1]), weld)


def _about_hollow_section(hss_end: bool | None, hollow: list[str]) -> str:
    """Say what becomes of the directional increase at a hollow section, and on whose word."""
    if hss_end is None:
        return f"The directional increase is left out, because {', '.join(hollow)} is a hollow section."
    if hss_end:
        return "The directional increase is left out at the end of a rectangular hollow section in tension."
    return (
        f"The directional increase counts at {', '.join(hollow)}, because the request says that the weld does not end a"
        " rectangular hollow section in tension."
    )


def is_hollow(material: str) -> bool:
    """Whether a listed material is that of hollow sections."""
    return MATERIALS[material].form == "hollow-section"


def check_scope(rules: RuleSet, parts: tuple[Part, Part], faults: Faults) -> None:
    """Refuse parts of a metal or a thickness that the rules do not cover, where no strength is asked for."""
    for index, part in enumerate(parts):
        if part.material is not None:
            _in_family(rules, f"#/parts/{index}", part.material, faults)
    _thicknesses(rules, parts, faults)


def _in_family(rules: RuleSet, pointer: str, material: str, faults: Faults) -> None:
    """Refuse a listed material that is not of the metals the rules cover."""
    family = MATERIALS[material].family
    if family not in rules.scope.families:
        faults.out_of_scope(f"{pointer}/material", f"{rules.id} covers {_covered(rules)}; {material} is {family}")


def _thicknesses(rules: RuleSet, parts: tuple[Part, Part], faults: Faults) -> None:
    """Refuse parts thinner than the rules cover."""
    limit = rules.scope.thickness
    for index, part in enumerate(parts):
        if not at_least(part.thickness, rules.scope.least_thickness):
            faults.out_of_scope(
                f"#/parts/{index}/thickness",
                f"is too thin at {faults.units.text(part.thickness)}: {rules.id} covers {limit.text} ({limit.source})",
            )


def _strong_enough(rules: RuleSet, parts: tuple[Part, Part], faults: Faults) -> None:
    """Refuse two parts that other rules are made for: none of them over the least yield strength of these."""
    steel = rules.scope.steel
    nominal = [_nominal_yield(part) for part in parts]
    if steel and all(value is not None and at_most(value, rules.scope.over_yield) for value in nominal):
        faults.out_of_scope(
            "#/parts", f"neither part is strong enough; {rules.id} covers {steel.text} ({steel.source})"
        )


def _nominal_yield(part: Part) -> float | None:
    """Yield strength that names a part's grade, MPa: that of its thinnest band, or the one given."""
    return part.yield_strength if part.material is None else MATERIALS[part.material].bands[0].yield_strength


def _part(rules: RuleSet, index: int, part: Part, beta_w: float | None, faults: Faults) -> PartMetal:
    """Strengths of one part."""
    pointer = f"#/parts/{index}"
    correlation = rules.metals.beta_w
    # A request's own beta_w stands for every part; so does the rule set's, where it goes by no table.
    for_all = beta_w if beta_w is not None or correlation is None else correlation.own
    if part.material is not None:
        f_y, f_u, of_grade = _looked_up(rules, pointer, part.material, part.thickness, faults)
        own_beta_w = for_all if for_all is not None else of_grade
        if correlation and own_beta_w is None and MATERIALS[part.material].family in rules.scope.families:
            faults.out_of_scope(
                f"{pointer}/material",
                f"{part.material} has no row in {_short(correlation.source)}; send its beta_w as parameters.beta_w",
            )
    elif rules.metals.by_alloy is not None:
        faults.inconsistent(
            pointer, f"needs a material such as 6082-T6, because the strengths of {rules.id} depend on the alloy"
        )
        return PartMetal(part.thickness, 1.0, 1.0)
    elif part.yield_strength is None or part.tensile_strength is None:
        faults.inconsistent(
            pointer, f"needs a strength with {rules.id}: send a material, or yield_strength and tensile_strength"
        )
        return PartMetal(part.thickness, 1.0, 1.0, 1.0)
    else:
        f_y, f_u = part.yield_strength, part.tensile_strength
        own_beta_w = for_all if for_all is not None else part.beta_w
        _check_beta_w(rules, pointer, part, own_beta_w, faults)
        if f_y > f_u:
            faults.inconsistent(f"{pointer}/yield_strength", "must be at most the tensile strength")
    nominal, steel = _nominal_yield(part), rules.scope.steel
    if steel and nominal is not None and not at_most(nominal, rules.scope.largest_yield):
        faults.out_of_scope(
            f"{pointer}/{'material' if part.material else 'yield_strength'}",
            f"has a yield strength of {faults.units.stress_text(nominal)}; {rules.id} covers {steel.text}"
            f" ({steel.source})",
        )
    wall = b4_2_design_wall.DESIGN_WALL if part.wall == "nominal" and _has_design_wall(rules, part) else 1.0
    return PartMetal(part.thickness, f_y, f_u, own_beta_w, wall)


def _remark_on_walls(rules: RuleSet, parts: tuple[Part, Part], faults: Faults, remarks: Remarks) -> None:
    """Say which wall of a hollow section is taken; refuse the field where it makes no difference."""
    for index, part in enumerate(parts):
        if part.wall is not None and not _has_design_wall(rules, part):
            faults.inconsistent(
                f"#/parts/{index}/wall",
                "applies to a hollow section of AISC 360-22 B4.2 only"
                f" ({', '.join(sorted(b4_2_design_wall.NOMINAL))}); leave it out",
            )
    walled = [part for part in parts if _has_design_wall(rules, part)]
    if not walled:
        return
    if any(part.wall == "nominal" for part in walled):
        text = "The strength of a hollow section beside the weld is that of its design wall, 0.93 of the nominal wall."
    else:
        text = (
            "The thickness of a hollow section is taken as its design wall. If it is the nominal wall, the strength is"
            ' 0.93 of that shown; send wall "nominal" then.'
        )
    remarks.caution("design-wall", text, b4_2_design_wall.SOURCE)


def _has_design_wall(rules: RuleSet, part: Part) -> bool:
    """Whether a part's strength goes by less than its nominal wall."""
    return part.material in rules.metals.design_walls


def _short(source: Source) -> str:
    """Citation as a sentence has it."""
    return f"{source.document} {source.clause}"


def _check_beta_w(rules: RuleSet, pointer: str, part: Part, beta_w: float | None, faults: Faults) -> None:
    """Find a part given by hand whose beta_w is missing, or has no place in the rules."""
    correlation = rules.metals.beta_w
    if correlation and beta_w is None:
        faults.inconsistent(
            f"{pointer}/beta_w", "is required with EN 1993-1-8 where a part has strengths and no material; S355 has 0.9"
        )
    elif part.beta_w is not None and correlation is None:
        faults.inconsistent(f"{pointer}/beta_w", f"applies to EN 1993-1-8 only, not to {rules.id}; leave it out")
    elif part.beta_w is not None and correlation and correlation.own is not None:
        faults.inconsistent(
            f"{pointer}/beta_w",
            f"does not apply to {rules.id}, which has {correlation.own:g} for every part; send another value as"
            " parameters.beta_w",
        )


def _looked_up(
    rules: RuleSet, pointer: str, material_id: str, thickness: float, faults: Faults
) -> tuple[float, float, float | None]:
    """Strengths of a listed material at a thickness: beside the weld, where the rules go by those."""
    material = MATERIALS[material_id]
    _in_family(rules, pointer, material_id, faults)
    try:
        band = material.at(thickness)
    except NoBand as error:
        faults.out_of_scope(f"{pointer}/thickness", error.text(faults.units.text(error.thickness)))
        return 1.0, 1.0, 1.0
    cite(Source("", f"{material_id}: {band.source}", band.mark))
    if rules.metals.softened and band.welded_yield_strength is not None and band.welded_tensile_strength is not None:
        return band.welded_yield_strength, band.welded_tensile_strength, None
    return band.yield_strength, band.tensile_strength, material.beta_w


def _covered(rules: RuleSet) -> str:
    """Families of metal a rule set covers, in words."""
    return " and ".join(FAMILIES[family] for family in rules.scope.families)


def _remark(
    rules: RuleSet,
    parts: tuple[Part, Part],
    found: tuple[PartMetal, ...],
    beta_w: float | None,
    process: str | None,
    faults: Faults,
    remarks: Remarks,
) -> None:
    """Say what the strengths of the parts rest on where that is not plain from the rules."""
    correlation, grades, softened = rules.metals.beta_w, rules.scope.grades, rules.metals.softened
    if correlation and correlation.own is not None and (beta_w is None or beta_w >= correlation.own * (1 - SAME)):
        cite(correlation.source)
    elif correlation and correlation.own is not None:
        remarks.caution(
            "lower-beta-w",
            f"The beta_w of {beta_w:g} is the request's own. {_short(correlation.source)} has {correlation.own:g};"
            " tests or a national annex must allow a smaller value.",
            correlation.source,
        )
    listed = list(dict.fromkeys(part.material for part in parts if part.material))
    foreign = [name for name in listed if not MATERIALS[name].standard.startswith("EN ")]
    if grades and foreign:
        remarks.caution(
            "other-standard",
            f"The strengths of {', '.join(foreign)} are those of"
            f" {', '.join(MATERIALS[name].standard for name in foreign)}. The rules are made for {grades.text}.",
            grades.source,
        )
    if softened is None:
        return
    for number, (part, metal) in enumerate(zip(parts, found, strict=True), start=1):
        with about(f"part {number}"):
            extent = softened(part.thickness, process and process_of(process).id)
        f_o, f_u = float(metal.yield_strength or 0.0), float(metal.tensile_strength or 0.0)
        reach = (
            "the rules give no extent of that zone for this process and thickness"
            if extent is None
            else f"{faults.units.text(float(extent))} from the weld" + ("" if process else " by MIG")
        )
        remarks.caution(
            "heat-affected-zone",
            f"Heat softens part {number}, {part.material} ({reach}), to f_o {faults.units.stress_text(f_o)} and f_u"
            f" {faults.units.stress_text(f_u)}. Check the member itself with these strengths.",
        )


def _filler(
    rules: RuleSet, filler: Filler | None, parts: tuple[Part, Part], weaker: PartMetal, faults: Faults, remarks: Remarks
) -> float | None:
    """Strength of the filler metal, MPa, where the rules rest on it."""
    by_alloy = rules.metals.by_alloy
    strength = None
    if filler is None:
        if rules.metals.filler:
            faults.inconsistent(
                "#/filler", f'is required with {rules.id}: send a filler metal such as "{rules.metals.filler}"'
            )
    elif filler.id is None:
        strength = filler.tensile_strength
        if by_alloy is not None:
            faults.inconsistent(
                "#/filler",
                f'must be an id such as "ER5356", because the strengths of {rules.id} depend on the alloy',
            )
    else:
        listed = FILLER_METALS[filler.id]
        strength = listed.tensile_strength
        if listed.family not in rules.scope.families:
            faults.out_of_scope("#/filler", f"{filler.id} is {listed.family}; {rules.id} covers {_covered(rules)}")
        elif by_alloy is None:
            cite(Source("", f"{filler.id}: {listed.source}", listed.mark))
        else:
            strength = _by_alloy(rules, parts, filler.id, faults)
    matching = rules.scope.matching_filler
    base = weaker.tensile_strength
    if matching and strength is not None and isinstance(base, float) and not at_least(strength, base):
        least = faults.units.stress_text(base)
        faults.out_of_scope(
            "#/filler",
            f"must have the {least} of the part or more; it has {faults.units.stress_text(strength)}. {rules.id} covers"
            f" a {matching.text} ({matching.source})",
        )
    return strength


def _by_alloy(rules: RuleSet, parts: tuple[Part, Part], filler: str, faults: Faults) -> float:
    """Strength of a listed filler metal between two alloys, MPa; an alloy is the head of its material's id."""
    assert rules.metals.by_alloy is not None  # noqa: S101 - asked for by such rules alone
    covered = [part.material for part in parts if part.material]
    if len(covered) < len(parts) or any(MATERIALS[name].family not in rules.scope.families for name in covered):
        # Refused already, and nothing can be said of a filler metal between other metals.
        return 1.0
    try:
        strength, source = rules.metals.by_alloy(tuple(name.partition("-")[0] for name in covered), filler)
    except Unlisted as unlisted:
        for name, text in unlisted.faults:
            faults.out_of_scope(f"#/{name}", text)
        return 1.0
    cite(source)
    return strength
