"""Examples of requests for ``break_test``, published in the document and run by the tests."""

from typing import Any

EXAMPLES: dict[str, Any] = {
    "fillet": {
        "summary": "Fillet break specimen, and what its faces showed, AWS D1.1:2010",
        "value": {
            "coupon": "tee",
            "seam": {"kind": "fillet", "legs": ["5/16 in", "5/16 in"], "thickness": ["1/2 in", "1/2 in"]},
            "weld": {"yield_strength": "58 ksi", "tensile_strength": "70 ksi"},
            "plates": {"material": "A36"},
            "length": "6 in",
            "lever": "4 in",
            "rules": "aws-d1-1-2010",
            "outcome": {
                "ended": "broken",
                "fused_to_root": True,
                "largest_void": "1/16 in",
                "sum_of_voids": "3/16 in",
            },
            "units": "us",
        },
    },
    "ground-corner": {
        "summary": "Closed corner ground flush, on the penetration somebody assumed",
        "value": {
            "coupon": "outside-corner",
            "seam": {"kind": "closed-corner", "thickness": ["6 mm", "6 mm"]},
            "penetration": {"depth": "1 mm", "vouched": "assumed"},
            "face_height": "3 mm",
            "finish": {"to": "flush"},
            "weld": {"yield_strength": "420 MPa", "tensile_strength": "500 MPa"},
            "plates": {"yield_strength": "355 MPa"},
            "length": "100 mm",
            "lever": "300 mm",
        },
    },
}
