"""Examples of requests for ``crack_risk``, published in the document and run by the tests."""

from typing import Any

EXAMPLES: dict[str, Any] = {
    "fillet": {
        "summary": "Deep submerged-arc fillet: shape of the bead, weld metal and least size",
        "value": {
            "joint": "fillet",
            "bead": {"throat": "5 mm", "penetration": "4 mm"},
            "weld_metal": {"C": 0.12, "S": 0.01, "P": 0.015, "Nb": 0.01, "Si": 0.3, "Mn": 1.2},
            "process": "SAW",
            "thickness": ["20 mm", "12 mm"],
            "leg": "7 mm",
            "low_hydrogen": True,
            "crater": "filled",
        },
    },
    "corner": {
        "summary": "Hollow root bead of a restrained corner, measured on a macro, in inches",
        "value": {
            "joint": "corner",
            "bead": {"width": "1/4 in", "depth": "3/16 in", "face_width": "1/4 in"},
            "hollow": "1/32 in",
            "restrained": True,
            "crater": "unfilled",
            "units": "us",
        },
    },
}
