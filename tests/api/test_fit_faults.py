"""Requests of sound form whose values do not fit together, or lie beyond the limits of the chosen rules."""

from __future__ import annotations

from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import (
    AISC,
    BEVEL,
    BUTT,
    CLOSED,
    EN,
    FILLET,
    FILLET_SEAM,
    GRIND,
    HALF_OPEN,
    LEFT_OUT,
    OPEN,
    THIN,
    TO_BEVEL,
    changed,
)

DIRECTIONAL, LRFD = EN["rule_set"], AISC["rule_set"]
BY_HAND = {"thickness": "10 mm", "yield_strength": "355 MPa", "tensile_strength": "490 MPa"}

FILLET_FAULTS: dict[str, tuple[Any, str, str]] = {
    "filler missing": (
        changed(AISC, filler=LEFT_OUT),
        "#/filler",
        f'is required with {LRFD}: send a filler metal such as "E70"',
    ),
    "beta_w missing": (
        changed(EN, parts__0=BY_HAND),
        "#/parts/0/beta_w",
        "is required with EN 1993-1-8 where a part has strengths and no material; S355 has 0.9",
    ),
    "beta_w with AISC": (
        changed(AISC, parts__1={**BY_HAND, "beta_w": 0.9}),
        "#/parts/1/beta_w",
        f"applies to EN 1993-1-8 only, not to {LRFD}; leave it out",
    ),
    "parameter with AISC": (
        changed(AISC, parameters={"gamma_m2": 1.25}),
        "#/parameters/gamma_m2",
        f"does not apply to {LRFD}; leave it out",
    ),
    "parameter beta_w with AISC": (
        changed(AISC, parameters={"beta_w": 0.9}),
        "#/parameters/beta_w",
        f"does not apply to {LRFD}; leave it out",
    ),
    "parameter with the thin part": (
        changed(THIN, parameters={"gamma_m0": 1.0}),
        "#/parameters/gamma_m0",
        "does not apply to thin-part; leave it out",
    ),
    "no strength": (
        changed(EN, parts__0={"thickness": "10 mm"}),
        "#/parts/0",
        f"needs a strength with {DIRECTIONAL}: send a material, or yield_strength and tensile_strength",
    ),
    "yield over tensile": (
        changed(AISC, parts__0={**BY_HAND, "yield_strength": "500 MPa"}),
        "#/parts/0/yield_strength",
        "must be at most the tensile strength",
    ),
    "filler with the thin part": (
        changed(THIN, filler="E70"),
        "#/filler",
        "does not apply to thin-part, which claims no strength; leave it out",
    ),
    "basis thin-part with EN": (
        changed(EN, basis="thin-part", load=LEFT_OUT),
        "#/basis",
        f'must be "load" or "full-strength" with {DIRECTIONAL}; it is "thin-part"',
    ),
    "basis thin-part with AISC": (
        changed(AISC, basis="thin-part", load=LEFT_OUT),
        "#/basis",
        f'must be "load" or "full-strength" with {LRFD}; it is "thin-part"',
    ),
    "basis load with the thin part": (
        changed(THIN, basis="load", load=EN["load"]),
        "#/basis",
        'must be "thin-part" with thin-part; it is "load"',
    ),
    "basis full-strength with the thin part": (
        changed(THIN, basis="full-strength"),
        "#/basis",
        'must be "thin-part" with thin-part; it is "full-strength"',
    ),
    "load with full-strength": (
        changed(EN, basis="full-strength"),
        "#/load",
        'applies to basis "load" only, not to "full-strength"; leave it out',
    ),
    "load with thin-part": (
        changed(THIN, load=EN["load"]),
        "#/load",
        'applies to basis "load" only, not to "thin-part"; leave it out',
    ),
    "load missing": (
        changed(EN, load=LEFT_OUT),
        "#/load",
        'is required with basis "load": send force, length and angle, or components per length',
    ),
    "load of nothing": (
        changed(EN, load={"normal": "0 N/mm", "length": "100 mm"}),
        "#/load",
        "must have a component that is not zero",
    ),
    "load empty": (changed(EN, load={}), "#/load", "must have a component that is not zero"),
    "end_loaded without length": (
        changed(AISC, load={"longitudinal": "100 N/mm"}, end_loaded=True),
        "#/end_loaded",
        "the long-weld reduction needs the length of the weld; send load.length",
    ),
    "hss_end with EN": (
        changed(EN, hss_end=False),
        "#/hss_end",
        f"applies to AISC 360-22 only, not to {DIRECTIONAL}; leave it out",
    ),
    "hss_end with the thin part": (
        changed(THIN, hss_end=True),
        "#/hss_end",
        "applies to AISC 360-22 only, not to thin-part; leave it out",
    ),
    "edge_of on a tee": (
        changed(EN, edge_of=1),
        "#/edge_of",
        "applies to a lap only, not to tee; leave it out",
    ),
    "edge_of on an inside corner": (
        changed(EN, joint={"kind": "inside-corner"}, held_from_turning=True, edge_of=2),
        "#/edge_of",
        "applies to a lap only, not to inside-corner; leave it out",
    ),
    "inside corner of two sides": (
        changed(EN, joint__kind="inside-corner"),
        "#/joint/sides",
        "must be 1, because an inside corner is welded from one side",
    ),
}


@pytest.mark.parametrize("case", FILLET_FAULTS)
def test_what_does_not_fit_together_in_a_fillet_is_refused(service: Exchange, case: str) -> None:
    """A fillet's fields that contradict or lack one another are refused with the way out."""
    request, pointer, message = FILLET_FAULTS[case]
    assert service.faults(FILLET, request) == [(pointer, "inconsistent", message)]


EN_ANGLES = (
    "fillets between faces at 60 to 120 deg: below that they are partial-penetration welds, above it to be tested"
    " (EN 1993-1-8:2005, 4.3.2.1"
)
AISC_ANGLES = (
    "plates at 30 to 135 deg; below 60 deg the weld loses throat at its root, by process and position (Z loss)"
)
FILLET_SCOPE: dict[str, tuple[Any, str, str]] = {
    "EN 3.9 mm": (
        changed(EN, parts__1__thickness="3.9 mm"),
        "#/parts/1/thickness",
        f"is too thin at 3.9 mm: {DIRECTIONAL} covers parts of 4 mm and more (EN 1993-1-8:2005, 4.1(1)",
    ),
    "AISC 2.9 mm": (
        changed(AISC, parts__0__thickness="2.9 mm"),
        "#/parts/0/thickness",
        f"is too thin at 2.9 mm: {LRFD} covers parts of 1/8 in (3 mm) and more (AWS D1.1/D1.1M:2020, 1.2",
    ),
    "EN 50 deg": (
        changed(EN, joint={"kind": "tee", "angle": "50 deg"}, held_from_turning=True),
        "#/joint/angle",
        f"the angle between the plates is 50 deg; {DIRECTIONAL} covers {EN_ANGLES}",
    ),
    "EN 130 deg": (
        changed(EN, joint={"kind": "tee", "angle": "130 deg"}, held_from_turning=True),
        "#/joint/angle",
        f"the angle between the plates is 130 deg; {DIRECTIONAL} covers {EN_ANGLES}",
    ),
    "AISC 29 deg": (
        changed(AISC, joint={"kind": "tee", "angle": "29 deg"}),
        "#/joint/angle",
        f"the angle between the plates is 29 deg; {LRFD} covers {AISC_ANGLES} (AWS D1.1/D1.1M:2020",
    ),
    "AISC 136 deg": (
        changed(AISC, joint={"kind": "tee", "angle": "136 deg"}),
        "#/joint/angle",
        f"the angle between the plates is 136 deg; {LRFD} covers {AISC_ANGLES}",
    ),
    "AISC skewed, not listed": (
        changed(AISC, joint={"kind": "tee", "angle": "130 deg", "sides": 2}, process="SAW", position="2F"),
        "#/process",
        "below 60 deg Table 4.2 lists SMAW, FCAW-S, FCAW-G and GMAW, not SAW (AWS D1.1/D1.1M:2020",
    ),
    "AISC skewed, n/a": (
        changed(AISC, joint={"kind": "tee", "angle": "50 deg"}, process="GMAW", position="4F"),
        "#/position",
        "Table 4.2 has n/a for GMAW in the overhead position below 60 deg (AWS D1.1/D1.1M:2020",
    ),
    "gap": (
        changed(EN, joint__root_gap="0.19 in"),
        "#/joint/root_gap",
        (
            "must be at most 4.763 mm, the largest gap that a larger leg makes up for; it is 4.826 mm. Bring the parts"
            " together (AWS D1.1/D1.1M:2020, 7.21.1"
        ),
    ),
    "gap under the shop rule": (
        changed(THIN, joint__root_gap="5 mm"),
        "#/joint/root_gap",
        (
            "must be at most 4.763 mm, the largest gap that a larger leg makes up for; it is 5 mm. Bring the parts"
            " together"
        ),
    ),
    "no beta_w row": (
        changed(EN, parts__0__material="S450"),
        "#/parts/0/material",
        "S450 has no row in EN 1993-1-8:2005 Table 4.1; send its beta_w as parameters.beta_w",
    ),
    "stainless": (
        changed(AISC, parts__0__material="304"),
        "#/parts/0/material",
        f"{LRFD} covers carbon and low-alloy steel; 304 is stainless",
    ),
    "aluminium": (
        changed(AISC, parts__1__material="6061-T6"),
        "#/parts/1/material",
        f"{LRFD} covers carbon and low-alloy steel; 6061-T6 is aluminium",
    ),
    "stainless filler": (
        changed(AISC, filler="E308L"),
        "#/filler",
        f"E308L is stainless; {LRFD} covers carbon and low-alloy steel",
    ),
    "EN over S460": (
        changed(EN, parts__0={**BY_HAND, "yield_strength": "461 MPa", "beta_w": 1.0}),
        "#/parts/0/yield_strength",
        f"has a yield strength of 461 MPa; {DIRECTIONAL} covers steels up to S460 (EN 1993-1-8:2005, 4.1(1)",
    ),
    "AISC over 100 ksi": (
        changed(AISC, parts__0={**BY_HAND, "yield_strength": "101 ksi", "tensile_strength": "115 ksi"}),
        "#/parts/0/yield_strength",
        f"has a yield strength of 696.4 MPa; {LRFD} covers steels up to 100 ksi (690 MPa) yield strength (AWS D1.1",
    ),
    "thicker than the table": (
        changed(EN, parts__0__thickness="90 mm"),
        "#/parts/0/thickness",
        "S355: EN 1993-1-1:2005 Table 3.1",
    ),
    "EN long weld in a tee": (
        changed(EN, end_loaded=True),
        "#/end_loaded",
        f"applies to a lap only: {DIRECTIONAL} covers the long-weld reduction in lap joints (EN 1993-1-8:2005, 4.11(1)",
    ),
}


@pytest.mark.parametrize("case", FILLET_SCOPE)
def test_what_lies_beyond_the_rules_of_a_fillet_is_refused(service: Exchange, case: str) -> None:
    """A limit of scope is a refusal that names the limit and its source, never a silent clamp."""
    request, pointer, message = FILLET_SCOPE[case]
    [(where, code, detail)] = service.faults(FILLET, request)
    assert (where, code) == (pointer, "out-of-scope")
    assert detail.startswith(message)


def test_a_skewed_fillet_needs_process_and_position(service: Exchange) -> None:
    """The far side of a tee at 130 deg stands at 50 deg: what its loss goes by must be sent."""
    found = service.faults(FILLET, changed(AISC, joint={"kind": "tee", "angle": "130 deg", "sides": 2}))
    assert [(pointer, code) for pointer, code, _ in found] == [
        ("#/position", "inconsistent"),
        ("#/process", "inconsistent"),
    ]


def test_both_sides_of_a_tee_are_held_to_the_angle(service: Exchange) -> None:
    """A tee at 55 deg has 125 deg on its other side: both are refused."""
    found = service.faults(FILLET, changed(EN, joint__angle="55 deg"))
    assert [(pointer, code) for pointer, code, _ in found] == [("#/joint/angle", "out-of-scope")] * 2
    assert [detail.split(";")[0] for _, _, detail in found] == [
        "the angle between the plates is 125 deg",
        "the angle between the plates is 55 deg",
    ]


@pytest.mark.parametrize(
    ("request_", "needed"),
    [
        (changed(EN, joint={"kind": "tee", "angle": "60 deg"}, held_from_turning=True), True),
        (changed(EN, joint={"kind": "tee", "angle": "120 deg"}, held_from_turning=True), True),
        (changed(AISC, joint={"kind": "tee", "angle": "135 deg"}), True),
        (changed(EN, parts__1__thickness="4 mm"), True),
        (changed(AISC, joint__root_gap="3/16 in"), True),
        (changed(EN, parts__0__thickness="80 mm"), True),
        (changed(THIN, parts__1__thickness="0.9 mm", joint__angle="10 deg"), False),
    ],
)
def test_the_limit_itself_is_within(service: Exchange, request_: Any, needed: bool) -> None:
    """A value on a limit is answered; the shop rule has no limit of thickness or angle."""
    assert (service.answer(FILLET, request_)["strength"] is not None) is needed


def test_a_material_without_beta_w_goes_with_a_vouched_one(service: Exchange) -> None:
    """S450 is answered when the request brings the beta_w that the table lacks, and provenance echoes nothing else."""
    answer = service.answer(FILLET, changed(EN, parts__0__material="S450", parameters={"beta_w": 1.0}))
    assert answer["provenance"]["parameters"]["gamma_m2"] == 1.25


SEAM_FAULTS: dict[str, tuple[str, Any, str, str, str]] = {
    "closed corner at 100 deg": (
        GRIND,
        changed(CLOSED, seam__angle="100 deg"),
        "#/seam/angle",
        "out-of-scope",
        "must be 90 deg for a closed corner; at another angle its edge is cut, so send an open corner",
    ),
    "closed corner to bevel at 100 deg": (
        BEVEL,
        changed(TO_BEVEL, seam__angle="100 deg"),
        "#/seam/angle",
        "out-of-scope",
        "must be 90 deg for a closed corner; at another angle its edge is cut, so send an open corner",
    ),
    "closed corner flat": (
        GRIND,
        changed(CLOSED, finish={"to": "flat"}),
        "#/finish/to",
        "inconsistent",
        "must be as-welded or flush or radius for a closed-corner; it is flat",
    ),
    "butt to a radius": (
        GRIND,
        changed(BUTT, finish={"to": "radius", "radius": "3 mm"}),
        "#/finish/to",
        "inconsistent",
        "must be as-welded or flush for a butt; it is radius",
    ),
    "fillet flush": (
        GRIND,
        changed(FILLET_SEAM, finish={"to": "flush"}),
        "#/finish/to",
        "inconsistent",
        "must be as-welded or flat for a fillet; it is flush",
    ),
    "butt to bevel, flat": (
        BEVEL,
        changed(TO_BEVEL, seam__kind="butt", finish={"to": "flat"}),
        "#/finish/to",
        "inconsistent",
        "must be as-welded or flush for a butt; it is flat",
    ),
    "face_height with hollow": (
        GRIND,
        changed(CLOSED, hollow="1 mm"),
        "#/hollow",
        "inconsistent",
        "cannot be sent together with face_height; send one of them",
    ),
    "tolerance of no face": (
        GRIND,
        changed(CLOSED, face_height=LEFT_OUT, face_height_tolerance="1 mm"),
        "#/face_height_tolerance",
        "inconsistent",
        "needs face_height; send it too",
    ),
    "tolerance of no hollow": (
        GRIND,
        changed(CLOSED, hollow_tolerance="1 mm"),
        "#/hollow_tolerance",
        "inconsistent",
        "needs hollow; send it too",
    ),
    "face_width of a corner": (
        GRIND,
        changed(HALF_OPEN, face_width="9 mm"),
        "#/face_width",
        "inconsistent",
        "applies to a seam of kind butt, edge, closed-corner, not to half-open-corner; leave it out",
    ),
    "face narrower than its groove": (
        GRIND,
        changed(BUTT, preparation={"depth": "6 mm", "groove": "single-bevel"}, face_width="3 mm"),
        "#/face_width",
        "inconsistent",
        "must be at least the 6 mm that the groove is wide at its face; it is 3 mm",
    ),
    "overlap too large": (
        GRIND,
        changed(HALF_OPEN, seam__overlap="9 mm"),
        "#/seam/overlap",
        "out-of-range",
        "must be at most the 8 mm of part 1's end along the overlap; it is 9 mm",
    ),
    "penetration past the overlap": (
        GRIND,
        changed(HALF_OPEN, penetration={"depth": "4 mm", "vouched": "measured"}),
        "#/penetration/depth",
        "out-of-range",
        "must be at most the overlap of 3 mm, along which it is measured; it is 4 mm",
    ),
    "depth of a seam with none": (
        GRIND,
        changed(HALF_OPEN, preparation={"depth": "2 mm"}),
        "#/preparation/depth",
        "inconsistent",
        "applies to a seam of kind butt, edge, closed-corner, not to half-open-corner; leave it out",
    ),
    "depth over the thickness": (
        GRIND,
        changed(BUTT, preparation__depth="11 mm"),
        "#/preparation/depth",
        "out-of-range",
        "must be at most the 10 mm that the seam runs through; it is 11 mm",
    ),
    "tolerance over the depth": (
        GRIND,
        changed(BUTT, preparation__tolerance="7 mm"),
        "#/preparation/tolerance",
        "inconsistent",
        "must be at most the depth of 6 mm; it is 7 mm",
    ),
    "tolerance over the penetration": (
        GRIND,
        changed(CLOSED, penetration__tolerance="3 mm"),
        "#/penetration/tolerance",
        "inconsistent",
        "must be at most the depth of 2 mm; it is 3 mm",
    ),
    "tolerance over the thickness": (
        GRIND,
        changed(CLOSED, seam__thickness_tolerance="9 mm"),
        "#/seam/thickness_tolerance",
        "inconsistent",
        "must be smaller than the thickness of 8 mm; it is 9 mm",
    ),
    "tolerance over the leg": (
        GRIND,
        changed(FILLET_SEAM, seam__legs_tolerance="7 mm"),
        "#/seam/legs_tolerance",
        "inconsistent",
        "must be smaller than the leg of 6 mm; it is 7 mm",
    ),
    "tolerance over the overlap": (
        GRIND,
        changed(HALF_OPEN, seam__overlap_tolerance="4 mm"),
        "#/seam/overlap_tolerance",
        "inconsistent",
        "must be at most the overlap of 3 mm; it is 4 mm",
    ),
    "blend off the face": (
        GRIND,
        changed(OPEN, seam__width=["40 mm", "5 mm"], finish={"to": "radius", "radius": "6 mm"}),
        "#/finish/radius",
        "out-of-range",
        "must leave the blend within the 5 mm of the narrower face; it runs 6 mm onto each face",
    ),
    "one part of a V": (
        BEVEL,
        changed(TO_BEVEL, groove="single-v", bevelled=1),
        "#/bevelled",
        "inconsistent",
        'must be "both" for a single-v, which cuts both parts',
    ),
    "root radius of a bevel": (
        BEVEL,
        changed(TO_BEVEL, root_radius="6 mm"),
        "#/root_radius",
        "inconsistent",
        "does not apply to a single-bevel; leave it out",
    ),
    "throat over the thickness": (
        BEVEL,
        changed(TO_BEVEL, required_throat="13 mm"),
        "#/required_throat",
        "out-of-range",
        "must be at most the 12 mm of the thinner part; it is 13 mm",
    ),
    "throat under the grinding": (
        BEVEL,
        changed(TO_BEVEL, required_throat="11.5 mm", finish={"to": "flush", "below": "1 mm"}),
        "#/finish/below",
        "out-of-range",
        "must leave the required throat in the 12 mm of part 2; grinding leaves less at any depth",
    ),
}


@pytest.mark.parametrize("case", SEAM_FAULTS)
def test_what_does_not_fit_together_in_a_seam_is_refused(service: Exchange, case: str) -> None:
    """A seam's lengths, face and finish that cannot be together are refused with the figure that stands in the way."""
    path, request, pointer, code, message = SEAM_FAULTS[case]
    assert service.faults(path, request) == [(pointer, code, message)]


# AISC 360-22 Table J2.1 (the table lists processes, positions, and 45 deg bevels, 60 deg V's and bevels, J's and U's).
NO_PROCESS = "Table J2.1 goes by process: send one of SMAW, GMAW, FCAW, FCAW-G, FCAW-S, SAW"
NO_POSITION = 'Table J2.1 goes by position: send one such as "1G", "2G", "PA" or "PC"'
UNLISTED: list[tuple[str | None, str | None, str, str | None, str, str]] = [
    (None, "1G", "single-bevel", None, "process", NO_PROCESS),
    ("SMAW", None, "single-bevel", None, "position", NO_POSITION),
    ("GTAW", "1G", "single-v", None, "process", "Table J2.1 lists SMAW, GMAW, FCAW and SAW, not GTAW"),
    ("141", "PA", "single-u", None, "process", "Table J2.1 lists SMAW, GMAW, FCAW and SAW, not GTAW"),
    ("SAW", "3G", "single-v", None, "position", "Table J2.1 lists SAW in the flat position only, not vertical"),
    ("121", "PC", "single-v", None, "position", "Table J2.1 lists SAW in the flat position only, not horizontal"),
    (
        "SMAW",
        "1G",
        "single-bevel",
        "40 deg",
        "groove_angle",
        "Table J2.1 lists grooves of 45 deg and more; this one is tighter",
    ),
    (
        "GMAW",
        "2G",
        "single-bevel",
        "60 deg",
        "groove_angle",
        (
            "Table J2.1 lists a 60 deg bevel for SAW alone; for GMAW it lists the 45 deg bevel"
            " (45 up to 60 deg) and the 60 deg V"
        ),
    ),
    (
        "SAW",
        "1G",
        "single-v",
        "50 deg",
        "groove_angle",
        "Table J2.1 lists SAW from 60 deg up, not between 45 and 60 deg",
    ),
]


@pytest.mark.parametrize(("process", "position", "groove", "angle", "field", "message"), UNLISTED)
def test_a_groove_that_the_code_does_not_list_is_refused(
    service: Exchange,
    process: str | None,
    position: str | None,
    groove: str,
    angle: str | None,
    field: str,
    message: str,
) -> None:
    """A combination Table J2.1 has no row for is refused by name, at the field to change, in both resources."""
    coded = {"rule_set": LRFD} | {
        name: value for name, value in (("process", process), ("position", position)) if value is not None
    }
    prepared = {"groove": groove} | ({} if angle is None else {"groove_angle": angle})
    pointer = f"#/preparation/{field}" if field == "groove_angle" else f"#/{field}"
    ground = changed(BUTT, **coded, preparation={"depth": "6 mm", **prepared})
    assert service.faults(GRIND, ground) == [(pointer, "out-of-scope", message)]
    to_bevel = changed(TO_BEVEL, **coded, **prepared)
    assert service.faults(BEVEL, to_bevel) == [(f"#/{field}", "out-of-scope", message)]


def test_nothing_unlisted_stands_in_the_way_of_proven_penetration(service: Exchange) -> None:
    """Proven penetration replaces the code's deduction, so the table is not asked."""
    proven = {"depth": "2 mm", "vouched": "proven"}
    request = changed(BUTT, rule_set=LRFD, process="GTAW", position="1G", penetration=proven, root_pass="automatic")
    answer = service.answer(GRIND, request)
    assert answer["budget"]["deduction"]["value"] == 0.0


def test_misfits_are_told_all_at_once(service: Exchange) -> None:
    """Once the form is sound, everything that does not fit is told in one answer, across joint, parts and filler."""
    request = changed(
        AISC,
        filler=LEFT_OUT,
        edge_of=1,
        joint={"kind": "tee", "angle": "25 deg", "root_gap": "6 mm"},
        parts__0__thickness="2 mm",
        parameters={"gamma_m2": 1.1},
    )
    found = [(pointer, code) for pointer, code, _ in service.faults(FILLET, request)]
    assert found == [
        ("#/edge_of", "inconsistent"),
        ("#/filler", "inconsistent"),
        ("#/joint/angle", "out-of-scope"),
        ("#/joint/root_gap", "out-of-scope"),
        ("#/parameters/gamma_m2", "inconsistent"),
        ("#/parts/0/thickness", "out-of-scope"),
    ]


def test_misfits_of_a_seam_are_told_all_at_once(service: Exchange) -> None:
    """Seam, finish, face, penetration and preparation are checked together."""
    request = changed(
        CLOSED,
        seam__angle="100 deg",
        finish={"to": "flat"},
        hollow="1 mm",
        penetration__tolerance="3 mm",
        preparation={"depth": "9 mm", "tolerance": "10 mm"},
    )
    found = [(pointer, code) for pointer, code, _ in service.faults(GRIND, request)]
    assert found == [
        ("#/finish/to", "inconsistent"),
        ("#/hollow", "inconsistent"),
        ("#/penetration/tolerance", "inconsistent"),
        ("#/preparation/depth", "out-of-range"),
        ("#/preparation/tolerance", "inconsistent"),
        ("#/seam/angle", "out-of-scope"),
    ]


def test_form_comes_before_fit(service: Exchange) -> None:
    """A request with a fault of form is told that alone: the rest needs sound values."""
    found = service.faults(FILLET, changed(AISC, filler=LEFT_OUT, joint__sides=3))
    assert [(pointer, code) for pointer, code, _ in found] == [("#/joint/sides", "unknown-choice")]
