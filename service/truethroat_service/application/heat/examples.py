"""Examples of requests for ``heat``, published in the document and run by the tests."""

from typing import Any

EXAMPLES: dict[str, Any] = {
    "tee": {
        "summary": "Single-run fillet by MAG in a tee against a window of cooling times, with preheat and hardness",
        "value": {
            "arc": {"voltage": "28 V", "current": "250 A", "travel_speed": "350 mm/min"},
            "process": "135",
            "thickness": "15 mm",
            "seam": "tee-fillet",
            "cooling_window": {"least": "5 s", "most": "25 s"},
            "composition": {"C": 0.16, "Si": 0.3, "Mn": 1.4, "others_zero": True},
            "hydrogen": "5 ml/100g",
            "steel_group": 1,
            "leg": "8 mm",
            "required_leg": "6 mm",
        },
    },
    "window": {
        "summary": "Speeds that keep a filling run in a window, and the preheat of AWS D1.1, in US units",
        "value": {
            "arc": {"voltage": "30 V", "current": "400 A"},
            "process": "SAW",
            "thickness": "1 in",
            "seam": "butt-fill",
            "preheat": "150 degF",
            "cooling_window": {"least": "10 s", "most": "25 s"},
            "preheat_category": "B",
            "thickest_part": "1 1/4 in",
            "units": "us",
        },
    },
}
