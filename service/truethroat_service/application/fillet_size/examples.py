"""Examples of requests for ``fillet_size``, published in the document and run by the tests."""

from typing import Any

EXAMPLES: dict[str, Any] = {
    "stiffener": {
        "summary": "Stiffener fillets in metric sizes, EN 1993-1-8 directional method",
        "value": {
            "rule_set": "en-1993-1-8-2005-directional",
            "basis": "load",
            "joint": {"kind": "tee", "sides": 2},
            "parts": [{"thickness": "12 mm", "material": "S355"}, {"thickness": "10 mm", "material": "S355"}],
            "load": {"force": "240 kN", "length": "200 mm", "angle": "90 deg"},
            "process": "135",
            "position": "PB",
            "working": True,
        },
    },
    "lap": {
        "summary": "Lap joint in inch sizes, AISC 360-22, along the edge of the thinner part",
        "value": {
            "rule_set": "aisc-360-22-lrfd",
            "basis": "load",
            "joint": {"kind": "lap", "sides": 2},
            "parts": [{"thickness": "1/2 in", "material": "A36"}, {"thickness": "3/8 in", "material": "A36"}],
            "filler": "E70",
            "load": {"force": "60 kip", "length": "8 in", "angle": "0 deg"},
            "edge_of": 2,
            "units": "us",
        },
    },
    "intermittent": {
        "summary": "Staggered intermittent fillets of a built-up strut, with the largest gap AISC 360-22 allows",
        "value": {
            "rule_set": "aisc-360-22-asd",
            "basis": "load",
            "joint": {"kind": "tee", "sides": 2},
            "parts": [{"thickness": "1/2 in", "material": "A36"}, {"thickness": "3/8 in", "material": "A36"}],
            "filler": "E70",
            "load": {"longitudinal": "1.2 kip/in", "length": "8 ft"},
            "intermittent": {"segment": "2 in", "staggered": True, "loading": "compression"},
            "units": "us",
        },
    },
    "balanced": {
        "summary": "Angle on a gusset by two side welds balanced about its centroid, EN 1993-1-8",
        "value": {
            "rule_set": "en-1993-1-8-2005-simplified",
            "basis": "load",
            "joint": {"kind": "lap", "sides": 2},
            "parts": [{"thickness": "10 mm", "material": "S235"}, {"thickness": "8 mm", "material": "S235"}],
            "load": {"force": "150 kN", "length": "200 mm", "width": "80 mm", "centroid": "23 mm"},
        },
    },
    "packing": {
        "summary": "Strap on 4 mm of packing, EN 1993-1-8 4.4",
        "value": {
            "rule_set": "en-1993-1-8-2005-simplified",
            "basis": "load",
            "joint": {"kind": "lap", "sides": 2},
            "parts": [{"thickness": "15 mm", "material": "S355"}, {"thickness": "12 mm", "material": "S355"}],
            "packing": {"thickness": "4 mm"},
            "load": {"force": "360 kN", "length": "180 mm", "angle": "0 deg"},
        },
    },
    "aluminium": {
        "summary": "Full strength of an aluminium rib, EN 1999-1-1, with the zone its heat softens",
        "value": {
            "rule_set": "en-1999-1-1-2007",
            "basis": "full-strength",
            "joint": {"kind": "tee", "sides": 2},
            "parts": [{"thickness": "10 mm", "material": "6082-T6"}, {"thickness": "6 mm", "material": "5083-H22"}],
            "filler": "ER5356",
            "process": "131",
        },
    },
    "high-strength": {
        "summary": "Lap of high-strength steel with a weaker filler metal, EN 1993-1-12",
        "value": {
            "rule_set": "en-1993-1-12-2007-directional",
            "basis": "load",
            "joint": {"kind": "lap", "sides": 2},
            "parts": [{"thickness": "12 mm", "material": "S690Q"}, {"thickness": "10 mm", "material": "S355"}],
            "filler": "G 50",
            "load": {"force": "300 kN", "length": "250 mm", "angle": "0 deg"},
        },
    },
    "thin-part": {
        "summary": "By the thinner part, from both sides",
        "value": {
            "rule_set": "thin-part",
            "basis": "thin-part",
            "joint": {"kind": "tee", "sides": 2},
            "parts": [{"thickness": "12 mm"}, {"thickness": "8 mm"}],
            "mark": "hopper rib 4",
        },
    },
}
