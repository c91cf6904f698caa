"""Makes most generated requests ones that a shop could send, without leaving what the document allows.

A generator knows each field's form and nothing of how fields go together, so that hardly one of its requests can be
answered. Three in four are mended here, by what the request itself holds and nothing else: the run stays repeatable.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any
from zlib import crc32

Json = dict[str, Any]

FLAT = ("butt", "edge", "closed-corner")
FINISHES = {
    "butt": ("as-welded", "flush"),
    "edge": ("as-welded", "flush"),
    "closed-corner": ("as-welded", "flush", "radius"),
    "half-open-corner": ("as-welded", "flush", "flat", "radius"),
    "open-corner": ("as-welded", "flush", "flat", "radius"),
    "fillet": ("as-welded", "flat"),
}
BY_HAND = {"tensile_strength": {"value": 550, "unit": "MPa"}}
COMMON = {
    "aisc": ("S235", "S275", "S355", "A36", "A992"),
    "en-1993-1-8": ("S235", "S275", "S355"),
    "en-1993-1-4": ("1.4301", "1.4404", "1.4462"),
    "en-1993-1-12": ("S690Q", "S700MC", "S355"),
    "en-1999": ("6082-T6", "5083-O"),
    "thin-part": ("S235",),
}
"""Usual metals by the head of the rule set's id."""

FILLERS = {
    "en-1993-1-8": ("E 46", "E70", BY_HAND),
    "en-1993-1-4": ("E316L", BY_HAND),
    "en-1993-1-12": ("G 69", "E 50", BY_HAND),
    "en-1999": ("ER5356", "ER5183"),
    "thin-part": ("E70",),
}


HOLES = ("plug", "slot", "fillet-in-hole", "fillet-in-slot")


class Chance:
    """Choices that follow from a request, one after another."""

    def __init__(self, body: Any) -> None:
        """Start from a sum over the request."""
        self._state = crc32(json.dumps(body, sort_keys=True).encode())

    def of(self, *choices: Any) -> Any:
        """Choose one."""
        self._state = (1103515245 * self._state + 12345) % 2**31
        return choices[(self._state >> 8) % len(choices)]


def mended(path: str, body: Any) -> Any:
    """Give a request that most likely can be answered, or, one time in four, the request as it is."""
    if not isinstance(body, dict):
        return body
    chance = Chance(body)
    if chance.of(True, False, False, False):
        return body
    made: Json = json.loads(json.dumps(body))
    menders: dict[str, Callable[[Json, Chance], None]] = {
        "/v1/fillet-size": _fillet,
        "/v1/grind-allowance": _ground,
        "/v1/bevel-depth": _bevelled,
        "/v1/weld-group": _grouped,
        "/v1/as-welded": _gauged,
        "/v1/groove-size": _grooved,
        "/v1/heat": _heated,
        "/v1/crack-risk": _graded,
        "/v1/filler-quantity": _estimated,
        "/v1/distortion": _distorted,
        "/v1/break-test": _broken,
        "/v1/joint-plan": _planned,
    }
    # A new calculation does without one for as long as enough of its requests are answered.
    if path in menders:
        menders[path](made, chance)
    return made


def _millimetres(chance: Chance, low: int, high: int) -> Any:
    """Make a length between two, in either form."""
    value = chance.of(*range(4 * low, 4 * high + 1)) / 4
    return chance.of(f"{value:g} mm", {"value": value, "unit": "mm"}, f"{value / 25.4:.5f} in")


def _drop(body: Json, *fields: str) -> None:
    """Leave fields out."""
    for field in fields:
        body.pop(field, None)


def _fillet(body: Json, chance: Chance) -> None:
    """Mend a fillet: rules, basis, joint, parts and load that go together."""
    rules = str(body["rule_set"])
    thin, aisc = rules == "thin-part", rules.startswith("aisc")
    aluminium = rules.startswith("en-1999")
    joint = body["joint"]
    if joint["kind"] == "inside-corner":
        _drop(joint, "sides")
    _drop(joint, "root_gap", *chance.of((), ("angle",)))
    if "angle" in joint:
        joint["angle"] = chance.of("90 deg", "75 deg", "105 deg")
    if joint["kind"] != "lap":
        _drop(body, "edge_of", "end_loaded")
    for part in body["parts"]:
        _part(part, rules, chance)
    if thin:
        body["basis"] = "thin-part"
        _drop(body, "load", "filler", "parameters", "end_loaded")
    else:
        body["basis"] = chance.of("load", "full-strength")
        _load(body, chance)
    _options(body, chance.of("none", "ends", "transverse_stiffener", *_MENDED), chance)
    if aisc:
        body["filler"] = chance.of("E70", "E80", {"tensile_strength": "70 ksi"})
        _drop(body, "parameters")
    else:
        _drop(body, "hss_end")
        _eurocode(body, rules, chance)
    if aluminium:
        _drop(body, "penetration")
    if "size_step" in body:
        body["size_step"] = chance.of("1/16 in", "0.5 mm", {"value": 1, "unit": "mm"})
    if "leg_tolerance" in body:
        body["leg_tolerance"] = chance.of("0 mm", "1/32 in", {"value": 1, "unit": "mm"})


def _usual(by_head: dict[str, tuple[Any, ...]], rules: str) -> tuple[Any, ...]:
    """Choices for a rule set by the head of its id; those of the last line for an id that no service has."""
    return next((choices for head, choices in by_head.items() if rules.startswith(head)), by_head["thin-part"])


def _part(part: Json, rules: str, chance: Chance) -> None:
    """Mend a part: a usual thickness, and the strengths its rules go by."""
    part["thickness"] = _millimetres(chance, 4, 30)
    by_material = rules != "thin-part" and "yield_strength" not in part
    if "material" in part or by_material or rules.startswith("en-1999"):
        part["material"] = chance.of(*_usual(COMMON, rules))
        _drop(part, "wall")
        _drop(part, "yield_strength", "tensile_strength", "beta_w")
    elif "yield_strength" in part:
        strong = rules.startswith("en-1993-1-12")
        part["yield_strength"] = chance.of("690 MPa", "80 ksi") if strong else chance.of("355 MPa", "36 ksi")
        part["tensile_strength"] = chance.of("770 MPa", "95 ksi") if strong else chance.of("490 MPa", "58 ksi")
        if rules.startswith("en-1993-1-8"):
            part["beta_w"] = chance.of(0.8, 0.9, 1)
        else:
            _drop(part, "beta_w")


def _eurocode(body: Json, rules: str, chance: Chance) -> None:
    """Mend filler metal and parameters of a Eurocode."""
    if rules.startswith(("en-1993-1-12", "en-1999")) or "filler" in body:
        body["filler"] = chance.of(*_usual(FILLERS, rules))
    foreign = ("gamma_m2", "gamma_m0", "beta_w") if rules.startswith("en-1999") else ("gamma_mw",)
    _drop(body.get("parameters", {}), *foreign)


def _grouped(body: Json, chance: Chance) -> None:
    """Mend a group: sides and places of a usual extent, a load that the method covers, one size."""
    rules = str(body["rule_set"])
    aisc = rules.startswith("aisc")
    group = body["group"]
    for field in ("depth", "width", "diameter"):
        if field in group:
            group[field] = _millimetres(chance, 40, 300)
    for number, piece in enumerate(group.get("lines", ())):
        if "radius" in piece:
            piece.update(centre=["0 mm", f"{200 * number} mm"], radius=_millimetres(chance, 20, 80))
            piece.update(start_angle="0 deg", sweep=chance.of("90 deg", "180 deg", {"value": 2, "unit": "rad"}))
        else:
            piece.update(start=["0 mm", f"{50 * number} mm"], end=[_millimetres(chance, 60, 200), f"{60 * number} mm"])
    for part in body["parts"]:
        _part(part, rules, chance)
    if aisc:
        body["filler"] = chance.of("E70", "E80", {"tensile_strength": "70 ksi"})
        _drop(body, "parameters")
    else:
        _drop(body, "method")
        _eurocode(body, rules, chance)
    body["load"] = {
        "force": {"y": chance.of("-40 kN", "9 kip")},
        "at": {"x": chance.of("150 mm", "-4 in", "0 mm")},
        **chance.of({}, {"moment": {"z": chance.of("2 kN*m", "-30 kip*in")}}),
    }
    if "leg" in body:
        body["leg"] = chance.of("6 mm", "5/16 in")
        _drop(body, "throat")
    for field, usual in (("throat", "4 mm"), ("size_step", "1/16 in")):
        if field in body:
            body[field] = usual


def _grooved(body: Json, chance: Chance) -> None:
    """Mend a groove, plug or slot: rules that rate it, joint, parts, filler and load, and sizes that fit."""
    weld = body["weld"]
    kind = str(weld["kind"])
    holes = kind in HOLES
    if kind.startswith("flare") and not str(body["rule_set"]).startswith("aisc"):
        body["rule_set"] = "aisc-360-22-asd"
    if kind == "tee-butt" and str(body["rule_set"]).startswith("aisc"):
        body["rule_set"] = "en-1993-1-8-2005-directional"
        _drop(body, "filler")
    rules = str(body["rule_set"])
    for part in body["parts"]:
        _part(part, rules, chance)
        part["thickness"] = _millimetres(chance, 12, 16 if holes else 30)
        if kind.startswith("fillet"):
            part["thickness"] = chance.of("8 mm", "5/16 in")
        if rules.startswith("aisc") and "yield_strength" in part:
            part.update(yield_strength="36 ksi", tensile_strength="58 ksi")
    if rules.startswith("aisc"):
        _drop(body, "parameters")
        body["filler"] = chance.of("E70", {"tensile_strength": "70 ksi"})
        body["process"] = chance.of("GMAW", "111", "SMAW", "FCAW-G")
        body["position"] = chance.of("1G", "PA", "2G", "3G")
    else:
        _eurocode(body, rules, chance)
    if holes or kind == "tee-butt":
        _drop(body, "process", "position")
    if kind.startswith("flare"):
        _drop(body, "position")
    body["joint"] = {"kind": "lap" if holes else "tee" if kind == "tee-butt" else chance.of("butt", "tee", "corner")}
    _groove_load(body, kind, chance)
    _groove_sizes(weld, body, chance)


def _groove_load(body: Json, kind: str, chance: Chance) -> None:
    """Mend the load of a groove: a force alone on plugs and slots, else a force over a length or components."""
    if kind in HOLES:
        body["basis"] = "load"
        body["load"] = {"force": chance.of("90 kN", "30 kip", {"value": -40_000, "unit": "N"})}
    elif body["basis"] == "full-strength":
        _drop(body, "load")
    elif "force" in body.get("load", {"force": ""}):
        body["load"] = {
            "force": chance.of("90 kN", "30 kip", "-120 kN"),
            "length": chance.of("200 mm", "10 in"),
            "angle": chance.of("0 deg", "90 deg", {"value": 0.7, "unit": "rad"}),
        }
    else:
        body["load"] = {**dict.fromkeys(body["load"].keys(), "-200 N/mm"), "normal": chance.of("400 N/mm", "-1 kip/in")}


def _groove_sizes(weld: Json, body: Json, chance: Chance) -> None:
    """Mend the sizes of a groove, plug or slot, and leave out what its joint or form cannot have."""
    joint = body["joint"]["kind"]
    both = weld.get("groove", "") in ("single-v", "double-v", "single-u", "double-u")
    if both:
        body["joint"]["kind"] = joint = "butt"
    if weld.get("groove", "").startswith("double") or str(weld.get("root", "")).startswith("back-"):
        _drop(weld, "access")
    _drop(weld, "bears", "groove_angle", "gap", "land", *(() if joint == "tee" else ("reinforcing_fillet",)))
    if weld.get("groove") == "square":
        _drop(weld, "depth_tolerance")
    if "penetration" in weld:
        weld["penetration"] = {"depth": "1 mm", "vouched": weld["penetration"]["vouched"]}
    usual = {
        "reinforcing_fillet": ("6 mm", "1/4 in"),
        "minimum_land": ("1 mm", "1/16 in"),
        "depth_step": ("0.5 mm", "1/32 in"),
        "depth_tolerance": ("0 mm", "0.5 mm"),
        "radius": ("20 mm", "3/4 in"),
        "below_flush": ("0 mm", "1 mm"),
        "unwelded": ("0 mm", "2 mm"),
        "diameter": ("1 in", "25 mm") if "leg" not in weld else ("1 1/2 in", "40 mm"),
        "width": ("1 in", "25 mm") if "leg" not in weld else ("1 1/2 in", "40 mm"),
        "leg": ("5 mm", "1/4 in"),
        "length": ("80 mm", "3 in"),
        "pitch": ("110 mm", "5 in"),
        "pitch_along": ("200 mm", "8 in"),
    }
    for field, choices in usual.items():
        if field in weld:
            weld[field] = chance.of(*choices)
    _drop(weld, "filling", *(("pitch", "pitch_along") if not body["rule_set"].startswith("aisc") else ()))
    if "throats" in weld:
        weld["throats"] = [_millimetres(chance, 3, 12), _millimetres(chance, 3, 12)]
    if "pitch" in weld or "pitch_along" in weld:
        _drop(weld, "count")


def _gauged(body: Json, chance: Chance) -> None:
    """Mend readings: usual parts and a small reading each, of those the level or code goes by."""
    iso = str(body["quality"]).startswith("iso")
    butt = body.get("kind") == "butt"
    body["thickness"] = [_millimetres(chance, 10, 30), _millimetres(chance, 10, 30)]
    for field in body["required"]:
        if field != "penetration":
            body["required"][field] = _millimetres(chance, 3, 10)
    for field, value in body.items():
        if field in _SMALL_READINGS and isinstance(value, str | dict):
            body[field] = chance.of("0 mm", "1/32 in", "0.5 mm", {"value": 1, "unit": "mm"})
    if "toe_angle" in body:
        body["toe_angle"] = chance.of("90 deg", "150 deg", {"value": 2, "unit": "rad"})
    if iso:
        _drop(body, "loading", "flush")
    else:
        _drop(body, *_NOT_IN_D1_1)
    (_butt if butt else _gauged_fillet)(body, iso, chance)
    _extent(body, iso, chance)


_SMALL_READINGS = (
    "undercut", "overlap", "incomplete_penetration", "lack_of_fusion", "surface_pore", "internal_pore",
    "end_crater_pipe", "convexity", "hollow", "root_gap", "reading_tolerance", "reinforcement", "underfill",
    "excess_penetration", "root_concavity", "shrinkage_groove", "misalignment",
)  # fmt: skip
_NOT_IN_D1_1 = (
    "toe_angle", "surface_pore", "internal_pore", "end_crater_pipe", "burn_through", "shrinkage_groove",
    "root_concavity", "circumferential", "face_width", "root_width",
)  # fmt: skip


def _gauged_fillet(body: Json, iso: bool, chance: Chance) -> None:
    """Mend a fillet: usual legs, a face that is convex or hollow, a root fused beyond its corner or short of it."""
    body["legs"] = [_millimetres(chance, 5, 14), _millimetres(chance, 5, 14)]
    _drop(body, chance.of("convexity", "hollow"), chance.of("penetration", "incomplete_penetration"))
    if "angle" in body:
        body["angle"] = chance.of("90 deg", "75 deg", {"value": 2, "unit": "rad"})
    if "throat" in body:
        body["throat"] = _millimetres(chance, 2, 9)
    if "penetration" in body:
        body["penetration"]["depth"] = chance.of("1 mm", "1/16 in")
        if "tolerance" in body["penetration"]:
            body["penetration"]["tolerance"] = chance.of("0 mm", "0.5 mm")


def _butt(body: Json, iso: bool, chance: Chance) -> None:
    """Mend a butt: a root side only where it can be read, and the widths its limits go by."""
    if "throat" in body["required"] or body.get("sides") == 2:
        _drop(body, "root_width", "excess_penetration", "root_concavity", "shrinkage_groove")
    if "flush" in body and "thinning" in body["flush"]:
        body["flush"]["thinning"] = chance.of("0 mm", "1/64 in")
    for width, fields in (("face_width", ("reinforcement", "overlap")), ("root_width", ("excess_penetration",))):
        _drop(body, width)
        if iso and any(field in body for field in fields):
            body[width] = _millimetres(chance, 4, 20)


def _extent(body: Json, iso: bool, chance: Chance) -> None:
    """Mend lengths: those of what was read, within the weld."""
    extent = body.get("extent")
    if extent is None:
        return
    for field in list(extent):
        goes = "legs" in body if field == "throat" else field in body
        goes = goes and not (field == "undercut" and "cyclic" in str(body.get("loading")))
        if field != "of_weld" and (not goes or not (iso or field in ("throat", "undercut"))):
            _drop(extent, field)
        else:
            extent[field] = chance.of("10 mm", "1 in")
    extent["of_weld"] = chance.of("80 mm", "12 in", {"value": 1.5, "unit": "m"})


def _options(body: Json, kept: str, chance: Chance) -> None:
    """Mend what only some fillets have: one of it at most, where the rules and the joint have it."""
    en, aisc = (str(body["rule_set"]).startswith(family) for family in ("en", "aisc"))
    joint, load = body["joint"], body.get("load", {})
    one_length = "angle" in load or ("length" in load and "width" not in load)
    wanted = {
        "intermittent": (en or aisc) and one_length and "intermittent" in body,
        "ends": en and one_length,
        "transverse_stiffener": en and one_length and joint["kind"] != "lap",
        "root_bending": en and bool(body.get("root_bending")),
        "packing": str(body["rule_set"]).startswith("en-1993") and "packing" in body,
        "unstiffened_flange": en and "unstiffened_flange" in body,
        "tension_member": aisc and body["basis"] == "load" and "tension_member" in body,
    }
    for field, sound in wanted.items():
        if field != kept or not sound:
            _drop(body, field)
        else:
            _drop(body, "end_loaded")
            if field in _MENDED:
                _MENDED[field](body, en, chance)
    if not en:
        _drop(body, "minimum_throat")


def _intermittent(body: Json, en: bool, chance: Chance) -> None:
    """Mend an intermittent fillet: a usual segment, and what its rules go by."""
    run = body["intermittent"]
    run["segment"] = _millimetres(chance, 40, 60)
    if "gap" in run:
        run["gap"] = _millimetres(chance, 20, 60)
    _drop(run, "exposure", "widths")
    if body["joint"].get("sides") != 2:
        _drop(run, "staggered")
    if en and (run["loading"] != "tension" or run.get("member") != "stiffener"):
        # Ends of 0.75 of the wider part leave a gap in the shortest line, 200 mm.
        run["widths"] = [_millimetres(chance, 60, 120), _millimetres(chance, 60, 120)]


def _packed(body: Json, en: bool, chance: Chance) -> None:
    """Mend packing: some between the parts of a lap, thinner than its leg or thicker."""
    body["joint"] = {"kind": "lap"}
    body["packing"] = {"thickness": chance.of("2 mm", "1/4 in", {"value": 10, "unit": "mm"})}
    _drop(body, "penetration")


def _bent_at_root(body: Json, en: bool, chance: Chance) -> None:
    """Mend a tee from one side."""
    body["joint"] = {"kind": "tee"}
    _drop(body, "edge_of")
    _drop(body.get("load", {}), "transverse")


def _on_flange(body: Json, en: bool, chance: Chance) -> None:
    """Mend a plate on an unstiffened flange."""
    body.update(basis="full-strength", joint={"kind": "tee", "sides": 2})
    flange = body["unstiffened_flange"]
    flange.update(web_thickness=_millimetres(chance, 6, 12), plate_width=_millimetres(chance, 60, 160))
    _drop(flange, "weld_throat", "root_radius")
    if flange.get("section") != "box":
        flange[chance.of("root_radius", "weld_throat")] = _millimetres(chance, 4, 12)
    _drop(body, "load", "edge_of")


def _held_by_two(body: Json, en: bool, chance: Chance) -> None:
    """Mend a tension member."""
    _balanced(body, chance)
    body["tension_member"] = chance.of({}, {"eccentricity": "10 mm"}, {"area": {"value": 2, "unit": "in2"}})


_MENDED = {
    "intermittent": _intermittent,
    "root_bending": _bent_at_root,
    "packing": _packed,
    "unstiffened_flange": _on_flange,
    "tension_member": _held_by_two,
}


def _balanced(body: Json, chance: Chance) -> None:
    """Mend a member held by two side welds."""
    body["joint"] = {"kind": "lap", "sides": 2}
    body["load"] = {
        "force": chance.of("60 kN", "20 kip"),
        "length": chance.of("400 mm", "20 in"),
        "width": _millimetres(chance, 80, 120),
        "centroid": _millimetres(chance, 20, 40),
    }
    _drop(body, "end_loaded")


def _estimated(body: Json, chance: Chance) -> None:
    """Mend welds to estimate: sections that can be filled, and what goes with a process; at most three of them."""
    del body["welds"][3:]
    for weld in body["welds"]:
        _section(weld["shape"], chance)
        weld["length"] = chance.of("400 mm", "2 ft", {"value": 1.5, "unit": "m"})
        _drop(weld, "electrode", "filler")
        for field, usual in (("count", 4), ("excess", 0.1), ("efficiency", 0.9), ("operator_factor", 0.3)):
            if field in weld:
                weld[field] = usual
        for field, texts in (("gas_flow", ("15 L/min", "35 ft3/h")), ("density", ("7850 kg/m3", "0.283 lb/in3"))):
            if field in weld:
                weld[field] = chance.of(*texts)
        wired = bool({"gas_flow", "deposition"} & set(weld))
        if "process" in weld:
            weld["process"] = chance.of("GMAW", "135") if wired else chance.of("GMAW", "111", "136", "SAW")
        _rates(weld, chance)
    if "prices" in body:
        _prices(body["prices"], chance)


def _rates(weld: Json, chance: Chance) -> None:
    """Mend what a weld is deposited at: usual rates, with what they need."""
    fed = {"wire_diameter": "1.2 mm", "wire_mass": "0.009 kg/m", "feed_speed": chance.of("8 m/min", "320 in/min")}
    usual = {"rate": chance.of("3 kg/h", "7 lb/h"), **fed}
    if "deposition" in weld:
        weld["deposition"] = {field: usual[field] for field in weld["deposition"]}
        weld["efficiency"] = 0.93
    if "bead" in weld:
        weld["bead"] = {field: {"area": "20 mm2", "travel_speed": "350 mm/min"}[field] for field in weld["bead"]}
        weld.setdefault("deposition", {"rate": "3 kg/h"})
        if "process" in weld:
            weld["process"] = "GMAW"
    if "arc" in weld:
        weld["arc"] = {"voltage": "25 V", "current": "200 A"}


def _section(shape: Json, chance: Chance) -> None:
    """Mend a section: usual sizes, and none of the fields that shut each other out."""
    kind = str(shape["kind"])
    sizes = {
        "thickness": "20 mm",
        "root_gap": chance.of("2 mm", "1/8 in"),
        "land": "2 mm",
        "depth": "9 mm",
        "depths": ["8 mm", "6 mm"],
        "root_radius": "6 mm",
        "angle": "60 deg" if kind.endswith("-v") else "30 deg",
        "back_gouge": {"depth": "4 mm", "width": "8 mm"},
        "radius": "4 mm",
        "overlap": "3 mm",
        "throat": _millimetres(chance, 3, 8),
        "legs": [_millimetres(chance, 4, 10), _millimetres(chance, 4, 10)],
        "leg_excess": 0.1,
        "convexity": "1 mm",
        "hollow": "1/32 in",
        "crown": "1 mm",
        "area": chance.of("20 mm2", {"value": 0.05, "unit": "in2"}),
    }
    if kind == "fillet":
        shape.setdefault("legs", [])
        _drop(shape, "throat", chance.of("convexity", "hollow"))
        sizes["angle"] = chance.of("90 deg", "75 deg")
    elif kind.endswith("corner"):
        sizes.update(thickness=["9 mm", "8 mm"], angle="90 deg")
        rounded = shape.get("fill") == "rounded"
        _drop(shape, *(("crown",) if shape.get("fill", "flat") != "flat" else ()))
        if rounded:
            shape["radius"] = ""
        else:
            _drop(shape, "radius")
    elif kind not in ("flare-bevel", "flare-v", "area"):
        shape["root_gap"] = ""
        _drop(shape, *chance.of(("depth", "depths"), ("land", "back_gouge")))
        if "depth" in shape or "depths" in shape:
            _drop(shape, "back_gouge")
            _drop(shape.get("reinforcement", {}), "root")
    for cap in shape.get("reinforcement", {}).values():
        cap["height"] = "2 mm"
        _drop(cap, "overlap")
        if "width" in cap:
            cap["width"] = "14 mm"
    for field in shape:
        if field in sizes:
            shape[field] = sizes[field]


def _prices(prices: Json, chance: Chance) -> None:
    """Mend prices: some labour, and no price twice."""
    prices["labour"] = {"amount": chance.of(50, 62.5), "per": "h"}
    for field in ("consumables", "gases"):
        if field in prices:
            del prices[field][1:]


ARC = {
    "voltage": "28 V",
    "current": "250 A",
    "travel_speed": "350 mm/min",
    "arc_energy": "1.5 kJ/mm",
    "heat_input": "30 kJ/in",
    "deposition_rate": "4 kg/h",
}
STEEL = {"C": 0.16, "Mn": 1.4, "Si": 0.3, "Cr": 0.1, "Mo": 0.05, "Ni": 0.1, "Cu": 0.1}


def _heated(body: Json, chance: Chance) -> None:
    """Mend a pass: an arc process and a usual steel, then drop every field that lacks the one it goes with."""
    usual: Json = {
        "process": chance.of("135", "SMAW", "SAW", "141"),
        "thickness": _millimetres(chance, 10, 40),
        "thickest_part": "50 mm",
        "weld_metal_cet": chance.of(0.25, 0.35),
        "hydrogen": chance.of("3 ml/100g", "5 ml/100g", {"value": 12, "unit": "ml/100g"}),
        "cooling_window": {"least": chance.of("5 s", "8 s"), "most": chance.of("20 s", "0.5 min")},
    }
    body.update({field: value for field, value in usual.items() if field in body})
    if "arc" in body:
        body["arc"] = {field: ARC[field] for field in body["arc"]}
        _drop(body, "cooling_time")
    for element in set(body.get("composition", {})) - {"others_zero"}:
        body["composition"][element] = STEEL.get(element, 0.001)
    for field in body.get("carbon_equivalents", {}):
        body["carbon_equivalents"][field] = chance.of(0.3, 0.4)
    _drop(body, *(("carbon_equivalents",) if "composition" in body else ("steel_group",)))
    if body.get("seam") not in ("corner-fillet", "tee-fillet"):
        _drop(body, "leg")
        _drop(body.get("arc", {}), "deposition_rate")
    if "deposition_rate" in body.get("arc", {}):
        body["arc"]["travel_speed"] = ARC["travel_speed"]
    for field, companions in (
        ("preheat_category", ("thickest_part",)),
        ("hydrogen", ("weld_metal_cet", "combined_thickness")),
        ("steel_group", ("heat_treated",)),
        ("leg", ("required_leg",)),
    ):
        if field not in body:
            _drop(body, *companions)


def _graded(body: Json, chance: Chance) -> None:
    """Mend a pass to grade: a usual bead and weld metal, and fields that go with the joint."""
    bead = body.get("bead", {})
    for field in bead:
        bead[field] = _millimetres(chance, 4, 9)
    if "face_width" in bead:
        bead["width"] = "10 mm"
    if "throat" in bead or "leg" in body:
        body["joint"] = "fillet"
    if body["joint"] != "fillet":
        _drop(body, "thickness")
    if "thickness" in body:
        body["thickness"] = [_millimetres(chance, 4, 40), _millimetres(chance, 4, 40)]
    else:
        _drop(body, "leg", "low_hydrogen")
    metal = {"C": 0.1, "S": 0.015, "P": 0.02, "Nb": 0.01, "Si": 0.3, "Mn": 1.1}
    if "weld_metal" in body:
        body["weld_metal"] = metal


def _distorted(body: Json, chance: Chance) -> None:
    """Mend a joint to shrink: a usual section, what its methods go by, and tolerances they are held against."""
    joint = body["joint"]
    joint["thickness"] = _millimetres(chance, 10, 30)
    if "leg" in joint:
        joint["leg"] = _millimetres(chance, 4, 7)
        _drop(joint, "runs" if joint.get("sides") == 2 else "width")
    if "weld" in joint:
        _groove_of(joint, chance)
    if joint["kind"] == "tee" and joint.get("sides") != 2 and "runs" not in joint:
        _drop(joint, "restraint")
    for place, field, usual in (
        (joint, "width", "200 mm"),
        (joint, "area", "25 mm2"),
        (joint, "restraint", {"span": "20 in", "coefficient": "20 kN"}),
        (body, "size_step", "1/16 in"),
        (body, "heat_input", "30 kJ/in"),
    ):
        if field in place:
            place[field] = usual
    body["length"] = chance.of("1 m", "10 ft", {"value": 2500, "unit": "mm"})
    if "member" in body:
        body["member"] = {"area": chance.of("5000 mm2", "9 in2")} | chance.of(
            {}, {"second_moment": "4000 cm4", "eccentricity": "90 mm"}
        )
    else:
        _drop(body, "heat_input")
    if "iso_13920" in body:
        body["iso_13920"] = chance.of(
            {"linear_class": "B", "across": "300 mm"}, {"along": "2 m"}, {"linear_class": "C", "along": "8 ft"}
        )


def _groove_of(joint: Json, chance: Chance) -> None:
    """Mend the groove of a butt, and what goes with some grooves alone."""
    weld = joint["weld"]
    weld["root_opening"] = chance.of("2 mm", "1/8 in")
    if "land" in weld:
        weld["land"] = chance.of("0 mm", "1 mm")
    if "groove_angle" in weld:
        weld["groove_angle"] = chance.of("45 deg", "60 deg", {"value": 0.6, "unit": "rad"})
    if {"face_width", "root_width"} & set(weld):
        weld.update(face_width=_millimetres(chance, 12, 20), root_width="3 mm")
    if weld["groove"] in ("square", "double-v", "double-bevel"):
        _drop(joint, "runs")
    if weld["groove"] in ("square", "by-area"):
        _drop(joint, "restraint")


def _broken(body: Json, chance: Chance) -> None:
    """Mend a coupon to open: a kind that goes with its seam, usual strengths, notches that leave something."""
    body.setdefault("required_throat", "1 mm")
    kind = _seam(body, chance)
    _drop(body, "required_throat")
    corner = kind != "fillet"
    body["coupon"] = "outside-corner" if corner else chance.of("tee", "inside-corner")
    body["seam"]["thickness"] = [_millimetres(chance, 6, 14), _millimetres(chance, 6, 14)]
    if kind != "closed-corner":
        _drop(body, "preparation")
    elif "preparation" in body:
        body["preparation"] = {"depth": "2 mm"}
    _drop(body, chance.of("face_height", "hollow"))
    for field in ("face_height", "hollow"):
        if field in body:
            body[field] = chance.of("1 mm", "1/16 in")
    body["weld"] = chance.of(
        {"yield_strength": "420 MPa", "tensile_strength": "500 MPa"},
        {"yield_strength": "58 ksi", "tensile_strength": "70 ksi"},
    )
    body["length"] = chance.of("150 mm", "6 in")
    if "notch" in body:
        body["notch"] = {"side": chance.of("5 mm", "1/4 in"), "face": "1/64 in"}
    if "material" in body["plates"]:
        body["plates"] = {"material": chance.of("S235", "S355", "A36")}
    if body["coupon"] != "tee" or body.get("rules") != "aws-d1-1-2010":
        _drop(body, "outcome")
    elif body.get("outcome", {}).get("ended") == "broken":
        body["outcome"].update(largest_void="1 mm", sum_of_voids=chance.of("1 mm", "1/4 in"))


def _load(body: Json, chance: Chance) -> None:
    """Mend a load: one where the basis wants it, none where it does not."""
    if body["basis"] != "load":
        _drop(body, "load", "end_loaded")
        return
    load = body.get("load", {})
    if "centroid" in load:
        _balanced(body, chance)
    elif "transverse_length" in load:
        body["joint"] = {"kind": "lap"}
        body["load"] = {
            "force": chance.of("60 kN", "20 kip"),
            "longitudinal_length": _millimetres(chance, 150, 300),
            "transverse_length": _millimetres(chance, 50, 150),
        }
        _drop(body, "end_loaded")
    elif "force" in load or not load:
        body["load"] = {
            "force": chance.of("40 kN", "12 kip", {"value": 90_000, "unit": "N"}),
            "length": chance.of("200 mm", "10 in", {"value": 1.5, "unit": "m"}),
            "angle": chance.of("0 deg", "90 deg", {"value": 0.7, "unit": "rad"}),
        }
    else:
        body["load"] = {
            **{name: chance.of("300 N/mm", "-1 kip/in", "0 N/mm") for name in load if name != "length"},
            "longitudinal": chance.of("250 N/mm", {"value": 1.5, "unit": "kip/in"}),
            "length": chance.of("200 mm", "10 in"),
        }


def _finish(body: Json, kind: str, chance: Chance) -> None:
    """Mend a finish: one that the kind of seam can have."""
    finish = body.get("finish")
    if finish is None:
        return
    if finish["to"] not in FINISHES[kind]:
        body["finish"] = finish = {"to": chance.of(*(to for to in FINISHES[kind] if to != "radius"))}
    usual = {"below": ("0 mm", "1/64 in"), "tolerance": ("0.2 mm",), "radius": ("3 mm", "1/2 in")}
    for field, choices in usual.items():
        if field in finish:
            finish[field] = chance.of(*choices)


def _seam(body: Json, chance: Chance) -> str:
    """Mend a seam, its finish and its penetration; give its kind."""
    seam = body["seam"]
    kind = str(seam["kind"])
    _drop(seam, "width")
    for field in ("thickness", "legs"):
        if field in seam:
            seam[field] = [_millimetres(chance, 6, 16), _millimetres(chance, 6, 16)]
    for field in ("thickness_tolerance", "legs_tolerance"):
        if field in seam:
            seam[field] = chance.of("0 mm", "0.3 mm", "1/64 in")
    if kind == "closed-corner":
        _drop(seam, "angle")
    elif "angle" in seam:
        seam["angle"] = chance.of("90 deg", "60 deg", "120 deg")
    if "overlap" in seam:
        seam["overlap"] = chance.of("2 mm", {"value": 3, "unit": "mm"})
    if "overlap_tolerance" in seam:
        seam["overlap_tolerance"] = "0.5 mm"
    if "penetration" in body:
        body["penetration"]["depth"] = chance.of("1 mm", "1/16 in", {"value": 2, "unit": "mm"})
        if "tolerance" in body["penetration"]:
            body["penetration"]["tolerance"] = chance.of("0 mm", "0.5 mm")
    body["required_throat"] = _millimetres(chance, 1, 6)
    _finish(body, kind, chance)
    return kind


def _coded(body: Json, chance: Chance) -> None:
    """Mend what the deduction of a code goes by."""
    if str(body.get("rule_set", "")).startswith("aisc"):
        body["process"] = chance.of("GMAW", "111", "FCAW")
        body["position"] = chance.of("1G", "PA", "2G", "3G")


def _ground(body: Json, chance: Chance) -> None:
    """Mend a seam to grind."""
    kind = _seam(body, chance)
    _coded(body, chance)
    aisc = str(body.get("rule_set", "")).startswith("aisc")
    if kind not in FLAT:
        _drop(body, "preparation", "face_width")
    if "face_width" in body:
        body["face_width"] = _millimetres(chance, 20, 40)
    prepared = body.get("preparation")
    if prepared is not None:
        prepared["depth"] = chance.of("2 mm", "3 mm", "3/16 in")
        if "tolerance" in prepared:
            prepared["tolerance"] = chance.of("0 mm", "0.5 mm")
        if "groove_angle" in prepared:
            prepared["groove_angle"] = chance.of("45 deg", "50 deg") if aisc else chance.of("30 deg", "70 deg")
    if "hollow" in body and chance.of(True, False):
        body["hollow"] = chance.of("0.5 mm", "1/32 in")
        _drop(body, "face_height", "face_height_tolerance")
    else:
        _drop(body, "hollow", "hollow_tolerance")
    for height, tolerance in (("face_height", "face_height_tolerance"), ("hollow", "hollow_tolerance")):
        if tolerance in body:
            body[tolerance] = "0.3 mm"
            body.setdefault(height, "1 mm")
    if "face_height" in body:
        body["face_height"] = _millimetres(chance, 0, 5)


def _bevelled(body: Json, chance: Chance) -> None:
    """Mend an edge to prepare."""
    _seam(body, chance)
    _coded(body, chance)
    groove = body.get("groove", "single-bevel")
    if groove in ("single-v", "single-u"):
        _drop(body, "bevelled")
    if groove in ("single-bevel", "single-v"):
        _drop(body, "root_radius")
    if "root_radius" in body:
        body["root_radius"] = chance.of("6 mm", "1/4 in")
    if str(body.get("rule_set", "")).startswith("aisc"):
        _drop(body, "groove_angle", "bevelled")
    elif "groove_angle" in body:
        body["groove_angle"] = chance.of("30 deg", "60 deg", {"value": 50, "unit": "deg"})
    for field, choices in (
        ("minimum_land", ("0 mm", "1 mm", "1/16 in")),
        ("depth_step", ("0.5 mm", "1/32 in")),
        ("depth_tolerance", ("0 mm", "0.5 mm")),
    ):
        if field in body:
            body[field] = chance.of(*choices)


def _planned(body: Json, chance: Chance) -> None:
    """Mend a joint to plan: a basis, a finish and metals that go with its kind, and usual figures of the weld."""
    rules, joint = str(body["rule_set"]), body["joint"]
    if rules == "thin-part":
        joint["kind"] = chance.of("outside-corner", "butt")
    _drop(joint, "root_gap", *chance.of((), ("angle",)))
    if "angle" in joint:
        joint["angle"] = "90 deg"
    if joint["kind"] not in ("tee", "butt"):
        _drop(body, "held_from_turning")
    for part in body["parts"]:
        _part(part, rules, chance)
    body["length"] = chance.of("300 mm", "4 ft", {"value": 1.2, "unit": "m"})
    body["basis"] = "throat" if joint["kind"] in ("outside-corner", "butt") else chance.of("load", "full-strength")
    wanted = {
        "load": {"load": {"force": chance.of("60 kN", "20 kip"), "angle": chance.of("0 deg", "90 deg", "60 deg")}},
        "throat": {"required_throat": chance.of("3 mm", "1/8 in")},
    }
    _drop(body, "load", "required_throat", *(() if joint["kind"] in ("tee", "lap") else ("intermittent",)))
    body.update(wanted.get(body["basis"], {}))
    _finish_of(body, chance)
    if rules.startswith("aisc"):
        body["filler"] = chance.of("E70", "E80", {"tensile_strength": "70 ksi"})
        _drop(body, "parameters")
    elif rules == "thin-part":
        _drop(body, "parameters", "filler")
    else:
        _eurocode(body, rules, chance)
    _usual_weld(body, chance)


def _finish_of(body: Json, chance: Chance) -> None:
    """Mend the finish of a joint to plan, and what its throat budget goes by."""
    kind = body["joint"]["kind"]
    finishes = {"outside-corner": FINISHES["open-corner"], "butt": FINISHES["butt"]}.get(kind, ("as-welded",))
    if body.get("finish", {}).get("to") not in finishes:
        _drop(body, "finish")
    for field in ("radius", "below", "tolerance"):
        if field in body.get("finish", {}):
            body["finish"][field] = chance.of("0.5 mm", "1/64 in")
    if "penetration" in body:
        body["penetration"] = {"depth": "1 mm", "vouched": body["penetration"]["vouched"]}
    if "tolerances" in body:
        body["tolerances"] = {"depth" if kind in ("outside-corner", "butt") else "legs": chance.of("0.5 mm", "1/64 in")}
    else:
        _drop(body, "spread")
    if body.get("spread", {}).get("distribution") != "normal":
        _drop(body.get("spread", {}), "deviations")


def _usual_weld(body: Json, chance: Chance) -> None:
    """Mend the arc, the steel, the rates and the prices of a joint to plan."""
    usual: Json = {
        "cooling_window": {"least": "5 s", "most": chance.of("20 s", "0.5 min")},
        "hydrogen": "5 ml/100g",
        "preheat": chance.of("20 degC", "212 degF"),
        "bevelling_speed": chance.of("300 mm/min", "12 in/min"),
    }
    body.update({field: value for field, value in usual.items() if field in body})
    if "arc" in body:
        body["arc"] = {field: ARC[field] for field in body["arc"]}
        if "voltage" in body["arc"]:
            body["arc"]["travel_speed"] = ARC["travel_speed"]
    else:
        _drop(body, "cooling_window")
    for element in set(body.get("composition", {})) - {"others_zero"}:
        body["composition"][element] = STEEL.get(element, 0.001)
    if "composition" not in body:
        _drop(body, "hydrogen")
    if not {"arc", "composition", "preheat_category"} & set(body):
        _drop(body, "preheat")
    if body["joint"]["kind"] in ("lap", "inside-corner"):
        _drop(body, "bevelling_speed")
    for field, figure in (("efficiency", 0.93), ("gas_flow", "15 L/min")):
        if field in body:
            body[field] = figure
    if "deposition" in body:
        body["deposition"] = {"rate": chance.of("3 kg/h", "7 lb/h")}
    if "prices" in body:
        _prices(body["prices"], chance)
    if "widths" in body.get("intermittent", {}):
        body["intermittent"]["widths"] = ["200 mm", chance.of("100 mm", "4 in")]
