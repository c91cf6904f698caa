"""Examples of requests for ``groove_size``, published in the document and run by the tests."""

from typing import Any

EXAMPLES: dict[str, Any] = {
    "flange": {
        "summary": "Partial-penetration groove of a flange, both forms of bevel considered, AISC 360-22",
        "value": {
            "rule_set": "aisc-360-22-lrfd",
            "basis": "load",
            "joint": {"kind": "tee"},
            "parts": [{"thickness": "1 in", "material": "A992"}, {"thickness": "3/4 in", "material": "A992"}],
            "weld": {"kind": "partial"},
            "filler": "E70",
            "process": "FCAW-G",
            "position": "2G",
            "load": {"force": "80 kip", "length": "8 in", "angle": "90 deg"},
            "units": "us",
        },
    },
    "butt": {
        "summary": "Full-penetration butt from both sides, EN 1993-1-8, preparations of ISO 9692-1 ranked by metal",
        "value": {
            "rule_set": "en-1993-1-8-2005-directional",
            "basis": "full-strength",
            "joint": {"kind": "butt"},
            "parts": [{"thickness": "20 mm", "material": "S355"}, {"thickness": "25 mm", "material": "S355"}],
            "weld": {"kind": "full"},
            "filler": "G 42",
            "process": "135",
            "position": "PA",
        },
    },
    "plugs": {
        "summary": "How many plug welds a strap needs, EN 1993-1-8",
        "value": {
            "rule_set": "en-1993-1-8-2005-simplified",
            "basis": "load",
            "joint": {"kind": "lap"},
            "parts": [{"thickness": "15 mm", "material": "S275"}, {"thickness": "12 mm", "material": "S275"}],
            "weld": {"kind": "plug", "diameter": "24 mm"},
            "load": {"force": "250 kN"},
        },
    },
    "holes": {
        "summary": "Fillets all round the holes of a lining, AISC 360-22",
        "value": {
            "rule_set": "aisc-360-22-asd",
            "basis": "load",
            "joint": {"kind": "lap"},
            "parts": [{"thickness": "1/2 in", "material": "A36"}, {"thickness": "3/8 in", "material": "A36"}],
            "weld": {"kind": "fillet-in-hole", "diameter": "1 1/2 in", "leg": "1/4 in"},
            "filler": "E70",
            "load": {"force": "40 kip"},
            "units": "us",
        },
    },
}
