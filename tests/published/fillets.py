"""Requests for a fillet of a given size, and what an answer says of it.

The service sizes from a load. A size is put to it by a load so small that the least size governs, with that size as the
step: the next step up is then the size itself, and ``strength`` is the size's own.
"""

from typing import Any

FILLET_SIZE = "/v1/fillet-size"
LRFD, ASD = "aisc-360-22-lrfd", "aisc-360-22-asd"
DIRECTIONAL, SIMPLIFIED = "en-1993-1-8-2005-directional", "en-1993-1-8-2005-simplified"
KSI = 6.894757293168361
"""One ksi in MPa."""


def steel(thickness: str, f_y: str = "50 ksi", f_u: str = "65 ksi") -> dict[str, Any]:
    """Part of a given strength."""
    return {"thickness": thickness, "yield_strength": f_y, "tensile_strength": f_u}


def aisc_fillet(
    rules: str,
    leg: str,
    *,
    length: str,
    angle: str = "0 deg",
    sides: int = 1,
    parts: tuple[dict[str, Any], dict[str, Any]] | None = None,
    filler: Any = "E70",
    force: str = "0.1 kip",
    kind: str = "lap",
    units: str = "us",
    **more: Any,
) -> dict[str, Any]:
    """Request for a fillet of the leg given; 1/4 in plates, whose least fillet is 1/8 in, unless told."""
    return {
        "rule_set": rules,
        "basis": "load",
        "joint": {"kind": kind, "sides": sides},
        "parts": list(parts or (steel("1/4 in"), steel("1/4 in"))),
        # A weld of any leg is put to the service, so a lap lies along an edge that is thick enough for it.
        **({"parts": [steel("1/4 in"), steel("4 in")], "edge_of": 2} if kind == "lap" and parts is None else {}),
        "filler": filler,
        "load": {"force": force, "length": length, "angle": angle},
        "size_step": leg,
        "size_by": "leg",
        "units": units,
        # The published strengths are those of the weld itself, in whatever joint: one weld is held from turning.
        **({"held_from_turning": True} if sides == 1 else {}),
        **more,
    }


def en_fillet(
    rules: str,
    throat: str,
    *,
    f_u: float,
    beta_w: float,
    angle: str = "0 deg",
    joint: dict[str, Any] | None = None,
    thickness: str = "20 mm",
    f_y: float = 235.0,
    length: str = "500 mm",
    **more: Any,
) -> dict[str, Any]:
    """Request for a fillet of the throat given, 3 mm or more."""
    part = {
        "thickness": thickness,
        "yield_strength": f"{f_y} MPa",
        "tensile_strength": f"{f_u} MPa",
        "beta_w": beta_w,
    }
    return {
        "rule_set": rules,
        "basis": "load",
        "joint": joint or {"kind": "tee", "sides": 1},
        "parts": [part, part],
        "load": {"force": "0.1 kN", "length": length, "angle": angle},
        "size_step": throat,
        "size_by": "throat",
        "held_from_turning": True,
        **more,
    }


def weld(answer: dict[str, Any]) -> float:
    """Strength per length of one weld, in the answer's unit."""
    assert answer["verdict"] == "enough", answer["reasons"]
    strength: float = answer["strength"]["weld"]["value"]
    return strength


def base_metal(answer: dict[str, Any], part: int) -> float:
    """Strength per length of a part beside one weld, in the answer's unit; parts count from 1."""
    strength: float = answer["strength"]["base_metal"][part - 1]["value"]
    return strength


def leg(answer: dict[str, Any], line: str = "required") -> float:
    """Leg of a line of the answer, in its unit."""
    size: float = answer[line]["leg"]["value"]
    return size


def throat(answer: dict[str, Any], line: str = "required") -> float:
    """Throat of a line of the answer, in its unit."""
    size: float = answer[line]["throat"]["value"]
    return size


def worked(answer: dict[str, Any], symbol: str) -> list[float]:
    """Values of every step of the working that gives ``symbol``, in engine units."""
    return [step["value"] for step in answer["working"] if step["symbol"] == symbol]
