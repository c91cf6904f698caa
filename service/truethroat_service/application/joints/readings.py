"""How each rule set reads a clause that is silent, open to two readings, or borrowed from another standard.

A reading is a decision of this service, so the caller has to see it: ``GET /v1/rule-sets`` shows every one with the
clause that it reads. Of two possible readings the safe one is taken.
"""

from ...engine.formula import Source
from ...engine.rule_set import Reading
from ...reference.loader import MATERIALS
from ...standards import aisc_360_22, en_1993_1_1_2005, en_1993_1_8_2005, en_1993_1_12_2007
from ...standards.aisc_360_22 import (
    b4_2_design_wall,
    j2_1_partial_penetration,
    j2_4_concentric_groups,
    j2_6_filler,
    j3_6_spacing,
    manual_9_interaction,
)
from ...standards.aws_d1_1_2020 import s5_6_matching, s7_21_fit_up, s7_23_profile, s8_1_acceptance
from ...standards.en_1993_1_8_2005 import (
    s4_3_2_2_intermittent,
    s4_4_packing,
    s4_5_3_2_directional,
    s4_6_hole_fillets,
    s4_7_butt_welds,
    s4_12_single_sided,
)
from ...standards.en_1999_1_1_2007 import s8_6_3_fillet_welds as aluminium_fillet
from ...standards.iso_5817_2014 import clause as iso_5817
from ...standards.iso_5817_2014 import table_1

_PRACTICE = Source("", "reading of this service", "common practice, no source")

BORROWED_GAP = Reading(
    "The rules say nothing about a root gap under a fillet. A gap over 1/16 in is added whole to both legs, as AWS D1.1"
    " requires.",
    s7_21_fit_up.FIT_UP,
)


def _shares(source: Source) -> Reading:
    return Reading(
        "The two welds of a tee share the thickness of part 2, and each shears part 1 alone. The two welds of a lap"
        " shear each part alone and share its tension. A pull off part 1 of a tee shears it through its thickness"
        " beside each weld, unless a plate stands behind it.",
        source,
    )


def _together(text: str, source: Source) -> Reading:
    return Reading(f"Shear and tension beside a fillet are checked together in each part. {text}", source)


def _long_group(source: Source) -> Reading:
    return Reading(
        "A weld group is reduced for the length of its longest line, whatever its parts are, where a force acts in its"
        " plane; the request may say that it is not end-loaded.",
        source,
    )


_GROOVE_SHARES = Reading(
    "Each part beside a groove carries the whole force on its thickness once, shear and tension together as beside a"
    " fillet. Part 1 of a tee carries a pull off it as shear through its thickness, unless a plate stands behind it.",
    _PRACTICE,
)
_REINFORCED = Reading(
    "With a fillet on the face of a groove, the throat lies at an angle to the force. The whole force is taken as shear"
    " on it, and the groove alone must have the least throat.",
    _PRACTICE,
)

_EFFECTIVE_AREA = Reading(
    "Beside a partial penetration the base metal is checked over the effective area of the weld too: by rupture in"
    " tension, by yielding in compression, by both in shear, and by Eq. 9-1 of the Manual where they act together.",
    aisc_360_22.clause("Table J2.5", "second-hand"),
)

AISC = (
    _EFFECTIVE_AREA,
    _shares(aisc_360_22.clause("J4.1, J4.2")),
    _together(
        "Section J4 has no rule for both together, so yielding and rupture are each checked by Eq. 9-1 of the Manual.",
        manual_9_interaction.INTERACTION,
    ),
    Reading(
        "The spacing of intermittent fillets is measured from centre to centre of the segments.",
        j3_6_spacing.connector_spacing.source,
    ),
    Reading(
        "A group of welds along and across its force is sized by its equivalent length along the force, so that the"
        " directional increase counts once.",
        j2_4_concentric_groups.equivalent_length.source,
    ),
    Reading(
        "The welds along the force of a concentric group are taken as two of one length, and the reduction for that"
        " length is taken on the whole group.",
        aisc_360_22.clause("J2.2b(d), J2.4(b)"),
    ),
    _long_group(aisc_360_22.clause("J2.2b(d)")),
    Reading("A weld group sized by the elastic method takes no directional increase.", aisc_360_22.clause("J2.4(a)")),
    Reading(
        "The thickness of a hollow section is taken as its design wall, unless the request says that it is the nominal"
        " wall.",
        b4_2_design_wall.SOURCE,
    ),
    Reading("Filler metals are matched to the parts by the groups of base metal.", s5_6_matching.GROUPS),
    Reading(
        "Where a part is in no group of base metal, its matching filler metal is the least strength class of 10 ksi,"
        " from E60 up, that is not under the strength of the part.",
        j2_6_filler.MATCHING,
    ),
    Reading(
        "Between the rows for 45 and 60 deg the row of the tighter groove holds.", j2_1_partial_penetration.TABLE_J2_1
    ),
    Reading(
        "Proven penetration replaces the deduction from the depth of a groove; it is never added to the depth as well.",
        aisc_360_22.clause("J2.1a"),
    ),
    Reading(
        "The least throat of a partial penetration is required on each side of a groove that is cut from both sides.",
        aisc_360_22.clause("J2.1b, Table J2.3"),
    ),
    _REINFORCED,
    _GROOVE_SHARES,
    Reading(
        "A fillet around a hole counts the centre line of its throat. Its force meets it at every angle, so it takes no"
        " directional increase. Its leg keeps to the limits of a leg along an edge.",
        aisc_360_22.clause("J2.2a"),
    ),
)

_S355 = MATERIALS["S355"].bands[0]
CARBON_STEEL = (
    Reading(
        "The tensile strength of S355 up to 40 mm is 490 MPa. The values 510 and 470 MPa also circulate; to use one"
        " of them, send the strengths of the part instead of its material.",
        Source("", _S355.source, _S355.mark),
    ),
)

EN = (
    BORROWED_GAP,
    _shares(en_1993_1_1_2005.clause("6.2.3, 6.2.6")),
    _together(
        "The equivalent stress of 6.2.1(5) holds at any shear, and 6.2.10 where the shear is over half of the"
        " resistance.",
        en_1993_1_1_2005.clause("6.2.1(5), 6.2.10"),
    ),
    Reading(
        "The largest gap of an intermittent fillet is measured to the nearest segment on either side of the plate.",
        s4_3_2_2_intermittent.gap_in_tension.source,
    ),
    Reading(
        "The length of the weld at each end of an intermittent fillet is found from the wider of the two parts.",
        s4_3_2_2_intermittent.end_weld.source,
    ),
    Reading(
        "Packing is thin when it is thinner than the leg needed, the least size included; its thickness is then added"
        " to the leg. Thicker packing is welded to each part, and the leg must not be larger than the edge of the"
        " packing.",
        s4_4_packing.added_leg.source,
    ),
    Reading(
        "The clause gives no formula for bending about the root of a weld from one side. The moment of the tension"
        " about the throat, from the middle of part 2, is put on the throat as on a beam.",
        s4_12_single_sided.MODEL,
    ),
    _long_group(en_1993_1_8_2005.clause("4.11", "from memory")),
    Reading(
        "A weld group is checked with the weld on either side of each line, and the worse side counts.",
        s4_5_3_2_directional.normal_to_throat.source,
    ),
    Reading(
        "A partial penetration is resisted as a fillet of deep penetration, so its throat must be at least 3 mm on each"
        " side. The same holds for each side of a T-butt that does not count as full strength.",
        en_1993_1_8_2005.clause("4.5.2(2), by 4.7.2"),
    ),
    Reading(
        "Proven penetration adds to the depth of a groove. Without it the prepared depth is the throat, and a procedure"
        " test must show that the depth is achieved.",
        s4_7_butt_welds.PARTIAL_PENETRATION,
    ),
    Reading("A partial groove that ISO 9692-1 does not detail is sized by its form alone.", _PRACTICE),
    _REINFORCED,
    _GROOVE_SHARES,
    Reading(
        "A fillet around a hole counts the centre line of its throat, as AISC 360-22 J2.2a does, because the line of"
        " its root is longer. Its leg keeps to the limits of a leg along an edge.",
        s4_6_hole_fillets.resistance.source,
    ),
)

STAINLESS = (
    Reading(
        "The usual filler metals for stainless steel are a little weaker than the parts. The strength of the weld"
        " is the lesser of parent and filler metal.",
        en_1993_1_8_2005.clause("4.2(2)"),
    ),
)

HIGH_STRENGTH = (
    *CARBON_STEEL,
    Reading(
        "A joint is covered when one of its steels is over S460. The weaker steel also takes beta_w 1.0, which is the"
        " safe value.",
        en_1993_1_12_2007.clause("2.8"),
    ),
    Reading(
        "The strength of the weld is the lesser of parent and filler metal. The model of the German annex, which"
        " mixes the two, is not used.",
        en_1993_1_12_2007.clause("2.8"),
    ),
)

ALUMINIUM = (
    BORROWED_GAP,
    _shares(aluminium_fillet.HEAT_AFFECTED),
    _together("They are combined at the toe as at the fusion boundary.", aluminium_fillet.HEAT_AFFECTED),
    Reading(
        "Both legs are checked with the strength of the weaker alloy beside the weld, and the throat of the answer"
        " covers the larger leg.",
        aluminium_fillet.HEAT_AFFECTED,
    ),
    _long_group(aluminium_fillet.FILLET),
    Reading("Penetration does not count, because it would make the legs smaller.", aluminium_fillet.HEAT_AFFECTED),
)

THIN_PART = (BORROWED_GAP,)

ISO_5817 = (
    Reading(
        "The text of 2014 was not read whole. Each limit cites the edition in which its number was read; where two"
        " editions differ, the tighter limit is taken.",
        iso_5817("Table 1", "second-hand"),
    ),
    Reading(
        "A throat that is short by no more than its row allows, over no more than the length it allows, is enough.",
        iso_5817(f"Table 1, {table_1.ROWS['insufficient-throat'].number}", "second-hand"),
    ),
)

D1_1 = (
    Reading(
        "The code prints inches and millimetres that differ. The inches are taken: its 1 mm is read as 1/32 in.",
        s8_1_acceptance.UNDERCUT,
    ),
    Reading(
        "The face width that ends the first row of convexity is taken as 8 mm, because it is tighter than 5/16 in.",
        s7_23_profile.PROFILE,
    ),
    Reading(
        "A fillet that is undersize by no more than the code allows, over no more than the length it allows, is"
        " enough.",
        s8_1_acceptance.UNDERSIZE,
    ),
    Reading(
        "On a weld shorter than 12 in, undercut of a thin part may be deeper over a sixth of the length, which is the"
        " share of 2 in in 12 in.",
        s8_1_acceptance.UNDERCUT,
    ),
)
