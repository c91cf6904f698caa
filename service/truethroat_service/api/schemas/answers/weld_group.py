"""Shape of an answer of ``/v1/weld-group``."""

from .shapes import FORCE_PER_LENGTH, LENGTH, Json, listed, nullable, number, record, ref, result

_FORCE, _MOMENT, _SECOND = ref("ForceAnswer"), ref("MomentAnswer"), ref("LineSecondMomentAnswer")
_PLACE = {"x": LENGTH, "y": LENGTH}
_AXES = ("x", "y", "z")

COMPONENTS: dict[str, Json] = {
    "GroupPoint": record(
        "Point of a group and the force per length on its weld.",
        {
            **_PLACE,
            "force": record("Along each axis.", dict.fromkeys(_AXES, FORCE_PER_LENGTH)),
            "resultant": FORCE_PER_LENGTH,
        },
    ),
    "WeldGroupAnswer": result(
        "Size and strength of a weld group.",
        {
            "properties": record(
                "One group as lines of unit throat: its length, centroid, and second moments about it.",
                {
                    "length": LENGTH,
                    "centroid": record("From the origin of the group.", _PLACE),
                    **dict.fromkeys(("i_x", "i_y", "i_xy", "j"), _SECOND),
                },
            ),
            "load_per_group": record(
                "Load of one group, through its centroid.",
                {
                    "force": record("Along each axis.", dict.fromkeys(_AXES, _FORCE)),
                    "moment": record("About each axis.", dict.fromkeys(_AXES, _MOMENT)),
                },
            ),
            "method": {"type": "string", "enum": ["elastic", "instantaneous-centre"]},
            "critical": nullable(ref("GroupPoint")),
            "points": {**listed(ref("GroupPoint")), "description": "Ends of every line; elastic method only."},
            "centre": nullable(record("Instantaneous centre; null for the elastic method or a translation.", _PLACE)),
            "required": ref("FilletSize"),
            "minimum": ref("FilletSize"),
            "specify": nullable(ref("FilletSize")),
            "utilisation": nullable(
                number("Of the size given, or else of the next step up; null where it may carry nothing.")
            ),
            "strength": record(
                "Strength of all groups at the size given, or else at the next step up, as its shortest run counts.",
                {
                    "factor": number("Multiple of the load that is carried."),
                    "force": {**_FORCE, "description": "Force carried along the load."},
                    "moment": {**_MOMENT, "description": "Moment about z carried with it."},
                },
            ),
            "equivalent_force": {
                **FORCE_PER_LENGTH,
                "description": "Force per length at the critical point, or along a weld that is used as much.",
            },
            "efficiency": number("Share of the strength of the same length loaded along itself."),
        },
    ),
}
