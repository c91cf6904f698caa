"""Examples of requests for ``bevel_depth``, published in the document and run by the tests."""

from typing import Any

EXAMPLES: dict[str, Any] = {
    "closed-corner": {
        "summary": "Bevel that lets a closed corner be ground flush, AISC 360-22",
        "value": {
            "seam": {"kind": "closed-corner", "thickness": ["12 mm", "12 mm"]},
            "required_throat": "6 mm",
            "finish": {"to": "flush"},
            "rule_set": "aisc-360-22-lrfd",
            "process": "SMAW",
            "position": "1G",
        },
    },
    "butt": {
        "summary": "V groove in a butt seam, in inches",
        "value": {
            "seam": {"kind": "butt", "thickness": ["3/8 in", "1/2 in"]},
            "required_throat": "1/4 in",
            "groove": "single-v",
            "finish": {"to": "flush", "below": "1/64 in"},
            "units": "us",
        },
    },
}
