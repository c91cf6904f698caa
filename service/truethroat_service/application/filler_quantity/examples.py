"""Examples of requests for ``filler_quantity``, published in the document and run by the tests."""

from typing import Any

EXAMPLES: dict[str, Any] = {
    "job": {
        "summary": "Fillets and a ring of V grooves of one job, priced",
        "value": {
            "welds": [
                {
                    "mark": "ribs",
                    "shape": {"kind": "fillet", "legs": ["6 mm", "6 mm"]},
                    "length": "400 mm",
                    "count": 24,
                    "excess": 0.1,
                    "filler": "ER70S-6",
                    "process": "135",
                    "position": "PB",
                    "deposition": {"wire_diameter": "1.2 mm", "feed_speed": "9 m/min"},
                    "efficiency": 0.95,
                    "operator_factor": 0.35,
                    "gas_flow": "16 L/min",
                },
                {
                    "mark": "ring",
                    "shape": {
                        "kind": "single-v",
                        "thickness": "12 mm",
                        "angle": "60 deg",
                        "root_gap": "3 mm",
                        "land": "2 mm",
                        "reinforcement": {"face": {"height": "2 mm", "overlap": "2 mm"}},
                        "back_gouge": {"depth": "5 mm", "width": "8 mm"},
                    },
                    "length": "2.5 m",
                    "filler": "E7018",
                    "process": "SMAW",
                    "position": "1G",
                    "electrode": {"length": "350 mm", "stub": "50 mm"},
                },
            ],
            "prices": {
                "currency": "EUR",
                "labour": {"amount": 52, "per": "h"},
                "consumables": [
                    {"filler": "E7018", "amount": 4.1, "per": "kg"},
                    {"filler": "ER70S-6", "amount": 2.3, "per": "kg"},
                ],
                "gases": [{"amount": 4.8, "per": "m3"}],
            },
        },
    },
    "cost-per-pound": {
        "summary": "A foot of cored-wire fillet, in inches and pounds",
        "value": {
            "welds": [
                {
                    "shape": {"kind": "fillet", "legs": ["5/16 in", "5/16 in"]},
                    "length": "1 ft",
                    "filler": "E71T-1",
                    "process": "FCAW-G",
                    "position": "2F",
                    "deposition": {"rate": "10.2 lb/h"},
                }
            ],
            "units": "us",
        },
    },
}
