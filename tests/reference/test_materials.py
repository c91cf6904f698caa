"""Base metals: figures against the standards and handbooks, bands and their limits."""

import math
import pickle
import re
from dataclasses import FrozenInstanceError
from itertools import pairwise

import pytest
from scipy import constants

from truethroat_service.reference import loader
from truethroat_service.reference.loader import MATERIALS, Material, NoBand

KSI = 1000 * constants.psi / 1e6  # MPa, from CODATA's table of exact conversions as scipy carries it
INCH = constants.inch * 1000  # mm

# EN 1993-1-1:2005 Table 3.1, fy/fu in N/mm2 up to 40 mm and over 40 up to 80 mm, from memory; S355 and S355W with
# the 490 N/mm2 of corrigendum AC:2009. A dash: the table has no value.
TABLE_3_1 = """
EN 10025-2   S235 235/360 215/360    S275 275/430 255/410    S355 355/490 335/470    S450 440/550 410/550
EN 10025-3   S275N 275/390 255/370   S355N 355/490 335/470   S420N 420/520 390/520   S460N 460/540 430/540
EN 10025-4   S275M 275/370 255/360   S355M 355/470 335/450   S420M 420/520 390/500   S460M 460/540 430/530
EN 10025-5   S235W 235/360 215/340   S355W 355/490 335/490
EN 10025-6   S460Q 460/570 440/550
EN 10210-1   S235H 235/360 215/340   S275H 275/430 255/410   S355H 355/510 335/490
EN 10210-1   S275NH 275/390 255/370  S355NH 355/490 335/470  S420NH 420/540 390/520  S460NH 460/560 430/550
EN 10219-1   S235H-10219 235/360 -   S275H-10219 275/430 -   S355H-10219 355/510 -
EN 10219-1   S275NH-10219 275/370 -  S355NH-10219 355/470 -  S460NH-10219 460/550 -
EN 10219-1   S275MH 275/360 -        S355MH 355/470 -        S420MH 420/500 -        S460MH 460/530 -
"""
EUROPEAN = [
    (standard, *grade)
    for standard, rest in re.findall(r"^(EN \d+-\d)\s+(.*)$", TABLE_3_1, re.MULTILINE)
    for grade in re.findall(r"(S\S+) (\S+) (\S+)", rest)
]
EUROPEAN_IDS = [grade for _, grade, _, _ in EUROPEAN]

# id, thickness in, fy/fu ksi, mark, source
AMERICAN = [
    ("A36", 0.5, 36, 58, "second-hand", "ASTM A36"),
    ("A36", 8, 36, 58, "second-hand", "ASTM A36"),
    ("A572-50", 0.5, 50, 65, "seen", "AISC 360-22"),
    ("A572-60", 1, 60, 75, "second-hand", "ASTM A572"),
    ("A572-65", 1, 65, 80, "second-hand", "ASTM A572"),
    ("A992", 1, 50, 65, "seen", "AISC 360-22"),
    ("A500-B", 0.25, 46, 58, "seen", "AISC 360-22 commentary A3 (A500-21)"),
    ("A500-C", 0.25, 50, 62, "seen", "AISC 360-22 commentary A3 (A500-21)"),
    ("A53-B", 0.25, 35, 60, "seen", "AISC 360-22 commentary A3"),
    ("A501-B", 0.25, 50, 70, "seen", "AISC 360-22 commentary A3"),
    ("A847", 0.25, 50, 70, "seen", "AISC 360-22 commentary A3"),
    ("A588", 4, 50, 70, "second-hand", "ASTM A588"),
    ("A588", 4.5, 46, 67, "second-hand", "ASTM A588"),
    ("A588", 8, 42, 63, "second-hand", "ASTM A588"),
    ("A514", 2.5, 100, 110, "from memory", "ASTM A514"),
    ("A514", 2.51, 90, 100, "from memory", "ASTM A514"),
    ("A913-65", 2, 65, 80, "second-hand", "ASTM A913"),
    ("A913-70", 2, 70, 90, "second-hand", "ASTM A913"),
    ("304", 0.25, 30, 75, "from memory", "ASTM A240"),
    ("304L", 0.25, 25, 70, "from memory", "ASTM A240"),
    ("316", 0.25, 30, 75, "from memory", "ASTM A240"),
    ("316L", 0.25, 25, 70, "from memory", "ASTM A240"),
    ("6061-T6", 0.25, 35, 42, "from memory", "Aluminum Design Manual"),
    ("5052-H32", 0.25, 23, 31, "from memory", "Aluminum Design Manual"),
    ("5083-H116", 0.25, 31, 44, "from memory", "Aluminum Design Manual"),
]

# id, standard, thickness limits mm, fy/fu (aluminium: and those beside the weld) N/mm2, all from memory of EN 1993-1-12
# Tables 1 and 2, EN 1993-1-4 Table 2.1 (hot rolled plate) and EN 1999-1-1 Table 3.2a
WELDED_BY_EUROCODES = [
    ("S500Q", "EN 10025-6", (50, 100, 150), ("500/590", "480/590", "440/540")),
    ("S550Q", "EN 10025-6", (50, 100, 150), ("550/640", "530/640", "490/590")),
    ("S620Q", "EN 10025-6", (50, 100, 150), ("620/700", "580/700", "560/650")),
    ("S690Q", "EN 10025-6", (50, 100, 150), ("690/770", "650/760", "630/710")),
    ("S500MC", "EN 10149-2", (16,), ("500/550",)),
    ("S550MC", "EN 10149-2", (16,), ("550/600",)),
    ("S600MC", "EN 10149-2", (16,), ("600/650",)),
    ("S650MC", "EN 10149-2", (8, 16), ("650/700", "630/700")),
    ("S700MC", "EN 10149-2", (8, 16), ("700/750", "680/750")),
    ("1.4301", "EN 10088-4", (75,), ("210/520",)),
    ("1.4307", "EN 10088-4", (75,), ("200/500",)),
    ("1.4401", "EN 10088-4", (75,), ("220/520",)),
    ("1.4404", "EN 10088-4", (75,), ("220/520",)),
    ("1.4541", "EN 10088-4", (75,), ("200/500",)),
    ("1.4571", "EN 10088-4", (75,), ("220/520",)),
    ("1.4462", "EN 10088-4", (75,), ("460/640",)),
    ("6082-T6", "EN 485-2", (6, 12.5, 100), ("260/310/125/185", "255/300/125/185", "240/295/125/185")),
    ("5083-O", "EN 485-2", (50, 80), ("125/275/125/275", "115/270/115/270")),
    ("5083-H22", "EN 485-2", (40,), ("215/305/155/275",)),
    ("5083-H24", "EN 485-2", (25,), ("250/340/155/275",)),
]


def _strengths(text: str) -> tuple[float, float]:
    """Split a printed pair such as 355/490."""
    fy, fu = text.split("/")
    return float(fy), float(fu)


def test_every_material_is_checked_against_a_table() -> None:
    """No material stands outside the tables of this file."""
    others = {row[0] for row in AMERICAN} | {row[0] for row in WELDED_BY_EUROCODES}
    assert set(MATERIALS) == set(EUROPEAN_IDS) | others


@pytest.mark.parametrize(("standard", "grade", "thin", "thick"), EUROPEAN, ids=EUROPEAN_IDS)
def test_european_strengths(standard: str, grade: str, thin: str, thick: str) -> None:
    """Strengths are those of EN 1993-1-1:2005 Table 3.1 with AC:2009 (from memory)."""
    material = MATERIALS[grade]
    assert material.standard == standard
    limits = [(0, 40)] if thick == "-" else [(0, 40), (40, 80)]
    assert [(band.thickness_over, band.thickness_to) for band in material.bands] == limits
    assert (material.at(10).yield_strength, material.at(10).tensile_strength) == _strengths(thin)
    if thick == "-":
        with pytest.raises(NoBand, match=r"up to 40 mm, and none for 60 mm"):
            material.at(60)
    else:
        assert (material.at(60).yield_strength, material.at(60).tensile_strength) == _strengths(thick)
    assert {band.mark for band in material.bands} == {"from memory"}
    assert material.source.startswith("EN 1993-1-1:2005 Table 3.1")


@pytest.mark.parametrize(("grade", "standard", "limits", "strengths"), WELDED_BY_EUROCODES)
def test_strengths_of_other_eurocodes(
    grade: str, standard: str, limits: tuple[float, ...], strengths: tuple[str, ...]
) -> None:
    """Strengths and bands are those of the Eurocode for the metal (from memory), and so marked."""
    material = MATERIALS[grade]
    assert material.standard == standard
    assert tuple(band.thickness_to for band in material.bands) == limits
    for band, printed in zip(material.bands, strengths, strict=True):
        every = (
            band.yield_strength,
            band.tensile_strength,
            band.welded_yield_strength,
            band.welded_tensile_strength,
        )
        assert tuple(value for value in every if value is not None) == tuple(float(text) for text in printed.split("/"))
        assert band.mark == "from memory"
    assert material.beta_w is None


@pytest.mark.parametrize("grade", EUROPEAN_IDS)
def test_european_name_is_the_yield_strength(grade: str) -> None:
    """EN 10027-1 (from memory): the number in the name is the least yield strength of the thinnest range.

    EN 10025-2 gives S450 its 450 N/mm2 up to 16 mm and 440 N/mm2 up to 40 mm, which is what Table 3.1 takes.
    """
    number = float(grade[1:4])
    assert MATERIALS[grade].bands[0].yield_strength == (440 if grade == "S450" else number)


@pytest.mark.parametrize("grade", EUROPEAN_IDS)
def test_european_steel_is_ductile_enough_for_the_table(grade: str) -> None:
    """EN 1993-1-1:2005 3.2.2(1) (from memory) asks fu/fy of at least 1.10, which its own table keeps."""
    assert all(band.tensile_strength / band.yield_strength >= 1.10 for band in MATERIALS[grade].bands)


@pytest.mark.parametrize(("grade", "thickness", "fy", "fu", "mark", "source"), AMERICAN)
def test_american_strengths(grade: str, thickness: float, fy: float, fu: float, mark: str, source: str) -> None:
    """Strengths are the ksi of the source named in the row, converted exactly."""
    band = MATERIALS[grade].at(thickness * INCH)
    assert band.yield_strength == pytest.approx(fy * KSI, rel=1e-12)
    assert band.tensile_strength == pytest.approx(fu * KSI, rel=1e-12)
    assert band.mark == mark
    assert band.source == source.removesuffix(" (A500-21)")


@pytest.mark.parametrize(
    ("grade", "limits_in"),
    [
        # second-hand: scope tables of ASTM A572 and A588
        ("A572-50", [4]),
        ("A572-60", [1.25]),
        ("A572-65", [1.25]),
        ("A588", [4, 5, 8]),
        # from memory: ASTM A36, A514, Aluminum Design Manual
        ("A36", [8]),
        ("A514", [2.5, 6]),
        ("6061-T6", [4]),
        ("5052-H32", [2]),
        ("5083-H116", [1.5]),
    ],
)
def test_american_limits_of_thickness(grade: str, limits_in: list[float]) -> None:
    """Bands end where the source named beside the row ends them."""
    assert [band.thickness_to for band in MATERIALS[grade].bands] == pytest.approx([x * INCH for x in limits_in])


def test_american_metals_without_a_limit() -> None:
    """Where no limit of thickness is known, the one band is open."""
    limited = {"A572-50", "A572-60", "A572-65", "A588", "A36", "A514", "6061-T6", "5052-H32", "5083-H116"}
    for grade in {row[0] for row in AMERICAN} - limited:
        assert [band.thickness_to for band in MATERIALS[grade].bands] == [None]


@pytest.mark.parametrize(
    ("form", "grades"),
    [
        # scopes of the product standards, from memory
        ("plate", {"S460Q", "A572-60", "A572-65", "A514", "304", "304L", "316", "316L"}),
        ("plate", {"6061-T6", "5052-H32", "5083-H116"}),
        ("shape", {"A992", "A913-65", "A913-70"}),
        ("pipe", {"A53-B"}),
        ("hollow-section", {"A500-B", "A500-C", "A501-B", "A847"}),
        ("hollow-section", {grade for standard, grade, _, _ in EUROPEAN if standard in ("EN 10210-1", "EN 10219-1")}),
        ("any", {"S235", "S275", "S355", "S450", "S235W", "S355W", "A36", "A572-50", "A588"}),
        ("any", {grade for standard, grade, _, _ in EUROPEAN if standard in ("EN 10025-3", "EN 10025-4")}),
    ],
)
def test_form(form: str, grades: set[str]) -> None:
    """The form is what the product standard covers."""
    assert {MATERIALS[grade].form for grade in grades} == {form}


@pytest.mark.parametrize(
    ("grade", "fy", "fu"),
    [
        ("A36", 250, 400),
        ("A572-50", 345, 450),
        ("A572-60", 415, 520),
        ("A572-65", 450, 550),
        ("A588", 345, 485),
        ("A992", 345, 450),
        ("A913-65", 450, 550),
    ],
)
def test_american_strengths_agree_with_the_metric_standard(grade: str, fy: float, fu: float) -> None:
    """The rounded MPa of the metric companion (A36M, A572M, ...; second-hand) lie within 1 % of the exact ones."""
    band = MATERIALS[grade].at(10)
    assert band.yield_strength == pytest.approx(fy, rel=0.01)
    assert band.tensile_strength == pytest.approx(fu, rel=0.01)


@pytest.mark.parametrize(
    ("grade", "beta_w"),
    [
        # EN 1993-1-8:2005 Table 4.1, seen reprinted
        *[(grade, 0.80) for grade in ("S235", "S235W", "S235H", "S235H-10219")],
        *[(grade, 0.85) for grade in ("S275", "S275N", "S275M", "S275H", "S275NH", "S275MH")],
        *[(grade, 0.85) for grade in ("S275H-10219", "S275NH-10219")],
        *[(grade, 0.90) for grade in ("S355", "S355N", "S355M", "S355W", "S355H", "S355NH", "S355MH")],
        *[(grade, 0.90) for grade in ("S355H-10219", "S355NH-10219")],
        *[(grade, 1.00) for grade in ("S420N", "S420M", "S420MH")],
        *[(grade, 1.00) for grade in ("S460N", "S460M", "S460Q", "S460NH", "S460NH-10219", "S460MH")],
        # no row in Table 4.1, from memory
        ("S450", None),
        ("S420NH", None),
    ],
)
def test_beta_w(grade: str, beta_w: float | None) -> None:
    """Correlation factors are those of EN 1993-1-8:2005 Table 4.1, and None where it has no row."""
    assert MATERIALS[grade].beta_w == beta_w
    (source,) = {(row["beta_w_mark"], row["beta_w_source"]) for row in loader._read("materials") if row["id"] == grade}
    assert source == (("", "") if beta_w is None else ("seen", "EN 1993-1-8:2005 Table 4.1"))


def test_beta_w_is_for_european_steel_only() -> None:
    """EN 1993-1-8 Table 4.1 knows no ASTM metal."""
    assert {m.id for m in MATERIALS.values() if m.beta_w is not None} == set(EUROPEAN_IDS) - {"S450", "S420NH"}


@pytest.mark.parametrize(("grade", "fy", "fu"), [("6061-T6", 15, 24), ("5052-H32", 9.5, 25), ("5083-H116", 18, 40)])
def test_aluminium_beside_a_weld(grade: str, fy: float, fu: float) -> None:
    """Welded strengths are those of the Aluminum Design Manual (from memory) and no more than the parent's."""
    (band,) = MATERIALS[grade].bands
    assert band.welded_yield_strength == pytest.approx(fy * KSI, rel=1e-12)
    assert band.welded_tensile_strength == pytest.approx(fu * KSI, rel=1e-12)
    assert fy * KSI < band.yield_strength
    assert fu * KSI < band.tensile_strength


def test_only_aluminium_has_welded_strengths() -> None:
    """Steel keeps its strength beside a weld in these figures."""
    for material in MATERIALS.values():
        for band in material.bands:
            welded = (band.welded_yield_strength is not None, band.welded_tensile_strength is not None)
            assert welded == ((True, True) if material.family == "aluminium" else (False, False))


@pytest.mark.parametrize("material", list(MATERIALS.values()), ids=list(MATERIALS))
def test_figures_of_a_material_make_sense(material: Material) -> None:
    """Yield below tensile strength, bands that rise and meet, thicker never stronger, nothing non-finite."""
    assert material.bands
    for band in material.bands:
        assert 0 < band.yield_strength < band.tensile_strength < math.inf
        assert 0 <= band.thickness_over < (math.inf if band.thickness_to is None else band.thickness_to)
    assert material.bands[0].thickness_over == 0
    for thinner, thicker in pairwise(material.bands):
        assert thinner.thickness_to == thicker.thickness_over
        assert thinner.yield_strength >= thicker.yield_strength
        assert thinner.tensile_strength >= thicker.tensile_strength


@pytest.mark.parametrize(
    ("family", "lightest", "heaviest"),
    [
        # common practice, no source: carbon steel 7850; EN 10088-1 (from memory): 7800 (duplex) to 8000;
        # aluminium, from memory
        ("carbon-steel", 7850, 7850),
        ("stainless", 7800, 8000),
        ("aluminium", 2640, 2710),
    ],
)
def test_density(family: str, lightest: float, heaviest: float) -> None:
    """Densities lie in the range of their family."""
    densities = [m.density_kg_m3 for m in MATERIALS.values() if m.family == family]
    assert densities
    assert all(lightest <= density <= heaviest for density in densities)


def test_a_limit_belongs_to_the_thinner_band() -> None:
    """EN 1993-1-1:2005 Table 3.1 reads "t <= 40 mm" and "40 mm < t <= 80 mm" (from memory)."""
    steel = MATERIALS["S275"]
    assert steel.at(40).yield_strength == 275
    assert steel.at(40.001).yield_strength == 255
    assert steel.at(80).yield_strength == 255
    with pytest.raises(NoBand):
        steel.at(80.001)


def test_an_inch_limit_belongs_to_the_thinner_band() -> None:
    """A514 keeps 100 ksi up to and including 2-1/2 in, 63.5 mm (from memory)."""
    steel = MATERIALS["A514"]
    assert steel.bands[0].thickness_to == 63.5
    assert steel.at(2.5 * INCH).yield_strength == pytest.approx(100 * KSI, rel=1e-12)
    assert steel.at(63.51).yield_strength == pytest.approx(90 * KSI, rel=1e-12)


def test_a_limit_survives_a_unit_and_back() -> None:
    """A thickness a rounding error over a limit is still on the limit, and does not fall in two bands."""
    steel = MATERIALS["S275"]
    over = math.nextafter(40, math.inf)
    assert steel.at(over) is steel.bands[0]
    assert [band.holds(over) for band in steel.bands] == [True, False]


@pytest.mark.parametrize(
    ("grade", "thickness", "limit"),
    [
        ("S355", 80.5, "up to 80 mm"),
        ("S355H-10219", 41, "up to 40 mm"),
        ("A514", 160, "up to 6 in"),
        ("A36", 210, "up to 8 in"),
        ("A572-60", 32, "up to 1.25 in"),
        ("A992", 0, "over 0 in, without an upper limit"),
        ("A992", math.inf, "over 0 in, without an upper limit"),
        ("S235", -5, "up to 80 mm"),
        ("S235", math.nan, "up to 80 mm"),
    ],
)
def test_no_band_names_the_limit(grade: str, thickness: float, limit: str) -> None:
    """A thickness without figures is refused, with the material, the source, the limit and the thickness."""
    material = MATERIALS[grade]
    with pytest.raises(NoBand) as caught:
        material.at(thickness)
    assert caught.value.limit == limit
    assert str(caught.value) == f"{grade}: {material.source} gives strengths {limit}, and none for {thickness:g} mm"
    assert isinstance(caught.value, LookupError)
    assert str(pickle.loads(pickle.dumps(caught.value))) == str(caught.value)  # noqa: S301 - made on the line itself


def test_open_bands_have_no_upper_limit() -> None:
    """A992 has one band for every thickness, and says so."""
    (band,) = MATERIALS["A992"].bands
    assert band.thickness_to is None
    assert MATERIALS["A992"].at(125) is band


def test_materials_cannot_be_changed() -> None:
    """The tables are shared by all requests, so nothing in them can be assigned."""
    with pytest.raises(TypeError):
        MATERIALS["S235"] = MATERIALS["S355"]  # type: ignore[index]
    with pytest.raises(FrozenInstanceError):
        MATERIALS["S235"].beta_w = 1.0  # type: ignore[misc]
    with pytest.raises(FrozenInstanceError):
        MATERIALS["S235"].bands[0].tensile_strength = 510.0  # type: ignore[misc]
