"""Shape of an answer of ``/v1/fillet-size``."""

from .shapes import AREA, FORCE, FORCE_PER_LENGTH, LENGTH, Json, listed, nullable, number, record, ref, result, text

_SIZE = {"leg": LENGTH, "throat": LENGTH, "source": text()}


def _pair(schema: Json) -> Json:
    return {**listed(schema), "minItems": 2, "maxItems": 2}


COMPONENTS: dict[str, Json] = {
    "FilletSize": record("Size of a fillet.", _SIZE),
    "SpecifiedFilletSize": record(
        "Size to specify.", {**_SIZE, "passes": {"type": ["integer", "null"], "description": "Least number of passes."}}
    ),
    "SpacingLimit": record(
        "One limit of an intermittent fillet.",
        {
            "name": {"type": "string", "enum": ["segment", "gap", "nearer-gap", "pitch"]},
            "value": LENGTH,
            "bound": {"type": "string", "enum": ["least", "most"]},
            "allowed": LENGTH,
            "verdict": {"type": "string", "enum": ["within", "short", "over"]},
            "source": text(),
        },
    ),
    "IntermittentFillet": record(
        "Intermittent fillet as asked for, and what would still do.",
        {
            "segment": LENGTH,
            "gap": {**LENGTH, "description": "Clear gap on one side; text rounded down."},
            "pitch": {**LENGTH, "description": "From centre to centre; text rounded down."},
            "count": {
                "type": ["integer", "null"],
                "description": "Segments on one side, one at each end; null where the length is not known.",
            },
            "even_gap": {**nullable(LENGTH), "description": "Gap that spaces them evenly."},
            "end_weld": {**LENGTH, "description": "Least length of the weld at each end."},
            "strength": {**nullable(FORCE_PER_LENGTH), "description": "Of one side, per length of the line."},
            "largest_gap": {**nullable(LENGTH), "description": "Gap at which the size specified still does."},
            "shortest_segment": {**nullable(LENGTH), "description": "Segment that still does at this gap."},
            "limits": listed(ref("SpacingLimit")),
            "callout": nullable(ref("WeldCallout")),
        },
    ),
    "WeldCallout": record("Weld as drawing text.", {"iso_2553": text(), "aws_a2_4": text()}),
    "ConcentricGroup": record(
        "Group along and across its force: plain sum, sum with the increase across (null where it is left out).",
        {
            "equivalent_length": {**LENGTH, "description": "Length along the force that is as strong."},
            "plain_sum": FORCE,
            "weighted_sum": nullable(FORCE),
            "counts": {"type": "string", "enum": ["plain-sum", "weighted-sum"]},
            "strength": FORCE,
        },
    ),
    "WeldBalance": record(
        "Two side welds balanced about a member's centroid, the first first.",
        {
            "forces": _pair(FORCE),
            "lengths": {**_pair(LENGTH), "description": "Shares of the length given."},
            "least_lengths": {**nullable(_pair(LENGTH)), "description": "What the size specified needs."},
        },
    ),
    "TensionMemberStrength": record(
        "Tension member held by longitudinal welds alone.",
        {
            "shear_lag": number("Factor U."),
            "effective_area": AREA,
            "by_yield": FORCE,
            "by_rupture": FORCE,
            "utilisation": number(),
        },
    ),
    "FlangeWidth": record(
        "Plate on an unstiffened flange.",
        {
            "share": number("Factor k."),
            "effective_width": LENGTH,
            "least_width": {**LENGTH, "description": "Below it the flange must be stiffened."},
            "resistance": {**FORCE, "description": "Of the plate over the width held."},
            "stiffen": {"type": "boolean"},
        },
    ),
    "FilletSizeAnswer": result(
        "Fillet to specify.",
        {
            "required": {**ref("FilletSize"), "description": "What the weld metal needs."},
            "minimum": ref("FilletSize"),
            "maximum": nullable(ref("FilletSize")),
            "specify": nullable(ref("SpecifiedFilletSize")),
            "governs": {
                "type": "string",
                "enum": [
                    "load",
                    "minimum-size",
                    "minimum-length",
                    "root-gap",
                    "packing",
                    "full-strength",
                    "thin-part",
                    "base-metal",
                    "spacing",
                    "tension-member",
                    "flange",
                ],
            },
            "utilisation": nullable(
                number("Greatest use made of weld or parts at the size specified, less its tolerance.")
            ),
            "strength": nullable(
                record(
                    "Design or allowable force per length of one weld, in the load's direction, at the size tried, less"
                    " its tolerance.",
                    {
                        "weld": FORCE_PER_LENGTH,
                        "base_metal": _pair(FORCE_PER_LENGTH),
                    },
                )
            ),
            "z_loss": {
                **nullable(LENGTH),
                "description": "Throat lost at the root between plates below 60 deg, included in the leg.",
            },
            "length": nullable(
                record("Length of one weld.", {"given": LENGTH, "effective": LENGTH, "factor": number()})
            ),
            "packing": nullable(
                record(
                    "Packing, and how it is welded.",
                    {
                        "thickness": LENGTH,
                        "added": {**LENGTH, "description": "To the leg, which reaches over it."},
                        "welds": {
                            "type": "string",
                            "enum": ["over-packing", "to-each-part"],
                            "description": "One leg over the packing, or a weld of this size from each part to it.",
                        },
                    },
                )
            ),
            "intermittent": nullable(ref("IntermittentFillet")),
            "concentric": nullable(ref("ConcentricGroup")),
            "balance": nullable(ref("WeldBalance")),
            "tension_member": nullable(ref("TensionMemberStrength")),
            "unstiffened_flange": nullable(ref("FlangeWidth")),
        },
    ),
}
