"""Examples of requests for ``joint_plan``, published in the document and run by the tests."""

from typing import Any

EXAMPLES: dict[str, Any] = {
    "stiffener": {
        "summary": "Stiffener under a load across it, EN 1993-1-8: fillets, grooves, and what each takes",
        "value": {
            "rule_set": "en-1993-1-8-2005-directional",
            "joint": {"kind": "tee"},
            "parts": [{"thickness": "12 mm", "material": "S355"}, {"thickness": "10 mm", "material": "S355"}],
            "length": "300 mm",
            "basis": "load",
            "load": {"force": "240 kN", "angle": "90 deg"},
            "process": "135",
            "position": "PB",
            "tolerances": {"legs": "0.5 mm", "depth": "0.5 mm"},
            "arc": {"voltage": "28 V", "current": "250 A", "travel_speed": "350 mm/min"},
            "weights": {"distortion": 2},
        },
    },
    "outside-corner": {
        "summary": "Outside corner of a hopper to be ground flush, AISC 360-22, in inches",
        "value": {
            "rule_set": "aisc-360-22-lrfd",
            "joint": {"kind": "outside-corner"},
            "parts": [{"thickness": "3/8 in", "material": "A36"}, {"thickness": "3/8 in", "material": "A36"}],
            "length": "4 ft",
            "basis": "throat",
            "required_throat": "3/16 in",
            "process": "GMAW",
            "position": "1G",
            "finish": {"to": "flush", "tolerance": "1/64 in"},
            "tolerances": {"depth": "1/64 in", "thickness": "1/64 in"},
            "filler": "E70",
            "units": "us",
        },
    },
}
