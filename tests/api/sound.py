"""Sound requests, and how to change one field of one. The joints are invented."""

from __future__ import annotations

from copy import deepcopy
from typing import Any

Json = dict[str, Any]

LEFT_OUT = object()
"""In place of a value: take the field out."""

FILLET, GRIND, BEVEL = "/v1/fillet-size", "/v1/grind-allowance", "/v1/bevel-depth"
GROUP = "/v1/weld-group"

EN: Json = {
    "rule_set": "en-1993-1-8-2005-directional",
    "basis": "load",
    "joint": {"kind": "tee", "sides": 2},
    "parts": [{"thickness": "12 mm", "material": "S355"}, {"thickness": "10 mm", "material": "S355"}],
    "load": {"force": "240 kN", "length": "200 mm", "angle": "90 deg"},
}
AISC: Json = {
    "rule_set": "aisc-360-22-lrfd",
    "basis": "load",
    "joint": {"kind": "lap", "sides": 2},
    "parts": [{"thickness": "1/2 in", "material": "A36"}, {"thickness": "3/8 in", "material": "A36"}],
    "filler": "E70",
    "load": {"force": "60 kip", "length": "8 in", "angle": "0 deg"},
}
ANGLE_ON_GUSSET: Json = {
    "rule_set": "aisc-360-22-lrfd",
    "basis": "load",
    "joint": {"kind": "lap", "sides": 2},
    "parts": [{"thickness": "1/2 in", "material": "A36"}, {"thickness": "3/8 in", "material": "A36"}],
    "filler": "E70",
    "load": {"force": "40 kip", "length": "10 in", "width": "4 in", "centroid": "1.2 in"},
}
CONCENTRIC: Json = {
    **ANGLE_ON_GUSSET,
    "joint": {"kind": "lap"},
    "load": {"force": "40 kip", "longitudinal_length": "8 in", "transverse_length": "4 in"},
}
STITCHED: Json = {
    "rule_set": "en-1993-1-8-2005-simplified",
    "basis": "load",
    "joint": {"kind": "tee", "sides": 2},
    "parts": [{"thickness": "12 mm", "material": "S355"}, {"thickness": "10 mm", "material": "S355"}],
    "load": {"force": "60 kN", "length": "1000 mm", "angle": "0 deg"},
    "intermittent": {"segment": "60 mm", "gap": "100 mm", "loading": "tension", "widths": ["200 mm", "150 mm"]},
}
ON_FLANGE: Json = {
    "rule_set": "en-1993-1-8-2005-directional",
    "basis": "full-strength",
    "joint": {"kind": "tee", "sides": 2},
    "parts": [{"thickness": "15 mm", "material": "S275"}, {"thickness": "12 mm", "material": "S275"}],
    "unstiffened_flange": {"web_thickness": "9 mm", "root_radius": "18 mm", "plate_width": "180 mm"},
}
THIN: Json = {
    "rule_set": "thin-part",
    "basis": "thin-part",
    "joint": {"kind": "tee", "sides": 2},
    "parts": [{"thickness": "12 mm"}, {"thickness": "8 mm"}],
}
CLOSED: Json = {
    "seam": {"kind": "closed-corner", "thickness": ["8 mm", "8 mm"]},
    "penetration": {"depth": "2 mm", "vouched": "assumed"},
    "face_height": "3 mm",
    "required_throat": "5 mm",
}
HALF_OPEN: Json = {
    "seam": {"kind": "half-open-corner", "thickness": ["8 mm", "6 mm"], "overlap": "3 mm"},
    "required_throat": "4 mm",
}
OPEN: Json = {
    "seam": {"kind": "open-corner", "thickness": ["8 mm", "6 mm"]},
    "face_height": "4 mm",
    "required_throat": "5 mm",
}
FILLET_SEAM: Json = {"seam": {"kind": "fillet", "legs": ["8 mm", "6 mm"]}, "required_throat": "4 mm"}
BUTT: Json = {
    "seam": {"kind": "butt", "thickness": ["10 mm", "12 mm"]},
    "preparation": {"depth": "6 mm", "groove": "single-v"},
    "required_throat": "5 mm",
}
TO_BEVEL: Json = {
    "seam": {"kind": "closed-corner", "thickness": ["12 mm", "12 mm"]},
    "required_throat": "6 mm",
}

BRACKET: Json = {
    "rule_set": "aisc-360-22-lrfd",
    "group": {"pattern": "c", "depth": "300 mm", "width": "100 mm"},
    "load": {"force": {"y": "-90 kN"}, "at": {"x": "250 mm"}},
    "parts": [{"thickness": "12 mm", "material": "A36"}, {"thickness": "10 mm", "material": "A36"}],
    "filler": "E70",
}

GROOVE = "/v1/groove-size"

TO_GROOVE: Json = {
    "rule_set": "aisc-360-22-lrfd",
    "basis": "load",
    "joint": {"kind": "tee"},
    "parts": [{"thickness": "20 mm", "material": "A36"}, {"thickness": "16 mm", "material": "A36"}],
    "weld": {"kind": "partial"},
    "filler": "E70",
    "process": "GMAW",
    "position": "2F",
    "load": {"force": "200 kN", "length": "200 mm", "angle": "90 deg"},
}
EN_GROOVE: Json = {
    "rule_set": "en-1993-1-8-2005-directional",
    "basis": "load",
    "joint": {"kind": "butt"},
    "parts": [{"thickness": "16 mm", "material": "S355"}, {"thickness": "12 mm", "material": "S355"}],
    "weld": {"kind": "full"},
    "filler": "G 42",
    "process": "135",
    "load": {"force": "200 kN", "length": "200 mm", "angle": "90 deg"},
}
PLUGS: Json = {
    "rule_set": "aisc-360-22-asd",
    "basis": "load",
    "joint": {"kind": "lap"},
    "parts": [{"thickness": "16 mm", "material": "A36"}, {"thickness": "12 mm", "material": "A36"}],
    "weld": {"kind": "plug", "diameter": "25 mm"},
    "filler": "E70",
    "load": {"force": "90 kN"},
}

GAUGED = "/v1/as-welded"

SIX: Json = {
    "legs": ["6 mm", "6 mm"],
    "thickness": ["12 mm", "10 mm"],
    "required": {"leg": "6 mm"},
    "quality": "iso-5817-c",
}

# A butt through 10 mm, read on both sides.
THROUGH: Json = {
    "kind": "butt",
    "thickness": ["12 mm", "10 mm"],
    "required": {"penetration": "full"},
    "face_width": "16 mm",
    "reinforcement": "2 mm",
    "quality": "iso-5817-c",
}


ESTIMATE = "/v1/filler-quantity"


RIBS: Json = {
    "shape": {"kind": "fillet", "legs": ["6 mm", "6 mm"]},
    "length": "400 mm",
    "filler": "ER70S-6",
    "process": "GMAW",
    "position": "2F",
}


JOB: Json = {"welds": [RIBS]}


PRICED: Json = {
    "welds": [RIBS],
    "prices": {
        "currency": "EUR",
        "labour": {"amount": 50, "per": "h"},
        "consumables": [{"amount": 2.5, "per": "kg", "filler": "ER70S-6"}, {"amount": 3, "per": "lb"}],
        "gases": [{"amount": 5, "per": "m3", "process": "135"}],
        "power": {"amount": 0.2, "per": "kWh"},
    },
}


V_SHAPE: Json = {
    "kind": "single-v",
    "thickness": "12 mm",
    "angle": "60 deg",
    "root_gap": "3 mm",
    "land": "2 mm",
    "reinforcement": {"face": {"height": "2 mm", "overlap": "2 mm"}, "root": {"height": "1 mm", "width": "6 mm"}},
    "back_gouge": {"depth": "4 mm", "width": "8 mm"},
}


HEAT, CRACK = "/v1/heat", "/v1/crack-risk"

HEATED: Json = {
    "arc": {"voltage": "28 V", "current": "250 A", "travel_speed": "350 mm/min"},
    "process": "135",
    "thickness": "15 mm",
    "seam": "tee-fillet",
    "cooling_window": {"least": "2 s", "most": "20 s"},
    "composition": {"C": 0.16, "Si": 0.3, "Mn": 1.4, "Cr": 0.1, "Mo": 0.02, "Ni": 0.05, "Cu": 0.1, "V": 0.01},
}
GRADED: Json = {
    "joint": "fillet",
    "bead": {"throat": "5 mm", "penetration": "1 mm"},
    "weld_metal": {"C": 0.1, "S": 0.015, "P": 0.02, "Nb": 0.01, "Si": 0.3, "Mn": 1.1},
    "thickness": ["10 mm", "20 mm"],
}


DISTORTION = "/v1/distortion"

FLANGE: Json = {
    "joint": {"kind": "tee", "thickness": "12 mm", "width": "200 mm", "leg": "6 mm", "sides": 2},
    "length": "3 m",
    "member": {"area": "6000 mm2", "second_moment": "4500 cm4", "eccentricity": "90 mm"},
    "heat_input": "1.1 kJ/mm",
}
GROOVED: Json = {
    "joint": {
        "kind": "butt",
        "thickness": "12 mm",
        "weld": {"groove": "single-v", "root_opening": "3 mm"},
        "runs": 3,
    },
    "length": "2 m",
}
LAPPED: Json = {"joint": {"kind": "lap", "thickness": "10 mm", "leg": "6 mm"}}

BREAK = "/v1/break-test"

COUPON: Json = {
    "coupon": "tee",
    "seam": {"kind": "fillet", "legs": ["8 mm", "8 mm"], "thickness": ["12 mm", "12 mm"]},
    "weld": {"yield_strength": "420 MPa", "tensile_strength": "500 MPa"},
    "plates": {"yield_strength": "355 MPa"},
    "length": "150 mm",
    "lever": "300 mm",
}
CORNER_COUPON: Json = {
    **COUPON,
    "coupon": "outside-corner",
    "seam": {"kind": "closed-corner", "thickness": ["6 mm", "6 mm"]},
    "penetration": {"depth": "1 mm", "vouched": "measured"},
}

PLAN = "/v1/joint-plan"

STIFFENER: Json = {
    "rule_set": "en-1993-1-8-2005-directional",
    "joint": {"kind": "tee"},
    "parts": [{"thickness": "12 mm", "material": "S355"}, {"thickness": "10 mm", "material": "S355"}],
    "length": "300 mm",
    "basis": "load",
    "load": {"force": "240 kN", "angle": "90 deg"},
    "process": "135",
    "position": "PB",
}
OUTSIDE: Json = {
    "rule_set": "aisc-360-22-lrfd",
    "joint": {"kind": "outside-corner"},
    "parts": [{"thickness": "10 mm"}, {"thickness": "10 mm"}],
    "length": "1 m",
    "basis": "throat",
    "required_throat": "5 mm",
    "process": "GMAW",
    "position": "1G",
    "finish": {"to": "flush", "tolerance": "0.5 mm"},
    "tolerances": {"depth": "0.5 mm"},
}


def changed(request: Json, **changes: Any) -> Json:
    """Give a copy of a request with fields set or left out; ``__`` steps into an object or a list."""
    made = deepcopy(request)
    for path, value in changes.items():
        *steps, last = path.split("__")
        inner: Any = made
        for step in steps:
            inner = inner[int(step)] if isinstance(inner, list) else inner.setdefault(step, {})
        place: Any = int(last) if isinstance(inner, list) else last
        if value is LEFT_OUT:
            del inner[place]
        else:
            inner[place] = value
    return made
