"""Examples of requests for ``as_welded``, published in the document and run by the tests."""

from typing import Any

EXAMPLES: dict[str, Any] = {
    "hollow": {
        "summary": "Hollow fillet, gauged to half a millimetre, at level C of ISO 5817",
        "value": {
            "legs": ["8 mm", "8 mm"],
            "hollow": "1 mm",
            "undercut": "0.3 mm",
            "thickness": ["12 mm", "10 mm"],
            "required": {"throat": "5 mm"},
            "quality": "iso-5817-c",
            "reading_tolerance": "0.5 mm",
        },
    },
    "overwelded": {
        "summary": "Convex fillet larger than asked for, AWS D1.1:2020, in inches",
        "value": {
            "legs": ["7/16 in", "7/16 in"],
            "convexity": "1/16 in",
            "thickness": ["1/2 in", "3/8 in"],
            "required": {"leg": "1/4 in"},
            "quality": "aws-d1-1-2020",
            "units": "us",
        },
    },
    "butt": {
        "summary": "Butt welded through from one side, with an underfill over a short length, at level C of ISO 5817",
        "value": {
            "kind": "butt",
            "thickness": ["10 mm", "12 mm"],
            "required": {"penetration": "full"},
            "face_width": "16 mm",
            "reinforcement": "2 mm",
            "underfill": "0.8 mm",
            "root_width": "4 mm",
            "excess_penetration": "1.5 mm",
            "misalignment": "1 mm",
            "undercut": "0.2 mm",
            "extent": {"of_weld": "600 mm", "underfill": "20 mm"},
            "quality": "iso-5817-c",
            "reading_tolerance": "0.1 mm",
        },
    },
    "flush": {
        "summary": "Butt ground flush under cyclic load, AWS D1.1:2020, in inches",
        "value": {
            "kind": "butt",
            "thickness": ["1/2 in", "1/2 in"],
            "required": {"penetration": "full"},
            "sides": 2,
            "reinforcement": "1/64 in",
            "misalignment": "1/32 in",
            "undercut": "0 in",
            "flush": {"thinning": "1/64 in"},
            "loading": "cyclic-transverse",
            "quality": "aws-d1-1-2020",
            "units": "us",
        },
    },
}
