"""A stand-in for the service: keeps what it is sent and answers what it was told to.

Its answers have the shape of the service's; their numbers (111, 222, ...) are no welds and only show where each went.
"""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any


def _q(value: float, unit: str = "mm") -> dict[str, Any]:
    return {"value": value, "unit": unit, "text": f"about {value:g} {unit}"}


def _span(value: float, unit: str) -> dict[str, Any]:
    return {"least": _q(value, unit), "most": _q(value + 1, unit)}


_COST = {
    "currency": "XTS",
    "labour": {"least": 721, "most": 722},
    "consumable": None,
    "gas": None,
    "power": None,
    "total": None,
    "counts": ["labour", "gas"],
    "missing": ["gas"],
}

_COMMON: dict[str, Any] = {
    "verdict": "invented-verdict",
    "reasons": ["an invented reason"],
    "cautions": [
        {"code": "invented", "text": "An invented caution.", "source": "nowhere"},
        {"code": "bare", "text": "No source."},
    ],
    "provenance": {
        "rule_set": "invented-rules",
        "clauses": ["clause 0"],
        "editions": ["edition 0"],
        "parameters": {"gamma": 111.5},
        "engine_version": "0.0.1",
        "api_version": "1.0",
        "fingerprint": "feed",
    },
}

_BUDGET_LINES = (
    "theoretical",
    "prepared_depth",
    "deduction",
    "penetration",
    "face",
    "cap",
    "as_welded",
    "removed",
    "remaining",
    "remaining_worst_case",
    "remaining_root_sum_square",
    "required",
    "margin",
)
BUDGET = {line: _q(100 + index) for index, line in enumerate(_BUDGET_LINES)}

REMEDIES = [
    {"do": "bevel", "depth": _q(301), "remaining": _q(302), "counts": ["invented"]},
    {"do": "leave-face", "face_height": _q(303), "remaining": _q(304), "counts": []},
    {"do": "smaller-radius", "radius": _q(305), "remaining": _q(306), "counts": []},
    {"do": "weld-second-side", "throat": _q(307), "remaining": _q(308), "counts": []},
]

PREPARED: dict[str, Any] = {
    "id": "invented",
    "ref": "0.0",
    "standard": "an invented standard",
    "form": "invented",
    "root": "invented",
    "angle": _q(707, "deg"),
    "gap": _q(708),
    "land": _q(709),
    "depth": _q(710),
    "setback": _q(711),
    "deduction": _q(712),
    "throat": _q(713),
    "area": _q(714, "mm2"),
    "filler": {"mass_per_length": _q(715, "kg/m")},
    "enough": True,
    "why": None,
}


def _band(start: float, unit: str = "mm") -> dict[str, Any]:
    """Band of one method."""
    return {
        "low": _q(start, unit),
        "high": _q(start + 0.1, unit),
        "methods": [{"method": "invented", "value": _q(start, unit), "source": "nowhere", "sureness": "invented"}],
        "left_out": [{"method": "other", "reason": "invented"}],
    }


_NO_BAND = {"low": None, "high": None, "methods": [], "left_out": [{"method": "any", "reason": "invented"}]}


def _stages(start: float, unit: str) -> dict[str, Any]:
    """Four stages of opening."""
    names = ("first_yield", "hinge", "breaking", "breaking_at_most")
    return {name: _q(start + index, unit) for index, name in enumerate(names)}


def _opened(start: float) -> dict[str, Any]:
    """One account of a throat."""
    return {
        "throat": {"least": _q(start), "nominal": _q(start + 1), "most": _q(start + 2)},
        "moment": _stages(start + 3, "kN*m"),
        "force": _stages(start + 7, "N"),
        "governs": "weld",
    }


ANSWERS: dict[str, dict[str, Any]] = {
    "/v1": {
        "service": "truethroat",
        "service_version": "0.0.1",
        "api_version": "1.0",
        "engine_version": "0.0.1",
        "rule_sets": [{"id": "invented-rules", "title": "Invented rules"}],
    },
    "/v1/rule-sets": {
        "rule_sets": [
            {
                "id": "invented-rules",
                "title": "Invented rules",
                "editions": ["edition 0"],
                "clauses": ["clause 0"],
                "parameters": {"gamma": 111.5},
                "limits": [{"text": "up to nothing", "source": "nowhere"}],
            }
        ],
        "quality_sets": [
            {
                "id": "invented-level",
                "title": "Invented level",
                "editions": ["edition 1"],
                "clauses": ["clause 1"],
                "limits": [{"text": "down to nothing", "source": "nowhere"}],
            }
        ],
    },
    "/v1/materials": {"materials": [{"id": "invented-steel", "bands": [{"yield_strength": _q(111, "MPa")}]}]},
    "/v1/filler-metals": {"filler_metals": [{"id": "invented-wire", "processes": ["GMAW"]}]},
    "/v1/preparations": {"preparations": [{"id": "x-1", "ref": "1"}]},
    "/v1/processes": {"processes": [{"id": "GMAW", "title": "an invented title"}]},
    "/v1/fillet-size": {
        **_COMMON,
        "required": {"leg": _q(111), "throat": _q(112), "source": "nowhere"},
        "minimum": {"leg": _q(113), "throat": _q(114), "source": "nowhere"},
        "maximum": None,
        "specify": {"leg": _q(115), "throat": _q(116), "source": "nowhere", "passes": 3},
        "governs": "invented",
        "utilisation": 0.125,
        "strength": {"weld": _q(117, "N/mm"), "base_metal": [_q(118, "N/mm"), _q(119, "N/mm")]},
        "length": {"given": _q(222), "effective": _q(221), "factor": 1},
        "packing": {"thickness": _q(223), "added": _q(224), "welds": "invented"},
        "mark": "H-07",
        "working": [
            {
                "symbol": "a",
                "meaning": "an invented step",
                "expression": "z * c",
                "with": {"z": {"value": 111, "unit": "mm"}, "c": {"value": True, "unit": ""}},
                "value": 112,
                "unit": "mm",
                "source": "nowhere",
            }
        ],
    },
    "/v1/heat": {
        **_COMMON,
        "energy": {"arc_energy": _q(701, "kJ/mm"), "heat_input": None, "efficiency": None},
        "cooling": {
            "time": {"least": _q(702, "s"), "most": _q(703, "s")},
            "flow": "between",
            "transition_thickness": {"least": _q(704), "most": _q(705)},
        },
        "limits": {
            "heat_input": {"least": _q(706, "kJ/mm"), "most": _q(707, "kJ/mm")},
            "arc_energy": None,
            "travel_speed": {"least": _q(708, "mm/min"), "most": _q(709, "mm/min")},
        },
        "carbon_equivalents": {"ce": 0.5, "cet": None, "pcm": 0.25},
        "preheat": {
            "method_a": {
                "hydrogen_scale": "B",
                "without_preheat_to": _q(710),
                "free_of_preheat": None,
                "source": "nowhere",
            },
            "method_b": None,
            "sew_088": {"temperature": _q(711, "degC"), "met": False, "source": "nowhere"},
            "aws_d1_1": {
                "temperature": _q(712, "degC"),
                "met": True,
                "source": "nowhere",
                "category": "B",
                "printed": {"fahrenheit": _q(713, "degF"), "celsius": _q(714, "degC")},
                "thickest_part": _q(715),
            },
        },
        "hardness": {
            "dueren": {"least": 721, "most": 722, "martensite": 723, "bainite": 724},
            "yurioka": {"least": 725, "most": 726, "martensite": 727, "bainite": 728},
            "band": {"least": 729, "most": 730},
            "limit": 731,
            "standing": "open",
            "source": None,
        },
        "fillet": {
            "usual_leg": _q(732),
            "bead": {"area": _q(733, "mm2"), "leg": _q(734)},
            "usual_arc_energy": _q(735, "kJ/mm"),
            "oversize": {
                "required_arc_energy": _q(736, "kJ/mm"),
                "heat_ratio": 737,
                "cooling_time_required": None,
                "cooling_time_laid": {"least": _q(738, "s"), "most": _q(739, "s")},
            },
        },
        "left_out": [{"field": "energy/heat_input", "reason": "invented"}],
    },
    "/v1/crack-risk": {
        **_COMMON,
        "shape": {
            "width": _q(751),
            "depth": _q(752),
            "width_to_depth": 753,
            "least_width_to_depth": 754,
            "target_width_to_depth": 755,
            "pass_ratio": None,
        },
        "index": {
            "ucs": 756,
            "carbon_counted": 0.125,
            "critical": 757,
            "high_resistance_below": 758,
            "low_resistance_above": 759,
            "sulphur_and_phosphorus": 0.5,
            "most_sulphur_and_phosphorus": 0.25,
        },
        "least_sizes": [{"rule": "invented", "leg": _q(760), "throat": _q(761), "enough": None, "source": "nowhere"}],
        "factors": [
            {"name": "invented", "grade": "invented", "reason": "why", "change": None, "source": "nowhere"},
            {"name": "bare", "grade": "invented", "reason": "why", "change": "what", "source": "nowhere"},
        ],
        "left_out": [],
    },
    "/v1/as-welded": {
        **_COMMON,
        "throat": {
            "theoretical": _q(601),
            "physical": _q(615),
            "creditable": _q(616),
            "effective": _q(602),
            "worst_case": _q(603),
            "required": _q(604),
        },
        "size": _q(605),
        "quality_kept": False,
        "limits": [
            {
                "name": "invented",
                "value": _q(606),
                "allowed": None,
                "extent": None,
                "extent_allowed": None,
                "verdict": "not-permitted",
                "note": "",
                "source": "nowhere",
            },
            {
                "name": "invented too",
                "value": _q(607),
                "allowed": _q(608),
                "extent": _q(617),
                "extent_allowed": _q(618),
                "verdict": "within",
                "note": "",
                "source": "nowhere",
            },
        ],
        "strength_left": 609,
        "overweld": {"metal_ratio": 610, "extra_area": _q(611, "mm2"), "extra_mass": _q(612, "kg/m")},
        "actions": [{"do": "add-pass", "leg": _q(613)}, {"do": "dress-face"}],
    },
    "/v1/filler-quantity": {
        **_COMMON,
        "welds": [
            {
                "mark": "ribs",
                "kind": "invented",
                "filler": None,
                "process": "invented-process",
                "area": _q(701, "mm2"),
                "parts": [{"part": "invented", "area": _q(702, "mm2")}],
                "length": _q(703),
                "mass_per_length": _q(704, "kg/m"),
                "deposited": _q(705, "kg"),
                "consumable": _span(706, "kg"),
                "arc_time": _span(708, "h"),
                "working_time": None,
                "gas": _span(710, "m3"),
                "energy": None,
                "cost": _COST,
                "passes": {
                    "least": 1,
                    "most": 3,
                    "counts": [{"by": "invented", "least": 1, "most": 3, "source": "nowhere"}],
                },
                "rests_on": {
                    "density": {"value": _q(712, "kg/m3"), "source": "nowhere"},
                    "efficiency": {"least": 713, "most": 714, "source": "nowhere"},
                    "deposition_rate": {**_span(715, "kg/h"), "source": "given"},
                    "operator_factor": None,
                    "gas_flow": None,
                    "bead_area": None,
                    "source_efficiency": None,
                },
            }
        ],
        "totals": {"count": 5, "length": _q(717), "deposited": _q(718, "kg"), "consumable": None, "cost": _COST},
        "groups": [
            {"filler": None, "process": None, "count": 5, "length": _q(719), "deposited": _q(720, "kg"), "cost": None}
        ],
    },
    "/v1/distortion": {
        **_COMMON,
        "transverse": _band(701),
        "longitudinal": _band(702),
        "angular": _band(703, "deg"),
        "edge_lift": _NO_BAND,
        "bowing": _NO_BAND,
        "restrained_angular": None,
        "weld": {"area": _q(704, "mm2"), "welds": 2, "welded_share": 0.5},
        "iso_13920": [
            {
                "quantity": "angular",
                "nominal": _q(705),
                "value": _q(706, "deg"),
                "classes": [{"class": "A", "tolerance": _q(707, "deg"), "rise": 708, "printed_rise": 709}],
                "keeps": None,
                "asked": "A",
                "verdict": "out",
                "table": "Table 0",
            }
        ],
        "alternatives": [
            {
                "do": "over",
                "steps": 1,
                "leg": _q(710),
                "metal_ratio": 711,
                "strength_ratio": 712,
                "transverse": {"low": _q(713), "high": _q(714), "ratio": {"low": 715, "high": 716}},
                "longitudinal": {"low": _q(717), "high": _q(718), "ratio": None},
                "angular": None,
                "edge_lift": None,
                "bowing": None,
            }
        ],
    },
    "/v1/joint-plan": {
        **_COMMON,
        "recommended": "invented-way",
        "compared_by": ["filler"],
        "quality": None,
        "ways": [
            {
                "way": "invented-way",
                "size": "invented",
                "rank": 1,
                "score": 1,
                "dominated_by": [],
                "costs": {"filler": _q(901, "kg"), "time": None, "heat": None, "distortion": None},
                "budget": None,
                "chance_short": 0.25,
                "hold": {
                    "least_leg": _q(902),
                    "least_throat": _q(903),
                    "most_convexity": None,
                    "most_reinforcement": None,
                    "leave_face_height": None,
                },
                "verdicts": {"heat": "invented-verdict"},
                "left_out": [{"field": "heat", "reason": "invented"}],
                "parts": None,
            }
        ],
        "refused": [{"way": "other-way", "why": ["invented"]}],
    },
    "/v1/break-test": {
        **_COMMON,
        **_opened(801),
        "creditable": {"verdict": "invented-verdict", **_opened(821)},
        "strength": {"verdict": "another-invented-verdict", **_opened(841)},
        "plate": {
            "moment": _q(861, "kN*m"),
            "force": _q(862, "N"),
            "balance": {"throat": _q(863), "leg": None},
        },
        "length": _q(864),
        "fold": "invented",
        "checks": [{"name": "invented", "value": _q(865), "least": _q(866), "verdict": "out", "source": "nowhere"}],
        "standard_coupon": None,
        "acceptance": {
            "verdict": "invented-verdict",
            "limits": [{"name": "invented", "value": _q(867), "most": _q(868), "verdict": "out", "source": "nowhere"}],
            "source": "nowhere",
        },
    },
    "/v1/weld-group": {
        **_COMMON,
        "properties": {
            "length": _q(501),
            "centroid": {"x": _q(502), "y": _q(503)},
            "i_x": _q(504, "mm3"),
            "i_y": _q(505, "mm3"),
            "i_xy": _q(506, "mm3"),
            "j": _q(507, "mm3"),
        },
        "load_per_group": {
            "force": {"x": _q(508, "kN"), "y": _q(509, "kN"), "z": _q(510, "kN")},
            "moment": {"x": _q(511, "kN*m"), "y": _q(512, "kN*m"), "z": _q(513, "kN*m")},
        },
        "method": "invented",
        "critical": None,
        "points": [
            {
                "x": _q(514),
                "y": _q(515),
                "force": {"x": _q(516, "N/mm"), "y": _q(517, "N/mm"), "z": _q(518, "N/mm")},
                "resultant": _q(519, "N/mm"),
            }
        ],
        "centre": {"x": _q(520), "y": _q(521)},
        "required": {"leg": _q(522), "throat": _q(523), "source": "nowhere"},
        "minimum": {"leg": _q(524), "throat": _q(525), "source": "nowhere"},
        "specify": {"leg": _q(526), "throat": _q(527), "source": "nowhere"},
        "utilisation": 528,
        "strength": {"factor": 529, "force": _q(530, "kN"), "moment": _q(531, "kN*m")},
        "equivalent_force": _q(532, "N/mm"),
        "efficiency": 533,
    },
    "/v1/groove-size": {
        **_COMMON,
        "required": {"throat": _q(701), "depth": None, "source": "nowhere"},
        "minimum": None,
        "specify": {"throat": _q(702), "depth": _q(703), "source": "nowhere"},
        "governs": "invented",
        "utilisation": 704,
        "strength": {"weld": None, "base_metal": [_q(705, "N/mm"), _q(706, "N/mm")]},
        "preparation": PREPARED,
        "preparations": [PREPARED, {**PREPARED, "id": None, "standard": None, "enough": False, "why": "invented"}],
        "refused": [{"id": "invented", "ref": "0.1", "why": "an invented reason"}],
        "holes": {
            "width": _q(716),
            "length": _q(717),
            "filling": _q(718),
            "leg": _q(732),
            "throat": None,
            "centre_line": _q(733),
            "area": _q(719, "mm2"),
            "strength": _q(720, "kN"),
            "needed": 721,
            "count": 722,
            "limits": {
                "least_width": _q(723),
                "largest_width": None,
                "longest": _q(724),
                "least_filling": _q(725),
                "least_leg": None,
                "largest_leg": _q(734),
                "least_pitch": _q(726),
                "least_pitch_along": _q(727),
            },
        },
        "tee": {
            "throats_together": _q(728),
            "thickness": _q(729),
            "unwelded": _q(730),
            "largest_unwelded": _q(731),
            "full_strength": True,
        },
    },
    "/v1/grind-allowance": {
        **_COMMON,
        "budget": BUDGET,
        "allowance": _q(201),
        "leave": _q(202),
        "largest_radius": None,
        "judged_on": "nominal",
        "remedies": REMEDIES,
        "creditable": {
            **BUDGET,
            "verdict": "another-invented-verdict",
            "allowance": _q(203),
            "leave": None,
            "largest_radius": _q(204),
            "remedies": [],
        },
    },
    "/v1/bevel-depth": {
        **_COMMON,
        "depth": _q(401),
        "setback": _q(402),
        "land": _q(403),
        "deduction": _q(-404),
        "budget": BUDGET,
        "area": _q(405, "mm2"),
        "filler": {"mass_per_length": _q(406, "kg/m")},
        "callout": {"iso_2553": "invented", "aws_a2_4": "invented too"},
        "alternatives": [
            {"do": "invented", "size": _q(407), "area": None, "filler": None},
            {"do": "other", "size": _q(408), "area": _q(409, "mm2"), "filler": {"mass_per_length": _q(410, "kg/m")}},
        ],
    },
    "/livez": {"status": "ok"},
    "/readyz": {"status": "ok"},
}


@dataclass(frozen=True)
class Received:
    """One request as it arrived."""

    method: str
    path: str
    headers: dict[str, str]
    body: bytes

    @property
    def document(self) -> Any:
        """The body, read as JSON."""
        return json.loads(self.body)


class RecordingService:
    """A WSGI application: answers given with `will_answer` come first, in turn, then those of ANSWERS."""

    def __init__(self) -> None:
        self.received: list[Received] = []
        self._next: list[tuple[int, dict[str, str], bytes]] = []

    def will_answer(self, status: int, body: object = b"", **headers: str) -> None:
        """Put one answer into the queue; a body that is no bytes goes out as JSON, `Retry_After` as `Retry-After`."""
        content = body if isinstance(body, bytes) else json.dumps(body).encode()
        self._next.append((status, {name.replace("_", "-"): value for name, value in headers.items()}, content))

    def __call__(self, environ: dict[str, Any], start_response: Any) -> Iterable[bytes]:
        """Keep the request and answer it."""
        headers = {key[5:].replace("_", "-").lower(): value for key, value in environ.items() if key[:5] == "HTTP_"}
        headers["content-type"] = environ.get("CONTENT_TYPE", "")
        path = environ["PATH_INFO"]
        self.received.append(Received(environ["REQUEST_METHOD"], path, headers, environ["wsgi.input"].read()))
        if self._next:
            status, answer_headers, content = self._next.pop(0)
        elif path in ANSWERS:
            status, answer_headers, content = 200, {}, json.dumps(ANSWERS[path]).encode()
        else:
            status, answer_headers, content = 404, {}, b"<h1>nothing here</h1>"
        start_response(f"{status} Status", list(answer_headers.items()))
        return [content]
