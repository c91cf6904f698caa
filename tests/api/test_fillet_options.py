"""Options of a fillet through the service: what does not fit together or is in no rule, and what is handed on."""

from __future__ import annotations

from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import (
    AISC,
    ANGLE_ON_GUSSET,
    BRACKET,
    CONCENTRIC,
    EN,
    FILLET,
    GROUP,
    LEFT_OUT,
    ON_FLANGE,
    STITCHED,
    THIN,
    changed,
)

STITCH = STITCHED["intermittent"]
LAP_OF_TWO = changed(AISC, load__length="8 in")
ONE_SIDED = changed(EN, joint={"kind": "tee"}, root_bending=True)

FAULTS: dict[str, tuple[Any, str, str, str]] = {
    # Groups
    "group by EN": (
        changed(EN, joint={"kind": "lap"}, load=CONCENTRIC["load"]),
        "#/load",
        "out-of-scope",
        "has no rule for welds along and across one force together",
    ),
    "group in a tee": (
        changed(CONCENTRIC, joint__kind="tee"),
        "#/joint/kind",
        "inconsistent",
        'must be "lap" with welds along and across one force; it is "tee"',
    ),
    "group of two sides": (
        changed(CONCENTRIC, joint__sides=2),
        "#/joint/sides",
        "inconsistent",
        "does not apply, because the lengths are those of all welds together; leave it out",
    ),
    "balance on one side": (changed(ANGLE_ON_GUSSET, joint__sides=1), "#/joint", "inconsistent", "on 2 sides"),
    "centroid outside": (
        changed(ANGLE_ON_GUSSET, load__centroid="4 in"),
        "#/load/centroid",
        "inconsistent",
        "must be less than the 101.6 mm between the welds; it is 101.6 mm",
    ),
    # Lengths
    "stiffener by AISC": (
        changed(AISC, transverse_stiffener=True),
        "#/transverse_stiffener",
        "inconsistent",
        "applies to EN 1993-1-8 only, not to aisc-360-22-lrfd; leave it out",
    ),
    "stiffener as a lap": (
        changed(EN, joint__kind="lap", transverse_stiffener=True),
        "#/transverse_stiffener",
        "inconsistent",
        "does not apply to a lap; leave it out, and send end_loaded for a long lap",
    ),
    "stiffener without length": (
        changed(EN, load={"normal": "100 N/mm"}, transverse_stiffener=True),
        "#/transverse_stiffener",
        "inconsistent",
        "needs the length of the weld",
    ),
    "stiffener with full strength": (
        changed(EN, basis="full-strength", load=LEFT_OUT, transverse_stiffener=True),
        "#/transverse_stiffener",
        "inconsistent",
        'applies to basis "load" only; leave it out',
    ),
    "craters by AISC": (
        changed(AISC, ends="craters"),
        "#/ends",
        "inconsistent",
        "does not apply to aisc-360-22-lrfd; send the length that is full size, and leave ends out",
    ),
    "craters of an end-loaded lap": (
        changed(EN, joint__kind="lap", load__angle="0 deg", ends="craters"),
        "#/ends",
        "inconsistent",
        "must not be combined with the reduction of an end-loaded weld; send the length that is full size",
    ),
    "German throat by AISC": (
        changed(AISC, minimum_throat="din-na"),
        "#/minimum_throat",
        "inconsistent",
        "leave it out",
    ),
    # Packing
    "packing by AISC": (
        changed(AISC, joint__kind="lap", packing={"thickness": "3 mm"}),
        "#/packing",
        "out-of-scope",
        (
            "does not apply to aisc-360-22-lrfd: fillers have rules of their own in AISC 360-22 J5, which are not"
            " covered; join the parts without packing"
        ),
    ),
    "packing by the thin part": (
        changed(THIN, joint__kind="lap", packing={"thickness": "3 mm"}),
        "#/packing",
        "out-of-scope",
        "does not apply to thin-part: it has no rule for packing; join the parts without packing",
    ),
    "packing of a tee": (
        changed(EN, packing={"thickness": "3 mm"}),
        "#/packing",
        "inconsistent",
        "applies to a lap only, not to tee; leave it out",
    ),
    "penetration into packing": (
        changed(
            EN,
            joint__kind="lap",
            packing={"thickness": "3 mm"},
            penetration={"depth": "1 mm", "vouched": "proven"},
        ),
        "#/penetration",
        "inconsistent",
        "does not count where packing lies at the root; leave one of the two out",
    ),
    # Bending about the root
    "root bending by AISC": (
        changed(AISC, root_bending=True),
        "#/root_bending",
        "inconsistent",
        "does not apply to aisc-360-22-lrfd, which has no rule for bending about the root; leave it out",
    ),
    "root bending of two sides": (
        changed(EN, root_bending=True),
        "#/root_bending",
        "inconsistent",
        "a tee welded from one side",
    ),
    "root bending at an angle": (
        changed(ONE_SIDED, joint__angle="80 deg"),
        "#/joint/angle",
        "out-of-scope",
        "must be 90 deg with root_bending",
    ),
    "root bending by a push": (
        changed(ONE_SIDED, load={"normal": "50 N/mm", "transverse": "5 N/mm"}),
        "#/load/transverse",
        "out-of-scope",
        "must be zero with root_bending, whose model covers normal and longitudinal forces only",
    ),
    "root bending with craters": (
        changed(ONE_SIDED, ends="craters"),
        "#/root_bending",
        "inconsistent",
        "must not be combined with a reduced length; send the length that counts",
    ),
    # Intermittent
    "intermittent by the thin part": (
        changed(THIN, intermittent={"segment": "50 mm", "loading": "shear"}),
        "#/intermittent",
        "inconsistent",
        "claims no strength",
    ),
    "intermittent in full strength": (
        changed(STITCHED, basis="full-strength", load=LEFT_OUT),
        "#/intermittent",
        "inconsistent",
        "needs a continuous weld",
    ),
    "intermittent in a group": (
        changed(CONCENTRIC, intermittent={"segment": "2 in", "loading": "shear"}),
        "#/intermittent",
        "inconsistent",
        "does not apply to a group, whose welds are continuous; leave it out",
    ),
    "intermittent stiffener over its length": (
        changed(STITCHED, transverse_stiffener=True),
        "#/transverse_stiffener",
        "inconsistent",
        "a continuous weld",
    ),
    "staggered on one side": (
        changed(STITCHED, joint__sides=1, intermittent__staggered=True),
        "#/intermittent/staggered",
        "inconsistent",
        "applies to a joint welded on 2 sides only",
    ),
    "no widths": (
        changed(STITCHED, intermittent__widths=LEFT_OUT),
        "#/intermittent/widths",
        "inconsistent",
        "is required here: a limit of en-1993-1-8-2005-simplified depends on the widths of both parts",
    ),
    "widths of no use": (
        changed(STITCHED, intermittent__member="stiffener"),
        "#/intermittent/widths",
        "inconsistent",
        "does not apply here, because no limit depends on the widths; leave it out",
    ),
    "corrosive": (
        changed(STITCHED, intermittent__exposure="corrosive"),
        "#/intermittent/exposure",
        "out-of-scope",
        (
            "intermittent fillets must not be exposed to these conditions; make the weld continuous (EN 1993-1-8:2005,"
            " 4.3.2.2(1)"
        ),
    ),
    "weathering steel by EN": (
        changed(STITCHED, intermittent__exposure="weathering-steel"),
        "#/intermittent/exposure",
        "out-of-scope",
        "intermittent fillets must not be exposed to these conditions; make the weld continuous",
    ),
    "corrosive by AISC": (
        changed(AISC, intermittent={"segment": "2 in", "loading": "shear", "exposure": "corrosive"}),
        "#/intermittent/exposure",
        "out-of-scope",
        "(ANSI/AISC 360-22, J3.6)",
    ),
    "weathering steel at a stiffener": (
        changed(
            AISC,
            intermittent={
                "segment": "2 in",
                "loading": "shear",
                "exposure": "weathering-steel",
                "member": "stiffener",
            },
        ),
        "#/intermittent/exposure",
        "inconsistent",
        "weathering-steel applies to built-up members only, not to a stiffener",
    ),
    "segments over the line": (
        changed(STITCHED, load__length="110 mm"),
        "#/intermittent/segment",
        "inconsistent",
        "must leave room for two segments in 110 mm; it is 60 mm. Make the weld continuous",
    ),
    "gap over the line": (
        changed(STITCHED, load__length="200 mm"),
        "#/intermittent/gap",
        "inconsistent",
        "must be at most 80 mm, which segments at both ends of 200 mm leave; it is 100 mm",
    ),
    # Tension member
    "tension member by EN": (
        changed(EN, tension_member={"width": "100 mm"}),
        "#/tension_member",
        "inconsistent",
        "applies to AISC 360-22 only, not to en-1993-1-8-2005-directional; leave it out",
    ),
    "tension member across": (
        changed(AISC, load__angle="90 deg", tension_member={"width": "4 in"}),
        "#/tension_member",
        "inconsistent",
        "applies to a lap held by two welds along the force only: send sides 2 and angle 0 deg",
    ),
    "tension member without width": (
        changed(LAP_OF_TWO, tension_member={}),
        "#/tension_member/width",
        "inconsistent",
        "is required: shear lag depends on the width between the two welds",
    ),
    "tension member of two widths": (
        changed(ANGLE_ON_GUSSET, tension_member={"width": "4 in"}),
        "#/tension_member/width",
        "inconsistent",
        "does not apply beside load.width, which gives the same distance; leave it out",
    ),
    "tension member far out": (
        changed(ANGLE_ON_GUSSET, tension_member={"eccentricity": "5 in"}),
        "#/tension_member/eccentricity",
        "inconsistent",
        "must be less than the mean length of the welds",
    ),
    "tension member intermittent": (
        changed(LAP_OF_TWO, tension_member={"width": "4 in"}, intermittent={"segment": "2 in", "loading": "tension"}),
        "#/tension_member",
        "inconsistent",
        "applies to continuous welds only; leave intermittent out",
    ),
    # Unstiffened flange
    "flange by AISC": (
        changed(AISC, unstiffened_flange=ON_FLANGE["unstiffened_flange"]),
        "#/unstiffened_flange",
        "inconsistent",
        "applies to EN 1993-1-8 only, not to aisc-360-22-lrfd; leave it out",
    ),
    "flange of a lap": (
        changed(ON_FLANGE, joint__kind="lap"),
        "#/unstiffened_flange",
        "inconsistent",
        "applies to a tee only, not to lap; leave it out",
    ),
    "flange by load": (
        changed(ON_FLANGE, basis="load", load=EN["load"]),
        "#/basis",
        "inconsistent",
        'must be "full-strength" with an unstiffened flange (EN 1993-1-8:2005, 4.10(5))',
    ),
    "flange with neither": (
        changed(ON_FLANGE, unstiffened_flange__root_radius=LEFT_OUT),
        "#/unstiffened_flange",
        "inconsistent",
        "root_radius for a rolled section, or weld_throat for a welded one",
    ),
    "flange with both": (
        changed(ON_FLANGE, unstiffened_flange__weld_throat="5 mm"),
        "#/unstiffened_flange",
        "inconsistent",
        "root_radius for a rolled section, or weld_throat for a welded one",
    ),
    "box with a radius": (
        changed(ON_FLANGE, unstiffened_flange__section="box"),
        "#/unstiffened_flange",
        "inconsistent",
        "a box has no root radius",
    ),
}


@pytest.mark.parametrize("case", FAULTS)
def test_what_does_not_fit_is_refused(service: Exchange, case: str) -> None:
    """An option that another field, or the rule set, leaves no sense is refused, once, with the way out."""
    request, pointer, code, told = FAULTS[case]
    [(where, kind, detail)] = service.faults(FILLET, request)
    assert (where, kind) == (pointer, code)
    assert told in detail


@pytest.mark.parametrize("request_", [ANGLE_ON_GUSSET, CONCENTRIC, STITCHED, ON_FLANGE, ONE_SIDED])
def test_the_requests_changed_above_are_sound(service: Exchange, request_: Any) -> None:
    """What the cases start from is answered."""
    assert service.answer(FILLET, request_)["verdict"] in ("enough", "cannot-be-reached")


def test_inches_and_millimetres_are_one_joint(service: Exchange) -> None:
    """The same intermittent weld in either unit has one fingerprint, and the same size but for its unit."""
    metric = service.answer(FILLET, STITCHED)
    inches = service.answer(
        FILLET,
        changed(
            STITCHED,
            load__length={"value": 1000 / 25.4, "unit": "in"},
            intermittent__segment={"value": 60 / 25.4, "unit": "in"},
            intermittent__gap={"value": 100 / 25.4, "unit": "in"},
            units="us",
            size_step="0.5 mm",
        ),
    )
    assert inches["provenance"]["fingerprint"] == metric["provenance"]["fingerprint"]
    assert inches["intermittent"]["largest_gap"]["value"] * 25.4 == pytest.approx(
        metric["intermittent"]["largest_gap"]["value"], rel=1e-9
    )


def test_a_weld_group_goes_on_to_its_fillet(service: Exchange) -> None:
    """The group's equivalent force, sent on as it came, needs the throat that the group needs."""
    group = service.answer(GROUP, BRACKET)
    shared = {name: BRACKET[name] for name in ("rule_set", "parts", "filler")}
    load = {"longitudinal": group["equivalent_force"]}
    fillet = service.answer(FILLET, {**shared, "basis": "load", "joint": {"kind": "lap"}, "load": load})
    assert fillet["required"]["throat"]["value"] == pytest.approx(group["required"]["throat"]["value"], rel=1e-9)
