"""Shape of an answer of ``/v1/fillet-size``."""

from .shapes import FORCE_PER_LENGTH, LENGTH, Json, listed, nullable, number, record, ref, result, text

_SIZE = {"leg": LENGTH, "throat": LENGTH, "source": text()}

COMPONENTS: dict[str, Json] = {
    "FilletSize": record("Size of a fillet.", _SIZE),
    "SpecifiedFilletSize": record(
        "Size to specify.", {**_SIZE, "passes": {"type": ["integer", "null"], "description": "Least number of passes."}}
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
                    "full-strength",
                    "thin-part",
                    "base-metal",
                ],
            },
            "utilisation": nullable(number("Greatest use made of weld or parts at the size specified.")),
            "strength": nullable(
                record(
                    "Design or allowable force per length of one weld, in the load's direction, at the size tried.",
                    {
                        "weld": FORCE_PER_LENGTH,
                        "base_metal": {**listed(FORCE_PER_LENGTH), "minItems": 2, "maxItems": 2},
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
        },
    ),
}
