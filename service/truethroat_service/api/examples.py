"""Examples of requests, published in the document and run by the tests."""

from typing import Any

FILLET_SIZE: dict[str, Any] = {
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

GROOVE_SIZE: dict[str, Any] = {
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

GRIND_ALLOWANCE: dict[str, Any] = {
    "closed-corner": {
        "summary": "Closed square-edged corner to be ground flush",
        "value": {
            "seam": {"kind": "closed-corner", "thickness": ["1/4 in", "1/4 in"]},
            "penetration": {"depth": "1/16 in", "vouched": "assumed"},
            "face_height": "1/8 in",
            "required_throat": "3/16 in",
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

BEVEL_DEPTH: dict[str, Any] = {
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

WELD_GROUP: dict[str, Any] = {
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

AS_WELDED: dict[str, Any] = {
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


FILLER_QUANTITY: dict[str, Any] = {
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


HEAT: dict[str, Any] = {
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

CRACK_RISK: dict[str, Any] = {
    "fillet": {
        "summary": "Deep submerged-arc fillet: shape of the bead, weld metal and least size",
        "value": {
            "joint": "fillet",
            "bead": {"throat": "5 mm", "penetration": "4 mm"},
            "weld_metal": {"C": 0.12, "S": 0.01, "P": 0.015, "Nb": 0.01, "Si": 0.3, "Mn": 1.2},
            "process": "SAW",
            "thickness": ["20 mm", "12 mm"],
            "leg": "7 mm",
            "low_hydrogen": True,
            "crater": "filled",
        },
    },
    "corner": {
        "summary": "Hollow root bead of a restrained corner, measured on a macro, in inches",
        "value": {
            "joint": "corner",
            "bead": {"width": "1/4 in", "depth": "3/16 in", "face_width": "1/4 in"},
            "hollow": "1/32 in",
            "restrained": True,
            "crater": "unfilled",
            "units": "us",
        },
    },
}

DISTORTION: dict[str, Any] = {
    "flange": {
        "summary": "Two fillets on a flange, held against ISO 13920 class B and F",
        "value": {
            "joint": {"kind": "tee", "thickness": "12 mm", "width": "200 mm", "leg": "6 mm", "sides": 2},
            "length": "3 m",
            "member": {"area": "6000 mm2", "second_moment": "4500 cm4", "eccentricity": "90 mm"},
            "heat_input": "1.1 kJ/mm",
            "iso_13920": {
                "linear_class": "B",
                "form_class": "F",
                "across": "200 mm",
                "along": "3 m",
                "shorter_leg": "100 mm",
            },
            "working": True,
        },
    },
    "butt": {
        "summary": "V in a butt seam, in inches, against the same groove from both sides",
        "value": {
            "joint": {
                "kind": "butt",
                "thickness": "1/2 in",
                "weld": {"groove": "single-v", "root_opening": "1/8 in", "land": "1/16 in"},
                "runs": 3,
                "current": "220 A",
            },
            "length": "8 ft",
            "units": "us",
        },
    },
}

BREAK_TEST: dict[str, Any] = {
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

JOINT_PLAN: dict[str, Any] = {
    "stiffener": {
        "summary": "Stiffener under a load across it, EN 1993-1-8: fillets, grooves, and what each takes",
        "value": {
            "rule_set": "en-1993-1-8-2005-directional",
            "joint": {"kind": "tee"},
            "parts": [{"thickness": "12 mm", "material": "S355"}, {"thickness": "10 mm", "material": "S355"}],
            "length": "300 mm",
            "basis": "load",
            "load": {"force": "240 kN", "angle": "90 deg"},
            "process": "135",
            "position": "PB",
            "tolerances": {"legs": "0.5 mm", "depth": "0.5 mm"},
            "arc": {"voltage": "28 V", "current": "250 A", "travel_speed": "350 mm/min"},
            "weights": {"distortion": 2},
        },
    },
    "outside-corner": {
        "summary": "Outside corner of a hopper to be ground flush, AISC 360-22, in inches",
        "value": {
            "rule_set": "aisc-360-22-lrfd",
            "joint": {"kind": "outside-corner"},
            "parts": [{"thickness": "3/8 in", "material": "A36"}, {"thickness": "3/8 in", "material": "A36"}],
            "length": "4 ft",
            "basis": "throat",
            "required_throat": "3/16 in",
            "process": "GMAW",
            "position": "1G",
            "finish": {"to": "flush", "tolerance": "1/64 in"},
            "tolerances": {"depth": "1/64 in", "thickness": "1/64 in"},
            "filler": "E70",
            "units": "us",
        },
    },
}
