"""Examples of requests for ``weld_group``, published in the document and run by the tests."""

from typing import Any

EXAMPLES: dict[str, Any] = {
    "bracket": {
        "summary": "Bracket of two plates, each welded on three sides, by instantaneous centre",
        "value": {
            "rule_set": "aisc-360-22-lrfd",
            "group": {"pattern": "c", "depth": "18 in", "width": "3 in"},
            "count": 2,
            "load": {"force": {"y": "-54 kip"}, "at": {"x": "11 1/4 in"}},
            "method": "instantaneous-centre",
            "parts": [{"thickness": "1/2 in", "material": "A992"}, {"thickness": "3/8 in", "material": "A36"}],
            "filler": "E70",
            "units": "us",
        },
    },
    "lines": {
        "summary": "Two lines and an arc under a force off the plane, by lines, EN 1993-1-8",
        "value": {
            "rule_set": "en-1993-1-8-2005-directional",
            "group": {
                "pattern": "lines",
                "lines": [
                    {"start": ["0 mm", "0 mm"], "end": ["0 mm", "120 mm"]},
                    {"start": ["80 mm", "0 mm"], "end": ["80 mm", "120 mm"]},
                    {"centre": ["40 mm", "120 mm"], "radius": "40 mm", "start_angle": "0 deg", "sweep": "180 deg"},
                ],
            },
            "load": {"force": {"y": "-30 kN"}, "at": {"x": "40 mm", "y": "60 mm", "z": "150 mm"}},
            "parts": [{"thickness": "12 mm", "material": "S355"}, {"thickness": "10 mm", "material": "S355"}],
        },
    },
}
