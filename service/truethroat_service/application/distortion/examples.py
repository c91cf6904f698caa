"""Examples of requests for ``distortion``, published in the document and run by the tests."""

from typing import Any

EXAMPLES: dict[str, Any] = {
    "flange": {
        "summary": "Two fillets on a flange, held against ISO 13920 class B and F",
        "value": {
            "joint": {"kind": "tee", "thickness": "12 mm", "width": "200 mm", "leg": "6 mm", "sides": 2},
            "length": "3 m",
            "member": {"area": "6000 mm2", "second_moment": "4500 cm4", "eccentricity": "90 mm"},
            "heat_input": "1.1 kJ/mm",
            "iso_13920": {
                "linear_class": "B",
                "form_class": "F",
                "across": "200 mm",
                "along": "3 m",
                "shorter_leg": "100 mm",
            },
            "working": True,
        },
    },
    "butt": {
        "summary": "V in a butt seam, in inches, against the same groove from both sides",
        "value": {
            "joint": {
                "kind": "butt",
                "thickness": "1/2 in",
                "weld": {"groove": "single-v", "root_opening": "1/8 in", "land": "1/16 in"},
                "runs": 3,
                "current": "220 A",
            },
            "length": "8 ft",
            "units": "us",
        },
    },
}
