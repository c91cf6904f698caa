"""Examples of requests for ``grind_allowance``, published in the document and run by the tests."""

from typing import Any

EXAMPLES: dict[str, Any] = {
    "closed-corner": {
        "summary": "Closed square-edged corner to be ground flush",
        "value": {
            "seam": {"kind": "closed-corner", "thickness": ["5/16 in", "5/16 in"]},
            "penetration": {"depth": "3/32 in", "vouched": "assumed"},
            "face_height": "5/32 in",
            "required_throat": "1/4 in",
            "finish": {"to": "flush"},
            "units": "us",
        },
    },
    "open-corner": {
        "summary": "Open corner blended to a radius, with the grinder's tolerance",
        "value": {
            "seam": {"kind": "open-corner", "thickness": ["8 mm", "6 mm"]},
            "face_height": "4 mm",
            "required_throat": "5 mm",
            "finish": {"to": "radius", "radius": "6 mm", "tolerance": "0.3 mm"},
        },
    },
}
